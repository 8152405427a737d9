"""How fast germs may grow in mix: published models, to explain a rule and never to replace it."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from itertools import pairwise
from statistics import linear_regression
from typing import Protocol

from kiosk.trade.keyed import Keyed
from kiosk.trade.temperature_log import Reading, by_time, celsius, check_gap

LN10 = math.log(10)
LOG10_2 = math.log10(2)
DAY_H = 24.0
_PANELS = 16

_SAYS = {
    "outside-range": "{model} holds from {least} to {most} °C, not at {celsius} °C; use no model",
    "not-finite": "{name} of {value} is no number; give a measured one",
    "negative": "{name} of {value} is less than nothing; give it as zero or more",
    "not-positive": "{name} of {value} must be more than nothing",
    "no-room": "the most germs, 10^{most}, must be more than at the start, 10^{start}",
    "absurd-count": "10^{value} germs cannot be counted; the exponent lies between -3 and 12",
    "no-growth-there": "{model} has no growth at {celsius} °C; convert only from a warmer test",
    "gap": "nothing was read for {hours:.1f} h; a sum across it says nothing, so leave it out",
    "too-few": "a rate needs counts at two times or more; count again later",
}


class NoGrowth(Keyed, ValueError):
    """A model gives no answer; the message says what to mend."""

    says = _SAYS


@dataclass(frozen=True, slots=True)
class Explanation:
    """A modelled number for people to learn from. No rule may pass or fail mix by it."""

    value: float
    unit: str
    model: str
    source: str
    """Where the parameters come from, with its tag READ, MEM or CALC."""


def _within(model: str, least: float, most: float, celsius: float) -> None:
    if not least <= celsius <= most:
        raise NoGrowth("outside-range", model=model, least=least, most=most, celsius=celsius)


def _check(name: str, value: float, least: float, *, open_below: bool = False) -> None:
    if not math.isfinite(value):
        raise NoGrowth("not-finite", name=name, value=value)
    if open_below and value <= least:
        raise NoGrowth("not-positive", name=name, value=value)
    if value < least:
        raise NoGrowth("negative", name=name, value=value)


def _check_count(exponent: float) -> None:
    if not -3 <= exponent <= 12:
        raise NoGrowth("absurd-count", value=exponent)


class Model(Protocol):
    """A growth rate that depends on temperature alone."""

    @property
    def name(self) -> str: ...
    @property
    def source(self) -> str: ...
    def per_hour(self, celsius: float) -> float:
        """Return log10 per hour. Raises NoGrowth outside the model's range."""
        ...


@dataclass(frozen=True, slots=True)
class SquareRoot:
    """A rate that grows with the square of the distance from the least temperature for growth.

    rate(T) = rate at reference x ((T - none_below) / (reference - none_below))^2, and nothing at
    or below `none_below`. Temperatures in °C, rates in log10 per hour.
    """

    name: str
    reference: float
    rate: float
    none_below: float
    least: float
    most: float
    """The range that may be asked for, in °C; `source` says whose range it is."""
    source: str

    def per_hour(self, celsius: float) -> float:
        """Return log10 per hour. Raises NoGrowth outside the model's range."""
        _within(self.name, self.least, self.most, celsius)
        return self.rate * self.share(celsius)

    def share(self, celsius: float) -> float:
        """Return the rate at a temperature as a share of the rate at the reference."""
        above = max(celsius - self.none_below, 0.0)
        return (above / (self.reference - self.none_below)) ** 2


@dataclass(frozen=True, slots=True)
class FullRatkowsky:
    """sqrt(k) = b (T - least)(1 - exp(c (T - most))), k per hour times `to_log10`. T in °C."""

    name: str
    b: float
    c: float
    least: float
    most: float
    to_log10: float
    source: str

    def k(self, celsius: float) -> float:
        """Return k per hour, before it is turned into log10. Raises NoGrowth outside the range."""
        _within(self.name, self.least, self.most, celsius)
        root = self.b * (celsius - self.least) * (1 - math.exp(self.c * (celsius - self.most)))
        return root * root

    def per_hour(self, celsius: float) -> float:
        """Return log10 per hour. Raises NoGrowth outside the model's range."""
        return self.k(celsius) * self.to_log10


