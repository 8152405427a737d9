"""What reports are made from, and how they write times, people and machines."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Mapping
from dataclasses import dataclass
from datetime import date, datetime, timedelta
from typing import Any
from zoneinfo import ZoneInfo

from kiosk.journal.store import Journal
from kiosk.languages.words import Words
from kiosk.people.beside import Beside
from kiosk.procedure.load import Library
from kiosk.procedure.model import Text
from kiosk.procedure.plan import Plan
from kiosk.procedure.review_rules import DeviationRules
from kiosk.procedure.site import Site
from kiosk.report.paper import Row, Table
from kiosk.report.rows import Rows
from kiosk.review.finding import time_of
from kiosk.review.ledger import Ledger
from kiosk.review.record import in_zone
from kiosk.review.results import Entered
from kiosk.review.schedule import opening_hours
from kiosk.trade.authorities import Authority
from kiosk.trade.code_dates import site_zone


@dataclass(frozen=True, slots=True)
class Span:
    """Some business days, and the moments between which their work was begun."""

    first: date
    last: date
    from_utc: float
    until_utc: float


@dataclass(frozen=True, slots=True, kw_only=True)
class Desk:
    """One site's records, and the reader's language."""

    site: Site
    library: Library
    rules: DeviationRules
    ledger: Ledger
    """Caught up."""
    rows: Rows
    journal: Journal
    plan_of: Callable[[str], Plan | None]
    """The plan that a session walked; None when its text is not here any more."""
    beside: Beside
    """Names of those who are no longer on the site's list, and the texts of remarks."""
    results: tuple[Entered, ...]
    """Laboratory results in force."""
    authority: Authority | None
    """By whose limits results are judged; None when none was named."""
    words: Words
    now_utc: float

    def say(self, name: str, **args: Any) -> str:
        """Return a message of a report. Raises MissingMessage."""
        return self.words.say(f"report-{name}", **args)

    def text(self, text: Text, otherwise: str = "") -> str:
        """Return a text in the reader's language; what stands otherwise when it is empty."""
        return self.words.text(text) if text else otherwise

    @property
    def zone(self) -> ZoneInfo:
        """The site's time zone."""
        return site_zone(self.site.time_zone)

    def table(
        self, *, id: str, caption: str, columns: Mapping[str, int], rows: Iterable[Row], empty: str
    ) -> Table:
        """Return a table. `columns` has the middle of each head's message, `report-column-NAME`,
        with the column's share of the width."""
        heads = tuple(self.say(f"column-{name}") for name in columns)
        widths = tuple(columns.values())
        return Table(
            id=id, caption=caption, columns=heads, widths=widths, rows=tuple(rows), empty=empty
        )

    # Times.

    def moment(self, at_utc: float) -> str:
        """Return a moment as the site's clock showed it: `2026-10-12 21:41 CDT`."""
        return f"{in_zone(at_utc, self.zone):%Y-%m-%d %H:%M %Z}"

    def second(self, at_utc: float) -> str:
        """Return a moment to the second."""
        return f"{in_zone(at_utc, self.zone):%Y-%m-%d %H:%M:%S %Z}"

    def clock(self, at_utc: float) -> str:
        """Return the time of day, to the second, with its zone."""
        return f"{in_zone(at_utc, self.zone):%H:%M:%S %Z}"

    def length(self, seconds: float) -> str:
        """Return a length of time, in minutes, or below two minutes in seconds."""
        return self.words.number(time_of(max(0.0, seconds)))

    def span(self, first: date, last: date) -> Span:
        """Return the moments between which the work of some business days was begun.

        A business day changes half-way between closing and opening.
        """
        return Span(first, last, self._begins(first), self._begins(last + timedelta(days=1)))

    def _begins(self, day: date) -> float:
        closed = opening_hours(self.site, day - timedelta(days=1))[1][1]
        opens = opening_hours(self.site, day)[0][0]
        return (closed + opens) / 2

    def day_of(self, at_utc: float) -> date:
        """Return the business day of a moment."""
        day = datetime.fromtimestamp(at_utc, self.zone).date()
        return day if at_utc >= self._begins(day) else day - timedelta(days=1)

    # Names.

    def person(self, person_id: str) -> str:
        """Return a person's name with the id, which alone stands in the journal."""
        here = (one.name for one in self.site.people if one.id == person_id)
        name = next(here, None) or self.beside.name(person_id)
        return person_id if name == person_id else f"{name} ({person_id})"

    def people(self, person_ids: Iterable[str]) -> str:
        """Return some people's names."""
        return ", ".join(self.person(one) for one in person_ids)

    def remark(self, remark: str) -> str:
        """Return the text of a remark of the journal; where it was erased, that it was."""
        if not remark:
            return "–"
        text = self.beside.text(remark)
        return self.say("remark-erased") if text is None else text

    def machine(self, machine_id: str) -> str:
        """Return a machine's name; its id when it is no longer in the site file."""
        return next((x.name for x in self.site.machines if x.id == machine_id), machine_id)

    def procedure(self, procedure_id: str) -> str:
        """Return a procedure's title; its id when it is not here any more."""
        found = self.library.procedures.get(procedure_id)
        return procedure_id if found is None else self.text(found.title, procedure_id)

    def part(self, machine_id: str, part: str) -> str:
        """Return the name of a machine's part; its id when it is not known."""
        kind = next((x.kind for x in self.site.machines if x.id == machine_id), "")
        found = self.library.kinds.get(kind)
        known = None if found is None else found.parts.get(part)
        return part if known is None else self.text(known.name, part)

    def barrel(self, machine_id: str, barrel: str) -> str:
        """Return the name of a machine's head, as it is sampled."""
        return f"{self.machine(machine_id)}, {self.say('head', head=barrel)}"

    def kind(self, kind: str) -> str:
        """Return the trade's name of an analysis or a product of the laboratory."""
        return self.words.say(f"pick-{kind.replace(' ', '-')}")

    def quantity(self, quantity: str) -> str:
        """Return the name of what is measured; as journaled where there are no words for it."""
        return self.words.measured(quantity)
