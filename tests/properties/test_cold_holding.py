"""What must hold of any log of temperatures and of any package of mix."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from decimal import Decimal

from hypothesis import assume, given
from hypothesis import strategies as st

from kiosk.trade.code_dates import (
    FOUR_DAYS,
    SEVEN_DAYS,
    Bar,
    Freeze,
    Package,
    day_of,
    discard_at,
    instants,
    pour_next,
    site_zone,
    standing,
    start_of,
)
from kiosk.trade.cold_holding import (
    COLD,
    FOUR_HOURS,
    SIX_HOURS,
    Account,
    Spell,
    account,
    last_proven_cold,
    time_as_control,
)
from kiosk.trade.heat_treatment import hold
from kiosk.trade.temperature_log import Printed, Reading
from kiosk.trade.units import Quantity

GAP, UNTIL = 900.0, 36000.0
ZONES = [
    site_zone(name)
    for name in ("America/New_York", "America/Havana", "Africa/Cairo", "Asia/Seoul",
                 "Australia/Lord_Howe", "Europe/Madrid")
]  # fmt: skip

instants_of_a_log = st.integers(0, 60).map(lambda step: step * 600.0)
fahrenheit = st.integers(30, 80).map(lambda value: Quantity(Decimal(value), "°F"))
celsius = st.integers(0, 26).map(lambda value: Quantity(Decimal(value), "°C"))
readings = st.builds(Reading, instants_of_a_log, st.one_of(fahrenheit, celsius))
logs = st.lists(readings, min_size=1, max_size=30)
warm_readings = readings.filter(lambda one: not COLD.at_most(one.temperature))
days = st.dates(date(2026, 1, 1), date(2026, 12, 31))


def share(log: list[Reading]) -> Account:
    return account(log, GAP, since=0.0, until=UNTIL)


@given(log=logs, data=st.data())
def test_the_order_of_readings_changes_no_verdict(log, data):
    shuffled = data.draw(st.permutations(log))
    assert share(log) == share(shuffled)
    assert last_proven_cold(log, GAP, UNTIL) == last_proven_cold(shuffled, GAP, UNTIL)
    removed, more = data.draw(instants_of_a_log), data.draw(instants_of_a_log)
    for rule in (FOUR_HOURS, SIX_HOURS):
        asked = (rule, removed, removed + more, GAP, removed + rule.hours * 3600, True)
        assert time_as_control(log, *asked) == time_as_control(shuffled, *asked)
    hot = Printed(Decimal(50))
    assert hold({"a": log}, GAP, hot, 600) == hold({"a": shuffled}, GAP, hot, 600)


@given(log=logs)
def test_cold_warm_and_unknown_are_the_whole(log):
    found = share(log)
    assert found.cold + found.warm + found.unknown == UNTIL
    assert 0 <= found.longest_warm <= found.warm
    assert found.longest_warm <= found.longest_unproven <= found.unproven
    assert (found.standing is Spell.COLD) <= (found.cold == UNTIL)


@given(log=logs, warm=warm_readings)
def test_a_further_warm_reading_never_shortens_the_warm_time(log, warm):
    before, after = share(log), share([*log, warm])
    assert after.warm >= before.warm
    assert after.longest_warm >= before.longest_warm
    assert after.cold <= before.cold
    assert after.standing is Spell.WARM


@given(
    temperatures=st.lists(fahrenheit, min_size=2, max_size=30),
    step=st.integers(451, 900),
    data=st.data(),
)
def test_a_lost_reading_never_makes_a_regular_log_proven_cold(temperatures, step, data):
    """Where readings come regularly, and the longest gap is less than twice their spacing."""
    log = [Reading(float(i * step), one) for i, one in enumerate(temperatures)]
    until = log[-1].at
    lost = data.draw(st.integers(0, len(log) - 1))
    before = account(log, GAP, since=0.0, until=until)
    after = account(log[:lost] + log[lost + 1 :], GAP, since=0.0, until=until)
    assert after.standing is not Spell.COLD
    assert after.cold <= before.cold
    assert after.unproven >= before.unproven


@given(log=logs, removed=instants_of_a_log, earlier=instants_of_a_log, later=instants_of_a_log)
def test_mix_once_discarded_stays_discarded(log, removed, earlier, later):
    for rule in (FOUR_HOURS, SIX_HOURS):
        looks = [
            time_as_control(log, rule, removed, removed + now, GAP, removed + 6 * 3600, True)
            for now in sorted((earlier, later))
        ]
        assert looks[0].usable or not looks[1].usable
        assert looks[0].discard_at == looks[1].discard_at


@given(log=logs, extra=readings)
def test_a_further_reading_never_moves_the_proof_of_cold_back_unless_it_is_warm(log, extra):
    before = last_proven_cold(log, GAP, UNTIL)
    after = last_proven_cold([*log, extra], GAP, UNTIL)
    assume(COLD.at_most(extra.temperature))
    if before is not None and extra.at >= min(one.at for one in log):
        assert after is not None
        assert after >= before


@st.composite
def packages(draw):
    opened = draw(days)
    freezes: list[Freeze] = []
    at = opened
    for _ in range(draw(st.integers(0, 3))):
        frozen = at + timedelta(days=draw(st.integers(0, 4)))
        at = frozen + timedelta(days=draw(st.integers(0, 10)))
        freezes.append(Freeze(frozen, at))
    if freezes and draw(st.booleans()):
        freezes[-1] = Freeze(freezes[-1].frozen)
    makers = draw(st.none() | st.integers(0, 40).map(lambda more: opened + timedelta(days=more)))
    marked = draw(st.none() | st.integers(0, 40).map(lambda more: opened + timedelta(days=more)))
    rule = draw(st.sampled_from([SEVEN_DAYS, FOUR_DAYS, None]))
    return Package("mix", True, opened, makers, rule, tuple(freezes), marked)


@given(package=packages(), first=st.integers(0, 30), more=st.integers(0, 30))
def test_a_later_look_never_gives_more_days(package, first, more):
    """From the last day on which something happened to it."""
    known = [day for one in package.freezes for day in (one.frozen, one.thawed) if day]
    begin = max([package.opened, *known]) + timedelta(days=first)
    early, late = (standing(package, begin + timedelta(days=n)) for n in (0, more))
    assert late.days_left <= early.days_left
    if early.last_day is not None:
        assert late.last_day == early.last_day
    gone = set(early.bars) - {Bar.FROZEN}
    assert gone <= set(late.bars)


@given(package=packages(), today=days)
def test_mix_is_used_on_no_more_days_than_its_rule_gives(package, today):
    assume(package.rule is not None)
    span = [package.opened + timedelta(days=n) for n in range(80)]
    used = [day for day in span if standing(package, day).usable]
    assert len(used) <= package.rule.days
    for limit in (package.makers_use_by, package.marked):
        assert limit is None or all(day <= limit for day in used)


@given(known=st.lists(packages(), min_size=1, max_size=5), today=days)
def test_what_is_poured_is_usable_and_expires_first(known, today):
    choice = pour_next(known, today)
    fit = [one for one in (standing(package, today) for package in known) if one.usable]
    assert (choice.pour is not None) == bool(fit)
    assert len(choice.refused) + len(fit) == len(known)
    assert all(one.bars for one in choice.refused)
    if choice.pour is not None:
        assert choice.pour.last_day == min(one.last_day for one in fit)


@given(day=days, zone=st.sampled_from(ZONES))
def test_days_follow_one_another_without_hole_or_overlap(day, zone):
    begin, end = start_of(day, zone), discard_at(day, zone)
    assert 23 * 3600 <= end - begin <= 25 * 3600
    assert day_of(begin, zone) == day == day_of(end - 1, zone)
    assert day_of(begin - 1, zone) == day - timedelta(days=1)


@given(at=st.integers(1767225600, 1798761600), zone=st.sampled_from(ZONES))
def test_the_wall_clock_of_an_instant_names_that_instant(at, zone):
    shown = datetime.fromtimestamp(at, zone).replace(tzinfo=None)
    found = instants(shown, zone)
    assert at in found
    assert len(found) in (1, 2)
