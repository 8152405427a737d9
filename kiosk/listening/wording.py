"""Normal form of English text, so that what was heard and what is allowed can be compared."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

from num2words import num2words

_NUMBER: Final = re.compile(r"(?<![\w.])-?\d+(?:\.\d+)?(?![\w]|\.\d)")
_THOUSANDS: Final = re.compile(r"(?<=\d),(?=\d{3}(?!\d))")
_SIGNS: Final = {"%": " percent ", "°": " degrees ", "&": " and ", "+": " plus "}
_ALIKE: Final = {"ok": "okay", "o'clock": "oclock", "ppm": "p p m"}
NUMBER_WORDS: Final = frozenset((
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
    "nineteen", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety",
    "hundred", "thousand",
))  # fmt: skip


def normal(text: str) -> str:
    """Return English `text` in lower case words: no punctuation, numbers written out.

    '38.5' and 'Thirty-eight point five.' come out the same, and so do '-2' and 'minus two'.
    """
    text = text.lower().replace("’", "'").replace("−", "-").replace("–", "-")
    for sign, word in _SIGNS.items():
        text = text.replace(sign, word)
    text = _NUMBER.sub(lambda found: f" {_written_out(found.group())} ", _THOUSANDS.sub("", text))
    words = [_word(word) for word in re.split(r"[^\w']+", text) if word.strip("'")]
    return " ".join(_without_and(" ".join(words).split()))


def _word(word: str) -> str:
    """Return a word as it is compared; digits that are part of no number are written out, too."""
    plain = _ALIKE.get(word, word).replace("'", "")
    return _written_out(plain) if plain.isdecimal() else _ALIKE.get(plain, plain)


def _written_out(number: str) -> str:
    sign = "minus " if number.startswith("-") else ""
    whole, _, decimals = number.lstrip("-").partition(".")
    words = str(num2words(int(whole)))
    if decimals:
        words += " point " + " ".join(num2words(int(digit)) for digit in decimals)
    return sign + words.replace(",", "").replace("-", " ")


def _without_and(words: Iterable[str]) -> list[str]:
    """Drop the 'and' of 'one hundred and fifty'."""
    kept: list[str] = []
    rest = list(words)
    for place, word in enumerate(rest):
        inside = (
            word == "and"
            and 0 < place < len(rest) - 1
            and rest[place - 1] in ("hundred", "thousand")
            and rest[place + 1] in NUMBER_WORDS
        )
        if not inside:
            kept.append(word)
    return kept
