"""Working something out during a walk: which calculator, its questions, its finding."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from functools import lru_cache
from typing import Final

from kiosk.engine import commands as c
from kiosk.engine.prompt import Message
from kiosk.languages.words import Words
from kiosk.languages.words import words as words_of
from kiosk.listening.numbers import NoNumbers, spoken
from kiosk.options import Agree, AskAgain, Choice, Give, NeverMind, Option, Reckon, Take
from kiosk.procedure.plan import Step
from kiosk.reckoning.calculator import Bench, Finding, NumberWanted, OneOf
from kiosk.reckoning.interview import Interview, NotAnAnswer
from kiosk.reckoning.table import CALCULATORS, in_order

OTHERS: Final = ""
"""Stands for the next page of calculators where `Take` names one."""

PAGE: Final = 5
"""Calculators offered at once: few enough to be read at a glance on a small screen."""

_COUNTED: Final = frozenset({"say-hours", "say-tubes", "say-colonies", "say-results"})
"""Messages whose number a language may say as the number of things."""


@dataclass(frozen=True, slots=True)
class Worked:
    """What was worked out, as the journal keeps it."""

    calculator: str
    answers: str
    finding: str


class Reckoner:
    """The open questions of working something out; nothing is open at first."""

    def __init__(
        self, bench: Callable[[], Bench], step: Callable[[], Step | None] = lambda: None
    ) -> None:
        """Work with what `bench` knows; what the open `step` is about is offered first."""
        self._bench = bench
        self._step = step
        self._choosing = False
        self._page = 0
        self._interview: Interview | None = None
        self._finding: Finding | None = None
        self.notice: Message | None = None
        """Why the last answer was not taken."""

    @property
    def open(self) -> bool:
        """True while something is being worked out."""
        return self._choosing or self._interview is not None

    @property
    def number(self) -> NumberWanted | None:
        """The number that the open question wants; None when it wants none."""
        interview = self._interview
        if interview is None or self._finding or interview.pending is not None:
            return None
        question = interview.question
        wants = None if question is None else question.wants
        return wants if isinstance(wants, NumberWanted) else None

    def close(self) -> None:
        """Leave it."""
        self._choosing, self._interview, self._finding, self.notice = False, None, None, None

    def lines(self, words: Words) -> list[str]:
        """Return the open question, or what came out."""
        if self._finding is not None:
            return [words.line(line) for line in self._finding.lines]
        if self._interview is not None:
            return [words.line(self._interview.line())]
        return [words.say("which-reckoning")]

    @property
    def sources(self) -> tuple[str, ...]:
        """Where what came out comes from, each with its tag; to be shown, not said."""
        return () if self._finding is None else self._finding.sources

    def take(self, choice: Choice, by: c.Evidence, words: Words) -> Worked | None:
        """Do one thing; return what was worked out when that was the last answer."""
        self.notice = None
        try:
            return self._take(choice, by, words)
        except NotAnAnswer as error:
            self.notice = error.message
            return None

    def _take(self, choice: Choice, by: c.Evidence, words: Words) -> Worked | None:
        interview = self._interview
        match choice:
            case Reckon():
                self.close()
                self._choosing, self._page = True, 0
                return None
            case Take(calculator=name) if name == OTHERS:
                self._page += 1
                return None
            case Take(name):
                self.close()
                self._interview = Interview(CALCULATORS[name], self._bench(), {})
            case Give(Decimal() as value) if interview and by.channel is c.Channel.VOICE:
                self._interview = interview.hear(value)
            case Give(value) if interview:
                self._interview = interview.answer(value)
            case Agree(yes) if interview:
                self._interview = interview.agree(yes=yes)
            case AskAgain() if interview:
                self._finding = None
                self._interview = interview.back()
        return self._worked(words)

    def _worked(self, words: Words) -> Worked | None:
        interview = self._interview
        if interview is None or interview.question is not None or self._finding is not None:
            return None
        self._finding = interview.finding()
        given = "; ".join(f"{name} {value}" for name, value in interview.answers.items())
        found = [*self.lines(words), *(f"[{source}]" for source in self.sources)]
        return Worked(interview.calculator.id, given, " ".join(found))

    def options(self, words: Words) -> tuple[Option, ...]:
        """Return what can be done now, the answers first."""
        interview = self._interview
        never_mind = Option(NeverMind(), words.say("say-never-mind"))
        if interview is None:
            return (*self._calculators(words), never_mind)
        back = (Option(AskAgain(), words.say("say-ask-again")),) if interview.answers else ()
        if self._finding is not None:
            return (Option(NeverMind(), words.say("say-back-to-the-step")), *back)
        if interview.pending is not None:
            return (_agree(words, yes=True), _agree(words, yes=False), never_mind)
        return (*self._answers(words), *back, never_mind)

    def _calculators(self, words: Words) -> Iterator[Option]:
        """Yield one page of the calculators, and the way to the next page."""
        names = in_order(self._step())
        pages = -(-len(names) // PAGE)
        first = self._page % pages * PAGE
        for name in names[first : first + PAGE]:
            yield Option(Take(name), words.say(f"call-{name}"), words.say(f"reckon-{name}"))
        if pages > 1:
            yield Option(Take(OTHERS), words.say("say-other-reckonings"))

    def _answers(self, words: Words) -> Iterator[Option]:
        question = None if self._interview is None else self._interview.question
        match None if question is None else question.wants:
            case OneOf(names):
                for name in names:
                    yield Option(Give(name), words.say(f"pick-{name}"))
            case NumberWanted() as wants:
                yield from _numbers(wants, words)
                for name in wants.besides:
                    yield Option(Give(name), words.say(f"pick-{name}"))


def _agree(words: Words, *, yes: bool) -> Option:
    """Return a yes or a no to what was read back, in every way of saying it."""
    shown, *others = words.phrases(c.Yes() if yes else c.No())
    return Option(Agree(yes), shown, also=tuple(others))


def _numbers(wants: NumberWanted, words: Words) -> Iterator[Option]:
    """Yield an option for each value of a closed list, none where its words are not known."""
    try:
        if wants.said:
            for value in wants.choices:
                yield Option(Give(value), _in_words(value, wants.said, words.language))
            return
        said = spoken(wants.choices, words.language, wants.unit)
    except NoNumbers:
        return
    seen: set[Decimal] = set()
    for phrase, value in said.items():
        if value not in seen:
            seen.add(value)
            yield Option(Give(value), phrase)


@lru_cache(maxsize=2048)
def _in_words(value: Decimal, message: str, language: str) -> str:
    """Return a number in words with what it counts. Raises NoNumbers."""
    word = next(iter(spoken([value], language)))
    if language == "ko" and message in _COUNTED and value == value.to_integral_value():
        word = next(iter(spoken([value], language, "#"))).removesuffix(" 개")
    return words_of(language).say(message, n=float(value), number=word)
