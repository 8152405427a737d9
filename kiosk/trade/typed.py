"""Numbers as people type them: one number, one unit, and no reading that could be another."""

from __future__ import annotations

import re
import unicodedata
from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal

from kiosk.trade.keyed import Keyed
from kiosk.trade.units import Quantity, degrees_celsius, grams, litres, seconds

SAYS = {
    "typed-nothing": "Nothing was typed. Type a number.",
    "typed-no-number": "“{text}” is not a number. Type it in digits, as 38.5.",
    "typed-fraction": "“{text}” has a fraction or a raised digit in it. Type a decimal number, "
    "as 0.5.",
    "typed-two-readings": "“{text}” can be read as {first} or as {second}. Type {first} or "
    "{second}.",
    "typed-mixed": "“{text}” has more than one number in it. Work it out to one number with one "
    "unit.",
    "typed-no-unit": "“{text}” has no unit. Add one of: {units}.",
    "typed-unknown-unit": "“{unit}” is no unit that is known here. Use one of: {units}.",
    "typed-ounce": "“{unit}” is a weight, and a volume is wanted. Type fl oz for fluid ounces.",
    "typed-negative": "{number} is below zero. Type a number from {least} to {most}.",
    "typed-out-of-range": "{number} cannot be right. It must lie between {least} and {most}.",
    "typed-no-time": "“{text}” is no time of day. Type it as 21:30.",
    "typed-no-such-time": "There is no time of day “{text}”. The last one is 23:59, with am or pm "
    "12:59.",
    "typed-twelve": "“{text}” can be midnight or noon. Type {first} or {second}.",
    "typed-half-of-day": "“{text}” can be in the morning or in the evening. Type {first} or "
    "{second}.",
}
"""Message key to the English sentence; its places are the keys of `NotTyped.values`."""


class NotTyped(Keyed, ValueError):
    """What was typed cannot be used; the message says what to type."""

    says = SAYS


_VOLUME = {
    "L": ("l", "litre", "litres", "liter", "liters", "litro", "litros", "리터"),
    "mL": ("ml", "millilitre", "millilitres", "milliliter", "milliliters", "mililitro",
           "mililitros", "밀리리터", "cc"),
    "gal": ("gal", "gals", "gallon", "gallons", "us gal", "us gallon", "us gallons", "galón",
            "galones", "갤런"),
    "qt": ("qt", "quart", "quarts", "us qt", "cuarto de galón", "쿼트"),
    "fl oz": ("fl oz", "floz", "fluid ounce", "fluid ounces", "us fl oz"),
    "cup": ("cup", "cups", "us cup", "us cups"),
    "imp gal": ("imp gal", "imperial gal", "imperial gallon", "imperial gallons", "uk gal"),
}  # fmt: skip
_MASS = {
    "g": ("g", "gram", "grams", "gramo", "gramos", "그램"),
    "kg": ("kg", "kilo", "kilos", "kilogram", "kilograms"),
    "oz": ("oz", "ounce", "ounces"),
    "lb": ("lb", "lbs", "pound", "pounds"),
}
_TEMPERATURE = {
    "°C": ("°c", "c", "celsius", "degrees celsius", "섭씨"),
    "°F": ("°f", "f", "fahrenheit", "degrees fahrenheit", "화씨"),
}
_TIME = {
    "s": ("s", "sec", "second", "seconds", "segundo", "segundos", "초"),
    "min": ("min", "mins", "minute", "minutes", "minuto", "minutos", "분"),
    "h": ("h", "hr", "hrs", "hour", "hours", "hora", "horas", "시간"),
}


@dataclass(frozen=True, slots=True)
class Wanted:
    """What a number is wanted for: its units with the ways to type them, and what is believable."""

    units: Mapping[str, tuple[str, ...]]
    """Unit symbol to what may be typed for it, in small letters."""
    least: Quantity
    most: Quantity
    """Ends of what is believable, in any of the units."""
    bare: str | None = None
    """Unit of a number without one; None when a unit must be typed."""
    weights: tuple[str, ...] = field(default=())
    """What may be typed for an ounce of weight, where a volume is wanted."""


def _of(value: str, unit: str) -> Quantity:
    return Quantity(Decimal(value), unit)


_OUNCE = ("oz", "ounce", "ounces")
WATER = Wanted(_VOLUME, _of("0.1", "L"), _of("1000", "L"), weights=_OUNCE)
"""A volume of water."""
PORTION = Wanted(_VOLUME, _of("0.1", "mL"), _of("20", "L"), weights=_OUNCE)
"""A volume of product."""
MASS = Wanted(_MASS, _of("0.01", "g"), _of("25", "kg"))
TEMPERATURE = Wanted(_TEMPERATURE, _of("-50", "°C"), _of("150", "°C"))
TIME = Wanted(_TIME, _of("0", "s"), _of("48", "h"))
STRENGTH = Wanted({"mg/L": ("mg/l", "ppm", "피피엠")}, _of("0", "mg/L"), _of("100000", "mg/L"))
PERCENT = Wanted({"%": ("%", "percent", "por ciento", "퍼센트")}, _of("0", "%"), _of("100", "%"))
ACIDITY = Wanted({"pH": ("ph",)}, _of("0", "pH"), _of("14", "pH"), bare="pH")

