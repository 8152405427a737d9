"""Takes sound from a source piece by piece, for those who try a place or teach a word."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import Utterance
from kiosk.listening.endpoint import FRAME, FRAME_S, Detector, Gate
from kiosk.listening.sources import Source

READING_S: Final = 1.5
"""Time to read what is asked, from a microphone: what comes in meanwhile is dropped."""


class SoundEnded(Exception):
    """The source gives no more; the message says what to look at."""


@dataclass(frozen=True, slots=True)
class Stretch:
    """Some seconds of sound, whatever is in it."""

    samples: NDArray[np.float32]
    speech_rms: float
    """Of the frames that held speech; 0 when none did."""
    openings: int
    """How often the gate took it for speech."""


class Taker:
    """Gives stretches and utterances of one source, in the order in which they are asked for."""

    def __init__(self, source: Source, detector: Detector | None = None) -> None:
        self._source = source
        self._frames: Iterator[NDArray[np.float32]] = source.frames()
        self._gate = Gate(detector=detector)

    def stretch(self, seconds: float) -> Stretch:
        """Return the next seconds of sound. Raises SoundEnded."""
        self._begin()
        frames: list[NDArray[np.float32]] = []
        speech: list[Utterance] = []
        openings = 0
        for _ in range(max(1, round(seconds / FRAME_S))):
            was_open = self._gate.speaking
            frame = self._next()
            ended = self._gate.feed(frame)
            frames.append(frame)
            openings += self._gate.speaking and not was_open
            if ended is not None:
                speech.append(ended)
        if self._gate.speaking:
            speech.append(self._gate.so_far())
        self._gate.reset()
        weights = [len(one.samples) for one in speech]
        powers = [one.speech_rms**2 for one in speech]
        rms = float(np.sqrt(np.average(powers, weights=weights))) if speech else 0.0
        return Stretch(np.concatenate(frames), rms, openings)

    def utterance(self, limit_s: float) -> Utterance | None:
        """Return what is said next; None when nobody began within the limit. Raises SoundEnded.

        The end of the sound ends an utterance, too.
        """
        self._begin()
        waited = 0.0
        while self._gate.speaking or waited < limit_s:
            try:
                frame = self._next()
            except SoundEnded:
                last = self._gate.flush()
                if last is None:
                    raise
                return last
            waited += FRAME_S
            ended = self._gate.feed(frame)
            if ended is not None:
                return ended
        return None

    def _begin(self) -> None:
        """Let a worker at a microphone read what is asked."""
        self._gate.reset()
        if self._source.live:
            for _ in range(self._source.waiting() + round(READING_S / FRAME_S)):
                self._next()

    def _next(self) -> NDArray[np.float32]:
        frame = next(self._frames, None)
        if frame is None or len(frame) != FRAME:
            raise SoundEnded("the sound has ended: is the microphone still plugged in?")
        return frame
