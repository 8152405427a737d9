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
from kiosk.review.clues import WINDOW_DAYS
from kiosk.review.ledger import Ledger
from kiosk.review.ledger_lines import Line, PartLine
from kiosk.review.record import PartSeen, SessionRecord
from kiosk.review.results import Entered
from kiosk.review.signs import Walked, walked
from kiosk.review.trace import closing

_MARGIN_DAYS: Final = 30
"""Days before the window in which sessions are read whole, too: the last of them tells how the
machine stood when the window began."""


def walks_before(
    result: Entered,
    ledger: Ledger,
    events: Callable[[str], Sequence[Event]],
    plan_of: Callable[[str], Plan | None],
    site: Site,
    window_days: int = WINDOW_DAYS,
) -> list[Walked]:
    """Return every walk that a trace of a result needs, oldest first.

    `events` and `plan_of` tell a session's events and the plan that it walked.
    """
    of = result.of
    until = closing(site, of.day)
    since = closing(site, of.day - timedelta(days=window_days + _MARGIN_DAYS))
    seen: dict[str, list[PartLine]] = {}
    for part in ledger.parts(practice=site.practice, machine=of.machine, until_utc=until):
        seen.setdefault(part.session, []).append(part)
    lines = ledger.lines(practice=site.practice, until_utc=until, limit=None)
    found = []
    for line in reversed(lines):
        if line.machine == of.machine and line.begun_utc >= since:
            found.append(walked(line.session, events(line.session), plan_of(line.session)))
        else:
            # How it left the machine is asked only of the sessions that are read whole.
            found.append(Walked(_short(line, seen.get(line.session, ())), Standing.DRYING, ()))
    return found


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
