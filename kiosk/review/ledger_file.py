"""The ledger's file: its tables, up to which row of the journal it goes, when it is made anew."""

from __future__ import annotations

import hashlib
import sqlite3
from collections.abc import Iterable, Iterator, Sequence
from contextlib import contextmanager
from pathlib import Path
from typing import Any, Final

import sqlite_utils

from kiosk.journal.chain import FIRST
from kiosk.languages.notice import Told
from kiosk.languages.words import file_failed
from kiosk.procedure.review_rules import DeviationRules

FILE: Final = "ledger.db"
_FORM: Final = "1"
"""Raise it when the tables change, or what is read into them."""
_OTHERS_WAIT_S: Final = 60

CHANGED: Final = "finding in ('replaced', 'none left')"
"""True of a part that was replaced, or should have been."""

_TABLES: Final = f"""
create table if not exists mark (
    kiosk text not null, made_by text not null, seq integer not null, hash text not null
) strict;
create table if not exists session (
    session text primary key, procedure text not null, title text not null,
    version integer not null, machine text not null, practice integer not null,
    workers text not null, begun_utc real not null, last_utc real not null, ended text not null,
    ended_step text not null, text_known integer not null, first_seq integer not null,
    last_seq integer not null, steps integer not null, spoken integer not null,
    settled integer not null, deviations integer not null, heaviest integer not null,
    usual_s real, usual_of integer not null
) strict, without rowid;
create index if not exists session_begun on session (practice, begun_utc, first_seq);
create index if not exists session_before on session (
    machine, begun_utc, first_seq, procedure, practice, last_utc, ended, spoken
);
create index if not exists session_procedure on session (machine, procedure, begun_utc);
create index if not exists session_unsettled on session (session) where not settled;
create index if not exists session_last on session (practice, last_utc);
create table if not exists worker (
    session text not null, place integer not null, worker text not null,
    primary key (session, place)
) strict, without rowid;
create index if not exists worker_session on worker (worker, session);
create table if not exists deviation (
    session text not null, place integer not null, rule text not null, step text not null,
    at_utc real not null, facts text not null, seq integer not null,
    primary key (session, place)
) strict, without rowid;
create table if not exists reading (
    seq integer primary key, session text not null, step text not null, machine text not null,
    practice integer not null, at_utc real not null, quantity text not null, value text not null,
    unit text not null, "limit" text not null, kept integer
) strict;
create index if not exists reading_session on reading (session);
create index if not exists reading_at on reading (practice, at_utc);
create index if not exists reading_of on reading (practice, machine, at_utc);
create table if not exists part (
    seq integer primary key, session text not null, step text not null, machine text not null,
    practice integer not null, at_utc real not null, part text not null, counted integer,
    expected integer, finding text not null, by text not null, remark text not null
) strict;
create index if not exists part_session on part (session);
create index if not exists part_of on part (machine, part, at_utc);
create index if not exists part_changed on part (practice, at_utc) where {CHANGED};
create table if not exists signed (
    seq integer primary key, session text not null, what text not null, by text not null,
    at_utc real not null, remark text not null
) strict;
create index if not exists signed_session on signed (session, seq);
create table if not exists unread (session text primary key, why text not null) strict;
"""


class LedgerFailed(Told):
    """The ledger cannot be opened or written; the journal is untouched. The message says why."""


class LedgerFile:
    """The tables of the ledger, with the rules and the kiosk that they were made for."""

    def __init__(self, folder: Path, kiosk: str, rules: DeviationRules, time_zone: str) -> None:
        """Open or make the file; one that cannot be read is made anew. Raises LedgerFailed."""
        self.file = folder / FILE
        self._kiosk = kiosk
        said = f"{_FORM}\n{time_zone}\n{rules!r}"
        self._made_by = hashlib.sha256(said.encode()).hexdigest()
        try:
            folder.mkdir(parents=True, exist_ok=True)
            try:
                self._open()
            except sqlite3.DatabaseError as error:
                if isinstance(error, sqlite3.OperationalError):
                    raise
                self._db.close()
                for name in ("", "-wal", "-shm"):
                    Path(f"{self.file}{name}").unlink(missing_ok=True)
                self._open()
        except (OSError, sqlite3.Error) as error:
            raise LedgerFailed(file_failed(self.file, error)) from error

    def _open(self) -> None:
        connection = sqlite3.connect(self.file, timeout=_OTHERS_WAIT_S, isolation_level=None)
        self._db = sqlite_utils.Database(connection)
        self._db.enable_wal()
        # What a power cut takes away is read again.
        self._db.execute("pragma synchronous = normal")
        self._db.executescript(_TABLES)

    @contextmanager
    def writing(self) -> Iterator[None]:
        """One transaction; another process waits for its end. Raises LedgerFailed."""
        try:
            self._db.execute("begin immediate")
            try:
                yield
            except BaseException:
                self._db.execute("rollback")
                raise
            self._db.execute("commit")
        except sqlite3.Error as error:
            raise LedgerFailed(file_failed(self.file, error)) from error

    def mark(self) -> tuple[int, str]:
        """Return up to which row the journal was read, and its hash.

        That is 0 where the ledger was made for another kiosk or by other rules.
        """
        found = self.one("select seq, hash, kiosk, made_by from mark")
        if found is None or found[2:] != (self._kiosk, self._made_by):
            return 0, FIRST
        return found[0], found[1]

    def set_mark(self, seq: int, digest: str) -> None:
        """Say that the journal was read up to a row."""
        self.run("delete from mark")
        self.put("mark", [(self._kiosk, self._made_by, seq, digest)])

    def empty(self) -> None:
        """Throw away all that was read."""
        for table in ("mark", "session", "worker", "deviation", "reading", "part", "signed",
                      "unread"):  # fmt: skip
            self.run(f"delete from {table}")  # noqa: S608

    def run(self, sql: str, *args: Any) -> None:
        """Run a statement."""
        self._db.execute(sql, args)

    def one(self, sql: str, *args: Any) -> tuple[Any, ...] | None:
        """Return the first row of a query; None when there is none."""
        row: tuple[Any, ...] | None = self._db.execute(sql, args).fetchone()
        return row

    def all(self, sql: str, args: Iterable[Any] = ()) -> list[tuple[Any, ...]]:
        """Return all rows of a query."""
        return list(self._db.execute(sql, list(args)))

    def put(self, table: str, rows: Sequence[Sequence[Any]]) -> None:
        """Write whole rows of a table; one with the same key is put in the place of the other."""
        if rows:
            marks = ", ".join("?" * len(rows[0]))
            self._db.conn.executemany(f"insert or replace into {table} values ({marks})", rows)  # noqa: S608

    def close(self) -> None:
        """Close the file."""
        self._db.close()
