"""Text laid out in terminal cells: sentences parted, lines wrapped and centred."""

from __future__ import annotations

import re
from typing import Final

from rich.cells import cell_len, set_cell_size

from kiosk.languages.line_parts import line_parts
from kiosk.languages.words import Words

_PART: Final = " · "
_SENTENCE_END: Final = re.compile(
    r"(?<=[.?!])\s+|(?<=[。？！])(?![”’）」』])\s*|(?<=[。？！][”’）」』])\s*"
)


def signalled(notice: str, words: Words) -> str:
    """Return a notice with the signal word before it; empty for none."""
    return f"{words.say('signal-notice')}: {notice}" if notice else ""


def sentences(text: str) -> list[str]:
    """Part a text into its sentences."""
    return [one for one in _SENTENCE_END.split(text.strip()) if one]


def wrapped(text: str, width: int) -> list[str]:
    """Wrap a text into lines of at most `width` cells; wide characters count as two.

    A word that is wider than a line is broken. Chinese is broken between its characters, with no
    mark at the beginning of a line that ends something.
    """
    width = max(2, width)
    lines: list[str] = []
    for paragraph in text.split("\n"):
        line = ""
        for blank, part in _parts(paragraph):
            joined = f"{line}{blank}{part}" if line else part
            if cell_len(joined) <= width:
                line = joined
                continue
            if line:
                lines.append(line)
            *full, line = _pieces(part, width)
            lines.extend(full)
        lines.append(line)
    return lines


def _parts(text: str) -> list[tuple[str, str]]:
    """Return what stays on one line, each with the blank before it."""
    return [
        ("" if place else " ", part)
        for word in text.split()
        for place, part in enumerate(line_parts(word))
    ]


def _pieces(word: str, width: int) -> list[str]:
    pieces = [""]
    for letter in word:
        if cell_len(pieces[-1] + letter) > width:
            pieces.append("")
        pieces[-1] += letter
    return pieces


def balanced(text: str, width: int) -> list[str]:
    """Wrap a text into as few lines as `wrapped`, of lengths as even as may be."""
    widest = max((cell_len(part) for _, part in _parts(text)), default=0)
    best = wrapped(text, width)
    while len(best) > 1 and widest < width:
        narrower = wrapped(text, width - 1)
        if len(narrower) != len(best):
            break
        best, width = narrower, width - 1
    return best


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
    """Set two texts at the two ends of a line; the left one is shortened where both do not fit.

    Of a text in parts the last ones go first, and whole.
    """
    room = width - cell_len(right) - (2 if right else 0)
    if cell_len(left) > room:
        *parts, last = left.split(_PART)
        while parts and cell_len(f"{_PART.join(parts)} …") > room:
            last = parts.pop()
        left = f"{_PART.join(parts)} …" if parts else f"{parted(last, max(0, room - 1))[0]}…"
    gap = max(0, width - cell_len(left) - cell_len(right))
    return set_cell_size(left + " " * gap + right, width)
