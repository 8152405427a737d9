"""Spoken remarks in a session's timeline, and playing them."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

from kiosk.journal.codec import UnknownEvent
from kiosk.remarks.sounds import Lies, Sounds
from kiosk.remarks.told import Remark, journaled
from kiosk.review.ledger_lines import Line
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import Row

_SIGN: Final = "♪"
_HASH: Final = 16
"""Figures of a hash that are shown; the journal and a report have all of them."""

Timed = tuple[float, list[Row]]


def remarks_of(line: Line, desk: Desk) -> tuple[Remark, ...]:
    """Return the remarks that were left in a session, in order of time."""
    try:
        # They stand behind the session's first row.
        found = journaled(desk.shop.journal, line.first_seq)
    except UnknownEvent:
        return ()
    return tuple(one for one in found if one.session == line.session)


def remark_rows(remarks: Sequence[Remark], desk: Desk) -> Iterator[Timed]:
    """Yield each remark at its place in a timeline."""
    for one in remarks:
        at = desk.clock_time(one.at_utc)
        rows = [Row(f"{at} {_SIGN} {name_of(one, desk)}", "bold", indent=9)]
        rows.append(Row(f"  {desk.words.say('remark-hash', hash=f'{one.sha256[:_HASH]} …')}"))
        if one.erased is not None:
            rows.append(Row(f"  {_erased(one, desk)}"))
        yield one.at_utc, rows


def name_of(one: Remark, desk: Desk) -> str:
    """Return who left a remark, and how long it is."""
    return desk.words.say("remark-left", who=desk.person(one.worker), time=_time(one, desk))


def playing(one: Remark, desk: Desk) -> str:
    """Return that a remark is played."""
    return desk.words.say("remark-playing", who=desk.person(one.worker), time=_time(one, desk))


def fault_of(one: Remark, desk: Desk) -> str:
    """Return why a remark cannot be played, its hash computed anew; '' where it can."""
    say = desk.words.say
    if one.erased is not None:
        return cannot_play(_erased(one, desk), desk)
    lies = Sounds(desk.shop.folder).look(one.sha256)
    return "" if lies is Lies.HERE else cannot_play(say(f"remark-is-{lies}"), desk)


def cannot_play(why: str, desk: Desk) -> str:
    """Return that a remark cannot be played, and why."""
    return desk.words.say("remark-cannot-play", why=why)


def _time(one: Remark, desk: Desk) -> str:
    return desk.length(max(1.0, one.seconds))


def _erased(one: Remark, desk: Desk) -> str:
    erasure = one.erased
    if erasure is None:
        return ""
    at = desk.day_and_time(erasure.at_utc)
    if not erasure.by:
        return desk.words.say("remark-erased-by-time", at=at)
    return desk.words.say("remark-erased-by", at=at, by=desk.person(erasure.by))
