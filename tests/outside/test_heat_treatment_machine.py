"""Machines that heat their product each night: 7 Pa. Code 39.54. READ pacodeandbulletin.gov."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.heat_treatment import DAY, Cycle, Lapse, dispensing, hold
from kiosk.trade.temperature_log import NoVerdict, Reading
from kiosk.trade.units import Quantity

MINUTE = 60
GAP = 5 * MINUTE


def log(*rows: tuple[float, str], unit: str = "°F") -> list[Reading]:
    return [Reading(minute * MINUTE, Quantity(Decimal(value), unit)) for minute, value in rows]


def level(value: str, begin: int, end: int, step: int = 5) -> list[Reading]:
    return log(*((minute, value) for minute in range(begin, end + 1, step)))


def test_thirty_minutes_at_150_fahrenheit():
    found = hold({"hopper": level("150", 0, 30), "barrel": level("151", 0, 40)}, GAP)
    assert found.held
    assert (found.longest, found.done_at) == (1800, 1800)
    assert found.worst_point == "hopper"


@pytest.mark.parametrize(
    ("hopper", "reason"),
    [
        (level("149.9", 0, 60), "too cold"),
        (level("150", 0, 25), "too short"),
        (level("150", 0, 20) + level("150", 26, 46), "a gap of 6 minutes"),
        (level("155", 0, 25) + log((28, "149")) + level("155", 30, 50), "a dip"),
        (level("155", 0, 60) + log((20, "140"), (40, "140")), "a cold point at the same instant"),
    ],
)
def test_what_breaks_a_hold(hopper, reason):
    assert not hold({"hopper": hopper, "barrel": level("160", 0, 60)}, GAP).held, reason
    assert not hold({"hopper": hopper[::-1], "barrel": level("160", 0, 60)}, GAP).held


def test_the_worst_point_counts_and_not_the_average():
    found = hold({"hopper": level("149", 0, 60), "barrel": level("190", 0, 60)}, GAP)
    assert not found.held
    assert found.worst_point == "hopper"


def test_every_part_is_hot_at_the_same_time():
    apart = {"hopper": level("150", 0, 30), "barrel": level("150", 20, 50)}
    found = hold(apart, GAP)
    assert not found.held
    assert found.longest == 600
    again = {"hopper": level("150", 0, 60), "barrel": level("150", 20, 60)}
    assert hold(again, GAP).done_at == 50 * MINUTE


def test_celsius_readings_meet_the_exact_conversion():
    """150 °F is 65.56 °C (CALC); the rule prints no °C."""
    assert not hold({"hopper": log((0, "65.55"), (5, "65.55"), unit="°C")}, GAP, needed=300).held
    assert hold({"hopper": log((0, "65.56"), (5, "65.56"), unit="°C")}, GAP, needed=300).held


def test_a_heated_and_stripped_machine_dispenses():
    found = dispensing([Cycle(10 * DAY, True)], 0, 10.5 * DAY)
    assert found.allowed
    assert found.days_since_strip == 10.5
    assert found.locks_at == 11 * DAY


@pytest.mark.parametrize(
    ("cycles", "stripped", "now", "lapses"),
    [
        ([Cycle(13 * DAY, True)], 0, 14 * DAY, ()),
        ([Cycle(13.5 * DAY, True)], 0, 14 * DAY + 1, (Lapse.STRIP_OVERDUE,)),
        ([Cycle(1 * DAY, True)], 0, 2 * DAY + 1, (Lapse.HEAT_OVERDUE,)),
        ([Cycle(1 * DAY, True), Cycle(1.4 * DAY, False)], 0, 1.5 * DAY, (Lapse.HEAT_FAILED,)),
        ([Cycle(1 * DAY, True), Cycle(1 * DAY, False)], 0, 1.5 * DAY, (Lapse.HEAT_FAILED,)),
        ([Cycle(1 * DAY, False), Cycle(1.4 * DAY, True)], 0, 1.5 * DAY, ()),
        ([], 0, DAY, (Lapse.NO_HEAT,)),
        ([], None, DAY, (Lapse.NO_HEAT, Lapse.NO_STRIP)),
    ],
)
def test_dispensing_locks_when_either_lapses(cycles, stripped, now, lapses):
    for order in (cycles, cycles[::-1]):
        found = dispensing(order, stripped, now)
        assert found.lapses == lapses
        assert found.allowed == (not lapses)
        assert (found.locks_at is None) == bool(lapses)


def test_the_earlier_due_time_locks():
    assert dispensing([Cycle(13.5 * DAY, True)], 0, 13.6 * DAY).locks_at == 14 * DAY


def test_bad_logs_and_clocks_are_refused_with_what_to_mend():
    with pytest.raises(NoVerdict, match="name every one"):
        hold({}, GAP)
    with pytest.raises(NoVerdict, match="'barrel' has no reading"):
        hold({"hopper": level("150", 0, 30), "barrel": []}, GAP)
    with pytest.raises(NoVerdict, match="zero or more"):
        hold({"hopper": level("150", 0, 30)}, GAP, needed=-1)
    with pytest.raises(NoVerdict, match="longest gap"):
        hold({"hopper": level("150", 0, 30)}, 0)
    with pytest.raises(NoVerdict, match="check the clock"):
        dispensing([Cycle(5, True)], 0, 4)
    with pytest.raises(NoVerdict, match="check the clock"):
        dispensing([], 5, 4)
    with pytest.raises(NoVerdict, match="no number of seconds"):
        dispensing([], None, float("nan"))
