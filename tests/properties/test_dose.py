"""Doses of any product in any water: more gives more, rounding never falls short, caps hold."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import assume, given
from hypothesis import strategies as st

from kiosk.trade.dose import Filling, NoDose, dose, exact_amount, offer, recipe, strength, suiting
from kiosk.trade.hypochlorous import hypochlorous
from kiosk.trade.product import liquid_by_trade_percent, packets, solid
from kiosk.trade.solution import Solution, judge
from kiosk.trade.solution_table import Agent
from kiosk.trade.typed import WATER, read_quantity
from kiosk.trade.units import Quantity, litres
from tests.outside.profiles import profile

waters = st.decimals("0.5", "400", places=2)
wanteds = st.decimals("1", "200", places=1)
percents = st.decimals("1", "30", places=2)
products = st.one_of(
    percents.map(liquid_by_trade_percent),
    percents.map(solid),
    st.tuples(st.decimals("0.1", "20", places=1), percents).map(lambda both: packets(*both)),
)
counts = st.integers(1, 200).map(Decimal)


@given(products, waters, counts, counts, st.data())
def test_more_packets_more_strength(product, water, count, more, data):
    measure = data.draw(st.sampled_from(suiting(product)))
    amount = (count + more) * measure.size
    assume(product.unit == "g" or amount < water * 1000)
    fewer = recipe(product, water, count, measure, None)
    assert recipe(product, water, count + more, measure, None) > fewer
    assert recipe(product, water + more, count, measure, None) < fewer


@given(products, waters, wanteds, st.sampled_from(Filling))
def test_the_exact_amount_gives_just_the_wanted_strength(product, water, wanted, filling):
    amount = exact_amount(product, water, wanted, filling)
    found = strength(product, amount.value, water, filling)
    assert abs(found - wanted) < Decimal("1e-20") * wanted


@given(products, waters, wanteds, st.sampled_from(Filling))
def test_a_dose_reaches_the_strength_and_one_step_less_does_not(product, water, wanted, filling):
    for one in offer(product, water, wanted, None, filling=filling).doses:
        assert one.strength >= wanted
        step = one.measure.step
        if one.count > step:
            less = recipe(product, water, one.count - step, one.measure, None, filling)
            assert less < wanted


@given(products, waters, wanteds, st.sampled_from([Decimal(50), Decimal(100), Decimal(200)]))
def test_no_dose_passes_the_cap_and_a_refused_one_would(product, water, wanted, cap):
    found = offer(product, water, wanted, cap)
    assert all(one.strength <= cap for one in found.doses)
    uncapped = {one.measure: one.strength for one in offer(product, water, wanted, None).doses}
    kept = {one.measure for one in found.doses}
    assert all(uncapped[measure] > cap or wanted > cap for measure in uncapped.keys() - kept)
    assert kept <= uncapped.keys()


@given(products, waters, st.decimals("100", "200", places=1))
def test_what_was_dosed_is_strong_enough_when_it_is_checked(product, water, wanted):
    table = profile("food-code-2022").solutions
    for one in offer(product, water, wanted).doses:
        solution = Solution(
            agent=Agent.CHLORINE, strength=one.strength, ph=Decimal(8),
            temperature=Quantity(Decimal(24), "°C"),
        )  # fmt: skip
        assert judge(solution, table).seconds == 10


@given(st.decimals("0.1", "100", places=2), st.sampled_from(sorted(WATER.units)))
def test_a_unit_comes_back_the_same(value, unit):
    amount = Quantity(value, unit)
    in_litres = litres(amount)
    back = in_litres / litres(Quantity(Decimal(1), unit))
    assert abs(back - value) < Decimal("1e-20")


@given(
    st.decimals("5", "100", places=2), st.sampled_from(sorted(WATER.units)), st.sampled_from(".,")
)
def test_what_is_written_is_read_back(value, unit, mark):
    assume(litres(Quantity(value, unit)) >= Decimal("0.1"))
    text = f"{value}".replace(".", mark)
    assert read_quantity(f"{text} {unit}", WATER) == Quantity(value, unit)


@given(
    st.decimals("0", "13.9", places=1), st.decimals("0", "49", places=1),
    st.decimals("0.1", "14", places=1),
)  # fmt: skip
def test_a_higher_ph_leaves_less_acid(ph, celsius, more):
    assume(ph + more <= 14)
    temperature = Quantity(celsius, "°C")
    low, high = hypochlorous(ph, temperature).share, hypochlorous(ph + more, temperature).share
    assert 0 < high < low < 1


readings = st.builds(
    Solution,
    agent=st.just(Agent.CHLORINE),
    strength=st.decimals("0", "220", places=1),
    ph=st.decimals("4", "12", places=1),
    temperature=st.decimals("0", "60", places=1).map(lambda value: Quantity(value, "°C")),
)


@given(readings, st.sampled_from(["food-code-2022", "california-retail-food-code"]))
def test_each_way_told_makes_it_pass(solution, name):
    table = profile(name).solutions
    found = judge(solution, table)
    assert found.passes or found.ways
    for way in found.ways:
        values = {need.kind: need.value for need in way}
        strength_now = values.get("stronger") or values.get("weaker")
        mended = Solution(
            agent=solution.agent,
            strength=strength_now.value if strength_now else solution.strength,
            ph=values["lower pH"].value if "lower pH" in values else solution.ph,
            temperature=values.get("warmer", solution.temperature),
        )
        if "weaker" in values:
            continue  # Below the cap, pH and temperature are judged anew.
        assert judge(mended, table).passes


def test_a_cap_refusal_names_enough_water():
    product = packets(Decimal(2), Decimal("55.4"))
    with pytest.raises(NoDose) as caught:
        dose(product, Decimal(1), Decimal(100), suiting(product)[0])
    enough = Decimal(str(caught.value.values["least_water"]))
    assert dose(product, enough, Decimal(100), suiting(product)[0]).count == 1
