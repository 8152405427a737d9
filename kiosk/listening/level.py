"""How loud the sound is that comes in, for a meter on the screen."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.spot import dbfs, rms_of

FALL_DB: Final = 1.0
"""How far the meter falls from one frame to the next: 31 dB a second, so that a word is seen."""
DEAD_AFTER_S: Final = 2.0
"""A microphone hears at least its own noise: without any for so long it is off or unplugged."""


class LevelMeter:
    """Takes frames in one thread, and is read in another."""

    def __init__(self, clock: Callable[[], float]) -> None:
        """`clock` is monotonic, in seconds."""
        self._clock = clock
        self._dbfs = dbfs(0.0)
        self._sound_at = clock()

    def take(self, frame: NDArray[np.float32]) -> None:
        """Take the next frame."""
        loud = dbfs(rms_of(frame))
        if loud > dbfs(0.0):
            self._sound_at = self._clock()
        self._dbfs = max(loud, self._dbfs - FALL_DB)

    @property
    def level(self) -> float | None:
        """The level in dBFS, -120 to 0; None when no sound at all has come in for some time."""
        return self._dbfs if self._clock() - self._sound_at < DEAD_AFTER_S else None
