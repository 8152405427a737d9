"""What can be asked of the journal's table."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from typing import Any

import sqlite_utils

from kiosk.engine.events import Event, Fact
from kiosk.journal import chain, codec, indexes
from kiosk.journal.shop_facts import STREAM, ShopEvent


class Queries:
    """The reading side of a journal."""

    kiosk: str
    _db: sqlite_utils.Database
    _open: tuple[int, list[str]] = (0, [])
    """Up to which row open sessions were looked for, and those that were found."""

    def _one(self, sql: str) -> Any:
        row = self._db.execute(sql).fetchone()
        return None if row is None else row[0]

    def events(self, session: str) -> list[Event]:
        """Return a session's events, in order. Raises codec.UnknownEvent."""
        return [codec.event(*columns) for _, *columns in self._session(session)]

    def numbered(self, session: str) -> list[tuple[int, Event]]:
        """Return a session's events with the number of their row. Raises codec.UnknownEvent."""
        return [(seq, codec.event(*columns)) for seq, *columns in self._session(session)]

    def shop_events(self, *kinds: type) -> list[ShopEvent]:
        """Return what belongs to no session, in order: all, or facts of some classes.

        Raises codec.UnknownEvent.
        """
        return [one for _, one in self.numbered_shop_events(*kinds)]

    def numbered_shop_events(
        self, *kinds: type, since: int = 0, until: int | None = None
    ) -> list[tuple[int, ShopEvent]]:
        """Return what belongs to no session with the number of its row.

        `since` and `until` bound the rows: after the one, up to the other. Raises
        codec.UnknownEvent.
        """
        index, among = "", ""
        if kinds:
            index = "indexed by journal_shop"
            among = f"and kind in ({', '.join('?' * len(kinds))})"
        sql = f"""
            select seq, kind, utc, mono_us, boot, body from journal {index}
            where session = '{STREAM}' {among} and seq > ? and seq <= ? order by seq
        """  # noqa: S608
        names = [one.__name__ for one in kinds]
        last = self.mark()[0] if until is None else until
        found = self._db.execute(sql, [*names, since, last])
        return [(seq, codec.shop_event(*columns)) for seq, *columns in found]

    def _session(self, session: str) -> Iterator[Any]:
        sql = """
            select seq, kind, utc, mono_us, boot, body from journal where session = ? order by seq
        """
        return iter(self._db.execute(sql, [session]))

    def last_of_person(self, kinds: Sequence[str], person: str) -> ShopEvent | None:
        """Return the last of the shop's facts of some kinds about a person; None without one."""
        sql = f"""
            select kind, utc, mono_us, boot, body from journal indexed by journal_shop
            where session = '{STREAM}' and kind in ({", ".join("?" * len(kinds))})
              and json_extract(body, '$.fact.person') = ?
            order by seq desc limit 1
        """  # noqa: S608
        row = self._db.execute(sql, [*kinds, person]).fetchone()
        return None if row is None else codec.shop_event(*row)

    def walks_done(self, worker: str, procedure: str, *, practice: bool, most: int) -> int:
        """Return how many walks of a procedure that a person began are complete, up to `most`."""
        found = self._db.execute(indexes.WALKS_DONE, [worker, procedure, practice, most])
        return int(found.fetchone()[0])

    def walked(self, machine: str, procedure: str, *, practice: bool, most: int) -> list[str]:
        """Return the ids of the last complete sessions of a procedure, the newest first."""
        given = [machine, procedure, practice, most]
        return [str(row[0]) for row in self._db.execute(indexes.WALKED, given)]

    def recent(
        self, machine: str, *, practice: bool, most: int, procedures: Sequence[str] = ()
    ) -> Iterator[tuple[str, Event, Event]]:
        """Yield the last sessions that began on a machine, the newest first: id, first and last
        event. Among the `most` last ones those of some procedures are taken, or all.

        Raises codec.UnknownEvent.
        """
        last = """
            select kind, utc, mono_us, boot, body from journal where session = ?
            order by seq desc limit 1
        """
        marks = ", ".join("?" * len(procedures))
        among = f"where json_extract(body, '$.fact.procedure') in ({marks})" if procedures else ""
        sql = f"select * from ({indexes.RECENT}) {among} order by seq desc"  # noqa: S608
        begun = self._db.execute(sql, [machine, practice, most, *procedures]).fetchall()
        for _, session, *columns in begun:
            end = self._db.execute(last, [session]).fetchone()
            yield str(session), codec.event(*columns), codec.event(*end)

    def first_begun(self, machine: str, *, practice: bool) -> Event | None:
        """Return the beginning of a machine's first session; None without one.

        Raises codec.UnknownEvent.
        """
        row = self._db.execute(indexes.FIRST_BEGUN, [machine, practice]).fetchone()
        return None if row is None else codec.event(*row)

    def replaced(self) -> Iterator[tuple[Event, Event]]:
        """Yield the confirmations by which a part was replaced in a session, the newest first, each
        after the beginning of its session. Raises codec.UnknownEvent.
        """
        first = """
            select kind, utc, mono_us, boot, body from journal where session = ?
            order by seq limit 1
        """
        for session, *columns in self._db.execute(indexes.REPLACED):
            begun = self._db.execute(first, [session]).fetchone()
            yield codec.event(*begun), codec.event(*columns)

    def sessions(self) -> list[str]:
        """Return the ids of all sessions, oldest first; the shop's stream is none."""
        return [str(row[0]) for row in self._db.execute(indexes.SESSIONS)]

    def open_sessions(self) -> list[str]:
        """Return the ids of sessions that neither completed nor were aborted, oldest first."""
        since, known = self._open
        last = self.mark()[0]
        if 0 < since <= last:
            # All but the newest rows were asked before.
            new = [one for one in self.gained(since, last) if one not in known]
            found = [one for one in (*known, *new) if not self._ended(one)]
        else:
            found = [str(row[0]) for row in self._db.execute(indexes.OPEN_SESSIONS)]
        self._open = last, found
        return list(found)

    def _ended(self, session: str) -> bool:
        return self._db.execute(indexes.ENDED, [session]).fetchone() is not None

    def gained(self, since: int, until: int) -> list[str]:
        """Return the ids of the sessions with rows after `since` up to `until`, oldest first."""
        sql = """
            select session from journal where seq > ? and seq <= ? and session <> ?
            group by session order by min(seq)
        """
        return [str(row[0]) for row in self._db.execute(sql, [since, until, STREAM])]

    def begun(self, since: int, until: int) -> int:
        """Return how many sessions begin after row `since`, up to row `until`."""
        found = self._db.execute(indexes.BEGUN, [since, until]).fetchone()
        return int(found[0])

    def facts_of_machine(self, machine: str, *, practice: bool) -> Iterator[tuple[str, str, Fact]]:
        """Yield (session, utc, fact) of the facts that bear on a machine's standing now, in order.

        They begin where its last session of practice, or of real work, began: what was before it
        has no bearing any more.
        """
        last = self._db.execute(indexes.LAST_BEGUN, [machine, practice]).fetchone()
        if last is None:
            return
        given = [last[0], machine, practice]
        for session, *columns in self._db.execute(indexes.MOVES_SINCE, given):
            yield session, columns[1], codec.event(*columns).fact

    def row_at(self, utc: float) -> int:
        """Return the row after which everything was written at a moment (POSIX seconds) or later,
        as far as the wall clock was never set back; 0 where that is true of all rows.
        """
        moment, low, high = codec.stamp(utc), 0, self.mark()[0]
        sql = "select utc from journal where seq >= ? order by seq limit 1"
        while low < high:
            middle = (low + high + 1) // 2
            (told,) = self._db.execute(sql, [middle]).fetchone()
            low, high = (middle, high) if told < moment else (low, middle - 1)
        return low

    def text(self, digest: str) -> str | None:
        """Return the text that sessions with a digest walked; None when it was not kept."""
        found = self._db.execute("select text from walked where digest = ?", [digest]).fetchone()
        return None if found is None else str(found[0])

    def hash_at(self, seq: int) -> str:
        """Return the hash of a row: 64 zeros for row 0, empty where there is no such row."""
        found = self._db.execute("select hash from journal where seq = ?", [seq]).fetchone()
        return str(found[0]) if found else "" if seq else chain.FIRST

    def rows(self) -> Iterator[dict[str, Any]]:
        """Yield all rows as they lie in the table, in the order of `seq`."""
        yield from self._db.query("select * from journal order by seq")

    def last_of(self, session: str) -> int:
        """Return the number of a session's last row; 0 while it has none."""
        sql = "select max(seq) from journal where session = ?"
        return self._db.execute(sql, [session]).fetchone()[0] or 0

    def head(self) -> str:
        """Return the hash of the last row; 64 zeros while there is none."""
        return self.mark()[1]

    def mark(self) -> tuple[int, str]:
        """Return seq and hash of the last row; 0 and 64 zeros while there is none."""
        sql = "select seq, hash from journal order by seq desc limit 1"
        last: tuple[int, str] | None = self._db.execute(sql).fetchone()
        return last or (0, chain.FIRST)

    @property
    def retired(self) -> bool:
        """True when this kiosk was retired: then nothing can be appended any more."""
        sql = "select kind, kiosk from journal order by seq desc limit 1"
        return bool(self._db.execute(sql).fetchone() == (chain.RETIRED, self.kiosk))
