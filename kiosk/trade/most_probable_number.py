"""Positive tubes of any dilution design to the most probable number, with limits and rarity."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from decimal import Decimal
from math import comb, exp, expm1, fsum, log, log1p

from kiosk.trade.keyed import Keyed
from kiosk.trade.rounding import Amount, Qualifier, significant

METHOD = "likelihood ratio (Ridout 1994), 95 %; one-sided when all tubes agree"
"""How the limits are found. BAM's own table uses another method: never compare the two."""

CHI_SQUARE = 3.841458820694124
"""95 % point of chi-square with one degree of freedom (CALC)."""

ONE_SIDED = 0.05
"""What is left outside a one-sided limit. READ, the R package MPN by FDA authors."""

IMPROBABLE = 1e-4
"""Rarity index below which a result is highly improbable. READ, manual of the R package MPN."""

_CLOSE = 1e-13
_MOST_TURNS = 200


_SAYS = {
    "bad-amount": "{amount} g in a tube: write the grams of sample, above 0",
    "bad-tubes": "{tubes} tubes: write how many tubes got this amount, 1 or more",
    "bad-positive": "{positive} of {tubes} tubes positive: write 0 to {tubes}",
    "no-tubes": "no tubes: give at least one dilution",
    "one-tube": "one tube alone gives no number: give at least two tubes",
}


class NotADesign(Keyed, ValueError):
    """Tubes cannot be as they are written; the message says what to change."""

    says = _SAYS


@dataclass(frozen=True, slots=True)
class Tubes:
    """The tubes of one dilution."""

    amount: Decimal
    """Grams (or mL) of sample in each tube."""
    tubes: int
    positive: int

    def __post_init__(self) -> None:
        if not (self.amount.is_finite() and self.amount > 0):
            raise NotADesign("bad-amount", amount=self.amount)
        if self.tubes < 1:
            raise NotADesign("bad-tubes", tubes=self.tubes)
        if not 0 <= self.positive <= self.tubes:
            raise NotADesign("bad-positive", positive=self.positive, tubes=self.tubes)


@dataclass(frozen=True, slots=True, kw_only=True)
class MostProbableNumber:
    """A most probable number per gram or mL, as the amounts were given."""

    reported: Amount
    """Two significant digits; less-than and more-than as BAM's tables write them."""
    value: float
    """Before rounding; 0 when all tubes are negative, infinity when all are positive."""
    low: float
    high: float
    method: str
    rarity: float
    """Likelihood of these tubes over that of the likeliest tubes at the same density, 0 to 1."""
    improbable: bool
    """Whether the rarity index lies below IMPROBABLE: suspect an error, test again."""
    english: str


def most_probable_number(design: Sequence[Tubes]) -> MostProbableNumber:
    """Return the density at which these tubes are most likely.

    Solves sum(x z / (1 - exp(-d z))) = sum(n z) for the density d, where x of n tubes with z grams
    are positive. READ, the R package MPN by FDA authors. All negative is less than the lowest
    number of an outcome with one positive tube, all positive more than the highest with one
    negative tube, as in BAM appendix 2. Raises NotADesign for no tubes.
    """
    rows = _rows(design)
    if not any(x for _, _, x in rows):
        value, low = 0.0, 0.0
        high = -log(ONE_SIDED) / fsum(n * z for z, n, _ in rows)
        edge = min(_density(_changed(rows, i, 1)) for i in range(len(rows)))
        reported = Amount(Qualifier.LESS_THAN, _two_digits(edge))
    elif all(x == n for _, n, x in rows):
        value, high = float("inf"), float("inf")
        low = _one_sided_low(rows)
        edge = max(_density(_changed(rows, i, -1)) for i in range(len(rows)))
        reported = Amount(Qualifier.MORE_THAN, _two_digits(edge))
    else:
        value = _density(rows)
        low, high = _limits(rows, value)
        reported = Amount(Qualifier.EXACT, _two_digits(value))
    rarity = _rarity(rows, value)
    improbable = rarity < IMPROBABLE
    return MostProbableNumber(
        reported=reported, value=value, low=low, high=high, method=METHOD, rarity=rarity,
        improbable=improbable, english=_english(reported, low, high, improbable),
    )  # fmt: skip


_Rows = list[tuple[float, int, int]]


