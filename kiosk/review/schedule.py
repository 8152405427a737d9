"""What is due when at a site, and what its sessions made of it."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from enum import StrEnum
from zoneinfo import ZoneInfo

from kiosk.procedure.load import Library
from kiosk.procedure.model import Procedure, Standing, Text
from kiosk.procedure.review_rules import Schedule, Window
from kiosk.procedure.site import Machine, Site
from kiosk.review.record import Brief, Ended
from kiosk.trade.code_dates import instants, site_zone


class Duty(StrEnum):
    """What sort of thing is due."""

    CLOSE = "close"
    OPEN = "open"
    INTERVAL = "interval"
    PART = "part"
    SAMPLE = "sample"


class Stand(StrEnum):
    """What has become of something due."""

    NOT_YET = "not yet due"
    DUE = "due"
    DONE = "done"
    EARLY = "done early"
    """Done so long before its time that it should be asked why."""
    LATE = "done late"
    NOT_FINISHED = "begun, not finished"
    MISSED = "missed"
    """Its time is over and nothing was begun for it, or nothing recorded."""
    OUT_OF_SERVICE = "out of service"
    """The machine had been taken out of service; nothing was due on it."""


class BadTime(ValueError):
    """A time of the site file is none; the message says what to mend."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Due:
    """One thing that is due on one machine. Times are POSIX seconds."""

    id: str
    """The same each time it is worked out: `2026-11-25/close/patio`."""
    duty: Duty
    machine: str
    title: Text
    """Empty for a close, an opening or a sample: the kiosk has words for those."""
    day: date
    """The site's business day, or the last day on which it is due."""
    claim_utc: float
    """A session begun from here on counts for it."""
    from_utc: float
    until_utc: float
    procedures: tuple[str, ...] = ()
    """Ids of the procedures that fulfil it."""
    source: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """Something due, and what became of it."""

    due: Due
    stand: Stand
    session: str = ""
    """Id of the session that counts for it; empty when there is none."""
    at_utc: float = 0.0
    """When it was done, or its session was last at work; 0 when there is none."""


def clock_time(text: str) -> time:
    """Return a time of the site file, as `21:30`. Raises BadTime."""
    try:
        return datetime.strptime(text, "%H:%M").time()  # noqa: DTZ007
    except ValueError as error:
        raise BadTime(f"'{text}' is no time of day; write it as 21:30 in the site file") from error


def opening_hours(site: Site, day: date) -> tuple[tuple[float, float], tuple[float, float]]:
    """Return when a business day opens and closes, each as its first and last reading.

    The two readings differ on an autumn night on which the clock shows the time twice. A time that
    a spring night skips is read as if the clocks had not yet gone forward. A shop that closes at or
    before its opening time closes on the next calendar day. Raises BadTime.
    """
    zone = site_zone(site.time_zone)
    opens, closes = clock_time(site.opens), clock_time(site.closes)
    closing_day = day if closes > opens else day + timedelta(days=1)
    return _readings(day, opens, zone), _readings(closing_day, closes, zone)


def _readings(day: date, at: time, zone: ZoneInfo) -> tuple[float, float]:
    local = datetime.combine(day, at)
    found = instants(local, zone)
    if not found:
        shown = local.replace(tzinfo=zone, fold=0).timestamp()
        return shown, shown
    return found[0], found[-1]


def daily(
    site: Site, library: Library, schedule: Schedule, first: date, last: date
) -> tuple[Due, ...]:
    """Return the openings and closes due on the business days from `first` through `last`.

    A machine kind's closes are the procedures that begin in service and leave it out of service;
    its openings are those that put it into service. On a closed day nothing is due. Raises BadTime.
    """
    found: list[Due] = []
    for machine in site.machines:
        mine = [p for p in library.procedures.values() if p.machine_kind == machine.kind]
        for n in range((last - first).days + 1):
            day = first + timedelta(days=n)
            if not site.closed(day):
                found += _of_day(site, schedule, machine, mine, day)
    return tuple(sorted(found, key=in_order))


def in_order(due: Due) -> tuple[float, str]:
    """Return what dues are sorted by."""
    return due.from_utc, due.id


def _of_day(
    site: Site, schedule: Schedule, machine: Machine, mine: Sequence[Procedure], day: date
) -> Iterator[Due]:
    opens, closes = opening_hours(site, day)
    for duty, window, (first, last) in (
        (Duty.OPEN, schedule.open, opens),
        (Duty.CLOSE, schedule.close, closes),
    ):
        does = _opens if duty is Duty.OPEN else _closes
        fulfil = tuple(sorted(one.id for one in mine if does(one)))
        if fulfil:
            yield _due(duty, machine, day, window, first, last, fulfil)


