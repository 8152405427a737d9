"""Splits a written word into the pieces a speech model knows it by.

A Korean model's vocabulary holds stems and endings apart ('닫았', '어요'), while people write and
read them together ('닫았어요').
"""

from __future__ import annotations

import re
from collections.abc import Callable
from typing import Final

MOST_PIECES: Final = 3
"""A stem and two endings; anything could be spelt syllable by syllable, but is not said so."""

_CHINESE: Final = re.compile("[\u4e00-\u9fff]+")
"""Chinese has no blanks between its words, and each character is said as it is said alone: there
the whole phrase may be parted, character by character if need be."""


def pieces(word: str, known: Callable[[str], bool]) -> tuple[str, ...]:
    """Return the fewest known pieces that make up `word`, the first one longest; () for none."""
    limit = len(word) if _CHINESE.fullmatch(word) else MOST_PIECES
    for most in range(1, limit + 1):
        found = _split(word, known, most)
        if found:
            return found
    return ()


def _split(word: str, known: Callable[[str], bool], most: int) -> tuple[str, ...]:
    if known(word):
        return (word,)
    if most == 1:
        return ()
    for cut in range(len(word) - 1, 0, -1):
        if known(word[:cut]):
            rest = _split(word[cut:], known, most - 1)
            if rest:
                return (word[:cut], *rest)
    return ()


def squeezed(text: str) -> str:
    """Return `text` without its spaces, so that pieces and words compare equal."""
    return "".join(text.split())
