"""Invented histories with one planted cause each, and what tracing makes of them."""

from __future__ import annotations

from contextlib import closing
from dataclasses import dataclass
from datetime import date, timedelta
from functools import lru_cache
from pathlib import Path

from kiosk.languages.words import words
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.model import Standing
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Site, load_site
from kiosk.rehearsal.history import History, InventedJournal
from kiosk.rehearsal.planting import CAUSES, Plant, Planted
from kiosk.review.clues import Clue
from kiosk.review.results import Entered, heads_of, results
from kiosk.review.signs import Walked, walked
from kiosk.review.trace import Trace, trace
from kiosk.trade.authorities import Analysis, Authority, authority

ROOT = Path(__file__).parents[1]
FIRST = date(2026, 9, 1)
SAMPLE, DAYS = 20, 22
"""Day of the sample that shows the cause, from 0, and days of a history."""


@lru_cache
def library() -> Library:
    return load_library(ROOT / "procedures")


@lru_cache
def site() -> Site:
    return load_site(ROOT / "demo" / "site.toml")


@lru_cache
def usda() -> Authority:
    return authority(load_authorities(), "usda")


@lru_cache
def plans() -> dict[str, tuple[Plan, Plan]]:
    """Machine to its assembly and its breakdown; whether they are proven is tested elsewhere."""
    found = {}
    for machine in site().machines:
        fitted = [
            fit(library(), one, machine, site(), lambda amount, lang: words(lang).quantity(amount))
            for one in library().procedures.values()
            if one.machine_kind == machine.kind
        ]
        ready = next(one for one in fitted if one.during is Standing.GOING_TOGETHER)
        apart = next(one for one in fitted if one.leaves is Standing.DRYING)
        found[machine.id] = (ready, apart)
    return found


@dataclass(frozen=True, slots=True)
class Case:
    """One history, its plant, and the trace of the result that it shows in."""

    plant: Plant
    planted: Planted
    result: Entered
    trace: Trace

    @property
    def cause_first(self) -> bool:
        """True when the first suspect's heaviest sign is the planted cause."""
        first = self.trace.suspects[0]
        return bool(first.signs) and first.signs[0].clue is self.plant.cause

    @property
    def session_first(self) -> bool:
        """True when the first suspect is what was planted: the session, the night, or the part."""
        first = self.trace.suspects[0]
        if self.plant.cause in (Clue.WORN_PART, Clue.MISSED_CLOSE):
            night = not first.session
            return self.cause_first and night == (self.plant.cause is Clue.MISSED_CLOSE)
        return first.session in self.planted.sessions


def history(folder: Path, seed: int, plants: list[Plant], days: int = DAYS) -> History:
    """Invent a history into a folder; its journal is left open."""
    journal = InventedJournal(folder)
    return History(journal, site(), plans(), heads_of(site(), library()), seed, plants, new_from=16)


def read_back(journal: InventedJournal) -> list[Walked]:
    by_digest = {plan.digest: plan for pair in plans().values() for plan in pair}
    found = []
    for session in journal.sessions():
        events = journal.events(session)
        found.append(walked(session, events, by_digest[events[0].fact.digest]))
    return found


def case(folder: Path, seed: int) -> Case:
    """Invent the history of a seed with one cause, and trace the worst result of its sample day."""
    machines = [one.id for one in site().machines]
    cause, rest = CAUSES[seed % len(CAUSES)], seed // len(CAUSES)
    plant = Plant(cause, machines[rest % len(machines)], SAMPLE, rest // len(machines) % 3)
    made = history(folder, seed, [plant])
    with closing(made.journal) as journal:
        invented = made.run(FIRST, DAYS)
        shop = journal.shop_events()
        entered = results(shop, practice=True)
        day = FIRST + timedelta(days=SAMPLE)
        bad = max(
            (
                one
                for one in entered
                if one.of.machine == plant.machine
                and one.of.day == day
                and one.of.analysis is Analysis.TOTAL_COUNT
            ),
            key=lambda one: one.of.amount.value,
        )
        traced = trace(bad, entered, usda(), read_back(journal), shop, site())
    return Case(plant, invented.planted[0], bad, traced)
