"""What makes an answer doubtful: one table of limits, and the one place that applies it."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from kiosk.listening.ear import DOUBTFUL, Fit


@dataclass(frozen=True, slots=True)
class Thresholds:
    """The limits of one engine. The unset ones refuse nothing."""

    least_confidence: float = 0.0
    """Of the engine's own confidence; what has none is refused where this is set."""
    least_word_s: float = 0.0
    """Seconds of the shortest word, where the engine tells them."""


@dataclass(frozen=True, slots=True)
class Likeness:
    """The limits within which a phrase fits a sound. Logarithms are natural ones."""

    a_letter: float
    """The least of `Fit.a_letter`."""
    above_rival: float = 0.0
    """The least of `Fit.above_rival`."""
    above_other: float = float("-inf")
    """The least of `Fit.above_other`."""
    agreed: bool = False
    """Whether all hearings must agree."""

    def holds(self, fit: Fit) -> bool:
        """Tell whether a phrase that fits so is within the limits."""
        return (
            fit.a_letter >= self.a_letter
            and fit.above_rival >= self.above_rival
            and fit.above_other >= self.above_other
            and (fit.agreed or not self.agreed)
        )


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

DENIED: Final = -5.0
"""Of `Fit.above_rival`, under which what was written down is not believed: another phrase is heard
so much more likely."""

AT_FIRST: Final = Likeness(a_letter=-2.5)
"""What is written down as a phrase that confirms must fit so well at least."""
HOLD_AT_FIRST: Final = Likeness(a_letter=-1.0, above_other=0.0)
"""And as the phrase of a hold: of 91 that were read rightly the worst fitted at 0.39 below. 'the
machine does not stop' was written down as 'does not start' seven times in 42 noisy hearings, and
fitted at 0.67 to 2.33 below."""

POSSIBLE: Final = Likeness(a_letter=-3.0, above_rival=5.0, above_other=0.0)
"""What is written down as no phrase must fit one so well at least, to be a doubtful hearing of it
and not something else."""

CALL: Final = Likeness(a_letter=-3.0, above_rival=20.0, above_other=1.0)
NUMBER: Final = Likeness(a_letter=-1.8, above_rival=5.0, above_other=0.0)
WORD: Final = Likeness(a_letter=-0.5, above_rival=10.0, above_other=8.0)
"""For a call or a number of a single word."""
CONFIRMING_PHRASE: Final = Likeness(-1.5, above_rival=20.0, above_other=10.0, agreed=True)
HOLD: Final = Likeness(-0.5, above_rival=20.0, above_other=10.0, agreed=True)
"""For the phrase of a hold: 'ready to turn off' fits 'ready to turn on', which the letters have not
learned, at 1.38 below."""
CONFIRMING_WORD: Final = Likeness(-0.5, above_rival=10.0, above_other=10.0, agreed=True)
"""The limits under which a phrase is understood that was written down wrong, by what it means.

Chosen on every phrase (1,512 clips) and sampled number (1,372) in 14 voices, clean and in a kitchen
at 10 dB; on 896 hearings of hold phrases and their opposites; and on people who say other things.
`python -m tests.bench.bench_phrases` counts in other noise, `bench_tally` in ten hours of sound.

Of 672 hearings of an opposite ('i never found everything in place') one fits the hold's phrase
better than what denies it, at 2.35 below; of 224 of the phrases themselves 221 fit. So a hold's
phrase may be understood at a second look; it is said back, and wants a yes, like any other.

Of people who said something else no phrase of several words that goes on fitted within the limits
beside its rivals. Single words lie in much: 'yeah' was written down of sounds whose letters fit at
-2.6 to -7.8, and rightly of those that fit at -2.4 or more, but for one in a hundred. What was
written down is denied where another phrase fits so much better: of 9 numbers that were misread 8
are, and of 879 that were read rightly one.

Given up: the model's own probability of each phrase. Forced to choose, at 10 dB, it finds 89 in 100
phrases of statistical voices and 97 of formant ones; the letters find all 540.
"""


def doubt(limits: Thresholds, confidence: float | None, shortest_s: float | None) -> str:
    """Return '' when what an engine read is believed, else 'doubtful'."""
    sure = 0.0 if confidence is None else confidence
    believed = sure >= limits.least_confidence and (
        shortest_s is None or shortest_s >= limits.least_word_s
    )
    return "" if believed else DOUBTFUL
