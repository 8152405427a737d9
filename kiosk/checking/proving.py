"""Fit the procedures to every choice of options, prove the plans, and name what is wrong."""

from __future__ import annotations

import time
from collections.abc import Hashable, Iterable, Iterator, Mapping
from concurrent.futures import Executor
from dataclasses import dataclass, replace
from pathlib import Path

from kiosk.checking.lived import led_astray
from kiosk.languages.words import words
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library
from kiosk.procedure.model import Procedure
from kiosk.procedure.plan import Plan
from kiosk.procedure.yaml_source import read_yaml
from kiosk.proof.beside import proofs
from kiosk.proof.must_hold import must_hold
from kiosk.proof.prove import Sound, fittings, prove
from kiosk.proof.search import Counterexample, Proof, TooManyStates, search
from kiosk.proof.story import story
from kiosk.trade.units import Quantity

Named = tuple[str, Fault]
"""The name of a rule, and the fault."""

Options = frozenset[tuple[str, str]]


@dataclass(frozen=True, slots=True, kw_only=True)
class Fitted:
    """A procedure on every machine that its kind allows."""

    plans: tuple[Plan, ...]
    """The different ones."""
    options: Mapping[str, frozenset[Options]]
    """Digest of a plan to the choices of options that make it."""
    faults: tuple[Named, ...]


def fit_all(library: Library, procedure: Procedure) -> Fitted:
    """Fit one procedure to each choice of options."""
    if procedure.machine_kind not in library.kinds:
        return Fitted(plans=(), options={}, faults=(("fit", _no_such_kind(library, procedure)),))
    plans: dict[str, Plan] = {}
    options: dict[str, set[Options]] = {}
    against: dict[Fault, set[Options]] = {}
    machines = list(fittings(library, procedure, None))
    for machine, site in machines:
        chosen = frozenset(machine.options.items())
        try:
            plan = fit(library, procedure, machine, site, _said)
        except FaultyFile as error:
            for fault in error.faults:
                against.setdefault(fault, set()).add(chosen)
            continue
        plans.setdefault(plan.digest, plan)
        options.setdefault(plan.digest, set()).add(chosen)
    return Fitted(
        plans=tuple(plans.values()),
        options={digest: frozenset(chosen) for digest, chosen in options.items()},
        faults=tuple(
            (fault.rule or "fit", _with_options(fault, chosen, len(machines)))
            for fault, chosen in against.items()
        ),
    )


def _no_such_kind(library: Library, procedure: Procedure) -> Fault:
    line = read_yaml(Path(procedure.file)).line(("machine_kind",))
    what = f"no kind of machine is called '{procedure.machine_kind}'"
    known = ", ".join(sorted(library.kinds)) or "none"
    mend = f"use one of: {known}; or give its file as well"
    return Fault(procedure.file, line, "machine_kind", what, mend)


def _said(amount: Quantity, language: str) -> str:
    return words(language).quantity(amount)


def _with_options(fault: Fault, chosen: Iterable[Options], of: int) -> Fault:
    """Add the options that a fault needs, where it does not stand with all of them."""
    choices = list(chosen)
    if len(choices) == of:
        return fault
    needed = ", ".join(
        f"{name} {value}" for name, value in sorted(frozenset.intersection(*choices))
    )
    return replace(fault, what=f"{fault.what} (with {needed})") if needed else fault


@dataclass(frozen=True, slots=True, kw_only=True)
class Proven:
    """What the proof of one procedure came to."""

    procedure: str
    steps: tuple[int, int]
    """Fewest and most steps of a plan."""
    plans: int
    states: int
    """States that were visited, over all plans of different shape."""
    seconds: float
    faults: tuple[Named, ...]
    told: str
    """The story of the first fault, or nothing."""

    def __str__(self) -> str:
        least, most = self.steps
        steps = f"{least} to {most} steps" if least < most else count(most, "step")
        verdict = "NOT PROVEN" if self.faults else "proven"
        return (
            f"{self.procedure}: {steps}, {count(self.plans, 'plan')}, "
            f"{count(self.states, 'state')}, {self.seconds:.1f} s: {verdict}"
        )


def count(number: int, thing: str) -> str:
    """Return a number of things in words: `no plans`, `1 plan`, `16 plans`."""
    return f"{number or 'no'} {thing}{'' if number == 1 else 's'}"


def prove_all(procedure: str, fitted: Fitted, pool: Executor | None = None) -> Proven:
    """Prove every plan of a procedure, each shape of plan once; at the same time given a pool."""
    begun = time.perf_counter()
    known: dict[Hashable, Proof] = proofs(fitted.plans, pool) if pool else {}
    against: dict[Named, set[Options]] = {}
    told = ""
    for plan in fitted.plans:
        for one in _against(plan, known):
            against.setdefault(one, set()).update(fitted.options[plan.digest])
            if one[0] in ("not-in-force", "proof"):
                told = told or _told(plan)
    of = sum(len(chosen) for chosen in fitted.options.values())
    lengths = [len(plan.steps) for plan in fitted.plans] or [0]
    return Proven(
        procedure=procedure,
        steps=(min(lengths), max(lengths)),
        plans=len(fitted.plans),
        states=sum(proof.states for proof in known.values()),
        seconds=time.perf_counter() - begun,
        faults=(
            *fitted.faults,
            *((name, _with_options(f, chosen, of)) for (name, f), chosen in against.items()),
        ),
        told=told,
    )


def _against(plan: Plan, known: dict[Hashable, Proof]) -> Iterator[Named]:
    try:
        outcome = prove(plan, known=known)
    except TooManyStates as error:
        what, mend = str(error), "split the procedure in two, so that each can be proven"
        yield "proof", Fault(plan.file, 1, "phases", what, mend)
        return
    if isinstance(outcome, Sound):
        last = plan.steps[-1].id
        for fault in outcome.warnings:
            step, _, field = fault.field.rpartition(".")
            if field == "ends":
                yield "release-unguarded", fault
            elif step != last:
                yield "hold-idle", fault
        return
    name = "not-in-force" if must_hold(plan).faults else "proof"
    for fault in outcome:
        yield name, fault


def _told(plan: Plan) -> str:
    """Return how a worker would live the fault, or nothing when no way leads there."""
    found = led_astray(plan)
    if found is None:
        try:
            searched = search(plan)
        except TooManyStates:
            return ""
        found = searched if isinstance(searched, Counterexample) else None
    return "" if found is None else story(plan, found)
