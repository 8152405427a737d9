"""How long parts last, against a published example, scipy's Weibull law, and known worlds."""

from __future__ import annotations

import numpy as np
import pytest

from kiosk.review.lifetimes import HORIZON_DAYS, Lives, log_likelihood, until

stats = pytest.importorskip("scipy.stats")

# NIST/SEMATECH e-Handbook of Statistical Methods, section 8.4.1.3, READ in a stored copy: ten units
# failed at these hours, ten more had not failed at 500 hours.
FAILED = (54.0, 187.0, 216.0, 240.0, 244.0, 335.0, 361.0, 373.0, 375.0, 386.0)
HANDBOOK = Lives(FAILED, (500.0,) * 10)
SHAPE, SCALE, LOG_LIKELIHOOD = 1.7208, 606.5280, -75.135


def test_the_likeliest_law_is_the_handbooks():
    shapes, scales = np.linspace(1.5, 2.0, 501), np.linspace(550, 650, 501)
    heights = log_likelihood(HANDBOOK, shapes, scales)
    shape, scale = np.unravel_index(heights.argmax(), heights.shape)
    assert shapes[shape] == pytest.approx(SHAPE, abs=0.001)
    assert scales[scale] == pytest.approx(SCALE, abs=0.2)
    # The handbook prints it without its sign; its AIC of 154.27 is -2 x this + 2 x 2 parameters.
    assert heights.max() == pytest.approx(LOG_LIKELIHOOD, abs=0.001)
    assert -2 * heights.max() + 4 == pytest.approx(154.27, abs=0.005)


@pytest.mark.parametrize(("shape", "scale"), [(0.7, 40.0), (1.0, 90.0), (3.2, 365.0)])
def test_the_likelihood_is_scipys_density_and_survival(shape: float, scale: float):
    law = stats.weibull_min(shape, scale=scale)
    lives = Lives((12.0, 80.5, 300.0), (5.0, 400.0))
    expected = law.logpdf(lives.ended).sum() + law.logsf(lives.at_least).sum()
    found = log_likelihood(lives, np.array([shape]), np.array([scale]))[0, 0]
    assert found == pytest.approx(expected, rel=1e-9)


def test_with_many_lives_the_forecast_is_the_laws_own():
    law = stats.weibull_min(2.5, scale=120.0)
    lives = Lives(tuple(law.rvs(3000, random_state=np.random.default_rng(7))), ())
    spread = until(lives, [0.0], 1)
    assert spread is not None
    found = (spread.low, spread.middle, spread.high)
    assert found == pytest.approx(tuple(law.ppf((0.1, 0.5, 0.9))), rel=0.05)


def test_an_old_part_is_foretold_from_the_age_it_has():
    law = stats.weibull_min(2.5, scale=120.0)
    lives = Lives(tuple(law.rvs(3000, random_state=np.random.default_rng(7))), ())
    spread = until(lives, [150.0], 1)
    assert spread is not None
    left = law.isf(law.sf(150.0) * np.array([0.9, 0.5, 0.1])) - 150.0
    assert (spread.low, spread.middle, spread.high) == pytest.approx(tuple(left), rel=0.1, abs=0.5)


def test_replacements_on_several_machines_come_as_a_poisson_process_would_have_them():
    # With shape 1 the machines' replacements are a Poisson process, whose n-th event is distributed
    # as a gamma law (any textbook; from memory): scipy.stats.gamma.
    lives = Lives(
        tuple(stats.expon(scale=100).rvs(4000, random_state=np.random.default_rng(3))), ()
    )
    spread = until(lives, [10.0, 50.0, 400.0, 0.0], 12)
    assert spread is not None
    expected = stats.gamma(12, scale=100 / 4).ppf((0.1, 0.5, 0.9))
    assert (spread.low, spread.middle, spread.high) == pytest.approx(tuple(expected), rel=0.06)


@pytest.mark.parametrize(("lives", "shape"), [(3, 1.0), (5, 3.0), (12, 1.5)])
def test_about_eight_of_ten_lie_within_the_spread(lives: int, shape: float):
    """In 150 invented worlds of a known law; the law is not known to the forecast."""
    chance = np.random.default_rng(11)
    within = 0
    for _ in range(150):
        drawn = np.maximum(0.1, chance.weibull(shape, lives + 1) * 90)
        spread = until(Lives(tuple(drawn[:-1]), ()), [0.0], 1)
        assert spread is not None
        low, high = (HORIZON_DAYS if x is None else x for x in (spread.low, spread.high))
        within += low <= drawn[-1] <= high
    # Of 150 at 8 in 10, fewer than 100 or more than 137 come once in some ten thousand times.
    assert 100 <= within <= 137


def test_without_lives_that_ended_nothing_is_foretold():
    assert until(Lives((50.0, 60.0), (400.0,)), [10.0], 1) is None
    assert until(Lives(FAILED, ()), [], 1) is None


def test_nothing_is_foretold_beyond_ten_years():
    spread = until(Lives((900.0, 1000.0, 1100.0), ()), [0.0], 30)
    assert spread is not None
    assert spread.middle is None
