"""How a question is set: its sentences as large as there is room for, and a picture with them."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from dataclasses import dataclass, replace
from itertools import zip_longest
from typing import Final

from rich.cells import cell_len

from kiosk.pictures.cells import Row as PictureRow
from kiosk.screens.block_letters import large
from kiosk.screens.lettering import balanced, sentences

MARGIN: Final = 2
"""Free columns on both sides of a text."""
_GAP: Final = 2
"""Free columns between a picture and the text beside it."""
_LEAST_PICTURE: Final = (24, 8)
"""Columns and rows below which a picture is not shown: a stranger may not know what it is."""
_MOST_PICTURE: Final = (42, 14)
_ROOMY: Final = (100, 12)
"""Columns and rows from which on a picture matters more than large letters."""
_UPRIGHT: Final = 72
"""On a narrower screen the picture stands above the text."""

Draw = Callable[[int, int], Sequence[PictureRow]]
"""Draws a picture into at most so many columns and rows."""


@dataclass(frozen=True, slots=True)
class Row:
    """One row of cells of a question."""

    text: str = ""
    times: int = 1
    """How many cells high and wide each cell of the text is drawn, 1 to 4; the rows under it are
    empty."""
    picture: PictureRow = ()


@dataclass(frozen=True, slots=True)
class Setting:
    """A question as it is drawn: the rows, and the columns on the left that the picture takes."""

    rows: tuple[Row, ...]
    aside: int = 0
    large: bool = False
    """True when at least what tells what to do is large."""

    @property
    def widest(self) -> int:
        """Columns of the picture's longest row."""
        lengths = (sum(cell_len(one.text) for one in row.picture) for row in self.rows)
        return max(lengths, default=0)


@dataclass(frozen=True, slots=True)
class Wording:
    """What is to be set."""

    lines: Sequence[str]
    main: int = 0
    """Which of the lines tells what to do."""
    small: Sequence[str] = ()
    """What stands under the lines, never large."""
    tight: bool = False
    """True to set all of it in one block."""
    grows: bool = False
    """True where a letter can be drawn over several cells."""


_Set = list[Row]
_Ways = Callable[[Wording, int], Iterator[_Set]]
"""Sets it in so many columns in one way after the other, the largest first."""
_Setter = Callable[[str, int], _Set | None]
"""Sets a text in lines of so many cells; None where it cannot."""


def best(wording: Wording, width: int, room: int, draw: Draw | None = None) -> Setting:
    """Return the largest setting that fits into `room` rows, else the smallest one there is.

    A picture is shown where there is much room, where large letters fit with it, or where they fit
    in no way.
    """
    found: Setting | None = None
    for found in _all(wording, width, room, draw):
        if len(found.rows) <= room:
            return found
    return found or Setting(())


def plain_rows(wording: Wording, width: int) -> int:
    """Return the rows of the smallest setting."""
    *_, last = _plain_ways(wording, width - 2 * MARGIN)
    return len(last)


def _all(wording: Wording, width: int, room: int, draw: Draw | None) -> Iterator[Setting]:
    """Yield all settings, the best one first."""
    draw = None if wording.tight else draw
    roomy = width >= _ROOMY[0] and room >= _ROOMY[1]
    order = [(_large_ways, draw), (_large_ways, None), (_plain_ways, draw), (_plain_ways, None)]
    if roomy:
        order.insert(1, order.pop(2))
    for ways, drawn in order:
        found = (
            map(Setting, map(tuple, ways(wording, width - 2 * MARGIN)))
            if drawn is None
            else _with_picture(wording, width, room, drawn, ways)
        )
        for one in found:
            yield replace(one, large=ways is _large_ways)


def _with_picture(
    wording: Wording, width: int, room: int, draw: Draw, ways: _Ways
) -> Iterator[Setting]:
    """Yield settings beside or under a picture: as large as it may be, and as small."""
    above = width < _UPRIGHT
    widest = min(_MOST_PICTURE[0], width - 2 * MARGIN if above else width // 3)
    for columns, most in ((widest, _MOST_PICTURE[1]), _LEAST_PICTURE):
        if columns < _LEAST_PICTURE[0] or room < _LEAST_PICTURE[1]:
            return
        picture = [Row(picture=row) for row in draw(columns, min(most, room))]
        aside = 0 if above else MARGIN + columns + _GAP
        for text in ways(wording, width - aside - (2 * MARGIN if above else MARGIN)):
            rows = [*picture, Row(), *text] if above else _beside(picture, text)
            if len(rows) <= room:
                yield Setting(tuple(rows), aside)


def _beside(picture: _Set, text: _Set) -> _Set:
    """Put a picture to the left of a text, both in the middle of their height."""
    high = max(len(picture), len(text))
    first, second = ([Row()] * ((high - len(one)) // 2) + one for one in (picture, text))
    return [
        Row(said.text, said.times, drawn.picture)
        for drawn, said in zip_longest(first, second, fillvalue=Row())
    ]


def _large_ways(wording: Wording, width: int) -> Iterator[_Set]:
    """Yield the ways in which something is large: all of it, the main line, its first sentence."""
    if wording.tight or not wording.lines:
        return
    parts = [sentences(line) for line in wording.lines]
    said = [one for part in parts for one in part]
    first = sum(map(len, parts[: wording.main]))
    spans = {(0, len(said)): None, (first, first + len(parts[wording.main])): None}
    spans[first, first + 1] = None
    four, three, two = _grown(4), _grown(3), _grown(2)
    grown = ((four, two), (three, two), (three, _plain), (two, _plain))
    for big, rest in grown if wording.grows else ((_blocks, _plain),):
        for start, end in spans:
            before = [rest(one, width) for one in said[:start]]
            after = [rest(one, width) for one in said[end:]]
            after += [_plain(one, width) for one in wording.small]
            apart = said[start:end]
            for middle in (apart, [" ".join(apart)]) if len(apart) > 1 else (apart,):
                sets = [*before, *(big(one, width) for one in middle), *after]
                whole = [one for one in sets if one is not None]
                if len(whole) == len(sets):
                    yield _joined(whole, 1)


def _plain_ways(wording: Wording, width: int) -> Iterator[_Set]:
    """Yield the ways in small letters, the airiest one first."""
    parts = [one for line in wording.lines for one in sentences(line)]
    if wording.tight:
        parts = [" ".join(wording.lines)]
    sets = [_plain(one, width) for one in (*parts, *wording.small)]
    if any(len(one) > 1 for one in sets) and not wording.tight:
        yield _joined([_joined([[row] for row in one], 1) for one in sets], 2)
    yield _joined(sets, 1)
    yield _joined(sets, 0)


def _joined(sets: Sequence[_Set], gap: int) -> _Set:
    """Put one under the other, with so many empty rows between them."""
    joined: _Set = []
    for one in sets:
        joined += [Row()] * gap if joined else []
        joined += one
    return joined


def _plain(text: str, width: int) -> _Set:
    return [Row(line) for line in balanced(text, width)]


def _blocks(text: str, width: int) -> _Set | None:
    rows = large(text, width)
    return None if rows is None else [Row(row) for row in rows]


def _grown(times: int) -> _Setter:
    """Return a setter of letters that are drawn so many times as large."""

    def grown(text: str, width: int) -> _Set | None:
        lines = balanced(text, width // times)
        if " ".join(lines).split() != text.split():
            return None
        return [row for line in lines for row in (Row(line, times), *[Row()] * (times - 1))]

    return grown
