"""A turn is decoded in its first silence, and acts when that is safe."""

from __future__ import annotations

from collections.abc import Sequence
from concurrent.futures import Future

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.listening.ear import Heard, Utterance
from kiosk.listening.endpoint import FIRST_SILENCE_S, FRAME, FRAME_S, SILENCE_S, Gate
from kiosk.listening.turn import CERTAIN_S, Turn, certain

EARLY = round(FIRST_SILENCE_S / FRAME_S)
SURE = -int(-CERTAIN_S // FRAME_S)
WHOLE = round(SILENCE_S / FRAME_S)
SPEECH, SILENCE = [1.0], [0.0]


class Scene:
    """A turn whose detector answers from a list, and whose decoder hears what the test says."""

    def __init__(self, probabilities: Sequence[float], phrase: str | None, *allowed: str) -> None:
        answers = iter(probabilities)
        self.frames = len(probabilities)
        self.meanings: dict[str, object] = {one: one for one in allowed}
        self.phrase = phrase
        self.begun: list[tuple[Utterance, Future[Heard]]] = []
        self.slow = False
        gate = Gate(0.0, detector=lambda _frame: next(answers))
        self.turn = Turn(gate, self.begin, lambda: self.meanings)

    def begin(self, utterance: Utterance) -> Future[Heard]:
        begun: Future[Heard] = Future()
        self.begun.append((utterance, begun))
        if not self.slow:
            self.answer(begun)
        return begun

    def answer(self, begun: Future[Heard]) -> None:
        begun.set_result(Heard(self.phrase or "?", self.phrase, None, "fake", "", 0.0, 0.0))

    def run(self, frames: int | None = None) -> list[tuple[int, str | None]]:
        """Feed frames; return the number of each one with which something was heard, and what."""
        found = []
        for number in range(self.frames if frames is None else frames):
            heard = self.turn.feed(np.full(FRAME, number, dtype=np.float32))
            if heard is not None:
                found.append((number + 1, heard[1].phrase))
        return found


def test_a_certain_answer_acts_before_the_whole_silence():
    scene = Scene(SPEECH * 9 + SILENCE * WHOLE, "next", "next", "repeat")
    assert scene.run() == [(9 + SURE, "next")]
    assert 9 + SURE < 9 + WHOLE
    assert len(scene.begun) == 1


def test_decoding_begins_in_the_first_silence_with_all_that_was_said():
    scene = Scene(SPEECH * 9 + SILENCE * WHOLE, "next", "next")
    scene.run(9 + EARLY - 1)
    assert scene.begun == []
    scene.turn.feed(np.zeros(FRAME, dtype=np.float32))
    [(utterance, _)] = scene.begun
    assert utterance.ended_at == pytest.approx(9 * FRAME_S)
    assert utterance.ended_at - utterance.began_at == pytest.approx(9 * FRAME_S)
    assert len(utterance.samples) == (9 + EARLY) * FRAME


def test_an_answer_that_may_become_another_one_waits_for_the_whole_silence():
    scene = Scene(SPEECH * 9 + SILENCE * WHOLE, "no", "no", "no spare part")
    assert scene.run() == [(9 + WHOLE, "no")]
    assert len(scene.begun) == 1


def test_what_is_not_understood_is_told_after_the_whole_silence():
    assert Scene(SPEECH * 9 + SILENCE * WHOLE, None, "no").run() == [(9 + WHOLE, None)]


def test_speech_that_goes_on_drops_what_was_decoded_and_is_decoded_whole():
    pause = SILENCE * (WHOLE - 1)
    scene = Scene(SPEECH * 9 + pause + SPEECH * 9 + SILENCE * WHOLE, "no", "no", "no spare part")
    assert scene.run() == [(9 + len(pause) + 9 + WHOLE, "no")]
    first, last = (utterance for utterance, _ in scene.begun)
    assert len(last.samples) > len(first.samples)
    assert last.began_at == first.began_at


def test_a_decoding_that_has_not_begun_when_speech_goes_on_is_called_off():
    scene = Scene(SPEECH * 9 + SILENCE * EARLY + SPEECH, "next", "next")
    scene.slow = True
    assert scene.run() == []
    assert scene.begun[0][1].cancelled()


def test_a_slow_decoder_acts_as_soon_as_it_is_ready():
    scene = Scene(SPEECH * 9 + SILENCE * WHOLE, "next", "next")
    scene.slow = True
    assert scene.run(9 + SURE + 1) == []
    scene.answer(scene.begun[0][1])
    assert scene.run(1) == [(1, "next")]


def test_a_decoder_that_fails_ends_the_turn_and_says_so_once():
    scene = Scene(SPEECH * 9 + SILENCE * WHOLE, "next", "next")
    scene.slow = True
    scene.run(9 + EARLY)
    scene.begun[0][1].set_exception(RuntimeError("out of memory"))
    with pytest.raises(RuntimeError, match="out of memory"):
        scene.run(SURE)
    assert not scene.turn.gate.speaking


def test_words_of_one_meaning_do_not_wait_for_each_other():
    heard = Heard("yes", "yes", None, "fake", "", 0.0, 0.0)
    assert certain(heard, {"yes": "Yes", "yes it is": "Yes"})
    assert not certain(heard, {"yes": "Yes", "yes it is": "Something else"})


@given(st.lists(st.sampled_from([0.0, 1.0]), max_size=150))
def test_a_turn_tells_each_utterance_once_in_order(probabilities):
    scene = Scene(probabilities, "no", "no", "no spare part")
    found = scene.run()
    answers = iter(probabilities)
    gate = Gate(0.0, detector=lambda _frame: next(answers))
    cut = [gate.feed(np.zeros(FRAME, dtype=np.float32)) for _ in probabilities]
    assert len(found) == sum(one is not None for one in cut)
