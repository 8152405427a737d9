"""Rules for what is required without a word: what a condition needs, and what a step waives."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.checking.subject import Subject, blocks, place_of
from kiosk.procedure.fault import Fault
from kiosk.procedure.plan import Plan, Step


def waives_nothing(subject: Subject) -> Iterator[Fault]:
    """A step is done regardless of a condition that it would not require anyhow."""
    for procedure in subject.procedures():
        plans = subject.plans.get(procedure.id, ())
        open_to = {(step.id, name) for plan in plans for step, name in _carried_to(plan)}
        fitted = {step.id for plan in plans for step in plan.steps}
        for where, block in blocks(procedure):
            for name in block.regardless if block.id in fitted else ():
                if name in block.requires or (block.id, name) not in open_to:
                    what = f"it would not require '{name}' without this line"
                    if name in block.requires:
                        what = f"it requires '{name}' and is done regardless of it"
                    mend = f"take '{name}' out of 'regardless'"
                    yield subject.fault(procedure.file, (*where, "regardless"), what, mend)


def _carried_to(plan: Plan) -> Iterator[tuple[Step, str]]:
    """Yield each step with each condition that lapses, is in force there, and could be waived."""
    in_force: set[str] = set()
    for step in plan.steps:
        if not plan.lapsing & set(step.establishes):
            yield from ((step, name) for name in in_force - set(step.ends))
        in_force = (in_force - set(step.ends)) | (plan.lapsing & set(step.establishes))


def need_undercut(subject: Subject) -> Iterator[Fault]:
    """A step ends what a condition needs that is still in force, as a proof without isolation."""
    for procedure in subject.procedures():
        told: set[tuple[str, str]] = set()
        for plan in subject.plans.get(procedure.id, ()):
            in_force: set[str] = set()
            for step in plan.steps:
                in_force = (in_force - set(step.ends)) | set(step.establishes)
                for name, need in sorted(_undercut(plan, in_force, step.ends)):
                    if (step.id, name) not in told:
                        told.add((step.id, name))
                        what = f"it ends '{need}', which '{name}' needs, and '{name}' goes on"
                        mend = f"let it end '{name}' too, or end '{name}' in a step before it"
                        where = (*place_of(procedure, step.id), "ends")
                        yield subject.fault(procedure.file, where, what, mend)


def _undercut(plan: Plan, in_force: set[str], ended: tuple[str, ...]) -> set[tuple[str, str]]:
    return {
        (name, need)
        for name in in_force
        for need in plan.conditions[name].needs
        if need in ended and need not in in_force
    }


def need_outlived(subject: Subject) -> Iterator[Fault]:
    """A condition outlives an absence, and something that it needs does not."""
    conditions = subject.library.common.conditions
    plans = [plan for some in subject.plans.values() for plan in some]
    lapsing = {name for plan in plans for name in plan.lapsing}
    used = {name for plan in plans for step in plan.steps for name in step.establishes}
    file = subject.files.get(("common", "common"), "")
    for name in sorted(used - lapsing):
        for need in conditions[name].needs:
            if need in lapsing:
                what = f"'{name}' needs '{need}', which lapses, and does not lapse itself"
                mend = f"write 'lapses: true' at '{name}'"
                yield subject.fault(file, ("conditions", name, "needs"), what, mend)
