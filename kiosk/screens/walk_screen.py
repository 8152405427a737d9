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
from kiosk.push_to_talk import PushToTalk
from kiosk.screens import status
from kiosk.screens.faces import Face, KeypadKey, Leave, Less, More, TryAgain, TypeNumber
from kiosk.screens.panel import Panel
from kiosk.screens.pin_screen import Doorway, Then
from kiosk.screens.question import Around, Line, Question, Status
from kiosk.screens.reading import ENTER, RUB_OUT, Typing, typing
from kiosk.screens.remark_screen import RemarkScreen
from kiosk.screens.target_screen import TargetScreen
from kiosk.screens.walk_sheet import WalkSheet
from kiosk.shop import Shop
from kiosk.speaking.voice import Voice
from kiosk.unfinished import TakenUp
from kiosk.walk import Walk

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

_METER_S: Final = 0.2


class WalkScreen(TargetScreen):
    """Shows a walk and tells it what was pressed. It knows no rule."""

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
        self._sheet = WalkSheet(self, self.walk)
        self._typing: Typing | None = None
        self._notice = ""
        self._asked: object = None
        self._clockwork: Timer | None = None
        self._meter: Timer | None = None
        self._no_sound = False

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
        if isinstance(self.walk.intercom.hearing, PushToTalk):
            self.walk.intercom.hearing.tick()
        if self._typing is None:
            self._sheet.tick()

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
                self._sheet.turn()
                self.draw()
            case Less():
                self._typing = None
                self._sheet.turn_back()
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
                self._sheet.turn_back()
                self.walk.do(choice, c.Evidence(channel))  # type: ignore[arg-type]

    def on_key(self, event: events.Key) -> None:
        hearing = self.walk.intercom.hearing
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
        listed = any(face.key == event.key for face in self._sheet.in_reach)
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
        return self._sheet.in_reach

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
            self._sheet.begin_anew()
            if walk.number is None or walk.notice == "":
                self._typing = None
        self._sheet.draw(self._notice, self._typing, held=state.mode is Mode.HELD)
        if fresh:
            self.set_focus(None)
            self.query_one("#primary", Panel).focus_way_on()
