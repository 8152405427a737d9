"""A press that counts only when it is kept, or deliberately given twice. Pure: told the time.

A press kept for KEPT_S and then let go counts. Keys, and screens that report only whole clicks,
cannot keep a press: there a first press arms, and a second one counts, not sooner than BOUNCE_S
after the first (a wet glove bounces) and not later than ARMED_S.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import Enum, auto
from typing import Final

KEPT_S: Final = 1.2
BOUNCE_S: Final = 0.5
ARMED_S: Final = 5.0


class Press(Enum):
    """What became of a press."""

    NOT_YET = auto()
    """It was short: the target is armed, and says so."""
    GIVEN = auto()


@dataclass(slots=True)
class KeptPress:
    """One target's press. Times are monotonic seconds."""

    down_at: float | None = None
    armed_at: float | None = None

    def down(self, now: float) -> None:
        """The finger is on the target."""
        self.down_at = now

    def share(self, now: float) -> float:
        """Return how much of the needed time the finger has been down, 0 to 1."""
        return 0.0 if self.down_at is None else min(1.0, (now - self.down_at) / KEPT_S)

    def up(self, now: float) -> Press:
        """The finger left the target while still on it."""
        kept = self.share(now) >= 1.0
        self.down_at = None
        if kept:
            self.armed_at = None
            return Press.GIVEN
        return self.tap(now)

    def tap(self, now: float) -> Press:
        """A press without a length: a key, or a click."""
        if self.armed(now) and self.armed_at is not None and now - self.armed_at >= BOUNCE_S:
            self.armed_at = None
            return Press.GIVEN
        self.armed_at = now
        return Press.NOT_YET

    def armed(self, now: float) -> bool:
        """True while a second press would count."""
        return self.armed_at is not None and now - self.armed_at <= ARMED_S

    def let_go(self) -> None:
        """The finger slid off: nothing was meant."""
        self.down_at = None
