"""What each reason to doubt an answer is worth: `python -m tests.bench.bench_doubts en|ko`.

Every limit is judged alone. It is chosen on one half of the answers, where it may cost three in a
hundred of the right ones, and counted on the other half.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable, Iterator, Mapping, Sequence
from dataclasses import dataclass
from itertools import chain
from math import log10

from kiosk.listening.ear import Heard, Utterance
from kiosk.listening.grammar import Grammar
from kiosk.listening.list_ear import ListEar, Reading
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.thresholds import Thresholds
from tests.bench.ears_figures import hear, lists
from tests.speech.clips import Sound
from tests.speech.kitchen import mixed
from tests.speech.material import NOISES, VOICES, people, positives
from tests.speech.moments import phrases
from tests.speech.negatives import KINDS, negatives
from tests.speech.synth import speaker

ROOM_S = 90.0
"""Seconds of each kind of sound without phrases."""
MAY_COST = 0.03
USUAL_RATE = 4.0
"""Syllables a second: the median of what was rightly understood is 3 to 4."""


@dataclass(frozen=True, slots=True)
class Answer:
    """A reading that equals a phrase, and all that may speak against it."""

    right: bool
    phrase: str
    utterance: Utterance
    reading: Reading
    language: str

    @property
    def speech_s(self) -> float:
        return max(0.01, self.utterance.ended_at - self.utterance.began_at)

    @property
    def syllables(self) -> int:
        if self.language == "ko":
            return max(1, sum("가" <= one <= "힣" for one in self.phrase))
        vowels = "".join(one if one in "aeiouy" else " " for one in self.phrase)
        return max(1, len(vowels.split()))


def _above_room(one: Answer) -> float:
    return 20 * log10(max(one.utterance.speech_rms, 1e-6) / max(one.utterance.noise_rms, 1e-6))


DOUBTS: Mapping[str, Callable[[Answer], float]] = {
    "confidence at least": lambda one: one.reading.confidence or 0.0,
    "shortest word at least, s": lambda one: one.reading.shortest_s or 0.0,
    "words at least": lambda one: float(len(one.phrase.split())),
    "syllables a second at most": lambda one: -one.syllables / one.speech_s,
    "unexplained length at most, s": lambda one: one.syllables / USUAL_RATE - one.speech_s,
    "above the room at least, dB": _above_room,
}
"""Each reason as a number that grows with belief."""


class Witness:
    """An ear that keeps every reading that equals a phrase, whatever its limits."""

    def __init__(self, ear: ListEar) -> None:
        ear.thresholds = Thresholds()
        self.name, self.language = ear.name, ear.language
        self._ear = ear
        self.kept: list[tuple[Utterance, Reading]] = []

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        reading = self._ear.read(utterance, allowed)
        if reading.phrase is not None and not reading.at_second_look:
            self.kept.append((utterance, reading))
        return Heard(
            reading.text, reading.phrase, reading.confidence, self.name, "", 0.0, utterance.ended_at
        )


def answers(ear: ListEar) -> Iterator[Answer]:
    """Yield what the ear takes for a phrase, in the order of the material."""
    witness, language = Witness(ear), ear.language
    said = chain(positives(language, 6, 5), people() if language == "en" else ())
    for one in said:
        yield from _of(witness, one.sound, one.allowed, one.phrase)
    for number, (phrase, listed) in enumerate(phrases(language).items()):
        voice, rate, pitch = VOICES[language][number % len(VOICES[language])]
        sound = speaker().say(phrase, voice, rate, pitch)
        if number % 3 == 0:
            noise = list(NOISES.values())[number // 3 % len(NOISES)]
            sound = mixed(sound, noise(len(sound), number), 10)
        for allowed in lists(language).values():
            if listed[phrase] not in allowed.values():
                yield from _of(witness, sound, allowed, "")
    for kind in KINDS:
        for block in negatives(language, kind, ROOM_S):
            for name, allowed in lists(language).items():
                if (kind, name) != ("digits", "number"):
                    yield from _of(witness, block, allowed, "")


def _of(witness: Witness, sound: Sound, allowed: Grammar, phrase: str) -> Iterator[Answer]:
    witness.kept.clear()
    hear(witness, sound, allowed)
    for utterance, reading in witness.kept:
        found = reading.phrase or ""
        right = bool(phrase) and allowed[found] == allowed[phrase]
        yield Answer(right, found, utterance, reading, witness.language)


def main() -> None:
    """Print one line for each reason to doubt."""
    begun = time.perf_counter()
    ear = open_ear(sys.argv[1])
    if isinstance(ear, Missing):
        print(ear.mend)
        return
    if not isinstance(ear, ListEar):
        raise TypeError(f"{ear.name} does not answer from a list")
    found = list(answers(ear))
    right, wrong = ([one for one in found if one.right is is_right] for is_right in (True, False))
    print(f"{ear.name}: {len(right)} right answers, {len(wrong)} wrong ones")
    print("refused, of right and wrong answers, in the half that chose the limit and in the other")
    for name, belief in DOUBTS.items():
        halves = [
            [[belief(one) for one in side[half::2]] for side in (right, wrong)] for half in (0, 1)
        ]
        chosen = sorted(halves[0][0])
        limit = chosen[min(len(chosen) - 1, round(MAY_COST * len(chosen)))]
        counts = [
            f"{sum(value < limit for value in side)}/{len(side)}"
            for half in halves
            for side in half
        ]
        print(f"  {name} {abs(limit):.2f}:  {', '.join(counts[:2])};  {', '.join(counts[2:])}")
    print(f"{time.perf_counter() - begun:.0f} s")


if __name__ == "__main__":
    main()
