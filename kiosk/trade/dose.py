"""How much product goes into how much water, and what the rounding to a measure really gives."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass
from decimal import ROUND_CEILING, Decimal
from enum import StrEnum

from kiosk.trade.keyed import Keyed
from kiosk.trade.kitchen_measures import GRAM, LIQUID, Measure, packet
from kiosk.trade.product import Product
from kiosk.trade.units import Quantity

NO_RINSE_CAP = Decimal(200)
"""mg/L total available chlorine that needs no rinse: 40 CFR 180.940(a), READ through secondary
summaries, the primary table not seen."""

_SAYS = {
    "bad-strength": "a strength of {wanted} mg/L cannot be made; ask for more than nothing",
    "bad-water": "{water} L of water cannot be filled in; write more than nothing",
    "bad-count": "{count} {measures} cannot be measured out; write more than nothing",
    "wanted-over-cap": "{wanted} mg/L is above the cap of {cap} mg/L; ask for {cap} mg/L or less",
    "over-cap": (
        "{count} {measures} in {water} L give {strength} mg/L, above the cap of {cap} mg/L;"
        " use at least {least_water} L of water, a smaller measure or smaller packets"
    ),
    "too-weak": "the product has {strongest} mg/L itself and cannot make {wanted} mg/L; use a "
    "stronger product",
    "wrong-measure": "this product cannot be measured in {measures}; use one of: {known}",
    "over-full": "{count} {measures} are more than {water} L; use a smaller measure",
}


class NoDose(Keyed, ValueError):
    """No dose fits; the message says why and what to change."""

    says = _SAYS


class Filling(StrEnum):
    """What the volume of water means for a liquid product."""

    TO_MAKE = "to make"
    """The vessel is filled up to the volume with the product in it."""
    INTO = "into"
    """The product is added to the volume: weaker by less than 0.4 % at usual doses (CALC)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Dose:
    """A dose in one measure, and the strength that it really gives."""

    measure: Measure
    count: Decimal
    """How many of the measure, a multiple of its step."""
    exact: Decimal
    """How many would give just the wanted strength."""
    amount: Quantity
    """The same in grams or millilitres."""
    water: Decimal
    """Litres."""
    wanted: Decimal
    """mg/L."""
    strength: Decimal
    """mg/L that `count` gives; never below `wanted`."""

    @property
    def gained(self) -> Decimal:
        """Return what rounding up added, in mg/L."""
        return self.strength - self.wanted


def exact_amount(
    product: Product, water: Decimal, wanted: Decimal, filling: Filling = Filling.TO_MAKE
) -> Quantity:
    """Return the grams or millilitres that give `wanted` mg/L in `water` litres.

    Mass balance, C1 V1 = C2 V2: amount = mg/L x L / (mg per unit). Raises NoDose.
    """
    _check(water, wanted)
    if product.unit == "g":
        return Quantity(wanted * water / product.strength, "g")
    strongest = product.strength * 1000
    if strongest < wanted or (filling is Filling.INTO and strongest == wanted):
        raise NoDose("too-weak", strongest=_short(strongest), wanted=wanted)
    weakened = wanted / 1000 if filling is Filling.INTO else Decimal(0)
    return Quantity(wanted * water / (product.strength - weakened), "mL")


def strength(
    product: Product, amount: Decimal, water: Decimal, filling: Filling = Filling.TO_MAKE
) -> Decimal:
    """Return the mg/L that `amount` (grams or mL, as the product has it) gives in `water` litres.

    Raises NoDose when there is no water.
    """
    _check(water, Decimal(1))
    whole = water
    if product.unit == "mL" and filling is Filling.INTO:
        whole += amount / 1000
    return amount * product.strength / whole


def dose(
    product: Product,
    water: Decimal,
    wanted: Decimal,
    measure: Measure,
    cap: Decimal | None = NO_RINSE_CAP,
    filling: Filling = Filling.TO_MAKE,
) -> Dose:
    """Return the fewest steps of a measure that reach `wanted` mg/L in `water` litres.

    `cap` is the strength in mg/L that must not be passed, None where there is none. Raises NoDose
    when the fewest steps that reach the strength pass the cap, or the measure does not suit.
    """
    _suits(product, measure)
    _check(water, wanted)
    if cap is not None and wanted > cap:
        raise NoDose("wanted-over-cap", wanted=wanted, cap=cap)
    needed = exact_amount(product, water, wanted, filling).value
    step = measure.size * measure.step
    steps = (needed / step).to_integral_value(rounding=ROUND_CEILING)
    count = steps * measure.step
    reached = recipe(product, water, count, measure, cap, filling)
    return Dose(
        measure=measure, count=count, exact=needed / measure.size,
        amount=Quantity(count * measure.size, measure.unit), water=water, wanted=wanted,
        strength=max(reached, wanted),
    )  # fmt: skip


