"""How long parts last, from few replacements: a Weibull law whose two numbers stay uncertain.

Every life that was seen counts, the ones that are not over yet too: they lasted at least so long.
What is foretold averages over all laws that the lives leave possible, so that few lives give a wide
spread. Lives are in days.
"""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from typing import Final

import numpy as np
from numpy.typing import NDArray

LEAST: Final = 3
"""Fewest lives that ended before anything is foretold; our choice."""

LOW, HIGH = 0.1, 0.9
"""Chances that the foretold moment lies before the low and the high end: 8 of 10 lie between."""

HORIZON_DAYS: Final = 3652.0
"""How far anything is foretold: ten years."""

_MOST_FORETOLD: Final = 100
"""Replacements that are drawn ahead; a shelf with more lasts longer than is foretold."""

_SHAPES: Final = np.geomspace(0.25, 30.0, 120)
_SCALES: Final = np.geomspace(1.0, 30 * 365.0, 480)
"""The laws that are looked at, each shape with each scale in days; evenly in their logarithms, as
likely as each other before any life is known. Our choice."""

_DRAWS: Final = 4000
_SEED: Final = 20_261_125
"""The same draws each time, so that the same record gives the same forecast."""

Floats = NDArray[np.float64]


@dataclass(frozen=True, slots=True)
class Lives:
    """What is known of the lives of one part, in days, each above 0."""

    ended: tuple[float, ...]
    """Lives known from their beginning to their end."""
    at_least: tuple[float, ...]
    """Lives that lasted at least so long: still running, or begun before the record."""


@dataclass(frozen=True, slots=True)
class Spread:
    """Days from now until something comes about; None for later than is foretold."""

    low: float | None
    """One of ten lies before it."""
    middle: float | None
    high: float | None
    """One of ten lies after it."""


def log_likelihood(lives: Lives, shapes: Floats, scales: Floats) -> Floats:
    """Return the logarithm of the likelihood of each shape (rows) with each scale (columns).

    A life that ended counts with the density, one that lasted at least so long with the survival.
    """
    ended = np.log(lives.ended)
    every = np.log([*lives.ended, *lives.at_least])
    powers = np.exp(np.multiply.outer(shapes, every)).sum(axis=1)[:, None]
    by_scale = np.multiply.outer(shapes, np.log(scales))
    alone = len(ended) * np.log(shapes) + (shapes - 1) * ended.sum()
    return np.asarray(alone[:, None] - len(ended) * by_scale - powers * np.exp(-by_scale))


def until(lives: Lives, ages: Sequence[float], replacements: int) -> Spread | None:
    """Foretell when so many replacements will have come about on machines that run side by side.

    `ages` has the present age of the part on each machine, in days; `replacements` is 1 or more.
    Returns None when too few lives ended for any forecast, or no machine has the part.
    """
    if len(lives.ended) < LEAST or not ages:
        return None
    if replacements > _MOST_FORETOLD:
        return Spread(None, None, None)
    chance = np.random.default_rng(_SEED)
    shapes, scales = _laws(lives, chance)
    each = []
    for age in ages:
        first = _rest_of_life(age, shapes, scales, chance)
        later = scales[:, None] * chance.weibull(shapes[:, None], size=(_DRAWS, replacements - 1))
        each.append(np.cumsum(np.column_stack([first, later]), axis=1))
    ends = np.partition(np.hstack(each), replacements - 1, axis=1)[:, replacements - 1]
    return Spread(*(_within(float(np.quantile(ends, share))) for share in (LOW, 0.5, HIGH)))


def _laws(lives: Lives, chance: np.random.Generator) -> tuple[Floats, Floats]:
    """Draw laws, each as often as the lives make it likely."""
    heights = log_likelihood(lives, _SHAPES, _SCALES).ravel()
    weights = np.exp(heights - heights.max())
    drawn = chance.choice(len(weights), size=_DRAWS, p=weights / weights.sum())
    return _SHAPES[drawn // len(_SCALES)], _SCALES[drawn % len(_SCALES)]


def _rest_of_life(
    age: float, shapes: Floats, scales: Floats, chance: np.random.Generator
) -> Floats:
    """Draw how long a part of some age still lasts."""
    spent = (age / scales) ** shapes
    ends = scales * (spent + chance.exponential(size=len(shapes))) ** (1 / shapes)
    return np.asarray(np.maximum(0.0, ends - age))


def _within(days: float) -> float | None:
    return days if days <= HORIZON_DAYS else None
