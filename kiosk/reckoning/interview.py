"""An interview: a calculator on its way from the first question to its finding."""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal

from kiosk.engine.prompt import Message, Number
from kiosk.reckoning.calculator import (
    Answer,
    Answers,
    Bench,
    Calculator,
    Finding,
    NumberWanted,
    OneOf,
    Question,
)


class NotAnAnswer(ValueError):
    """An answer does not fit its question; `message` says what would."""

    def __init__(self, message: Message) -> None:
        super().__init__(message.name)
        self.message = message


@dataclass(frozen=True, slots=True)
class Interview:
    """A calculator and the answers so far. Every call returns a new one."""

    calculator: Calculator
    bench: Bench
    answers: Answers
    pending: Decimal | None = None
    """A number that was heard and waits for a yes."""

    @property
    def question(self) -> Question | None:
        """The open question; None when there are enough answers."""
        return self.calculator.ask(self.bench, self.answers)

    def line(self) -> Message:
        """Return the sentence of the open question, or the reading back of what was heard."""
        question = self.question
        if question is None:
            raise NotAnAnswer(Message("reckoned"))
        if self.pending is not None and isinstance(question.wants, NumberWanted):
            number = Number(str(self.pending), question.wants.unit)
            return Message("heard-number", {"number": number})
        # `count-2` asks what `count` asks, of the second thing.
        name, _, place = question.id.rpartition("-")
        if place.isdecimal():
            return Message(f"ask-{self.calculator.id}-{name}", {"place": Number(place)})
        return Message(f"ask-{self.calculator.id}-{question.id}")

    def answer(self, value: Answer) -> Interview:
        """Take an answer to the open question. Raises NotAnAnswer."""
        question = self.question
        if question is None:
            raise NotAnAnswer(Message("reckoned"))
        check(question, value)
        return replace(self, answers={**self.answers, question.id: value}, pending=None)

    def hear(self, value: Decimal) -> Interview:
        """Take a spoken number: it counts after a yes. Raises NotAnAnswer."""
        question = self.question
        if question is None:
            raise NotAnAnswer(Message("reckoned"))
        check(question, value)
        return replace(self, pending=value)

    def agree(self, *, yes: bool) -> Interview:
        """Take a yes or a no to the reading back."""
        if self.pending is None:
            return self
        return self.answer(self.pending) if yes else replace(self, pending=None)

    def back(self) -> Interview:
        """Take back the last answer, or what was heard."""
        if self.pending is not None:
            return replace(self, pending=None)
        return replace(self, answers=dict(list(self.answers.items())[:-1]))

    def finding(self) -> Finding:
        """Return what came out; only when no question is open."""
        return self.calculator.work(self.bench, self.answers)


def check(question: Question, value: Answer) -> None:
    """Hold an answer against what its question wants. Raises NotAnAnswer."""
    match question.wants:
        case OneOf(names):
            if value not in names:
                raise NotAnAnswer(Message("not-one-of", {"given": str(value)}))
        case NumberWanted(besides=besides) if value in besides:
            return
        case NumberWanted(unit, least, most, whole=whole):
            if not isinstance(value, Decimal) or not value.is_finite():
                raise NotAnAnswer(Message("not-a-number", {"given": str(value)}))
            if not least <= value <= most:
                ends = {"least": Number(str(least), unit), "most": Number(str(most), unit)}
                raise NotAnAnswer(Message("not-believable", {**ends}))
            if whole and value != value.to_integral_value():
                raise NotAnAnswer(Message("not-whole", {"given": str(value)}))
