"""The one guard: whether a step may be entered, and the way in when it may not."""

from __future__ import annotations

from collections.abc import Set

from kiosk.procedure.plan import Plan, Step


def missing(step: Step, in_force: Set[str]) -> tuple[str, ...]:
    """Return what a step requires and is not in force."""
    return tuple(name for name in step.requires if name not in in_force)


def way_in(plan: Plan, goal: str, in_force: Set[str]) -> Step | None:
    """Return the step to stand in on the way to `goal`.

    It is `goal` itself when that may be entered, else the nearest step before it that establishes
    the first missing condition, found by the same rule. None when no step leads there.
    """
    step, seen = plan.step(goal), set[str]()
    while lost := missing(step, in_force):
        if step.id in seen:
            return None
        seen.add(step.id)
        found = _establisher(plan, lost[0], plan.index[goal])
        if found is None:
            return None
        step = found
    return step


def _establisher(plan: Plan, condition: str, before: int) -> Step | None:
    earlier = reversed(plan.steps[:before])
    return next((step for step in earlier if condition in step.establishes), None)


def lapsed_by_absence(plan: Plan, in_force: Set[str]) -> tuple[str, ...]:
    """Return the conditions in force that cannot be relied on once the work is interrupted."""
    return tuple(sorted(plan.lapsing & in_force))


def lapsed_by_going_back(plan: Plan, to: str, goal: str, in_force: Set[str]) -> tuple[str, ...]:
    """Return the conditions in force that the steps from `to` through `goal` had established."""
    undone = plan.steps[plan.index[to] : plan.index[goal] + 1]
    names = {name for step in undone for name in step.establishes} - plan.hazards
    return tuple(sorted(names & in_force))


def left_unsafe(plan: Plan, in_force: Set[str]) -> tuple[str, ...]:
    """Return the conditions that the next person at the machine must be warned of."""
    return tuple(
        name
        for name, condition in plan.conditions.items()
        if (condition.present is not None and name in in_force)
        or (condition.without is not None and name not in in_force)
    )
