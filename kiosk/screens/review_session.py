"""One session: its account, its timeline, and the supervisor's word on it."""

from __future__ import annotations

from collections.abc import Sequence

from textual.containers import VerticalScroll

from kiosk.journal.shop_facts import SentBack, SignedOff
from kiosk.people.beside import BesideFailed
from kiosk.screens.choose import Item
from kiosk.screens.faces import Face
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import ReadScreen, Row
from kiosk.screens.review_timeline import account, timeline
from kiosk.screens.review_write import WriteScreen

_REMARKS = {
    SignedOff: ("review-remark-right", "review-remark-talked", "review-remark-machine"),
    SentBack: ("review-back-again", "review-back-talk", "review-back-sample", "review-back-part"),
}
"""What can be picked; anything else can be typed."""


class SessionScreen(ReadScreen):
    """Reads one session from the journal."""

    def __init__(self, desk: Desk, session: str) -> None:
        super().__init__(desk)
        self.session = session
        self._line = desk.ledger.line(session)

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
        self._rows = [
            *account(self._line, record, plan, signed, found, desk),
            Row(),
            Row(self.words.say("review-timeline"), "bold"),
            *timeline(record, plan, found, desk),
            Row(),
            Row(self.words.say("review-journal-rows", first=str(self._line.first_seq),
                               last=str(self._line.last_seq))),
        ]  # fmt: skip

    def parts(self, width: int) -> Sequence[Row]:  # noqa: ARG002
        return self._rows

    def ways(self) -> tuple[Face, ...]:
        return (
            self.way("review-sign-off", "s", lambda: self._ask(SignedOff)),
            self.way("review-send-back", "b", lambda: self._ask(SentBack)),
        )

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
