"""The ear in use: a microphone listened to in the language of the walk."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterable
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import Heard
from kiosk.listening.ear_for import open_ear_for
from kiosk.listening.echo import EchoFilter
from kiosk.listening.listener import Listener
from kiosk.listening.sources import Source


class MicrophoneHearing:
    """Listens to a source. Ears are loaded in the background, one language at a time."""

    def __init__(
        self,
        source: Source,
        on_heard: Callable[[Heard], None],
        on_changed: Callable[[], None],
        home: Path | None = None,
        echo: EchoFilter | None = None,
    ) -> None:
        """Begin to listen, without an ear until `speak` names a language.

        With an `echo` filter, a prompt that `saying` tells of can be cut short.
        """
        self.notice = ""
        self._home = home
        self._on_changed = on_changed
        self._speaker = ("", "")
        self._lock = threading.Lock()
        self._listener = Listener(source, None, on_heard, self._trouble, echo=echo)

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases and no others; a mapping tells which of them mean the same."""
        self._listener.allow(phrases)

    def deafen(self) -> None:
        """Hear nothing: the kiosk speaks."""
        self._listener.deafen()

    def undeafen(self, *, at_once: bool = False) -> None:
        """Hear again; at once when nothing was said that may still hang in the room."""
        if at_once:
            self._listener.undeafen(0.0)
        else:
            self._listener.undeafen()

    @property
    def microphone(self) -> bool:
        """True while the source gives sound, whether or not there is an ear for it."""
        return not self._listener.ended

    @property
    def level(self) -> float | None:
        """How loud it is at the microphone, in dBFS; None when no sound at all comes in."""
        return self._listener.level

    def record(self, take: Callable[[NDArray[np.float32]], None] | None) -> None:
        """Give every frame to `take`, and hear nothing in it; None hears again."""
        self._listener.record(take)

    def saying(self, text: str) -> None:
        """Take note of the prompt that the kiosk begins to say, or with '' of its end."""
        self._listener.saying(text)

    def speak(self, language: str, worker: str = "") -> None:
        """Listen in a language, and to a worker's own words; loaded in the background."""
        speaker = (language, worker)
        with self._lock:
            if speaker == self._speaker:
                return
            self._speaker = speaker
        self._listener.swap_ear(None)
        threading.Thread(target=self._load, args=speaker, name="load-ear", daemon=True).start()

    def stop(self) -> None:
        """Give the microphone back."""
        self._listener.stop()

    def _load(self, language: str, worker: str) -> None:
        found = open_ear_for(language, worker, self._home)
        with self._lock:
            if (language, worker) != self._speaker:
                return
            if not self._listener.ended:
                self.notice = found.notice
        self._listener.swap_ear(found.ear)
        self._on_changed()

    def _trouble(self, reason: str) -> None:
        with self._lock:
            self.notice = reason
        self._on_changed()
