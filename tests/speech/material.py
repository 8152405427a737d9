"""What ears should understand: phrases in many voices and noises, and words of people."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

import numpy as np

from kiosk.listening.grammar import Grammar
from tests.speech.clips import RECORDINGS, Sound, of_file
from tests.speech.kitchen import compressor, kitchen, mixed, water
from tests.speech.moments import moments, phrases
from tests.speech.synth import speaker
from tests.speech.talk import TALK

VOICES = {
    "en": (
        ("en-us", 150, 50), ("en-us+f3", 165, 50), ("en-gb-scotland", 150, 50), ("en+f4", 165, 60),
        ("en-us+m3", 175, 35), ("en-029", 150, 50), ("en-gb-x-rp+f2", 140, 45),
    ),
    "ko": (
        ("ko+f5", 165, 50), ("ko+f2", 140, 50), ("ko+f4", 150, 60), ("ko+m3", 135, 40),
        ("ko+m1", 155, 50), ("ko+f3", 130, 50), ("ko", 150, 50),
    ),
}  # fmt: skip
"""Voice of espeak-ng, words a minute, pitch."""
NOISES = {"kitchen": kitchen, "compressor": compressor, "water": water}
LEVELS_DB = (20, 10, 5)
DIGITS = ("zero", "one", "two", "three", "four", "five", "six", "seven", "eight", "nine")


@dataclass(frozen=True, slots=True)
class Said:
    """A phrase as it was said, with the list that it was said to."""

    phrase: str
    sound: Sound
    where: str
    allowed: Grammar


def positives(language: str, every: int, noisy_every: int) -> Iterator[Said]:
    """Yield every `every`th phrase clean, and every `noisy_every`th in each noise.

    Command and hold phrases come first and are all taken when clean; the voices rotate.
    """
    listed = phrases(language)
    words = [one for one in listed if not _is_number(one, listed)]
    numbers = [one for one in listed if _is_number(one, listed)]
    clean = words + numbers[::every]
    voices = VOICES[language]
    for turn, phrase in enumerate(clean):
        voice, rate, pitch = voices[turn % len(voices)]
        yield Said(phrase, speaker().say(phrase, voice, rate, pitch), "clean", listed[phrase])
    number = 0
    for kind in (*NOISES, "talk"):
        for level in LEVELS_DB:
            number += 1
            for turn, phrase in enumerate(clean[number % noisy_every :: noisy_every]):
                voice, rate, pitch = voices[(turn + number) % len(voices)]
                sound = speaker().say(phrase, voice, rate, pitch)
                noise = _noise(kind, len(sound), language, turn)
                yield Said(phrase, mixed(sound, noise, level), f"{kind} {level} dB", listed[phrase])


def _is_number(phrase: str, listed: dict[str, Grammar]) -> bool:
    return type(listed[phrase][phrase]).__name__ == "Read"


def _noise(kind: str, count: int, language: str, seed: int) -> Sound:
    if kind in NOISES:
        return NOISES[kind](count, seed)
    return murmur(count, language, seed)


def murmur(count: int, language: str, seed: int) -> Sound:
    """Return three people talking at once, root mean square 1."""
    chance = np.random.default_rng(seed)
    sum_ = np.zeros(count, dtype=np.float32)
    for _ in range(3):
        one = np.concatenate([sentence(language, chance)[3200:-9600] for _ in range(2)])
        one = np.tile(one, count // len(one) + 1)
        sum_ += np.roll(one, int(chance.integers(0, len(one))))[:count]
    return (sum_ / max(1e-6, float(sum_.std()))).astype(np.float32)


def sentence(language: str, chance: np.random.Generator) -> Sound:
    voice, rate, pitch = VOICES[language][int(chance.integers(len(VOICES[language])))]
    text = str(chance.choice(TALK[language]))
    return speaker().say(text, voice, int(rate * chance.uniform(0.9, 1.2)), pitch)


def people() -> Iterator[Said]:
    """Yield human words of English that stand on a list: yes, no, and digits."""
    question = max((one for _, one in moments("en") if "yes" in one), key=len)
    for word in ("yes", "no"):
        for number, path in enumerate(sorted((RECORDINGS / "gsc" / word).glob("*.wav"))):
            sound = of_file(path)
            yield Said(word, sound, "people", question)
            noise = kitchen(len(sound), number)
            yield Said(word, mixed(sound, noise, 10), "people, kitchen 10 dB", question)
    count = max((one for _, one in moments("en") if "nine" in one and "yes" not in one), key=len)
    for path in sorted((RECORDINGS / "fsdd").glob("[0-9]_*.wav")):
        word = DIGITS[int(path.name[0])]
        if word in count:
            yield Said(word, of_file(path), "people, digits", count)
