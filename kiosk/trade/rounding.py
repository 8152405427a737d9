"""How a laboratory writes a number down: two significant digits, and a qualifier before it."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import ROUND_HALF_EVEN, Context, Decimal
from enum import StrEnum

from kiosk.trade.keyed import Keyed

DIGITS = 2
"""Significant digits of a reported count: FDA BAM chapter 3. READ in copies."""

_TEXT = re.compile(
    r"(<|>|est\.?|~)?\s*((?:[0-9]{1,3}(?:,[0-9]{3})+|[0-9]+)(?:\.[0-9]+)?)", re.IGNORECASE
)


_SAYS = {
    "number-missing": "a result that is '{qualifier}' must have a number",
    "number-too-many": "a result that is '{qualifier}' must have no number",
    "bad-number": "{value} is no count; write 0 or more",
    "no-result": "'{text}' is no result; write it as 1200, < 10, > 1100 or spreaders",
}


class NotAResult(Keyed, ValueError):
    """A text or a number is no laboratory result; the message says what to write."""

    says = _SAYS


class Qualifier(StrEnum):
    """What stands before the number."""

    EXACT = "exact"
    ESTIMATED = "estimated"
    """From plates outside the counting range; BAM writes EAPC."""
    LESS_THAN = "less than"
    MORE_THAN = "more than"
    SPREADERS = "spreaders"
    """No number: spreading growth covers too much of every plate."""
    ACCIDENT = "laboratory accident"
    """No number: no plate could be used."""


_NO_NUMBER = frozenset({Qualifier.SPREADERS, Qualifier.ACCIDENT})
_SIGNS = {
    Qualifier.EXACT: "",
    Qualifier.ESTIMATED: "est. ",
    Qualifier.LESS_THAN: "< ",
    Qualifier.MORE_THAN: "> ",
}


@dataclass(frozen=True, slots=True)
class Amount:
    """A result per gram or per mL, as a limit judges it."""

    qualifier: Qualifier
    value: Decimal | None = None
    """The number, or the bound of a less-than or more-than; None for no number."""

    def __post_init__(self) -> None:
        if (self.value is None) != (self.qualifier in _NO_NUMBER):
            key = "number-missing" if self.value is None else "number-too-many"
            raise NotAResult(key, qualifier=self.qualifier)
        if self.value is not None and not (self.value.is_finite() and self.value >= 0):
            raise NotAResult("bad-number", value=self.value)

    def exceeds(self, limit: Decimal) -> bool | None:
        """Say whether the true value lies above a limit; None when this result cannot tell.

        A less-than result with a bound above the limit cannot tell, nor can a more-than result
        with a bound below it, nor a result without a number.
        """
        if self.value is None:
            return None
        if self.qualifier is Qualifier.LESS_THAN:
            return False if self.value <= limit else None
        if self.qualifier is Qualifier.MORE_THAN:
            return True if self.value >= limit else None
        return self.value > limit

    def __str__(self) -> str:
        if self.value is None:
            return str(self.qualifier)
        return f"{_SIGNS[self.qualifier]}{self.value:,f}"


def significant(value: Decimal, digits: int = DIGITS) -> Decimal:
    """Round to significant digits, half to even, and write it without an exponent.

    Half to even on the second digit, so that 14,500 gives 14,000 and 15,500 gives 16,000. READ,
    FDA BAM chapter 3 in copies.
    """
    rounded = value.normalize(Context(prec=digits, rounding=ROUND_HALF_EVEN))
    if rounded.is_zero():
        return Decimal(0)
    # A trailing zero that is significant is written: 3.0, not 3.
    places = digits - 1 - rounded.adjusted()
    return rounded.quantize(Decimal(1).scaleb(-max(places, 0)))


def read_amount(text: str) -> Amount:
    """Read `1,200`, `< 10`, `> 1100`, `est. 900`, `spreaders` or `laboratory accident`.

    Raises NotAResult with what to write instead.
    """
    plain = text.strip().lower()
    if plain in _NO_NUMBER:
        return Amount(Qualifier(plain))
    match = _TEXT.fullmatch(plain)
    if match is None:
        raise NotAResult("no-result", text=text)
    sign = match[1] or ""
    qualifier = {"": Qualifier.EXACT, "<": Qualifier.LESS_THAN, ">": Qualifier.MORE_THAN}.get(
        sign, Qualifier.ESTIMATED
    )
    return Amount(qualifier, Decimal(match[2].replace(",", "")))
