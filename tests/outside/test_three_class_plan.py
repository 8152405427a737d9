"""Sampling plans against (EC) 2073/2005.

READ: seen in a stored copy; MEM: recalled from memory. The row for ice cream (2.2.8) and the
wording of the interpretation are MEM; the Listeria rows are READ, legislation.gov.uk.
"""

from __future__ import annotations

from decimal import Decimal
from functools import lru_cache

import pytest

from kiosk.procedure.authorities import load_authorities
from kiosk.trade.authorities import lot_plan
from kiosk.trade.rounding import read_amount
from kiosk.trade.sampling_plan import (
    ABSENT,
    PRESENT,
    NotAPlan,
    SamplingPlan,
    Verdict,
    judge,
)


@lru_cache
def table():
    return load_authorities()


def plan(name: str) -> SamplingPlan:
    return lot_plan(table(), name).plan


def verdict(name: str, results: str) -> Verdict:
    return judge(plan(name), [read_amount(one) for one in results.split(", ")]).verdict


def test_the_ice_cream_row():
    """n = 5, c = 2, m = 10, M = 100 CFU/g Enterobacteriaceae. MEM."""
    found = plan("eu-ice-cream-enterobacteriaceae")
    assert (found.n, found.c, found.m, found.top) == (5, 2, 10, 100)


@pytest.mark.parametrize(
    ("results", "expected"),
    [
        ("< 10, < 10, < 10, < 10, < 10", Verdict.SATISFACTORY),
        ("10, 10, 10, 10, 10", Verdict.SATISFACTORY),
        ("11, < 10, < 10, < 10, < 10", Verdict.ACCEPTABLE),
        ("100, 100, < 10, < 10, < 10", Verdict.ACCEPTABLE),
        ("11, 12, 13, < 10, < 10", Verdict.UNSATISFACTORY),
        ("110, < 10, < 10, < 10, < 10", Verdict.UNSATISFACTORY),
        ("> 300, < 10, < 10, < 10, < 10", Verdict.UNSATISFACTORY),
        ("< 100, < 10, < 10, < 10, < 10", Verdict.UNKNOWN),
        ("> 50, < 10, < 10, < 10, < 10", Verdict.UNKNOWN),
        ("< 100, 11, 12, 13, < 10", Verdict.UNSATISFACTORY),
        ("spreaders, < 10, < 10, < 10, < 10", Verdict.UNKNOWN),
    ],
)
def test_three_classes(results, expected):
    """MEM."""
    assert verdict("eu-ice-cream-enterobacteriaceae", results) is expected


@pytest.mark.parametrize(
    ("results", "expected"),
    [
        ("< 10, < 10, < 10, < 10, 100", Verdict.SATISFACTORY),
        ("< 10, < 10, < 10, < 10, 110", Verdict.UNSATISFACTORY),
        ("< 1000, < 10, < 10, < 10, < 10", Verdict.UNKNOWN),
    ],
)
def test_two_classes(results, expected):
    """Listeria in shelf life: n = 5, c = 0, 100 CFU/g. READ."""
    assert verdict("eu-listeria-shelf-life", results) is expected


@pytest.mark.parametrize("name", ["eu-listeria-at-producer", "eu-ice-cream-salmonella"])
def test_absence_in_25_grams(name):
    """n = 5, c = 0, absent in 25 g. Listeria READ, Salmonella MEM."""
    rule = plan(name)
    assert (rule.n, rule.c, rule.m, rule.top) == (5, 0, 0, None)
    assert judge(rule, [ABSENT] * 5).verdict is Verdict.SATISFACTORY
    assert judge(rule, [ABSENT] * 4 + [PRESENT]).verdict is Verdict.UNSATISFACTORY


def test_what_is_sure_and_what_is_open_is_told():
    found = judge(
        plan("eu-ice-cream-enterobacteriaceae"),
        [read_amount(one) for one in ("50", "< 1000", "5", "5", "5")],
    )
    assert (found.above_m, found.above_top, found.untold) == (1, 0, (1,))
    assert found.worst is Verdict.UNSATISFACTORY
    assert "open between acceptable and unsatisfactory" in found.english


@pytest.mark.parametrize("count", [0, 4, 6])
def test_a_wrong_number_of_samples_is_refused(count):
    with pytest.raises(NotAPlan, match="give 5 results"):
        judge(plan("eu-ice-cream-enterobacteriaceae"), [ABSENT] * count)


@pytest.mark.parametrize(
    ("bad", "mend"),
    [
        ({"n": 0, "c": 0, "m": 10}, "at least one"),
        ({"n": 5, "c": 6, "m": 10}, "write 0 to n"),
        ({"n": 5, "c": 2, "m": 10, "top": 10}, "must lie above"),
        ({"n": 5, "c": 2, "m": -1}, "0 or more"),
    ],
)
def test_a_plan_that_cannot_be_is_refused(bad, mend):
    numbers = {
        name: Decimal(value) if name in ("m", "top") else value for name, value in bad.items()
    }
    with pytest.raises(NotAPlan, match=mend):
        SamplingPlan(**numbers)
