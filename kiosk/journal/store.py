"""The journal in SQLite: append, read back, verify."""

from __future__ import annotations

import json
import secrets
import sqlite3
from collections.abc import Iterator, Sequence
from pathlib import Path
from typing import Any

import sqlite_utils

from kiosk.engine.events import Event, Fact
from kiosk.journal import chain, codec
from kiosk.journal.shop_facts import STREAM, ShopEvent

FILE = "journal.db"
_SYNCHRONOUS_FULL = 2

_APPEND_ONLY = """
create trigger if not exists journal_never_updated before update on journal
begin select raise(abort, 'the journal is append-only'); end;
create trigger if not exists journal_never_deleted before delete on journal
begin select raise(abort, 'the journal is append-only'); end;
"""


class JournalFailed(Exception):
    """The journal cannot be opened or written; nothing was recorded. The message says why."""


class Journal:
    """One kiosk's journal. Use from one thread."""

    def __init__(self, folder: Path) -> None:
        """Open or make the journal in a folder. Raises JournalFailed."""
        self.file = folder / FILE
        try:
            folder.mkdir(parents=True, exist_ok=True)
            self._db = sqlite_utils.Database(self.file)
            self._db.enable_wal()
            self._db.execute(f"pragma synchronous = {_SYNCHRONOUS_FULL}")
            self._make_tables()
        except (OSError, sqlite3.Error) as error:
            raise JournalFailed(f"{self.file}: {error}") from error
        self.kiosk = str(self._one("select id from kiosk"))

    def _make_tables(self) -> None:
        if not self._db["kiosk"].exists():
            kiosk = self._db.table("kiosk")
            kiosk.insert({"id": secrets.token_hex(8)}, pk="id", strict=True)
        if not self._db["journal"].exists():
            columns = dict.fromkeys(
                ("kiosk", "session", "kind", "utc", "boot", "body", "prev", "hash"), str
            )
            self._db.table("journal").create(
                {"seq": int, "mono_us": int, **columns},
                pk="seq",
                not_null={"mono_us", *columns},
                strict=True,
            )
            self._db.table("journal").create_index(["session", "seq"])
        self._db.executescript(_APPEND_ONLY)

    def _one(self, sql: str) -> Any:
        row = self._db.execute(sql).fetchone()
        return None if row is None else row[0]

    def append(self, session: str, events: Sequence[Event]) -> None:
        """Write a session's events in one transaction; on return they are on the disk.

        Raises JournalFailed, and then none of them was written; ValueError for the shop's stream.
        """
        if session == STREAM:
            raise ValueError(f"no session may be called '{STREAM}': that is the shop's own stream")
        self._append(session, events)

    def append_shop(self, events: Sequence[ShopEvent]) -> None:
        """Write what belongs to no session, as `append` does. Raises JournalFailed."""
        self._append(STREAM, events)

    def _append(self, stream: str, events: Sequence[Event | ShopEvent]) -> None:
        try:
            with self._db.atomic():
                last = self._db.execute(
                    "select seq, hash from journal order by seq desc limit 1"
                ).fetchone()
                seq, before = last or (0, chain.FIRST)
                rows = []
                for event in events:
                    seq += 1
                    row = {
                        "seq": seq,
                        "kiosk": self.kiosk,
                        "session": stream,
                        "kind": type(event.fact).__name__,
                        "utc": codec.stamp(event.at.utc),
                        "mono_us": round(event.at.mono * 1e6),
                        "boot": event.at.boot,
                        "body": codec.body(event),
                        "prev": before,
                    }
                    before = row["hash"] = chain.row_hash(before, row)
                    rows.append(row)
                self._db.table("journal").insert_all(rows)
        except (OSError, sqlite3.Error) as error:
            raise JournalFailed(f"{self.file}: {error}") from error

    def events(self, session: str) -> list[Event]:
        """Return a session's events, in order. Raises codec.UnknownEvent."""
        return [codec.event(*columns) for columns in self._stream(session)]

    def shop_events(self) -> list[ShopEvent]:
        """Return what belongs to no session, in order. Raises codec.UnknownEvent."""
        return [codec.shop_event(*columns) for columns in self._stream(STREAM)]

    def _stream(self, stream: str) -> list[tuple[str, str, int, str, str]]:
        sql = "select kind, utc, mono_us, boot, body from journal where session = ? order by seq"
        return list(self._db.execute(sql, [stream]))

    def sessions(self) -> list[str]:
        """Return the ids of all sessions, oldest first; the shop's stream is none."""
        sql = "select session from journal where session <> ? group by session order by min(seq)"
        return [row["session"] for row in self._db.query(sql, [STREAM])]

    def open_sessions(self) -> list[str]:
        """Return the ids of sessions that neither completed nor were aborted, oldest first."""
        sql = """
            select session from journal where session <> ? group by session
            having sum(kind in ('SessionCompleted', 'SessionAborted')) = 0 order by min(seq)
        """
        return [row["session"] for row in self._db.query(sql, [STREAM])]

    def facts_of_machine(self, machine: str) -> Iterator[tuple[str, str, Fact]]:
        """Yield (session, utc, fact) of the facts that bear on a machine's standing, in order."""
        sql = """
            select session, kind, utc, mono_us, boot, body from journal
            where kind in ('SessionStarted', 'SessionHeld', 'SessionResumed', 'SessionCompleted',
                           'SessionAborted')
              and session in (select session from journal where kind = 'SessionStarted'
                              and json_extract(body, '$.fact.machine') = ?)
            order by seq
        """
        for row in self._db.query(sql, [machine]):
            event = codec.event(row["kind"], row["utc"], row["mono_us"], row["boot"], row["body"])
            yield row["session"], row["utc"], event.fact

    def rows(self) -> Iterator[dict[str, Any]]:
        """Yield all rows as they lie in the table, in the order of `seq`."""
        yield from self._db.query("select * from journal order by seq")

    def head(self) -> str:
        """Return the hash of the last row; 64 zeros while there is none."""
        found = self._one("select hash from journal order by seq desc limit 1")
        return chain.FIRST if found is None else str(found)

    def verify(self) -> chain.Verdict:
        """Check the chain from the first row to the last; also that each body can be read."""
        verdict = chain.verify(self.rows())
        if verdict.whole and verdict.rows:
            for row in self.rows():
                try:
                    json.loads(row["body"])
                except ValueError as error:
                    return chain.Verdict(verdict.rows, verdict.head, row["seq"], str(error))
        return verdict

    def close(self) -> None:
        """Close the file."""
        self._db.close()
