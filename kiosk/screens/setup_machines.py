"""The questions of the setup about each machine: kind, name, options, amounts and times."""

from __future__ import annotations

from collections.abc import Callable, Mapping
from decimal import Decimal
from typing import Any, Final

from kiosk.procedure.model import MachineKind
from kiosk.screens.setup_flow import Flow
from kiosk.screens.setup_kinds import choose_kind
from kiosk.screens.setup_page import Item, Ways
from kiosk.setup.ids import fresh_id
from kiosk.setup.questions import OF_THE_PLACE, Question
from kiosk.setup.said import (
    kind_name,
    option_name,
    setting_name,
    setting_told,
    value_name,
    value_told,
)
from kiosk.trade.units import NotAQuantity, Quantity, quantity

_ADD: Final = "add"
_PLACE: Final = frozenset(one.path.removeprefix("options.") for one in OF_THE_PLACE)
_WHAT: Final = "machines"

Machine = dict[str, Any]


def machines(flow: Flow, question: Question) -> None:
    """Ask for the machines; with none yet, for the first one at once."""
    if not flow.draft.document.listed(_WHAT):
        _Adding(flow, question, lambda: flow.back_from(question)).kind()
        return
    _list(flow, question)


def machine_told(flow: Flow, machine: Machine) -> str:
    """Return the kind of a machine and its own options."""
    said = flow.words
    kind = flow.library.kinds.get(_kind(machine))
    told = [kind_name(kind, _kind(machine), said)]
    told += [value_name(n, str(v), said) for n, v in machine.get("options", {}).items()]
    return "\n".join(told)


def _list(flow: Flow, question: Question) -> None:
    listed = flow.draft.document.listed(_WHAT)

    def items() -> list[Item]:
        found = [
            Item(place, str(one.get("name", "")), machine_told(flow, one))
            for place, one in enumerate(listed)
        ]
        return [*found, Item(_ADD, flow.words.say("setup-add-machine"))]

    def taken(one: object) -> None:
        if isinstance(one, int):
            _Change(flow, question, one).menu()
        else:
            _Adding(flow, question, lambda: _list(flow, question)).kind()

    ways = Ways(lambda: flow.back_from(question), flow.app.stop, lambda: flow.answered(question))
    flow.choose(flow.asked(question), ways, items, taken)


class _Adding:
    """A machine that is added: it is written down once all of it is known."""

    def __init__(self, flow: Flow, question: Question, back: Callable[[], object]) -> None:
        self._flow, self._question, self._back = flow, question, back
        self._kind: MachineKind | None = None
        self._name = ""
        self._options: dict[str, str] = {}

    def kind(self) -> None:
        """Ask which kind it is."""

        def taken(kind: MachineKind) -> None:
            self._kind = kind
            self.name()

        choose_kind(self._flow, self._question, self._back, taken)

    def name(self) -> None:
        """Ask for its name."""

        def taken(text: str) -> None:
            self._name = text
            self.options()

        flow = self._flow
        ways = flow.ways(self._question, self.kind)
        flow.write(flow.asked(self._question, "machine-name"), ways, taken, text=self._name)

    def options(self) -> None:
        """Ask for each option in which machines differ, one after the other."""
        kind = self._kind
        names = [] if kind is None else [one for one in kind.options if one not in _PLACE]
        left = [one for one in names if one not in self._options]
        if kind is None or not left:
            self._add()
            return

        def taken(value: str) -> None:
            self._options[left[0]] = value
            self.options()

        def back() -> None:
            self._options.clear()
            self.name()

        _option(self._flow, self._question, kind, left[0], taken, back, who=self._name)

    def _add(self) -> None:
        flow, kind = self._flow, self._kind
        if kind is None:
            return
        ids = [str(one.get("id", "")) for one in flow.draft.document.listed(_WHAT)]
        record: dict[str, str | Mapping[str, str]] = {
            "id": fresh_id("m", ids, flow.draft.folder), "name": self._name, "kind": kind.id,
        }  # fmt: skip
        if self._options:
            record["options"] = self._options
        flow.draft.add(_WHAT, record)
        flow.keep()
        _Change(flow, self._question, len(ids)).amounts()


