"""What the screen shows of ear and voice, and how they come into use in the middle of a walk."""

from __future__ import annotations

import threading

from kiosk.engine.state import Stage
from kiosk.listening.ear import DOUBTFUL, NOT_ALLOWED
from kiosk.screens.app import KioskApp
from tests.screens.scene import FakeHearing, FakeVoice, Kiosk, StillClock, kiosk, shop


async def test_it_says_that_it_does_not_listen_while_it_speaks(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        assert "I am speaking, so I do not listen" in it.words()
        ends = it.app.voice.ends[-1]
        other = threading.Thread(target=ends)
        other.start()
        other.join()
        await it.settle()
        assert "I am listening" in it.words()


async def test_what_was_heard_and_why_it_was_not_acted_on(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        before = it.facts()
        await it.hear("pineapple", why=NOT_ALLOWED)
        assert "“pineapple” is not one of the words for now" in it.words()
        await it.hear("my hand are clean", why=DOUBTFUL)
        assert "“my hand are clean”? I am not sure" in it.words()
        assert it.facts() == before
        await it.hear("my hands are clean")
        assert "heard “my hands are clean”" in it.words()
        assert it.state.stage is Stage.READ_BACK


async def test_a_missing_ear_and_a_missing_voice_say_why(tmp_path):
    async with kiosk(tmp_path) as it:
        it.app.voice.notice = "no speaker was found"
        it.app.hearing.notice = "no microphone was found"
        await it.begin()
        assert "I cannot hear: no microphone was found" in it.words()
        assert "I cannot speak: no speaker was found" in it.words()
        it.app.hearing.notice = ""
        it.app.notice_changed()
        await it.settle()
        assert "I cannot hear" not in it.words()


async def opened(tmp_path, open_voice, open_hearing, check) -> None:
    clock = StillClock()
    made = shop(tmp_path, clock)
    app = KioskApp(made, open_voice, open_hearing)
    async with app.run_test(size=(80, 24)):
        it = Kiosk(app, clock)
        await it.settle()
        await check(it)
    made.journal.close()


async def test_ear_and_voice_come_into_use_in_the_middle_of_a_walk(tmp_path):
    go = threading.Event()
    voice, hearing = FakeVoice(), FakeHearing()
    posted = []

    def open_hearing(heard, changed):
        posted.append(heard)
        go.wait(10)
        return hearing

    def open_voice():
        go.wait(10)
        return voice

    async def check(it: Kiosk) -> None:
        await it.begin()
        assert "the ear is being opened" in it.words()
        assert "the voice is being opened" in it.words()
        go.set()
        await it.app.workers.wait_for_complete()
        await it.settle()
        assert "voice on" in it.words()
        assert voice.said[-1][0].startswith("Wash your hands.")
        assert "my hands are clean" in hearing.allowed
        assert posted == [it.app.heard]

    await opened(tmp_path, open_voice, open_hearing, check)


async def test_an_ear_that_cannot_be_opened_leaves_the_kiosk_working(tmp_path):
    def open_hearing(heard, changed):
        raise RuntimeError("the model file is damaged")

    async def check(it: Kiosk) -> None:
        await it.begin()
        await it.settle()
        assert "I cannot hear: the model file is damaged" in it.words()
        await it.keep("my hands are clean")
        assert it.state.stage is Stage.READ_BACK

    await opened(tmp_path, None, open_hearing, check)
