"""What an ear is: it takes one utterance and says which allowed phrase it was, if any."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final, Protocol

import numpy as np
from numpy.typing import NDArray

RATE: Final = 16_000
"""Samples per second that every source gives and every ear takes."""

NOTHING: Final = "nothing"
NOT_ALLOWED: Final = "not allowed now"
TOO_SHORT: Final = "too short"
DOUBTFUL: Final = "doubtful"


@dataclass(frozen=True, slots=True)
class Utterance:
    """One stretch of speech between two silences."""

    samples: NDArray[np.float32]
    """Mono, 16 kHz, -1..1."""
    ended_at: float
    """Monotonic seconds: the end of the last frame that held speech."""
    decided_at: float
    """Monotonic seconds: when the gate let it go, or gave it out to be decoded early."""
    began_at: float
    """Monotonic seconds: the start of the first frame that surely held speech."""
    speech_rms: float = 0.0
    """Root mean square of the frames that held speech; 0 when it is not known."""
    noise_rms: float = 0.0
    """The same of the room before them; 0 when it is not known."""


@dataclass(frozen=True, slots=True)
class Fit:
    """How well the letters of a phrase lie in a sound. The logarithms are natural ones."""

    a_letter: float
    """Of its probability, beside that of the likeliest spelling whatever it spells, a letter."""
    above_rival: float
    """Of its probability, beside that of the likeliest other phrase; negative when that is more."""
    above_other: float
    """The same beside what was written down, and beside sentences that deny the phrase."""
    agreed: bool = True
    """Whether it is the likeliest phrase at every hearing, with the noise and without it."""


@dataclass(frozen=True, slots=True)
class Heard:
    """What an ear made of one utterance."""

    text: str
    """The engine's own reading, normalised; '' for nothing."""
    phrase: str | None
    """The allowed phrase it equals, exactly as it was given; None when rejected."""
    confidence: float | None
    """The engine's own, 0..1; None when it has none. Not comparable between engines."""
    ear: str
    """The model that heard, e.g. 'whisper-tiny.en'."""
    why: str
    """'' when accepted, else 'nothing', 'not allowed now', 'too short' or 'doubtful'."""
    decode_s: float
    """Seconds the engine took."""
    ended_at: float
    """The utterance's own `ended_at`."""
    at_second_look: bool = False
    """Whether the text is no phrase, and the phrase was found to fit the same sound as well."""
    noise_removed: bool = False
    """Whether it was understood only after the noise was taken out."""
    fit: Fit | None = None
    """How well the phrase fits, where the ear can tell."""


class Ear(Protocol):
    """A speech recogniser for one language that answers from a list and may reject."""

    name: str
    language: str

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        """Return which of `allowed` the whole utterance was; `phrase` is None when it was none."""
        ...
