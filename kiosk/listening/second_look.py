"""A second look at text that is no phrase: does an allowed phrase fit the same sound as well?

A phrase is believed when the model finds its words likely in the sound, hardly less likely than
what it wrote down of itself, and much more likely than the words of any other phrase spelled alike.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from ctranslate2 import StorageView
from ctranslate2.models import Whisper
from rapidfuzz import fuzz
from tokenizers import Tokenizer

from kiosk.listening.thresholds import Likeness
from kiosk.listening.wording import NUMBER_WORDS, normal, said_once

NEAREST: Final = 4
"""Phrases that are scored: the most alike in spelling. Of 135 phrases of two words and more
that were written down wrong, 125 were among the first two."""
WORDS_LEAST: Final = 2
"""A phrase of one word is never believed at a second look: 'yet' fits a 'yeah' and 'nexus' a 'next'
within all the limits."""
MORE_WORDS: Final = 2
"""So many words more than a phrase has may be made of it by a noise."""
_DENIALS: Final = frozenset(
    ("no", "not", "none", "nothing", "never", "nobody", "without", "cannot")
)
_SMALLEST: Final = 1e-9


@dataclass(frozen=True, slots=True)
class Fit:
    """How well the words of a text fit a sound."""

    text: str
    mean: float
    """Mean natural logarithm of the probability of its tokens, the full stop included."""
    worst: float
    """The smallest of them, without the full stop."""


def may_be(written: str, phrase: str) -> bool:
    """Tell whether what was written down may be a misspelled `phrase`; both in normal form."""
    words = phrase.split()
    if len(words) < WORDS_LEAST or not NUMBER_WORDS.isdisjoint(words):
        return False
    return written != phrase and may_be_misheard(written, phrase)


def may_be_misheard(written: str, phrase: str) -> bool:
    """Tell whether `phrase` may have been said where something else was written down.

    Not when one of them denies what the other says, not when both are numbers, not when the phrase
    stands in what was written with something more, and not when that was a longer sentence. A
    single word may sound like a denial: 'no' and 'go'.
    """
    wrote, words = written.split(), normal(phrase).split()
    if written == " ".join(words):
        return True
    if not NUMBER_WORDS.isdisjoint(words) and not NUMBER_WORDS.isdisjoint(wrote):
        return False
    count = len(words)
    if len(said_once(written).split()) > count + MORE_WORDS:
        return False
    if any(wrote[at : at + count] == words for at in range(len(wrote) - count + 1)):
        return False
    return count == 1 or _DENIALS.intersection(wrote) == _DENIALS.intersection(words)


def nearest(written: str, allowed: Sequence[str]) -> list[tuple[float, str]]:
    """Return the phrases spelled most like `written`, each with its likeness 0..100, best first."""
    scored = [(fuzz.ratio(written, normal(one)), one) for one in allowed]
    return sorted(scored, reverse=True)[:NEAREST]


def believed(
    limits: Likeness, written: Fit, fits: Sequence[tuple[float, Fit]]
) -> tuple[str, float] | None:
    """Return the phrase that may be believed, with its confidence 0..1, or None.

    `fits` are the scored phrases, each with its likeness in spelling.
    """
    if not fits:
        return None
    ordered = sorted(fits, key=lambda one: one[1].mean, reverse=True)
    alike, best = ordered[0]
    rival = ordered[1][1].mean if len(ordered) > 1 else float("-inf")
    if (
        alike >= limits.least_spelling
        and best.mean >= limits.least_mean
        and best.worst >= limits.least_worst
        and written.mean - best.mean <= limits.most_below_written
        and best.mean - rival >= limits.least_above_rival
        and written.mean <= limits.surest_written
        and may_be(written.text, normal(best.text))
    ):
        return best.text, float(np.exp(best.mean))
    return None


class SecondLook:
    """Scores phrases against a sound that was encoded already."""

    def __init__(self, model: Whisper, tokenizer: Tokenizer, limits: Likeness) -> None:
        self._model = model
        self._tokenizer = tokenizer
        self._limits = limits
        self._start = [tokenizer.token_to_id("<|startoftranscript|>")]

    def find(
        self, encoded: StorageView, frames: int, wrote: Sequence[int], allowed: Sequence[str]
    ) -> tuple[str, float] | None:
        """Return the phrase of `allowed` that was said after all, with a confidence 0..1, or None.

        `encoded` is the encoder's output for one utterance of `frames` frames of features, and
        `wrote` the tokens that the model wrote down.
        """
        text = normal(self._tokenizer.decode(list(wrote), skip_special_tokens=True))
        near = nearest(text, allowed) if text else []
        if not any(
            alike >= self._limits.least_spelling and may_be(text, normal(one))
            for alike, one in near
        ):
            return None
        tokens = [list(wrote), *(self._written(one) for _, one in near)]
        many = StorageView.from_array(np.repeat(np.array(encoded), len(tokens), axis=0))
        scored = self._model.align(many, self._start, tokens, frames)
        texts = [text, *(one for _, one in near)]
        written, *fits = (
            _fit(one, found.text_token_probs) for one, found in zip(texts, scored, strict=True)
        )
        return believed(
            self._limits, written, [(a, fit) for (a, _), fit in zip(near, fits, strict=True)]
        )

    def _written(self, phrase: str) -> list[int]:
        """Return the tokens of a phrase as the model would write it: a sentence."""
        sentence = f" {phrase[:1].upper()}{phrase[1:].rstrip('.!?')}."
        ids: list[int] = self._tokenizer.encode(sentence, add_special_tokens=False).ids
        return ids


def _fit(text: str, probabilities: Sequence[float]) -> Fit:
    logs = np.log(np.maximum(np.array(probabilities, dtype=np.float64), _SMALLEST))
    return Fit(text, float(logs.mean()), float((logs[:-1] if len(logs) > 1 else logs).min()))
