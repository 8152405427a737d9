"""Records a remark from the microphone's frames, until it is stopped, silent or long enough."""

from __future__ import annotations

import io
import math
import threading
import wave
from collections.abc import Callable
from enum import StrEnum
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import RATE
from kiosk.listening.endpoint import FRAME_S, SILENCE_S, Detector, Gate

MOST_S: Final = 30.0
"""A remark tells what is wrong; who needs longer calls somebody."""
QUIET_S: Final = 2.0
"""Silence after speech that ends a remark. Shorter cuts off who stops to think."""
BEGIN_S: Final = 6.0
"""Time to begin to speak: to read what is asked, and to come closer."""
TAIL_S: Final = 0.3
"""Left out after the kiosk has spoken: its last syllable is still in the room."""
FAINTEST_DB: Final = -60.0
"""Level, in decibels to full scale, at which the level shown is 0."""
_FALLS: Final = 0.06
"""How much of the whole scale the level shown falls with each frame, so that an eye can follow."""

Frame = NDArray[np.float32]


class Ended(StrEnum):
    """Why a recording ended."""

    STOPPED = "stopped"
    SILENT = "silent"
    FULL = "full"
    NOTHING_SAID = "nothing said"


class Recorder:
    """One recording, in memory only. `take` is called in the ear's thread, all else in another."""

    def __init__(
        self,
        on_end: Callable[[], None],
        ready: Callable[[], bool] = lambda: True,
        detector: Detector | None = None,
    ) -> None:
        """Begin when `ready` says that the kiosk is silent, and the tail of its voice is over.

        `on_end` must only post; it is called when the recording ends by itself.
        """
        self._on_end = on_end
        self._ready = ready
        self._gate = Gate(detector=detector)
        self._lock = threading.Lock()
        self._frames: list[Frame] = []
        self._tail = 0
        self._quiet = 0
        self._level = 0.0
        self.spoke = False
        """True when there is speech in it, as far as the detector knows."""
        self.ended: Ended | None = None

    @property
    def seconds(self) -> float:
        """How long it is."""
        return len(self._frames) * FRAME_S

    @property
    def level(self) -> float:
        """How loud it is now, 0 to 1."""
        return self._level

    def take(self, frame: Frame) -> None:
        """Take a frame; frames after the end are dropped."""
        with self._lock:
            if self.ended is not None:
                return
            if not self._ready():
                self._tail = _frames_of(TAIL_S)
                return
            if self._tail:
                self._tail -= 1
                return
            self._frames.append(frame)
            self._hear(frame)
            self.ended = self._end()
            ended = self.ended is not None
        if ended:
            self._on_end()

    def stop(self) -> None:
        """End it."""
        with self._lock:
            self.ended = self.ended or Ended.STOPPED

    def _hear(self, frame: Frame) -> None:
        self._level = max(level_of(frame), self._level - _FALLS)
        self._gate.feed(frame)
        if self._gate.speaking:
            self.spoke, self._quiet = True, 0
        else:
            self._quiet += 1

    def _end(self) -> Ended | None:
        if len(self._frames) >= _frames_of(MOST_S):
            return Ended.FULL
        # The gate stays open for a while after the last speech.
        if self.spoke and self._quiet >= _frames_of(QUIET_S - SILENCE_S):
            return Ended.SILENT
        if not self.spoke and self._quiet >= _frames_of(BEGIN_S):
            return Ended.NOTHING_SAID
        return None

    def wave(self) -> bytes:
        """Return what was recorded as a wave file: 16 kHz, mono, 16 bits."""
        with self._lock:
            frames = list(self._frames)
        whole = np.concatenate(frames) if frames else np.empty(0, dtype=np.float32)
        pcm = np.round(np.clip(whole, -1.0, 1.0) * 32_767).astype("<i2")
        out = io.BytesIO()
        with wave.open(out, "wb") as file:
            file.setnchannels(1)
            file.setsampwidth(2)
            file.setframerate(RATE)
            file.writeframes(pcm.tobytes())
        return out.getvalue()


def level_of(frame: Frame) -> float:
    """Return the level of a frame, 0 to 1: its power in decibels, from the faintest to full."""
    power = float(np.mean(np.square(frame)))
    if power <= 0:
        return 0.0
    return min(1.0, max(0.0, 1 - 10 * math.log10(power) / FAINTEST_DB))


def _frames_of(seconds: float) -> int:
    return max(1, round(seconds / FRAME_S))
