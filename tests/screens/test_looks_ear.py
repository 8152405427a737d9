"""What tells whether the ear hears, and that nothing is told by colour alone."""

from __future__ import annotations

import pytest

from kiosk.engine.state import Mode
from kiosk.listening.in_use import Hearing, Metered
from kiosk.push_to_talk import PushToTalk
from kiosk.screens.question import Level
from kiosk.screens.status import LEVEL_CELLS
from tests.screens.scene import FakeHearing, Kiosk, kiosk
from tests.screens.test_looks import SIZES, every_screen, poor_texts, small_targets

NO_SOUND = "No sound comes from the microphone."


class Meter(FakeHearing):
    """An ear whose level the test sets."""

    level: float | None = -120.0


def hear_with(it: Kiosk, hearing: Hearing) -> None:
    it.app.hearing = hearing


async def listening(it: Kiosk, level: float | None = -120.0) -> Meter:
    """A walk whose ear is open, with sound of a level."""
    meter = Meter()
    meter.level = level
    hear_with(it, meter)
    await it.begin()
    await fall_silent(it)
    return meter


async def fall_silent(it: Kiosk) -> None:
    """The voice ends what it says."""
    for end in it.app.voice.ends:
        end()
    it.app.voice.ends.clear()
    await it.settle()


async def bar(it: Kiosk) -> str:
    """The meter, as the screen draws it at its next look at the ear."""
    it.app.screen.meter()
    await it.settle()
    place = it.app.screen.query_one(Level).region
    return it.seen().split("\n")[place.y][place.x : place.right].strip()


async def test_the_meter_follows_the_sound(tmp_path):
    async with kiosk(tmp_path) as it:
        meter = await listening(it)
        assert isinstance(meter, Metered)
        assert await bar(it) == "▁·······"
        full = []
        for level in (-70.0, -48.0, -36.0, -24.0, -12.0, 0.0):
            meter.level = level
            full.append(LEVEL_CELLS - (await bar(it)).count("·"))
        assert full == [1, 2, 4, 6, 8, 8]
        assert await bar(it) == "▁▂▃▄▅▆▇█"


async def test_a_dead_microphone_is_seen_and_said_and_so_is_its_return(tmp_path):
    async with kiosk(tmp_path) as it:
        meter = await listening(it)
        assert NO_SOUND not in it.words()
        meter.level = None
        assert await bar(it) == "×·······"
        assert NO_SOUND in it.words()
        meter.level = -50.0
        assert "×" not in await bar(it)
        assert NO_SOUND not in it.words()


async def test_there_is_no_meter_while_the_ear_is_shut(tmp_path):
    async with kiosk(tmp_path) as it:
        meter = await listening(it, -20.0)
        assert await bar(it) != ""
        await it.press("r")
        assert it.walk.intercom.speaking
        assert await bar(it) == ""
        await fall_silent(it)
        assert await bar(it) != ""
        meter.notice = "the microphone is gone"
        assert await bar(it) == ""


async def test_behind_the_key_to_talk_the_meter_shows_when_it_is_pressed(tmp_path):
    async with kiosk(tmp_path) as it:
        meter = Meter()
        meter.level = -20.0
        app = it.app
        now = lambda: it.clock.now().mono  # noqa: E731
        hear_with(it, PushToTalk(lambda _told: meter, app.heard, app.notice_changed, now))
        await it.begin()
        await fall_silent(it)
        assert await bar(it) == ""
        await it.press("t")
        assert await bar(it) != ""


async def test_an_ear_that_cannot_tell_shows_no_meter(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await fall_silent(it)
        assert await bar(it) == ""
        assert NO_SOUND not in it.words()


async def test_nothing_else_is_drawn_when_the_level_changes(tmp_path, monkeypatch):
    async with kiosk(tmp_path) as it:
        meter = await listening(it)
        await bar(it)
        compositor, drawn = it.app.screen._compositor, []
        update = compositor.update_widgets
        monkeypatch.setattr(
            compositor, "update_widgets", lambda some: (drawn.append(set(some)), update(some))
        )
        meter.level = -20.0
        await bar(it)
        assert drawn == [{it.app.screen.query_one(Level)}]
        await bar(it)
        assert len(drawn) == 1


@pytest.mark.parametrize("size", SIZES, ids=str)
async def test_the_meter_has_room_on_every_screen(tmp_path, size):
    async with kiosk(tmp_path, size=size) as it:
        await listening(it, 0.0)
        assert await bar(it) == "▁▂▃▄▅▆▇█"
        assert small_targets(it) == []
        assert poor_texts(it) == []


# Without colours.


def greys(it: Kiosk) -> bool:
    """True when every colour on the screen is a grey."""
    colours = (
        tuple(colour.triplet)
        for strip in it.app.screen._compositor.render_strips()
        for _, style, _ in strip
        for colour in (style.color, style.bgcolor)
        if colour is not None and colour.triplet is not None
    )
    return all(max(one) - min(one) <= 1 for one in colours)


async def test_without_colours_every_text_is_still_clear(tmp_path, monkeypatch):
    monkeypatch.setenv("NO_COLOR", "1")
    async with kiosk(tmp_path) as it:
        for theme in ("night", "day"):
            it.app.theme = theme
            await it.settle()
            assert greys(it)
            assert poor_texts(it) == [], theme
        async for name in every_screen(it):
            assert greys(it), name
            assert poor_texts(it) == [], name


async def test_every_state_has_a_sign_or_a_word_besides_its_colour(tmp_path):
    async with kiosk(tmp_path) as it:
        assert it.seen().count("●") or it.seen().count("■")
        await it.begin()
        said = [it.seen()]

        def changed(*signs: str) -> None:
            """The screen's text alone, without any colour, tells another state."""
            assert it.seen() not in said
            assert [one for one in signs if one not in it.seen()] == []
            said.append(it.seen())

        # What leads on has the focus.
        assert "»" in it.seen()
        target = it.target("my hands are clean")
        await it.down(target)
        it.clock.seconds += 0.6
        target.refresh()
        await it.settle()
        changed("●●○○○")
        it.clock.seconds += 1
        target.refresh()
        await it.settle()
        changed("now let go")
        await it.up(target)
        await it.touch("yes")
        changed("▲ WARNING")
        await it.press("p")
        changed(" HELD ")
        assert it.state.mode is Mode.HELD
        await it.hear("mumble", why="nothing")
        changed()


async def test_a_key_that_cannot_be_pressed_is_told_by_a_sign(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.keep("my hands are clean")
        await it.touch("yes", "next")
        await it.keep("the power is off")
        await it.touch("yes", "yes")
        await it.touch("type the number")
        faces = {one.face.label: one for one in it.targets()}
        shut = [label for label, one in faces.items() if not one.face.available]
        assert all(f"({label})" in it.seen() for label in shut)
        opened = [label for label, one in faces.items() if one.face.available]
        assert not any(f"({label})" in it.seen() for label in opened)
