"""The ear for other languages: a Vosk model with the allowed phrases and decoys as its grammar."""

from __future__ import annotations

import json
from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import Final

import numpy as np
from numpy.typing import NDArray
from vosk import KaldiRecognizer, Model, SetLogLevel

from kiosk.listening.decoys import DECOYS, PHRASE_WEIGHT
from kiosk.listening.ear import RATE, Utterance
from kiosk.listening.list_ear import ListEar, Reading
from kiosk.listening.pieces import pieces, squeezed
from kiosk.listening.thresholds import THRESHOLDS

LEAD_IN_S: Final = 0.3
"""Silence put before and after an utterance. Without it the model puts a syllable ('이') before a
word that begins at once: 'sip-o' (15) was heard as 'isip-o' (25) from four of five voices."""
UNKNOWN_MARK: Final = "[unk]"


@dataclass(frozen=True, slots=True)
class UnknownWord:
    """A word of a phrase that the model has never heard of."""

    phrase: str
    word: str
    ear: str

    def __str__(self) -> str:
        """Return the sentence that says what to mend."""
        return (
            f"the ear {self.ear} does not know the word '{self.word}' in the phrase "
            f"'{self.phrase}': choose another word for it"
        )


class VoskEar(ListEar):
    """An ear that can only answer with allowed phrases; decoys give it something else to say."""

    def __init__(
        self, folder: Path, language: str, name: str, decoys: Sequence[str] | None = None
    ) -> None:
        """Load the model in `folder`; raises FileNotFoundError when there is none."""
        if not _is_whole(folder):
            raise FileNotFoundError(f"{folder} holds no whole Vosk model; unpack it there again")
        SetLogLevel(-1)
        self.name = name
        self.language = language
        self.thresholds = THRESHOLDS["vosk"]
        self._model = Model(str(folder))
        given = DECOYS.get(language, ()) if decoys is None else decoys
        self._decoys = [word for word in given if self._knows(word)]
        if self._knows(UNKNOWN_MARK):
            self._decoys = [UNKNOWN_MARK]
        self._listening_for: tuple[str, ...] = ()
        self._recognizer: KaldiRecognizer | None = None
        self._by_text: dict[str, str] = {}

    def _knows(self, word: str) -> bool:
        return bool(self._model.vosk_model_find_word(word) >= 0)

    def unknown_words(self, phrases: Iterable[str]) -> list[UnknownWord]:
        """Return every word of `phrases` that this model cannot hear; empty when all is well."""
        return [
            UnknownWord(phrase, word, self.name)
            for phrase in phrases
            for word in phrase.lower().split()
            if not pieces(word, self._knows)
        ]

    def read(self, utterance: Utterance, allowed: Sequence[str]) -> Reading:
        """Read with the allowed phrases as grammar; never one that has an unknown word."""
        recognizer = self._recognizer_for(tuple(allowed))
        if recognizer is None:
            return Reading("")
        text, confidence, shortest_s = read(recognizer, utterance.samples)
        return Reading(text, self._by_text.get(squeezed(text)), confidence, shortest_s)

    def _recognizer_for(self, allowed: tuple[str, ...]) -> KaldiRecognizer | None:
        """Return the recogniser for this list, or None when no phrase of it can be heard."""
        if allowed == self._listening_for:
            return self._recognizer
        # A word the model lacks makes it write to standard error, and an empty grammar crashes
        # the process when it is used: neither ever reaches it.
        grammar: list[str] = []
        by_text: dict[str, str] = {}
        for phrase in allowed:
            spelt = [pieces(word, self._knows) for word in phrase.lower().split()]
            if spelt and all(spelt):
                grammar.append(" ".join(piece for word in spelt for piece in word))
                by_text.setdefault(squeezed(phrase.lower()), phrase)
        self._listening_for = allowed
        self._by_text = by_text
        self._recognizer = None
        if grammar:
            words = grammar * PHRASE_WEIGHT + self._decoys
            self._recognizer = KaldiRecognizer(
                self._model, RATE, json.dumps(words, ensure_ascii=False)
            )
            self._recognizer.SetWords(True)
        return self._recognizer


def _is_whole(folder: Path) -> bool:
    """Tell whether a model can be tried: the engine writes to standard error about a broken one."""
    return any(
        (folder / sound / "final.mdl").is_file()
        and any((folder / graph / name).is_file() for name in ("HCLr.fst", "HCLG.fst"))
        for sound, graph in (("am", "graph"), (".", "."))
    )


def read(
    recognizer: KaldiRecognizer, samples: NDArray[np.float32]
) -> tuple[str, float | None, float]:
    """Return (text, least confidence of a word or None, seconds of the shortest word)."""
    still = np.zeros(round(LEAD_IN_S * RATE), dtype=np.float32)
    padded = np.concatenate([still, samples, still])
    pcm = (np.clip(padded, -1.0, 1.0) * 32767).astype("<i2").tobytes()
    recognizer.AcceptWaveform(pcm)
    result = json.loads(recognizer.FinalResult())
    recognizer.Reset()
    words = result.get("result", [])
    confidence = min((min(1.0, float(word["conf"])) for word in words), default=None)
    shortest = min((float(word["end"]) - float(word["start"]) for word in words), default=0.0)
    return str(result.get("text", "")), confidence, shortest
