"""A rule for what a step points at: there must be a drawing of it."""

from __future__ import annotations

import difflib
from collections.abc import Iterator

from kiosk.checking.subject import Subject, blocks
from kiosk.pictures.gallery import PICTURES
from kiosk.procedure.fault import Fault
from kiosk.procedure.model import MachineKind


def unknown_picture(subject: Subject) -> Iterator[Fault]:
    """A step or a part names a drawing that there is not."""
    for kind, file in subject.whole_kinds():
        for name, part in kind.parts.items():
            if part.picture and part.picture not in PICTURES:
                what = f"there is no picture '{part.picture}'"
                yield subject.fault(file, ("parts", name, "picture"), what, _mend(part.picture))
    for procedure in subject.procedures():
        kind_or_none = subject.library.kinds.get(procedure.machine_kind)
        for where, block in blocks(procedure):
            name = _picture(block.shows, kind_or_none)
            if block.shows and name not in PICTURES:
                what = f"there is no picture of '{block.shows}'"
                yield subject.fault(
                    procedure.file, (*where, "shows"), what, _mend(block.shows, kind_or_none)
                )


def _picture(shows: str, kind: MachineKind | None) -> str:
    part = kind.parts.get(shows) if kind else None
    return part.picture or shows if part else shows


def _mend(name: str, kind: MachineKind | None = None) -> str:
    known = [*PICTURES, *(kind.parts if kind else ())]
    near = difflib.get_close_matches(name, known, 1)
    return f"write '{near[0]}'" if near else "see 'kiosk draw --parts' for all that are drawn"
