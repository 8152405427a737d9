"""The ear in use: a microphone listened to in the language of the walk."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterable
from pathlib import Path

from kiosk.listening.ear import Ear, Heard
from kiosk.listening.listener import Listener
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.sources import Source


class MicrophoneHearing:
    """Listens to a source. Ears are loaded in the background, one language at a time."""

    def __init__(
        self,
        source: Source,
        on_heard: Callable[[Heard], None],
        on_changed: Callable[[], None],
        home: Path | None = None,
    ) -> None:
        """Begin to listen, without an ear until `speak` names a language."""
        self.notice = ""
        self._home = home
        self._on_changed = on_changed
        self._language = ""
        self._lock = threading.Lock()
        self._listener = Listener(source, None, on_heard, self._trouble)

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases and no others."""
        self._listener.allow(phrases)

    def deafen(self) -> None:
        """Hear nothing: the kiosk speaks."""
        self._listener.deafen()

    def undeafen(self) -> None:
        """Hear again."""
        self._listener.undeafen()

    def speak(self, language: str) -> None:
        """Listen in a language; its ear is loaded in the background."""
        with self._lock:
            if language == self._language:
                return
            self._language = language
        self._listener.swap_ear(None)
        threading.Thread(target=self._load, args=(language,), name="load-ear", daemon=True).start()

    def stop(self) -> None:
        """Give the microphone back."""
        self._listener.stop()

    def _load(self, language: str) -> None:
        found: Ear | Missing = open_ear(language, self._home)
        with self._lock:
            if language != self._language:
                return
            self.notice = found.mend if isinstance(found, Missing) else ""
        if not isinstance(found, Missing):
            self._listener.swap_ear(found)
        self._on_changed()

    def _trouble(self, reason: str) -> None:
        self.notice = reason
        self._on_changed()
