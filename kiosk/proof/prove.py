"""Prove a plan, and every procedure of a library on every machine that its kind allows."""

from __future__ import annotations

import time
from collections.abc import Hashable, Iterator
from dataclasses import dataclass
from decimal import Decimal
from itertools import product

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library
from kiosk.procedure.model import MachineKind, Procedure
from kiosk.procedure.plan import Hold, Measure, Plan, Repeat, Step, Wait
from kiosk.procedure.site import Machine, Sanitizer, Site
from kiosk.proof.alphabet import inside, outside
from kiosk.proof.must_hold import must_hold
from kiosk.proof.search import MOST_STATES, Counterexample, Proof, search
from kiosk.proof.story import as_fault

_SANITIZER = Sanitizer(
    name="any chlorine sanitizer",
    available_chlorine=Decimal("0.5"),
    packet_grams=Decimal("0.1"),
    target=Decimal(100),
)
"""Invented, with packets so small that a whole number of them fits any volume."""


@dataclass(frozen=True, slots=True)
class Sound:
    """A plan against which nothing stands."""

    proof: Proof
    """Of this plan, or of one of the same shape."""
    warnings: tuple[Fault, ...]


def prove(
    plan: Plan, most_states: int = MOST_STATES, known: dict[Hashable, Proof] | None = None
) -> Sound | list[Fault]:
    """Return the proof of a plan, or what stands against it.

    `known` keeps proofs by shape: a plan of a shape that is in it is not searched again, and a new
    proof is put into it. Raises TooManyStates when the search had to be cut off; then nothing is
    proven.
    """
    found = must_hold(plan)
    if found.faults:
        return list(found.faults)
    known = {} if known is None else known
    same = shape(plan)
    outcome = known.get(same) or search(plan, most_states=most_states)
    if isinstance(outcome, Counterexample):
        return [as_fault(plan, outcome)]
    known[same] = outcome
    return Sound(outcome, found.warnings)


def shape(plan: Plan) -> Hashable:
    """Return all of a plan that can decide anything; its words, names and numbers cannot.

    Of a number's bounds there is left whether a believable number can pass, and whether one can
    fail; those are what the search tries.
    """
    return (
        tuple((_task(step), step.requires, step.establishes, step.ends) for step in plan.steps),
        tuple(
            (name, one.lapses, one.present is None, one.without is None)
            for name, one in plan.conditions.items()
        ),
        tuple((name, one.stops_service) for name, one in plan.problems.items()),
    )


def _task(step: Step) -> Hashable:
    match step.task:
        case Hold(strength=strength, verify=verify):
            return "hold", strength, verify is None
        case Measure(judged_by=by) as task:
            return "measure", by is None or by.passes(inside(task)), bool(outside(task))
        case Wait(seconds=seconds):
            return "wait", seconds > 0
        case Repeat(least=least, most=most):
            return "repeat", least, most
        case other:
            return type(other).__name__


@dataclass(frozen=True, slots=True)
class Proven:
    """One plan that was proven."""

    procedure: str
    digest: str
    machines: tuple[str, ...]
    """The machines, or the option values of a machine, for which the plan is the same."""
    steps: int
    proof: Proof


@dataclass(frozen=True, slots=True)
class Report:
    """What a check of a library found."""

    proven: tuple[Proven, ...]
    faults: tuple[Fault, ...]
    warnings: tuple[Fault, ...]
    seconds: float

    @property
    def sound(self) -> bool:
        """True when at least one plan was proven and nothing stands against any."""
        return bool(self.proven) and not self.faults


def check_library(
    library: Library, site: Site | None = None, most_states: int = MOST_STATES
) -> Report:
    """Fit each procedure to every machine that its kind allows, and prove each plan once.

    Without a site, settings are the kind's own and the limits the procedure's; with one, each of
    its machines is fitted too, with the site's settings. Raises TooManyStates.
    """
    begun = time.perf_counter()
    faults: list[Fault] = list(library.faults)
    plans: dict[str, Plan] = {}
    machines: dict[str, list[str]] = {}
    for procedure in library.procedures.values():
        for machine, place in fittings(library, procedure, site):
            try:
                plan = fit(library, procedure, machine, place, lambda amount, _: str(amount))
            except FaultyFile as error:
                faults += error.faults
                continue
            plans.setdefault(plan.digest, plan)
            machines.setdefault(plan.digest, []).append(machine.name)
    proven: list[Proven] = []
    known: dict[Hashable, Proof] = {}
    warnings: dict[Fault, None] = {}
    for digest, plan in plans.items():
        outcome = prove(plan, most_states, known)
        if isinstance(outcome, Sound):
            names = tuple(dict.fromkeys(machines[digest]))
            proven.append(Proven(plan.procedure, digest, names, len(plan.steps), outcome.proof))
            warnings |= dict.fromkeys(outcome.warnings)
        else:
            faults += outcome
    unique = tuple(sorted(dict.fromkeys(faults)))
    return Report(tuple(proven), unique, tuple(warnings), time.perf_counter() - begun)


def fittings(
    library: Library, procedure: Procedure, site: Site | None
) -> Iterator[tuple[Machine, Site]]:
    """Yield every machine that a procedure can meet: each choice of options, each real machine."""
    kind = library.kinds.get(procedure.machine_kind)
    if kind is None:
        anything = Machine(id="any", name="any", kind=procedure.machine_kind)
        yield anything, _any_site(procedure)
        return
    for machine in _every_machine(kind):
        yield machine, _any_site(procedure)
    for machine in () if site is None else site.machines:
        if site is not None and machine.kind == kind.id:
            yield machine, site


def _every_machine(kind: MachineKind) -> Iterator[Machine]:
    """Yield a machine for each choice of options, with the kind's own settings."""
    for values in product(*kind.options.values()):
        options = dict(zip(kind.options, values, strict=True))
        name = ", ".join(f"{option} {value}" for option, value in options.items()) or "any"
        yield Machine(id="any", name=f"{kind.id} ({name})", kind=kind.id, options=options)


def _any_site(procedure: Procedure) -> Site:
    return Site(
        name="any",
        time_zone="Etc/UTC",
        opens="10:00",
        closes="22:00",
        languages=("en",),
        limits=procedure.limits,
        sanitizer=_SANITIZER,
        machines=(),
        people=(),
    )
