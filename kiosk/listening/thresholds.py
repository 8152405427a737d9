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


def doubt(limits: Thresholds, confidence: float | None, shortest_s: float | None) -> str:
    """Return '' when what an engine read is believed, else 'doubtful'."""
    sure = 0.0 if confidence is None else confidence
    believed = sure >= limits.least_confidence and (
        shortest_s is None or shortest_s >= limits.least_word_s
    )
    return "" if believed else DOUBTFUL
