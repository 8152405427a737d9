"""The question which kind a machine is: the shipped kinds, and those of the site's own."""

from __future__ import annotations

from collections.abc import Callable

from kiosk.languages.words import Words
from kiosk.procedure.fault import Fault
from kiosk.procedure.load import Library
from kiosk.procedure.model import MachineKind
from kiosk.screens.setup_flow import Flow
from kiosk.screens.setup_page import Item
from kiosk.setup.questions import Question
from kiosk.setup.said import kind_name, reason_told


def choose_kind(
    flow: Flow,
    question: Question,
    back: Callable[[], object],
    taken: Callable[[MachineKind], object],
    *,
    now: str = "",
) -> None:
    """Ask for a kind of machine: a shipped one, or a sound one of this site's own."""
    library, said = flow.library, flow.words

    def items() -> list[Item]:
        sound = [
            Item(one, said.text(one.title), _told(one, library, said), marked=one.id == now)
            for one in library.kinds.values()
            if not library.against(one.id)
        ]
        return [*sound, *map(spoilt, library.spoilt.items())]

    def spoilt(one: tuple[str, tuple[Fault, ...]]) -> Item:
        kind, faults = one
        why = said.say("setup-kind-spoilt", why=reason_told(faults[0]))
        name = kind_name(library.kinds[kind] if kind in library.own else None, kind, said)
        return Item(kind, name, f"{said.say('setup-kind-own', kind=kind)}\n{why}", available=False)

    def chosen(one: object) -> None:
        if isinstance(one, MachineKind):
            taken(one)

    flow.choose(flow.asked(question, "kind"), flow.ways(question, back), items, chosen)


def _told(kind: MachineKind, library: Library, said: Words) -> str:
    parts = sum(one.count for one in kind.parts.values())
    told = said.say("setup-kind-is", hoppers=kind.hoppers, parts=parts)
    own = said.say("setup-kind-own", kind=kind.id) if kind.id in library.own else ""
    return f"{own}\n{told}".strip()
