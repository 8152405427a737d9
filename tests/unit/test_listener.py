"""The listener hears what it may, when it may, and tells of every trouble."""

from __future__ import annotations

import queue
import threading
from collections.abc import Iterator, Sequence
from importlib import util

import numpy as np
import pytest
from numpy.typing import NDArray

from kiosk.listening.ear import NOT_ALLOWED, RATE, Heard, Utterance
from kiosk.listening.endpoint import FIRST_SILENCE_S, FRAME, FRAME_S, SILENCE_S
from kiosk.listening.hearing import MicrophoneHearing
from kiosk.listening.in_use import Records
from kiosk.listening.listener import FIRST_MOMENT_S, Listener, hear_frames
from kiosk.listening.sources import Samples
from kiosk.listening.turn import CERTAIN_S

pytestmark = pytest.mark.skipif(
    util.find_spec("espeakng_loader") is None, reason="espeakng-loader, which speaks, is missing"
)

LIMIT_S = 20.0
"""Only a broken listener takes so long."""
LEAD_IN, TAIL = 4_800, 12_800
"""Samples of silence that the synthetic speaker puts around what it says."""


class Line:
    """A live source that gives what is put on it. Its frames are the clock."""

    live = True

    def __init__(self) -> None:
        self.queue: queue.Queue[NDArray[np.float32] | None] = queue.Queue()
        self.time = 100.0

    def clock(self) -> float:
        return self.time

    def frames(self) -> Iterator[NDArray[np.float32]]:
        while (frame := self.queue.get()) is not None:
            self.time += FRAME_S
            yield frame
            self.queue.task_done()

    def waiting(self) -> int:
        return 0

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
            self.line,
            self.ear,
            lambda heard: self.heard.append(heard.phrase),
            self._trouble,
            self.line.clock,
        )

    def ask(self, *phrases: str) -> None:
        """Ask a question, and let the moment pass in which nobody can have answered it."""
        self.listener.allow(phrases)
        self.still(FIRST_MOMENT_S)

    def still(self, seconds: float) -> None:
        self.line.say(np.zeros(round(seconds / FRAME_S) * FRAME, dtype=np.float32))

    def _trouble(self, reason: str) -> None:
        self.troubles.append(reason)
        self.told.set()


@pytest.fixture(scope="module")
def word() -> NDArray[np.float32]:
    from tests.speech.synth import speaker

    return speaker().say("yellow")


@pytest.fixture
def bench() -> Iterator[Bench]:
    made = Bench()
    yield made
    made.listener.stop()


def test_what_is_said_is_heard_with_the_phrases_of_the_moment(bench, word):
    bench.ask("next", "repeat")
    bench.line.say(word)
    assert bench.heard == ["next"]
    bench.ask("yes")
    bench.line.say(word)
    assert bench.heard == ["next", "yes"]
    assert bench.ear.asked == [("next", "repeat"), ("yes",)]


def test_with_nothing_allowed_nothing_is_decoded(bench, word):
    bench.line.say(word)
    assert bench.ear.asked == []


def test_silence_is_not_heard(bench):
    bench.ask("next")
    bench.line.say(np.zeros(FRAME * 60, dtype=np.float32))
    assert bench.ear.asked == []


def test_what_is_said_while_the_kiosk_speaks_is_not_heard(bench, word):
    bench.ask("next")
    bench.listener.deafen()
    bench.line.say(word)
    assert bench.ear.asked == []
    bench.listener.undeafen(tail_s=0.0)
    bench.line.say(word)
    assert bench.heard == ["next"]


