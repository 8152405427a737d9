"""What is due when at a site, and what its sessions made of it."""

from __future__ import annotations

from bisect import bisect_left, bisect_right
from collections import defaultdict
from collections.abc import Collection, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from enum import StrEnum
from functools import lru_cache
from typing import Final
from zoneinfo import ZoneInfo

from kiosk.procedure.load import Library
from kiosk.procedure.model import Procedure, Standing, Text
from kiosk.procedure.review_rules import Schedule
from kiosk.procedure.site import Machine, Site
from kiosk.review.record import Brief, Ended
from kiosk.trade.code_dates import instants, site_zone


class Duty(StrEnum):
    """What sort of thing is due."""

    CLOSE = "close"
    OPEN = "open"
    CHECK = "check"
    """A check while the machine serves, once on each business day."""
    INTERVAL = "interval"
    PART = "part"
    SAMPLE = "sample"


DAILY: Final = (Duty.OPEN, Duty.CHECK, Duty.CLOSE)
"""What is due on every business day."""

Hours = tuple[tuple[float, float], tuple[float, float]]
"""When a business day opens and closes, each as its first and last reading; POSIX seconds."""


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
    NOT_OPENED = "not opened"
    """Of a day check: the machine was not walked on that day, so that there was none to make."""


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
    """Empty for daily work and for a sample: the kiosk has words for those."""
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


_Claim = tuple[Due, Sequence[Brief]]
"""Something due, and the sessions that count for it."""

_EARLIEST = date(2001, 1, 1)
"""A day before this one is told by a clock with a flat battery; nothing is due on it."""


@lru_cache(maxsize=64)
def clock_time(text: str) -> time:
    """Return a time of the site file, as `21:30`. Raises BadTime."""
    try:
        return datetime.strptime(text, "%H:%M").time()  # noqa: DTZ007
    except ValueError as error:
        raise BadTime(f"'{text}' is no time of day; write it as 21:30 in the site file") from error


def opening_hours(site: Site, day: date) -> Hours:
    """Return when a business day opens and closes, each as its first and last reading.

    The two readings differ on an autumn night on which the clock shows the time twice. A time that
    a spring night skips is read as if the clocks had not yet gone forward. A shop that closes at or
    before its opening time closes on the next calendar day. Raises BadTime.
    """
    opens, closes = clock_time(site.opens), clock_time(site.closes)
    return _hours(opens, closes, site_zone(site.time_zone), day)


@lru_cache(maxsize=4096)
def _hours(opens: time, closes: time, zone: ZoneInfo, day: date) -> Hours:
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
    site: Site, library: Library, schedule: Schedule, first: date, last: date,
    duties: Collection[Duty] = DAILY,
) -> tuple[Due, ...]:  # fmt: skip
    """Return the daily work due on the business days from `first` through `last`.

    A machine kind's closes are the procedures that begin in service and leave it out of service;
    its openings are those that put it into service; its day checks are those that the schedule
    names. On a closed day nothing is due. Raises BadTime.
    """
    ways = [
        (machine, duty, fulfil)
        for machine in site.machines
        for duty in DAILY
        if duty in duties and (fulfil := _fulfil(duty, machine, library, schedule))
    ]
    found: list[Due] = []
    first = max(first, _EARLIEST)
    for n in range((last - first).days + 1):
        day = first + timedelta(days=n)
        if not site.closed(day):
            hours = opening_hours(site, day)
            found += [_due(*way, day, hours, schedule) for way in ways]
    return tuple(sorted(found, key=in_order))


def in_order(due: Due) -> tuple[float, str]:
    """Return what dues are sorted by."""
    return due.from_utc, due.id


def _fulfil(duty: Duty, machine: Machine, library: Library, schedule: Schedule) -> tuple[str, ...]:
    """Return the procedures that fulfil a duty on a machine."""
    mine = [one for one in library.procedures.values() if one.machine_kind == machine.kind]
    return tuple(sorted(one.id for one in mine if _does(duty, one, schedule)))


def _does(duty: Duty, one: Procedure, schedule: Schedule) -> bool:
    serves, served = one.leaves is Standing.IN_SERVICE, Standing.IN_SERVICE in one.begins_from
    match duty:
        case Duty.OPEN:
            return serves and not served
        case Duty.CLOSE:
            return served and not serves
        case _:
            return schedule.check is not None and one.id in schedule.check.procedures


def _due(
    machine: Machine, duty: Duty, fulfil: tuple[str, ...], day: date, hours: Hours,
    schedule: Schedule,
) -> Due:  # fmt: skip
    claim, begins, until, source = _window(duty, hours, schedule)
    return Due(
        id=f"{day}/{duty}/{machine.id}", duty=duty, machine=machine.id, title={}, day=day,
        claim_utc=claim, from_utc=begins, until_utc=until, procedures=fulfil, source=source,
    )  # fmt: skip


