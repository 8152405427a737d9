"""Who reads a figure: the language, the site's clock, and the names of people and machines."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from datetime import date, datetime
from decimal import Decimal
from zoneinfo import ZoneInfo

from kiosk.languages.words import Words
from kiosk.procedure.site import Site
from kiosk.review.ledger import Ledger
from kiosk.review.ledger_lines import PartLine
from kiosk.trade.code_dates import site_zone
from kiosk.trade.units import Quantity


@dataclass(frozen=True, slots=True)
class Reader:
    """The reader of a figure."""

    words: Words
    zone: ZoneInfo
    machines: Mapping[str, str]
    people: Mapping[str, str]

    def machine(self, machine_id: str) -> str:
        """Return a machine's name; its id where the site has it no more."""
        return self.machines.get(machine_id, machine_id)

    def person(self, person_id: str) -> str:
        """Return a person's name; the id where the site has them no more."""
        return self.people.get(person_id, person_id)

    def replaced_by(self, line: PartLine, ledger: Ledger) -> str:
        """Return who replaced a part: who entered it, or who worked in the session."""
        return ", ".join(self.person(one) for one in ledger.replaced_by(line))

    def day(self, at_utc: float) -> date:
        """Return the day on the site's calendar."""
        return datetime.fromtimestamp(at_utc, self.zone).date()

    def moment(self, at_utc: float) -> str:
        """Return a moment as the site's clock showed it."""
        return f"{datetime.fromtimestamp(at_utc, self.zone):%Y-%m-%d %H:%M}"

    def minutes(self, seconds: float) -> str:
        """Return a length in whole minutes."""
        return self.words.quantity(Quantity(Decimal(round(seconds / 60)), "min"))


def reader(site: Site, words: Words) -> Reader:
    """Return a reader of a site's figures."""
    return Reader(
        words,
        site_zone(site.time_zone),
        {one.id: one.name for one in site.machines},
        {one.id: one.name for one in site.people},
    )
