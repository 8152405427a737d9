"""The walks that a trace looks at, few of them read whole, so that years of journal are no burden.

A trace reads what was done only in its window. Of earlier sessions it asks who walked them, when,
how they ended and which parts were seen: that the ledger has.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from datetime import timedelta
from typing import Final

from kiosk.engine.events import Event
from kiosk.procedure.model import Standing
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Site
from kiosk.review.clues import CLUES, WINDOW_DAYS, Clue
from kiosk.review.ledger import Ledger
from kiosk.review.ledger_lines import Line, PartLine
from kiosk.review.record import PartSeen, SessionRecord
from kiosk.review.results import Entered
from kiosk.review.signs import Walked, walked
from kiosk.review.trace import closing

_MARGIN_DAYS: Final = 30
"""Days before the window in which sessions are read whole, too: the last of them tells how the
machine stood when the window began."""

_FIRST_WALKS: Final = int(CLUES[Clue.NEW_WORKER].figures["first_sessions"]) + 1
"""Of a worker's walks; who has walked more often is not new."""


def walks_before(
    result: Entered,
    ledger: Ledger,
    events: Callable[[str], Sequence[Event]],
    plan_of: Callable[[str], Plan | None],
    site: Site,
    window_days: int = WINDOW_DAYS,
) -> list[Walked]:
    """Return the walks that a trace of a result needs, oldest first.

    Before the window these are the very first one, those of the machine in which a part was
    replaced or should have been, and the first ones of whoever walked in the window.

    `events` and `plan_of` tell a session's events and the plan that it walked.
    """
    of, practice = result.of, site.practice
    until = closing(site, of.day)
    since = closing(site, of.day - timedelta(days=window_days + _MARGIN_DAYS))
    whole = ledger.lines(
        practice=practice, machine=of.machine, from_utc=since, until_utc=until, limit=None
    )
    changed: dict[str, list[PartLine]] = {}
    for part in ledger.wearing(practice=practice, machine=of.machine):
        if part.session and part.at_utc < until:
            changed.setdefault(part.session, []).append(part)
    short = {line.session: line for line in ledger.first("", practice=practice, limit=1)}
    short |= {session: ledger.line(session) for session in changed}
    for worker in {worker for line in whole for worker in line.workers}:
        earliest = ledger.first(worker, practice=practice, limit=_FIRST_WALKS)
        short |= {line.session: line for line in earliest}
    found = [walked(line.session, events(line.session), plan_of(line.session)) for line in whole]
    read = {line.session for line in whole}
    # How it left the machine is asked only of the sessions that are read whole.
    found += [
        Walked(_short(line, changed.get(session, ())), Standing.DRYING, ())
        for session, line in short.items()
        if session not in read and line.begun_utc < until
    ]
    return sorted(found, key=lambda one: (one.record.begun_utc, one.record.session))


def _short(line: Line, parts: Sequence[PartLine]) -> SessionRecord:
    """Return a session's record without its steps."""
    return SessionRecord(
        session=line.session, procedure=line.procedure, title=line.title, version=line.version,
        digest="", text_known=line.text_known, machine=line.machine, practice=line.practice,
        workers=line.workers, begun_utc=line.begun_utc, last_utc=line.last_utc, ended=line.ended,
        ended_step=line.ended_step,
        parts=tuple(
            PartSeen(
                at_utc=one.at_utc, step=one.step, part=one.part, name={}, counted=one.counted,
                expected=one.expected, finding=one.finding,
            )
            for one in parts
        ),
    )  # fmt: skip
