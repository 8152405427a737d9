"""Every text the voice is given ends exactly once, whatever cuts it off or breaks."""

from __future__ import annotations

import threading
from collections.abc import Callable
from pathlib import Path

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.speaking import voice as voice_module
from kiosk.speaking.announced import AnnouncedVoice
from kiosk.speaking.kiosk_voice import KioskVoice
from kiosk.speaking.player import NoSpeaker, Player, Sound
from kiosk.speaking.voice import SilentVoice, Suits, Voice, open_voice, suit
from kiosk.speaking.voices import SpeechFailed

LONG_S = 30.0
"""A bound for a thing that must come; never waited out by a voice that works."""


class FakePrompts:
    """Gives every text a path of its own name; fails for 'unspeakable'; can be kept waiting."""

    def __init__(self) -> None:
        self.asked: list[str] = []
        self.persons: list[str] = []
        self.started = threading.Semaphore(0)
        self.gate = threading.Event()
        self.gate.set()

    def wave(self, text: str, language: str, person: str = "") -> Path:
        self.asked.append(text)
        self.persons.append(person)
        self.started.release()
        self.gate.wait(LONG_S)
        if "unspeakable" in text:
            raise SpeechFailed("it is unspeakable")
        return Path(text)

    def ready(self, text: str, language: str, person: str = "") -> None:
        self.wave(text, language, person)


class FakePlayer:
    """Plays nothing; the test ends the sounds."""

    def __init__(self, seconds: float = 1_000.0) -> None:
        self.seconds = seconds
        self.playing: str | None = None
        self.plays: list[Callable[[str], None]] = []
        self.played = threading.Semaphore(0)
        self.closed = 0
        self.gone = False

    def load(self, path: Path) -> Sound:
        return Sound(path, b"", self.seconds)

    def play(self, sound: Sound, on_done: Callable[[str], None]) -> None:
        if self.gone:
            raise NoSpeaker("it is gone")
        self.playing = str(sound.path)
        self.plays.append(on_done)
        self.played.release()

    def stop(self) -> None:
        self.playing = None

    def close(self) -> None:
        self.closed += 1


class Ends:
    """Counts the ends of each text."""

    def __init__(self) -> None:
        self.counts: list[int] = []
        self.came = threading.Semaphore(0)

    def new(self) -> Callable[[], None]:
        at = len(self.counts)
        self.counts.append(0)

        def on_end() -> None:
            self.counts[at] += 1
            self.came.release()

        return on_end


def never() -> Player:
    raise AssertionError("nothing was lost")


def made(prompts: FakePrompts, player: FakePlayer) -> KioskVoice:
    return KioskVoice(prompts, player, reopen=never)


orders = st.lists(
    st.sampled_from(
        ["say", "say unspeakable", "wait for play", "hush", "end", "end an earlier", "prepare"]
    ),
    max_size=25,
)


@settings(max_examples=150, deadline=None)
@given(orders)
def test_every_text_ends_exactly_once_in_any_order_of_events(order: list[str]) -> None:
    prompts, player, ends = FakePrompts(), FakePlayer(), Ends()
    voice = made(prompts, player)
    silent = True
    for at, event in enumerate(order):
        if event.startswith("say"):
            voice.say(f"{event} {at}", "en", ends.new())
            silent = "unspeakable" in event
            newest = f"{event} {at}"
        elif event == "wait for play" and not silent:
            while player.playing != newest:
                assert player.played.acquire(timeout=LONG_S)
        elif event == "hush":
            voice.hush()
            silent = True
            assert player.playing is None
        elif event == "end" and player.plays:
            player.plays[-1]("")
        elif event == "end an earlier" and player.plays:
            player.plays[0]("")
        elif event == "prepare":
            voice.prepare([f"ahead {at}", "ahead unspeakable"], "en")
    voice.close()
    assert ends.counts == [1] * len(ends.counts)
    assert player.playing is None
    assert player.closed == 1


def test_a_text_plays_until_its_end_and_the_notice_stays_empty() -> None:
    player, ends = FakePlayer(), Ends()
    voice = made(FakePrompts(), player)
    voice.say("Rinse", "en", ends.new())
    assert player.played.acquire(timeout=LONG_S)
    assert (player.playing, ends.counts) == ("Rinse", [0])
    player.plays[0]("")
    assert ends.came.acquire(timeout=LONG_S)
    assert voice.notice == ""
    voice.close()


