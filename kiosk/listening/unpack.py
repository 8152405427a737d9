"""Unpacks a zip that nobody vouches for: inside one folder, plain files only, up to a size."""

from __future__ import annotations

import lzma
import os
import shutil
import stat
import zipfile
import zlib
from collections.abc import Callable
from pathlib import Path, PurePosixPath
from typing import Final

MOST_FILES: Final = 2_000
MOST_BYTES: Final = 8 << 30
MOST_TIMES: Final = 20
"""Unpacked to packed size. A speech model takes two to four times its zip; a bomb a thousand."""
SMALL: Final = 16 << 20
"""Bytes that may be unpacked whatever the size of the zip."""
_CHUNK: Final = 1 << 20
_DAMAGED: Final = (
    zipfile.BadZipFile, zlib.error, lzma.LZMAError, EOFError, NotImplementedError, RuntimeError,
    ValueError,
)  # fmt: skip
_ENCRYPTED: Final = 0x1
_BAD_IN_NAMES: Final = frozenset('\\:*?"<>|\0')
_NOT_WANTED: Final = "__MACOSX"


class BadArchive(Exception):
    """A zip is not unpacked; the message says which entry or what else is wrong with it."""


def unpacked_bytes(archive: Path) -> int:
    """Return the bytes that a zip says it unpacks to. Raises BadArchive, OSError."""
    with _opened(archive) as packed:
        return sum(one.file_size for one in packed.infolist())


def unpack(
    archive: Path, into: Path, progress: Callable[[int, int], None] = lambda _done, _all: None
) -> dict[str, int]:
    """Unpack a zip into a new folder; return the size of each file by its path, all on the disk.

    A single folder around everything is left away. All entries are looked at before the first is
    written. Raises BadArchive (nothing was written, or a part of `into`) and OSError.
    """
    with _opened(archive) as packed:
        wanted = _looked_at(packed, archive.stat().st_size)
        in_all = sum(one.file_size for one in wanted.values())
        into.mkdir(parents=True)
        done = 0
        for path, entry in wanted.items():
            target = into.joinpath(*path.parts)
            target.parent.mkdir(parents=True, exist_ok=True)
            try:
                with packed.open(entry) as source, target.open("xb") as file:
                    while chunk := source.read(_CHUNK):
                        file.write(chunk)
                        done += len(chunk)
                        progress(done, in_all)
                    file.flush()
                    os.fsync(file.fileno())
            except _DAMAGED as error:
                raise BadArchive(f"{archive}: {entry.filename} is damaged ({error})") from error
            if target.stat().st_size != entry.file_size:
                raise BadArchive(f"{archive}: {entry.filename} is not as long as it says")
    for folder in {into, *(path.parent for path in into.rglob("*"))}:
        flush(folder)
    return {str(path): entry.file_size for path, entry in wanted.items()}


def flush(folder: Path) -> None:
    """Put the entries of a folder on the disk, where the platform can."""
    if os.name != "posix":
        return
    opened = os.open(folder, os.O_RDONLY)
    try:
        os.fsync(opened)
    finally:
        os.close(opened)


def clear(folder: Path) -> None:
    """Remove a folder and all in it, if it is there. Raises OSError when it stays."""
    if folder.exists():
        shutil.rmtree(folder)


def _opened(archive: Path) -> zipfile.ZipFile:
    try:
        return zipfile.ZipFile(archive)
    except (zipfile.BadZipFile, EOFError, ValueError, NotImplementedError) as error:
        raise BadArchive(f"{archive} is not a whole zip file ({error})") from error


def _looked_at(packed: zipfile.ZipFile, packed_bytes: int) -> dict[PurePosixPath, zipfile.ZipInfo]:
    entries = packed.infolist()
    if len(entries) > MOST_FILES:
        raise BadArchive(f"the zip holds {len(entries):,} entries, more than {MOST_FILES:,}")
    in_all = sum(one.file_size for one in entries)
    if in_all > min(MOST_BYTES, max(SMALL, packed_bytes * MOST_TIMES)):
        raise BadArchive(
            f"the zip says that it unpacks to {in_all:,} bytes, which no speech model of its size "
            "does"
        )
    found = [
        (path, entry)
        for path, entry in ((_safe(one), one) for one in entries)
        if not entry.is_dir() and path.parts[0] != _NOT_WANTED
    ]
    if not found:
        raise BadArchive("the zip holds no file")
    files = dict(found)
    outer = {path.parts[0] for path in files}
    if len(outer) == 1 and all(len(path.parts) > 1 for path in files):
        files = {PurePosixPath(*path.parts[1:]): entry for path, entry in files.items()}
    spelt = {str(path).casefold() for path in files}
    inner = {str(parent).casefold() for path in files for parent in path.parents}
    if len(spelt) != len(found) or spelt & inner:
        raise BadArchive("the zip holds two entries of one name")
    return files


def _safe(entry: zipfile.ZipInfo) -> PurePosixPath:
    """Return the path of an entry. Raises BadArchive for one that could do harm."""
    name = entry.filename
    path = PurePosixPath(name)
    # orig_filename is the name before the platform's own separator was put right.
    bad = path.is_absolute() or ".." in path.parts or not path.parts
    if bad or _BAD_IN_NAMES & set(name + entry.orig_filename):
        raise BadArchive(f"the zip holds an entry that leads out of its folder: {name!r}")
    kind = stat.S_IFMT(entry.external_attr >> 16)
    if kind not in (0, stat.S_IFREG, stat.S_IFDIR):
        raise BadArchive(f"the zip holds an entry that is no plain file: {name!r}")
    if entry.header_offset < 0:
        raise BadArchive(f"the zip holds an entry that begins before the file: {name!r}")
    if entry.flag_bits & _ENCRYPTED:
        raise BadArchive(f"the zip holds an entry under a password: {name!r}")
    return path
