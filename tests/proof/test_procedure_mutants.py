"""The shipped procedures, each spoiled in one place at a time: what is unsafe must be caught.

What is unsafe is decided here by an oracle of its own. It keeps two accounts of a walk: what the
kiosk believes, by the spoiled plan, and what is so, by the plan as shipped. A walk is unsafe where
a step is entered that needs, as shipped, something which is not so.
"""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass, replace
from functools import cache, cached_property
from itertools import pairwise
from pathlib import Path

import pytest

from kiosk.checking import dangers, doses, needs
from kiosk.checking.check import subject_of
from kiosk.checking.gather import gather
from kiosk.checking.instruments import Instruments
from kiosk.checking.subject import Subject
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.model import Procedure, StepBlock
from kiosk.procedure.plan import Hold, Plan, Step
from kiosk.procedure.site import load_site
from kiosk.proof.must_hold import must_hold
from kiosk.proof.search import Counterexample, search
from kiosk.shipped import shipped

NO_HOLD, NO_REQUIREMENT = "hold removed", "requirement removed"
SWAPPED, MOVED = "neighbours swapped", "release moved"
KINDS = (NO_HOLD, NO_REQUIREMENT, SWAPPED, MOVED)

RULES = {
    "danger-unguarded": dangers.danger_unguarded,
    "released-in-danger": dangers.released_in_danger,
    "danger-left": dangers.danger_left,
    "need-undercut": needs.need_undercut,
    "waives-nothing": needs.waives_nothing,
    "dose-without-contact": doses.dose_without_contact,
}
"""The rules of the file check that are errors and look at the order or the needs of steps."""


Blocks = tuple[StepBlock, ...]


@dataclass(frozen=True)
class Mutant:
    """A procedure that differs from the shipped one in one place."""

    kind: str
    what: str
    of: str
    blocks: Blocks
    condition: str = ""
    """The requirement that was removed."""

    @cached_property
    def procedure(self) -> Procedure:
        """The spoiled procedure, its steps in one phase."""
        return in_one_phase(self.of, self.blocks)

    @cached_property
    def plan(self) -> Plan:
        """The spoiled procedure, fitted as the shipped one is."""
        return fitted(self.procedure)

    def __str__(self) -> str:
        return f"{self.of}: {self.kind}: {self.what}"


@cache
def library() -> Library:
    return load_library(shipped("procedures"))


def fitted(procedure: Procedure) -> Plan:
    """Fit a procedure to the demo machine of its kind."""
    site = load_site(shipped("demo") / "site.toml")
    machine = next(m for m in site.machines if m.kind == procedure.machine_kind)
    return fit(library(), procedure, machine, site, lambda amount, _: str(amount))


def in_one_phase(name: str, blocks: Blocks) -> Procedure:
    procedure = library().procedures[name]
    return replace(procedure, phases=(replace(procedure.phases[0], steps=blocks),))


@cache
def shipped_blocks(name: str) -> Blocks:
    """Return the steps of a shipped procedure that its demo machine walks."""
    procedure = library().procedures[name]
    walked = fitted(procedure).index
    return tuple(b for phase in procedure.phases for b in phase.steps if b.id in walked)


@cache
def plans() -> dict[str, Plan]:
    """Return each shipped procedure by its id, fitted."""
    names = library().procedures
    return {name: fitted(in_one_phase(name, shipped_blocks(name))) for name in names}


def mutants(name: str) -> Iterator[Mutant]:
    """Yield every mutant of a procedure, in an order that never changes."""
    steps, plan = shipped_blocks(name), plans()[name]
    for place, step in enumerate(steps):
        if step.hold:
            yield Mutant(NO_HOLD, step.id, name, steps[:place] + steps[place + 1 :])
    for place, step in enumerate(steps):
        for condition in step.requires:
            less = replace(step, requires=tuple(n for n in step.requires if n != condition))
            changed = (*steps[:place], less, *steps[place + 1 :])
            what = f"{step.id} without '{condition}'"
            yield Mutant(NO_REQUIREMENT, what, name, changed, condition)
    for place, (one, two) in enumerate(pairwise(steps)):
        changed = (*steps[:place], two, one, *steps[place + 2 :])
        yield Mutant(SWAPPED, f"{two.id} before {one.id}", name, changed)
    held = {n for step in steps if step.hold for n in step.establishes} - plan.hazards
    for place, step in enumerate(steps):
        rest = steps[:place] + steps[place + 1 :]
        for to in range(len(steps)) if held & set(step.ends) else ():
            if to != place:
                changed = (*rest[:to], step, *rest[to:])
                where = f"behind {rest[to - 1].id}" if to else "to the beginning"
                yield Mutant(MOVED, f"{step.id} {where}", name, changed)


