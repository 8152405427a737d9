"""What can be done on a screen of a walk: acts of the session, and the walk's own questions."""

from __future__ import annotations

from dataclasses import dataclass

from kiosk.engine import commands as c
from kiosk.listening.settled import Opens
from kiosk.reckoning.calculator import Answer


@dataclass(frozen=True, slots=True)
class ChooseLanguage(Opens):
    """Ask which language to speak. The walk's own question; the engine does not know it."""


@dataclass(frozen=True, slots=True)
class CallWitness(Opens):
    """Ask who the second person is that confirms a hold."""


@dataclass(frozen=True, slots=True)
class LeaveRemark(Opens):
    """Leave a spoken remark on the open problem."""


@dataclass(frozen=True, slots=True)
class NeverMind(Opens):
    """Take back a question of the walk's own."""


@dataclass(frozen=True, slots=True)
class Help(Opens):
    """Ask what can be said or pressed here."""


@dataclass(frozen=True, slots=True)
class Reckon(Opens):
    """Ask what to work out."""


@dataclass(frozen=True, slots=True)
class Take(Opens):
    """Take one calculator."""

    calculator: str


@dataclass(frozen=True, slots=True)
class Give:
    """Answer a calculator's question."""

    answer: Answer


@dataclass(frozen=True, slots=True)
class Agree:
    """Say whether a number was heard right."""

    yes: bool


@dataclass(frozen=True, slots=True)
class AskAgain(Opens):
    """Take back the last answer to a calculator."""


Choice = (
    c.Act | ChooseLanguage | CallWitness | LeaveRemark | NeverMind | Help | Reckon | Take | Give
    | Agree | AskAgain
)  # fmt: skip


@dataclass(frozen=True, slots=True)
class Option:
    """Something that can be done now: the act, and the words for it."""

    choice: Choice
    label: str
    """What to say for it, and what stands on its button."""
    detail: str = ""
    """What it stands for, where the words alone do not tell."""
    also: tuple[str, ...] = ()
    """Other words that may be said for it."""
