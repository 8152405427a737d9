"""The shop as its kiosk knows it: machines, people, procedures, and what the journal says."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from kiosk.clock import Clock
from kiosk.engine.commands import HandOver, Refusal, Start
from kiosk.engine.events import SessionStarted
from kiosk.engine.machine import standing
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.store import Journal, JournalFailed
from kiosk.people.beside import Beside, BesideFailed
from kiosk.people.erase import keep_to_time
from kiosk.people.gate import PinGate
from kiosk.people.may import Crew, Wish, refusal
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import Library
from kiosk.procedure.load_review import load_deviation_rules, load_schedule
from kiosk.procedure.model import Standing, Text
from kiosk.procedure.plan import Plan
from kiosk.procedure.plan_text import as_text, from_text
from kiosk.procedure.site import Machine, Role, Site
from kiosk.proof.proven import require_proof
from kiosk.reckoning.bench import bench
from kiosk.reckoning.calculator import Bench
from kiosk.remarks.sounds import SoundsFailed
from kiosk.review.ledger import Ledger
from kiosk.review.remaining import MOST_WALKS, Left, remaining
from kiosk.review.schedule import BadTime
from kiosk.review.today import Dated, Today, today
from kiosk.session import Session
from kiosk.site_plans import SitePlans
from kiosk.unfinished import (
    TEXT_CHANGED,
    OpenSession,
    TakenUp,
    beginning,
    closed_plan,
    open_session,
    unfinished,
)


@dataclass(frozen=True, slots=True)
class Card:
    """What the board shows of one machine."""

    machine: Machine
    kind: Text
    standing: Standing
    due: tuple[Plan, ...]
    """What is normally begun from this standing."""
    beside: tuple[Plan, ...]
    """What can be walked now and leaves the machine as it stands: day checks, samples."""
    others: tuple[Plan, ...]
    """What can be walked on this machine, but is not due."""
    unfinished: OpenSession | None
    faults: tuple[Fault, ...]
    """Why a procedure for this kind of machine cannot be walked on it."""


@dataclass(slots=True)
class Shop:
    """One site with its library, journal and clock. Use from one thread, as the journal."""

    site: Site
    library: Library
    journal: Journal
    clock: Clock
    folder: Path
    """Where the kiosk keeps its data."""
    _plans: SitePlans = field(init=False)
    _gate: PinGate | None = field(default=None, init=False)
    _beside: Beside | None = field(default=None, init=False)
    _today: tuple[int, Today] | None = field(default=None, init=False)
    """The journal's last row, and what was asked of it up to there."""

    def __post_init__(self) -> None:
        self._plans = SitePlans(self.site, self.library, self.folder)

    @property
    def gate(self) -> PinGate:
        """Where PINs are tried."""
        if self._gate is None:
            invented = self.site.pins.invented
            self._gate = PinGate.of(self.folder, self.journal, self.clock, invented)
        return self._gate

    @property
    def beside(self) -> Beside:
        """Names and remarks, which lie beside the journal. Raises BesideFailed."""
        if self._beside is None:
            self._beside = Beside(self.folder)
        return self._beside

    def may(self, procedure: str, wish: Wish) -> Refusal | None:
        """Return why somebody may not do something; None when they may."""
        return refusal(self._crew(procedure, wish), procedure, wish)

    def mind_people(self) -> str:
        """Take the names of those on the list, and erase what was kept long enough.

        Returns why that failed, or nothing: no walk waits for it.
        """
        try:
            self.beside.meet(self.site.people, self.clock.now().utc)
            keep_to_time(self.site, self.beside, self.journal, self.clock)
        except (BesideFailed, JournalFailed, SoundsFailed, UnknownEvent) as error:
            return str(error)
        return ""

    def practising(self) -> Shop:
        """Return the same shop for practice: its sessions are marked and kept apart."""
        site = replace(self.site, practice=True)
        shop = Shop(site, self.library, self.journal, self.clock, self.folder)
        shop._gate, shop._beside = self.gate, self._beside
        return shop

    def elsewhere(self, journal: Journal) -> Shop:
        """Return the same shop with another connection to its journal, for another thread."""
        shop = Shop(self.site, self.library, journal, self.clock, self.folder)
        shop._plans = self._plans
        return shop

    def _crew(self, procedure: str, wish: Wish) -> Crew:
        """Return the people, and whether the trainee in a wish has still to learn a procedure."""
        people = {one.id: one for one in self.site.people}
        learning: set[tuple[str, str]] = set()
        match wish:
            case Start(worker=worker) | HandOver(worker=worker) if (
                worker in people and people[worker].role is Role.TRAINEE
            ):
                practice, first = self.site.practice, self.site.trainee_walks
                done = self.journal.walks_done(worker, procedure, practice=practice, most=first)
                if done < first:
                    learning.add((worker, procedure))
        return Crew(people, learning, self.site.pins.at_start)

    def bench(self) -> Bench:
        """Return what calculators may know now. Raises FaultyFile."""
        return bench(self.site, self.library, self.clock.now().utc)

    def cards(self) -> tuple[Card, ...]:
        """Return what the board shows, in the order of the site file."""
        found, _ = self._unfinished()
        return tuple(self._card(machine, found) for machine in self.site.machines)

    def due(self) -> Mapping[str, tuple[Dated, ...]]:
        """Return what is due on each machine, and by when; nothing where it cannot be told."""
        last, now = self.journal.mark()[0], self.clock.now().utc
        try:
            if self._today is None or self._today[0] != last:
                own = self.library.own_schedules
                schedule = self._today[1].schedule if self._today else load_schedule(own=own)
                told = today(self.site, self.library, schedule, self.journal, self._steps_of, now)
                self._today = last, told
            return self._today[1].due(now)
        except (FaultyFile, UnknownEvent, BadTime):
            # `faults` tells of the first two; load_site lets no bad time through.
            return {}

    def faults(self) -> tuple[str, ...]:
        """Return every reason why something in this shop cannot be walked, in plain words."""
        found = [str(fault) for fault in self.library.faults]
        for machine in self.site.machines:
            found += [str(fault) for fault in self._plans.of_machine(machine)[1]]
            if not self._plans.procedures(machine):
                found.append(f"no procedure is for the kind '{machine.kind}' of '{machine.id}'")
        still_open, unreadable = self._unfinished()
        here = {machine.id for machine in self.site.machines}
        found += [
            f"the session {one.id} is unfinished, but its machine '{one.started.machine}' is not "
            "in the site file; put it back, or tell the supervisor"
            for one in still_open
            if one.started.machine not in here
        ]
        return tuple(dict.fromkeys([*found, *unreadable]))

    def fresh(self, machine_id: str, procedure_id: str) -> Session:
        """Return a session that has not begun.

        Raises FaultyFile when the procedure does not fit the machine or cannot be proven,
        JournalFailed when its text cannot be kept, KeyError for unknown ids.
        """
        machine, procedure = self.site.machine(machine_id), self.library.procedures[procedure_id]
        plan = self._plans.plan(machine, procedure)
        if isinstance(plan, FaultyFile):
            raise plan
        require_proof(plan, self.folder / "proven")
        self.journal.keep_text(plan.digest, as_text(plan))
        return Session.fresh(plan, self.journal, self.clock, self.may)

    def take_up(self, session_id: str) -> TakenUp:
        """Return a session found open.

        Where the procedure's text is not the one the session was begun with, its steps cannot be
        walked on: the plan then is a single step that nothing leads into, so that the session can
        be ended and no more. Raises UnknownEvent when the journal cannot be read.
        """
        found = open_session(self.journal, session_id)
        plan = self._plans.of_session(found.started)
        if plan is not None and plan.digest == found.started.digest:
            return TakenUp(Session(plan, self.journal, self.clock, session_id, self.may))
        closed = closed_plan(found, self.library, self.site)
        again = Session(closed, self.journal, self.clock, session_id, self.may)
        return TakenUp(again, TEXT_CHANGED)

    def plan_of(self, session_id: str) -> Plan | None:
        """Return the plan that a session walked; None when its text is no longer here.

        Raises UnknownEvent when the journal cannot be read.
        """
        return self.plan_for(beginning(session_id, self.journal.events(session_id)))

    def plan_for(self, started: SessionStarted) -> Plan | None:
        """Return the plan that a session walked, from how it began, as `plan_of` does."""
        plan = self._plans.of_session(started)
        if plan is not None and plan.digest == started.digest:
            return plan
        text = self.journal.text(started.digest)
        return None if text is None else from_text(text, started.digest)

    def _steps_of(self, started: SessionStarted) -> Plan | None:
        """Return the plan that a session walked, or the present one where its text is not here."""
        return self.plan_for(started) or self._plans.of_session(started)

    def time_left(self, plan: Plan) -> Mapping[str, Left]:
        """Return what was left of the last walks of a plan, from each step on.

        Raises UnknownEvent when the journal cannot be read.
        """
        last = self.journal.walked(
            plan.machine, plan.procedure, practice=plan.practice, most=MOST_WALKS
        )
        return remaining(self.journal.events(one) for one in last)

    def ledger(self) -> Ledger:
        """Open the ledger beside the journal; `catch_up` brings it up to date. Raises LedgerFailed,
        FaultyFile."""
        rules, schedule = load_deviation_rules(), load_schedule(library=self.library)
        return Ledger(
            self.folder, self.journal, self.plan_for, self.site, self.library, rules, schedule
        )

    def _card(self, machine: Machine, still_open: tuple[OpenSession, ...]) -> Card:
        plans, faults = self._plans.of_machine(machine)
        now = self._standing(machine)
        fits = {one.id: one for one in self._plans.procedures(machine) if now in one.begins_from}
        beside = {one.id for one in fits.values() if one.stays_in_service}
        due = set(fits) - beside
        kind = self.library.kinds.get(machine.kind)
        mine = (one for one in still_open if one.started.machine == machine.id)
        return Card(
            machine=machine,
            kind={"en": machine.kind} if kind is None else kind.title,
            standing=now,
            due=tuple(plan for plan in plans if plan.procedure in due),
            beside=tuple(plan for plan in plans if plan.procedure in beside),
            others=tuple(plan for plan in plans if plan.procedure not in fits),
            unfinished=next(mine, None),
            faults=faults,
        )

    def _standing(self, machine: Machine) -> Standing:
        """Fold the sessions of one machine; practice and real work do not touch each other."""
        facts = self.journal.facts_of_machine(machine.id, practice=self.site.practice)
        return standing(fact for _, _, fact in facts)

    def _unfinished(self) -> tuple[tuple[OpenSession, ...], tuple[str, ...]]:
        return unfinished(self.journal, practice=self.site.practice)
