"""A figure as SVG text, to stand in a page or a file of its own."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from functools import partial
from xml.etree import ElementTree
from zlib import crc32

from kiosk.drawing.markup import Element, add, element
from kiosk.drawing.wrap import BOLD, wrap
from kiosk.plots.figure import Chart, Figure, Lanes, Strip
from kiosk.plots.svg_chart import drawn, frame, key_swatch, swatch
from kiosk.plots.svg_rows import lanes, lanes_height, strip, strip_height
from kiosk.plots.svg_strokes import LINE, SMALL, TITLE, letters, wide

_FONTS = (
    "'Noto Sans', 'Segoe UI', Helvetica, Arial, 'Noto Sans CJK KR', 'Malgun Gothic', sans-serif"
)
_SAMPLE = 8.5
"""Width in mm of a sample in the key, with the gap behind it."""
_GAP = 5.0

Entry = tuple[str, Callable[[float, float], Iterator[Element]]]
"""What something means, and what draws a sample of it at a place."""


def svg(figure: Figure, width: float = 180.0, height: float = 76.0) -> str:
    """Return one `svg` element, `width` by `height` in mm; strips and lanes take what they need.

    It needs nothing outside itself, and its ids are its own, so that several fit into one page.
    What comes from a row of the journal carries `data-seq` and `data-session`.
    """
    return ElementTree.tostring(_drawn(figure, width, height), encoding="unicode")


def _drawn(figure: Figure, width: float, height: float) -> Element:
    name = f"plot-{crc32(repr((figure, width, height)).encode()):08x}"
    titles = wrap(figure.title, width / TITLE / BOLD)
    top = len(titles) * TITLE * 1.3 + 1
    key = _placed(_key(figure), width)
    foot = LINE * (1 + max((row for _, row, _ in key), default=-1))
    if not isinstance(figure, Chart):
        height = top + _rows_height(figure, width) + foot + 1
    root = element(
        "svg",
        element("title", figure.title, id=f"{name}-title"),
        element("desc", figure.told, id=f"{name}-told"),
        element("rect", width=width, height=height, fill="white"),
        xmlns="http://www.w3.org/2000/svg", role="img", viewBox=f"0 0 {width:g} {height:.6g}",
        width=f"{width:g}mm", height=f"{height:.6g}mm", font_family=_FONTS,
    )  # fmt: skip
    root.set("aria-labelledby", f"{name}-title {name}-told")
    for place, line in enumerate(titles):
        add(root, letters(line, 0, TITLE + place * TITLE * 1.3, bold=True, size=TITLE))
    match figure:
        case Chart():
            add(root, *drawn(frame(figure, top, width, height - foot - 0.5)))
        case Strip():
            add(root, *strip(figure, top, width))
        case Lanes():
            add(root, *lanes(figure, top, width))
    for (meaning, sample), row, x in key:
        y = height - foot + LINE * (row + 0.5)
        add(root, *sample(x, y), letters(meaning, x + _SAMPLE, y + SMALL * 0.35))
    return root


def _rows_height(figure: Strip | Lanes, width: float) -> float:
    if isinstance(figure, Strip):
        return strip_height(figure, width)
    return lanes_height(figure)


def _key(figure: Figure) -> list[Entry]:
    if isinstance(figure, Chart):
        named = [layer for layer in figure.layers if layer.name]
        return [(layer.name, partial(swatch, layer)) for layer in named]
    return [(meaning, partial(key_swatch, what)) for what, meaning in figure.key]


def _placed(entries: list[Entry], width: float) -> list[tuple[Entry, int, float]]:
    """Return the entries of the key with their row and their place in it."""
    placed: list[tuple[Entry, int, float]] = []
    row, x = 0, 0.0
    for entry in entries:
        needs = _SAMPLE + wide(entry[0])
        if x and x + needs > width:
            row, x = row + 1, 0.0
        placed.append((entry, row, x))
        x += needs + _GAP
    return placed
