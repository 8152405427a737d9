"""What a finder is given, and what it gives back."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Mapping
from dataclasses import dataclass
from decimal import Decimal
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.procedure.model import Text
from kiosk.review.earlier import Earlier
from kiosk.review.record import SessionRecord

Facts = Mapping[str, str | Text | Number]
Parameters = Mapping[str, Decimal]
"""The numbers of a rule, by name."""

RESOLUTION_S: Final = 1e-6
"""Seconds: the journal keeps whole microseconds."""
_LONG_S: Final = 120
"""Seconds from which a time is told in minutes."""


@dataclass(frozen=True, slots=True)
class Found:
    """One thing found: at which step, when, and what fills its sentence."""

    step: str
    at_utc: float
    facts: Facts


@dataclass(frozen=True, slots=True)
class Case:
    """A session's record with what was before it, and the present moment."""

    record: SessionRecord
    earlier: Earlier
    now_utc: float
    """POSIX seconds."""


def time_of(seconds: float) -> Number:
    """Return a time in whole minutes, or from 0 to 120 s in seconds to one decimal."""
    if seconds >= _LONG_S:
        return Number(str(round(seconds / 60)), "min")
    return Number(str(round(Decimal(seconds), 1)), "s")


def about(record: SessionRecord, step: str) -> Text:
    """Return what a step is about."""
    return next((one.about for one in record.steps if one.step == step), {"en": step})


def in_step(record: SessionRecord, step: str, at_utc: float, **facts: str | Text | Number) -> Found:
    """Return a finding at a step; its fact `what` is what that step is about."""
    return Found(step, at_utc, {"what": about(record, step), **facts})


Finder = Callable[[Case, Parameters], Iterator[Found]]
"""Looks for one kind of thing in a session's record."""
