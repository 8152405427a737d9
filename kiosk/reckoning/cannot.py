"""What cannot be worked out, in the worker's language: the trade's errors as messages."""

from __future__ import annotations

from collections.abc import Mapping
from datetime import date, datetime
from decimal import Context, Decimal, InvalidOperation
from types import MappingProxyType

from kiosk.engine.prompt import Message, Number
from kiosk.languages.words import languages, words
from kiosk.procedure.model import Text
from kiosk.reckoning.calculator import Finding
from kiosk.reckoning.days import day_said
from kiosk.trade.authorities import NoSuchLimit
from kiosk.trade.available_chlorine import NotALabel
from kiosk.trade.code_dates import NoDate
from kiosk.trade.dose import NoDose
from kiosk.trade.growth import NoGrowth
from kiosk.trade.hypochlorous import NoShare
from kiosk.trade.most_probable_number import NotADesign
from kiosk.trade.plate_count import NotAPlate
from kiosk.trade.rounding import NotAResult
from kiosk.trade.sampling_plan import NotAPlan
from kiosk.trade.solution import NotASolution
from kiosk.trade.temperature_log import NoVerdict
from kiosk.trade.units import UNITS, Quantity

Refused = (
    NotALabel | NoDose | NotASolution | NoShare | NoGrowth | NoVerdict | NoDate | NotAPlate
    | NotADesign | NotAPlan | NotAResult | NoSuchLimit
)  # fmt: skip
"""What the trade raises when nothing can be worked out: each has a `key` and `values`."""

SORTS: Mapping[type[Refused], str] = MappingProxyType({
    NotALabel: "label", NoDose: "dose", NotASolution: "solution", NoShare: "share",
    NoGrowth: "growth", NoVerdict: "log", NoDate: "date", NotAPlate: "plate",
    NotADesign: "tubes", NotAPlan: "plan", NotAResult: "result", NoSuchLimit: "limit",
})  # fmt: skip
"""Error to the middle of its messages' names, `cannot-SORT-KEY`."""

_UNITS: Mapping[str, str] = MappingProxyType({
    "strength": "mg/L", "wanted": "mg/L", "cap": "mg/L", "strongest": "mg/L", "hardness": "mg/L",
    "water": "L", "least_water": "L", "volume": "mL", "amount": "g", "hours": "h", "seconds": "s",
    "gap": "s", "celsius": "°C", "z": "°C", "reference": "°C", "mend": "", "count": "",
})  # fmt: skip
"""Units of values that are bare numbers in the error; `mend` and `count` have none."""

_DIGITS = Context(prec=6)


def cannot(error: Refused) -> Finding:
    """Return the finding that nothing can be worked out, and what to mend."""
    # A message has a name already.
    filled = {
        "called" if name == "name" else name: _filled(name, value)
        for name, value in error.values.items()
    }
    why = Message(f"cannot-{SORTS[type(error)]}-{error.key}", filled)
    return Finding((Message("cannot-work-out"), why), good=False)


def _filled(name: str, value: object) -> str | Text | Number:
    match value:
        case str() if name in ("test", "product"):
            pick = f"pick-{value.replace(' ', '-')}"
            return {one: words(one).say(pick) for one in languages()}
        case Quantity(number, unit) if unit in UNITS:
            return _number(number, unit)
        case date() if not isinstance(value, datetime):
            return day_said(value)
        case int() | float() | Decimal():
            return _number(value, _UNITS.get(name, ""))
        case str() if name in _UNITS:
            return _number(value, _UNITS[name])
    return str(value)


def _number(value: Decimal | float | str, unit: str) -> Number | str:
    """Return a number to show in six digits; what is none comes back as it is."""
    try:
        number = _DIGITS.create_decimal(str(value))
    except InvalidOperation:
        return str(value)
    return Number(f"{number:f}", unit) if number.is_finite() else str(value)
