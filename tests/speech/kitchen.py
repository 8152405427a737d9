"""Made noise of a kitchen: a fan, a compressor's hum, pans that clatter."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import RATE


def kitchen(count: int, seed: int) -> NDArray[np.float32]:
    """Return `count` samples of noise with a root mean square of 1."""
    chance = np.random.default_rng(seed)
    spectrum = np.fft.rfft(chance.standard_normal(count))
    spectrum /= np.sqrt(np.maximum(np.fft.rfftfreq(count, 1 / RATE), 60))
    fan = np.fft.irfft(spectrum, count)
    time = np.arange(count) / RATE
    hum = sum(
        np.sin(2 * np.pi * 60 * part * time + chance.uniform(0, 6)) / part for part in (1, 2, 3, 4)
    )
    clatter = np.zeros(count)
    for start in chance.integers(0, count, max(1, round(1.5 * count / RATE))):
        ring = time[: min(count - start, RATE // 4)]
        for hertz in chance.uniform(700, 6000, 4):
            fading = np.exp(-ring * chance.uniform(15, 50))
            clatter[start : start + len(ring)] += fading * np.sin(2 * np.pi * hertz * ring)
    parts = fan / fan.std() + 0.5 * hum / np.std(hum) + 0.5 * clatter / clatter.std()
    return (parts / parts.std()).astype(np.float32)


def in_kitchen(sound: NDArray[np.float32], decibels: float, seed: int) -> NDArray[np.float32]:
    """Return sound with kitchen noise that many decibels below its loud parts."""
    loud = sound[np.abs(sound) > 0.01]
    noise = kitchen(len(sound), seed) * np.sqrt(np.mean(loud**2)) / 10 ** (decibels / 20)
    mixed = sound + noise
    return (mixed / max(1.0, np.abs(mixed).max())).astype(np.float32)
