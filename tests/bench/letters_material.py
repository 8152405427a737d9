"""What the letters learn from: phrases, sentences near to them and random words, in synthetic
voices and in noise, as the English ear's encoder hears them.

`python -m tests.bench.letters_material FOLDER --part 0 --clips 4000` makes one part; several may be
made at once. The voices are others than those of tests.speech.voices, or the same speakers faster
or slower; no recording of a person is among them. Needs flite, and festival with its voices
us-slt-hts and kdlpc16k (Debian: flite, festival, festvox-us-slt-hts, festvox-kdlpc16k).
"""

from __future__ import annotations

import argparse
import random
import re
from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Final

import ctranslate2
import numpy as np
from numpy.typing import NDArray

from kiosk.engine import commands as c
from kiosk.listening.cleaning import cleaned
from kiosk.listening.ear import RATE
from kiosk.listening.letters import BEYOND, FRAME
from kiosk.listening.mel import log_mel
from kiosk.listening.models import known_models, model_folders, place_of
from kiosk.listening.sources import resample
from kiosk.listening.whisper_ear import WINDOW_S
from kiosk.listening.wording import normal
from tests.bench.ears_figures import lists
from tests.speech.clips import Sound, utterances
from tests.speech.kitchen import compressor, kitchen, mixed, water
from tests.speech.moments import own_phrases, phrases, prompts
from tests.speech.opposites import OPPOSITES
from tests.speech.synth import speaker
from tests.speech.voices import festival, flite

ACCENTS: Final = (
    "en-us", "en-us", "en-us", "en-gb-x-rp", "en-gb-scotland", "en-gb-x-gbclan", "en-gb-x-gbcwmd",
    "en-us-nyc", "en-029",
)  # fmt: skip
THROATS: Final = ("m1", "m2", "m4", "m5", "m6", "m7", "m8", "f1", "f2", "f5")
"""Espeak-ng's variants of a voice. The plain one, f3, f4 and m3 are kept for the judging."""
KEPT: Final = ("en-gb-x-rp", "f2")
NOISES: Final = (kitchen, kitchen, kitchen, water, compressor)
QUIET_SHARE: Final = 0.2
DECIBELS: Final = (4.0, 25.0)
LONGEST_S: Final = 9.0
CLIPS_IN_A_FILE: Final = 1000


@dataclass(frozen=True, slots=True)
class Clip:
    """One utterance as the encoder heard it."""

    text: str
    """In normal form."""
    voice: str
    decibels: float
    """Of the speech above the noise; infinite without noise."""
    frames: NDArray[np.float16]
    """Shape (frames, width)."""


class Texts:
    """Draws what is said: more often what may be said to the kiosk, and what is near to it."""

    def __init__(self) -> None:
        own = own_phrases("en")
        listed = {**dict.fromkeys(own, lists("en")["step"] | own), **phrases("en")}
        self._words = [one for one, on in listed.items() if not isinstance(on[one], c.Read)]
        self._numbers = [one for one, on in listed.items() if isinstance(on[one], c.Read)]
        self._opposites = [one for found in OPPOSITES.values() for one in found]
        self._sentences = [re.findall(r"[a-z']+", normal(one)) for one in prompts("en")]
        said = {word for one in self._words for word in normal(one).split()}
        self._vocabulary = sorted(said.union(*self._sentences))

    def draw(self, chance: random.Random) -> str:
        """Return a text in normal form; '' now and then."""
        kinds: tuple[tuple[float, Callable[[], str]], ...] = (
            (0.34, lambda: chance.choice(self._words)),
            (0.16, lambda: chance.choice(self._numbers)),
            (0.06, lambda: chance.choice(self._opposites)),
            (0.16, lambda: self._near(chance)),
            (0.14, lambda: self._piece(chance)),
            (0.14, lambda: " ".join(chance.choices(self._vocabulary, k=chance.randint(1, 5)))),
        )
        draw = chance.choices([one for _, one in kinds], [share for share, _ in kinds])[0]
        return normal(draw())

    def _near(self, chance: random.Random) -> str:
        """Return a phrase with a word or two changed, added or taken away."""
        words = normal(chance.choice(self._words)).split()
        for _ in range(chance.choice((1, 1, 2))):
            how, place = chance.random(), chance.randrange(len(words))
            if how < 0.6:
                words[place] = chance.choice(self._vocabulary)
            elif how < 0.8:
                words.insert(place, chance.choice(self._vocabulary))
            elif len(words) > 1:
                del words[place]
        return " ".join(words)

    def _piece(self, chance: random.Random) -> str:
        words, length = chance.choice(self._sentences), chance.randint(1, 6)
        at = chance.randrange(max(1, len(words) - length))
        return " ".join(words[at : at + length])


