"""A typed answer as the number that a calculator asks for."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from decimal import Decimal

from kiosk.engine.prompt import Message
from kiosk.reckoning.bounds import BELOW
from kiosk.reckoning.calculator import Answer, NumberWanted
from kiosk.reckoning.interview import NotAnAnswer
from kiosk.trade import typed
from kiosk.trade.typed import NotTyped, Wanted
from kiosk.trade.units import Quantity, grams, litres, seconds

_ANY = Decimal(10) ** 9
"""Far beyond every question's own range, by which an answer is judged afterwards."""


def _unchanged(amount: Quantity) -> Decimal:
    return amount.value


_SORTS: tuple[tuple[Wanted, Callable[[Quantity], Decimal]], ...] = (
    (typed.WATER, litres),
    (typed.MASS, grams),
    (typed.TIME, seconds),
    (typed.STRENGTH, _unchanged),
    (typed.ACIDITY, _unchanged),
    (typed.PERCENT, _unchanged),
)


def read_answers(text: str, wants: NumberWanted) -> tuple[Answer, ...]:
    """Read what was typed: a number, a name that may stand in its place, or `<10`.

    `<10` gives two answers: that it is below detection, and the bound that is asked for next.
    Raises NotAnAnswer.
    """
    plain = text.strip()
    if plain in wants.besides:
        return (plain,)
    if BELOW in wants.besides and plain.startswith(("<", "＜")):
        return BELOW, read_answer(plain[1:], wants)
    return (read_answer(text, wants),)


def read_answer(text: str, wants: NumberWanted) -> Decimal:
    """Read what was typed, in the unit of the question; a bare number is in that unit.

    A temperature in another unit is refused, never converted: limits are printed for each unit, and
    a reading is judged in the one in which it was taken. See `unit_taken`. Raises NotAnAnswer with
    a message that says what to type.
    """
    try:
        return _read(text, wants)
    except NotTyped as error:
        raise _refused(error) from error


def unit_taken(text: str, wants: NumberWanted) -> str:
    """Return the unit in which a typed answer was taken: another one only for a temperature.

    Raises NotAnAnswer.
    """
    if wants.unit not in typed.TEMPERATURE.units:
        return wants.unit
    try:
        return typed.read_quantity(text, _open(typed.TEMPERATURE, wants.unit)).unit
    except NotTyped as error:
        raise _refused(error) from error


def _read(text: str, wants: NumberWanted) -> Decimal:
    unit = wants.unit
    if not unit:
        return typed.read_number(text, -_ANY, _ANY)
    if unit in typed.TEMPERATURE.units:
        own = replace(typed.TEMPERATURE, units={unit: typed.TEMPERATURE.units[unit]})
        return typed.read_quantity(text, _open(own, unit)).value
    for wanted, convert in _SORTS:
        if unit in wanted.units:
            found = typed.read_quantity(text, _open(wanted, unit))
            same = found.unit == unit
            return found.value if same else convert(found) / convert(Quantity(Decimal(1), unit))
    raise LookupError(f"'{unit}' is no unit in which a calculator asks")


def _open(wanted: Wanted, unit: str) -> Wanted:
    """Take a bare number in the question's unit, and leave its range to the question."""
    return replace(wanted, bare=unit, least=Quantity(-_ANY, unit), most=Quantity(_ANY, unit))


def _refused(error: NotTyped) -> NotAnAnswer:
    return NotAnAnswer(Message(error.key, {name: str(one) for name, one in error.values.items()}))
