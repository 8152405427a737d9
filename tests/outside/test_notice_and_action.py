"""Notice and action by the last results, against the texts that prescribe them.

READ: Tex. Admin. Code 25-217.45(c), Ala. Admin. Code 420-3-16 App. E, S.D. Rule 12:17:02:13, seen
in stored copies; MEM: recalled from memory; CALC: computed. Results below are C for within the
limit, X for over it, ? for one that cannot tell.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.authorities import Analysis, Enforcing
from kiosk.trade.rounding import read_amount
from kiosk.trade.standing import (
    Barrel,
    Day,
    Result,
    State,
    days_of,
    log_average,
    standing,
    standings,
)

LEFT = Barrel("M1", "left", Analysis.COLIFORM)
LIMIT = Decimal(10)
MEANING = {"C": False, "X": True, "?": None}
EVERY = 30
"""Days between samples below."""


def days(results: str) -> list[Day]:
    return [Day(100 + EVERY * i, MEANING[one], 1) for i, one in enumerate(results)]


def judged(results: str, **more):
    return standing(days(results), today=100 + EVERY * len(results), **more)


@pytest.mark.parametrize(
    ("results", "state"),
    [
        ("", State.NO_RESULTS),
        ("C", State.CLEAR),
        ("X", State.CLEAR),
        ("CCCX", State.CLEAR),
        ("CXCX", State.NOTICE),
        ("XCCX", State.NOTICE),
        ("XX", State.NOTICE),
        ("XCCCX", State.CLEAR),
        ("XXCCC", State.CLEAR),
        ("XCXCX", State.ACTION),
        ("XXX", State.ACTION),
        ("XXCCX", State.ACTION),
        ("XXCCCX", State.CLEAR),
    ],
)
def test_two_of_the_last_four_and_three_of_the_last_five(results, state):
    """READ."""
    found = judged(results)
    assert found.state is state
    assert found.english.lower().startswith(state)


def test_the_notice_stays_as_long_as_two_of_four_exceed():
    """READ."""
    assert [judged("CXX" + "C" * n).state for n in range(4)] == [
        State.NOTICE, State.NOTICE, State.NOTICE, State.CLEAR,
    ]  # fmt: skip
    assert {judged("CXX" + "C" * n).since for n in range(3)} == {100 + 2 * EVERY}


def test_the_additional_sample():
    """Within 21 days of the notice, not before 3 days have passed. READ."""
    found = judged("CXX")
    noticed = 100 + 2 * EVERY
    assert found.resample == (noticed + 3, noticed + 21)
    assert "from 3 to 21 days" in found.english
    assert judged("CXX", notified=noticed + 5).resample == (noticed + 8, noticed + 26)
    assert judged("CXXC").resample is None


@pytest.mark.parametrize(("after", "still_due"), [(1, True), (2, True), (3, False), (21, False)])
def test_a_sample_before_three_days_does_not_count(after, still_due):
    """READ."""
    history = [Day(100, True, 1), Day(110, True, 1), Day(110 + after, False, 1)]
    assert (standing(history, today=140).resample is not None) is still_due


@pytest.mark.parametrize(("fresh", "owed"), [(0, 4), (3, 1), (4, 0), (6, 0)])
def test_four_samples_in_six_months(fresh, owed):
    """READ, Texas and Hawaii; six months as 183 days is this project's reading."""
    history = [Day(1, False, 1), *(Day(1000 + i, False, 1) for i in range(fresh))]
    assert standing(history, today=1100).samples_owed == owed
    assert standing([Day(1100 - 183, False, 1)], today=1100).samples_owed == 4
    assert standing([Day(1100 - 182, False, 1)], today=1100).samples_owed == 3


@pytest.mark.parametrize(
    ("results", "good_days"),
    [("CC", 0), ("X", 0), ("XX", 3), ("CXCX", 2), ("XCXC", 1), ("XXX", 3), ("XCXCX", 2)],
)
def test_what_it_takes_to_clear(results, good_days):
    """CALC from the rule."""
    assert judged(results).clear_after == good_days
    assert judged(results + "C" * good_days).state is State.CLEAR
    if good_days:
        assert judged(results + "C" * (good_days - 1)).state is not State.CLEAR


