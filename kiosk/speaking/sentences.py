"""Which sentences a walk can say, one by one, in the order of the walk."""

from __future__ import annotations

import re
from collections.abc import Iterator
from dataclasses import replace
from typing import Final

from kiosk.engine.prompt import Prompt, prompt
from kiosk.engine.state import Mode, Stage, State
from kiosk.languages.words import Words
from kiosk.procedure.plan import Count, Hold, Measure, Plan, Repeat, Step

OWN_SENTENCES: Final = (
    "first-again", "is-that-so", "try-again", "time-up", "witness-needed", "what-is-wrong",
    "then-continue", "stop-here", "held-pause", "held-restart", "held-no-way-in", "end-asked",
    "complete", "aborted", "out-of-service", "who-takes-over", "who-witnesses", "which-language",
    "which-reckoning", "press-instead", "not-recorded", "see-the-screen", "help-number",
    "help-hold", "help-hurt",
    "refused-not-now", "refused-hold-first", "refused-number-first", "refused-whole-number",
    "refused-look-first", "refused-reason-first", "refused-no-such-reason", "refused-must-stop",
    "refused-no-way-in", "refused-confirm-this-first", "refused-first-step", "refused-same-person",
)  # fmt: skip
"""Messages of the kiosk's own with nothing to fill in, that can be said on every walk."""

_END: Final = re.compile(r"(?<=[.!?…])\s+|(?<=[。！？])\s*")


def sentences(text: str) -> list[str]:
    """Part a text into its sentences, each with its own full stop.

    A decimal point ends none, for no space follows it. A word that is alone before a full stop, as
    a signal word, is a sentence.
    """
    return [one for one in (part.strip() for part in _END.split(text)) if one]


def said_on(plan: Plan, said: Words) -> tuple[str, ...]:
    """Return every sentence of a plan's walk that can be known beforehand, each once.

    Not among them are those with a reading in them, and those that a colon leads on to what is
    found only on the way.
    """
    walked, with_another_reading = (
        [part for one in _prompts(plan, reading) for part in sentences(said.spoken(one))]
        for reading in ("1", "2")
    )
    same = set(with_another_reading)
    own = (part for name in OWN_SENTENCES for part in sentences(said.say(name)))
    found = dict.fromkeys([*(part for part in walked if part in same), *own])
    return tuple(one for one in found if not one.endswith((":", "：")))


def _prompts(plan: Plan, reading: str) -> Iterator[Prompt]:
    """Yield the prompts of each step, then those of problems and of an end before the end."""
    for step in plan.steps:
        at = State(
            mode=Mode.RUNNING, step=step.id, goal=step.id, pending=reading, passes=int(reading)
        )
        yield prompt(plan, at)
        for stage in _stages(step):
            yield prompt(plan, replace(at, stage=stage))
    for name in plan.problems:
        yield prompt(plan, State(mode=Mode.HELD, because="problem", reason=name))
    left = (one.present or one.without for one in plan.conditions.values())
    yield Prompt(tuple(text for text in left if text is not None))


def _stages(step: Step) -> tuple[Stage, ...]:
    match step.task:
        case Hold(verify=None):
            return (Stage.READ_BACK,)
        case Hold():
            return (Stage.READ_BACK, Stage.VERIFY)
        case Repeat():
            return (Stage.IS_CLEAR, Stage.OFF)
        case Measure() | Count():
            return (Stage.READ_BACK, Stage.OFF)
        case _:
            return ()
