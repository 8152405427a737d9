"""The phrases that may be heard now, each with the act that it stands for."""

from __future__ import annotations

from collections.abc import Iterable
from contextlib import suppress
from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.languages.words import Words
from kiosk.listening.numbers import NoNumbers, spoken
from kiosk.procedure.plan import Count, Hold, Measure, Plan, Step

Grammar = dict[str, c.Act]
"""Phrase to act. A phrase stands for one act only."""


def grammar(plan: Plan, step_id: str, offered: Iterable[c.Act], words: Words) -> Grammar:
    """Return the grammar of what is offered, in one language.

    Where two acts would share a phrase, the first one offered keeps it.
    """
    step = plan.step(step_id) if step_id else None
    found: Grammar = {}
    numbers: dict[Decimal, c.Act] = {}
    for act in offered:
        if isinstance(act, c.Read):
            numbers[act.value] = act
        for phrase in _phrases(plan, step, act, words):
            found.setdefault(phrase, act)
    with suppress(NoNumbers):
        for phrase, value in spoken(numbers, words.language, _unit(step)).items():
            found.setdefault(phrase, numbers[value])
    return found


def _unit(step: Step | None) -> str:
    match None if step is None else step.task:
        case Measure(unit=unit):
            return unit
        case Count():
            return "#"
        case _:
            return ""


def _phrases(plan: Plan, step: Step | None, act: c.Act, words: Words) -> tuple[str, ...]:
    match act:
        case c.GivePhrase() if step is not None and isinstance(step.task, Hold):
            return (words.text(step.task.phrase).lower(),)
        case c.NameReason(reason):
            return (words.text(plan.problems[reason].name).lower(),)
        case _:
            return words.phrases(act)


def label(plan: Plan, step_id: str, act: c.Act, words: Words) -> str:
    """Return what to say for an act: also what stands on its button."""
    found = _phrases(plan, plan.step(step_id) if step_id else None, act, words)
    return found[0] if found else ""
