"""The listener hears what it may, when it may, and tells of every trouble."""

from __future__ import annotations

import queue
import threading
from collections.abc import Iterator, Sequence
from importlib import util

import numpy as np
import pytest
from numpy.typing import NDArray

from kiosk.listening.ear import NOT_ALLOWED, Heard, Utterance
from kiosk.listening.endpoint import FRAME
from kiosk.listening.listener import Listener, hear_frames
from kiosk.listening.sources import Samples

pytestmark = pytest.mark.skipif(
    util.find_spec("espeakng_loader") is None, reason="espeakng-loader, which speaks, is missing"
)

LIMIT_S = 20.0
"""Only a broken listener takes so long."""


class Line:
    """A live source that gives what is put on it."""

    live = True

    def __init__(self) -> None:
        self.queue: queue.Queue[NDArray[np.float32] | None] = queue.Queue()

    def frames(self) -> Iterator[NDArray[np.float32]]:
        while (frame := self.queue.get()) is not None:
            yield frame
            self.queue.task_done()

    def waiting(self) -> int:
        return self.queue.qsize()

    def close(self) -> None:
        self.queue.put(None)

    def say(self, sound: NDArray[np.float32]) -> None:
        """Put sound on the line and wait until the listener has dealt with all of it."""
        for frame in Samples(sound).frames():
            self.queue.put(frame)
        self.queue.join()


class Parrot:
    """An ear that hears its first allowed phrase in everything."""

    name, language = "parrot", "en"

    def __init__(self) -> None:
        self.asked: list[tuple[str, ...]] = []
        self.failure: Exception | None = None
        self.meanwhile = lambda: None

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        self.asked.append(tuple(allowed))
        self.meanwhile()
        if self.failure is not None:
            raise self.failure
        phrase = allowed[0] if allowed else None
        why = "" if allowed else NOT_ALLOWED
        return Heard("", phrase, None, self.name, why, 0.0, utterance.ended_at)


class Bench:
    """A listener with everything around it."""

    def __init__(self) -> None:
        self.line, self.ear = Line(), Parrot()
        self.heard: list[str | None] = []
        self.troubles: list[str] = []
        self.told = threading.Event()
        self.listener = Listener(
            self.line, self.ear, lambda heard: self.heard.append(heard.phrase), self._trouble
        )

    def _trouble(self, reason: str) -> None:
        self.troubles.append(reason)
        self.told.set()


@pytest.fixture(scope="module")
def word() -> NDArray[np.float32]:
    from tests.speech.synth import speaker

    return speaker().say("next step please")


@pytest.fixture
def bench() -> Iterator[Bench]:
    made = Bench()
    yield made
    made.listener.stop()


def test_what_is_said_is_heard_with_the_phrases_of_the_moment(bench, word):
    bench.listener.allow(["next", "repeat"])
    bench.line.say(word)
    assert bench.heard == ["next"]
    bench.listener.allow(["yes"])
    bench.line.say(word)
    assert bench.heard == ["next", "yes"]
    assert bench.ear.asked == [("next", "repeat"), ("yes",)]


def test_with_nothing_allowed_nothing_is_decoded(bench, word):
    bench.line.say(word)
    assert bench.ear.asked == []


def test_silence_is_not_heard(bench):
    bench.listener.allow(["next"])
    bench.line.say(np.zeros(FRAME * 60, dtype=np.float32))
    assert bench.ear.asked == []


def test_what_is_said_while_the_kiosk_speaks_is_not_heard(bench, word):
    bench.listener.allow(["next"])
    bench.listener.deafen()
    bench.line.say(word)
    assert bench.ear.asked == []
    bench.listener.undeafen(tail_s=0.0)
    bench.line.say(word)
    assert bench.heard == ["next"]


def test_deafness_in_the_middle_of_a_word_drops_the_word(bench, word):
    bench.listener.allow(["next"])
    bench.line.say(word[: len(word) // 2])
    bench.listener.deafen()
    bench.line.say(np.zeros(FRAME * 2, dtype=np.float32))
    bench.listener.undeafen(tail_s=0.0)
    bench.line.say(np.zeros(FRAME * 40, dtype=np.float32))
    assert bench.ear.asked == []


def test_the_tail_of_the_kiosks_own_voice_is_not_heard(bench, word):
    bench.listener.allow(["next"])
    bench.listener.undeafen(tail_s=3600.0)
    bench.line.say(word)
    assert bench.ear.asked == []


def test_an_answer_to_a_question_that_has_changed_is_dropped(bench, word):
    bench.listener.allow(["next"])
    bench.ear.meanwhile = lambda: bench.listener.allow(["power is off"])
    bench.line.say(word)
    assert bench.ear.asked == [("next",)]
    assert bench.heard == []


def test_an_answer_decoded_while_the_kiosk_begins_to_speak_is_dropped(bench, word):
    bench.listener.allow(["next"])
    bench.ear.meanwhile = bench.listener.deafen
    bench.line.say(word)
    assert bench.heard == []


def test_an_ear_that_fails_is_reported_and_listening_goes_on(bench, word):
    bench.listener.allow(["next"])
    bench.ear.failure = RuntimeError("out of memory")
    bench.line.say(word)
    assert bench.troubles == ["the ear parrot failed on an utterance: out of memory"]
    bench.ear.failure = None
    bench.line.say(word)
    assert bench.heard == ["next"]


def test_another_ear_takes_over_for_another_language(bench, word):
    other = Parrot()
    bench.listener.allow(["siguiente"])
    bench.listener.swap_ear(None)
    bench.line.say(word)
    bench.listener.swap_ear(other)
    bench.line.say(word)
    assert bench.ear.asked == []
    assert other.asked == [("siguiente",)]


def test_a_microphone_that_falls_silent_for_good_is_a_trouble(bench):
    bench.line.close()
    assert bench.told.wait(LIMIT_S)
    assert "microphone" in bench.troubles[0]


def test_stopping_is_no_trouble(bench):
    bench.listener.stop()
    assert bench.troubles == []


def test_a_source_that_breaks_is_a_trouble_with_its_reason():
    class Broken(Line):
        def frames(self) -> Iterator[NDArray[np.float32]]:
            raise OSError("the cable was pulled")

    told: queue.Queue[str] = queue.Queue()
    listener = Listener(Broken(), Parrot(), lambda _heard: None, told.put)
    assert told.get(timeout=LIMIT_S) == "the ear stopped: the cable was pulled"
    listener.stop()


def test_a_wave_is_heard_to_its_very_end(word):
    ear = Parrot()
    cut = word[: len(word) - 12_000]
    found = hear_frames(Samples(np.concatenate([word, cut])).frames(), ear, ["next"])
    assert [heard.phrase for heard in found] == ["next", "next"]
