"""The font that has Hangul, and as much of it as one page needs."""

from __future__ import annotations

import io
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path
from typing import Final

_MODULE: Final = "pylopdf_fonts_ko"
_EUROPEAN: Final = 0x024F
"""The last character that the fonts of any reader's machine have."""


def font_file() -> Path | None:
    """Return the font file; None where the extra `paper`, which prints with it, is missing."""
    if any(find_spec(name) is None for name in (_MODULE, "fpdf", "fontTools")):
        return None
    found: Path = import_module(_MODULE).sans_path()
    return found


def part_for(text: str) -> bytes | None:
    """Return an OpenType font with the characters of a text that go beyond the European ones.

    None where there are none, or where the font is not installed: a reader's own fonts show them.
    """
    wanted = {ord(sign) for sign in text if ord(sign) > _EUROPEAN}
    file = font_file()
    if file is None or not wanted:
        return None
    from fontTools.subset import Options, Subsetter
    from fontTools.ttLib import TTFont

    made = io.BytesIO()
    with TTFont(file, lazy=True) as font:
        cutter = Subsetter(Options(layout_features=[], hinting=False, notdef_outline=True))
        cutter.populate(unicodes=wanted)
        cutter.subset(font)
        font.save(made)
    return made.getvalue()
