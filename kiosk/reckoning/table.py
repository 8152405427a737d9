"""The calculators, in the order in which they are offered."""

from __future__ import annotations

from collections.abc import Mapping
from types import MappingProxyType

from kiosk.procedure.plan import Measure, Step
from kiosk.reckoning import dates, heat, laboratory, mix, results, sanitizing
from kiosk.reckoning.calculator import Calculator

CALCULATORS: Mapping[str, Calculator] = MappingProxyType(
    {
        one.id: one
        for module in (sanitizing, mix, dates, heat, laboratory, results)
        for one in module.CALCULATORS
    }
)
"""Calculator id to calculator."""

_BY_LIMIT: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {
        "sanitizer strength": ("dose", "strength"),
        "sanitizer temperature": ("strength", "free-chlorine"),
        "mix temperature": ("cold", "use-by"),
    }
)
_BY_CONDITION: Mapping[str, tuple[str, ...]] = MappingProxyType(
    {"mix unproven": ("pour-next", "use-by")}
)


def near(step: Step | None) -> tuple[str, ...]:
    """Return the ids of the calculators that a step is about, the likeliest first; often none.

    Told by the limit that judges the step's reading, or by the condition that the step establishes.
    """
    if step is None:
        return ()
    found = [name for one in step.establishes for name in _BY_CONDITION.get(one, ())]
    if isinstance(step.task, Measure) and step.task.judged_by is not None:
        found = [*_BY_LIMIT.get(step.task.judged_by.limit, ()), *found]
    return tuple(dict.fromkeys(found))


def in_order(step: Step | None) -> tuple[str, ...]:
    """Return every calculator's id, those that the step is about first."""
    return tuple(dict.fromkeys((*near(step), *CALCULATORS)))
