"""The kiosk on a tablet: a real browser, worked with a finger alone."""

from __future__ import annotations

import asyncio
import json
import re
from collections.abc import AsyncIterator
from urllib.parse import urlsplit

import pyte
import pytest
import pytest_asyncio

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine.state import Mode
from kiosk.proof.audit import audit
from kiosk.screens.app import KioskApp
from kiosk.screens.walk_screen import WalkScreen
from kiosk.serve.serving import Place, Serving
from tests.endtoend.chromium import PATIENCE_S, PROGRAM, Browser, Page, browser, until
from tests.screens.scene import shop

pytestmark = [
    pytest.mark.skipif(PROGRAM is None, reason="no Chromium is installed"),
    pytest.mark.asyncio(loop_scope="module"),
]

LAND, PORTRAIT = (1280, 800), (800, 1280)


class Served:
    """The kiosk that is served, and what it wrote for its screens."""

    def __init__(self, app: KioskApp, clock: LeapingClock) -> None:
        self.app, self.clock = app, clock
        self.told: list[str] = []
        self.written: list[str] = []
        self.serving = Serving(app, Place("127.0.0.1", 0), self.told.append)
        paint = self.serving.hub.paint
        self.serving.hub.paint = lambda data: (self.written.append(data), paint(data))

    @property
    def address(self) -> str:
        return re.search(r"http://\S+", self.told[0])[0]

    @property
    def code(self) -> str:
        return re.sub(r"\D", "", self.told[-1])

    def facts(self) -> list[str]:
        return [row["kind"] for row in self.app.shop.journal.rows()]

    async def pair(self, page: Page) -> None:
        await page.go(self.address)
        for digit in self.code:
            await page.tap(*await page.find(f'[data-digit="{digit}"]'))
        assert await page.run("code.value") == self.code
        await page.tap(*await page.find("[type=submit]"))
        await page.find("#cells")

    async def touch(self, page: Page, text: str) -> None:
        """Tap a text, not so soon that it would be taken for a bouncing press."""
        await page.place(text)
        await page.calm()
        self.clock.leap(1.0)
        await page.tap(*await page.place(text))

    async def fact(self, kind: str, count: int = 1) -> None:
        """Wait until the journal has so many facts of a kind."""

        async def there() -> bool:
            return self.facts().count(kind) >= count

        await until(there)


@pytest_asyncio.fixture(scope="module", loop_scope="module")
async def there() -> AsyncIterator[Browser]:
    async with browser() as opened:
        yield opened


@pytest_asyncio.fixture(loop_scope="module")
async def it(tmp_path, monkeypatch) -> AsyncIterator[Served]:
    monkeypatch.setattr("textual.constants.COLOR_SYSTEM", "truecolor")
    clock = LeapingClock(SystemClock())
    made = shop(tmp_path, clock)
    served = Served(KioskApp(made), clock)
    running = asyncio.create_task(served.serving.run())

    async def ready() -> bool:
        assert not running.done(), running.exception()
        return len(served.told) > 1

    await until(ready)
    yield served
    served.app.exit()
    async with asyncio.timeout(PATIENCE_S):
        await running
    made.journal.close()


async def test_a_whole_procedure_is_walked_by_touch_alone(it, there):
    page = await there.page(*PORTRAIT)
    await it.pair(page)

    async def touch(*texts: str) -> None:
        for text in texts:
            await it.touch(page, text)

    async def keep(phrase: str) -> None:
        await page.place("keep it pressed")
        await page.down(*await page.place(phrase))
        await page.place("now let go")

    await touch("Window machine", "Ana")
    # The finger is lost on the way: nothing was meant.
    await keep("my hands are clean")
    await page.finger("touchCancel")
    await keep("my hands are clean")
    await page.up()
    await touch("yes", "next")
    await keep("the power is off")
    await page.up()
    await touch("yes", "yes", "type the number", "3", "enter", "100")
    await page.place("Let it soak")
    it.clock.leap(121)
    await touch("next", "next", "yes", "4", "the part is good")
    await it.fact("SessionCompleted")

    # The monitor that proves procedures finds nothing in what was journaled.
    journal = it.app.shop.journal
    session = next(iter(journal.sessions()))
    assert audit(it.app.shop.plan_of(session), journal.events(session)) == []
    assert it.facts().count("PhraseGiven") == 2
    # Nothing was asked of anybody else, and nothing was refused or went wrong.
    assert {urlsplit(one).netloc for one in page.asked} == {urlsplit(it.address).netloc}
    assert page.complaints == []


async def test_a_terminal_would_show_the_same_cells(it, there):
    """pyte, a terminal in Python, is given what the kiosk writes."""
    page = await there.page(*LAND)
    await it.pair(page)
    await it.touch(page, "Window machine")
    await page.place("Mina")
    await page.calm()
    it.written.clear()
    it.app.refresh()
    await page.calm()
    columns, rows = it.app.size
    screen = pyte.Screen(columns, rows)
    pyte.Stream(screen).feed("".join(it.written))
    expected = [
        [[one.data, *map(named, (one.fg, one.bg)), one.bold] for one in map(row.get, cells)]
        for row, cells in ((screen.buffer[y], range(columns)) for y in range(rows))
    ]
    shown = await page.run(
        "cells.grid.map((row) => row.map(({ text, style }) =>"
        " [text, style.fg, style.bg, style.bold]))"
    )
    assert shown == expected
    assert "한" in {cell[0] for row in expected for cell in row}


def named(colour: str) -> str | None:
    return None if colour == "default" else f"#{colour}"


async def test_a_second_screen_watches_until_it_takes_over(it, there):
    first, second = await there.page(*LAND), await there.page(*PORTRAIT)
    await it.pair(first)
    await it.touch(first, "Window machine")
    await it.touch(first, "Ana")
    await it.pair(second)
    await second.find("#watching")
    await second.place("Wash your hands")
    await it.touch(second, "take a break")
    await second.tap(*await second.find("#take"))
    await it.fact("ScreenTakenOver")
    await first.find("#watching")

    # The walk was paused by the kiosk; not by the touch of the screen that watched.
    walk = it.app.screen.walk
    assert isinstance(it.app.screen, WalkScreen)
    assert walk.session.state.mode is Mode.HELD
    kinds = it.facts()
    assert kinds.index("SessionHeld") > kinds.index("ScreenTakenOver")
    row = next(one for one in it.app.shop.journal.rows() if one["kind"] == "ScreenTakenOver")
    fact = json.loads(row["body"])["fact"]
    assert fact["screen"] != fact["before"]

    # The first one takes it back, and what it touches counts again.
    await first.tap(*await first.find("#take"))
    await second.find("#watching")
    await it.touch(first, "keep going")
    await it.fact("SessionResumed")
    assert it.facts().count("ScreenTakenOver") == 2

    # A page that is opened anew goes on where it was.
    await first.go(it.address)
    await first.place("Window machine")
    assert await first.run("holds")
    assert it.app.screen.walk is walk
