"""What makes an answer doubtful: one table of limits, and the one place that applies it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from kiosk.listening.ear import DOUBTFUL


@dataclass(frozen=True, slots=True)
class Thresholds:
    """The limits of one engine. The unset ones refuse nothing."""

    least_confidence: float = 0.0
    """Of the engine's own confidence; what has none is refused where this is set."""
    least_word_s: float = 0.0
    """Seconds of the shortest word, where the engine tells them."""


@dataclass(frozen=True, slots=True)
class Likeness:
    """The limits of a second look at text that is no phrase. Logarithms are natural ones."""

    least_spelling: float
    """Of the letters written down and the phrase's, 0..100."""
    least_mean: float
    """Of the mean logarithm of the probabilities of the phrase's words."""
    least_worst: float
    """Of the least likely of them."""
    most_below_written: float
    """By how much the mean may be less than that of the text that was written down."""
    least_above_rival: float
    """By how much the mean must be greater than that of every other phrase."""
    surest_written: float
    """Of the mean of the text that was written down: what was heard well is not misspelled."""


THRESHOLDS: Final[Mapping[str, Thresholds]] = MappingProxyType(
    {
        "whisper": Thresholds(least_confidence=0.12),
        "vosk": Thresholds(least_confidence=0.7, least_word_s=0.07),
    }
)
"""The limits that refuse more wrong answers than right ones.

`python -m tests.bench.bench_doubts` judges each limit alone: it is chosen on one half of the
material, where it may cost 3 % of the right answers, and counted on the other half.

Vosk, Korean, refused of 30 right and 8 wrong answers in the half that chose / in the other one:

    confidence under 0.7               3, 4 / 1, 3      kept
    and a word under 0.07 s            4, 4 / 2, 4      kept
    over 5.95 syllables a second       1, 2 / 0, 0      not confirmed
    longer than 4 syllables a second
      by 0.28 s                        1, 0 / 2, 2      no gain
    under 4 dB above the room          1, 0 / 0, 0      no gain

Whisper, English, of 170 right and 3 wrong answers: no limit refused a wrong one. But of 240
hearings of 'no' (40 human clips at three speeds, clean and in noise) one was read as 'yeah', with a
confidence of 0.0998; the least sure of six that were rightly read as 'yeah' had 0.38. 0.12 refuses
the one, and about 4 in 100 right answers. That the whole text must be a phrase does the rest.
"""

SECOND_LOOK: Final = Likeness(
    least_spelling=55.0,
    least_mean=-2.1,
    least_worst=-5.5,
    most_below_written=0.9,
    least_above_rival=1.0,
    surest_written=-0.2,
)
"""The limits under which a call is understood that was written down wrong.

Chosen on seven synthetic voices, and counted on three others with the 14 phrases of two words and
more that confirm nothing: understood clean 40 of 42 without and 41 with a second look, in a kitchen
at 10 dB 28 and 37; of 234 phrases of all kinds none was taken for another one.

A phrase 1 below the written text per word is still right more often than not, but 'the part is
wrong' is 'the part is good' at 0.99, 'the machine does not stop' is 'the machine does not start'
at 0.19 to 0.8, and 'ready to turn off' is 'ready to turn on' at 0.15 to 0.8. No limit tells these
apart and leaves the right ones: so a second look never confirms.
"""


def doubt(limits: Thresholds, confidence: float | None, shortest_s: float | None) -> str:
    """Return '' when what an engine read is believed, else 'doubtful'."""
    sure = 0.0 if confidence is None else confidence
    believed = sure >= limits.least_confidence and (
        shortest_s is None or shortest_s >= limits.least_word_s
    )
    return "" if believed else DOUBTFUL
