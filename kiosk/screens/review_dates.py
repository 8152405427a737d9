"""What is due and what is overdue: daily work, parts and strips, laboratory samples."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence
from datetime import timedelta
from typing import Final

from kiosk.review.calendar import summary
from kiosk.review.sampling import Sampling
from kiosk.review.schedule import Duty, Kept, Stand
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_looking import LookingTextScreen
from kiosk.screens.review_page import Row
from kiosk.screens.review_timeline import OFF, key

_DAYS: Final = 3
"""Days back and days ahead whose daily work is shown."""

_NONE_DUE: Final = (Stand.OUT_OF_SERVICE, Stand.NOT_OPENED)
_GROUPS: Final = (
    ("review-overdue", (Stand.MISSED, Stand.NOT_FINISHED), OFF),
    ("review-due", (Stand.DUE,), "●"),
    ("review-to-come", (Stand.NOT_YET,), "○"),
    ("review-done", (Stand.LATE, Stand.EARLY, Stand.DONE, *_NONE_DUE), "✓"),
)


class DatesScreen(LookingTextScreen):
    """What was due in the last days, what is due, and what comes next."""

    def heading(self) -> tuple[str, str]:
        return self.words.say("review-dates"), self.desk.day_and_time(self.desk.now())

    def search(self) -> Callable[[Desk], Sequence[Row]]:
        return dates


def dates(desk: Desk) -> Sequence[Row]:
    """Return the page's text: what is overdue first, what is done last."""
    say = desk.words.say
    told = [*_daily(desk), *_samples(desk)]
    rows: list[Row] = []
    for name, stands, sign in _GROUPS:
        found = sorted(
            (one for one in told if one[0].stand in stands),
            key=lambda one: (one[0].due.until_utc, one[0].due.id),
        )
        if found:
            rows += [Row(say(name), "bold")]
            rows += [row for one in found for row in _said(*one, sign, desk)]
            rows += [Row()]
    if any(one.due.duty is Duty.CHECK for one, *_ in told):
        rows += [Row(say("review-check-rule"))]
    return rows or [Row(say("review-nothing-here"))]


def _daily(desk: Desk) -> Iterator[tuple[Kept, str, str]]:
    """Yield daily work, parts and strips: what became of it, what it is, and when it was done."""
    ledger, now, practice = desk.ledger, desk.now(), desk.practice
    around = timedelta(days=_DAYS)
    today = desk.today()
    kept = ledger.kept(today - around, today + around, now, practice=practice)
    for one in (*kept, *ledger.spaced(now, practice=practice)):
        done = desk.day_and_time(one.at_utc) if one.session else ""
        yield one, summary(one.due, desk.machine(one.due.machine), desk.words), done


def _samples(desk: Desk) -> Iterator[tuple[Kept, str, str]]:
    """Yield the samples: what became of each, of which head, and how it was last taken."""
    found = desk.ledger.samplings(desk.results(), desk.now(), practice=desk.practice)
    for one in found:
        due = one.kept.due
        what = summary(due, desk.machine(due.machine), desk.words)
        head = desk.words.say(f"review-head-{one.barrel}")
        yield one.kept, f"{what} · {head}", _last_taken(one, desk)


def _last_taken(of: Sampling, desk: Desk) -> str:
    """Say when a head was last sampled, and whether that is known by a session or by a result."""
    last = of.last
    if last is None:
        return desk.words.say("review-sampled-never")
    by = "both" if last.session and last.entered else "session" if last.session else "result"
    return desk.words.say(f"review-sampled-{by}", day=str(last.day))


def _said(one: Kept, what: str, done: str, sign: str, desk: Desk) -> Iterator[Row]:
    say, due = desk.words.say, one.due
    # A day's end is the next day's first moment.
    until = desk.day_and_time(due.until_utc - 60)
    stand = say(f"review-stand-{key(one.stand)}")
    told = [f"{sign} {what}", say("review-by", at=until), stand, done]
    yield Row(" · ".join(part for part in told if part), "bold" if sign == OFF else "")
    if due.source:
        yield Row(f"    {due.source}")
