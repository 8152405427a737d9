"""Leaving a spoken remark: when it is offered, what is recorded, and that nobody commands in it."""

from __future__ import annotations

from dataclasses import replace
from importlib import util
from pathlib import Path

import numpy as np
import pytest

from kiosk.engine import commands as c
from kiosk.journal.store import JournalFailed
from kiosk.languages.words import words
from kiosk.listening.endpoint import FRAME, FRAME_S
from kiosk.listening.sources import Samples, read_wave
from kiosk.options import LeaveRemark
from kiosk.push_to_talk import PushToTalk
from kiosk.remarks.recorder import BEGIN_S, MOST_S, QUIET_S, TAIL_S
from kiosk.remarks.sounds import Lies, Sounds
from kiosk.remarks.told import journaled
from kiosk.screens.remark_screen import RemarkScreen
from kiosk.screens.walk_screen import WalkScreen
from tests.screens.remark_scene import HUM, PROBLEM, Microphone, fall_silent, problem
from tests.screens.scene import SITE, FakeHearing, Kiosk, kiosk
from tests.screens.test_looks import SIZES, poor_texts, small_targets

LEAVE = LeaveRemark()
SAY = words("en").say

speaks = pytest.mark.skipif(
    util.find_spec("espeakng_loader") is None, reason="espeakng-loader, which speaks, is missing"
)


def remarks(it: Kiosk):
    return journaled(it.app.shop.journal)


def on_remark(it: Kiosk) -> bool:
    return isinstance(it.app.screen, RemarkScreen)


def sounds(folder: Path) -> list[Path]:
    return sorted((folder / "remarks").glob("*")) if (folder / "remarks").exists() else []


async def recording(it: Kiosk, seconds: float = 0.0) -> Microphone:
    """Open a problem, choose a remark, wait for the voice, record a hum."""
    ear = await problem(it)
    await it.press("v")
    await to_record(it, ear, seconds)
    return ear


async def to_record(it: Kiosk, ear: Microphone, seconds: float) -> None:
    """The voice is heard, falls silent and dies away; then record a hum."""
    ear.hum(FRAME_S)
    await fall_silent(it)
    ear.hum(TAIL_S + seconds)


# When it is offered.


async def test_it_is_offered_on_an_open_problem_where_there_is_a_microphone(tmp_path):
    async with kiosk(tmp_path) as it:
        it.app.hearing = Microphone()
        await it.begin()
        assert not it.offers(LEAVE)
        await it.press("escape")
        assert it.state.because == "pause"
        assert not it.offers(LEAVE)
        await it.touch(PROBLEM)
        assert it.offers(LEAVE)
        assert SAY("say-remark") in it.app.hearing.allowed
        # A problem that has got its name is still open.
        await it.touch("there is a leak")
        assert it.offers(LEAVE)
        await it.touch(c.Resume())
        assert not it.offers(LEAVE)
        assert SAY("say-remark") not in it.app.hearing.allowed


async def test_without_a_microphone_nothing_changes(tmp_path):
    async with kiosk(tmp_path) as it:
        await problem(it, FakeHearing())
        assert not it.offers(LEAVE)
        assert SAY("say-remark") not in it.app.hearing.allowed
        await it.press("v")
        assert isinstance(it.app.screen, WalkScreen)


