"""What in a session may lead to a bad result, how heavily it counts, and by what it is told."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from enum import StrEnum
from typing import Final

_PRACTICE: Final = "common practice, no source"


class Clue(StrEnum):
    """A kind of thing that a session's record can show."""

    SHORT_CONTACT = "short contact"
    WEAK_SANITIZER = "weak sanitizer"
    WARM_MIX = "warm mix"
    WORN_PART = "worn part"
    MISSED_CLOSE = "missed close"
    LATE_CLOSE = "late close"
    ENDED_EARLY = "ended early"
    NEW_WORKER = "new worker"
    DOUBTFUL_HOLD = "doubtful hold"


@dataclass(frozen=True, slots=True, kw_only=True)
class Weighed:
    """How one kind of clue counts."""

    weight: float
    """Most that it adds to a session's score. Only the order of the scores means anything."""
    figures: Mapping[str, float]
    """What it is measured by; each name ends in its unit."""
    source: str


CLUES: Final[Mapping[Clue, Weighed]] = {
    Clue.MISSED_CLOSE: Weighed(
        weight=1.2,
        figures={},
        source=f"taken apart every day: 7 Pa. Code 39.54, READ; the weight: {_PRACTICE}",
    ),
    Clue.SHORT_CONTACT: Weighed(
        weight=1.0,
        # From the strip's reading to the start of the wait everything is poured, sunk or wetted.
        figures={"fill_least_s": 45.0},
        source=f"contact time: Food Code 4-703.11(C), READ (state); figures: {_PRACTICE}",
    ),
    Clue.WEAK_SANITIZER: Weighed(
        weight=1.0,
        # Emptying, mixing and testing again; a passing reading sooner than this was not mixed.
        # `mended` is what still counts when time enough was taken.
        figures={"remix_least_s": 90.0, "mended": 0.15},
        source=f"strength: Food Code 4-501.114(A), READ (state); figures: {_PRACTICE}",
    ),
    Clue.WARM_MIX: Weighed(
        weight=0.9,
        # A full hopper does not cool by a degree faster than this.
        figures={"cooling_s_per_degree_c": 60.0, "full_at_degrees_c": 5.0, "mended": 0.3},
        source=f"5 °C: Food Code 3-501.16(A)(2), READ (state); figures: {_PRACTICE}",
    ),
    Clue.WORN_PART: Weighed(
        weight=0.8,
        figures={"at_once": 0.4, "full_at_days": 14.0},
        source=f"{_PRACTICE}; the machine's manual has the interval",
    ),
    Clue.LATE_CLOSE: Weighed(
        weight=0.6, figures={"from_h": 1.5, "full_at_h": 5.0}, source=_PRACTICE
    ),
    Clue.ENDED_EARLY: Weighed(weight=0.6, figures={}, source=_PRACTICE),
    Clue.NEW_WORKER: Weighed(
        weight=0.4,
        # Who was there from the journal's first days is not called new.
        figures={"first_sessions": 10.0, "after_days": 7.0},
        source=_PRACTICE,
    ),
    Clue.DOUBTFUL_HOLD: Weighed(weight=0.2, figures={"full_at": 3.0}, source=_PRACTICE),
}
"""Every clue, the heaviest first."""

FADE_PER_DAY: Final = 0.85
"""What a day between session and sample leaves of a score: each cleaning since may have mended it.
Common practice, no source."""

WINDOW_DAYS: Final = 14
"""How far back sessions are looked at when no good result comes first; our choice."""

SAMPLED_BEFORE_CLOSING_S: Final = 3600.0
"""A sample is taken while the machine serves: at the latest so long before closing; our choice."""
