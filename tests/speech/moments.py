"""Every list of phrases that the ear may be given in a walk of a shipped procedure."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import replace
from functools import cache

from kiosk.engine import commands as c
from kiosk.engine.offers import offers
from kiosk.engine.prompt import prompt
from kiosk.engine.state import Mode, Stage, State
from kiosk.languages.words import words
from kiosk.listening.grammar import Grammar, grammar
from kiosk.options import (
    AskAgain,
    CallWitness,
    ChooseLanguage,
    Help,
    LeaveRemark,
    NeverMind,
    Reckon,
    Take,
)
from kiosk.procedure.plan import Count, Hold, Measure, Plan, Repeat, Task, Wait
from kiosk.screens.remark_screen import Press
from tests.unit.test_shipped_procedures import plans

OWN: Mapping[str, object] = {
    "say-help": Help(),
    "say-hand-over": c.HandOver("", "en"),
    "say-language": ChooseLanguage(),
    "say-never-mind": NeverMind(),
    "say-reckon": Reckon(),
    "say-ask-again": AskAgain(),
    "say-back-to-the-step": NeverMind(),
    "say-other-reckonings": Take("others"),
    "say-witness": CallWitness(),
    "say-remark": LeaveRemark(),
    "say-remark-keep": Press.KEEP,
    "say-remark-again": Press.AGAIN,
}
"""Messages with the words for the walk's own questions, which the engine does not know, and what
they stand for."""
NOW = c.Instant(0.0, 0.0, "this boot")


@cache
def moments(language: str) -> tuple[tuple[str, Grammar], ...]:
    """Return what is said and what may be answered, once for each kind of moment."""
    said = words(language)
    found: dict[tuple[str, ...], tuple[str, Grammar]] = {}
    for plan in plans():
        for state in _states(plan):
            allowed = grammar(plan, state.step, offers(plan, state, NOW), said)
            found.setdefault(tuple(allowed), (said.spoken(prompt(plan, state)), allowed))
    return tuple(found.values())


@cache
def prompts(language: str) -> tuple[str, ...]:
    """Return everything that the kiosk says in a walk."""
    said = words(language)
    states = ((plan, state) for plan in plans() for state in _states(plan))
    return tuple(dict.fromkeys(said.spoken(prompt(plan, state)) for plan, state in states))


def phrases(language: str) -> dict[str, Grammar]:
    """Return each phrase that may be said in a walk, with the longest list that it stands in."""
    found: dict[str, Grammar] = {}
    for _, allowed in moments(language):
        for phrase in allowed:
            if len(allowed) > len(found.get(phrase, {})):
                found[phrase] = allowed
    return found


def own_phrases(language: str) -> dict[str, object]:
    """Return each phrase of the walk's own questions, with what it stands for."""
    said = words(language)
    return {phrase: means for name, means in OWN.items() for phrase in said.ways(name)}


def _states(plan: Plan) -> Iterator[State]:
    for step in plan.steps:
        state = State(mode=Mode.RUNNING, step=step.id, goal=step.id, since=NOW)
        for stage in _stages(step.task):
            yield replace(state, stage=stage, pending="1")
    held = State(mode=Mode.HELD, step=plan.steps[0].id, goal=plan.steps[0].id, since=NOW)
    for because in ("problem", "pause"):
        yield replace(held, because=because)
        yield replace(held, because=because, ending=True)


def _stages(task: Task) -> tuple[Stage, ...]:
    match task:
        case Hold(verify=verify):
            return (Stage.ASK, Stage.READ_BACK, *([] if verify is None else [Stage.VERIFY]))
        case Measure() | Count():
            return (Stage.ASK, Stage.READ_BACK)
        case Repeat():
            return (Stage.ASK, Stage.IS_CLEAR)
        case Wait():
            return (Stage.ASK, Stage.TIME_UP)
        case _:
            return (Stage.ASK,)
