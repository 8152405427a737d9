"""Rules for dangers: who may bring one about, what must wait for its end, what may be left."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.checking.subject import Subject, place_of
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import Procedure, Standing
from kiosk.procedure.plan import Hold, Plan, Step


def danger_unguarded(subject: Subject) -> Iterator[Fault]:
    """A step brings a danger about and nothing that a hold confirmed stands before it."""
    for procedure in subject.procedures():
        told: set[tuple[str, str]] = set()
        plans = subject.plans.get(procedure.id, ())
        secured = {name for plan in plans for name in _secured(plan)}
        for plan in plans:
            for step in plan.steps:
                if isinstance(step.task, Hold) or secured & set(step.declared):
                    continue
                for name in step.establishes:
                    if name in plan.hazards and (step.id, name) not in told:
                        told.add((step.id, name))
                        what = (
                            f"it brings about the danger '{name}', and requires nothing that a "
                            "hold has confirmed"
                        )
                        mend = "let it require what a hold makes sure of before, as 'guards on'"
                        yield _at(subject, procedure, step, "establishes", what, mend)


def released_in_danger(subject: Subject) -> Iterator[Fault]:
    """A step takes away what a hold confirmed while a danger stands that takes a hold to end.

    Which dangers those are is read from all procedures of the machine: a hold ends them somewhere.
    """
    for procedure in subject.procedures():
        told: set[tuple[str, str]] = set()
        for plan in subject.plans.get(procedure.id, ()):
            closed_by_hold = _closed_by_hold(subject, procedure) & plan.hazards
            secured, in_force = _secured(plan), set[str]()
            for step in plan.steps:
                in_force -= set(step.ends)
                standing = in_force & closed_by_hold
                for name in sorted(secured & set(step.ends)) if standing else ():
                    if (step.id, name) not in told:
                        told.add((step.id, name))
                        dangers = ", ".join(f"'{one}'" for one in sorted(standing))
                        what = f"it ends '{name}' while the danger {dangers} is still there"
                        mend = f"move it behind the hold that ends {dangers}"
                        yield _at(subject, procedure, step, "ends", what, mend)
                in_force |= set(step.establishes)


def danger_left(subject: Subject) -> Iterator[Fault]:
    """A procedure that puts a machine in service leaves a danger behind that it brought about."""
    for procedure in subject.procedures():
        if procedure.leaves is not Standing.IN_SERVICE:
            continue
        told: set[str] = set()
        for plan in subject.plans.get(procedure.id, ()):
            standing: dict[str, Step] = {}
            for step in plan.steps:
                standing = {n: by for n, by in standing.items() if n not in step.ends}
                standing |= {n: step for n in step.establishes if n in plan.hazards}
            for name, by in standing.items():
                if name not in told:
                    told.add(name)
                    what = f"the machine goes into service while the danger '{name}' is still there"
                    mend = f"end '{name}' in a later step"
                    yield _at(subject, procedure, by, "establishes", what, mend)


def verify_missing(subject: Subject) -> Iterator[Fault]:
    """A hold without a try-out confirms what a step with a caution relies on."""
    for procedure in subject.procedures():
        told: set[str] = set()
        for plan in subject.plans.get(procedure.id, ()):
            relied_on = {n: one for one in plan.steps if one.caution for n in one.declared}
            for step in plan.steps:
                task = step.task
                if not isinstance(task, Hold) or task.verify is not None or step.id in told:
                    continue
                for name in step.establishes:
                    if name in relied_on:
                        told.add(step.id)
                        by = relied_on[name].id
                        what = (
                            f"'{by}' has a caution and relies on '{name}', which is confirmed by "
                            "word alone"
                        )
                        mend = "add 'verify:' with something to try that shows that it is so"
                        yield _at(subject, procedure, step, "hold", what, mend)
                        break


def _secured(plan: Plan) -> set[str]:
    """Return the conditions that holds establish; dangers are none of them."""
    held = {n for step in plan.steps if isinstance(step.task, Hold) for n in step.establishes}
    return held - plan.hazards


def _closed_by_hold(subject: Subject, procedure: Procedure) -> set[str]:
    return {
        name
        for one in subject.library.procedures.values()
        if one.machine_kind == procedure.machine_kind
        for phase in one.phases
        for block in phase.steps
        if block.hold
        for name in block.ends
    }


def _at(
    subject: Subject, procedure: Procedure, step: Step, field: str, what: str, mend: str
) -> Fault:
    where = (*place_of(procedure, step.id), field)
    return subject.fault(procedure.file, where, what, mend)
