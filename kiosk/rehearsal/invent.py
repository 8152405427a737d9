"""Invent a shop's history into an empty folder, with a cause planted for some of its samples."""

from __future__ import annotations

import random
import tomllib
from collections.abc import Mapping
from contextlib import closing
from datetime import date
from pathlib import Path

from kiosk.clock import SystemClock
from kiosk.procedure.load import Library
from kiosk.procedure.load_review import load_schedule
from kiosk.procedure.model import Standing
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Site
from kiosk.rehearsal.history import History, Invented, InventedJournal, NotInvented, Progress
from kiosk.rehearsal.planting import plants_for
from kiosk.review.results import heads_of
from kiosk.shop import Shop


def invent(
    folder: Path,
    site: Site,
    library: Library,
    first: date,
    days: int,
    seed: int,
    progress: Progress | None = None,
) -> Invented:
    """Invent `days` days from a first one on; the same seed gives the same events.

    Raises NotInvented where a journal lies or the site is no practice, FaultyFile when a procedure
    does not fit or hold, JournalFailed.
    """
    with closing(InventedJournal(folder)) as journal:
        shop = Shop(site, library, journal, SystemClock(), folder)
        # For a story, not for secrets.
        plants = plants_for(site, days, random.Random(seed))  # noqa: S311
        history = History(
            journal, site, plans_of(shop), heads_of(site, library), seed, plants,
            checks=checks_of(shop),
        )  # fmt: skip
        return history.run(first, days, progress)


def many_machines(site_file: str, machines: int) -> str:
    """Return the text of an invented shop's site file with machines added up to a number.

    The added ones are of the first ones' kinds in turn, with a number behind id and name.
    """
    known = tomllib.loads(site_file)["machines"]
    added = [
        f'[[machines]]\nid = "{like["id"]}-{nth}"\nname = "{like["name"]} {nth}"\n'
        f'kind = "{like["kind"]}"\n'
        for n in range(len(known), machines)
        for like, nth in ((known[n % len(known)], n // len(known) + 1),)
    ]
    return "\n".join([site_file, *added])


def checks_of(shop: Shop) -> Mapping[str, Plan]:
    """Return each machine's proven day check, where it has one. Raises FaultyFile."""
    check = load_schedule(library=shop.library).check
    return {
        machine.id: shop.fresh(machine.id, name).plan
        for name in (() if check is None else check.procedures)
        for machine in shop.site.machines
        if shop.library.procedures[name].machine_kind == machine.kind
    }


def plans_of(shop: Shop) -> Mapping[str, tuple[Plan, Plan]]:
    """Return each machine's proven assembly and breakdown. Raises NotInvented, FaultyFile."""
    found: dict[str, tuple[Plan, Plan]] = {}
    for machine in shop.site.machines:
        plans = [
            shop.fresh(machine.id, one.id).plan
            for one in shop.library.procedures.values()
            if one.machine_kind == machine.kind and not one.stays_in_service
        ]
        ready = [one for one in plans if one.leaves is Standing.IN_SERVICE]
        apart = [one for one in plans if one.leaves is Standing.DRYING]
        if not ready or not apart:
            raise NotInvented(
                f"The machine '{machine.id}' has no procedure that leaves it "
                f"'{Standing.DRYING if ready else Standing.IN_SERVICE}': add one, or take the "
                "machine out of the site file."
            )
        found[machine.id] = (ready[0], apart[0])
    return found
