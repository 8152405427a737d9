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

    least_worst: float
    """Of the logarithm of the probability of a phrase's least likely word."""
    most_below_written: float
    """By how much its mean may be less than that of the text that was written down."""
    least_above_rival: float
    """By how much its mean must be greater than that of every other phrase."""


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

SECOND_LOOK: Final = Likeness(least_worst=-7.0, most_below_written=1.6, least_above_rival=1.0)
"""The limits under which a phrase is understood that was written down wrong.

Chosen on 18 synthetic voices, and counted on 14 others, clean and in a kitchen at 10 dB, with the
phrases of all lists (267 and 238 clips) and with numbers (224 and 248 clips). Understood without
the noise removed from what is scored, among the four phrases spelled most alike and with tighter
limits, as it was before / as it is:

    phrases  clean 242 / 254    10 dB 170 / 187    taken for another one  0 / 0
    numbers  clean 176 / 199    10 dB 131 / 163    taken for another one  3 / 3

Of 871 things that people, talk, prompts and digits say in an hour, in noise at 30 to 10 dB, none
was taken for a phrase or a number. At 2.0 below the written text 'six' is 'sixty-six', and where a
rival may be as near as 0.7 'take' is 'take a break'.

No limit makes a hold safe: 'the part is wrong' is 'the part is good' at 0.99 below, 'the machine
does not stop' is 'the machine does not start' at 0.19 to 0.8, and 'ready to turn off' is 'ready to
turn on' at 0.15 to 0.8. So a second look never confirms by itself: it calls, it asks, and it reads
a number that is said back.

Given up: RNNoise and DeepFilterNet instead of the Wiener filter (of 366 clips at 10 dB that were
not understood at once 58 and 62 were, for 87, and three were taken for another one); and asking how
much likelier a phrase is in the sound than in noise alone (of 105 calls 83 for 80).
"""


def doubt(limits: Thresholds, confidence: float | None, shortest_s: float | None) -> str:
    """Return '' when what an engine read is believed, else 'doubtful'."""
    sure = 0.0 if confidence is None else confidence
    believed = sure >= limits.least_confidence and (
        shortest_s is None or shortest_s >= limits.least_word_s
    )
    return "" if believed else DOUBTFUL
