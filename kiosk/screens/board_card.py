"""What stands on the board of one machine: how it stands, and what is due by when."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from dataclasses import dataclass
from datetime import datetime
from decimal import Decimal
from typing import Final
from zoneinfo import ZoneInfo

from kiosk.languages.words import Words
from kiosk.procedure.model import Standing, Text
from kiosk.procedure.plan import Plan
from kiosk.review.schedule import Duty, Stand
from kiosk.review.today import Dated
from kiosk.screens.faces import Face, Pick
from kiosk.screens.lettering import balanced
from kiosk.shop import Card
from kiosk.trade.units import Quantity

_SIGNS: Final = {
    Standing.IN_SERVICE: "●",
    Standing.COMING_APART: "◐",
    Standing.DRYING: "○",
    Standing.GOING_TOGETHER: "◑",
    Standing.HELD: "■",
    Standing.UNFINISHED: "▲",
    Standing.OUT_OF_SERVICE: "×",
}
"""A sign beside the words, so that a standing is seen from afar."""

_MINUTE_S: Final = 60
_HOUR_S: Final = 3600
_IN_MINUTES_S: Final = 2 * _HOUR_S
"""Up to so long a time is told in minutes; beyond, in hours."""
_NEAR_S: Final = 18 * _HOUR_S
"""Within this the hour tells which day is meant; beyond, the day tells enough."""


@dataclass(frozen=True, slots=True)
class CardFace:
    """Writes the faces of cards in one language, as of one moment."""

    words: Words
    zone: ZoneInfo
    now_utc: float

    def face(
        self, number: int, card: Card, due: Sequence[Dated], unfinished: str, room: tuple[int, int]
    ) -> Face:
        """Return a machine's face. `room` is its width and height in cells: what is said least
        urgently is left out where it does not fit.
        """
        standing = self.words.say(f"standing-{card.standing.value.replace(' ', '-')}")
        state = f"{_SIGNS[card.standing]} {standing}"
        work = self.work(card, due)
        if card.unfinished is not None:
            work = [f"▶ {unfinished}", *self._of_unfinished(card, due)]
        lines = _fitted(card.machine.name, self.words.text(card.kind), [state, *work], room)
        return Face(
            Pick(card),
            card.machine.name,
            "\n".join(lines),
            key=str(number) if number <= 9 else "",
            primary=bool(unfinished),
            listed=not unfinished,
        )

    def work(self, card: Card, due: Sequence[Dated]) -> list[str]:
        """Return what can be begun now, the most urgent first, with its time where it has one."""
        said = [*self._dated(card, due)]
        told = {id_ for one in due for id_ in one.procedures}
        said += [
            self.words.say("due", procedure=self.words.text(plan.title))
            for plan in card.due
            if plan.procedure not in told
        ]
        if said:
            return said
        known = card.due or card.beside or card.others
        if known and card.faults:
            return [self.words.say("some-faulty")]
        return [self.words.say("nothing-due" if known else "no-procedure")]

    def _dated(self, card: Card, due: Sequence[Dated]) -> Iterator[str]:
        usual = {plan.procedure: plan for plan in card.due}
        beside = {plan.procedure: plan for plan in card.beside}
        for one in sorted(due, key=lambda one: (one.never, not one.overdue, bool(_title(one)))):
            if _title(one):
                yield self._by_day(one, self.words.text(_title(one)))
                continue
            # A day check that was missed cannot be made up for; the review tells of it.
            waits = one.kept.stand is Stand.DUE or one.kept.due.duty is Duty.SAMPLE
            for id_ in one.procedures:
                if id_ in usual or (id_ in beside and waits):
                    yield self._told(one, usual.get(id_) or beside[id_])

    def _of_unfinished(self, card: Card, due: Sequence[Dated]) -> Iterator[str]:
        """Yield by when the unfinished session should have come to its end."""
        plans = {plan.procedure: plan for plan in (*card.due, *card.beside, *card.others)}
        begun = "" if card.unfinished is None else card.unfinished.started.procedure
        if begun in plans:
            yield from (self._told(one, plans[begun]) for one in due if begun in one.procedures)

    def _told(self, one: Dated, plan: Plan) -> str:
        say, due = self.words.say, one.kept.due
        what = self.words.text(plan.title)
        if one.never:
            return say("board-never", what=what)
        if due.duty is Duty.SAMPLE:
            return self._by_day(one, what)
        if one.overdue:
            return say("board-overdue", what=what, at=self._at(due.until_utc))
        waits = one.kept.stand is Stand.NOT_YET
        moment = due.from_utc if waits else due.until_utc
        name = "board-due-from" if waits else "board-due-by"
        told, left = say(name, what=what, at=self._at(moment)), self._left(moment - self.now_utc)
        return f"{told} · {say('board-in' if waits else 'board-left', time=left)}" if left else told

    def _by_day(self, one: Dated, what: str) -> str:
        day = one.kept.due.day
        at = self.words.say("plot-month-day", month=day.month, day=day.day)
        return self.words.say("board-overdue" if one.overdue else "board-due-by", what=what, at=at)

    def _at(self, utc: float) -> str:
        """Return a moment by the site's clock; with its day where that is not near."""
        there = datetime.fromtimestamp(utc, self.zone)
        if abs(utc - self.now_utc) <= _NEAR_S:
            return f"{there:%H:%M}"
        day = self.words.say("plot-month-day", month=there.month, day=there.day)
        return f"{day}, {there:%H:%M}"

    def _left(self, seconds: float) -> str:
        """Return a time to come, or empty for one that the day tells well enough. It is never told
        as longer than it is."""
        if seconds > _NEAR_S:
            return ""
        if seconds <= _IN_MINUTES_S:
            return self.words.quantity(Quantity(Decimal(int(seconds // _MINUTE_S)), "min"))
        return self.words.quantity(Quantity(Decimal(int(seconds // _HOUR_S)), "h"))


def _title(one: Dated) -> Text:
    """Return the schedule's own words for a part or a strip; empty for daily work and samples."""
    return one.kept.due.title


def _fitted(name: str, kind: str, lines: list[str], room: tuple[int, int]) -> list[str]:
    """Return the lines under a name that fit: the kind goes first, then the last lines."""
    width, height = room[0] - 2, room[1]
    free = height - len(balanced(name, width))
    rows = [len(balanced(one, width)) for one in lines]
    while len(lines) > 1 and sum(rows[: len(lines)]) > free:
        lines = lines[:-1]
    if sum(rows[: len(lines)]) + len(balanced(kind, width)) <= free:
        return [kind, *lines]
    return lines
