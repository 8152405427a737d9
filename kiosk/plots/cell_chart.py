"""A chart in the cells of a terminal: lines in Braille dots, points out of limit as letters."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from itertools import pairwise
from typing import Final

from kiosk.plots.figure import (
    Band,
    Bars,
    Chart,
    Dash,
    Ink,
    Layer,
    Level,
    Line,
    Point,
    Points,
    Shape,
    Spread,
    Tick,
)
from kiosk.plots.grid import ACROSS, DOWN, Grid, cell_width, fitted, in_lines

LETTERS: Final = {Shape.CROSS: "x", Shape.RING: "o", Shape.DOWN: "v", Shape.UP: "^", Shape.BAR: "|"}
"""What stands for a shape; a dot is a dot."""

_PERIODS: Final = {Dash.SOLID: (1, 1), Dash.DASHED: (6, 4), Dash.DOTTED: (4, 1)}
"""Of so many dots, so many are set."""

_EIGHTHS: Final = " ▁▂▃▄▅▆▇█"
_SAMPLE: Final = 3


@dataclass(frozen=True, slots=True)
class _Inside:
    """The cells between the axes."""

    chart: Chart
    left: int
    top: int
    width: int
    height: int

    def x(self, at: float) -> int:
        """Return the column of dots of a value."""
        return round(self.left * ACROSS + self.chart.x.share(at) * (self.width * ACROSS - 1))

    def y(self, at: float) -> int:
        """Return the row of dots of a value."""
        down = (1 - self.chart.y.share(at)) * (self.height * DOWN - 1)
        return round(self.top * DOWN + down)


def chart(of: Chart, grid: Grid) -> None:
    """Draw a chart over the whole of a grid."""
    widest = max((cell_width(tick.label) for tick in of.y.ticks), default=0)
    left = min(widest, grid.width // 3) + 1
    names = in_lines(of.y.name, grid.width, 1 + (grid.height > 9)) if grid.height > 6 else []
    top = len(names)
    inside = _Inside(of, left, top, grid.width - left, grid.height - 2 - top)
    if inside.width < 1 or inside.height < 1:
        return
    for row, name in enumerate(names):
        grid.put(0, row, name)
    begin = grid.width - cell_width(of.x.name)
    if names and begin > cell_width(names[-1]) + 1:
        grid.put(begin, top - 1, of.x.name)
    for layer in of.layers:
        if not isinstance(layer, Points):
            _layer(layer, inside, grid)
    for layer in of.layers:
        if isinstance(layer, Points):
            _points(layer, inside, grid)
    _y_axis(inside, grid)
    x_axis(of.x.ticks, [inside.x(one.at) // ACROSS for one in of.x.ticks], left, grid)


def layer_sample(layer: Layer) -> tuple[str, Ink | None]:
    """Return what stands for a layer in the key."""
    match layer:
        case Band():
            return "┃", Ink.BAND
        case Bars():
            return "▆", Ink.DATA
        case Spread():
            return "⢸", Ink.DATA
        case Points(shape=Shape.DOT, ink=ink):
            return "⠂", ink
        case Points(shape=shape, ink=ink):
            return LETTERS[shape], ink
        case Level(dash=dash, ink=ink) | Line(dash=dash, ink=ink):
            small = Grid(_SAMPLE, 1)
            _run(small, range(_SAMPLE * ACROSS), [1] * _SAMPLE * ACROSS, dash, ink)
            return small.rows()[0][0].text.ljust(_SAMPLE), ink


def x_axis(ticks: Sequence[Tick], columns: Sequence[int], left: int, grid: Grid) -> None:
    """Draw the axis into the last two rows; a label that would touch the last one is left out."""
    y = grid.height - 2
    grid.put(left - 1, y, "└" + "─" * (grid.width - left))
    free = 0
    for tick, column in zip(ticks, columns, strict=True):
        wide = cell_width(tick.label)
        begin = max(0, min(column - wide // 2, grid.width - wide))
        if tick.label and begin >= free:
            grid.put(column, y, "┬")
            grid.put(begin, y + 1, tick.label)
            free = begin + wide + 1


def _y_axis(at: _Inside, grid: Grid) -> None:
    bands = [one for one in at.chart.layers if isinstance(one, Band)]
    for row in range(at.top, at.top + at.height):
        share = 1 - (row - at.top + 0.5) / at.height
        value = at.chart.y.least + share * (at.chart.y.most - at.chart.y.least)
        inside = any(
            (one.least is None or value >= one.least) and (one.most is None or value <= one.most)
            for one in bands
        )
        grid.put(at.left - 1, row, "┃" if inside else "│", Ink.BAND if inside else None)
    taken: set[int] = set()
    for tick in at.chart.y.ticks:
        row = at.y(tick.at) // DOWN
        if row not in taken:
            label = fitted(tick.label, at.left - 1)
            grid.put(at.left - 1 - cell_width(label), row, label)
            taken.add(row)


def _layer(layer: Layer, at: _Inside, grid: Grid) -> None:
    match layer:
        case Level(at=value, dash=dash, ink=ink):
            columns = range(at.left * ACROSS, (at.left + at.width) * ACROSS)
            _run(grid, columns, [at.y(value)] * len(columns), dash, ink)
        case Line(points=points, dash=dash, ink=ink):
            for one, following in pairwise(points):
                _stretch(one, following, dash, ink, at, grid)
        case Spread(reach=reach):
            for x, low, high in reach:
                for y in range(at.y(high), at.y(low) + 1):
                    grid.dot(at.x(x), y, Ink.DATA)
        case Bars():
            _bars(layer, at, grid)
        case _:
            pass


def _points(layer: Points, at: _Inside, grid: Grid) -> None:
    for one in layer.points:
        x, y = at.x(one.x), at.y(one.y)
        if layer.shape is Shape.DOT:
            grid.dot(x, y, layer.ink)
        else:
            grid.put(x // ACROSS, y // DOWN, LETTERS[layer.shape], layer.ink)


def _stretch(one: Point, following: Point, dash: Dash, ink: Ink, at: _Inside, grid: Grid) -> None:
    x1, y1, x2, y2 = at.x(one.x), at.y(one.y), at.x(following.x), at.y(following.y)
    columns = range(x1, x2 + 1)
    wide = max(1, x2 - x1)
    _run(grid, columns, [round(y1 + (y2 - y1) * (x - x1) / wide) for x in columns], dash, ink)


def _run(grid: Grid, columns: Sequence[int], heights: Sequence[int], dash: Dash, ink: Ink) -> None:
    """Set the dots of a line, one in each column that the dash does not skip."""
    period, set_of_it = _PERIODS[dash]
    for x, y in zip(columns, heights, strict=True):
        if x % period < set_of_it:
            grid.dot(x, y, ink)


def _bars(layer: Bars, at: _Inside, grid: Grid) -> None:
    """Fill columns in eighths of a cell; where two bars share a column, the higher one shows."""
    highest: dict[int, float] = {}
    for one in layer.points:
        begin = at.x(one.x - layer.wide / 2) // ACROSS
        end = max(begin + 1, at.x(one.x + layer.wide / 2) // ACROSS)
        for column in range(begin, min(end, at.left + at.width)):
            highest[column] = max(highest.get(column, 0.0), at.chart.y.share(one.y))
    for column, share in highest.items():
        eighths = round(share * at.height * 8)
        if share > 0:
            eighths = max(1, eighths)
        for up in range(at.height):
            filled = min(8, max(0, eighths - up * 8))
            if filled:
                grid.put(column, at.top + at.height - 1 - up, _EIGHTHS[filled], Ink.DATA)
