"""A kiosk in a loud place: the key, the ear behind it, and what the screen says of both."""

from __future__ import annotations

from kiosk.engine import commands as c
from kiosk.engine.state import Stage
from kiosk.listening.ear import Heard
from kiosk.push_to_talk import OPEN_S, PushToTalk
from tests.screens.scene import FakeHearing, Kiosk, kiosk


class Ear(FakeHearing):
    deaf = False

    def deafen(self) -> None:
        self.deaf = True

    def undeafen(self, *, at_once: bool = False) -> None:
        self.deaf = False


def in_a_loud_place(it: Kiosk) -> Ear:
    """Put the key before the ear, as the opening of a kiosk does."""
    ear = Ear()
    app = it.app
    now = lambda: it.clock.now().mono  # noqa: E731
    app.hearing = PushToTalk(lambda _told: ear, app.heard, app.notice_changed, now)
    return ear


async def fall_silent(it: Kiosk) -> None:
    it.app.voice.ends[-1]()
    await it.settle()


async def test_the_key_opens_the_ear_and_the_screen_says_so(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = in_a_loud_place(it)
        await it.begin()
        assert "I am speaking, so I do not listen" in it.words()
        await fall_silent(it)
        assert "I do not listen: press T, then speak" in it.words()
        assert ear.deaf
        before = it.facts()
        await it.press("t")
        assert "I am listening; press T to stop" in it.words()
        assert not ear.deaf
        await it.press("t")
        assert ear.deaf
        assert it.facts() == before


async def test_it_shuts_after_an_answer_and_after_some_seconds(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = in_a_loud_place(it)
        await it.begin()
        await fall_silent(it)
        await it.press("t")
        it.app.hearing._heard(Heard("", "my hands are clean", 0.9, "ear", "", 0.1, 0.0))
        await it.settle()
        assert it.state.stage is Stage.READ_BACK
        await fall_silent(it)
        assert ear.deaf
        await it.press("t")
        assert not ear.deaf
        await it.pass_time(OPEN_S + 1)
        assert ear.deaf
        assert "I do not listen" in it.words()


async def test_touch_works_beside_it(tmp_path):
    async with kiosk(tmp_path) as it:
        in_a_loud_place(it)
        await it.begin()
        await it.keep("my hands are clean")
        assert it.state.stage is Stage.READ_BACK


async def test_without_the_setting_the_key_does_nothing(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await fall_silent(it)
        before = it.facts()
        await it.press("t")
        assert it.facts() == before
        assert "I am listening" in it.words()


async def test_a_word_of_the_workers_own_asks_for_the_screen_at_a_hold(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.hear("my hands are clean")
        assert it.state.stage is Stage.READ_BACK
        it.app.heard(Heard("yes", "yes", 0.4, c.OWN_WORDS, "", 0.1, 0.0))
        await it.settle()
        assert it.state.stage is Stage.READ_BACK
        assert "Your own words do not answer a safety hold" in it.words()
        await it.touch("yes")
        assert it.state.stage is not Stage.READ_BACK
