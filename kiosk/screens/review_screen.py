"""The supervisor's first page: what needs eyes first, then the sessions, the newest first."""

from __future__ import annotations

from collections.abc import Sequence
from contextlib import suppress
from typing import Final

from kiosk.journal.codec import UnknownEvent
from kiosk.review.deviations import Deviation, sentence
from kiosk.review.results import Entered
from kiosk.screens.choose import Item
from kiosk.screens.faces import Face, Pick
from kiosk.screens.review_dates import DatesScreen
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_laboratory import look_at_results
from kiosk.screens.review_page import ReadScreen, Row
from kiosk.screens.review_parts import PartsScreen
from kiosk.screens.review_people import PeopleScreen
from kiosk.screens.review_pictures import PicturesScreen
from kiosk.screens.review_session import SessionScreen
from kiosk.screens.review_sessions import SessionsScreen
from kiosk.screens.review_timeline import OFF

IDLE_S: Final = 300.0
"""A review that is not touched for so long is closed: its PIN was that of who has gone away. Common
practice, no source."""
_LOOK_S: Final = 10.0


class DeviationScreen(ReadScreen):
    """One thing that needs eyes and has no session to look into."""

    def __init__(self, desk: Desk, of: Deviation) -> None:
        super().__init__(desk)
        self._of = of

    def heading(self) -> tuple[str, str]:
        return self.desk.machine(self._of.machine), self.desk.day_and_time(self._of.at_utc)

    def parts(self, width: int) -> Sequence[Row]:  # noqa: ARG002
        text = self.words.text
        rule = self.desk.rule(self._of.rule)
        return (
            Row(f"{OFF} {text(self._of.title)}", "bold"),
            Row(sentence(self._of, self.words)),
            Row(),
            Row(text(self._of.reason)),
            Row("" if rule is None else rule.source),
        )


class ReviewScreen(SessionsScreen):
    """What needs eyes first, then every session; and the ways to the other pages."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._eyes: tuple[Deviation, ...] = ()

    def heading(self) -> tuple[str, str]:
        say = self.words.say
        mark = [say("practice")] if self.desk.practice else []
        name = f"{say('review')} · {self.desk.shop.site.name}"
        return name, " · ".join([*mark, self.desk.supervisor.name, self.place()])

    def on_mount(self) -> None:
        self._see()
        super().on_mount()
        self.set_interval(_LOOK_S, self.tick)

    def tick(self) -> None:
        """Close the review when nobody has touched it for so long."""
        if self.clock.now().mono - self.desk.touched_mono < IDLE_S:
            return
        while self in self.app.screen_stack:
            self.app.pop_screen()

    def on_unmount(self) -> None:
        self.desk.ledger.close()

    def look(self) -> None:
        self._see()
        super().look()

    def _see(self) -> None:
        desk = self.desk
        entered: tuple[Entered, ...] | None = None
        with suppress(UnknownEvent):
            entered = desk.results()
        self._eyes = desk.ledger.eyes_first(desk.now(), practice=desk.practice, entered=entered)

    def note(self) -> str:
        if not self._eyes or self.top < len(self._eyes):
            return self.words.say("review-eyes", n=len(self._eyes))
        return self.words.say("review-newest-first")

    def items(self) -> Sequence[object]:
        return [*self._eyes, *super().items()]

    def face(self, item: object) -> Face:
        return self._eye(item) if isinstance(item, Deviation) else super().face(item)

    def reach(self, count: int) -> None:
        super().reach(count - len(self._eyes))

    def chosen(self, item: object) -> None:
        if not isinstance(item, Deviation):
            super().chosen(item)
        elif item.session:
            self.show(SessionScreen(self.desk, item.session))
        else:
            self.show(DeviationScreen(self.desk, item))

    def _eye(self, one: Deviation) -> Face:
        desk, text = self.desk, self.words.text
        at = f"{desk.machine(one.machine)} · {desk.day_and_time(one.at_utc)}"
        if one.session:
            at += f" · {desk.people(desk.ledger.line(one.session).workers)}"
        detail = [at, sentence(one, self.words), text(one.reason)]
        return Face(Pick(one), f"{OFF} {text(one.title)}", "\n".join(detail), listed=True)

    def ways(self) -> tuple[Face, ...]:
        way = self.way
        return (
            way("review-only", "f", self._choose),
            way("review-laboratory", "l", lambda: look_at_results(self.app, self.desk)),
            way("review-dates", "d", lambda: self.show(DatesScreen(self.desk))),
            way("review-parts", "x", lambda: self.show(PartsScreen(self.desk))),
            way("review-pictures", "p", lambda: self.show(PicturesScreen(self.desk))),
            way("review-people", "w", lambda: self.show(PeopleScreen(self.desk))),
        )

    def _choose(self) -> None:
        """Ask of what the sessions are to be."""
        say, site = self.words.say, self.desk.shop.site
        items: list[Item] = [(SessionsScreen(self.desk, unsigned=True), say("review-unsigned"), "")]
        items += [(SessionsScreen(self.desk, machine=m.id), m.name, "") for m in site.machines]
        items += [(SessionsScreen(self.desk, worker=p.id), p.name, "") for p in site.people]
        self.ask(say("review-which-sessions"), items, self.show)
