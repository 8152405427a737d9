"""Strips and lanes in the cells of a terminal."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from kiosk.plots.cell_chart import LETTERS, x_axis
from kiosk.plots.figure import Box, Fill, Ink, Lanes, Shape, Strip
from kiosk.plots.grid import Grid, cell_width, fitted

_FILLS: Final = {
    Fill.NONE: " ",
    Fill.PALE: "░",
    Fill.MIDDLE: "▒",
    Fill.DARK: "█",
    Fill.HATCHED: "/",
    Fill.CROSSED: "#",
}
_INKS: Final = {Fill.HATCHED: Ink.LIKELY, Fill.CROSSED: Ink.OFF}
_WIDEST: Final = 2
"""Cells of a box."""
_DOT: Final = "•"


def sample(what: Fill | tuple[Shape, Ink]) -> tuple[str, Ink | None]:
    """Return what stands for a fill or a mark in the key."""
    if isinstance(what, Fill):
        return _FILLS[what] * _WIDEST, _ink(what)
    return LETTERS.get(what[0], _DOT), what[1]


def rows_needed(of: Strip | Lanes) -> int:
    """Return how many rows a strip or lanes take, with the labels below them."""
    return len(of.rows) + 1 if isinstance(of, Strip) else len(of.lanes) + 2


def strip(of: Strip, grid: Grid) -> None:
    """Draw a strip into a grid; columns that do not fit are left out at the old end."""
    left = _left(grid, [name for name, _ in of.rows])
    wide = _WIDEST if (grid.width - left) // _WIDEST >= len(of.columns) else 1
    shown = min(len(of.columns), (grid.width - left) // wide)
    first = len(of.columns) - shown
    last_row = min(len(of.rows), grid.height - 1)
    for y, (name, boxes) in enumerate(of.rows[:last_row]):
        _name(grid, y, name, left)
        for column, box in enumerate(boxes[first:]):
            grid.put(left + column * wide, y, _in_box(box, wide), _ink(box.fill))
    free = 0
    for column, label in enumerate(of.columns[first:]):
        begin = left + column * wide
        if label and begin >= free and begin + cell_width(label) <= grid.width:
            grid.put(begin, last_row, label)
            free = begin + cell_width(label) + 1


def lanes(of: Lanes, grid: Grid) -> None:
    """Draw lanes into a grid, the axis below them."""
    left = _left(grid, [lane.name for lane in of.lanes])
    room = grid.width - left

    def place(at: float) -> int:
        return left + round(of.x.share(at) * (room - 1))

    shown = of.lanes[: max(0, grid.height - 2)]
    for y, lane in enumerate(shown):
        _name(grid, y, lane.name, left)
        for bar in lane.bars:
            begin, end = place(bar.begin), place(bar.end)
            grid.put(begin, y, _FILLS[bar.fill] * max(1, end - begin), _ink(bar.fill))
        for mark in lane.marks:
            grid.put(place(mark.at), y, LETTERS.get(mark.shape, _DOT), mark.ink)
    below = Grid(grid.width, 2)
    x_axis(of.x.ticks, [place(one.at) for one in of.x.ticks], left, below)
    for y, row in enumerate(below.rows(), start=len(shown)):
        x = 0
        for piece in row:
            grid.put(x, y, piece.text, piece.ink)
            x += cell_width(piece.text)


def _left(grid: Grid, names: Sequence[str]) -> int:
    widest = max((cell_width(name) for name in names), default=0)
    return min(widest, grid.width // 3) + 1


def _name(grid: Grid, y: int, name: str, left: int) -> None:
    said = fitted(name, left - 1)
    grid.put(left - 1 - cell_width(said), y, said)


def _in_box(box: Box, wide: int) -> str:
    if not box.mark or (wide < _WIDEST and box.fill in _INKS):
        return _FILLS[box.fill] * wide
    return (fitted(box.mark, wide) + _FILLS[box.fill] * wide)[:wide]


def _ink(fill: Fill) -> Ink | None:
    return _INKS.get(fill, None if fill is Fill.NONE else Ink.DATA)
