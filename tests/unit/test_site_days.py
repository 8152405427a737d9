"""The days on which a shop does not open."""

from __future__ import annotations

from dataclasses import replace
from datetime import date
from pathlib import Path

import pytest

from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.site import load_site
from kiosk.review.schedule import daily
from kiosk.shipped import shipped
from tests.unit.ledger_shop import SCHEDULE
from tests.unit.review_crew import library, site


def with_closed_days(tmp_path: Path, days: str):
    file = tmp_path / "site.toml"
    text = (shipped("demo") / "site.toml").read_text(encoding="utf-8")
    file.write_text(text.replace("\nlanguages", f"\nclosed_days = {days}\nlanguages", 1), "utf-8")
    return load_site(file)


def test_a_shop_is_closed_on_weekdays_and_dates(tmp_path):
    where = with_closed_days(tmp_path, '["monday", "12-25", "02-29", "2026-07-04"]')
    closed = [date(2026, 11, 23), date(2026, 12, 25), date(2031, 12, 25), date(2028, 2, 29),
              date(2026, 7, 4)]  # fmt: skip
    assert all(where.closed(day) for day in closed)
    assert not any(where.closed(day) for day in (date(2026, 11, 24), date(2027, 7, 4)))
    assert not any(site().closed(day) for day in closed)


@pytest.mark.parametrize("day", ["Monday", "12/25", "2026-02-30", "13-01", "02-30", ""])
def test_what_is_no_day_is_told(tmp_path, day):
    with pytest.raises(FaultyFile, match="closed_days"):
        with_closed_days(tmp_path, f'["{day}"]')


def test_a_shop_that_never_opens_is_told(tmp_path):
    week = ["monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday"]
    with pytest.raises(FaultyFile, match="every day of the week"):
        with_closed_days(tmp_path, repr(week).replace("'", '"'))


def test_on_a_closed_day_nothing_is_due():
    first, last = date(2026, 11, 22), date(2026, 11, 24)
    where = replace(site(), closed_days=("monday",))
    due = daily(where, library(), SCHEDULE, first, last)
    assert {one.day for one in due} == {first, last}
    everything = daily(site(), library(), SCHEDULE, first, last)
    assert due == tuple(one for one in everything if one.day != date(2026, 11, 23))
