"""The board: every machine, how it stands, and what is due."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from typing import TYPE_CHECKING, Any, Final, cast

from textual.app import ComposeResult
from textual.containers import Container
from textual.content import Content
from textual.message import Message
from textual.widgets import Static

from kiosk.engine.commands import Channel, Evidence, Refusal, Start
from kiosk.languages.words import Words, languages, words
from kiosk.people.may import ASKED_FOR, Identified
from kiosk.procedure.model import Standing
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Person
from kiosk.screens.arrangement import Block, even_columns, most_columns
from kiosk.screens.choose import ChooseScreen, Item
from kiosk.screens.faces import Face, Leave, More, Pick
from kiosk.screens.lettering import spread, wrapped
from kiosk.screens.panel import Panel
from kiosk.screens.pin_new import set_pin
from kiosk.screens.pin_screen import Doorway
from kiosk.screens.review_opening import open_review
from kiosk.screens.target_screen import HELP_KEY, TargetScreen
from kiosk.shop import Card, OpenSession, Shop

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

_CARD_WIDTH: Final = 38
_CARD_ROWS: Final = 6
_LOW_CARD_ROWS: Final = 5
"""Where only one card of the usual height would fit."""
_MOST_NOTICE_ROWS: Final = 3

_SIGNS: Final = {
    Standing.IN_SERVICE: "●",
    Standing.COMING_APART: "◐",
    Standing.DRYING: "○",
    Standing.GOING_TOGETHER: "◑",
    Standing.HELD: "■",
    Standing.UNFINISHED: "▲",
    Standing.OUT_OF_SERVICE: "×",
}
"""A sign beside the words, so that a standing is seen from afar."""


@dataclass(frozen=True, slots=True)
class OtherLanguage:
    """Speak another language on the board."""


@dataclass(frozen=True, slots=True)
class DayOrNight:
    """Change between the light and the dark theme."""


@dataclass(frozen=True, slots=True)
class WhatIsFaulty:
    """Read why something cannot be walked."""


@dataclass(frozen=True, slots=True)
class PracticeOrPin:
    """Practise, or set a PIN."""


@dataclass(frozen=True, slots=True)
class ToReview:
    """Look at what was done, as a supervisor."""


@dataclass(frozen=True, slots=True)
class WhatNow:
    """Read what can be done here."""


class BoardScreen(TargetScreen):
    """Shows the machines, and leads to a walk."""

    class Walk(Message):
        """A procedure, or an unfinished session, is to be walked by somebody."""

        def __init__(
            self,
            board: BoardScreen,
            start: Start,
            by: Evidence,
            fresh: Plan | None,
            unfinished: OpenSession | None,
        ) -> None:
            super().__init__()
            self.board = board
            self.start = start
            self.by = by
            self.fresh = fresh
            self.unfinished = unfinished

    class OtherTheme(Message):
        """Light was asked for, or dark."""

    def __init__(self, shop: Shop, *, for_a_while: bool = False) -> None:
        """Show a shop; `for_a_while` when another board lies under it, as for practice."""
        super().__init__(shop.clock)
        self.shop = shop
        self.for_a_while = for_a_while
        self.language = next((one for one in shop.site.languages if one in languages()), "en")
        self.notice = ""
        self._cards: tuple[Card, ...] = ()
        self._faults: tuple[str, ...] = ()
        self._page = 0

    @property
    def words(self) -> Words:
        """The words of the board's language."""
        return words(self.language)

    def help(self) -> tuple[Words, str]:
        return self.words, self.words.say("help-board")

    def compose(self) -> ComposeResult:
        yield Static(id="head", markup=False)
        with Container(id="middle"):
            yield Panel(self.clock, "cards")
        yield Static(id="notice", markup=False)
        yield Panel(self.clock, "secondary")

    def on_mount(self) -> None:
        self.look()

    def on_screen_resume(self) -> None:
        # A machine is pressed; what is asked then can be said.
        cast("KioskApp", self.app).hearing.allow(())
        self.look()

    def look(self) -> None:
        """Read the journal again and show what it says."""
        self._cards = self.shop.cards()
        self._faults = self.shop.faults()
        self.unsteady()
        self.draw()
        self.query_one("#cards", Panel).focus_first()

    def draw(self) -> None:
        if not self.is_mounted:
            return
        say = self.words.say
        width, height = self.app.size
        mark = say("practice") if self.shop.site.practice else ""
        head = spread(f"{say('which-machine')} · {self.shop.site.name}", mark, width)
        self.query_one("#head", Static).update(Content(head))
        rows = 1 + self._draw_notice(width)
        below = self._draw_secondary(width)
        self._draw_cards(width, height - rows - below)

    def _draw_notice(self, width: int) -> int:
        box = self.query_one("#notice", Static)
        text = self.notice
        if not text and self.for_a_while:
            text = self.words.say("practice-board")
        if not text and self.shop.journal.trouble:
            text = self.words.say(self.shop.journal.trouble)
        if not text and self._faults:
            text = self.words.say("faults-found", n=len(self._faults))
        if code := cast("KioskApp", self.app).pairing_code:
            text = " ".join(filter(None, (self.words.say("pairing-code", code=code), text)))
        box.display = bool(text)
        lines = wrapped(f"{self.words.say('signal-notice')}: {text}", width - 2)
        box.update(Content("\n".join(lines[:_MOST_NOTICE_ROWS])))
        return min(len(lines), _MOST_NOTICE_ROWS) if text else 0

    def _draw_secondary(self, width: int) -> int:
        say = self.words.say
        faces = [Face(Pick(DayOrNight()), say("day-or-night"), key="t")]
        if len(self._known_languages()) > 1:
            name = say("language-name")
            faces.insert(0, Face(Pick(OtherLanguage()), say("say-language"), name, key="l"))
        if self.for_a_while:
            faces.append(Face(Leave(), say("back-to-work"), key="escape"))
        else:
            practice = "" if self.shop.site.practice else f"{say('to-practise')}, "
            faces.append(Face(Pick(PracticeOrPin()), f"{practice}{say('to-set-pin')}", key="k"))
            faces.append(Face(Pick(ToReview()), say("review"), key="r"))
        faces.append(Face(Pick(WhatNow()), say("help"), key=HELP_KEY))
        if self._faults:
            faces.append(Face(Pick(WhatIsFaulty()), say("what-is-faulty"), key="f"))
        block = Block(tuple(faces), even_columns(len(faces), most_columns(width)), 3)
        self.query_one("#secondary", Panel).show(block)
        return block.rows

    def _draw_cards(self, width: int, height: int) -> None:
        columns = max(1, min(width // _CARD_WIDTH, len(self._cards)))
        least = _LOW_CARD_ROWS if height < 2 * _CARD_ROWS else _CARD_ROWS
        rows = max(1, height // least)
        room = columns * rows
        faces = [self._face(number, card) for number, card in enumerate(self._cards, 1)]
        if len(faces) > room:
            each = max(1, room - 1)
            start = self._page % -(-len(faces) // each) * each
            faces = [*faces[start : start + each], Face(More(), self.words.say("more"), key="m")]
        used = max(1, -(-len(faces) // columns))
        tall = max(least, min(height // used, _CARD_ROWS + 4))
        self.query_one("#cards", Panel).show(Block(tuple(faces), columns, tall))

    def _face(self, number: int, card: Card) -> Face:
        say, text = self.words.say, self.words.text
        standing = say(f"standing-{card.standing.value.replace(' ', '-')}")
        lines = [text(card.kind), f"{_SIGNS[card.standing]} {standing}"]
        if card.unfinished is not None:
            lines.append(f"▶ {self._unfinished(card.unfinished)}")
        elif card.due:
            lines += [say("due", procedure=text(plan.title)) for plan in card.due]
        else:
            known = card.beside or card.others
            lines.append(say("nothing-due" if known else "no-procedure"))
        return Face(
            Pick(card),
            card.machine.name,
            "\n".join(lines),
            key=str(number) if number <= 9 else "",
            primary=card.unfinished is not None,
            listed=card.unfinished is None,
        )

    def _unfinished(self, found: OpenSession) -> str:
        procedure = self.shop.library.procedures.get(found.started.procedure)
        title = found.started.procedure if procedure is None else self.words.text(procedure.title)
        names = {one.id: one.name for one in self.shop.site.people}
        worker = names.get(found.state.worker, found.state.worker)
        return self.words.say("unfinished", procedure=title, worker=worker)

    def _known_languages(self) -> list[str]:
        return [one for one in self.shop.site.languages if one in languages()]

    # What was pressed.

    def pressed(self, face: Face, channel: Channel) -> None:  # noqa: ARG002
        self.notice = ""
        match face.choice:
            case Pick(Card() as card):
                self._choose_procedure(card)
            case More():
                self._page += 1
                self.draw()
            case Pick(OtherLanguage()):
                known = self._known_languages()
                items = [(one, words(one).say("language-name"), "") for one in known]
                self._ask("which-language", items, self._speak)
            case Leave():
                self.app.pop_screen()
            case Pick(PracticeOrPin()):
                self._practise_or_set_pin()
            case Pick(ToReview()):
                open_review(cast("KioskApp", self.app), self.words)
            case Pick(WhatNow()):
                self.ask_help()
            case Pick(DayOrNight()):
                self.post_message(self.OtherTheme())
            case Pick(WhatIsFaulty()):
                self._ask("what-is-faulty", [], lambda _: None, "\n".join(self._faults))
            case _:
                pass

    def _practise_or_set_pin(self) -> None:
        def practise() -> None:
            self.app.push_screen(BoardScreen(self.shop.practising(), for_a_while=True))

        def pin() -> None:
            set_pin(cast("KioskApp", self.app), self.words, self._tell)

        if self.shop.site.practice:
            pin()
            return
        say = self.words.say
        ways = [(practise, say("to-practise"), say("practice-is")), (pin, say("to-set-pin"), "")]
        self._ask("practise-or-pin", ways, lambda way: way())

    def _tell(self, notice: str) -> None:
        self.notice = notice
        self.draw()

    def _speak(self, language: str) -> None:
        self.language = language
        self.look()

    def _choose_procedure(self, card: Card) -> None:
        if card.unfinished is not None:
            found = card.unfinished
            self._choose_worker(None, found)
            return
        plans = (*card.due, *card.beside) or card.others
        if not plans:
            self.notice = self.words.say("no-procedure")
            self.draw()
            return
        if len(plans) == 1 and card.due:
            self._choose_worker(plans[0], None)
            return
        fits = card.due or card.beside
        second = "" if fits else self.words.say("not-due")
        items = [(plan, self.words.text(plan.title), second) for plan in plans]
        self._ask(
            "which-procedure", items, lambda plan: self._choose_worker(plan, None), by_voice=True
        )

    def _choose_worker(self, fresh: Plan | None, unfinished: OpenSession | None) -> None:
        procedure = "" if fresh is None else fresh.procedure
        if unfinished is not None:
            procedure = unfinished.started.procedure
        people = [(one, one.name, self._second(procedure, one)) for one in self.shop.site.people]
        app = cast("KioskApp", self.app)

        def then(act: Identified, by: Evidence) -> None:
            if isinstance(act, Start):
                self.post_message(self.Walk(self, act, by, fresh, unfinished))

        def refused(refusal: Refusal) -> None:
            self._tell(self.words.refusal(refusal))

        def walk(worker: Person) -> None:
            start = Start(worker.id, worker.language)
            door = Doorway(app, self.shop, self.words, procedure)
            door.settle(start, asked.answered, then, refused)

        asked = self._ask("who-walks", people, walk, by_voice=True)

    def _second(self, procedure: str, person: Person) -> str:
        """Return a person's language, or why they do not walk this."""
        refusal = self.shop.may(procedure, Start(person.id, person.language))
        if refusal is None or refusal.why == "pin-first":
            return words(person.language).say("language-name")
        if refusal.why in ASKED_FOR:
            return self.words.say("with-a-supervisor")
        return self.words.refusal(refusal)

    def _ask(
        self, message: str, items: Sequence[Item], chosen: Callable[[Any], None], text: str = "",
        *, by_voice: bool = False,
    ) -> ChooseScreen:  # fmt: skip
        question = text or self.words.say(message)
        asked = ChooseScreen(self.clock, self.words, question, items, chosen, by_voice=by_voice)
        self.app.push_screen(asked)
        return asked
