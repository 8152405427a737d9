"""What a walk needs of an ear, and what a remark needs of a microphone."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from typing import Protocol, runtime_checkable

import numpy as np
from numpy.typing import NDArray

Take = Callable[[NDArray[np.float32]], None]
"""Takes a frame of 512 mono samples at 16 kHz; called in the ear's thread."""


class Hearing(Protocol):
    """An ear in use: told what may be heard, and when to be deaf. Safe to call from any thread."""

    @property
    def notice(self) -> str:
        """Empty while it hears, else the plain reason why not."""

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases and no others; a mapping tells which of them mean the same."""

    def deafen(self) -> None:
        """Hear nothing: the kiosk speaks."""

    def undeafen(self, *, at_once: bool = False) -> None:
        """Hear again; `at_once` when nothing was said that may still hang in the room."""

    def speak(self, language: str, worker: str = "") -> None:
        """Listen in another language, or to another worker; sets `notice` when it has no ear."""


@runtime_checkable
class Metered(Protocol):
    """An ear that tells how loud the sound is that comes in."""

    @property
    def level(self) -> float | None:
        """Decibels below full scale, -120 to 0; None when no sound at all comes in."""


@runtime_checkable
class Records(Protocol):
    """An ear whose microphone can be recorded from."""

    @property
    def microphone(self) -> bool:
        """True while a microphone gives sound, whether or not there is an ear for the language."""

    def record(self, take: Take | None) -> None:
        """Give every frame to `take`, and hear nothing in it; None hears again."""
