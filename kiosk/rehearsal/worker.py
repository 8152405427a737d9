"""The simulated worker: what a careful person would answer to the open question."""

from __future__ import annotations

from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.engine.state import Mode, Stage
from kiosk.procedure.plan import Count, Do, Hold, Inspect, Measure, Repeat, Wait
from kiosk.session import Session

_HARMLESS = "something-else"


class Stuck(Exception):
    """The worker knows no answer; the message says to what."""


def answer(session: Session) -> c.Act | None:
    """Return what a careful worker does now; None while there is nothing to do but wait.

    Raises Stuck when there is no good answer, and when a reading has no value that is in its limit.
    """
    state = session.state
    if state.mode is Mode.HELD:
        if state.ending:
            return c.No()
        if state.because == "problem" and not state.reason:
            return c.NameReason(_HARMLESS)
        return c.Resume()
    task = session.plan.step(state.step).task
    match task:
        case Do():
            return c.Confirm()
        case Hold() if state.stage is Stage.ASK:
            return c.GivePhrase()
        case Hold() if state.stage is Stage.WITNESS:
            raise Stuck(f"{state.step} wants a second person")
        case Hold():
            return c.Yes()
        case Wait():
            return None if session.seconds_left() else c.Confirm()
        case Repeat() if state.stage is Stage.IS_CLEAR:
            return c.Yes() if state.passes >= task.least + 1 or task.least == task.most else c.No()
        case Repeat():
            return c.Confirm()
        case Inspect():
            return c.Inspected(c.Finding.GOOD)
        case Measure() | Count():
            return _number(state.stage, state.pending, right_value(task))
    raise Stuck(f"{state.step} asks for something unknown")


def _number(stage: Stage, pending: str, value: Decimal) -> c.Act:
    match stage:
        case Stage.READ_BACK:
            return c.Yes() if Decimal(pending) == value else c.No()
        case Stage.OFF:
            return c.Confirm()
        case _:
            return c.Read(value)


def passes(task: Measure | Count, value: Decimal) -> bool:
    """Return whether a value lies within the task's limit; any does where it has none."""
    if isinstance(task, Count):
        return value == task.expected
    return task.judged_by is None or task.judged_by.passes(value)


def right_value(task: Measure | Count) -> Decimal:
    """Return the reading of a good day: the middle one of the values that pass."""
    if isinstance(task, Count):
        return Decimal(task.expected)
    values = task.choices or (task.least, (task.least + task.most) / 2, task.most)
    good = [one for one in values if passes(task, one)]
    if not good:
        raise Stuck(f"no value of {task.quantity} that can be said lies within its limit")
    return good[len(good) // 2]
