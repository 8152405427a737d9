"""The screen on which a worker leaves a spoken remark on a problem: record, then keep it or not."""

from __future__ import annotations

from enum import Enum, auto
from typing import ClassVar, Final

from textual import events, on
from textual.app import ComposeResult
from textual.message import Message

from kiosk.engine.commands import Channel, Evidence
from kiosk.listening.ear import Heard
from kiosk.listening.in_use import Records
from kiosk.listening.settled import Opens
from kiosk.options import NeverMind
from kiosk.push_to_talk import PushToTalk
from kiosk.remarks.keeping import NotKept, keep
from kiosk.remarks.recorder import MOST_S, Ended, Recorder
from kiosk.screens import status
from kiosk.screens.arrangement import arrange
from kiosk.screens.faces import Face, Pick, more_face
from kiosk.screens.lettering import signalled
from kiosk.screens.panel import Panel
from kiosk.screens.question import Line, Question
from kiosk.screens.target_screen import TargetScreen
from kiosk.screens.type_sizes import Wording, best, plain_rows
from kiosk.shop import Shop
from kiosk.walk import Walk

_LOOKS_S: Final = 0.2
"""Seconds between two looks at the time and the level."""
_BAR: Final = 24
_LOW: Final = 20
"""Below so many rows the time is not shown in large digits."""


class Press(Opens, Enum):
    """What can be pressed here."""

    DONE = auto()
    KEEP = auto()
    AGAIN = auto()
    NEVER_MIND = auto()


