"""What a calculator is: it asks one question after another, and then works out its finding."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from dataclasses import dataclass
from datetime import date
from decimal import Decimal

from kiosk.engine.prompt import Message
from kiosk.procedure.model import LimitsProfile
from kiosk.procedure.site import Site
from kiosk.trade.authorities import Authorities


@dataclass(frozen=True, slots=True)
class NumberWanted:
    """An answer that is a number."""

    unit: str
    """A unit symbol of `kiosk.trade.units`, or '' for a bare number."""
    least: Decimal
    most: Decimal
    """The believable range; outside it the kiosk asks again."""
    choices: tuple[Decimal, ...] = ()
    """The closed list of values that can be said; the keypad takes any within the range."""
    whole: bool = False
    """True when it has no decimals."""
    said: str = ""
    """The message that puts a choice in words to say, as `say-hours`: it gets the number as `n` and
    its word as `number`. '' where the unit has words of its own."""
    besides: tuple[str, ...] = ()
    """Names of answers that may stand in place of a number; each has a message `pick-NAME`."""


@dataclass(frozen=True, slots=True)
class OneOf:
    """An answer out of a few; each has a message `pick-NAME` with the words to say."""

    names: tuple[str, ...]


@dataclass(frozen=True, slots=True)
class Question:
    """One question of a calculator."""

    id: str
    """Short, in kebab case; the message `ask-CALCULATOR-ID` holds its sentence."""
    wants: NumberWanted | OneOf
    assumed: Answer | None = None
    """What the command line takes when it is not given; a walk always asks."""


Answer = Decimal | str
"""A number, or the name of a choice."""

Answers = Mapping[str, Answer]
"""Question id to answer, in the order in which they were given. A question that is asked once for
each of several things has an id of its own for each: `count-1`, `count-2`."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Bench:
    """What a calculator may know besides the answers."""

    site: Site
    profile: LimitsProfile
    authorities: Authorities
    today: date


@dataclass(frozen=True, slots=True)
class Finding:
    """What came out."""

    lines: tuple[Message, ...]
    """Whole sentences, the answer first."""
    good: bool | None = None
    """Whether a limit is kept; None where none is judged."""
    sources: tuple[str, ...] = ()
    """Where limits and formulas come from, each with its tag."""


@dataclass(frozen=True, slots=True)
class Calculator:
    """One calculator. Its messages: `reckon-ID` names it, `ask-ID-QUESTION` asks."""

    id: str
    ask: Callable[[Bench, Answers], Question | None]
    """The next question after these answers; None when there are enough."""
    work: Callable[[Bench, Answers], Finding]
    """The finding from a whole set of answers. What cannot be worked out is a finding, too."""


def in_turn(*questions: Question) -> Callable[[Bench, Answers], Question | None]:
    """Return what asks fixed questions one after another."""

    def ask(_: Bench, answers: Answers) -> Question | None:
        return next((one for one in questions if one.id not in answers), None)

    return ask


def number(answers: Answers, name: str) -> Decimal:
    """Return a number that was answered. Raises KeyError when it was not."""
    return Decimal(answers[name])


def evenly(least: str, most: str, step: str) -> tuple[Decimal, ...]:
    """Return the values of a closed list, both ends included."""
    first, last, width = Decimal(least), Decimal(most), Decimal(step)
    return tuple(first + width * n for n in range(int((last - first) / width) + 1))
