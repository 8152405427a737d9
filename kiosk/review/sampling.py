"""When each head was sampled, by sessions that took samples and by results that were entered."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Iterator, Mapping
from dataclasses import dataclass, replace
from datetime import date

from kiosk.procedure.site import Site
from kiosk.review.intervals import next_sample
from kiosk.review.record import Brief, Ended
from kiosk.review.results import Entered
from kiosk.review.schedule import Kept
from kiosk.trade.code_dates import day_of, site_zone


@dataclass(frozen=True, slots=True, kw_only=True)
class Sampled:
    """A day on which a head was sampled, and by what that is known."""

    day: date
    session: str = ""
    """The session in which the sample was taken; empty where none is recorded."""
    entered: bool = False
    """True when a result of that day's sample was entered."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Sampling:
    """When one head of a machine must be sampled next, and when it last was."""

    barrel: str
    kept: Kept
    last: Sampled | None


def samplings(
    site: Site,
    heads: Mapping[str, tuple[str, ...]],
    procedures: Collection[str],
    sessions: Iterable[Brief],
    entered: Iterable[Entered],
    now_utc: float,
) -> Iterator[Sampling]:
    """Yield every head of every machine; `heads` names them, machine by machine.

    A complete session of one of the `procedures` counts for all heads of its machine, on the day on
    which it began by the site's clock; a result counts for its own head, on the day of its sample.
    """
    zone = site_zone(site.time_zone)
    found: dict[tuple[str, str], dict[date, Sampled]] = {}
    for one in sessions:
        counts = one.ended is Ended.COMPLETE and one.practice == site.practice
        if counts and one.procedure in procedures:
            for head in heads.get(one.machine, ()):
                day = day_of(one.begun_utc, zone)
                found.setdefault((one.machine, head), {})[day] = Sampled(
                    day=day, session=one.session
                )
    for result in entered:
        of = result.of
        days = found.setdefault((of.machine, of.barrel), {})
        days[of.day] = replace(days.get(of.day, Sampled(day=of.day)), entered=True)
    for machine, names in heads.items():
        for head in names:
            days = found.get((machine, head), {})
            last = days[max(days)] if days else None
            kept = next_sample(site, machine, head, days, now_utc)
            yield Sampling(barrel=head, kept=kept, last=last)


def soonest(found: Iterable[Sampling]) -> tuple[Sampling, ...]:
    """Return of each machine the sample that is wanted first, for all its heads at one go."""
    first: dict[str, Sampling] = {}
    for one in found:
        due = one.kept.due
        before = first.setdefault(due.machine, one)
        if due.until_utc < before.kept.due.until_utc:
            first[due.machine] = one
    return tuple(first.values())
