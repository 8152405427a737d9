"""The two sorts of pages in the review: a list to press from, and a text to read."""

from __future__ import annotations

from collections.abc import Callable, Iterable, Iterator, Sequence
from dataclasses import dataclass, replace
from typing import Any, Final

from textual import events
from textual.app import ComposeResult
from textual.containers import Container, VerticalScroll
from textual.content import Content
from textual.widgets import Static

from kiosk.engine.commands import Channel
from kiosk.screens.arrangement import LEAST_HEIGHT, Block, even_columns, most_columns
from kiosk.screens.choose import ChooseScreen, Item
from kiosk.screens.faces import Face, Less, More, Pick, more_face
from kiosk.screens.lettering import balanced, signalled, wrapped
from kiosk.screens.panel import Panel
from kiosk.screens.question import Line
from kiosk.screens.review_desk import Desk
from kiosk.screens.target_screen import TargetScreen

_LOW: Final = 22
"""Below so many rows the ways on get one row of targets, else two."""
_MOST_NOTICE_ROWS: Final = 3


@dataclass(frozen=True, slots=True)
class Way:
    """Where one can go from a page, or what can be done there."""

    go: Callable[[], None]


@dataclass(frozen=True, slots=True)
class OtherWays:
    """Show the ways that there was no room for."""


@dataclass(frozen=True, slots=True)
class Row:
    """A line of text to read; folded where it is too long, further rows set in by `indent`."""

    text: str = ""
    style: str = ""
    """A style of Textual's, as `bold`; it carries no meaning that the words do not."""
    indent: int = 2

    def folded(self, width: int) -> Iterator[Content]:
        """Yield its rows in so many cells."""
        lead = len(self.text) - len(self.text.lstrip())
        first, *rest = wrapped(self.text, width - lead) or [""]
        more = wrapped(" ".join(rest), width - lead - self.indent) if rest else []
        for line, blank in ((first, lead), *((one, lead + self.indent) for one in more)):
            yield Content(" " * blank).append(Content.styled(line, self.style))


Part = Row | Content
"""A line of words, or one that is drawn already."""


class DeskChoice(ChooseScreen):
    """A question of the review: it remembers by which channel it was answered."""

    def __init__(
        self, desk: Desk, question: str, items: Sequence[Item], chosen: Callable[[Any], None]
    ) -> None:
        super().__init__(desk.shop.clock, desk.words, question, items, chosen)
        self._desk = desk

    def pressed(self, face: Face, channel: Channel) -> None:
        self._desk.touch(channel)
        super().pressed(face, channel)


