"""A worker's own words for the kiosk's commands: checked when they are taught, kept as features."""

from __future__ import annotations

import lzma
import os
import zipfile
import zlib
from collections.abc import Iterator, Mapping, Sequence
from pathlib import Path
from tempfile import NamedTemporaryFile
from types import MappingProxyType
from typing import Any, Final
from urllib.parse import quote

import numpy as np
from numpy.typing import NDArray

from kiosk.engine import commands as c
from kiosk.languages.notice import Told
from kiosk.languages.words import notice
from kiosk.listening.ear import Utterance
from kiosk.listening.spot import CLIPPED_SHARE, FAINT_DBFS, clipped_share, dbfs
from kiosk.listening.templates import BANDS, Sample, distances

TEACHABLE: Final[Mapping[str, c.Act]] = MappingProxyType(
    {
        "next": c.Confirm(),
        "yes": c.Yes(),
        "no": c.No(),
        "repeat": c.SayAgain(),
        "problem": c.CallProblem(),
        "back": c.Back(),
        "pause": c.Pause(),
    }
)
"""What can be taught. The phrase of a safety hold cannot."""

SAMPLES: Final = 3
"""How often each word is said when it is taught."""
SHORTEST_S: Final = 0.15
LONGEST_S: Final = 2.0
LOUDEST_ROOM_DB: Final = -25.0
"""The loudest band of the room, below that of the speech: of synthetic words in kitchen noise, -18
at a ratio of 10 dB. What is in the samples is all that the ear will ever know."""
MOST_APART: Final = 0.32
"""Farther from every brother, and the word was said in another way. One person's two takes of a
digit are 0.19 apart (median; 0.25 for nine in ten), a digit and the nearest of the nine others
0.29, any two digits 0.39."""
MARGIN: Final = 0.85
"""The nearest word must be at most so far, as a share of the distance of the second nearest."""

Words = Mapping[str, Sequence[Sample]]
"""Name of a command, with the samples of the worker's word for it."""

_FORMAT: Final = 1
_MOST_BYTES: Final = 4_000_000
"""Unpacked. Three samples each of seven words are some 300 kB."""
_BROKEN: Final = (
    OSError, ValueError, TypeError, LookupError, EOFError, MemoryError, RuntimeError,
    AttributeError, zipfile.BadZipFile, zlib.error, lzma.LZMAError,
)  # fmt: skip
"""What the readers of zip files and of arrays raise for one that was cut, spoiled or made up."""


class BrokenWords(Told):
    """A file of own words that cannot be read; the message says what to do."""


def fault_of(said: Utterance, sample: Sample | None, word: str, words: Words) -> str:
    """Return '' when an utterance will do as one more sample of a word, else the message's name.

    `words` holds what was taken so far, of this word and of the others.
    """
    if sample is None or sample.seconds < SHORTEST_S:
        return "teach-too-short"
    if sample.seconds > LONGEST_S:
        return "teach-too-long"
    if clipped_share(said.samples) > CLIPPED_SHARE:
        return "teach-too-loud"
    if said.speech_rms and dbfs(said.speech_rms) < FAINT_DBFS:
        return "teach-too-faint"
    if float(sample.room.max()) > LOUDEST_ROOM_DB:
        return "teach-too-noisy"
    brothers = words.get(word, ())
    near = float(min(distances(sample, brothers))) if brothers else 0.0
    if near > MOST_APART:
        return "teach-unlike"
    if nearest_other(sample, word, words)[1] < max(near, MOST_APART / 2):
        return "teach-like-another"
    return ""


def nearest_other(sample: Sample, word: str, words: Words) -> tuple[str, float]:
    """Return the other word that a sample comes nearest to, and how near; inf without any."""
    found = {
        other: float(min(distances(sample, samples)))
        for other, samples in words.items()
        if other != word and samples
    }
    nearest = min(found, key=lambda one: found[one], default="")
    return nearest, found.get(nearest, float("inf"))


def understood(words: Words) -> int:
    """Return how many samples come nearer, by the margin, to their brothers than to other words."""
    return sum(
        float(min(distances(one, [*samples[:place], *samples[place + 1 :]])))
        <= MARGIN * nearest_other(one, word, words)[1]
        for word, samples in words.items()
        for place, one in enumerate(samples)
        if len(samples) > 1
    )


def file_of(folder: Path, worker: str, language: str) -> Path:
    """Return where a worker's words for a language lie in the data folder."""
    return folder / "own-words" / f"{quote(worker, safe='')}.{quote(language, safe='')}.npz"


def keep(folder: Path, worker: str, language: str, words: Words) -> Path:
    """Write a worker's words, readable for this user only; return the file. Raises OSError."""
    path = file_of(folder, worker, language)
    path.parent.mkdir(parents=True, exist_ok=True)
    arrays = {"format": np.array(_FORMAT)} | dict(_arrays(words))
    with NamedTemporaryFile(dir=path.parent, delete=False) as file:
        try:
            np.savez_compressed(file, **arrays)  # type: ignore[arg-type]
            file.flush()
            os.fsync(file.fileno())
        except BaseException:
            Path(file.name).unlink()
            raise
    Path(file.name).replace(path)
    return path


def _arrays(words: Words) -> Iterator[tuple[str, NDArray[Any]]]:
    for word, samples in words.items():
        for number, one in enumerate(samples):
            yield f"{word}.{number}.bands", one.bands.astype(np.float16)
            yield f"{word}.{number}.core", np.array(one.core)
            yield f"{word}.{number}.room", one.room.astype(np.float16)


def taught(folder: Path, worker: str, language: str) -> dict[str, list[Sample]]:
    """Return a worker's words; empty when none were taught. Raises BrokenWords."""
    path = file_of(folder, worker, language)
    if not path.exists():
        return {}
    try:
        with path.open("rb") as opened, np.load(opened, allow_pickle=False) as file:
            if sum(one.file_size for one in file.zip.infolist()) > _MOST_BYTES:
                raise ValueError("it is far too large")
            if int(file["format"]) != _FORMAT:
                raise ValueError("another version wrote it")
            there = [word for word in TEACHABLE if f"{word}.0.core" in file]
            return {word: list(_samples(file, word)) for word in there}
    except _BROKEN as error:
        command = f"kiosk voice teach {language} --worker {worker}"
        raise BrokenWords(
            notice("own-words-unreadable", file=str(path), reason=str(error), command=command)
        ) from error


def _samples(file: Mapping[str, NDArray[Any]], word: str) -> Iterator[Sample]:
    number = 0
    while f"{word}.{number}.core" in file:
        bands = file[f"{word}.{number}.bands"].astype(np.float32)
        room = file[f"{word}.{number}.room"].astype(np.float32)
        first, last = (int(one) for one in file[f"{word}.{number}.core"])
        if bands.ndim != 2 or bands.shape[1] != BANDS or room.shape != (BANDS,):
            raise ValueError(f"the sample {number + 1} of '{word}' has another shape")
        if not 0 <= first < last <= len(bands):
            raise ValueError(f"the sample {number + 1} of '{word}' has no speech")
        if not (np.isfinite(bands).all() and np.isfinite(room).all()):
            raise ValueError(f"the sample {number + 1} of '{word}' holds what is no number")
        yield Sample(bands, (first, last), room)
        number += 1


def forget(folder: Path, worker: str, language: str) -> bool:
    """Remove a worker's words; return whether there were any. Raises OSError."""
    path = file_of(folder, worker, language)
    found = path.exists()
    path.unlink(missing_ok=True)
    return found
