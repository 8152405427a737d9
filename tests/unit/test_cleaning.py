"""Steady noise is taken out of a sound, and what is not noise stays."""

from __future__ import annotations

import numpy as np
import pytest
from numpy.typing import NDArray

from kiosk.listening.cleaning import FLOOR, cleaned
from kiosk.listening.ear import RATE

Sound = NDArray[np.float32]


def tone(from_s: float, until_s: float, whole_s: float = 1.0) -> Sound:
    time = np.arange(round(whole_s * RATE)) / RATE
    heard = (time >= from_s) & (time < until_s)
    return (0.3 * np.sin(2 * np.pi * 440 * time) * heard).astype(np.float32)


def hiss(count: int) -> Sound:
    return (0.03 * np.random.default_rng(1).standard_normal(count)).astype(np.float32)


def rms(sound: Sound) -> float:
    return float(np.sqrt(np.mean(np.square(sound))))


def test_noise_falls_to_its_floor_and_the_tone_stays():
    said = tone(0.3, 0.7)
    noise = hiss(len(said))
    found = cleaned(said + noise)
    before, during = slice(0, RATE // 5), slice(round(0.35 * RATE), round(0.65 * RATE))
    assert rms(found[before]) < 2 * FLOOR * rms(noise[before])
    assert rms(found[during] - said[during]) < 0.5 * rms(noise[during])


def test_a_sound_without_noise_comes_back_as_it_was():
    said = tone(0.3, 0.7)
    assert np.allclose(cleaned(said)[RATE // 3 : RATE // 2], said[RATE // 3 : RATE // 2], atol=0.01)


@pytest.mark.parametrize("count", [0, 1, 399, 400, 4001, RATE])
def test_the_length_stays_and_all_is_finite(count: int):
    found = cleaned(hiss(count))
    assert found.shape == (count,)
    assert found.dtype == np.float32
    assert np.isfinite(found).all()


def test_silence_stays_silent():
    assert not cleaned(np.zeros(RATE, dtype=np.float32)).any()
