"""Whether a PIN stands behind each person that a session names as second person or supervisor.

The session says who vouched; the shop's own facts say whose PIN was given when. The two are written
by different hands, and an audit holds one against the other.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from kiosk.engine import events as e
from kiosk.journal.shop_facts import PinGiven, ShopEvent
from kiosk.people.may import Purpose
from kiosk.proof.account import Violation

WITHIN_S: Final = 600.0
"""A PIN counts for what follows within ten minutes of the same boot: a second one may be asked for
in between. Common practice, no source."""


def unvouched(session: Sequence[e.Event], shop_events: Sequence[ShopEvent]) -> Iterator[Violation]:
    """Yield each name in a session's events behind which no PIN stands."""
    for seq, event in enumerate(session, 1):
        for person, purpose in _claims(event.fact):
            if not any(_vouches(one, person, purpose, event) for one in shop_events):
                what = f"'{person}' is named ({purpose}), and gave no PIN for it"
                yield Violation(seq, "pin-given", what)


def _claims(fact: e.Fact) -> Iterator[tuple[str, Purpose]]:
    match fact:
        case e.SessionStarted() | e.HandedOver():
            if fact.pin:
                began = isinstance(fact, e.SessionStarted)
                yield fact.worker, Purpose.BEGIN if began else Purpose.TAKE_OVER
            if fact.supervisor:
                yield fact.supervisor, Purpose.STAND_BY
        case e.StepConfirmed(witness=person) if person:
            yield person, Purpose.WITNESS
        case _:
            return


def _vouches(given: ShopEvent, person: str, purpose: Purpose, event: e.Event) -> bool:
    if not isinstance(given.fact, PinGiven) or given.at.boot != event.at.boot:
        return False
    # Somebody who takes up a session from the board was asked before it was known that they begin.
    purposes = {purpose, Purpose.BEGIN} if purpose is Purpose.TAKE_OVER else {purpose}
    same = given.fact.person == person and given.fact.purpose in purposes
    return same and 0.0 <= event.at.mono - given.at.mono <= WITHIN_S
