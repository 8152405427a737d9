"""The gate opens for speech, keeps what came just before it, and lets go when it is over."""

from __future__ import annotations

from collections.abc import Iterable, Sequence

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st
from numpy.typing import NDArray

from kiosk.listening.ear import Utterance
from kiosk.listening.endpoint import (
    FIRST_SILENCE_S,
    FRAME,
    FRAME_S,
    LONGEST_S,
    OPENS_AT,
    POST_ROLL_S,
    PRE_ROLL_S,
    SILENCE_S,
    STAYS_AT,
    Gate,
)

SPEECH, MURMUR, SILENCE = OPENS_AT, STAYS_AT, 0.0
PRE = round(PRE_ROLL_S / FRAME_S)
POST = round(POST_ROLL_S / FRAME_S)
WAIT = round(SILENCE_S / FRAME_S)
MOST = round(LONGEST_S / FRAME_S)


def gate(probabilities: Sequence[float], started_at: float = 0.0) -> Gate:
    """Return a gate whose detector answers these probabilities in turn."""
    answers = iter(probabilities)
    return Gate(started_at, detector=lambda _frame: next(answers))


def numbered(count: int) -> Iterable[NDArray[np.float32]]:
    """Yield frames that hold their own number."""
    return (np.full(FRAME, number, dtype=np.float32) for number in range(count))


def run(probabilities: Sequence[float], started_at: float = 0.0) -> list[Utterance]:
    one = gate(probabilities, started_at)
    found = [one.feed(frame) for frame in numbered(len(probabilities))]
    return [utterance for utterance in found if utterance is not None]


def frames_in(utterance: Utterance) -> list[int]:
    return [int(number) for number in utterance.samples[::FRAME]]


def test_speech_between_silences_is_one_utterance_with_its_margins():
    before, spoken = 30, 12
    utterance, *others = run([SILENCE] * before + [SPEECH] * spoken + [SILENCE] * WAIT)
    assert not others
    first, last = before + 1 - PRE, before + spoken - 1 + POST
    assert frames_in(utterance) == list(range(first, last + 1))


def test_the_end_is_that_of_the_last_speech_frame_and_the_decision_comes_after_the_wait():
    utterance = run([SILENCE] * 3 + [SPEECH] * 5 + [SILENCE] * WAIT, started_at=100.0)[0]
    assert utterance.ended_at == pytest.approx(100.0 + 8 * FRAME_S)
    assert utterance.decided_at == pytest.approx(100.0 + (8 + WAIT) * FRAME_S)


def test_a_short_pause_does_not_end_an_utterance():
    assert len(run([SPEECH] * 5 + [SILENCE] * (WAIT - 1) + [SPEECH] * 5 + [SILENCE] * WAIT)) == 1


def test_a_long_pause_parts_two_utterances():
    assert len(run(([SPEECH] * 5 + [SILENCE] * WAIT) * 2)) == 2


def test_what_would_keep_the_gate_open_does_not_open_it():
    assert run([MURMUR] * 100) == []
    kept = run([SPEECH] + [MURMUR] * 20 + [SILENCE] * WAIT)[0]
    assert frames_in(kept)[: 1 + 20] == list(range(21))


def test_long_talk_is_let_go_once_and_its_rest_is_not_an_answer():
    talk = [SPEECH] * (MOST + 50) + [SILENCE] * WAIT
    utterances = run(talk + [SPEECH] * 4 + [SILENCE] * WAIT)
    assert len(utterances) == 2
    assert len(frames_in(utterances[0])) == MOST
    assert frames_in(utterances[1])[-1] >= len(talk)


def test_the_end_of_a_stream_lets_go_what_is_open():
    one = gate([SPEECH] * 5)
    assert [one.feed(frame) for frame in numbered(5)] == [None] * 5
    utterance = one.flush()
    assert utterance is not None
    assert frames_in(utterance) == [0, 1, 2, 3, 4]
    assert one.flush() is None


