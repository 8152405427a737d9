"""What becomes of each condition, step by step, on the straight way from start to end."""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

from kiosk.procedure.plan import Hold, Plan, Step


class Sort(StrEnum):
    """Why a condition matters, the gravest first."""

    HELD = "held"
    """A safety hold confirms it."""
    DANGER = "danger"
    """A danger while it is in force."""
    OTHER = "other"


class Mark(StrEnum):
    """What a step does with a condition."""

    RELIES = "relies"
    NOT_IN_FORCE = "not-in-force"
    """The step relies on it, and it is not in force."""
    ENDS = "ends"
    ESTABLISHES = "establishes"


@dataclass(frozen=True, slots=True)
class Cell:
    """One condition at one step."""

    before: bool
    """True when it is in force as the step is entered."""
    after: bool
    marks: tuple[Mark, ...]


@dataclass(frozen=True, slots=True)
class Lane:
    """One condition along the whole plan; `cells` has one for each step."""

    condition: str
    sort: Sort
    cells: tuple[Cell, ...]


def lanes(plan: Plan) -> tuple[Lane, ...]:
    """Return a lane for each condition that a step names: by sort, then as they first appear."""
    named = dict.fromkeys(
        name for step in plan.steps for name in (*step.requires, *step.ends, *step.establishes)
    )
    held = {
        name
        for step in plan.steps
        if isinstance(step.task, Hold)
        for name in step.establishes
        if name not in plan.hazards
    }
    found = [Lane(name, _sort(name, held, plan), _cells(name, plan.steps)) for name in named]
    gravest_first = list(Sort)
    return tuple(sorted(found, key=lambda lane: gravest_first.index(lane.sort)))


def _sort(name: str, held: set[str], plan: Plan) -> Sort:
    if name in held:
        return Sort.HELD
    return Sort.DANGER if name in plan.hazards else Sort.OTHER


def _cells(name: str, steps: tuple[Step, ...]) -> tuple[Cell, ...]:
    cells: list[Cell] = []
    in_force = False
    for step in steps:
        before = in_force
        marks: list[Mark] = []
        if name in step.requires:
            marks.append(Mark.RELIES if before else Mark.NOT_IN_FORCE)
        if name in step.ends:
            marks.append(Mark.ENDS)
            in_force = False
        if name in step.establishes:
            marks.append(Mark.ESTABLISHES)
            in_force = True
        cells.append(Cell(before, in_force, tuple(marks)))
    return tuple(cells)
