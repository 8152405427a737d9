"""What stands on the targets of a walk, made from what can be done now."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from typing import Final

from kiosk.engine import commands as c
from kiosk.engine.prompt import Number
from kiosk.languages.words import Words
from kiosk.options import (
    Agree,
    AskAgain,
    CallWitness,
    Choice,
    ChooseLanguage,
    Give,
    Help,
    LeaveRemark,
    NeverMind,
    Option,
    Reckon,
    Take,
)
from kiosk.procedure.plan import Measure, Plan, Step


@dataclass(frozen=True, slots=True)
class More:
    """Show what there was no room for."""


@dataclass(frozen=True, slots=True)
class Less:
    """Show the question again."""


@dataclass(frozen=True, slots=True)
class TypeNumber:
    """Show the keypad."""


@dataclass(frozen=True, slots=True)
class KeypadKey:
    """One key of the keypad: a digit, `.`, `-`, or the name of an editing key."""

    name: str


@dataclass(frozen=True, slots=True)
class Leave:
    """Go back to the board; the session stays as it is."""


@dataclass(frozen=True, slots=True)
class TryAgain:
    """Try once more to begin."""


@dataclass(frozen=True, slots=True)
class Pick:
    """An item of a list that the screens themselves show."""

    item: object


ScreenChoice = More | Less | TypeNumber | KeypadKey | Leave | TryAgain | Pick


@dataclass(frozen=True, slots=True)
class KeptWords:
    """What a target that must be kept pressed says."""

    again: str
    """When it was let go too soon."""
    let_go: str
    """When it was kept long enough."""


@dataclass(frozen=True, slots=True)
class Face:
    """What one target shows, and what it stands for."""

    choice: Choice | ScreenChoice
    label: str
    """The very words to say, where it can be said."""
    detail: str = ""
    """What it stands for, where the words alone do not tell; lines are parted by \\n."""
    key: str = ""
    """The key that does the same, by Textual's name of it."""
    kept: KeptWords | None = None
    """What it says while it is pressed, where it must be kept pressed; else None."""
    primary: bool = False
    listed: bool = False
    """True for an item of a list, in which no item is more likely than another."""
    available: bool = True


_PRIMARY: Final = (c.Confirm, c.GivePhrase, c.Yes, c.No, c.Inspected, c.Read, c.NameReason,
                   c.Resume, c.Speak, CallWitness, Take, Give, Agree)  # fmt: skip

_KEYS: Final[Mapping[type, str]] = {
    c.Confirm: "enter",
    c.GivePhrase: "enter",
    c.Resume: "enter",
    CallWitness: "enter",
    c.Yes: "y",
    c.No: "n",
    c.SayAgain: "r",
    c.Back: "b",
    c.CallProblem: "p",
    c.Pause: "escape",
    c.TakeOutOfService: "o",
    c.End: "e",
    ChooseLanguage: "l",
    LeaveRemark: "v",
    Reckon: "w",
    Help: "question_mark",
    AskAgain: "b",
    NeverMind: "escape",
}

_ORDER: Final = (c.CallProblem, c.TakeOutOfService, c.SayAgain, c.Back, AskAgain, c.Pause, Leave,
                 LeaveRemark, Reckon, ChooseLanguage, c.HandOver, c.End, NeverMind,
                 Help)  # fmt: skip
"""Secondary targets, the most needed first: a narrow screen shows only the first ones."""


def faces(options: Sequence[Option], plan: Plan, step: str, words: Words) -> tuple[Face, ...]:
    """Return a face for each option: the primary ones first, then the others by need."""
    numbered = iter("123456789")
    primary: list[Face] = []
    secondary: list[Face] = []
    several = sum(_listed(one.choice) for one in options) > 1
    for option in options:
        choice = option.choice
        key = _KEYS.get(type(choice), "")
        if isinstance(choice, c.HandOver) and not choice.worker:
            key = "h"
        elif isinstance(choice, Agree):
            key = "y" if choice.yes else "n"
        elif _listed(choice) and several:
            key = next(numbered, "")
        first = isinstance(choice, _PRIMARY) or _listed(choice)
        label, detail = option.label, option.detail
        if isinstance(choice, c.Read):
            label, detail = number_face(choice, plan.step(step), words)
        elif isinstance(choice, Give) and not isinstance(choice.answer, str):
            label = words.number(Number(str(choice.answer)))
        kept = None
        if isinstance(choice, c.GivePhrase):
            detail = words.say("keep-pressed")
            kept = KeptWords(words.say("kept-too-short"), words.say("kept-enough"))
        face = Face(choice, label, detail, key, kept, primary=first, listed=_of_list(choice))
        (primary if first else secondary).append(face)
    if not primary:
        primary, secondary = _promoted(secondary)
    secondary.sort(key=lambda face: _ORDER.index(type(face.choice)))
    return (*primary, *secondary)


def number_face(act: c.Read, step: Step, words: Words) -> tuple[str, str]:
    """Return the bare digits of a reading, as the language writes them, and its unit in words."""
    unit = step.task.unit if isinstance(step.task, Measure) else ""
    bare = words.number(Number(str(act.value)))
    return bare, words.number(Number(str(act.value), unit)).replace(bare, "").strip()


def more_face(words: Words) -> Face:
    """Return the target that shows what there was no room for."""
    return Face(More(), words.say("more"), key="m")


def back_face(words: Words) -> Face:
    """Return the target that leaves things as they are."""
    return Face(Less(), words.say("say-never-mind"), key="escape")


def _listed(choice: object) -> bool:
    """True for an item of a list: it gets a digit for its key."""
    if isinstance(choice, c.HandOver | c.Witness):
        return not isinstance(choice, c.HandOver) or bool(choice.worker)
    if isinstance(choice, Give):
        # A digit key types a number, where one is wanted.
        return isinstance(choice.answer, str)
    return isinstance(choice, c.Inspected | c.NameReason | c.Speak | Take)


def _of_list(choice: object) -> bool:
    return isinstance(choice, c.NameReason | c.Speak | c.Read | c.Inspected | Take | Give) or (
        isinstance(choice, c.Witness) or (isinstance(choice, c.HandOver) and bool(choice.worker))
    )


def _promoted(secondary: list[Face]) -> tuple[list[Face], list[Face]]:
    """Where nothing leads on, the ways out are what the worker needs."""
    out = [one for one in secondary if isinstance(one.choice, c.TakeOutOfService | c.End)]
    first = [Face(one.choice, one.label, one.detail, one.key, primary=True) for one in out]
    return first, [one for one in secondary if one not in out]
