"""Whether every part of the mix was hot for long enough, and when dispensing locks."""

from __future__ import annotations

import math
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from itertools import pairwise

from kiosk.trade.growth import LN10, Explanation
from kiosk.trade.temperature_log import (
    NoVerdict,
    Printed,
    Reading,
    by_time,
    celsius,
    check_gap,
    check_instants,
)

DAY = 86400.0
HOT = Printed(Decimal(150))
"""7 Pa. Code 39.54: every part of the product, for 30 min each day. READ pacodeandbulletin.gov."""
HOT_SECONDS = 1800.0
STRIP_DAYS = 14
"""7 Pa. Code 39.54: taken apart, cleaned and sanitized at least this often. READ."""


@dataclass(frozen=True, slots=True)
class Hold:
    """The longest time for which every measuring point was hot at once."""

    longest: float
    """Seconds."""
    needed: float
    """Seconds."""
    done_at: float | None
    """Seconds since the epoch at which the hold was first long enough; None when it never was."""
    worst_point: str
    """The point that was hot for the shortest unbroken time."""

    @property
    def held(self) -> bool:
        """True when every part was hot for long enough."""
        return self.done_at is not None


def hold(
    log: Mapping[str, Iterable[Reading]],
    longest_gap: float,
    limit: Printed = HOT,
    needed: float = HOT_SECONDS,
) -> Hold:
    """Judge a heat cycle from the readings of every measuring point.

    A point is hot between two readings when both ends are on the limit or above and no more than
    `longest_gap` seconds apart; of several readings at one instant the coldest counts. A gap or a
    cold reading at any point breaks the hold for all. Readings are sorted. Name every point that
    must be hot: one without readings raises NoVerdict.
    """
    check_gap(longest_gap)
    if not log:
        raise NoVerdict("no-points")
    if not 0 <= needed < math.inf:
        raise NoVerdict("bad-time", seconds=needed)
    hot = {point: _hot_spans(point, log[point], limit, longest_gap) for point in sorted(log)}
    worst = min(hot, key=lambda point: max((b - a for a, b in hot[point]), default=-1.0))
    together = [(-math.inf, math.inf)]
    for spans in hot.values():
        shared = [(max(a, c), min(b, d)) for a, b in together for c, d in spans]
        together = [(a, b) for a, b in shared if a <= b]
    enough = [a + needed for a, b in together if b - a >= needed]
    longest = max((b - a for a, b in together), default=0.0)
    return Hold(longest, needed, min(enough, default=None), worst)


class Lapse(Enum):
    """Why dispensing is locked."""

    NO_HEAT = "no heat cycle is on record"
    HEAT_FAILED = "the last heat cycle failed"
    HEAT_OVERDUE = "the last heat cycle is more than a day old"
    NO_STRIP = "no full strip is on record"
    STRIP_OVERDUE = "the last full strip is more than 14 days old"


@dataclass(frozen=True, slots=True)
class Cycle:
    """One heat cycle: when it ended, in seconds since the epoch, and whether it held."""

    ended_at: float
    held: bool


@dataclass(frozen=True, slots=True)
class Dispensing:
    """Whether a heat-treated machine may dispense."""

    lapses: tuple[Lapse, ...]
    days_since_strip: float | None
    """Days of 24 hours."""
    locks_at: float | None
    """When it locks if nothing more is done, in seconds since the epoch; None when locked."""

    @property
    def allowed(self) -> bool:
        """True when no lapse locks it."""
        return not self.lapses


def dispensing(cycles: Iterable[Cycle], stripped_at: float | None, now: float) -> Dispensing:
    """Judge by the last heat cycle and the last full strip; instants in seconds since the epoch.

    7 Pa. Code 39.54. READ pacodeandbulletin.gov. "Daily" is read as 24 hours from end to end, and
    14 days as 14 times 24 hours. Of cycles that end at one instant a failed one counts. A record
    later than `now` raises NoVerdict.
    """
    known = list(cycles)
    check_instants(now, stripped_at, *(one.ended_at for one in known))
    for at in (stripped_at, *(one.ended_at for one in known)):
        if at is not None and at > now:
            raise NoVerdict("before-start", now=now, start=at)
    lapses = []
    dues = []
    if not known:
        lapses.append(Lapse.NO_HEAT)
    else:
        last = max(one.ended_at for one in known)
        if not all(one.held for one in known if one.ended_at == last):
            lapses.append(Lapse.HEAT_FAILED)
        elif now - last > DAY:
            lapses.append(Lapse.HEAT_OVERDUE)
        dues.append(last + DAY)
    if stripped_at is None:
        lapses.append(Lapse.NO_STRIP)
    else:
        if now - stripped_at > STRIP_DAYS * DAY:
            lapses.append(Lapse.STRIP_OVERDUE)
        dues.append(stripped_at + STRIP_DAYS * DAY)
    days = None if stripped_at is None else (now - stripped_at) / DAY
    return Dispensing(tuple(lapses), days, None if lapses else min(dues))


@dataclass(frozen=True, slots=True)
class Pair:
    """A temperature and a time that a rule lists together."""

    limit: Printed
    seconds: Decimal
    source: str
    """With its tag."""


def _pairs(source: str, *rows: tuple[int, int | None, str]) -> tuple[Pair, ...]:
    return tuple(
        Pair(Printed(Decimal(f), None if c is None else Decimal(c)), Decimal(seconds), source)
        for f, c, seconds in rows
    )


