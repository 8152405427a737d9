"""Whether a place is good enough for walking by voice: the limits, and the verdict."""

from __future__ import annotations

from dataclasses import dataclass
from math import log10
from typing import Final

import numpy as np
from numpy.typing import NDArray

CLIPPED_AT: Final = 0.99
"""A sample as large as this was cut off."""
CLIPPED_SHARE: Final = 0.001
"""More cut samples than this, as a share of all, are heard as a rasp."""
FAINT_DBFS: Final = -45.0
"""Speech below this RMS is lost in a cheap sound card's own noise. A rule of thumb."""
LOUD_ROOM_DBFS: Final = -40.0
"""Talk and machines that come in louder than this while nobody speaks to the kiosk."""
LEAST_ABOVE_NOISE_DB: Final = 10.0
"""Speech over noise. At 10 dB of kitchen noise people's yes, no and stop were understood 85 to 98
times in 100; of 68 synthetic phrases 38 at 10 dB and 21 at 5 dB, with the English ear."""
COMFORTABLE_DB: Final = 15.0
"""From here on a nearer microphone gains little."""
LEAST_RIGHT: Final = 0.8
"""Share of the commands that must be understood at once."""


@dataclass(frozen=True, slots=True)
class Level:
    """How loud the worker's normal speech comes in."""

    peak: float
    """0 to 1."""
    speech_rms: float
    """Of the frames that held speech, 0 to 1; 0 when there was none."""
    clipped: float
    """Share of samples that were cut off."""


@dataclass(frozen=True, slots=True)
class Room:
    """What comes in while nobody speaks."""

    rms: float
    openings: int
    """How often the speech gate took the noise for speech."""


@dataclass(frozen=True, slots=True)
class Commands:
    """How the commands were heard; `silent` ones gave no utterance at all."""

    right: int
    wrong: int
    rejected: int
    silent: int
    above_noise_db: float | None
    """Median of speech over noise; None when it is not known."""

    @property
    def said(self) -> int:
        """How many commands were asked for."""
        return self.right + self.wrong + self.rejected + self.silent


@dataclass(frozen=True, slots=True)
class Verdict:
    """Whether voice will do here, and what to change: names of messages, the first one first."""

    good: bool
    advice: tuple[str, ...]


def verdict(level: Level, room: Room, commands: Commands | None) -> Verdict:
    """Judge a place. Without `commands` there is no ear for the language, and voice will not do."""
    if not level.speech_rms:
        return Verdict(False, ("spot-nothing-heard",))
    faint = dbfs(level.speech_rms) < FAINT_DBFS
    clipped = level.clipped > CLIPPED_SHARE
    noisy = room.openings > 0 or dbfs(room.rms) > LOUD_ROOM_DBFS
    if commands is None:
        return Verdict(False, ("spot-no-ear", *(["spot-too-faint"] if faint else [])))
    close = commands.above_noise_db
    drowned = close is not None and close < LEAST_ABOVE_NOISE_DB
    few = commands.right < LEAST_RIGHT * commands.said
    good = bool(commands.said) and not (few or commands.wrong or drowned or room.openings or faint)
    advice = [
        name
        for name, holds in (
            ("spot-too-loud", clipped),
            ("spot-too-faint", faint),
            ("spot-nearer", close is not None and close < COMFORTABLE_DB and not faint),
            ("spot-other-place", noisy),
            ("spot-push-to-talk", room.openings > 0 or drowned),
            ("spot-wrong-heard", commands.wrong > 0),
            ("spot-own-words", few and not (drowned or faint)),
            ("spot-touch", not good),
        )
        if holds
    ]
    return Verdict(good, tuple(advice))


def level_of(samples: NDArray[np.float32], speech_rms: float) -> Level:
    """Return the level of a stretch of sound in which somebody spoke."""
    peak = float(np.max(np.abs(samples))) if len(samples) else 0.0
    return Level(peak, speech_rms, clipped_share(samples))


def clipped_share(samples: NDArray[np.float32]) -> float:
    """Return the share of samples that were cut off."""
    return float(np.mean(np.abs(samples) >= CLIPPED_AT)) if len(samples) else 0.0


def rms_of(samples: NDArray[np.float32]) -> float:
    """Return the root mean square."""
    return float(np.sqrt(np.mean(np.square(samples, dtype=np.float64)))) if len(samples) else 0.0


def dbfs(rms: float) -> float:
    """Return decibels below full scale (a full sine is -3); -120 for silence."""
    return max(-120.0, 20 * log10(rms)) if rms > 0 else -120.0
