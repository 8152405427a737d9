"""The strokes of a figure in SVG, in mm: shapes, dashes and fills that need no colour."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from typing import Final

from kiosk.drawing.markup import Element, add, element
from kiosk.drawing.wrap import BOLD, width
from kiosk.plots.figure import Dash, Fill, Ink, Shape, Source

SMALL: Final = 2.7
"""Size of the letters in mm."""
TITLE: Final = 3.6
_WIDE_FACE: Final = 1.1
LINE: Final = 4.0
"""Height of a line of letters in mm."""

COLOURS: Final[Mapping[Ink, str]] = {
    Ink.DATA: "#1f4e79",
    Ink.OFF: "#a3001b",
    Ink.LIMIT: "#000000",
    Ink.BAND: "#e3ebf0",
    Ink.AVERAGE: "#6b3d00",
    Ink.LIKELY: "#444444",
}
_DASHES: Final = {Dash.DASHED: "2 1", Dash.DOTTED: "0.3 0.9"}
_FILLS: Final = {
    Fill.NONE: "#ffffff",
    Fill.PALE: "#d6d6d6",
    Fill.MIDDLE: "#9c9c9c",
    Fill.DARK: "#3a3a3a",
}
_PITCH: Final = 1.5
"""mm between the strokes of a hatched box."""


def filled(x: float, y: float, wide: float, high: float, fill: Fill, source: Source) -> Element:
    """Return a filled box with an edge. Hatching is drawn stroke by stroke, for any renderer."""
    wide, high = max(0.0, wide), max(0.0, high)
    paper = _FILLS.get(fill, "#ffffff")
    made = element("g", element("rect", x=x, y=y, width=wide, height=high, fill=paper))
    rising = "".join(_strokes(x, y, wide, high)) if fill not in _FILLS else ""
    falling = "".join(_strokes(x, y, wide, high, falls=True)) if fill is Fill.CROSSED else ""
    if rising or falling:
        add(
            made,
            element("path", d=rising + falling, stroke="black", stroke_width=0.2, fill="none"),
        )
    edge = element(
        "rect", x=x, y=y, width=wide, height=high, fill="none", stroke="black", stroke_width=0.15
    )
    add(made, edge)
    return traced(made, source)


def _strokes(x: float, y: float, wide: float, high: float, *, falls: bool = False) -> Iterator[str]:
    """Yield slanting strokes within a box, each from edge to edge."""
    reach = _PITCH / 2
    while reach < wide + high:
        low, top = min(reach, wide), max(0.0, reach - wide)
        end, bottom = max(0.0, reach - high), min(reach, high)
        left, right = (wide - end, wide - low) if falls else (end, low)
        yield f"M{x + left:.2f},{y + bottom:.2f} L{x + right:.2f},{y + top:.2f} "
        reach += _PITCH


def shape(of: Shape, x: float, y: float, ink: Ink, size: float = 0.75) -> Element:
    """Return a point of some shape around a place."""
    colour = COLOURS[ink]
    match of:
        case Shape.DOT:
            return element("circle", cx=x, cy=y, r=size, fill=colour)
        case Shape.RING:
            return element(
                "circle", cx=x, cy=y, r=size * 1.2, fill="white", stroke=colour, stroke_width=0.4
            )
        case Shape.CROSS:
            r = size * 1.35
            path = f"M{x - r:.2f},{y - r:.2f} l{2 * r:.2f},{2 * r:.2f} m0,{-2 * r:.2f}"
            path += f" l{-2 * r:.2f},{2 * r:.2f}"
            return element("path", d=path, stroke=colour, stroke_width=0.55, fill="none")
        case Shape.DOWN | Shape.UP:
            r = size * (1.35 if of is Shape.DOWN else -1.35)
            points = f"{x - abs(r):.2f},{y - r / 2:.2f} {x + abs(r):.2f},{y - r / 2:.2f}"
            points += f" {x:.2f},{y + r:.2f}"
            return element("polygon", points=points, fill="white", stroke=colour, stroke_width=0.35)
        case Shape.BAR:
            return line(x, y - size * 2, x, y + size * 2, colour, 0.6)


def line(x1: float, y1: float, x2: float, y2: float, colour: str, wide: float) -> Element:
    """Return a straight line."""
    return element("line", x1=x1, y1=y1, x2=x2, y2=y2, stroke=colour, stroke_width=wide)


def dashed(made: Element, dash: Dash) -> Element:
    """Dash a line's stroke."""
    if dash in _DASHES:
        made.set("stroke-dasharray", _DASHES[dash])
    return made


def letters(
    text: str, x: float, y: float, *, anchor: str = "start", bold: bool = False, size: float = SMALL
) -> Element:
    """Return a text whose line of writing is at `y`."""
    made = element("text", text, x=x, y=y, font_size=size)
    if anchor != "start":
        made.set("text-anchor", anchor)
    if bold:
        made.set("font-weight", "bold")
    return made


def wide(text: str, *, bold: bool = False, size: float = SMALL) -> float:
    """Return how wide a text is in mm, estimated for the widest of common faces."""
    return width(text) * size * (BOLD if bold else 1.0) * _WIDE_FACE


def traced(made: Element, source: Source) -> Element:
    """Add where an element comes from in the journal, and its sentence."""
    if source.seq:
        made.set("data-seq", str(source.seq))
    if source.session:
        made.set("data-session", source.session)
    if source.told:
        add(made, element("title", source.told))
    return made