MIX_PAIRS = _pairs(
    "25 TAC 217.46(p); MCL 288.697; 1 NYCRR 2.44. READ",
    (155, 69, "1800"), (175, 80, "25"), (180, 83, "15"),
)  # fmt: skip
USDA_MIX_PAIRS = _pairs(
    "7 CFR 58.635. READ law.lawstack.com", (155, None, "1800"), (175, None, "25")
)
CONNECTICUT_PAIRS = _pairs(
    "Connecticut 21a-58-13, beyond the others. READ",
    (160, None, "900"), (165, None, "600"), (170, None, "300"), (200, None, "3"), (210, None, "0"),
)  # fmt: skip
MILK_PAIRS = _pairs(
    "MCL 288.697; SDCL 40-32-2. READ",
    (145, None, "1800"), (161, None, "15"), (191, None, "1"), (194, None, "0.5"),
    (201, None, "0.1"), (204, None, "0.05"), (212, None, "0.01"),
)  # fmt: skip


def milk_pairs(fat_percent: Decimal, sweetened: bool) -> tuple[Pair, ...]:
    """Return the pairs for milk; 5 °F (3 °C) hotter from 10 % fat on, or when sweetened.

    MCL 288.697; SDCL 40-32-2. READ.
    """
    if not 0 <= fat_percent <= 100:
        raise NoVerdict("bad-fat", percent=fat_percent)
    if fat_percent < 10 and not sweetened:
        return MILK_PAIRS
    return tuple(
        Pair(
            Printed(
                one.limit.fahrenheit + 5,
                None if one.limit.celsius is None else one.limit.celsius + 3,
            ),
            one.seconds,
            f"{one.source}; raised for fat or sugar",
        )
        for one in MILK_PAIRS
    )


def met_pair(
    log: Mapping[str, Iterable[Reading]], longest_gap: float, pairs: Sequence[Pair]
) -> Pair | None:
    """Return the first listed pair that every point held, None when none was.

    Only listed pairs count: the legal pairs lie on no one line, so no time is legal in between.
    A pair with 0 s needs one instant at which every point is hot.
    """
    kept = {point: tuple(readings) for point, readings in log.items()}
    for pair in pairs:
        if hold(kept, longest_gap, pair.limit, float(pair.seconds)).held:
            return pair
    return None


@dataclass(frozen=True, slots=True)
class Resistance:
    """How heat kills a germ: time for a tenfold fall, and the °C that change it tenfold."""

    name: str
    d: float
    """Seconds at the reference."""
    reference: float
    """°C."""
    z: float
    """°C."""
    source: str


SCOTT_A = Resistance(
    "L. monocytogenes Scott A in ice cream mix", 0.5, (175 - 32) * 5 / 9, 7.0,
    "Bradshaw 1987; D and z READ, reference temperature 79.4 °C (175 °F) MEM",
)  # fmt: skip


def tenfold_time(germ: Resistance, at_celsius: float) -> Explanation:
    """Return the seconds at a temperature in °C for a tenfold fall: D = Dref 10^((Tref - T)/z)."""
    value = germ.d / lethal_rate(at_celsius, germ.reference, germ.z)
    return Explanation(value, "s", germ.name, germ.source)


def lethal_rate(at_celsius: float, reference: float, z: float) -> float:
    """Return 10^((T - Tref) / z), all in °C: minutes at the reference that a minute is worth."""
    if not 1 <= z <= 50 or not -50 <= reference <= 150:
        raise NoVerdict("bad-z", z=z, reference=reference)
    if not -50 <= at_celsius <= 150:
        raise NoVerdict("absurd", temperature=f"{at_celsius} °C")
    return float(10 ** ((at_celsius - reference) / z))


def lethality(
    readings: Iterable[Reading], reference: float, z: float, longest_gap: float
) -> Explanation:
    """Return the minutes at the reference (°C) that a log at one point is worth.

    F = integral of `lethal_rate`, exact along straight lines between readings; of several at one
    instant the coldest counts. Take the point with the least. Raises NoVerdict across a gap.
    """
    check_gap(longest_gap)
    coldest: dict[float, float] = {}
    for one in by_time(readings):
        coldest[one.at] = min(coldest.get(one.at, math.inf), celsius(one.temperature))
    total = 0.0
    for (begin, first), (end, last) in pairwise(coldest.items()):
        if end - begin > longest_gap:
            raise NoVerdict("gap", seconds=end - begin, gap=longest_gap)
        low, high = lethal_rate(first, reference, z), lethal_rate(last, reference, z)
        steep = (last - first) * LN10 / z
        mean = (high - low) / steep if abs(steep) > 1e-6 else (low + high) / 2
        total += mean * (end - begin) / 60
    return Explanation(total, "min", f"lethality, z {z:g} °C, from {reference:g} °C", "CALC")


def apparent_z(one: Pair, other: Pair) -> Explanation:
    """Return the °F for a tenfold change of time that two pairs would mean.

    It differs from pair to pair, which is why nothing is read off between them.
    """
    if one.seconds <= 0 or other.seconds <= 0 or one.seconds == other.seconds:
        raise NoVerdict("bad-pairs")
    apart = float(other.limit.fahrenheit - one.limit.fahrenheit)
    value = apart / math.log10(one.seconds / other.seconds)
    return Explanation(value, "°F", "slope between two listed pairs", "CALC")


def _hot_spans(
    point: str, readings: Iterable[Reading], limit: Printed, longest_gap: float
) -> list[tuple[float, float]]:
    hot_at: dict[float, bool] = {}
    for one in readings:
        hot_at[one.at] = hot_at.get(one.at, True) and limit.at_least(one.temperature)
    if not hot_at:
        raise NoVerdict("empty-point", point=point)
    spans: list[tuple[float, float]] = []
    before: float | None = None
    for at in sorted(hot_at):
        if hot_at[at]:
            if before is not None and at - before <= longest_gap:
                spans[-1] = (spans[-1][0], at)
            else:
                spans.append((at, at))
            before = at
        else:
            before = None
    return spans
