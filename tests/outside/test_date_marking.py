"""Days of use of opened mix against published clauses, and which mix is poured next.

READ: seen in stored text; CALC: computed from the clause.
"""

from __future__ import annotations

from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal

import pytest

from kiosk.trade.code_dates import (
    FOUR_DAYS,
    SEVEN_DAYS,
    Bar,
    Freeze,
    NoDate,
    Package,
    date_rule,
    discard_at,
    pour_next,
    site_zone,
    standing,
)
from kiosk.trade.temperature_log import NoVerdict
from kiosk.trade.units import Quantity


def march(day: int) -> date:
    return date(2026, 3, day)


LATER = date(2026, 12, 1)
OPENED = Package("vanilla", True, march(2), LATER)
FROZEN = replace(OPENED, freezes=(Freeze(march(4), march(10)),))


def test_the_day_of_opening_is_day_one():
    """3-501.17: at most 7 days. READ Minn. R. 4626.0400. Mon 2 Mar to Sun 8 Mar: CALC."""
    assert march(2).strftime("%a") == "Mon"
    first = standing(OPENED, march(2))
    assert (first.last_day, first.days_left) == (march(8), 7)
    assert standing(OPENED, march(8)).usable
    assert standing(OPENED, march(9)).bars == (Bar.DAYS_ARE_UP,)
    assert standing(OPENED, march(9)).days_left == 0


@pytest.mark.parametrize("zone", ["America/New_York", "Asia/Seoul", "Europe/Madrid"])
def test_it_goes_at_the_start_of_the_ninth_of_march(zone):
    """Discard at the start of 9 Mar in the site's zone: CALC."""
    hours = {"America/New_York": 4, "Asia/Seoul": -9, "Europe/Madrid": -1}[zone]
    utc_midnight = (march(9) - date(1970, 1, 1)).days * 86400
    assert discard_at(march(8), site_zone(zone)) == utc_midnight + hours * 3600


def test_freezing_stops_the_clock_and_does_not_reset_it():
    """READ Minn. R. 4626.0400. Frozen 4 Mar, 3 days used; thawed 10 Mar, 10 to 13 Mar: CALC."""
    thawed = standing(FROZEN, march(10))
    assert (thawed.days_left, thawed.last_day) == (4, march(13))
    assert standing(FROZEN, march(13)).usable
    assert standing(FROZEN, march(14)).bars == (Bar.DAYS_ARE_UP,)


def test_frozen_mix_keeps_its_days_but_is_not_poured():
    still = replace(OPENED, freezes=(Freeze(march(4)),))
    for day in (5, 9, 30):
        found = standing(still, march(day))
        assert (found.days_left, found.last_day, found.bars) == (4, None, (Bar.FROZEN,))
    assert standing(still, march(4)).bars == (Bar.FROZEN,)
    assert standing(FROZEN, march(7)).bars == (Bar.FROZEN,)
    assert standing(FROZEN, march(7)).days_left == 4


def test_freezing_after_the_last_day_revives_nothing():
    late = replace(OPENED, freezes=(Freeze(march(9), march(20)),))
    assert standing(late, march(9)).bars == (Bar.DAYS_ARE_UP,)
    assert Bar.DAYS_ARE_UP in standing(late, march(15)).bars
    assert standing(late, march(20)).bars == (Bar.DAYS_ARE_UP,)
    assert standing(late, march(20)).last_day == march(8)


def test_a_day_partly_in_the_freezer_is_a_day_of_use():
    short = replace(OPENED, freezes=(Freeze(march(4), march(5)), Freeze(march(5), march(7))))
    assert standing(short, march(7)).last_day == march(9)


def test_four_days_where_the_older_option_holds():
    """4 days at 41-45 °F. READ 410 IAC 7-24-191."""
    older = replace(OPENED, rule=FOUR_DAYS)
    assert standing(older, march(5)).usable
    assert standing(older, march(6)).bars == (Bar.DAYS_ARE_UP,)


@pytest.mark.parametrize(
    ("value", "unit", "older", "rule"),
    [("41", "°F", True, SEVEN_DAYS), ("41.1", "°F", True, FOUR_DAYS), ("45", "°F", True, FOUR_DAYS),
     ("45.1", "°F", True, None), ("41.1", "°F", False, None), ("5", "°C", False, SEVEN_DAYS),
     ("5.1", "°C", True, FOUR_DAYS), ("7", "°C", True, FOUR_DAYS), ("7.1", "°C", True, None)],
)  # fmt: skip
def test_the_rule_by_the_warmest_temperature(value, unit, older, rule):
    """READ Minn. R. 4626.0400; 410 IAC 7-24-191. 7 °C is the printed partner of 45 °F."""
    assert date_rule(Quantity(Decimal(value), unit), older) is rule


