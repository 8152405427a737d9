"""What is due next on each machine, and by when: what the board tells a crew."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from datetime import timedelta
from itertools import chain
from typing import Final

from kiosk.engine.events import Event, SessionAborted, SessionCompleted, SessionStarted
from kiosk.journal.queries import Queries
from kiosk.journal.shop_facts import ResultEntered, ResultStruck
from kiosk.procedure.load import Library
from kiosk.procedure.review_rules import Schedule
from kiosk.procedure.site import Site
from kiosk.review.ledger_rows import Short
from kiosk.review.record import Ended
from kiosk.review.results import Entered, heads_of, results
from kiosk.review.sampling import Sampling, samplings
from kiosk.review.schedule import Kept, Stand, daily, kept
from kiosk.trade.code_dates import day_of, site_zone

_RECENT: Final = 48
"""Sessions of a machine that may count for daily work: those of eight days, at six a day."""
_HALF_A_YEAR: Final = 1100
"""Sessions of a machine among which those that took samples are looked for: as many a day."""
_RESULTS_S: Final = 250 * 86_400
"""Seconds in which the results of half a year's samples are entered, with two months to spare."""
_DAYS: Final = 8
"""Days before and after today whose work is looked at: a week's holiday, and a day."""
_OPEN: Final = (Stand.NOT_YET, Stand.DUE, Stand.MISSED, Stand.NOT_FINISHED)
_LATE: Final = (Stand.MISSED, Stand.NOT_FINISHED)


@dataclass(frozen=True, slots=True)
class Dated:
    """Something due on a machine, with its time."""

    kept: Kept
    procedures: tuple[str, ...]
    """Ids of the procedures that fulfil it."""
    never: bool = False
    """True for a sample of a head of which none is known in the last half year."""

    @property
    def overdue(self) -> bool:
        """True when its time is over."""
        return self.kept.stand in _LATE


@dataclass(frozen=True, slots=True)
class Today:
    """What the journal says at one moment, asked again as time passes."""

    site: Site
    library: Library
    schedule: Schedule
    sessions: tuple[Short, ...]
    entered: tuple[Entered, ...]

    def due(self, now_utc: float) -> dict[str, tuple[Dated, ...]]:
        """Return what is open on each machine, the soonest first: of each daily work the one whose
        turn it is, and a sample once it is time. Raises BadTime.
        """
        found = [*self._daily(now_utc), *self._samples(now_utc)]
        found.sort(key=lambda one: one.kept.due.until_utc)
        return {
            machine.id: tuple(one for one in found if one.kept.due.machine == machine.id)
            for machine in self.site.machines
        }

    def _daily(self, now_utc: float) -> Iterator[Dated]:
        day = day_of(now_utc, site_zone(self.site.time_zone))
        first, last = day - timedelta(days=_DAYS), day + timedelta(days=_DAYS)
        dues = daily(self.site, self.library, self.schedule, first, last)
        known = {one.machine: one.begun_utc for one in sorted(self.sessions, key=_begun)[::-1]}
        works: dict[tuple[str, str], list[Kept]] = {}
        for one in kept(dues, self.sessions, now_utc, practice=self.site.practice):
            # Nothing was due before the machine's first session.
            if one.stand not in _LATE or one.due.until_utc >= known.get(one.due.machine, now_utc):
                works.setdefault((one.due.machine, one.due.duty), []).append(one)
        for work in works.values():
            turn = _turn(work, now_utc)
            if turn is not None:
                yield Dated(turn, turn.due.procedures)

    def _samples(self, now_utc: float) -> Iterator[Dated]:
        """Yield of each machine the sample that is wanted soonest, once it is time for it."""
        heads = heads_of(self.site, self.library)
        named = self.schedule.samples
        soonest: dict[str, Sampling] = {}
        for one in samplings(self.site, heads, named, self.sessions, self.entered, now_utc):
            due = one.kept.due
            if one.kept.stand is Stand.NOT_YET:
                continue
            before = soonest.get(due.machine)
            if before is None or due.until_utc < before.kept.due.until_utc:
                soonest[due.machine] = one
        for one in soonest.values():
            mine = replace(one.kept, due=replace(one.kept.due, procedures=named))
            yield Dated(mine, named, never=one.last is None)


def today(
    site: Site, library: Library, schedule: Schedule, journal: Queries, now_utc: float
) -> Today:
    """Ask the journal. Raises codec.UnknownEvent when it cannot be read."""
    practice, named = site.practice, schedule.samples
    sessions: dict[str, Short] = {}
    for machine in site.machines:
        found = chain(
            journal.recent(machine.id, practice=practice, most=_RECENT),
            journal.recent(machine.id, practice=practice, most=_HALF_A_YEAR, procedures=named),
        )
        sessions |= {session: _short(session, begun, last) for session, begun, last in found}
    since = journal.row_at(now_utc - _RESULTS_S)
    told = journal.numbered_shop_events(ResultEntered, ResultStruck, since=since)
    entered = results([event for _, event in told], practice=practice)
    return Today(site, library, schedule, tuple(sessions.values()), entered)


def _begun(one: Short) -> float:
    return one.begun_utc


def _short(session: str, begun: Event, last: Event) -> Short:
    fact = begun.fact
    if not isinstance(fact, SessionStarted):
        raise TypeError(f"the session {session} begins with {type(fact).__name__}")
    match last.fact:
        case SessionCompleted():
            ended = Ended.COMPLETE
        case SessionAborted(out_of_service=out):
            ended = Ended.OUT_OF_SERVICE if out else Ended.EARLY
        case _:
            ended = Ended.OPEN
    return Short(
        session, fact.procedure, fact.machine, fact.practice, begun.at.utc, last.at.utc, ended,
        spoken=False,
    )  # fmt: skip


def _turn(work: Sequence[Kept], now_utc: float) -> Kept | None:
    """Return the one of a daily work whose turn it is: the last that may be begun by now, or the
    next where that one is done."""
    begun = [one for one in work if one.due.claim_utc <= now_utc]
    if begun and begun[-1].stand in _OPEN:
        return begun[-1]
    return _first(one for one in work if one.due.claim_utc > now_utc)


def _first(found: Iterable[Kept]) -> Kept | None:
    return next(iter(found), None)
