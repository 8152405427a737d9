"""What measures words: how they sound, how long they take to say, whether an ear knows them."""

from __future__ import annotations

import importlib.util
import tempfile
import wave
from collections.abc import Callable, Iterator, Mapping, Sequence
from contextlib import contextmanager
from dataclasses import dataclass
from functools import cache
from pathlib import Path

from kiosk.checking.phonemes import phonemes
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.speech import Speech

Sounds = Mapping[tuple[str, str], tuple[str, ...]]
"""(Language, phrase) to its phonemes."""

UnknownWords = list[tuple[str, str]]
"""Phrases, each with a word of it that the recogniser lacks."""


@dataclass(frozen=True, slots=True)
class Instruments:
    """The measuring parts. The first two raise SpeechFailed where nothing can be spoken."""

    sounds: Callable[[Mapping[str, Sequence[str]]], Sounds]
    """Phonemes of phrases by language."""
    seconds: Callable[[str, str], float]
    """Seconds that a text takes to say: (language, text)."""
    unknown: Callable[[str, Sequence[str]], UnknownWords | None]
    """What the recogniser of a language cannot hear; None where no word list can be asked."""


@contextmanager
def open_instruments(prompts: Path | None = None) -> Iterator[Instruments]:
    """Open the real instruments; `prompts` keeps the spoken texts, else they are thrown away."""
    renderer = Renderer()
    with tempfile.TemporaryDirectory() as passing:
        folder = prompts or Path(passing)

        @cache
        def prompt_cache() -> PromptCache:
            return PromptCache(folder, renderer)

        def seconds(language: str, text: str) -> float:
            with wave.open(str(prompt_cache().wave(Speech(text, language))), "rb") as file:
                return file.getnframes() / file.getframerate()

        try:
            yield Instruments(phonemes, seconds, unknown_words)
        finally:
            renderer.close()


def unknown_words(language: str, phrases: Sequence[str]) -> UnknownWords | None:
    """Return (phrase, word) for each word that the installed Vosk model of a language lacks.

    None when no such model is installed. An ear that writes down whatever it hears has no list of
    words that could be asked.
    """
    folder = _vosk_model(language)
    if folder is None:
        return None
    from kiosk.listening.vosk_ear import VoskEar

    ear = VoskEar(folder, language, folder.parent.name)
    return [(one.phrase, one.word) for one in ear.unknown_words(phrases)]


def _vosk_model(language: str) -> Path | None:
    """Return the folder of the model that the package `vosk-model-LANGUAGE` brings, if any."""
    found = importlib.util.find_spec(f"vosk_model_{language}")
    if found is None or found.origin is None or importlib.util.find_spec("vosk") is None:
        return None
    folder = Path(found.origin).parent / "model"
    return folder if folder.is_dir() else None
