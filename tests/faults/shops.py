"""The invented shop, whose sessions are walked by a careful worker and read by everything."""

from __future__ import annotations

from contextlib import closing
from functools import lru_cache
from pathlib import Path

from kiosk.clock import Clock
from kiosk.engine import commands as c
from kiosk.journal.codec import stamp
from kiosk.journal.store import Journal
from kiosk.journal.telling import event_line, session_line
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.site import Site
from kiosk.rehearsal.worker import answer
from kiosk.session import Session
from kiosk.shop import Shop
from tests.faults.judging import ROOT, SITE, TOUCH

PROCEDURES = ROOT / "procedures"
MACHINE, PROCEDURE = "patio", "close-twin-gravity"


@lru_cache
def library() -> Library:
    """Load what is shipped."""
    return load_library(PROCEDURES)


def shop(folder: Path, clock: Clock, site: Site = SITE, known: Library | None = None) -> Shop:
    """Return the invented shop, its journal opened."""
    return Shop(site, known or library(), Journal(folder), clock, folder)


def begin(of: Shop, worker: str = "p3") -> Session:
    """Begin to close a machine."""
    session = of.fresh(MACHINE, PROCEDURE)
    press(session, c.Start(worker, "en"))
    return session


def press(session: Session, act: c.Act) -> None:
    """Press something that must be taken."""
    outcome = session.do(act, TOUCH)
    assert outcome.events, (act, outcome)


def walk_on(session: Session, clock: object, answers: int = 10_000) -> None:
    """Give careful answers, leaping over waits, until the session is over."""
    for _ in range(answers):
        if session.over:
            return
        act = answer(session)
        if act is None:
            clock.leap(1.0 + (session.seconds_left() or 0.0))  # type: ignore[attr-defined]
            continue
        press(session, act)


def read_all(of: Shop) -> None:
    """Ask everything that reads the journal: board, ledger, lines of the log, faults."""
    of.cards()
    of.due()
    of.faults()
    now = of.clock.now().utc
    with closing(of.ledger()) as ledger:
        ledger.catch_up()
        for line in ledger.lines(practice=True):
            stamp(line.begun_utc)
            ledger.record(line.session)
            ledger.deviations(line.session)
        ledger.eyes_first(now, practice=True, entered=())
    for session in of.journal.sessions():
        events = of.journal.events(session)
        session_line(session, events)
        for event in events:
            event_line(event)
