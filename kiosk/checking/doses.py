"""Rules for doses and readings: contact times, closed lists, and the units of settings."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal

from kiosk.checking.subject import Subject, blocks, place_of
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import Procedure, StepBlock
from kiosk.procedure.plan import JudgedBy, Measure
from kiosk.proof.alphabet import inside
from kiosk.trade.units import NotAQuantity, quantity

CONTACT = "contact time"
"""Name of the limit by which a contact time is judged, in every limits profile."""


def dose_without_contact(subject: Subject) -> Iterator[Fault]:
    """A solution is used up before a wait has held it against the contact time."""
    for procedure in subject.procedures():
        told: set[str] = set()
        for plan in subject.plans.get(procedure.id, ()):
            walked = [block for _, block in blocks(procedure) if block.id in plan.index]
            for place, block in enumerate(walked):
                if block.mix and block.id not in told and not _has_contact(block, walked, place):
                    told.add(block.id)
                    yield _without(subject, procedure, block)


def _has_contact(mix: StepBlock, walked: Sequence[StepBlock], place: int) -> bool:
    """True when a judged wait comes before, or in, the step that ends what the mix established."""
    for later in walked[place + 1 :]:
        if later.mix and set(later.establishes) & set(mix.establishes):
            return False
        if later.wait and later.wait.limit == CONTACT:
            return True
        if set(later.ends) & set(mix.establishes):
            return False
    return False


def _without(subject: Subject, procedure: Procedure, block: StepBlock) -> Fault:
    used = " or ".join(f"'{name}'" for name in block.establishes) or "the procedure"
    what = f"no wait with 'limit: {CONTACT}' follows this mix before {used} ends"
    mend = f"add a step with 'wait: {{at_least: ..., limit: {CONTACT}}}' while the solution works"
    return subject.fault(procedure.file, (*place_of(procedure, block.id), "mix"), what, mend)


def reading_never_passes(subject: Subject) -> Iterator[Fault]:
    """No reading that the kiosk believes lies within the limit."""
    for procedure, step, task, by in _judged(subject):
        if not by.passes(inside(task)):
            what = (
                f"a reading from {task.least} to {task.most} {task.unit} never passes the limit "
                f"'{by.limit}' ({_ends(by, task.unit)})"
            )
            mend = "correct 'least' and 'most', or the limit"
            yield subject.fault(procedure.file, place_of(procedure, step), what, mend)


def choices_hide_limit(subject: Subject) -> Iterator[Fault]:
    """The closed list of a reading lacks values on one side of its limit."""
    for procedure, step, task, by in _judged(subject):
        sides = (
            ("within the limit", [one for one in task.choices if by.passes(one)], True),
            ("below it", [one for one in task.choices if _below(by, one)], _below(by, task.least)),
            ("above it", [one for one in task.choices if _above(by, one)], _above(by, task.most)),
        )
        for side, choices, possible in sides if task.choices else ():
            if possible and not choices:
                what = f"of the choices none lies {side} ({_ends(by, task.unit)})"
                mend = "list every value that the instrument can show, good and bad"
                yield subject.fault(procedure.file, place_of(procedure, step), what, mend)


def _judged(subject: Subject) -> Iterator[tuple[Procedure, str, Measure, JudgedBy]]:
    for procedure in subject.procedures():
        for _, step in subject.steps(procedure):
            if isinstance(step.task, Measure) and step.task.judged_by is not None:
                yield procedure, step.id, step.task, step.task.judged_by


def _below(by: JudgedBy, value: Decimal) -> bool:
    return by.least is not None and value < by.least


def _above(by: JudgedBy, value: Decimal) -> bool:
    return by.most is not None and value > by.most


def _ends(by: JudgedBy, unit: str) -> str:
    if by.least is not None and by.most is not None:
        return f"{by.least} to {by.most} {unit}"
    return f"{by.least} {unit} or more" if by.least is not None else f"{by.most} {unit} or less"


def setting_without_unit(subject: Subject) -> Iterator[Fault]:
    """A setting of a machine kind is no number with a unit, and is not the unit of a reading."""
    for kind in subject.library.kinds.values():
        units = {
            block.measure.unit
            for procedure in subject.of_kind(kind)
            for _, block in blocks(procedure)
            if block.measure
        }
        for name, value in kind.settings.items():
            try:
                quantity(value)
            except NotAQuantity as error:
                if name not in units:
                    where = ("settings", name)
                    mend = "write a number with its unit, as '8 L' or '5 min'"
                    yield subject.fault(subject.files["kind", kind.id], where, str(error), mend)
