"""The questions of the setup about the sanitizer: every figure comes from its label."""

from __future__ import annotations

from decimal import Decimal
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.screens.setup_flow import Flow
from kiosk.screens.setup_page import Asked, Item
from kiosk.setup.dosing import mixes
from kiosk.setup.limits import bounds_told
from kiosk.setup.questions import Question

_PERCENT: Final = Decimal(100)
_MOST_GRAMS: Final = Decimal(1000)
_LIMIT: Final = "sanitizer strength"


def chlorine(flow: Flow, question: Question) -> None:
    """Ask for the percent of available chlorine; it is kept as a share."""
    say = flow.words.say

    def fault(text: str) -> str:
        return "" if 0 < Decimal(text) <= _PERCENT else say("setup-no-percent", text=text)

    def taken(text: str) -> None:
        flow.draft.put(question.path, Decimal(text) / _PERCENT)
        flow.answered(question)

    flow.count(flow.asked(question), flow.ways(question), taken, fault, unit="%")


def packet(flow: Flow, question: Question) -> None:
    """Ask for the grams of one packet."""
    say = flow.words.say

    def fault(text: str) -> str:
        return "" if 0 < Decimal(text) <= _MOST_GRAMS else say("setup-no-grams", text=text)

    def taken(text: str) -> None:
        flow.draft.put(question.path, Decimal(text))
        flow.answered(question)

    unit = _unit(flow, "g")
    flow.count(flow.asked(question), flow.ways(question), taken, fault, unit=unit)


def strength(flow: Flow, question: Question) -> None:
    """Ask for the wanted strength, within the chosen limits; then have the dose compared."""
    said = flow.words
    profile = flow.library.limits.get(str(flow.draft.document.get(Question.LIMITS.path)))
    limit = None if profile is None else profile.limits.get(_LIMIT)
    bounds = None if limit is None else limit.bounds.get("mg/L")

    def fault(text: str) -> str:
        wanted = Decimal(text)
        if bounds is None or limit is None:
            return ""
        low = bounds.least is not None and wanted < bounds.least
        high = bounds.most is not None and wanted > bounds.most
        told = bounds_told(limit, said)
        return said.say("setup-strength-off", bounds=told, clause=limit.clause) if (
            low or high
        ) else ""  # fmt: skip

    def taken(text: str) -> None:
        flow.draft.put(question.path, Decimal(text))
        flow.keep()
        _compare(flow, question)

    flow.count(flow.asked(question), flow.ways(question), taken, fault, unit=_unit(flow, "mg/L"))


def _compare(flow: Flow, question: Question) -> None:
    """Show what a worker will hear, to be held against the label."""
    said = flow.words
    found = mixes(flow.draft, flow.library, said)
    if not found:
        flow.answered(question)
        return
    good = all(one.good for one in found)
    lines = [f"{one.machine}: “{one.told}”" if one.good else f"{one.machine}: {one.told}"
             for one in found]  # fmt: skip
    asked = flow.asked(question, "dose" if good else "no-dose")
    asked = Asked(asked.head, asked.question, "\n".join(lines), asked.notice)
    again = Item(False, said.say("setup-figures-again"))
    items = [Item(True, said.say("setup-dose-right"), primary=True), again] if good else [again]

    def taken(right: object) -> None:
        if right:
            flow.answered(question)
        else:
            flow.ask(Question.CHLORINE)

    ways = flow.ways(question, lambda: flow.ask(question))
    flow.choose(asked, ways, lambda: items, taken)


def _unit(flow: Flow, symbol: str) -> str:
    """Return a unit in words."""
    return flow.words.number(Number("2", symbol)).replace("2", "", 1).strip()
