"""Where laboratory results are heading: told before the limit is passed."""

from __future__ import annotations

import math
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

import numpy as np
from scipy import stats

from kiosk.trade.rounding import Amount, Qualifier

LEAST = 8
"""Fewest results for a trend, and the baseline of the chart: a year at four samples in six months,
our choice. So short a baseline raises the false alarms; the benchmark prints them."""

WEIGHT = 0.2
"""EWMA weight of the newest result. 0.2 to 0.3 in the Engineering Statistics Handbook, MEM."""

WIDTH = 3.0
"""Control limit in standard deviations of the EWMA. READ, copy of the same handbook."""

SIGNIFICANT = 0.05
"""One-sided chance below which a rise is called one. Common practice."""

DETECTED = 3
"""Fewest different counted values that a normal curve is fitted to; our choice."""


class Warned(StrEnum):
    """What the trend says."""

    TOO_FEW = "too few results"
    STEADY = "steady"
    SHIFT = "shift"
    """The moving average has passed its control limit."""
    RISE = "rise"
    """The results rise with time."""


@dataclass(frozen=True, slots=True)
class Point:
    """One result on a day; `day` is a day number, as date.toordinal() gives."""

    day: int
    amount: Amount


@dataclass(frozen=True, slots=True, kw_only=True)
class Fit:
    """A normal curve through log10 of the results, bounds taken as bounds."""

    mean: float
    deviation: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Trend:
    """What a barrel's results show. All values are log10 of CFU per gram or mL."""

    warned: tuple[Warned, ...]
    early: bool
    """Whether something rises while no result is known to be over the limit yet."""
    baseline: Fit | None
    average: tuple[float, ...]
    """The moving average after each result past the baseline."""
    control_limits: tuple[float, ...]
    """The upper control limit at each of the same results."""
    tau: float | None
    """Kendall's tau of result against day; None when it cannot be told."""
    chance: float | None
    """Chance of so high a tau without a rise (one-sided)."""
    english: str


def fit(amounts: Sequence[Amount]) -> Fit | None:
    """Fit a normal curve to log10 of results, less-than and more-than as censored values.

    Returns None when fewer than DETECTED different values were counted, for then the bounds alone
    would decide. Results without a number are left out; counts below 1 are taken as 1.
    """
    known = [one for one in amounts if one.value is not None]
    counted = [_log10(one) for one in known if one.qualifier not in _BOUNDS]
    if len(set(counted)) < DETECTED:
        return None
    data = stats.CensoredData(
        uncensored=counted,
        left=[_log10(one) for one in known if one.qualifier is Qualifier.LESS_THAN],
        right=[_log10(one) for one in known if one.qualifier is Qualifier.MORE_THAN],
    )
    with np.errstate(all="ignore"):
        mean, deviation = stats.norm.fit(data)
    if not (math.isfinite(mean) and math.isfinite(deviation) and deviation > 0):
        return None
    return Fit(mean=float(mean), deviation=float(deviation))


def moving_average(values: Sequence[float], start: float, weight: float = WEIGHT) -> list[float]:
    """Return the exponentially weighted moving average after each value, from a start value."""
    average, found = start, []
    for one in values:
        average = weight * one + (1 - weight) * average
        found.append(average)
    return found


def control_limit(base: Fit, place: int, weight: float = WEIGHT, width: float = WIDTH) -> float:
    """Return the upper control limit of the moving average after `place` values, from 1.

    The variance is s² x w / (2 - w) x (1 - (1 - w)^(2 place)), for independent normal values.
    """
    share = weight / (2 - weight) * (1 - (1 - weight) ** (2 * place))
    return base.mean + width * base.deviation * math.sqrt(share)


