"""Lines of text that fit a width, without a font to measure by."""

from __future__ import annotations

import unicodedata

from kiosk.languages.line_parts import line_parts

_WIDE = 1.0
_CAPITAL = 0.72
_NARROW = 0.34
_COMMON = 0.57
"""Widths in em, estimated from common sans-serif faces, a little on the wide side."""

BOLD = 1.08
"""How much wider bold letters are, estimated."""


def width(text: str) -> float:
    """Return the estimated width of a text in em."""
    return sum(_of(character) for character in text)


def wrap(text: str, most: float) -> list[str]:
    """Break a text into lines of at most `most` em, at spaces and between Chinese characters.

    A longer word is cut.
    """
    lines: list[str] = []
    line = ""
    for word in text.split():
        for place, part in enumerate(line_parts(word)):
            blank = " " if line and not place else ""
            if width(line + blank + part) <= most:
                line += blank + part
                continue
            if line:
                lines.append(line)
            *whole, line = _cut(part, most)
            lines += whole
    return [*lines, line] if line else lines


def _cut(word: str, most: float) -> list[str]:
    pieces = [""]
    for character in word:
        if pieces[-1] and width(pieces[-1] + character) > most:
            pieces.append("")
        pieces[-1] += character
    return pieces


def _of(character: str) -> float:
    if unicodedata.east_asian_width(character) in "WF":
        return _WIDE
    if unicodedata.combining(character):
        return 0.0
    if character in "mw%@" or (character.isupper() and character != "I"):
        return _CAPITAL
    return _NARROW if character in " iljtfI.,:;'|!()[]" else _COMMON
