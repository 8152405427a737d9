"""Recognisers with free rein, and how what they write is held against what was said."""

from __future__ import annotations

import json
import re
from collections.abc import Callable
from functools import cache
from pathlib import Path
from typing import Any

import numpy as np
from num2words import num2words
from numpy.typing import NDArray
from rapidfuzz.distance import Levenshtein

from kiosk.listening.models import known_models, model_folders, place_of
from kiosk.listening.wording import normal

Sound = NDArray[np.float32]
"""Mono, 16 kHz."""
Writes = Callable[[Sound], str]

WINDOW_S = 15.0
"""No sentence is longer. With the 30 s that the model was trained on the figures were the same."""
RATE = 16_000

ALIKE = {
    "litre": "liter", "litres": "liters", "millilitre": "milliliter", "millilitres": "milliliters",
    "colour": "color", "mould": "mold", "grey": "gray", "poor": "pour", "pore": "pour",
    "two": "to", "too": "to", "four": "for", "buy": "by", "bye": "by", "weight": "wait",
    "week": "weak", "hole": "whole", "write": "right", "sync": "sink", "led": "lead", "wore": "war",
    "brake": "break", "ware": "wear", "where": "wear", "waist": "waste", "celcius": "celsius",
}  # fmt: skip
"""Two spellings of a word, and words that sound the same: neither is a fault of a voice."""


@cache
def folder_of(language: str) -> Path:
    """Return the folder of the model of a language; StopIteration when there is none."""
    found = (place_of(one, model_folders()) for one in known_models(language, model_folders()[-1]))
    return next(one for one in found if one is not None)


@cache
def english() -> Writes:
    """Return Whisper tiny.en."""
    import ctranslate2
    from tokenizers import Tokenizer

    from kiosk.listening.mel import log_mel

    folder = folder_of("en")
    tokens = Tokenizer.from_file(str(folder / "tokenizer.json"))
    model: Any = ctranslate2.models.Whisper(str(folder), compute_type="int8", intra_threads=1)
    prompt = [["<|startoftranscript|>", "<|notimestamps|>"]]

    def write(sound: Sound) -> str:
        features = ctranslate2.StorageView.from_array(log_mel(sound, WINDOW_S)[None])
        wrote = model.generate(features, prompt, beam_size=1, max_length=100)[0]
        return str(tokens.decode(wrote.sequences_ids[0], skip_special_tokens=True))

    return write


@cache
def korean() -> Writes:
    """Return the small Vosk model with its own language model in place of a grammar."""
    from vosk import KaldiRecognizer, Model, SetLogLevel

    SetLogLevel(-1)
    model = Model(str(folder_of("ko")))

    def write(sound: Sound) -> str:
        recognizer = KaldiRecognizer(model, RATE)
        recognizer.AcceptWaveform((np.clip(sound, -1, 1) * 32_767).astype("<i2").tobytes())
        return str(json.loads(recognizer.FinalResult()).get("text", ""))

    return write


RECOGNISERS: dict[str, Callable[[], Writes]] = {"en": english, "ko": korean}


def units(text: str, language: str) -> list[str]:
    """Return what is compared: the words of English; the syllables of Korean, whose words are
    parted in more than one way, with its numbers written out."""
    if language == "ko":
        spelt = re.sub(r"\d+(?:\.\d+)?", lambda found: _korean_number(found[0]), text)
        return list(re.sub(r"[\W_]", "", spelt))
    return [ALIKE.get(word, word) for word in normal(text).split()]


def _korean_number(digits: str) -> str:
    return str(num2words(float(digits) if "." in digits else int(digits), lang="ko"))


def wrong_in(text: str, wrote: str, language: str) -> tuple[int, int]:
    """Return (how many units a text has, how many of them came out otherwise).

    Words parted otherwise are not wrong: 'drip trays' and 'driptrays'.
    """
    wanted, got = units(text, language), units(wrote, language)
    if "".join(wanted) == "".join(got):
        return len(wanted), 0
    return len(wanted), Levenshtein.distance(wanted, got)


def lost_in(text: str, wrote: str, language: str) -> list[tuple[str, str]]:
    """Return the units of a text that came out otherwise, each with what stood in their place."""
    wanted, got = units(text, language), units(wrote, language)
    return [
        (word, " ".join(got[one.dest_start : one.dest_end]))
        for one in Levenshtein.opcodes(wanted, got)
        if one.tag in ("replace", "delete")
        for word in wanted[one.src_start : one.src_end]
    ]
