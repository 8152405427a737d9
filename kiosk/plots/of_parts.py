"""Figures of wearing parts: how long each lasted, when it is due, when it is likely replaced."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from datetime import date, timedelta
from itertools import pairwise
from typing import Final

from kiosk.plots.axes import day_axis, when
from kiosk.plots.figure import Bar, Fill, Ink, Lane, Lanes, Mark, Shape, Source
from kiosk.plots.reader import Reader
from kiosk.review.ledger_lines import PartLine
from kiosk.review.lifetimes import Spread
from kiosk.review.parts import Wear, next_replacements

_AHEAD: Final = 0.4
"""Share of the past that the axis shows at most of what is to come."""

_LEAST_AHEAD: Final = 30
_IN_USE: Final = (Fill.PALE, Fill.MIDDLE)
"""One life and the next, in turn."""


def wear(wears: Sequence[Wear], reader: Reader, now_utc: float) -> Lanes | None:
    """Return a lane for each wearing part of each machine; None for none.

    The hatched bar is when its next replacement is to be expected: eight of ten lie within it.
    """
    if not wears:
        return None
    say, now = reader.words.say, when(now_utc, reader.zone)
    first = reader.day(min(one.known_since_utc for one in wears))
    today = reader.day(now_utc)
    likely = next_replacements(wears)
    last = _last_day(wears, likely.values(), first, today)
    lanes = []
    for one in wears:
        spread = likely[one.machine, one.part]
        bars = [*_lives(one, now, reader)]
        if spread is not None and spread.low is not None:
            high = float(last.toordinal()) if spread.high is None else now + spread.high
            told = say("plot-part-likely")
            bars.append(Bar(now + spread.low, high, Fill.HATCHED, Source(told=told)))
        name = f"{reader.words.text(one.name)} · {reader.machine(one.machine)}"
        lanes.append(Lane(name, tuple(bars), tuple(_marks(one, now, reader))))
    return Lanes(
        title=say("plot-parts"),
        told=say(
            "plot-parts-told", n=len(wears), first=str(first),
            replaced=sum(len(one.replaced) for one in wears),
            overdue=sum(one.overdue for one in wears),
            worn=sum(one.worn is not None for one in wears),
        ),
        x=day_axis(first, last, reader.words), lanes=tuple(lanes),
        key=(
            (_IN_USE[0], say("plot-part-in-use")), (Fill.HATCHED, say("plot-part-likely")),
            ((Shape.BAR, Ink.DATA), say("plot-part-replaced")),
            ((Shape.CROSS, Ink.OFF), say("plot-part-worn")),
            ((Shape.RING, Ink.LIMIT), say("plot-part-due")),
            ((Shape.DOWN, Ink.LIKELY), say("plot-today")),
        ),
    )  # fmt: skip


def _last_day(
    wears: Sequence[Wear], likely: Iterable[Spread | None], first: date, today: date
) -> date:
    """Return where the axis ends: after what is to come, but not far beyond what was seen."""
    ahead = max(_LEAST_AHEAD, round((today - first).days * _AHEAD))
    highs = [round(one.high) for one in likely if one is not None and one.high is not None]
    due = [(one.due - today).days for one in wears if one.due is not None]
    return today + timedelta(days=min(ahead, max([_LEAST_AHEAD, *highs, *due]) + 7))


def _lives(one: Wear, now: float, reader: Reader) -> list[Bar]:
    ends = [(when(line.at_utc, reader.zone), line) for line in one.replaced]
    begin = when(one.known_since_utc, reader.zone)
    places = [begin, *(at for at, _ in ends), now]
    return [
        Bar(low, high, _IN_USE[place % 2])
        for place, (low, high) in enumerate(pairwise(places))
        if high > low
    ]


def _marks(one: Wear, now: float, reader: Reader) -> list[Mark]:
    found = [_mark(line, Shape.BAR, Ink.DATA, reader) for line in one.replaced]
    if one.worn is not None:
        found.append(_mark(one.worn, Shape.CROSS, Ink.OFF, reader))
    if one.due is not None:
        ink = Ink.OFF if one.overdue else Ink.LIMIT
        found.append(Mark(one.due.toordinal() + 0.5, Shape.RING, ink, Source(told=str(one.due))))
    return [*found, Mark(now, Shape.DOWN, Ink.LIKELY)]


def _mark(line: PartLine, shape: Shape, ink: Ink, reader: Reader) -> Mark:
    told = f"{reader.moment(line.at_utc)} {reader.person(line.by) if line.by else ''}".strip()
    return Mark(when(line.at_utc, reader.zone), shape, ink, Source(line.seq, line.session, told))
