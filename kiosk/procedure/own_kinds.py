"""Where a site keeps machine kinds of its own: which files there are, and which kind each is of."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import Library
from kiosk.procedure.yaml_source import read_yaml

OWN: Final = "procedures"
"""Folder of a data folder, laid out as the shipped one of this name."""
AS_COPIED: Final = "as-copied"
"""In it, the files as they were when they were copied, laid out in the same way."""

_NOT_READ: Final = ("common.yaml", "limits/*.yaml", "laboratory/*.yaml")
"""What all kinds share comes with the kiosk alone."""


@dataclass(frozen=True, slots=True)
class OwnKind:
    """The files of one machine kind of the site's own."""

    id: str
    file: Path
    procedures: tuple[Path, ...]
    schedule: Path
    """What is due on its machines; it need not be there."""

    @property
    def checked(self) -> tuple[Path, ...]:
        """The files that say what is walked."""
        return self.file, *self.procedures

    @property
    def all(self) -> tuple[Path, ...]:
        """Every file that is there."""
        return (*self.checked, *([self.schedule] if self.schedule.is_file() else ()))


@dataclass(frozen=True, slots=True)
class Found:
    """What lies in the folder of a site's own kinds."""

    kinds: tuple[OwnKind, ...] = ()
    faults: tuple[Fault, ...] = ()
    """Why some files are not used."""
    clashing: tuple[Fault, ...] = ()
    """Of these, kinds that are called as one of the kiosk's."""


def find(folder: Path, shipped: Library) -> Found:
    """Return what lies in a data folder's `procedures`.

    A file that has the name of a shipped one is not used: in its place it would change, unseen,
    what the next version of the kiosk brings, and a record would not tell which of the two it was.
    """
    own = folder / OWN
    if not own.is_dir():
        return Found()
    files = {path.stem: path for path in sorted((own / "machines").glob("*.yaml"))}
    clashing = tuple(_taken(path) for name, path in files.items() if name in shipped.kinds)
    kinds = {name: path for name, path in files.items() if name not in shipped.kinds}
    procedures: dict[str, list[Path]] = {}
    faults = [*clashing, *_not_read(own, kinds)]
    for path in sorted(own.glob("*.yaml")):
        if path.name in _NOT_READ:
            continue
        kind = _kind_of(path, kinds)
        if path.stem in shipped.procedures:
            faults.append(_taken(path))
        elif kind in kinds:
            procedures.setdefault(kind, []).append(path)
        else:
            faults.append(_no_kind(path, kind, shipped))
    found = (
        OwnKind(name, path, tuple(procedures.get(name, ())), own / "review" / path.name)
        for name, path in kinds.items()
    )
    return Found(tuple(found), tuple(faults), clashing)


def twin(file: Path) -> Path:
    """Return where a file of a site's own lies as it was copied."""
    folder = file.parent
    if folder.name in ("machines", "review"):
        return folder.parent / AS_COPIED / folder.name / file.name
    return folder / AS_COPIED / file.name


def _kind_of(path: Path, kinds: dict[str, Path]) -> str:
    """Return the kind that a procedure says it is for; where it says none, the one in its name."""
    try:
        data = read_yaml(path).data
    except FaultyFile:
        data = None
    if isinstance(data, dict) and isinstance(data.get("machine_kind"), str):
        return str(data["machine_kind"])
    ending = [name for name in kinds if path.stem.endswith(f"-{name}")]
    return max(ending, key=len, default="")


def _taken(path: Path) -> Fault:
    what = f"the kiosk has '{path.stem}' itself, and no file of a site's own takes its place"
    mend = "give the file, and the id in it, another name; 'kiosk setup --copy KIND --as NAME' does"
    return Fault(str(path), 0, "id", what, mend)


def _no_kind(path: Path, kind: str, shipped: Library) -> Fault:
    name = str(path)
    if kind in shipped.kinds:
        what = f"it is for '{kind}', a kind that comes with the kiosk, and is not used"
        mend = f"copy the kind with 'kiosk setup --copy {kind} --as NAME', and write its name here"
        return Fault(name, 0, "machine_kind", what, mend)
    what = f"there is no kind of machine '{kind}' here" if kind else "it is for no kind of machine"
    mend = f"write the name of a file in {path.parent / 'machines'} at 'machine_kind:'"
    return Fault(name, 0, "machine_kind", what, mend)


def _not_read(own: Path, kinds: dict[str, Path]) -> Iterator[Fault]:
    found = [path for pattern in _NOT_READ for path in own.glob(pattern)]
    found += [one for one in (own / "review").glob("*.yaml") if one.stem not in kinds]
    for path in sorted(found):
        what = "it is not read: here belong machine kinds, their procedures and what is due on them"
        yield Fault(str(path), 0, "", what, "take the file away")