def _opens(one: Procedure) -> bool:
    return one.leaves is Standing.IN_SERVICE and Standing.IN_SERVICE not in one.begins_from


def _closes(one: Procedure) -> bool:
    return one.leaves is not Standing.IN_SERVICE and Standing.IN_SERVICE in one.begins_from


def _due(
    duty: Duty, machine: Machine, day: date, window: Window, first: float, last: float,
    fulfil: tuple[str, ...],
) -> Due:  # fmt: skip
    begins = first - window.before_min * 60
    return Due(
        id=f"{day}/{duty}/{machine.id}", duty=duty, machine=machine.id, title={}, day=day,
        claim_utc=begins - window.claim_min * 60, from_utc=begins,
        until_utc=last + window.after_min * 60, procedures=fulfil, source=window.source,
    )  # fmt: skip


def kept(
    dues: Iterable[Due], records: Iterable[Brief], now_utc: float, *, practice: bool
) -> tuple[Kept, ...]:
    """Match daily dues with sessions, by the moment at which each session began.

    A session counts for the last due of its machine and procedure whose claim had begun. `practice`
    says which sessions are looked at: those of an invented shop, or real ones.
    """
    by_machine: dict[str, list[Brief]] = {}
    for one in sorted(records, key=lambda one: (one.begun_utc, one.session)):
        if one.practice == practice:
            by_machine.setdefault(one.machine, []).append(one)
    walks = {machine: _Walks(mine) for machine, mine in by_machine.items()}
    found: list[Kept] = []
    groups: dict[tuple[str, tuple[str, ...]], list[Due]] = {}
    for due in dues:
        groups.setdefault((due.machine, due.procedures), []).append(due)
    for group in groups.values():
        group.sort(key=in_order)
        ends = [one.claim_utc for one in group[1:]] + [float("inf")]
        for due, end in zip(group, ends, strict=True):
            found.append(_kept(due, end, walks.get(due.machine, _Walks([])), now_utc))
    return tuple(sorted(found, key=lambda one: in_order(one.due)))


class _Walks:
    """The sessions of one machine, in the order in which they began."""

    def __init__(self, sessions: list[Brief]) -> None:
        self._sessions = sessions
        self._begun = [one.begun_utc for one in sessions]

    def begun(self, from_utc: float, until_utc: float) -> list[Brief]:
        """Return those begun from a moment on and before another."""
        first, end = bisect_left(self._begun, from_utc), bisect_left(self._begun, until_utc)
        return self._sessions[first:end]

    def last(self, until_utc: float) -> Brief | None:
        """Return the last that had begun at a moment; None when there was none."""
        count = bisect_right(self._begun, until_utc)
        return self._sessions[count - 1] if count else None


def _kept(due: Due, end: float, walks: _Walks, now_utc: float) -> Kept:
    claimed = [one for one in walks.begun(due.claim_utc, end) if one.procedure in due.procedures]
    done = next((one for one in claimed if one.ended is Ended.COMPLETE), None)
    if done is not None:
        stand = Stand.DONE
        if done.last_utc > due.until_utc:
            stand = Stand.LATE
        elif due.duty is Duty.OPEN and done.last_utc < due.from_utc:
            stand = Stand.EARLY
        return Kept(due=due, stand=stand, session=done.session, at_utc=done.last_utc)
    if now_utc < due.from_utc and not claimed:
        return Kept(due=due, stand=Stand.NOT_YET)
    last = claimed[-1] if claimed else None
    if _out_of_service(due, walks, now_utc):
        stand = Stand.OUT_OF_SERVICE
    elif now_utc <= due.until_utc:
        stand = Stand.DUE
    else:
        stand = Stand.MISSED if last is None else Stand.NOT_FINISHED
    at_utc = 0.0 if last is None else last.last_utc
    return Kept(due=due, stand=stand, session="" if last is None else last.session, at_utc=at_utc)


def _out_of_service(due: Due, walks: _Walks, now_utc: float) -> bool:
    """True when the machine's last session before the end of the due's time took it out."""
    before = min(due.until_utc, now_utc)
    last = walks.last(before)
    return last is not None and last.ended is Ended.OUT_OF_SERVICE and last.last_utc <= before
