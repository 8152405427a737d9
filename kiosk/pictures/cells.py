"""A picture in the cells of a terminal, in Braille dots."""

from __future__ import annotations

import math
from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from itertools import groupby, pairwise
from typing import Final

from kiosk.pictures.stroke import Fill, Pen, Picture, Point, Stroke

_ACROSS: Final = 2
_DOWN: Final = 4
_BRAILLE: Final = 0x2800
_BITS: Final = ((0x01, 0x08), (0x02, 0x10), (0x04, 0x20), (0x40, 0x80))
"""The bit of each dot by row and column (Unicode chapter 21, from memory)."""

_FINE_FROM: Final = 0.62
"""Dots for a unit of the sheet, from which on detail is drawn."""
_THICK: Final = ((0, 0), (1, 0), (0, 1), (1, 1))
_DASH: Final = (True, True, True, False, False)

_Dot = tuple[int, int]


@dataclass(frozen=True, slots=True)
class Piece:
    """A run of characters; `look` where they are what the picture is drawn for."""

    text: str
    look: bool = False


Row = tuple[Piece, ...]


def cells(picture: Picture, width: int, height: int) -> tuple[Row, ...]:
    """Draw a picture as large as fits into `height` rows of `width` cells, and keep its shape.

    There are no empty rows above or below it and no empty columns beside it; a row ends with its
    last dot. A place too small for any dot gives no rows.
    """
    left, top, right, bottom = picture.box
    # A thick stroke takes one dot more than its place.
    across, down = width * _ACROSS - 2, height * _DOWN - 2
    if across < 1 or down < 1:
        return ()
    scale = min(across / max(right - left, 1.0), down / max(bottom - top, 1.0))
    sheet = _Dots()
    for stroke in picture.strokes:
        if stroke.pen is Pen.FINE and scale < _FINE_FROM:
            continue
        points = [((x - left) * scale, (y - top) * scale) for x, y in stroke.points]
        sheet.draw(stroke, [*points, points[0]] if stroke.closed else points)
    return sheet.rows()


def plain(rows: Sequence[Row]) -> str:
    """Return the rows as lines of text."""
    return "\n".join("".join(piece.text for piece in row) for row in rows)


class _Dots:
    """Dots that are set, each with whether it is to be looked at."""

    def __init__(self) -> None:
        self._set: dict[_Dot, bool] = {}

    def draw(self, stroke: Stroke, path: list[Point]) -> None:
        look = stroke.pen is Pen.LOOK
        if stroke.fill is not Fill.NONE:
            for dot in _inside(path):
                if stroke.fill is Fill.SOLID:
                    self._set[dot] = look
                else:
                    self._set.pop(dot, None)
        along = _thinned([dot for begin, end in pairwise(path) for dot in _straight(begin, end)])
        for place, (x, y) in enumerate(along):
            if stroke.pen is Pen.HIDDEN and not _DASH[place % len(_DASH)]:
                continue
            for dx, dy in _THICK if look else ((0, 0),):
                self._set[(x + dx, y + dy)] = look or self._set.get((x + dx, y + dy), False)

    def rows(self) -> tuple[Row, ...]:
        bits: dict[_Dot, int] = {}
        looks: dict[_Dot, bool] = {}
        for (x, y), look in self._set.items():
            cell = x // _ACROSS, y // _DOWN
            bits[cell] = bits.get(cell, 0) | _BITS[y % _DOWN][x % _ACROSS]
            looks[cell] = looks.get(cell, False) or look
        lowest = max((y for _, y in bits), default=-1)
        return tuple(_row(y, bits, looks) for y in range(lowest + 1))


def _row(y: int, bits: dict[_Dot, int], looks: dict[_Dot, bool]) -> Row:
    last = max((x for x, at in bits if at == y), default=-1)
    line = [((x, y) in bits, looks.get((x, y), False), x) for x in range(last + 1)]
    return tuple(
        Piece("".join(chr(_BRAILLE | bits[(x, y)]) if there else " " for there, _, x in run), look)
        for look, run in groupby(line, key=lambda one: one[1])
    )


def _straight(begin: Point, end: Point) -> Iterator[_Dot]:
    """Yield the dots that a straight line meets."""
    steps = math.ceil(2 * max(abs(end[0] - begin[0]), abs(end[1] - begin[1]))) or 1
    for n in range(steps + 1):
        x, y = (b + (e - b) * n / steps for b, e in zip(begin, end, strict=True))
        yield math.floor(x + 0.5), math.floor(y + 0.5)


def _thinned(path: Iterable[_Dot]) -> list[_Dot]:
    """Return a path without repeats, and without the dot in the corner of an L."""
    kept: list[_Dot] = []
    for dot in path:
        if kept and kept[-1] == dot:
            continue
        if len(kept) > 1 and abs(dot[0] - kept[-2][0]) == abs(dot[1] - kept[-2][1]) == 1:
            kept.pop()
        kept.append(dot)
    return kept


def _inside(path: Sequence[Point]) -> Iterator[_Dot]:
    """Yield the dots within a closed path, by the even-odd rule along each row."""
    down = [y for _, y in path]
    for y in range(math.ceil(min(down)), math.floor(max(down)) + 1):
        crossed = sorted(_crossings(path, y))
        for begin, end in zip(crossed[::2], crossed[1::2], strict=True):
            for x in range(math.ceil(begin), math.floor(end) + 1):
                yield x, y


def _crossings(path: Sequence[Point], y: int) -> Iterator[float]:
    for (x1, y1), (x2, y2) in pairwise(path):
        if (y1 <= y) != (y2 <= y):
            yield x1 + (y - y1) * (x2 - x1) / (y2 - y1)