def _rows(design: Sequence[Tubes]) -> _Rows:
    if not design:
        raise NotADesign("no-tubes")
    if sum(one.tubes for one in design) < 2:
        raise NotADesign("one-tube")
    return [(float(one.amount), one.tubes, one.positive) for one in design]


def _changed(rows: _Rows, at: int, by: int) -> _Rows:
    return [(z, n, x + by if i == at else x) for i, (z, n, x) in enumerate(rows)]


def _two_digits(value: float) -> Decimal:
    return significant(Decimal(repr(value)))


def _density(rows: _Rows) -> float:
    """Solve the likelihood equation; the root lies between two bounds known in closed form.

    They follow from 1/y - 1/2 < 1/(exp(y) - 1) < 1/y for y > 0.
    """
    positive = fsum(x for _, _, x in rows)
    negative_grams = fsum((n - x) * z for z, n, x in rows)
    positive_grams = fsum(x * z for z, _, x in rows)

    def score(log_density: float) -> float:
        density = exp(log_density)
        found = fsum(x * z / expm1(density * z) for z, _, x in rows if density * z < 700)
        return found / negative_grams - 1

    low = positive / (negative_grams + positive_grams / 2)
    return exp(_root(score, log(low), log(positive / negative_grams)))


def _log_likelihood(rows: _Rows, density: float) -> float:
    """Return the log of the likelihood without its binomial coefficients."""
    return fsum(
        (x * _log_positive(density * z) if x else 0.0) - (n - x) * density * z for z, n, x in rows
    )


def _log_positive(expected: float) -> float:
    """Return the log of the chance that a tube with `expected` organisms is positive."""
    return log(-expm1(-expected)) if expected < 1 else log1p(-exp(-expected))


def _limits(rows: _Rows, value: float) -> tuple[float, float]:
    best = _log_likelihood(rows, value)

    def beyond(log_density: float) -> float:
        return 2 * (best - _log_likelihood(rows, exp(log_density))) - CHI_SQUARE

    ends = []
    for step in (-1.0, 1.0):
        near, far = log(value), log(value) + step
        while beyond(far) < 0:
            near, far = far, far + step
        ends.append(exp(_root(beyond, near, far)))
    return ends[0], ends[1]


def _one_sided_low(rows: _Rows) -> float:
    def beyond(log_density: float) -> float:
        density = exp(log_density)
        return fsum(n * _log_positive(density * z) for z, n, _ in rows) - log(ONE_SIDED)

    high = -log(min(z for z, _, _ in rows))
    while beyond(high) < 0:
        high += 1
    low = high
    while beyond(low) > 0:
        low -= 1
    return exp(_root(beyond, low, high))


def _root(f: Callable[[float], float], one: float, other: float) -> float:
    """Find where `f` crosses zero between two points of opposite sign (Illinois method)."""
    f_one, f_other = f(one), f(other)
    for _ in range(_MOST_TURNS):
        if f_one == f_other or abs(one - other) < _CLOSE:
            break
        new = (one * f_other - other * f_one) / (f_other - f_one)
        f_new = f(new)
        if abs(f_new) < _CLOSE:
            return new
        if f_new * f_other < 0:
            one, f_one = other, f_other
        else:
            f_one /= 2
        other, f_other = new, f_new
    return other


def _rarity(rows: _Rows, density: float) -> float:
    """Return the rarity index: Blodgett 2002, as in the R package MPN. READ there."""
    if density == 0 or density == float("inf"):
        return 1.0
    total = 0.0
    for z, n, x in rows:
        log_yes, log_no = _log_positive(density * z), -density * z
        likeliest = min(n, int(-expm1(-density * z) * (n + 1)))
        total += log(comb(n, x)) - log(comb(n, likeliest)) + (x - likeliest) * (log_yes - log_no)
    return min(1.0, exp(total))


def _english(reported: Amount, low: float, high: float, improbable: bool) -> str:
    limits = f"95 % limits {_short(low)} to {_short(high)}"
    said = f"{reported} MPN; {limits}, by {METHOD}."
    if improbable:
        said += " These tubes are highly improbable: suspect an error and test again."
    return said


def _short(value: float) -> str:
    return f"{_two_digits(value):,f}" if value != float("inf") else "no upper limit"
