"""Quantities with units, and the conversions that this trade needs."""

from __future__ import annotations

import re
from dataclasses import dataclass
from decimal import Decimal

# Exact by definition: the US gallon is 231 cubic inches, the inch 25.4 mm (NIST SP 811, appendix B;
# recalled from memory). The fluid ounce is 1/128 of it.
_LITRES = {
    "L": Decimal(1),
    "mL": Decimal("0.001"),
    "gal": Decimal("3.785411784"),
    "qt": Decimal("0.946352946"),
    "fl oz": Decimal("0.0295735295625"),
}
_SECONDS = {"s": Decimal(1), "min": Decimal(60), "h": Decimal(3600)}

UNITS = frozenset({*_LITRES, *_SECONDS, "°C", "°F", "mg/L", "g", "pH"})
"""Unit symbols that files may use."""

_QUANTITY = re.compile(r"\s*([-+]?[0-9]+(?:\.[0-9]+)?)\s*(\S.*?)\s*")


class NotAQuantity(ValueError):
    """A text is no number with a known unit; the message says what to write."""


@dataclass(frozen=True, slots=True)
class Quantity:
    """A number with a unit symbol from UNITS."""

    value: Decimal
    unit: str

    def __str__(self) -> str:
        return f"{self.value} {self.unit}"


def quantity(text: str) -> Quantity:
    """Read `8 L` or `2.5 min`. Raises NotAQuantity for anything else."""
    match = _QUANTITY.fullmatch(text)
    if match is None:
        raise NotAQuantity(f"'{text}' is not a number with a unit, as '8 L' or '5 min'")
    if match[2] not in UNITS:
        known = ", ".join(sorted(UNITS))
        raise NotAQuantity(f"'{match[2]}' in '{text}' is not a known unit ({known})")
    return Quantity(Decimal(match[1]), match[2])


def litres(amount: Quantity) -> Decimal:
    """Convert a volume to litres. Raises NotAQuantity when it is no volume."""
    return amount.value * _factor(amount, _LITRES, "volume, as '8 L' or '2 gal'")


def seconds(amount: Quantity) -> Decimal:
    """Convert a time to seconds. Raises NotAQuantity when it is no time."""
    return amount.value * _factor(amount, _SECONDS, "time, as '60 s' or '5 min'")


def _factor(amount: Quantity, table: dict[str, Decimal], wanted: str) -> Decimal:
    if amount.unit not in table:
        raise NotAQuantity(f"'{amount}' is not a {wanted}")
    return table[amount.unit]
