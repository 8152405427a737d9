"""Waves in memory: read, made of one rate, joined."""

from __future__ import annotations

import io
import wave
from collections.abc import Sequence
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.speaking.player import RATE, unreadable

Samples = NDArray[np.float32]
"""Mono, -1 to 1."""

PAUSE_S: Final = 0.25
"""Silence between two sentences that were spoken apart."""
_FULL: Final = 32_767
_WIDTH: Final = 2
_READ_FAILURES: Final = (OSError, EOFError, wave.Error, RuntimeError, ValueError)
"""What reading a wave file raises; the fourth for a chunk that is longer than the file."""


def read(path: Path) -> Samples:
    """Return a wave file of 16 bits at RATE, its channels mixed. Raises SpeechFailed."""
    try:
        with wave.open(str(path), "rb") as file:
            if file.getsampwidth() != _WIDTH:
                raise ValueError(f"{8 * file.getsampwidth()} bits a sample")
            rate, channels = file.getframerate(), file.getnchannels()
            whole = np.frombuffer(file.readframes(file.getnframes()), dtype="<i2")
        mixed = whole.reshape(-1, channels).mean(axis=1) / (_FULL + 1)
    except _READ_FAILURES as failure:
        raise unreadable(path, failure) from failure
    return at_rate(mixed.astype(np.float32), rate)


def at_rate(samples: Samples, rate: int, to: int = RATE) -> Samples:
    """Return samples at another rate, in hertz, through their spectrum: nothing is folded over.

    That holds for a whole sound which begins and ends in silence.
    """
    if rate == to or not len(samples):
        return samples
    length = round(len(samples) * to / rate)
    spectrum = np.fft.rfft(samples)[: length // 2 + 1]
    return (np.fft.irfft(spectrum, length) * (length / len(samples))).astype(np.float32)


def as_wave(samples: Samples) -> bytes:
    """Return samples at RATE as a wave file of 16 bits; what is too loud is cut off."""
    out = io.BytesIO()
    with wave.open(out, "wb") as file:
        file.setnchannels(1)
        file.setsampwidth(_WIDTH)
        file.setframerate(RATE)
        file.writeframes(np.round(np.clip(samples, -1, 1) * _FULL).astype("<i2").tobytes())
    return out.getvalue()


def joined(parts: Sequence[Samples]) -> Samples:
    """Return sentences one after another, with a pause between each two."""
    pause = np.zeros(round(PAUSE_S * RATE), dtype=np.float32)
    between = [one for part in parts for one in (pause, part)]
    return np.concatenate(between[1:]) if between else pause[:0]
