"""The log-mel spectrogram that Whisper models take, in numpy alone.

After 'Robust Speech Recognition via Large-Scale Weak Supervision' (Radford et al., 2022), section
2.2: 80 bands, windows of 25 ms every 10 ms; the band edges lie on Slaney's mel scale (Auditory
Toolbox, 1998), each band divided by its width.
"""

from __future__ import annotations

from functools import cache
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import RATE

WINDOW: Final = 400
"""25 ms at 16 kHz."""
HOP: Final = 160
"""10 ms at 16 kHz."""
FRAMES_PER_S: Final = RATE // HOP
QUIETEST: Final = 1e-10
RANGE_DECADES: Final = 8.0
"""Everything more than 80 dB below the loudest point is lifted to there."""

_BREAK_HZ: Final = 1000.0
_BREAK_MEL: Final = 15.0
_LOG_STEP: Final = float(np.log(6.4)) / 27.0


def mel_of(hertz: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return mels on Slaney's scale: linear up to 1000 Hz (15 mel), logarithmic above."""
    linear = hertz * _BREAK_MEL / _BREAK_HZ
    logarithmic = _BREAK_MEL + np.log(np.maximum(hertz, _BREAK_HZ) / _BREAK_HZ) / _LOG_STEP
    return np.where(hertz < _BREAK_HZ, linear, logarithmic)


def hertz_of(mel: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return hertz for mels on Slaney's scale; the inverse of `mel_of`."""
    linear = mel * _BREAK_HZ / _BREAK_MEL
    logarithmic = _BREAK_HZ * np.exp(_LOG_STEP * (np.maximum(mel, _BREAK_MEL) - _BREAK_MEL))
    return np.where(mel < _BREAK_MEL, linear, logarithmic)


@cache
def mel_filters(bands: int = 80) -> NDArray[np.float32]:
    """Return triangular filters, shape (bands, 201), over the bins of a 400-point transform."""
    bins = np.linspace(0, RATE / 2, WINDOW // 2 + 1)
    top = mel_of(np.array(RATE / 2))
    edges = hertz_of(np.linspace(0, float(top), bands + 2))
    slopes = edges[:, None] - bins[None, :]
    widths = np.diff(edges)
    rising = -slopes[:-2] / widths[:-1, None]
    falling = slopes[2:] / widths[1:, None]
    triangles = np.maximum(0, np.minimum(rising, falling))
    filters = (triangles * (2.0 / (edges[2:] - edges[:-2]))[:, None]).astype(np.float32)
    filters.flags.writeable = False
    return filters


def log_mel(samples: NDArray[np.float32], seconds: float, bands: int = 80) -> NDArray[np.float32]:
    """Return features, shape (bands, seconds * 100), of mono 16 kHz samples padded with silence.

    What is longer than `seconds` is cut off.
    """
    length = round(seconds * RATE)
    total = round(seconds * FRAMES_PER_S)
    samples = samples[:length]
    # Frames beyond the sound are silence exactly: only those that touch it are computed.
    touched = min(total, (len(samples) + WINDOW // 2) // HOP + 1)
    reach = (touched - 1) * HOP + WINDOW // 2
    padded = np.pad(samples, (0, max(0, reach - len(samples))))
    padded = np.pad(
        padded, (WINDOW // 2, max(0, reach + WINDOW // 2 - len(padded))), mode="reflect"
    )
    windows = np.lib.stride_tricks.sliding_window_view(padded, WINDOW)[::HOP][:touched]
    hann = 0.5 - 0.5 * np.cos(2 * np.pi * np.arange(WINDOW) / WINDOW)
    power = np.abs(np.fft.rfft(windows * hann, axis=1)) ** 2
    spectrum = np.full((bands, total), np.log10(QUIETEST), dtype=np.float32)
    spectrum[:, :touched] = np.log10(
        np.maximum(mel_filters(bands) @ power.T.astype(np.float32), QUIETEST)
    )
    spectrum = np.maximum(spectrum, spectrum.max() - RANGE_DECADES)
    return np.ascontiguousarray((spectrum + 4.0) / 4.0, dtype=np.float32)
