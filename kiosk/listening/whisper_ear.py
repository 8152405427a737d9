"""The English ear: a Whisper model run by CTranslate2, free decoding, accepted only as a whole."""

from __future__ import annotations

import time
from collections.abc import Sequence
from math import exp
from pathlib import Path
from typing import Final

import ctranslate2
from tokenizers import Tokenizer

from kiosk.listening.ear import (
    DOUBTFUL,
    NOT_ALLOWED,
    NOTHING,
    RATE,
    TOO_SHORT,
    Heard,
    Utterance,
)
from kiosk.listening.mel import log_mel
from kiosk.listening.wording import normal

WINDOW_S: Final = 20.0
"""Seconds of (mostly padded) sound given to the encoder. Measured: 30 s takes 245 ms, 20 s takes
111 ms at the same recall, 12 s loses a fifth of the short words."""
PROMPT: Final = ["<|startoftranscript|>", "<|notimestamps|>"]
"""No words in it: with the command list as prompt, kitchen noise was heard as commands."""
LONGEST_TOKENS: Final = 48
"""No phrase is so long; it ends a decoder that runs on in noise."""
SHORTEST_S: Final = 0.25
"""Shorter than any word with the gate's own margins around it."""
LEAST_CONFIDENCE: Final = 0.1
"""The whole-text match does the rejecting: of 100 human clips of other words and 30 of noise it
took none. Of 120 human clips of yes, no and stop the least sure right one had 0.22; 'next' from a
synthetic voice has 0.12 to 0.48, so a higher threshold would only make the ear deaf."""


class WhisperEar:
    """An ear that writes down what it hears, and accepts it when the whole text is a phrase."""

    language = "en"

    def __init__(self, folder: Path, name: str = "whisper-tiny.en", threads: int = 2) -> None:
        """Load the model in `folder` (model.bin, tokenizer.json, vocabulary).

        Raises FileNotFoundError or RuntimeError when it is incomplete.
        """
        tokens = folder / "tokenizer.json"
        if not tokens.is_file():
            raise FileNotFoundError(f"{tokens} is missing; install the speech model again")
        self.name = name
        self._tokenizer = Tokenizer.from_file(str(tokens))
        self._model = ctranslate2.models.Whisper(
            str(folder), device="cpu", compute_type="int8", intra_threads=threads
        )

    def hear(self, utterance: Utterance, allowed: Sequence[str]) -> Heard:
        """Return which of `allowed` the whole utterance was; numbers may be digits or words."""
        begun = time.perf_counter()
        text, confidence, phrase = "", None, None
        if len(utterance.samples) < SHORTEST_S * RATE:
            why = TOO_SHORT
        else:
            text, confidence = self._read(utterance)
            phrase, why = match(text, allowed)
            if phrase is not None and confidence < LEAST_CONFIDENCE:
                phrase, why = None, DOUBTFUL
        return Heard(
            text=text,
            phrase=phrase,
            confidence=confidence,
            ear=self.name,
            why=why,
            decode_s=time.perf_counter() - begun,
            ended_at=utterance.ended_at,
        )

    def _read(self, utterance: Utterance) -> tuple[str, float]:
        features = ctranslate2.StorageView.from_array(log_mel(utterance.samples, WINDOW_S)[None])
        result = self._model.generate(
            features, [PROMPT], beam_size=1, max_length=LONGEST_TOKENS, return_scores=True
        )[0]
        text = self._tokenizer.decode(result.sequences_ids[0], skip_special_tokens=True)
        return normal(text), min(1.0, exp(result.scores[0]))


def match(text: str, allowed: Sequence[str]) -> tuple[str | None, str]:
    """Return (phrase, '') for the phrase that normalised `text` equals, else (None, why)."""
    if not text:
        return None, NOTHING
    for phrase in allowed:
        if normal(phrase) == text:
            return phrase, ""
    return None, NOT_ALLOWED