def test_deafness_in_the_middle_of_a_word_drops_the_word(bench, word):
    bench.ask("next")
    bench.line.say(word[: len(word) // 2])
    bench.listener.deafen()
    bench.line.say(np.zeros(FRAME * 2, dtype=np.float32))
    bench.listener.undeafen(tail_s=0.0)
    bench.line.say(np.zeros(FRAME * 40, dtype=np.float32))
    assert bench.ear.asked == []


def test_the_tail_of_the_kiosks_own_voice_is_not_heard(bench, word):
    bench.ask("next")
    bench.still(1.0)
    bench.listener.deafen()
    bench.listener.undeafen(tail_s=3600.0)
    bench.line.say(word)
    assert bench.ear.asked == []


def test_nobody_answers_a_question_in_its_first_moment(bench, word):
    bench.listener.allow(["next"])
    bench.line.say(word[:LEAD_IN])
    bench.line.say(word[LEAD_IN:])
    assert bench.heard == []
    bench.line.say(word)
    assert bench.heard == ["next"]


def test_the_same_words_of_a_new_question_are_another_question(bench, word):
    bench.ask("next")
    bench.ear.meanwhile = lambda: bench.listener.allow(["next"])
    bench.line.say(word)
    assert bench.heard == []


def test_somebody_who_is_speaking_when_the_ear_opens_is_not_heard_in_part(bench, word):
    bench.ask("next")
    bench.listener.deafen()
    bench.still(1.0)
    bench.listener.undeafen(tail_s=LEAD_IN / RATE + 0.15)
    bench.line.say(word)
    assert bench.ear.asked == []
    bench.line.say(word)
    assert bench.heard == ["next"]


def test_a_voice_that_dies_away_in_the_tail_does_not_swallow_the_answer(bench, word):
    bench.ask("next")
    bench.listener.deafen()
    spoken = word[LEAD_IN : len(word) - TAIL]
    bench.line.say(spoken[: len(spoken) // 2])
    bench.listener.undeafen(tail_s=len(spoken) / 2 / RATE + FIRST_SILENCE_S + 0.15)
    bench.line.say(spoken[len(spoken) // 2 :])
    bench.still(FIRST_SILENCE_S + 0.2)
    bench.line.say(spoken)
    bench.still(1.0)
    assert bench.heard == ["next"]


def test_a_certain_answer_is_told_before_the_whole_silence(bench, word):
    bench.ask("next")
    bench.line.say(word[: len(word) - TAIL])
    assert bench.heard == []
    bench.still((CERTAIN_S + SILENCE_S) / 2)
    assert bench.heard == ["next"]


def test_an_answer_that_may_go_on_is_told_after_the_whole_silence(bench, word):
    bench.ask("no", "no spare part")
    bench.line.say(word[: len(word) - TAIL])
    bench.still((CERTAIN_S + SILENCE_S) / 2)
    assert bench.heard == []
    bench.still(SILENCE_S)
    assert bench.heard == ["no"]


def test_an_answer_to_a_question_that_has_changed_is_dropped(bench, word):
    bench.ask("next")
    bench.ear.meanwhile = lambda: bench.listener.allow(["power is off"])
    bench.line.say(word)
    assert bench.ear.asked == [("next",)]
    assert bench.heard == []


def test_an_answer_decoded_while_the_kiosk_begins_to_speak_is_dropped(bench, word):
    bench.ask("next")
    bench.ear.meanwhile = bench.listener.deafen
    bench.line.say(word)
    assert bench.heard == []


def test_an_ear_that_fails_is_reported_and_listening_goes_on(bench, word):
    bench.ask("next")
    bench.ear.failure = RuntimeError("out of memory")
    bench.line.say(word)
    assert bench.troubles == ["the ear parrot failed on an utterance: out of memory"]
    bench.ear.failure = None
    bench.line.say(word)
    assert bench.heard == ["next"]


def test_another_ear_takes_over_for_another_language(bench, word):
    other = Parrot()
    bench.ask("siguiente")
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


def test_nothing_is_heard_in_what_is_recorded(bench, word):
    taken: list[NDArray[np.float32]] = []
    bench.ask("next")
    bench.listener.record(taken.append)
    bench.line.say(word)
    bench.still(1.0)
    assert bench.ear.asked == []
    assert bench.heard == []
    recorded = np.concatenate(taken)
    assert np.array_equal(recorded[: len(word)], word)
    bench.listener.record(None)
    bench.line.say(word)
    assert bench.heard == ["next"]
    assert len(np.concatenate(taken)) == len(recorded)


def test_a_word_that_was_begun_before_a_recording_is_not_heard(bench, word):
    bench.ask("next")
    bench.line.say(word[: len(word) // 2])
    bench.listener.record(lambda _: None)
    bench.line.say(word[len(word) // 2 :])
    bench.listener.record(None)
    bench.still(1.0)
    assert bench.heard == []


def test_what_is_recorded_is_recorded_while_the_ear_is_deaf_or_has_no_language(bench, word):
    taken: list[NDArray[np.float32]] = []
    bench.listener.deafen()
    bench.listener.swap_ear(None)
    bench.listener.record(taken.append)
    bench.line.say(word)
    assert len(np.concatenate(taken)) >= len(word)


def test_a_source_that_has_ended_is_known(bench):
    assert not bench.listener.ended
    bench.line.close()
    assert bench.told.wait(LIMIT_S)
    assert bench.listener.ended


def test_the_ear_in_use_records_from_its_microphone_until_that_is_gone(word):
    line, gone, taken = Line(), threading.Event(), list[NDArray[np.float32]]()
    hearing = MicrophoneHearing(line, lambda _: None, gone.set)
    assert isinstance(hearing, Records)
    assert hearing.microphone
    hearing.record(taken.append)
    line.say(word)
    assert np.array_equal(np.concatenate(taken)[: len(word)], word)
    line.close()
    assert gone.wait(LIMIT_S)
    assert not hearing.microphone
    hearing.stop()
