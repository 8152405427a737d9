"""Cold holding, time as control, cooling and cleaning times against published clauses.

READ (state): seen in a state adoption that carries the Food Code's section number.
"""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.trade.cold_holding import (
    DAIRY_COLD,
    FOUR_HOURS,
    SIX_HOURS,
    Cooling,
    Ground,
    Spell,
    account,
    cleaning_hours,
    cooling,
    last_proven_cold,
    time_as_control,
)
from kiosk.trade.temperature_log import NoVerdict, Reading, celsius
from kiosk.trade.units import Quantity

HOUR = 3600
QUARTER = 900


def log(*rows: tuple[float, str], unit: str = "°F") -> list[Reading]:
    """Readings at minutes."""
    return [Reading(minute * 60, Quantity(Decimal(value), unit)) for minute, value in rows]


def control(readings, rule, now_h, *, removed_h=0.0, marked_h=None, written=True, gap=QUARTER):
    if marked_h is None:
        marked_h = removed_h + rule.hours
    return time_as_control(
        readings, rule, removed_h * HOUR, now_h * HOUR, gap, marked_h * HOUR, written
    )


@pytest.mark.parametrize(
    ("value", "unit", "standing"),
    [("41", "°F", Spell.COLD), ("41.1", "°F", Spell.WARM), ("5", "°C", Spell.COLD),
     ("5.1", "°C", Spell.WARM)],
)  # fmt: skip
def test_the_limit_itself_is_cold_in_the_unit_of_the_reading(value, unit, standing):
    """3-501.16(A)(2): 41 °F (5 °C) or less. READ (state) 16 Del. 3-501.16, WAC 246-215-03525."""
    assert account(log((0, value), unit=unit), QUARTER).standing is standing


def test_dairy_rules_allow_45_fahrenheit():
    """Storage of mix at most 45 °F. READ COMAR 10.15.05.25."""
    readings = log((0, "44"), (10, "45"))
    assert account(readings, QUARTER, DAIRY_COLD).standing is Spell.COLD
    assert account(readings, QUARTER).standing is Spell.WARM


def test_time_is_shared_out():
    """Warm when either end is warm; unknown across a gap; two warm spells, 20 and 10 minutes."""
    readings = log(
        (0, "40"), (10, "43"), (20, "40"), (30, "40"), (60, "40"), (65, "42"), (70, "40")
    )
    found = account(readings, QUARTER)
    minutes = [one / 60 for one in (found.cold, found.warm, found.unknown)]
    assert minutes == [10, 30, 30]
    assert found.longest_warm / 60 == 20
    assert found.longest_unproven / 60 == 40
    assert found.unproven / 60 == 60
    assert found.standing is Spell.WARM


def test_a_gap_is_unknown_and_never_cold():
    found = account(log((0, "38"), (16, "38")), QUARTER)
    assert (found.cold, found.unknown) == (0, 960)
    assert found.standing is Spell.UNKNOWN
    assert account(log((0, "38"), (15, "38")), QUARTER).standing is Spell.COLD


def test_time_before_the_first_and_after_the_last_reading_is_unknown():
    found = account(log((10, "38"), (20, "38")), QUARTER, since=0, until=30 * 60)
    assert (found.cold, found.unknown) == (600, 1200)
    part = account(log((0, "38"), (10, "38")), QUARTER, since=120, until=300)
    assert (part.cold, part.standing) == (180, Spell.COLD)
    before = account(log((0, "38")), QUARTER, since=-600, until=-300)
    assert (before.unknown, before.standing) == (300, Spell.UNKNOWN)


def test_one_warm_reading_makes_it_warm_even_with_no_time_about_it():
    assert account(log((0, "44")), QUARTER).standing is Spell.WARM
    assert account(log((0, "38"), (60, "44")), QUARTER).standing is Spell.WARM


def test_four_hours_from_the_cold():
    """3-501.19(B): cold at the start, marked 4 h ahead, gone at the mark. READ (state)."""
    readings = log((0, "41"))
    assert control(readings, FOUR_HOURS, 3.99).usable
    assert control(readings, FOUR_HOURS, 3.99).discard_at == 4 * HOUR
    assert control(readings, FOUR_HOURS, 4).grounds == (Ground.TIME_IS_UP,)


