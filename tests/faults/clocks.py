"""The wall clock set back or forward while a wait runs, or a clock that begins in 1970."""

from __future__ import annotations

import random
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path

from kiosk.clock import Clock, LeapingClock, SystemClock
from kiosk.engine import commands as c
from kiosk.languages.words import words
from kiosk.procedure.plan import Wait
from tests.faults.judging import TOUCH, Withstood
from tests.faults.shops import begin, press, read_all, shop, walk_on

_DAY = 86_400.0
_BEGINNING_OF_CLOCKS = -1.8e9
"""Seconds from now to about 1970: where a clock begins whose battery is flat."""


@dataclass(slots=True)
class SetClock:
    """A clock whose wall time can be set; what it counts since it was switched on goes on."""

    of: Clock
    off: float = 0.0

    def now(self) -> c.Instant:
        """Return the present moment."""
        now = self.of.now()
        return c.Instant(round(now.utc + self.off, 6), now.mono, now.boot)


def set_in_a_wait(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Set the clock while a wait runs: it lasts as long as it should, neither less nor for ever."""
    found = Withstood()
    leaping = LeapingClock(SystemClock())
    clock = SetClock(leaping)
    of = shop(folder, clock)
    with closing(of.journal):
        for number in range(tries):
            session = begin(of)
            while not isinstance(session.plan.step(session.state.step).task, Wait):
                walk_on(session, leaping, 1)
            left = session.seconds_left() or 0.0
            leaping.leap(left / 2)
            offs = (_BEGINNING_OF_CLOCKS, 400 * _DAY, -left, left, -_DAY, _DAY, -3600.0, 3600.0)
            clock.off = (*offs, chance.uniform(-_DAY, _DAY))[number % (len(offs) + 1)]
            early = session.do(c.Confirm(), TOUCH).refusal
            found.broken += early is None
            if early is not None:
                found.saw(words("en").refusal(early))
            leaping.leap(left / 2 + 0.001)
            press(session, c.Confirm())
            walk_on(session, leaping)
            read_all(of)
            found.judge(folder, {session.id: of.journal.events(session.id)}, [session.plan])
    return found
