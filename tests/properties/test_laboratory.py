"""Laws of the laboratory's numbers, over random plates, tubes and results."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import assume, given, settings
from hypothesis import strategies as st

from kiosk.trade.authorities import Analysis
from kiosk.trade.most_probable_number import Tubes, most_probable_number
from kiosk.trade.plate_count import BAM, ISO_7218, Plate, count_plates
from kiosk.trade.rounding import Amount, Qualifier, read_amount, significant
from kiosk.trade.sampling_plan import SamplingPlan, Verdict, judge
from kiosk.trade.standing import Barrel, Result, State, days_of, standing

BARREL = Barrel("M1", "left", Analysis.COLIFORM)
LIMIT = Decimal(10)
LADDER = [State.CLEAR, State.NOTICE, State.ACTION]

unhurried = settings(deadline=None)

rules = st.sampled_from([BAM, ISO_7218])
dilutions = st.integers(0, 5).map(lambda power: Decimal(1).scaleb(-power))
numbers = st.decimals("0", "10000000", places=3)
counts = st.builds(Amount, st.sampled_from([Qualifier.EXACT, Qualifier.ESTIMATED]), numbers)
bounds = st.builds(Amount, st.sampled_from([Qualifier.LESS_THAN, Qualifier.MORE_THAN]), numbers)
wordless = st.sampled_from([Amount(Qualifier.SPREADERS), Amount(Qualifier.ACCIDENT)])
amounts = counts | bounds | wordless
near = st.sampled_from(["3", "10", "11", "40", "< 10", "< 30", "> 5", "> 10", "spreaders"])
histories = st.lists(st.tuples(st.integers(1, 40), near.map(read_amount)), max_size=25)


def judged(history):
    results = [Result(BARREL, day, amount) for day, amount in history]
    return standing(days_of(results, LIMIT), today=60)


@unhurried
@given(numbers, st.integers(1, 6))
def test_rounding_twice_is_rounding_once(value, digits):
    once = significant(value, digits)
    assert significant(once, digits) == once
    assert str(significant(once, digits)) == str(once)


@unhurried
@given(numbers, numbers)
def test_rounding_keeps_the_order_and_the_size(one, other):
    low, high = sorted((one, other))
    assert significant(low) <= significant(high)
    assert abs(significant(one) - one) <= one / 20


@unhurried
@given(amounts)
def test_a_result_reads_back(amount):
    assert read_amount(str(amount)) == amount


@unhurried
@given(dilutions, st.integers(0, 5000), st.integers(1, 500), rules)
def test_more_colonies_on_a_plate_never_give_less(dilution, colonies, more, rule):
    fewer = count_plates([Plate(dilution, colonies)], rule)
    assert count_plates([Plate(dilution, colonies + more)], rule).value >= min(
        fewer.value, colonies / dilution
    )
    if fewer.reported.qualifier is not Qualifier.LESS_THAN:
        assert count_plates([Plate(dilution, colonies + more)], rule).value > fewer.value


@unhurried
@given(st.data(), dilutions, rules)
def test_more_colonies_within_the_range_give_more(data, dilution, rule):
    inside = st.integers(rule.least, rule.most)
    first = data.draw(st.lists(inside, min_size=1, max_size=3))
    second = data.draw(st.lists(inside, max_size=3))
    place = data.draw(st.integers(0, len(first) - 1))
    assume(first[place] < rule.most)
    more = data.draw(st.integers(first[place] + 1, rule.most))
    raised = [*first[:place], more, *first[place + 1 :]]

    def count(counts):
        plates = [Plate(dilution, one) for one in counts]
        plates += [Plate(dilution / 10, one) for one in second]
        return count_plates(plates, rule)

    assert count(raised).value > count(first).value
    assert count(raised).reported.value >= count(first).reported.value


@unhurried
@given(
    st.lists(st.tuples(dilutions, st.integers(0, 600)), min_size=1, max_size=6), rules, st.data()
)
def test_the_order_of_plates_does_not_matter(rows, rule, data):
    plates = [Plate(*one) for one in rows]
    shuffled = data.draw(st.permutations(plates))
    assert count_plates(shuffled, rule) == count_plates(plates, rule)


@st.composite
def designs(draw):
    rows = [
        (draw(st.decimals("0.001", "10", places=3)), tubes, draw(st.integers(0, tubes)))
        for tubes in draw(st.lists(st.integers(2, 8), min_size=1, max_size=4))
    ]
    place = draw(st.integers(0, len(rows) - 1))
    assume(rows[place][2] < rows[place][1])
    return rows, place


@unhurried
@given(designs())
def test_one_more_positive_tube_gives_a_higher_number(design):
    rows, place = design
    more = [(z, n, x + (i == place)) for i, (z, n, x) in enumerate(rows)]
    fewer = most_probable_number([Tubes(*one) for one in rows])
    higher = most_probable_number([Tubes(*one) for one in more])
    assert higher.value > fewer.value
    assert higher.low > fewer.low or fewer.value == 0
    assert fewer.low <= fewer.value <= fewer.high
    assert 0 <= fewer.rarity <= 1


@unhurried
@given(designs(), st.sampled_from([2, 10, 1000]))
def test_less_sample_by_a_factor_gives_more_by_that_factor(design, factor):
    rows, _ = design
    assume(any(x for _, _, x in rows))
    whole = most_probable_number([Tubes(*one) for one in rows])
    part = most_probable_number([Tubes(z / factor, n, x) for z, n, x in rows])
    assert part.value == pytest.approx(whole.value * factor, rel=1e-9)
    assert part.low == pytest.approx(whole.low * factor, rel=1e-7)


@unhurried
@given(histories, st.data())
def test_the_order_of_results_does_not_matter(history, data):
    assert judged(data.draw(st.permutations(history))) == judged(history)


@unhurried
@given(histories, histories)
def test_results_older_than_the_last_five_days_do_not_matter(history, older):
    assume(len({day for day, _ in history}) >= 5)
    far = [(day - 1000, amount) for day, amount in older]
    alone, after = judged(history), judged(far + history)
    # Only the day on which a notice began, and so its window, may lie further back.
    for name in ("state", "could_be", "over_of_four", "over_of_five", "untold", "clear_after"):
        assert getattr(after, name) == getattr(alone, name)
    assert after.samples_owed == alone.samples_owed


@unhurried
@given(histories, st.integers(1, 40))
def test_a_result_over_the_limit_never_makes_it_better(history, day):
    """On the last day, so that no older result moves out of the last five."""
    assume(history)
    last = max(one for one, _ in history)
    worse = judged([*history, (last, read_amount("40"))])
    before = judged(history)
    known = State.CLEAR if before.state is State.UNKNOWN else before.state
    assert LADDER.index(worse.could_be) >= LADDER.index(before.could_be)
    assert LADDER.index(State.CLEAR if worse.state is State.UNKNOWN else worse.state) >= (
        LADDER.index(known)
    )


@unhurried
@given(histories)
def test_the_good_days_told_do_clear_and_one_less_does_not(history):
    assume(history)
    needed = judged(history).clear_after
    last = max(day for day, _ in history)
    good = [(last + i, read_amount("1")) for i in range(1, needed + 1)]
    assert judged(history + good).state is State.CLEAR
    assert judged(history + good).could_be is State.CLEAR
    if needed:
        assert judged(history + good[:-1]).could_be is not State.CLEAR


@unhurried
@given(
    st.lists(near.map(read_amount), min_size=5, max_size=5),
    st.lists(st.decimals("0", "200", places=0), min_size=5, max_size=5),
)
def test_a_plans_verdict_holds_for_every_number_that_the_bounds_allow(samples, numbers):
    plan = SamplingPlan(n=5, c=2, m=Decimal(10), top=Decimal(30))
    told = judge(plan, samples)
    possible = [_fits(amount, number) for amount, number in zip(samples, numbers, strict=True)]
    true = judge(plan, [Amount(Qualifier.EXACT, one) for one in possible])
    assert told.verdict in (true.verdict, Verdict.UNKNOWN)


def _fits(amount: Amount, number: Decimal) -> Decimal:
    """Return a number that the result allows, from a random one."""
    match amount.qualifier:
        case Qualifier.EXACT | Qualifier.ESTIMATED:
            return amount.value
        case Qualifier.LESS_THAN:
            return number % amount.value
        case Qualifier.MORE_THAN:
            return amount.value + 1 + number
    return number
