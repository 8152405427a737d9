"""The mix pump and its hose."""

from __future__ import annotations

from typing import Final

from kiosk.pictures.shapes import Strokes, arrow, box, line, moved, ring, shape, tube, zigzag
from kiosk.pictures.stroke import Fill, Pen

_FINE, _HIDDEN, _LOOK = Pen.FINE, Pen.HIDDEN, Pen.LOOK

BODY: Final[Strokes] = (
    box(44, 4, 18, 18),
    box(40, 2, 26, 7, round=2),
    box(14, 18, 80, 44),
    ring(14, 40, 8, 22),
    ring(14, 40, 5, 15, fill=Fill.SOLID),
    box(94, 12, 10, 56, round=3),
    box(104, 32, 12, 16),
    line((28, 62), (28, 18), pen=_FINE),
)

PISTON: Final[Strokes] = (
    ring(12, 40, 11),
    ring(12, 40, 5),
    box(22, 35, 30, 10),
    box(52, 18, 60, 44, round=3),
    line((60, 18), (60, 62)),
    line((66, 18), (66, 62)),
    line((80, 18), (80, 62), pen=_FINE),
    line((104, 18), (104, 62), pen=_FINE),
    ring(92, 40, 5, fill=Fill.SOLID),
)

CHECK_BAND: Final[Strokes] = (
    *PISTON,
    box(80, 13, 24, 54, round=4, pen=_LOOK),
    ring(92, 40, 5, pen=_HIDDEN, fill=Fill.NONE),
)

SMALL_PARTS: Final[Strokes] = (
    shape((4, 20), (62, 20), (54, 74), (12, 74)),
    ring(33, 20, 29, 8),
    ring(82, 14, 12),
    ring(82, 14, 6),
    ring(108, 22, 8),
    ring(108, 22, 4),
    zigzag((70, 42), (116, 42), 12, 9),
    box(70, 58, 34, 6, round=2),
    ring(108, 61, 6),
    ring(78, 74, 8, 4),
    ring(102, 76, 6, 3),
)

HOSE: Final[Strokes] = (
    tube((18, 16), (18, 40), (36, 62), (60, 66), (84, 62), (102, 40), (102, 16), wide=15),
    box(7, 2, 22, 16, round=3),
    box(91, 2, 22, 16, round=3),
    line((7, 10), (29, 10), pen=_FINE),
    line((91, 10), (113, 10), pen=_FINE),
)

LOCK_PIN: Final[Strokes] = (
    ring(20, 40, 19),
    ring(20, 40, 12),
    shape((34, 32), (108, 32), (116, 37), (116, 43), (108, 48), (34, 48)),
    line((96, 32), (96, 48)),
    line((46, 32), (46, 48), pen=_FINE),
)

HOSE_ON: Final[Strokes] = (
    line((34, 0), (34, 34), (116, 34), (116, 0)),
    box(50, 10, 44, 16),
    box(28, 14, 22, 8),
    box(34, 46, 82, 28),
    ring(34, 60, 5, 14),
    box(22, 57, 12, 7),
    tube((28, 18), (14, 20), (6, 38), (12, 56), (24, 60), wide=9, pen=_LOOK),
)

PUMP_IN: Final[Strokes] = (
    line((2, 10), (2, 76), (118, 76), (118, 10)),
    box(80, 34, 24, 42),
    *moved(BODY, 18, 24, scale=0.62),
    line((92, 22), (92, 66), pen=_LOOK),
    ring(92, 16, 6, pen=_LOOK),
    *arrow((50, -8), (50, 14)),
)

SEALS: Final[Strokes] = (
    *moved(BODY, -8, -4, scale=0.7),
    ring(82, 24, 5, 18, pen=_LOOK),
    ring(100, 24, 5, 18, pen=_LOOK),
    *moved(CHECK_BAND, 36, 40, scale=0.7),
)
