"""Wearing parts and spare parts: what was entered is what is told, and nothing is made up."""

from __future__ import annotations

from datetime import timedelta

import pytest

from kiosk.journal.shop_facts import ShopEvent, StockCounted
from kiosk.languages.words import languages, words
from kiosk.procedure.review_rules import Interval
from kiosk.review.ledger_lines import PartLine
from kiosk.review.lifetimes import Spread
from kiosk.review.parts import Wear, lives, next_replacements, wear
from kiosk.review.parts_said import stock_said, wear_said
from kiosk.review.stock import Stock, runs_out, stocks
from tests.unit.plot_rows import FIRST, LIBRARY, SITE, ZONE, at, part, received, told

INTERVAL = Interval(
    id="i", title={"en": "Replace"}, machine_kind="twin-gravity", days=90, notice_days=14,
    part="o-rings", source="invented",
)  # fmt: skip


def worn(*lines: PartLine, now: float = at(100)) -> tuple[Wear, ...]:
    return wear(lines, SITE, LIBRARY, [INTERVAL], now)


def counted(day: float, count: int) -> ShopEvent:
    fact = StockCounted("twin-gravity", "o-rings", count, "p4", practice=True)
    return told(fact, at(0) + day * 86_400)


def shelf(events: list[ShopEvent], lines: list[PartLine] = []) -> Stock:  # noqa: B006
    found = stocks(events, lines, SITE, LIBRARY, practice=True)
    return next(one for one in found if (one.kind, one.part) == ("twin-gravity", "o-rings"))


# What wears.


def test_replacements_are_kept_with_age_and_what_is_due():
    (one,) = worn(part(0, "good"), part(10, "replaced"), part(40, "good"), part(70, "replaced"))
    assert [x.at_utc for x in one.replaced] == [at(10), at(70)]
    assert one.age_days == pytest.approx(30, abs=0.05)
    assert one.due == FIRST + timedelta(days=160)
    assert not one.overdue
    assert one.lives().ended == pytest.approx((60.0,), abs=0.05)
    assert one.lives().at_least == pytest.approx((10.0, 30.0), abs=0.05)


def test_a_part_is_overdue_on_the_day_after_its_last():
    line = part(0, "replaced")
    assert not worn(line, now=at(90, 23.9))[0].overdue
    assert worn(line, now=at(91, 0.1))[0].overdue


def test_the_same_replacement_told_twice_on_a_day_counts_once():
    (one,) = worn(part(10, "replaced"), part(10, "replaced", session="", at_utc=at(10, 0)))
    assert len(one.replaced) == 1


def test_a_part_without_stock_stays_worn_until_it_is_replaced():
    lines = [part(5, "none left"), part(9, "good"), part(12, "none left")]
    (one,) = worn(*lines)
    assert one.worn is not None
    assert one.worn.at_utc == at(5)
    assert worn(*lines, part(20, "replaced"))[0].worn is None


def test_counts_and_parts_that_do_not_wear_are_no_wear():
    assert worn(part(0, "", counted=8), part(0, "good", name="beaters")) == ()


def test_a_part_never_replaced_is_as_old_as_its_first_look():
    (one,) = worn(part(3, "good"), part(80, "good"))
    assert one.age_days == pytest.approx(97, abs=0.05)
    assert one.lives().ended == ()


def test_lives_of_a_part_are_pooled_over_the_machines_of_a_kind():
    site_lines = [part(0, "replaced"), part(50, "replaced"), part(0, "replaced", machine="counter")]
    found = worn(*site_lines)
    assert {one.machine for one in found} == {"patio", "counter"}
    pooled = lives(found)
    assert len(pooled.ended) == 1
    assert len(pooled.at_least) == 2


# What is to come.


def test_two_lives_are_too_few_to_foretell_from():
    few = worn(part(0, "replaced"), part(30, "replaced"), part(60, "replaced"))
    assert next_replacements(few) == {("patio", "o-rings"): None}
    enough = worn(*(part(day, "replaced") for day in (0, 30, 60, 95)))
    spread = next_replacements(enough)["patio", "o-rings"]
    assert spread is not None
    assert 0 < spread.low < spread.middle < spread.high  # type: ignore[operator]


def test_the_same_record_gives_the_same_forecast():
    lines = [part(day, "replaced") for day in (0, 30, 60, 95)]
    assert next_replacements(worn(*lines)) == next_replacements(worn(*reversed(lines)))


def test_a_fuller_shelf_lasts_longer():
    lines = [part(day, "replaced") for day in range(0, 100, 20)]
    found = worn(*lines)
    spreads = [runs_out(shelf([counted(99, pieces)]), found) for pieces in (0, 8, 80)]
    middles = [one.middle for one in spreads if one is not None and one.middle is not None]
    assert middles == sorted(middles)
    assert middles[0] < 30
    assert 150 < middles[2] < 350  # eleven replacements, each after some twenty days


# The shelf.


def test_a_shelf_that_nobody_entered_is_unknown():
    assert shelf([]).pieces is None
    assert shelf([], [part(5, "replaced")]).pieces is None
    assert runs_out(shelf([]), worn(part(0, "replaced"))) is None


def test_pieces_are_received_counted_and_used_in_the_order_of_time():
    lines = [part(5, "replaced"), part(20, "replaced")]
    events = [received(1, 16), counted(10, 9), received(15, 8)]
    found = shelf(events, lines)
    assert found.takes == 8
    assert found.pieces == 9 + 8 - 8
    assert found.replacements == 1
    assert found.short == 0
    assert shelf(events[:1], lines[:1]).pieces == 8


def test_more_used_than_there_was_is_told_until_the_next_count():
    lines = [part(5, "replaced"), part(9, "replaced")]
    found = shelf([received(1, 12)], lines)
    assert (found.pieces, found.short) == (0, 4)
    recounted = shelf([received(1, 12), counted(11, 3)], lines)
    assert (recounted.pieces, recounted.short) == (3, 0)


def test_a_worker_who_finds_none_left_is_believed():
    found = shelf([counted(1, 16)], [part(5, "none left")])
    assert (found.pieces, found.none_left_utc) == (0, at(5))
    refilled = shelf([counted(1, 16), received(6, 8)], [part(5, "none left")])
    assert (refilled.pieces, refilled.none_left_utc) == (8, None)


def test_real_work_and_practice_have_shelves_of_their_own():
    assert shelf([received(1, 16, practice=False)]).pieces is None


# In words.


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize(
    "spread",
    [None, Spread(3, 20, 90), Spread(3, 20, None), Spread(3, None, None), Spread(None, None, None)],
)
def test_every_forecast_has_its_sentence(language: str, spread: Spread | None):
    (one,) = worn(part(10, "none left"), part(10, "replaced"), now=at(12))
    today, said = FIRST + timedelta(days=12), words(language)
    lines = list(wear_said(one, spread, said, ZONE, today, lambda _: "Mina Ahn"))
    lines += stock_said(shelf([counted(1, 16)], [part(5, "none left")]), spread, said, ZONE, today)
    text = " ".join(lines)
    assert "Mina Ahn" in text
    assert (str(today + timedelta(days=3)) in text) is (
        spread is not None and spread.low is not None
    )
    assert (str(today + timedelta(days=90)) in text) is (spread == Spread(3, 20, 90))
