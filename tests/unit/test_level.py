"""The meter of the microphone."""

from __future__ import annotations

import math
import threading
from collections.abc import Iterator

import numpy as np
import pytest

from kiosk.listening.level import DEAD_AFTER_S, FALL_DB, LevelMeter
from kiosk.listening.listener import Listener

SILENCE = np.zeros(512, dtype=np.float32)


def sine(peak: float) -> np.ndarray:
    """512 samples of whole periods."""
    return (peak * np.sin(np.arange(512) * 2 * math.pi / 64)).astype(np.float32)


class Clock:
    seconds = 10.0

    def __call__(self) -> float:
        return self.seconds


@pytest.mark.parametrize(("peak", "level"), [(1.0, -3.01), (0.5, -9.03), (0.01, -43.01)])
def test_a_sine_reads_three_decibels_below_its_peak(peak, level):
    # RMS of a sine is its peak over the root of two: 20 log10(1 / sqrt 2) = -3.01 dB (CALC).
    meter = LevelMeter(Clock())
    meter.take(sine(peak))
    assert meter.level == pytest.approx(level, abs=0.02)


def test_it_rises_at_once_and_falls_slowly():
    meter = LevelMeter(Clock())
    meter.take(sine(0.5))
    loud = meter.level
    meter.take(sine(0.001))
    assert meter.level == pytest.approx(loud - FALL_DB)
    meter.take(sine(1.0))
    assert meter.level > loud


def test_a_microphone_without_any_sound_is_told_from_one_in_silence():
    clock = Clock()
    meter = LevelMeter(clock)
    meter.take(SILENCE)
    assert meter.level is not None
    clock.seconds += DEAD_AFTER_S
    meter.take(SILENCE)
    assert meter.level is None
    noise = np.full(512, 1e-5, dtype=np.float32)
    meter.take(noise)
    assert meter.level == pytest.approx(-100, abs=21)
    assert meter.level is not None


def test_a_microphone_that_gives_no_more_frames_is_seen_as_dead():
    clock = Clock()
    meter = LevelMeter(clock)
    meter.take(sine(0.5))
    clock.seconds += DEAD_AFTER_S + 1
    assert meter.level is None


class Microphone:
    """A live source of one loud frame, that ends when it is told to."""

    live = True

    def __init__(self) -> None:
        self.given, self.over = threading.Event(), threading.Event()

    def frames(self) -> Iterator[np.ndarray]:
        yield sine(0.5)
        self.given.set()
        self.over.wait()

    def waiting(self) -> int:
        return 0

    def close(self) -> None:
        self.over.set()


def test_a_listener_tells_the_level_and_none_once_the_microphone_is_gone():
    source, ended = Microphone(), threading.Event()
    listener = Listener(source, None, lambda _: None, lambda _: ended.set(), Clock())
    source.given.wait()
    assert listener.level == pytest.approx(-9.03, abs=0.02)
    source.over.set()
    ended.wait()
    assert listener.level is None
    listener.stop()
