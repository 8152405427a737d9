"""What the voice says in a language, for the bench of how well it is understood."""

from __future__ import annotations

import re
from collections.abc import Iterator
from functools import cache
from importlib import resources

from fluent.syntax import FluentParser
from fluent.syntax.ast import Message, TextElement

from kiosk.checking.proving import fit_all
from kiosk.languages.words import Words, words
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.plan import Measure, Plan
from kiosk.shipped import shipped
from kiosk.speaking.sentences import said_on, sentences
from kiosk.trade.units import Quantity

SAID = ("walk.ftl", "remarks.ftl")
"""The files with messages that are said on a walk."""
SHOWN_ONLY = re.compile(r"(sheet|typed|voice-test|spot|teach|review|found|ear|text|cannot-take)-")
"""Messages among them that stand on screens and paper and are not said."""

REWORDED: dict[str, dict[str, str]] = {
    "en": {
        "Touch neither rim nor inside.": "Do not touch the rim or the inside.",
        "Serve nothing.": "Do not serve it.",
        "Draw nothing.": "Do not draw any product.",
        "Nobody may put mix into it.": "Do not put mix into it.",
        "Mix that stays warm is thrown away.": "Throw away mix that stays warm.",
        "Does a steady stream of mix run from every valve?": "Does the mix run steadily from every "
        "valve?",
        "Does a steady stream of mix run, without spurts of air?": "Does the mix run steadily, "
        "without spurts of air?",
        "What does the strip read?": "Read the strip.",
    }
}
"""Sentences that were worded anew because they were understood badly: the earlier wording, and the
wording now."""


@cache
def library() -> Library:
    """Return the shipped procedures."""
    return load_library(shipped("procedures"))


@cache
def plans() -> tuple[Plan, ...]:
    """Return the plans of every procedure with every choice of options."""
    return tuple(
        plan for one in library().procedures.values() for plan in fit_all(library(), one).plans
    )


def said(language: str) -> dict[str, str]:
    """Return each sentence that is said in a language, with the kind of sentence that it is."""
    speaks = words(language)
    found = {text: "step" for plan in plans() for text in said_on(plan, speaks)}
    for text in numbers(speaks):
        found.setdefault(text, "number")
    for text in questions(language):
        found.setdefault(text, "reckoning")
    return found


def numbers(speaks: Words) -> Iterator[str]:
    """Yield how a reading is read back: the least, the middle and the most of those that count."""
    for plan in plans():
        for step in plan.steps:
            if isinstance(step.task, Measure) and step.task.choices:
                choices = step.task.choices
                for value in {choices[0], choices[len(choices) // 2], choices[-1]}:
                    number = speaks.quantity(Quantity(value, step.task.unit))
                    yield sentences(speaks.say("heard-number", number=number))[0]


def questions(language: str) -> Iterator[str]:
    """Yield the kiosk's other sentences that have nothing to fill in."""
    folder = resources.files("kiosk.languages") / language
    whole = "\n".join((folder / name).read_text("utf-8") for name in SAID)
    for entry in FluentParser().parse(whole).body:
        if not isinstance(entry, Message) or entry.value is None:
            continue
        parts = entry.value.elements
        filled_in = any(not isinstance(one, TextElement) for one in parts)
        if filled_in or SHOWN_ONLY.match(entry.id.name):
            continue
        text = words(language).say(entry.id.name)
        if text.endswith((".", "?", "。", "？")):
            yield from sentences(text)
