"""What a phrase that was not heard at once is good for: to call or go back, not always to go on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from kiosk.engine import commands as c
from kiosk.listening.ear import DOUBTFUL, Heard


class Opens:
    """Base of the choices beside an act that only open a question, or close one."""

    __slots__ = ()


HARMLESS: Final = (
    c.SayAgain, c.CallProblem, c.NameReason, c.Pause, c.Back, c.No, c.End, Opens,
)  # fmt: skip
"""Acts that confirm nothing; an end is asked once more. The phrase of a hold is not among them:
'the machine does not stop' fits the sound of 'the machine does not start' too well, and means the
opposite."""

READ_BACK: Final = (c.Read,)
"""Acts that count only once they were said back and a yes was heard."""

NEVER_BY_A_WORD: Final = (c.GivePhrase, c.Yes, c.Read)
"""Acts for which a single word is not enough that was understood only with the noise taken out. In
ten hours of noise and of people who said something else, 'no' came out of it seven times, 'yeah'
once, digits 74 times, and 'next' never."""


def settled(heard: Heard, meanings: Mapping[str, object]) -> Heard:
    """Return what was heard, without a phrase where it was not heard well enough for that."""
    if heard.phrase is None:
        return heard
    means = meanings.get(heard.phrase)
    is_word = len(heard.phrase.split()) == 1
    doubted = (heard.at_second_look and not _bears_a_second_look(means)) or (
        heard.noise_removed and is_word and isinstance(means, NEVER_BY_A_WORD)
    )
    if not doubted:
        return heard
    return replace(heard, phrase=None, why=DOUBTFUL)


def _bears_a_second_look(means: object) -> bool:
    if isinstance(means, c.HandOver):
        return not means.worker  # It asks who takes over.
    return isinstance(means, (*HARMLESS, *READ_BACK))
