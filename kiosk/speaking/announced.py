"""A voice that lets somebody know what it is saying."""

from __future__ import annotations

import threading
from collections.abc import Callable

from kiosk.speaking.passing import PassingVoice
from kiosk.speaking.voice import Voice


class AnnouncedVoice(PassingVoice):
    """Tells each text before it is said, and '' when it has ended and none follows it.

    What is in a wave file that is played is not announced, for nobody asked it.
    """

    def __init__(self, voice: Voice, tell: Callable[[str], None]) -> None:
        """`tell` is called from any thread, one call at a time; it must only keep the text."""
        super().__init__(voice)
        self._tell = tell
        self._lock = threading.Lock()
        self._said = 0

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

        super().say(text, language, ended)
