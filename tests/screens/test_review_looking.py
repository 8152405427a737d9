"""Pages that are looked up in another thread: they say so, can be left, and tell what failed."""

from __future__ import annotations

import threading
from collections.abc import Sequence

import pytest

from kiosk.screens import review_dates
from kiosk.screens.review_dates import DatesScreen, dates
from kiosk.screens.review_page import Row
from tests.screens.review_scene import home, page, reviewing, text_of


@pytest.fixture
def held(monkeypatch):
    """The page of dates, held up until the test lets it go on."""
    go_on, threads = threading.Event(), []

    def slow(desk) -> Sequence[Row]:
        threads.append(threading.current_thread())
        go_on.wait(60)
        return dates(desk)

    monkeypatch.setattr(review_dates, "dates", slow)
    yield go_on, threads
    go_on.set()


async def test_a_page_says_that_it_is_looked_up_and_works_meanwhile(history, tmp_path, held):
    go_on, threads = held
    async with reviewing(history, tmp_path) as it:
        desk = home(it).desk
        it.app.push_screen(screen := DatesScreen(desk))
        await it.calm()
        assert "The journal is being read." in it.words()
        # The application answers while the other thread is held up.
        it.app.theme = "day"
        await it.calm()
        assert screen.looking is not None
        go_on.set()
        await it.settle()
        assert screen.looking is None
        assert "The journal is being read." not in it.words()
        assert "To come" in text_of(it)
        assert threads[0] is not threading.main_thread()


async def test_a_page_can_be_left_before_it_is_there(history, tmp_path, held):
    go_on, _ = held
    async with reviewing(history, tmp_path) as it:
        first = home(it)
        it.app.push_screen(DatesScreen(first.desk))
        await it.calm()
        it.app.pop_screen()
        await it.calm()
        assert it.app.screen is first
        go_on.set()
        await it.press("d")
        assert "To come" in text_of(it)


async def test_a_page_that_cannot_be_looked_up_says_why(history, tmp_path, monkeypatch):
    def broken(desk) -> Sequence[Row]:
        raise OSError("the disk is gone")

    monkeypatch.setattr(review_dates, "dates", broken)
    async with reviewing(history, tmp_path) as it:
        await it.press("d")
        assert "This page cannot be shown. the disk is gone" in it.words()
        assert isinstance(page(it), DatesScreen)
        await it.press("escape")
        assert home(it)
