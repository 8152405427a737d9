"""What was said and not taken: after how much of it touch is asked for, and what a hold is told."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from kiosk.listening.ear import DOUBTFUL, Heard
from kiosk.listening.nearly import nearly

_IN_A_ROW: Final = 2
"""Doubtful hearings in a row of one question after which the worker is asked to use the screen."""


class Doubts:
    """The doubts about one question."""

    def __init__(self) -> None:
        self.refused = ""
        """The last words that were not taken since the question was asked."""
        self._in_a_row = 0

    def not_taken(self, heard: Heard, phrases: Iterable[str]) -> bool:
        """Take an utterance that was none of the phrases; return whether to ask for touch."""
        doubtful = heard.why == DOUBTFUL
        self._in_a_row = self._in_a_row + 1 if doubtful else 0
        if doubtful or nearly(heard.text, phrases):
            self.refused = heard.text
        return self._in_a_row == _IN_A_ROW

    def acted(self) -> None:
        """Something was done; what was said before is out of the row."""
        self._in_a_row = 0

    def asked_anew(self) -> None:
        """Another question stands there."""
        self.refused = ""
