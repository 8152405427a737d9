"""The spoken forms of a closed list of numbers."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import Decimal
from types import MappingProxyType
from typing import Final

from num2words import num2words

UNIT_WORDS: Final[Mapping[str, Mapping[str, str]]] = MappingProxyType(
    {
        "en": {"L": "liters", "°C": "degrees", "°F": "degrees", "mg/L": "parts per million"},
        "es": {"L": "litros", "°C": "grados", "°F": "grados", "mg/L": "partes por millón"},
        "ko": {"L": "리터", "°C": "도", "°F": "도", "mg/L": "피피엠"},
    }
)
"""How a unit is said after a number; English as its ear spells it."""

ONE_OF: Final[Mapping[str, Mapping[str, str]]] = MappingProxyType(
    {
        "en": {
            "L": "one liter",
            "°C": "one degree",
            "°F": "one degree",
            "mg/L": "one part per million",
        },
        "es": {
            "L": "un litro",
            "°C": "un grado",
            "°F": "un grado",
            "mg/L": "una parte por millón",
        },
    }
)
"""How one of a unit is said, where that differs."""

_WRONG_DECIMALS: Final = frozenset({"vi"})
"""Languages whose decimals num2words gets wrong."""

_KOREAN_ONES: Final = ("", "한", "두", "세", "네", "다섯", "여섯", "일곱", "여덟", "아홉")
_KOREAN_TENS: Final = ("", "열", "스물")
_NATIVE_UNDER: Final = 30


class NoNumbers(LookupError):
    """The words for numbers are not known in a language; they can be entered by touch."""


def spoken(values: Iterable[Decimal], language: str, unit: str = "") -> dict[str, Decimal]:
    """Return each phrase by which a value may be said, with its value.

    With a unit symbol, the form with its unit comes first: it is longer, and longer is heard
    better. `#` is a count of things. Raises NoNumbers for a language whose number words are not
    known.
    """
    found: dict[str, Decimal] = {}
    for value in values:
        forms = _korean(value, unit) if language == "ko" and unit else _plain(value, language, unit)
        for form in forms:
            found.setdefault(form, value)
    return found


def _plain(value: Decimal, language: str, unit: str) -> list[str]:
    bare = _said(value, language)
    unit_word = UNIT_WORDS.get(language, {}).get(unit)
    if unit_word is None:
        return [bare]
    one = ONE_OF.get(language, {}).get(unit) if value == 1 else None
    return [one or f"{bare} {unit_word}", bare]


def _korean(value: Decimal, unit: str) -> list[str]:
    """Return the forms with a unit and none without: a bare syllable is heard in any noise.

    Things are counted in native numbers. Litres are said in Sino-Korean ones; native ones are
    understood too, for the ear does not know 'pal' (eight) on its own.
    """
    native = 0 < value < _NATIVE_UNDER and value == value.to_integral_value()
    if unit == "#":
        return [f"{_korean_count(int(value)) if native else _said(value, 'ko')} 개"]
    unit_word = UNIT_WORDS["ko"].get(unit)
    if unit_word is None:
        return [_said(value, "ko")]
    forms = [f"{_said(value, 'ko')} {unit_word}"]
    return [*forms, f"{_korean_count(int(value))} {unit_word}"] if native and unit == "L" else forms


def _said(value: Decimal, language: str) -> str:
    size = abs(value)
    plain = size.to_integral_value() if size == size.to_integral_value() else size.normalize()
    if plain != plain.to_integral_value() and language in _WRONG_DECIMALS:
        raise NoNumbers(f"the words for decimals in '{language}' are not known")
    try:
        words = str(num2words(plain, lang=language))
        # The sign is said here: num2words drops it between -1 and 0.
        sign = str(num2words(-1, lang=language)).removesuffix(str(num2words(1, lang=language)))
    except NotImplementedError as error:
        raise NoNumbers(f"no number words are known for '{language}'") from error
    return f"{sign if value < 0 else ''}{words}".replace("-", " ")


def _korean_count(number: int) -> str:
    """Return the native Korean number by which things are counted, 1 to 29."""
    if number == 2 * 10:
        return "스무"
    return _KOREAN_TENS[number // 10] + _KOREAN_ONES[number % 10]
