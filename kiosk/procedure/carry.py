"""What steps require without saying so: whatever an absence may change is carried along.

A condition that lapses (power isolated, hands clean) is required by every step from the one that
establishes it to the one that ends it, unless a step says that it may be done `regardless`. So a
line forgotten in a file asks the worker once too often after a break, and never too seldom.

A step that establishes such a condition is asked again after a break, at any later place, when the
machine may have changed meanwhile; it requires what it says, and what the condition `needs`.
"""

from __future__ import annotations

from collections.abc import Iterable, Mapping
from dataclasses import replace

from kiosk.procedure.model import Condition
from kiosk.procedure.plan import Step, lapsing

Waived = tuple[str, ...]
"""Conditions regardless of which a step may be done."""


def carry(
    steps: Iterable[tuple[Step, Waived]], conditions: Mapping[str, Condition]
) -> tuple[Step, ...]:
    """Return the steps in their order, each with what it requires without saying so."""
    listed = tuple(steps)
    lapses = lapsing((step for step, _ in listed), conditions)
    in_force: dict[str, None] = {}
    carrying = []
    for step, waived in listed:
        gives = [name for name in step.establishes if name in lapses]
        wanted = (
            [need for name in gives for need in conditions[name].needs]
            if gives
            else [name for name in in_force if name not in step.ends and name not in waived]
        )
        more = tuple(
            name
            for name in dict.fromkeys(wanted)
            if name not in step.requires and name not in step.establishes
        )
        carrying.append(replace(step, requires=(*step.requires, *more), carried=more))
        in_force = {name: None for name in in_force if name not in step.ends}
        in_force |= dict.fromkeys(gives)
    return tuple(carrying)
