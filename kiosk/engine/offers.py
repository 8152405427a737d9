"""What can be done now, found by asking `decide`: the screen's buttons and the ear's words."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.engine.decide import decide
from kiosk.engine.state import Mode, State
from kiosk.procedure.plan import Count, Measure, Plan

_SPARE_COUNTS = 2
"""How far past the listed number a spoken count is understood."""


def offers(plan: Plan, state: State, at: c.Instant) -> tuple[c.Act, ...]:
    """Return the acts that are not refused now, in the order in which they are shown.

    A hand-over is offered as one act with an empty worker, to be filled in; readings are offered
    one by one where the step has a closed list.
    """
    by = c.Evidence(c.Channel.VOICE)
    return tuple(
        act
        for act in _candidates(plan, state)
        if not isinstance(decide(plan, state, c.Command(act, at, by)), c.Refusal)
    )


def _candidates(plan: Plan, state: State) -> Iterator[c.Act]:
    if state.mode in (Mode.IDLE, Mode.COMPLETE, Mode.ABORTED):
        return
    yield from (c.Confirm(), c.GivePhrase(), c.Yes(), c.No())
    yield from (c.Inspected(finding) for finding in c.Finding)
    if state.step:
        yield from _readings(plan, state)
    if not state.reason:
        yield from (c.NameReason(reason) for reason in plan.problems)
    yield from (c.Resume(), c.SayAgain(), c.Back(), c.CallProblem(), c.Pause())
    yield from (c.HandOver("", state.language), c.TakeOutOfService(), c.End())


def _readings(plan: Plan, state: State) -> Iterator[c.Act]:
    match plan.step(state.step).task:
        case Measure(choices=choices):
            yield from (c.Read(value) for value in choices)
        case Count(expected=expected):
            yield from (c.Read(Decimal(n)) for n in range(expected + _SPARE_COUNTS + 1))
        case _:
            return


def asks_for_number(plan: Plan, state: State, at: c.Instant) -> bool:
    """True when a number may be entered now, from a closed list or not."""
    if state.mode is not Mode.RUNNING:
        return False
    task = plan.step(state.step).task
    if not isinstance(task, Measure | Count):
        return False
    probe = task.least if isinstance(task, Measure) else Decimal(0)
    command = c.Command(c.Read(probe), at, c.Evidence(c.Channel.TOUCH))
    return not isinstance(decide(plan, state, command), c.Refusal)