# Our own ends of ranges where the source prints none: no colder than the coldest freezer barrel,
# no warmer than 25 °C, since a plain square root keeps rising past the true optimum.
_COLDEST, _WARMEST = -40.0, 25.0

LISTERIA = SquareRoot(
    "L. monocytogenes in pasteurized milk", 5.0, 0.257 / DAY_H, -1.18, _COLDEST, _WARMEST,
    "FDA/FSIS 2003, Appendix 8; least temperature and mean rate MEM; range ours",
)  # fmt: skip
ST_1 = SquareRoot(
    "post-pasteurization isolate ST 1", 6.0, 0.094282 / LN10, -4.15, -1.0, 15.0,
    "READ chenhaoq87/MC-2020; range that of its refrigerator temperatures, READ",
)  # fmt: skip
PSEUDOMONAS = FullRatkowsky(
    "Pseudomonas in milk", 0.03772, 0.1719, -6.1, 41.2, LOG10_2,
    "READ foodsafetylab/Pinto-2023-Milk",
)  # fmt: skip
E_COLI = SquareRoot(
    "E. coli in milk", 5.0, (0.023 * (5.0 - 1.17)) ** 2 / 2.303, 1.17, 5.0, _WARMEST,
    "READ foodsafetylab/Pinto-2023-Milk, used from 5 °C; warm end ours",
)  # fmt: skip
SALMONELLA = SquareRoot(
    "Salmonella in milk", 5.0, (0.020 * (5.0 + 0.571)) ** 2 / 2.303, -0.571, 5.0, _WARMEST,
    "READ foodsafetylab/Pinto-2023-Milk, used from 5 °C; warm end ours",
)  # fmt: skip


def rate(model: Model, celsius: float) -> Explanation:
    """Return a model's rate at a temperature, in log10/day."""
    return Explanation(model.per_hour(celsius) * DAY_H, "log10/day", model.name, model.source)


def rate_at_5_celsius(
    log10_increase: float, days: float, celsius: float, model: SquareRoot = LISTERIA
) -> Explanation:
    """Convert an increase seen at one temperature to log10/day at 5 °C.

    EGR5 = rate x ((5 - T0) / (T - T0))^2. FDA/FSIS 2003, Appendix 8.
    """
    _check("increase", log10_increase, 0)
    _check("days", days, 0, open_below=True)
    _within(model.name, model.least, model.most, celsius)
    if model.share(celsius) == 0:
        raise NoGrowth("no-growth-there", model=model.name, celsius=celsius)
    value = log10_increase / days * model.share(5.0) / model.share(celsius)
    return Explanation(value, "log10/day", model.name, model.source)


def growth_over(readings: Iterable[Reading], model: Model, longest_gap: float) -> Explanation:
    """Return the log10 increase over a log of temperatures, taken as straight lines between them.

    No lag and no ceiling: more than would grow. Of several readings at one instant the warmest
    counts. Raises NoGrowth across a gap of more than `longest_gap` seconds.
    """
    check_gap(longest_gap)
    warmest: dict[float, float] = {}
    for one in by_time(readings):
        warmest[one.at] = max(warmest.get(one.at, -math.inf), celsius(one.temperature))
    for temperature in warmest.values():
        model.per_hour(temperature)
    total = 0.0
    for (begin, cold), (end, warm) in pairwise(warmest.items()):
        if end - begin > longest_gap:
            raise NoGrowth("gap", hours=(end - begin) / 3600)
        total += _simpson(model.per_hour, cold, warm) * (end - begin) / 3600
    return Explanation(total, "log10", model.name, model.source)


