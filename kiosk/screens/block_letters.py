"""Text in large letters drawn with block characters, four rows high; accents take a fifth."""

from __future__ import annotations

import unicodedata
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from functools import cache, lru_cache
from importlib.resources import files
from itertools import pairwise
from typing import Final

ROWS: Final = 4
"""Rows of a line without accents."""

_HIGH: Final = 2 * ROWS
_BETWEEN: Final = 1
"""Dots between two letters."""
_SPACE: Final = 4
"""Dots of a space, besides those between letters."""

_LOW_TOP: Final = 2
"""The row of dots in which small letters begin."""
_QUARTERS: Final = " ▘▝▀▖▌▞▛▗▚▐▜▄▙▟█"
"""By the sum of 1 upper left, 2 upper right, 4 lower left, 8 lower right."""

_ABOVE: Final[Mapping[str, tuple[str, ...]]] = {
    "\N{COMBINING ACUTE ACCENT}": ("..##", ".##."),
    "\N{COMBINING GRAVE ACCENT}": ("##..", ".##."),
    "\N{COMBINING CIRCUMFLEX ACCENT}": ("..##..", "##..##"),
    "\N{COMBINING TILDE}": (".###..##", "##..###."),
    "\N{COMBINING DIAERESIS}": ("##..##",),
    "\N{COMBINING BREVE}": ("##..##", "..##.."),
    "\N{COMBINING HOOK ABOVE}": ("####", "..##", ".##."),
}
_BELOW: Final[Mapping[str, tuple[str, ...]]] = {
    "\N{COMBINING CEDILLA}": ("..##",),
    "\N{COMBINING DOT BELOW}": ("..", "##"),
}
_MARKED: Final = frozenset("aceinouyACEINOUY")
"""Letters that leave room for an accent."""
_PARTED: Final = frozenset("\N{COMBINING DOT BELOW}\N{COMBINING HOOK ABOVE}\N{COMBINING HORN}đĐ")
"""What tells Vietnamese, which has them in nearly every sentence."""
_HORN: Final = "\N{COMBINING HORN}"


@dataclass(frozen=True, slots=True)
class Glyph:
    """A letter in dots: rows of equal width, `#` for a dot that is set."""

    rows: tuple[str, ...]
    top: int = 0
    """The row of the first one: 0 is the top of a capital, and accents lie above it."""

    @property
    def width(self) -> int:
        """Dots from left to right."""
        return len(self.rows[0])

    def row(self, number: int) -> str:
        """Return the dots of a row; empty ones outside the letter."""
        place = number - self.top
        return self.rows[place] if 0 <= place < len(self.rows) else "." * self.width

    @property
    def bottom(self) -> int:
        """The row under the last one."""
        return self.top + len(self.rows)


@cache
def _drawn() -> Mapping[str, Glyph]:
    """Return the letters of the drawing."""
    text = files("kiosk.screens").joinpath("block_letters.txt").read_text(encoding="utf-8")
    bands = [one.split("\n") for one in text.strip().split("\n\n")[1:]]
    return {
        letter: Glyph(tuple(dots))
        for first, *rest in bands
        for letter, *dots in zip(first.split(), *(row.split() for row in rest), strict=True)
    }


@cache
def glyph(letter: str) -> Glyph | None:
    """Return a letter with its accents; None where it cannot be drawn rightly."""
    drawn = _drawn()
    if letter in drawn:
        return drawn[letter]
    base, *marks = list(unicodedata.normalize("NFD", letter))
    above = [_ABOVE[one] for one in marks if one in _ABOVE]
    known = all(one in _ABOVE or one in _BELOW or one == _HORN for one in marks)
    if not marks or not known or base not in _MARKED:
        return None
    found = drawn["ı" if base == "i" and above else base]
    for mark in marks:
        if mark in _BELOW:
            found = _put(found, _BELOW[mark], _HIGH - 1)
        elif mark == _HORN:
            found = _horned(found)
    top = _LOW_TOP if base.islower() else 0
    if base.isupper() and above:
        found, top = _lowered(found), 1
    for rows in above:
        top -= len(rows) + 1
        found = _put(found, rows, top)
    return found


def _put(on: Glyph, rows: Sequence[str], top: int) -> Glyph:
    """Put a mark over the middle of a letter."""
    width = max(on.width, len(rows[0]))
    mark = Glyph(tuple(_middle(row, width) for row in rows), top)
    letter = Glyph(tuple(_middle(row, width) for row in on.rows), on.top)
    first, last = min(top, on.top), max(mark.bottom, on.bottom)
    return Glyph(tuple(_both(mark.row(at), letter.row(at)) for at in range(first, last)), first)


