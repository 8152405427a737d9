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
