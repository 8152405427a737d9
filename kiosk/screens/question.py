"""The question of a walk and the lines around it: everything on the screen that is not pressed."""

from __future__ import annotations

from typing import ClassVar, Final

from rich.cells import cell_len
from rich.segment import Segment
from rich.style import Style
from textual.app import ComposeResult
from textual.containers import Container, Horizontal, VerticalScroll
from textual.content import Content
from textual.strip import Strip
from textual.widget import Widget
from textual.widgets import Static

from kiosk.engine.state import Mode
from kiosk.procedure.model import Signal
from kiosk.screens import status
from kiosk.screens.block_letters import figures
from kiosk.screens.lettering import centred, parted, spread, wrapped
from kiosk.screens.status import LEVEL_CELLS
from kiosk.screens.type_sizes import MARGIN, Row, Setting
from kiosk.walk import Walk

_MOST_ROWS: Final = 6
_MARGIN: Final = 2


class Line(Static):
    """Wrapped lines of one kind, as high as they need; absent when there is nothing to say."""

    def __init__(self, name: str) -> None:
        super().__init__(id=name, markup=False)

    def say(self, text: str, width: int, most: int = _MOST_ROWS) -> int:
        """Show a text in lines of `width` cells; return the rows that it takes."""
        lines = wrapped(text, width) if text else []
        if len(lines) > most:
            lines = [*lines[: most - 1], f"{parted(lines[most - 1], width - 1)[0].rstrip()}…"]
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


class Sentence(Widget):
    """The rows of a question, each in the middle; a picture stands left of them, or above."""

    COMPONENT_CLASSES: ClassVar[set[str]] = {"sentence--look"}

    def __init__(self) -> None:
        super().__init__(id="sentence")
        self.setting = Setting(())

    def show(self, setting: Setting) -> None:
        """Show another question."""
        if setting == self.setting:
            return
        self.setting = setting
        self.styles.height = len(setting.rows)
        self.refresh()

    def render_line(self, y: int) -> Strip:
        if y >= len(self.setting.rows):
            return Strip.blank(self.size.width, self.rich_style)
        row, aside, width = self.setting.rows[y], self.setting.aside, self.size.width
        style, look = self.rich_style, self.get_component_rich_style("sentence--look")
        picture = [Segment(one.text, look if one.look else style) for one in row.picture]
        if picture and not aside:
            left = Segment(" " * ((width - self.setting.widest) // 2), style)
            return Strip([left, *picture]).adjust_cell_length(width, style)
        left = Segment(" " * MARGIN, style)
        beside = Strip([left, *picture]).adjust_cell_length(aside, style)
        return Strip([*beside, *_in_middle(row, width - aside, style)], width)


def _in_middle(row: Row, width: int, style: Style) -> list[Segment]:
    """Return a row in the middle of so many columns."""
    if row.times == 1:
        return [Segment(centred(row.text, width), style)]
    left = (width - row.times * cell_len(row.text)) // 2
    more = row.times - 1
    grown = style + Style(frame=bool(more & 1), encircle=bool(more & 2))
    letters = "".join(one + " " * (row.times - 1) * cell_len(one) for one in row.text)
    right = width - left - cell_len(letters)
    return [Segment(" " * left, style), Segment(letters, grown), Segment(" " * right, style)]


class Figures(Widget):
    """A number in large digits; absent when there is none."""

    def __init__(self) -> None:
        super().__init__(id="digits")
        self.value = ""
        self._rows: tuple[str, ...] = ()

    def show(self, value: str, size: int) -> int:
        """Show a number so many times as large as a sentence; return the rows that it takes."""
        self.value = value
        rows = figures(value, size) if value else ()
        if rows != self._rows:
            self._rows = rows
            self.display = bool(rows)
            self.styles.height = len(rows)
            self.refresh()
        return len(rows)

    def render_line(self, y: int) -> Strip:
        text = self._rows[y] if y < len(self._rows) else ""
        return Strip([Segment(centred(text, self.size.width), self.rich_style)], self.size.width)


class Question(Container):
    """The sentences, large and centred; under them the time left of a wait, or a number."""

    def compose(self) -> ComposeResult:
        with VerticalScroll(can_focus=False):
            yield Sentence()
        yield Figures()

    def draw(self, setting: Setting) -> None:
        """Show a question."""
        self.query_one(Sentence).show(setting)

    def scroll_sentences(self, *, down: bool) -> None:
        """Scroll sentences that are too long for the screen by what is seen of them."""
        scrolled = self.query_one(VerticalScroll)
        if down:
            scrolled.scroll_page_down(animate=False)
        else:
            scrolled.scroll_page_up(animate=False)

    def draw_digits(self, text: str, size: int = 1) -> int:
        """Show large digits, or none for an empty text; return the rows that they take."""
        return self.query_one(Figures).show(text, size)


class Level(Widget):
    """How loud it is at the ear. Nothing else is drawn when it changes."""

    def __init__(self) -> None:
        super().__init__(id="level")
        self._bar = ""

    def show(self, bar: str) -> None:
        """Show a bar of eight cells, or none."""
        if bar != self._bar:
            self._bar = bar
            self.refresh()

    def render_line(self, y: int) -> Strip:
        text = self._bar if y == 0 else ""
        return Strip([Segment(text, self.rich_style)]).adjust_cell_length(
            self.size.width, self.rich_style
        )


class Status(Container):
    """What the ear hears and the voice says, at the foot of the screen."""

    def compose(self) -> ComposeResult:
        with Horizontal(id="hearing"):
            yield Line("ear")
            yield Level()
        yield Line("voice")

    def draw(self, walk: Walk, width: int, *, tight: bool) -> int:
        """Show ear and voice; return the rows that they take. Tight leaves the voice out."""
        room = width - _MARGIN - LEVEL_CELLS - 1
        rows = self.query_one("#ear", Line).say(status.ear_line(walk), room, 2)
        self.query_one("#hearing").styles.height = rows
        self.draw_level(walk)
        text = "" if tight else status.voice_line(walk)
        rows += self.query_one("#voice", Line).say(text, width - _MARGIN, 2)
        self.styles.height = rows
        self.display = rows > 0
        return rows

    def vanish(self) -> None:
        """Make room."""
        self.display = False

    def draw_level(self, walk: Walk) -> None:
        """Show how loud it is at the ear now."""
        self.query_one(Level).show(status.level_bar(walk))