def _lowered(on: Glyph) -> Glyph:
    """Take a row out of a capital, where two are alike: room for the gap under its accent."""
    pairs = enumerate(pairwise(on.rows))
    at = next((place for place, (one, other) in pairs if one == other), 2)
    return Glyph((*on.rows[:at], *on.rows[at + 1 :]), on.top + 1)


def _middle(row: str, width: int, step: int = 1) -> str:
    left = (width - len(row)) // 2 // step * step
    return "." * left + row + "." * (width - len(row) - left)


def _both(one: str, other: str) -> str:
    return "".join("#" if "#" in pair else "." for pair in zip(one, other, strict=True))


def _horned(on: Glyph) -> Glyph:
    """Add the horn of ơ and ư at the upper right."""
    at = on.top + next(place for place, row in enumerate(on.rows) if "#" in row)
    horn = {at - 1: ".##", at: "##."}
    rows = [
        on.row(number)[:-1] + _both(horn.get(number, "..."), on.row(number)[-1] + "..")
        for number in range(min(on.top, at - 1), on.bottom)
    ]
    return Glyph(tuple(rows), min(on.top, at - 1))


@lru_cache(maxsize=512)
def large(text: str, width: int) -> tuple[str, ...] | None:
    """Return a text in large letters: rows of the same length, at most `width` cells.

    Its lines are evenly filled, and stand in the middle of the rows. None where a letter cannot be
    drawn, or a word is wider than a line.
    """
    words = text.split()
    if not words or any(glyph(one) is None for word in words for one in word):
        return None
    most = 2 * width
    if max(map(_long, words)) > most:
        return None
    best = _filled(words, most)
    while len(best) > 1 and max(map(_long, words)) < most:
        most -= 2
        narrower = _filled(words, most)
        if len(narrower) > len(best):
            break
        best = narrower
    # Where letters have dots below, none above a line may be taken for one of them.
    deep = _HIGH if _PARTED.isdisjoint(unicodedata.normalize("NFD", text)) else _HIGH + 2
    lines = [_dots(line, deep) for line in best]
    widest = max(len(line[0]) for line in lines)
    # A line begins with a whole cell.
    lines = [[_middle(row, widest + widest % 2, 2) for row in line] for line in lines]
    dots = lines[0]
    for line in lines[1:]:
        touching = _touch(dots[-1], line[0])
        dots = [*dots, *["." * len(line[0])] * (2 * touching), *line]
    return tuple(in_cells(dots))


def _touch(upper: str, lower: str) -> bool:
    """True when a dot of a row touches one of the row under it."""
    return any(dot == "#" and "#" in lower[max(0, x - 1) : x + 2] for x, dot in enumerate(upper))


def _long(text: str) -> int:
    """Return the dots that a word or a line takes."""
    return sum(_letter(one).width for one in text) + _BETWEEN * (len(text) - 1)


def _letter(one: str) -> Glyph:
    return glyph(one) or Glyph(("." * _SPACE,))


def _filled(words: Iterable[str], most: int) -> list[str]:
    """Fill lines with words, of at most so many dots."""
    lines = [""]
    for word in words:
        joined = f"{lines[-1]} {word}".strip()
        if _long(joined) <= most:
            lines[-1] = joined
        else:
            lines.append(word)
    return lines


def _dots(line: str, last: int) -> list[str]:
    """Return a line as rows of dots, as many as its letters need; `last` is the row under them."""
    letters = [_letter(one) for one in line]
    first = min(0, *(one.top for one in letters)) // 2 * 2
    gap = "." * _BETWEEN
    last += (last - first) % 2
    return [gap.join(one.row(number) for one in letters) for number in range(first, last)]


def figure_rows(size: int) -> int:
    """Return the rows that `figures` takes: 4, 7, 11."""
    return -(-(_HIGH - 1) * size // 2)


def figures(text: str, size: int) -> tuple[str, ...]:
    """Return a number as rows of cells, so many times as large as a sentence.

    Raises KeyError for a text with other characters than those of the drawing.
    """
    drawn = [_drawn()[one] for one in text]
    dots = ["..".join(one.row(number) for one in drawn) for number in range(_HIGH - 1)]
    grown = ["".join(dot * size for dot in row) for row in dots for _ in range(size)]
    return tuple(in_cells(grown))


def in_cells(dots: Sequence[str]) -> list[str]:
    """Return rows of dots as rows of cells with four quarters each."""
    width = max(map(len, dots))
    even = [row.ljust(width + width % 2, ".") for row in dots]
    even += [even[0].replace("#", ".")] * (len(even) % 2)
    return [
        "".join(
            _QUARTERS[
                (upper[x] == "#")
                + 2 * (upper[x + 1] == "#")
                + 4 * (lower[x] == "#")
                + 8 * (lower[x + 1] == "#")
            ]
            for x in range(0, len(upper), 2)
        )
        for upper, lower in zip(even[::2], even[1::2], strict=True)
    ]
