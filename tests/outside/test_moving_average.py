"""The control chart against the worked example of the Engineering Statistics Handbook, and the
trend's other parts against sums done another way.

READ: the example, in a copy in a public repository. CALC: computed here by another method.
"""

from __future__ import annotations

from decimal import Decimal
from itertools import permutations
from math import erf, log, log10, pi, sqrt
from statistics import fmean, pstdev

import pytest

from kiosk.trade.rounding import read_amount

trend = pytest.importorskip("kiosk.review.trend", reason="scipy is not installed")

DATA = [52.0, 47.0, 53.0, 49.3, 50.1, 47.0, 51.0, 50.1, 51.2, 50.5,
        49.6, 47.6, 49.9, 51.3, 47.8, 51.2, 52.6, 52.4, 53.6, 52.1]  # fmt: skip
AVERAGES = [50.60, 49.52, 50.56, 50.18, 50.16, 49.21, 49.75, 49.85, 50.26, 50.33,
            50.11, 49.36, 49.52, 50.05, 49.38, 49.92, 50.73, 51.23, 51.94, 51.99]  # fmt: skip
STEADY = ["3200", "2100", "4500", "2800", "3900", "2500", "3300", "3000"]


def amounts(texts):
    return [read_amount(one) for one in texts]


def points(texts, every=45):
    return [trend.Point(every * i, one) for i, one in enumerate(amounts(texts))]


def test_the_moving_average():
    """Weight 0.3, start 50. READ."""
    found = trend.moving_average(DATA, 50.0, 0.3)
    assert [round(one, 2) for one in found] == AVERAGES


def test_the_control_limit():
    """50 + 3 x 0.4201 x 2.0539 = 52.5884, for many values. READ; it used a rounded root."""
    base = trend.Fit(mean=50.0, deviation=2.0539)
    assert trend.control_limit(base, 1000, 0.3, 3.0) == pytest.approx(52.5884, abs=5e-4)
    assert trend.control_limit(base, 1, 0.3, 3.0) == pytest.approx(50 + 3 * 2.0539 * 0.3)


def test_a_fit_without_bounds_is_mean_and_standard_deviation():
    """CALC, statistics.fmean and pstdev."""
    logs = [log10(float(one)) for one in STEADY]
    found = trend.fit(amounts(STEADY))
    assert found.mean == pytest.approx(fmean(logs), rel=1e-9)
    assert found.deviation == pytest.approx(pstdev(logs), rel=1e-9)


def test_a_fit_with_bounds_is_the_likeliest():
    """No neighbour is likelier, by a likelihood written out with math.erf (CALC)."""
    texts = ["< 10", "< 10", "14", "22", "31", "40", "55", "> 100"]
    found = trend.fit(amounts(texts))

    def cdf(z):
        return (1 + erf(z / sqrt(2))) / 2

    def likelihood(mean, deviation):
        total = 0.0
        for text in texts:
            z = (log10(float(text.strip("<> "))) - mean) / deviation
            if text.startswith("<"):
                total += log(cdf(z))
            elif text.startswith(">"):
                total += log(1 - cdf(z))
            else:
                total -= z * z / 2 + log(deviation * sqrt(2 * pi))
        return total

    best = likelihood(found.mean, found.deviation)
    step = 0.002
    for up, wider in ((step, 0), (-step, 0), (0, step), (0, -step)):
        assert likelihood(found.mean + up, found.deviation + wider) < best


def test_bounds_are_not_taken_for_values():
    """Less-than results pull the mean below what their bounds alone would give."""
    censored = trend.fit(amounts(["< 10", "< 10", "< 10", "14", "22", "31", "40"]))
    naive = trend.fit(amounts(["10", "10", "10", "14", "22", "31", "40"]))
    assert censored.mean < naive.mean
    assert censored.deviation > naive.deviation


