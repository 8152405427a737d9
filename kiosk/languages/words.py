"""The kiosk's own sentences and command words in one language."""

from __future__ import annotations

from collections.abc import Mapping
from decimal import Decimal
from functools import lru_cache
from importlib import resources
from importlib.resources.abc import Traversable
from pathlib import Path
from typing import Any

from fluent.runtime import FluentBundle, FluentResource
from fluent.runtime.types import fluent_number
from fluent.syntax.ast import Junk

from kiosk.engine import commands as c
from kiosk.engine.prompt import Line, Message, Number, Prompt
from kiosk.languages.notice import Notice
from kiosk.procedure.model import Text
from kiosk.trade.units import Quantity

SOURCE = "en"
"""The language that is written by hand, and stands in for what another one lacks."""

_REGIONS = {"es": "es-419", "pt": "pt-BR", "zh": "zh-CN"}
"""Whose way of writing numbers a language takes: half is 0.5 in Latin America and 0,5 in Spain."""

_UNIT_MESSAGES = {
    "L": "unit-litres",
    "mL": "unit-millilitres",
    "gal": "unit-gallons",
    "qt": "unit-quarts",
    "fl oz": "unit-fluid-ounces",
    "g": "unit-grams",
    "s": "unit-seconds",
    "min": "unit-minutes",
    "h": "unit-hours",
    "°C": "unit-celsius",
    "°F": "unit-fahrenheit",
    "mg/L": "unit-milligrams-per-litre",
    "pH": "unit-ph",
    "": "unit-none",
}

_ACT_MESSAGES: dict[type, str] = {
    c.Confirm: "say-next",
    c.Yes: "say-yes",
    c.No: "say-no",
    c.SayAgain: "say-repeat",
    c.Back: "say-back",
    c.CallProblem: "say-problem",
    c.Pause: "say-pause",
    c.Resume: "say-continue",
    c.HandOver: "say-hand-over",
    c.TakeOutOfService: "say-out-of-service",
    c.End: "say-end",
}


class MissingMessage(LookupError):
    """A language lacks a message, or a message lacks what should fill it."""


def languages() -> tuple[str, ...]:
    """Return the languages that have a folder of messages, sorted."""
    folder = resources.files("kiosk.languages")
    return tuple(sorted(p.name for p in folder.iterdir() if p.is_dir() and files_of(p.name)))


def message_text(language: str) -> str:
    """Return all messages of a language, in Fluent's syntax, file after file."""
    return "\n".join(one.read_text("utf-8") for one in files_of(language))


def files_of(language: str) -> list[Traversable]:
    """Return the files of messages of a language, sorted by name."""
    folder = resources.files("kiosk.languages") / language
    found = [one for one in folder.iterdir() if one.name.endswith(".ftl")]
    return sorted(found, key=lambda one: one.name)


@lru_cache
def words(language: str) -> Words:
    """Return the words of a language; English for a language without messages."""
    return Words(language if language in languages() else SOURCE)


def notice(name: str, /, **args: Any) -> Notice:
    """Return a message as a notice: English, until it is told in a language."""
    return Notice(words(SOURCE).say(name, **args), name, args)


def file_failed(file: Path, error: Exception) -> Notice:
    """Return that something went wrong with a file or a folder."""
    return notice("file-failed", file=str(file), reason=str(error))


