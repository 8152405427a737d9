"""The doorway to the review: a supervisor's PIN, then the journal is read, then the first page."""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace
from typing import TYPE_CHECKING

from textual import on
from textual.app import ComposeResult
from textual.containers import Container
from textual.message import Message
from textual.worker import Worker, WorkerState

from kiosk.engine.commands import Channel
from kiosk.journal.store import Journal
from kiosk.languages.words import Words, words
from kiosk.people.may import Purpose
from kiosk.procedure.site import Person
from kiosk.screens.arrangement import LEAST_HEIGHT, Block
from kiosk.screens.faces import Face, Less
from kiosk.screens.panel import Panel
from kiosk.screens.pin_screen import ask_supervisor
from kiosk.screens.question import Line
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_screen import ReviewScreen
from kiosk.screens.target_screen import TargetScreen
from kiosk.shop import Shop

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp


def open_review(app: KioskApp, said: Words) -> None:
    """Ask for a supervisor's PIN, and then show the review; `said` are the words of the list."""

    def then(person: Person) -> None:
        app.push_screen(OpeningScreen(app.shop, person))

    ask_supervisor(app, said, Purpose.REVIEW, then)


class _Left(Exception):
    """The supervisor went away while the journal was read."""


class OpeningScreen(TargetScreen):
    """Shows how far the journal is read; a night takes a moment, years the first time minutes."""

    class Read(Message):
        """So many sessions were read, of so many."""

        def __init__(self, done: int, of: int) -> None:
            super().__init__()
            self.done = done
            self.of = of

    def __init__(self, shop: Shop, supervisor: Person) -> None:
        super().__init__(shop.clock)
        self.shop = shop
        self.supervisor = supervisor
        self.words = words(supervisor.language)
        self._told = self.words.say("review-reading")
        self._left = False

    def compose(self) -> ComposeResult:
        yield Line("head")
        with Container(id="listing"):
            yield Line("note")
        yield Panel(self.clock, "secondary")

    def on_mount(self) -> None:
        self.draw()
        self.run_worker(self._read, thread=True, exit_on_error=False)

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, say = self.room.width, self.words.say
        self.query_one("#head", Line).say_ends(say("review"), self.supervisor.name, width)
        self.query_one("#note", Line).say(self._told, width - 2)
        back = Face(Less(), say("review-back"), key="escape")
        self.query_one("#secondary", Panel).show(Block((back,), 1, LEAST_HEIGHT))

    def _read(self) -> None:
        """Bring the ledger up to date. Runs in a thread, with a journal of its own."""

        def tell(done: int, of: int) -> None:
            if self._left:
                raise _Left
            self.post_message(self.Read(done, of))

        with closing(Journal(self.shop.folder)) as journal:
            shop = replace(self.shop, journal=journal)
            with closing(shop.ledger()) as ledger:
                ledger.catch_up(tell)

    @on(Read)
    def _on_read(self, message: Read) -> None:
        done, of = str(message.done), str(message.of)
        self._told = self.words.say("review-reading-place", done=done, of=of)
        self.draw()

    @on(Worker.StateChanged)
    def _on_worker(self, message: Worker.StateChanged) -> None:
        message.stop()
        if self._left:
            return
        if message.state is WorkerState.ERROR:
            self._told = self.words.say("review-cannot-read", why=str(message.worker.error))
            self.draw()
        elif message.state is WorkerState.SUCCESS:
            ledger = self.shop.ledger()
            ledger.catch_up()
            self.app.switch_screen(ReviewScreen(Desk(self.shop, ledger, self.supervisor)))

    def pressed(self, face: Face, channel: Channel) -> None:  # noqa: ARG002
        self._left = True
        self.app.pop_screen()