def test_a_reset_forgets_the_speech_and_what_came_before_it_but_not_the_time():
    one = gate([SPEECH] * 5 + [SPEECH] + [SILENCE] * WAIT)
    frames = list(numbered(6 + WAIT))
    for frame in frames[:5]:
        one.feed(frame)
    one.reset()
    assert not one.speaking
    assert one.now == pytest.approx(5 * FRAME_S)
    found = [one.feed(frame) for frame in frames[5:]]
    assert found[-1] is not None
    assert frames_in(found[-1])[0] == 5


def test_frames_that_were_skipped_count_in_the_time():
    one = gate([SPEECH] + [SILENCE] * WAIT, started_at=10.0)
    one.skip(10)
    found = [one.feed(frame) for frame in numbered(1 + WAIT)][-1]
    assert found is not None
    assert found.ended_at == pytest.approx(10.0 + 11 * FRAME_S)


def test_an_anchor_sets_the_time_in_silence_only():
    one = gate([SILENCE, SPEECH, SPEECH])
    frames = list(numbered(3))
    one.feed(frames[0])
    one.anchor(50.0)
    assert one.now == pytest.approx(50.0)
    one.feed(frames[1])
    one.anchor(99.0)
    assert one.now == pytest.approx(50.0 + FRAME_S)


def test_what_was_said_so_far_is_given_out_at_the_first_short_silence_and_once():
    first = round(FIRST_SILENCE_S / FRAME_S)
    one = gate([SPEECH] * 5 + [SILENCE] * (WAIT - 1))
    pausing = []
    for number, frame in enumerate(numbered(5 + WAIT - 1)):
        one.feed(frame)
        if one.pausing:
            pausing.append(number)
            early = one.so_far()
    assert pausing == [5 + first - 1]
    assert frames_in(early) == list(range(5 + first))
    assert early.ended_at - early.began_at == pytest.approx(5 * FRAME_S)
    assert one.silent_s == pytest.approx((WAIT - 1) * FRAME_S)


def test_talk_that_is_too_long_is_never_given_out_early():
    one = gate([SPEECH] * MOST + [SILENCE] * (WAIT - 1))
    for frame in numbered(MOST + WAIT - 1):
        one.feed(frame)
        assert not one.pausing


def test_an_utterance_knows_how_loud_it_is_over_the_room_before_it():
    probabilities = [SILENCE] * 60 + [SPEECH] * 10 + [SILENCE] * WAIT
    one = gate(probabilities)
    loud = {SPEECH: 0.5, SILENCE: 0.05}
    found = [one.feed(np.full(FRAME, loud[p], dtype=np.float32)) for p in probabilities][-1]
    assert found is not None
    assert found.speech_rms == pytest.approx(0.5)
    assert found.noise_rms == pytest.approx(0.05)


def test_a_frame_of_the_wrong_size_is_refused():
    with pytest.raises(ValueError, match="512"):
        gate([]).feed(np.zeros(FRAME - 1, dtype=np.float32))


@given(st.lists(st.floats(0, 1), max_size=400))
def test_every_utterance_holds_speech_in_order_and_none_overlaps(probabilities):
    last = -1
    for utterance in run(probabilities):
        frames = frames_in(utterance)
        assert frames == list(range(frames[0], frames[-1] + 1))
        assert any(probabilities[number] >= OPENS_AT for number in frames)
        assert len(frames) <= MOST
        assert frames[0] > last
        assert utterance.ended_at <= utterance.decided_at
        last = frames[-1]


@given(st.lists(st.floats(0, 1, exclude_max=True).map(lambda part: part * OPENS_AT), max_size=300))
def test_there_is_no_utterance_without_speech(probabilities):
    one = gate(probabilities)
    assert all(one.feed(frame) is None for frame in numbered(len(probabilities)))
    assert one.flush() is None
