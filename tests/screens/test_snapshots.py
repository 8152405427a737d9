"""Every screen as it was last looked at. After a change that is meant: `pytest --snapshot-update`,
then look at what has changed."""

from __future__ import annotations

import re

import pytest

from tests.screens.review_scene import reviewing, speaking
from tests.screens.scene import Kiosk, kiosk
from tests.screens.test_looks import every_screen
from tests.screens.test_review_pages import every_page

SIZES = [(80, 24), (100, 30)]
SCROLL_BAR = "▁▂▃▄▅▆▇█"


def looks(it: Kiosk) -> str:
    """The screen as text, without what differs from run to run: hashes, and the scroll bar, which
    is drawn when the page has been laid out."""
    rows = [row.rstrip(f"{SCROLL_BAR} ") for row in it.seen().split("\n")]
    return re.sub(r"\b[0-9a-f]{12}\b", "0" * 12, "\n".join(rows))


@pytest.mark.parametrize("size", SIZES, ids=str)
async def test_the_board_and_a_walk(tmp_path, size, snapshot):
    async with kiosk(tmp_path, size=size) as it:
        async for name in every_screen(it):
            assert looks(it) == snapshot(name=name)


@pytest.mark.parametrize("language", ["en", "ko"])
@pytest.mark.parametrize("size", SIZES, ids=str)
async def test_the_review(history, tmp_path, size, language, snapshot):
    async with reviewing(history, tmp_path, size, speaking(language)) as it:
        async for name in every_page(it):
            assert looks(it) == snapshot(name=name)
