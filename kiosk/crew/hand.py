"""The finger of the crew: real touches on the targets of the real screens."""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable
from decimal import Decimal
from typing import Any, Final

from textual import events
from textual.pilot import Pilot

from kiosk.clock import LeapingClock
from kiosk.crew.app import CrewApp
from kiosk.engine import commands as c
from kiosk.screens.faces import KeypadKey, More, TypeNumber
from kiosk.screens.kept_press import KEPT_S
from kiosk.screens.reading import ENTER
from kiosk.screens.target import Target
from kiosk.screens.target_screen import BOUNCE_S

TURN_S: Final = 0.01
PATIENCE: Final = 1500
"""So many turns a screen, or something on it, is waited for; more means that it never comes."""
_BEHIND: Final = 30
"""After so many turns it is looked for behind 'more'."""
_DRAWN: Final = 3
"""Rounds of messages after which a change has gone from the walk through the screen to its rows."""
_LOOK_S: Final = 0.3
"""For seeing what will be pressed."""


class LostThread(Exception):
    """The screen shows something that the evening does not expect; the message says what."""


class Hand:
    """Presses targets."""

    def __init__(
        self, app: CrewApp, clock: LeapingClock, pause: Callable[[float], Awaitable[None]],
        tell: Callable[[str, str], None],
    ) -> None:  # fmt: skip
        """`pause` lets the visitor look for some seconds; `tell` shows a message about a phrase."""
        self.pressed = 0
        self._app = app
        self._pilot = Pilot(app)
        self._clock = clock
        self._pause = pause
        self._tell = tell

    async def settle(self) -> None:
        """Let the application work until it has drawn what has changed."""
        for _ in range(_DRAWN):
            await self._pilot.pause(0.0)

    async def press(self, what: Any, *, kept: bool = False, short: bool = False) -> None:
        """Press a target with a finger: what stands for an act, or has a text on it.

        A number is typed where it is not offered. Raises LostThread.
        """
        if isinstance(what, c.Read):
            await self._found(TypeNumber())
            if self._app.target(what) is None:
                await self._type(what.value)
                return
        target = await self._found(what)
        if not isinstance(what, str):
            self._tell("crew-presses", target.face.label)
        await self._pause(_LOOK_S)
        needs_keeping = target.face.kept is not None and kept and not short
        await self._finger(target, KEPT_S + 0.1 if needs_keeping else 0.0)
        self.pressed += 1

    async def _found(self, what: Any) -> Target:
        """Wait until something stands on the screen, and look behind 'more' where it does not."""
        for turn in range(1, PATIENCE):
            target = self._app.target(what)
            if target is not None and target.region:
                return target
            more = self._app.target(More())
            if more is not None and turn % _BEHIND == 0:
                await self._finger(more, 0.0)
            await asyncio.sleep(TURN_S)
        seen = ", ".join(self._app.labels())
        raise LostThread(f"nothing on the screen stands for {what!r}; there is: {seen}")

    async def _type(self, value: Decimal) -> None:
        await self.press(TypeNumber())
        for digit in str(value):
            await self.press(KeypadKey(digit))
        await self.press(KeypadKey(ENTER))

    async def _finger(self, target: Target, kept_s: float) -> None:
        """Put a finger on a target, and take it away."""
        self._clock.leap(BOUNCE_S)
        x = target.region.x + target.region.width // 2
        y = target.region.y + 1
        for kind in (events.MouseDown, events.MouseUp):
            self._app.post_message(kind(None, x, y, 0, 0, 1, False, False, False, x, y))
            await self.settle()
            if kind is events.MouseDown and kept_s:
                await self._pause(kept_s)
                self._clock.leap(kept_s)
