"""What a phrase that was found at a second look is good for: to call or go back, not to go on."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import replace
from typing import Final

from kiosk.engine import commands as c
from kiosk.listening.ear import DOUBTFUL, Heard

HARMLESS: Final = (c.SayAgain, c.CallProblem, c.NameReason, c.Pause, c.Back, c.No)
"""Acts that confirm nothing. The phrase of a hold is not among them: 'the machine does not stop'
fits the sound of 'the machine does not start' too well, and means the opposite."""


def settled(heard: Heard, meanings: Mapping[str, object]) -> Heard:
    """Return what was heard, without a phrase where a second look is not enough for its meaning."""
    if not heard.at_second_look or heard.phrase is None:
        return heard
    if isinstance(meanings.get(heard.phrase), HARMLESS):
        return heard
    return replace(heard, phrase=None, why=DOUBTFUL)
