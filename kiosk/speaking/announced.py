"""A voice that lets somebody know what it is saying."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterable
from pathlib import Path

from kiosk.speaking.voice import Plays, Voice, suit


class AnnouncedVoice:
    """Tells each text before it is said, and '' when it has ended and none follows it."""

    def __init__(self, voice: Voice, tell: Callable[[str], None]) -> None:
        """`tell` is called from any thread, one call at a time; it must only keep the text."""
        self._voice = voice
        self._tell = tell
        self._lock = threading.Lock()
        self._said = 0

    @property
    def notice(self) -> str:
        """Empty while the voice can be heard, else the plain reason why not."""
        return self._voice.notice

    @notice.setter
    def notice(self, reason: str) -> None:
        self._voice.notice = reason

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        """Tell, and say."""
        with self._lock:
            self._said += 1
            number = self._said
            self._tell(text)

        def ended() -> None:
            with self._lock:
                if number == self._said:
                    self._tell("")
            on_end()

        self._voice.say(text, language, ended)

    def suit(self, person: str) -> None:
        """Speak as this person wants it."""
        suit(self._voice, person)

    def play(self, sound: Path, on_end: Callable[[], None]) -> None:
        """Play a wave file; what is in it is not announced, for nobody asked it."""
        if isinstance(self._voice, Plays):
            self._voice.play(sound, on_end)
        else:
            on_end()

    def prepare(self, texts: Iterable[str], language: str) -> None:
        """Render texts ahead."""
        self._voice.prepare(texts, language)

    def hush(self) -> None:
        """Fall silent; the end is told as any other."""
        self._voice.hush()

    def close(self) -> None:
        """Fall silent for good."""
        self._voice.close()
