"""Samples of a worker's own words as features, and how far two of them are apart."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from functools import cache
from typing import Final

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import RATE
from kiosk.listening.mel import FRAMES_PER_S, log_mel

Features = NDArray[np.float32]

BANDS: Final = 32
"""Mel bands: most are wider than the distance of a voice's harmonics, so pitch counts little."""
CEPSTRA: Final = 12
"""Coefficients of the cosine transform that are kept, the zeroth (loudness) left out."""
DECIBELS: Final = 40.0
"""One unit of `log_mel` in decibels."""
DEEP_DB: Final = 50.0
"""What lies so far below the loudest band of the loudest frame counts as the room."""
SPEECH_SHARE: Final = 0.1
"""Frames with less than this share of the greatest excess over the room are no speech."""
MASK_DB: Final = 6.0
"""How far above the noise of either sample both are levelled before they are compared."""
BESIDE: Final = 5
"""Frames kept on either side of the speech: in noise, its ends are not found to the frame."""
OPEN_ENDS: Final = 10
"""Frames of an utterance that may be left out at either end, for the same reason."""
LONGEST_S: Final = 3.0
"""No command word takes so long; what comes after is not looked at."""
LEAST_FRAMES: Final = 10
"""A tenth of a second: anything shorter is a click."""
NEVER: Final = 2.0
"""The distance of what cannot be aligned; that of two unlike words is about 0.5."""


@dataclass(frozen=True, slots=True)
class Sample:
    """One utterance of a word: spectra in 32 bands every 10 ms, and no sound.

    Decibels; 0 is the loudest band of the loudest frame.
    """

    bands: Features
    """Shape (frames, 32), with some frames on either side of the speech."""
    core: tuple[int, int]
    """First frame of the speech, and the one after its last."""
    room: Features
    """Shape (32,): the noise beside the speech."""

    @property
    def seconds(self) -> float:
        """How long the speech is."""
        return (self.core[1] - self.core[0]) / FRAMES_PER_S


def sample_of(samples: NDArray[np.float32]) -> Sample | None:
    """Return the features of an utterance (mono, 16 kHz); None when it holds no speech."""
    if len(samples) < LEAST_FRAMES * RATE // FRAMES_PER_S or not np.any(samples):
        return None
    seconds = min(len(samples) / RATE, LONGEST_S)
    spectrum = log_mel(samples, seconds, BANDS).T * np.float32(DECIBELS)
    spectrum = spectrum - spectrum.max()
    quiet = np.maximum(np.percentile(spectrum, 20, axis=0), -DEEP_DB)
    excess = _smooth(np.maximum(spectrum - quiet - MASK_DB, 0.0).mean(axis=1))
    speech = np.flatnonzero(excess >= SPEECH_SHARE * excess.max())
    first, last = int(speech[0]), int(speech[-1]) + 1
    if last - first < LEAST_FRAMES or not excess.any():
        return None
    beside = np.concatenate([spectrum[: max(0, first - 3)], spectrum[last + 3 :]])
    room = np.median(beside, axis=0) if len(beside) else np.full(BANDS, spectrum.min())
    start = max(0, first - BESIDE)
    return Sample(
        bands=spectrum[start : last + BESIDE].astype(np.float32),
        core=(first - start, last - start),
        room=room.astype(np.float32),
    )


def _smooth(loud: NDArray[np.float64]) -> NDArray[np.float64]:
    """Return a running median of five frames: a click is no speech."""
    padded = np.pad(loud, 2, mode="edge")
    found: NDArray[np.float64] = np.median(
        np.lib.stride_tricks.sliding_window_view(padded, 5), axis=1
    )
    return found


def distances(said: Sample, templates: Sequence[Sample]) -> NDArray[np.float64]:
    """Return how far an utterance is from each template, shape (templates,): 0 is the same sound.

    Both are first raised to the noise of either, so that what only one of the two could hear does
    not count (noise masking: Klatt, ICASSP 1976). Then their cepstra are aligned in time (Sakoe and
    Chiba, IEEE Trans. ASSP 26, 1978), and the cost is divided by how much the two vary.
    """
    return np.array([_aligned(_costs(one, said)) for one in templates])


def _costs(template: Sample, said: Sample) -> NDArray[np.float64]:
    """Return the distance of each frame of a template to each frame of what was said."""
    mask = np.maximum(said.room, template.room) + MASK_DB
    first, last = template.core
    its = _cepstra(template, mask)[first:last]
    mine = _cepstra(said, mask)
    spread = _length(its) + _length(mine)
    square = np.sum(its**2, axis=1)[:, None] + np.sum(mine**2, axis=1) - 2.0 * its @ mine.T
    costs: NDArray[np.float64] = np.sqrt(np.maximum(square, 0.0)) / max(spread, 1e-6)
    return costs


def _cepstra(sample: Sample, mask: NDArray[np.floating]) -> NDArray[np.float64]:
    """Return cepstra, shape (frames, 12), their mean over the speech taken off."""
    cepstra: NDArray[np.float64] = np.maximum(sample.bands, mask) @ _cosines()
    cepstra -= cepstra[sample.core[0] : sample.core[1]].mean(axis=0)
    return cepstra


def _length(cepstra: NDArray[np.float64]) -> float:
    return float(np.sqrt(np.mean(np.sum(cepstra**2, axis=1))))


@cache
def _cosines() -> NDArray[np.float64]:
    """Return the cosine transform, shape (32, 12)."""
    places = (np.arange(BANDS) + 0.5) / BANDS
    table: NDArray[np.float64] = np.cos(np.pi * places[:, None] * np.arange(1, CEPSTRA + 1)) / BANDS
    return table


def _aligned(costs: NDArray[np.float64]) -> float:
    """Return the mean cost of the cheapest way through a template, frame by frame.

    With each of its frames the way goes on by 0, 1 or 2 frames of the utterance, and never twice
    in a row by 0. It may begin and end `OPEN_ENDS` frames inside the utterance.
    """
    frames, width = costs.shape
    moved = np.full(width, np.inf)
    stayed = moved.copy()
    moved[: OPEN_ENDS + 1] = costs[0, : OPEN_ENDS + 1]
    for row in costs[1:]:
        best = np.minimum(moved, stayed)
        further = np.full(width, np.inf)
        further[1:] = best[:-1]
        further[2:] = np.minimum(further[2:], best[:-2])
        stayed, moved = moved + row, further + row
    ends = np.minimum(moved, stayed)[-(OPEN_ENDS + 1) :]
    return float(min(NEVER, ends.min() / frames))
