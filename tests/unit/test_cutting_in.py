"""A worker speaks into a prompt, and the listener takes what may cut it short, and nothing else."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from dataclasses import replace
from importlib import util
from pathlib import Path

import numpy as np
import pytest

from kiosk.engine import commands as c
from kiosk.listening.ear import NOT_ALLOWED, Heard, Utterance
from kiosk.listening.endpoint import FRAME, FRAME_S
from kiosk.listening.listener import FIRST_MOMENT_S, Listener
from kiosk.speaking.player import wave_seconds
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.speech import Speech
from tests.speech.echoes import BEFORE_S, Kiosk, Room
from tests.unit.test_listener import Line, Parrot

pytestmark = [
    pytest.mark.skipif(util.find_spec("espeakng_loader") is None, reason="espeak-ng is missing"),
    pytest.mark.skipif(util.find_spec("pywebrtc_audio") is None, reason="no pywebrtc-audio"),
]
SAID = "Warning. If the power is on after all, the open drives turn. Keep hands and sleeves away."


@pytest.fixture(scope="module")
def prompt(tmp_path_factory: pytest.TempPathFactory) -> Iterator[Path]:
    renderer = Renderer()
    yield PromptCache(tmp_path_factory.mktemp("prompts"), renderer).wave(Speech(SAID, "en"))
    renderer.close()


class Ear(Parrot):
    """A parrot that may fail to understand."""

    understands = True

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        heard = super().hear(utterance, allowed)
        return heard if self.understands else replace(heard, phrase=None, why=NOT_ALLOWED)


class Place:
    """A kiosk that speaks and listens in a room; its frames are the clock."""

    def __init__(self, prompt: Path, *, filtered: bool = True) -> None:
        self.kiosk, self.line, self.ear = Kiosk(Room()), Line(), Ear()
        self.heard: list[str | None] = []
        self._prompt = prompt
        self.listener = Listener(
            self.line,
            self.ear,
            lambda heard: self.heard.append(heard.phrase),
            self.heard.append,
            self.line.clock,
            self.kiosk.filter if filtered else None,
        )

    def speak(self, *, worker_at: float | None = None, text: str = SAID) -> None:
        """Say the prompt; `worker_at` seconds into it somebody speaks."""
        from tests.speech.synth import speaker

        word = speaker().say("something is wrong", "en-us+f3")[4_800:-12_800]

        def beside(count: int) -> np.ndarray:
            start = round((BEFORE_S + (worker_at or 0.0)) * 16_000)
            sound = np.zeros(count, dtype=np.float32)
            if worker_at is not None:
                sound[start : start + len(word)] = word
            return sound

        self.listener.deafen()
        self.listener.saying(text)
        length_s = wave_seconds(self._prompt)
        begun, ended = self.line.time, False
        for frame in self.kiosk.frames(self._prompt, beside):
            self.line.queue.put(frame)
            self.line.queue.join()
            if not ended and self.line.time - begun > BEFORE_S + length_s + 0.1:
                ended = True
                self.listener.saying("")
                self.listener.undeafen()

    def ask(self, meanings: Mapping[str, object]) -> None:
        """Ask a question, and let a moment pass."""
        self.listener.allow(meanings)
        self.line.say(np.zeros(round(FIRST_MOMENT_S / FRAME_S) * FRAME, dtype=np.float32))


@pytest.fixture
def place(prompt: Path) -> Iterator[Place]:
    made = Place(prompt)
    yield made
    made.listener.stop()


PROBLEM = {"something is wrong": c.CallProblem(), "next": c.Confirm()}
CONFIRMS = {"next": c.Confirm(), "something is wrong": c.CallProblem()}


def test_what_may_cut_a_prompt_short_is_told_while_it_is_said(place: Place):
    place.ask(PROBLEM)
    place.speak()
    assert place.heard == [], "nobody spoke but the kiosk"
    place.speak(worker_at=1.0)
    assert place.heard == ["something is wrong"]


def test_an_answer_that_confirms_is_not_taken_into_a_prompt(place: Place):
    place.ask(CONFIRMS)
    place.speak()
    place.speak(worker_at=1.0)
    assert set(place.ear.asked) == {tuple(CONFIRMS)}, "it was heard"
    assert place.heard == [], "and not taken"


def test_what_is_not_understood_beside_a_prompt_is_no_misunderstanding(place: Place):
    place.ask(PROBLEM)
    place.ear.understands = False
    place.speak()
    place.speak(worker_at=1.0)
    assert place.ear.asked
    assert place.heard == []


def test_a_phrase_that_the_prompt_holds_is_not_taken(place: Place):
    place.ask(PROBLEM)
    place.speak()
    place.speak(worker_at=1.0, text="If something is wrong, say so.")
    assert place.heard == []


def test_the_first_prompt_is_not_listened_through(place: Place):
    """The room is not known yet."""
    place.ask(PROBLEM)
    place.speak(worker_at=1.0)
    assert place.ear.asked == []


def test_nobody_cuts_in_in_the_first_moment_of_a_prompt(place: Place):
    place.ask(PROBLEM)
    place.speak()
    place.speak(worker_at=-0.2)
    assert place.heard == []


def test_after_a_prompt_any_answer_is_taken(place: Place):
    place.ask(CONFIRMS)
    place.speak()
    from tests.speech.synth import speaker

    place.line.say(speaker().say("yellow"))
    assert place.heard == ["next"]


def test_without_a_filter_the_kiosk_is_deaf_while_it_speaks(prompt: Path):
    place = Place(prompt, filtered=False)
    place.ask(PROBLEM)
    place.speak()
    place.speak(worker_at=1.0)
    assert place.ear.asked == []
    place.listener.stop()