@dataclass(frozen=True, slots=True)
class Curve:
    """The parameters of a growth curve: lag, straight rise, ceiling."""

    lag: float
    """Hours."""
    mu: float
    """Greatest rate, natural log per hour."""
    start: float
    """log10 of the first number per mL or g."""
    most: float
    """log10 of the greatest number."""

    def __post_init__(self) -> None:
        _check("lag", self.lag, 0)
        _check("rate", self.mu, 0, open_below=True)
        _check_count(self.start)
        _check_count(self.most)
        if self.most <= self.start:
            raise NoGrowth("no-room", most=self.most, start=self.start)

    def at_temperature(self, celsius: float, model: SquareRoot) -> Curve:
        """Move a curve from the model's reference to a temperature in °C.

        The rate scales with the square, the lag with its inverse.
        """
        _within(model.name, model.least, model.most, celsius)
        share = model.share(celsius)
        if share == 0:
            raise NoGrowth("no-growth-there", model=model.name, celsius=celsius)
        return Curve(self.lag / share, self.mu * share, self.start, self.most)


ST_1_CURVE = Curve(20.447, 0.094282, 3.235, 7.349)
"""Isolate ST 1 at 6 °C, fitted with `gompertz`. READ chenhaoq87/MC-2020."""
_FORMS = "closed form READ chenhaoq87/MC-2020"


def buchanan(curve: Curve, hours: float) -> Explanation:
    """Return log10 of the number after `hours`: flat, straight, flat."""
    _check("time", hours, 0)
    risen = max(hours - curve.lag, 0.0) * curve.mu / LN10
    value = min(curve.start + risen, curve.most)
    return Explanation(value, "log10 CFU", "Buchanan three-phase", _FORMS)


def gompertz(curve: Curve, hours: float) -> Explanation:
    """Return log10 of the number after `hours` by the modified Gompertz curve."""
    _check("time", hours, 0)
    room = curve.most - curve.start
    inner = curve.mu * math.e * (curve.lag - hours) / (room * LN10) + 1
    # Past e^6 the outer exponential is nothing to the last digit.
    value = curve.start + room * math.exp(-math.exp(min(inner, 7.0)))
    return Explanation(value, "log10 CFU", "modified Gompertz", _FORMS)


def baranyi(curve: Curve, hours: float) -> Explanation:
    """Return log10 of the number after `hours` by the explicit Baranyi curve."""
    _check("time", hours, 0)
    # Both sides of the fraction divided by exp(mu t), so that long times do not overflow.
    gone = math.exp(-curve.mu * hours)
    # Past e^300 the curve stands at its start to the last digit.
    waited = math.exp(min(curve.mu * (curve.lag - hours), 300.0))
    above = 1 - gone + waited
    below = 1 - gone + waited * 10 ** (curve.most - curve.start)
    value = curve.most + math.log10(above / below)
    return Explanation(value, "log10 CFU", "Baranyi", _FORMS)


@dataclass(frozen=True, slots=True)
class Line:
    """A straight line through counts."""

    slope: Explanation
    start: Explanation


def line_through(hours: Sequence[float], log10_counts: Sequence[float]) -> Line:
    """Fit counts by least squares: log10 per hour, and log10 at hour 0."""
    if len(hours) != len(log10_counts) or len(set(hours)) < 2:
        raise NoGrowth("too-few")
    for hour, count in zip(hours, log10_counts, strict=True):
        _check("time", hour, 0)
        _check_count(count)
    slope, intercept = linear_regression(hours, log10_counts)
    named = ("least squares", "CALC from the counts given")
    return Line(Explanation(slope, "log10/h", *named), Explanation(intercept, "log10 CFU", *named))


def _simpson(rate_at: Callable[[float], float], begin: float, end: float) -> float:
    """Return the mean of a rate along a straight line from one temperature to another."""
    step = (end - begin) / _PANELS
    values = [rate_at(min(max(begin + i * step, min(begin, end)), max(begin, end)))
              for i in range(_PANELS + 1)]  # fmt: skip
    inner = 4 * math.fsum(values[1:-1:2]) + 2 * math.fsum(values[2:-1:2])
    return (values[0] + inner + values[-1]) / (3 * _PANELS)
