"""A chart in SVG: axes, and layer upon layer between them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass

from kiosk.drawing.markup import Element, add, element
from kiosk.plots.figure import (
    NOWHERE,
    Band,
    Bars,
    Chart,
    Fill,
    Ink,
    Layer,
    Level,
    Line,
    Points,
    Shape,
    Spread,
    Tick,
)
from kiosk.plots.svg_strokes import (
    COLOURS,
    LINE,
    SMALL,
    dashed,
    filled,
    letters,
    line,
    shape,
    traced,
    wide,
)

_GRID = "#d0d0d0"
_SWATCH = 7.0
"""mm."""


@dataclass(frozen=True, slots=True)
class Frame:
    """Where the chart's inside lies on the page, in mm."""

    chart: Chart
    left: float
    top: float
    right: float
    bottom: float

    def x(self, at: float) -> float:
        """Return the place of a value of the x axis."""
        return self.left + (self.right - self.left) * self.chart.x.share(at)

    def y(self, at: float) -> float:
        """Return the place of a value of the y axis."""
        return self.bottom - (self.bottom - self.top) * self.chart.y.share(at)


def frame(chart: Chart, top: float, right: float, bottom: float) -> Frame:
    """Return the frame within a space; the labels of both axes lie outside it."""
    widest = max((wide(tick.label) for tick in chart.y.ticks), default=0.0)
    beyond = max((wide(tick.label) / 2 for tick in chart.x.ticks), default=0.0)
    left = max(widest + 1.5, beyond)
    return Frame(chart, left, top + LINE + 1, right - min(beyond, 8.0), bottom - 2 * LINE)


def drawn(at: Frame) -> Iterator[Element]:
    """Yield the grid, the layers, and the axes with their labels."""
    yield from _grid(at)
    for layer in at.chart.layers:
        group = element("g", class_=type(layer).__name__.lower())
        add(group, *_layer(layer, at))
        yield group
    yield from _axes(at)


def _grid(at: Frame) -> Iterator[Element]:
    for tick in at.chart.y.ticks:
        yield line(at.left, at.y(tick.at), at.right, at.y(tick.at), _GRID, 0.12)


def _axes(at: Frame) -> Iterator[Element]:
    yield line(at.left, at.bottom, at.right, at.bottom, "black", 0.3)
    yield line(at.left, at.top, at.left, at.bottom, "black", 0.3)
    for tick in at.chart.y.ticks:
        y = at.y(tick.at)
        yield letters(tick.label, at.left - 1, y + SMALL * 0.35, anchor="end")
    yield from x_labels(at.chart.x.ticks, at.x, at.bottom)
    yield letters(at.chart.y.name, 0, at.top - SMALL * 0.9)
    yield letters(at.chart.x.name, at.right, at.bottom + 2 * LINE - 0.6, anchor="end")


def x_labels(
    ticks: Sequence[Tick], place: Callable[[float], float], bottom: float
) -> Iterator[Element]:
    """Yield the ticks and labels below an axis; a label that would touch the last one is left."""
    free = float("-inf")
    for tick in ticks:
        x, half = place(tick.at), wide(tick.label) / 2
        yield line(x, bottom, x, bottom + 0.9, "black", 0.3)
        if tick.label and x - half > free:
            yield letters(tick.label, x, bottom + LINE - 0.2, anchor="middle")
            free = x + half + 1


def _layer(layer: Layer, at: Frame) -> Iterator[Element]:
    match layer:
        case Band(least=least, most=most):
            top = at.top if most is None else at.y(most)
            bottom = at.bottom if least is None else at.y(least)
            place = {"x": at.left, "y": top, "width": at.right - at.left, "height": bottom - top}
            yield element("rect", fill=COLOURS[Ink.BAND], **place)
        case Level(at=value, dash=dash, ink=ink):
            y = at.y(value)
            yield dashed(line(at.left, y, at.right, y, COLOURS[ink], 0.4), dash)
        case Line(points=points, dash=dash, ink=ink):
            corners = " ".join(f"{at.x(one.x):.2f},{at.y(one.y):.2f}" for one in points)
            made = element(
                "polyline", points=corners, fill="none", stroke=COLOURS[ink], stroke_width=0.5
            )
            yield dashed(made, dash)
        case Spread(reach=reach):
            for place_x, low, high in reach:
                x = at.x(place_x)
                yield line(x, at.y(low), x, at.y(high), COLOURS[Ink.DATA], 0.25)
        case Bars(points=points, wide=width, fill=fill):
            for one in points:
                x, y = at.x(one.x - width / 2), at.y(one.y)
                yield filled(x, y, at.x(one.x + width / 2) - x, at.bottom - y, fill, one.source)
        case Points(points=points, shape=of, ink=ink):
            for one in points:
                yield traced(shape(of, at.x(one.x), at.y(one.y), ink), one.source)


def swatch(layer: Layer, x: float, y: float) -> Iterator[Element]:
    """Yield a sample of a layer, with its middle at `y`."""
    middle, end = x + _SWATCH / 2, x + _SWATCH
    match layer:
        case Band():
            yield element(
                "rect", x=x, y=y - 1.3, width=_SWATCH, height=2.6, fill=COLOURS[Ink.BAND],
                stroke=_GRID, stroke_width=0.15,
            )  # fmt: skip
        case Level(dash=dash, ink=ink):
            yield dashed(line(x, y, end, y, COLOURS[ink], 0.4), dash)
        case Line(dash=dash, ink=ink):
            yield dashed(line(x, y, end, y, COLOURS[ink], 0.5), dash)
        case Spread():
            yield line(middle, y - 1.4, middle, y + 1.4, COLOURS[Ink.DATA], 0.25)
        case Bars(fill=fill):
            yield filled(middle - 1, y - 1.3, 2, 2.6, fill, NOWHERE)
        case Points(shape=of, ink=ink):
            yield shape(of, middle, y, ink)


def key_swatch(what: Fill | tuple[Shape, Ink], x: float, y: float) -> Iterator[Element]:
    """Yield a sample of a fill or of a mark, with its middle at `y`."""
    middle = x + _SWATCH / 2
    if isinstance(what, Fill):
        yield filled(middle - 1.8, y - 1.3, 3.6, 2.6, what, NOWHERE)
    else:
        yield shape(what[0], middle, y, what[1], 0.9)
