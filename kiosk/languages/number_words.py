"""Numbers in words: as people say them, and so that the voice says them right."""

from __future__ import annotations

import re
from collections.abc import Mapping
from decimal import Decimal
from functools import cache
from types import MappingProxyType
from typing import Final

from num2words import num2words
from unicode_rbnf import RbnfEngine

_RULES: Final[Mapping[str, str]] = MappingProxyType(
    {"pt": "spellout-cardinal-masculine", "vi": "spellout-cardinal", "zh": "spellout-cardinal"}
)
"""Rules of the Unicode CLDR by which a language's numbers are spelt, where num2words has no words
(Chinese), wrong ones (Vietnamese decimals and minus) or those of Portugal."""

_FEMININE: Final = "spellout-cardinal-feminine"

MINUS: Final[Mapping[str, str]] = MappingProxyType(
    {"en": "minus ", "es": "menos ", "ko": "마이너스 ", "pt": "menos ", "vi": "âm ", "zh": "负"}
)
"""What is said before a number below zero."""

_BELOW_ZERO: Final = re.compile(r"(?:(?<=[\u4e00-\u9fff])|(?<![\w.,]))[-\u2212](?=\d)")
"""The sign of a reading, not that of a date or a range."""
_GROUPED: Final = frozenset({"es", "zh"})
_THOUSANDS: Final = re.compile(r"(?<=\d),(?=\d{3}(?!\d))")
_CLOCK: Final = re.compile(r"(?<![\d:])(\d{1,2}):(\d{2})(?![\d:])")
_YEAR: Final = re.compile(r"(?<!\d)\d{4}(?=年)")
_NUMBER: Final = re.compile(r"(?<![A-Za-z\d.-])\d+(?:\.\d+)?(?![A-Za-z\d]|[.-]\d)")


class NoNumbers(LookupError):
    """The words for numbers are not known in a language; they can be entered by touch."""


def spelt(value: Decimal, language: str) -> str:
    """Return a number in words. Raises NoNumbers for a language whose words are not known."""
    size = _shortest(abs(value))
    if language in _RULES:
        words = _by_rules(size, language, _RULES[language])
    else:
        try:
            words = str(num2words(size, lang=language)).replace("-", " ")
        except NotImplementedError as error:
            raise NoNumbers(f"no number words are known for '{language}'") from error
    # The sign is said here: num2words drops it between -1 and 0.
    return f"{_minus(language)}{words}" if value < 0 else words


def spelt_feminine(value: Decimal, language: str) -> str:
    """Return a Spanish or Portuguese number of feminine things: `duzentas partes`."""
    if value != value.to_integral_value():
        return spelt(value, language)
    sign = MINUS[language] if value < 0 else ""
    return sign + _by_rules(_shortest(abs(value)), language, _FEMININE)


def said_right(text: str, language: str) -> str:
    """Return a text with those numbers in words that the voice misreads; for its ears only.

    espeak-ng 1.52 says nothing of a minus sign in Spanish, Korean and Chinese, and calls 1,200 `uno
    coma doscientos` in Spanish. In Chinese it also says 105 as `yi bai wu`, which is 150 to a
    listener, and nothing of the point of a number that follows a character. Its own phonemes show
    it.
    """
    text = _BELOW_ZERO.sub(MINUS.get(language, "-"), text)
    if language in _GROUPED:
        text = _THOUSANDS.sub("", text)
    if language != "zh":
        return text
    text = _CLOCK.sub(_hour_and_minute, text)
    text = _YEAR.sub(lambda found: "".join(map(_digit, found[0])), text)
    return _NUMBER.sub(lambda found: _number(found[0]), text)


def _minus(language: str) -> str:
    if language in MINUS:
        return MINUS[language]
    return str(num2words(-1, lang=language)).removesuffix(str(num2words(1, lang=language)))


def _hour_and_minute(found: re.Match[str]) -> str:
    hour, minute = found[1], found[2]
    spelt_minute = f"{'零' if minute[0] == '0' else ''}{_number(str(int(minute)))}分"
    return f"{_number(str(int(hour)))}点{'' if minute == '00' else spelt_minute}"


def _number(digits: str) -> str:
    """Return Chinese words for digits; those of a code that begins with zeros one by one."""
    if len(digits) > 1 and digits[0] == "0" and digits[1] != ".":
        return "".join(map(_digit, digits))
    return spelt(Decimal(digits), "zh")


def _digit(digit: str) -> str:
    return spelt(Decimal(digit), "zh")


def _by_rules(size: Decimal, language: str, rules: str) -> str:
    return _engine(language).format_number(f"{size:f}", ruleset_names=[rules]).text


@cache
def _engine(language: str) -> RbnfEngine:
    return RbnfEngine.for_language(language)


def _shortest(size: Decimal) -> Decimal:
    """Return a value without the zeros at the end of its fraction."""
    whole = size.to_integral_value()
    return whole if size == whole else size.normalize()
