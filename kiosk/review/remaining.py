"""How much of a walk is left, learned from the site's own walks of the same procedure."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from statistics import median, quantiles
from typing import Final

from kiosk.engine import events as e

MOST_WALKS: Final = 20
"""Of so many walks, the last ones, is learned."""
LEAST_WALKS: Final = 3
"""With fewer walks to learn from nothing is said."""


@dataclass(frozen=True, slots=True)
class Left:
    """What was left of earlier walks from one step on, in seconds at work."""

    median_s: float
    least_s: float
    most_s: float
    """The middle half of the walks lay between these two (quartiles, both ends counted)."""
    walks: int


def remaining(walks: Iterable[Sequence[e.Event]]) -> Mapping[str, Left]:
    """Return, for each step of complete walks, what was left when it was last entered.

    Each walk is a session's events in order. Time in which it was held does not count; the clock is
    the wall's, for the other one starts anew with the computer. A walk that did not come to its end
    teaches nothing. A step that fewer than LEAST_WALKS walks came through is left out.
    """
    seen: dict[str, list[float]] = {}
    for walk in walks:
        for step, seconds in _of_one(walk).items():
            seen.setdefault(step, []).append(seconds)
    return {step: _left(found) for step, found in seen.items() if len(found) >= LEAST_WALKS}


def _left(found: Sequence[float]) -> Left:
    least, _, most = quantiles(found, n=4, method="inclusive")
    return Left(median(found), least, most, len(found))


def _of_one(walk: Sequence[e.Event]) -> Mapping[str, float]:
    """Return the seconds at work from the last entry of each step to the end; none without one."""
    worked, since = 0.0, None
    entered: dict[str, float] = {}
    for event in walk:
        if since is not None:
            worked += max(0.0, event.at.utc - since)
        since = event.at.utc if since is not None else None
        match event.fact:
            case e.SessionStarted() | e.SessionResumed():
                since = event.at.utc
            case e.SessionHeld():
                since = None
            case e.StepEntered(step=step, goal=goal) if step == goal:
                entered[step] = worked
            case e.SessionCompleted():
                return {step: worked - at for step, at in entered.items()}
            case _:
                pass
    return {}
