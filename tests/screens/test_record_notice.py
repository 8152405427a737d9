"""What the board says when something is wrong with how the journal is kept."""

from __future__ import annotations

import pytest

from kiosk.languages.words import languages, words
from tests.screens.scene import kiosk


@pytest.mark.parametrize("name", ["record-disagrees", "record-unsigned", "record-second-place"])
@pytest.mark.parametrize("language", languages())
async def test_the_board_says_it_whole_on_the_smallest_screen(tmp_path, name, language):
    async with kiosk(tmp_path, size=(60, 18)) as it:
        board = it.app.screen
        board.language = language
        board.shop.journal.trouble = name
        board.look()
        await it.settle()
        said = it.words().replace(" ", "")
        assert words(language).say(name).replace(" ", "") in said


async def test_the_board_says_nothing_while_all_is_well(tmp_path):
    async with kiosk(tmp_path) as it:
        assert "Notice" not in it.words()
