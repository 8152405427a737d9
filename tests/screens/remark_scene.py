"""A microphone that gives what a test says, and a worker with an open problem."""

from __future__ import annotations

import numpy as np
from numpy.typing import NDArray

from kiosk.engine import commands as c
from kiosk.listening.endpoint import FRAME, FRAME_S
from kiosk.listening.in_use import Take
from tests.screens.scene import FakeHearing, Kiosk

PROBLEM = c.CallProblem()
HUM = 0.01 * np.sin(np.arange(FRAME, dtype=np.float32) * np.float32(0.35)).astype(np.float32)
"""A frame of a machine's hum, in which nobody speaks: below -40 dB to full scale."""


class Microphone(FakeHearing):
    """An ear whose microphone gives frames when the test says so."""

    def __init__(self) -> None:
        super().__init__()
        self.microphone = True
        self.take: Take | None = None
        self.deaf = False

    def deafen(self) -> None:
        self.deaf = True

    def undeafen(self, *, at_once: bool = False) -> None:
        self.deaf = False

    def record(self, take: Take | None) -> None:
        self.take = take

    def hum(self, seconds: float) -> None:
        self.give([HUM] * round(seconds / FRAME_S))

    def give(self, frames: list[NDArray[np.float32]]) -> None:
        assert self.take is not None, "nobody records"
        for frame in frames:
            self.take(frame)


async def problem(it: Kiosk, ear: FakeHearing | None = None) -> Microphone:
    """Begin a walk with such a microphone, and call a problem."""
    found = ear or Microphone()
    it.app.hearing = found
    await it.begin()
    await it.touch(PROBLEM)
    return found  # type: ignore[return-value]


async def fall_silent(it: Kiosk) -> None:
    """The voice comes to the end of what it says."""
    it.app.voice.ends[-1]()
    await it.settle()
