"""California HSC 114099.6, by hand, and 113996. READ california.public.law; codes.findlaw.com."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.solution import Label, Why
from kiosk.trade.solution_table import Agent
from tests.outside.profiles import profile, verdict

CALIFORNIA = "california-retail-food-code"


def test_one_hundred_milligrams_for_thirty_seconds():
    """READ."""
    assert verdict("100", "8", "24 °C", by=CALIFORNIA).seconds == 30
    assert not verdict("99", "8", "49 °C", by=CALIFORNIA).passes


def test_iodine_twenty_five_for_a_minute():
    """READ; no more than 25 mg/L (MEM)."""
    assert verdict("25", "5", "20 °C", agent=Agent.IODINE, by=CALIFORNIA).seconds == 60
    assert not verdict("24", "5", "20 °C", agent=Agent.IODINE, by=CALIFORNIA).passes
    too_strong = verdict("26", "5", "20 °C", agent=Agent.IODINE, by=CALIFORNIA)
    assert too_strong.why is Why.OVER_CAP


def test_quats_two_hundred_for_a_minute():
    """READ."""
    label = Label(agent=Agent.QUAT, least=Decimal(150), most=Decimal(400))
    quat = {"agent": Agent.QUAT, "by": CALIFORNIA, "hardness": "100", "label": label}
    assert verdict("200", None, "24 °C", **quat).seconds == 60
    assert not verdict("199", None, "24 °C", **quat).passes


def test_hot_water():
    """171 °F for 30 s. READ."""
    assert verdict(None, None, "171 °F", agent=Agent.HOT_WATER, by=CALIFORNIA).seconds == 30
    assert not verdict(None, None, "170 °F", agent=Agent.HOT_WATER, by=CALIFORNIA).passes


@pytest.mark.parametrize(
    ("name", "unit", "end", "value"),
    [("mix temperature", "°F", "most", 41), ("mix temperature", "°C", "most", 5),
     ("contact time", "s", "least", 30), ("sanitizer strength", "mg/L", "least", 100),
     ("sanitizer strength", "mg/L", "most", 200)],
)  # fmt: skip
def test_limits_of_the_steps(name, unit, end, value):
    """113996(a) prints 41 °F (READ), exactly 5 °C (CALC); the rest 114099.6 (READ)."""
    assert getattr(profile(CALIFORNIA).limits[name].bounds[unit], end) == value
