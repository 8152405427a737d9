"""What one session recorded, as a supervisor reads it: the types."""

from __future__ import annotations

from dataclasses import dataclass
from datetime import datetime
from enum import StrEnum
from typing import Protocol
from zoneinfo import ZoneInfo

from kiosk.engine.commands import Channel
from kiosk.procedure.model import Text


class Ended(StrEnum):
    """How a session ended."""

    OPEN = "open"
    """It has not ended: it runs, is held, or was left."""
    COMPLETE = "complete"
    EARLY = "ended early"
    OUT_OF_SERVICE = "out of service"


class Asked(StrEnum):
    """What kind of answer a step asks for."""

    DO = "do"
    HOLD = "hold"
    MEASURE = "measure"
    WAIT = "wait"
    REPEAT = "repeat"
    COUNT = "count"
    INSPECT = "inspect"
    UNKNOWN = "unknown"
    """The text of the procedure is not here any more."""


class Said(StrEnum):
    """What a worker, or the clock, did at a step."""

    PHRASE = "phrase"
    AGREED = "read-back agreed"
    DENIED = "read-back refused"
    TRY_OUT_FAILED = "try-out failed"
    NUMBER = "number"
    OFF = "out of limit"
    ROUND_DONE = "pass"
    JUDGED = "pass judged"
    RAN_OUT = "passes ran out"
    TRIED_AGAIN = "tried again"
    TIME_UP = "time up"
    CONFIRMED = "confirmed"


class Left(StrEnum):
    """How the worker came out of a step."""

    CONFIRMED = "confirmed"
    BACK = "went back"
    HELD = "held"
    HANDED_OVER = "handed over"
    ENDED = "session ended"
    STILL_THERE = "still there"


class Became(StrEnum):
    """What became of a problem."""

    OPEN = "open"
    PUT_RIGHT = "put right"
    """The worker said that the corrective action is done, and went on."""
    ENDED_EARLY = "ended early"
    OUT_OF_SERVICE = "out of service"


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One thing that was said, pressed or found at a step."""

    said: Said
    at_utc: float
    """POSIX seconds."""
    after_s: float | None
    """Seconds from the question that was open to this, by the clock that is never set; None when
    the power was cut between."""
    channel: Channel
    heard: str = ""
    ear: str = ""
    confidence: float | None = None
    value: str = ""
    """A number, a count of passes, or a finding."""
    unit: str = ""
    limit: str = ""
    """The limit with its source, as journaled."""
    clear: bool | None = None
    """The answer about a pass."""
    seq: int = 0
    """Row of the journal, here and below; 0 where the record was made without."""


@dataclass(frozen=True, slots=True, kw_only=True)
class StepRecord:
    """One stay in a step. A step that was entered again has a record for each stay."""

    step: str
    goal: str
    """Another step than `step` while a lapsed condition was asked again."""
    asked: str
    """The sentence in the worker's language at that time; empty when the text is not here."""
    kind: Asked
    worker: str
    language: str
    entered_utc: float
    left: Left
    left_utc: float
    stayed_s: float | None
    """Seconds from the question to the end of the stay, by the clock that is never set; None when
    the power was cut between."""
    confirmed_by: Part | None
    """The answer that counted: channel, words heard, ear, confidence; None when there was none."""
    answer: str = ""
    unit: str = ""
    limit: str = ""
    """The limit with its source, as journaled."""
    witness: str = ""
    asked_again: int = 0
    """How often the worker had the question repeated."""
    needed_s: float | None = None
    """What a wait asks for; None when this is no wait."""
    waited_s: float | None = None
    """What was waited by the clock that is never set; None when this is no wait, or when the power
    was cut between."""
    waited_wall_s: float | None = None
    """The same by the wall clock, which can be set."""
    parts: tuple[Part, ...] = ()
    about: Text
    """What the step is about: its part, what it measures, or its sentence; the step's id when the
    text is not here."""
    corrective: Text | None = None
    """What the procedure asks for when a number is off or the passes ran out."""
    entered_seq: int = 0
    left_seq: int = 0

    @property
    def kept_limit(self) -> bool | None:
        """Whether the last number kept its limit; None when there was no number or no limit."""
        judged = [p for p in self.parts if p.limit and p.said in (Said.OFF, Said.CONFIRMED)]
        return judged[-1].said is Said.CONFIRMED if judged else None

    def said(self, *what: Said) -> tuple[Part, ...]:
        """Return the parts of some kinds, in order."""
        return tuple(part for part in self.parts if part.said in what)


