"""Figures of sessions: how long they took, and what was found in them."""

from __future__ import annotations

from collections.abc import Sequence
from datetime import date
from statistics import median
from typing import Final, Protocol

from kiosk.plots.axes import day_axis, number_axis, when
from kiosk.plots.figure import (
    Axis,
    Bars,
    Chart,
    Dash,
    Ink,
    Layer,
    Line,
    Point,
    Points,
    Shape,
    Source,
    Spread,
)
from kiosk.plots.gather import MOST, days_each, gathered
from kiosk.plots.reader import Reader
from kiosk.review import ledger_lines as ledger
from kiosk.review.record import Ended

_MINUTE = 60.0


def lengths(lines: Sequence[ledger.Line], reader: Reader, *, what: str = "") -> Chart | None:
    """Return how long sessions took, over time; None for none.

    `what` says which sessions these are, for the title. The usual length is drawn only for
    sessions of one procedure on one machine.
    """
    if not lines:
        return None
    ordered = sorted(lines, key=lambda line: line.begun_utc)
    minutes = [line.length_s / _MINUTE for line in ordered]
    say = reader.words.say
    alike = len({(line.machine, line.procedure) for line in ordered}) == 1
    layers = _each(ordered, reader) if len(ordered) <= MOST else _many(ordered, reader)
    # The median of all earlier ones moves slowly: of many, a part is enough.
    usual = [
        Point(_x(line, reader), line.usual_s / _MINUTE)
        for line in ordered[:: -(-len(ordered) // MOST)]
        if alike and line.usual_s is not None
    ]
    if usual:
        layers.append(Line(say("plot-usual"), tuple(usual), Dash.DASHED))
    told = say(
        "plot-length-told", n=len(ordered), first=reader.moment(ordered[0].begun_utc),
        last=reader.moment(ordered[-1].begun_utc), middle=reader.minutes(median(minutes) * _MINUTE),
        least=reader.minutes(min(minutes) * _MINUTE), most=reader.minutes(max(minutes) * _MINUTE),
    )  # fmt: skip
    return Chart(
        title=say("plot-length", what=what or "–"), told=told, x=_days(ordered, reader),
        y=number_axis(say("plot-axis-minutes"), minutes, reader.words, from_zero=True),
        layers=tuple(layers),
    )  # fmt: skip


class Counted(Protocol):
    """A session of which nothing is asked but this."""

    @property
    def begun_utc(self) -> float: ...
    @property
    def deviations(self) -> int: ...


def deviations(lines: Sequence[Counted], reader: Reader, *, what: str = "") -> Chart | None:
    """Return how many deviations were found in a session on average, over time; None for none."""
    if not lines:
        return None
    ordered = sorted(lines, key=lambda line: line.begun_utc)
    say = reader.words.say
    axis = _days(ordered, reader)
    days = days_each(axis.least, axis.most)
    points = []
    for stretch in gathered(ordered, lambda line: _x(line, reader), axis.least, days):
        found = sum(line.deviations for line in stretch.items)
        told = say("plot-found-in", found=found, sessions=len(stretch.items))
        points.append(Point(stretch.middle, found / len(stretch.items), Source(told=told)))
    told = say(
        "plot-deviations-told", found=sum(line.deviations for line in ordered), n=len(ordered),
        first=reader.moment(ordered[0].begun_utc), last=reader.moment(ordered[-1].begun_utc),
    )  # fmt: skip
    heights = [one.y for one in points]
    return Chart(
        title=say("plot-deviations", what=what or "–"), told=told, x=axis,
        y=number_axis(say("plot-axis-per-session"), heights, reader.words, from_zero=True),
        layers=(Bars(say("plot-deviations-bar", days=days), tuple(points), days * 0.8),),
    )  # fmt: skip


_SORTS: Final = {
    Ended.COMPLETE: ("plot-session-complete", Shape.DOT, Ink.DATA),
    Ended.OPEN: ("plot-session-open", Shape.RING, Ink.DATA),
}
_ENDED_EARLY: Final = ("plot-session-ended", Shape.CROSS, Ink.OFF)


def _each(ordered: Sequence[ledger.Line], reader: Reader) -> list[Layer]:
    groups: dict[tuple[str, Shape, Ink], list[Point]] = {}
    for line in ordered:
        groups.setdefault(_SORTS.get(line.ended, _ENDED_EARLY), []).append(_point(line, reader))
    return [
        Points(reader.words.say(name), tuple(points), shape, ink)
        for (name, shape, ink), points in groups.items()
    ]


def _many(ordered: Sequence[ledger.Line], reader: Reader) -> list[Layer]:
    axis = _days(ordered, reader)
    days = days_each(axis.least, axis.most)
    stretches = gathered(ordered, lambda line: _x(line, reader), axis.least, days)
    reaches = [(one.middle, *one.reach(lambda line: line.length_s / _MINUTE)) for one in stretches]
    say = reader.words.say
    return [
        Spread(say("plot-reach", days=days), tuple((x, low, high) for x, low, _, high in reaches)),
        Points(say("plot-middle"), tuple(Point(x, middle) for x, _, middle, _ in reaches)),
    ]


def _point(line: ledger.Line, reader: Reader) -> Point:
    worker = reader.person(line.workers[-1]) if line.workers else "–"
    told = reader.words.say(
        "plot-session-told", moment=reader.moment(line.begun_utc),
        time=reader.minutes(line.length_s), worker=worker,
    )  # fmt: skip
    source = Source(line.first_seq, line.session, told)
    return Point(_x(line, reader), line.length_s / _MINUTE, source)


def _x(line: Counted, reader: Reader) -> float:
    return when(line.begun_utc, reader.zone)


def _days(ordered: Sequence[Counted], reader: Reader) -> Axis:
    ends: list[date] = [reader.day(one.begun_utc) for one in (ordered[0], ordered[-1])]
    return day_axis(ends[0], ends[1], reader.words)
