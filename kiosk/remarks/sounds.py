"""The sounds of remarks: wave files beside the journal, each named by the hash of its bytes."""

from __future__ import annotations

import hashlib
import os
import re
from collections.abc import Collection
from enum import StrEnum
from pathlib import Path
from typing import Final

from kiosk.languages.notice import Told
from kiosk.languages.words import file_failed

FOLDER: Final = "remarks"
_HASH: Final = re.compile(r"[0-9a-f]{64}")


class SoundsFailed(Told):
    """A sound cannot be written or erased; the message says why."""


class Lies(StrEnum):
    """What lies where a sound should be."""

    HERE = "here"
    MISSING = "missing"
    ALTERED = "altered"
    """Other bytes than those whose hash the journal has."""
    UNREADABLE = "unreadable"


def hashed(data: bytes, sha256: str) -> bytes | Lies:
    """Return a sound whose hash is the one that the journal has."""
    return data if hashlib.sha256(data).hexdigest() == sha256 else Lies.ALTERED


class Sounds:
    """The sounds of one data folder, for the kiosk's own account only."""

    def __init__(self, folder: Path) -> None:
        """Take a data folder; the folder in it is made with the first sound."""
        self.folder = folder / FOLDER

    def file(self, sha256: str) -> Path:
        """Return where a sound lies, or would lie."""
        return self.folder / f"{sha256}.wav"

    def keep(self, data: bytes) -> str:
        """Write a sound so that it is there whole or not at all; return its SHA-256.

        When this returns it is on the disk. Raises SoundsFailed.
        """
        sha256 = hashlib.sha256(data).hexdigest()
        fresh = self.file(sha256).with_suffix(".new")
        try:
            if not self.folder.exists():
                self.folder.mkdir(mode=0o700, parents=True)
                _sync(self.folder.parent)
            fresh.unlink(missing_ok=True)
            with os.fdopen(os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600), "wb") as f:
                f.write(data)
                f.flush()
                os.fsync(f.fileno())
            fresh.replace(self.file(sha256))
            _sync(self.folder)
        except OSError as error:
            raise SoundsFailed(file_failed(self.folder, error)) from error
        return sha256

    def read(self, sha256: str) -> bytes | Lies:
        """Return the bytes whose hash this is, or what lies in their place."""
        if not _HASH.fullmatch(sha256):
            return Lies.MISSING
        try:
            data = self.file(sha256).read_bytes()
        except FileNotFoundError:
            return Lies.MISSING
        except OSError:
            return Lies.UNREADABLE
        return hashed(data, sha256)

    def look(self, sha256: str) -> Lies:
        """Return whether the sound of this hash lies here, with its hash computed anew."""
        found = self.read(sha256)
        return found if isinstance(found, Lies) else Lies.HERE

    def erase(self, sounds: Collection[str]) -> None:
        """Erase sounds, by their hashes; some may be gone already. Raises SoundsFailed."""
        self._remove([one for one in self._files() if one.stem in sounds])

    def erase_strays(self, known: Collection[str], until_utc: float) -> None:
        """Erase what was written before a time and is none of the known sounds: what was left when
        the kiosk died before the journal could tell of it. Raises SoundsFailed.
        """
        try:
            strays = [
                one
                for one in self._files()
                if one.stem not in known and one.stat().st_mtime < until_utc
            ]
        except OSError as error:
            raise SoundsFailed(file_failed(self.folder, error)) from error
        self._remove(strays)

    def _files(self) -> list[Path]:
        """Return the files of sounds, those half written too; nobody else's."""
        try:
            found = list(self.folder.iterdir())
        except FileNotFoundError:
            return []
        except OSError as error:
            raise SoundsFailed(file_failed(self.folder, error)) from error
        ours = (one for one in found if one.suffix in (".wav", ".new"))
        return [one for one in ours if _HASH.fullmatch(one.stem)]

    def _remove(self, files: list[Path]) -> None:
        try:
            for one in files:
                one.unlink(missing_ok=True)
            if files:
                _sync(self.folder)
        except OSError as error:
            raise SoundsFailed(file_failed(self.folder, error)) from error


def _sync(folder: Path) -> None:
    """Have a folder's names on the disk. Raises OSError."""
    opened = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(opened)
    finally:
        os.close(opened)