class Words:
    """One language's messages."""

    def __init__(self, language: str) -> None:
        self.language = language
        resource = FluentResource(message_text(language))
        for entry in resource.body:
            if isinstance(entry, Junk):
                place = str(entry.content)[:60]
                raise MissingMessage(f"the messages of {language} cannot be read at: {place!r}")
        self._bundle = FluentBundle([_REGIONS.get(language, language)], use_isolating=False)
        self._bundle.add_resource(resource)

    def say(self, name: str, /, **args: Any) -> str:
        """Return a message. Raises MissingMessage.

        A text of a procedure, a Number or a Notice is filled in in this language.
        """
        try:
            pattern = self._bundle.get_message(name).value
        except LookupError as error:
            raise MissingMessage(f"{self.language} has no message '{name}'") from error
        if pattern is None:
            raise MissingMessage(f"{self.language}: the message '{name}' is empty")
        filled = {key.replace("-", "_"): self._fill(value) for key, value in args.items()}
        text, errors = self._bundle.format_pattern(pattern, filled)
        if errors:
            raise MissingMessage(f"{self.language}, message '{name}': {errors[0]}")
        return str(text)

    def quantity(self, amount: Quantity) -> str:
        """Return a quantity with its unit written out: `8 litres`."""
        value = amount.value.normalize()
        digits = max(0, -int(value.as_tuple().exponent))
        # No mark between the thousands of a reading: 1.250 litres is read as little more than one.
        number = fluent_number(
            float(value), minimumFractionDigits=digits, useGrouping=not amount.unit
        )
        return self.say(_UNIT_MESSAGES[amount.unit], n=number)

    def number(self, number: Number) -> str:
        """Return a reading with its unit written out."""
        return self.quantity(Quantity(Decimal(number.value), number.unit))

    def measured(self, quantity: str) -> str:
        """Return the name of what is measured; as journaled where there are no words for it."""
        return self.say("plot-quantity", quantity=quantity.replace(" ", "-"), other=quantity)

    def text(self, text: Text) -> str:
        """Return a procedure's sentence, in English where this language is missing."""
        found = text.get(self.language) or text.get(SOURCE)
        return next(iter(text.values())) if found is None else found

    def line(self, line: Line) -> str:
        """Return one line of a prompt."""
        if not isinstance(line, Message):
            return self.text(line)
        return self.say(line.name, **line.args)

    def told(self, text: str) -> str:
        """Return a notice in this language, and any other text as it is."""
        return self.say(text.name, **text.args) if isinstance(text, Notice) else text

    def _fill(self, arg: Any) -> Any:
        match arg:
            case Notice():
                return self.told(arg)
            case Number():
                return self.number(arg)
            case Mapping():
                return self.text(arg)
            case _:
                return arg

    def lines(self, prompt: Prompt) -> list[str]:
        """Return the lines of a prompt, without its caution."""
        return [self.line(line) for line in prompt.lines]

    def spoken(self, prompt: Prompt) -> str:
        """Return what is said: the caution first, then the lines."""
        caution = prompt.caution
        first: list[str] = []
        if caution is not None:
            signal = self.say(f"signal-{caution.signal}")
            first = [f"{signal}.", self.text(caution.hazard), self.text(caution.avoid)]
        return " ".join([*first, *self.lines(prompt)])

    def phrases(self, act: c.Act) -> tuple[str, ...]:
        """Return the ways to say an act that has words of its own; the first one is shown."""
        if isinstance(act, c.Inspected):
            name = f"say-{act.finding.replace(' ', '-')}"
        elif type(act) in _ACT_MESSAGES:
            name = _ACT_MESSAGES[type(act)]
        else:
            return ()
        return self.ways(name)

    def ways(self, name: str) -> tuple[str, ...]:
        """Return the ways to say something, from a message with `/` between them."""
        return tuple(part.strip() for part in self.say(name).split("/"))

    def refusal(self, refusal: c.Refusal) -> str:
        """Return why something was not done."""
        args: dict[str, Any] = dict(refusal.args)
        if "seconds" in args:
            args["time"] = self.time_left(float(args.pop("seconds")))
        return self.say(f"refused-{refusal.why}", **args)

    def time_left(self, seconds: float) -> str:
        """Return a time in minutes, or in seconds below two minutes; part units count as whole."""
        if seconds > 120:
            return self.quantity(Quantity(Decimal(int(-(-seconds // 60))), "min"))
        return self.quantity(Quantity(Decimal(int(-(-seconds // 1))), "s"))
