"""The freezer door: knobs, gaskets, draw valves, O-rings and the relief plug."""

from __future__ import annotations

import math
from typing import Final

from kiosk.pictures.shapes import (
    Strokes,
    arc,
    arrow,
    blob,
    box,
    line,
    looked_at,
    moved,
    ring,
    shape,
)
from kiosk.pictures.stroke import Fill, Pen, Stroke

_FINE, _HIDDEN, _LOOK = Pen.FINE, Pen.HIDDEN, Pen.LOOK


def spout(x: float, top: float, bottom: float, wide: float) -> Strokes:
    """Return the bore of a draw valve seen from the front, with the spout below it."""
    half = wide / 2
    return (
        box(x - half, top, wide, bottom - top, round=2),
        shape(
            (x - half * 0.8, bottom), (x + half * 0.8, bottom),
            (x + half * 0.5, bottom + 8), (x - half * 0.5, bottom + 8),
        ),
        ring(x, top, half, wide * 0.17),
    )  # fmt: skip


DOOR: Final[Strokes] = (
    box(18, 8, 84, 54, round=10),
    ring(60, 35, 24, pen=_HIDDEN, fill=Fill.NONE),
    ring(27, 35, 4.5),
    ring(93, 35, 4.5),
    *spout(60, 4, 66, 18),
    ring(82, 17, 3, pen=_FINE),
)

TWIN_DOOR: Final[Strokes] = (
    box(2, 10, 116, 50, round=6),
    ring(35, 35, 20, pen=_HIDDEN, fill=Fill.NONE),
    ring(85, 35, 20, pen=_HIDDEN, fill=Fill.NONE),
    *(ring(x, y, 4) for x in (10, 110) for y in (18, 52)),
    *(stroke for x in (35, 60, 85) for stroke in spout(x, 6, 64, 13)),
)


def _lobed(x: float, y: float, reach: float, lobes: int) -> Stroke:
    """Return the edge of a hand knob: as many bulges as fingers can hold."""
    places = [math.radians(360 * n / (2 * lobes)) for n in range(2 * lobes)]
    return blob(*(
        (x + r * math.cos(at), y + r * math.sin(at))
        for n, at in enumerate(places)
        for r in (reach if n % 2 else reach * 0.8,)
    ))  # fmt: skip


KNOBS: Final[Strokes] = (
    _lobed(32, 40, 30, 6),
    ring(32, 40, 9),
    box(74, 12, 20, 56, round=4),
    line((75, 26), (93, 26), pen=_FINE),
    line((75, 40), (93, 40), pen=_FINE),
    line((75, 54), (93, 54), pen=_FINE),
    box(94, 27, 10, 26),
    box(104, 34, 14, 12),
    line((108, 34), (108, 46), pen=_FINE),
    line((112, 34), (112, 46), pen=_FINE),
)

GASKET: Final[Strokes] = (
    ring(42, 40, 37, pen=_LOOK),
    ring(42, 40, 29),
    line((81, 40), (94, 40), pen=_FINE),
    box(94, 28, 24, 24, round=2),
    box(101, 35, 10, 10, pen=_LOOK, fill=Fill.SOLID),
)

GASKET_GROOVE: Final[Strokes] = (
    box(6, 2, 108, 76, round=12),
    ring(60, 40, 33),
    ring(60, 40, 28, pen=_LOOK),
    ring(60, 40, 19),
    ring(60, 50, 4.5, fill=Fill.SOLID),
    ring(17, 40, 5),
    ring(103, 40, 5),
)

_VALVE_BODY: Final[Strokes] = (
    box(2, 30, 18, 20, round=3),
    box(7, 36, 8, 8, round=2),
    box(20, 34, 16, 12),
    box(36, 26, 78, 28, round=3),
    line((66, 26), (66, 54), pen=_FINE),
    line((86, 26), (86, 54), pen=_FINE),
)
_VALVE_RINGS: Final[Strokes] = (
    box(47, 22, 8, 36, round=3.5),
    box(99, 22, 8, 36, round=3.5),
)

VALVE: Final[Strokes] = (*_VALVE_BODY, *_VALVE_RINGS)

VALVE_RINGS: Final[Strokes] = (*_VALVE_BODY, *looked_at(_VALVE_RINGS))

VALVE_IN: Final[Strokes] = (
    box(4, 46, 112, 36, round=8),
    *looked_at(moved(VALVE, 90, -22, scale=0.75, turn=90)),
    box(41, 36, 38, 46),
    line((41, 36), (79, 36)),
    ring(19, 64, 5),
    ring(101, 64, 5),
    *arrow((98, -18), (98, 26)),
)

RELIEF_PLUG: Final[Strokes] = (
    box(2, 10, 26, 60, round=5),
    line((3, 25), (27, 25), pen=_FINE),
    line((3, 40), (27, 40), pen=_FINE),
    line((3, 55), (27, 55), pen=_FINE),
    shape((28, 26), (92, 26), (100, 32), (100, 48), (92, 54), (28, 54)),
    box(40, 35, 30, 10, round=4, fill=Fill.SOLID),
    box(78, 20, 9, 40, round=4, pen=_LOOK),
)

RINGS: Final[Strokes] = (
    ring(34, 42, 33),
    ring(34, 42, 25),
    ring(88, 54, 24),
    ring(88, 54, 17),
    ring(80, 14, 12),
    ring(80, 14, 6.5),
)

LUBRICATE: Final[Strokes] = (
    ring(34, 46, 32),
    ring(34, 46, 24),
    arc(34, 46, 32, 32, 200, 330, pen=_LOOK),
    shape((70, 14), (78, 30), (114, 14), (102, -10)),
    shape((102, -10), (106, -12), (118, 12), (114, 14)),
    shape((70, 14), (78, 30), (70, 30), (66, 22)),
    ring(63, 29, 4, pen=_LOOK, fill=Fill.SOLID),
)
