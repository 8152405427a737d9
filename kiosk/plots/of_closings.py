"""A heat-strip of who closed when, with the evenings that were late or left out."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from functools import partial
from typing import Final

from kiosk.plots.axes import day_label, month_label
from kiosk.plots.figure import Box, Fill, Source, Strip
from kiosk.plots.reader import Reader
from kiosk.review.ledger_lines import Line
from kiosk.review.schedule import Duty, Kept, Stand

_DAYS: Final = 62
_WEEKS: Final = 434
"""Up to so many days a column is a day, then a week, then a month."""

_YEARS_FROM: Final = 24
"""Months from which only years are labelled."""

_DONE: Final = (Stand.DONE, Stand.LATE, Stand.EARLY)
_LEFT_OUT: Final = (Stand.MISSED, Stand.NOT_FINISHED)

_LATE: Final = " late"
_NOBODY: Final = " nobody"
"""Rows that are no person's: no id begins with a space."""

_NAMED: Final = 12
"""Most evenings of a box that its sentence names."""

_TOO_MANY: Final = 100


@dataclass(frozen=True, slots=True)
class _Column:
    """Some days together."""

    first: date
    label: str


def closings(kept: Iterable[Kept], lines: Iterable[Line], reader: Reader) -> Strip | None:
    """Return who brought the evening work to its end when, machine by machine taken together.

    `kept` has what became of the evenings, `lines` the sessions that count for them. An evening
    counts for who worked in its session last. Returns None when nothing was due.
    """
    due = [one for one in kept if one.due.duty is Duty.CLOSE and one.stand in _DONE + _LEFT_OUT]
    if not due:
        return None
    of_session = {line.session: line for line in lines}
    column_of, columns = _columns([one.due.day for one in due], reader)
    rows: dict[str, dict[int, list[Kept]]] = {}
    for one in due:
        line = of_session.get(one.session)
        who = line.workers[-1] if one.stand in _DONE and line and line.workers else _NOBODY
        for row in (who, _LATE) if one.stand is Stand.LATE else (who,):
            rows.setdefault(row, {}).setdefault(column_of(one.due.day), []).append(one)
    say = reader.words.say
    names = {_LATE: say("plot-late"), _NOBODY: say("plot-nobody")}
    people = [who for who in rows if who not in names]
    known = [who for who in reader.people if who in people]
    order = [*known, *sorted(set(people) - set(known)), *(row for row in names if row in rows)]
    most = max(len(found) for who in people or [_NOBODY] for found in rows[who].values())
    drawn = []
    for row in order:
        shade = partial(_shade, most=most) if row in people else _crossed
        boxes = [_box(rows[row].get(n, []), shade, of_session) for n in range(len(columns))]
        drawn.append((names.get(row) or reader.person(row), tuple(boxes)))
    late = sum(one.stand is Stand.LATE for one in due)
    missed = sum(one.stand in _LEFT_OUT for one in due)
    return Strip(
        title=say("plot-closings"),
        told=say("plot-closings-told", n=len(due), first=str(min(x.due.day for x in due)),
                 last=str(max(x.due.day for x in due)), late=late, missed=missed),
        columns=tuple(one.label for one in columns), rows=tuple(drawn),
        key=((Fill.MIDDLE, say("plot-closed")), (Fill.CROSSED, say("plot-closed-late"))),
    )  # fmt: skip


def _box(
    found: Sequence[Kept], shade: Callable[[int], Fill], of_session: Mapping[str, Line]
) -> Box:
    if not found:
        return Box(Fill.NONE)
    told = ", ".join(f"{one.due.day} {one.due.machine}" for one in found[:_NAMED])
    line = of_session.get(found[0].session) if len(found) == 1 else None
    source = Source(told=told) if line is None else Source(line.first_seq, line.session, told)
    return Box(shade(len(found)), str(len(found)) if len(found) < _TOO_MANY else "++", source)


def _shade(count: int, most: int) -> Fill:
    shades = (Fill.PALE, Fill.MIDDLE, Fill.DARK)
    return shades[min(2, (count * 3 - 1) // max(most, 2))]


def _crossed(_: int) -> Fill:
    return Fill.CROSSED


def _columns(
    days: Sequence[date], reader: Reader
) -> tuple[Callable[[date], int], Sequence[_Column]]:
    first, last = min(days), max(days)
    span = (last - first).days + 1
    if span <= _WEEKS:
        each = 1 if span <= _DAYS else 7
        starts = [first + timedelta(days=n) for n in range(0, span, each)]
        columns = [_Column(day, day_label(day, reader.words)) for day in starts]
        return lambda day: (day - first).days // each, columns
    months = (last.year - first.year) * 12 + last.month - first.month + 1
    starts = [
        date(first.year + (first.month - 1 + n) // 12, (first.month - 1 + n) % 12 + 1, 1)
        for n in range(months)
    ]
    columns = [_Column(day, _of_month(day, months, reader)) for day in starts]
    return lambda day: (day.year - first.year) * 12 + day.month - first.month, columns


def _of_month(day: date, months: int, reader: Reader) -> str:
    """Return a month's label; where there are many, only Januaries have one, the year."""
    return month_label(day, reader.words) if months <= _YEARS_FROM or day.month == 1 else ""
