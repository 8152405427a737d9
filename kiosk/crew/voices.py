"""The crew's voice and ears: what one of them says is rendered, played, and heard by a real ear."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from pathlib import Path

from kiosk.listening.ear import Ear, Heard
from kiosk.listening.listener import hear_frames
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.sources import WaveFile
from kiosk.listening.turn import Meanings, meanings_of
from kiosk.rehearsal.speaker import WORKER_VOICES, WorkerVoice
from kiosk.speaking.passing import PassingVoice
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.voice import Plays, Voice


class CrewHearing:
    """The kiosk's ear, given what the crew says, and nothing of the room."""

    notice = ""

    def __init__(self, home: Path, *, deaf: bool = False) -> None:
        """Open ears as languages are spoken; none at all when `deaf`."""
        self.allowed: Meanings = {}
        self._home = home
        self._deaf = deaf
        self._language = ""
        self._ears: dict[str, Ear | None] = {}

    def allow(self, phrases: Iterable[str]) -> None:
        """Hear these phrases and no others; a mapping tells which of them mean the same."""
        self.allowed = meanings_of(phrases)

    def deafen(self) -> None:
        """The crew is silent while the kiosk speaks."""

    def undeafen(self, *, at_once: bool = False) -> None:
        """The crew is silent while the kiosk speaks."""

    def speak(self, language: str, worker: str = "") -> None:  # noqa: ARG002
        """Listen in another language."""
        self._language = language

    @property
    def ear(self) -> Ear | None:
        """The ear of the language in use; None where there is none, or no voice for the crew."""
        language = self._language
        if self._deaf or language not in WORKER_VOICES:
            return None
        if language not in self._ears:
            found = open_ear(language, self._home)
            self._ears[language] = None if isinstance(found, Missing) else found
        return self._ears[language]

    def phrases(self, act: object) -> list[str]:
        """Return the phrases that mean an act now, the one on the target first."""
        return [phrase for phrase, meant in self.allowed.items() if meant == act]

    def listen(self, wave: Path) -> Heard | None:
        """Return what the ear makes of a wave file; None when it finds no speech. Takes a while."""
        if self.ear is None:
            return None
        found = hear_frames(WaveFile(wave).frames(), self.ear, self.allowed)
        return next((one for one in found if one.phrase is not None), found[0] if found else None)


class CrewVoice(PassingVoice):
    """The kiosk's voice, which passes over what is not to be heard; and the crew's beside it."""

    def __init__(self, voice: Voice, aloud: Callable[[str], bool]) -> None:
        """`aloud` tells of each text whether it is to be said."""
        super().__init__(voice)
        self._aloud = aloud
        self.unsaid = ""
        """What would have been said aloud, had there been something to say it with."""

    @property
    def silent(self) -> bool:
        """True when nothing can be played."""
        return not isinstance(self._voice, Plays)

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        """Say a text, or pass over it."""
        if self._aloud(text):
            self.unsaid = text if self.silent else ""
            super().say(text, language, on_end)
            return
        self.hush()
        on_end()


class CrewSpeaker:
    """Renders what the crew says, in voices that differ from the kiosk's."""

    def __init__(self, folder: Path) -> None:
        self._renderer = Renderer()
        self._cache = PromptCache(folder, self._renderer)

    def wave(self, phrase: str, language: str, attempt: int) -> Path:
        """Return the wave file of a phrase, said a little differently at each attempt.

        Raises speaking's SpeechFailed.
        """
        # The first voice is the kiosk's own.
        return WorkerVoice(self._cache, language).say(phrase, attempt + 1)

    def close(self) -> None:
        """End the worker that renders."""
        self._renderer.close()
