"""Listed pairs of temperature and time for mix and milk, and nothing in between.

READ: seen in the stored text of the rule named; CALC: computed here.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.heat_treatment import (
    CONNECTICUT_PAIRS,
    MILK_PAIRS,
    MIX_PAIRS,
    USDA_MIX_PAIRS,
    apparent_z,
    met_pair,
    milk_pairs,
)
from kiosk.trade.temperature_log import NoVerdict, Reading
from kiosk.trade.units import Quantity


def held(value: str, seconds: float, unit: str = "°F") -> dict[str, list[Reading]]:
    temperature = Quantity(Decimal(value), unit)
    return {"hopper": [Reading(0.0, temperature), Reading(seconds, temperature)]}


def rows(pairs):
    return [(int(one.limit.fahrenheit), float(one.seconds)) for one in pairs]


def test_frozen_dessert_mix():
    """155 °F (69 °C) 30 min; 175 (80) 25 s; 180 (83) 15 s. READ 25 TAC 217.46(p), MCL 288.697."""
    assert rows(MIX_PAIRS) == [(155, 1800), (175, 25), (180, 15)]
    assert [one.limit.celsius for one in MIX_PAIRS] == [69, 80, 83]


def test_federal_ice_cream_mix():
    """155 °F/30 min or 175 °F/25 s. READ 7 CFR 58.635."""
    assert rows(USDA_MIX_PAIRS) == [(155, 1800), (175, 25)]


def test_milk():
    """READ MCL 288.697, SDCL 40-32-2."""
    assert rows(MILK_PAIRS) == [
        (145, 1800), (161, 15), (191, 1), (194, 0.5), (201, 0.1), (204, 0.05), (212, 0.01),
    ]  # fmt: skip


@pytest.mark.parametrize(
    ("fat", "sweetened", "least"), [("9.9", False, 145), ("10", False, 150), ("3.5", True, 150)]
)
def test_fat_or_sugar_asks_for_five_degrees_more(fat, sweetened, least):
    """+5 °F if fat >= 10 % or sweetened. READ MCL 288.697."""
    pairs = milk_pairs(Decimal(fat), sweetened)
    assert rows(pairs)[0] == (least, 1800)
    assert (met_pair(held("148", 1800), 60 * 60, pairs) is None) == (least == 150)


def test_connecticut():
    """160/15 min, 165/10 min, 170/5 min, 200 °F/3 s, 210 °F/0 s. READ 21a-58-13."""
    assert rows(CONNECTICUT_PAIRS) == [(160, 900), (165, 600), (170, 300), (200, 3), (210, 0)]


@pytest.mark.parametrize("pairs", [MIX_PAIRS, USDA_MIX_PAIRS, MILK_PAIRS, CONNECTICUT_PAIRS])
def test_every_pair_names_its_source_and_tag(pairs):
    assert all("READ" in one.source for one in pairs)


@pytest.mark.parametrize("pair", [*MIX_PAIRS, *MILK_PAIRS, *CONNECTICUT_PAIRS])
def test_on_the_pair_is_enough_and_a_hair_below_is_not(pair):
    value, seconds = pair.limit.fahrenheit, float(pair.seconds)
    assert met_pair(held(str(value), seconds), 3600, (pair,)) is pair
    assert met_pair(held(str(value - Decimal("0.1")), seconds), 3600, (pair,)) is None
    if seconds:
        assert met_pair(held(str(value), seconds * 0.999), 3600, (pair,)) is None


def test_nothing_is_legal_between_two_pairs():
    """165 °F for 10 min is Connecticut's alone: 25 TAC lists 155/30 min and 175/25 s. READ."""
    between = held("165", 600)
    assert met_pair(between, 3600, MIX_PAIRS) is None
    assert met_pair(between, 3600, CONNECTICUT_PAIRS) is CONNECTICUT_PAIRS[1]
    assert met_pair(held("174.9", 1799), 3600, MIX_PAIRS) is None


def test_a_printed_celsius_binds_a_reading_in_celsius():
    """155 °F is 68.33 °C exactly, the rule prints 69 °C. READ 25 TAC 217.46(p)."""
    assert met_pair(held("68.9", 1800, "°C"), 3600, MIX_PAIRS) is None
    assert met_pair(held("69", 1800, "°C"), 3600, MIX_PAIRS) is MIX_PAIRS[0]
    assert met_pair(held("68.33", 1800, "°C"), 3600, USDA_MIX_PAIRS) is None
    assert met_pair(held("68.34", 1800, "°C"), 3600, USDA_MIX_PAIRS) is USDA_MIX_PAIRS[0]


def test_readings_given_once_are_tried_against_every_pair():
    once = {point: iter(readings) for point, readings in held("180", 15).items()}
    assert met_pair(once, 3600, MIX_PAIRS) is MIX_PAIRS[2]


@pytest.mark.parametrize(
    ("one", "other", "fahrenheit", "celsius"),
    [(MIX_PAIRS[0], MIX_PAIRS[1], 10.8, 6.0), (MIX_PAIRS[1], MIX_PAIRS[2], 22.5, 12.5),
     (MILK_PAIRS[0], MILK_PAIRS[1], 7.7, 4.3)],
)  # fmt: skip
def test_the_pairs_lie_on_no_one_line(one, other, fahrenheit, celsius):
    """CALC: z 10.8 °F (6.0 °C), 22.5 °F, milk 7.7 °F (4.3 °C)."""
    found = apparent_z(one, other).value
    assert round(found, 1) == fahrenheit
    assert round(found * 5 / 9, 1) == celsius


def test_no_slope_without_two_times_and_no_milk_without_sense():
    with pytest.raises(NoVerdict, match="different times"):
        apparent_z(MIX_PAIRS[0], MILK_PAIRS[0])
    with pytest.raises(NoVerdict, match="from 0 to 100"):
        milk_pairs(Decimal(101), False)
