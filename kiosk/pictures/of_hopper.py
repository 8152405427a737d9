"""The hopper and what stands in it, and the trays below."""

from __future__ import annotations

from typing import Final

from kiosk.pictures.shapes import (
    Strokes,
    arc,
    blob,
    box,
    curve,
    line,
    ring,
    shape,
    tube,
)
from kiosk.pictures.stroke import Fill, Pen

_FINE, _HIDDEN, _LOOK = Pen.FINE, Pen.HIDDEN, Pen.LOOK

LID: Final[Strokes] = (
    shape((22, 22), (98, 22), (118, 56), (118, 64), (2, 64), (2, 56)),
    line((2, 56), (118, 56)),
    tube((44, 42), (46, 24), (74, 24), (76, 42), wide=7),
)

LID_GASKET: Final[Strokes] = (
    box(2, 4, 116, 72, round=6),
    box(11, 13, 98, 54, round=8, pen=_LOOK),
    box(18, 20, 84, 40, round=5),
)

AIR_TUBE: Final[Strokes] = (
    box(2, 32, 88, 16),
    ring(2, 40, 3, 8),
    ring(70, 40, 4, fill=Fill.SOLID),
    box(90, 28, 26, 24, round=2),
    box(95, 24, 6, 32, round=2.5),
    box(107, 24, 6, 32, round=2.5),
)


def _hopper(hole: float) -> Strokes:
    """Return a hopper cut open, with an inlet hole in its floor around `hole`, and mix."""
    return (
        box(4, 6, 5, 60, fill=Fill.SOLID),
        box(111, 6, 5, 60, fill=Fill.SOLID),
        box(4, 61, hole - 12, 5, fill=Fill.SOLID),
        box(hole + 8, 61, 108 - hole, 5, fill=Fill.SOLID),
    )


AIR_TUBE_IN: Final[Strokes] = (
    *_hopper(60),
    line((10, 34), (110, 34), pen=_FINE),
    box(55, 0, 10, 62, pen=_LOOK),
    box(53, 54, 14, 14, round=2, pen=_LOOK, fill=Fill.SOLID),
    arc(60, 100, 44, 24, 205, 335, pen=_HIDDEN),
)

INLET: Final[Strokes] = (
    *_hopper(47),
    arc(60, 100, 44, 24, 200, 340),
    *(line((60 + x, 78), (60 + x * 1.3, 86)) for x in (-24, 0, 24)),
    box(38, -8, 44, 26, round=8),
    *(line((x, 4), (x, 18), pen=_FINE) for x in (52, 66)),
    box(40, 12, 14, 52, round=7),
    arc(47, 56, 4, 5, 180, 360),
    line((24, 14), (70, 56), pen=_LOOK),
    line((24, 56), (70, 14), pen=_LOOK),
)

TRAYS: Final[Strokes] = (
    shape((14, 6), (106, 6), (118, 36), (2, 36)),
    shape((2, 36), (118, 36), (112, 46), (8, 46)),
    *(line((14 + 23 * n, 6), (2 + 29 * n, 36)) for n in range(1, 4)),
    line((8, 21), (112, 21), pen=_FINE),
    box(2, 58, 116, 14, round=3),
    box(96, 54, 22, 8, round=2),
)

THERMOMETER: Final[Strokes] = (
    line((6, 22), (6, 70), (114, 70), (114, 22)),
    line((6, 38), (114, 38)),
    line((76, 14), (50, 56), pen=_LOOK),
    box(62, -12, 44, 26, round=5),
    box(68, -7, 32, 14, round=2, pen=_FINE),
)

POUR_MIX: Final[Strokes] = (
    line((14, 44), (14, 78), (106, 78), (106, 44)),
    line((14, 66), (106, 66)),
    blob((70, 30), (64, 16), (74, -4), (100, -10), (116, 2), (108, 20), (86, 30)),
    shape((70, 30), (64, 18), (52, 22), (57, 32)),
    curve((54, 26), (46, 40), (44, 66), pen=_LOOK),
    box(84, 2, 18, 10, round=2, pen=_FINE),
)