# The oracle.


class Walk:
    """One walk of a spoiled plan: what the kiosk believes, and what is so."""

    def __init__(self, spoiled: Plan, shipped_plan: Plan) -> None:
        self.spoiled, self.shipped = spoiled, shipped_plan
        self.believed: set[str] = set()
        self.so: set[str] = set()
        self.wrong: str = ""

    def enter(self, step: Step) -> None:
        lost = sorted(set(self.shipped.step(step.id).requires) - self.so)
        if lost and not self.wrong:
            self.wrong = f"'{step.id}' is entered without '{lost[0]}'"

    def leave(self, step: Step) -> None:
        self.enter(step)
        self.believed -= set(step.ends)
        self.believed |= set(step.establishes)
        self.so -= set(self.shipped.step(step.id).ends)
        self.so |= set(self.shipped.step(step.id).establishes)

    def come_to(self, place: int) -> bool:
        """Repeat what the kiosk asks again for before a step; False when it knows no way."""
        goal = self.spoiled.steps[place]
        for _ in range(len(self.spoiled.steps)):
            step = goal
            while lost := [n for n in step.requires if n not in self.believed]:
                before = self.spoiled.steps[: self.spoiled.index[step.id]]
                giving = [one for one in before if lost[0] in one.establishes]
                if not giving:
                    return False
                step = giving[-1]
            if step is goal:
                self.enter(goal)
                return True
            self.leave(step)
        return False

    def absence(self) -> None:
        self.believed -= self.spoiled.lapsing
        self.so -= self.shipped.lapsing


def straight_harm(spoiled: Plan, shipped_plan: Plan) -> str:
    """Return what is wrong when every step is done in the order of the plan, or nothing."""
    walk = Walk(spoiled, shipped_plan)
    for step in spoiled.steps:
        walk.leave(step)
    return walk.wrong


def absent_harm(spoiled: Plan, shipped_plan: Plan) -> str:
    """Return what is wrong when one absence comes at some step, or nothing."""
    for absent in range(len(spoiled.steps)):
        walk = Walk(spoiled, shipped_plan)
        for place, step in enumerate(spoiled.steps):
            if not walk.come_to(place):
                break
            if place == absent:
                walk.absence()
                if not walk.come_to(place):
                    break
            walk.leave(step)
        if walk.wrong:
            return f"after an absence at '{spoiled.steps[absent].id}', {walk.wrong}"
    return ""


def added_danger(spoiled: Plan, shipped_plan: Plan) -> frozenset[str]:
    """Return the dangers that stand at the end of a hold's condition, and do not as shipped."""
    as_spoiled, as_shipped = _at_releases(spoiled), _at_releases(shipped_plan)
    return frozenset(n for step, names in as_spoiled.items() for n in names - as_shipped[step])


def _at_releases(plan: Plan) -> dict[str, set[str]]:
    held = {n for s in plan.steps if isinstance(s.task, Hold) for n in s.establishes}
    standing, found = set[str](), dict[str, set[str]]()
    for step in plan.steps:
        standing -= set(step.ends)
        if (held - plan.hazards) & set(step.ends):
            found[step.id] = standing & plan.hazards
        standing |= set(step.establishes)
    return found


# The catchers.


def _unasked(*_: object) -> object:
    raise AssertionError("no rule that is used here measures words")


@cache
def subject() -> Subject:
    gathered = gather([], Path(shipped("procedures")))
    unasked = Instruments(_unasked, _unasked, _unasked)  # type: ignore[arg-type]
    return replace(
        subject_of(gathered, {}, unasked), plans={name: (plan,) for name, plan in plans().items()}
    )


def _spoiled(mutant: Mutant) -> Subject:
    """Return what the file check would look at; a removed hold is gone from the file too."""
    whole, plan = subject(), mutant.plan
    procedure = library().procedures[mutant.of]
    phases = tuple(replace(phase, steps=_left(phase.steps, mutant)) for phase in procedure.phases)
    procedure = replace(procedure, phases=phases)
    procedures = {**whole.library.procedures, procedure.id: procedure}
    return replace(
        whole,
        library=replace(whole.library, procedures=procedures),
        checked=(procedure.id,),
        plans={**whole.plans, procedure.id: (plan,)},
    )


def _left(blocks: Blocks, mutant: Mutant) -> Blocks:
    """Return the blocks at their old places, for the lines, each as the mutant has it."""
    spoiled = {block.id: block for block in mutant.blocks}
    gone = {block.id for block in shipped_blocks(mutant.of)} - spoiled.keys()
    return tuple(
        replace(b, hold=None, requires=(), establishes=(), ends=())
        if b.id in gone
        else spoiled.get(b.id, b)
        for b in blocks
    )


