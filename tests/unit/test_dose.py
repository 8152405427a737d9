"""A dose in every measure that suits a product, and the sentences of what is refused."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.dose import Filling, NoDose, dose, english, exact_amount, offer, recipe, strength
from kiosk.trade.kitchen_measures import GRAM, MILLILITRE, US_CUP, US_TEASPOON, packet
from kiosk.trade.product import label_dilution, liquid_by_trade_percent, packets, solid
from kiosk.trade.solution_table import Agent
from kiosk.trade.units import Quantity, litres

BLEACH = liquid_by_trade_percent(Decimal("5.25"))
POWDER = packets(Decimal(2), Decimal("55.4"))
PACKET = packet(Decimal(2))


def test_an_offer_tells_the_least_rounding_first_and_why_others_are_refused():
    found = offer(BLEACH, Decimal("3.785411784"), Decimal(100))
    gained = [one.gained for one in found.doses]
    assert gained == sorted(gained)
    assert found.doses[0].measure is US_TEASPOON
    assert "us cup" not in [one.measure.key for one in found.doses]
    assert {one.key for one in found.refused} == {"over-cap"}


def test_packets_are_offered_as_packets_and_loose_powder_in_grams():
    assert [one.measure.key for one in offer(POWDER, Decimal(8), Decimal(100)).doses] == ["packet"]
    loose = offer(solid(Decimal("55.4")), Decimal(10), Decimal(100)).doses
    assert [(one.measure.key, str(one.count)) for one in loose] == [("gram", "1.9")]


def test_a_label_dilution_gives_back_what_the_label_says():
    """Invented label: 4 mL per litre give 200 mg/L."""
    quat = label_dilution(Agent.QUAT, Decimal(4), Decimal(200))
    found = dose(quat, Decimal(10), Decimal(200), MILLILITRE, cap=Decimal(400))
    assert (found.count, found.strength, found.gained) == (40, 200, 0)


def test_english_tells_the_dose_the_strength_and_the_rounding():
    told = english(dose(POWDER, Decimal(8), Decimal(100), PACKET))
    assert told == (
        "Put 1 packet (2 g) into 8 L of water: this gives 138.5 mg/L, 38.5 more than asked for, "
        "because 0.72 was rounded up."
    )
    quat = label_dilution(Agent.QUAT, Decimal(4), Decimal(200))
    gallon = Quantity(Decimal(2), "gal")
    told = english(dose(quat, litres(gallon), Decimal(190), MILLILITRE), gallon)
    assert told.startswith("Put 29 millilitres into 2 gal of water: this gives 191.52 mg/L, ")
    assert english(dose(quat, Decimal(1), Decimal(200), MILLILITRE)) == (
        "Put 4 millilitres into 1 L of water: this gives just 200 mg/L."
    )


def test_a_dose_that_needs_no_rounding_is_not_rounded():
    """3 x 0.1 g x 500 mg/g in 1.5 L are 100 mg/L exactly."""
    found = dose(solid(Decimal(50)), Decimal("1.5"), Decimal(100), GRAM)
    assert (found.count, found.gained) == (Decimal("0.3"), 0)


@pytest.mark.parametrize(
    ("attempt", "key", "says"),
    [
        (lambda: dose(POWDER, Decimal(1), Decimal(100), PACKET), "over-cap",
         "1 packet in 1 L give 1108 mg/L, above the cap of 200 mg/L; use at least 5.6 L"),
        (lambda: dose(POWDER, Decimal(8), Decimal(201), PACKET), "wanted-over-cap",
         "ask for 200 mg/L or less"),
        (lambda: dose(POWDER, Decimal(0), Decimal(100), PACKET), "bad-water", "more than nothing"),
        (lambda: dose(POWDER, Decimal("NaN"), Decimal(9), PACKET), "bad-water", "NaN L"),
        (lambda: dose(POWDER, Decimal(8), Decimal(0), PACKET), "bad-strength", "more than nothing"),
        (lambda: dose(POWDER, Decimal(8), Decimal("NaN"), PACKET), "bad-strength", "NaN"),
        (lambda: dose(POWDER, Decimal(8), Decimal(100), MILLILITRE), "wrong-measure",
         "use one of: packets"),
        (lambda: dose(BLEACH, Decimal(8), Decimal(100), PACKET), "wrong-measure", "level US"),
        (lambda: recipe(BLEACH, Decimal(8), Decimal(0), MILLILITRE), "bad-count", "0 millilitres"),
        (lambda: recipe(BLEACH, Decimal("0.1"), Decimal(1), US_CUP, None), "over-full",
         "more than 0.1 L"),
        (lambda: exact_amount(BLEACH, Decimal(1), Decimal(52501)), "too-weak", "stronger product"),
        (lambda: exact_amount(BLEACH, Decimal(1), Decimal(52500), Filling.INTO), "too-weak",
         "stronger product"),
        (lambda: strength(BLEACH, Decimal(1), Decimal(-1)), "bad-water", "more than nothing"),
    ],
)  # fmt: skip
def test_what_is_refused(attempt, key, says):
    with pytest.raises(NoDose) as caught:
        attempt()
    assert caught.value.key == key
    assert says in str(caught.value)


def test_a_strength_just_above_the_cap_is_told_as_above_it():
    with pytest.raises(NoDose, match=r"give 200\.01 mg/L, above the cap of 200"):
        recipe(solid(Decimal("50.0001")), Decimal(1), Decimal("0.4"), GRAM)
