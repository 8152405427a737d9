"""The data folder: where the journal, the prompts and the site file lie."""

from __future__ import annotations

import os
from pathlib import Path

import platformdirs
from filelock import FileLock, Timeout

_NAME = "brushdown"
SITE_FILE = "site.toml"


class InUse(Exception):
    """Another kiosk works on this data folder; the message says which folder."""


def home_folder() -> Path:
    """Return the folder that KIOSK_HOME names, else the platform's user data folder."""
    named = os.environ.get("KIOSK_HOME")
    return Path(named) if named else Path(platformdirs.user_data_dir(_NAME, appauthor=False))


def write_private(file: Path, data: str | bytes) -> None:
    """Write a file that its owner alone may read: whole and on the disk, or not at all.

    Raises OSError.
    """
    fresh = file.with_suffix(".new")
    fresh.unlink(missing_ok=True)
    handle = os.open(fresh, os.O_WRONLY | os.O_CREAT | os.O_EXCL, 0o600)
    with os.fdopen(handle, "wb") as out:
        out.write(data.encode() if isinstance(data, str) else data)
        out.flush()
        os.fsync(out.fileno())
    fresh.replace(file)
    folder = os.open(file.parent, os.O_RDONLY)
    try:
        os.fsync(folder)
    finally:
        os.close(folder)


def take(folder: Path) -> FileLock:
    """Lock a data folder for this process; the lock ends with it. Raises InUse, OSError."""
    lock = FileLock(folder / "kiosk.lock")
    try:
        folder.mkdir(parents=True, exist_ok=True)
        lock.acquire(timeout=0)
    except Timeout as error:
        raise InUse(f"another kiosk is working in {folder}; close it first") from error
    except OSError as error:
        mend = "make it writable, or name another folder in KIOSK_HOME"
        raise OSError(f"the data folder {folder} cannot be written ({error}); {mend}") from error
    return lock
