"""The shapes that drawings are put together from."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import replace
from typing import Final

from kiosk.pictures.stroke import Fill, Pen, Point, Stroke

_ARC_STEP: Final = 10.0
"""Degrees between the points of an arc."""
_CURVE_STEPS: Final = 6
"""Points between two places that a curve goes through."""

Strokes = tuple[Stroke, ...]


def line(*points: Point, pen: Pen = Pen.OUTLINE) -> Stroke:
    """Return an open line from point to point."""
    return Stroke(points, pen)


def shape(*points: Point, pen: Pen = Pen.OUTLINE, fill: Fill = Fill.PAPER) -> Stroke:
    """Return a closed line from point to point, which hides what is behind it."""
    return Stroke(points, pen, closed=True, fill=fill)


def box(
    x: float, y: float, wide: float, high: float, *,
    round: float = 0.0, pen: Pen = Pen.OUTLINE, fill: Fill = Fill.PAPER,
) -> Stroke:  # fmt: skip
    """Return a rectangle by its top left corner; `round` is the radius of its corners."""
    right, bottom = x + wide, y + high
    if not round:
        return shape((x, y), (right, y), (right, bottom), (x, bottom), pen=pen, fill=fill)
    corners = (
        (right - round, y + round, -90.0), (right - round, bottom - round, 0.0),
        (x + round, bottom - round, 90.0), (x + round, y + round, 180.0),
    )  # fmt: skip
    points = [p for cx, cy, at in corners for p in _arc(cx, cy, round, round, at, at + 90)]
    return shape(*points, pen=pen, fill=fill)


def ring(
    x: float, y: float, wide: float, high: float | None = None, *,
    pen: Pen = Pen.OUTLINE, fill: Fill = Fill.PAPER,
) -> Stroke:  # fmt: skip
    """Return an ellipse around a point, by half its width and half its height."""
    points = _arc(x, y, wide, wide if high is None else high, 0, 360)
    return shape(*points[:-1], pen=pen, fill=fill)


def arc(
    x: float, y: float, wide: float, high: float, begin: float, end: float,
    *, pen: Pen = Pen.OUTLINE,
) -> Stroke:  # fmt: skip
    """Return a part of an ellipse; degrees run clockwise from the right."""
    return Stroke(tuple(_arc(x, y, wide, high, begin, end)), pen)


def curve(*through: Point, pen: Pen = Pen.OUTLINE) -> Stroke:
    """Return a smooth line through points (a Catmull-Rom spline)."""
    return Stroke(tuple(_smooth(through)), pen)


def blob(*through: Point, pen: Pen = Pen.OUTLINE, fill: Fill = Fill.PAPER) -> Stroke:
    """Return a smooth closed line through points."""
    around = (through[-1], *through, through[0], through[1])
    inner = _smooth(around)[_CURVE_STEPS : -_CURVE_STEPS - 1]
    return shape(*inner, pen=pen, fill=fill)


def tube(*through: Point, wide: float, pen: Pen = Pen.OUTLINE) -> Stroke:
    """Return a bent tube along points, `wide` across, with square ends."""
    middle = _smooth(through)
    sides: tuple[list[Point], list[Point]] = ([], [])
    for place, (x, y) in enumerate(middle):
        (x1, y1), (x2, y2) = middle[max(0, place - 1)], middle[min(len(middle) - 1, place + 1)]
        long = math.hypot(x2 - x1, y2 - y1) or 1.0
        dx, dy = (y1 - y2) / long * wide / 2, (x2 - x1) / long * wide / 2
        sides[0].append((x + dx, y + dy))
        sides[1].append((x - dx, y - dy))
    return shape(*sides[0], *reversed(sides[1]), pen=pen)


def arrow(begin: Point, end: Point, head: float = 7.0) -> Strokes:
    """Return an arrow: the way that something is moved."""
    angle = math.atan2(end[1] - begin[1], end[0] - begin[0])
    barbs = [
        (end[0] + head * math.cos(angle + turn), end[1] + head * math.sin(angle + turn))
        for turn in (math.radians(145), math.radians(-145))
    ]
    return line(begin, end, pen=Pen.LOOK), line(barbs[0], end, barbs[1], pen=Pen.LOOK)


def zigzag(
    begin: Point, end: Point, high: float, count: int, *, pen: Pen = Pen.OUTLINE
) -> Stroke:  # fmt: skip
    """Return a line that goes up and down between two points: bristles, a spring, a thread."""
    points = []
    for n in range(count + 1):
        share, side = n / count, high / 2 if n % 2 else -high / 2
        points.append(
            (begin[0] + (end[0] - begin[0]) * share, begin[1] + (end[1] - begin[1]) * share + side)
        )
    return Stroke(tuple(points), pen)


def moved(
    strokes: Iterable[Stroke], x: float = 0.0, y: float = 0.0, *,
    scale: float = 1.0, turn: float = 0.0, mirror: bool = False,
) -> Strokes:  # fmt: skip
    """Return strokes scaled, mirrored left to right and turned clockwise about 0,0, then moved."""
    cos, sin = math.cos(math.radians(turn)), math.sin(math.radians(turn))
    across = -scale if mirror else scale

    def place(point: Point) -> Point:
        px, py = point[0] * across, point[1] * scale
        return px * cos - py * sin + x, px * sin + py * cos + y

    return tuple(replace(one, points=tuple(map(place, one.points))) for one in strokes)


def looked_at(strokes: Iterable[Stroke]) -> Strokes:
    """Return strokes with their outlines drawn as the place to look at."""
    return tuple(replace(one, pen=Pen.LOOK) if one.pen is Pen.OUTLINE else one for one in strokes)


def _arc(x: float, y: float, wide: float, high: float, begin: float, end: float) -> list[Point]:
    count = max(2, math.ceil(abs(end - begin) / _ARC_STEP))
    angles = (math.radians(begin + (end - begin) * n / count) for n in range(count + 1))
    return [(x + wide * math.cos(one), y + high * math.sin(one)) for one in angles]


def _smooth(through: tuple[Point, ...]) -> list[Point]:
    made = [through[0]]
    padded = (through[0], *through, through[-1])
    for a, b, c, d in zip(padded, padded[1:], padded[2:], padded[3:], strict=False):
        for n in range(1, _CURVE_STEPS + 1):
            t = n / _CURVE_STEPS
            made.append((_between(a[0], b[0], c[0], d[0], t), _between(a[1], b[1], c[1], d[1], t)))
    return made


def _between(a: float, b: float, c: float, d: float, t: float) -> float:
    """Return the uniform Catmull-Rom value at share `t` between b and c."""
    return 0.5 * (
        2 * b + (c - a) * t + (2 * a - 5 * b + 4 * c - d) * t**2 + (3 * b - a - 3 * c + d) * t**3
    )
