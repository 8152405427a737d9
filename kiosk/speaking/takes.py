"""One take of a sentence: whether it can be kept, trimmed and made as loud as the voice."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import Final

import numpy as np

from kiosk.speaking.player import RATE
from kiosk.speaking.waves import Samples, at_rate

LOUDNESS: Final = 0.1
"""Root mean square of speech that takes are brought to: that of espeak-ng at its usual volume,
0.095 to 0.146 over the six voices (measured)."""
LOUDEST: Final = 0.97
"""The peak that is never passed."""

FRAME_S: Final = 0.02
BEFORE_S, AFTER_S, FADE_S = 0.1, 0.2, 0.02
"""What stays of the silence around the speech, and how long it fades there."""
AT_EDGE_S: Final = 0.06
"""Speech so near to an end of the take was cut off there."""

FAINTEST_DB: Final = -50.0
"""Below full scale; nothing is speech that is fainter. A choice of this project, as those below."""
QUIETEST_DB: Final = -40.0
"""Speech fainter than this would bring the room up with it."""
LEAST_OVER_ROOM_DB: Final = 15.0
SPEECH_RANGE_DB: Final = 25.0
"""How far below its loud parts speech still is speech."""
CLIPPED: Final = 0.99
CLIPPED_SAMPLES: Final = 10
SHORTEST, LONGEST, SPARE_S = 0.5, 2.5, 1.0
"""A whole sentence takes so many times what the synthesiser needs for it, and a second over."""


class Flaw(StrEnum):
    """What may be wrong with a take."""

    SILENT = "silent"
    QUIET = "quiet"
    CLIPPED = "clipped"
    BEGINS_CUT = "begins-cut"
    ENDS_CUT = "ends-cut"
    NOISY = "noisy"
    SHORT = "short"
    LONG = "long"


@dataclass(frozen=True, slots=True)
class Take:
    """A take that was judged."""

    samples: Samples
    """At the player's rate, trimmed, as loud as the voice; empty when nothing was said."""
    flaws: tuple[Flaw, ...]
    level_db: float
    """Of the speech, below full scale, as it came from the microphone."""

    @property
    def seconds(self) -> float:
        """How long it is."""
        return len(self.samples) / RATE


def judged(samples: Samples, rate: int, usual_s: float = 0.0) -> Take:
    """Judge samples of a microphone at `rate` hertz.

    `usual_s` is how long the synthesiser needs for the sentence; 0 where that is not known.
    """
    length = max(1, round(FRAME_S * rate))
    frames = samples[: len(samples) // length * length].reshape(-1, length)
    if not len(frames):
        return Take(samples[:0], (Flaw.SILENT,), -np.inf)
    power = np.maximum(np.mean(np.square(frames, dtype=np.float64), axis=1), 1e-12)
    level = 10 * np.log10(power)
    room, loud = np.percentile(level, 10), np.percentile(level, 95)
    speech = level > max(loud - SPEECH_RANGE_DB, min(room + 6.0, loud - 6.0))
    if loud < FAINTEST_DB or loud - room < 6.0:
        return Take(samples[:0], (Flaw.SILENT,), float(loud))
    spoken = np.flatnonzero(speech)
    first, last = int(spoken[0]), int(spoken[-1]) + 1
    level_db = float(10 * np.log10(np.mean(power[speech])))
    edge = AT_EDGE_S / FRAME_S
    seconds = (last - first) * FRAME_S
    wrong = {
        Flaw.QUIET: level_db < QUIETEST_DB,
        Flaw.CLIPPED: np.count_nonzero(np.abs(samples) >= CLIPPED) >= CLIPPED_SAMPLES,
        Flaw.BEGINS_CUT: first < edge,
        Flaw.ENDS_CUT: last > len(frames) - edge,
        Flaw.NOISY: loud - room < LEAST_OVER_ROOM_DB,
        Flaw.SHORT: seconds < SHORTEST * usual_s,
        Flaw.LONG: bool(usual_s) and seconds > LONGEST * usual_s + SPARE_S,
    }
    begin, end = first * length - round(BEFORE_S * rate), last * length + round(AFTER_S * rate)
    trimmed = _faded(samples[max(0, begin) : end], rate)
    gain = min(LOUDNESS / 10 ** (level_db / 20), LOUDEST / float(np.abs(trimmed).max()))
    flaws = tuple(flaw for flaw, found in wrong.items() if found)
    return Take(at_rate((trimmed * gain).astype(np.float32), rate), flaws, level_db)


def _faded(samples: Samples, rate: int) -> Samples:
    """Return samples that rise from nothing and fall to nothing, so that no end clicks."""
    length = min(round(FADE_S * rate), len(samples) // 2)
    ramp = np.ones(len(samples), dtype=np.float32)
    rise = np.linspace(0, 1, length, dtype=np.float32)
    ramp[:length] = rise
    ramp[len(ramp) - length :] = rise[::-1]
    return samples * ramp
