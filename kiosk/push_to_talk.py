"""Push-to-talk: an ear that is deaf until a key is pressed, for places that are too loud."""

from __future__ import annotations

import threading
from collections.abc import Callable, Iterable, Mapping
from typing import Final

from kiosk.listening.ear import Heard
from kiosk.listening.in_use import Hearing, Metered, Records, Take

OPEN_S: Final = 6.0
"""How long one press opens the ear, when nothing is understood meanwhile. The longest phrase takes
three seconds; a terminal does not tell when a key is let go."""

_SILENCE_DBFS: Final = -120.0

OnHeard = Callable[[Heard], None]


class PushToTalk:
    """An ear in use that hears after a press: until something is understood, or for some seconds.

    What is not understood leaves it open, so that it can be said again at once. A second press
    closes it. A press while the kiosk speaks counts when it falls silent.
    """

    def __init__(
        self,
        open_hearing: Callable[[OnHeard], Hearing],
        on_heard: OnHeard,
        on_change: Callable[[], None],
        now: Callable[[], float],
        key: str = "t",
    ) -> None:
        """Open the ear; `now` is a monotonic clock in seconds.

        `on_heard` and `on_change` must only post: they are called from any thread.
        """
        self.key = key
        """The key that opens it."""
        self._on_heard = on_heard
        self._on_change = on_change
        self._now = now
        self._lock = threading.Lock()
        self._until: float | None = None
        self._speaking = False
        self._hearing = open_hearing(self._heard)
        self._hearing.deafen()

    @property
    def notice(self) -> str:
        """Empty while it could hear, else the plain reason why not."""
        return self._hearing.notice

    @property
    def open(self) -> bool:
        """True between a press and its end."""
        return self._until is not None

    def press(self) -> None:
        """Open the ear, or close it again."""
        with self._lock:
            self._until = None if self._until is not None else self._now() + OPEN_S
            self._apply(at_once=True)
        self._on_change()

    def tick(self) -> None:
        """Look at the clock: about once a second."""
        with self._lock:
            if self._until is None or self._speaking or self._now() < self._until:
                return
            self._until = None
            self._apply()
        self._on_change()

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases and no others, when it hears; none shuts it: the walk is left."""
        listed = phrases if isinstance(phrases, Mapping) else tuple(phrases)
        if not listed:
            with self._lock:
                self._until = None
                self._apply()
        self._hearing.allow(listed)

    def deafen(self) -> None:
        """Hear nothing: the kiosk speaks."""
        with self._lock:
            self._speaking = True
            self._apply()

    def undeafen(self, *, at_once: bool = False) -> None:
        """The kiosk has fallen silent: hear, if the key was pressed."""
        with self._lock:
            self._speaking = False
            if self._until is not None:
                self._until = self._now() + OPEN_S
            self._apply(at_once=at_once)

    @property
    def microphone(self) -> bool:
        """True while a microphone gives sound."""
        return isinstance(self._hearing, Records) and self._hearing.microphone

    @property
    def level(self) -> float | None:
        """How loud it is at the microphone, in dBFS; None when no sound at all comes in.

        An ear that cannot tell is taken for one in silence.
        """
        return self._hearing.level if isinstance(self._hearing, Metered) else _SILENCE_DBFS

    def record(self, take: Take | None) -> None:
        """Give every frame to `take`, whatever the key says, and hear nothing in it."""
        if isinstance(self._hearing, Records):
            self._hearing.record(take)

    def speak(self, language: str, worker: str = "") -> None:
        """Listen in another language, or to another worker."""
        self._hearing.speak(language, worker)

    def _heard(self, heard: Heard) -> None:
        """Shut the ear behind what was understood, and tell of it."""
        if heard.phrase is not None:
            with self._lock:
                self._until = None
                self._apply()
        self._on_heard(heard)

    def _apply(self, *, at_once: bool = False) -> None:
        if self._until is not None and not self._speaking:
            self._hearing.undeafen(at_once=at_once)
        else:
            self._hearing.deafen()
