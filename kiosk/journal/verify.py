"""Verifies a journal, a backup or an export: the chain, and what checkpoints say of it.

The file is only read. Whoever suspects it can do the same with nothing of ours: see VERIFY.md.
"""

from __future__ import annotations

import json
import os
import sqlite3
from collections.abc import Iterator
from contextlib import closing
from dataclasses import dataclass, field, replace
from pathlib import Path
from typing import Any

from kiosk.journal import chain
from kiosk.journal.chain import Row, Verdict, Wrong
from kiosk.journal.guards import TRIGGERS

COLUMNS = (*chain.COVERED, "prev", "hash")
KEY_MADE = "SigningKeyMade"
_SQLITE = b"SQLite format 3\0"


@dataclass(slots=True)
class Seen:
    """What a file's rows tell beside the chain, up to the first bad one."""

    first: int = 0
    last: int = 0
    head: str = chain.FIRST
    hashes: dict[int, tuple[str, str]] = field(default_factory=dict)
    """Kiosk and hash of each row that was asked for."""
    kiosk: str = ""
    """The kiosk of the last row."""
    kiosks: dict[str, int] = field(default_factory=dict)
    """Each kiosk with its last row."""
    keys: list[str] = field(default_factory=list)
    """Public keys that the journal names."""


@dataclass(frozen=True, slots=True)
class Checked:
    """A verdict with what was seen on the way to it."""

    verdict: Verdict
    seen: Seen
    unguarded: tuple[str, ...] = ()
    """Triggers that are missing from the file."""


def open_read_only(file: Path) -> sqlite3.Connection:
    """Open a SQLite file so that nothing can be written. Raises sqlite3.Error."""
    address = f"{file.absolute().as_uri()}?mode=ro"
    if not os.access(file.parent, os.W_OK) and not file.with_name(f"{file.name}-wal").exists():
        # On a medium that cannot be written SQLite has no place for its shared memory.
        address += "&immutable=1"
    connection = sqlite3.connect(address, uri=True)
    connection.row_factory = sqlite3.Row
    return connection


def is_journal(file: Path) -> bool:
    """Tell whether a file is a SQLite file, else it may be an export. Raises OSError."""
    with file.open("rb") as data:
        return data.read(len(_SQLITE)) == _SQLITE


def _is_table(connection: sqlite3.Connection) -> None:
    """Raise sqlite3.Error where a view or the like stands for the table: it might never end."""
    sql = "select 1 from sqlite_master where type = 'table' and name = 'journal' and rootpage > 0"
    if connection.execute(sql).fetchone() is None:
        raise sqlite3.DatabaseError("it holds no table 'journal'")


def rows(connection: sqlite3.Connection, since: int = 1) -> Iterator[sqlite3.Row]:
    """Yield rows from a seq on, in order. Raises sqlite3.Error where the file is damaged."""
    sql = f"select {', '.join(COLUMNS)} from journal where seq >= ? order by seq"  # noqa: S608
    yield from connection.execute(sql, [since])


def kiosks(file: Path) -> tuple[str, ...]:
    """Return the ids of the kiosks that a journal names; none where it cannot be read."""
    try:
        with closing(open_read_only(file)) as connection:
            sql = "select id from kiosk union select kiosk from journal"
            return tuple(str(one) for (one,) in connection.execute(sql))
    except (sqlite3.Error, UnicodeDecodeError):
        return ()


def check(file: Path, wanted: frozenset[int] = frozenset()) -> Checked:
    """Check the chain of a file; keep the hashes of the rows `wanted`. Raises OSError."""
    if not is_journal(file):
        return _check_export(file, wanted)
    seen = Seen()
    try:
        with closing(open_read_only(file)) as connection:
            _is_table(connection)
            sql = "select name from sqlite_master where type = 'trigger'"
            there = {name for (name,) in connection.execute(sql)}
            verdict = chain.verify(_watched(rows(connection), seen, wanted))
            if verdict.whole:
                verdict = _readable(connection, verdict)
    except (sqlite3.Error, UnicodeDecodeError, TypeError) as error:
        # Where the table's own description is damaged, anything may lie in a column.
        what = f"the file cannot be read from here on: {error}"
        bad = seen.last + 1
        return Checked(Verdict(seen.last, seen.head, bad, what, Wrong.UNREADABLE), seen)
    return Checked(verdict, seen, tuple(name for name in TRIGGERS if name not in there))


def _check_export(file: Path, wanted: frozenset[int]) -> Checked:
    seen = Seen()
    try:
        exported = _exported(file)
        first = next(exported, None)
        if first is None:
            return Checked(Verdict(0, chain.FIRST), seen)
        watched = _watched(_again(first, exported), seen, wanted)
        verdict = chain.verify(watched, first["prev"], first["seq"])
    except ValueError as error:
        count = seen.last - seen.first + 1 if seen.first else 0
        what = f"the file cannot be read from here on: {error}"
        return Checked(Verdict(count, seen.head, seen.last + 1, what, Wrong.UNREADABLE), seen)
    return Checked(verdict, seen)


def _exported(file: Path) -> Iterator[Row]:
    texts = set(chain.COVERED) - {"seq", "mono_us"} | {"prev", "hash"}
    with file.open(encoding="utf-8") as lines:
        for line in lines:
            try:
                row = json.loads(line)
            except RecursionError as error:
                raise ValueError("a line is no row of a journal") from error
            if not isinstance(row, dict) or not all(isinstance(row.get(x), str) for x in texts):
                raise ValueError("a line is no row of a journal")
            if type(row.get("seq")) is not int or type(row.get("mono_us")) is not int:
                raise ValueError("a line has no whole number as seq and as mono_us")
            yield row


def _again(first: Row, rest: Iterator[Row]) -> Iterator[Row]:
    yield first
    yield from rest


def _watched(found: Iterator[Row], seen: Seen, wanted: frozenset[int]) -> Iterator[Row]:
    """Pass rows on; what is noted of a row is noted once the next one is asked for: it was good."""
    for row in found:
        yield row
        seq = seen.last = row["seq"]
        seen.head = row["hash"]
        seen.first = seen.first or seq
        seen.kiosk = row["kiosk"]
        seen.kiosks[seen.kiosk] = seq
        if seq in wanted:
            seen.hashes[seq] = (seen.kiosk, seen.head)
        if row["kind"] == KEY_MADE:
            seen.keys.append(_key(row["body"]))


def _key(body: str) -> str:
    try:
        return str(json.loads(body)["fact"]["key"])
    except (ValueError, KeyError, TypeError, RecursionError):
        return ""


def _readable(connection: sqlite3.Connection, verdict: Verdict) -> Verdict:
    sql = "select min(seq) from journal where not json_valid(body)"
    bad: Any = connection.execute(sql).fetchone()[0]
    if bad is not None:
        what = "its body is no JSON, though it was written so"
        return replace(verdict, bad_seq=bad, what=what, wrong=Wrong.UNREADABLE)
    # An index that lacks a row hides it from every question but this one.
    said = connection.execute("pragma integrity_check(1)").fetchone()[0]
    if said != "ok":
        what = f"the rows are whole, but the file is not: {said}"
        return replace(verdict, bad_seq=verdict.rows, what=what, wrong=Wrong.UNREADABLE)
    return verdict


def export(file: Path, since: int) -> Iterator[str]:
    """Yield rows from a seq on as lines of JSON, each field as it was hashed.

    Raises sqlite3.Error.
    """
    with closing(open_read_only(file)) as connection:
        for row in rows(connection, since):
            yield json.dumps(dict(row), ensure_ascii=False, separators=(",", ":"))
