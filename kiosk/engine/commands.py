"""What the world asks of a session: an act, when, and by which channel."""

from __future__ import annotations

from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum
from typing import Final


@dataclass(frozen=True, slots=True)
class Instant:
    """A moment, as two clocks saw it."""

    utc: float
    """POSIX seconds."""
    mono: float
    """Seconds of a clock that is never set, counted within one `boot`."""
    boot: str
    """Which run of the monotonic clock this is."""

    def since(self, earlier: Instant) -> float:
        """Seconds from `earlier` to now; 0 across boots, where no clock can be trusted."""
        return max(0.0, self.mono - earlier.mono) if self.boot == earlier.boot else 0.0


class Channel(StrEnum):
    """How an act came in."""

    VOICE = "voice"
    TOUCH = "touch"
    KEY = "key"
    KIOSK = "kiosk"


OWN_WORDS: Final = "own-words"
"""Name of the ear that knows a few words of one worker by their sound. It takes other words for
these more often than a speech model does, and so it carries no safety hold."""


@dataclass(frozen=True, slots=True)
class Evidence:
    """By which channel, and for a voice: what was heard, how sure, by which ear."""

    channel: Channel
    heard: str = ""
    """For what was pressed: words that were said before and not taken."""
    confidence: float | None = None
    ear: str = ""

    @property
    def by_own_words(self) -> bool:
        """True when only the sound of a worker's own word speaks for it."""
        return self.channel is Channel.VOICE and self.ear == OWN_WORDS


@dataclass(frozen=True, slots=True)
class Start:
    worker: str
    language: str
    supervisor: str = ""
    """Who stands by and has given their PIN; empty where nobody was asked for."""
    pin: bool = False
    """True when the worker's own PIN was asked for, and was right."""


@dataclass(frozen=True, slots=True)
class Confirm:
    """`next`: this is done, go on."""


@dataclass(frozen=True, slots=True)
class GivePhrase:
    """The challenge phrase of a hold: said whole, or its button pressed and kept pressed."""


@dataclass(frozen=True, slots=True)
class Yes:
    pass


@dataclass(frozen=True, slots=True)
class No:
    pass


@dataclass(frozen=True, slots=True)
class Read:
    """A reading or a count, in the step's unit."""

    value: Decimal


class Finding(StrEnum):
    """What an inspection found."""

    GOOD = "good"
    REPLACED = "replaced"
    NONE_LEFT = "none left"


@dataclass(frozen=True, slots=True)
class Inspected:
    finding: Finding


@dataclass(frozen=True, slots=True)
class Witness:
    """A second person, whose PIN has been checked."""

    person: str


@dataclass(frozen=True, slots=True)
class SayAgain:
    """`repeat`."""


@dataclass(frozen=True, slots=True)
class Back:
    pass


@dataclass(frozen=True, slots=True)
class CallProblem:
    pass


@dataclass(frozen=True, slots=True)
class NameReason:
    reason: str


@dataclass(frozen=True, slots=True)
class Pause:
    pass


@dataclass(frozen=True, slots=True)
class Resume:
    pass


@dataclass(frozen=True, slots=True)
class HandOver:
    worker: str
    language: str
    supervisor: str = ""
    pin: bool = False


@dataclass(frozen=True, slots=True)
class Speak:
    """Change the language of the session."""

    language: str


@dataclass(frozen=True, slots=True)
class TakeOutOfService:
    pass


@dataclass(frozen=True, slots=True)
class End:
    """End the session before its end; asked once more before it counts."""


@dataclass(frozen=True, slots=True)
class Reckoned:
    """Something was worked out beside the step: it is kept, and moves nothing."""

    calculator: str
    answers: str
    finding: str


@dataclass(frozen=True, slots=True)
class TimeUp:
    """The clock says that a wait is over."""


@dataclass(frozen=True, slots=True)
class Restart:
    """The kiosk came up and found this session open."""


Act = (
    Start
    | Confirm
    | GivePhrase
    | Yes
    | No
    | Read
    | Inspected
    | Witness
    | SayAgain
    | Back
    | CallProblem
    | NameReason
    | Pause
    | Resume
    | HandOver
    | Speak
    | TakeOutOfService
    | End
    | Reckoned
    | TimeUp
    | Restart
)


@dataclass(frozen=True, slots=True)
class Command:
    """An act with its time and evidence."""

    act: Act
    at: Instant
    by: Evidence


@dataclass(frozen=True, slots=True)
class Refusal:
    """Why a command does nothing: a message name, and what fills it."""

    why: str
    args: tuple[tuple[str, str | float], ...] = ()
