"""YAML files to typed records; every fault names file, line, field and the mend."""

from __future__ import annotations

import difflib
from collections.abc import Callable, Mapping
from dataclasses import dataclass, field, fields, is_dataclass
from functools import cache
from pathlib import Path
from typing import Any, Final, TypeVar, get_args, get_type_hints

from pydantic import TypeAdapter, ValidationError

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.model import Common, LimitsProfile, MachineKind, Procedure
from kiosk.procedure.review_rules import KindSchedule
from kiosk.procedure.yaml_source import Where, YamlSource, dotted, read_yaml

Record = TypeVar("Record")


@dataclass(frozen=True, slots=True, kw_only=True)
class Library:
    """All that lies under a procedures folder, and the machine kinds of a site's own."""

    common: Common
    kinds: dict[str, MachineKind]
    limits: dict[str, LimitsProfile]
    procedures: dict[str, Procedure]
    faults: tuple[Fault, ...] = ()
    """Procedures that could not be loaded; the others can still be walked."""
    own: frozenset[str] = frozenset()
    """Ids of the kinds that are the site's own, and not shipped with the kiosk."""
    spoilt: Mapping[str, tuple[Fault, ...]] = field(default_factory=dict)
    """Own kinds against which something stands, by id: none is chosen for a new machine. What of
    one is sound may be here all the same, so that a machine can be closed."""
    own_schedules: tuple[KindSchedule, ...] = ()

    def against(self, kind: str) -> tuple[Fault, ...]:
        """Return what stands against a kind of the site's own; nothing for a shipped one."""
        is_own = kind in self.own or kind not in self.kinds
        return self.spoilt.get(kind, ()) if is_own else ()


def load_procedure(path: Path) -> Procedure:
    """Load one procedure file; its id must be the file's stem. Raises FaultyFile."""
    source = read_yaml(path)
    if isinstance(source.data, dict):
        source.data["file"] = source.file
        _number_steps(source)
    procedure = _typed(source, Procedure)
    _check_stem(source, path, procedure.id)
    return procedure


def load_record(path: Path, record: type[Record]) -> Record:
    """Load a machine kind, a limits profile or the common file. Raises FaultyFile."""
    source = read_yaml(path)
    loaded = _typed(source, record)
    if hasattr(loaded, "id"):
        _check_stem(source, path, str(loaded.id))
    return loaded


def load_library(folder: Path) -> Library:
    """Load a whole procedures folder.

    A faulty procedure is left out and reported in `faults`. Raises FaultyFile when what all
    procedures lean on (common.yaml, machines/, limits/) is faulty.
    """
    faults: list[Fault] = []
    procedures: dict[str, Procedure] = {}
    for path in sorted(folder.glob("*.yaml")):
        if path.name == "common.yaml":
            continue
        try:
            procedures[path.stem] = load_procedure(path)
        except FaultyFile as error:
            faults.extend(error.faults)
    kinds = [load_record(p, MachineKind) for p in sorted((folder / "machines").glob("*.yaml"))]
    limits = [load_record(p, LimitsProfile) for p in sorted((folder / "limits").glob("*.yaml"))]
    return Library(
        common=load_record(folder / "common.yaml", Common),
        kinds={kind.id: kind for kind in kinds},
        limits={profile.id: profile for profile in limits},
        procedures=procedures,
        faults=tuple(faults),
    )


def _number_steps(source: YamlSource) -> None:
    """Write each step's line into it, for later reports."""
    phases = source.data.get("phases")
    for p, phase in enumerate(phases if isinstance(phases, list) else ()):
        steps = phase.get("steps") if isinstance(phase, dict) else None
        for s, step in enumerate(steps if isinstance(steps, list) else ()):
            if isinstance(step, dict):
                step["line"] = source.line(("phases", p, "steps", s))


def _check_stem(source: YamlSource, path: Path, found: str) -> None:
    if found != path.stem:
        what = f"the id is '{found}' but the file is called '{path.name}'"
        mend = f"write 'id: {path.stem}' or rename the file to '{found}.yaml'"
        raise FaultyFile([Fault(source.file, source.line(("id",)), "id", what, mend)])


def _typed(source: YamlSource, record: type[Record]) -> Record:
    try:
        read: Record = _reader(record).validate_python(source.data)
    except ValidationError as error:
        raise FaultyFile([_fault(source, record, one) for one in error.errors()]) from error
    return read


_reader: Final[Callable[[Any], TypeAdapter[Any]]] = cache(TypeAdapter)
"""What reads a record. To make one takes longer than to read a file with it."""


def _fault(source: YamlSource, record: type, error: Any) -> Fault:
    where: Where = tuple(error["loc"])
    kind, context = error["type"], error.get("ctx", {})
    name = str(where[-1]) if where else "the file"
    what, mend = str(error["msg"]), "write a value that fits"
    match kind:
        case "missing" | "missing_argument" | "missing_keyword_only_argument":
            what, mend = f"'{name}' is missing", f"add '{name}:' here"
        case "extra_forbidden" | "unexpected_keyword_argument":
            known = _fields_at(record, where[:-1])
            near = difflib.get_close_matches(name, known, 1)
            what = f"'{name}' is not known here"
            mend = f"write '{near[0]}'" if near else f"use one of: {', '.join(sorted(known))}"
        case "enum" | "literal_error":
            what = f"'{error['input']}' is not one of the allowed words"
            mend = f"use {context.get('expected', 'an allowed word')}"
        case "dataclass_type" | "dict_type" | "mapping_type":
            what = f"'{name}' must hold named fields"
            mend = "write 'field: value' lines below it, indented"
        case "tuple_type" | "list_type":
            what, mend = f"'{name}' must be a list", "write it as [one, two] or as '- ' lines"
        case "string_type":
            what, mend = f"'{name}' must be text", "put it in quotes"
        case "int_type" | "int_parsing" | "int_from_float" | "decimal_type" | "decimal_parsing":
            what, mend = f"'{error['input']}' is not a number", "write a plain number, as 4.5"
    return Fault(source.file, source.line(where), dotted(where), what, mend)


def _fields_at(record: Any, where: Where) -> list[str]:
    """Return the field names that may stand at a path."""
    for part in where:
        options = [record, *get_args(record)]
        record = next((one for one in options if is_dataclass(one)), None)
        if isinstance(part, int) or record is None:
            continue
        hint = get_type_hints(record).get(part)
        nested = [hint, *get_args(hint)]
        nested += [inner for one in nested for inner in get_args(one)]
        record = next((one for one in nested if is_dataclass(one)), None)
    if record is None or not is_dataclass(record):
        return []
    return [one.name for one in fields(record) if one.name not in ("line", "file")]
