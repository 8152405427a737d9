"""Setting a PIN on the screen: who vouches, and the new digits twice."""

from __future__ import annotations

from collections.abc import Callable
from typing import TYPE_CHECKING

from kiosk.engine.commands import Evidence, Refusal
from kiosk.languages.words import Words, words
from kiosk.people.may import Purpose, SetPin
from kiosk.people.pins import fault_of
from kiosk.procedure.site import Person
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.pin_keypad import HiddenDigits
from kiosk.screens.pin_screen import ask_pin, ask_supervisor
from kiosk.shop import Shop

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp


class NewPinScreen(HiddenDigits):
    """Takes a new PIN, and takes it again."""

    def __init__(
        self, shop: Shop, person: Person, by: str, then: Callable[[], None], first: str = ""
    ) -> None:
        """Ask for the PIN; with `first`, ask for the same digits again."""
        super().__init__(shop, words(person.language))
        self._person, self._vouched = person, by
        self._then, self._first = then, first

    def heading(self) -> str:
        return f"{self._person.name} · {self.words.say('pin-for-set-pin')}"

    def question(self) -> str:
        return self.words.say("pin-again" if self._first else "pin-new", who=self._person.name)

    def entered(self, digits: str, by: Evidence) -> Refusal | None:
        if not self._first:
            fault = fault_of(digits)
            if fault is None:
                self._first = digits
            return fault
        first, self._first = self._first, ""
        if digits != first:
            return Refusal("pin-differs")
        return self.shop.gate.put(self._person.id, digits, self._vouched, by)

    def done(self, by: Evidence) -> None:  # noqa: ARG002
        if self._first:
            again = NewPinScreen(self.shop, self._person, self._vouched, self._then, self._first)
            self.app.push_screen(again)
            return
        self._then()


def set_pin(app: KioskApp, said: Words, then: Callable[[str], None]) -> None:
    """Ask whose PIN is set and who vouches, then for the digits; `then` is told what was done.

    Somebody vouches with their old PIN, or a supervisor with theirs: for whoever forgot it, and for
    a first one.
    """
    shop = app.shop

    def of(person: Person) -> None:
        def fresh(by: str) -> None:
            refusal = shop.may("", SetPin(person.id, by))
            if refusal is not None:
                then(said.refusal(refusal))
                return
            told = said.say("pin-is-set", who=person.name)
            app.push_screen(NewPinScreen(shop, person, by, lambda: then(told)))

        def own() -> None:
            ask_pin(app, person, Purpose.SET_PIN, lambda: fresh(person.id))

        def vouched() -> None:
            ask_supervisor(app, said, Purpose.SET_PIN, lambda one: fresh(one.id))

        if shop.gate.blocked(person.id) is not None:
            vouched()
            return
        ways = [(own, said.say("pin-by-old-one"), ""), (vouched, said.say("pin-by-supervisor"), "")]
        app.push_screen(
            ChooseScreen(shop.clock, said, said.say("who-vouches"), ways, lambda way: way())
        )

    people = [(one, one.name, "") for one in shop.site.people]
    app.push_screen(ChooseScreen(shop.clock, said, said.say("whose-pin"), people, of))
