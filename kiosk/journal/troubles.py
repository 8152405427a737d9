"""Why the journal could not be opened or written, told with what mends it."""

from __future__ import annotations

import errno
import sqlite3
from pathlib import Path

from kiosk.languages.notice import Notice
from kiosk.languages.words import notice

_FULL = frozenset({sqlite3.SQLITE_FULL})
_READ_ONLY = frozenset({sqlite3.SQLITE_READONLY, sqlite3.SQLITE_PERM, sqlite3.SQLITE_AUTH})
_BUSY = frozenset({sqlite3.SQLITE_BUSY, sqlite3.SQLITE_LOCKED})
_DAMAGED = frozenset({sqlite3.SQLITE_CORRUPT, sqlite3.SQLITE_NOTADB})
_PRIMARY = 0xFF
"""An extended result code of SQLite has the primary one in its lowest byte (sqlite.org/rescode)."""


class Moved(OSError):
    """The open files lie no more where they were opened."""


class Swallowed(OSError):
    """What was written is not there."""


def trouble_of(file: Path, error: Exception) -> Notice:
    """Return what is wrong with the journal's file, and what to do about it."""
    told = {"file": str(file)}
    reason = {"reason": str(error)}
    code = getattr(error, "sqlite_errorcode", None)
    primary = None if code is None else code & _PRIMARY
    number = error.errno if isinstance(error, OSError) else None
    if isinstance(error, Moved):
        return notice("journal-moved", **told, log=f"{file.name}-wal")
    if isinstance(error, Swallowed):
        return notice("journal-swallowed", **told)
    if primary in _FULL or number in (errno.ENOSPC, errno.EDQUOT):
        return notice("journal-full", **told)
    if primary in _READ_ONLY or number in (errno.EACCES, errno.EPERM, errno.EROFS):
        return notice("journal-read-only", **told, **reason)
    if primary in _BUSY:
        return notice("journal-busy", **told)
    if primary in _DAMAGED or isinstance(error, UnicodeDecodeError):
        return notice("journal-damaged", **told, **reason)
    return notice("journal-failed", **told, **reason)