def test_under_the_four_hour_rule_no_later_temperature_matters():
    """3-501.19(B)(3): served at any temperature within 4 h. READ Wisconsin 3-501.19."""
    assert control(log((0, "41"), (60, "75")), FOUR_HOURS, 2).usable


@pytest.mark.parametrize(
    ("readings", "reason"),
    [
        (log((0, "42")), "warm at the start"),
        (log((-16, "38")), "read too long before"),
        (log((1, "38")), "read only afterwards"),
        (log((-5, "38"), (0, "42")), "warm since the cold reading"),
        (log((0, "38"), (0, "42")), "warm at one of two points"),
    ],
)
def test_mix_not_shown_to_be_cold_at_the_start_goes(readings, reason):
    """3-501.19(B)(1) and (C)(1). READ (state)."""
    assert control(readings, FOUR_HOURS, 1).grounds == (Ground.START_NOT_COLD,), reason


def test_unmarked_or_marked_too_late_or_without_procedure_goes():
    """3-501.19(A)(1), (B)(2), (B)(4). READ Wisconsin 3-501.19."""
    readings = log((0, "38"))
    unmarked = time_as_control(readings, FOUR_HOURS, 0, HOUR, QUARTER, None, True)
    assert unmarked.grounds == (Ground.UNMARKED,)
    late = control(readings, FOUR_HOURS, 1, marked_h=4.1)
    assert late.grounds == (Ground.MARKED_TOO_LATE,)
    assert late.discard_at == 4 * HOUR
    assert control(readings, FOUR_HOURS, 1, written=False).grounds == (Ground.NO_PROCEDURE,)
    early = control(readings, FOUR_HOURS, 2, marked_h=2)
    assert early.grounds == (Ground.TIME_IS_UP,)


def test_six_hours_while_never_above_70_fahrenheit():
    """3-501.19(C): cold at the start, never above 70 °F (21 °C), watched. READ (state)."""
    readings = log(*((minute, "70") for minute in range(15, 361, 15)), (0, "41"))
    assert control(readings, SIX_HOURS, 5.9).usable
    assert control(readings, SIX_HOURS, 6).grounds == (Ground.TIME_IS_UP,)
    warm = [*readings, *log((100, "70.1"))]
    assert control(warm, SIX_HOURS, 3).grounds == (Ground.TOO_WARM,)
    assert control(warm, SIX_HOURS, 1.5).usable
    assert control([*readings, *log((100, "21"), unit="°C")], SIX_HOURS, 3).usable
    assert not control([*readings, *log((100, "21.1"), unit="°C")], SIX_HOURS, 3).usable


@pytest.mark.parametrize("missing", [15, 90, 165, 180])
def test_six_hours_are_not_allowed_across_a_gap(missing):
    """3-501.19(C)(2): the warmest part is monitored. READ Wisconsin 3-501.19."""
    kept = log(*((minute, "60") for minute in range(15, 181, 15) if minute != missing), (0, "41"))
    assert control(kept, SIX_HOURS, 3.1).grounds == (Ground.NOT_WATCHED,)


def test_after_a_power_loss_the_clock_began_at_the_last_proven_cold():
    """A cold reading after the gap says nothing of the gap, and does not stop the clock."""
    readings = log((0, "39"), (10, "40"), (130, "40"), (140, "39"))
    start = last_proven_cold(readings, QUARTER, 140 * 60)
    assert start == 600
    back = time_as_control(readings, FOUR_HOURS, start, 140 * 60, QUARTER, start + 4 * HOUR, True)
    assert back.usable
    assert back.discard_at == 600 + 4 * HOUR
    later = time_as_control(readings, FOUR_HOURS, start, 251 * 60, QUARTER, start + 4 * HOUR, True)
    assert later.grounds == (Ground.TIME_IS_UP,)


def test_a_logger_on_a_battery_proves_the_cold_across_a_power_loss():
    readings = log(*((minute, "40") for minute in range(0, 141, 10)))
    assert last_proven_cold(readings, QUARTER, 140 * 60) == 140 * 60
    assert last_proven_cold(log((0, "42"), (5, "38")), QUARTER, 300) is None
    assert last_proven_cold(log((0, "38"), (5, "42"), (10, "38")), QUARTER, 600) == 0


