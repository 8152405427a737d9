"""A second look at text that is no phrase: does an allowed phrase fit the same sound as well?

A phrase is believed when the model finds its words not much less likely in the sound than what it
wrote down of itself, and more likely than the words of any other phrase.
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

NEAREST: Final = 10
"""Phrases that are scored: the most alike in spelling. Of 504 phrases and numbers that were written
down wrong 452 were among them; lists without numbers are hardly longer."""
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
    """Tell whether `phrase` may be what was written down as something else; both in normal form.

    Not when one of them denies what the other says, not when the phrase stands in what was written
    with something more, and not when that was a longer sentence.
    """
    words = phrase.split()
    return (
        len(words) >= WORDS_LEAST
        and written != phrase
        and not _says_more(written, words)
        and _denied(written.split()) == _denied(words)
    )


def may_be_misheard(written: str, phrase: str) -> bool:
    """Tell whether `phrase`, heard without the noise, may be what was written down in the noise.

    As for a second look; but two numbers are never the same, and a single word may sound like a
    denial: 'no' and 'go'.
    """
    words = normal(phrase).split()
    if written == " ".join(words):
        return True
    if value(words) and value(written.split()):
        return False
    if _says_more(written, words):
        return False
    return len(words) == 1 or _denied(written.split()) == _denied(words)


def value(words: Sequence[str]) -> tuple[str, ...]:
    """Return those of some words that make a number, its sign and its point too; () for none."""
    if NUMBER_WORDS.isdisjoint(words):
        return ()
    return tuple(one for one in words if one in NUMBER_WORDS or one in ("minus", "point"))


def _says_more(written: str, words: list[str]) -> bool:
    wrote, count = written.split(), len(words)
    within = any(wrote[at : at + count] == words for at in range(len(wrote) - count + 1))
    return within or len(said_once(written).split()) > count + MORE_WORDS


def _denied(words: Sequence[str]) -> frozenset[str]:
    return _DENIALS.intersection(words)


def nearest(written: Sequence[str], allowed: Sequence[str]) -> list[str]:
    """Return the phrases spelled most like one of the texts that were written, the best first."""

    def likeness(phrase: str) -> float:
        return max(fuzz.ratio(one, normal(phrase)) for one in written)

    return sorted(allowed, key=likeness, reverse=True)[:NEAREST]


def believed(limits: Likeness, written: Fit, fits: Sequence[Fit]) -> Fit | None:
    """Return the fit of all phrases that were scored that may be believed, or None."""
    if not fits:
        return None
    best, *others = sorted(fits, key=lambda one: one.mean, reverse=True)
    number = value(normal(best.text).split())
    rival = next(
        (one.mean for one in others if not number or value(normal(one.text).split()) != number),
        float("-inf"),
    )
    if (
        best.worst >= limits.least_worst
        and written.mean - best.mean <= limits.most_below_written
        and best.mean - rival >= limits.least_above_rival
    ):
        return best
    return None


class SecondLook:
    """Scores phrases against a sound that was encoded already."""

    def __init__(self, model: Whisper, tokenizer: Tokenizer, limits: Likeness) -> None:
        self._model = model
        self._tokenizer = tokenizer
        self._limits = limits
        self._start = [tokenizer.token_to_id("<|startoftranscript|>")]

    def find(
        self,
        encoded: StorageView,
        frames: int,
        wrote: Sequence[int],
        texts: Sequence[str],
        allowed: Sequence[str],
    ) -> tuple[str, float] | None:
        """Return the phrase of `allowed` that was said after all, with a confidence 0..1, or None.

        `encoded` is the encoder's output for one utterance of `frames` frames of features, `wrote`
        the tokens that the model wrote down of it, and `texts` what was written at every hearing,
        in normal form.
        """
        near = nearest(texts, allowed)
        may = [one for one in near if all(text and may_be(text, normal(one)) for text in texts)]
        if not may:
            return None
        tokens = [list(wrote), *(self._written(one) for one in near)]
        many = StorageView.from_array(np.repeat(np.array(encoded), len(tokens), axis=0))
        scored = self._model.align(many, self._start, tokens, frames)
        written, *fits = (
            _fit(one, found.text_token_probs)
            for one, found in zip([texts[-1], *near], scored, strict=True)
        )
        best = believed(self._limits, written, fits)
        return (best.text, float(np.exp(best.mean))) if best and best.text in may else None

    def _written(self, phrase: str) -> list[int]:
        """Return the tokens of a phrase as the model would write it: a sentence."""
        sentence = f" {phrase[:1].upper()}{phrase[1:].rstrip('.!?')}."
        ids: list[int] = self._tokenizer.encode(sentence, add_special_tokens=False).ids
        return ids


def _fit(text: str, probabilities: Sequence[float]) -> Fit:
    logs = np.log(np.maximum(np.array(probabilities, dtype=np.float64), _SMALLEST))
    return Fit(text, float(logs.mean()), float((logs[:-1] if len(logs) > 1 else logs).min()))
