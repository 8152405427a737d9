"""A text put together by touch: first a group of letters, then the letter.

Two taps for a letter keep each key at 18 columns by 3 rows, where a key for each letter would have
6 of the 60 columns that the kiosk must get along with.
"""

from __future__ import annotations

from dataclasses import dataclass, replace
from typing import Final

GROUPS: Final = (
    "abcde", "fghij", "klmno", "pqrst", "uvwxyz", "áéíóúüñ", "àâãäçêôõö", "0123456789",
    "-'.,&/():#",
)  # fmt: skip
"""The letters of English, Spanish and Portuguese, and of most names written in Latin letters."""
SPACE: Final = " "
SHIFT: Final = "shift"
RUB_OUT: Final = "backspace"
OTHER_LETTERS: Final = "other letters"
MOST_LETTERS: Final = 40
"""Longer names would be cut on the board."""


@dataclass(frozen=True, slots=True)
class Keyboard:
    """What was typed, and which letters the keys show."""

    text: str = ""
    group: str = ""
    """The letters that the keys show; empty while they show the groups."""
    shifted: bool = False
    """True when the next letter has the other case than it would have."""
    each_word: bool = False
    """True where each word begins with a capital letter, as names of people do."""

    @property
    def capital(self) -> bool:
        """True when the next letter is a capital one."""
        begins = not self.text or (self.each_word and self.text[-1] in " -")
        return begins is not self.shifted

    @property
    def keys(self) -> tuple[str, ...]:
        """What the keys show now: groups, or the letters of one."""
        shown = self.group if self.group else GROUPS
        return tuple(self.cased(one) for one in shown)

    def cased(self, letters: str) -> str:
        """Return letters in the case in which they would be typed."""
        return letters.upper() if self.capital else letters

    def press(self, key: str) -> Keyboard:
        """Return what is there after a key: a group, a letter, or one of the names above."""
        match key:
            case "backspace":
                return replace(self, text=self.text[:-1], group="", shifted=False)
            case "shift":
                return replace(self, shifted=not self.shifted)
            case "other letters":
                return replace(self, group="")
        if len(key) > 1:
            return replace(self, group=key.lower())
        return self.type(key)

    def type(self, letters: str) -> Keyboard:
        """Return what is there after letters as they are, from a real keyboard or a paste."""
        seen = "".join(one for one in letters if one.isprintable())
        text = (self.text + seen)[:MOST_LETTERS]
        # A name does not begin with a space, nor has it two of them in a row.
        text = text.lstrip(SPACE).replace(SPACE * 2, SPACE)
        return replace(self, text=text, group="", shifted=False)

    @property
    def name(self) -> str:
        """The finished text."""
        return self.text.strip()