def test_an_unknown_temperature_has_no_rule_and_an_absurd_one_is_refused():
    assert date_rule(None, True) is None
    assert standing(replace(OPENED, rule=None), march(2)).bars == (Bar.TOO_WARM,)
    with pytest.raises(NoVerdict, match="check the probe"):
        date_rule(Quantity(Decimal(900), "°F"), True)


def test_the_makers_use_by_binds_when_it_is_earlier():
    """3-501.17: the maker's use-by must not pass. READ Minn. R. 4626.0400."""
    early = replace(OPENED, makers_use_by=march(5))
    assert standing(early, march(3)).last_day == march(5)
    assert standing(early, march(6)).bars == (Bar.MAKERS_DATE_PASSED,)
    unopened = Package("spare", False, None, march(5))
    assert standing(unopened, march(5)).usable
    assert standing(unopened, march(6)).bars == (Bar.MAKERS_DATE_PASSED,)
    assert standing(replace(FROZEN, makers_use_by=march(11)), march(10)).days_left == 2


def test_undated_or_wrongly_dated_mix_goes():
    """3-501.18. READ WAC 246-215-03527."""
    assert standing(replace(OPENED, opened=None), march(2)).bars == (Bar.UNDATED,)
    assert standing(Package("spare", False, None, None), march(2)).bars == (Bar.UNDATED,)
    assert standing(OPENED, march(1)).bars == (Bar.WRONGLY_DATED,)
    assert standing(replace(OPENED, is_open=False), march(2)).bars == (Bar.WRONGLY_DATED,)
    assert standing(replace(OPENED, marked=march(9)), march(3)).bars == (Bar.WRONGLY_DATED,)


def test_an_earlier_day_on_the_label_binds():
    marked = replace(OPENED, marked=march(6))
    assert standing(marked, march(5)).last_day == march(6)
    assert standing(marked, march(7)).bars == (Bar.MARK_PASSED,)
    assert standing(replace(FROZEN, marked=march(13)), march(12)).usable


def test_first_expiring_first_out_with_the_reason_for_each_refusal():
    packages = [
        Package("unopened soon", False, None, march(6)),
        Package("opened soon", True, march(1), march(6)),
        Package("opened", True, march(2), LATER),
        Package("unopened late", False, None, march(20)),
        Package("old", True, date(2026, 2, 20), LATER),
        Package("frozen", True, march(2), LATER, freezes=(Freeze(march(3)),)),
        Package("warm", True, march(2), LATER, rule=None),
    ]
    for order in (packages, packages[::-1]):
        choice = pour_next(order, march(4))
        assert choice.pour is not None
        names = [choice.pour.package.name, *(one.package.name for one in choice.then)]
        assert names == ["opened soon", "unopened soon", "opened", "unopened late"]
        assert {one.package.name: one.bars for one in choice.refused} == {
            "frozen": (Bar.FROZEN,), "old": (Bar.DAYS_ARE_UP,), "warm": (Bar.TOO_WARM,),
        }  # fmt: skip


def test_when_nothing_may_be_poured_nothing_is_chosen():
    choice = pour_next([OPENED], march(9))
    assert choice.pour is None
    assert choice.then == ()
    with pytest.raises(NoDate, match="write down what is in the cooler"):
        pour_next([], march(9))


@pytest.mark.parametrize(
    ("freezes", "key"),
    [
        ((Freeze(march(1), march(3)),), "bad-freeze"),
        ((Freeze(march(5), march(4)),), "bad-freeze"),
        ((Freeze(march(3), march(6)), Freeze(march(5), march(7))), "bad-freeze"),
        ((Freeze(march(3)), Freeze(march(5), march(7))), "still-frozen"),
    ],
)
def test_impossible_freezes_are_refused(freezes, key):
    with pytest.raises(NoDate) as caught:
        replace(OPENED, freezes=freezes)
    assert caught.value.key == key
    assert caught.value.values["name"] == "vanilla"


def test_a_freeze_without_a_day_of_opening_and_an_absurd_year_are_refused():
    with pytest.raises(NoDate, match="no day of opening"):
        Package("spare", False, None, LATER, freezes=(Freeze(march(3)),))
    with pytest.raises(NoDate, match="mend the year"):
        replace(OPENED, makers_use_by=date(226, 3, 1))
    with pytest.raises(NoDate, match="mend the year"):
        standing(OPENED, date.max - timedelta(days=1))
