"""The spoken forms of a closed list of numbers."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from decimal import Decimal
from types import MappingProxyType
from typing import Final

from kiosk.languages.number_words import MINUS, NoNumbers, spelt, spelt_feminine

__all__ = ["ONE_OF", "UNIT_WORDS", "NoNumbers", "spoken"]

UNIT_WORDS: Final[Mapping[str, Mapping[str, str]]] = MappingProxyType(
    {
        "en": {"L": "liters", "°C": "degrees", "°F": "degrees", "mg/L": "parts per million"},
        "es": {"L": "litros", "°C": "grados", "°F": "grados", "mg/L": "partes por millón"},
        "ko": {"L": "리터", "°C": "도", "°F": "도", "mg/L": "피피엠"},
        "pt": {"L": "litros", "°C": "graus", "°F": "graus", "mg/L": "partes por milhão"},
        "vi": {"L": "lít", "°C": "độ", "°F": "độ", "mg/L": "phần triệu", "#": "cái"},
        "zh": {"L": "升", "°C": "度", "°F": "度", "mg/L": "毫克每升", "#": "个"},
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
        "pt": {
            "L": "um litro",
            "°C": "um grau",
            "°F": "um grau",
            "mg/L": "uma parte por milhão",
        },
    }
)
"""How one of a unit is said, where that differs."""

_FEMININE_PARTS: Final = frozenset({"es", "pt"})
"""Languages in which the parts of `parts per million` are feminine."""

_SYLLABLES: Final = frozenset({"vi", "zh"})
"""Languages with bare numbers of one syllable: it is heard in any noise, so the unit is said."""

_KOREAN_ONES: Final = ("", "한", "두", "세", "네", "다섯", "여섯", "일곱", "여덟", "아홉")
_KOREAN_TENS: Final = ("", "열", "스물")
_NATIVE_UNDER: Final = 30


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
    bare = spelt(value, language)
    unit_word = UNIT_WORDS.get(language, {}).get(unit)
    if unit_word is None:
        return [bare]
    if language == "zh":
        return _chinese(value, unit_word)
    one = ONE_OF.get(language, {}).get(unit) if value == 1 else None
    feminine = unit == "mg/L" and language in _FEMININE_PARTS
    counted = spelt_feminine(value, language) if feminine else bare
    full = one or f"{counted} {unit_word}"
    return [full] if language in _SYLLABLES else [full, bare]


def _chinese(value: Decimal, unit_word: str) -> list[str]:
    """Return the forms with a unit: two of a thing are `liang`, degrees below zero `lingxia`.

    Two hundred and two thousand are said with `er` or with `liang`. Common usage, from memory.
    """
    below = "零下" if unit_word == "度" else MINUS["zh"]
    sign = below if value < 0 else ""
    size = spelt(abs(value), "zh")
    forms = ["两"] if size == "二" else [size]
    if size.startswith(("二百", "二千")):
        forms.append(f"两{size[1:]}")
    return [f"{sign}{form}{unit_word}" for form in forms]


def _korean(value: Decimal, unit: str) -> list[str]:
    """Return the forms with a unit and none without: a bare syllable is heard in any noise.

    Things are counted in native numbers. Litres are said in Sino-Korean ones; native ones are
    understood too, for the ear does not know 'pal' (eight) on its own.
    """
    native = 0 < value < _NATIVE_UNDER and value == value.to_integral_value()
    if unit == "#":
        return [f"{_korean_count(int(value)) if native else spelt(value, 'ko')} 개"]
    unit_word = UNIT_WORDS["ko"].get(unit)
    if unit_word is None:
        return [spelt(value, "ko")]
    forms = [f"{spelt(value, 'ko')} {unit_word}"]
    return [*forms, f"{_korean_count(int(value))} {unit_word}"] if native and unit == "L" else forms


def _korean_count(number: int) -> str:
    """Return the native Korean number by which things are counted, 1 to 29."""
    if number == 2 * 10:
        return "스무"
    return _KOREAN_TENS[number // 10] + _KOREAN_ONES[number % 10]
