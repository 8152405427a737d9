"""Prompts as wave files, rendered once: content-addressed, written whole or not at all."""

from __future__ import annotations

import contextlib
import hashlib
import json
import os
import time
import uuid
import wave
from collections.abc import Iterator
from dataclasses import astuple, replace
from pathlib import Path
from typing import Protocol

from kiosk.languages.words import notice
from kiosk.speaking.respelling import respelt
from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import SpeechFailed

MOST_BYTES = 400_000_000
"""About two and a half hours of prompts. Prompts with readings in them make new files for years."""
PART_AGE_S = 3_600.0
"""A half-written file older than this was left by a process that is gone."""
LEAST_HEADER = 44
"""Bytes before the frames of a wave file that has no further chunks."""


class Rendering(Protocol):
    """What the cache needs of a renderer."""

    version: str

    def render(self, speech: Speech, into: Path) -> float:
        """Speak into the wave file `into`, return its seconds; raises SpeechFailed."""
        ...


class PromptCache:
    """A folder of rendered prompts, safe to share between threads and processes."""

    def __init__(self, folder: Path, render: Rendering, most_bytes: int = MOST_BYTES) -> None:
        """Open the cache, making `folder`, and drop the oldest prompts above `most_bytes`.

        Raises SpeechFailed when the folder cannot be made.
        """
        self._folder = folder
        self._render = render
        try:
            folder.mkdir(parents=True, exist_ok=True)
            self._tidy(most_bytes)
        except OSError as failure:
            why = str(failure.strerror)
            raise SpeechFailed(
                notice("prompts-not-kept", folder=str(folder), reason=why)
            ) from failure

    def wave(self, speech: Speech) -> Path:
        """Return the wave file of a speech, rendering it if it is not there or is broken.

        What is rendered is the text as it is spelt for the voice. Raises SpeechFailed with a
        sentence.
        """
        plain = speech.checked()
        plain = replace(plain, text=respelt(plain.text, plain.language))
        path = self._folder / f"{self._address(plain)}.wav"
        if is_whole(path):
            return path
        part = self._folder / f"{path.stem}.{os.getpid()}-{uuid.uuid4().hex}.part"
        try:
            self._render.render(plain, part)
            with part.open("rb") as file:
                os.fsync(file.fileno())
            os.replace(part, path)  # noqa: PTH105 (the same word everywhere for an atomic change)
        except OSError as failure:
            why = str(failure.strerror)
            raise SpeechFailed(
                notice("prompt-not-kept", folder=str(self._folder), reason=why)
            ) from failure
        finally:
            part.unlink(missing_ok=True)
        return path

    def _address(self, speech: Speech) -> str:
        asked = json.dumps([*astuple(speech), self._render.version])
        return hashlib.sha256(asked.encode()).hexdigest()

    def _tidy(self, most_bytes: int) -> None:
        now = time.time()
        for found, part in self._listed("*.part"):
            if now - found.st_mtime > PART_AGE_S:
                part.unlink(missing_ok=True)
        total = 0
        newest_first = sorted(self._listed("*.wav"), key=lambda one: one[0].st_mtime, reverse=True)
        for found, path in newest_first:
            total += found.st_size
            if total > most_bytes:
                path.unlink(missing_ok=True)

    def _listed(self, pattern: str) -> Iterator[tuple[os.stat_result, Path]]:
        for path in self._folder.glob(pattern):
            with contextlib.suppress(FileNotFoundError):  # another process may tidy as well
                yield path.stat(), path


def is_whole(path: Path) -> bool:
    """Tell whether `path` is a wave file with all the frames its header promises."""
    try:
        with wave.open(str(path), "rb") as file:
            promised = file.getnframes() * file.getnchannels() * file.getsampwidth()
            return 0 < promised <= path.stat().st_size - LEAST_HEADER
    except (OSError, EOFError, wave.Error, RuntimeError):
        # The last is what `wave` raises for a chunk that is longer than the file.
        return False
