"""Wearing parts: when each was replaced and by whom, how old it is, and when it is next due."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from itertools import pairwise
from zoneinfo import ZoneInfo

from kiosk.engine.commands import Finding
from kiosk.procedure.load import Library
from kiosk.procedure.model import Text
from kiosk.procedure.review_rules import Interval
from kiosk.procedure.site import Machine, Site
from kiosk.review.ledger_lines import PartLine
from kiosk.review.lifetimes import Lives, Spread, until
from kiosk.trade.code_dates import day_of, site_zone

DAY_S = 86_400.0


@dataclass(frozen=True, slots=True, kw_only=True)
class Wear:
    """One wearing part of one machine. Times are POSIX seconds."""

    machine: str
    kind: str
    """The machine's kind."""
    part: str
    name: Text
    known_since_utc: float
    """When it was first looked at or replaced."""
    replaced: tuple[PartLine, ...]
    """Each replacement, oldest first; what was entered twice for one day is one."""
    worn: PartLine | None
    """Since when it is worn with none in stock; None when it is not, or was replaced since."""
    seen: PartLine
    """When it was last looked at or replaced."""
    age_days: float
    """Since its last replacement; since it was first looked at where there was none."""
    due: date | None
    """Its last day by the schedule; None where the schedule has none for it."""
    overdue: bool

    def lives(self) -> Lives:
        """Return how long this part lasted each time, in days; the present life is not over."""
        changes = [one.at_utc for one in self.replaced]
        ended = [(end - begin) / DAY_S for begin, end in pairwise(changes)]
        before = [(at - self.known_since_utc) / DAY_S for at in changes[:1]]
        at_least = [days for days in (*before, self.age_days) if days > 0]
        return Lives(tuple(ended), tuple(at_least))


def wear(
    lines: Iterable[PartLine],
    site: Site,
    library: Library,
    intervals: Sequence[Interval],
    now_utc: float,
) -> tuple[Wear, ...]:
    """Return the wearing parts that were ever looked at, machine by machine as in the site file.

    `lines` has all that was seen of parts up to now, in any order.
    """
    zone = site_zone(site.time_zone)
    seen: dict[tuple[str, str], list[PartLine]] = {}
    for line in sorted(lines, key=lambda line: (line.at_utc, line.seq)):
        if line.finding:
            seen.setdefault((line.machine, line.part), []).append(line)
    found = []
    for machine in site.machines:
        kind = library.kinds.get(machine.kind)
        for part, made in {} if kind is None else kind.parts.items():
            if made.wears and (machine.id, part) in seen:
                mine = seen[machine.id, part]
                interval = _interval(intervals, machine, part)
                found.append(_wear(machine, part, made.name, mine, interval, zone, now_utc))
    return tuple(found)


def lives(wears: Iterable[Wear]) -> Lives:
    """Return the lives of a part over some machines, which are taken to wear it alike."""
    each = [one.lives() for one in wears]
    return Lives(
        tuple(days for one in each for days in one.ended),
        tuple(days for one in each for days in one.at_least),
    )


def same_part(wears: Iterable[Wear], kind: str, part: str) -> tuple[Wear, ...]:
    """Return a part on all machines of a kind."""
    return tuple(one for one in wears if (one.kind, one.part) == (kind, part))


def next_replacements(wears: Sequence[Wear]) -> Mapping[tuple[str, str], Spread | None]:
    """Foretell the next replacement by machine and part; None where too little is known.

    It goes by what workers did so far, not by the schedule.
    """
    return {
        (one.machine, one.part): until(
            lives(same_part(wears, one.kind, one.part)), [one.age_days], 1
        )
        for one in wears
    }


def _wear(
    machine: Machine, part: str, name: Text, mine: Sequence[PartLine], interval: Interval | None,
    zone: ZoneInfo, now_utc: float,
) -> Wear:  # fmt: skip
    replaced = _replacements(mine, zone)
    since = replaced[-1].at_utc if replaced else mine[0].at_utc
    due = None if interval is None else day_of(since, zone) + timedelta(days=interval.days)
    return Wear(
        machine=machine.id, kind=machine.kind, part=part, name=name,
        known_since_utc=mine[0].at_utc, replaced=replaced, worn=_worn(mine), seen=mine[-1],
        age_days=max(0.0, now_utc - since) / DAY_S, due=due,
        overdue=due is not None and due < day_of(now_utc, zone),
    )  # fmt: skip


def _replacements(mine: Sequence[PartLine], zone: ZoneInfo) -> tuple[PartLine, ...]:
    by_day = {day_of(line.at_utc, zone): line for line in mine if line.finding == Finding.REPLACED}
    return tuple(by_day.values())


def _worn(mine: Sequence[PartLine]) -> PartLine | None:
    since: PartLine | None = None
    for line in mine:
        if line.finding == Finding.REPLACED:
            since = None
        elif line.finding == Finding.NONE_LEFT and since is None:
            since = line
    return since


def _interval(intervals: Iterable[Interval], machine: Machine, part: str) -> Interval | None:
    found = [x for x in intervals if x.machine_kind == machine.kind and x.part == part]
    return min(found, key=lambda one: one.days, default=None)