class RemarkScreen(TargetScreen):
    """Records over a held walk. Until it is kept the sound is in memory only."""

    AUTO_FOCUS: ClassVar[str | None] = ""

    class Over(Message):
        """The recording ended by itself; comes from the ear's thread."""

    def __init__(self, shop: Shop, walk: Walk) -> None:
        super().__init__(shop.clock)
        self.shop = shop
        self.walk = walk
        self.words = walk.words
        self.notice = ""
        self.recorder = self._fresh()
        self._asking = False
        """True once it is asked whether to keep what was recorded."""
        self._said: dict[str, Press] = {}

    def _fresh(self) -> Recorder:
        return Recorder(self._post_over, ready=lambda: not self.walk.intercom.speaking)

    def _post_over(self) -> None:
        self.post_message(self.Over())

    # Recording.

    def on_mount(self) -> None:
        self.set_interval(_LOOKS_S, self.tick)
        self._record()

    def _record(self) -> None:
        """Close the ear, say that it begins, and record once that was said."""
        self._asking, self._said, self.notice = False, {}, ""
        self.walk.intercom.hearing.allow(())
        self.walk.say(self.words.say("remark-speak-now"))
        self._tap(self.recorder)
        self._show()

    def _tap(self, recorder: Recorder | None) -> None:
        hearing = self.walk.intercom.hearing
        if isinstance(hearing, Records):
            hearing.record(None if recorder is None else recorder.take)

    def tick(self) -> None:
        """Look at the time, the level, and whether there still is a microphone."""
        hearing = self.walk.intercom.hearing
        if isinstance(hearing, PushToTalk):
            hearing.tick()
        if not self._asking and not (isinstance(hearing, Records) and hearing.microphone):
            self._ask()
            self.notice = self.words.say("remark-microphone-gone")
        self.draw()

    @on(Over)
    def _on_over(self, message: Over) -> None:
        message.stop()
        # A message of a recording that was stopped by hand, or of one before this.
        if not self._asking and self.recorder.ended is not None:
            self._ask()

    def _ask(self) -> None:
        """Stop, open the ear again, and ask whether to keep it."""
        self.recorder.stop()
        self._tap(None)
        self._asking = True
        self._said = {face.label: _press(face) for face in self.faces()}
        self.walk.intercom.hearing.allow(self._said)
        self.walk.say(" ".join(self._lines()))
        self._show()

    def _leave(self) -> None:
        self.recorder.stop()
        self._tap(None)
        self.walk.close()
        self.app.pop_screen()

    def _keep(self, by: Evidence) -> None:
        state, plan = self.walk.session.state, self.walk.session.plan
        try:
            fact = keep(
                self.recorder, self.shop.folder, self.shop.journal, self.clock, by,
                session=self.walk.session.id, step=state.step, worker=state.worker,
                practice=plan.practice,
            )  # fmt: skip
        except NotKept as error:
            self.notice = self.words.say("remark-not-kept", why=str(error))
            self.walk.say(self.notice)
            self._show()
            return
        self._leave()
        self.walk.tell(self.words.say("remark-kept", time=self._time(fact.seconds)))

    # What is pressed and said.

    def faces(self) -> tuple[Face, ...]:
        say = self.words.say
        never_mind = Face(Pick(Press.NEVER_MIND), say("say-never-mind"), key="escape")
        if not self._asking:
            done = Face(Pick(Press.DONE), say("remark-done"), key="enter", primary=True)
            return (done, never_mind)
        again = Face(Pick(Press.AGAIN), say("say-remark-again"), key="a")
        if not self.recorder.seconds:
            return (again, never_mind)
        kept = Face(Pick(Press.KEEP), say("say-remark-keep"), key="k", primary=True)
        return (kept, again, never_mind)

    def pressed(self, face: Face, channel: Channel) -> None:
        self._choose(_press(face), Evidence(channel))

    def hear(self, heard: Heard) -> None:
        """Take what the ear made of an utterance: nothing, while it is recorded."""
        self.walk.heard = heard
        press = None if heard.phrase is None else self._said.get(heard.phrase)
        if press is None:
            self.draw()
        else:
            self._choose(press, Evidence(Channel.VOICE, heard.text, heard.confidence, heard.ear))

    def _choose(self, press: Press, by: Evidence) -> None:
        self.notice = ""
        match press:
            case Press.DONE:
                self._ask()
            case Press.KEEP:
                self._keep(by)
            case Press.AGAIN:
                self.recorder = self._fresh()
                self._record()
            case Press.NEVER_MIND:
                self._leave()
                self.walk.do(NeverMind(), by)

    def on_key(self, event: events.Key) -> None:
        hearing = self.walk.intercom.hearing
        if self._asking and isinstance(hearing, PushToTalk) and event.key == hearing.key:
            event.stop()
            event.prevent_default()
            hearing.press()
            self.draw()
            return
        super().on_key(event)

    # What is shown.

    def compose(self) -> ComposeResult:
        yield Line("head")
        yield Line("notice")
        yield Question()
        yield Line("progress")
        yield Panel(self.clock, "primary")
        yield Panel(self.clock, "secondary")
        yield Line("ear")

    def _show(self) -> None:
        """Show another question."""
        self.unsteady()
        for target in self.targets():
            target.let_go()
        self.draw()
        self.set_focus(None)
        self.call_after_refresh(self.query_one("#primary", Panel).focus_way_on)

    def _time(self, seconds: float) -> str:
        return self.words.time_left(max(1, round(seconds)))

    def _lines(self) -> list[str]:
        say, recorder = self.words.say, self.recorder
        if not self._asking:
            return [say("remark-speak-now"), say("remark-ends", most=self._time(MOST_S))]
        if not recorder.seconds:
            return [say("remark-empty")]
        lines = [say("remark-keep", time=self._time(recorder.seconds))]
        if recorder.ended is Ended.FULL:
            lines.insert(0, say("remark-full", most=self._time(MOST_S)))
        if not recorder.spoke:
            lines.insert(0, say("remark-no-speech"))
        return lines

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, height = self.room
        left, right = status.header(self.walk)
        height -= self.query_one("#head", Line).say_ends(left, right, width)
        text = signalled(self.notice, self.words)
        height -= self.query_one("#notice", Line).say(text, width - 2)
        ear = status.ear_line(self.walk) if self._asking else self.words.say("remark-ear-closed")
        height -= self.query_one("#ear", Line).say(ear, width - 2, 2)
        low = self.room.height < _LOW
        question = self.query_one(Question)
        height -= question.draw_digits("" if low or self._asking else self._clock())
        height -= self.query_one("#progress", Line).say_ends(*self._progress(low=low), width)
        wording = Wording(self._lines(), tight=low, grows=self.app.is_web)
        more = more_face(self.words)
        made = arrange(self.faces(), width, height, plain_rows(wording, width), more)
        room = height - made.primary.least_rows - made.secondary.rows
        setting = best(wording, width, room)
        made = arrange(self.faces(), width, height, len(setting.rows), more)
        question.draw(setting)
        self.query_one("#primary", Panel).show(made.primary)
        self.query_one("#secondary", Panel).show(made.secondary)

    def _clock(self) -> str:
        seconds = int(self.recorder.seconds)
        return f"{seconds // 60}:{seconds % 60:02}"

    def _progress(self, *, low: bool) -> tuple[str, str]:
        """Return that it records, with the time where it is not in large digits; and the level."""
        if self._asking:
            return "", ""
        say, full = self.words.say, round(self.recorder.level * _BAR)
        waits = self.walk.intercom.speaking
        state = f"○ {say('remark-waits')}" if waits else f"● {say('remark-records')}"
        bar = f"{say('remark-level')} {'▮' * full}{'▯' * (_BAR - full)}"
        return (f"{state} {self._clock()}" if low else state), bar


def _press(face: Face) -> Press:
    press = face.choice.item if isinstance(face.choice, Pick) else None
    return press if isinstance(press, Press) else Press.NEVER_MIND
