"""The screen of a walk: one question at a time, and what can be said or pressed."""

from __future__ import annotations

from collections.abc import Callable
from contextlib import suppress
from dataclasses import replace
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
from kiosk.push_to_talk import PushToTalk
from kiosk.screens import status
from kiosk.screens.arrangement import (
    LEAST_HEIGHT,
    Arrangement,
    Block,
    arrange,
    more_face,
    page,
)
from kiosk.screens.block_letters import figure_rows
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
)
from kiosk.screens.remark_screen import RemarkScreen
from kiosk.screens.target_screen import TargetScreen
from kiosk.screens.type_sizes import Wording, best, plain_rows
from kiosk.screens.walk_question import main_line, number_of, picture_of, wait_of
from kiosk.shop import Shop, TakenUp
from kiosk.speaking.voice import Voice
from kiosk.walk import Walk

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

_METER_S: Final = 0.2
_LARGEST_TIME: Final = 3
"""How many times the letters of a sentence the time of a wait may be as large."""
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
        self._meter: Timer | None = None
        self._no_sound = False
        self._time_size = 1

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
        self._meter = self.set_interval(_METER_S, self.meter)
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
            self._draw_time(self._time_size)

    def meter(self) -> None:
        """Look at the ear: some times a second."""
        self.query_one(Status).draw_level(self.walk)
        if self._no_sound != status.no_sound(self.walk):
            self._no_sound = not self._no_sound
            self.draw()

    @on(Changed)
    def _on_changed(self) -> None:
        if self.walk.session.over:
            self._leave(left=False)
            return
        self.draw()

    def _leave(self, *, left: bool) -> None:
        for timer in (self._clockwork, self._meter):
            if timer is not None:
                timer.stop()
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
        width, height = self.room
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
        height -= self.query_one(Status).draw(walk, self.room.width, tight=tight)
        height -= self._draw_notice(width)
        height -= self._draw_time(1)
        wording = Wording(walk.lines(), main_line(walk), walk.sources, tight, self.app.is_web)
        least = max(1, plain_rows(wording, width))
        made = self._arranged(width, height, least)
        room = height - made.primary.least_rows - made.secondary.rows
        draw = None if self._more else picture_of(walk)
        setting = best(wording, width, room, draw)
        if not setting.large and made.secondary.rows > LEAST_HEIGHT:
            # Large letters matter more than a second row of what is seldom needed.
            larger = best(wording, width, room + LEAST_HEIGHT, draw)
            room, setting = (room + LEAST_HEIGHT, larger) if larger.large else (room, setting)
        rows = max(1, len(setting.rows))
        height -= self._enlarge_time(room - rows)
        if not self._more:
            made = arrange(self._in_reach, width, height, rows, self._more_face())
        self.query_one(Question).draw(setting)
        self.query_one("#primary", Panel).show(made.primary)
        self.query_one("#secondary", Panel).show(made.secondary)
        return rows <= room

    def _draw_typing(self, now: Typing) -> None:
        """Draw the keypad with the number so far, and as much of the question as there is room."""
        walk, words = self.walk, self.walk.words
        width, height = self._room()
        low = height < _LOW
        around, foot = self.query_one(Around), self.query_one(Status)
        block = keypad(now, words, width)
        self._in_reach = block.faces
        height -= block.rows + self._draw_notice(width)
        number, name = shown(now, words), number_of(walk)
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
        question.draw(best(Wording(lines), width, height))
        self.query_one("#primary", Panel).show(block)
        self.query_one("#secondary", Panel).show(Block())

    def _draw_time(self, size: int) -> int:
        """Show what a wait still needs, in digits of a size; return the rows that it takes."""
        self._time_size = size
        return self.query_one(Question).draw_digits(wait_of(self.walk), size)

    def _enlarge_time(self, spare: int) -> int:
        """Show it as large as there is room for; return the rows that it takes on top."""
        first = self._draw_time(1)
        if not first:
            return 0
        sizes = range(2, _LARGEST_TIME + 1)
        size = max((one for one in sizes if figure_rows(one) - first <= spare), default=1)
        return self._draw_time(size) - first

    def _arranged(self, width: int, height: int, rows: int) -> Arrangement:
        """Arrange all that can be pressed; the question takes `rows` of the `height` rows."""
        more = self._more_face()
        found = offered(self.walk, width, height - rows)
        self._in_reach = found
        if self._more:
            back = Face(Less(), self.walk.words.say("say-never-mind"), key="escape")
            rest = [face for face in found if not face.primary]
            # The key that leads back from here is one that pauses elsewhere.
            rest = [replace(one, key="") if one.key == back.key else one for one in rest]
            rest.append(back)
            self._in_reach = tuple(rest)
            return Arrangement(page(rest, width, height - rows, self._page, more), Block())
        made = arrange(found, width, height, rows, more)
        if more in made.secondary.faces:
            self._in_reach = (*found, more)
        return made

    def _more_face(self) -> Face:
        return more_face(self.walk.words.say("more"))
