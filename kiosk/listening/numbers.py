"""The spoken forms of a closed list of numbers."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from decimal import Decimal

from num2words import num2words


class NoNumbers(LookupError):
    """The words for numbers are not known in a language; they can be entered by touch."""


def spoken(
    values: Iterable[Decimal], language: str, unit_words: Sequence[str] = ()
) -> dict[str, Decimal]:
    """Return each phrase by which a value may be said, with its value.

    `unit_words` are forms that may follow the number. Raises NoNumbers for a language whose number
    words are not known.
    """
    found: dict[str, Decimal] = {}
    for value in values:
        said = _said(value, language)
        found[said] = value
        found.update({f"{said} {unit}": value for unit in unit_words})
    return found


def _said(value: Decimal, language: str) -> str:
    plain = value.to_integral_value() if value == value.to_integral_value() else value.normalize()
    try:
        words = str(num2words(plain, lang=language))
    except NotImplementedError as error:
        raise NoNumbers(f"no number words are known for '{language}'") from error
    return words.replace("-", " ")
