"""The trial of a microphone at the end of the setup, on real sound and the real gate."""

from __future__ import annotations

import numpy as np
import pytest

from kiosk.languages.words import words
from kiosk.listening.ear import RATE, Heard
from kiosk.listening.models import Missing
from kiosk.listening.sources import Samples
from kiosk.setup.sound import QUIET_DBFS, YES_S, share, trial
from tests.speech.clips import ear_or_skip
from tests.speech.synth import speaker

ROOM_S = 2.2
SAID = words("en")


class Watching:
    """Remembers what it is told."""

    def __init__(self) -> None:
        self.told: list[str] = []
        self.levels: list[float] = []

    def stage(self, message: str, **args: str) -> None:
        self.told.append(SAID.say(message, **args))

    def level(self, dbfs: float) -> None:
        self.levels.append(dbfs)


class Hears:
    """An ear that makes one thing of whatever was said."""

    name, language = "test-ear", "en"

    def __init__(self, phrase: str | None) -> None:
        self._phrase = phrase

    def hear(self, utterance, allowed) -> Heard:
        assert {"yes", "no"} <= set(allowed)
        return Heard(self._phrase or "a guess", self._phrase, 0.9, self.name, "", 0.1, 0.0)


def room(seconds: float, loud: float = 0.001) -> np.ndarray:
    noise = np.random.default_rng(1).normal(0, loud, round(seconds * RATE))
    return noise.astype(np.float32)


def said(text: str, loud: float = 1.0) -> Samples:
    """A quiet room, a synthetic voice, and the room again."""
    voice = speaker().say(text, "en-us", 150) * loud
    whole = np.concatenate([room(ROOM_S), voice, room(1.5)])
    whole[round(ROOM_S * RATE) : round(ROOM_S * RATE) + len(voice)] += room(len(voice) / RATE)[
        : len(voice)
    ]
    return Samples(whole)


@pytest.mark.parametrize(
    ("hears", "told", "good"),
    [("yes", "setup-sound-understood", True), ("no", "setup-sound-not-heard", False),
     (None, "setup-sound-not-heard", False)],
)  # fmt: skip
def test_a_yes_is_told_from_anything_else(hears, told, good):
    watcher = Watching()
    found = trial(said("yes it is"), Hears(hears), SAID, watcher)
    assert (found.told, found.good) == (told, good)
    assert found.text == (hears or "a guess")
    assert watcher.told == ["Be silent for a moment.", "Now say: yes"]


def test_the_level_rises_with_the_voice_and_rests_at_the_floor_in_silence():
    watcher = Watching()
    trial(said("yes it is"), Hears("yes"), SAID, watcher)
    before = watcher.levels[:8]
    assert max(before) < QUIET_DBFS + 3
    assert max(watcher.levels) > -30
    assert share(max(before)) < 0.1 < share(max(watcher.levels)) <= 1.0
    assert share(-120) == 0.0
    assert share(0) == 1.0


def test_a_faint_voice_is_heard_and_the_advice_is_to_come_nearer():
    found = trial(said("yes it is", 0.02), Hears("yes"), SAID, Watching())
    assert "spot-too-faint" in found.advice


def test_silence_is_told_with_what_to_look_at():
    found = trial(Samples(room(ROOM_S + YES_S + 2)), Hears("yes"), SAID, Watching())
    assert (found.told, found.good) == ("setup-sound-nothing", False)
    assert found.advice == ("spot-nothing-heard",)


def test_a_microphone_that_ends_is_told():
    found = trial(Samples(room(1.0)), Hears("yes"), SAID, Watching())
    assert (found.told, found.good) == ("setup-sound-ended", False)


def test_without_an_ear_it_is_said_what_to_install():
    found = trial(said("yes it is"), Missing("es", "add a model"), SAID, Watching())
    assert (found.told, found.text, found.good) == ("setup-sound-no-ear", "add a model", False)
    assert "spot-no-ear" in found.advice


def test_the_english_ear_understands_a_synthetic_yes():
    found = trial(said("yes it is"), ear_or_skip("en"), SAID, Watching())
    assert (found.told, found.good) == ("setup-sound-understood", True)
