"""Normal form of English text, so that what was heard and what is allowed can be compared."""

from __future__ import annotations

import re
from collections.abc import Iterable
from typing import Final

from num2words import num2words

_NUMBER: Final = re.compile(r"(?<![\w.])-?\d+(?:\.\d+)?(?![\w]|\.\d)")
_THOUSANDS: Final = re.compile(r"(?<=\d),(?=\d{3}(?!\d))")
_SIGNS: Final = {"%": " percent ", "°": " degrees ", "&": " and ", "+": " plus "}
_SHORTENED: Final = (
    (re.compile(r"\bcan't\b"), "cannot"),
    (re.compile(r"\bwon't\b"), "will not"),
    (re.compile(r"(?<=\w)n't\b"), " not"),
    (re.compile(r"(?<=\w)'re\b"), " are"),
    (re.compile(r"(?<=\w)'s\b"), " is"),
    (re.compile(r"\bi'm\b"), "i am"),
    (re.compile(r"(?<=\w)'ve\b"), " have"),
    (re.compile(r"(?<=\w)'ll\b"), " will"),
)
"""What is run together in speech: 'it doesn't start' is the same answer as 'it does not start'."""
_ALIKE: Final = {"ok": "okay", "o'clock": "oclock", "ppm": "p p m"}
NUMBER_WORDS: Final = frozenset((
    "zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine", "ten",
    "eleven", "twelve", "thirteen", "fourteen", "fifteen", "sixteen", "seventeen", "eighteen",
    "nineteen", "twenty", "thirty", "forty", "fifty", "sixty", "seventy", "eighty", "ninety",
    "hundred", "thousand",
))  # fmt: skip


def normal(text: str) -> str:
    """Return English `text` in lower case words: no punctuation, numbers written out.

    '38.5' and 'Thirty-eight point five.' come out the same, and so do '-2' and 'minus two', 'isn't'
    and 'is not'.
    """
    text = text.lower().replace("’", "'").replace("−", "-").replace("–", "-")
    for short, long in _SHORTENED:
        text = short.sub(long, text)
    for sign, word in _SIGNS.items():
        text = text.replace(sign, word)
    text = _NUMBER.sub(lambda found: f" {_written_out(found.group())} ", _THOUSANDS.sub("", text))
    words = [_word(word) for word in re.split(r"[^\w']+", text) if word.strip("'")]
    return " ".join(_without_and(" ".join(words).split()))


def said_once(text: str) -> str:
    """Return normalised `text` without repetitions, when it is the same thing over and over.

    'next next next' is 'next'. A decoder that finds no end does that with what was said once, and
    its last repetition may be cut. Numbers stay as they are: 'five five' may be fifty-five.
    """
    words = text.split()
    if not NUMBER_WORDS.isdisjoint(words):
        return text
    for length in range(1, len(words) // 2 + 1):
        if all(word == words[place % length] for place, word in enumerate(words)):
            return " ".join(words[:length])
    return text


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
