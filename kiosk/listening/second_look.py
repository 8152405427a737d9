"""A second look: how well the letters of a phrase lie in the sound, whatever was written down.

It finds the phrase in what the model wrote down wrong, and doubts what it wrote down rashly.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Final

import numpy as np
from numpy.typing import NDArray
from rapidfuzz import fuzz

from kiosk.listening.ear import Fit
from kiosk.listening.letters import Letters, free, likelihoods, spelled, spelling
from kiosk.listening.misheard import DENIALS, value
from kiosk.listening.thresholds import Likeness
from kiosk.listening.wording import normal, said_once

NEAREST: Final = 24
"""Phrases that are scored: those most alike in spelling to what was spelled or written down."""
_PREFIXES: Final = ("dis", "un", "mis")
_PREFIXED: Final = 4
"""Letters that stay of a word whose prefix is taken off."""
_NOBODY: Final = {"everything": "nothing", "everyone": "no one", "everybody": "nobody"}

Frames = NDArray[np.floating]


class SecondLook:
    """Scores phrases against sounds that were encoded already."""

    def __init__(self, letters: Letters, limits: Likeness) -> None:
        """Look with `letters`; what does not fit within `limits` is not found."""
        self._letters = letters
        self._limits = limits

    def fit(
        self, hearings: Sequence[Frames], phrase: str, texts: Sequence[str], allowed: Sequence[str]
    ) -> Fit:
        """Return how well a phrase of `allowed` lies in the last of some hearings of one utterance.

        `texts` is what was written down at every hearing, in normal form.
        """
        said = [self._letters(one) for one in hearings]
        bests = [self._best(one, texts, allowed) for one in said]
        return self._measured(said[-1], phrase, texts, allowed, all(b == phrase for b in bests))

    def find(
        self, hearings: Sequence[Frames], texts: Sequence[str], allowed: Sequence[str]
    ) -> tuple[str, Fit] | None:
        """Return the phrase of `allowed` that fits the last hearing best, and how well it does.

        None when none fits, and when nothing was written down: that is no speech.
        """
        if not allowed or not any(texts):
            return None
        said = [self._letters(one) for one in hearings]
        *others, best = [self._best(one, texts, allowed) for one in said]
        fit = self._measured(said[-1], best, texts, allowed, all(one == best for one in others))
        return (best, fit) if self._limits.holds(fit) else None

    def _best(self, said: NDArray[np.float64], texts: Sequence[str], allowed: Sequence[str]) -> str:
        near = nearest([spelled(said), *texts], allowed)
        return near[int(likelihoods(said, [normal(one) for one in near]).argmax())]

    def _measured(
        self,
        said: NDArray[np.float64],
        phrase: str,
        texts: Sequence[str],
        allowed: Sequence[str],
        agreed: bool,
    ) -> Fit:
        plain = normal(phrase)
        rivals = [
            normal(one)
            for one in nearest([spelled(said), *texts], allowed)
            if not same(normal(one), plain)
        ]
        wrote = [one for one in texts if spelling(one) and said_once(one) != plain]
        others = [one for one in (*wrote, *denials(plain)) if one not in (plain, *rivals)]
        own, *scores = likelihoods(said, [plain, *rivals, *others]).tolist()
        return Fit(
            a_letter=(own - free(said)) / max(1, len(spelling(plain))),
            above_rival=own - max(scores[: len(rivals)], default=float("-inf")),
            above_other=own - max(scores[len(rivals) :], default=float("-inf")),
            agreed=agreed,
        )


def nearest(texts: Sequence[str], allowed: Sequence[str]) -> list[str]:
    """Return the phrases spelled most like one of some texts, the best first."""

    def likeness(phrase: str) -> float:
        return max(fuzz.ratio(one, normal(phrase)) for one in texts)

    return sorted(allowed, key=likeness, reverse=True)[:NEAREST]


def same(one: str, other: str) -> bool:
    """Tell whether two phrases in normal form are the same, or two ways to say one number."""
    number = value(one.split())
    return one == other or (bool(number) and number == value(other.split()))


def denials(phrase: str) -> Iterator[str]:
    """Yield what denies a phrase in normal form by little: its negation put in or taken out."""
    words = phrase.split()
    for at, word in enumerate(words):
        before, after = words[:at], words[at + 1 :]
        yield " ".join([*before, "not", word, *after])
        if word in DENIALS and len(words) > 1:
            yield " ".join([*before, *after])
        if word in _NOBODY:
            yield " ".join([*before, _NOBODY[word], *after])
        for prefix in _PREFIXES:
            if word.startswith(prefix) and len(word) >= len(prefix) + _PREFIXED:
                yield " ".join([*before, word.removeprefix(prefix), *after])
