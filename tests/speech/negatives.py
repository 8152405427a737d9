"""Sound that holds no phrase of any list, in a room with noise: what an ear must let pass."""

from __future__ import annotations

from collections.abc import Iterator
from functools import cache
from itertools import count
from pathlib import Path
from typing import Final

import numpy as np

from kiosk.listening.ear import RATE
from kiosk.listening.sources import WaveFile, resample
from tests.speech.clips import RECORDINGS, Sound
from tests.speech.kitchen import humming, mixed
from tests.speech.material import NOISES, sentence
from tests.speech.moments import prompts
from tests.speech.recorded import beside, read_aloud, recorded
from tests.speech.synth import speaker

KINDS: Final = {
    "people": "recordings of people: commands, single words, sentences read aloud",
    "talk": "what people in a kitchen say to each other, synthetic",
    "prompts": "the kiosk's own prompts in another voice",
    "digits": "recordings of digits and 'stop', which stand on no list but that of numbers",
    "noise": "made noise: a kitchen, a compressor, water",
    "kitchen": "a recorded kitchen",
    "humming": "somebody who hums a tune",
}
BLOCK_S: Final = 30.0
_TIMES_AS_MUCH: Final = {"people": 6}
_GAP_S: Final = 0.6
SPEEDS: Final = (0.85, 0.9, 0.95, 1.0, 1.05, 1.1, 1.15, 1.2)


def in_turn(language: str) -> Iterator[tuple[str, int]]:
    """Yield kind and seed of block after block, for ever: half of them are people.

    Kinds whose recordings are not to be had are left out.
    """
    there = [kind for kind in KINDS if block(language, kind, 0) is not None]
    for turn in count():
        for kind in there:
            many = _TIMES_AS_MUCH.get(kind, 1)
            yield from ((kind, turn * many + one) for one in range(many))


def negatives(language: str, kind: str, seconds: float) -> Iterator[Sound]:
    """Yield blocks of one kind, this long together; none where recordings are missing."""
    made = 0.0
    for seed in count():
        one = block(language, kind, seed) if made < seconds else None
        if one is None:
            return
        made += len(one) / RATE
        yield one


def block(language: str, kind: str, seed: int) -> Sound | None:
    """Return one block of half a minute or little more, the same each time for a seed.

    None where recordings are missing.
    """
    chance = np.random.default_rng([seed, list(KINDS).index(kind)])
    noise = list(NOISES.values())[seed % len(NOISES)]
    length = round(BLOCK_S * RATE)
    match kind:
        case "noise":
            return 0.1 * noise(length, seed)
        case "humming":
            return 0.1 * humming(length, seed)
        case "kitchen":
            return _kitchen(length, chance)
    pieces: list[Sound] = []
    while sum(map(len, pieces)) < length:
        piece = _piece(language, kind, chance)
        if piece is None:
            return None
        pieces.append(np.pad(piece, (0, int(chance.uniform(0, _GAP_S) * RATE))))
    sound = np.concatenate(pieces)
    return mixed(sound, noise(len(sound), seed), chance.choice([30, 20, 10]))


def unique_s(kind: str) -> float:
    """Return how many seconds of different recordings a kind is made of; 0 for what is made."""
    return sum(len(recorded(path)) for folder in _recordings(kind) for path in folder) / RATE


def _piece(language: str, kind: str, chance: np.random.Generator) -> Sound | None:
    if kind == "talk":
        return sentence(language, chance)
    if kind == "prompts":
        text = str(chance.choice(prompts(language)))
        return speaker().say(text, {"en": "en-us", "ko": "ko"}[language], 150)
    folders = _recordings(kind)
    if not folders:
        return None
    folder = folders[int(chance.integers(len(folders)))]
    path = folder[int(chance.integers(len(folder)))]
    return resample(recorded(path), round(RATE * chance.choice(SPEEDS)))


@cache
def _recordings(kind: str) -> tuple[tuple[Path, ...], ...]:
    """Return the folders that a kind is drawn from, each as often as any other."""
    match kind:
        case "people":
            found = (beside("s2i"), beside("gsc/unknown"), read_aloud())
        case "digits":
            found = (beside("fsdd"), beside("gsc/stop"))
        case _:
            return ()
    return tuple(folder for folder in found if folder)


def _kitchen(length: int, chance: np.random.Generator) -> Sound | None:
    """Return a stretch of the recorded kitchen, a little faster or slower, at some loudness."""
    path = RECORDINGS / "s2i" / "kitchen.wav"
    if not path.is_file():
        return None
    sound = resample(WaveFile(path).samples, round(RATE * chance.choice(SPEEDS)))
    start = int(chance.integers(max(1, len(sound) - length)))
    loudness = chance.uniform(0.1, 1.0) / float(np.abs(sound).max())
    return (sound[start : start + length] * loudness).astype(np.float32)
