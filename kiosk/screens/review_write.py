"""A screen with one question that is answered by typing."""

from __future__ import annotations

from collections.abc import Callable
from typing import Final

from textual import on
from textual.app import ComposeResult
from textual.containers import Container
from textual.widgets import Input

from kiosk.engine.commands import Channel
from kiosk.screens.arrangement import LEAST_HEIGHT, Block
from kiosk.screens.faces import Face, Pick, back_face
from kiosk.screens.lettering import signalled
from kiosk.screens.panel import Panel
from kiosk.screens.question import Line
from kiosk.screens.review_desk import Desk
from kiosk.screens.target_screen import TargetScreen

MOST_LETTERS: Final = 300


class WriteScreen(TargetScreen):
    """Asks for a text, and calls back with it; `never mind` leads back.

    `fault` says what is wrong with a text, or nothing: then it is taken.
    """

    def __init__(
        self,
        desk: Desk,
        question: str,
        written: Callable[[str], None],
        fault: Callable[[str], str],
    ) -> None:
        super().__init__(desk.shop.clock)
        self.words = desk.words
        self._desk = desk
        self._question = question
        self._written = written
        self._fault = fault
        self._notice = ""

    def compose(self) -> ComposeResult:
        yield Line("head")
        yield Line("notice")
        with Container(id="writing"):
            yield Input(id="written", max_length=MOST_LETTERS)
        yield Panel(self.clock, "secondary")

    def on_mount(self) -> None:
        self.unsteady()
        self.draw()
        self.query_one(Input).focus()

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, say = self.room.width, self.words.say
        self.query_one("#head", Line).say(self._question, width - 2)
        text = signalled(self._notice, self.words)
        self.query_one("#notice", Line).say(text, width - 2)
        back = back_face(self.words)
        take = Face(Pick(None), say("review-take-it"), primary=True)
        self.query_one("#secondary", Panel).show(Block((back, take), 2, LEAST_HEIGHT))

    @on(Input.Changed)
    def _on_changed(self) -> None:
        self._desk.touch(Channel.KEY)

    @on(Input.Submitted)
    def _on_submitted(self, message: Input.Submitted) -> None:
        message.stop()
        self._take()

    def pressed(self, face: Face, channel: Channel) -> None:  # noqa: ARG002
        if isinstance(face.choice, Pick):
            self._take()
        else:
            self.app.pop_screen()

    def _take(self) -> None:
        text = " ".join(self.query_one(Input).value.split())
        self._notice = self._fault(text)
        if self._notice:
            self.draw()
            self.query_one(Input).focus()
            return
        self._desk.touch(Channel.KEY)
        self.app.pop_screen()
        self._written(text)
