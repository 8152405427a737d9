"""What stands in for an ear that is not there, or not there yet."""

from __future__ import annotations

from collections.abc import Iterable


class NoHearing:
    """Hears nothing, and says why."""

    def __init__(self, notice: str) -> None:
        self.notice = notice

    def allow(self, phrases: Iterable[str]) -> None:
        """There is nothing to hear with."""

    def deafen(self) -> None:
        """It is deaf already."""

    def undeafen(self, *, at_once: bool = False) -> None:
        """It stays deaf."""

    def speak(self, language: str, worker: str = "") -> None:
        """It understands no language."""
