"""Machine kinds of a site's own, beside the shipped ones: used as far as the check finds no error.

What the check found is kept under `checked/` in the data folder, by the hash of all that it rests
on, so that it is made once after each change. The folder may be deleted.
"""

from __future__ import annotations

import hashlib
from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, field, replace
from functools import cache
from importlib import resources
from importlib.resources.abc import Traversable
from pathlib import Path
from typing import Final

from pydantic import TypeAdapter, ValidationError

from kiosk.home import write_private
from kiosk.languages.words import SOURCE, languages
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import Library, load_library, load_procedure, load_record
from kiosk.procedure.load_review import load_kind_schedule
from kiosk.procedure.model import MachineKind, Procedure
from kiosk.procedure.own_kinds import OwnKind, find, twin
from kiosk.procedure.review_rules import KindSchedule
from kiosk.shipped import shipped

CHECKED: Final = "checked"

Tell = Callable[[str], object]


def library_of(folder: Path, spoken: Sequence[str], tell: Tell = lambda _: None) -> Library:
    """Return the shipped library with the kinds of a data folder, as far as they hold.

    An own procedure against which an error stands is left out, and so is all of a kind whose own
    file has one. Sentences must be there in the languages `spoken`, and in English. `tell` is given
    a line before a check, which takes some seconds.
    """
    library = load_library(shipped("procedures"))
    found = find(folder, library)
    joining = _Joining(library, [*library.faults, *found.faults])
    for fault in found.clashing:
        joining.spoilt[Path(fault.file).stem] = (fault,)
    wanted = _wanted(spoken)
    for kind in found.kinds:
        joining.join(kind, folder, wanted, tell)
    return joining.library()


def check_own(kind: OwnKind, spoken: Sequence[str], show: Callable[[str], None]) -> int:
    """Check a kind and say what is found, as `check` does; return 1 for an error, else 0."""
    from kiosk.checking.check import check
    from kiosk.checking.gather import gather

    status = check(kind.checked, shipped("procedures"), show, spoken=_wanted(spoken))
    library = gather(kind.checked, shipped("procedures")).library
    if library is not None and kind.schedule.is_file():
        left_out = {one.stem for one in kind.procedures} - set(library.procedures)
        try:
            load_kind_schedule(kind.schedule, library, left_out)
        except FaultyFile as error:
            for fault in error.faults:
                show(f"error: {fault}")
            return 1
    return status


def _wanted(spoken: Sequence[str]) -> tuple[str, ...]:
    return tuple(one for one in languages() if one == SOURCE or one in spoken)


@dataclass(slots=True)
class _Joining:
    """A library to which kinds are joined."""

    base: Library
    faults: list[Fault]
    spoilt: dict[str, tuple[Fault, ...]] = field(default_factory=dict)
    kinds: dict[str, MachineKind] = field(default_factory=dict)
    procedures: dict[str, Procedure] = field(default_factory=dict)
    schedules: list[KindSchedule] = field(default_factory=list)

    def library(self) -> Library:
        """Return all that holds so far."""
        return replace(
            self.base,
            kinds=self.base.kinds | self.kinds,
            procedures=self.base.procedures | self.procedures,
            faults=tuple(self.faults),
            own=frozenset(self.kinds),
            spoilt=dict(self.spoilt),
            own_schedules=tuple(self.schedules),
        )

    def join(self, kind: OwnKind, folder: Path, spoken: tuple[str, ...], tell: Tell) -> None:
        """Take what holds of a kind."""
        try:
            against = self._take(kind, folder, spoken, tell)
        except FaultyFile as error:
            against = error.faults
        except OSError as error:
            mend = "make the file readable"
            against = [Fault(str(kind.file), 0, "", f"cannot be read ({error})", mend)]
        if against:
            self.spoilt[kind.id] = tuple(against)
            self.faults += against

    def _take(
        self, kind: OwnKind, folder: Path, spoken: tuple[str, ...], tell: Tell
    ) -> list[Fault]:
        """Take what holds of a kind; return what stands against it. Raises FaultyFile, OSError."""
        digest = _digest(kind, spoken)
        against = list(_checked(kind, folder, spoken, digest, tell))
        wrong = {fault.file for fault in against}
        if str(kind.file) in wrong or not wrong <= {str(one) for one in kind.checked}:
            unread = [one for one in against if one.file == str(kind.file) and one.rule == "file"]
            # What follows from that in its procedures is told once it can be read.
            return unread or against
        made = load_record(kind.file, MachineKind)
        sound = [load_procedure(one) for one in kind.procedures if str(one) not in wrong]
        if _digest(kind, spoken) != digest:
            what, mend = "it was changed while it was read", "begin again"
            raise FaultyFile([Fault(str(kind.file), 0, "", what, mend)])
        self.kinds[kind.id] = made
        self.procedures |= {one.id: one for one in sound}
        if kind.schedule.is_file():
            try:
                left_out = {one.stem for one in kind.procedures} - set(self.procedures)
                due = load_kind_schedule(kind.schedule, self.library(), left_out)
                self.schedules.append(due)
            except FaultyFile as error:
                against += error.faults
        return against


# What the check found, and whether it still counts.


_FAULTS: Final = TypeAdapter(tuple[str, tuple[Fault, ...]])


def _checked(
    kind: OwnKind, folder: Path, spoken: tuple[str, ...], digest: str, tell: Tell
) -> tuple[Fault, ...]:
    """Return the errors of a kind as it stands, checked now or before. Raises OSError."""
    file = folder / CHECKED / f"{kind.id}.{'-'.join(spoken)}.json"
    try:
        of, faults = _FAULTS.validate_json(file.read_bytes())
    except (OSError, ValidationError, RecursionError):
        of, faults = "", ()
    if of == digest:
        return faults
    # Imported here, so that a site without kinds of its own does not wait for it.
    from kiosk.checking.check import errors

    tell(f"The machine kind '{kind.id}' is new or was changed: it is checked, which takes a while.")
    faults = errors(kind.checked, shipped("procedures"), spoken)
    try:
        file.parent.mkdir(parents=True, exist_ok=True)
        write_private(file, _FAULTS.dump_json((digest, faults)))
    except OSError:
        # It is checked again the next time.
        return faults
    return faults


def _digest(kind: OwnKind, spoken: Iterable[str]) -> str:
    """Hash the files of a kind, what they lean on, and the rules. Raises OSError."""
    digest = hashlib.sha256(f"{_rules_digest()} {' '.join(spoken)}".encode())
    leans_on = sorted(shipped("procedures").rglob("*.yaml"))
    copied = [one for one in map(twin, kind.checked) if one.is_file()]
    for path in (*leans_on, *kind.checked, *copied):
        data = path.read_bytes()
        # The whole path, for what was found names it: a folder that was moved is checked anew.
        digest.update(f"\n{path} {len(data)}\n".encode())
        digest.update(data)
    return digest.hexdigest()


@cache
def _rules_digest() -> str:
    """Hash the kiosk's own text: under other rules a check is worth nothing."""
    digest = hashlib.sha256()
    for file in _texts(resources.files("kiosk")):
        digest.update(file.read_bytes())
    return digest.hexdigest()


def _texts(folder: Traversable) -> Iterator[Traversable]:
    for one in sorted(folder.iterdir(), key=lambda one: one.name):
        if one.is_dir():
            if not one.name.startswith("_"):
                yield from _texts(one)
        elif one.name.endswith((".py", ".ftl")):
            yield one
