"""A shop's journal for the ledger's tests: real walks of all sorts, written as they come in."""

from __future__ import annotations

import random
from collections.abc import Iterable
from contextlib import suppress
from datetime import date, timedelta
from decimal import Decimal
from pathlib import Path

from kiosk.engine import commands as c
from kiosk.engine.events import SessionStarted
from kiosk.engine.state import Mode
from kiosk.journal.shop_facts import ShopEvent, ShopFact
from kiosk.journal.store import Journal
from kiosk.procedure.load_review import load_schedule
from kiosk.procedure.plan import Plan
from kiosk.procedure.review_rules import DeviationRules
from kiosk.procedure.site import Site
from kiosk.review.ledger import Ledger
from tests.proof.walks import TOUCH, VOICE
from tests.unit.review_crew import CLOSES, OPENS, RULES, Shift, library, local, plan, site

FIRST = date(2026, 11, 2)
SCHEDULE = load_schedule(None, library())
KEY = c.Evidence(c.Channel.KEY)
TABLES = ("session", "worker", "deviation", "reading", "part", "signed", "unread")


def plan_for(started: SessionStarted) -> Plan | None:
    known = plan(started.machine, started.procedure)
    return known if known.digest == started.digest else None


def ledger(
    journal: Journal, folder: Path, rules: DeviationRules = RULES, where: Site | None = None
) -> Ledger:
    return Ledger(
        folder, journal, plan_for, site() if where is None else where, library(), rules, SCHEDULE
    )


def caught_up(journal: Journal, folder: Path) -> Ledger:
    made = ledger(journal, folder)
    made.catch_up()
    return made


def write(journal: Journal, *walks: Shift) -> None:
    for walk in walks:
        journal.append(walk.session, walk.events)


def tell(journal: Journal, fact: ShopFact, at_utc: float) -> None:
    journal.append_shop([ShopEvent(c.Instant(at_utc, 0.0, "b0"), KEY, fact)])


def dumped(of: Ledger) -> dict[str, list[tuple]]:
    """All that the ledger holds."""
    return {name: sorted(of._file.all(f"select * from {name}"), key=repr) for name in TABLES}


def all_sorts(chance: random.Random, days: int) -> list[Shift]:
    """Sessions complete, ended early, left open, gone on with late, and on a clock set back."""
    found = []
    for day in range(days):
        for machine in CLOSES:
            for procedures, clock in ((OPENS, "08:30"), (CLOSES, "21:40")):
                at = local(FIRST + timedelta(days=day), clock) + chance.randrange(600)
                if chance.random() < 0.1:
                    at -= 3 * 86_400
                by = TOUCH if chance.random() < 0.3 else None
                pace = chance.choice((5.0, 18.0, 20.0, 40.0))
                walk = Shift(machine, procedures[machine], at, pace, worker=chance.choice("abc"))
                walk.by = walk.by if by is None else by
                found.append(_walked(walk, chance))
    return found


def _walked(walk: Shift, chance: random.Random) -> Shift:
    for _ in range(chance.randrange(5, 60)):
        walk.on()
        if walk.state.mode is Mode.COMPLETE:
            return walk
        if walk.state.mode is Mode.RUNNING and chance.random() < 0.03:
            walk.act(c.CallProblem()).act(c.NameReason("noise"))
        if chance.random() < 0.2:
            with suppress(ValueError):
                walk.act(chance.choice((c.Back(), c.No(), c.SayAgain(), c.Read(Decimal(50)))))
            if chance.random() < 0.5:
                walk.by = TOUCH if walk.by is VOICE else VOICE
    fate = chance.random()
    if fate < 0.15:
        return walk
    if fate < 0.25:
        walk.act(c.Pause()) if walk.state.mode is Mode.RUNNING else None
        return walk.act(c.End()).act(c.Yes())
    if fate < 0.35:
        walk.act(c.Pause() if walk.state.mode is Mode.RUNNING else c.SayAgain(), after=200_000)
    return walk.to_the_end()


def in_pieces(walks: Iterable[Shift], chance: random.Random) -> list[tuple[Shift, slice]]:
    """The walks' events in pieces, each walk's in order and those of two machines mixed."""
    left, pieces = [(walk, 0) for walk in walks], []
    while left:
        place = chance.randrange(min(3, len(left)))
        walk, begun = left.pop(place)
        end = begun + chance.choice((3, 40, 400))
        pieces.append((walk, slice(begun, end)))
        if end < len(walk.events):
            left.insert(place, (walk, end))
    return pieces