class PageScreen(TargetScreen):
    """A page with a heading, a body, and at the foot the ways on."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk.shop.clock)
        self.desk = desk
        self.words = desk.words
        self.notice = ""

    def compose(self) -> ComposeResult:
        yield Line("head")
        yield Line("notice")
        yield from self.body()
        yield Panel(self.clock, "secondary")

    def body(self) -> ComposeResult:
        """Yield what stands between heading and foot."""
        raise NotImplementedError

    def heading(self) -> tuple[str, str]:
        """Return what stands at the two ends of the first row."""
        raise NotImplementedError

    def ways(self) -> tuple[Face, ...]:
        """Return where one can go from here, the most needed first; each stands for a Way."""
        return ()

    def leave(self) -> None:
        """Go back to where one came from."""
        self.app.pop_screen()

    def on_mount(self) -> None:
        self.unsteady()
        self.draw()

    def way(self, message: str, key: str, go: Callable[[], None]) -> Face:
        """Return the face of a way on."""
        return Face(Pick(Way(go)), self.words.say(message), key=key)

    def faces(self) -> tuple[Face, ...]:
        return (*(target.face for target in self.targets()), *self.ways())

    def draw_frame(self, width: int, height: int, *, more: bool) -> int:
        """Draw heading, notice and foot; return the rows that are left for the body."""
        left, right = self.heading()
        rows = self.query_one("#head", Line).say_ends(left, right, width)
        text = signalled(self.notice, self.words)
        rows += self.query_one("#notice", Line).say(text, width - 2, _MOST_NOTICE_ROWS)
        foot = self._foot(width, height, more=more)
        self.query_one("#secondary", Panel).show(foot)
        return height - rows - foot.rows

    def foot_rows(self, width: int, height: int) -> int:
        """Return the rows that heading, notice and foot take at the most."""
        return 1 + _MOST_NOTICE_ROWS * bool(self.notice) + self._foot(width, height, more=True).rows

    def _foot(self, width: int, height: int, *, more: bool) -> Block:
        say = self.words.say
        first = [Face(Less(), say("review-back"), key="escape", primary=not self.ways())]
        if more:
            first.append(more_face(self.words))
        most = most_columns(width)
        faces = [*first, *self.ways()]
        room = most * (1 if height < _LOW else 2)
        if len(faces) > room:
            faces = faces[: room - 1]
            faces.append(Face(Pick(OtherWays()), say("review-other-ways"), key="o"))
        return Block(tuple(faces), even_columns(len(faces), most), LEAST_HEIGHT)

    def pressed(self, face: Face, channel: Channel) -> None:
        self.notice = ""
        self.desk.touch(channel)
        match face.choice:
            case Pick(Way(go)):
                go()
            case Pick(OtherWays()):
                items = [(one.choice, one.label, "") for one in self.ways()]
                self.ask(self.words.say("review-where-to"), items, lambda way: way.item.go())
            case Pick(item):
                self.chosen(item)
            case More():
                self.go_on()
            case _:
                self.leave()

    def show(self, screen: TargetScreen) -> None:
        """Show another page over this one."""
        self.app.push_screen(screen)

    def ask(self, question: str, items: Sequence[Item], chosen: Callable[[Any], None]) -> None:
        """Ask a question with a list of answers."""
        self.app.push_screen(DeskChoice(self.desk, question, items, chosen))

    def chosen(self, item: object) -> None:
        """An item of the page was pressed."""

    def go_on(self) -> None:
        """Show what comes after what is seen."""

    def go_back(self) -> None:
        """Show what comes before what is seen."""

    def on_key(self, event: events.Key) -> None:
        if event.key in ("pagedown", "pageup"):
            event.stop()
            self.desk.touch(Channel.KEY)
            (self.go_on if event.key == "pagedown" else self.go_back)()
            return
        super().on_key(event)


class ListScreen(PageScreen):
    """A page that lists items to press, each as high as its text needs."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._tops = [0]
        """Where the pages begin that were turned, the present one last."""
        self._shown = 0

    def items(self) -> Sequence[Any]:
        """Return what is listed, as far as it is known."""
        raise NotImplementedError

    def face(self, item: Any) -> Face:
        """Return the face of an item; it stands for a Pick of it. The page gives it its key."""
        raise NotImplementedError

    def reach(self, count: int) -> None:
        """See to it that so many items are known, where there are so many."""

    def note(self) -> str:
        """Return what is said above the list."""
        return "" if self.items() else self.words.say("review-nothing-here")

    @property
    def top(self) -> int:
        """Place of the first item that is seen, from 0."""
        return self._tops[-1]

    def place(self) -> str:
        """Return which items are seen."""
        first, last = self.top + 1, self.top + self._shown
        return self.words.say("review-place", first=str(first), last=str(last)) if last else ""

    def body(self) -> ComposeResult:
        with Container(id="listing"):
            yield Line("note")
            yield Panel(self.clock, "items")

    def on_mount(self) -> None:
        super().on_mount()
        self.query_one("#items", Panel).focus_first()

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, height = self.room
        top = self.top
        room = height - self.foot_rows(width, height)
        room -= self.query_one("#note", Line).say(self.note(), width - 2)
        self.reach(top + room // LEAST_HEIGHT + 1)
        found = self.items()
        shown = _fitting((self.face(one) for one in found[top:]), width, room)
        self._shown = len(shown)
        self.draw_frame(width, height, more=len(found) > len(shown))
        keys = "123456789".ljust(len(shown))
        faces = tuple(
            replace(one, key=key.strip()) for (one, _), key in zip(shown, keys, strict=False)
        )
        heights = [rows for _, rows in shown]
        panel = self.query_one("#items", Panel)
        panel.show(Block(faces, 1, LEAST_HEIGHT))
        panel.styles.grid_rows = " ".join(map(str, heights)) or "1"
        panel.styles.height = sum(heights)

    def go_on(self) -> None:
        following = self.top + self._shown
        self.reach(following + 1)
        if following < len(self.items()):
            self._tops.append(following)
        else:
            self._tops = [0]
        self._turn()

    def go_back(self) -> None:
        if len(self._tops) > 1:
            self._tops.pop()
            self._turn()

    def on_resize(self) -> None:
        # Pages are cut anew: only the first item that is seen stays where it is.
        self._tops = [0, self.top] if self.top else [0]
        self.draw()

    def _turn(self) -> None:
        self.unsteady()
        self.draw()
        self.query_one("#items", Panel).focus_first()


class ReadScreen(PageScreen):
    """A page of text, scrolled page by page."""

    def parts(self, width: int) -> Sequence[Part]:
        """Return the text, for so many cells."""
        raise NotImplementedError

    def body(self) -> ComposeResult:
        with VerticalScroll(id="account", can_focus=False):
            yield Static(id="lines", markup=False)

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, height = self.room
        rows: list[Content] = []
        for part in self.parts(width - 3):
            rows += [part] if isinstance(part, Content) else part.folded(width - 3)
        more = len(rows) > height - self.foot_rows(width, height)
        self.draw_frame(width, height, more=more)
        self.query_one("#lines", Static).update(Content("\n").join(rows))

    def go_on(self) -> None:
        text = self.query_one("#account", VerticalScroll)
        if text.scroll_y >= text.max_scroll_y:
            text.scroll_home(animate=False)
        else:
            text.scroll_page_down(animate=False)

    def go_back(self) -> None:
        self.query_one("#account", VerticalScroll).scroll_page_up(animate=False)


def _fitting(faces: Iterable[Face], width: int, room: int) -> list[tuple[Face, int]]:
    """Return the first faces that fit into so many rows, with their heights; always one."""
    found: list[tuple[Face, int]] = []
    left = room
    for face in faces:
        needed = max(LEAST_HEIGHT, min(room, _rows(face, width) + 1))
        if found and needed > left:
            break
        found.append((face, needed))
        left -= needed
    return found


def _rows(face: Face, width: int) -> int:
    """Return the rows that a face's text takes, as a target lays it out."""
    parts = [face.label, *(face.detail.split("\n") if face.detail else ())]
    return sum(len(balanced(part, width - 2)) for part in parts)
