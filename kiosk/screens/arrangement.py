"""Where everything stands: how many columns and rows the targets get, and what waits behind `more`.

Sizes are terminal cells. A target is never smaller than 18 columns by 3 rows.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

from kiosk.screens.faces import Face

LEAST_WIDTH: Final = 18
LEAST_HEIGHT: Final = 3
GAP: Final = 1
_TALLEST: Final = 7

_CARD_WIDTH: Final = 38
_CARD_ROWS: Final = 6
_LOW_CARD_ROWS: Final = 5
"""Where only one card of the usual height would fit."""
_TALLEST_CARD: Final = 10


@dataclass(frozen=True, slots=True)
class Block:
    """Targets in rows and columns of equal size."""

    faces: tuple[Face, ...] = ()
    columns: int = 1
    height: int = LEAST_HEIGHT
    """Rows of the screen that one target takes."""

    @property
    def rows(self) -> int:
        """Rows of the screen that the block takes."""
        return -(-len(self.faces) // self.columns) * self.height

    @property
    def least_rows(self) -> int:
        """Rows that it takes with targets of the least height."""
        return self.rows // self.height * LEAST_HEIGHT


@dataclass(frozen=True, slots=True)
class Arrangement:
    """The two blocks of targets under a question."""

    primary: Block
    secondary: Block


def most_columns(width: int) -> int:
    """Return how many targets of the least width fit beside each other."""
    return max(1, (width + GAP) // (LEAST_WIDTH + GAP))


def even_columns(count: int, most: int) -> int:
    """Return the columns for `count` targets: as few rows as `most` allows, evenly filled."""
    rows = max(1, -(-count // most))
    return max(1, -(-count // rows))


def arrange(
    faces: Sequence[Face], width: int, height: int, sentence: int, more: Face
) -> Arrangement:
    """Share `height` rows between the sentence's rows and the targets.

    The secondary targets get two rows of targets where there is room beside the sentence, else one;
    what does not fit stands behind `more`. The primary targets grow into what is left.
    """
    most = most_columns(width)
    primary = tuple(face for face in faces if face.primary)
    secondary = tuple(face for face in faces if not face.primary)
    columns = even_columns(len(primary), most)
    least = -(-len(primary) // columns) * LEAST_HEIGHT
    lines = 2 if height - sentence - least >= 2 * LEAST_HEIGHT else 1
    if len(secondary) > lines * most:
        secondary = (*secondary[: lines * most - 1], more)
    beside = Block(secondary, even_columns(len(secondary), most))
    tall = LEAST_HEIGHT
    if primary:
        rows = -(-len(primary) // columns)
        spare = height - sentence - beside.rows
        tall = max(LEAST_HEIGHT, min(_TALLEST if rows == 1 else LEAST_HEIGHT + 1, spare // rows))
    return Arrangement(Block(primary, columns, tall), beside)


def page(faces: Sequence[Face], width: int, height: int, number: int, more: Face) -> Block:
    """Return one page of a list of targets in `height` rows, the last place leading to the next."""
    most = most_columns(width)
    room = max(1, most * max(1, height // LEAST_HEIGHT))
    shown = tuple(faces)
    if len(shown) > room:
        each = max(1, room - 1)
        pages = -(-len(shown) // each)
        start = number % pages * each
        shown = (*shown[start : start + each], more)
    columns = even_columns(len(shown), most)
    rows = -(-len(shown) // columns)
    return Block(shown, columns, max(LEAST_HEIGHT, min(LEAST_HEIGHT + 2, height // max(1, rows))))


@dataclass(frozen=True, slots=True)
class CardPage:
    """Which of the board's cards are shown, and in what size."""

    shown: range
    columns: int
    height: int
    """Rows of the screen that one card takes."""
    more: bool
    """True when not all are shown, and the last place leads to the next."""


def card_page(count: int, width: int, height: int, number: int) -> CardPage:
    """Return one page of `count` cards in `height` rows."""
    columns = max(1, min(width // _CARD_WIDTH, count))
    least = _LOW_CARD_ROWS if height < 2 * _CARD_ROWS else _CARD_ROWS
    room = columns * max(1, height // least)
    shown, more = range(count), count > room
    if more:
        if room == 1:
            # One card, and the way to the next beside it.
            columns = room = 2
        each = max(1, room - 1)
        start = number % -(-count // each) * each
        shown = shown[start : start + each]
    rows = max(1, -(-(len(shown) + more) // columns))
    return CardPage(shown, columns, max(least, min(height // rows, _TALLEST_CARD)), more)
