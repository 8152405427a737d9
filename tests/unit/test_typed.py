"""Numbers and times as people type them: what is read, and what is refused with its sentence."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.languages.words import languages, words
from kiosk.trade.typed import (
    ACIDITY,
    MASS,
    PERCENT,
    PORTION,
    SAYS,
    STRENGTH,
    TEMPERATURE,
    TIME,
    WATER,
    NotTyped,
    read_number,
    read_quantity,
)
from kiosk.trade.typed_time import read_time_of_day
from kiosk.trade.units import Quantity


@pytest.mark.parametrize(
    ("text", "value"),
    [
        ("38.5", "38.5"), ("38,5", "38.5"), (" 7 ", "7"), (".5", "0.5"), (",5", "0.5"), ("+3", "3"),
        ("0.554", "0.554"), ("0,554", "0.554"), ("1,00", "1.00"), ("1,0000", "1.0000"),
        ("1234,567", "1234.567"), ("1,234.5", "1234.5"), ("1.234,5", "1234.5"),
        ("100,000", None), ("1 000", "1000"), ("1 000,5", "1000.5"), ("1\u202f000", "1000"),
        ("1\u00a0000", "1000"), ("１２．５", "12.5"), ("007", "7"),
    ],
)  # fmt: skip
def test_a_number(text, value):
    if value is None:
        with pytest.raises(NotTyped):
            read_number(text)
    else:
        assert read_number(text) == Decimal(value)


def test_two_thousands_marks_can_only_be_thousands():
    most = Decimal(10**9)
    assert read_number("1,000,000", most=most) == 1_000_000
    assert read_number("1.000.000", most=most) == 1_000_000
    assert read_number("1,000,000.5", most=most) == Decimal("1000000.5")


@pytest.mark.parametrize(
    ("text", "first", "second"),
    [("1,000", "1000", "1"), ("1.000", "1000", "1"), ("1,500", "1500", "1.5"),
     ("3.785", "3785", "3.7850"), ("999,999", "999999", "999.9990")],
)  # fmt: skip
def test_one_mark_with_three_digits_has_two_readings(text, first, second):
    with pytest.raises(NotTyped) as caught:
        read_number(text)
    assert caught.value.key == "typed-two-readings"
    assert caught.value.values == {"text": text, "first": first, "second": second}
    assert f"read as {first} or as {second}" in str(caught.value)


@pytest.mark.parametrize("text", ["1,000", "1.000", "1,500", "3.785", "120,050", "-2.345"])
def test_both_ways_out_of_two_readings_can_be_typed(text):
    with pytest.raises(NotTyped) as caught:
        read_number(text, least=Decimal(-10_000))
    found = caught.value.values
    first = read_number(found["first"], least=Decimal(-10_000))
    assert first == 1000 * read_number(found["second"], least=Decimal(-10_000))


@pytest.mark.parametrize(
    ("text", "key", "says"),
    [
        ("", "typed-nothing", "Type a number"), ("  ", "typed-nothing", "Type a number"),
        ("abc", "typed-no-number", "in digits"), ("1e3", "typed-no-number", "in digits"),
        ("NaN", "typed-no-number", "in digits"), ("inf", "typed-no-number", "in digits"),
        ("5.", "typed-no-number", "in digits"), ("1..5", "typed-no-number", "in digits"),
        ("1,2,3", "typed-no-number", "in digits"), ("1,00,000", "typed-no-number", "in digits"),
        ("--5", "typed-no-number", "in digits"), ("٣", "typed-no-number", "in digits"),
        ("1O0", "typed-no-number", "in digits"), ("1/2", "typed-fraction", "as 0.5"),
        ("½", "typed-fraction", "as 0.5"), ("1½", "typed-fraction", "as 0.5"),
        ("10³", "typed-fraction", "raised digit"), ("12 50", "typed-mixed", "one number"),
        ("-5", "typed-negative", "below zero"), ("−5", "typed-negative", "below zero"),
        ("9" * 60, "typed-out-of-range", "between 0 and 1000000"),
    ],
)  # fmt: skip
def test_what_is_no_number(text, key, says):
    with pytest.raises(NotTyped, match=says) as caught:
        read_number(text)
    assert caught.value.key == key
    assert all(len(value) <= 41 for value in caught.value.values.values())


@pytest.mark.parametrize(
    ("text", "wanted", "value", "unit"),
    [
        ("8 L", WATER, "8", "L"), ("8l", WATER, "8", "L"), ("2,5 litros", WATER, "2.5", "L"),
        ("2.5 gal", WATER, "2.5", "gal"), ("3 US gallons", WATER, "3", "gal"),
        ("3 imperial gallons", WATER, "3", "imp gal"), ("6 qt", WATER, "6", "qt"),
        ("64 fl. oz.", WATER, "64", "fl oz"), ("12 cups", WATER, "12", "cup"),
        ("750 mL", WATER, "750", "mL"), ("500 ㎖", WATER, "500", "mL"), ("8 리터", WATER, "8", "L"),
        ("24 °C", TEMPERATURE, "24", "°C"), ("24 ºC", TEMPERATURE, "24", "°C"),
        ("24℃", TEMPERATURE, "24", "°C"), ("-5 c", TEMPERATURE, "-5", "°C"),
        ("75 F", TEMPERATURE, "75", "°F"), ("−4 °F", TEMPERATURE, "-4", "°F"),
        ("100 ppm", STRENGTH, "100", "mg/L"), ("100 mg/l", STRENGTH, "100", "mg/L"),
        ("8.25%", PERCENT, "8.25", "%"), ("8,25 %", PERCENT, "8.25", "%"),
        ("7.5", ACIDITY, "7.5", "pH"), ("pH 7,5", ACIDITY, "7.5", "pH"),
        ("7 pH", ACIDITY, "7", "pH"),
        ("2 g", MASS, "2", "g"), ("1 lb", MASS, "1", "lb"), ("8 oz", MASS, "8", "oz"),
        ("5 ml", PORTION, "5", "mL"), ("30 seg", TIME, None, None), ("30 s", TIME, "30", "s"),
    ],
)  # fmt: skip
def test_a_quantity_keeps_the_unit_in_which_it_was_typed(text, wanted, value, unit):
    if value is None:
        with pytest.raises(NotTyped, match="Use one of"):
            read_quantity(text, wanted)
    else:
        assert read_quantity(text, wanted) == Quantity(Decimal(value), unit)


@pytest.mark.parametrize(
    ("text", "wanted", "key", "says"),
    [
        ("8", WATER, "typed-no-unit", "L, mL, gal, qt, fl oz, cup, imp gal"),
        ("8.25", PERCENT, "typed-no-unit", "Add one of: %"),
        ("24", TEMPERATURE, "typed-no-unit", "°C, °F"),
        ("8 bushels", WATER, "typed-unknown-unit", "“bushels”"),
        ("8 kg", WATER, "typed-unknown-unit", "L, mL, gal"),
        ("8 T", WATER, "typed-unknown-unit", "“T”"),
        ("8 oz", WATER, "typed-ounce", "fl oz"),
        ("3 gal 2 L", WATER, "typed-mixed", "one number with one unit"),
        ("3 gal 2", WATER, "typed-mixed", "one number with one unit"),
        ("3 2 L", WATER, "typed-mixed", "one number with one unit"),
        ("8-10 L", WATER, "typed-mixed", "one number"),
        ("1,000 mL", WATER, "typed-two-readings", "1000 or as 1"),
        ("-8 L", WATER, "typed-negative", "below zero"),
        ("0 L", WATER, "typed-out-of-range", "between 0.1 L and 1000 L"),
        ("8000 L", WATER, "typed-out-of-range", "8000 L cannot be right"),
        ("300 gal", WATER, "typed-out-of-range", "300 gal"),
        ("400 °F", TEMPERATURE, "typed-out-of-range", "150 °C"),
        ("-100 °C", TEMPERATURE, "typed-out-of-range", "-50 °C"),
        ("15", ACIDITY, "typed-out-of-range", "14 pH"),
        ("101 %", PERCENT, "typed-out-of-range", "100 %"),
        ("½ cup", WATER, "typed-fraction", "as 0.5"),
        ("1/2 cup", WATER, "typed-fraction", "as 0.5"),
        ("litres", WATER, "typed-no-number", "in digits"),
        ("{text} L", WATER, "typed-no-number", "{text}"),
        ("5 {unit}", WATER, "typed-unknown-unit", "{unit}"),
    ],
)  # fmt: skip
def test_what_is_no_quantity(text, wanted, key, says):
    with pytest.raises(NotTyped) as caught:
        read_quantity(text, wanted)
    assert caught.value.key == key
    assert says in str(caught.value)


@pytest.mark.parametrize(
    ("text", "twelve_hours", "minutes"),
    [
        ("12:00", False, 720), ("00:00", False, 0), ("7:30", False, 450), ("23:59", False, 1439),
        ("7:30 pm", False, 1170), ("12:00 am", True, 0), ("12:00 pm", True, 720),
        ("12:30 a.m.", True, 30), ("7 PM", True, 1140), ("13:00", True, 780), ("0:15", True, 15),
        ("noon", True, 720), ("medianoche", True, 0), ("오후 7:30", True, 1170),
        ("오전 12:00", True, 0),
        ("7:30 p. m.", True, 1170),
    ],
)  # fmt: skip
def test_a_time_of_day(text, twelve_hours, minutes):
    assert read_time_of_day(text, twelve_hours) == minutes


def test_twelve_o_clock_comes_twice():
    with pytest.raises(NotTyped, match=r"midnight or noon\. Type 12:00 am or 12:00 pm") as caught:
        read_time_of_day("12:00", twelve_hours=True)
    assert caught.value.key == "typed-twelve"
    assert read_time_of_day(caught.value.values["first"], twelve_hours=True) == 0
    assert read_time_of_day(caught.value.values["second"], twelve_hours=True) == 720


@pytest.mark.parametrize(
    ("text", "key"),
    [
        ("7:30", "typed-half-of-day"), ("12:30", "typed-half-of-day"), ("", "typed-nothing"),
        ("7", "typed-no-time"), ("7.30", "typed-no-time"), ("later", "typed-no-time"),
        ("7:5", "typed-no-time"), ("오전 7:30 pm", "typed-no-time"),
        ("24:00", "typed-no-such-time"), ("12:60", "typed-no-such-time"),
        ("13:00 pm", "typed-no-such-time"), ("0:30 am", "typed-no-such-time"),
    ],
)  # fmt: skip
def test_what_is_no_time_of_day(text, key):
    with pytest.raises(NotTyped) as caught:
        read_time_of_day(text, twelve_hours=True)
    assert caught.value.key == key


@pytest.mark.parametrize("key", sorted(SAYS))
def test_each_refusal_can_be_said_in_each_language(key):
    """The English message file says just what the refusal itself says."""
    places = ("text", "first", "second", "units", "unit", "number", "least", "most")
    values = {name: f"<{name}>" for name in places if f"{{{name}}}" in SAYS[key]}
    assert words("en").say(key, **values) == str(NotTyped(key, **values))
    for language in languages():
        said = words(language).say(key, **values)
        assert all(value in said for value in values.values())
