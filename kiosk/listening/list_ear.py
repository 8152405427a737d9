"""The frame of every ear: what is too short, what the engine reads, what is believed of it."""

from __future__ import annotations

import time
from abc import ABC, abstractmethod
from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from kiosk.listening.ear import NOT_ALLOWED, NOTHING, RATE, TOO_SHORT, Fit, Heard, Utterance
from kiosk.listening.thresholds import Thresholds, doubt

SHORTEST_S: Final = 0.25
"""Shorter than any word with the gate's own margins around it."""


@dataclass(frozen=True, slots=True)
class Reading:
    """What an engine made of one utterance, before anything is believed of it."""

    text: str
    """The engine's own reading, normalised; '' for nothing."""
    phrase: str | None = None
    """The allowed phrase that the whole text equals, or was found at a second look."""
    confidence: float | None = None
    """The engine's own, 0..1; None when it has none."""
    shortest_s: float | None = None
    """Seconds of the shortest word, where the engine tells."""
    at_second_look: bool = False
    """Whether the phrase is not what the text says."""
    noise_removed: bool = False
    """Whether the text was written down after the noise was taken out."""
    fit: Fit | None = None
    """How well the phrase fits, where the engine can tell."""


class ListEar(ABC):
    """An ear that answers from a list: engines differ in `read` alone."""

    name: str
    language: str
    thresholds: Thresholds

    @abstractmethod
    def read(self, utterance: Utterance, allowed: Sequence[str]) -> Reading:
        """Return what the engine makes of an utterance."""

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        """Return which of `allowed` the whole utterance was; `phrase` is None when it was none."""
        begun = time.perf_counter()
        reading, phrase, why = Reading(""), None, TOO_SHORT
        if len(utterance.samples) >= SHORTEST_S * RATE:
            reading = self.read(utterance, allowed)
            phrase = reading.phrase
            if phrase is None:
                why = NOT_ALLOWED if reading.text else NOTHING
            elif reading.at_second_look:
                why = ""  # What it is good for depends on what it means: `settled`.
            else:
                why = doubt(self.thresholds, reading.confidence, reading.shortest_s)
        return Heard(
            text=reading.text,
            phrase=None if why else phrase,
            confidence=reading.confidence,
            ear=self.name,
            why=why,
            decode_s=time.perf_counter() - begun,
            ended_at=utterance.ended_at,
            at_second_look=reading.at_second_look,
            noise_removed=reading.noise_removed,
            fit=reading.fit,
        )
