"""L. monocytogenes: rates at 5 °C against FDA/FSIS 2003, Appendix 8.

READ: printed in the stored table; MEM: recalled from memory (least temperature -1.18 °C, mean rate
0.257); CALC: computed from the formula.
"""

from __future__ import annotations

from decimal import Decimal

import numpy as np
import pytest
from scipy.integrate import quad

from kiosk.trade.growth import (
    E_COLI,
    LISTERIA,
    PSEUDOMONAS,
    SALMONELLA,
    Explanation,
    NoGrowth,
    growth_over,
    rate,
    rate_at_5_celsius,
)
from kiosk.trade.temperature_log import NoVerdict, Reading
from kiosk.trade.units import Quantity


def log(*rows: tuple[float, str], unit: str = "°C") -> list[Reading]:
    return [Reading(hours * 3600, Quantity(Decimal(value), unit)) for hours, value in rows]


@pytest.mark.parametrize(
    ("increase", "days", "celsius", "published", "computed"),
    [
        (2.1, 28, 4, 0.107, 0.1068),
        (5.4, 21, 8, 0.116, 0.1165),
        (2.0, 21, 4, 0.136, 0.1356),
        (4, 650 / 24, 5, 0.148, 0.1477),
        (4, 7, 10, 0.175, 0.1746),
        (4.5, 15, 10, 0.092, 0.0917),
    ],
)
def test_rates_converted_to_5_celsius(increase, days, celsius, published, computed):
    """Published column READ, computed column CALC; 0.116 is 0.11654 cut, not rounded."""
    found = rate_at_5_celsius(increase, days, celsius)
    assert round(found.value, 4) == computed
    assert found.value == pytest.approx(published, abs=0.0006)
    assert found.unit == "log10/day"


def test_a_row_that_the_formula_does_not_reproduce():
    """1 log in 15 days at 4 °C: published 0.100 READ, the formula gives 0.095 CALC."""
    found = rate_at_5_celsius(1, 15, 4).value
    assert round(found, 3) == 0.095
    assert round(0.100 - found, 3) == 0.005


@pytest.mark.parametrize(
    ("celsius", "log10_per_day", "digits"),
    [(0, 0.009, 3), (4, 0.181, 3), (5, 0.257, 3), (7.2, 0.473, 3), (10, 0.841, 3),
     (20, 3.02, 2), (21.1, 3.34, 2)],
)  # fmt: skip
def test_rates_in_pasteurized_milk(celsius, log10_per_day, digits):
    """CALC from the mean 0.257 log10/day at 5 °C (MEM); at 7.2 °C it is 0.47255."""
    assert round(rate(LISTERIA, celsius).value, digits) == log10_per_day


def test_seven_days_at_41_fahrenheit_equal_3_8_days_at_45():
    """CALC; it matches the older pair of 7 and 4 days (READ 410 IAC 7-24-191)."""
    at_41, at_45 = rate(LISTERIA, 5).value, rate(LISTERIA, (45 - 32) * 5 / 9).value
    assert round(7 * at_41 / at_45, 1) == 3.8


def test_four_hours_at_70_fahrenheit():
    """0.56 log10, CALC."""
    found = growth_over(log((0, "70"), (4, "70"), unit="°F"), LISTERIA, 4 * 3600)
    assert round(found.value, 2) == 0.56
    assert found.unit == "log10"


def test_frozen_product_grows_nothing():
    """No growth in frozen product: MEM. The square must not turn upwards below its foot."""
    assert rate(LISTERIA, -18).value == 0
    assert rate(LISTERIA, -1.18).value == 0
    assert growth_over(log((0, "-18"), (1, "-10")), LISTERIA, 3600).value == 0


@pytest.mark.parametrize(
    ("model", "b", "least"), [(E_COLI, 0.023, 1.17), (SALMONELLA, 0.020, -0.571)]
)
@pytest.mark.parametrize("celsius", [5, 7.2, 10, 20])
def test_e_coli_and_salmonella(model, b, least, celsius):
    """(b (T - least))^2 / 2.303 log10/h, from 5 °C. READ foodsafetylab/Pinto-2023-Milk."""
    assert model.per_hour(celsius) == pytest.approx((b * (celsius - least)) ** 2 / 2.303)
    with pytest.raises(NoGrowth, match="holds from 5"):
        model.per_hour(4.9)


@pytest.mark.parametrize("model", [LISTERIA, PSEUDOMONAS], ids=["square root", "full"])
@pytest.mark.parametrize("ends", [(2, 20), (20, 2), (5, 5), (-1, 12)])
def test_growth_over_a_ramp_against_quadrature(model, ends):
    """Reference: scipy.integrate.quad along the same straight line."""
    begin, end = ends
    found = growth_over(log((0, str(begin)), (6, str(end))), model, 6 * 3600)
    wanted, _ = quad(lambda hour: model.per_hour(np.interp(hour, [0, 6], ends)), 0, 6)
    assert found.value == pytest.approx(wanted, rel=1e-6)


def test_growth_over_a_ramp_out_of_the_cold_where_nothing_grows():
    found = growth_over(log((0, "-10"), (6, "10")), LISTERIA, 6 * 3600)
    wanted, _ = quad(lambda hour: LISTERIA.per_hour(-10 + hour * 20 / 6), 0, 6, points=[2.646])
    assert found.value == pytest.approx(wanted, rel=2e-3)


def test_of_simultaneous_readings_the_warmest_counts_in_any_order():
    both = log((0, "4"), (0, "9"), (1, "4"))
    assert growth_over(both, LISTERIA, 3600) == growth_over(both[::-1], LISTERIA, 3600)
    assert growth_over(both, LISTERIA, 3600).value > growth_over(both[::2], LISTERIA, 3600).value


def test_every_result_is_an_explanation_with_its_source():
    for found in (rate(LISTERIA, 5), rate_at_5_celsius(1, 1, 5)):
        assert isinstance(found, Explanation)
        assert "MEM" in found.source


@pytest.mark.parametrize("celsius", [25.1, 70, -41, float("nan")])
def test_no_rate_outside_the_range(celsius):
    with pytest.raises(NoGrowth) as caught:
        rate(LISTERIA, celsius)
    assert caught.value.key == "outside-range"
    assert caught.value.values["most"] == 25


@pytest.mark.parametrize(
    ("increase", "days", "celsius", "key"),
    [(-1, 1, 5, "negative"), (1, 0, 5, "not-positive"), (1, -3, 5, "not-positive"),
     (1, 1, -2, "no-growth-there"), (float("inf"), 1, 5, "not-finite")],
)  # fmt: skip
def test_impossible_observations_are_refused(increase, days, celsius, key):
    with pytest.raises(NoGrowth) as caught:
        rate_at_5_celsius(increase, days, celsius)
    assert caught.value.key == key


def test_no_sum_across_a_gap_over_an_empty_log_or_with_a_bad_gap():
    with pytest.raises(NoGrowth, match=r"nothing was read for 2\.0 h"):
        growth_over(log((0, "4"), (2, "4")), LISTERIA, 3600)
    with pytest.raises(NoVerdict, match="no reading"):
        growth_over([], LISTERIA, 3600)
    with pytest.raises(NoVerdict, match="longest gap"):
        growth_over(log((0, "4")), LISTERIA, 0)
