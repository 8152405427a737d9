"""Strips and lanes in SVG: rows with a name to the left."""

from __future__ import annotations

from collections.abc import Iterator, Sequence

from kiosk.drawing.markup import Element
from kiosk.plots.figure import Fill, Lanes, Strip
from kiosk.plots.svg_chart import x_labels
from kiosk.plots.svg_strokes import LINE, SMALL, filled, letters, line, shape, traced, wide

_TALLEST = 5.2
_NAMES = 0.35
"""Most of the page's width that names may take."""
_LANE = 6.0


def strip_height(of: Strip, room: float) -> float:
    """Return the height of a strip's rows and column labels in mm."""
    return _box_height(of, room) * len(of.rows) + LINE + 1


def strip(of: Strip, top: float, room: float) -> Iterator[Element]:
    """Yield the rows of a strip within a width, the column labels below them."""
    left = _names(room, [name for name, _ in of.rows])
    wide_each, high = (room - 0.3 - left) / max(1, len(of.columns)), _box_height(of, room)
    size = min(SMALL, high * 0.62, wide_each * 0.78)
    for place, (name, boxes) in enumerate(of.rows):
        y = top + place * high
        yield _name(name, left, y + high / 2 + SMALL * 0.35)
        for column, box in enumerate(boxes):
            x = left + column * wide_each
            yield filled(x, y, wide_each, high, box.fill, box.source)
            if box.mark:
                yield _in_box(box.mark, box.fill, x + wide_each / 2, y + high / 2, size)
    bottom = top + high * len(of.rows)
    free = float("-inf")
    for column, label in enumerate(of.columns):
        x = left + (column + 0.5) * wide_each
        if label and x - wide(label) / 2 > free and x + wide(label) / 2 <= room + 1:
            yield line(x, bottom, x, bottom + 0.9, "black", 0.3)
            yield letters(label, x, bottom + LINE - 0.2, anchor="middle")
            free = x + wide(label) / 2 + 1


def lanes_height(of: Lanes) -> float:
    """Return the height of the lanes and of the axis below them in mm."""
    return _LANE * len(of.lanes) + 2 * LINE


def lanes(of: Lanes, top: float, room: float) -> Iterator[Element]:
    """Yield the lanes within a width, the axis below them."""
    left = _names(room, [lane.name for lane in of.lanes])
    right = room - 6

    def place(at: float) -> float:
        return left + (right - left) * of.x.share(at)

    for row, lane in enumerate(of.lanes):
        middle = top + (row + 0.5) * _LANE
        yield _name(lane.name, left, middle + SMALL * 0.35)
        yield line(left, middle, right, middle, "#d0d0d0", 0.12)
        for bar in lane.bars:
            x, end = place(bar.begin), place(bar.end)
            yield filled(x, middle - 1.5, end - x, 3, bar.fill, bar.source)
        for mark in lane.marks:
            yield traced(shape(mark.shape, place(mark.at), middle, mark.ink, 0.9), mark.source)
    bottom = top + _LANE * len(of.lanes)
    yield line(left, bottom, right, bottom, "black", 0.3)
    yield from x_labels(of.x.ticks, place, bottom)
    yield letters(of.x.name, right, bottom + 2 * LINE - 0.6, anchor="end")


def _box_height(of: Strip, room: float) -> float:
    left = _names(room, [name for name, _ in of.rows])
    return min(_TALLEST, max(3.4, (room - left) / max(1, len(of.columns))))


def _names(room: float, names: Sequence[str]) -> float:
    return min(room * _NAMES, max(map(wide, names), default=0.0) + 1.5)


def _name(text: str, left: float, y: float) -> Element:
    """Return a row's name, right before the row; one that is too long is pressed together."""
    made = letters(text, left - 1.5, y, anchor="end")
    if wide(text) > left - 1.5:
        made.set("textLength", f"{left - 1.5:.2f}")
        made.set("lengthAdjust", "spacingAndGlyphs")
    return made


def _in_box(mark: str, fill: Fill, x: float, y: float, size: float) -> Element:
    made = letters(mark, x, y + size * 0.35, anchor="middle", size=size)
    made.set("fill", "white" if fill is Fill.DARK else "black")
    if fill in (Fill.HATCHED, Fill.CROSSED):
        made.set("stroke", "white")
        made.set("stroke-width", f"{size * 0.3:.2f}")
        made.set("paint-order", "stroke")
    return made
