"""A page of the setup: one question, what there is to know about it, and the targets."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass

from rich.cells import cell_len
from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.content import Content
from textual.widgets import Static

from kiosk.clock import Clock
from kiosk.engine.commands import Channel
from kiosk.languages.words import Words
from kiosk.screens.arrangement import GAP, LEAST_HEIGHT, Block, even_columns, most_columns
from kiosk.screens.faces import Face, Leave, Less, More, Pick, more_face
from kiosk.screens.lettering import balanced, signalled, wrapped
from kiosk.screens.panel import Panel
from kiosk.screens.question import Line
from kiosk.screens.target_screen import TargetScreen

_TALLEST = 6
_MARGIN = 2


@dataclass(frozen=True, slots=True)
class Asked:
    """What a page asks."""

    head: tuple[str, str]
    """What it is about, and how far the setup has come."""
    question: str
    note: str = ""
    notice: str = ""


@dataclass(frozen=True, slots=True)
class Ways:
    """The ways out of a page; the page is closed before one of them is taken."""

    back: Callable[[], object] | None = None
    stop: Callable[[], object] | None = None
    done: Callable[[], object] | None = None
    done_label: str = ""


@dataclass(frozen=True, slots=True)
class Done:
    """The page is finished with."""


class SetupPage(TargetScreen):
    """What all pages of the setup share."""

    # Nothing is chosen until somebody moves there: an Enter too many answers no question.
    AUTO_FOCUS = ""

    def __init__(self, clock: Clock, words: Words, asked: Asked, ways: Ways) -> None:
        super().__init__(clock)
        self.words = words
        self.asked = asked
        self.ways = ways
        self.notice = asked.notice
        self._page = 0

    def compose(self) -> ComposeResult:
        yield Line("head")
        with VerticalScroll(id="asking", can_focus=False):
            yield Static(id="asked", markup=False)
            yield Static(id="told", markup=False)
        yield Line("notice")
        yield from self.compose_more()
        yield Panel(self.clock, "primary")
        yield Panel(self.clock, "secondary")

    def compose_more(self) -> ComposeResult:
        """Yield what else a page has, between the text and the targets."""
        yield from ()

    def on_screen_resume(self) -> None:
        self.unsteady()
        self.draw()

    # What is shown.

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, height = self.room
        head = self.query_one("#head", Line)
        height -= head.say_ends(*self.asked.head, width)
        height -= self._draw_notice(width)
        secondary = self.secondary(width)
        self.query_one("#secondary", Panel).show(secondary)
        height -= secondary.rows
        question = wrapped(self.asked.question, width - _MARGIN)
        note = wrapped(self.asked.note, width - _MARGIN) if self.asked.note else []
        apart = [""] if note and len(question) + len(note) + 1 + LEAST_HEIGHT * 2 <= height else []
        self.query_one("#asked", Static).update(Content("\n".join(question)))
        told = self.query_one("#told", Static)
        told.display = bool(note)
        told.update(Content("\n".join([*apart, *note])))
        height -= self.draw_more(width)
        lines = len(question) + len(apart) + len(note)
        self.query_one("#primary", Panel).show(self.primary(width, height, lines))

    def _draw_notice(self, width: int) -> int:
        text = signalled(self.notice, self.words)
        return self.query_one("#notice", Line).say(text, width - _MARGIN)

    def draw_more(self, width: int) -> int:  # noqa: ARG002
        """Show what else a page has; return the rows that it takes."""
        return 0

    def primary(self, width: int, height: int, lines: int) -> Block:
        """Return what is chosen from, in `height` rows of which the text wants `lines`."""
        raise NotImplementedError

    def secondary(self, width: int) -> Block:
        """Return the ways out."""
        say, ways = self.words.say, self.ways
        faces: list[Face] = []
        if ways.back is not None:
            faces.append(Face(Less(), say("setup-back"), key="escape"))
        if ways.stop is not None:
            faces.append(Face(Leave(), say("setup-stop"), key="s"))
        if ways.done is not None:
            label = ways.done_label or say("setup-done")
            faces.append(Face(Pick(Done()), label, key="enter", primary=True))
        columns = even_columns(len(faces), most_columns(width))
        return Block(tuple(faces), columns, LEAST_HEIGHT)

    # What is pressed.

    def pressed(self, face: Face, channel: Channel) -> None:
        if channel is Channel.TOUCH:
            self.set_focus(None)
        self.notice = ""
        ways = self.ways
        match face.choice:
            case Less() if ways.back is not None:
                self.leave(ways.back)
            case Leave() if ways.stop is not None:
                ways.stop()
            case Pick(Done()) if ways.done is not None:
                self.leave(ways.done)
            case More():
                self._page += 1
                self.draw()
            case Pick(item):
                self.chosen(item)
            case _:
                pass

    def chosen(self, item: object) -> None:
        """Take an item that was pressed."""
        raise NotImplementedError

    def leave(self, then: Callable[[], object]) -> None:
        """Close the page, and go on."""
        self.app.pop_screen()
        then()


@dataclass(frozen=True, slots=True)
class Item:
    """Something to choose."""

    value: object
    label: str
    detail: str = ""
    """More about it; lines are parted by \\n."""
    marked: bool = False
    """True for what is chosen already."""
    available: bool = True
    primary: bool = False


class ChoicePage(SetupPage):
    """A list to press an item from. One that stays is drawn again with the items as they are then,
    and is left by its ways out alone."""

    def __init__(
        self,
        clock: Clock,
        words: Words,
        asked: Asked,
        ways: Ways,
        items: Callable[[], Sequence[Item]],
        taken: Callable[[object], object],
        *,
        stays: bool = False,
    ) -> None:
        super().__init__(clock, words, asked, ways)
        self._items = items
        self._taken = taken
        self._stays = stays
        self._faces: tuple[Face, ...] = ()

    def primary(self, width: int, height: int, lines: int) -> Block:
        digits = iter("123456789")
        self._faces = tuple(
            Face(
                Pick(one), f"✓ {one.label}" if one.marked else one.label, one.detail,
                key=next(digits, ""), primary=one.primary, listed=not one.primary,
                available=one.available,
            )
            for one in self._items()
        )  # fmt: skip
        more = more_face(self.words)
        return listing(self._faces, width, max(LEAST_HEIGHT, height - lines), self._page, more)

    def faces(self) -> tuple[Face, ...]:
        return (*self._faces, *(target.face for target in self.targets()))

    def chosen(self, item: object) -> None:
        if not isinstance(item, Item) or not item.available:
            return
        if self._stays:
            self._taken(item.value)
            if self.is_current:
                self.unsteady()
                self.draw()
            return
        self.leave(lambda: self._taken(item.value))


def listing(faces: tuple[Face, ...], width: int, room: int, number: int, more: Face) -> Block:
    """Return a page of a list in `room` rows: as many as can be read whole, the last one leading to
    the next page."""
    best = (0, 0, 0)
    for columns in range(min(most_columns(width), max(1, len(faces))), 0, -1):
        inside = (width - (columns - 1) * GAP) // columns - _MARGIN
        tall = max([LEAST_HEIGHT, *(_rows(face, inside) for face in faces)])
        shown = min(len(faces), columns * (room // tall))
        # Of two ways to show as many, the one with more columns, found first, leaves more room.
        if shown > best[0]:
            best = (shown, columns, tall)
    shown, columns, tall = best
    if not shown:
        # Not even one can be read whole.
        shown, columns, tall = 1, 1, max(LEAST_HEIGHT, room)
    listed = faces
    if len(faces) > shown:
        each = max(1, shown - 1)
        start = number % -(-len(faces) // each) * each
        listed = (*faces[start : start + each], more)
        if shown == 1:
            # One at a time, with the way on below it.
            listed, columns, tall = (faces[number % len(faces)], more), 1, LEAST_HEIGHT
    columns = even_columns(len(listed), columns)
    rows = -(-len(listed) // columns)
    return Block(listed, columns, max(tall, min(tall + 2, _TALLEST, room // max(1, rows))))


def _rows(face: Face, width: int) -> int:
    """Return the rows that a face's texts take."""
    parts = [face.label, *(face.detail.split("\n") if face.detail else ())]
    longest = max((cell_len(word) for part in parts for word in part.split()), default=0)
    # A word that would be broken wants a wider target.
    broken = _TALLEST if longest > width else 0
    return broken + sum(len(balanced(part, width)) for part in parts)