def recipe(
    product: Product,
    water: Decimal,
    count: Decimal,
    measure: Measure,
    cap: Decimal | None = NO_RINSE_CAP,
    filling: Filling = Filling.TO_MAKE,
) -> Decimal:
    """Return the mg/L of a recipe that somebody has, as 1 level tablespoon in 1 gallon.

    Raises NoDose above the cap: a level tablespoon of 8.25 % in a gallon gives 322 mg/L (CALC).
    """
    _suits(product, measure)
    if not (count.is_finite() and count > 0):
        raise NoDose("bad-count", count=count, measures=measure.many)
    amount = count * measure.size
    if product.unit == "mL" and filling is Filling.TO_MAKE and amount > water * 1000:
        raise NoDose("over-full", count=_short(count), measures=measure.many, water=_short(water))
    reached = strength(product, amount, water, filling)
    if cap is not None and reached > cap:
        least_water = amount * product.strength / cap
        raise NoDose(
            "over-cap",
            count=_short(count),
            measures=measure.one if count == 1 else measure.many,
            water=_short(water),
            strength=_above(reached, cap),
            cap=cap,
            least_water=f"{least_water.quantize(Decimal('0.1'), rounding=ROUND_CEILING)}",
        )
    return reached


@dataclass(frozen=True, slots=True)
class Offer:
    """The doses of one product in every measure that suits it."""

    doses: tuple[Dose, ...]
    """Least rounding first."""
    refused: tuple[NoDose, ...]


def offer(
    product: Product,
    water: Decimal,
    wanted: Decimal,
    cap: Decimal | None = NO_RINSE_CAP,
    measures: Iterable[Measure] | None = None,
    filling: Filling = Filling.TO_MAKE,
) -> Offer:
    """Return a dose in each measure, and why some measures give none."""
    found: list[Dose] = []
    refused: list[NoDose] = []
    for measure in suiting(product) if measures is None else measures:
        try:
            found.append(dose(product, water, wanted, measure, cap, filling))
        except NoDose as error:
            refused.append(error)
    return Offer(tuple(sorted(found, key=lambda one: one.gained)), tuple(refused))


def suiting(product: Product) -> tuple[Measure, ...]:
    """Return the measures that suit a product: packets or grams, or spoons and millilitres."""
    if product.unit == "mL":
        return LIQUID
    return (GRAM,) if product.packet_grams is None else (packet(product.packet_grams),)


def english(given: Dose, water: Quantity | None = None) -> str:
    """Return a dose as one plain sentence; `water` is its volume in the unit that was asked in."""
    name = given.measure.one if given.count == 1 else given.measure.many
    also = "" if given.measure.size == 1 else f" ({_short(given.amount.value)} {given.amount.unit})"
    volume = f"{_short(given.water)} L" if water is None else str(water)
    told = f"Put {_short(given.count)} {name}{also} into {volume} of water: this gives"
    if given.gained == 0:
        return f"{told} just {_short(given.strength)} mg/L."
    return (
        f"{told} {_short(given.strength)} mg/L, {_short(given.gained)} more than asked for, "
        f"because {_short(given.exact)} was rounded up."
    )


def _suits(product: Product, measure: Measure) -> None:
    known = suiting(product)
    if measure.unit != product.unit or (measure.key == "packet") != (
        product.packet_grams is not None
    ):
        names = ", ".join(one.many for one in known)
        raise NoDose("wrong-measure", measures=measure.many, known=names)


def _check(water: Decimal, wanted: Decimal) -> None:
    if not (water.is_finite() and water > 0):
        raise NoDose("bad-water", water=water)
    if not (wanted.is_finite() and wanted > 0):
        raise NoDose("bad-strength", wanted=wanted)


def _above(reached: Decimal, cap: Decimal) -> str:
    """Write a strength above a cap so that it is seen to be above it."""
    if round(reached) > cap:
        return f"{reached:.0f}"
    return f"{reached.quantize(Decimal('0.01'), rounding=ROUND_CEILING)}"


def _short(value: Decimal) -> str:
    """Write a number with at most two decimals, none of them for show."""
    text = f"{value:.2f}"
    return text.rstrip("0").rstrip(".") if "." in text else text
