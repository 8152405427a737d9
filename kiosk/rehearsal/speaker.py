"""The two voices of a rehearsal: the kiosk's, rendered for real, and the simulated worker's."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path

from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.speech import Speech

WORKER_VOICES: dict[str, tuple[tuple[str, int], ...]] = {
    "en": (
        ("gmw/en-us", 150),
        ("gmw/en-us+f3", 140),
        ("gmw/en", 140),
        ("gmw/en-us+m3", 155),
        ("gmw/en-us+f2", 145),
        ("gmw/en-gb-scotland", 150),
    ),
    "ko": (("ko+f5", 165), ("ko+f2", 140), ("ko+f4", 150), ("ko+f3", 130), ("ko+m1", 155)),
}
"""Voice and rate of the worker's first try, second try, and so on: people vary when they repeat.
The Korean ones are those of eight synthetic voices that the ear understood best."""


class RenderedVoice:
    """A voice that renders every prompt and plays none."""

    notice = ""

    def __init__(self, cache: PromptCache, heard: Callable[[str], None]) -> None:
        self._cache = cache
        self._heard = heard

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        """Render a prompt, hand its text to whoever listens, and end at once."""
        self._cache.wave(Speech(text, language))
        self._heard(text)
        on_end()

    def prepare(self, texts: Iterable[str], language: str) -> None:
        """Nothing is rendered ahead: a rehearsal renders what it says."""

    def hush(self) -> None:
        """It has ended already."""

    def close(self) -> None:
        """The cache is somebody else's."""


class WorkerVoice:
    """Says a phrase as the worker would, a little differently at each try."""

    def __init__(self, cache: PromptCache, language: str) -> None:
        self._cache = cache
        self._language = language

    @property
    def voices(self) -> int:
        """How many ways of saying a phrase there are."""
        return len(WORKER_VOICES[self._language])

    def say(self, phrase: str, attempt: int) -> Path:
        """Return the wave file of a phrase. Raises speaking's SpeechFailed."""
        voices = WORKER_VOICES[self._language]
        voice, rate = voices[attempt % len(voices)]
        return self._cache.wave(Speech(phrase, self._language, voice, rate))
