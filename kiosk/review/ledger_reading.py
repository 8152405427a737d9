"""Reads into the ledger what the journal has gained."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace
from datetime import date
from typing import Final
from zoneinfo import ZoneInfo

from kiosk.engine.events import SessionStarted
from kiosk.journal.chain import FIRST
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.shop_facts import PartReplaced, SentBack, ShopEvent, SignedOff
from kiosk.journal.store import Journal
from kiosk.procedure.plan import Plan
from kiosk.procedure.review_rules import DeviationRules
from kiosk.review import ledger_rows as rows
from kiosk.review.deviations import Deviation, judged
from kiosk.review.earlier import Earlier, Past
from kiosk.review.ledger_file import LedgerFile
from kiosk.review.ledger_lines import PartLine, Stood
from kiosk.review.record import SessionRecord
from kiosk.review.recording import record_of
from kiosk.trade.code_dates import start_of

PlanOf = Callable[[SessionStarted], Plan | None]
"""Tells the plan that a session walked; None when its text is not here any more."""

Progress = Callable[[int, int], None]
"""Told how many sessions were read, and of how many."""

_AT_ONCE: Final = 100_000
"""Rows of the journal in one transaction: what is lost when the reading is broken off."""


_TOLD_EVERY: Final = 20
"""Sessions."""


class _Told:
    """Counts the sessions that were read, each once."""

    def __init__(self, progress: Progress | None) -> None:
        self.read: set[str] = set()
        self._progress, self._of = progress, -1

    def to_read(self, begun: int) -> None:
        """Say how many sessions begin in what is to be read."""
        self._of = begun if self._of < 0 else self._of

    def one(self, session: str) -> None:
        """Count a session."""
        if session not in self.read:
            self.read.add(session)
            if len(self.read) % _TOLD_EVERY == 0:
                self.tell()

    def tell(self) -> None:
        """Tell how many were read."""
        if self._progress is not None and self.read:
            # Some had begun before: then there are more than begin in what is read.
            self._progress(len(self.read), max(len(self.read), self._of))


class Reader:
    """The journal read session by session."""

    def __init__(
        self,
        file: LedgerFile,
        journal: Journal,
        plan_of: PlanOf,
        rules: DeviationRules,
        zone: ZoneInfo,
    ) -> None:
        self._file, self._journal, self._plan_of = file, journal, plan_of
        self._rules, self._zone = rules, zone
        self._past: dict[str, Past] = {}
        self._known: tuple[int, str] | None = None
        """The mark to which `_past` belongs."""

    def record(self, session: str) -> SessionRecord:
        """Return a session from the journal. Raises UnknownEvent."""
        numbered = self._journal.numbered(session)
        events = [event for _, event in numbered]
        begun = (one.fact for one in events if isinstance(one.fact, SessionStarted))
        plan = next((self._plan_of(fact) for fact in begun), None)
        return record_of(session, events, plan, [seq for seq, _ in numbered])

    def judge(self, record: SessionRecord, now_utc: float) -> tuple[Deviation, ...]:
        """Return what the rules find in a session, each with its row of the journal."""
        return self._judge(record, self._past_of(record.machine).before(record), now_utc)

    def _judge(
        self, record: SessionRecord, before: Earlier, now_utc: float
    ) -> tuple[Deviation, ...]:
        found = judged(record, before, self._rules, now_utc)
        rows_at = _rows_at(record) if found else {}
        return tuple(replace(one, seq=rows_at.get(one.at_utc, 0)) for one in found)

    def catch_up(self, progress: Progress | None = None) -> int:
        """Read the journal up to its end; return how many sessions were read. Raises LedgerFailed.

        The reading may be broken off, by `progress` too: most of what was read is kept.
        """
        last, told = self._journal.mark()[0], _Told(progress)
        # A ledger that is up to date is not locked, so that nobody waits for another's reading.
        while self._file.mark() != self._journal.mark():
            with self._file.writing():
                since = self._since()
                until = min(since + _AT_ONCE, last)
                if since >= last:
                    break
                told.to_read(self._journal.begun(since, last))
                self._known = None
                self._read(since, until, told)
                mark = until, self._journal.hash_at(until)
                self._file.set_mark(*mark)
            self._known = mark
        told.tell()
        return len(told.read)

    def _since(self) -> int:
        """Return up to where the journal was read; 0, and an empty ledger, for another journal."""
        seq, digest = self._file.mark()
        if self._known != (seq, digest):
            # The reading was broken off, or another process has read on.
            self._past.clear()
        if seq and self._journal.hash_at(seq) == digest:
            return seq
        self._past.clear()
        self._file.empty()
        self._file.set_mark(0, FIRST)
        return 0

    def _read(self, since: int, until: int, told: _Told) -> None:
        for session in self._journal.gained(since, until):
            self._read_session(session)
            told.one(session)
        kinds = (SignedOff, SentBack, PartReplaced)
        for seq, event in self._journal.numbered_shop_events(*kinds, since=since, until=until):
            self._read_shop(seq, event)

    def _read_session(self, session: str) -> None:
        try:
            record = self.record(session)
        except UnknownEvent as error:
            self._file.put("unread", [(session, str(error))])
            return
        self._file.run("delete from unread where session = ?", session)
        now = rows.short(record)
        sql = f"select {rows.SHORT} from session where session = ?"  # noqa: S608
        known = self._file.one(sql, session)
        self._past_of(record.machine).put(now)
        self._write(record)
        if known is None or rows.short_of(known) != now:
            self._judge_anew(now)

    def _judge_anew(self, of: rows.Short) -> None:
        """Judge the sessions anew that had this one before them, and were read without it."""
        sql = "select session from session where machine = ? and begun_utc > ?"
        for (session,) in self._file.all(sql, [of.machine, of.begun_utc]):
            self._write(self.record(session))

    def _write(self, record: SessionRecord) -> None:
        file, session = self._file, record.session
        before = self._past_of(record.machine).before(record)
        found = self._judge(record, before, record.last_utc)
        for table in ("worker", "deviation", "reading", "part"):
            file.run(f"delete from {table} where session = ?", session)  # noqa: S608
        file.put("session", [rows.session_row(record, before, found)])
        file.put("worker", [(session, place, one) for place, one in enumerate(record.workers)])
        file.put("deviation", [rows.deviation_row(place, one) for place, one in enumerate(found)])
        file.put("reading", [rows.reading_row(one) for one in rows.readings(record)])
        file.put("part", [rows.part_row(one) for one in rows.parts(record)])

    def _past_of(self, machine: str) -> Past:
        if machine not in self._past:
            sql = f"select {rows.SHORT} from session where machine = ?"  # noqa: S608
            known = self._file.all(sql, [machine])
            self._past[machine] = Past(rows.short_of(row) for row in known)
        return self._past[machine]

    def _read_shop(self, seq: int, event: ShopEvent) -> None:
        match event.fact:
            case SignedOff(session=session, by=by, remark=remark):
                row = (seq, session, Stood.SIGNED_OFF, by, event.at.utc, remark)
                self._file.put("signed", [row])
            case SentBack(session=session, by=by, remark=remark):
                self._file.put(
                    "signed", [(seq, session, Stood.SENT_BACK, by, event.at.utc, remark)]
                )
            case PartReplaced() as fact:
                part = PartLine(
                    seq=seq, session="", step="", machine=fact.machine, practice=fact.practice,
                    at_utc=start_of(date.fromisoformat(fact.day), self._zone), part=fact.part,
                    finding="replaced", by=fact.by, remark=fact.remark,
                )  # fmt: skip
                self._file.put("part", [rows.part_row(part)])
            case _:
                pass


def _rows_at(record: SessionRecord) -> dict[float, int]:
    """Return the row at each moment of a session on which a deviation may stand."""
    found = {record.begun_utc: record.first_seq, record.last_utc: record.last_seq}
    for stay in record.steps:
        found[stay.left_utc] = stay.left_seq
    for stay in record.steps:
        found |= {part.at_utc: part.seq for part in stay.parts}
    found |= {one.at_utc: one.seq for one in record.back_steps}
    found |= {one.at_utc: one.seq for one in record.breaks}
    return found | {one.at_utc: one.seq for one in record.problems}
