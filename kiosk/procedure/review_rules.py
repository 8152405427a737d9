"""What the files under procedures/review/ may say: rules for deviations, and what is due when."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from types import MappingProxyType
from typing import Any, ClassVar, Final

from kiosk.procedure.model import Text

_STRICT: dict[str, Any] = {"extra": "forbid", "strict": False, "coerce_numbers_to_str": True}


class Finds(StrEnum):
    """What a rule finds. Each has its code; the file gives its words, weight and parameters."""

    PROBLEM_OPEN = "problem open"
    PROBLEM = "problem"
    OUT_OF_SERVICE = "out of service"
    ENDED_EARLY = "ended early"
    UNFINISHED = "unfinished"
    NO_WAY_IN = "no way in"
    HOLD_TOUCHED = "hold touched after doubt"
    HOLD_DENIED = "hold read-back refused"
    TRY_OUT_FAILED = "try-out failed"
    WAIT_SHORT = "wait short"
    WAIT_CUT = "wait cut"
    READING_OFF = "reading off"
    READING_LEFT_OFF = "reading left off"
    COUNT_OFF = "count off"
    COUNT_LEFT_OFF = "count left off"
    PASSES_RAN_OUT = "passes ran out"
    TOO_FAST = "too fast"
    NONE_IN_STOCK = "none in stock"
    SHORTER = "shorter than usual"
    LONGER = "longer than usual"
    RESTARTED = "restarted"
    BACK_STEP = "back step"
    TOUCH_ONLY = "touch only"
    TEXT_UNKNOWN = "text unknown"
    EARLY = "session early"
    LATE = "session late"
    NOT_FINISHED = "session not finished"
    NEVER_STARTED = "session never started"
    OVERDUE = "overdue"


PARAMETERS: Final[Mapping[Finds, tuple[str, ...]]] = MappingProxyType(
    {
        Finds.UNFINISHED: ("after_min",),
        Finds.HOLD_TOUCHED: ("asked_again", "confidence"),
        Finds.WAIT_SHORT: ("clock_s",),
        Finds.TOO_FAST: ("do_s", "hold_s", "measure_s", "repeat_s", "count_s", "inspect_s"),
        Finds.SHORTER: ("least_sessions", "ratio"),
        Finds.LONGER: ("least_sessions", "ratio"),
        Finds.TOUCH_ONLY: ("least_steps", "ear_within_days"),
    }
)
"""The numbers that a rule must give; one that is not here takes none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DeviationRule:
    """One rule: what it finds, and how much it matters."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    finds: Finds
    title: Text
    reason: Text
    """Why a supervisor should see it."""
    weight: int
    """1 to 100; the highest needs eyes first."""
    parameters: Mapping[str, Decimal] | None = None
    """The numbers of the rule, each with its unit in its name."""
    source: str
    """Published source, or `common practice, no source`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DeviationRules:
    """All rules for deviations."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    drafted: tuple[str, ...]
    """Languages whose text was drafted by machine and not yet checked by a fluent speaker."""
    rules: tuple[DeviationRule, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Window:
    """When a daily session is due, around the moment at which the site opens or closes."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    before_min: int
    """Minutes before that moment at which its time begins."""
    after_min: int
    """Minutes after that moment at which its time is over."""
    claim_min: int
    """Minutes before its time begins in which a session still counts for this day."""
    source: str
    """Published source, or `common practice, no source`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class DayCheck:
    """What is due once on each business day while the machines serve, and its time."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    procedures: tuple[str, ...]
    """The day checks; each is walked on machines of its own kind."""
    after_opening_min: int
    """Minutes after opening at which its time begins."""
    before_closing_min: int
    """Minutes before closing at which its time is over."""
    claim_min: int
    """Minutes before its time begins in which a session already counts for this day."""
    source: str
    """Published source, or `common practice, no source`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Interval:
    """Something that is due every so many days: a procedure, or the replacement of a part."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    title: Text
    machine_kind: str
    days: int
    notice_days: int
    """Days before its last day at which it is shown."""
    procedure: str | None = None
    """The procedure whose completion fulfils it."""
    part: str | None = None
    """The part whose replacement fulfils it."""
    source: str
    """The maker's manual with its page, a clause, or `common practice, no source`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Schedule:
    """What is due when."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    drafted: tuple[str, ...]
    """Languages whose text was drafted by machine and not yet checked by a fluent speaker."""
    close: Window
    open: Window
    check: DayCheck | None = None
    samples: tuple[str, ...] = ()
    """Procedures by which laboratory samples are taken: a complete session of one is a sampling of
    all heads of its machine, as a result that was entered is of its own head."""
    intervals: tuple[Interval, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class KindSchedule:
    """What is due on machines of one kind of the site's own, beside the schedule for all."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    """The machine kind."""
    drafted: tuple[str, ...]
    """Languages whose text was drafted by machine and not yet checked by a fluent speaker."""
    checks: tuple[str, ...] = ()
    """Its day checks, due when those of the schedule for all are."""
    samples: tuple[str, ...] = ()
    """Its procedures by which laboratory samples are taken."""
    intervals: tuple[Interval, ...] = ()
