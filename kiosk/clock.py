"""The clocks of the machine."""

from __future__ import annotations

import time
import uuid
from pathlib import Path
from typing import Protocol

from kiosk.engine.commands import Instant

_BOOT_ID = Path("/proc/sys/kernel/random/boot_id")


class Clock(Protocol):
    """Anything that can tell the time."""

    def now(self) -> Instant:
        """Return the present moment."""


class SystemClock:
    """The wall clock beside the monotonic clock of this boot, in whole microseconds.

    The journal keeps microseconds, so a moment read back equals the moment written.
    """

    def __init__(self) -> None:
        try:
            self._boot = _BOOT_ID.read_text(encoding="ascii").strip()
        except OSError:
            # Elsewhere the monotonic clock is trusted within this process only.
            self._boot = uuid.uuid4().hex

    def now(self) -> Instant:
        return Instant(round(time.time(), 6), round(time.monotonic(), 6), self._boot)


class LeapingClock:
    """A clock that can be moved forward: a rehearsal leaps over its waits with it."""

    def __init__(self, clock: Clock) -> None:
        self._clock = clock
        self._ahead = 0.0

    def leap(self, seconds: float) -> None:
        """Move forward by some seconds."""
        self._ahead += seconds

    def now(self) -> Instant:
        now = self._clock.now()
        utc, mono = now.utc + self._ahead, now.mono + self._ahead
        return Instant(round(utc, 6), round(mono, 6), now.boot)
