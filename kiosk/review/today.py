"""What is due next on each machine, and by when: what the board tells a crew."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Mapping, Sequence
from dataclasses import dataclass, field, replace
from datetime import timedelta
from itertools import chain
from typing import Final

from kiosk.engine.events import Event, SessionAborted, SessionCompleted, SessionStarted
from kiosk.journal.queries import Queries
from kiosk.journal.shop_facts import ResultEntered, ResultStruck
from kiosk.procedure.load import Library
from kiosk.procedure.review_rules import Interval, Schedule
from kiosk.procedure.site import Machine, Site
from kiosk.review.intervals import next_due
from kiosk.review.ledger_reading import PlanOf
from kiosk.review.ledger_rows import Short
from kiosk.review.record import Ended
from kiosk.review.replaced import last_replaced
from kiosk.review.results import Entered, heads_of, results
from kiosk.review.sampling import samplings, soonest
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
    done: Mapping[tuple[str, str], float] = field(default_factory=dict)
    """When each interval was last fulfilled on a machine: id and machine to POSIX seconds."""
    first: Mapping[str, float] = field(default_factory=dict)
    """When the first session of each machine began, POSIX seconds."""

    def due(self, now_utc: float) -> dict[str, tuple[Dated, ...]]:
        """Return what is open on each machine, the soonest first: of each daily work the one whose
        turn it is, and a sample, a part or the like once it is time. Raises BadTime.
        """
        found = [*self._daily(now_utc), *self._samples(now_utc), *self._spaced(now_utc)]
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
        found = samplings(self.site, heads, named, self.sessions, self.entered, now_utc)
        for one in soonest(found):
            if one.kept.stand is Stand.NOT_YET:
                continue
            mine = replace(one.kept, due=replace(one.kept.due, procedures=named))
            yield Dated(mine, named, never=one.last is None)

    def _spaced(self, now_utc: float) -> Iterator[Dated]:
        """Yield what is due every so many days, once it is time for it."""
        zone = site_zone(self.site.time_zone)
        for one, machine in _intervals(self.site, self.schedule):
            done = self.done.get((one.id, machine.id))
            first = self.first.get(machine.id)
            kept = next_due(one, machine, done, first, zone, now_utc)
            if kept.stand is not Stand.NOT_YET:
                yield Dated(kept, () if one.procedure is None else (one.procedure,))


def today(
    site: Site, library: Library, schedule: Schedule, journal: Queries, plan_of: PlanOf,
    now_utc: float,
) -> Today:  # fmt: skip
    """Ask the journal; `plan_of` tells which steps of a session looked at which part.

    Raises codec.UnknownEvent when the journal cannot be read.
    """
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
    begun = {
        one.id: journal.first_begun(one.id, practice=practice) for one in site.machines
    }  # fmt: skip
    return Today(
        site, library, schedule, tuple(sessions.values()), entered,
        done=_done(site, schedule, journal, plan_of),
        first={machine: event.at.utc for machine, event in begun.items() if event is not None},
    )  # fmt: skip


def _intervals(site: Site, schedule: Schedule) -> Iterator[tuple[Interval, Machine]]:
    for one in schedule.intervals:
        for machine in site.machines:
            if machine.kind == one.machine_kind:
                yield one, machine


def _done(
    site: Site, schedule: Schedule, journal: Queries, plan_of: PlanOf
) -> dict[tuple[str, str], float]:
    """Return when each interval was last fulfilled on a machine; those that never were left out."""
    every = list(_intervals(site, schedule))
    parts = {(machine.id, one.part) for one, machine in every if one.part is not None}
    zone, practice = site_zone(site.time_zone), site.practice
    replaced = last_replaced(journal, plan_of, parts, zone, practice=practice)
    found: dict[tuple[str, str], float] = {}
    for one, machine in every:
        if one.part is not None and (machine.id, one.part) in replaced:
            found[one.id, machine.id] = replaced[machine.id, one.part]
        elif one.procedure is not None:
            walked = journal.walked(machine.id, one.procedure, practice=practice, most=1)
            for session in walked:
                found[one.id, machine.id] = journal.events(session)[-1].at.utc
    return found


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