def rise(points: Sequence[Point]) -> tuple[float, float] | None:
    """Return Kendall's tau of result against day and its one-sided chance; None when untold.

    Everything at or below the highest less-than bound is tied there, everything at or above the
    lowest more-than bound is tied there, for no order among them is known.
    """
    known = [one for one in points if one.amount.value is not None]
    values = [_log10(one.amount) for one in known]
    floors = [v for v, one in zip(values, known, strict=True) if _is(one, Qualifier.LESS_THAN)]
    tops = [v for v, one in zip(values, known, strict=True) if _is(one, Qualifier.MORE_THAN)]
    floor, top = max(floors, default=-math.inf), min(tops, default=math.inf)
    ranked = [floor if v <= floor else min(v, top) for v in values]
    days = [one.day for one in known]
    if len(set(ranked)) < 2 or len(set(days)) < 2:
        return None
    found = stats.kendalltau(days, ranked, alternative="greater")
    return float(found.statistic), float(found.pvalue)


def trend(points: Sequence[Point], limit: Decimal) -> Trend:
    """Judge the results of one barrel and one analysis; `limit` in CFU per gram or mL.

    The first LEAST results are the baseline of the chart; the moving average runs over the later
    ones. The rise is looked for over all results. With fewer than LEAST results with a number,
    nothing is judged.
    """
    known = sorted((one for one in points if one.amount.value is not None), key=lambda one: one.day)
    passed = any(one.amount.exceeds(limit) for one in known)
    if len(known) < LEAST:
        said = f"Too few results for a trend: {len(known)}, and {LEAST} are needed."
        return Trend(
            warned=(Warned.TOO_FEW,), early=False, baseline=None, average=(), control_limits=(),
            tau=None, chance=None, english=said,
        )  # fmt: skip
    base = fit([one.amount for one in known[:LEAST]])
    average: list[float] = []
    limits: list[float] = []
    if base is not None:
        later = [_expected(one.amount, base) for one in known[LEAST:]]
        average = moving_average(later, base.mean)
        limits = [control_limit(base, place) for place in range(1, len(later) + 1)]
    risen = rise(known)
    warned = []
    if average and average[-1] > limits[-1]:
        warned.append(Warned.SHIFT)
    if risen is not None and risen[1] < SIGNIFICANT:
        warned.append(Warned.RISE)
    early = bool(warned) and not passed
    return Trend(
        warned=tuple(warned) or (Warned.STEADY,), early=early, baseline=base,
        average=tuple(average), control_limits=tuple(limits),
        tau=risen[0] if risen else None, chance=risen[1] if risen else None,
        english=_english(warned, base, risen, early, limit),
    )  # fmt: skip


_BOUNDS = frozenset({Qualifier.LESS_THAN, Qualifier.MORE_THAN})


def _is(point: Point, qualifier: Qualifier) -> bool:
    return point.amount.qualifier is qualifier


def _log10(amount: Amount) -> float:
    return math.log10(max(float(amount.value or 0), 1.0))


def _expected(amount: Amount, base: Fit) -> float:
    """Return log10 of a result; of a bound, the baseline's mean beyond that bound."""
    value = _log10(amount)
    if amount.qualifier not in _BOUNDS:
        return value
    z = (value - base.mean) / base.deviation
    log_density = stats.norm.logpdf(z)
    if amount.qualifier is Qualifier.LESS_THAN:
        beyond = -math.exp(log_density - stats.norm.logcdf(z))
    else:
        beyond = math.exp(log_density - stats.norm.logsf(z))
    return float(base.mean + base.deviation * beyond)


def _english(
    warned: Sequence[Warned],
    base: Fit | None,
    risen: tuple[float, float] | None,
    early: bool,
    limit: Decimal,
) -> str:
    said = []
    if Warned.SHIFT in warned:
        said.append("The moving average has passed its control limit.")
    if Warned.RISE in warned and risen is not None:
        said.append(f"The results rise with time (Kendall's tau {risen[0]:.2f}).")
    if not warned:
        said.append("Steady.")
    if early:
        said.append(f"No result is over {limit:,f} yet: look at the cleaning of this barrel now.")
    if base is None:
        said.append("Too few counted values for a control chart.")
    return " ".join(said)
