"""The screen at the end of a session: how it ended, and what was recorded."""

from __future__ import annotations

from textual.app import ComposeResult
from textual.containers import VerticalScroll
from textual.content import Content
from textual.message import Message
from textual.widgets import Static

from kiosk.engine.commands import Channel
from kiosk.engine.state import Mode
from kiosk.languages.words import Words
from kiosk.screens.account import deviation_lines, reading_lines, recorded_lines
from kiosk.screens.arrangement import Block, even_columns
from kiosk.screens.faces import Face, Leave, More, more_face
from kiosk.screens.lettering import spread
from kiosk.screens.panel import Panel
from kiosk.screens.target_screen import TargetScreen
from kiosk.session import Session
from kiosk.shop import Shop

_HASH_SHOWN = 12


class SummaryScreen(TargetScreen):
    """Reads the account of one session from the journal."""

    class Done(Message):
        """The worker has read it."""

    def __init__(self, shop: Shop, session: Session, words: Words) -> None:
        super().__init__(shop.clock)
        self.shop = shop
        self.session = session
        self.words = words
        self._drawn: tuple[int, int] | None = None

    def help(self) -> tuple[Words, str]:
        return self.words, self.words.say("help-summary")

    def compose(self) -> ComposeResult:
        yield Static(id="head", markup=False)
        with VerticalScroll(id="account", can_focus=False):
            yield Static(id="lines", markup=False)
        yield Panel(self.clock, "primary")

    def on_mount(self) -> None:
        self.unsteady()
        self.draw()
        self.query_one("#primary", Panel).focus_first()

    def pressed(self, face: Face, channel: Channel) -> None:  # noqa: ARG002
        if not isinstance(face.choice, More):
            self.post_message(self.Done())
            return
        account = self.query_one("#account", VerticalScroll)
        if account.scroll_y >= account.max_scroll_y:
            account.scroll_home(animate=False)
        else:
            account.scroll_page_down(animate=False)

    def draw(self) -> None:
        if not self.is_mounted:
            return
        words, plan = self.words, self.session.plan
        width = self.room.width
        title = f"{plan.machine_name} · {words.text(plan.title)}"
        mark = words.say("practice") if plan.practice else ""
        self.query_one("#head", Static).update(Content(spread(title, mark, width)))
        self.query_one("#lines", Static).update(self._content())
        back = Face(Leave(), words.say("all-machines"), key="enter", primary=True)
        more = more_face(words)
        faces = (back, more) if self._overflows() else (back,)
        self.query_one("#primary", Panel).show(Block(faces, even_columns(len(faces), 2), 3))
        self.call_after_refresh(self._offer_more)

    def _overflows(self) -> bool:
        return self.query_one("#account", VerticalScroll).max_scroll_y > 0

    def _offer_more(self) -> None:
        """Offer `more` once it is known that not everything fits."""
        shown = len(self.query_one("#primary", Panel).targets)
        if self._overflows() and shown == 1 and self._drawn != self.room:
            self._drawn = self.room
            self.draw()

    def _content(self) -> Content:
        words, session = self.words, self.session
        events = self.shop.journal.events(session.id)
        first, *rest = words.lines(session.prompt())
        off = deviation_lines(events, session.plan, words)
        blocks = [
            ("left-unsafe" if session.state.mode is Mode.COMPLETE else "", rest),
            ("deviations" if off else "", off or [words.say("no-deviations")]),
            ("recorded", recorded_lines(events, words)),
            ("readings", reading_lines(events, session.plan, words)),
        ]
        parts = [Content.styled(first, "bold")]
        for title, lines in blocks:
            if not lines:
                continue
            parts.append(Content(""))
            if title:
                parts.append(Content.styled(words.say(title), "bold underline"))
            parts += [Content(f"• {line}") for line in lines]
        head = self.shop.journal.head()[:_HASH_SHOWN]
        parts += [Content(""), Content(words.say("journal-head", hash=head))]
        return Content("\n").join(parts)
