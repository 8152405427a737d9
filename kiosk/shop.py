"""The shop as its kiosk knows it: machines, people, procedures, and what the journal says."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field, replace
from pathlib import Path

from kiosk.clock import Clock
from kiosk.engine.commands import HandOver, Refusal, Start
from kiosk.engine.events import Event, SessionStarted
from kiosk.engine.machine import standing
from kiosk.engine.state import State, fold
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.store import Journal, JournalFailed
from kiosk.languages.signed import still_drafted
from kiosk.languages.words import words
from kiosk.people.beside import Beside, BesideFailed
from kiosk.people.erase import keep_to_time
from kiosk.people.gate import PinGate
from kiosk.people.may import Crew, Wish, refusal
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library
from kiosk.procedure.load_review import load_deviation_rules, load_schedule
from kiosk.procedure.model import Procedure, Standing, Text
from kiosk.procedure.plan import Do, Plan, Step
from kiosk.procedure.plan_text import as_text, from_text
from kiosk.procedure.site import Machine, Role, Site
from kiosk.proof.must_hold import must_hold
from kiosk.proof.proven import require_proof
from kiosk.reckoning.bench import bench
from kiosk.reckoning.calculator import Bench
from kiosk.remarks.sounds import SoundsFailed
from kiosk.review.ledger import Ledger
from kiosk.review.recording import without_beginning
from kiosk.review.remaining import MOST_WALKS, Left, remaining
from kiosk.review.schedule import BadTime
from kiosk.review.today import Dated, Today, today
from kiosk.session import Session
from kiosk.trade.units import Quantity

TEXT_CHANGED = "text-changed"
"""The message for a session whose procedure no longer has the text that it was begun with."""


@dataclass(frozen=True, slots=True)
class OpenSession:
    """A session that was begun and not brought to an end."""

    id: str
    started: SessionStarted
    state: State


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


@dataclass(frozen=True, slots=True)
class TakenUp:
    """A session found open, ready to be gone on with."""

    session: Session
    caveat: str = ""
    """TEXT_CHANGED when the session can only be ended; empty when it can be walked on."""


@dataclass(slots=True)
class Shop:
    """One site with its library, journal and clock. Use from one thread, as the journal."""

    site: Site
    library: Library
    journal: Journal
    clock: Clock
    folder: Path
    """Where the kiosk keeps its data."""
    _plans: dict[tuple[str, str], Plan | FaultyFile] = field(default_factory=dict, init=False)
    _gate: PinGate | None = field(default=None, init=False)
    _beside: Beside | None = field(default=None, init=False)
    _today: tuple[int, Today] | None = field(default=None, init=False)
    """The journal's last row, and what was asked of it up to there."""

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
        unfinished, _ = self._unfinished()
        return tuple(self._card(machine, unfinished) for machine in self.site.machines)

    def due(self) -> Mapping[str, tuple[Dated, ...]]:
        """Return what is due on each machine, and by when; nothing where it cannot be told."""
        last, now = self.journal.mark()[0], self.clock.now().utc
        try:
            if self._today is None or self._today[0] != last:
                schedule = self._today[1].schedule if self._today else load_schedule()
                self._today = last, today(self.site, self.library, schedule, self.journal, now)
            return self._today[1].due(now)
        except (FaultyFile, UnknownEvent, BadTime):
            # `faults` tells of the first two; load_site lets no bad time through.
            return {}

    def faults(self) -> tuple[str, ...]:
        """Return every reason why something in this shop cannot be walked, in plain words."""
        found = [str(fault) for fault in self.library.faults]
        for machine in self.site.machines:
            found += [str(fault) for fault in self._fitted(machine)[1]]
            if not self._procedures(machine):
                found.append(f"no procedure is for the kind '{machine.kind}' of '{machine.id}'")
        unfinished, unreadable = self._unfinished()
        here = {machine.id for machine in self.site.machines}
        found += [
            f"the session {one.id} is unfinished, but its machine '{one.started.machine}' is not "
            "in the site file; put it back, or tell the supervisor"
            for one in unfinished
            if one.started.machine not in here
        ]
        return tuple(dict.fromkeys([*found, *unreadable]))

    def fresh(self, machine_id: str, procedure_id: str) -> Session:
        """Return a session that has not begun.

        Raises FaultyFile when the procedure does not fit the machine or cannot be proven,
        JournalFailed when its text cannot be kept, KeyError for unknown ids.
        """
        plan = self._plan(self.site.machine(machine_id), self.library.procedures[procedure_id])
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
        found = self._open_session(session_id)
        plan = self._plan_of(found.started)
        if plan is not None and plan.digest == found.started.digest:
            return TakenUp(Session(plan, self.journal, self.clock, session_id, self.may))
        closed = self._closed_plan(found)
        again = Session(closed, self.journal, self.clock, session_id, self.may)
        return TakenUp(again, TEXT_CHANGED)

    def plan_of(self, session_id: str) -> Plan | None:
        """Return the plan that a session walked; None when its text is no longer here.

        Raises UnknownEvent when the journal cannot be read.
        """
        return self.plan_for(_started(session_id, self.journal.events(session_id)))

    def plan_for(self, started: SessionStarted) -> Plan | None:
        """Return the plan that a session walked, from how it began, as `plan_of` does."""
        plan = self._plan_of(started)
        if plan is not None and plan.digest == started.digest:
            return plan
        text = self.journal.text(started.digest)
        return None if text is None else from_text(text, started.digest)

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

    def _card(self, machine: Machine, unfinished: tuple[OpenSession, ...]) -> Card:
        plans, faults = self._fitted(machine)
        now = self._standing(machine)
        fits = {one.id: one for one in self._procedures(machine) if now in one.begins_from}
        beside = {one.id for one in fits.values() if one.stays_in_service}
        due = set(fits) - beside
        kind = self.library.kinds.get(machine.kind)
        mine = (one for one in unfinished if one.started.machine == machine.id)
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

    def _procedures(self, machine: Machine) -> list[Procedure]:
        everything = self.library.procedures.values()
        return [one for one in everything if one.machine_kind == machine.kind]

    def _fitted(self, machine: Machine) -> tuple[tuple[Plan, ...], tuple[Fault, ...]]:
        """Return the plans for a machine, and what is wrong with those that do not fit it."""
        plans: list[Plan] = []
        faults: list[Fault] = []
        for procedure in self._procedures(machine):
            plan = self._plan(machine, procedure)
            if isinstance(plan, FaultyFile):
                faults.extend(plan.faults)
            else:
                plans.append(plan)
        return tuple(plans), tuple(faults)

    def _plan(self, machine: Machine, procedure: Procedure) -> Plan | FaultyFile:
        key = (machine.id, procedure.id)
        if key not in self._plans:
            try:
                plan = fit(self.library, procedure, machine, self.site, _say_quantity)
            except FaultyFile as faulty:
                self._plans[key] = faulty
            else:
                faults = must_hold(plan).faults
                self._plans[key] = FaultyFile(list(faults)) if faults else self._signed(plan)
        return self._plans[key]

    def _signed(self, plan: Plan) -> Plan:
        """Return a plan without the mark of a draft in languages that were signed here."""
        left = still_drafted(plan.drafted, self.library, self.folder, plan.procedure)
        return replace(plan, drafted=left)

    def _plan_of(self, started: SessionStarted) -> Plan | None:
        procedure = self.library.procedures.get(started.procedure)
        machines = {machine.id: machine for machine in self.site.machines}
        if procedure is None or started.machine not in machines:
            return None
        plan = self._plan(machines[started.machine], procedure)
        return None if isinstance(plan, FaultyFile) else plan

    def _unfinished(self) -> tuple[tuple[OpenSession, ...], tuple[str, ...]]:
        """Return the open sessions, oldest first, and why some cannot be read."""
        found: list[OpenSession] = []
        unreadable: list[str] = []
        for session_id in self.journal.open_sessions():
            try:
                one = self._open_session(session_id)
            except UnknownEvent as error:
                unreadable.append(
                    f"the unfinished session {session_id} cannot be read ({error}); "
                    "use the kiosk version that wrote it"
                )
                continue
            if one.started.practice == self.site.practice:
                found.append(one)
        return tuple(found), tuple(unreadable)

    def _open_session(self, session_id: str) -> OpenSession:
        events = self.journal.events(session_id)
        return OpenSession(session_id, _started(session_id, events), fold(events))

    def _closed_plan(self, found: OpenSession) -> Plan:
        started, state = found.started, found.state
        machines: Mapping[str, Machine] = {one.id: one for one in self.site.machines}
        machine = machines.get(started.machine)
        procedure = self.library.procedures.get(started.procedure)
        title: Text = {"en": started.procedure} if procedure is None else procedure.title
        steps = tuple(
            Step(id=name, phase="", say=title, task=Do(), requires=(TEXT_CHANGED,))
            for name in dict.fromkeys((state.step, state.goal))
            if name
        )
        return Plan(
            procedure=started.procedure,
            version=started.version,
            digest=started.digest,
            title=title,
            machine=started.machine,
            machine_name=started.machine if machine is None else machine.name,
            during=Standing(started.during),
            leaves=Standing(started.leaves),
            follow={},
            phases={"": title},
            steps=steps,
            conditions=self.library.common.conditions,
            problems=self.library.common.problems,
            practice=started.practice,
        )


def _started(session_id: str, events: list[Event]) -> SessionStarted:
    """Return how a session began. Raises UnknownEvent when it never did."""
    for event in events:
        if isinstance(event.fact, SessionStarted):
            return event.fact
    raise without_beginning(session_id)


def _say_quantity(amount: Quantity, language: str) -> str:
    return words(language).quantity(amount)
