"""One session: its account, its timeline, and the supervisor's word on it."""

from __future__ import annotations

from collections.abc import Sequence
from typing import TYPE_CHECKING, cast

from textual import on
from textual.containers import VerticalScroll
from textual.message import Message

from kiosk.journal.shop_facts import SentBack, SignedOff
from kiosk.people.beside import BesideFailed
from kiosk.remarks.sounds import Sounds
from kiosk.remarks.told import Remark
from kiosk.screens.choose import Item
from kiosk.screens.faces import Face
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import ReadScreen, Row
from kiosk.screens.review_remarks import cannot_play, fault_of, name_of, playing, remarks_of
from kiosk.screens.review_timeline import account, timeline
from kiosk.screens.review_write import WriteScreen
from kiosk.speaking.voice import Plays

if TYPE_CHECKING:
    from kiosk.screens.app import KioskApp

_REMARKS = {
    SignedOff: ("review-remark-right", "review-remark-talked", "review-remark-machine"),
    SentBack: ("review-back-again", "review-back-talk", "review-back-sample", "review-back-part"),
}
"""What can be picked; anything else can be typed."""


class SessionScreen(ReadScreen):
    """Reads one session from the journal."""

    class Played(Message):
        """A remark has come to its end; comes from the voice's thread."""

        def __init__(self, number: int) -> None:
            super().__init__()
            self.number = number

    def __init__(self, desk: Desk, session: str) -> None:
        super().__init__(desk)
        self.session = session
        self._line = desk.ledger.line(session)
        self._remarks: tuple[Remark, ...] = ()
        self._playing = 0
        """Number of the play that is on; 0 for none."""
        self._plays = 0

    def heading(self) -> tuple[str, str]:
        line = self._line
        mark = f" · {self.words.say('practice')}" if line.practice else ""
        title = self.desk.title(line.procedure, line.title)
        return (
            f"{self.desk.machine(line.machine)} · {title}",
            f"{self.desk.day_and_time(line.begun_utc)}{mark}",
        )

    def on_mount(self) -> None:
        self._read()
        super().on_mount()

    def _read(self) -> None:
        ledger, desk = self.desk.ledger, self.desk
        self._line = ledger.line(self.session)
        record = ledger.record(self.session)
        plan = desk.shop.plan_of(self.session)
        found = ledger.deviations(self.session, desk.now())
        signed = ledger.signed(self.session)
        self._remarks = remarks_of(self._line, desk)
        self._rows = [
            *account(self._line, record, plan, signed, found, desk),
            Row(),
            Row(self.words.say("review-timeline"), "bold"),
            *timeline(record, plan, found, desk, self._remarks),
            Row(),
            Row(self.words.say("review-journal-rows", first=str(self._line.first_seq),
                               last=str(self._line.last_seq))),
        ]  # fmt: skip

    def parts(self, width: int) -> Sequence[Row]:  # noqa: ARG002
        return self._rows

    def ways(self) -> tuple[Face, ...]:
        if self._playing:
            return (self.way("remark-stop", "p", self._stop),)
        sign_off = self.way("review-sign-off", "s", lambda: self._ask(SignedOff))
        send_back = self.way("review-send-back", "b", lambda: self._ask(SentBack))
        if not self._remarks:
            return (sign_off, send_back)
        return (sign_off, send_back, self.way("remark-play", "p", self._which))

    # Spoken remarks.

    def _which(self) -> None:
        """Ask which remark to play, where there are several."""
        if len(self._remarks) == 1:
            self._play(self._remarks[0])
            return
        items: list[Item] = [
            (one, name_of(one, self.desk), self.desk.clock_time(one.at_utc))
            for one in self._remarks
        ]
        self.ask(self.words.say("remark-which"), items, self._play)

    def _play(self, one: Remark) -> None:
        """Play a remark, unless its sound is not there as it was recorded."""
        fault = fault_of(one, self.desk)
        voice = cast("KioskApp", self.app).voice
        if not fault and not isinstance(voice, Plays):
            fault = cannot_play(voice.notice or self.words.say("remark-no-player"), self.desk)
        if fault or not isinstance(voice, Plays):
            self._tell(fault)
            return
        self._plays += 1
        self._playing = number = self._plays
        self._tell(playing(one, self.desk))
        file = Sounds(self.desk.shop.folder).file(one.sha256)
        voice.play(file, lambda: self._post_played(number))

    def _post_played(self, number: int) -> None:
        self.post_message(self.Played(number))

    @on(Played)
    def _on_played(self, message: Played) -> None:
        message.stop()
        if message.number != self._playing:
            return
        self._playing = 0
        why = cast("KioskApp", self.app).voice.notice
        self._tell(cannot_play(why, self.desk) if why else "")

    def _stop(self) -> None:
        self._playing = 0
        cast("KioskApp", self.app).voice.hush()
        self._tell("")

    def leave(self) -> None:
        if self._playing:
            self._stop()
        super().leave()

    # The supervisor's word.

    def _ask(self, kind: type[SignedOff] | type[SentBack]) -> None:
        """Ask for the remark, unless this supervisor may not sign this session."""
        desk, say = self.desk, self.words.say
        why = desk.may_sign(self._line, back=kind is SentBack)
        if why:
            self._tell(why)
            return
        items: list[Item] = [(say(one), say(one), "") for one in _REMARKS[kind]]
        items.append(("", say("review-write"), ""))
        question = say("review-what-to-do" if kind is SentBack else "review-what-remark")

        def chosen(remark: str) -> None:
            if remark:
                self._sign(kind, remark)
            else:
                self.show(WriteScreen(self.desk, question, written, fault))

        def written(text: str) -> None:
            try:
                self._sign(kind, self.desk.keep(text))
            except BesideFailed as error:
                self._tell(say("review-not-written", why=str(error)))

        def fault(text: str) -> str:
            return "" if text else say("review-nothing-written")

        self.ask(question, items, chosen)

    def _sign(self, kind: type[SignedOff] | type[SentBack], remark: str) -> None:
        why = self.desk.write(kind(self.session, self.desk.supervisor.id, remark))
        self._read()
        self._tell(why)
        self.query_one("#account", VerticalScroll).scroll_home(animate=False)

    def _tell(self, notice: str) -> None:
        self.notice = notice
        self.unsteady()
        self.draw()
