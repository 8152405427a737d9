"""A figure in the cells of a terminal: plain text, with what each piece means."""

from __future__ import annotations

from collections.abc import Sequence

from kiosk.plots.cell_chart import chart, layer_sample
from kiosk.plots.cell_rows import lanes, rows_needed, sample, strip
from kiosk.plots.figure import Chart, Figure, Ink, Lanes, Strip
from kiosk.plots.grid import Grid, Piece, Row, cell_width, fitted, in_lines

__all__ = ["Piece", "Row", "cells", "plain"]

_TITLES = 2
"""Lines of a title, where there is room."""
_LEAST = 5
"""Rows that a chart needs; the key, then the title make room for it."""


def cells(figure: Figure, width: int, height: int) -> tuple[Row, ...]:
    """Draw a figure into at most `height` rows of at most `width` cells.

    A wide character takes two cells. Where not all fits, the key goes first, then the title; of a
    strip the newest columns stay, of rows the first ones.
    """
    needs = _LEAST if isinstance(figure, Chart) else rows_needed(figure)
    key = _key_lines(figure, width)
    if height < needs + 1 + len(key):
        key = []
    titled = bool(figure.title) and (height > needs or height > _LEAST)
    free = height - needs - len(key)
    titles = in_lines(figure.title, width, max(1, min(free, _TITLES))) if titled else []
    inside = Grid(width, max(0, height - len(titles) - len(key)))
    match figure:
        case Chart():
            chart(figure, inside)
        case Strip():
            strip(figure, inside)
        case Lanes():
            lanes(figure, inside)
    drawn = inside.rows() if isinstance(figure, Chart) else inside.rows()[:needs]
    return (*((Piece(title),) for title in titles), *drawn, *key)[:height]


def plain(rows: Sequence[Row]) -> str:
    """Return the rows as lines of text."""
    return "\n".join("".join(piece.text for piece in row).rstrip() for row in rows)


def _key_lines(figure: Figure, width: int) -> list[Row]:
    """Return the key in as many rows as it needs, at most three entries deep in none."""
    entries: list[tuple[str, Ink | None, str]] = []
    if isinstance(figure, Chart):
        entries = [(*layer_sample(one), one.name) for one in figure.layers if one.name]
    else:
        entries = [(*sample(what), meaning) for what, meaning in figure.key]
    lines: list[list[Piece]] = [[]]
    used = 0
    for drawn, ink, meaning in entries:
        said = fitted(f" {meaning}", width - cell_width(drawn))
        takes = cell_width(drawn) + cell_width(said)
        if used and used + 3 + takes > width:
            lines, used = [*lines, []], 0
        if used:
            lines[-1].append(Piece("   "))
            used += 3
        lines[-1] += [Piece(drawn, ink), Piece(said)]
        used += takes
    return [tuple(line) for line in lines if line]
