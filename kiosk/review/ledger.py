"""The ledger: what the journal says, session by session, ready to be looked up."""

from __future__ import annotations

from collections.abc import Collection, Iterable
from datetime import date, timedelta
from pathlib import Path
from typing import Any

from kiosk.journal.store import Journal
from kiosk.procedure.load import Library
from kiosk.procedure.review_rules import DeviationRules, Schedule
from kiosk.procedure.site import Site
from kiosk.review import ledger_rows as rows
from kiosk.review.deviations import Deviation, in_order
from kiosk.review.ledger_due import DueBook
from kiosk.review.ledger_file import CHANGED, FILE, LedgerFailed, LedgerFile
from kiosk.review.ledger_lines import Count, Line, PartLine, Reading, Signed, Stood, WalkedBy
from kiosk.review.ledger_reading import PlanOf, Progress, Reader
from kiosk.review.record import SessionRecord
from kiosk.review.results import Entered
from kiosk.review.sampling import Sampling
from kiosk.review.schedule import DAILY, Duty, Kept
from kiosk.trade.code_dates import day_of, site_zone

__all__ = ["FILE", "Ledger", "LedgerFailed", "PlanOf", "Progress"]

_DAY_S = 86_400.0


class Ledger:
    """One kiosk's ledger, beside its journal. Use from one thread, as the journal.

    It holds nothing that the journal has not: its file may be deleted, and is made anew. What was
    found in a session is found by the rules at hand now and by the text of the procedure at hand
    when the session was read.
    """

    def __init__(
        self,
        folder: Path,
        journal: Journal,
        plan_of: PlanOf,
        site: Site,
        library: Library,
        rules: DeviationRules,
        schedule: Schedule,
    ) -> None:
        """Open or make the ledger in a folder. Raises LedgerFailed."""
        self._file = LedgerFile(folder, journal.kiosk, rules, site.time_zone)
        self._zone = site_zone(site.time_zone)
        self._reader = Reader(self._file, journal, plan_of, rules, self._zone)
        self._due = DueBook(self._file, site, library, rules, schedule)
        self._rules = {one.id: one for one in rules.rules}

    def catch_up(self, progress: Progress | None = None) -> int:
        """Read what the journal has gained; return how many sessions were read.

        The reading may be broken off: what was read so far is kept. Raises LedgerFailed.
        """
        return self._reader.catch_up(progress)

    # Sessions.

    def lines(
        self,
        *,
        practice: bool,
        machine: str = "",
        worker: str = "",
        procedure: str = "",
        from_utc: float | None = None,
        until_utc: float | None = None,
        unsigned: bool = False,
        older_than: Line | None = None,
        limit: int | None = 50,
    ) -> tuple[Line, ...]:
        """Return sessions begun in a time, the newest first; `older_than` is where a page ended.

        `from_utc` is in the time, `until_utc` is not; POSIX seconds.
        """
        where, given = _where(
            ("s.practice = ?", practice),
            ("s.machine = ?", machine or None),
            ("s.procedure = ?", procedure or None),
            ("s.session in (select session from worker where worker = ?)", worker or None),
            ("s.begun_utc >= ?", from_utc),
            ("s.begun_utc < ?", until_utc),
        )
        if unsigned:
            where += f" and not {rows.SIGNED_OFF}"
        if older_than is not None:
            where += " and (s.begun_utc, s.first_seq) < (?, ?)"
            given += [older_than.begun_utc, older_than.first_seq]
        order = "order by s.begun_utc desc, s.first_seq desc limit ?"
        found = self._file.all(
            f"{rows.LINES} {where} {order}", [*given, -1 if limit is None else limit]
        )
        return tuple(rows.line(row) for row in found)

    def counts(self, *, practice: bool, from_utc: float) -> tuple[Count, ...]:
        """Return how many deviations each session shows that was begun from a moment on."""
        sql = """
            select begun_utc, deviations from session where practice = ? and begun_utc >= ?
            order by begun_utc
        """
        return tuple(map(Count._make, self._file.all(sql, [practice, from_utc])))

    def first(self, worker: str, *, practice: bool, limit: int) -> tuple[Line, ...]:
        """Return the first sessions of a worker, oldest first; of anybody when that is empty."""
        where, given = _where(
            ("s.practice = ?", practice),
            ("s.session in (select session from worker where worker = ?)", worker or None),
        )
        order = "order by s.begun_utc, s.first_seq limit ?"
        found = self._file.all(f"{rows.LINES} {where} {order}", [*given, limit])
        return tuple(rows.line(row) for row in found)

    def line(self, session: str) -> Line:
        """Return one session; KeyError when there is none."""
        found = self._file.all(f"{rows.LINES} where s.session = ?", [session])
        if not found:
            raise KeyError(session)
        return rows.line(found[0])

    def record(self, session: str) -> SessionRecord:
        """Return one session as a supervisor reads it, from the journal. Raises KeyError."""
        self.line(session)
        return self._reader.record(session)

    def unread(self) -> tuple[tuple[str, str], ...]:
        """Return the sessions that this version of the kiosk cannot read, each with the reason."""
        found = self._file.all("select session, why from unread order by session")
        return tuple((session, why) for session, why in found)

    def signed(self, session: str) -> tuple[Signed, ...]:
        """Return what supervisors said about a session, oldest first."""
        sql = "select seq, what, by, at_utc, remark from signed where session = ? order by seq"
        return tuple(
            Signed(seq=seq, session=session, what=Stood(what), by=by, at_utc=at, remark=remark)
            for seq, what, by, at, remark in self._file.all(sql, [session])
        )

    def walked_by(self, *, practice: bool) -> tuple[WalkedBy, ...]:
        """Return who took part in what, and how often, by worker and procedure."""
        # With one 'min' alone, SQLite takes the other columns from the row that has it.
        sql = """
            select worker, procedure, n, begun, last, first_session from (
                select worker, procedure, count(*) as n, min(begun_utc) as begun,
                    session as first_session
                from session join worker using (session) where practice = ?1
                group by worker, procedure
            ) join (
                select worker, procedure, max(begun_utc) as last
                from session join worker using (session) where practice = ?1
                group by worker, procedure
            ) using (worker, procedure) order by worker, procedure
        """
        return tuple(
            WalkedBy(
                worker=worker, procedure=procedure, sessions=count, first_utc=first,
                last_utc=last, first_session=session,
            )
            for worker, procedure, count, first, last, session in self._file.all(sql, [practice])
        )  # fmt: skip

    # What the rules find.

    def deviations(self, session: str, now_utc: float | None = None) -> tuple[Deviation, ...]:
        """Return what the rules find in one session, heaviest first.

        Those of the schedule are not among them. `now_utc` (the session's last event when None)
        matters for a session that is open. Raises KeyError.
        """
        found = self._file.one("select settled from session where session = ?", session)
        if found is None:
            raise KeyError(session)
        if not found[0]:
            record = self._reader.record(session)
            return self._reader.judge(record, record.last_utc if now_utc is None else now_utc)
        return self._stored("d.session = ?", session)

    def deviations_between(
        self, from_utc: float, until_utc: float, now_utc: float, *, practice: bool
    ) -> tuple[Deviation, ...]:
        """Return what the rules find in the sessions begun in a time, heaviest first."""
        within = "s.practice = ? and s.begun_utc >= ? and s.begun_utc < ?"
        given = (practice, from_utc, until_utc)
        sql = f"select session from session s where not settled and {within}"  # noqa: S608
        found = [*self._stored(f"s.settled and {within}", *given)]
        for (session,) in self._file.all(sql, given):
            found += self.deviations(session, now_utc)
        return in_order(found)

    def _stored(self, where: str, *given: str | float) -> tuple[Deviation, ...]:
        sql = f"""
            select s.machine, s.procedure, d.* from session s join deviation d using (session)
            where {where} order by d.session, d.place
        """  # noqa: S608
        return in_order(
            rows.deviation(row, self._rules, machine, procedure)
            for machine, procedure, *row in self._file.all(sql, given)
        )

    # Readings and parts.

    def readings(
        self,
        *,
        practice: bool,
        machine: str = "",
        quantity: str = "",
        session: str = "",
        from_utc: float | None = None,
        until_utc: float | None = None,
    ) -> tuple[Reading, ...]:
        """Return the numbers measured in a time, oldest first."""
        where, given = _where(
            ("practice = ?", practice),
            ("machine = ?", machine or None),
            ("quantity = ?", quantity or None),
            ("session = ?", session or None),
            ("at_utc >= ?", from_utc),
            ("at_utc < ?", until_utc),
        )
        sql = f"select * from reading {where} order by at_utc, seq"  # noqa: S608
        found = self._file.all(sql, given)
        return tuple(rows.reading(row) for row in found)

    def parts(
        self,
        *,
        practice: bool,
        machine: str = "",
        part: str = "",
        from_utc: float | None = None,
        until_utc: float | None = None,
    ) -> tuple[PartLine, ...]:
        """Return the parts counted, looked at or replaced in a time, oldest first."""
        where, given = _where(
            ("practice = ?", practice),
            ("machine = ?", machine or None),
            ("part = ?", part or None),
            ("at_utc >= ?", from_utc),
            ("at_utc < ?", until_utc),
        )
        sql = f"select * from part {where} order by at_utc, seq"  # noqa: S608
        found = self._file.all(sql, given)
        return tuple(rows.part(row) for row in found)

    def wearing(self, *, practice: bool, machine: str = "") -> tuple[PartLine, ...]:
        """Return what tells how parts wear, oldest first; of one machine where it is named.

        These are all replacements, what should have been replaced, and of each wearing part when it
        was first and last looked at: of ten years a few hundred lines.
        """
        where, given = _where(("practice = ?", practice), ("machine = ?", machine or None))
        found = self._file.all(f"select * from part {where} and {CHANGED}", given)  # noqa: S608
        for one in self._due.site.machines:
            if machine in ("", one.id):
                for part in self._due.wearing(one):
                    found += self._ends(one.id, part, practice=practice)
        told = {line.seq: line for line in map(rows.part, found)}
        return tuple(sorted(told.values(), key=lambda line: (line.at_utc, line.seq)))

    def replaced_by(self, line: PartLine) -> tuple[str, ...]:
        """Return the ids of who replaced a part: who entered it, or who walked the session."""
        return (line.by,) if line.by else self.line(line.session).workers

    def _ends(self, machine: str, part: str, *, practice: bool) -> list[tuple[Any, ...]]:
        """Return when a part was first and last looked at."""
        sql = """
            select * from part where machine = ? and part = ? and +practice = ? and finding != ''
            order by at_utc {0}, seq {0} limit 1
        """
        given = [machine, part, practice]
        return [row for order in ("", "desc") for row in self._file.all(sql.format(order), given)]

    # What was due.

    def kept(
        self, first: date, last: date, now_utc: float, *, practice: bool,
        duties: Collection[Duty] = DAILY,
    ) -> tuple[Kept, ...]:  # fmt: skip
        """Return the daily work due on some business days, and what became of it.

        Nothing was due before the first session of the site. Raises BadTime.
        """
        return self._due.kept(first, last, now_utc, practice=practice, duties=duties)

    def samplings(
        self, entered: Iterable[Entered], now_utc: float, *, practice: bool
    ) -> tuple[Sampling, ...]:
        """Return when each head must be sampled next, and when it last was.

        `entered` are the laboratory's results in force.
        """
        return self._due.samplings(entered, now_utc, practice=practice)

    def spaced(self, now_utc: float, *, practice: bool) -> tuple[Kept, ...]:
        """Return what is due next of the schedule's intervals, on each machine."""
        return self._due.spaced(now_utc, practice=practice)

    def schedule_deviations(
        self, first: date, last: date, now_utc: float, *, practice: bool,
        entered: Iterable[Entered] | None,
    ) -> tuple[Deviation, ...]:  # fmt: skip
        """Return what was late, early, left unfinished or never started on some business days, and
        what is overdue now; heaviest first.

        `entered` are the laboratory's results in force; where they cannot be read, None, nothing is
        said of samples.
        """
        return self._due.deviations(first, last, now_utc, practice=practice, entered=entered)

    def eyes_first(
        self, now_utc: float, *, practice: bool, entered: Iterable[Entered] | None,
        days: int = 3, limit: int | None = 50,
    ) -> tuple[Deviation, ...]:  # fmt: skip
        """Return what a supervisor should see first, heaviest first.

        These are the deviations of sessions that were at work in the last days or are open, and
        those of the schedule. A session that was signed off after its last event is left out, one
        that was sent back is not.
        """
        since = now_utc - days * _DAY_S
        recent = f"""{rows.LINES} where s.practice = ? and not {rows.SIGNED_OFF}
            and (s.last_utc >= ? or s.session in (select session from session where not settled))
        """  # noqa: S608
        found = [rows.line(row).session for row in self._file.all(recent, [practice, since])]
        seen = [x for session in found for x in self.deviations(session, now_utc)]
        today = day_of(now_utc, self._zone)
        due = self.schedule_deviations(
            today - timedelta(days=days), today, now_utc, practice=practice, entered=entered
        )
        seen += [one for one in due if not one.session or not self._signed_off(one.session)]
        return in_order(seen)[:limit]

    def _signed_off(self, session: str) -> bool:
        signed = self.line(session).signed
        return signed is not None and signed.what is Stood.SIGNED_OFF

    def close(self) -> None:
        """Close the file."""
        self._file.close()


def _where(*terms: tuple[str, str | float | None]) -> tuple[str, list[str | float]]:
    """Return the condition of those terms that have a value, and the values."""
    used = [(term, value) for term, value in terms if value is not None]
    return "where " + " and ".join(term for term, _ in used), [value for _, value in used]
