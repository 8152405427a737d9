"""The board: every machine, how it stands, and what is due."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import TYPE_CHECKING, Any, Final, cast

from textual.app import ComposeResult
from textual.containers import Container
from textual.content import Content
from textual.message import Message
from textual.widgets import Static

from kiosk.engine.commands import Channel, Evidence, Start
from kiosk.languages.words import Words, languages, words
from kiosk.procedure.site import Person
from kiosk.screens.arrangement import Block, card_page, even_columns, most_columns
from kiosk.screens.before_walk import BeforeWalk, Walked
from kiosk.screens.board_card import CardFace
from kiosk.screens.board_faces import OnBoard, board_faces, greeting
from kiosk.screens.choose import ChooseScreen, Item
from kiosk.screens.faces import Face, Leave, More, Pick, more_face
from kiosk.screens.lettering import signalled, spread, wrapped
from kiosk.screens.panel import Panel
from kiosk.screens.pin_new import set_pin
from kiosk.screens.review_opening import open_review
from kiosk.screens.signed_in import SignedIn
from kiosk.screens.target_screen import TargetScreen
from kiosk.shop import Card, Shop
from kiosk.trade.code_dates import site_zone
from kiosk.unfinished import OpenSession
from kiosk.walk import Walk as Walking

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

_MOST_NOTICE_ROWS: Final = 3

_LOOK_S: Final = 15.0
"""How often the times on the board are told anew."""


class BoardScreen(TargetScreen):
    """Shows the machines, and leads to a walk."""

    class Walk(Message):
        """Somebody is to walk something."""

        def __init__(self, board: BoardScreen, start: Start, by: Evidence, what: Walked) -> None:
            super().__init__()
            self.board = board
            self.start = start
            self.by = by
            self.what = what

    class OtherTheme(Message):
        """Light was asked for, or dark."""

    def __init__(
        self, shop: Shop, *, for_a_while: bool = False, here: SignedIn | None = None
    ) -> None:
        """Show a shop; `for_a_while` when another board lies under it, as for practice. `here` is
        who stands at that one."""
        super().__init__(shop.clock)
        self._here = here or SignedIn(shop.clock)
        self._begun: Walking | None = None
        self.shop = shop
        self.for_a_while = for_a_while
        self._usual = next((one for one in shop.site.languages if one in languages()), "en")
        self.language = self._usual
        self._greeted: Person | None = None
        self._settle_who()
        self.notice = ""
        self._cards: tuple[Card, ...] = ()
        self._faults: tuple[str, ...] = ()
        self._page = 0

    @property
    def words(self) -> Words:
        """The words of the board's language."""
        return words(self.language)

    def help(self) -> tuple[Words, str]:
        say = self.words.say
        return self.words, f"{say('help-board')} {say('help-board-more')}"

    def compose(self) -> ComposeResult:
        yield Static(id="head", markup=False)
        with Container(id="middle"):
            yield Panel(self.clock, "cards")
        yield Static(id="notice", markup=False)
        yield Panel(self.clock, "secondary")

    def on_mount(self) -> None:
        self.look()
        self.set_interval(_LOOK_S, self.tick)

    def on_screen_resume(self) -> None:
        # A machine is pressed; what is asked then can be said.
        cast("KioskApp", self.app).hearing.allow(())
        if self._begun is not None:
            self._here.worked(self._begun.session.state.worker)
            self._begun = None
        self._settle_who()
        self.look()

    def began(self, walk: Walking) -> None:
        """A walk was begun from here."""
        self._begun = walk

    def sign_out(self) -> None:
        """Whoever stood here may be somebody else now."""
        self._here.take(None)
        self._settle_who()
        self.draw()

    def tick(self) -> None:
        """Tell the times anew; who has not touched anything for long is not here any more."""
        if self.is_current:
            self._settle_who()
            self.draw()

    def _settle_who(self) -> None:
        """Speak the language of who stands here, once they come; the usual one once they go."""
        person = self._here.person
        if person != self._greeted:
            self._greeted = person
            self.language = self._usual
            if person is not None and person.language in languages():
                self.language = person.language

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
        width, height = self.room
        mark = say("practice") if self.shop.site.practice else ""
        name = self.shop.site.name
        if self._greeted is not None:
            zone = site_zone(self.shop.site.time_zone)
            name = greeting(self.words, self._greeted, self.clock.now().utc, zone)
        head = spread(f"{say('which-machine')} · {name}", mark, width)
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
        lines = wrapped(signalled(text, self.words), width - 2)
        box.update(Content("\n".join(lines[:_MOST_NOTICE_ROWS])))
        return min(len(lines), _MOST_NOTICE_ROWS) if text else 0

    def _draw_secondary(self, width: int) -> int:
        faces = board_faces(
            self.words,
            self._greeted,
            several_languages=len(self._known_languages()) > 1,
            practice=self.shop.site.practice,
            for_a_while=self.for_a_while,
            faulty=bool(self._faults),
        )
        block = Block(faces, even_columns(len(faces), most_columns(width)), 3)
        self.query_one("#secondary", Panel).show(block)
        return block.rows

    def _draw_cards(self, width: int, height: int) -> None:
        page = card_page(len(self._cards), width, height, self._page)
        faces = self._faces(page.shown, (width // page.columns, page.height))
        if page.more:
            faces.append(more_face(self.words))
        self.query_one("#cards", Panel).show(Block(tuple(faces), page.columns, page.height))

    def _faces(self, shown: range, room: tuple[int, int]) -> list[Face]:
        due = self.shop.due()
        now = self.clock.now().utc
        writer = CardFace(self.words, site_zone(self.shop.site.time_zone), now)
        return [
            writer.face(
                number,
                card,
                due.get(card.machine.id, ()),
                self._unfinished(card.unfinished) if card.unfinished else "",
                room,
            )
            for number, card in enumerate(self._cards, 1)
            if number - 1 in shown
        ]

    def _unfinished(self, found: OpenSession) -> str:
        procedure = self.shop.library.procedures.get(found.started.procedure)
        title = found.started.procedure if procedure is None else self.words.text(procedure.title)
        names = {one.id: one.name for one in self.shop.site.people}
        worker = names.get(found.state.worker, found.state.worker)
        return self.words.say("unfinished", procedure=title, worker=worker)

    def _known_languages(self) -> list[str]:
        return [one for one in self.shop.site.languages if one in languages()]

    # What was pressed.

    def pressed(self, face: Face, channel: Channel) -> None:
        self.notice = ""
        self._settle_who()
        self._here.touch()
        match face.choice:
            case Pick(OnBoard.SIGN_IN):
                self._sign_in()
            case Pick(Card() as card):
                self._before_walk().lead(card, Evidence(channel))
            case More():
                self._page += 1
                self.draw()
            case Pick(OnBoard.LANGUAGE):
                known = self._known_languages()
                items = [(one, words(one).say("language-name"), "") for one in known]
                self._ask("which-language", items, self._speak)
            case Leave():
                self.app.pop_screen()
            case Pick(OnBoard.PRACTICE_OR_PIN):
                self._practise_or_set_pin()
            case Pick(OnBoard.REVIEW):
                open_review(cast("KioskApp", self.app), self.words)
            case Pick(OnBoard.HELP):
                self.ask_help()
            case Pick(OnBoard.THEME):
                self.post_message(self.OtherTheme())
            case Pick(OnBoard.FAULTS):
                self._ask("what-is-faulty", [], lambda _: None, "\n".join(self._faults))
            case _:
                pass

    def _practise_or_set_pin(self) -> None:
        def practise() -> None:
            apart = self.shop.practising()
            self.app.push_screen(BoardScreen(apart, for_a_while=True, here=self._here))

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

    def _sign_in(self) -> None:
        """Ask who stands here. It vouches for nobody, so no PIN is asked for."""

        def come(person: Person | None) -> None:
            self._here.take(person)
            self._settle_who()
            self.draw()

        say = self.words.say
        people: list[Item] = [
            (one, one.name, words(one.language).say("language-name"))
            for one in self.shop.site.people
            if one != self._greeted
        ]
        if self._greeted is not None:
            people.insert(0, (None, say("sign-out"), self._greeted.name))
        self._ask("sign-in-who", people, come, by_voice=True)

    def _before_walk(self) -> BeforeWalk:
        def here() -> Person | None:
            self._settle_who()
            return self._greeted

        def begin(start: Start, by: Evidence, what: Walked) -> None:
            self.post_message(self.Walk(self, start, by, what))

        app = cast("KioskApp", self.app)
        return BeforeWalk(app, self.shop, lambda: self.words, here, begin, self._tell)

    def _ask(
        self, message: str, items: Sequence[Item], chosen: Callable[[Any], None], text: str = "",
        *, by_voice: bool = False,
    ) -> None:  # fmt: skip
        question = text or self.words.say(message)
        self.app.push_screen(
            ChooseScreen(self.clock, self.words, question, items, chosen, by_voice=by_voice)
        )
