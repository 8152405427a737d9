"""Made noise: a kitchen with fan and pans, a compressor, running water, humming, talk of others."""

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


def compressor(count: int, seed: int) -> NDArray[np.float32]:
    """Return the hum of a compressor: mains harmonics that beat, and a rumble."""
    chance = np.random.default_rng(seed)
    time = np.arange(count) / RATE
    hum = sum(
        np.sin(2 * np.pi * (58.5 + chance.uniform(-0.3, 0.3)) * part * time + chance.uniform(0, 6))
        / part**0.8
        for part in range(1, 13)
    )
    rumble = _coloured(count, chance, 1.0, 60)
    return _levelled(hum / np.std(hum) * (1 + 0.2 * np.sin(2 * np.pi * 0.7 * time)) + 0.4 * rumble)


def water(count: int, seed: int) -> NDArray[np.float32]:
    """Return running water: hiss, with bubbles that ring upwards."""
    chance = np.random.default_rng(seed)
    hiss = _coloured(count, chance, 0.25, 300)
    bubbles = np.zeros(count)
    for start in chance.integers(0, count, max(1, round(40 * count / RATE))):
        ring = np.arange(min(count - start, RATE // 20)) / RATE
        hertz = chance.uniform(500, 2500) * (1 + 4 * ring)
        bubbles[start : start + len(ring)] += np.exp(-80 * ring) * np.sin(2 * np.pi * hertz * ring)
    return _levelled(hiss + 0.7 * bubbles / bubbles.std())


def humming(count: int, seed: int) -> NDArray[np.float32]:
    """Return somebody who hums a tune with a closed mouth: gliding harmonics, in breaths."""
    chance = np.random.default_rng(seed)
    notes = np.repeat(chance.choice([110, 123, 131, 147, 165, 175, 196], count // 6000 + 1), 6000)
    glide = np.convolve(notes, np.full(800, 1 / 800), mode="same")[:count]
    time = np.arange(count) / RATE
    phase = 2 * np.pi * np.cumsum(glide * (1 + 0.01 * np.sin(2 * np.pi * 5.5 * time))) / RATE
    tone = sum(np.sin(part * phase) / part**1.6 for part in range(1, 9))
    breath = np.clip(np.sin(2 * np.pi * time / 3.1) + 0.8, 0, 1)
    return _levelled(tone * breath + 0.01 * _coloured(count, chance, 0.5, 60))


def _coloured(
    count: int, chance: np.random.Generator, slope: float, corner_hz: float
) -> NDArray[np.float64]:
    """Return noise whose spectrum falls with frequency to the power `slope` above a corner."""
    spectrum = np.fft.rfft(chance.standard_normal(count))
    spectrum /= np.maximum(np.fft.rfftfreq(count, 1 / RATE), corner_hz) ** slope
    noise: NDArray[np.float64] = np.fft.irfft(spectrum, count)
    return noise / noise.std()


def _levelled(sound: NDArray[np.float64]) -> NDArray[np.float32]:
    return (sound / sound.std()).astype(np.float32)


def mixed(
    sound: NDArray[np.float32], noise: NDArray[np.float32], decibels: float
) -> NDArray[np.float32]:
    """Return sound with noise (root mean square 1) that many decibels below its loud parts."""
    loud = sound[np.abs(sound) > 0.01]
    both = sound + noise * np.sqrt(np.mean(loud**2)) / 10 ** (decibels / 20)
    return (both / max(1.0, np.abs(both).max())).astype(np.float32)


def in_kitchen(sound: NDArray[np.float32], decibels: float, seed: int) -> NDArray[np.float32]:
    """Return sound with kitchen noise that many decibels below its loud parts."""
    return mixed(sound, kitchen(len(sound), seed), decibels)
