"""The English ear: a Whisper model run by CTranslate2, free decoding, with a second look."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import dataclass
from math import exp
from pathlib import Path
from typing import Final

import ctranslate2
import numpy as np
from numpy.typing import NDArray
from tokenizers import Tokenizer

from kiosk.listening.cleaning import cleaned
from kiosk.listening.ear import Fit, Utterance
from kiosk.listening.letters import BEYOND, FRAME, Letters
from kiosk.listening.list_ear import ListEar, Reading
from kiosk.listening.mel import log_mel
from kiosk.listening.misheard import may_be_misheard
from kiosk.listening.second_look import SecondLook
from kiosk.listening.thresholds import DENIED, POSSIBLE, THRESHOLDS
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
PROMPT: Final = ["<|startoftranscript|>", "<|notimestamps|>"]
"""No words in it: with the command list as prompt, kitchen noise was heard as commands."""
LONGEST_TOKENS: Final = 48
"""No phrase is so long; it ends a decoder that runs on in noise."""

NOISY: Final = 10.0
"""Speech less than so many times as loud as the room (20 dB) is heard again with the noise taken
out, if it was not understood."""


@dataclass(frozen=True, slots=True)
class _Encoded:
    """What the encoder made of a sound."""

    output: ctranslate2.StorageView
    length: int
    """Frames that hold sound, and a few beyond."""

    @property
    def frames(self) -> NDArray[np.float32]:
        """The frames of the sound, shape (frames, width)."""
        whole: NDArray[np.float32] = np.array(self.output)[0]
        return whole[: self.length]


class WhisperEar(ListEar):
    """An ear that writes down what it hears, and accepts it when the whole text is a phrase.

    Where it is none, the sound without its noise is heard again. Letters have a second look: they
    doubt what was written down, and find what was written down wrong.
    """

    language = "en"

    def __init__(
        self,
        folder: Path,
        name: str = "whisper-tiny.en",
        threads: int = 2,
        letters: Path | None = None,
    ) -> None:
        """Load the model in `folder` (model.bin, tokenizer.json, vocabulary).

        `letters` are the weights that spell what its encoder hears; without them there is no second
        look. Raises OSError, RuntimeError or ValueError when something is missing or spoilt.
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
        self._second_look = None if letters is None else SecondLook(Letters(letters), POSSIBLE)

    def read(self, utterance: Utterance, allowed: Sequence[str]) -> Reading:
        """Write down what is heard; numbers may be digits or words.

        What is no phrase in the sound as it is may be one without the noise around it.
        """
        heard = [self._encode(utterance.samples)]
        text, confidence = self._write(heard[0].output)
        texts = [text]
        phrase = match(text, allowed)
        if phrase is not None and confidence >= self.thresholds.least_confidence:
            fit = self._fit(heard, phrase, texts, allowed)
            if fit is None or fit.above_rival >= DENIED:
                return Reading(text, phrase, confidence, fit=fit)
            phrase = None
        if is_noisy(utterance):
            heard.append(self._encode(cleaned(utterance.samples)))
            anew, sure = self._write(heard[1].output)
            texts.append(anew)
            other = match(anew, allowed)
            if other is not None and phrase in (None, other) and may_be_misheard(text, other):
                fit = self._fit(heard, other, texts, allowed)
                if fit is None or fit.above_rival >= DENIED:
                    return Reading(anew, other, sure, noise_removed=True, fit=fit)
        if phrase is None and self._second_look is not None:
            found = self._second_look.find([one.frames for one in heard], texts, allowed)
            if found is not None:
                phrase, fit = found
                sure = min(1.0, exp(fit.a_letter))
                return Reading(text, phrase, sure, at_second_look=True, fit=fit)
        return Reading(text, phrase, confidence)

    def _fit(
        self, heard: Sequence[_Encoded], phrase: str, texts: Sequence[str], allowed: Sequence[str]
    ) -> Fit | None:
        if self._second_look is None:
            return None
        return self._second_look.fit([one.frames for one in heard], phrase, texts, allowed)

    def _encode(self, samples: NDArray[np.float32]) -> _Encoded:
        features = log_mel(samples, WINDOW_S)[None]
        output = self._model.encode(ctranslate2.StorageView.from_array(features))
        return _Encoded(output, len(samples) // FRAME + BEYOND)

    def _write(self, encoded: ctranslate2.StorageView) -> tuple[str, float]:
        """Return what the model writes down, normalised, and its confidence 0..1."""
        result = self._model.generate(
            encoded, [PROMPT], beam_size=1, max_length=LONGEST_TOKENS, return_scores=True
        )[0]
        wrote = self._tokenizer.decode(result.sequences_ids[0], skip_special_tokens=True)
        return normal(wrote), min(1.0, exp(result.scores[0]))


def is_noisy(utterance: Utterance) -> bool:
    """Tell whether the room is so loud that taking it out may help."""
    return utterance.speech_rms < NOISY * utterance.noise_rms


def match(text: str, allowed: Sequence[str]) -> str | None:
    """Return the phrase that normalised `text` equals, said once or over and over."""
    once = said_once(text)
    return next((one for one in allowed if text and normal(one) in (text, once)), None)
