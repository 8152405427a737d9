"""What stands around the machine: brushes, buckets, sinks, the plug and the lock."""

from __future__ import annotations

from typing import Final

from kiosk.pictures.of_door import DOOR, TWIN_DOOR, spout
from kiosk.pictures.shapes import (
    Strokes,
    arc,
    arrow,
    box,
    curve,
    line,
    moved,
    ring,
    shape,
    tube,
    zigzag,
)
from kiosk.pictures.stroke import Fill, Pen

_FINE, _LOOK = Pen.FINE, Pen.LOOK


def _brush(y: float, handle: float, end: float, high: float) -> Strokes:
    return (
        box(0, y - 3, handle, 6, round=2),
        box(handle, y - high / 2, end - handle, high, round=3),
        zigzag((handle, y), (end, y), high - 2, round((end - handle) / 4)),
    )


BRUSHES: Final[Strokes] = (
    *_brush(16, 58, 118, 28),
    *_brush(46, 78, 118, 14),
    *_brush(68, 98, 118, 8),
)


def bucket(x: float, y: float, wide: float, high: float) -> Strokes:
    """Return a bucket by the left end and the height of its rim."""
    half, foot = wide / 2, wide * 0.14
    return (
        shape((x, y), (x + wide, y), (x + wide - foot, y + high), (x + foot, y + high)),
        ring(x + half, y, half, wide * 0.13),
    )


STRIP_BUCKET: Final[Strokes] = (
    arc(60, 26, 42, 30, 190, 350, pen=_FINE),
    *bucket(18, 26, 84, 54),
    arc(60, 28, 34, 7, 0, 180, pen=_FINE),
    shape((66, -4), (75, -2), (66, 32), (57, 30), pen=_LOOK),
)

STRIP: Final[Strokes] = (
    box(30, 2, 88, 52, round=3),
    *(box(36 + 20 * n, 10, 16, 16, fill=Fill.PAPER) for n in range(4)),
    box(64, 15, 3, 3, fill=Fill.SOLID),
    box(79, 13, 10, 10, fill=Fill.SOLID),
    box(96, 10, 16, 16, fill=Fill.SOLID),
    line((36, 38), (112, 38), pen=_FINE),
    box(2, 62, 92, 14, round=2, pen=_LOOK),
    box(78, 62, 16, 14, pen=_LOOK, fill=Fill.SOLID),
)


def _basin(x: float, wide: float, pen: Pen = Pen.OUTLINE) -> Strokes:
    right = x + wide
    return (
        line((x - 3, 34), (x + 3, 34), (x + 3, 76), (right - 3, 76), (right - 3, 34),
             (right + 3, 34), pen=pen),
    )  # fmt: skip


def _tap(x: float, y: float) -> Strokes:
    return (tube((x + 22, y + 22), (x + 22, y + 4), (x + 10, y), (x, y + 4), (x, y + 10), wide=6),)


_BUBBLES: Final[Strokes] = (
    ring(24, 38, 7), ring(40, 32, 9), ring(58, 36, 8), ring(76, 30, 9), ring(94, 37, 7),
    ring(50, 18, 5), ring(70, 12, 4),
)  # fmt: skip

WASH: Final[Strokes] = (
    *_basin(4, 112),
    line((8, 44), (112, 44), pen=_FINE),
    ring(36, 62, 12), ring(36, 62, 8),
    box(66, 56, 34, 10, round=2),
    *_BUBBLES,
)  # fmt: skip

RINSE: Final[Strokes] = (
    *_basin(4, 112),
    tube((100, 34), (100, 10), (86, 0), (64, 2), (60, 14), wide=9),
    *(line((x, 18), (x, 56), pen=_LOOK) for x in (56, 64)),
    ring(60, 62, 20, 8),
    ring(60, 62, 12, 4),
)

SANITIZE: Final[Strokes] = (
    *_basin(4, 112),
    line((8, 42), (112, 42), pen=_LOOK),
    ring(30, 62, 12), ring(30, 62, 8),
    box(50, 56, 24, 12, round=3),
    box(56, 54, 4, 16, round=2),
    *((zigzag((80, 62), (106, 62), 12, 5)),),
    shape((90, 12), (98, 14), (92, 48), (84, 46)),
)  # fmt: skip

THREE_SINKS: Final[Strokes] = (
    *_basin(2, 36), *_basin(42, 36, _LOOK), *_basin(82, 36),
    *moved(_BUBBLES[:5], 1, 26, scale=0.32),
    line((6, 46), (34, 46), pen=_FINE),
    *moved(_tap(0, 0), 60, 4),
    line((60, 16), (60, 70)),
    line((86, 46), (114, 46)),
    ring(94, 62, 6), box(102, 58, 10, 8),
)  # fmt: skip

RACK: Final[Strokes] = (
    ring(22, 26, 18), ring(22, 26, 12),
    box(48, 24, 34, 20, round=3),
    box(54, 20, 5, 28, round=2),
    shape((90, 44), (112, 8), (117, 12), (98, 44)),
    box(0, 44, 120, 6),
    *(line((x, 44), (x, 50), pen=_FINE) for x in range(10, 120, 10)),
    line((8, 50), (8, 78)), line((112, 50), (112, 78)),
    *(curve((x, 76), (x - 5, 70), (x + 5, 62), (x, 56), pen=_FINE) for x in (34, 60, 86)),
)  # fmt: skip

