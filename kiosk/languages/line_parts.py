"""Where a line may end inside a word without blanks: Chinese has none between its words."""

from __future__ import annotations

import re
from typing import Final

# A line does not begin with a mark that ends or joins, nor end with one that opens: GB/T 15834-2011
# on punctuation, 5.1, and the lists of the W3C's Requirements for Chinese Text Layout, 3.1 (both
# from memory).
_OPENS: Final = "“‘（《〈「『【〔［"
_CLOSES: Final = "”’）》〉」』】〕］、，。．；：？！…—～·％"
_HAN: Final = "\u3400-\u4dbf\u4e00-\u9fff\uf900-\ufaff"
_OTHER: Final = f"[^{_OPENS}{_CLOSES}{_HAN}]+"

_PART: Final = re.compile(
    f"[{_OPENS}]*(?:[{_HAN}]|{_OTHER}(?:(?<=[0-9])[{_HAN}])?)[{_CLOSES}]*|.[{_CLOSES}]*", re.DOTALL
)
_CHINESE: Final = re.compile(f"[{_HAN}]")


def line_parts(word: str) -> list[str]:
    """Part a word where a line may be broken: between Chinese characters.

    Not broken are words of other letters, a number with the character after it, and a mark from
    what it belongs to. A word without Chinese characters is one part.
    """
    return _PART.findall(word) if _CHINESE.search(word) else [word]
