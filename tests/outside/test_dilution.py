"""Doses and strengths against published recipes and worked examples."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.dose import Filling, NoDose, dose, exact_amount, recipe, strength
from kiosk.trade.kitchen_measures import (
    METRIC_TEASPOON,
    MILLILITRE,
    US_CUP,
    US_FLUID_OUNCE,
    US_TABLESPOON,
    US_TEASPOON,
    packet,
)
from kiosk.trade.product import liquid_by_trade_percent, packets, solid
from kiosk.trade.units import litres, quantity

GALLON = litres(quantity("1 gal"))
DIHYDRATE = Decimal("55.4")
"""NaDCC dihydrate: stoichiometry with Cl 35.453 (CALC)."""


def bleach(percent: str):
    """Take a household label's percent as grams of chlorine in 100 mL, as the sources do."""
    return liquid_by_trade_percent(Decimal(percent))


def of(percent: str, count: str, measure, water=GALLON, **more) -> Decimal:
    return recipe(bleach(percent), water, Decimal(count), measure, None, **more)


def test_a_fluid_ounce_in_a_gallon():
    """410 mg/L. READ kdhe.ks.gov/1019; 410.16 CALC."""
    assert f"{of('5.25', '1', US_FLUID_OUNCE):.2f}" == "410.16"


def test_a_tablespoon_in_a_gallon():
    """205 ppm. READ daycare.com forum; 200 READ foodsafetysite.com (NC State 2004); 205.1 CALC."""
    found = of("5.25", "1", US_TABLESPOON)
    assert f"{found:.1f}" == "205.1"
    assert abs(found - 200) < 6


def test_a_quarter_cup_in_five_gallons():
    """Recipe READ with the one before; about 164 ppm, 4 tbsp, 59.1 mL in 18.93 L: CALC."""
    assert f"{of('5.25', '0.25', US_CUP, 5 * GALLON):.0f}" == "164"
    assert Decimal("0.25") * US_CUP.size == 4 * US_TABLESPOON.size
    assert f"{Decimal('0.25') * US_CUP.size:.1f}" == "59.1"
    assert f"{5 * GALLON:.2f}" == "18.93"


@pytest.mark.parametrize(("percent", "found"), [("5.25", "68"), ("6", "78"), ("8.25", "107")])
def test_a_teaspoon_in_a_gallon(percent, found):
    """Recipe for 100 ppm READ Alaska DEC; CALC."""
    assert f"{of(percent, '1', US_TEASPOON):.0f}" == found


def test_a_tablespoon_of_the_stronger_bleach_passes_the_cap():
    """322 ppm, over 200. CALC."""
    assert f"{of('8.25', '1', US_TABLESPOON):.0f}" == "322"
    with pytest.raises(NoDose, match=r"1 level US tablespoon in 3\.79 L give 322 mg/L") as caught:
        recipe(bleach("8.25"), GALLON, Decimal(1), US_TABLESPOON)
    assert caught.value.key == "over-cap"
    assert caught.value.values["least_water"] == "6.1"


def test_one_in_ten():
    """About 0.53 %, 5,250 ppm: disinfecting, not sanitizing. READ pdf4pro.com, ehs.stanford.edu."""
    found = of("5.25", "100", MILLILITRE, Decimal(1))
    assert found == 5250
    assert abs(found / 10000 - Decimal("0.53")) <= Decimal("0.005")


def test_five_millilitres_in_a_litre():
    """ "4-5 %" gives about 200 ppm. READ somme2016.org (low authority)."""
    assert of("4", "1", METRIC_TEASPOON, Decimal(1)) == 200
    assert of("5", "1", METRIC_TEASPOON, Decimal(1)) == 250


@pytest.mark.parametrize(
    ("percent", "millilitres"),
    [("5.25", ("3.61", "7.21", "14.42")), ("6", ("3.15", "6.31", "12.62")),
     ("8.25", ("2.29", "4.59", "9.18"))],
)  # fmt: skip
def test_millilitres_per_gallon(percent, millilitres):
    """For 50, 100, 200 ppm. CALC, label weight percent taken as g/100 mL."""
    found = [
        exact_amount(bleach(percent), GALLON, Decimal(wanted)).value for wanted in (50, 100, 200)
    ]
    assert [f"{one:.2f}" for one in found] == list(millilitres)


def test_into_a_gallon_and_to_make_a_gallon():
    """204.3 against 205.1, less than 0.4 %. CALC."""
    into = of("5.25", "1", US_TABLESPOON, filling=Filling.INTO)
    made = of("5.25", "1", US_TABLESPOON)
    assert (f"{into:.1f}", f"{made:.1f}") == ("204.3", "205.1")
    assert made / into - 1 < Decimal("0.004")


def test_the_exact_method():
    """Stock 61.7 g/L: 200 ppm in 10 L needs 32.4 mL. CALC."""
    found = exact_amount(bleach("6.17"), Decimal(10), Decimal(200))
    assert f"{found.value:.1f} {found.unit}" == "32.4 mL"


@pytest.mark.parametrize(
    ("wanted", "water", "grams"),
    [("100", "10 L", "1.805"), ("100", "1 gal", "0.683"), ("200", "1 gal", "1.367")],
)
def test_powder(wanted, water, grams):
    """Grams = ppm x litres / (1000 x share), NaDCC dihydrate 55.4 %. CALC."""
    found = exact_amount(solid(DIHYDRATE), litres(quantity(water)), Decimal(wanted))
    assert f"{found.value:.3f} {found.unit}" == f"{grams} g"


def test_a_county_sheet_that_does_not_add_up():
    """ "1 tbsp per gallon" for "50-100 ppm". READ SNHD; 5.25 % bleach gives 205 (CALC)."""
    assert not 50 <= of("5.25", "1", US_TABLESPOON) <= 100


def test_packets_are_rounded_up_and_the_true_strength_is_told():
    """CALC: 2 x 0.554 g in 10 L."""
    product = packets(Decimal(1), DIHYDRATE)
    found = dose(product, Decimal(10), Decimal(100), packet(Decimal(1)))
    assert found.count == 2
    assert f"{found.strength:.1f}" == "110.8"
    assert strength(product, found.amount.value, Decimal(10)) == found.strength
