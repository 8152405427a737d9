"""A picture as SVG, in black and greys, with a title and a sentence for who cannot see it."""

from __future__ import annotations

from typing import Final
from xml.etree import ElementTree

from kiosk.languages.words import Words
from kiosk.pictures.stroke import Fill, Pen, Picture, Stroke

Element = ElementTree.Element

_MARGIN: Final = 4.0

_LOOK: Final = "#a3001b"
"""Dark on white also without colour: contrast 8.5:1 (CALC, by the formula of WCAG 2.2)."""
_PENS: Final = {
    Pen.OUTLINE: {"stroke": "#000", "stroke-width": "1.5"},
    Pen.FINE: {"stroke": "#444", "stroke-width": "0.8"},
    Pen.HIDDEN: {"stroke": "#444", "stroke-width": "1", "stroke-dasharray": "3.5 2.5"},
    Pen.LOOK: {"stroke": _LOOK, "stroke-width": "4"},
}


def svg(picture: Picture, words: Words, wide: float = 60.0, high: float = 40.0) -> str:
    """Return one `svg` element that needs nothing outside itself.

    It is as large as fits into `wide` by `high` mm.
    """
    root = drawn(picture, words, wide, high)
    root.set("xmlns", "http://www.w3.org/2000/svg")
    return ElementTree.tostring(root, encoding="unicode")


def drawn(picture: Picture, words: Words, wide: float = 60.0, high: float = 40.0) -> Element:
    """Return that element, to stand in an HTML page."""
    left, top, right, bottom = picture.box
    across, down = right - left + 2 * _MARGIN, bottom - top + 2 * _MARGIN
    scale = min(wide / across, high / down)
    root = Element(
        "svg",
        {
            "role": "img",
            "class": "picture",
            "viewBox": f"{left - _MARGIN:.1f} {top - _MARGIN:.1f} {across:.1f} {down:.1f}",
            "width": f"{scale * across:.1f}mm",
            "height": f"{scale * down:.1f}mm",
        },
    )
    ElementTree.SubElement(root, "title").text = title(picture.name, words)
    ElementTree.SubElement(root, "desc").text = told(picture.name, words)
    lines = ElementTree.SubElement(
        root, "g", {"fill": "none", "stroke-linejoin": "round", "stroke-linecap": "round"}
    )
    for stroke in picture.strokes:
        ElementTree.SubElement(lines, "path", {"d": _path(stroke), **_look(stroke)})
    return root


def title(name: str, words: Words) -> str:
    """Return what a picture shows, as a name."""
    return words.say(f"shown-{name}")


def told(name: str, words: Words) -> str:
    """Return what there is to see in a picture, as a sentence."""
    return words.say(f"told-{name}")


def _look(stroke: Stroke) -> dict[str, str]:
    pen = _PENS[stroke.pen]
    match stroke.fill:
        case Fill.PAPER:
            return {**pen, "fill": "#fff"}
        case Fill.SOLID:
            return {**pen, "fill": pen["stroke"]}
        case Fill.NONE:
            return pen


def _path(stroke: Stroke) -> str:
    places = " L".join(f"{x:.1f},{y:.1f}" for x, y in stroke.points)
    return f"M{places}{' Z' if stroke.closed else ''}"
