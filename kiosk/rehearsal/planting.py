"""Causes that are planted in an invented history, each to show in one sample."""

from __future__ import annotations

import random
from dataclasses import dataclass
from decimal import Decimal

from kiosk.procedure.plan import Inspect, Measure, Plan
from kiosk.procedure.site import Site
from kiosk.rehearsal.habits import Mishaps
from kiosk.review.clues import Clue

FIRST_SAMPLE, EVERY = 6, 7
"""Day of the first sample, from 0, and days between samples."""

WORN_BEFORE = 12
"""Days from a part found worn to the sample that shows it."""

CAUSES = (
    Clue.SHORT_CONTACT, Clue.WEAK_SANITIZER, Clue.WARM_MIX, Clue.WORN_PART, Clue.MISSED_CLOSE,
    Clue.NEW_WORKER,
)  # fmt: skip
"""What can be planted."""


@dataclass(frozen=True, slots=True)
class Plant:
    """A cause that is to show in the sample of a day."""

    cause: Clue
    machine: str
    day: int
    """A sample day, from 0."""
    before: int = 0
    """Days from the mishap to the sample; a part is worn WORN_BEFORE days longer."""


@dataclass(frozen=True, slots=True)
class Planted:
    """What really happened for a plant."""

    of: Plant
    sessions: tuple[str, ...]
    """The sessions to blame; none for a night that was missed."""


def sample_days(days: int) -> list[int]:
    """Return the days, from 0, on which every machine is sampled."""
    return list(range(FIRST_SAMPLE, days, EVERY))


def plants_for(site: Site, days: int, chance: random.Random) -> list[Plant]:
    """Return a plant of each cause, each for a sample of its own, as far as the days reach.

    The worn part comes first, so that it is replaced before the next cause shows.
    """
    later = [day for day in sample_days(days) if day > WORN_BEFORE + 1]
    causes = chance.sample(CAUSES, k=min(len(CAUSES), len(later)))
    causes.sort(key=lambda one: one is not Clue.WORN_PART)
    machines = [one.id for one in site.machines]
    return [
        Plant(cause, chance.choice(machines), day, chance.choice((0, 1)))
        for cause, day in zip(causes, later, strict=False)
    ]


def mishaps_of(cause: Clue, plan: Plan, chance: random.Random) -> Mishaps:
    """Return what goes wrong in the assembly that a planted cause makes bad."""
    match cause:
        case Clue.SHORT_CONTACT:
            return Mishaps(short_fill=True)
        case Clue.WEAK_SANITIZER:
            return Mishaps(strip=Decimal(chance.choice((25, 50))), mended=False)
        case Clue.WARM_MIX:
            return Mishaps(mix=warm(plan, chance.choice((3, 4, 5))), mended=False)
        case _:
            return Mishaps()


def wearing(plan: Plan) -> list[str]:
    """Return the parts that a plan has looked at for wear."""
    return [one.task.part for one in plan.steps if isinstance(one.task, Inspect)]


def warm(plan: Plan, over_c: int) -> Decimal | None:
    """Return a reading of the mix so many degrees Celsius over its limit; None without one."""
    for step in plan.steps:
        task = step.task
        if not isinstance(task, Measure) or task.judged_by is None or task.judged_by.most is None:
            continue
        if task.judged_by.limit == "mix temperature":
            degree = Decimal("1.8") if task.unit == "°F" else Decimal(1)
            return (task.judged_by.most + over_c * degree).to_integral_value()
    return None
