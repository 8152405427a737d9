"""Choosing what is done, and who does it, by saying a number."""

from __future__ import annotations

import json

from kiosk.screens.board import BoardScreen
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.walk_screen import WalkScreen
from tests.screens.scene import kiosk


async def test_a_worker_is_chosen_by_a_number_and_the_journal_says_so(tmp_path):
    async with kiosk(tmp_path) as it:
        assert it.app.hearing.allowed == ()
        await it.hear("number one")
        assert isinstance(it.app.screen, BoardScreen)
        await it.touch("Window machine")
        assert "or say: number one" in it.words()
        assert it.app.hearing.allowed == ("number one", "number two", "number three", "never mind")
        await it.hear("number four", why="not allowed now")
        assert isinstance(it.app.screen, ChooseScreen)
        await it.hear("number two")
        assert isinstance(it.app.screen, WalkScreen)
        assert it.state.worker == "mina"
        (row,) = (one for one in it.app.shop.journal.rows() if one["kind"] == "SessionStarted")
        by = json.loads(row["body"])["by"]
        assert by == {"channel": "voice", "heard": "number two", "ear": "test-ear",
                      "confidence": 0.9}  # fmt: skip


async def test_never_mind_is_heard_and_the_board_is_deaf_again(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.touch("Window machine")
        await it.hear("never mind")
        assert isinstance(it.app.screen, BoardScreen)
        assert it.app.hearing.allowed == ()
        assert it.facts() == []


async def test_a_list_of_settings_is_not_answered_by_voice(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.press("l")
        assert isinstance(it.app.screen, ChooseScreen)
        assert it.app.hearing.allowed == ()
        assert "or say" not in it.words()
