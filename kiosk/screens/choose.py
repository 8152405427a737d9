"""A screen with one question and a list to press an answer from."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import replace
from decimal import Decimal
from typing import TYPE_CHECKING, Any, cast

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.content import Content
from textual.widgets import Static

from kiosk.clock import Clock
from kiosk.engine.commands import Channel, Evidence
from kiosk.languages.words import Words
from kiosk.listening.ear import Heard
from kiosk.listening.numbers import NoNumbers, spoken
from kiosk.screens.arrangement import page
from kiosk.screens.faces import Face, Less, More, Pick, back_face, more_face
from kiosk.screens.lettering import wrapped
from kiosk.screens.panel import Panel
from kiosk.screens.target_screen import TargetScreen

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

Item = tuple[Any, str, str]
"""What can be chosen, its name, and a second line."""


class ChooseScreen(TargetScreen):
    """Asks, and calls back with the item that was pressed; `never mind` leads back."""

    def __init__(
        self,
        clock: Clock,
        words: Words,
        question: str,
        items: Sequence[Item],
        chosen: Callable[[Any], None],
        *,
        by_voice: bool = False,
    ) -> None:
        """Ask a question; without items it is a text to read.

        `by_voice` lets an item be chosen by its number, too.
        """
        super().__init__(clock)
        self.answered = Evidence(Channel.TOUCH)
        """How the item was chosen, once it was."""
        self._by_voice = by_voice and bool(items)
        self._said: dict[str, Face] = {}
        self.words = words
        self._question = question
        self._chosen = chosen
        self._page = 0
        digits = iter("123456789")
        self._items = tuple(
            Face(Pick(item), name, second, key=next(digits, ""), listed=True)
            for item, name, second in items
        )

    def help(self) -> tuple[Words, str] | None:
        return (self.words, self.words.say("help-list")) if self._items else None

    def compose(self) -> ComposeResult:
        with VerticalScroll(id="asking", can_focus=False):
            yield Static(id="asked", markup=False)
        yield Panel(self.clock, "primary")
        yield Panel(self.clock, "secondary")

    def on_mount(self) -> None:
        self.unsteady()
        self.draw()
        self.query_one("#primary", Panel).focus_first()

    def on_screen_resume(self) -> None:
        if not self._by_voice:
            return
        hearing = cast("KioskApp", self.app).hearing
        try:
            numbers = spoken(map(Decimal, range(1, len(self._items) + 1)), self.words.language)
        except NoNumbers:
            return
        say = self.words.say
        self._said = {
            say("say-number", number=phrase): self._items[int(value) - 1]
            for phrase, value in numbers.items()
        }
        self._said[say("say-never-mind")] = Face(Less(), say("say-never-mind"))
        hearing.speak(self.words.language)
        hearing.undeafen(at_once=True)
        hearing.allow(self._said)
        self.draw()

    def hear(self, heard: Heard) -> None:
        """Take a spoken number."""
        face = None if heard.phrase is None else self._said.get(heard.phrase)
        if face is not None:
            self.answered = Evidence(Channel.VOICE, heard.text, heard.confidence, heard.ear)
            self.pressed(face, Channel.VOICE)

    def faces(self) -> tuple[Face, ...]:
        return (*self._items, *(target.face for target in self.targets()))

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, height = self.room
        lines = wrapped(self._question, width - 2)
        if self._said and not cast("KioskApp", self.app).hearing.notice:
            lines += wrapped(self.words.say("or-say", phrase=next(iter(self._said))), width - 2)
        self.query_one("#asked", Static).update(Content("\n".join(lines)))
        more = more_face(self.words)
        room = max(3, height - min(len(lines) + 2, height // 3) - 3)
        block = page(self._items, width, room, self._page, more)
        self.query_one("#primary", Panel).show(block)
        back = back_face(self.words)
        self.query_one("#secondary", Panel).show(replace(block, faces=(back,), columns=1, height=3))

    def pressed(self, face: Face, channel: Channel) -> None:
        match face.choice:
            case More():
                self._page += 1
                self.draw()
            case Pick(item):
                if channel is not Channel.VOICE:
                    self.answered = Evidence(channel)
                self.app.pop_screen()
                self._chosen(item)
            case _:
                self.app.pop_screen()
