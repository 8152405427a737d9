"""What a phrase that was not heard at once is good for: to call or go back, not always to go on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from kiosk.engine import commands as c
from kiosk.listening.ear import DOUBTFUL, Heard

HARMLESS: Final = (c.SayAgain, c.CallProblem, c.NameReason, c.Pause, c.Back, c.No)
"""Acts that confirm nothing. The phrase of a hold is not among them: 'the machine does not stop'
fits the sound of 'the machine does not start' too well, and means the opposite."""

CONFIRMING: Final = (c.Confirm, c.GivePhrase, c.Yes, c.Read)
"""Acts that say that something is so. A single word that was understood only with the noise taken
out is none of them: in four hours of noise and of people who said something else, 'yes' and 'yeah'
came out of it once each, and no phrase of more words that confirms."""


def settled(heard: Heard, meanings: Mapping[str, object]) -> Heard:
    """Return what was heard, without a phrase where it was not heard well enough for that."""
    if heard.phrase is None:
        return heard
    means = meanings.get(heard.phrase)
    is_word = len(heard.phrase.split()) == 1
    doubted = (heard.at_second_look and not isinstance(means, HARMLESS)) or (
        heard.noise_removed and is_word and isinstance(means, CONFIRMING)
    )
    if not doubted:
        return heard
    return replace(heard, phrase=None, why=DOUBTFUL)
