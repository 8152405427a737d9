"""A laboratory's result entered on the screen, one question after another."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from datetime import timedelta
from typing import Any, Final

from textual.app import App

from kiosk.procedure.fault import FaultyFile
from kiosk.reckoning.cannot import cannot
from kiosk.review import results as r
from kiosk.review.result_file import sort_out
from kiosk.screens.choose import Item
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import DeskChoice
from kiosk.screens.review_standing import pick
from kiosk.screens.review_write import WriteScreen
from kiosk.trade.authorities import Analysis, Product
from kiosk.trade.rounding import NotAResult, read_amount

_CELLS: Final = ("machine", "barrel", "day", "product", "analysis", "amount", "per", "laboratory",
                 "sample")  # fmt: skip
"""In the order in which they are asked for."""
_DAYS_BACK: Final = 10
"""Days that can be picked; an older one is typed."""
_WRITE: Final = "\n"
"""Stands for the item that leads to typing: no answer can be a line end."""


class Entry:
    """Asks for a result, cell by cell, reads it back, and writes it into the journal.

    `told` is called with what is to be shown when it is done, or with why it was not entered.
    """

    def __init__(self, app: App[Any], desk: Desk, told: Callable[[str], None]) -> None:
        self._app, self._desk, self._told = app, desk, told
        self._say = desk.words.say
        self._cells: dict[str, str] = {}
        self._known = desk.results()
        self._heads = r.heads_of(desk.shop.site, desk.shop.library)

    def ask(self) -> None:
        """Ask the next question; read the result back when there is none."""
        name = next((one for one in _CELLS if one not in self._cells), None)
        if name is None:
            self._read_back()
            return
        items = list(self._items(name))
        question = self._say(f"review-ask-{name}")

        def chosen(answer: str) -> None:
            if answer == _WRITE:
                self._write(name, question)
            else:
                self._take(name, answer)

        if items:
            self._choose(question, items, chosen)
        else:
            self._write(name, question)

    def _choose(self, question: str, items: Sequence[Item], chosen: Callable[[Any], None]) -> None:
        self._app.push_screen(DeskChoice(self._desk, question, items, chosen))

    def _take(self, name: str, answer: str) -> None:
        self._cells[name] = answer
        self.ask()

    def _write(self, name: str, question: str) -> None:
        def written(answer: str) -> None:
            self._take(name, answer)

        def fault(text: str) -> str:
            return self._fault(name, text)

        self._app.push_screen(WriteScreen(self._desk, question, written, fault))

    def _items(self, name: str) -> Iterator[Item]:
        """Yield what can be picked for a cell; nothing where it must be typed."""
        words, cells = self._desk.words, self._cells
        match name:
            case "machine":
                yield from ((one.id, one.name, "") for one in self._desk.shop.site.machines)
            case "barrel":
                for head in self._heads[cells["machine"]]:
                    yield head, self._say(f"review-head-{head}"), ""
            case "day":
                for back in range(_DAYS_BACK):
                    day = str(self._desk.today() - timedelta(days=back))
                    yield day, day, ""
                yield _WRITE, self._say("review-write"), ""
            case "product":
                yield from ((str(one), pick(one, words), "") for one in Product)
            case "analysis":
                yield from ((str(one), pick(one, words), "") for one in Analysis)
            case "per":
                yield from (
                    (one, self._say(f"review-per-{one.lower()}"), "") for one in ("g", "mL")
                )
            case "laboratory":
                names = dict.fromkeys(one.of.laboratory for one in reversed(self._known))
                yield from ((one, one, "") for one in list(names)[:_DAYS_BACK])
                if names:
                    yield _WRITE, self._say("review-write"), ""
            case "sample":
                yield "", self._say("review-no-sample-number"), ""
                yield _WRITE, self._say("review-write"), ""

    def _fault(self, name: str, text: str) -> str:
        """Return what is wrong with a typed cell; nothing when it is right."""
        words = self._desk.words
        if not text:
            return self._say("review-nothing-written")
        if name == "amount":
            try:
                read_amount(text)
            except NotAResult as error:
                return " ".join(words.line(one) for one in cannot(error).lines[1:])
        read = r.read_row({**self._cells, name: text}, self._heads, self._desk.today())
        if isinstance(read, list) and any(field == name for field, _, _ in read):
            return self._say(f"review-wrong-{name}")
        return ""

    def _read_back(self) -> None:
        read = r.read_row(self._cells, self._heads, self._desk.today())
        if isinstance(read, list):
            self._told("; ".join(f"{field} {what}: {mend}" for field, what, mend in read))
            return
        words, of = self._desk.words, read
        per = self._say(f"review-per-{of.per.lower()}")
        told = [
            f"{self._desk.machine(of.machine)} · {self._say(f'review-head-{of.barrel}')}",
            f"{of.day} · {pick(of.product, words)} · {pick(of.analysis, words)}",
            f"{of.amount} {per}",
            f"{of.laboratory} {of.sample}".strip(),
            self._say("review-is-that-right"),
        ]
        items = [(True, self._say("review-enter-it"), ""), (False, self._say("review-again"), "")]

        def chosen(right: bool) -> None:
            if right:
                self._enter(read)
            else:
                self._cells = {}
                self.ask()

        self._choose("\n".join(told), items, chosen)

    def _enter(self, sample: r.Sample) -> None:
        try:
            found = sort_out(self._say("review-this-result"), {0: sample}, self._known)
        except FaultyFile:
            self._told(self._say("review-known-otherwise"))
            return
        if found.again:
            self._told(self._say("review-known-already"))
            return
        desk = self._desk
        why = desk.write(r.entry(sample, desk.supervisor.id, practice=desk.practice))
        self._told(why or self._say("review-entered"))
