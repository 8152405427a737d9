"""The way from the loudspeaker to the microphone, learnt while it sounds, and taken away again."""

from __future__ import annotations

from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.endpoint import FRAME

PARTS: Final = 10
"""Frames of the room that are modelled: 0.32 s from the handing over of a sample to its last
reverberation, the device's own latency in it."""
KEPT: Final = 0.97
"""How much of what is known stands after a frame; the square of the forgetting factor. Two devices
drift apart by 50 microseconds a second, and whoever walks by changes the room. With 0.999 nothing
was learnt over a real sound server; with 0.97, 10 to 20 dB within seconds."""
UNKNOWN: Final = 0.01
"""Variance of a response of which nothing is known. With 1 it overshot by 17 dB at the start."""
SMOOTHING: Final = 0.9
"""Of the running power of what is left, the noise that the model is doubted for."""
AUDIBLE: Final = 1e-3
"""Energy of the modelled stretch, in its spectrum, under which there is nothing to learn from."""


class EchoPath:
    """A partitioned-block frequency-domain Kalman filter.

    It only subtracts what it knows, so that a voice beside the echo stays as it is; and it learns
    slowly while somebody speaks, for then more is left than the model explains. After Enzner and
    Vary, Frequency-domain adaptive Kalman filter for acoustic echo control, Signal Processing 86
    (2006), with the partitions of Kuech, Mabande and Enzner, ICASSP 2014.
    """

    def __init__(self) -> None:
        bins = FRAME + 1
        self._sounded = np.zeros((PARTS, bins), dtype=np.complex128)
        self._response = np.zeros((PARTS, bins), dtype=np.complex128)
        self._doubt = np.full((PARTS, bins), UNKNOWN)
        self._before = np.zeros(FRAME)
        self._left: NDArray[np.float64] | None = None

    def subtract(self, near: NDArray[np.float32], far: NDArray[np.float32]) -> NDArray[np.float32]:
        """Return a frame of the microphone without the echo of what the loudspeaker was given.

        Frames of 512 samples at 16 kHz, both of the same stretch of time.
        """
        spectrum = np.fft.rfft(np.concatenate([self._before, far]))
        self._before = far.astype(np.float64)
        self._sounded = np.roll(self._sounded, 1, axis=0)
        self._sounded[0] = spectrum
        echo = np.fft.irfft((self._response * self._sounded).sum(axis=0))[FRAME:]
        rest = near - echo
        power = np.abs(self._sounded) ** 2
        if power.sum() > AUDIBLE:
            self._learn(rest, power)
        worse = np.sum(rest**2) > np.sum(np.square(near, dtype=np.float64))
        return near if worse else rest.astype(np.float32)

    def _learn(self, rest: NDArray[np.float64], power: NDArray[np.float64]) -> None:
        error = np.fft.rfft(np.concatenate([np.zeros(FRAME), rest]))
        fresh = np.abs(error) ** 2
        before = fresh if self._left is None else self._left
        self._left = SMOOTHING * before + (1 - SMOOTHING) * fresh
        # A half, because half of each transformed stretch is zeros.
        gain = self._doubt / (0.5 * (self._doubt * power).sum(axis=0) + self._left + 1e-8)
        known = KEPT * (1 - 0.5 * gain * power) * self._doubt
        strength = np.abs(self._response) ** 2
        # Every part may become what another one is: a delay that jumps moves the response.
        self._doubt = known + (1 - KEPT) * np.maximum(strength, strength.mean(axis=0))
        learnt = np.fft.irfft(self._response + gain * self._sounded.conj() * error)
        learnt[:, FRAME:] = 0.0
        self._response = np.fft.rfft(learnt)
