"""What the ledger holds of sessions, readings, parts and people: the types."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum
from typing import NamedTuple

from kiosk.procedure.model import Text
from kiosk.review.record import Ended


class Stood(StrEnum):
    """What a supervisor did with a session."""

    SIGNED_OFF = "signed off"
    SENT_BACK = "sent back"


@dataclass(frozen=True, slots=True, kw_only=True)
class Signed:
    """What a supervisor said about a session."""

    seq: int
    """Row of the journal."""
    session: str
    what: Stood
    by: str
    at_utc: float
    """POSIX seconds."""
    remark: str


@dataclass(frozen=True, slots=True, kw_only=True)
class Line:
    """One session in a line. Times are POSIX seconds."""

    session: str
    procedure: str
    title: Text
    """Empty when the text was not here when the ledger read the session."""
    version: int
    machine: str
    practice: bool
    workers: tuple[str, ...]
    """Each person once, in the order in which they took part."""
    begun_utc: float
    last_utc: float
    ended: Ended
    ended_step: str
    text_known: bool
    first_seq: int
    last_seq: int
    """Its first and last rows in the journal."""
    steps: int
    """Steps that were confirmed."""
    spoken: bool
    """True when something was answered by voice."""
    deviations: int
    heaviest: int
    """The highest weight of its deviations; 0 without one."""
    usual_s: float | None
    """Median length in seconds of the complete sessions of the same procedure, machine and kind of
    work (practice or real) that had begun before it; None when there was none."""
    usual_of: int
    """Of how many sessions that is."""
    signed: Signed | None
    """The last word of a supervisor; None when there is none, or when the session went on after
    it."""

    @property
    def length_s(self) -> float:
        """Seconds from the first event to the last by the wall clock, never below 0."""
        return max(0.0, self.last_utc - self.begun_utc)

    @property
    def over(self) -> bool:
        """True when the session was completed or aborted."""
        return self.ended is not Ended.OPEN


class Count(NamedTuple):
    """How many deviations one session shows."""

    begun_utc: float
    """POSIX seconds."""
    deviations: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Reading:
    """A number that was measured in a session and judged, or accepted without a limit."""

    seq: int
    """Row of the journal."""
    session: str
    step: str
    machine: str
    practice: bool
    at_utc: float
    """POSIX seconds."""
    quantity: str
    """What was measured, as `mix temperature`. When the text was not here, what its limit is named
    after; empty when it has none."""
    value: str
    unit: str
    limit: str
    """The limit with its source, as journaled; empty when the number has none."""
    kept: bool | None
    """Whether it kept its limit; None when it has none."""


@dataclass(frozen=True, slots=True, kw_only=True)
class PartLine:
    """A part that was counted, looked at or replaced."""

    seq: int
    """Row of the journal."""
    session: str
    """Empty for a part that was replaced while no session ran."""
    step: str
    machine: str
    practice: bool
    at_utc: float
    """POSIX seconds; for a part replaced while no session ran, the beginning of its day."""
    part: str
    counted: int | None = None
    expected: int | None = None
    finding: str = ""
    """`good`, `replaced` or `none left`; empty for a count."""
    by: str = ""
    remark: str = ""


@dataclass(frozen=True, slots=True, kw_only=True)
class WalkedBy:
    """How often somebody took part in a procedure."""

    worker: str
    procedure: str
    sessions: int
    first_utc: float
    last_utc: float
    """When the first and the last of them began; POSIX seconds."""
    first_session: str
