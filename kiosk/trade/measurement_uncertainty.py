"""The measurement uncertainty of a plate count."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal

from kiosk.trade.plate_count import PlateCount

COVERAGE = 2
"""Coverage factor, for about 95 %. READ, ISO/TS 19036:2006/A1:2009."""

POISSON = Decimal("0.18861")
"""(log10 e)², the variance in log10 of one counted colony. READ, ISO/TS 19036:2006/A1:2009."""


class NoUncertainty(ValueError):
    """No uncertainty can be given; the message says why."""


@dataclass(frozen=True, slots=True)
class Uncertainty:
    """The expanded uncertainty of one count."""

    log10: Decimal
    """Half the width of the interval, in log10 units."""
    low: Decimal
    """Lower end, in CFU per gram or mL."""
    high: Decimal


def expanded_uncertainty(reproducibility: Decimal, colonies: int) -> Decimal:
    """Return U in log10 units: 2 x sqrt(sR² + 0.18861 / sum(C)).

    `reproducibility` is sR, the laboratory's standard deviation in log10 units; `colonies` is the
    sum of all colonies counted. Raises NoUncertainty. ISO/TS 19036:2006/A1:2009, READ.
    """
    if colonies < 1:
        raise NoUncertainty("no colony was counted: a bound has no measurement uncertainty")
    if not reproducibility >= 0:
        raise NoUncertainty("the laboratory's standard deviation in log10 must be 0 or more")
    return COVERAGE * (reproducibility**2 + POISSON / colonies).sqrt()


def uncertainty(count: PlateCount, reproducibility: Decimal) -> Uncertainty:
    """Return the uncertainty of a counted result. Raises NoUncertainty for a bound."""
    width = expanded_uncertainty(reproducibility, count.colonies)
    if count.value is None:
        raise NoUncertainty(f"'{count.reported}' has no number")
    factor = Decimal(10) ** width
    return Uncertainty(width, count.value / factor, count.value * factor)
