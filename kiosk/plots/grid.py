"""Characters and Braille dots in the cells of a terminal, each with what it means."""

from __future__ import annotations

import unicodedata
from dataclasses import dataclass
from itertools import groupby
from typing import Final

from kiosk.plots.figure import Ink

ACROSS: Final = 2
DOWN: Final = 4
"""Dots in a cell: a Braille pattern of the Unicode block U+2800, dots 1 to 8."""

_BRAILLE: Final = 0x2800
_BITS: Final = ((0x01, 0x08), (0x02, 0x10), (0x04, 0x20), (0x40, 0x80))
"""The bit of each dot by row and column (Unicode chapter 21, from memory)."""


@dataclass(frozen=True, slots=True)
class Piece:
    """A run of characters of one meaning; None is plain text."""

    text: str
    ink: Ink | None = None


Row = tuple[Piece, ...]


class Grid:
    """A block of cells to draw in."""

    def __init__(self, width: int, height: int) -> None:
        self.width, self.height = width, height
        self._cells: list[list[tuple[str, Ink | None]]] = [
            [(" ", None)] * width for _ in range(height)
        ]
        self._dots: dict[tuple[int, int], int] = {}

    def put(self, x: int, y: int, text: str, ink: Ink | None = None) -> None:
        """Write a text from a cell to the right; what lies outside is left out."""
        for character in text:
            takes = cell_width(character)
            if not takes:
                continue
            if x >= 0 and x + takes <= self.width and 0 <= y < self.height:
                self._cells[y][x] = (character, ink)
                self._dots.pop((x, y), None)
                if takes == ACROSS:
                    self._cells[y][x + 1] = ("", ink)
            x += takes

    def dot(self, x: int, y: int, ink: Ink) -> None:
        """Set a dot, two across and four down in a cell; a dot under a character is left out."""
        place = x // ACROSS, y // DOWN
        if not (0 <= place[0] < self.width and 0 <= place[1] < self.height):
            return
        if self._cells[place[1]][place[0]][0] != " " and place not in self._dots:
            return
        self._dots[place] = self._dots.get(place, 0) | _BITS[y % DOWN][x % ACROSS]
        self._cells[place[1]][place[0]] = (chr(_BRAILLE | self._dots[place]), ink)

    def rows(self) -> tuple[Row, ...]:
        """Return the rows without the space at their ends."""
        return tuple(_row(line) for line in self._cells)


def cell_width(text: str) -> int:
    """Return how many cells a text takes: wide East Asian characters take two."""
    return sum(_takes(character) for character in text)


def fitted(text: str, width: int) -> str:
    """Return a text cut to a number of cells, with an ellipsis where something is missing."""
    if cell_width(text) <= width:
        return text
    kept = ""
    for character in text:
        if cell_width(kept + character) > width - 1:
            break
        kept += character
    return kept + "…" if width > 0 else ""


def in_lines(text: str, width: int, most: int) -> list[str]:
    """Return a text in at most so many lines, parted between words; what is too much is cut."""
    lines = [""]
    for word in text.split():
        joined = f"{lines[-1]} {word}".strip()
        if cell_width(joined) <= width or len(lines) == most or not lines[-1]:
            lines[-1] = joined
        else:
            lines.append(word)
    return [fitted(line, width) for line in lines]


def _takes(character: str) -> int:
    if unicodedata.combining(character):
        return 0
    return ACROSS if unicodedata.east_asian_width(character) in "WF" else 1


def _row(line: list[tuple[str, Ink | None]]) -> Row:
    last = max((place for place, (text, _) in enumerate(line) if text != " "), default=-1)
    runs = groupby(line[: last + 1], key=lambda cell: cell[1])
    return tuple(Piece("".join(text for text, _ in run), ink) for ink, run in runs)
