"""A voice that passes on to another voice all that it does not do in its own way."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path

from kiosk.speaking.voice import Plays, Voice, suit


class PassingVoice:
    """Speaks through another voice."""

    def __init__(self, voice: Voice) -> None:
        self._voice = voice

    @property
    def notice(self) -> str:
        """Empty while the voice can be heard, else the plain reason why not."""
        return self._voice.notice

    @notice.setter
    def notice(self, reason: str) -> None:
        self._voice.notice = reason

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        """Say a text; it ends once."""
        self._voice.say(text, language, on_end)

    def play(self, sound: Path, on_end: Callable[[], None]) -> None:
        """Play a wave file; it ends at once where nothing can be played."""
        if isinstance(self._voice, Plays):
            self._voice.play(sound, on_end)
        else:
            on_end()

    def suit(self, person: str) -> None:
        """Speak as this person wants it."""
        suit(self._voice, person)

    def prepare(self, texts: Iterable[str], language: str) -> None:
        """Render texts ahead."""
        self._voice.prepare(texts, language)

    def hush(self) -> None:
        """Fall silent; the end is told as any other."""
        self._voice.hush()

    def close(self) -> None:
        """Fall silent for good."""
        self._voice.close()