def test_say_comes_back_and_a_newer_text_wins_while_the_older_is_rendering() -> None:
    prompts, player, ends = FakePrompts(), FakePlayer(), Ends()
    voice = made(prompts, player)
    prompts.gate.clear()
    voice.say("older", "en", ends.new())
    assert prompts.started.acquire(timeout=LONG_S)
    voice.say("newer", "en", ends.new())
    assert ends.came.acquire(timeout=LONG_S)
    assert ends.counts == [1, 0]
    prompts.gate.set()
    assert player.played.acquire(timeout=LONG_S)
    assert player.playing == "newer"
    assert len(player.plays) == 1
    voice.close()
    assert ends.counts == [1, 1]


def test_each_text_is_said_as_the_person_wants_it_to_whom_it_is_said() -> None:
    prompts, player, ends = FakePrompts(), FakePlayer(), Ends()
    voice = AnnouncedVoice(made(prompts, player), lambda text: None)
    assert isinstance(voice, Suits)
    for person, text in (("", "one"), ("p2", "two"), ("p3", "three")):
        suit(voice, person)
        voice.say(text, "en", ends.new())
        assert player.played.acquire(timeout=LONG_S)
    voice.close()
    assert prompts.persons == ["", "p2", "p3"]
    suit(SilentVoice("no speaker"), "p2")


def test_hush_while_rendering_keeps_the_text_from_sounding() -> None:
    prompts, player, ends = FakePrompts(), FakePlayer(), Ends()
    voice = made(prompts, player)
    prompts.gate.clear()
    voice.say("Rinse", "en", ends.new())
    assert prompts.started.acquire(timeout=LONG_S)
    voice.hush()
    prompts.gate.set()
    assert ends.came.acquire(timeout=LONG_S)
    voice.close()
    assert (player.plays, ends.counts) == ([], [1])


def test_what_is_wanted_now_goes_before_what_is_prepared() -> None:
    prompts, player = FakePrompts(), FakePlayer()
    voice = made(prompts, player)
    prompts.gate.clear()
    voice.prepare(["first ahead", "second ahead", "first ahead"], "en")
    assert prompts.started.acquire(timeout=LONG_S)
    voice.say("now", "en", lambda: None)
    prompts.gate.set()
    for _ in range(2):
        assert prompts.started.acquire(timeout=LONG_S)
    voice.close()
    assert prompts.asked[:3] == ["first ahead", "now", "second ahead"]
    assert prompts.asked.count("first ahead") == 1


def test_a_text_that_cannot_be_said_ends_with_a_notice_that_the_next_one_clears() -> None:
    player, ends = FakePlayer(), Ends()
    voice = made(FakePrompts(), player)
    voice.say("unspeakable", "en", ends.new())
    assert ends.came.acquire(timeout=LONG_S)
    assert voice.notice == "it is unspeakable"
    voice.say("Rinse", "en", ends.new())
    assert player.played.acquire(timeout=LONG_S)
    player.plays[0]("")
    assert ends.came.acquire(timeout=LONG_S)
    assert voice.notice == ""
    voice.close()


def test_a_sound_that_breaks_ends_with_its_reason() -> None:
    player, ends = FakePlayer(), Ends()
    voice = made(FakePrompts(), player)
    voice.say("Rinse", "en", ends.new())
    assert player.played.acquire(timeout=LONG_S)
    player.plays[0]("the sound device failed")
    assert ends.came.acquire(timeout=LONG_S)
    assert voice.notice == "the sound device failed"
    voice.close()


def test_a_player_that_refuses_ends_the_text() -> None:
    player, ends = FakePlayer(), Ends()
    player.gone = True
    voice = made(FakePrompts(), player)
    voice.say("Rinse", "en", ends.new())
    assert ends.came.acquire(timeout=LONG_S)
    assert voice.notice == "it is gone"
    voice.close()