async def test_a_microphone_that_is_gone_takes_the_offer_away(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await problem(it)
        ear.microphone = False
        ear.notice = "the sound has ended"
        it.app.notice_changed()
        await it.settle()
        assert not it.offers(LEAVE)
        await it.hear(SAY("say-remark"))
        assert isinstance(it.app.screen, WalkScreen)


async def test_a_microphone_without_an_ear_for_the_language_records(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = Microphone()
        ear.notice = "no model for this language"
        await problem(it, ear)
        assert it.offers(LEAVE)


async def test_the_reckoner_and_the_end_asked_leave_it_out(tmp_path):
    async with kiosk(tmp_path) as it:
        await problem(it)
        await it.touch(c.End())
        assert not it.offers(LEAVE)


@pytest.mark.parametrize("way", ["touch", "key", "voice"])
async def test_it_is_chosen_by_touch_key_or_voice(tmp_path, way):
    async with kiosk(tmp_path) as it:
        await problem(it)
        match way:
            case "touch":
                await it.touch(LEAVE)
            case "key":
                await it.press("v")
            case _:
                await it.hear(SAY("say-remark"))
        assert on_remark(it)
        assert it.app.voice.said[-1] == (SAY("remark-speak-now"), "en")


# What is recorded.


async def test_a_press_ends_it_and_it_is_kept_with_its_hash(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, 4.0)
        await it.pass_time(0)
        assert "recording" in it.words()
        before = it.facts()
        await it.press("enter")
        assert ear.take is None
        assert "Save this message of 4 seconds?" in it.words()
        assert it.facts() == before
        assert sounds(tmp_path) == []
        await it.press("k")
        assert isinstance(it.app.screen, WalkScreen)
        assert "Your message of 4 seconds is saved." in it.words()
        (remark,) = remarks(it)
        assert it.facts() == [*before, "RemarkRecorded"]
        assert (remark.session, remark.step) == (it.walk.session.id, it.state.step)
        assert (remark.worker, remark.seconds) == ("ana", 4.0)
        assert sounds(tmp_path) == [tmp_path / "remarks" / f"{remark.sha256}.wav"]
        assert Sounds(tmp_path).look(remark.sha256) is Lies.HERE
        samples, rate = read_wave(Sounds(tmp_path).file(remark.sha256))
        assert rate == 16_000
        assert np.abs(samples[:FRAME] - HUM).max() < 1e-4
        # The walk goes on where it was, and the ear with it.
        assert it.offers(LEAVE)
        assert SAY("say-remark") in ear.allowed


async def test_it_is_practice_where_the_walk_is(tmp_path):
    for practice in (True, False):
        folder = tmp_path / str(practice)
        folder.mkdir()
        async with kiosk(folder, site=replace(SITE, practice=practice)) as it:
            await recording(it, 1.0)
            await it.press("enter", "k")
            (event,) = it.app.shop.journal.shop_events()
            assert event.fact.practice is practice


async def test_nothing_is_recorded_until_the_kiosk_has_fallen_silent(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await problem(it)
        await it.press("v")
        ear.hum(2.0)
        await it.pass_time(0)
        assert "about to record" in it.words()
        assert it.app.screen.recorder.seconds == 0
        await fall_silent(it)
        ear.hum(2.0)
        await it.pass_time(0)
        assert "recording" in it.words()
        assert it.app.screen.recorder.seconds == pytest.approx(1.7, abs=2 * FRAME_S)


async def test_the_time_and_the_level_are_shown(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, 1.0)
        await it.pass_time(0)
        quiet = it.words().count("▮")
        ear.give([HUM * 50] * round(4.0 / FRAME_S))
        await it.pass_time(0)
        assert it.words().count("▮") > quiet > 0
    async with kiosk(tmp_path / "low", size=(60, 18)) as it:
        await recording(it, 5.1)
        await it.pass_time(0)
        assert "recording 0:05" in it.words()


@speaks
async def test_two_seconds_of_silence_after_speech_end_it(tmp_path):
    from tests.speech.synth import speaker

    said = list(Samples(speaker().say("the belt is torn and it smells of rubber")).frames())
    async with kiosk(tmp_path) as it:
        ear = await recording(it)
        ear.give(said)
        assert it.app.screen.recorder.spoke
        # What is spoken has 0.8 s of silence behind it.
        ear.hum(QUIET_S - 1.0)
        await it.settle()
        assert ear.take is not None
        ear.hum(0.7)
        await it.settle()
        assert ear.take is None
        seconds = round(it.app.screen.recorder.seconds)
        assert f"Save this message of {seconds} seconds?" in it.words()
        assert "no speech" not in it.words()


async def test_who_says_nothing_is_asked_what_to_do(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, BEGIN_S + 0.1)
        await it.settle()
        assert ear.take is None
        assert "I found no speech in it." in it.words()


@speaks
async def test_thirty_seconds_are_the_most(tmp_path):
    from tests.speech.synth import speaker

    said = list(Samples(speaker().say("it leaks under the left door and onto the floor")).frames())
    async with kiosk(tmp_path) as it:
        ear = await recording(it)
        while ear.take is not None and it.app.screen.recorder.seconds < MOST_S + 1:
            ear.give(said)
            await it.settle()
        assert "30 seconds is the most" in it.words()
        assert it.app.screen.recorder.seconds == pytest.approx(MOST_S, abs=FRAME_S)


# Keep, again, never mind.


async def test_again_drops_what_was_said(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, 4.0)
        await it.press("enter", "a")
        assert it.app.voice.said[-1][0] == SAY("remark-speak-now")
        await to_record(it, ear, 2.0)
        await it.press("enter")
        assert "Save this message of 2 seconds?" in it.words()
        await it.press("k")
        assert [one.seconds for one in remarks(it)] == [2.0]
        assert len(sounds(tmp_path)) == 1


@pytest.mark.parametrize("keys", [["escape"], ["enter", "escape"]], ids=["while", "after"])
async def test_never_mind_leaves_nothing(tmp_path, keys):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, 1.0)
        before = it.facts()
        await it.press(*keys)
        assert isinstance(it.app.screen, WalkScreen)
        assert it.facts() == before
        assert sounds(tmp_path) == []
        assert ear.take is None
        assert it.app.voice.said[-1][0] == "What is wrong?"
        await fall_silent(it)
        assert not ear.deaf
        assert SAY("say-remark") in ear.allowed


async def test_several_remarks_can_be_left_on_one_problem(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, 1.0)
        await it.press("enter", "k", "v")
        await to_record(it, ear, 3.0)
        await it.press("enter", "k")
        assert [one.seconds for one in remarks(it)] == [1.0, 3.0]


async def test_a_remark_of_nothing_cannot_be_kept(tmp_path):
    async with kiosk(tmp_path) as it:
        await problem(it)
        await it.press("v", "enter")
        assert "Nothing was recorded." in it.words()
        assert SAY("say-remark-keep") not in it.labels()
        await it.press("k")
        assert remarks(it) == ()


# The ear.


async def test_nothing_that_is_said_while_it_is_recorded_commands(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await problem(it)
        before, state = it.facts(), it.state
        phrases = [*ear.allowed, SAY("say-remark-keep"), SAY("say-remark-again")]
        await it.press("v")
        assert ear.allowed == ()
        await fall_silent(it)
        assert ear.allowed == ()
        for phrase in phrases:
            await it.hear(phrase)
            assert on_remark(it)
            assert ear.take is not None
        assert it.facts() == before
        await it.press("escape")
        assert it.state == state


async def test_afterwards_it_can_be_kept_by_voice_and_the_journal_has_what_was_heard(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, 1.0)
        await it.press("enter")
        assert set(ear.allowed) == {
            SAY("say-remark-keep"), SAY("say-remark-again"), SAY("say-never-mind"),
        }  # fmt: skip
        assert ear.deaf
        await fall_silent(it)
        assert not ear.deaf
        await it.hear(SAY("say-problem").split(" / ")[0])
        assert on_remark(it)
        await it.hear(SAY("say-remark-keep"))
        assert isinstance(it.app.screen, WalkScreen)
        (event,) = it.app.shop.journal.shop_events()
        assert event.by == c.Evidence(c.Channel.VOICE, "save it", 0.9, "test-ear")


async def test_behind_the_key_to_talk_it_records_without_the_key(tmp_path):
    async with kiosk(tmp_path) as it:
        ear, app = Microphone(), it.app
        now = lambda: it.clock.now().mono  # noqa: E731
        app.hearing = PushToTalk(lambda _told: ear, app.heard, app.notice_changed, now)
        await it.begin()
        await it.touch(PROBLEM)
        await it.press("v")
        await to_record(it, ear, 2.0)
        await it.press("t")
        assert on_remark(it)
        assert it.app.screen.recorder.ended is None
        await it.press("enter")
        await fall_silent(it)
        assert ear.deaf
        await it.pass_time(0)
        assert "press T" in it.words()
        await it.press("t")
        assert not ear.deaf
        await it.hear(SAY("say-remark-keep"))
        assert [one.seconds for one in remarks(it)] == [2.0]
    assert not PushToTalk(
        lambda _told: FakeHearing(), app.heard, app.notice_changed, now
    ).microphone


# What may go wrong.


async def test_a_microphone_that_goes_away_leaves_what_was_said(tmp_path):
    async with kiosk(tmp_path) as it:
        ear = await recording(it, 2.0)
        ear.microphone = False
        await it.pass_time(0.2)
        assert "The microphone gives no more sound." in it.words()
        assert "Save this message of 2 seconds?" in it.words()
        await it.press("k")
        assert [one.seconds for one in remarks(it)] == [2.0]
        assert not it.offers(LEAVE)


async def test_a_disk_that_is_full_is_said_and_the_remark_is_not_lost(tmp_path):
    def full(events: object) -> None:
        raise JournalFailed("disk full")

    async with kiosk(tmp_path) as it:
        await recording(it, 2.0)
        await it.press("enter")
        journal = it.app.shop.journal
        append, journal.append_shop = journal.append_shop, full
        await it.press("k")
        assert on_remark(it)
        assert "could not be saved. disk full" in it.words()
        assert sounds(tmp_path) == []
        journal.append_shop = append
        await it.press("k")
        assert [one.seconds for one in remarks(it)] == [2.0]


async def test_enter_given_out_of_habit_names_no_problem_afterwards(tmp_path):
    async with kiosk(tmp_path) as it:
        await recording(it, 1.0)
        await it.press("enter", "enter")
        assert remarks(it) != ()
        before = it.facts()
        await it.press("enter", "enter")
        assert it.facts() == before


# How it looks.


@pytest.mark.parametrize(
    ("size", "worker"),
    [*((size, "Ana") for size in SIZES), (SIZES[0], "Mina"), (SIZES[0], "Rita")],
    ids=str,
)
async def test_every_text_is_clear_and_every_target_large(tmp_path, size, worker):
    async with kiosk(tmp_path, size) as it:
        it.app.hearing = ear = Microphone()
        await it.begin(worker)
        await it.touch(PROBLEM)
        say = it.walk.words.say
        for theme in ("night", "day"):
            it.app.theme = theme
            await it.press("v")
            await to_record(it, ear, 3.1)
            await it.pass_time(0)
            assert "0:03" in it.words() or size != (60, 18)
            for label in (say("remark-done"), say("say-never-mind")):
                assert label in it.labels()
            assert poor_texts(it) == []
            assert small_targets(it) == []
            shown = it.words()
            for text in ("remark-speak-now", "remark-records", "remark-ear-closed"):
                assert say(text) in shown, f"{text}\n{it.seen()}"
            await it.press("enter")
            assert poor_texts(it) == []
            assert small_targets(it) == []
            assert say("remark-no-speech") in it.words()
            assert {say("say-remark-keep"), say("say-remark-again")} <= set(it.labels())
            await it.press("escape")
