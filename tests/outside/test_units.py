"""Conversions against pint, and against the printed sizes of kitchen measures."""

from __future__ import annotations

from decimal import Decimal

import pint
import pytest

from kiosk.trade.kitchen_measures import US_CUP, US_FLUID_OUNCE, US_TABLESPOON, US_TEASPOON
from kiosk.trade.units import Quantity, degrees_celsius, grams, litres, seconds

VOLUMES = {
    "L": "liter", "mL": "milliliter", "gal": "gallon", "qt": "quart", "fl oz": "fluid_ounce",
    "cup": "cup", "imp gal": "imperial_gallon", "tsp": "teaspoon", "tbsp": "tablespoon",
}  # fmt: skip
MASSES = {"g": "gram", "kg": "kilogram", "oz": "ounce", "lb": "pound"}
TIMES = {"s": "second", "min": "minute", "h": "hour"}


@pytest.fixture(scope="module")
def registry():
    return pint.UnitRegistry(non_int_type=Decimal)


@pytest.mark.parametrize(
    ("convert", "to", "names"),
    [(litres, "liter", VOLUMES), (grams, "gram", MASSES), (seconds, "second", TIMES)],
)
def test_against_pint(registry, convert, to, names):
    """pint takes the US definitions of gallon, quart, fluid ounce, cup and spoons, as we do."""
    for unit, name in names.items():
        reference = (Decimal(3) * registry(name)).to(to).magnitude
        assert abs(convert(Quantity(Decimal(3), unit)) - reference) < Decimal("1e-12")


@pytest.mark.parametrize("fahrenheit", ["-40", "32", "55", "75", "100", "110", "120", "45"])
def test_temperatures_against_pint(registry, fahrenheit):
    """A temperature has an offset, so an absolute quantity is what pint converts."""
    reference = registry.Quantity(Decimal(fahrenheit), "degF").to("degC").magnitude
    found = degrees_celsius(Quantity(Decimal(fahrenheit), "°F"))
    assert abs(found - reference) < Decimal("1e-10")


@pytest.mark.parametrize(
    ("fahrenheit", "celsius", "printed"),
    [("55", "12.78", 13), ("75", "23.89", 24), ("100", "37.78", 38), ("110", "43.33", 43),
     ("120", "48.89", 49), ("45", "7.22", 7)],
)  # fmt: skip
def test_exact_conversions_beside_printed_pairs(fahrenheit, celsius, printed):
    """CALC; the printed pair is rounded."""
    found = degrees_celsius(Quantity(Decimal(fahrenheit), "°F"))
    assert f"{found:.2f}" == celsius
    assert round(found) == printed


@pytest.mark.parametrize(
    ("measure", "millilitres"),
    [(US_TABLESPOON, "14.787"), (US_TEASPOON, "4.929"), (US_FLUID_OUNCE, "29.574")],
)
def test_spoons(measure, millilitres):
    """tbsp 14.787, tsp 4.929, fl oz 29.574 mL: as the dilution checks take them."""
    assert f"{measure.size:.3f}" == millilitres


def test_the_gallon():
    """3785.41 mL: as the dilution checks take it."""
    assert f"{litres(Quantity(Decimal(1000), 'gal')):.2f}" == "3785.41"
    assert US_CUP.size * 16 == litres(Quantity(Decimal(1000), "gal"))
