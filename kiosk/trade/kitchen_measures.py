"""What a kitchen can measure with, and in which steps."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal


@dataclass(frozen=True, slots=True)
class Measure:
    """A packet, a spoon, a cylinder or a scale."""

    key: str
    """Its name in data; a language puts it in words."""
    size: Decimal
    """What one holds, in `unit`."""
    unit: str
    """`g` or `mL`."""
    step: Decimal
    """The smallest part of one that can be measured with it."""
    one: str
    many: str


HALF, QUARTER = Decimal("0.5"), Decimal("0.25")

GRAM = Measure("gram", Decimal(1), "g", Decimal("0.1"), "gram", "grams")
"""A kitchen scale that shows tenths of a gram."""
MILLILITRE = Measure("millilitre", Decimal(1), "mL", HALF, "millilitre", "millilitres")
"""A syringe or a small cylinder with half millilitres."""
US_TEASPOON = Measure(
    "us teaspoon", Decimal("4.92892159375"), "mL", QUARTER,
    "level US teaspoon", "level US teaspoons",
)  # fmt: skip
US_TABLESPOON = Measure(
    "us tablespoon", Decimal("14.78676478125"), "mL", HALF,
    "level US tablespoon", "level US tablespoons",
)  # fmt: skip
METRIC_TEASPOON = Measure(
    "metric teaspoon", Decimal(5), "mL", QUARTER,
    "level 5 mL spoon", "level 5 mL spoons",
)  # fmt: skip
METRIC_TABLESPOON = Measure(
    "metric tablespoon", Decimal(15), "mL", HALF,
    "level 15 mL spoon", "level 15 mL spoons",
)  # fmt: skip
US_FLUID_OUNCE = Measure(
    "us fluid ounce", Decimal("29.5735295625"), "mL", HALF,
    "US fluid ounce", "US fluid ounces",
)  # fmt: skip
US_CUP = Measure("us cup", Decimal("236.5882365"), "mL", QUARTER, "US cup", "US cups")

SPOONS = (US_TEASPOON, US_TABLESPOON, METRIC_TEASPOON, METRIC_TABLESPOON)
LIQUID = (MILLILITRE, *SPOONS, US_FLUID_OUNCE, US_CUP)
"""For a solid no spoon is offered: what a spoon of powder weighs, no label says."""


def packet(grams: Decimal) -> Measure:
    """Return whole packets of so many grams."""
    return Measure("packet", grams, "g", Decimal(1), "packet", "packets")