def _formant(text: str, chance: random.Random) -> tuple[str, Sound]:
    accent, throat = KEPT
    while (accent, throat) == KEPT:
        accent, throat = chance.choice(ACCENTS), chance.choice(THROATS)
    pace, pitch = chance.randint(125, 195), chance.randint(30, 70)
    return f"espeak {accent}+{throat}", speaker().say(text, f"{accent}+{throat}", pace, pitch)


def _at_another_speed(
    name: str, say: Callable[[str], Sound]
) -> Callable[[str, random.Random], tuple[str, Sound]]:
    """Return a speaker whose throat grows with slowness, as a slower tape's does."""
    return lambda text, chance: (
        name,
        resample(say(text), round(RATE * chance.uniform(0.85, 1.18))),
    )


SPEAKERS: Final = (
    (0.56, _formant),
    (0.10, _at_another_speed("flite slt", flite("slt"))),
    (0.11, _at_another_speed("flite rms", flite("rms"))),
    (0.11, _at_another_speed("flite awb", flite("awb"))),
    (0.06, _at_another_speed("festival slt", festival("cmu_us_slt_arctic_hts"))),
    (0.06, _at_another_speed("festival ked", festival("ked_diphone"))),
)


class Encoder:
    """The English ear's encoder, on one thread."""

    def __init__(self) -> None:
        folders = model_folders()
        model = next(one for one in known_models("en", folders[-1]) if one.engine == "whisper")
        place = place_of(model, folders)
        if place is None:
            raise SystemExit(f"{model.name} is not here: {model.mend}")
        self._model = ctranslate2.models.Whisper(
            str(place), device="cpu", compute_type="int8", intra_threads=1
        )

    def frames(self, sounds: list[Sound]) -> list[NDArray[np.float16]]:
        """Return the frames of each sound, and a little beyond it."""
        features = np.stack([log_mel(one, WINDOW_S) for one in sounds])
        encoded = np.array(self._model.encode(ctranslate2.StorageView.from_array(features)))
        return [
            one[: len(sound) // FRAME + BEYOND].astype(np.float16)
            for one, sound in zip(encoded, sounds, strict=True)
        ]


def clips(chance: random.Random, count: int) -> Iterator[Clip]:
    """Yield clips of `count` sayings: those in noise with it, and once more with it taken out."""
    texts, encoder = Texts(), Encoder()
    for _ in range(count):
        text = texts.draw(chance)
        if not text:
            continue
        say = chance.choices([one for _, one in SPEAKERS], [share for share, _ in SPEAKERS])[0]
        voice, sound = say(text, chance)
        if len(sound) > LONGEST_S * RATE:
            continue
        decibels = float("inf")
        if chance.random() >= QUIET_SHARE:
            decibels = chance.uniform(*DECIBELS)
            noise = chance.choice(NOISES)(len(sound), chance.randrange(10**6))
            sound = mixed(sound, noise, decibels)
        found = utterances(sound)
        if len(found) != 1:
            continue
        heard = found[0].samples
        sounds = [heard] if decibels == float("inf") else [heard, cleaned(heard)]
        yield from (Clip(text, voice, decibels, one) for one in encoder.frames(sounds))


def write(file: Path, kept: list[Clip]) -> None:
    """Write clips to a file."""
    np.savez(
        file,
        texts=np.array([one.text for one in kept]),
        voices=np.array([one.voice for one in kept]),
        decibels=np.array([one.decibels for one in kept]),
        lengths=np.array([len(one.frames) for one in kept]),
        frames=np.concatenate([one.frames for one in kept]),
    )


def read(folder: Path) -> Iterator[Clip]:
    """Yield the clips of all parts in a folder."""
    for file in sorted(folder.glob("*.npz")):
        with np.load(file, allow_pickle=False) as found:
            rows = (found["texts"], found["voices"], found["decibels"])
            pieces = np.split(found["frames"], np.cumsum(found["lengths"])[:-1])
        for text, voice, decibels, frames in zip(*rows, pieces, strict=True):
            yield Clip(str(text), str(voice), float(decibels), frames)


def main() -> None:
    """Make one part of the material."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("folder", type=Path)
    asked.add_argument("--part", type=int, default=0)
    asked.add_argument("--clips", type=int, default=4000)
    given = asked.parse_args()
    given.folder.mkdir(parents=True, exist_ok=True)
    kept: list[Clip] = []
    for number, clip in enumerate(clips(random.Random(given.part), given.clips), 1):
        kept.append(clip)
        if len(kept) == CLIPS_IN_A_FILE:
            write(given.folder / f"part-{given.part}-{number}.npz", kept)
            print(f"{number} clips", flush=True)
            kept = []
    if kept:
        write(given.folder / f"part-{given.part}-last.npz", kept)


if __name__ == "__main__":
    main()
