"""The barrel and what turns in it: beater, scraper blades, drive shaft and drive seal."""

from __future__ import annotations

import math
from typing import Final

from kiosk.pictures.shapes import (
    Strokes,
    arrow,
    box,
    curve,
    line,
    looked_at,
    moved,
    ring,
    shape,
    zigzag,
)
from kiosk.pictures.stroke import Fill, Pen, Stroke

_FINE, _HIDDEN, _LOOK = Pen.FINE, Pen.HIDDEN, Pen.LOOK


def _ribbon(begin: float, end: float, reach: float, wide: float) -> Stroke:
    """Return half a turn of the helix about the axis at y 40, from its foot to its top."""
    turn = [math.radians(-90 + 15 * n) for n in range(13)]
    edge = [
        (begin + (end - begin) * (at + math.pi / 2) / math.pi, 40 - reach * math.sin(at))
        for at in turn
    ]
    return shape(*edge, *((x + wide, y) for x, y in reversed(edge)))


BEATER: Final[Strokes] = (
    # A frame that one can see through: its back half turns first.
    _ribbon(58, 30, 25, 9),
    _ribbon(94, 66, 25, 9),
    ring(104, 40, 6, 25),
    box(101, 34, 15, 12),
    _ribbon(2, 30, 25, 9),
    _ribbon(38, 66, 25, 9),
    _ribbon(74, 98, 25, 9),
    ring(6, 40, 5, 25, fill=Fill.NONE),
)

_BLADES: Final[Strokes] = (
    shape((14, 8), (96, 8), (100, 15), (10, 15)),
    shape((10, 65), (100, 65), (96, 72), (14, 72)),
)

BLADES_ON: Final[Strokes] = (*BEATER, *looked_at(_BLADES))

_BLADE: Final[Strokes] = (
    shape((2, 26), (104, 2), (110, 12), (8, 37)),
    line((4, 30), (106, 6), pen=_FINE),
    *(box(x, 28 - x * 0.235, 9, 4) for x in (20, 52, 84)),
)

BLADES: Final[Strokes] = (*_BLADE, *moved(_BLADE, 8, 36))

SHAFT: Final[Strokes] = (
    box(2, 31, 24, 18),
    line((2, 31), (26, 49), pen=_FINE),
    line((2, 49), (26, 31), pen=_FINE),
    box(26, 34, 24, 12),
    box(50, 22, 9, 36, round=2),
    box(59, 34, 31, 12),
    shape((90, 30), (94, 26), (116, 26), (116, 54), (94, 54), (90, 50)),
    line((92, 35), (116, 35)),
    line((92, 45), (116, 45)),
)

SEAL: Final[Strokes] = (
    shape(
        (40, 6), (54, 8), (64, 16), (72, 26), (94, 28), (94, 52), (72, 54), (64, 64), (54, 72),
        (40, 74),
    ),
    ring(94, 40, 4, 12),
    ring(40, 40, 13, 34, pen=_LOOK),
    ring(42, 40, 8, 24),
    ring(46, 40, 4, 11, fill=Fill.SOLID),
    curve((64, 18), (68, 40), (64, 62), pen=_FINE),
)  # fmt: skip


def _section(left: float) -> Strokes:
    """Return a barrel cut open, its front to the left, its rear wall with the shaft hole."""
    return (
        box(left, 6, 96 - left, 5, fill=Fill.SOLID),
        box(left, 69, 96 - left, 5, fill=Fill.SOLID),
        box(91, 6, 5, 27, fill=Fill.SOLID),
        box(91, 47, 5, 27, fill=Fill.SOLID),
    )


SHAFT_SEAL: Final[Strokes] = (
    *_section(22),
    box(98, 20, 20, 40, pen=_HIDDEN),
    box(34, 35, 76, 10),
    box(20, 31, 16, 18),
    shape((66, 33), (72, 24), (88, 20), (88, 33), pen=_LOOK, fill=Fill.SOLID),
    shape((66, 47), (72, 56), (88, 60), (88, 47), pen=_LOOK, fill=Fill.SOLID),
)

SHAFT_IN: Final[Strokes] = (
    *_section(40),
    box(98, 20, 20, 40, pen=_HIDDEN),
    shape((48, 28), (52, 24), (68, 20), (68, 60), (52, 56), (48, 52), pen=_LOOK),
    *moved(SHAFT, 0, 8, scale=0.8),
    *arrow((6, 14), (32, 14)),
)

BEATER_IN: Final[Strokes] = (
    *_section(50),
    *moved(BLADES_ON, -2, 8, scale=0.8),
    *arrow((8, 2), (40, 2)),
)

_DEPTH: Final = (((29, 11), (45, 24)), ((29, 69), (45, 56)), ((12, 40), (37, 40)))

BARREL: Final[Strokes] = (
    shape((36, 6), (108, 6), (114, 16), (118, 40), (114, 64), (108, 74), (36, 74)),
    ring(36, 40, 30, 38),
    ring(36, 40, 24, 31),
    ring(48, 40, 11, 17),
    *(line(edge, rear, pen=_FINE) for edge, rear in _DEPTH),
    ring(48, 40, 4, 6.5, pen=_LOOK, fill=Fill.SOLID),
)

BARREL_BRUSH: Final[Strokes] = (
    *_section(30),
    box(0, 37, 46, 6, round=2),
    box(46, 14, 40, 52, round=4, pen=_LOOK),
    *(zigzag((46, y), (86, y), 8, 10) for y in (22, 34, 46, 58)),
)

REAR_BRUSH: Final[Strokes] = (
    *_section(30),
    box(0, 38, 66, 4),
    box(66, 35, 50, 10, round=2, pen=_LOOK),
    zigzag((66, 40), (116, 40), 9, 16),
)
