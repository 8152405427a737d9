"""Uncertainty of counts against ISO/TS 19036:2006/A1:2009, and a Poisson interval elsewhere."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.measurement_uncertainty import (
    NoUncertainty,
    expanded_uncertainty,
    uncertainty,
)
from kiosk.trade.plate_count import Plate, count_plates

HUNDREDTH = Decimal("0.01")


@pytest.mark.parametrize(
    ("reproducibility", "colonies", "read", "calc"),
    [
        ("0.15", 110, "0.31", "0.3112"),
        ("0.25", 31, "0.52", "0.5238"),
        ("0.11", 11, "0.34", "0.3420"),
    ],
)
def test_expanded_uncertainty(reproducibility, colonies, read, calc):
    """U = 2 x sqrt(sR² + 0.18861/sum(C)). READ cld.bz/HCtPmxw p. 112-114; four digits CALC."""
    found = expanded_uncertainty(Decimal(reproducibility), colonies)
    assert str(round(found, 2)) == read
    assert str(round(found, 4)) == calc


def test_the_interval_in_colony_forming_units():
    """The interval is symmetric in log10: 11,000 times and over 10^0.3112 (CALC)."""
    found = uncertainty(count_plates([Plate(HUNDREDTH, 110)]), Decimal("0.15"))
    assert (round(found.low), round(found.high)) == (5_372, 22_522)
    assert round(found.low * found.high) == 11_000**2


@pytest.mark.parametrize("colonies", [100, 250, 537])
def test_without_laboratory_scatter_it_is_the_poisson_interval(colonies):
    """With sR = 0, against the score interval of statsmodels, within 1 %."""
    rates = pytest.importorskip("statsmodels.stats.rates", reason="statsmodels is not installed")
    low, high = rates.confint_poisson(colonies, 1, method="score", alpha=0.0455)
    factor = float(10 ** expanded_uncertainty(Decimal(0), colonies))
    assert colonies / factor == pytest.approx(low, rel=0.01)
    assert colonies * factor == pytest.approx(high, rel=0.01)


def test_a_bound_has_no_uncertainty():
    with pytest.raises(NoUncertainty, match="no colony was counted"):
        uncertainty(count_plates([Plate(HUNDREDTH, 18)]), Decimal("0.15"))
    with pytest.raises(NoUncertainty, match="0 or more"):
        expanded_uncertainty(Decimal("-0.1"), 30)
