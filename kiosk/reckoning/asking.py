"""Questions that several calculators ask, and how their numbers are shown."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import replace
from decimal import ROUND_FLOOR, ROUND_HALF_EVEN, Decimal
from itertools import chain

from fluent.runtime.types import fluent_number

from kiosk.engine.prompt import Message, Number
from kiosk.languages.words import languages, words
from kiosk.procedure.model import Text
from kiosk.reckoning.calculator import (
    Answers,
    Bench,
    Finding,
    NumberWanted,
    OneOf,
    Question,
    evenly,
    number,
)
from kiosk.trade.units import Quantity

Args = dict[str, str | Text | Number]
"""What fills a message."""


def one_of(name: str, *names: str) -> Question:
    """Return a question that is answered by one of a few names."""
    return Question(name, OneOf(names))


def count(name: str, least: int, most: int, said: str, choices: str = "") -> Question:
    """Return a question for a whole number; `choices` is the last one that can be said, or all."""
    last = choices or str(most)
    values = evenly(str(least), last, "1")
    wants = NumberWanted("", Decimal(least), Decimal(most), values, whole=True, said=said)
    return Question(name, wants)


def hours(name: str, most: str, choices: Iterable[Decimal]) -> Question:
    """Return a question for hours from 0 on."""
    wants = NumberWanted("h", Decimal(0), Decimal(most), tuple(choices), said="say-hours")
    return Question(name, wants)


HALF_HOURS = (*evenly("0", "6", "0.5"), *evenly("7", "24", "1"))
"""Hours that can be said: the halves matter up to the longest rule."""


def thermometer(bench: Bench) -> str:
    """Return the unit of the site's thermometer, °C where nothing is set."""
    return "°F" if bench.site.options.get("thermometer") == "fahrenheit" else "°C"


def taken_in(bench: Bench, unit: str) -> Bench:
    """Return a bench whose thermometer shows a unit, °C or °F."""
    name = "fahrenheit" if unit == "°F" else "celsius"
    site = replace(bench.site, options={**bench.site.options, "thermometer": name})
    return replace(bench, site=site)


def temperature(
    bench: Bench, name: str, celsius: tuple[str, str, str], fahrenheit: tuple[str, str, str]
) -> Question:
    """Return a question for a temperature in the site's unit: least, most and step of each."""
    unit = thermometer(bench)
    least, most, step = fahrenheit if unit == "°F" else celsius
    wants = NumberWanted(unit, Decimal(least), Decimal(most), evenly(least, most, step))
    return Question(name, wants)


def measured(bench: Bench, answers: Answers, name: str) -> Quantity:
    """Return a temperature that was answered, in the unit in which it was asked."""
    return Quantity(number(answers, name), thermometer(bench))


def first_open(questions: Iterable[Question], answers: Answers) -> Question | None:
    """Return the first question without an answer."""
    return next((one for one in questions if one.id not in answers), None)


def shown(value: Decimal | float, unit: str = "", places: int = 2) -> Number:
    """Return a number to show, rounded to `places` decimals."""
    exact = value if isinstance(value, Decimal) else Decimal(repr(value))
    rounded = exact.quantize(Decimal(1).scaleb(-places), rounding=ROUND_HALF_EVEN)
    return Number(f"{rounded + 0:f}", unit)


def as_written(value: Decimal) -> Text:
    """Return a number with all of its digits in every language: 3.0 stays 3.0."""
    places = max(0, -int(value.as_tuple().exponent))
    number = fluent_number(float(value), minimumFractionDigits=places)
    return {one: words(one).say("unit-none", n=number) for one in languages()}


def time_shown(hours_left: float) -> Number:
    """Return a time to show, rounded down: hours with a tenth, or minutes below one hour."""
    if hours_left < 1:
        return Number(str(int(hours_left * 60)), "min")
    tenths = Decimal(repr(hours_left)).quantize(Decimal("0.1"), rounding=ROUND_FLOOR)
    return Number(str(tenths), "h")


def finding(
    *lines: Message | Iterable[Message], good: bool | None, sources: Iterable[str]
) -> Finding:
    """Return a finding; sources that stand twice are kept once."""
    parts = ((one,) if isinstance(one, Message) else tuple(one) for one in lines)
    return Finding(tuple(chain.from_iterable(parts)), good, tuple(dict.fromkeys(sources)))


def limit_source(bench: Bench, name: str) -> str:
    """Return clause, edition, place and tag of one of the profile's limits. Raises KeyError."""
    limit = bench.profile.limits[name]
    return f"{limit.clause}, {limit.edition or bench.profile.edition}; {limit.source}. {limit.tag}"
