"""The strokes of a lane: bars and marks that differ in shape, so that no colour is needed."""

from __future__ import annotations

from kiosk.drawing.lanes import Mark, Sort
from kiosk.drawing.markup import Element, element

_BAR_WIDTH = {Sort.HELD: 1.7, Sort.DANGER: 1.7, Sort.OTHER: 0.6}
"""mm"""


def bar(sort: Sort, x: float, top: float, bottom: float) -> Element:
    """Return the bar of a condition in force: thick and black, hatched, or thin. Lengths in mm."""
    wide = _BAR_WIDTH[sort]
    place = {"x": x - wide / 2, "y": top, "width": wide, "height": bottom - top}
    match sort:
        case Sort.HELD:
            return element("rect", fill="#123a5a", **place)
        case Sort.DANGER:
            return element("rect", fill="url(#danger)", **place)
        case Sort.OTHER:
            return element("rect", fill="#555555", **place)


def mark_of(mark: Mark, x: float, y: float, told: str, step: str, condition: str) -> Element:
    """Return a mark that carries its step, its condition and a sentence for who points at it."""
    return element(
        "g",
        element("title", told),
        _shape(mark, x, y),
        class_=mark,
        data_step=step,
        data_condition=condition,
    )


def swatch(what: Mark | Sort, x: float, y: float) -> Element:
    """Return a sample for the legend, about 4 mm wide, with its middle at `y`."""
    if isinstance(what, Mark):
        return _shape(what, x + 2, y)
    return bar(what, x + 2, y - 1.7, y + 1.7)


def _shape(mark: Mark, x: float, y: float) -> Element:
    match mark:
        case Mark.RELIES:
            return element(
                "circle", cx=x, cy=y, r=0.85, fill="white", stroke="black", stroke_width=0.4
            )
        case Mark.ESTABLISHES:
            return _triangle(x, y - 0.9, 1.3, 1.9)
        case Mark.ENDS:
            return element(
                "line", x1=x - 1.4, x2=x + 1.4, y1=y, y2=y, stroke="black", stroke_width=0.75
            )
        case Mark.NOT_IN_FORCE:
            return element(
                "path",
                d=f"M{x - 1:.2f},{y - 1:.2f} l2,2 M{x + 1:.2f},{y - 1:.2f} l-2,2",
                stroke="#b00020",
                stroke_width=0.6,
            )


def _triangle(x: float, top: float, half: float, high: float) -> Element:
    """Return a filled triangle that points down."""
    points = f"{x - half:.2f},{top:.2f} {x + half:.2f},{top:.2f} {x:.2f},{top + high:.2f}"
    return element("polygon", points=points, fill="black", stroke="white", stroke_width=0.15)
