"""Rules for what stands in a file and changes nothing."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.checking.sentences import PLACE
from kiosk.checking.subject import Subject, blocks, sentences
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import MachineKind, StepBlock


def option_unused(subject: Subject) -> Iterator[Fault]:
    """No step of any procedure depends on an option of its machine, or on one value of it."""
    for kind, file, steps in _kinds(subject):
        used = {choice for block in steps for choice in block.when.items()}
        for name, values in kind.options.items():
            unused = [value for value in values if (name, value) not in used]
            if unused:
                which = (
                    "" if len(unused) == len(values) else f" with the value '{', '.join(unused)}'"
                )
                what = f"the option '{name}'{which} changes no step of any procedure"
                mend = f"write 'when: {{{name}: ...}}' at a step, or take the option away"
                yield subject.fault(file, ("options", name), what, mend)


def setting_unused(subject: Subject) -> Iterator[Fault]:
    """No step of any procedure uses a setting of its machine."""
    for kind, file, steps in _kinds(subject):
        used = {name for block in steps for name in _settings(block)}
        for name in kind.settings:
            if name not in used:
                what = f"no step of any procedure uses the setting '{name}'"
                mend = "use it in a step, or take it away"
                yield subject.fault(file, ("settings", name), what, mend)


def condition_unused(subject: Subject) -> Iterator[Fault]:
    """No step of any procedure requires, establishes or ends a condition."""
    steps = [block for one in subject.library.procedures.values() for _, block in blocks(one)]
    used = {n for block in steps for n in (*block.requires, *block.establishes, *block.ends)}
    file = subject.files.get(("common", "common"), "")
    for name in subject.library.common.conditions if subject.whole else ():
        if name not in used:
            what = f"no step requires, establishes or ends '{name}'"
            yield subject.fault(file, ("conditions", name), what, "use it, or take it away")


def limit_unused(subject: Subject) -> Iterator[Fault]:
    """No step of any procedure is judged by a limit."""
    used = {
        task.limit
        for procedure in subject.library.procedures.values()
        for _, block in blocks(procedure)
        for task in (block.measure, block.mix, block.wait)
        if task is not None
    }
    for profile in subject.library.limits.values() if subject.whole else ():
        for name in profile.limits:
            if name not in used:
                what = f"no step is judged by the limit '{name}'"
                mend = "name it in a measure, a mix or a wait, or take it away"
                yield subject.fault(
                    subject.files["limits", profile.id], ("limits", name), what, mend
                )


def _kinds(subject: Subject) -> Iterator[tuple[MachineKind, str, list[StepBlock]]]:
    """Yield each kind of machine with its file and the steps of all its procedures."""
    for kind, file in subject.whole_kinds():
        yield kind, file, [block for one in subject.of_kind(kind) for _, block in blocks(one)]


def _settings(block: StepBlock) -> Iterator[str]:
    """Yield each setting that a step uses."""
    if block.wait:
        yield block.wait.at_least
    if block.mix:
        yield block.mix.volume
    if block.measure:
        yield block.measure.unit
    for sentence in sentences(block):
        for text in sentence.text.values():
            yield from PLACE.findall(text)
