"""A machine kind copied for a site, with its procedures, to be changed there."""

from __future__ import annotations

import re
from collections.abc import Iterable, Mapping
from dataclasses import asdict
from datetime import date
from pathlib import Path
from typing import Any, Final

import yaml

from kiosk import home
from kiosk.procedure.load import Library
from kiosk.procedure.load_review import load_schedule
from kiosk.procedure.own_kinds import AS_COPIED, OWN
from kiosk.procedure.review_rules import Interval
from kiosk.procedure.schema import FOLDER as SCHEMAS
from kiosk.shipped import shipped

NAME: Final = re.compile(r"[a-z][a-z0-9]*(-[a-z0-9]+)*")
_LONGEST: Final = 40
_WHOSE: Final = "own-"
"""What stands before a copy's name when none is given."""
_MODELINE: Final = re.compile(r"\A# yaml-language-server:.*\n")

_KIND_HEAD: Final = """\
# Copied on {day} from the machine kind '{of}', to be changed for a machine of this site.
# To change: the title, so that nobody takes it for the other one; the parts with their counts; the
# settings, as the machine's manual and the labels have them. What no procedure needs goes out.
"""
_PROCEDURE_HEAD: Final = """\
# Copied on {day} from the procedure '{of}', to be changed for a machine of this site.
# To change: whatever the machine's manual says otherwise. A sentence that is changed in English
# must be changed in every language of the crew. A hold stays where it is, unless the machine has
# nothing to be held for. Give the changed file a higher version.
"""
_SCHEDULE_HEAD: Final = """\
# What is due on machines of the kind '{name}', beside the daily opening and closing.
# Written on {day} after what is due on '{of}'. Days between replacements come from the manual
# of the machine's maker; take out what does not hold, and write a source beside what does.
"""
_FOOT: Final = "# 'kiosk check' tells what is wrong. Nothing is walked before it finds no error.\n"


class NotCopied(Exception):
    """A kind was not copied; the message says why and how to mend it. Nothing was written."""


def copy_kind(library: Library, folder: Path, kind: str, name: str, today: date) -> list[Path]:
    """Copy a kind and its procedures into a data folder; return the files to be changed.

    `name` is the copy's, or empty for one made of the kind's. Each file is kept a second time, as
    it was copied. Raises NotCopied, FaultyFile, OSError.
    """
    name = name or f"{_WHOSE}{kind}"
    _settle(library, folder, kind, name)
    source = folder if kind in library.own else shipped("procedures").parent
    renamed = {
        one.id: _renamed(one.id, kind, name)
        for one in library.procedures.values()
        if one.machine_kind == kind
    }
    taken = sorted(set(renamed.values()) & set(library.procedures))
    if taken:
        raise NotCopied(f"There is a procedure '{taken[0]}' already. Give another name with --as.")
    day = {"day": today.isoformat()}
    made = {
        Path("machines") / f"{name}.yaml": _head(_KIND_HEAD, "machine-kind", of=kind, **day)
        + _with(source / OWN / "machines" / f"{kind}.yaml", {"id": (kind, name)})
    }
    for old, new in renamed.items():
        changed = {"id": (old, new), "machine_kind": (kind, name)}
        head = _head(_PROCEDURE_HEAD, "procedure", of=old, **day)
        made[Path(f"{new}.yaml")] = head + _with(Path(library.procedures[old].file), changed)
    head = _head(_SCHEDULE_HEAD, "kind-schedule", of=kind, name=name, **day)
    made[Path("review") / f"{name}.yaml"] = head + _schedule(library, kind, name, renamed)
    return _write(folder / OWN, made)


def _settle(library: Library, folder: Path, kind: str, name: str) -> None:
    """Raise NotCopied for what cannot be copied, or not by that name."""
    if kind in library.spoilt:
        first = library.spoilt[kind][0]
        raise NotCopied(f"'{kind}' is not sound, and is not copied: {first}")
    if kind not in library.kinds:
        known = ", ".join(library.kinds)
        raise NotCopied(f"No kind of machine is called '{kind}'. There are: {known}.")
    if not NAME.fullmatch(name) or len(name) > _LONGEST:
        raise NotCopied(
            f"'{name}' is no name for a kind. Write up to {_LONGEST} small letters, digits and "
            "hyphens, as counter-pump."
        )
    if name in library.kinds or (folder / OWN / "machines" / f"{name}.yaml").exists():
        raise NotCopied(f"There is a kind '{name}' already. Give another name with --as.")


def _renamed(procedure: str, kind: str, name: str) -> str:
    return procedure.replace(kind, name) if kind in procedure else f"{procedure}-{name}"


def _head(text: str, schema: str, **args: str) -> str:
    where = (shipped("procedures") / SCHEMAS / f"{schema}.schema.json").as_uri()
    return f"# yaml-language-server: $schema={where}\n{text.format(**args)}{_FOOT}#\n"


def _with(file: Path, changed: Mapping[str, tuple[str, str]]) -> str:
    """Return the text of a file with other names in it, and all else as it was. Raises NotCopied,
    OSError."""
    text = _MODELINE.sub("", file.read_text(encoding="utf-8"))
    for field, (old, new) in changed.items():
        line = re.compile(rf"^{field}:[ \t]*['\"]?{re.escape(old)}['\"]?[ \t]*$", re.MULTILINE)
        text, found = line.subn(f"{field}: {new}", text)
        if found != 1:
            raise NotCopied(f"{file} has no line of its own that says '{field}: {old}'.")
    return text


def _schedule(library: Library, kind: str, name: str, renamed: Mapping[str, str]) -> str:
    """Return what is due on the copy, after what is due on the kind. Raises FaultyFile."""
    due = load_schedule(library=library)
    record = {
        "id": name,
        "drafted": list(due.drafted),
        "checks": _those(due.check.procedures if due.check else (), renamed),
        "samples": _those(due.samples, renamed),
        "intervals": [
            _interval(one, kind, name, renamed) for one in due.intervals if one.machine_kind == kind
        ],
    }
    return str(yaml.safe_dump(record, allow_unicode=True, sort_keys=False, width=100))


def _those(procedures: Iterable[str], renamed: Mapping[str, str]) -> list[str]:
    return [renamed[one] for one in procedures if one in renamed]


def _interval(one: Interval, kind: str, name: str, renamed: Mapping[str, str]) -> dict[str, Any]:
    record = {key: value for key, value in asdict(one).items() if value is not None}
    record |= {"id": _renamed(one.id, kind, name), "machine_kind": name, "title": dict(one.title)}
    if one.procedure is not None:
        record["procedure"] = renamed.get(one.procedure, one.procedure)
    return record


def _write(folder: Path, made: Mapping[Path, str]) -> list[Path]:
    """Write the files, each twice; where that fails, take back what was written. Raises NotCopied,
    OSError."""
    there = [folder / one for one in made if (folder / one).exists()]
    if there:
        raise NotCopied(f"{there[0]} is there already. Move it away, or give another name.")
    written: list[Path] = []
    try:
        for place, text in made.items():
            for file in (folder / AS_COPIED / place, folder / place):
                file.parent.mkdir(parents=True, exist_ok=True)
                written.append(file)
                home.write_private(file, text)
    except OSError:
        for file in written:
            file.unlink(missing_ok=True)
        raise
    return [folder / one for one in made]
