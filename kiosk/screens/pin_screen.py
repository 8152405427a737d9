"""The PIN screens' doorway: who is asked for a PIN, and what happens when it was right.

    ask_pin(app, person, Purpose.SIGN, then)          # one person; `then()` when it was right
    ask_supervisor(app, words, Purpose.REVIEW, then)  # any supervisor; `then(person)`
    Doorway(app, shop, words, procedure).settle(...)  # all PINs that an act needs, one by one

Nothing is called when somebody changes their mind, or gives a wrong PIN.
"""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass, replace
from typing import TYPE_CHECKING

from kiosk.engine import commands as c
from kiosk.engine.commands import Evidence, Refusal
from kiosk.languages.words import Words, words
from kiosk.people.may import ASKED_FOR, Identified, Purpose
from kiosk.procedure.site import Person, Role
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.pin_keypad import HiddenDigits
from kiosk.shop import Shop

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp


Then = Callable[[Identified, Evidence], None]
"""What is done with an act once it may be done: with the evidence of the PIN that was given last,
or of the act itself where none was asked for."""


class PinScreen(HiddenDigits):
    """Asks one person for their PIN, in that person's language."""

    def __init__(
        self, shop: Shop, person: Person, purpose: Purpose, then: Callable[[Evidence], None]
    ) -> None:
        super().__init__(shop, words(person.language))
        self._gate = shop.gate
        self._person = person
        self._purpose = purpose
        self._then = then

    def heading(self) -> str:
        return f"{self._person.name} · {self.words.say(f'pin-for-{_name(self._purpose)}')}"

    def question(self) -> str:
        invented = self._gate.invented_for(self._person.id)
        asked = self.words.say("pin-ask", who=self._person.name)
        return f"{asked} {self.words.say('pin-invented', pin=invented)}" if invented else asked

    def blocked(self) -> Refusal | None:
        return self._gate.blocked(self._person.id)

    def entered(self, digits: str, by: Evidence) -> Refusal | None:
        return self._gate.give(self._person.id, digits, self._purpose, by)

    def done(self, by: Evidence) -> None:
        self._then(by)


def _name(purpose: Purpose) -> str:
    return purpose.value.replace(" ", "-")


def ask_pin(app: KioskApp, person: Person, purpose: Purpose, then: Callable[[], None]) -> None:
    """Ask a person for their PIN; `then` is called once it was right and is in the journal."""
    app.push_screen(PinScreen(app.shop, person, purpose, lambda _: then()))


def ask_supervisor(
    app: KioskApp, words: Words, purpose: Purpose, then: Callable[[Person], None]
) -> None:
    """Ask any supervisor for their PIN; a list asks which one."""
    _ask_supervisor(app, words, purpose, lambda person, _: then(person), but="")


def _ask_supervisor(
    app: KioskApp,
    words: Words,
    purpose: Purpose,
    then: Callable[[Person, Evidence], None],
    but: str,
) -> None:
    there = [one for one in app.shop.site.people if one.role is Role.SUPERVISOR and one.id != but]

    def ask(person: Person) -> None:
        app.push_screen(PinScreen(app.shop, person, purpose, lambda by: then(person, by)))

    if len(there) == 1:
        ask(there[0])
        return
    question = words.say("which-supervisor" if there else "no-supervisor")
    items = [(one, one.name, "") for one in there]
    app.push_screen(ChooseScreen(app.shop.clock, words, question, items, ask))


@dataclass(frozen=True, slots=True)
class Doorway:
    """Where an act of somebody waits for the PINs that it needs."""

    app: KioskApp
    shop: Shop
    words: Words
    procedure: str

    def settle(
        self, act: Identified, by: Evidence, then: Then, refused: Callable[[Refusal], None]
    ) -> None:
        """Ask for one PIN after the other; call `then` with the act as it may be done.

        A witness always gives a PIN.
        """
        refusal = self.shop.may(self.procedure, act)
        if refusal is not None and refusal.why not in ASKED_FOR:
            refused(refusal)
        elif isinstance(act, c.Witness):
            self._ask(act.person, Purpose.WITNESS, lambda given: then(act, given))
        elif refusal is None:
            then(act, by)
        elif refusal.why == "pin-first":
            purpose = Purpose.BEGIN if isinstance(act, c.Start) else Purpose.TAKE_OVER
            own = replace(act, pin=True)
            self._ask(act.worker, purpose, lambda given: self.settle(own, given, then, refused))
        else:

            def beside(supervisor: Person, given: Evidence) -> None:
                self.settle(replace(act, supervisor=supervisor.id), given, then, refused)

            _ask_supervisor(self.app, self.words, Purpose.STAND_BY, beside, act.worker)

    def _ask(self, person: str, purpose: Purpose, then: Callable[[Evidence], None]) -> None:
        self.app.push_screen(PinScreen(self.shop, self.shop.site.person(person), purpose, then))