@pytest.mark.parametrize("order", [(1, 2, 3, 4, 5), (2, 1, 4, 3, 5), (5, 4, 3, 2, 1)], ids=str)
def test_the_rise_is_counted_over_every_order(order):
    """Kendall's tau and its chance by counting all 120 orders (CALC)."""

    def concordance(of):
        pairs = [(i, j) for i in range(5) for j in range(i)]
        return sum(1 if of[i] > of[j] else -1 for i, j in pairs)

    seen = concordance(order)
    as_high = sum(concordance(one) >= seen for one in permutations(order))
    tau, chance = trend.rise(points([str(100 * one) for one in order]))
    assert tau == pytest.approx(seen / 10)
    assert chance == pytest.approx(as_high / 120)


def test_results_below_a_bound_are_tied_with_it():
    """No order is known between 5 and less than 10, so a rise from one to the other is none."""
    tau, _ = trend.rise(points(["5", "< 10", "7", "< 10", "20", "30"]))
    same, _ = trend.rise(points(["10", "10", "10", "10", "20", "30"]))
    assert tau == same
    above, _ = trend.rise(points(["20", "30", "> 50", "90", "60"]))
    tied, _ = trend.rise(points(["20", "30", "50", "50", "50"]))
    assert above == tied
    assert trend.rise(points(["< 10", "< 10", "< 10"])) is None
    assert trend.rise(points(["3", "spreaders", "< 10"])) is None


def test_too_few_results_give_no_trend():
    found = trend.trend(points(STEADY[:7]), Decimal(50_000))
    assert found.warned == (trend.Warned.TOO_FEW,)
    assert (found.baseline, found.tau, found.early) == (None, None, False)
    assert "7, and 8 are needed" in found.english
    assert trend.trend(points([*STEADY[:7], "spreaders"]), Decimal(50_000)).baseline is None


def test_a_steady_barrel():
    found = trend.trend(points([*STEADY, *STEADY]), Decimal(50_000))
    assert found.warned == (trend.Warned.STEADY,)
    assert len(found.average) == len(found.control_limits) == 8
    assert not found.early


def test_a_rise_is_told_before_the_limit_is_passed():
    rising = [*STEADY, "6000", "9000", "12000", "18000", "26000"]
    found = trend.trend(points(rising), Decimal(50_000))
    assert set(found.warned) == {trend.Warned.SHIFT, trend.Warned.RISE}
    assert found.early
    assert "No result is over 50,000 yet" in found.english
    late = trend.trend(points([*rising, "60000"]), Decimal(50_000))
    assert late.warned == found.warned
    assert not late.early


def test_results_are_put_in_the_order_of_their_days():
    rising = points([*STEADY, "6000", "9000", "12000"])
    assert trend.trend(rising[::-1], Decimal(50_000)) == trend.trend(rising, Decimal(50_000))


def test_bounds_alone_give_no_chart():
    found = trend.trend(points(["< 10"] * 12), Decimal(10))
    assert found.baseline is None
    assert found.warned == (trend.Warned.STEADY,)
    assert "Too few counted values" in found.english


def test_two_counted_values_are_too_few_for_a_fit():
    assert trend.fit(amounts(["< 10", "< 10", "14", "22", "14", "22"])) is None
    assert trend.fit(amounts(["< 10", "< 10", "14", "22", "31"])) is not None


def test_a_more_than_past_the_baseline_stands_for_the_mean_above_it():
    """A bound at the baseline's mean gives mean + deviation x sqrt(2 / pi), half-normal (CALC)."""
    base = trend.trend(points(STEADY), Decimal(50_000)).baseline
    bound = f"> {10**base.mean:.6f}"
    found = trend.trend(points([*STEADY, bound]), Decimal(50_000))
    expected = base.mean + trend.WEIGHT * base.deviation * sqrt(2 / pi)
    assert found.average[-1] == pytest.approx(expected, abs=1e-6)


def test_a_less_than_past_the_baseline_stands_for_the_mean_below_it():
    """A bound far above the baseline says next to nothing: the average stays (CALC)."""
    base = trend.trend(points(STEADY), Decimal(50_000)).baseline
    found = trend.trend(points([*STEADY, "< 1000000"]), Decimal(50_000))
    assert found.average[-1] == pytest.approx(base.mean, abs=1e-9)
    low = trend.trend(points([*STEADY, "< 10"]), Decimal(50_000))
    assert low.average[-1] < base.mean
