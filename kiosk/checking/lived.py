"""The session of a worker who answers everything right, as far as a plan lets them."""

from __future__ import annotations

from dataclasses import replace
from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.engine.decide import decide
from kiosk.engine.events import ConditionsLapsed
from kiosk.engine.state import Mode, Stage, State, fold
from kiosk.procedure.plan import Count, Hold, Inspect, Measure, Plan, Repeat, Step, Wait
from kiosk.proof.alphabet import LANGUAGE, OTHER, WORKER, Move, inside
from kiosk.proof.search import Counterexample

_BOOT = "this boot"
_TOUCH = c.Evidence(c.Channel.TOUCH)


def led_astray(plan: Plan) -> Counterexample | None:
    """Return the way to the first step that cannot be entered though all before it went well.

    None when such a worker comes to the end. The shortest way there is, for each step is answered
    once and nothing else happens.
    """
    state, path, now = State(), list[Move](), 0.0
    while state.mode in (Mode.IDLE, Mode.RUNNING):
        following = plan.index[state.goal] + 1 if state.goal else 0
        act, words, now = _right(plan, state, now + 1.0)
        command = c.Command(act, c.Instant(now, now, _BOOT), _TOUCH)
        decided = decide(plan, state, command)
        if isinstance(decided, c.Refusal):
            return None
        path.append(Move(words, command))
        stood = [one for one in decided if not isinstance(one.fact, ConditionsLapsed)]
        in_force = fold(stood, state).in_force
        state = fold(decided, state)
        if state.stage is Stage.OFF:
            return None
        if state.mode is Mode.HELD or state.step != state.goal:
            found = replace(state, goal=plan.steps[following].id, in_force=in_force)
            return _astray(plan.steps[following], found, path)
    return None


def _astray(step: Step, state: State, path: list[Move]) -> Counterexample:
    names = ", ".join(f"'{name}'" for name in step.requires if name not in state.in_force)
    sentence = f"'{step.id}' requires {names}, which is not in force when all before it is done"
    return Counterexample("can-enter", sentence, tuple(path), state, 0)


def _right(plan: Plan, state: State, now: float) -> tuple[c.Act, str, float]:
    """Return the right answer in a state, its words, and the time at which it is given."""
    if state.mode is Mode.IDLE:
        return c.Start(WORKER, LANGUAGE), "begins the session", now
    step = plan.step(state.step)
    match state.stage:
        case Stage.READ_BACK | Stage.VERIFY | Stage.IS_CLEAR:
            return c.Yes(), "says yes", now
        case Stage.WITNESS:
            return c.Witness(OTHER), "has a second person vouch", now
        case _:
            seconds = step.task.seconds if isinstance(step.task, Wait) else 0.0
            return *_answer(step), now + seconds


def _answer(step: Step) -> tuple[c.Act, str]:
    match step.task:
        case Hold():
            return c.GivePhrase(), "gives the phrase of the hold"
        case Measure() as task:
            value = inside(task)
            return c.Read(value), f"reads {value}"
        case Count(expected=expected):
            return c.Read(Decimal(expected)), f"counts {expected}"
        case Wait(seconds=seconds):
            return c.Confirm(), f"waits {seconds:.0f} s and says this is done"
        case Repeat():
            return c.Confirm(), "says this pass is done"
        case Inspect():
            return c.Inspected(c.Finding.GOOD), "finds the part good"
        case _:
            return c.Confirm(), "says this is done"
