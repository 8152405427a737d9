"""The journal in SQLite: append, read back, verify."""

from __future__ import annotations

import secrets
import sqlite3
from collections.abc import Callable, Sequence
from pathlib import Path

import sqlite_utils

from kiosk.engine.events import Event
from kiosk.journal import chain, codec
from kiosk.journal.guards import GUARDS
from kiosk.journal.indexes import INDEXES
from kiosk.journal.queries import Queries
from kiosk.journal.shop_facts import STREAM, ShopEvent
from kiosk.journal.troubles import Moved, Swallowed, trouble_of
from kiosk.journal.verify import check
from kiosk.languages.notice import Told
from kiosk.languages.words import notice

FILE = "journal.db"
_SYNCHRONOUS_FULL = 2

_ENDS = frozenset({"SessionCompleted", "SessionAborted"})


class JournalFailed(Told):
    """The journal cannot be opened or written; nothing was recorded. The message says why."""


class GoneOn(JournalFailed):
    """Somebody else has gone on with the session meanwhile; nothing was recorded."""


class Journal(Queries):
    """One kiosk's journal. Use from one thread."""

    def __init__(self, folder: Path, name: str = FILE) -> None:
        """Open or make the journal in a folder. Raises JournalFailed."""
        self.file = folder / name
        try:
            folder.mkdir(parents=True, exist_ok=True)
            self._db = sqlite_utils.Database(self.file)
            self._db.enable_wal()
            self._db.execute(f"pragma synchronous = {_SYNCHRONOUS_FULL}")
            self._make_tables()
        except (OSError, sqlite3.Error, UnicodeDecodeError) as error:
            # The last comes of an error of SQLite's that quotes the damaged bytes.
            raise JournalFailed(trouble_of(self.file, error)) from error
        self.kiosk = str(self._one("select id from kiosk order by rowid desc limit 1"))
        self._files = self._lying()
        self.trouble = ""
        """Name of the message for what is wrong with how it is kept; empty when nothing is."""
        self.after_end: Callable[[], None] | None = None
        """Called when a session's end is on the disk; must not raise."""

    def _make_tables(self) -> None:
        self._db.table("kiosk").create({"id": str}, pk="id", strict=True, if_not_exists=True)
        if self._one("select count(*) from kiosk") == 0:
            # A power cut may have come between the table and its first row.
            self._db.table("kiosk").insert({"id": secrets.token_hex(8)})
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
        columns = {"digest": str, "text": str}
        self._db.table("walked").create(
            columns, pk="digest", not_null={"text"}, strict=True, if_not_exists=True
        )
        self._db.executescript(GUARDS + INDEXES)

    def begin_kiosk(self, kiosk: str) -> None:
        """Go on under another kiosk's id. Its first row must be a KioskMoved."""
        self._db.table("kiosk").insert({"id": kiosk})
        self.kiosk = kiosk

    def append(self, session: str, events: Sequence[Event], after: int | None = None) -> int:
        """Write a session's events in one transaction; on return they are on the disk.

        Returns the number of the last row. `after` is that of the session's last row as the caller
        knows it, 0 for none: no other may follow it unseen. Raises JournalFailed, and GoneOn when
        one does, and then none of the events was written; ValueError for the shop's stream, and for
        a name with what cannot be printed, as a line feed: the chain's hashes rely on that.
        """
        if session == STREAM or not session.isprintable():
            raise ValueError(f"no session may be called {session!r}: not as the shop's own stream")
        return self._append(session, events, after)

    def keep_text(self, digest: str, text: str) -> None:
        """Keep the text that sessions walk, once; their rows name it by its digest.

        Raises JournalFailed.
        """
        try:
            self._db.execute("insert or ignore into walked values (?, ?)", [digest, text])
        except (OSError, sqlite3.Error) as error:
            raise JournalFailed(trouble_of(self.file, error)) from error

    def append_shop(self, events: Sequence[ShopEvent]) -> None:
        """Write what belongs to no session, as `append` does. Raises JournalFailed."""
        self._append(STREAM, events)

    def _append(
        self, stream: str, events: Sequence[Event | ShopEvent], after: int | None = None
    ) -> int:
        try:
            self._look_for_files()
            # Reading the last row and writing the next is one step: another process waits for it.
            self._db.conn.execute("begin immediate")
            with self._db.conn:
                if after is not None and self.last_of(stream) != after:
                    raise GoneOn(notice("journal-two-kiosks", folder=str(self.file.parent)))
                seq, before = self.mark()
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
                if self.mark() != (seq, before):
                    # A trigger that is none of ours can swallow a row and raise no error.
                    raise Swallowed
        except (OSError, sqlite3.Error) as error:
            raise JournalFailed(trouble_of(self.file, error)) from error
        if self.after_end and any(type(event.fact).__name__ in _ENDS for event in events):
            self.after_end()
        return seq

    def _lying(self) -> tuple[tuple[int, int], ...]:
        """Tell which files lie at the journal's two places. Raises OSError."""
        log = self.file.with_name(f"{self.file.name}-wal")
        return tuple((one.st_dev, one.st_ino) for one in (self.file.stat(), log.stat()))

    def _look_for_files(self) -> None:
        """Raise Moved when the open files lie there no more: what is written would go with them.

        SQLite itself does not look.
        """
        try:
            there = self._lying() == self._files
        except FileNotFoundError:
            there = False
        if not there:
            raise Moved

    def verify(self) -> chain.Verdict:
        """Check the chain from the first row to the last; also that each body can be read."""
        return check(self.file).verdict

    def close(self) -> None:
        """Close the file."""
        self._db.close()
