"""The voice and the ear of a walk, of which one works at a time: who speaks does not listen."""

from __future__ import annotations

from collections.abc import Callable, Iterable

from kiosk.listening.in_use import Hearing
from kiosk.speaking.voice import Voice, suit


class Intercom:
    """Speaks, and listens whenever it does not. Use from one thread; the voice's own may tell it
    that it fell silent."""

    def __init__(self, voice: Voice, hearing: Hearing, on_change: Callable[[], None]) -> None:
        """`on_change` must only post: it is called when the voice falls silent, from any thread."""
        self.voice = voice
        self.hearing = hearing
        self.speaking = False
        """True while the voice speaks, and the ear is deaf."""
        self._on_change = on_change
        self._said = 0
        self._listening_to = ("", "")

    def take(self, voice: Voice, hearing: Hearing) -> None:
        """Speak and listen through these from now on."""
        self.close()
        self.voice, self.hearing = voice, hearing
        self.forget()

    def say(self, text: str, language: str, worker: str) -> None:
        """Say a text to a worker in place of what is being said; the ear is deaf meanwhile."""
        if not text:
            return
        self._said += 1
        number = self._said
        self.speaking = True
        self.hearing.deafen()
        suit(self.voice, worker)
        self.voice.say(text, language, lambda: self._fell_silent(number))

    def _fell_silent(self, number: int) -> None:
        if number == self._said:
            self.hearing.undeafen()
            self.speaking = False
            self._on_change()

    def listen(self, phrases: Iterable[str], language: str, worker: str) -> None:
        """Hear these phrases of a worker and no others."""
        if (language, worker) != self._listening_to:
            self._listening_to = (language, worker)
            self.hearing.speak(language, worker)
        self.hearing.allow(phrases)

    def forget(self) -> None:
        """Forget to whom the ear listened: another screen may have had it since."""
        self._listening_to = ("", "")

    def close(self) -> None:
        """Fall silent and stop listening."""
        self._said += 1
        self.speaking = False
        self.voice.hush()
        self.hearing.allow(())
