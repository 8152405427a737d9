"""Figures of readings with their limits: the mix's temperature, the sanitizer's strength."""

from __future__ import annotations

import re
from collections.abc import Sequence
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.plots.axes import day_axis, number_axis, when
from kiosk.plots.figure import (
    Band,
    Chart,
    Dash,
    Ink,
    Layer,
    Level,
    Line,
    Point,
    Points,
    Shape,
    Source,
    Spread,
)
from kiosk.plots.gather import MOST, days_each, gathered
from kiosk.plots.reader import Reader
from kiosk.review.ledger_lines import Reading

MIX_TEMPERATURE: Final = "mix temperature"
SANITIZER_STRENGTH: Final = "sanitizer strength"

_LIMIT: Final = re.compile(r"(?P<name>.+?) (?P<least>\S+) to (?P<most>\S+): (?P<source>.*)", re.S)
_ON_STRIPS: Final = {"mg/L": "ppm"}
"""Test strips are printed in ppm; in water that is mg/L."""


@dataclass(frozen=True, slots=True)
class _Limit:
    """A limit as readings were judged by it, from when to when."""

    least: Decimal | None
    most: Decimal | None
    source: str
    begin: float
    end: float


def readings(of: Sequence[Reading], reader: Reader, *, what: str = "") -> Chart | None:
    """Return readings of one quantity over time with their limit; None for none.

    Readings in another unit than the newest one's are left out, and counted in the description.
    `what` says where they were taken, for the title.
    """
    measured = sorted((one for one in of if _value(one) is not None), key=lambda one: one.at_utc)
    if not measured:
        return None
    unit, quantity = measured[-1].unit, measured[-1].quantity
    drawn = [one for one in measured if (one.unit, one.quantity) == (unit, quantity)]
    limits = _limits(drawn, reader)
    ends = [float(end) for one in limits for end in (one.least, one.most) if end is not None]
    values = [_y(one) for one in drawn]
    say = reader.words.say
    name = say("plot-quantity", quantity=quantity.replace(" ", "-"), other=quantity)
    layers = [*_of_limits(limits, unit, reader), *_of_values(drawn, reader)]
    return Chart(
        title=say("plot-readings", quantity=name, what=what or "–"),
        told=_told(measured, drawn, limits, reader),
        x=day_axis(reader.day(drawn[0].at_utc), reader.day(drawn[-1].at_utc), reader.words),
        y=number_axis(
            f"{name}, {_ON_STRIPS.get(unit, unit)}", [*values, *ends], reader.words, from_zero=True
        ),
        layers=tuple(layers),
    )  # fmt: skip


def _of_values(drawn: Sequence[Reading], reader: Reader) -> list[Layer]:
    say = reader.words.say
    found: list[Layer] = []
    kept = [one for one in drawn if one.kept is not False]
    off = [one for one in drawn if one.kept is False]
    if len(drawn) > MOST:
        first = float(reader.day(drawn[0].at_utc).toordinal())
        days = days_each(first, when(drawn[-1].at_utc, reader.zone))
        stretches = gathered(kept, lambda one: when(one.at_utc, reader.zone), first, days)
        reaches = [(one.middle, *one.reach(_y)) for one in stretches]
        found = [
            Spread(say("plot-reach", days=days), tuple((x, a, b) for x, a, _, b in reaches)),
            Points(say("plot-middle"), tuple(Point(x, mid) for x, _, mid, _ in reaches)),
        ]
    elif kept:
        name = "plot-kept" if any(one.kept for one in kept) else "plot-without-limit"
        found = [Points(say(name), tuple(_point(one, reader) for one in kept))]
    if off:
        points = tuple(_point(one, reader) for one in off)
        found.append(Points(say("plot-off"), points, Shape.CROSS, Ink.OFF))
    return found


def _of_limits(limits: Sequence[_Limit], unit: str, reader: Reader) -> list[Layer]:
    """Return the limit across the chart, or where it changed each as long as it was in force."""
    say, found = reader.words.say, list[Layer]()
    for one in limits:
        ends = {"least": one.least, "most": one.most}
        told = {
            name: reader.words.number(Number(str(end), unit))
            for name, end in ends.items()
            if end is not None
        }
        if not told:
            continue
        name = say(f"limit-{'-'.join(told)}", **told)
        heights = [float(end) for end in ends.values() if end is not None]
        if len(limits) == 1:
            low = None if one.least is None else float(one.least)
            high = None if one.most is None else float(one.most)
            found.append(Band(say("plot-should-lie"), low, high))
            found += [Level(name if n == 0 else "", height) for n, height in enumerate(heights)]
        else:
            found += [
                Line(
                    name if n == 0 else "", (Point(one.begin, height), Point(one.end, height)),
                    Dash.SOLID, Ink.LIMIT,
                )
                for n, height in enumerate(heights)
            ]  # fmt: skip
    return found


def _limits(drawn: Sequence[Reading], reader: Reader) -> list[_Limit]:
    found: dict[str, _Limit] = {}
    for one in drawn:
        read = _LIMIT.fullmatch(one.limit)
        if read is None:
            continue
        x = when(one.at_utc, reader.zone)
        begin = found[one.limit].begin if one.limit in found else x
        found[one.limit] = _Limit(
            _number(read["least"]), _number(read["most"]), read["source"], begin, x
        )
    return list(found.values())


def _told(
    measured: Sequence[Reading], drawn: Sequence[Reading], limits: Sequence[_Limit], reader: Reader
) -> str:
    say, unit = reader.words.say, drawn[-1].unit
    values = sorted(drawn, key=_y)
    told = [
        say(
            "plot-readings-told", n=len(drawn), first=reader.moment(drawn[0].at_utc),
            last=reader.moment(drawn[-1].at_utc), off=sum(one.kept is False for one in drawn),
            least=reader.words.number(Number(values[0].value, unit)),
            most=reader.words.number(Number(values[-1].value, unit)),
        )
    ]  # fmt: skip
    if len(measured) > len(drawn):
        told.append(say("plot-other-unit", n=len(measured) - len(drawn)))
    told += [say("sheet-limit-source", source=one.source) for one in limits]
    return " ".join(told)


def _point(one: Reading, reader: Reader) -> Point:
    number = reader.words.number(Number(one.value, one.unit))
    told = f"{reader.moment(one.at_utc)} {number}"
    return Point(when(one.at_utc, reader.zone), _y(one), Source(one.seq, one.session, told))


def _y(one: Reading) -> float:
    return float(_value(one) or 0)


def _value(one: Reading) -> Decimal | None:
    return _number(one.value)


def _number(text: str) -> Decimal | None:
    try:
        found = Decimal(text)
    except InvalidOperation:
        return None
    return found if found.is_finite() else None
