"""What a kiosk's journal has to send, read beside the kiosk that writes it."""

from __future__ import annotations

import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from itertools import groupby
from operator import itemgetter
from pathlib import Path
from typing import Any

from kiosk.journal.store import FILE

COLUMNS = (
    "kiosk", "seq", "session", "kind", "utc", "mono_us", "boot", "body", "prev", "hash",
)  # fmt: skip
Row = dict[str, Any]


@dataclass(frozen=True, slots=True)
class Mark:
    """A place in a journal: one row, known by its hash."""

    kiosk: str
    seq: int
    hash: str


class Outgoing:
    """A journal opened for reading only. Use from one thread.

    SQLite shows a reader what is committed and nothing else, and the journal's writer commits with
    `synchronous = full`: a row that is read here is on the disk already. So the head office never
    knows a row that a power cut could still take from the kiosk.
    """

    def __init__(self, folder: Path) -> None:
        """Open the journal in a folder. Raises OSError when there is none."""
        file = (folder / FILE).resolve()
        if not file.exists():
            raise FileNotFoundError(f"there is no journal in {folder} yet: nothing was walked")
        self._db = sqlite3.connect(f"{file.as_uri()}?mode=ro", uri=True)
        self._db.row_factory = sqlite3.Row

    def kiosk(self) -> str:
        """Return the id that the kiosk goes by now."""
        return str(self._db.execute("select id from kiosk order by rowid desc").fetchone()[0])

    def last(self) -> Mark | None:
        """Return the last row's mark; None while there is no row."""
        return self._mark("select kiosk, seq, hash from journal order by seq desc limit 1")

    def mark(self, seq: int) -> Mark | None:
        """Return a row's mark; None when there is no such row."""
        return self._mark("select kiosk, seq, hash from journal where seq = ?", seq)

    def batches(self, after: int, most: int) -> Iterator[list[Row]]:
        """Yield the rows after a seq, at most `most` at a time, those of one kiosk id together."""
        while True:
            sql = f"select {', '.join(COLUMNS)} from journal where seq > ? order by seq limit ?"  # noqa: S608
            rows = [dict(row) for row in self._db.execute(sql, [after, most])]
            if not rows:
                return
            batch = list(next(groupby(rows, itemgetter("kiosk")))[1])
            after = batch[-1]["seq"]
            yield batch

    def _mark(self, sql: str, *values: int) -> Mark | None:
        row = self._db.execute(sql, values).fetchone()
        return None if row is None else Mark(row["kiosk"], row["seq"], row["hash"])

    def close(self) -> None:
        """Close the file."""
        self._db.close()
