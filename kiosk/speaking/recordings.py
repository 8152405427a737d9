"""A crew's own recordings of sentences, in the data folder: found by the exact text.

Beside each wave lies who recorded it, when, and the text; an edited sentence has another name, so
nobody hears the old words for it.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterator, Sequence
from dataclasses import asdict, dataclass
from pathlib import Path
from typing import Final

from pydantic import TypeAdapter

from kiosk.home import write_private
from kiosk.languages.notice import Told
from kiosk.languages.words import notice
from kiosk.speaking.prompt_cache import is_whole
from kiosk.speaking.voices import checked_text
from kiosk.speaking.waves import Samples, as_wave

FOLDER: Final = "recordings"
JOINED: Final = "being-played.wav"
"""A prompt with recordings in it, put together while it is said."""
TRIED: Final = "take.wav"
"""A take that its speaker listens to; not the file above, which a kiosk may be playing."""


class RecordingsFailed(Told):
    """A recording cannot be kept, listed or erased; the message says why and how to mend it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Recording:
    """What is known of one recorded sentence."""

    text: str
    language: str
    by: str
    """Id of who recorded it."""
    at_utc: float
    """POSIX seconds."""


_RECORDING: Final = TypeAdapter(Recording)
_LAST_UTC: Final = 4e9
"""In the year 2096; a later time is a spoilt file."""


class Recordings:
    """The recordings of one data folder, for the kiosk's own account only."""

    def __init__(self, folder: Path) -> None:
        """Take a data folder; the folder in it is made with the first recording."""
        self.folder = folder / FOLDER

    def file(self, text: str, language: str) -> Path:
        """Return where the recording of a text lies, or would lie. Raises SpeechFailed."""
        name = hashlib.sha256(checked_text(text).encode()).hexdigest()
        return self.folder / language / f"{name}.wav"

    def find(self, text: str, language: str) -> Path | None:
        """Return the wave of a text; None when there is none that is whole, with its index."""
        file = self.file(text, language)
        return file if file.with_suffix(".json").exists() and is_whole(file) else None

    def keep(self, recording: Recording, samples: Samples) -> Path:
        """Keep samples at the player's rate as the recording of a sentence. When this returns it
        is on the disk, and it is the only one of its text. Raises RecordingsFailed."""
        file = self.file(recording.text, recording.language)
        known = {**asdict(recording), "text": checked_text(recording.text)}
        try:
            file.parent.mkdir(mode=0o700, parents=True, exist_ok=True)
            # First whose it is: nothing may lie here that could not be erased with its speaker.
            write_private(file.with_suffix(".json"), json.dumps(known, ensure_ascii=False))
            write_private(file, as_wave(samples))
        except OSError as failure:
            raise self._failed(failure) from failure
        return file

    def listed(self, language: str) -> tuple[Recording, ...]:
        """Return the recordings of a language, oldest first; those that are not whole are left out.
        Raises RecordingsFailed."""
        found = [one for file, one in self._known(language) if one is not None and is_whole(file)]
        return tuple(sorted(found, key=lambda one: (one.at_utc, one.text)))

    def remove(self, text: str, language: str) -> None:
        """Erase the recording of a text, if there is one. Raises RecordingsFailed."""
        self._remove([self.file(text, language)])

    def erase(self, person: str) -> int:
        """Erase all that a person recorded; return how many sentences that were.

        What lies there without a readable index may be anybody's, and goes with it. Raises
        RecordingsFailed.
        """
        try:
            languages = [one.name for one in self.folder.glob("*") if one.is_dir()]
        except OSError as failure:
            raise self._failed(failure) from failure
        known = [one for language in languages for one in self._known(language)]
        theirs = [file for file, one in known if one is not None and one.by == person]
        nobodys = [file for file, one in known if one is None]
        self._remove([*theirs, *nobodys, self.folder / JOINED, self.folder / TRIED])
        return len(theirs)

    def _known(self, language: str) -> Iterator[tuple[Path, Recording | None]]:
        """Yield every wave that lies or should lie there, with its index if that can be read."""
        try:
            names = {one.stem for one in (self.folder / language).glob("*.*")}
        except OSError as failure:
            raise self._failed(failure) from failure
        for name in sorted(names):
            file = self.folder / language / f"{name}.wav"
            yield file, _read(file.with_suffix(".json"))

    def _remove(self, waves: list[Path]) -> None:
        try:
            for one in waves:
                # The index goes last: it says whose the rest is.
                for suffix in (".wav", ".new", ".json"):
                    one.with_suffix(suffix).unlink(missing_ok=True)
        except OSError as failure:
            raise self._failed(failure) from failure

    def _failed(self, failure: OSError) -> RecordingsFailed:
        why = str(failure.strerror)
        return RecordingsFailed(notice("recording-folder", folder=str(self.folder), reason=why))


def _read(index: Path) -> Recording | None:
    """Return what an index says; None when it cannot be read, or is of another text."""
    try:
        one = _RECORDING.validate_json(index.read_bytes(), strict=True)
    except (OSError, ValueError):
        return None
    same = hashlib.sha256(one.text.encode()).hexdigest() == index.stem
    believable = same and one.language == index.parent.name and 0 <= one.at_utc <= _LAST_UTC
    return one if believable else None


@dataclass(frozen=True, slots=True)
class Standing:
    """How the recordings of a language stand against what is said now."""

    recorded: tuple[Recording, ...]
    """In the order in which the sentences are said."""
    missing: tuple[str, ...]
    """Sentences that the synthesiser says."""
    stale: tuple[Recording, ...]
    """Recorded once and said no longer: the sentence was changed or taken out."""


def standing(recordings: Recordings, said: Sequence[str], language: str) -> Standing:
    """Hold the recordings of a language against the sentences that are said. Raises
    RecordingsFailed."""
    there = {one.text: one for one in recordings.listed(language)}
    exact = {checked_text(text): text for text in said}
    return Standing(
        recorded=tuple(there[text] for text in exact if text in there),
        missing=tuple(text for plain, text in exact.items() if plain not in there),
        stale=tuple(one for text, one in there.items() if text not in exact),
    )
