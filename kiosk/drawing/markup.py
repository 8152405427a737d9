"""Elements of SVG and HTML; every text and attribute is escaped when they are written out."""

from __future__ import annotations

import re
from xml.etree import ElementTree

Element = ElementTree.Element
Child = Element | str
Value = str | float

_UNWRITABLE = re.compile("[^\t\n\r\u0020-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""Characters that XML 1.0 cannot hold (production 2, from memory)."""


def element(tag: str, *children: Child, **attributes: Value) -> Element:
    """Return an element. `stroke_width` becomes `stroke-width`, and `class_` becomes `class`."""
    made = ElementTree.Element(tag)
    for name, value in attributes.items():
        made.set(name.rstrip("_").replace("_", "-"), _written(value))
    add(made, *children)
    return made


def add(parent: Element, *children: Child) -> None:
    """Put elements and text at the end of an element, in order."""
    for child in children:
        if not isinstance(child, str):
            parent.append(child)
        elif len(parent):
            parent[-1].tail = (parent[-1].tail or "") + _clean(child)
        else:
            parent.text = (parent.text or "") + _clean(child)


def as_xml(root: Element) -> str:
    """Return an XML document."""
    body = ElementTree.tostring(root, encoding="unicode")
    return f'<?xml version="1.0" encoding="UTF-8"?>\n{body}\n'


def as_html(root: Element) -> str:
    """Return an HTML document. A `style` element is written as it is and holds no text of files."""
    body = ElementTree.tostring(root, encoding="unicode", method="html")
    return f"<!doctype html>\n{body}\n"


def _written(value: Value) -> str:
    return _clean(value) if isinstance(value, str) else f"{value:.2f}".rstrip("0").rstrip(".")


def _clean(text: str) -> str:
    """Return a text with what XML cannot hold replaced."""
    return _UNWRITABLE.sub("\ufffd", text)