def test_a_loudspeaker_that_stops_taking_sound_ends_the_text_and_is_opened_again() -> None:
    dead, fresh, ends = FakePlayer(seconds=0.0), FakePlayer(), Ends()
    voice = KioskVoice(FakePrompts(), dead, reopen=lambda: fresh, overdue_s=0.0)
    voice.say("one", "en", ends.new())
    assert ends.came.acquire(timeout=LONG_S)
    assert voice.notice == "the loudspeaker stopped taking sound"
    voice.say("two", "en", ends.new())
    assert fresh.played.acquire(timeout=LONG_S)
    fresh.plays[0]("")
    assert ends.came.acquire(timeout=LONG_S)
    assert (voice.notice, ends.counts) == ("", [1, 1])
    voice.close()
    assert fresh.closed == 1


def test_a_loudspeaker_that_stays_lost_is_tried_again_at_every_text() -> None:
    tries: list[str] = []

    def reopen() -> Player:
        tries.append("again")
        raise NoSpeaker("no sound device")

    ends = Ends()
    voice = KioskVoice(FakePrompts(), FakePlayer(0.0), reopen=reopen, overdue_s=0.0)
    for _ in range(3):
        voice.say("Rinse", "en", ends.new())
        assert ends.came.acquire(timeout=LONG_S)
    assert (voice.notice, len(tries)) == ("no sound device", 2)
    voice.close()


def test_a_fault_in_what_follows_a_text_does_not_end_the_voice(
    caplog: pytest.LogCaptureFixture,
) -> None:
    player, ends = FakePlayer(), Ends()
    voice = made(FakePrompts(), player)

    def broken() -> None:
        raise ValueError("the listener is broken")

    voice.say("one", "en", broken)
    voice.say("two", "en", ends.new())
    voice.hush()
    assert ends.came.acquire(timeout=LONG_S)
    voice.close()
    assert "the listener is broken" in caplog.text


def test_the_voice_may_be_closed_and_used_again_from_what_follows_a_text() -> None:
    voice, ends = made(FakePrompts(), FakePlayer()), Ends()
    after = ends.new()

    def on_end() -> None:
        voice.close()
        voice.say("late", "en", after)
        voice.prepare(["late"], "en")
        voice.hush()

    voice.say("Rinse", "en", on_end)
    voice.hush()
    assert ends.came.acquire(timeout=LONG_S)
    assert ends.counts == [1]


def test_a_silent_voice_ends_every_text_at_once_and_says_why() -> None:
    ends = Ends()
    voice: Voice = SilentVoice("no sound device")
    voice.say("Rinse", "en", ends.new())
    voice.prepare(["Rinse"], "en")
    voice.hush()
    voice.close()
    assert (ends.counts, voice.notice) == ([1], "no sound device")


def test_without_a_loudspeaker_the_voice_is_silent_and_says_why(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    def no_speaker() -> Player:
        raise NoSpeaker("no sound device")

    monkeypatch.setattr(voice_module, "open_player", no_speaker)
    voice = open_voice(tmp_path)
    assert isinstance(voice, SilentVoice)
    assert voice.notice == "no sound device"


def test_without_a_folder_for_prompts_the_voice_is_silent_and_the_device_given_back(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    player = FakePlayer()
    monkeypatch.setattr(voice_module, "open_player", lambda: player)
    (tmp_path / "file").write_text("in the way")
    voice = open_voice(tmp_path / "file" / "prompts")
    assert "make it writable" in voice.notice
    assert player.closed == 1


def test_a_wave_file_is_played_as_it_is_and_ends_once() -> None:
    prompts, player, ends = FakePrompts(), FakePlayer(), Ends()
    voice = made(prompts, player)
    voice.say("a prompt", "en", ends.new())
    assert player.played.acquire(timeout=LONG_S)
    voice.play(Path("remark.wav"), ends.new())
    assert player.played.acquire(timeout=LONG_S)
    assert player.playing == "remark.wav"
    assert ends.came.acquire(timeout=LONG_S)
    assert ends.counts == [1, 0]
    player.plays[-1]("")
    assert ends.came.acquire(timeout=LONG_S)
    assert prompts.asked == ["a prompt"]
    voice.close()
    assert ends.counts == [1, 1]
    voice.play(Path("remark.wav"), ends.new())
    assert ends.counts == [1, 1, 1]