@dataclass(frozen=True, slots=True, kw_only=True)
class Break:
    """A time in which the session did not run."""

    because: str
    """`pause`, `problem`, `restart` or `no way in`, as journaled."""
    at_utc: float
    until_utc: float | None
    """When it was gone on with or ended; None while it lasts."""
    step: str
    lapsed: tuple[str, ...] = ()
    restarted: bool = False
    """True when the kiosk had come up again and found the session open."""
    power_cut: bool = False
    """True when the computer itself was started anew."""
    dark_s: float = 0.0
    """Seconds by the wall clock between the last event before a restart and the restart."""
    seq: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class ProblemRecord:
    """A problem that was called, or that a failed try-out brought."""

    at_utc: float
    until_utc: float | None
    step: str
    worker: str
    reasons: tuple[str, ...]
    """The reasons named, in order; none when nobody said what was wrong."""
    name: Text
    """The last reason in words, its id when the text is not here; empty when none was named."""
    became: Became
    seq: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Change:
    """A hand-over to another person."""

    at_utc: float
    step: str
    before: str
    after: str
    seq: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class BackStep:
    """The worker went a step back."""

    at_utc: float
    step: str
    to: str
    seq: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class PartSeen:
    """A part that was counted or looked at, and what was accepted."""

    at_utc: float
    step: str
    part: str
    name: Text
    counted: int | None = None
    expected: int | None = None
    finding: str = ""
    """`good`, `replaced` or `none left`; empty for a count."""
    seq: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class Worked:
    """Something that was worked out beside a step."""

    at_utc: float
    step: str
    calculator: str
    answers: str
    finding: str
    seq: int = 0


@dataclass(frozen=True, slots=True, kw_only=True)
class SessionRecord:
    """One session. Times are POSIX seconds; `in_zone` shows them in the site's zone."""

    session: str
    procedure: str
    title: Text
    """Empty when the text is not here."""
    version: int
    digest: str
    text_known: bool
    """False when the procedure has no longer the text that was walked: then sentences, kinds of
    steps, parts and needed times are not known."""
    machine: str
    practice: bool
    workers: tuple[str, ...]
    """Each person once, in the order in which they took part."""
    begun_utc: float
    last_utc: float
    """Time of the last event."""
    ended: Ended
    ended_step: str
    """Where the session stood at its last event."""
    unsafe: tuple[str, ...] = ()
    """Conditions of which the next person was to be told."""
    steps: tuple[StepRecord, ...] = ()
    breaks: tuple[Break, ...] = ()
    problems: tuple[ProblemRecord, ...] = ()
    changes: tuple[Change, ...] = ()
    back_steps: tuple[BackStep, ...] = ()
    parts: tuple[PartSeen, ...] = ()
    worked_out: tuple[Worked, ...] = ()
    first_seq: int = 0
    last_seq: int = 0

    @property
    def length_s(self) -> float:
        """Seconds from the first event to the last by the wall clock, never below 0."""
        return max(0.0, self.last_utc - self.begun_utc)

    @property
    def over(self) -> bool:
        """True when the session was completed or aborted."""
        return self.ended is not Ended.OPEN

    @property
    def spoken(self) -> bool:
        """True when something was answered by voice."""
        return any(p.channel is Channel.VOICE for stay in self.steps for p in stay.parts)

    def confirmed(self) -> tuple[StepRecord, ...]:
        """Return the stays that ended with a confirmation, in order."""
        return tuple(one for one in self.steps if one.left is Left.CONFIRMED)


class Brief(Protocol):
    """What is asked of other sessions than the one that is looked at."""

    @property
    def session(self) -> str: ...
    @property
    def procedure(self) -> str: ...
    @property
    def machine(self) -> str: ...
    @property
    def practice(self) -> bool: ...
    @property
    def begun_utc(self) -> float: ...
    @property
    def last_utc(self) -> float: ...
    @property
    def length_s(self) -> float: ...
    @property
    def ended(self) -> Ended: ...
    @property
    def spoken(self) -> bool: ...


def in_zone(at_utc: float, zone: ZoneInfo) -> datetime:
    """Return a moment as the site's clock showed it."""
    return datetime.fromtimestamp(at_utc, zone)
