"""The journal's rows as they lie in their table, by plain SQL: what every figure is followed to."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Any, Final

from kiosk.journal.chain import verify
from kiosk.journal.codec import stamp
from kiosk.journal.shop_facts import STREAM
from kiosk.report.paper import Seqs

ENTERED: Final = "StepEntered"
"""The kind of row that begins a stay in a step."""


@dataclass(frozen=True, slots=True)
class RawRow:
    """One row, its body as text."""

    seq: int
    kiosk: str
    session: str
    kind: str
    utc: str
    mono_us: int
    boot: str
    body: str
    prev: str
    hash: str


_COLUMNS: Final = "seq, kiosk, session, kind, utc, mono_us, boot, body, prev, hash"


class Rows:
    """A journal opened for reading only. Use from one thread."""

    def __init__(self, file: Path) -> None:
        """Open a journal file. Raises sqlite3.Error."""
        self._db = sqlite3.connect(f"{file.resolve().as_uri()}?mode=ro", uri=True)

    def of_session(self, session: str) -> tuple[RawRow, ...]:
        """Return the rows of a session, in order."""
        sql = f"select {_COLUMNS} from journal where session = ? order by seq"  # noqa: S608
        return tuple(RawRow(*row) for row in self._db.execute(sql, [session]))

    def between(self, from_utc: str, until_utc: str) -> Iterator[RawRow]:
        """Yield the rows from a time until another, both as the journal writes them, in order."""
        sql = f"select {_COLUMNS} from journal where utc >= ? and utc < ? order by seq"  # noqa: S608
        for row in self._db.execute(sql, [from_utc, until_utc]):
            yield RawRow(*row)

    def first_bad(self, first: int, last: int) -> int | None:
        """Compute the hashes of some rows again; return the first that is missing or altered."""
        before = self._db.execute("select prev from journal where seq = ?", [first]).fetchone()
        if before is None:
            return first
        sql = "select * from journal where seq between ? and ? order by seq"
        cursor = self._db.cursor()
        cursor.row_factory = sqlite3.Row
        verdict = verify(cursor.execute(sql, [first, last]), before[0], first)
        after = first + verdict.rows
        return verdict.bad_seq if not verdict.whole else None if after > last else after

    def at(self, session: str, at_utc: float) -> Seqs:
        """Return the rows of a session that bear one time."""
        sql = "select seq from journal where session = ? and utc = ? order by seq"
        return tuple(seq for (seq,) in self._db.execute(sql, [session, stamp(at_utc)]))

    def shop(self, *kinds: str) -> tuple[tuple[int, str, dict[str, Any]], ...]:
        """Return row, time and fact of some kinds outside sessions, in order."""
        marks = ", ".join("?" * len(kinds))
        sql = (
            "select seq, utc, body from journal "  # noqa: S608
            f"where session = ? and kind in ({marks}) order by seq"
        )
        return tuple(
            (seq, utc, json.loads(body)["fact"])
            for seq, utc, body in self._db.execute(sql, [STREAM, *kinds])
        )

    def started(self, session: str) -> dict[str, Any]:
        """Return the fact with which a session began; empty when it has no beginning."""
        sql = "select body from journal where session = ? and kind = 'SessionStarted' order by seq"
        found = self._db.execute(sql, [session]).fetchone()
        fact: dict[str, Any] = {} if found is None else json.loads(found[0])["fact"]
        return fact

    def ends(self) -> tuple[str, str] | None:
        """Return the earliest and the latest time of a row; None while there is none."""
        least, most = self._db.execute("select min(utc), max(utc) from journal").fetchone()
        return None if least is None else (least, most)

    def last(self) -> RawRow | None:
        """Return the last row; None while there is none."""
        sql = f"select {_COLUMNS} from journal order by seq desc limit 1"  # noqa: S608
        found = self._db.execute(sql).fetchone()
        return None if found is None else RawRow(*found)

    def close(self) -> None:
        """Close the file."""
        self._db.close()


def stays(rows: tuple[RawRow, ...]) -> tuple[Seqs, ...]:
    """Return the rows of each stay in a step, in the order of `SessionRecord.steps`.

    A stay begins when a step is entered; what comes before the next one belongs to it.
    """
    found: list[list[int]] = []
    for row in rows:
        if row.kind == ENTERED:
            found.append([])
        if found:
            found[-1].append(row.seq)
    return tuple(tuple(one) for one in found)
