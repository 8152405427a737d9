"""Axes with round numbers, powers of ten, or days, in the reader's language."""

from __future__ import annotations

import math
from collections.abc import Iterator, Sequence
from datetime import date, datetime, timedelta
from zoneinfo import ZoneInfo

from kiosk.languages.words import Words
from kiosk.plots.figure import Axis, Tick

_STEPS = (1.0, 2.0, 5.0, 10.0)
_TICKS = 5
"""About how many ticks a number's axis has."""
_DAYS, _WEEKS, _MONTHS = 12, 80, 1100
"""Up to so many days, the ticks stand at days, weeks, months; above at years."""


_ROOM = 0.1
"""log10 below the lowest value."""


def when(at_utc: float, zone: ZoneInfo) -> float:
    """Return the place of a moment on an axis of days: the site's day number and its fraction."""
    local = datetime.fromtimestamp(at_utc, zone)
    return local.toordinal() + (local.hour * 3600 + local.minute * 60 + local.second) / 86_400


def number_axis(name: str, values: Sequence[float], words: Words, *, from_zero: bool) -> Axis:
    """Return an axis that holds some values, with ticks at round numbers."""
    least, most = min(values), max(values)
    if from_zero:
        least = min(0.0, least)
    if most <= least:
        least, most = least - (not from_zero), most + 1.0
    step = _step((most - least) / _TICKS)
    first, last = math.floor(least / step), math.ceil(most / step)
    ticks = [round(place * step, 9) for place in range(first, last + 1)]
    labelled = tuple(Tick(at, words.say("plot-number", n=at)) for at in ticks)
    return Axis(name, ticks[0], ticks[-1], labelled)


def power_axis(name: str, logs: Sequence[float], words: Words) -> Axis:
    """Return an axis of powers of ten that holds some values, given as log10.

    There is room below the lowest value, for the true one may lie below it.
    """
    first = math.floor(min(logs) - _ROOM)
    last = max(first + 1, math.ceil(max(logs)))
    ticks = tuple(Tick(at, words.say("plot-number", n=10**at)) for at in range(first, last + 1))
    return Axis(name, float(first), float(last), ticks)


def day_axis(first: date, last: date, words: Words) -> Axis:
    """Return an axis from the beginning of one day to the end of another; its name has both."""
    ticks = tuple(
        Tick(float(day.toordinal()), label) for day, label in _day_ticks(first, last, words)
    )
    return Axis(f"{first} – {last}", float(first.toordinal()), float(last.toordinal() + 1), ticks)


def day_label(day: date, words: Words) -> str:
    """Return a day of a year: `Nov 25`."""
    return words.say("plot-month-day", month=day.month, day=day.day)


def month_label(day: date, words: Words) -> str:
    """Return a month, in January the year."""
    return str(day.year) if day.month == 1 else words.say("plot-month", month=day.month)


def _day_ticks(first: date, last: date, words: Words) -> Iterator[tuple[date, str]]:
    days = (last - first).days + 1
    if days <= _WEEKS:
        step = max(1, math.ceil(days / _DAYS))
        step = 1 if step == 1 else 7 * math.ceil(step / 7) if step > 3 else step
        for n in range(0, days, step):
            yield first + timedelta(days=n), day_label(first + timedelta(days=n), words)
        return
    every = 1 if days <= _MONTHS / 2 else 3 if days <= _MONTHS else 12
    day = date(first.year, first.month, 1)
    while day <= last:
        if day >= first and (day.month - 1) % every == 0:
            yield day, month_label(day, words)
        day = date(day.year + day.month // 12, day.month % 12 + 1, 1)


def _step(least: float) -> float:
    """Return the smallest round step that is at least so long."""
    power = 10.0 ** math.floor(math.log10(least))
    return next(power * step for step in _STEPS if power * step >= least * (1 - 1e-9))
