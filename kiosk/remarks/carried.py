"""The sounds of remarks in a backup: carried in a table of its own, checked, taken out again."""

from __future__ import annotations

import contextlib
import sqlite3
from collections import Counter
from contextlib import closing
from pathlib import Path
from typing import Final, TypeGuard

from kiosk.journal.codec import shop_event
from kiosk.journal.shop_facts import STREAM
from kiosk.journal.verify import open_read_only
from kiosk.remarks.sounds import Lies, Sounds, hashed
from kiosk.remarks.told import KINDS, remarks

_MOST_BYTES: Final = 4_000_000
"""Four times the longest remark: what claims to be longer is no sound of ours."""

Tally = Counter[Lies]
"""How many sounds were there, and how many were not, of the remarks that were not erased."""


def pack(sounds: Sounds, tally: Tally, copy: Path) -> None:
    """Put the sounds that a copied journal tells of into the copy; what was erased stays out.

    Raises sqlite3.Error, UnknownEvent.
    """
    with closing(sqlite3.connect(copy)) as into, into:
        wanted = _wanted(into)
        if wanted:
            # A stick may have no such rights to give.
            with contextlib.suppress(OSError):
                copy.chmod(0o600)
            into.execute("create table carried (sha256 text primary key, data blob not null)")
        for sha256 in wanted:
            found = sounds.read(sha256)
            if _count(found, tally):
                into.execute("insert into carried values (?, ?)", [sha256, found])


def unpack(sounds: Sounds | None, tally: Tally, copy: Path) -> None:
    """Take the sounds out of a copied backup and keep them; without a place for them, drop them.

    Raises SoundsFailed, sqlite3.Error, UnknownEvent.
    """
    with closing(sqlite3.connect(copy)) as out:
        if not _carries(out):
            return
        if sounds is not None:
            for sha256 in _wanted(out):
                found = _carried(out, sha256)
                if _count(found, tally):
                    sounds.keep(found)
        out.execute("drop table carried")
        out.execute("vacuum")


def beside(sounds: Sounds, file: Path) -> Tally:
    """Check the sounds that lie beside a journal. Raises sqlite3.Error, UnknownEvent."""
    tally = Tally()
    with closing(open_read_only(file)) as journal:
        for sha256 in _wanted(journal):
            _count(sounds.read(sha256), tally)
    return tally


def within(backup: Path) -> Tally:
    """Check the sounds that a backup carries, if any. Raises sqlite3.Error, UnknownEvent."""
    tally = Tally()
    with closing(open_read_only(backup)) as copy:
        for sha256 in _wanted(copy) if _carries(copy) else ():
            _count(_carried(copy, sha256), tally)
    return tally


def _count(found: bytes | Lies, tally: Tally) -> TypeGuard[bytes]:
    tally[found if isinstance(found, Lies) else Lies.HERE] += 1
    return isinstance(found, bytes)


def _wanted(journal: sqlite3.Connection) -> list[str]:
    """Return the hashes of the sounds that a journal tells of and that were not erased."""
    sql = f"""
        select seq, kind, utc, mono_us, boot, body from journal
        where session = '{STREAM}' and kind in ({", ".join("?" * len(KINDS))}) order by seq
    """  # noqa: S608
    rows = journal.execute(sql, [one.__name__ for one in KINDS])
    told = ((seq, shop_event(*columns)) for seq, *columns in rows)
    found = remarks((seq, event.at.utc, event.fact) for seq, event in told)
    return [one.sha256 for one in found if one.erased is None]


def _carries(copy: sqlite3.Connection) -> bool:
    """True where the table is one; a view in its place might never end."""
    sql = "select 1 from sqlite_master where type = 'table' and name = 'carried' and rootpage > 0"
    return copy.execute(sql).fetchone() is not None


def _carried(copy: sqlite3.Connection, sha256: str) -> bytes | Lies:
    sql = """
        select data from carried
        where sha256 = ? and typeof(data) = 'blob' and length(data) <= ? limit 1
    """
    row = copy.execute(sql, [sha256, _MOST_BYTES]).fetchone()
    return Lies.MISSING if row is None else hashed(row[0], sha256)
