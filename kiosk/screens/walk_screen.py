"""The screen of a walk: one question at a time, and what can be said or pressed."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from typing import TYPE_CHECKING, ClassVar, Final, cast

from textual import events, on
from textual.app import ComposeResult
from textual.containers import Container
from textual.message import Message
from textual.timer import Timer

from kiosk.engine import commands as c
from kiosk.engine.state import Mode
from kiosk.journal.codec import UnknownEvent
from kiosk.listening.ear import Heard
from kiosk.listening.in_use import Hearing
from kiosk.people.may import Identified
from kiosk.procedure.plan import Count
from kiosk.push_to_talk import PushToTalk
from kiosk.screens.arrangement import Block, arrange, more_face, page
from kiosk.screens.faces import (
    Face,
    KeypadKey,
    Leave,
    Less,
    More,
    TryAgain,
    TypeNumber,
)
from kiosk.screens.offered import offered
from kiosk.screens.panel import Panel
from kiosk.screens.pin_screen import Doorway, Then
from kiosk.screens.question import Around, Line, Question, Status
from kiosk.screens.reading import (
    ENTER,
    RUB_OUT,
    Typing,
    keypad,
    shown,
    typing,
    unit_name,
)
from kiosk.screens.remark_screen import RemarkScreen
from kiosk.screens.target_screen import TargetScreen
from kiosk.shop import Shop, TakenUp
from kiosk.speaking.voice import Voice
from kiosk.walk import Walk

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

_LOW: Final = 22
"""Below so many rows the lines around the question make room for the keypad."""


class WalkScreen(TargetScreen):
    """Draws a walk and tells it what was pressed. It knows no rule."""

    AUTO_FOCUS: ClassVar[str | None] = ""
    """Nothing is focused by itself: an Enter given out of habit answers none of several answers."""

    class Changed(Message):
        """The walk, its ear or its voice changed; may come from any thread."""

    class Over(Message):
        """The session is over, or was left."""

        def __init__(self, screen: WalkScreen, *, left: bool) -> None:
            super().__init__()
            self.screen = screen
            self.left = left

    def __init__(
        self, shop: Shop, found: TakenUp, start: c.Start, by: c.Evidence, voice: Voice,
        hearing: Hearing,
    ) -> None:  # fmt: skip
        """Walk a session, begun or taken over as `start` says; its PINs have been asked for."""
        super().__init__(shop.clock)
        self.shop = shop
        self.start, self.by = start, by
        self.walk = Walk(
            found.session, shop.site, shop.clock, voice, hearing, self._post_change,
            found.caveat, shop.bench, self._door, self._remark,
        )  # fmt: skip
        with suppress(UnknownEvent):
            self.walk.left = shop.time_left(found.session.plan)
        self._typing: Typing | None = None
        self._more = False
        self._page = 0
        self._notice = ""
        self._asked: object = None
        self._in_reach: tuple[Face, ...] = ()
        self._clockwork: Timer | None = None

    def compose(self) -> ComposeResult:
        with Container(id="frame"):
            yield Around()
            yield Question()
            yield Line("notice")
            yield Panel(self.clock, "primary")
            yield Panel(self.clock, "secondary")
        yield Status()

    def on_mount(self) -> None:
        self._clockwork = self.set_interval(1.0, self.tick)
        self._begin()

    def _begin(self) -> None:
        if self.walk.session.state.mode is Mode.IDLE:
            self.walk.do(self.start, self.by)
            return
        self.walk.take_up()
        start = self.start
        if self.walk.session.state.worker != start.worker:
            act = c.HandOver(start.worker, start.language, start.supervisor, start.pin)
            self.walk.do(act, self.by)

    def _door(
        self, act: Identified, by: c.Evidence, then: Then, refused: Callable[[c.Refusal], None]
    ) -> None:
        app, procedure = cast("KioskApp", self.app), self.walk.session.plan.procedure
        Doorway(app, self.shop, self.walk.words, procedure).settle(act, by, then, refused)

    def _remark(self) -> None:
        self.app.push_screen(RemarkScreen(self.shop, self.walk))

    def on_screen_resume(self) -> None:
        """Listen to the walk again after another screen had the ear."""
        if self.walk.session.state.mode is not Mode.IDLE:
            self.walk.listen_again()

    def _post_change(self) -> None:
        self.post_message(self.Changed())

    def hear(self, heard: Heard) -> None:
        """Take what the ear made of an utterance."""
        self._notice = ""
        self.walk.hear(heard)

    def tick(self) -> None:
        """Look at the clock: once a second."""
        self.walk.tick()
        if isinstance(self.walk.hearing, PushToTalk):
            self.walk.hearing.tick()
        if self._typing is None:
            self._draw_time()

    @on(Changed)
    def _on_changed(self) -> None:
        if self.walk.session.over:
            self._leave(left=False)
            return
        self.draw()

    def _leave(self, *, left: bool) -> None:
        if self._clockwork is not None:
            self._clockwork.stop()
        self.post_message(self.Over(self, left=left))

    # What was pressed.

    def guarded(self, face: Face) -> bool:
        """All but the keys of a number, which may hold the same digit twice."""
        return not isinstance(face.choice, KeypadKey) or face.choice.name == ENTER

    def pressed(self, face: Face, channel: c.Channel) -> None:
        self._notice = ""
        match face.choice:
            case More():
                self._page += self._more
                self._more = True
                self.draw()
            case Less():
                self._more, self._typing = False, None
                self.draw()
            case TypeNumber():
                self._start_typing()
            case KeypadKey(name):
                self._type(name, channel)
            case TryAgain():
                self._begin()
            case Leave():
                self._leave(left=True)
            case choice:
                self._more = False
                self.walk.do(choice, c.Evidence(channel))  # type: ignore[arg-type]

    def on_key(self, event: events.Key) -> None:
        hearing = self.walk.hearing
        if isinstance(hearing, PushToTalk) and event.key == hearing.key:
            event.stop()
            event.prevent_default()
            hearing.press()
            return
        if event.key in ("pageup", "pagedown"):
            event.stop()
            self.query_one(Question).scroll_sentences(down=event.key == "pagedown")
            return
        mark = {"full_stop": ".", "comma": ",", "minus": "-"}.get(event.key, event.key)
        typed = mark.isdecimal() or mark in (".", ",", "-", RUB_OUT)
        listed = any(face.key == event.key for face in self._in_reach)
        if typed and self.walk.number is not None and (self._typing or not listed):
            event.stop()
            event.prevent_default()
            if self._typing is None:
                self._start_typing()
            self._type(mark, c.Channel.KEY)
            return
        super().on_key(event)

    def _start_typing(self) -> None:
        if self.walk.number is None:
            return
        self._typing = typing(self.walk.number)
        self.draw()
        self.query_one("#primary", Panel).focus_way_on()

    def _type(self, name: str, channel: c.Channel) -> None:
        if self._typing is None:
            return
        self._notice = ""
        if name != ENTER:
            self._typing = self._typing.press(name)
            self.draw()
            return
        value = self._typing.value()
        if value is None:
            self._notice = self.walk.words.say("number-missing")
            self.draw()
            return
        self.walk.read(value, channel)

    def faces(self) -> tuple[Face, ...]:
        return self._in_reach

    # What is shown.

    def draw(self) -> None:
        if not self.is_mounted:
            return
        walk = self.walk
        state = walk.session.state
        asked = (state, tuple(walk.lines()))
        fresh = asked != self._asked
        if fresh:
            if self._asked is not None:
                self.unsteady()
            for target in self.targets():
                target.let_go()
            self._asked = asked
            self._page, self._more = 0, False
            if walk.number is None or walk.notice == "":
                self._typing = None
        self._draw_frame(held=state.mode is Mode.HELD)
        if self._typing is not None:
            self._draw_typing(self._typing)
        elif not self._draw_walk(tight=False):
            self._draw_walk(tight=True)
        if fresh:
            self.set_focus(None)
            self.query_one("#primary", Panel).focus_way_on()

    def _draw_frame(self, *, held: bool) -> None:
        self.set_class(held, "-held")
        word = self.walk.words.say("held").upper()
        self.query_one("#frame", Container).border_title = f" {word} " if held else ""

    def _room(self) -> tuple[int, int]:
        """Return the columns and rows inside the frame."""
        edge = 2 if self.has_class("-held") else 0
        width, height = self.app.size
        return width - edge, height - edge

    def _draw_notice(self, width: int) -> int:
        notice = self._notice or self.walk.notice
        text = f"{self.walk.words.say('signal-notice')}: {notice}" if notice else ""
        return self.query_one("#notice", Line).say(text, width - 2)

    def _draw_walk(self, *, tight: bool) -> bool:
        """Draw the question with its targets; return whether every row of it is seen."""
        walk = self.walk
        width, height = self._room()
        height -= self.query_one(Around).draw(walk, width, tight=tight)
        height -= self.query_one(Status).draw(walk, self.app.size.width, tight=tight)
        height -= self._draw_notice(width)
        height -= self._draw_time()
        question = self.query_one(Question)
        folded = question.folded([*walk.lines(), *walk.sources], width, tight=tight)
        needed = max(1, sum(len(rows) for rows in folded))
        primary, secondary = self._blocks(width, height, needed)
        left = height - primary.rows - secondary.rows
        question.draw(folded, left)
        self.query_one("#primary", Panel).show(primary)
        self.query_one("#secondary", Panel).show(secondary)
        return needed <= left

    def _draw_typing(self, now: Typing) -> None:
        """Draw the keypad with the number so far, and as much of the question as there is room."""
        walk, words = self.walk, self.walk.words
        width, height = self._room()
        low = height < _LOW
        around, foot = self.query_one(Around), self.query_one(Status)
        block = keypad(now, words, width)
        self._in_reach = block.faces
        height -= block.rows + self._draw_notice(width)
        number, name = shown(now, words), self._number_of()
        if low:
            around.vanish()
            foot.vanish()
            lines = [f"{number} {name}"]
        else:
            height -= around.draw(walk, width, tight=True)
            height -= foot.draw(walk, width, tight=True)
            lines = [*walk.lines(), name]
        question = self.query_one(Question)
        height -= question.draw_digits("" if low else number)
        question.draw(question.folded(lines, width, tight=False), height)
        self.query_one("#primary", Panel).show(block)
        self.query_one("#secondary", Panel).show(Block())

    def _number_of(self) -> str:
        """Return what the number is of: the name of a part, or the unit in words."""
        walk = self.walk
        task = None if walk.asking else walk.session.plan.step(walk.session.state.step).task
        if isinstance(task, Count):
            return walk.words.text(task.name)
        return "" if walk.number is None else unit_name(walk.number, walk.words)

    def _draw_time(self) -> int:
        """Show what a wait still needs; return the rows that it takes."""
        left = self.walk.session.seconds_left()
        whole = 0 if left is None else int(-(-left // 1))
        text = f"{whole // 60}:{whole % 60:02}" if whole else ""
        return self.query_one(Question).draw_digits(text)

    def _blocks(self, width: int, height: int, rows: int) -> tuple[Block, Block]:
        """Return the two blocks of targets; the question takes `rows` of the `height` rows."""
        more = more_face(self.walk.words.say("more"))
        found = offered(self.walk, width, height - rows)
        self._in_reach = found
        if self._more:
            rest = [face for face in found if not face.primary]
            rest.append(Face(Less(), self.walk.words.say("say-never-mind"), key="escape"))
            self._in_reach = tuple(rest)
            return page(rest, width, height - rows, self._page, more), Block()
        made = arrange(found, width, height, rows, more)
        if more in made.secondary.faces:
            self._in_reach = (*found, more)
        return made.primary, made.secondary
