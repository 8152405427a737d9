"""What is due and what is overdue: daily work, parts and strips, laboratory samples."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date, timedelta
from typing import Final

from kiosk.review.calendar import summary
from kiosk.review.intervals import next_sample
from kiosk.review.results import heads_of
from kiosk.review.schedule import Kept, Stand
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import ReadScreen, Row
from kiosk.screens.review_timeline import OFF, key

_DAYS: Final = 3
"""Days back and days ahead whose daily work is shown."""

_GROUPS: Final = (
    ("review-overdue", (Stand.MISSED, Stand.NOT_FINISHED), OFF),
    ("review-due", (Stand.DUE,), "●"),
    ("review-to-come", (Stand.NOT_YET,), "○"),
    ("review-done", (Stand.LATE, Stand.EARLY, Stand.DONE, Stand.OUT_OF_SERVICE), "✓"),
)


class DatesScreen(ReadScreen):
    """What was due in the last days, what is due, and what comes next."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._kept: tuple[Kept, ...] = ()

    def heading(self) -> tuple[str, str]:
        return self.words.say("review-dates"), self.desk.day_and_time(self.desk.now())

    def on_mount(self) -> None:
        self._kept = tuple(self._look())
        super().on_mount()

    def _look(self) -> Iterator[Kept]:
        desk, ledger, now = self.desk, self.desk.ledger, self.desk.now()
        around = timedelta(days=_DAYS)
        yield from ledger.kept(
            desk.today() - around, desk.today() + around, now, practice=desk.practice
        )
        yield from ledger.spaced(now, practice=desk.practice)
        sampled: dict[tuple[str, str], list[date]] = {}
        for one in desk.results():
            sampled.setdefault((one.of.machine, one.of.barrel), []).append(one.of.day)
        for machine, heads in heads_of(desk.shop.site, desk.shop.library).items():
            for head in heads:
                days = sampled.get((machine, head), ())
                yield next_sample(desk.shop.site, machine, head, days, now)

    def parts(self, width: int) -> Sequence[Row]:  # noqa: ARG002
        rows: list[Row] = []
        for name, stands, sign in _GROUPS:
            found = sorted(
                (one for one in self._kept if one.stand in stands),
                key=lambda one: (one.due.until_utc, one.due.id),
            )
            if found:
                rows += [Row(self.words.say(name), "bold")]
                rows += [row for one in found for row in self._told(one, sign)]
                rows += [Row()]
        return rows or [Row(self.words.say("review-nothing-here"))]

    def _told(self, one: Kept, sign: str) -> Iterator[Row]:
        desk, say, due = self.desk, self.words.say, one.due
        # A day's end is the next day's first moment.
        until = desk.day_and_time(due.until_utc - 60)
        what = summary(due, desk.machine(due.machine), self.words)
        by = say("review-by", at=until)
        stand = say(f"review-stand-{key(one.stand)}")
        done = f" · {desk.day_and_time(one.at_utc)}" if one.session else ""
        yield Row(f"{sign} {what} · {by} · {stand}{done}", "bold" if sign == OFF else "")
        if due.source:
            yield Row(f"    {due.source}")
