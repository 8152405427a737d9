"""The ear for a worker's own words: it compares with their samples, and needs no model."""

from __future__ import annotations

import time
from collections.abc import Sequence
from typing import Final

import numpy as np

from kiosk.engine.commands import OWN_WORDS
from kiosk.languages.words import words
from kiosk.listening.ear import (
    DOUBTFUL,
    NOT_ALLOWED,
    NOTHING,
    TOO_SHORT,
    Ear,
    Heard,
    Utterance,
)
from kiosk.listening.own_words import MARGIN, TEACHABLE, Words
from kiosk.listening.templates import Sample, distances, sample_of

LEAST_LIMIT: Final = 0.25
"""A worker who says a word the same way three times may say it another way in a year."""
MOST_LIMIT: Final = 0.29
"""Chosen with people's digits, one sample each (see `tests/bench/bench_templates.py`): a hundredth
more and foreign words come in."""
SLACK: Final = 1.5
"""How much farther than its samples from each other a word may be."""


class TemplateEar:
    """An ear that answers with the commands that were taught, and with nothing else.

    Its name goes with each answer into the evidence, and by it the engine refuses the answers that
    carry a safety hold.
    """

    name = OWN_WORDS

    def __init__(self, taught: Words, language: str) -> None:
        """Take the samples of each word, by the name of its command."""
        self.language = language
        self._names = [word for word, samples in taught.items() if samples]
        self._phrases = {word: words(language).phrases(TEACHABLE[word]) for word in self._names}
        self._limits = {word: limit(taught[word]) for word in self._names}
        self._templates = [one for word in self._names for one in taught[word]]
        self._starts = np.cumsum([0, *(len(taught[word]) for word in self._names)])[:-1]

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        """Return which of `allowed` the whole utterance was; `phrase` is None when it was none.

        Words that were taught and are not allowed now are compared with all the same: they keep
        each other from being taken for one that is.
        """
        begun = time.perf_counter()
        text, phrase, sure, why = "", None, None, TOO_SHORT
        said = sample_of(utterance.samples)
        if said is not None and self._names:
            found = np.minimum.reduceat(distances(said, self._templates), self._starts)
            order = np.argsort(found)
            word, nearest = self._names[order[0]], float(found[order[0]])
            second = float(found[order[1]]) if len(order) > 1 else self._limits[word] / MARGIN
            why = NOTHING
            if nearest <= self._limits[word]:
                text, sure = self._phrases[word][0], max(0.0, 1.0 - nearest / max(second, 1e-6))
                phrase = next((one for one in allowed if one in self._phrases[word]), None)
                why = NOT_ALLOWED if phrase is None else ""
                if not why and nearest > MARGIN * second:
                    why = DOUBTFUL
        return Heard(
            text=text,
            phrase=None if why else phrase,
            confidence=sure,
            ear=self.name,
            why=why,
            decode_s=time.perf_counter() - begun,
            ended_at=utterance.ended_at,
        )


def limit(samples: Sequence[Sample]) -> float:
    """Return how far from its nearest sample a word may be, by how far they are from each other."""
    apart = [
        float(min(distances(one, [*samples[:place], *samples[place + 1 :]])))
        for place, one in enumerate(samples)
        if len(samples) > 1
    ]
    return min(MOST_LIMIT, max(LEAST_LIMIT, SLACK * max(apart, default=MOST_LIMIT)))


class WithOwnWords:
    """A model's ear, and the worker's own words for what the model makes nothing of."""

    def __init__(self, ear: Ear, own: TemplateEar) -> None:
        self.name = ear.name
        self.language = ear.language
        self._ear = ear
        self._own = own

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        """Ask the model first; what it doubts stays in doubt.

        A phrase that it found only at a second look gives way to one of the worker's own.
        """
        first = self._ear.hear(utterance, allowed)
        if first.why == DOUBTFUL or (first.phrase is not None and not first.at_second_look):
            return first
        second = self._own.hear(utterance, allowed)
        return first if second.phrase is None else second