def test_two_results_of_one_day_are_one_and_the_worst_counts():
    """Laws say: on separate days. READ; that the worst counts is this project's choice."""
    given = [(1, "50"), (1, "< 1"), (2, "3"), (3, "90"), (3, "95"), (4, "4")]
    found = days_of([Result(LEFT, day, read_amount(text)) for day, text in given], LIMIT)
    assert [(one.over, one.results) for one in found] == [
        (True, 2), (False, 1), (True, 2), (False, 1),
    ]  # fmt: skip
    assert standing(found, today=4).state is State.NOTICE


def test_a_bound_above_the_limit_cannot_clear():
    given = [(1, "50"), (2, "60"), (3, "< 100"), (4, "2"), (5, "1")]
    found = days_of([Result(LEFT, day, read_amount(text)) for day, text in given], LIMIT)
    assert [one.over for one in found] == [True, True, None, False, False]
    stands = standing(found, today=5)
    assert stands.state is State.UNKNOWN
    assert stands.could_be is State.ACTION
    assert stands.untold == (3,)
    assert stands.clear_after == 1
    assert "only a bound may make it action" in stands.english


@pytest.mark.parametrize(
    ("text", "over"),
    [("10", False), ("11", True), ("est. 11", True), ("< 10", False), ("< 11", None),
     ("> 10", True), ("> 9", None), ("spreaders", None), ("laboratory accident", None)],
)  # fmt: skip
def test_what_a_result_says_of_the_limit(text, over):
    assert read_amount(text).exceeds(LIMIT) is over


def test_a_notice_that_may_be_an_action():
    found = judged("X?X")
    assert (found.state, found.could_be) == (State.NOTICE, State.ACTION)
    assert "may make it action" in found.english


def test_at_no_time():
    """One result over the limit is enough. READ, 02 NCAC 09K .0212."""
    assert judged("CCX", enforcing=Enforcing.EACH).state is State.ACTION
    found = judged("XXC", enforcing=Enforcing.EACH)
    assert found.state is State.CLEAR
    assert judged("C?", enforcing=Enforcing.EACH).state is State.UNKNOWN


def test_barrels_are_judged_apart():
    right = Barrel("M1", "right", Analysis.COLIFORM)
    results = [Result(LEFT, day, read_amount("40")) for day in (1, 2, 3)]
    results += [Result(right, day, read_amount("4")) for day in (1, 2, 3)]
    found = standings(results, {LEFT: LIMIT, right: LIMIT}, today=3)
    assert (found[LEFT].state, found[right].state) == (State.ACTION, State.CLEAR)
    with pytest.raises(KeyError):
        standings(results, {LEFT: LIMIT}, today=3)


def amounts(*texts: str):
    return [read_amount(one) for one in texts]


def test_the_logarithmic_average_of_the_last_four():
    """READ, Paris TX, for the rule; 6,000; 11,000; 12,000; 22,000 -> 11,489 CALC."""
    found = log_average(amounts("900000", "6,000", "11,000", "12,000", "22,000"))
    assert round(found.low) == round(found.high) == 11_489
    assert found.exceeds(Decimal(50_000)) is False
    assert found.exceeds(Decimal(11_000)) is True


def test_a_logarithmic_average_of_bounds():
    assert log_average(amounts("< 10", "10", "10", "10")).exceeds(LIMIT) is False
    assert log_average(amounts("< 1000", "10", "10", "10")).exceeds(LIMIT) is None
    assert log_average(amounts("> 1000", "10", "10", "10")).exceeds(LIMIT) is True
    assert log_average(amounts("> 5", "10", "10", "10")).exceeds(LIMIT) is None
    assert log_average(amounts("> 10", "10", "10", "10")).exceeds(LIMIT) is True
    assert log_average(amounts("10", "10", "10", "10")).exceeds(LIMIT) is False


def test_a_logarithmic_average_wants_numbers_and_its_own_function():
    with pytest.raises(ValueError, match="leave the others out"):
        log_average(amounts("10", "spreaders"))
    with pytest.raises(ValueError, match="needs results"):
        log_average([])
    with pytest.raises(ValueError, match="log_average"):
        judged("C", enforcing=Enforcing.LOG_AVERAGE)
