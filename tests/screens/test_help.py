"""What can be done here, for whoever asks."""

from __future__ import annotations

from kiosk.options import Help
from kiosk.screens.board import BoardScreen
from kiosk.screens.choose import ChooseScreen
from tests.screens.scene import kiosk


async def test_a_walk_says_what_may_be_said_and_changes_nothing(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        before = it.facts()
        for phrase in it.walk.words.ways("say-help"):
            await it.hear(phrase)
            said, _ = it.app.voice.said[-1]
            for one in ("my hands are clean", "something is wrong", "Is somebody hurt?"):
                assert one in said
            assert "You can say:" in it.words()
            await it.press("escape")
        await it.press("question_mark")
        assert "You can say:" in it.words()
        await it.touch("never mind")
        assert it.facts() == before
        await it.hear("my hands are clean")
        assert it.facts() != before


async def test_a_hold_is_not_confirmed_from_its_help(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        step = it.state.step
        await it.touch(Help())
        assert "wants its own words" in it.words()
        (only,) = it.walk.options()
        assert only.label == "never mind"
        assert it.app.hearing.allowed == ("never mind",)
        assert it.state.step == step


async def test_the_board_and_its_lists_tell_what_to_press(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.touch("help")
        assert "no substitute for lockout" in it.words()
        await it.press("escape")
        assert isinstance(it.app.screen, BoardScreen)
        await it.touch("Window machine")
        await it.press("question_mark")
        assert "Nothing has been recorded yet" in it.words()
        await it.press("escape")
        assert isinstance(it.app.screen, ChooseScreen)
        assert "Who does it?" in it.words()
