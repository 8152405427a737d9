"""Psychrotrophs in milk: parameters from two public models, and three published growth curves.

READ: seen in the repositories named; CALC: computed from the formula.
"""

from __future__ import annotations

import math
from dataclasses import replace

import numpy as np
import pytest
from scipy.integrate import solve_ivp
from scipy.optimize import minimize_scalar

from kiosk.trade.growth import (
    PSEUDOMONAS,
    ST_1,
    ST_1_CURVE,
    Curve,
    NoGrowth,
    baranyi,
    buchanan,
    gompertz,
    line_through,
    rate,
)

CURVES = (buchanan, gompertz, baranyi)


def test_isolate_st_1_as_published():
    """READ chenhaoq87/MC-2020: lag 20.447 h, mu 0.094282 /h, 3.235 to 7.349 log10, at 6 °C."""
    assert Curve(20.447, 0.094282, 3.235, 7.349) == ST_1_CURVE
    assert ST_1.per_hour(6) * math.log(10) == pytest.approx(0.094282)


@pytest.mark.parametrize(("celsius", "mu"), [(4, 0.0608), (7.2, 0.1179), (10, 0.1832)])
def test_st_1_at_other_temperatures(celsius, mu):
    """mu(T) = mu(6 °C) ((T + 4.15) / 10.15)^2 in natural log per hour, CALC."""
    moved = ST_1_CURVE.at_temperature(celsius, ST_1)
    assert round(moved.mu, 4) == mu
    assert moved.lag * moved.mu == pytest.approx(ST_1_CURVE.lag * ST_1_CURVE.mu)


@pytest.mark.parametrize("celsius", [-1.1, 15.1])
def test_st_1_is_refused_outside_its_temperatures(celsius):
    """The model's refrigerators run from -1 to 15 °C: READ chenhaoq87/MC-2020."""
    with pytest.raises(NoGrowth, match=r"holds from -1\.0 to 15\.0"):
        ST_1_CURVE.at_temperature(celsius, ST_1)


@pytest.mark.parametrize(
    ("celsius", "k", "log10_per_hour"),
    [(4, 0.1447, 0.0435), (5, 0.1746, 0.0526), (7.2, 0.2502, 0.0753), (10, 0.3654, 0.1100),
     (20, 0.9192, 0.2767)],
)  # fmt: skip
def test_pseudomonas(celsius, k, log10_per_hour):
    """b 0.03772, Tmin -6.1, Tmax 41.2, c 0.1719: READ foodsafetylab/Pinto-2023-Milk; k CALC."""
    assert round(PSEUDOMONAS.k(celsius), 4) == k
    assert round(PSEUDOMONAS.per_hour(celsius), 4) == log10_per_hour
    assert rate(PSEUDOMONAS, celsius).value == pytest.approx(24 * log10_per_hour, rel=2e-3)


def test_k_is_not_log10_per_hour():
    """The unit trap: an older file of the same repository adds k without log10(2). READ."""
    assert PSEUDOMONAS.per_hour(7) == pytest.approx(PSEUDOMONAS.k(7) * math.log10(2))


@pytest.mark.parametrize("celsius", [-6.2, 41.3, 60])
def test_pseudomonas_is_refused_outside_its_ends(celsius):
    """Squared, the formula would rise again past either end."""
    with pytest.raises(NoGrowth):
        PSEUDOMONAS.k(celsius)
    assert PSEUDOMONAS.k(-6.1) == 0
    assert PSEUDOMONAS.k(41.2) == 0


def test_milk_kept_at_4_celsius():
    """Slope 0.040167 log10/h: READ as a comment; 0.0401667 and intercept 2.388 CALC."""
    line = line_through([0, 24, 48, 72, 96], [2.44, 3.25, 4.31, 5.39, 6.19])
    assert round(line.slope.value, 7) == 0.0401667
    assert round(line.start.value, 3) == 2.388


def test_baranyi_against_its_differential_equation():
    """Reference: scipy.integrate.solve_ivp on Baranyi and Roberts' two equations."""
    c = ST_1_CURVE

    def change(_, state):
        log_q, log_n = state
        ready = 1 / (1 + math.exp(-log_q))
        return [c.mu, c.mu * ready * (1 - math.exp(log_n - c.most * math.log(10)))]

    hours = np.linspace(0, 400, 41)
    begin = [-math.log(math.expm1(c.mu * c.lag)), c.start * math.log(10)]
    solved = solve_ivp(change, (0, 400), begin, t_eval=hours, rtol=1e-9, atol=1e-9)
    found = [baranyi(c, hour).value for hour in hours]
    assert found == pytest.approx(list(solved.y[1] / math.log(10)), abs=1e-6)


def test_gompertz_rises_fastest_at_mu_along_the_line_that_leaves_the_start_at_the_lag():
    c, step = ST_1_CURVE, 1e-4

    def slope(hour):
        return (gompertz(c, hour + step).value - gompertz(c, hour - step).value) / (2 * step)

    steepest = minimize_scalar(lambda hour: -slope(hour), bounds=(10, 200), method="bounded").x
    assert slope(steepest) * math.log(10) == pytest.approx(c.mu, rel=1e-5)
    crossing = steepest - (gompertz(c, steepest).value - c.start) / slope(steepest)
    assert crossing == pytest.approx(c.lag, abs=1e-2)


def test_buchanan_is_flat_then_straight_then_flat():
    c = ST_1_CURVE
    full = c.lag + (c.most - c.start) * math.log(10) / c.mu
    assert buchanan(c, c.lag).value == c.start
    assert buchanan(c, c.lag + 10).value == pytest.approx(c.start + 10 * c.mu / math.log(10))
    assert buchanan(c, full + 1).value == c.most


@pytest.mark.parametrize("curve", CURVES)
def test_every_curve_starts_low_never_falls_and_stays_under_its_ceiling(curve):
    values = [curve(ST_1_CURVE, hour).value for hour in range(0, 2000, 10)]
    assert values[0] == pytest.approx(ST_1_CURVE.start, abs=0.05)
    assert values == sorted(values)
    assert values[-1] == pytest.approx(ST_1_CURVE.most)
    assert curve(ST_1_CURVE, 1e9).value == pytest.approx(ST_1_CURVE.most)
    late = replace(ST_1_CURVE, lag=1e6)
    assert curve(late, 1).value == pytest.approx(ST_1_CURVE.start)


@pytest.mark.parametrize("curve", CURVES)
def test_no_curve_before_its_beginning(curve):
    with pytest.raises(NoGrowth, match="less than nothing"):
        curve(ST_1_CURVE, -1)


@pytest.mark.parametrize(
    ("values", "key"),
    [((-1, 0.1, 3, 7), "negative"), ((1, 0, 3, 7), "not-positive"), ((1, 0.1, 7, 7), "no-room"),
     ((1, 0.1, 3, 70), "absurd-count"), ((math.nan, 0.1, 3, 7), "not-finite")],
)  # fmt: skip
def test_impossible_curves_are_refused(values, key):
    with pytest.raises(NoGrowth) as caught:
        Curve(*values)
    assert caught.value.key == key


def test_a_line_needs_two_times():
    with pytest.raises(NoGrowth, match="two times"):
        line_through([1, 1], [2, 3])
    with pytest.raises(NoGrowth, match="two times"):
        line_through([1, 2], [2])