def _window(duty: Duty, hours: Hours, schedule: Schedule) -> tuple[float, float, float, str]:
    """Return from when a session counts, when its time begins and ends, and the source."""
    opens, closes = hours
    check = schedule.check
    if duty is Duty.CHECK and check is not None:
        begins = opens[0] + check.after_opening_min * 60
        until = max(begins, closes[1] - check.before_closing_min * 60)
        return begins - check.claim_min * 60, begins, until, check.source
    window, (first, last) = (
        (schedule.open, opens) if duty is Duty.OPEN else (schedule.close, closes)
    )
    begins = first - window.before_min * 60
    return begins - window.claim_min * 60, begins, last + window.after_min * 60, window.source


def kept(
    dues: Iterable[Due], records: Iterable[Brief], now_utc: float, *, practice: bool
) -> tuple[Kept, ...]:
    """Match daily dues with sessions, by the moment at which each session began.

    A session counts for the last due of its machine and procedure whose claim had begun. `practice`
    says which sessions are looked at: those of an invented shop, or real ones.

    A day check is missed only on a day on which the machine was walked, and never stood out of
    service while the check was due. So with a day's check the other work of that day must be among
    the `dues`.
    """
    by_machine: dict[str, list[Brief]] = {}
    for one in sorted(records, key=lambda one: (one.begun_utc, one.session)):
        if one.practice == practice:
            by_machine.setdefault(one.machine, []).append(one)
    walks = defaultdict(_Walks, {machine: _Walks(mine) for machine, mine in by_machine.items()})
    claims: list[_Claim] = []
    groups: dict[tuple[str, tuple[str, ...]], list[Due]] = {}
    for due in dues:
        groups.setdefault((due.machine, due.procedures), []).append(due)
    for group in groups.values():
        group.sort(key=in_order)
        ends = [one.claim_utc for one in group[1:]] + [float("inf")]
        for due, end in zip(group, ends, strict=True):
            begun = walks[due.machine].begun(due.claim_utc, end)
            claims.append((due, [one for one in begun if one.procedure in due.procedures]))
    walked = _walked(claims, walks)
    found = [
        _kept(due, claimed, walks[due.machine], now_utc, walked=(due.machine, due.day) in walked)
        for due, claimed in claims
    ]
    return tuple(sorted(found, key=lambda one: in_order(one.due)))


class _Walks:
    """The sessions of one machine, in the order in which they began."""

    def __init__(self, sessions: Sequence[Brief] = ()) -> None:
        self._sessions = sessions
        self._begun = [one.begun_utc for one in sessions]

    def begun(self, from_utc: float, until_utc: float) -> Sequence[Brief]:
        """Return those begun from a moment on and before another."""
        first, end = bisect_left(self._begun, from_utc), bisect_left(self._begun, until_utc)
        return self._sessions[first:end]

    def last(self, until_utc: float) -> Brief | None:
        """Return the last that had begun at a moment; None when there was none."""
        count = bisect_right(self._begun, until_utc)
        return self._sessions[count - 1] if count else None

    def out(self, from_utc: float, until_utc: float) -> bool:
        """True when the machine stood out of service at some moment between two."""
        first = max(0, bisect_right(self._begun, from_utc) - 1)
        return any(
            one.ended is Ended.OUT_OF_SERVICE and one.last_utc <= until_utc
            for one in self._sessions[first : bisect_right(self._begun, until_utc)]
        )


def _walked(claims: Sequence[_Claim], walks: Mapping[str, _Walks]) -> set[tuple[str, date]]:
    """Return the machines that were walked, each with the day.

    A session of daily work counts for the day whose work it is, any other for the day within whose
    time for a check it was begun.
    """
    daily_work: dict[str, set[str]] = {}
    for due, _ in claims:
        daily_work.setdefault(due.machine, set()).update(due.procedures)
    found = {(due.machine, due.day) for due, claimed in claims if claimed}
    found |= {
        (due.machine, due.day)
        for due, _ in claims
        if due.duty is Duty.CHECK
        for one in walks[due.machine].begun(due.claim_utc, due.until_utc)
        if one.procedure not in daily_work[due.machine]
    }
    return found


def _kept(
    due: Due, claimed: Sequence[Brief], walks: _Walks, now_utc: float, *, walked: bool
) -> Kept:
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
    elif due.duty is Duty.CHECK and walks.out(due.from_utc, due.until_utc):
        stand = Stand.OUT_OF_SERVICE
    elif last is not None:
        stand = Stand.NOT_FINISHED
    else:
        stand = Stand.MISSED if walked or due.duty is not Duty.CHECK else Stand.NOT_OPENED
    at_utc = 0.0 if last is None else last.last_utc
    return Kept(due=due, stand=stand, session="" if last is None else last.session, at_utc=at_utc)


def _out_of_service(due: Due, walks: _Walks, now_utc: float) -> bool:
    """True when the machine's last session before the end of the due's time took it out."""
    before = min(due.until_utc, now_utc)
    last = walks.last(before)
    return last is not None and last.ended is Ended.OUT_OF_SERVICE and last.last_utc <= before