def caught_by(mutant: Mutant) -> list[str]:
    """Return the names of the rules against a mutant, the search aside."""
    found = must_hold(mutant.plan)
    if found.faults:
        return ["not-in-force"]
    names: dict[str, None] = {}
    for fault in found.warnings:
        step, _, field = fault.field.rpartition(".")
        if field == "ends":
            names["release-unguarded"] = None
        elif step != mutant.plan.steps[-1].id:
            names["hold-idle"] = None
    spoiled = _spoiled(mutant)
    return [*names, *(name for name, rule in RULES.items() if any(rule(spoiled)))]


@dataclass(frozen=True)
class Judged:
    """A mutant, what is unsafe about it, and who caught it."""

    mutant: Mutant
    straight: str
    absent: str
    danger: frozenset[str]
    caught: Sequence[str]

    @property
    def unsafe(self) -> bool:
        return bool(self.straight or self.absent)

    @property
    def reason(self) -> str:
        """Why nothing was caught, in one of a few classes."""
        mutant, shipped_plan = self.mutant, plans()[self.mutant.of]
        by_holds = {
            n for s in shipped_plan.steps if isinstance(s.task, Hold) for n in s.establishes
        }
        if self.unsafe and mutant.condition in by_holds:
            return "NOT HARMLESS, a hold's condition"
        if self.unsafe:
            return "NOT HARMLESS, a condition that lapses"
        if self.danger:
            return "DOUBTFUL, a release while a danger stands that takes no hold to end"
        if mutant.kind != NO_REQUIREMENT:
            return "harmless, the steps need nothing of each other"
        if mutant.condition in shipped_plan.lapsing:
            return "harmless, another requirement brings it back"
        return "harmless, it does not lapse and the order gives it"


@cache
def judged(procedure: str) -> tuple[Judged, ...]:
    """Return every mutant of a procedure, judged."""
    of = plans()[procedure]
    found = []
    for one in mutants(procedure):
        straight = straight_harm(one.plan, of)
        absent = "" if straight else absent_harm(one.plan, of)
        danger = added_danger(one.plan, of)
        found.append(Judged(one, straight, absent, danger, tuple(caught_by(one))))
    return tuple(found)


PROCEDURES = tuple(sorted(plans()))
each_procedure = pytest.mark.parametrize("procedure", PROCEDURES)


@each_procedure
def test_the_oracle_and_the_rules_are_silent_about_the_shipped_plan(procedure: str):
    of = plans()[procedure]
    assert (straight_harm(of, of), absent_harm(of, of)) == ("", "")
    assert caught_by(Mutant("none", "as shipped", procedure, shipped_blocks(procedure))) == []


@each_procedure
def test_every_unsafe_order_and_every_unsafe_lack_of_a_hold_is_caught(procedure: str):
    all_judged = [one for one in judged(procedure) if one.mutant.kind != NO_REQUIREMENT]
    unsafe = [one for one in all_judged if one.unsafe]
    if any(isinstance(step.task, Hold) for step in plans()[procedure].steps):
        assert {one.mutant.kind for one in unsafe} == {NO_HOLD, SWAPPED, MOVED}
    assert [str(one.mutant) for one in unsafe if not one.caught] == []


def test_no_release_is_moved_into_a_danger_that_takes_a_hold_to_end():
    steps = [step for plan in plans().values() for step in plan.steps]
    by_hold = {n for step in steps if isinstance(step.task, Hold) for n in step.ends}
    moved = [one for name in PROCEDURES for one in judged(name) if one.danger & by_hold]
    assert moved
    assert [str(one.mutant) for one in moved if not one.caught] == []


@each_procedure
def test_a_removed_requirement_is_unsafe_only_where_something_can_lapse(procedure: str):
    """A file without a requirement cannot tell that it should be there; the order still stands."""
    removed = [one for one in judged(procedure) if one.mutant.kind == NO_REQUIREMENT]
    assert removed or not any(step.declared for step in plans()[procedure].steps)
    assert [one.straight for one in removed if one.straight] == []
    lapsing = plans()[procedure].lapsing
    assert [str(o.mutant) for o in removed if o.unsafe and o.mutant.condition not in lapsing] == []


def test_the_search_agrees_where_nothing_was_found():
    """Every 60th mutant that no rule is against, over all procedures: the search proves it too."""
    silent = [one.mutant for name in PROCEDURES for one in judged(name) if not one.caught]
    sample = silent[::60]
    assert sample
    broken = [str(one) for one in sample if isinstance(search(one.plan), Counterexample)]
    assert broken == []
