"""Nights on which the clocks change, against the IANA time zone rules of the zones named."""

from __future__ import annotations

from datetime import date, datetime

import pytest

from kiosk.trade.code_dates import (
    NoDate,
    day_of,
    discard_at,
    hours_between,
    instant,
    instants,
    site_zone,
    start_of,
)

NEW_YORK = site_zone("America/New_York")
HOUR = 3600


def wall(text: str) -> datetime:
    return datetime.fromisoformat(text)


def test_a_time_that_came_twice_is_refused_with_both_readings_named():
    """New York, 1 Nov 2026: 02:00 EDT became 01:00 EST."""
    with pytest.raises(NoDate) as caught:
        instant(wall("2026-11-01T01:30"), NEW_YORK)
    assert caught.value.key == "twice"
    assert caught.value.values["first"] == "01:30 EDT (UTC-04:00)"
    assert caught.value.values["second"] == "01:30 EST (UTC-05:00)"
    assert "01:30 EDT (UTC-04:00) and 01:30 EST (UTC-05:00)" in str(caught.value)
    first, second = instants(wall("2026-11-01T01:30"), NEW_YORK)
    assert second - first == HOUR


def test_a_time_that_never_came_is_refused_with_both_readings_named():
    """New York, 8 Mar 2026: 02:00 EST became 03:00 EDT."""
    with pytest.raises(NoDate) as caught:
        instant(wall("2026-03-08T02:30"), NEW_YORK)
    assert caught.value.key == "skipped"
    assert caught.value.values["first"] == "01:30 EST (UTC-05:00)"
    assert caught.value.values["second"] == "03:30 EDT (UTC-04:00)"
    assert instants(wall("2026-03-08T02:30"), NEW_YORK) == ()


@pytest.mark.parametrize("text", ["2026-11-01T00:59", "2026-11-01T02:00", "2026-03-08T03:00"])
def test_the_times_about_the_change_are_plain(text):
    at = instant(wall(text), NEW_YORK)
    assert datetime.fromtimestamp(at, NEW_YORK).replace(tzinfo=None) == wall(text)


@pytest.mark.parametrize(
    ("begin", "end", "hours"),
    [
        ("2026-10-31T23:00", "2026-11-01T03:00", 5),
        ("2026-03-07T23:00", "2026-03-08T03:00", 3),
        ("2026-06-01T23:00", "2026-06-02T03:00", 4),
    ],
)
def test_hours_are_real_hours(begin, end, hours):
    """Four hours on the wall clock are five or three real ones on the nights of change."""
    assert hours_between(wall(begin), wall(end), NEW_YORK) == hours
    with pytest.raises(NoDate, match="swap the two"):
        hours_between(wall(end), wall(begin), NEW_YORK)


def test_a_day_is_a_calendar_day_however_long():
    autumn, spring = date(2026, 11, 1), date(2026, 3, 8)
    assert discard_at(autumn, NEW_YORK) - start_of(autumn, NEW_YORK) == 25 * HOUR
    assert discard_at(spring, NEW_YORK) - start_of(spring, NEW_YORK) == 23 * HOUR
    assert day_of(discard_at(autumn, NEW_YORK) - 1, NEW_YORK) == autumn


@pytest.mark.parametrize(
    ("zone", "day"),
    [("America/Havana", date(2026, 3, 8)), ("America/Havana", date(2026, 11, 1)),
     ("Africa/Cairo", date(2026, 4, 24)), ("Africa/Cairo", date(2026, 10, 30)),
     ("Asia/Beirut", date(2026, 3, 29))],
)  # fmt: skip
def test_a_day_begins_once_even_where_midnight_is_skipped_or_repeated(zone, day):
    known = site_zone(zone)
    begin = start_of(day, known)
    assert day_of(begin, known) == day
    assert day_of(begin - 1, known) < day


def test_bad_times_and_zones_are_refused():
    for name in ("Mars/Olympus", "", "../etc/passwd", "\0"):
        with pytest.raises(NoDate, match="no time zone known here"):
            site_zone(name)
    with pytest.raises(NoDate, match="already bears a time zone"):
        instant(wall("2026-06-01T12:00+02:00"), NEW_YORK)
    with pytest.raises(NoDate, match="mend the year"):
        instant(wall("0026-06-01T12:00"), NEW_YORK)
    for at in (float("nan"), float("inf"), 1e18):
        with pytest.raises(NoDate, match="is no time"):
            day_of(at, NEW_YORK)
