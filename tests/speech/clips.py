"""The sound that ears are judged by: human clips where they are to be had, and synthetic voices."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from kiosk.checking.phrases import COMMANDS
from kiosk.languages.words import words
from kiosk.listening.ear import Ear, Heard, Utterance
from kiosk.listening.endpoint import Gate
from kiosk.listening.listener import hear_frames
from kiosk.listening.models import Missing, open_ear
from kiosk.listening.sources import Samples, WaveFile

RECORDINGS = Path(__file__).resolve().parents[3] / "shared" / "speech"
STILL_S = 0.3
Sound = NDArray[np.float32]

VOICES = {
    "en": (("en-us", 150), ("en-us+f3", 165), ("en-gb-scotland", 150), ("en+f4", 165)),
    "ko": (("ko+f5", 165), ("ko+f2", 140), ("ko+f4", 150), ("ko+m3", 135)),
}
"""Voice of espeak-ng and words a minute."""

FOREIGN = ("backward", "seven", "happy", "music", "the bird is in the tree", "turn left", "marvin")
"""English that is on no list."""

HOLDS = {
    "en": (
        "i found the power disconnected",
        "the machine does not respond",
        "i found everything in place",
    ),
    "ko": ("전원 껐음", "안 움직여요"),
}
"""Phrases of the kind that a hold asks for."""


def ear_or_skip(language: str) -> Ear:
    """Open the ear of a language; skip the test with the reason when there is none."""
    found = open_ear(language)
    if isinstance(found, Missing):
        pytest.skip(found.mend)
    return found


def human(kind: str, least: int) -> list[Path]:
    """Return the human clips of a folder; skip the test when they are not beside the project."""
    found = sorted((RECORDINGS / kind).glob("*.wav"))
    if len(found) < least:
        pytest.skip(f"the recordings {kind} are not beside the project, in {RECORDINGS}")
    return found


def commands(language: str) -> list[str]:
    """Return the first words of every command of the kiosk, and some hold phrases."""
    first = [words(language).phrases(act)[0] for act in COMMANDS]
    return list(dict.fromkeys([*first, *HOLDS[language]]))


def spoken(phrases: Sequence[str], language: str) -> Iterator[tuple[str, Sound]]:
    """Yield each phrase from each synthetic voice of a language."""
    from tests.speech.synth import speaker

    for phrase in phrases:
        for voice, rate in VOICES[language]:
            yield phrase, speaker().say(phrase, voice, rate)


def of_file(path: Path) -> Sound:
    """Return a file's sound with silence around it, as it would come from a microphone."""
    still = np.zeros(int(STILL_S * 16_000), dtype=np.float32)
    return np.concatenate([still, WaveFile(path).samples, still, still])


def heard(ear: Ear, sound: Sound, allowed: Sequence[str]) -> list[Heard]:
    """Return what the gate and an ear make of a sound."""
    return hear_frames(Samples(sound).frames(), ear, allowed)


def utterances(sound: Sound) -> list[Utterance]:
    """Return what the gate cuts out of a sound."""
    gate = Gate()
    found = [gate.feed(frame) for frame in Samples(sound).frames()]
    return [one for one in [*found, gate.flush()] if one is not None]


def phrase_of(found: list[Heard]) -> str | None:
    """Return the phrase of the first utterance that had one."""
    return next((one.phrase for one in found if one.phrase is not None), None)
