"""What is due every so many days: parts, strips, laboratory samples."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from kiosk.engine.commands import Finding
from kiosk.journal.shop_facts import PartReplaced, ShopEvent
from kiosk.procedure.model import Text
from kiosk.procedure.review_rules import Interval
from kiosk.procedure.site import Machine, Site
from kiosk.review.record import Ended, SessionRecord
from kiosk.review.schedule import Due, Duty, Kept, Stand, in_order
from kiosk.trade.code_dates import day_of, site_zone, start_of
from kiosk.trade.standing import IN_DAYS, SAMPLES

SAMPLE_SOURCE = (
    f"at least {SAMPLES} samples in six months ({IN_DAYS} days): Tex. Admin. Code 25-217.45 (READ)"
)
SAMPLE_EVERY_DAYS = IN_DAYS // SAMPLES
"""Days between samples that are spread evenly."""
SAMPLE_NOTICE_DAYS = 14
"""Days before its last day at which a sample is shown. Common practice, no source."""
_EARLIEST, _LATEST = date(2001, 1, 1), date(2199, 1, 1)
"""Days beyond these were written by a clock that was wrong, as in 1970 by one with a flat battery:
what is counted from them is due since the one, or not before the other."""


def spaced(
    site: Site,
    intervals: Iterable[Interval],
    records: Sequence[SessionRecord],
    now_utc: float,
    shop: Iterable[ShopEvent] = (),
) -> tuple[Kept, ...]:
    """Return the next due of each interval on each machine of its kind.

    Days are counted from the last time that it was done; where it never was, from the machine's
    first session; where there is none, from today. `shop` has the parts that were replaced while no
    session ran: each at the beginning of its day.
    """
    replaced = [event.fact for event in shop if isinstance(event.fact, PartReplaced)]
    zone, found = site_zone(site.time_zone), list[Kept]()
    for one in intervals:
        for machine in site.machines:
            if machine.kind == one.machine_kind:
                mine = [
                    r for r in records if r.machine == machine.id and r.practice == site.practice
                ]
                done_at = [at for record in mine for at in _done(one, record)]
                done_at += [
                    start_of(date.fromisoformat(fact.day), zone)
                    for fact in replaced
                    if (fact.machine, fact.part, fact.practice)
                    == (machine.id, one.part, site.practice)
                ]
                done = max(done_at, default=None)
                first = min((record.begun_utc for record in mine), default=None)
                found.append(next_due(one, machine, done, first, zone, now_utc))
    return tuple(sorted(found, key=lambda kept: in_order(kept.due)))


def next_due(
    one: Interval,
    machine: Machine,
    done_utc: float | None,
    first_utc: float | None,
    zone: ZoneInfo,
    now_utc: float,
) -> Kept:
    """Return the next due of an interval on one machine.

    `done_utc` is when it was last done, `first_utc` when the machine's first session began; None
    where there is no such time.
    """
    known = (at for at in (done_utc, first_utc) if at is not None)
    since = min(day_of(next(known, now_utc), zone), _LATEST)
    duty = Duty.PART if one.part is not None else Duty.INTERVAL
    return _by_day(
        f"{one.id}", duty, machine.id, one.title, since + timedelta(days=one.days),
        one.notice_days, one.source, zone, now_utc,
    )  # fmt: skip


def _done(one: Interval, record: SessionRecord) -> Iterator[float]:
    if one.procedure is not None:
        if record.procedure == one.procedure and record.ended is Ended.COMPLETE:
            yield record.last_utc
    else:
        for seen in record.parts:
            if seen.part == one.part and seen.finding == Finding.REPLACED:
                yield seen.at_utc


def _by_day(
    name: str, duty: Duty, machine: str, title: Text, last: date, notice_days: int, source: str,
    zone: ZoneInfo, now_utc: float,
) -> Kept:  # fmt: skip
    last = min(max(last, _EARLIEST), _LATEST)
    begins = start_of(last - timedelta(days=notice_days), zone)
    until = start_of(last + timedelta(days=1), zone)
    due = Due(
        id=f"{last}/{name}/{machine}", duty=duty, machine=machine, title=title, day=last,
        claim_utc=begins, from_utc=begins, until_utc=until, source=source,
    )  # fmt: skip
    stand = Stand.NOT_YET if now_utc < begins else Stand.DUE if now_utc < until else Stand.MISSED
    return Kept(due=due, stand=stand)


def next_sample(
    site: Site, machine: str, barrel: str, sampled: Iterable[date], now_utc: float
) -> Kept:
    """Return when a barrel must be sampled next, from the days on which it was.

    It is the evenly spaced day after the last sample, or the day on which the fourth-last one
    leaves the six months, whichever comes first. Without any sample it is due today.
    """
    zone = site_zone(site.time_zone)
    days = sorted(set(sampled))
    last = day_of(now_utc, zone)
    if days:
        last = days[-1] + timedelta(days=SAMPLE_EVERY_DAYS)
        if len(days) >= SAMPLES:
            last = min(last, days[-SAMPLES] + timedelta(days=IN_DAYS))
    name = f"sample-{barrel}" if barrel else "sample"
    return _by_day(
        name, Duty.SAMPLE, machine, {}, last, SAMPLE_NOTICE_DAYS, SAMPLE_SOURCE, zone, now_utc
    )