_PLAIN = re.compile(r"[0-9]+|[0-9]{1,3}( [0-9]{3})+")
_DECIMAL = re.compile(r"([0-9]*|[0-9]{1,3}( [0-9]{3})+)[.,]([0-9]+)")
_AMBIGUOUS = re.compile(r"([1-9][0-9]{0,2})[.,]([0-9]{3})")
_GROUPED = re.compile(
    r"[1-9][0-9]{0,2}(?:(?:,[0-9]{3})+\.[0-9]+|(?:\.[0-9]{3})+,[0-9]+"
    r"|(?:,[0-9]{3}){2,}|(?:\.[0-9]{3}){2,})"
)
_LEADING = re.compile(r"([-+]?)\s*([0-9.,](?:[0-9., ]*[0-9.,])?)\s*(.*)", re.DOTALL)
_FRACTION = re.compile(r"[0-9]\s*/\s*[0-9]")
_LONGEST = 40


def read_number(
    text: str, least: Decimal = Decimal(0), most: Decimal = Decimal(1_000_000)
) -> Decimal:
    """Read a number without a unit, from `least` to `most`. Raises NotTyped.

    The decimal mark may be a point or a comma. One mark with three digits after it, as in `1,000`,
    has two readings and is refused.
    """
    plain = _clean(text)
    match = _LEADING.fullmatch(plain)
    if match is None or match[3]:
        raise NotTyped("typed-no-number", text=_shown(text))
    number = _number(match[1], match[2], text)
    _believable(Quantity(number, ""), Quantity(least, ""), Quantity(most, ""))
    return number


def read_quantity(text: str, wanted: Wanted) -> Quantity:
    """Read one number with one unit, in the unit in which it was typed. Raises NotTyped."""
    plain = _clean(text)
    if wanted.bare is not None:
        names = "|".join(map(re.escape, wanted.units[wanted.bare]))
        plain = re.sub(rf"^(?:{names})\s*(?=[-+0-9.,])", "", plain, flags=re.IGNORECASE)
    match = _LEADING.fullmatch(plain)
    if match is None:
        raise NotTyped("typed-no-number", text=_shown(text))
    if re.search("[0-9]", match[3]):
        raise NotTyped("typed-mixed", text=_shown(text))
    number = _number(match[1], match[2], text)
    found = Quantity(number, _unit(match[3], text, wanted))
    _believable(found, wanted.least, wanted.most)
    return found


def _clean(text: str) -> str:
    """Bring what different keyboards type to one form; refuse digits that are no plain digits."""
    if any(unicodedata.category(one) == "No" for one in text) or _FRACTION.search(text):
        raise NotTyped("typed-fraction", text=_shown(text))
    # An ordinal sign or a ring is typed for a degree sign; NFKC would make letters of them.
    same = text.replace("º", "°").replace("˚", "°").replace("−", "-")
    plain = " ".join(unicodedata.normalize("NFKC", same).split())
    if not plain:
        raise NotTyped("typed-nothing")
    return plain


def _number(sign: str, digits: str, text: str) -> Decimal:
    ambiguous = _AMBIGUOUS.fullmatch(digits)
    if ambiguous:
        whole = sign.strip("+") + ambiguous[1]
        second = f"{Decimal(f'{whole}.{ambiguous[2]}').normalize():f}"
        first = whole + ambiguous[2]
        if not ambiguous[2].endswith("0"):
            # Three decimals would be refused again; with a fourth there is one reading.
            second += "0"
        raise NotTyped("typed-two-readings", text=_shown(text), first=first, second=second)
    if _PLAIN.fullmatch(digits):
        plain = digits
    elif _DECIMAL.fullmatch(digits):
        plain = digits.replace(",", ".")
    elif _GROUPED.fullmatch(digits):
        # The last mark is the decimal one when it differs from the first.
        marks = [one for one in digits if one in ".,"]
        plain = digits.replace(marks[0], "")
        if marks[0] != marks[-1]:
            plain = plain.replace(marks[-1], ".")
    elif " " in digits:
        raise NotTyped("typed-mixed", text=_shown(text))
    else:
        raise NotTyped("typed-no-number", text=_shown(text))
    return Decimal(sign + plain.replace(" ", ""))


def _unit(typed: str, text: str, wanted: Wanted) -> str:
    units = ", ".join(wanted.units)
    name = " ".join(typed.casefold().replace(".", " ").split())
    if not name:
        if wanted.bare is None:
            raise NotTyped("typed-no-unit", text=_shown(text), units=units)
        return wanted.bare
    if name in wanted.weights:
        raise NotTyped("typed-ounce", unit=_shown(typed))
    for symbol, names in wanted.units.items():
        if name in names:
            return symbol
    raise NotTyped("typed-unknown-unit", unit=_shown(typed), units=units)


def _believable(found: Quantity, least: Quantity, most: Quantity) -> None:
    told = {"number": str(found).strip(), "least": str(least).strip(), "most": str(most).strip()}
    told["number"] = _shown(told["number"])
    if found.value < 0 <= _base(least):
        raise NotTyped("typed-negative", **told)
    if not _base(least) <= _base(found) <= _base(most):
        raise NotTyped("typed-out-of-range", **told)


def _base(amount: Quantity) -> Decimal:
    for sort, convert in (
        (_VOLUME, litres), (_MASS, grams), (_TIME, seconds), (_TEMPERATURE, degrees_celsius)
    ):  # fmt: skip
        if amount.unit in sort:
            return convert(amount)
    return amount.value


def _shown(text: str) -> str:
    return text if len(text) <= _LONGEST else f"{text[:_LONGEST]}…"
