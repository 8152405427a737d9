"""What a phrase that was not heard at once is good for: to call or go back, not always to go on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from kiosk.engine import commands as c
from kiosk.listening.ear import DOUBTFUL, Heard
from kiosk.listening.thresholds import (
    AT_FIRST,
    CALL,
    CONFIRMING_PHRASE,
    CONFIRMING_WORD,
    HOLD,
    HOLD_AT_FIRST,
    NUMBER,
    WORD,
    Likeness,
)


class Opens:
    """Base of the choices beside an act that only open a question, or close one."""

    __slots__ = ()


HARMLESS: Final = (
    c.SayAgain, c.CallProblem, c.NameReason, c.Pause, c.Back, c.No, c.End, Opens,
)  # fmt: skip
"""Acts that confirm nothing; an end is asked once more."""

CONFIRMING: Final = (c.Confirm, c.Yes, c.GivePhrase, c.Inspected, c.Resume)
"""Acts that go on. A phrase that was written down as something else does so only within narrow
limits; the phrase of a hold is said back in any case, and wants a yes."""

READ_BACK: Final = (c.Read,)
"""Acts that count only once they were said back and a yes was heard."""

NEVER_BY_A_WORD: Final = (c.GivePhrase, c.Yes, c.Read)
"""Acts for which a single word that was understood only with the noise taken out must fit as well
as one that was not read at all. In ten hours of noise and of people who said something else, 'no'
came out of it seven times, 'yeah' once, digits 74 times, and 'next' never."""


def settled(heard: Heard, meanings: Mapping[str, object]) -> Heard:
    """Return what was heard, without a phrase where it was not heard well enough for that."""
    if heard.phrase is None:
        return heard
    means = meanings.get(heard.phrase)
    is_word = len(heard.phrase.split()) == 1
    if heard.at_second_look or (
        heard.noise_removed and is_word and isinstance(means, NEVER_BY_A_WORD)
    ):
        limits = _limits(means, is_word)
        believed = limits is not None and heard.fit is not None and limits.holds(heard.fit)
    else:
        least = HOLD_AT_FIRST if isinstance(means, c.GivePhrase) else AT_FIRST
        unsure = heard.fit is not None and not least.holds(heard.fit)
        believed = not (unsure and isinstance(means, CONFIRMING))
    return heard if believed else replace(heard, phrase=None, why=DOUBTFUL)


def _limits(means: object, is_word: bool) -> Likeness | None:
    """Return how well a phrase must fit that was not read at once; None: it never does."""
    if isinstance(means, c.GivePhrase):
        return HOLD
    if isinstance(means, CONFIRMING):
        return CONFIRMING_WORD if is_word else CONFIRMING_PHRASE
    if isinstance(means, READ_BACK):
        return WORD if is_word else NUMBER
    asks_who = isinstance(means, c.HandOver) and not means.worker
    if isinstance(means, HARMLESS) or asks_who:
        return WORD if is_word else CALL
    return None
