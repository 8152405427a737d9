"""Many values gathered into equal times, so that a figure of ten years can still be read."""

from __future__ import annotations

import math
from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from statistics import median
from typing import Final, Generic, TypeVar

MOST: Final = 400
"""Up to so many values are drawn each by itself."""

_GATHERED: Final = 110
"""About how many times are drawn where there are more."""

_WEEK: Final = 7

Item = TypeVar("Item")


@dataclass(frozen=True, slots=True)
class Gathered(Generic[Item]):
    """What fell into one stretch of days, at least one thing."""

    middle: float
    """The middle of the stretch, as a day number."""
    items: tuple[Item, ...]

    def reach(self, value: Callable[[Item], float]) -> tuple[float, float, float]:
        """Return the lowest, the middle and the highest value."""
        values = [value(one) for one in self.items]
        return min(values), median(values), max(values)


def days_each(first: float, last: float) -> int:
    """Return how many days are gathered into one, whole weeks when it is more than a few."""
    days = max(1, math.ceil((last - first + 1) / _GATHERED))
    return days if days < _WEEK else math.ceil(days / _WEEK) * _WEEK


def gathered(
    items: Iterable[Item], place: Callable[[Item], float], first: float, days: int
) -> Sequence[Gathered[Item]]:
    """Return the stretches of so many days from a first one on that hold anything, in order."""
    found: dict[int, list[Item]] = {}
    for one in items:
        found.setdefault(int((place(one) - first) // days), []).append(one)
    return [Gathered(first + (n + 0.5) * days, tuple(found[n])) for n in sorted(found)]
