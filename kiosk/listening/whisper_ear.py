"""The English ear: a Whisper model run by CTranslate2, free decoding, with a second look."""

from __future__ import annotations

from collections.abc import Sequence
from math import exp
from pathlib import Path
from typing import Final

import ctranslate2
import numpy as np
from numpy.typing import NDArray
from tokenizers import Tokenizer

from kiosk.listening.cleaning import cleaned
from kiosk.listening.ear import Utterance
from kiosk.listening.list_ear import ListEar, Reading
from kiosk.listening.mel import FRAMES_PER_S, log_mel
from kiosk.listening.second_look import SecondLook, may_be_misheard
from kiosk.listening.thresholds import SECOND_LOOK, THRESHOLDS
from kiosk.listening.wording import normal, said_once

WINDOW_S: Final = 12.0
"""Seconds of (mostly padded) sound given to the encoder; the gate's longest utterance fits in.
Measured on two cores: right ones of 68 synthetic phrases clean, at 10 dB and at 5 dB of kitchen, of
120 human clips of yes, no and stop clean and 118 at 10 dB, and the median decode:

    20 s    58  39  18    117   99    162 to 234 ms
    12 s    59  38  21    115   99     96 to 111 ms
    10 s    58  39  21    115  101     80 to 127 ms
     8 s    56  40  21                 132 to 136 ms (the machine was busier)

Of 100 human clips of other words none was taken at any length."""
FRAMES: Final = round(WINDOW_S * FRAMES_PER_S)
PROMPT: Final = ["<|startoftranscript|>", "<|notimestamps|>"]
"""No words in it: with the command list as prompt, kitchen noise was heard as commands."""
LONGEST_TOKENS: Final = 48
"""No phrase is so long; it ends a decoder that runs on in noise."""

NOISY: Final = 10.0
"""Speech less than so many times as loud as the room (20 dB) is heard again with the noise taken
out, if it was not understood."""


class WhisperEar(ListEar):
    """An ear that writes down what it hears, and accepts it when the whole text is a phrase.

    Where it is none, the sound without its noise is heard again, and then the phrases spelled alike
    get a second look.
    """

    language = "en"

    def __init__(self, folder: Path, name: str = "whisper-tiny.en", threads: int = 2) -> None:
        """Load the model in `folder` (model.bin, tokenizer.json, vocabulary).

        Raises FileNotFoundError or RuntimeError when it is incomplete.
        """
        tokens = folder / "tokenizer.json"
        if not tokens.is_file():
            raise FileNotFoundError(f"{tokens} is missing; install the speech model again")
        self.name = name
        self.thresholds = THRESHOLDS["whisper"]
        self._tokenizer = Tokenizer.from_file(str(tokens))
        self._model = ctranslate2.models.Whisper(
            str(folder), device="cpu", compute_type="int8", intra_threads=threads
        )
        self._second_look = SecondLook(self._model, self._tokenizer, SECOND_LOOK)

    def read(self, utterance: Utterance, allowed: Sequence[str]) -> Reading:
        """Write down what is heard; numbers may be digits or words.

        What is no phrase in the sound as it is may be one without the noise around it.
        """
        encoded = self._encode(utterance.samples)
        wrote, text, confidence = self._write(encoded)
        phrase = match(text, allowed)
        if phrase is not None and confidence >= self.thresholds.least_confidence:
            return Reading(text, phrase, confidence)
        texts = [text]
        if is_noisy(utterance):
            encoded = self._encode(cleaned(utterance.samples))
            wrote, anew, sure = self._write(encoded)
            other = match(anew, allowed)
            if other is not None and phrase in (None, other) and may_be_misheard(text, other):
                return Reading(anew, other, sure, noise_removed=True)
            texts.append(anew)
        if phrase is None:
            found = self._second_look.find(encoded, FRAMES, wrote, texts, allowed)
            if found is not None:
                return Reading(text, *found, at_second_look=True)
        return Reading(text, phrase, confidence)

    def _encode(self, samples: NDArray[np.float32]) -> ctranslate2.StorageView:
        features = log_mel(samples, WINDOW_S)[None]
        return self._model.encode(ctranslate2.StorageView.from_array(features))

    def _write(self, encoded: ctranslate2.StorageView) -> tuple[list[int], str, float]:
        """Return what the model writes down: tokens, normalised text, confidence 0..1."""
        result = self._model.generate(
            encoded, [PROMPT], beam_size=1, max_length=LONGEST_TOKENS, return_scores=True
        )[0]
        wrote = result.sequences_ids[0]
        text = normal(self._tokenizer.decode(wrote, skip_special_tokens=True))
        return wrote, text, min(1.0, exp(result.scores[0]))


def is_noisy(utterance: Utterance) -> bool:
    """Tell whether the room is so loud that taking it out may help."""
    return utterance.speech_rms < NOISY * utterance.noise_rms


def match(text: str, allowed: Sequence[str]) -> str | None:
    """Return the phrase that normalised `text` equals, said once or over and over."""
    once = said_once(text)
    return next((one for one in allowed if text and normal(one) in (text, once)), None)
