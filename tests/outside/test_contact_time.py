"""Food Code 4-703.11: how long a solution or hot water must stay on.

READ (state): Wisconsin ATCP 75 App. 4-703.11 (Aug 2020); Maine 10-144 ch. 200; DC 25-A2002. The
vectors are CALC from it and 4-501.114.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.solution import Label, Why
from kiosk.trade.solution_table import Agent
from tests.outside.profiles import verdict, ways

VECTORS = [
    ("50", "8.0", "24 °C", 7, None),
    ("50", "8.1", "24 °C", None, "warmer 38 °C"),
    ("50", "10.0", "38 °C", 7, None),
    ("75", "7.5", "75 °F", 10, None),
    ("100", "10.0", "13 °C", 10, None),
    ("100", "7.0", "12 °C", None, "warmer 13 °C"),
    ("49", "7.0", "24 °C", None, "warmer 49 °C"),
    ("25", "9.0", "120 °F", 10, None),
    ("24", "7.0", "49 °C", None, "stronger 25 mg/L"),
    ("201", "7.0", "24 °C", None, "weaker 200 mg/L"),
    ("100", "10.5", "38 °C", None, "lower pH 10 pH"),
]


@pytest.mark.parametrize(("strength", "ph", "temperature", "seconds", "way"), VECTORS)
def test_vectors(strength, ph, temperature, seconds, way):
    """CALC."""
    found = verdict(strength, ph, temperature)
    assert found.passes is (seconds is not None)
    assert found.seconds == seconds
    if way:
        assert (way,) in ways(found)


@pytest.mark.parametrize(
    ("strength", "ph", "temperature", "seconds"),
    [("50", "10", "100 °F", 7), ("50", "8", "75 °F", 7), ("50", "10", "37.9 °C", None),
     ("50.1", "8", "75 °F", 10), ("51", "8", "75 °F", 10), ("99", "10", "38 °C", 10)],
)  # fmt: skip
def test_seven_seconds_are_for_fifty_milligrams_only(strength, ph, temperature, seconds):
    """READ (state)."""
    assert verdict(strength, ph, temperature).seconds == seconds


def test_other_chemical_sanitizers():
    """30 s. READ (state)."""
    quat = Label(agent=Agent.QUAT, least=Decimal(200))
    assert verdict("20", "5", "20 °C", agent=Agent.IODINE).seconds == 30
    assert verdict("200", None, "24 °C", agent=Agent.QUAT, hardness="80", label=quat).seconds == 30


@pytest.mark.parametrize(("labelled", "seconds"), [("60", 60), ("5", 10)])
def test_a_longer_time_on_the_label_wins(labelled, seconds):
    """Newer text ties times to the label. READ (state); a shorter one never undercuts the row."""
    label = Label(agent=Agent.CHLORINE, seconds=Decimal(labelled))
    assert verdict("100", "7", "24 °C", label=label).seconds == seconds


@pytest.mark.parametrize(
    ("temperature", "passes"),
    [("171 °F", True), ("77 °C", True), ("170.9 °F", False), ("76.9 °C", False)],
)
def test_hot_water_by_hand(temperature, passes):
    """171 °F (77 °C), 4-501.111: READ WAC 246-215-04550; 30 s, 4-703.11(A): READ (state)."""
    found = verdict(None, None, temperature, agent=Agent.HOT_WATER)
    assert found.seconds == (30 if passes else None)


@pytest.mark.parametrize(
    ("temperature", "passes"),
    [("160 °F", True), ("71 °C", True), ("159 °F", False), ("70.9 °C", False)],
)
def test_hot_water_in_a_machine(temperature, passes):
    """160 °F (71 °C) at the utensil's surface. READ WAC 246-215-04550."""
    assert verdict(None, None, temperature, agent=Agent.HOT_WATER_MACHINE).passes is passes


def test_what_was_not_measured_does_not_pass():
    assert ways(verdict("100", None, "24 °C")) == {("measure pH",)}
    assert ways(verdict("100", "7", None)) == {("measure temperature",)}
    unread = verdict(None, "7", "24 °C")
    assert unread.why is Why.NO_ROW
    assert ("measure strength",) in ways(unread)
