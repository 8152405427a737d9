"""Prompts as one shop wants them: in each worker's tone, with the crew's own recordings in them."""

from __future__ import annotations

from pathlib import Path

from kiosk.home import write_private
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.recordings import JOINED, Recordings
from kiosk.speaking.sentences import sentences
from kiosk.speaking.speech import Speech
from kiosk.speaking.tone import Tone, Tones, usual
from kiosk.speaking.voices import USUAL, SpeechFailed, choice_for, paced
from kiosk.speaking.waves import as_wave, joined, read


class ShopPrompts:
    """Gives the voice its waves. Used by one thread, the voice's."""

    def __init__(
        self,
        cache: PromptCache,
        tones: Tones = usual,
        recordings: Recordings | None = None,
    ) -> None:
        self._cache = cache
        self._tones = tones
        self._recordings = recordings

    def wave(self, text: str, language: str, person: str = "") -> Path:
        """Return the wave file of a text as it is said to a person. Raises SpeechFailed.

        Where no sentence of it was recorded the whole is rendered in one, as the voice speaks best.
        Else each recorded sentence is played as it is, and the others are rendered around it. What
        is wrong with a recording never keeps a prompt from being said.
        """
        tone = self._tones(language, person)
        parts = sentences(text)
        recorded = [self._recorded(part, language) for part in parts]
        if not any(recorded):
            return self._rendered(text, language, tone)
        if len(parts) == 1 and recorded[0] and tone.volume == USUAL:
            return recorded[0]
        try:
            return self._joined(parts, recorded, language, tone)
        except (SpeechFailed, OSError):
            return self._rendered(text, language, tone)

    def ready(self, text: str, language: str, person: str = "") -> None:
        """Render what was not recorded of a text, for when it is said. Raises SpeechFailed."""
        tone = self._tones(language, person)
        parts = sentences(text)
        missing = [part for part in parts if self._recorded(part, language) is None]
        for one in missing if len(missing) < len(parts) else [text]:
            self._rendered(one, language, tone)

    def _recorded(self, sentence: str, language: str) -> Path | None:
        if self._recordings is None or not any(mark.isalnum() for mark in sentence):
            return None
        return self._recordings.find(sentence, language)

    def _rendered(self, text: str, language: str, tone: Tone) -> Path:
        rate = paced(choice_for(language).rate, tone.rate)
        speech = Speech(text, language, rate=rate, pitch=tone.pitch, volume=tone.volume)
        return self._cache.wave(speech)

    def _joined(
        self, parts: list[str], recorded: list[Path | None], language: str, tone: Tone
    ) -> Path:
        """Put a prompt together in a file that the next one takes: the voices in it are people's,
        so no copy is kept with the rendered prompts. Raises SpeechFailed, OSError."""
        sounds = [
            read(self._rendered(part, language, tone)) if own is None
            else read(own) * (tone.volume / USUAL)
            for part, own in zip(parts, recorded, strict=True)
        ]  # fmt: skip
        file = self._recordings_folder() / JOINED
        write_private(file, as_wave(joined(sounds)))
        return file

    def _recordings_folder(self) -> Path:
        return Path() if self._recordings is None else self._recordings.folder