class _Change:
    """A machine that is there, and what can be changed of it."""

    def __init__(self, flow: Flow, question: Question, place: int) -> None:
        self._flow, self._question, self._place = flow, question, place

    @property
    def _machine(self) -> Machine:
        return self._flow.draft.document.listed(_WHAT)[self._place]

    @property
    def _kind(self) -> MachineKind | None:
        return self._flow.library.kinds.get(_kind(self._machine))

    def menu(self) -> None:
        """Ask what is to be changed."""
        flow, said = self._flow, self._flow.words
        machine, kind = self._machine, self._kind
        options = {} if kind is None else kind.options
        of_machine = {n: v for n, v in options.items() if n not in _PLACE or n in _own(machine)}

        def items() -> list[Item]:
            chosen, say = _own(machine), said.say
            return [
                Item(self.name, said.say("setup-change-name"), str(machine.get("name", ""))),
                Item(self.kind, said.say("setup-change-kind"),
                     kind_name(kind, _kind(machine), said)),
                *(
                    Item(self._changing(one), option_name(one, said),
                         value_name(one, str(chosen.get(one, values[0])), said))
                    for one, values in of_machine.items()
                ),
                Item(self.amounts, said.say("setup-amounts")),
                Item(self._take_off, say("setup-take-off"), say("setup-take-off-machine")),
            ]  # fmt: skip

        def taken(one: object) -> None:
            if callable(one):
                one()

        ways = flow.ways(self._question, self._list)
        asked = flow.asked(self._question, "machine", who=str(machine.get("name", "")))
        flow.choose(asked, ways, items, taken)

    def name(self) -> None:
        """Ask for another name."""

        def taken(text: str) -> None:
            self._set("name", text)
            self.menu()

        flow = self._flow
        text = str(self._machine.get("name", ""))
        ways = flow.ways(self._question, self.menu)
        flow.write(flow.asked(self._question, "machine-name"), ways, taken, text=text)

    def kind(self) -> None:
        """Ask for another kind; what the machine has of its own and that kind lacks goes."""

        def taken(kind: MachineKind) -> None:
            own, set_ = _own(self._machine), self._machine.get("settings", {})
            kept = {n: v for n, v in own.items() if v in kind.options.get(n, ())}
            for field, values, left in (
                ("options", own, kept),
                ("settings", set_, {n: v for n, v in set_.items() if n in kind.settings}),
            ):
                if values != left:
                    self._set(field, left)
            self._set("kind", kind.id)
            self.amounts()

        choose_kind(self._flow, self._question, self.menu, taken, now=_kind(self._machine))

    def _changing(self, option: str) -> Callable[[], None]:
        def ask() -> None:
            def taken(value: str) -> None:
                self._set("options", {**_own(self._machine), option: value})
                self.menu()

            kind = self._kind
            if kind is not None:
                who, now = str(self._machine.get("name", "")), _own(self._machine).get(option, "")
                _option(self._flow, self._question, kind, option, taken, self.menu, who=who,
                        now=now)  # fmt: skip

        return ask

    def amounts(self) -> None:
        """Have the amounts and times compared with the machine's manual and the labels."""
        flow, said = self._flow, self._flow.words
        kind = self._kind
        if kind is None:
            self._list()
            return

        def items() -> list[Item]:
            own = self._machine.get("settings", {})
            everywhere = flow.draft.document.get("settings") or {}
            return [
                Item(one, setting_name(one, said),
                     setting_told(str(own.get(one, everywhere.get(one, given))), said),
                     marked=one in own)
                for one, given in kind.settings.items()
            ]  # fmt: skip

        def taken(one: object) -> None:
            self._amount(str(one), kind)

        ways = Ways(self._list, flow.app.stop, self._list, said.say("setup-amounts-right"))
        asked = flow.asked(self._question, "amounts", who=str(self._machine.get("name", "")))
        flow.choose(asked, ways, items, taken)

    def _amount(self, setting: str, kind: MachineKind) -> None:
        flow, said = self._flow, self._flow.words
        own = self._machine.get("settings", {})
        try:
            unit = quantity(str(own.get(setting, kind.settings[setting]))).unit
        except NotAQuantity:
            unit = quantity(kind.settings[setting]).unit

        def taken(text: str) -> None:
            self._set("settings", {**self._machine.get("settings", {}), setting: f"{text} {unit}"})
            self.amounts()

        asked = flow.asked(self._question, "amount", what=setting_name(setting, said))
        named = said.quantity(Quantity(Decimal(0), unit)).replace("0", "", 1).strip()
        flow.count(asked, flow.ways(self._question, self.amounts), taken, lambda _: "", unit=named)

    def _take_off(self) -> None:
        flow = self._flow
        flow.draft.document.remove(_WHAT, self._place)
        flow.keep()
        machines(flow, self._question)

    def _set(self, field: str, value: str | Mapping[str, str]) -> None:
        self._flow.draft.document.change(_WHAT, self._place, field, value)
        self._flow.keep()

    def _list(self) -> None:
        _list(self._flow, self._question)


def _kind(machine: Machine) -> str:
    return str(machine.get("kind", ""))


def _own(machine: Machine) -> dict[str, str]:
    return dict(machine.get("options", {}))


def _option(
    flow: Flow,
    question: Question,
    kind: MachineKind,
    option: str,
    taken: Callable[[str], object],
    back: Callable[[], object],
    *,
    who: str,
    now: str = "",
) -> None:
    """Ask for one option of a machine."""
    said = flow.words

    def items() -> list[Item]:
        return [
            Item(one, value_name(option, one, said), value_told(option, one, said),
                 marked=one == now)
            for one in kind.options[option]
        ]  # fmt: skip

    asked = flow.asked(question, "option", who=who, option=option_name(option, said))
    flow.choose(asked, flow.ways(question, back), items, lambda one: taken(str(one)))