def test_fresh_mix_is_cold_within_four_hours():
    """3-501.14(B): ambient ingredients cooled to 41 °F within 4 h. READ WAC 246-215-03515(3)."""
    warm = log((0, "70"), (120, "50"))
    assert cooling(warm, 0, 2 * HOUR) is Cooling.STILL_COOLING
    assert cooling([*warm, *log((240, "41"))], 0, 5 * HOUR) is Cooling.COOLED
    assert cooling([*warm, *log((240, "41"))], 0, 3 * HOUR) is Cooling.STILL_COOLING
    assert cooling([*warm, *log((241, "41"))], 0, 5 * HOUR) is Cooling.TOO_SLOW
    assert cooling([*warm, *log((240, "41"), (240, "43"))], 0, 5 * HOUR) is Cooling.TOO_SLOW
    assert cooling(warm, 0, 4.1 * HOUR) is Cooling.TOO_SLOW


@pytest.mark.parametrize(
    ("value", "unit", "hours"),
    [("41", "°F", 24), ("41.1", "°F", 20), ("45", "°F", 20), ("45.1", "°F", 16), ("50", "°F", 16),
     ("50.1", "°F", 10), ("55", "°F", 10), ("55.1", "°F", 4), ("5", "°C", 24), ("7.2", "°C", 20),
     ("10", "°C", 16), ("12.8", "°C", 10), ("12.9", "°C", 4)],
)  # fmt: skip
def test_cleaning_times_in_a_refrigerated_room(value, unit, hours):
    """4-602.11(D)(2), else 4 h by (C). READ (state) WAC 246-215-04605, Minn. R. 4626.0845."""
    assert cleaning_hours(Quantity(Decimal(value), unit)) == hours


def test_a_room_that_nobody_measured_leaves_four_hours():
    """4-602.11(C): at least every 4 h. READ WAC 246-215-04605."""
    assert cleaning_hours(None) == 4


@pytest.mark.parametrize(
    ("value", "unit", "key"),
    [("-127", "°C", "absurd"), ("400", "°F", "absurd"), ("NaN", "°C", "absurd"),
     ("Infinity", "°F", "absurd"), ("4", "L", "bad-unit")],
)  # fmt: skip
def test_a_reading_no_probe_can_take_is_refused(value, unit, key):
    with pytest.raises(NoVerdict) as caught:
        Reading(0.0, Quantity(Decimal(value), unit))
    assert caught.value.key == key
    assert caught.value.values


def test_bad_questions_are_refused_with_what_to_mend():
    cold = log((0, "38"))
    with pytest.raises(NoVerdict, match="take one and write it down"):
        account([], QUARTER)
    with pytest.raises(NoVerdict, match="swap the two"):
        account(cold, QUARTER, since=10, until=5)
    for gap in (0, -1, float("nan"), float("inf")):
        with pytest.raises(NoVerdict, match="longest gap"):
            account(cold, gap)
    with pytest.raises(NoVerdict, match="check the clock"):
        control(cold, FOUR_HOURS, 1, removed_h=2)
    with pytest.raises(NoVerdict, match="check the clock"):
        cooling(cold, 10, 5)
    for at in (float("nan"), float("inf")):
        with pytest.raises(NoVerdict, match="no number of seconds"):
            Reading(at, Quantity(Decimal(38), "°F"))
        with pytest.raises(NoVerdict, match="no number of seconds"):
            time_as_control(cold, FOUR_HOURS, 0, at, QUARTER, 1, True)
    with pytest.raises(NoVerdict, match="no unit of temperature"):
        celsius(Quantity(Decimal(1), "L"))


@pytest.mark.parametrize(
    ("fahrenheit", "exact"),
    [("55", 12.78), ("75", 23.89), ("100", 37.78), ("110", 43.33), ("120", 48.89), ("45", 7.22)],
)
def test_exact_conversions_of_printed_temperatures(fahrenheit, exact):
    """CALC; codes print 13, 24, 38, 43, 49 and 7."""
    assert round(celsius(Quantity(Decimal(fahrenheit), "°F")), 2) == exact
