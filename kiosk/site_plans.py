"""The plans of a site's machines: fitted, checked, and each made once."""

from __future__ import annotations

from dataclasses import dataclass, field, replace
from pathlib import Path

from kiosk.engine.events import SessionStarted
from kiosk.languages.signed import still_drafted
from kiosk.languages.words import words
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library
from kiosk.procedure.model import Procedure
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Machine, Site
from kiosk.proof.must_hold import must_hold
from kiosk.trade.units import Quantity


@dataclass(slots=True)
class SitePlans:
    """What can be walked on each machine, and what is wrong with the rest."""

    site: Site
    library: Library
    folder: Path
    """Where it is kept which texts were signed."""
    _made: dict[tuple[str, str], Plan | FaultyFile] = field(default_factory=dict, init=False)

    def procedures(self, machine: Machine) -> list[Procedure]:
        """Return the procedures for a machine of this kind."""
        everything = self.library.procedures.values()
        return [one for one in everything if one.machine_kind == machine.kind]

    def of_machine(self, machine: Machine) -> tuple[tuple[Plan, ...], tuple[Fault, ...]]:
        """Return the plans for a machine, and what is wrong with those that do not fit it."""
        plans: list[Plan] = []
        faults = [*self.library.against(machine.kind)]
        for procedure in self.procedures(machine):
            plan = self.plan(machine, procedure)
            if isinstance(plan, FaultyFile):
                faults.extend(plan.faults)
            else:
                plans.append(plan)
        return tuple(plans), tuple(faults)

    def of_session(self, started: SessionStarted) -> Plan | None:
        """Return the plan by which a session would begin now; None where there is none. Its text
        may not be the one that the session walked."""
        procedure = self.library.procedures.get(started.procedure)
        machines = {machine.id: machine for machine in self.site.machines}
        if procedure is None or started.machine not in machines:
            return None
        plan = self.plan(machines[started.machine], procedure)
        return None if isinstance(plan, FaultyFile) else plan

    def plan(self, machine: Machine, procedure: Procedure) -> Plan | FaultyFile:
        """Return the plan of a procedure on a machine, or why there is none."""
        key = (machine.id, procedure.id)
        if key not in self._made:
            self._made[key] = self._make(machine, procedure)
        return self._made[key]

    def _make(self, machine: Machine, procedure: Procedure) -> Plan | FaultyFile:
        try:
            plan = fit(self.library, procedure, machine, self.site, _say_quantity)
        except FaultyFile as faulty:
            return faulty
        faults = must_hold(plan).faults
        return FaultyFile(list(faults)) if faults else self._signed(plan)

    def _signed(self, plan: Plan) -> Plan:
        """Return a plan without the mark of a draft in languages that were signed here."""
        left = still_drafted(plan.drafted, self.library, self.folder, plan.procedure)
        return replace(plan, drafted=left)


def _say_quantity(amount: Quantity, language: str) -> str:
    return words(language).quantity(amount)
