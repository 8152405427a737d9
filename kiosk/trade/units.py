"""Quantities with units, and the conversions that this trade needs."""

from __future__ import annotations

import re
from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal

# Exact by definition: the US gallon is 231 cubic inches, the inch 25.4 mm (NIST SP 811, appendix B;
# recalled from memory), so that the fluid ounce is 1/128 of it, the tablespoon 1/256 and the
# teaspoon 1/768. The imperial gallon is 4.54609 L (MEM), the pound 453.59237 g (MEM).
_LITRES = {
    "L": Decimal(1),
    "mL": Decimal("0.001"),
    "gal": Decimal("3.785411784"),
    "qt": Decimal("0.946352946"),
    "fl oz": Decimal("0.0295735295625"),
    "cup": Decimal("0.2365882365"),
    "imp gal": Decimal("4.54609"),
    "tsp": Decimal("0.00492892159375"),
    "tbsp": Decimal("0.01478676478125"),
}
_GRAMS = {
    "g": Decimal(1),
    "kg": Decimal(1000),
    "oz": Decimal("28.349523125"),
    "lb": Decimal("453.59237"),
}
_SECONDS = {"s": Decimal(1), "min": Decimal(60), "h": Decimal(3600)}

UNITS = frozenset(
    {"L", "mL", "gal", "qt", "fl oz", *_SECONDS, "°C", "°F", "mg/L", "g", "pH"}
)  # fmt: skip
"""Unit symbols that files may use. Gallon, quart, fluid ounce, cup and spoons are the US ones; the
imperial gallon goes by its own name."""

_QUANTITY = re.compile(r"\s*([-+]?[0-9]+(?:\.[0-9]+)?)\s*(\S.*?)\s*")


class NotAQuantity(ValueError):
    """A text is no number with a known unit; the message says what to write."""


@dataclass(frozen=True, slots=True)
class Quantity:
    """A number with a unit symbol: one of UNITS, or another one that a function here converts."""

    value: Decimal
    unit: str

    def __str__(self) -> str:
        return f"{self.value} {self.unit}"


def quantity(text: str) -> Quantity:
    """Read `8 L` or `2.5 min` in a file. Raises NotAQuantity for anything else."""
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


def grams(amount: Quantity) -> Decimal:
    """Convert a mass to grams. Raises NotAQuantity when it is no mass."""
    return amount.value * _factor(amount, _GRAMS, "mass, as '2 g' or '1 lb'")


def seconds(amount: Quantity) -> Decimal:
    """Convert a time to seconds. Raises NotAQuantity when it is no time."""
    return amount.value * _factor(amount, _SECONDS, "time, as '60 s' or '5 min'")


def degrees_celsius(amount: Quantity) -> Decimal:
    """Convert a temperature exactly to °C: for formulas, never to judge a printed limit.

    Raises NotAQuantity when it is no temperature.
    """
    if amount.unit == "°F":
        return (amount.value - 32) * 5 / 9
    if amount.unit != "°C":
        raise NotAQuantity(f"'{amount}' is not a temperature, as '24 °C' or '75 °F'")
    return amount.value


def _factor(amount: Quantity, table: Mapping[str, Decimal], wanted: str) -> Decimal:
    if amount.unit not in table:
        raise NotAQuantity(f"'{amount}' is not a {wanted}")
    return table[amount.unit]
