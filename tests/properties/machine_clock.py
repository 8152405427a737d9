"""What the state machines share: a clock that they move, and where their journals lie."""

from __future__ import annotations

from pathlib import Path

from kiosk.engine import commands as c

_SHM = Path("/dev/shm")
MEMORY = _SHM if _SHM.is_dir() else None
"""A folder in memory, where there is one: the disk's own pace adds nothing here."""


class FakeClock:
    """A clock that only moves when told, and that a power cut starts anew."""

    def __init__(self) -> None:
        self.seconds, self.utc, self.boot = 100, 1_000_000_000, 0

    def now(self) -> c.Instant:
        return c.Instant(float(self.utc), float(self.seconds), f"boot {self.boot}")

    def pass_by(self, seconds: int) -> None:
        self.seconds += seconds
        self.utc += seconds

    def cut_power(self) -> None:
        self.boot += 1
        self.seconds = 5
        self.utc -= 3600  # The wall clock may come back wrong.
