"""The fonts that have Hangul and Chinese characters, and as much of them as one page needs."""

from __future__ import annotations

import io
from functools import cache
from importlib import import_module
from importlib.util import find_spec
from pathlib import Path
from typing import Final

_MODULES: Final = {"ko": "pylopdf_fonts_ko", "zh": "pylopdf_fonts_zh_cn"}
"""The packages with a font, by its language. Both have the letters of Vietnamese as well."""
_EUROPEAN: Final = 0x024F
"""The last character that the fonts of any reader's machine have."""


def font_files(language: str) -> tuple[Path, ...]:
    """Return the font files, the one to begin with in a language first.

    None where the extra `paper`, which prints with them, is missing.
    """
    if any(find_spec(name) is None for name in ("fpdf", "fontTools")):
        return ()
    names = sorted(_MODULES, key=lambda one: one != language)
    modules = [_MODULES[one] for one in names if find_spec(_MODULES[one]) is not None]
    return tuple(Path(import_module(one).sans_path()) for one in modules)


def parts_for(text: str, language: str) -> tuple[bytes, ...]:
    """Return OpenType fonts with the characters of a text that go beyond the European ones.

    None where there are none, or where no font is installed: a reader's own fonts show them. What
    two fonts have is taken from the one that comes first in the language.
    """
    wanted = {ord(sign) for sign in text if ord(sign) > _EUROPEAN}
    found: list[bytes] = []
    for file in font_files(language) if wanted else ():
        there = wanted & characters(file)
        if there:
            found.append(_part(file, there))
            wanted -= there
    return tuple(found)


@cache
def characters(file: Path) -> frozenset[int]:
    """Return the characters that a font has."""
    from fontTools.ttLib import TTFont

    with TTFont(file, lazy=True) as font:
        return frozenset(font.getBestCmap())


def _part(file: Path, wanted: set[int]) -> bytes:
    from fontTools.subset import Options, Subsetter
    from fontTools.ttLib import TTFont

    made = io.BytesIO()
    with TTFont(file, lazy=True) as font:
        cutter = Subsetter(Options(layout_features=[], hinting=False, notdef_outline=True))
        cutter.populate(unicodes=wanted)
        cutter.subset(font)
        font.save(made)
    return made.getvalue()
