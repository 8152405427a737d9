"""What becomes of the screens when another tablet takes the kiosk over."""

from __future__ import annotations

from dataclasses import replace

import pytest

from kiosk.engine.state import Mode
from kiosk.people.may import Purpose
from kiosk.procedure.site import Person, Pins, Role
from kiosk.screens.board import BoardScreen
from kiosk.screens.pin_screen import PinScreen, ask_pin
from kiosk.serve.serving import interrupt, is_private
from tests.screens.scene import ANA, SITE, kiosk

BOSS = Person(id="boss", name="Bea", language="en", role=Role.SUPERVISOR)
WITH_BOSS = replace(SITE, people=(*SITE.people, BOSS), pins=Pins(invented="2468"))


async def test_what_a_pin_guards_is_closed(tmp_path):
    async with kiosk(tmp_path, site=WITH_BOSS) as it:
        assert not is_private(it.app)
        await it.touch("review")
        assert isinstance(it.app.screen, PinScreen)
        assert is_private(it.app)
        interrupt(it.app)
        await it.settle()
        assert isinstance(it.app.screen, BoardScreen)
        assert "SessionStarted" not in it.facts()


async def test_nobody_is_signed_in_any_more(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.press("i")
        await it.touch("Rita")
        await it.press("i")
        interrupt(it.app)
        await it.settle()
        assert isinstance(it.app.screen, BoardScreen)
        assert "Rita" not in it.words()
        assert "in service" in it.words()


async def test_a_walk_is_paused_and_what_lies_over_it_is_closed(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        ask_pin(it.app, ANA, Purpose.SIGN, lambda: None)
        await it.settle()
        assert isinstance(it.app.screen, PinScreen)
        interrupt(it.app)
        await it.settle()
        assert it.state.mode is Mode.HELD
        assert it.facts()[-1] == "SessionHeld"
        interrupt(it.app)
        assert it.facts()[-1] == "SessionHeld"
        assert it.facts().count("SessionHeld") == 1


@pytest.mark.parametrize("size", [(60, 18), (80, 24)])
async def test_the_board_shows_the_code(tmp_path, size):
    async with kiosk(tmp_path, size=size) as it:
        assert "code" not in it.words()
        it.app.pairing_code = "123 456"
        it.app.screen.draw()
        await it.settle()
        assert "To pair another screen: code 123 456." in it.words()
