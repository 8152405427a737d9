"""The question of a walk and the lines around it: everything on the screen that is not pressed."""

from __future__ import annotations

from typing import Final

from textual.app import ComposeResult
from textual.containers import Container, VerticalScroll
from textual.content import Content
from textual.widgets import Digits, Static

from kiosk.engine.state import Mode
from kiosk.procedure.model import Signal
from kiosk.screens import status
from kiosk.screens.lettering import balanced, sentences, spread, wrapped
from kiosk.walk import Walk

_MOST_ROWS: Final = 6
_MARGIN: Final = 2


class Line(Static):
    """Wrapped lines of one kind, as high as they need; absent when there is nothing to say."""

    def __init__(self, name: str) -> None:
        super().__init__(id=name, markup=False)

    def say(self, text: str, width: int, most: int = _MOST_ROWS) -> int:
        """Show a text in lines of `width` cells; return the rows that it takes."""
        lines = wrapped(text, width)[:most] if text else []
        self.display = bool(lines)
        self.styles.height = len(lines)
        self.update(Content("\n".join(lines)))
        return len(lines)

    def say_ends(self, left: str, right: str, width: int) -> int:
        """Show two texts at the two ends of one row; return the rows that they take."""
        self.display = bool(left)
        self.update(Content(spread(left, right, width)))
        return 1 if left else 0


class Around(Container):
    """Head, place and caution above a question."""

    def compose(self) -> ComposeResult:
        yield Line("head")
        yield Line("progress")
        yield Line("caution")

    def draw(self, walk: Walk, width: int, *, tight: bool) -> int:
        """Show what the walk is at; return the rows that it takes. Tight leaves out what it can."""
        words, state = walk.words, walk.session.state
        left, right = status.header(walk)
        rows = self.query_one("#head", Line).say_ends("" if tight else left, right, width)
        phase, place = status.progress(walk, width)
        absent = state.mode is Mode.HELD
        rows += self.query_one("#progress", Line).say_ends("" if absent else phase, place, width)
        caution = None if walk.asking else walk.session.prompt().caution
        line = self.query_one("#caution", Line)
        for signal in Signal:
            line.set_class(caution is not None and caution.signal is signal, f"-{signal}")
        text = "" if caution is None else status.caution_line(caution, words, short=tight)
        rows += line.say(text, width - _MARGIN)
        self.styles.height = rows
        self.display = rows > 0
        return rows

    def vanish(self) -> None:
        """Make room."""
        self.display = False


class Question(Container):
    """The sentences, large and centred; under them the time left of a wait, or a number."""

    def compose(self) -> ComposeResult:
        with VerticalScroll(can_focus=False):
            yield Static(id="sentence", markup=False)
        yield Digits(id="digits")

    @staticmethod
    def folded(lines: list[str], width: int, *, tight: bool) -> list[list[str]]:
        """Return the rows of each sentence; tight sets them in one block."""
        room = width - 2 * _MARGIN
        parts = [" ".join(lines)] if tight else [s for line in lines for s in sentences(line)]
        return [balanced(one, room) for one in parts]

    def draw(self, folded: list[list[str]], rows: int) -> None:
        """Show sentences in so many rows, with an empty row between them where there is room."""
        needed = sum(len(one) for one in folded) + len(folded) - 1
        gap = "\n\n" if needed <= rows else "\n"
        text = gap.join("\n".join(one) for one in folded)
        self.query_one("#sentence", Static).update(Content(text))

    def scroll_sentences(self, *, down: bool) -> None:
        """Scroll sentences that are too long for the screen by what is seen of them."""
        scrolled = self.query_one(VerticalScroll)
        if down:
            scrolled.scroll_page_down(animate=False)
        else:
            scrolled.scroll_page_up(animate=False)

    def draw_digits(self, text: str) -> int:
        """Show large digits, or none for an empty text; return the rows that they take."""
        digits = self.query_one("#digits", Digits)
        digits.display = bool(text)
        if text and digits.value != text:
            digits.update(text)
        return 3 if text else 0


class Status(Container):
    """What the ear hears and the voice says, at the foot of the screen."""

    def compose(self) -> ComposeResult:
        yield Line("ear")
        yield Line("voice")

    def draw(self, walk: Walk, width: int, *, tight: bool) -> int:
        """Show ear and voice; return the rows that they take. Tight leaves the voice out."""
        rows = self.query_one("#ear", Line).say(status.ear_line(walk), width - _MARGIN, 2)
        text = "" if tight else status.voice_line(walk)
        rows += self.query_one("#voice", Line).say(text, width - _MARGIN, 2)
        self.styles.height = rows
        self.display = rows > 0
        return rows

    def vanish(self) -> None:
        """Make room."""
        self.display = False
