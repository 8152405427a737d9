"""The board's cards: whatever their number and the screen, each is on one page and fits."""

from __future__ import annotations

import pytest

from kiosk.screens.arrangement import LEAST_WIDTH, card_page

COUNTS = range(1, 13)
SIZES = [(60, 8), (60, 12), (80, 15), (100, 20), (100, 24)]
"""Columns and rows that the board has for its cards, from the smallest screen on."""


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("count", COUNTS)
def test_the_pages_show_each_card_once_and_begin_again_after_the_last(count, size):
    pages = [card_page(count, *size, number) for number in range(2 * count)]
    seen: list[int] = []
    for one in pages:
        if one.shown.start == 0 and seen:
            break
        seen += one.shown
    assert seen == [*range(count)]


@pytest.mark.parametrize("size", SIZES)
@pytest.mark.parametrize("count", COUNTS)
def test_no_card_is_cut_off_or_less_than_a_finger_wide(count, size):
    width, height = size
    for number in range(count):
        one = card_page(count, width, height, number)
        places = len(one.shown) + one.more
        assert one.height * -(-places // one.columns) <= height
        assert width // one.columns >= LEAST_WIDTH
        assert one.more == (len(one.shown) < count)


def test_where_one_card_has_room_the_way_to_the_next_stands_beside_it():
    page = card_page(3, 60, 8, 1)
    assert (page.shown, page.columns, page.more) == (range(1, 2), 2, True)


def test_cards_grow_into_the_room_but_not_without_end():
    assert [card_page(2, 80, height, 0).height for height in (6, 9, 30)] == [6, 9, 10]
