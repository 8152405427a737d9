"""Most probable numbers of every design against other programs' solutions."""

from __future__ import annotations

from decimal import Decimal
from importlib.util import find_spec, module_from_spec, spec_from_file_location
from itertools import product
from math import exp, expm1, inf, log
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.trade.most_probable_number import CHI_SQUARE, ONE_SIDED, Tubes, most_probable_number

AMOUNTS = ("0.1", "0.01", "0.001")
OUTCOMES = sorted(product(range(4), repeat=3))[:-1]
"""All but 3-3-3, on which micrompn fails; its limit has a test of its own."""


def solve(positive, amounts=AMOUNTS, tubes=3):
    return most_probable_number(
        [Tubes(Decimal(z), tubes, x) for z, x in zip(amounts, positive, strict=True)]
    )


@pytest.fixture(scope="module")
def micrompn():
    """Load its one module of arithmetic: the package itself writes a log where it is imported."""
    package = find_spec("micrompn")
    if package is None or package.origin is None:
        pytest.skip("micrompn is not installed")
    spec = spec_from_file_location("micrompn_mpn", Path(package.origin).with_name("mpn.py"))
    module = module_from_spec(spec)
    spec.loader.exec_module(module)
    return module


@pytest.mark.parametrize("outcome", OUTCOMES, ids=str)
def test_every_outcome_of_three_times_three_tubes(outcome, micrompn):
    """Number, likelihood-ratio limits and rarity index of micrompn (a port of the R package)."""
    ours = solve(outcome)
    theirs = micrompn.mpn(list(outcome), [3, 3, 3], [0.1, 0.01, 0.001], CI_method="LR")
    assert ours.value == pytest.approx(float(theirs["MPN"]), rel=1e-6)
    assert ours.low == pytest.approx(float(theirs["LB"]), rel=1e-6)
    assert ours.high == pytest.approx(float(theirs["UB"]), rel=1e-6)
    assert ours.rarity == pytest.approx(float(theirs["RI"]), rel=1e-5)


def test_the_lower_limit_when_all_tubes_are_positive():
    """The chance that all tubes are positive at the limit is 5 %."""
    low = solve((3, 3, 3)).low
    chance = 1.0
    for z in (0.1, 0.01, 0.001):
        chance *= (1 - exp(-low * z)) ** 3
    assert chance == pytest.approx(ONE_SIDED, rel=1e-9)


def test_the_upper_limit_when_all_tubes_are_negative():
    """The chance that all tubes are negative at the limit is 5 %."""
    assert exp(-solve((0, 0, 0)).high * 0.333) == pytest.approx(ONE_SIDED, rel=1e-12)


def test_the_chi_square_point():
    stats = pytest.importorskip("scipy.stats", reason="scipy is not installed")
    assert pytest.approx(stats.chi2.ppf(0.95, 1), rel=1e-14) == CHI_SQUARE


@st.composite
def designs(draw):
    rows = []
    for _ in range(draw(st.integers(1, 5))):
        amount = draw(st.decimals("0.0001", "50", places=4))
        tubes = draw(st.integers(2, 10))
        rows.append(Tubes(amount, tubes, draw(st.integers(0, tubes))))
    return rows


def mixed(rows) -> bool:
    return 0 < sum(one.positive for one in rows) < sum(one.tubes for one in rows)


@pytest.fixture(scope="module")
def optimize():
    return pytest.importorskip("scipy.optimize", reason="scipy is not installed")


@settings(deadline=None)
@given(rows=designs().filter(mixed))
def test_any_design_against_brentq(rows, optimize):
    """Score equation and both limits solved by scipy's brentq."""
    data = [(float(one.amount), one.tubes, one.positive) for one in rows]

    def chances(density):
        return [(z, n, x, -expm1(-density * z)) for z, n, x in data]

    def score(u):
        found = sum(x * z / p for z, _, x, p in chances(exp(u)) if x)
        return found / sum(n * z for z, n, _ in data) - 1

    def likelihood(u):
        density = exp(u)
        return sum(
            (x * log(p) if x else 0) - (n - x) * density * z for z, n, x, p in chances(density)
        )

    ours = most_probable_number(rows)
    best = optimize.brentq(score, -20, 20, xtol=1e-13)
    assert log(ours.value) == pytest.approx(best, abs=1e-8)

    def beyond(u):
        return 2 * (likelihood(best) - likelihood(u)) - CHI_SQUARE

    assert log(ours.low) == pytest.approx(optimize.brentq(beyond, best - 40, best), abs=1e-6)
    assert log(ours.high) == pytest.approx(optimize.brentq(beyond, best, best + 12), abs=1e-6)
    assert 0 < ours.low < ours.value < ours.high < inf


@pytest.mark.parametrize("outcome", [(1, 0, 0), (2, 1, 0), (3, 1, 1), (3, 2, 0)], ids=str)
def test_against_a_binomial_regression(outcome):
    """The number is exp(intercept) of a complementary log-log regression with offset log(z)."""
    api = pytest.importorskip("statsmodels.api", reason="statsmodels is not installed")
    np = pytest.importorskip("numpy")
    family = api.families.Binomial(link=api.families.links.CLogLog())
    positive = np.array(outcome)
    model = api.GLM(
        np.column_stack([positive, 3 - positive]), np.ones((3, 1)), family=family,
        offset=np.log([0.1, 0.01, 0.001]),
    )  # fmt: skip
    fitted = model.fit(tol=1e-12, maxiter=200)
    assert solve(outcome).value == pytest.approx(exp(fitted.params[0]), rel=1e-6)
