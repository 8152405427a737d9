"""Text laid out in terminal cells: sentences parted, lines wrapped and centred."""

from __future__ import annotations

import re
from typing import Final

from rich.cells import cell_len, set_cell_size

_SENTENCE_END: Final = re.compile(r"(?<=[.?!。？！])\s+")


def sentences(text: str) -> list[str]:
    """Part a text into its sentences."""
    return [one for one in _SENTENCE_END.split(text.strip()) if one]


def wrapped(text: str, width: int) -> list[str]:
    """Wrap a text into lines of at most `width` cells; wide characters count as two.

    A word that is wider than a line is broken.
    """
    width = max(2, width)
    lines: list[str] = []
    for paragraph in text.split("\n"):
        line = ""
        for word in paragraph.split():
            joined = f"{line} {word}" if line else word
            if cell_len(joined) <= width:
                line = joined
                continue
            if line:
                lines.append(line)
            *full, line = _pieces(word, width)
            lines.extend(full)
        lines.append(line)
    return lines


def _pieces(word: str, width: int) -> list[str]:
    pieces = [""]
    for letter in word:
        if cell_len(pieces[-1] + letter) > width:
            pieces.append("")
        pieces[-1] += letter
    return pieces


def balanced(text: str, width: int) -> list[str]:
    """Wrap a text into as few lines as `wrapped`, of lengths as even as may be."""
    best = wrapped(text, width)
    while len(best) > 1 and len(narrower := wrapped(text, width - 1)) == len(best):
        if _broken(text, narrower):
            break
        best, width = narrower, width - 1
    return best


def _broken(text: str, lines: list[str]) -> bool:
    """True when wrapping broke a word in two."""
    return " ".join(lines).split() != text.split()


def centred(text: str, width: int) -> str:
    """Pad a text to exactly `width` cells, centred; cut it when it is wider."""
    left = max(0, (width - cell_len(text)) // 2)
    return set_cell_size(" " * left + text, width)


def parted(text: str, cells: int) -> tuple[str, str]:
    """Part a text after so many cells; a wide character on the border goes to the right."""
    width = 0
    for place, letter in enumerate(text):
        width += cell_len(letter)
        if width > cells:
            return text[:place], text[place:]
    return text, ""


def spread(left: str, right: str, width: int) -> str:
    """Set two texts at the two ends of a line; the left one is shortened where both do not fit."""
    room = width - cell_len(right) - (2 if right else 0)
    if cell_len(left) > room:
        left = set_cell_size(left, max(0, room - 1)).rstrip() + "…"
    gap = max(0, width - cell_len(left) - cell_len(right))
    return set_cell_size(left + " " * gap + right, width)
