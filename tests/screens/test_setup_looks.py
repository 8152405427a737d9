"""How the setup looks: whole texts, clear colours, large targets, and letters by touch."""

from __future__ import annotations

import shutil
from pathlib import Path

import pytest

from kiosk import home
from kiosk.languages.words import languages
from kiosk.screens.setup_typing import NumberPage, TextPage
from kiosk.setup.draft import Draft
from kiosk.setup.questions import Question
from kiosk.shipped import shipped
from tests.screens.setup_scene import Setting, setting_up
from tests.screens.test_looks import poor_texts, small_targets, squeezed


@pytest.fixture
def site(tmp_path: Path) -> Path:
    """A data folder with the invented site in it."""
    shutil.copy(shipped("demo") / home.SITE_FILE, tmp_path / home.SITE_FILE)
    return tmp_path


def lost(it: Setting) -> list[str]:
    """Return the texts of the page that are not wholly on the screen."""
    asked, seen = it.app.screen.asked, squeezed(it.seen())
    texts = [asked.question, *asked.note.split("\n")]
    found = [one for one in texts if squeezed(one) not in seen]
    for target in it.targets():
        shown = squeezed("".join(row for row, _ in target._rows(*target.size)))
        parts = [target.face.label, *target.face.detail.split("\n")]
        found += [one for one in parts if squeezed(one) not in shown]
    return found


@pytest.mark.parametrize("language", languages())
async def test_every_question_is_read_whole_on_the_smallest_screen(site, language):
    async with setting_up(site, (60, 18)) as it:
        it.app.flow.draft.language = language
        for question in Question:
            it.app.flow.ask(question)
            await it.settle()
            assert lost(it) == [], question
            it.app.pop_screen()


@pytest.mark.parametrize(("size", "theme"), [((60, 18), "day"), ((100, 30), "night")], ids=str)
async def test_every_question_is_clear_and_its_targets_are_large(site, size, theme):
    async with setting_up(site, size) as it:
        it.app.theme = theme
        for question in Question:
            it.app.flow.ask(question)
            await it.settle()
            if isinstance(it.app.screen, TextPage | NumberPage):
                await it._to_keys()
                assert len(it.targets()) >= 14
            assert small_targets(it) == [], question
            assert poor_texts(it) == [], question
            it.app.pop_screen()


async def test_at_the_smallest_size_all_letters_can_be_typed_by_touch(tmp_path):
    async with setting_up(tmp_path, (60, 18)) as it:
        await it.touch("English", "a real shop")
        taps = await it.tap("Jo's Stand 2")
        await it.touch("take it")
        assert Draft.of(tmp_path).document.get("name") == "Jo's Stand 2"
        # Each letter two taps, each space one, "S" of "Stand" one more, and one to the keys.
        assert taps == 2 * 10 + 2 + 1 + 1
