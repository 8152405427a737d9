"""What follows from events, for the world outside. Derived, never journaled; a replay skips it."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass

from kiosk.engine import events as e
from kiosk.engine.commands import Instant
from kiosk.engine.prompt import Prompt, prompt
from kiosk.engine.state import Mode, Stage, State
from kiosk.procedure.plan import Plan, Wait


@dataclass(frozen=True, slots=True)
class Say:
    """Say a prompt in a language, cutting off what is being said."""

    prompt: Prompt
    language: str


@dataclass(frozen=True, slots=True)
class Wake:
    """Send TimeUp after so many seconds."""

    seconds: float


Effect = Say | Wake


def effects(
    plan: Plan, before: State, events: Sequence[e.Event], after: State
) -> tuple[Effect, ...]:
    """Return what the events of one command ask of voice and clock."""
    found: list[Effect] = []
    asked = prompt(plan, after)
    spoken_again = (e.StepEntered, e.PromptRepeated, e.LanguageChanged, e.HandedOver)
    if asked != prompt(plan, before) or any(isinstance(one.fact, spoken_again) for one in events):
        found.append(Say(asked, after.language))
    left = seconds_left(plan, after, events[-1].at) if events else None
    if left is not None and after.stage is Stage.ASK:
        found.append(Wake(left))
    return tuple(found)


def seconds_left(plan: Plan, state: State, now: Instant) -> float | None:
    """Return the seconds that a running wait still needs, 0 when over; None outside a wait."""
    if state.mode is not Mode.RUNNING or state.since is None:
        return None
    task = plan.step(state.step).task
    return max(0.0, task.seconds - now.since(state.since)) if isinstance(task, Wait) else None
