"""What was due and what is due next, from the ledger."""

from __future__ import annotations

from collections.abc import Collection, Iterable, Sequence
from dataclasses import dataclass
from datetime import date, timedelta
from typing import Any

from kiosk.engine.commands import Finding
from kiosk.procedure.load import Library
from kiosk.procedure.review_rules import DeviationRules, Interval, Schedule
from kiosk.procedure.site import Machine, Site
from kiosk.review import ledger_rows as rows
from kiosk.review.deviations import Deviation, in_order, schedule_deviations
from kiosk.review.intervals import next_due
from kiosk.review.ledger_file import LedgerFile
from kiosk.review.record import Ended
from kiosk.review.results import Entered, heads_of
from kiosk.review.sampling import Sampling, samplings, soonest
from kiosk.review.schedule import DAILY, Due, Duty, Kept, daily, kept
from kiosk.review.schedule import in_order as by_time
from kiosk.trade.code_dates import day_of, site_zone


@dataclass(frozen=True, slots=True)
class DueBook:
    """The schedule of a site, asked of the sessions in the ledger."""

    file: LedgerFile
    site: Site
    library: Library
    rules: DeviationRules
    schedule: Schedule

    def kept(
        self, first: date, last: date, now_utc: float, *, practice: bool,
        duties: Collection[Duty] = DAILY,
    ) -> tuple[Kept, ...]:  # fmt: skip
        """Return the daily work due on some business days, and what became of it.

        Nothing was due before the first session of the site. Raises BadTime.
        """
        begun = self._one("select min(begun_utc) from session where practice = ?", practice)
        if begun is None:
            return ()
        first = max(first, day_of(begun, site_zone(self.site.time_zone)) - timedelta(days=1))
        # Whether a day check was missed is told by what else was walked on its day.
        needed = DAILY if Duty.CHECK in duties else duties
        dues = daily(self.site, self.library, self.schedule, first, self._after(last), needed)
        asked = {
            one.id
            for one in dues
            if one.duty in duties and one.day <= last and one.until_utc >= begun
        }
        sessions = self._sessions(dues, practice=practice)
        found = kept(dues, sessions, now_utc, practice=practice)
        return tuple(one for one in found if one.due.id in asked)

    def _after(self, last: date) -> date:
        """Return the next business day: its sessions must not be taken for those of the last."""
        following = last + timedelta(days=1)
        while self.site.closed(following):
            following += timedelta(days=1)
        return following

    def _sessions(self, dues: Sequence[Due], *, practice: bool) -> list[rows.Short]:
        """Return the sessions that may count, and of each machine the last one before them."""
        if not dues:
            return []
        since = min(one.claim_utc for one in dues)
        columns = f"select {rows.SHORT} from session where practice = ?"  # noqa: S608
        found = self.file.all(f"{columns} and begun_utc >= ?", [practice, since])
        for machine in self.site.machines:
            sql = f"{columns} and machine = ? and begun_utc < ? order by begun_utc desc limit 1"
            found += self.file.all(sql, [practice, machine.id, since])
        return [rows.short_of(row) for row in found]

    def samplings(
        self, entered: Iterable[Entered], now_utc: float, *, practice: bool
    ) -> tuple[Sampling, ...]:
        """Return when each head must be sampled next, and when it last was."""
        named = self.schedule.samples
        marks = ", ".join("?" * len(named))
        sql = f"""
            select {rows.SHORT} from session
            where machine = ? and procedure in ({marks}) and +practice = ?
        """  # noqa: S608
        sessions = [
            rows.short_of(row)
            for machine in self.site.machines
            for row in self.file.all(sql, [machine.id, *named, practice])
        ]
        heads = heads_of(self.site, self.library)
        return tuple(samplings(self.site, heads, named, sessions, entered, now_utc))

    def spaced(self, now_utc: float, *, practice: bool) -> tuple[Kept, ...]:
        """Return what is due next of the schedule's intervals, on each machine."""
        zone = site_zone(self.site.time_zone)
        found = []
        for one in self.schedule.intervals:
            for machine in self.site.machines:
                if machine.kind == one.machine_kind:
                    sql = "select min(begun_utc) from session where machine = ? and practice = ?"
                    first = self._one(sql, machine.id, practice)
                    done = self._done(one, machine, practice=practice)
                    found.append(next_due(one, machine, done, first, zone, now_utc))
        return tuple(sorted(found, key=lambda kept: by_time(kept.due)))

    def _done(self, one: Interval, machine: Machine, *, practice: bool) -> float | None:
        """Return when an interval was last fulfilled on a machine."""
        if one.procedure is not None:
            sql = """
                select max(last_utc) from session
                where machine = ? and +practice = ? and procedure = ? and ended = ?
            """
            return self._one(sql, machine.id, practice, one.procedure, Ended.COMPLETE)
        sql = """
            select max(at_utc) from part
            where machine = ? and practice = ? and part = ? and finding = ?
        """
        return self._one(sql, machine.id, practice, one.part, Finding.REPLACED)

    def wearing(self, machine: Machine) -> list[str]:
        """Return the parts of a machine that wear."""
        kind = self.library.kinds.get(machine.kind)
        return [] if kind is None else [id_ for id_, part in kind.parts.items() if part.wears]

    def deviations(
        self, first: date, last: date, now_utc: float, *, practice: bool,
        entered: Iterable[Entered] | None,
    ) -> tuple[Deviation, ...]:  # fmt: skip
        """Return what was not done in its time on some business days, and what is overdue now.

        Of the samples that are overdue on a machine one is told.
        """
        found = [
            *self.kept(first, last, now_utc, practice=practice),
            *self.spaced(now_utc, practice=practice),
        ]
        if entered is not None:
            samples = self.samplings(entered, now_utc, practice=practice)
            found += [one.kept for one in soonest(samples)]
        return in_order(schedule_deviations(found, self.rules, self.site))

    def _one(self, sql: str, *args: Any) -> float | None:
        found = self.file.one(sql, *args)
        return None if found is None else found[0]
