"""What happened: facts, journaled with time and evidence, never changed, never taken back."""

from __future__ import annotations

from dataclasses import dataclass

from kiosk.engine.commands import Evidence, Instant


@dataclass(frozen=True, slots=True)
class SessionStarted:
    procedure: str
    version: int
    digest: str
    machine: str
    worker: str
    language: str
    during: str
    leaves: str
    practice: bool
    """True in an invented shop and in a rehearsal: kept apart from real work."""
    supervisor: str = ""
    """Who stood by and gave their PIN; empty where nobody was asked for."""
    pin: bool = False
    """True when the worker gave their own PIN."""


@dataclass(frozen=True, slots=True)
class StepEntered:
    step: str
    goal: str
    """Where the walk goes on; another step than `step` while a lapsed condition is asked again."""


@dataclass(frozen=True, slots=True)
class PromptRepeated:
    step: str


@dataclass(frozen=True, slots=True)
class PhraseGiven:
    """The challenge was answered; it has yet to be read back and agreed to."""

    step: str


@dataclass(frozen=True, slots=True)
class ReadBackAgreed:
    step: str
    next: str
    """What is still asked before the step counts: `verify` or `witness`."""


@dataclass(frozen=True, slots=True)
class ReadBackDenied:
    step: str


@dataclass(frozen=True, slots=True)
class VerifyFailed:
    """The try-out showed that the condition is not true."""

    step: str


@dataclass(frozen=True, slots=True)
class ReadingGiven:
    """A number was heard; it has yet to be read back and agreed to."""

    step: str
    value: str
    unit: str


@dataclass(frozen=True, slots=True)
class ReadingOff:
    """A reading out of its limit, or a count that differs from the parts list: a deviation."""

    step: str
    value: str
    unit: str
    limit: str


@dataclass(frozen=True, slots=True)
class PassDone:
    step: str
    passes: int


@dataclass(frozen=True, slots=True)
class PassJudged:
    """A pass was looked at, and one more is needed."""

    step: str
    clear: bool


@dataclass(frozen=True, slots=True)
class PassesRanOut:
    """The most passes are done and it is still not right: a deviation."""

    step: str
    passes: int


@dataclass(frozen=True, slots=True)
class TriedAgain:
    """After a deviation, the step is done once more."""

    step: str


@dataclass(frozen=True, slots=True)
class WaitEnded:
    step: str
    seconds: float


@dataclass(frozen=True, slots=True)
class StepConfirmed:
    """The only fact that establishes or ends conditions by work."""

    step: str
    strength: str
    answer: str
    unit: str
    limit: str
    """The limit with its source that a reading was judged by."""
    establishes: tuple[str, ...]
    ends: tuple[str, ...]
    witness: str = ""


@dataclass(frozen=True, slots=True)
class ConditionsLapsed:
    conditions: tuple[str, ...]
    because: str


@dataclass(frozen=True, slots=True)
class WentBack:
    step: str
    to: str


@dataclass(frozen=True, slots=True)
class SessionHeld:
    because: str
    """`pause`, `problem`, `restart`, or `no way in`."""


@dataclass(frozen=True, slots=True)
class ReasonNamed:
    reason: str


@dataclass(frozen=True, slots=True)
class SessionResumed:
    reason: str
    """The reason whose corrective action the worker says is done; empty after a pause."""


@dataclass(frozen=True, slots=True)
class HandedOver:
    worker: str
    language: str
    supervisor: str = ""
    pin: bool = False


@dataclass(frozen=True, slots=True)
class LanguageChanged:
    language: str


@dataclass(frozen=True, slots=True)
class WorkedOut:
    """A calculator's answers and finding, in words. It moves nothing."""

    calculator: str
    answers: str
    finding: str


@dataclass(frozen=True, slots=True)
class EndAsked:
    pass


@dataclass(frozen=True, slots=True)
class EndWithdrawn:
    pass


@dataclass(frozen=True, slots=True)
class SessionAborted:
    unsafe: tuple[str, ...]
    """Conditions in which the machine is left that the next person must know of."""
    out_of_service: bool
    reason: str


@dataclass(frozen=True, slots=True)
class SessionCompleted:
    pass


Fact = (
    SessionStarted
    | StepEntered
    | PromptRepeated
    | PhraseGiven
    | ReadBackAgreed
    | ReadBackDenied
    | VerifyFailed
    | ReadingGiven
    | ReadingOff
    | PassDone
    | PassJudged
    | PassesRanOut
    | TriedAgain
    | WaitEnded
    | StepConfirmed
    | ConditionsLapsed
    | WentBack
    | SessionHeld
    | ReasonNamed
    | SessionResumed
    | HandedOver
    | LanguageChanged
    | WorkedOut
    | EndAsked
    | EndWithdrawn
    | SessionAborted
    | SessionCompleted
)


@dataclass(frozen=True, slots=True)
class Event:
    """A fact with its time and evidence."""

    at: Instant
    by: Evidence
    fact: Fact
