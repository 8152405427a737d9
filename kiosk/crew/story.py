"""An evening's crew, its time, and what has happened in it so far."""

from __future__ import annotations

import asyncio
import time
from dataclasses import dataclass, field
from typing import Protocol

from kiosk.crew.plot import Plot
from kiosk.journal.chain import Verdict
from kiosk.procedure.site import Person


class Pace(Protocol):
    """The time in which the evening is seen."""

    def now(self) -> float:
        """Return seconds that only grow."""
        ...

    async def pause(self, seconds: float) -> None:
        """Let the visitor look for so long."""
        ...


class RealPace:
    """A visitor in front of the terminal."""

    def now(self) -> float:
        """Return seconds that only grow."""
        return time.monotonic()

    async def pause(self, seconds: float) -> None:
        """Let the visitor look for so long."""
        await asyncio.sleep(seconds)


@dataclass(frozen=True, slots=True)
class Crew:
    """Who walks what, and in which language it is told."""

    first: Person
    second: Person
    machine: str
    """The machine's name on the board."""
    procedure: str
    """The procedure's id."""
    told_in: str


@dataclass(slots=True)
class Played:
    """What has happened so far; it outlives a power cut."""

    plot: Plot = field(default_factory=Plot)
    who: str = ""
    cut: bool = False
    """True after a power cut, until the walk has been taken up again."""
    done: bool = False
    began: float = 0.0
    told: frozenset[str] = frozenset()
    """What the kiosk has said once: a second time nobody needs to hear it."""
    said: int = 0
    said_again: int = 0
    pressed: int = 0
    journal: Verdict | None = None
    """What the chain of its rows was found to be, once it is over."""

    def sentence(self) -> str:
        """Return what was counted, in a line."""
        text = f"{self.said} answers said, {self.said_again} of them again; {self.pressed} pressed"
        if self.journal is None:
            return text
        sound = "the chain is whole" if self.journal.whole else "the chain is BROKEN"
        return f"{text}; {self.journal.rows} rows in the journal, {sound}"
