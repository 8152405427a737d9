"""Heat and L. monocytogenes Scott A: Bradshaw 1987, and the lethality integral.

READ: D 0.5 s and z 7.0 °C in ice cream mix (abstract); MEM: the reference, 79.4 °C; CALC: the rest.
"""

from __future__ import annotations

from decimal import Decimal

import numpy as np
import pytest
from scipy.integrate import quad

from kiosk.trade.growth import Explanation
from kiosk.trade.heat_treatment import SCOTT_A, lethal_rate, lethality, tenfold_time
from kiosk.trade.temperature_log import NoVerdict, Reading, celsius
from kiosk.trade.units import Quantity

REFERENCE, Z = (155 - 32) * 5 / 9, 7.0
"""155 °F, 68.333 °C."""
RAMP = [Reading(minute * 60.0, Quantity(Decimal(60 + minute), "°C")) for minute in range(21)]


def fahrenheit(value: int) -> float:
    return celsius(Quantity(Decimal(value), "°F"))


def test_the_published_resistance():
    assert (SCOTT_A.d, SCOTT_A.z, round(SCOTT_A.reference, 2)) == (0.5, 7.0, 79.44)
    assert tenfold_time(SCOTT_A, SCOTT_A.reference).value == 0.5


@pytest.mark.parametrize(
    ("degrees", "seconds", "tenfold", "digits", "logs"),
    [(155, 1800, 19.3, 1, 93), (175, 25, 0.5, 1, 50), (180, 15, 0.201, 3, 75)],
)
def test_the_legal_pairs_for_mix(degrees, seconds, tenfold, digits, logs):
    """155 °F/30 min: D 19.3 s, 93 log; 175 °F/25 s: 50 log; 180 °F/15 s: D 0.201 s, 75 log."""
    found = tenfold_time(SCOTT_A, fahrenheit(degrees))
    assert isinstance(found, Explanation)
    assert round(found.value, digits) == tenfold
    assert round(seconds / found.value) == logs


@pytest.mark.parametrize("readings", [RAMP, RAMP[::-1], [RAMP[0], RAMP[-1]]])
def test_a_ramp_from_60_to_80_celsius_in_20_minutes(readings):
    """Closed form 140.91 min."""
    found = lethality(readings, REFERENCE, Z, 3600)
    assert round(found.value, 2) == 140.91
    assert found.unit == "min"


def test_the_same_ramp_by_trapezoids():
    """142.18 min with 1-minute steps, 0.9 % too much: why the integral is taken exactly."""
    rates = [lethal_rate(60 + minute, REFERENCE, Z) for minute in range(21)]
    trapezoid = float(np.trapezoid(rates))
    assert round(trapezoid, 2) == 142.18
    assert round(trapezoid / lethality(RAMP, REFERENCE, Z, 60).value - 1, 3) == 0.009


def test_a_cycle_against_quadrature():
    """Reference: scipy.integrate.quad over the same straight lines, up, level and down."""
    minutes, degrees = [0, 10, 25, 40], [50, 72, 72, 45]
    readings = [
        Reading(minute * 60.0, Quantity(Decimal(degree), "°C"))
        for minute, degree in zip(minutes, degrees, strict=True)
    ]
    wanted, _ = quad(
        lambda minute: lethal_rate(np.interp(minute, minutes, degrees), REFERENCE, Z),
        0, 40, points=[10, 25],
    )  # fmt: skip
    assert lethality(readings, REFERENCE, Z, 3600).value == pytest.approx(wanted, rel=1e-9)


def test_of_simultaneous_readings_the_coldest_counts():
    cold = Reading(600.0, Quantity(Decimal(20), "°C"))
    less = lethality([*RAMP, cold], REFERENCE, Z, 60)
    assert less == lethality([cold, *RAMP], REFERENCE, Z, 60)
    assert less.value < lethality(RAMP, REFERENCE, Z, 60).value


def test_no_sum_across_a_gap_and_no_senseless_parameters():
    with pytest.raises(NoVerdict, match="a part of the log without that gap"):
        lethality(RAMP[::2], REFERENCE, Z, 60)
    with pytest.raises(NoVerdict, match="no reading"):
        lethality([], REFERENCE, Z, 60)
    for z in (0, -7, 0.1, float("nan")):
        with pytest.raises(NoVerdict, match="z lies between"):
            lethality(RAMP, REFERENCE, z, 60)
    with pytest.raises(NoVerdict, match="check the probe"):
        tenfold_time(SCOTT_A, 900)
