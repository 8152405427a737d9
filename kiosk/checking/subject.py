"""What is checked: the files, what was read from them, and the plans that they make."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass, fields, is_dataclass
from typing import NamedTuple, TypeGuard

from kiosk.checking.instruments import Instruments
from kiosk.procedure.fault import Fault
from kiosk.procedure.load import Library
from kiosk.procedure.model import MachineKind, Procedure, StepBlock, Text
from kiosk.procedure.plan import Plan, Step
from kiosk.procedure.yaml_source import Where, YamlSource, dotted


class Sentence(NamedTuple):
    """A text in all its languages, and its place in the file."""

    where: Where
    text: Text


@dataclass(frozen=True, slots=True, kw_only=True)
class Subject:
    """The files under check, together with those that they lean on."""

    library: Library
    sources: Mapping[str, YamlSource]
    """Every file by its path as text, for the line of each field."""
    files: Mapping[tuple[str, str], str]
    """(`procedure`, `kind`, `limits` or `common`, id) to the path of the file."""
    checked: tuple[str, ...]
    """Ids of the procedures under check; the library may hold more."""
    plans: Mapping[str, tuple[Plan, ...]]
    """Procedure id to its different plans, one for each choice of options that makes one."""
    whole: bool
    """False when a procedure could not be read, so that what seems unused may be used there."""
    languages: tuple[str, ...]
    """Languages that every sentence needs."""
    instruments: Instruments

    def fault(self, file: str, where: Where, what: str, mend: str) -> Fault:
        """Return a fault at the line of a path into a file."""
        source = self.sources[file]
        return Fault(file, source.line(where), self._field(source, where), what, mend)

    def _field(self, source: YamlSource, where: Where) -> str:
        """Return a path as people write it, a step by its id."""
        match where:
            case ("phases", int(p), "steps", int(s), *rest):
                step = source.data["phases"][p]["steps"][s]
                return ".".join(str(part) for part in (step.get("id", s), *rest))
            case _:
                return dotted(where)

    def procedures(self) -> Iterator[Procedure]:
        """Yield the procedures under check that could be read."""
        for name in self.checked:
            if name in self.library.procedures:
                yield self.library.procedures[name]

    def whole_kinds(self) -> Iterator[tuple[MachineKind, str]]:
        """Yield each kind of machine whose procedures are all there, with its file."""
        for kind in self.library.kinds.values() if self.whole else ():
            if self.of_kind(kind):
                yield kind, self.files["kind", kind.id]

    def steps(self, procedure: Procedure) -> Iterator[tuple[Plan, Step]]:
        """Yield each step once, with the first plan that has it."""
        seen: set[str] = set()
        for plan in self.plans.get(procedure.id, ()):
            for step in plan.steps:
                if step.id not in seen:
                    seen.add(step.id)
                    yield plan, step

    def of_kind(self, kind: MachineKind) -> list[Procedure]:
        """Return all procedures for a kind of machine, under check or not."""
        return [one for one in self.library.procedures.values() if one.machine_kind == kind.id]

    def records(self) -> Iterator[tuple[str, object]]:
        """Yield each record that has sentences, with its file."""
        library = self.library
        for (sort, name), file in self.files.items():
            match sort:
                case "procedure":
                    record: object = library.procedures.get(name)
                case "kind":
                    record = library.kinds.get(name)
                case "limits":
                    record = library.limits.get(name)
                case _:
                    record = library.common
            if record is not None:
                yield file, record


def blocks(procedure: Procedure) -> Iterator[tuple[Where, StepBlock]]:
    """Yield every step of a procedure as its file has it, whatever the options."""
    for p, phase in enumerate(procedure.phases):
        for s, block in enumerate(phase.steps):
            yield ("phases", p, "steps", s), block


def place_of(procedure: Procedure, step: str) -> Where:
    """Return the path of a step by its id; the top of the file when there is none."""
    return next((where for where, block in blocks(procedure) if block.id == step), ())


def sentences(record: object, where: Where = ()) -> Iterator[Sentence]:
    """Yield every sentence of a record, in the order of its fields."""
    if is_dataclass(record) and not isinstance(record, type):
        for field in fields(record):
            value = getattr(record, field.name)
            if str(field.type).split(" | ")[0] == "Text":
                if _is_text(value):
                    yield Sentence((*where, field.name), value)
            else:
                yield from sentences(value, (*where, field.name))
    elif isinstance(record, Mapping):
        for key, value in record.items():
            yield from sentences(value, (*where, key))
    elif isinstance(record, tuple):
        for place, value in enumerate(record):
            yield from sentences(value, (*where, place))


def _is_text(value: object) -> TypeGuard[Text]:
    return isinstance(value, Mapping)
