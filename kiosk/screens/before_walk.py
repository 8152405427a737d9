"""What is asked before a walk: which procedure, who walks it, and the PINs that it needs."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any

from kiosk.engine.commands import Evidence, Refusal, Start
from kiosk.languages.words import Words, words
from kiosk.people.may import ASKED_FOR, Identified
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Person
from kiosk.screens.choose import ChooseScreen, Item
from kiosk.screens.pin_screen import Doorway
from kiosk.shop import Card, Shop
from kiosk.unfinished import OpenSession

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

Walked = Plan | OpenSession
"""What is walked: a procedure from its first step, or a session found open."""

Begin = Callable[[Start, Evidence, Walked], None]


@dataclass(frozen=True, slots=True)
class BeforeWalk:
    """Leads from a machine that was pressed to the walk that may begin."""

    app: KioskApp
    shop: Shop
    words: Callable[[], Words]
    """The board's, which speaks the language of who is signed in."""
    here: Callable[[], Person | None]
    """Who is signed in; they are not asked who walks."""
    begin: Begin
    told: Callable[[str], None]
    """Takes the sentence that says why nothing can begin."""

    def lead(self, card: Card, by: Evidence) -> None:
        """Ask what is open about a walk on a machine, and begin it. `by` is how it was pressed."""
        if card.unfinished is not None:
            self._choose_worker(card.unfinished, by)
            return
        plans = (*card.due, *card.beside) or card.others
        if not plans:
            self.told(self.words().say("no-procedure"))
            return
        if len(plans) == 1 and card.due:
            self._choose_worker(plans[0], by)
            return
        second = "" if card.due or card.beside else self.words().say("not-due")
        items = [(plan, self.words().text(plan.title), second) for plan in plans]
        asked = self._ask(
            "which-procedure", items, lambda plan: self._choose_worker(plan, asked.answered)
        )

    def _choose_worker(self, what: Walked, by: Evidence) -> None:
        procedure = what.procedure if isinstance(what, Plan) else what.started.procedure

        def walk(worker: Person, named: Evidence) -> None:
            start = Start(worker.id, worker.language)
            door = Doorway(self.app, self.shop, self.words(), procedure)
            door.settle(start, named, then, refused)

        def then(act: Identified, given: Evidence) -> None:
            if isinstance(act, Start):
                self.begin(act, given, what)

        def refused(refusal: Refusal) -> None:
            self.told(self.words().refusal(refusal))

        here = self.here()
        if here is not None:
            walk(here, by)
            return
        people = [(one, one.name, self._second(procedure, one)) for one in self.shop.site.people]
        asked = self._ask("who-walks", people, lambda worker: walk(worker, asked.answered))

    def _second(self, procedure: str, person: Person) -> str:
        """Return a person's language, or why they do not walk this."""
        refusal = self.shop.may(procedure, Start(person.id, person.language))
        if refusal is None or refusal.why == "pin-first":
            return words(person.language).say("language-name")
        if refusal.why in ASKED_FOR:
            return self.words().say("with-a-supervisor")
        return self.words().refusal(refusal)

    def _ask(
        self, message: str, items: Sequence[Item], chosen: Callable[[Any], None]
    ) -> ChooseScreen:
        said, clock = self.words(), self.shop.clock
        asked = ChooseScreen(clock, said, said.say(message), items, chosen, by_voice=True)
        self.app.push_screen(asked)
        return asked
