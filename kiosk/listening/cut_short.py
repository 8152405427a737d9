"""What a worker may say into a prompt, so that it stops and the worker is obeyed."""

from __future__ import annotations

from typing import Final

from kiosk.engine import commands as c
from kiosk.listening.turn import Meanings
from kiosk.listening.wording import normal

CUTS: Final = (c.SayAgain, c.CallProblem, c.Pause, c.Back, c.No)
"""Acts that confirm nothing. What was left of the kiosk's own voice could at worst make it say
something again, step back or stop, and never go on. `next`, `yes`, the phrase of a hold, a finding
and a number confirm, and nobody has heard the whole question while it is still being asked."""


def cuts(meanings: Meanings, prompt: str) -> frozenset[str]:
    """Return the phrases that may cut this prompt short.

    Never one that stands in the prompt itself, in its words and their order: that may be the
    loudspeaker.
    """
    said = _words(prompt)
    return frozenset(
        phrase
        for phrase, act in meanings.items()
        if isinstance(act, CUTS) and not _within(_words(phrase), said)
    )


def _words(text: str) -> list[str]:
    return normal(text).split()


def _within(phrase: list[str], said: list[str]) -> bool:
    """Tell whether the words stand in a row.

    Korean hangs particles on a word, so the last one may go on where it is not plain ASCII.
    """
    count = len(phrase)
    return count > 0 and any(
        said[at : at + count - 1] == phrase[:-1] and _same(phrase[-1], said[at + count - 1])
        for at in range(len(said) - count + 1)
    )


def _same(word: str, said: str) -> bool:
    return said == word if word.isascii() else said.startswith(word)
