"""A crew for the review's tests: real walks through the engine, at a human pace."""

from __future__ import annotations

from datetime import date, datetime
from functools import lru_cache
from pathlib import Path

from kiosk.engine import commands as c
from kiosk.engine.state import Mode
from kiosk.languages.words import words
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.load_review import load_deviation_rules
from kiosk.procedure.plan import Plan, Wait
from kiosk.procedure.site import Site, load_site
from kiosk.review.deviations import Deviation, deviations
from kiosk.review.record import SessionRecord
from kiosk.review.recording import record_of
from kiosk.trade.code_dates import site_zone
from tests.proof.walks import VOICE, Walk, right_act

ROOT = Path(__file__).parents[2]
RULES = load_deviation_rules()
ZONE = site_zone("America/Chicago")
CLOSES = {"patio": "close-twin-gravity", "counter": "close-single-pump"}
CHECKS = {"patio": "check-twin-gravity", "counter": "check-single-pump"}
SAMPLES = {"patio": "sample-twin-gravity", "counter": "sample-single-pump"}
OPENS = {"patio": "open-twin-gravity", "counter": "open-single-pump"}


@lru_cache
def library() -> Library:
    return load_library(ROOT / "procedures")


@lru_cache
def site() -> Site:
    return load_site(ROOT / "demo" / "site.toml")


@lru_cache
def plan(machine: str, procedure: str) -> Plan:
    return fit(
        library(), library().procedures[procedure], site().machine(machine), site(),
        lambda amount, language: words(language).quantity(amount),
    )  # fmt: skip


def local(day: date, clock: str) -> float:
    """POSIX seconds of a moment on the shop's clock."""
    return datetime.fromisoformat(f"{day}T{clock}").replace(tzinfo=ZONE).timestamp()


class Shift(Walk):
    """One session: every answer takes `pace` seconds, and a wait five more than it asks for."""

    def __init__(
        self, machine: str, procedure: str, begun_utc: float, pace: float = 20.0,
        by: c.Evidence = VOICE, worker: str = "p1",
    ) -> None:  # fmt: skip
        super().__init__(plan(machine, procedure))
        self.session = f"{machine}-{procedure}-{begun_utc:.0f}"
        self.now, self.pace, self.by = begun_utc, pace, by
        self.act(c.Start(worker, "en"), after=0.0)

    def act(self, act: c.Act, by: c.Evidence | None = None, after: float | None = None) -> Shift:
        self.do(act, self.by if by is None else by, self.pace if after is None else after)
        return self

    def on(self) -> Shift:
        task = self.plan.step(self.state.step).task
        waits = isinstance(task, Wait) and self.state.mode is Mode.RUNNING
        act = right_act(self.plan, self.state)
        return self.act(act, after=task.seconds + 5 if waits else None)

    def through(self, step: str) -> Shift:
        """Go on until a step has been confirmed."""
        self.to(step)
        while self.state.step == step and self.state.mode is Mode.RUNNING:
            self.on()
        return self

    def record(self, *, text_known: bool = True) -> SessionRecord:
        return record_of(self.session, self.events, self.plan if text_known else None)


def ended(shift: Shift) -> SessionRecord:
    shift.to_the_end()
    return shift.record()


def judged(
    record: SessionRecord, *history: SessionRecord, now: float | None = None
) -> tuple[Deviation, ...]:
    """All deviations of a record, an hour after its last event."""
    return deviations(record, history, RULES, record.last_utc + 3600 if now is None else now)


def rules_of(*found: Deviation) -> list[str]:
    return sorted(one.rule for one in found)