_SOCKET: Final[Strokes] = (
    box(82, 8, 36, 64, round=6),
    ring(100, 40, 12),
    ring(100, 34, 2, fill=Fill.SOLID),
    ring(100, 46, 2, fill=Fill.SOLID),
)

_PLUG: Final[Strokes] = (
    tube((2, 74), (4, 58), (10, 46), (24, 40), wide=6),
    shape((20, 34), (30, 26), (52, 26), (52, 54), (30, 54), (20, 46), pen=_LOOK),
    box(52, 31, 14, 4),
    box(52, 45, 14, 4),
)

PLUG: Final[Strokes] = (*_SOCKET, *_PLUG)

PLUG_IN: Final[Strokes] = (*_SOCKET, *moved(_PLUG, 34), *arrow((8, 18), (44, 18)))

LOCKOUT: Final[Strokes] = (
    box(6, -4, 62, 84, round=4),
    ring(37, 22, 13),
    line((37, 22), (37, 42)),
    box(33, 20, 8, 28, round=3),
    box(60, 38, 14, 8),
    arc(84, 44, 12, 14, 180, 360, pen=_LOOK),
    box(66, 44, 36, 30, round=4, pen=_LOOK),
    ring(84, 56, 3, fill=Fill.SOLID),
    box(82, 56, 4, 10, fill=Fill.SOLID),
)


def _hand(x: float, y: float) -> Strokes:
    """Return an open hand, its fingers up, by the corner of its smallest finger."""
    return (
        shape((x + 34, y + 34), (x + 46, y + 24), (x + 51, y + 28), (x + 38, y + 52)),
        *(box(x + 9 * n, y + top, 8, 34 - top, round=3.5) for n, top in enumerate((10, 3, 0, 5))),
        shape(
            (x, y + 28), (x + 35, y + 28), (x + 38, y + 48), (x + 30, y + 62), (x + 4, y + 62),
            (x, y + 48),
        ),
    )  # fmt: skip


HAND_WASH: Final[Strokes] = (
    *moved(_tap(0, 0), 46, -6, scale=1.6),
    *(line((x, 12), (x, 24), pen=_LOOK) for x in (42, 50)),
    *_hand(20, 22),
    ring(86, 40, 6), ring(98, 54, 8), ring(82, 66, 5), ring(12, 60, 5),
)  # fmt: skip

PROTECTION: Final[Strokes] = (
    *_hand(2, 2),
    box(2, 64, 34, 14, round=3),
    line((2, 70), (36, 70), pen=_FINE),
    box(58, 22, 28, 24, round=9, pen=_LOOK),
    box(90, 22, 28, 24, round=9, pen=_LOOK),
    arc(88, 30, 5, 4, 180, 360),
    line((58, 32), (52, 28)),
)

_FEET: Final[Strokes] = (box(30, 74, 8, 5), box(82, 74, 8, 5))

TWIN_MACHINE: Final[Strokes] = (
    *_FEET,
    box(24, 2, 72, 72, round=3),
    box(28, -4, 30, 6), box(62, -4, 30, 6),
    box(46, 7, 28, 9, round=2, pen=_FINE),
    *moved(TWIN_DOOR, 30, 18, scale=0.5),
    box(36, 62, 48, 6, round=2),
    line((24, 6), (24, 72), pen=_LOOK), line((95, 6), (95, 72), pen=_LOOK),
)  # fmt: skip

SINGLE_MACHINE: Final[Strokes] = (
    *_FEET,
    box(32, 2, 56, 72, round=3),
    box(40, -4, 40, 6),
    box(48, 7, 24, 8, round=2, pen=_FINE),
    *moved(DOOR, 33, 18, scale=0.45),
    box(42, 64, 36, 5, round=2),
    line((32, 6), (32, 72), pen=_LOOK), line((87, 6), (87, 72), pen=_LOOK),
)  # fmt: skip

DRAIN_TWIN: Final[Strokes] = (
    *moved(TWIN_DOOR, 6, -10, scale=0.9),
    *bucket(22, 66, 76, 34),
    *(line((x, 58), (x, 66), pen=_LOOK) for x in (37.5, 60, 82.5)),
)

DRAIN_SINGLE: Final[Strokes] = (
    *moved(DOOR, 6, -10, scale=0.9),
    *bucket(30, 68, 60, 34),
    line((60, 58), (60, 68), pen=_LOOK),
)

CUP: Final[Strokes] = (
    *spout(60, -8, 18, 24),
    shape((36, 44), (84, 44), (78, 80), (42, 80)),
    ring(60, 44, 24, 6),
    line((60, 26), (60, 42), pen=_LOOK),
    box(44, 56, 32, 12, pen=_FINE),
)

ICE: Final[Strokes] = (
    shape((30, -2), (60, -2), (56, 40), (34, 40), pen=_LOOK),
    box(27, -10, 36, 8, round=2, pen=_LOOK),
    shape((74, 6), (100, 6), (96, 40), (78, 40), pen=_LOOK),
    box(71, -2, 32, 8, round=2, pen=_LOOK),
    line((4, 22), (10, 78), (110, 78), (116, 22)),
    *(
        shape((x, y), (x + 14, y - 4), (x + 18, y + 9), (x + 4, y + 13))
        for x, y in ((14, 44), (38, 48), (62, 46), (86, 44), (26, 62), (52, 63), (76, 62))
    ),
)
