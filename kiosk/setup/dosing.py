"""What a sanitizer's figures lead to: the sentence that a worker will hear at the machine."""

from __future__ import annotations

from dataclasses import dataclass
from typing import Any, Final

from pydantic import TypeAdapter, ValidationError

from kiosk.languages.words import Words
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library
from kiosk.procedure.model import Procedure
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Machine, Site
from kiosk.setup.draft import Draft

_NOBODY: Final[dict[str, Any]] = {
    "languages": ["en"],
    "people": [{"id": "nobody", "name": "nobody", "language": "en"}],
}
"""What stands for answers that come later and have no bearing on a dose."""


@dataclass(frozen=True, slots=True)
class Mixed:
    """What is said at one machine, or why no dose can be worked out for it."""

    machine: str
    told: str
    good: bool


def mixes(draft: Draft, library: Library, words: Words) -> tuple[Mixed, ...]:
    """Return, for each machine, what is said where a solution is mixed: each sentence once."""
    try:
        site = TypeAdapter(Site).validate_python({**_NOBODY, **draft.document.data})
    except ValidationError:
        return ()
    found = [
        mixed
        for machine in site.machines
        for procedure in library.procedures.values()
        if procedure.machine_kind == machine.kind
        for mixed in _mixed(library, procedure, machine, site, words)
    ]
    return tuple(dict.fromkeys(found))


def _mixed(
    library: Library, procedure: Procedure, machine: Machine, site: Site, words: Words
) -> list[Mixed]:
    mixing = [s for p in procedure.phases for s in p.steps if s.mix is not None]
    if not mixing:
        return []
    try:
        plan: Plan = fit(library, procedure, machine, site, lambda q, _: words.quantity(q))
    except FaultyFile as error:
        places = {f"{one.id}.mix" for one in mixing}
        wrong = [one.what for one in error.faults if one.field in places]
        return [Mixed(machine.name, one, False) for one in dict.fromkeys(wrong)]
    ids = {one.id for one in mixing}
    return [Mixed(machine.name, words.text(s.say), True) for s in plan.steps if s.id in ids]
