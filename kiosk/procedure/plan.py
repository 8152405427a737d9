"""A procedure fitted to one machine at one site: the list of steps that the engine walks."""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from functools import cached_property

from kiosk.procedure.model import Caution, Condition, Problem, Standing, Strength, Text


@dataclass(frozen=True, slots=True)
class Do:
    """Do it and say so."""


@dataclass(frozen=True, slots=True)
class Hold:
    """Answer the challenge with its phrase, have it read back, then try whether it is true."""

    phrase: Text
    strength: Strength
    verify: Text | None


@dataclass(frozen=True, slots=True)
class JudgedBy:
    """The critical limit of a reading, in the unit of the reading."""

    limit: str
    least: Decimal | None
    most: Decimal | None
    source: str
    """Clause, edition and tag, for the record."""

    def passes(self, value: Decimal) -> bool:
        """True when `value` lies within both ends, the ends included."""
        return (self.least is None or value >= self.least) and (
            self.most is None or value <= self.most
        )


@dataclass(frozen=True, slots=True)
class Measure:
    """Take a reading."""

    quantity: str
    unit: str
    least: Decimal
    most: Decimal
    choices: tuple[Decimal, ...]
    judged_by: JudgedBy | None


@dataclass(frozen=True, slots=True)
class Wait:
    """Let a time pass, in seconds."""

    seconds: float


@dataclass(frozen=True, slots=True)
class Repeat:
    """Do passes until the question is answered with yes, at least `least`, at most `most`."""

    least: int
    most: int
    until: Text


@dataclass(frozen=True, slots=True)
class Count:
    """Count a part."""

    part: str
    name: Text
    expected: int


@dataclass(frozen=True, slots=True)
class Inspect:
    """Look at a wearing part."""

    part: str
    name: Text


Task = Do | Hold | Measure | Wait | Repeat | Count | Inspect


@dataclass(frozen=True, slots=True, kw_only=True)
class Step:
    """One step, its sentences filled in and its numbers resolved."""

    id: str
    phase: str
    say: Text
    task: Task
    requires: tuple[str, ...] = ()
    """All that must be in force, the carried ones too."""
    carried: tuple[str, ...] = ()
    """Those of `requires` that the file does not name at this step."""
    establishes: tuple[str, ...] = ()
    ends: tuple[str, ...] = ()
    caution: Caution | None = None
    corrective: Text | None = None
    line: int = 0
    shows: str = field(default="", repr=False)
    """Name of the picture that goes with the sentence; no part of what is walked, and so not in
    `repr`, which the digest is made of."""

    @property
    def declared(self) -> tuple[str, ...]:
        """What the file says that this step requires."""
        return tuple(name for name in self.requires if name not in self.carried)


def lapsing(steps: Iterable[Step], conditions: Mapping[str, Condition]) -> frozenset[str]:
    """Return what an absence ends: all that holds establish, and all marked `lapses`."""
    held = {name for step in steps if isinstance(step.task, Hold) for name in step.establishes}
    marked = {name for name, one in conditions.items() if one.lapses}
    dangers = {name for name, one in conditions.items() if one.present is not None}
    return frozenset(held | marked) - dangers


@dataclass(frozen=True, kw_only=True)
class Plan:
    """What one session walks."""

    procedure: str
    version: int
    digest: str
    """SHA-256 of the procedure as fitted; a replay can tell whether it has the same text."""
    title: Text
    machine: str
    machine_name: str
    during: Standing
    leaves: Standing
    follow: Text
    phases: Mapping[str, Text]
    steps: tuple[Step, ...]
    conditions: Mapping[str, Condition]
    problems: Mapping[str, Problem]
    file: str = ""
    drafted: tuple[str, ...] = field(default=())
    practice: bool = False

    @cached_property
    def index(self) -> Mapping[str, int]:
        """Step id to its place."""
        return {step.id: place for place, step in enumerate(self.steps)}

    def step(self, step_id: str) -> Step:
        """Return a step by id; KeyError when there is none."""
        return self.steps[self.index[step_id]]

    @cached_property
    def hazards(self) -> frozenset[str]:
        """Conditions that are dangers while in force; only a step can end them."""
        return frozenset(name for name, one in self.conditions.items() if one.present is not None)

    @cached_property
    def lapsing(self) -> frozenset[str]:
        """Conditions that an absence ends."""
        return lapsing(self.steps, self.conditions)
