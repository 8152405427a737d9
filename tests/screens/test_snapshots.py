"""Every screen as it was last looked at. After a change that is meant: `pytest --snapshot-update`,
then look at what has changed."""

from __future__ import annotations

import re
import shutil
from collections.abc import AsyncIterator, Callable
from dataclasses import replace

import pytest

from kiosk import home
from kiosk.languages.words import languages
from kiosk.options import Take
from kiosk.procedure.site import Site
from kiosk.screens.remark_screen import RemarkScreen
from kiosk.screens.walk_screen import WalkScreen
from kiosk.setup.questions import Question
from kiosk.shipped import shipped
from tests.screens import pseudo_scenes as scenes
from tests.screens.review_scene import reviewing, speaking
from tests.screens.scene import SITE, Kiosk, kiosk
from tests.screens.setup_scene import setting_up
from tests.screens.test_looks import every_screen
from tests.screens.test_review_pages import every_page

Screens = Callable[[Kiosk], AsyncIterator[str]]

SIZES = [(80, 24), (100, 30)]
SCROLL_BAR = "▁▂▃▄▅▆▇█"


async def looks(it: Kiosk) -> str:
    """The screen as text, without what differs from run to run: hashes, and the scroll bar, which
    is drawn when the page has been laid out. The screen has looked at the clock, as it does by
    itself now and then."""
    if isinstance(it.app.screen, WalkScreen | RemarkScreen):
        it.app.screen.tick()
    await it.settle()
    rows = [row.rstrip(f"{SCROLL_BAR} ") for row in it.seen().split("\n")]
    return re.sub(r"(?<![0-9a-f])[0-9a-f]{12}(?![0-9a-f])", "0" * 12, "\n".join(rows))


def in_language(language: str, site: Site = SITE) -> Site:
    """The shop whose board and whose first worker speak a language."""
    others = [one for one in languages() if one != language]
    first, *rest = site.people
    people = (replace(first, language=language), *rest)
    return replace(site, languages=(language, *others), people=people)


async def on_the_reckoner(it: Kiosk) -> AsyncIterator[str]:
    """The list of calculators, and a first question with choices and one with a number."""
    await it.begin()
    await it.press("w")
    yield "calculators"
    for name in ("dose", "cold"):
        await it.touch(Take(name))
        yield name
        await it.press("escape", "w")


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("size", SIZES, ids=str)
@pytest.mark.parametrize(
    ("screens", "site"),
    [
        pytest.param(every_screen, SITE, id="walk"),
        pytest.param(scenes.on_the_board, scenes.CREW, id="board"),
        pytest.param(scenes.on_a_walk, SITE, id="notices"),
        pytest.param(scenes.on_a_remark, SITE, id="remark"),
        pytest.param(on_the_reckoner, SITE, id="reckoner"),
    ],
)
async def test_the_board_and_a_walk(
    tmp_path, screens: Screens, site: Site, size, language, snapshot
):
    async with kiosk(tmp_path, size=size, site=in_language(language, site)) as it:
        async for name in screens(it):
            assert await looks(it) == snapshot(name=name)


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("size", SIZES, ids=str)
async def test_the_setup(tmp_path, size, language, snapshot):
    shutil.copy(shipped("demo") / home.SITE_FILE, tmp_path / home.SITE_FILE)
    async with setting_up(tmp_path, size) as it:
        it.app.flow.draft.language = language
        for question in Question:
            it.app.flow.ask(question)
            assert await looks(it) == snapshot(name=question.name)
            it.app.pop_screen()


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("size", SIZES, ids=str)
async def test_the_review(history, tmp_path, size, language, snapshot):
    async with reviewing(history, tmp_path, size, speaking(language)) as it:
        async for name in every_page(it):
            assert await looks(it) == snapshot(name=name)
