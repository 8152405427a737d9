"""Reads large letters back from the cells of a screen: none may be lost or look like another."""

from __future__ import annotations

import re
from collections.abc import Sequence
from functools import cache

from kiosk.screens.block_letters import glyph

QUARTERS = {
    " ": "....", "▘": "#...", "▝": ".#..", "▀": "##..", "▖": "..#.", "▌": "#.#.", "▞": ".##.",
    "▛": "###.", "▗": "...#", "▚": "#..#", "▐": ".#.#", "▜": "##.#", "▄": "..##", "▙": "#.##",
    "▟": ".###", "█": "####",
}  # fmt: skip
"""Upper left, upper right, lower left, lower right: as the Unicode chart U+2580 draws them."""
HIGH = 8
SPACE = 5
"""So many empty columns of dots are a space."""

Shape = tuple[int, int, tuple[str, ...]]
"""The row of dots in which a letter begins, how far its accents reach out to the left, its rows."""


def letters() -> str:
    """Every character that can be drawn and is not a space."""
    ascii_ones = map(chr, range(33, 127))
    others = map(chr, [*range(0xA1, 0x250), *range(0x1EA0, 0x1EFA), *range(0x2010, 0x2030)])
    return "".join(one for one in (*ascii_ones, *others) if glyph(one) is not None)


@cache
def shapes() -> dict[Shape, str]:
    """The letters by their shape, without empty columns beside them."""
    found = {}
    for letter in letters():
        one = glyph(letter)
        top, bottom = min(0, one.top), max(HIGH, one.bottom)
        rows = [one.row(number) for number in range(top, bottom)]
        columns = [x for x in range(one.width) if any(row[x] == "#" for row in rows)]
        first = columns[0]
        out = next(x for x in columns if any(one.row(at)[x] == "#" for at in range(HIGH))) - first
        cut = tuple(row[first : columns[-1] + 1] for row in rows)
        found.setdefault((top, out, cut), letter)
    return found


def dots(rows: Sequence[str]) -> list[str]:
    """Rows of cells as rows of dots; a cell that is none of ours is empty."""
    found, width = [], max(map(len, rows), default=0)
    for row in rows:
        cells = [QUARTERS.get(one, "....") for one in row.ljust(width)]
        found += ["".join(one[:2] for one in cells), "".join(one[2:] for one in cells)]
    return found


def read(rows: Sequence[str], *, vietnamese: bool = False) -> str:
    """The large letters in these rows, line by line; '' when there are none.

    Only in Vietnamese are there dots below letters: elsewhere what looks like one belongs to the
    next line.
    """
    drawn, lines, y = dots(rows), [], 0
    while y + HIGH <= len(drawn):
        line = read_line(drawn if vietnamese else drawn[: y + HIGH], y)
        if line:
            lines.append(line)
        y += HIGH if line else 2
    return re.sub(r"(?<=\d)O|O(?=[.,:]?\d)", "0", " ".join(lines))


def read_line(drawn: Sequence[str], y: int) -> str:
    """The line whose capitals begin in a row of dots; '' when none does there."""
    found, x, empty = "", 0, 0
    width = len(drawn[0])
    while x < width:
        if all(drawn[y + row][x] == "." for row in range(HIGH)):
            x, empty = x + 1, empty + 1
            continue
        letter, wide = _letter_at(drawn, x, y)
        if not wide:
            return ""
        found += (" " if empty >= SPACE else "") + letter
        x, empty = x + wide, 0
    return found.strip()


def _letter_at(drawn: Sequence[str], x: int, y: int) -> tuple[str, int]:
    """The widest and then the highest letter that stands here, and its width; else nothing."""
    best, size = "", (0, 0)
    for (top, out, shape), letter in shapes().items():
        wide, left = len(shape[0]), x - out
        beyond = left < 0 or y + top < 0 or y + top + len(shape) > len(drawn)
        if beyond or (wide - out, len(shape)) <= size:
            continue
        if all(drawn[y + top + at][left : left + wide] == row for at, row in enumerate(shape)):
            best, size = letter, (wide - out, len(shape))
    return best, size[0]
