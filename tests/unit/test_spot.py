"""The verdict on a place, limit by limit."""

from __future__ import annotations

from dataclasses import replace

import numpy as np
import pytest

from kiosk.listening import spot
from kiosk.listening.spot import Commands, Level, Room, clipped_share, dbfs, level_of, verdict

LEVEL = Level(peak=0.5, speech_rms=0.05, clipped=0.0)
ROOM = Room(rms=0.001, openings=0)
HEARD = Commands(right=10, wrong=0, rejected=0, silent=0, above_noise_db=30.0)


def rms(decibels: float) -> float:
    return 10 ** (decibels / 20)


def test_a_quiet_place_with_every_command_understood_is_good():
    assert verdict(LEVEL, ROOM, HEARD) == spot.Verdict(True, ())


def test_no_speech_is_the_first_thing_to_mend():
    judged = verdict(replace(LEVEL, speech_rms=0.0), ROOM, HEARD)
    assert judged == spot.Verdict(False, ("spot-nothing-heard",))


def test_a_language_without_an_ear_is_for_touch():
    assert verdict(LEVEL, ROOM, None) == spot.Verdict(False, ("spot-no-ear",))


@pytest.mark.parametrize(("right", "good"), [(8, True), (7, False)])
def test_eight_of_ten_are_enough(right: int, good: bool):
    judged = verdict(LEVEL, ROOM, replace(HEARD, right=right, rejected=10 - right))
    assert judged.good is good
    assert ("spot-own-words" in judged.advice) is not good
    assert ("spot-touch" in judged.advice) is not good


def test_one_command_taken_for_another_is_not_good():
    judged = verdict(LEVEL, ROOM, replace(HEARD, right=9, wrong=1))
    assert not judged.good
    assert "spot-wrong-heard" in judged.advice


@pytest.mark.parametrize(("decibels", "good"), [(10.0, True), (9.9, False)])
def test_speech_must_be_ten_decibels_over_the_noise(decibels: float, good: bool):
    judged = verdict(LEVEL, ROOM, replace(HEARD, above_noise_db=decibels))
    assert judged.good is good
    assert "spot-nearer" in judged.advice
    assert ("spot-push-to-talk" in judged.advice) is not good


def test_a_noise_that_opens_the_gate_asks_for_another_place_or_the_key():
    judged = verdict(LEVEL, replace(ROOM, openings=1), HEARD)
    assert not judged.good
    assert {"spot-other-place", "spot-push-to-talk", "spot-touch"} <= set(judged.advice)


def test_a_loud_room_is_told_of_even_where_everything_was_understood():
    judged = verdict(LEVEL, Room(rms(spot.LOUD_ROOM_DBFS + 1), 0), HEARD)
    assert judged == spot.Verdict(True, ("spot-other-place",))


@pytest.mark.parametrize(("off", "good"), [(0.1, True), (-0.1, False)])
def test_a_faint_voice_is_not_good(off: float, good: bool):
    judged = verdict(replace(LEVEL, speech_rms=rms(spot.FAINT_DBFS + off)), ROOM, HEARD)
    assert judged.good is good
    assert ("spot-too-faint" in judged.advice) is not good


def test_a_clipped_voice_is_told_of():
    assert "spot-too-loud" in verdict(replace(LEVEL, clipped=0.01), ROOM, HEARD).advice


def test_levels_are_measured():
    tone = np.sin(np.linspace(0, 200 * np.pi, 16_000)).astype(np.float32)
    assert dbfs(spot.rms_of(tone)) == pytest.approx(-3.01, abs=0.05)
    assert dbfs(0.0) == -120.0
    assert clipped_share(np.clip(2 * tone, -1, 1)) > spot.CLIPPED_SHARE
    assert level_of(0.5 * tone, 0.3).peak == pytest.approx(0.5, abs=0.001)
    assert level_of(tone[:0], 0.0) == Level(0.0, 0.0, 0.0)
