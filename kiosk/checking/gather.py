"""The shipped files with some of them replaced, or with others beside them."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Sequence
from dataclasses import dataclass
from pathlib import Path
from typing import TypeVar

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import Library, load_procedure, load_record
from kiosk.procedure.model import Common, LimitsProfile, MachineKind, Procedure
from kiosk.procedure.yaml_source import YamlSource, read_yaml

Record = TypeVar("Record")
Address = tuple[str, str]
"""What a file is (`procedure`, `kind`, `limits` or `common`), and its id."""


class Sources(dict[str, YamlSource]):
    """The files by their paths, each read again when one of its lines is asked for."""

    def __missing__(self, file: str) -> YamlSource:
        """Read a file."""
        source = self[file] = read_yaml(Path(file))
        return source


@dataclass(frozen=True, slots=True, kw_only=True)
class Gathered:
    """All that could be read, and the faults of what could not."""

    library: Library | None
    """None when common.yaml cannot be read: nothing can be said without it."""
    files: dict[Address, str]
    checked: tuple[str, ...]
    """Ids of the procedures to check."""
    scope: frozenset[str] | None
    """Files whose faults are to be told; None for all."""
    faults: tuple[Fault, ...]

    def count(self, sort: str) -> int:
        """Return how many files of a sort there are, readable or not."""
        return sum(of == sort for of, _ in self.files)


def gather(files: Sequence[Path], folder: Path) -> Gathered:
    """Read a procedures folder, with `files` in place of those of the same kind and id.

    Without files everything is checked; else the files, and the procedures that lean on a machine
    kind, a limits profile or a common.yaml among them.
    """
    found = _shipped(folder)
    faults: list[Fault] = []
    given: set[Address] = set()
    for path in files:
        try:
            address = _address(path)
        except FaultyFile as error:
            faults += error.faults
            continue
        if address in given:
            what, mend = f"'{found[address]}' has the same id", "check one of the two at a time"
            faults.append(Fault(str(path), 0, "id", what, mend))
        found[address] = path
        given.add(address)
    if not any(sort == "procedure" for sort, _ in found):
        what, mend = "no procedure lies there", "put procedure files into this folder"
        faults.append(Fault(str(folder), 0, "", what, mend))
    reading = _Reading(found)
    library = reading.library()
    faults += reading.faults
    procedures = {} if library is None else library.procedures
    checked = {one.id for one in procedures.values() if not files or _leans_on(one, given)}
    names = given | {("procedure", name) for name in checked}
    scope = frozenset({*map(str, files), *(str(found[one]) for one in names)})
    return Gathered(
        library=library,
        files={address: str(path) for address, path in found.items()},
        checked=tuple(sorted(checked)),
        scope=scope if files else None,
        faults=tuple(faults),
    )


def _shipped(folder: Path) -> dict[Address, Path]:
    common = folder / "common.yaml"
    found: dict[Address, Path] = {("common", "common"): common}
    found.update({("procedure", p.stem): p for p in sorted(folder.glob("*.yaml")) if p != common})
    for sort, name in (("kind", "machines"), ("limits", "limits")):
        found.update({(sort, p.stem): p for p in sorted((folder / name).glob("*.yaml"))})
    return found


def _address(path: Path) -> Address:
    """Return what a given file is, by the fields that only one kind of file has."""
    data = read_yaml(path).data
    keys = set(data) if isinstance(data, dict) else set()
    if keys & {"conditions", "problems"}:
        return "common", "common"
    if keys & {"parts", "hoppers", "options"}:
        return "kind", path.stem
    if "edition" in keys:
        return "limits", path.stem
    return "procedure", path.stem


def _leans_on(procedure: Procedure, given: Iterable[Address]) -> bool:
    return any(
        sort == "common"
        or (sort, name)
        in (
            ("procedure", procedure.id),
            ("kind", procedure.machine_kind),
            ("limits", procedure.limits),
        )
        for sort, name in given
    )


class _Reading:
    """Files while they are read."""

    def __init__(self, found: dict[Address, Path]) -> None:
        self._found = found
        self.faults: list[Fault] = []

    def library(self) -> Library | None:
        kinds = self._all("kind", lambda path: load_record(path, MachineKind))
        limits = self._all("limits", lambda path: load_record(path, LimitsProfile))
        procedures = self._all("procedure", load_procedure)
        common = self._all("common", lambda path: load_record(path, Common)).get("common")
        if common is None:
            return None
        return Library(common=common, kinds=kinds, limits=limits, procedures=procedures)

    def _all(self, sort: str, load: Callable[[Path], Record]) -> dict[str, Record]:
        loaded: dict[str, Record] = {}
        for (of, name), path in self._found.items():
            if of != sort:
                continue
            try:
                loaded[name] = load(path)
            except FaultyFile as error:
                self.faults += error.faults
        return loaded
