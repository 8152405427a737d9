"""What the loudspeaker was given, at the ear's rate and in step with the microphone's frames."""

from __future__ import annotations

import threading
from collections import deque
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import RATE
from kiosk.listening.endpoint import FRAME
from kiosk.listening.sources import ROLL_OFF, ZERO_CROSSINGS
from kiosk.speaking.player import RATE as PLAYED_RATE

_GIVEN, _TAKEN = 441, 320
"""Samples of 20 ms at the two rates: blocks of these lengths keep the resampler in phase."""
_HALF: Final = int(np.ceil(ZERO_CROSSINGS * PLAYED_RATE / RATE / ROLL_OFF))
LEAD: Final = round(0.064 * RATE)
"""Samples that are kept back, because the device takes 40 ms at a time and not on the dot. No more
than that: what comes later than its own sound cannot be taken out. Over a real sound server, with
50 ms for the way through the air, the sound came 29 to 69 ms behind its reference."""
SLIP: Final = round(0.015 * RATE)
"""Samples of slow drift between the two devices' crystals after which the two are set anew."""
MEMORY: Final = 0.01
"""Share of each frame in the running estimate of what is kept back: three seconds."""
SILENT: Final = 1e-4
"""A frame whose loudest sample is below this sounds like nothing."""
MOST_PIECES: Final = 500
"""Pieces kept when nobody takes them: some ten seconds."""


class Reference:
    """Samples go in on the loudspeaker's thread and come out, frame by frame, on the listener's.

    Both devices run all the time, so the two streams are matched by counting samples: a time
    stamp would carry the jitter of the threads into an echo path that must stand still.
    """

    def __init__(self) -> None:
        self._pieces: deque[bytes] = deque(maxlen=MOST_PIECES)
        self._lock = threading.Lock()
        self._raw = np.zeros(_HALF, dtype=np.float32)
        self._ready = np.empty(0, dtype=np.float32)
        self._kernel = _kernel()
        self._kept: float | None = None
        self.slips = 0
        """How often the streams had to be set anew: then the echo path is another one."""

    def put(self, pcm: bytes) -> None:
        """Take what was handed to the device: 16-bit mono at the player's rate."""
        with self._lock:
            self._pieces.append(pcm)

    def next(self, waiting: int = 0) -> NDArray[np.float32] | None:
        """Return the 512 samples at 16 kHz that belong to the microphone's next frame.

        `waiting` is the number of the microphone's frames that come behind it. None while the
        loudspeaker is not fed.
        """
        self._resample()
        kept = len(self._ready) - (waiting + 1) * FRAME
        if self._kept is None:
            if kept < LEAD:
                return None
            self._set(kept)
            kept = LEAD
            self._kept = float(LEAD)
        if len(self._ready) < FRAME:
            self._kept = None
            self.slips += 1
            return None
        frame, self._ready = self._ready[:FRAME], self._ready[FRAME:]
        self._kept += MEMORY * (kept - self._kept)
        if abs(self._kept - LEAD) > SLIP and np.abs(frame).max() < SILENT:
            self._set(round(self._kept))
            self._kept = float(LEAD)
            self.slips += 1
        return frame

    def _set(self, kept: int) -> None:
        """Drop, or put in, what makes the part kept back `LEAD` samples long."""
        surplus = kept - LEAD
        if surplus >= 0:
            self._ready = self._ready[surplus:]
        else:
            self._ready = np.concatenate([np.zeros(-surplus, dtype=np.float32), self._ready])

    def _resample(self) -> None:
        with self._lock:
            given = b"".join(self._pieces)
            self._pieces.clear()
        if given:
            samples = np.frombuffer(given, dtype="<i2").astype(np.float32) / 32_768
            self._raw = np.concatenate([self._raw, samples])
        blocks = []
        while len(self._raw) >= self._kernel.shape[1]:
            blocks.append(self._kernel @ self._raw[: self._kernel.shape[1]])
            self._raw = self._raw[_GIVEN:]
        if blocks:
            self._ready = np.concatenate([self._ready, *blocks])


def _kernel() -> NDArray[np.float32]:
    """Return the matrix that makes a block of 20 ms at 16 kHz from one at the player's rate.

    A windowed sinc, as in `sources.resample`, with its half width of samples on either side.
    """
    cutoff = ROLL_OFF * RATE / PLAYED_RATE
    centres = _HALF + np.arange(_TAKEN) * _GIVEN / _TAKEN
    distance = np.arange(_GIVEN + 2 * _HALF)[None] - centres[:, None]
    window = np.cos(np.pi * np.clip(distance / (_HALF + 1), -1, 1) / 2) ** 2
    kernel = cutoff * np.sinc(cutoff * distance) * window
    kernel /= kernel.sum(axis=1, keepdims=True)
    matrix: NDArray[np.float32] = kernel.astype(np.float32)
    return matrix
