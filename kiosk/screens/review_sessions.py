"""Sessions to look into, the newest first."""

from __future__ import annotations

from collections.abc import Sequence

from kiosk.review.ledger_lines import Line, Stood
from kiosk.screens.faces import Face, Pick
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import ListScreen
from kiosk.screens.review_session import SessionScreen
from kiosk.screens.review_timeline import OFF, key, length_line

_AT_ONCE = 50
"""Sessions that are looked up at a time."""

SIGNS = {Stood.SIGNED_OFF: "✓", Stood.SENT_BACK: "↩"}
"""A sign beside the words."""


class SessionsScreen(ListScreen):
    """Sessions, the newest first: of one machine or person, or those that nobody has signed."""

    def __init__(
        self, desk: Desk, *, machine: str = "", worker: str = "", unsigned: bool = False
    ) -> None:
        super().__init__(desk)
        self._machine, self._worker, self._unsigned = machine, worker, unsigned
        self._lines: list[Line] = []
        self._all_known = False

    def heading(self) -> tuple[str, str]:
        say = self.words.say
        of = [say("review-sessions")]
        if self._machine:
            of.append(self.desk.machine(self._machine))
        if self._worker:
            of.append(self.desk.person(self._worker))
        if self._unsigned:
            of.append(say("review-unsigned"))
        return " · ".join(of), self.place()

    def items(self) -> Sequence[object]:
        return self._lines

    def face(self, item: object) -> Face:
        return self._line(item) if isinstance(item, Line) else super().face(item)

    def reach(self, count: int) -> None:
        while len(self._lines) < count and not self._all_known:
            found = self.desk.ledger.lines(
                practice=self.desk.practice, machine=self._machine, worker=self._worker,
                unsigned=self._unsigned, older_than=self._lines[-1] if self._lines else None,
                limit=_AT_ONCE,
            )  # fmt: skip
            self._lines += found
            self._all_known = len(found) < _AT_ONCE

    def on_screen_resume(self) -> None:
        self.look()

    def look(self) -> None:
        """Read the ledger again: something may have been signed."""
        known = len(self._lines)
        self._lines, self._all_known = [], False
        self.reach(known)
        self.unsteady()
        self.draw()

    def chosen(self, item: object) -> None:
        if isinstance(item, Line):
            self.show(SessionScreen(self.desk, item.session))

    def _line(self, line: Line) -> Face:
        desk, say = self.desk, self.words.say
        when = desk.day_and_time(line.begun_utc)
        found = say("review-deviations", n=line.deviations)
        marks = [
            length_line(line, desk),
            f"{OFF} {found}" if line.deviations else found,
            f"{SIGNS[line.signed.what]} {say(f'review-is-{key(line.signed.what)}')}"
            if line.signed
            else say("review-is-not-signed"),
        ]
        ended = say(f"review-ended-{key(line.ended)}")
        detail = [
            f"{when} · {desk.title(line.procedure, line.title)} · {ended}",
            " · ".join(marks),
        ]
        label = f"{desk.people(line.workers)} · {desk.machine(line.machine)}"
        return Face(Pick(line), label, "\n".join(detail))
