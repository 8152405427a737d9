"""The independent judge's account of a session, and what it calls a broken rule."""

from __future__ import annotations

from dataclasses import dataclass
from typing import NamedTuple

from kiosk.engine.commands import Instant

IDLE, RUNNING, HELD, OVER = "idle", "running", "held", "over"
NONE: frozenset[str] = frozenset()


@dataclass(frozen=True, slots=True)
class Violation:
    """A broken rule."""

    seq: int
    """1-based place of the event in the session."""
    rule: str
    sentence: str

    def __str__(self) -> str:
        return f"event {self.seq}, {self.rule}: {self.sentence}"


class Account(NamedTuple):
    """All that the judge remembers between two acts. A tuple, for the search compares millions."""

    phase: str = IDLE
    worker: str = ""
    step: str = ""
    goal: str = ""
    standing: bool = False
    """True while the present step is entered and not left."""
    confirmed: int = 0
    """How many steps are confirmed from the first on, without a gap since the last step back."""
    in_force: frozenset[str] = NONE
    owed: frozenset[str] = NONE
    """Conditions that must be journaled as lapsed before the session may run on."""
    boot: str = ""
    """The boot in which the session runs; empty while it does not."""
    since: Instant | None = None
    """When the present step was entered from another one, in this boot."""
    passes: int = 0
    looked: bool = False
    """True while the last pass waits to be judged."""
    told: tuple[str, ...] = ()
    """What the present hold was told since its entry: `phrase`, `verify`, `witness`."""
    told_at: Instant | None = None
    reading: str = ""
    """A number that was heard and waits for its yes."""
    because: str = ""
    reason: str = ""
    stopped: bool = False
    """True once a problem was named that stops the machine for this session."""
    ending: bool = False
