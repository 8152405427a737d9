"""The laboratory's pages: where each barrel stands, its results, and where they head."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from dataclasses import dataclass
from functools import partial
from typing import Any

from textual.app import App

from kiosk.plots.gallery import Picture
from kiosk.plots.of_results import results as picture
from kiosk.procedure.authorities import load_authorities
from kiosk.review.barrels import Judged, barrels, over
from kiosk.review.results import Entered
from kiosk.screens.faces import Face, Pick
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_entry import Entry
from kiosk.screens.review_looking import LookingScreen
from kiosk.screens.review_page import DeskChoice, ListScreen, Part, ReadScreen, Row
from kiosk.screens.review_pictures import PictureScreen
from kiosk.screens.review_standing import (
    SIGNS,
    pick,
    result_said,
    standing_said,
    state_said,
    trend_said,
)
from kiosk.screens.review_timeline import OFF
from kiosk.screens.review_trace import TraceScreen
from kiosk.trade.authorities import Authority, authority


def look_at_results(app: App[Any], desk: Desk) -> None:
    """Show the laboratory's page; first ask whose limits count, for none is taken by itself."""
    table = load_authorities()

    def chosen(name: str) -> None:
        desk.authority = name
        app.push_screen(LaboratoryScreen(desk, authority(table, name)))

    if desk.authority:
        chosen(desk.authority)
        return
    say = desk.words.say
    items = [(one.id, pick(one.id, desk.words), "") for one in table.authorities]
    app.push_screen(DeskChoice(desk, say("ask-authority-who"), items, chosen))


@dataclass(frozen=True, slots=True)
class _Stood:
    """A barrel as the authority sees it, and in words where its results head."""

    of: Judged
    heads: str


class LaboratoryScreen(LookingScreen, ListScreen):
    """Every barrel that has results, those that need something done first."""

    def __init__(self, desk: Desk, who: Authority) -> None:
        super().__init__(desk)
        self.who = who
        self._stood: tuple[_Stood, ...] = ()

    def heading(self) -> tuple[str, str]:
        return f"{self.words.say('review-laboratory')} · {self.who.law}", self.place()

    def note(self) -> str:
        none = "" if self._stood else self.words.say("review-no-results")
        return self.wait_text() or none

    def on_screen_resume(self) -> None:
        """Look again: a result may have been entered."""
        if self.looking is None:
            self.look_up()

    def search(self) -> Callable[[Desk], tuple[_Stood, ...]]:
        return partial(_barrels, who=self.who)

    def found(self, contents: tuple[_Stood, ...]) -> None:
        self._stood = contents

    def items(self) -> Sequence[_Stood]:
        return self._stood

    def face(self, item: _Stood) -> Face:
        words, of = self.words, item.of.of
        head = words.say(f"review-head-{of.barrel}")
        name = f"{self.desk.machine(of.machine)} · {head} · {pick(of.analysis, words)}"
        detail = [f"{SIGNS[item.of.state]} {state_said(item.of, self.who, words)}", item.heads]
        return Face(Pick(item.of), name, "\n".join(detail), listed=True)

    def chosen(self, item: object) -> None:
        if isinstance(item, Judged):
            self.show(BarrelScreen(self.desk, self.who, item))

    def ways(self) -> tuple[Face, ...]:
        return (
            self.way("review-enter-result", "n", self._enter),
            self.way("review-other-authority", "a", self._other),
        )

    def _enter(self) -> None:
        Entry(self.app, self.desk, self._told).ask()

    def _told(self, notice: str) -> None:
        self.notice = notice
        self.draw()

    def _other(self) -> None:
        self.desk.authority = ""
        self.app.pop_screen()
        look_at_results(self.app, self.desk)


def _barrels(desk: Desk, who: Authority) -> tuple[_Stood, ...]:
    """Return every barrel with results, those that need something done first."""
    worst = list(SIGNS)
    found = sorted(
        barrels(desk.results(), who, desk.today()),
        key=lambda one: (-worst.index(one.state), one.of.machine, one.of.barrel),
    )
    return tuple(_Stood(one, " ".join(trend_said(one, desk.words))) for one in found)


class BarrelScreen(ReadScreen):
    """One barrel under one analysis: what follows, and every result."""

    def __init__(self, desk: Desk, who: Authority, of: Judged) -> None:
        super().__init__(desk)
        self.who, self.of = who, of

    def heading(self) -> tuple[str, str]:
        of = self.of.of
        head = self.words.say(f"review-head-{of.barrel}")
        return f"{self.desk.machine(of.machine)} · {head}", pick(of.analysis, self.words)

    def parts(self, width: int) -> Sequence[Part]:  # noqa: ARG002
        words, of = self.words, self.of
        told = [
            Row(f"{SIGNS[of.state]} {state_said(of, self.who, words)}", "bold"),
            *(Row(line) for line in standing_said(of, self.who, words)),
            *(Row(line) for line in trend_said(of, words)),
            Row(f"{self.who.law}; {self.who.source}. {self.who.tag}"),
            Row(),
            Row(words.say("review-results"), "bold"),
        ]
        return [*told, *(self._result(one) for one in reversed(of.entered))]

    def _result(self, one: Entered) -> Row:
        bad = over(one, self.who)
        mark = f"{OFF} {self.words.say('review-over')}" if bad else ""
        mark = self.words.say("review-may-be-over") if bad is None else mark
        by = f"{one.of.laboratory} {one.of.sample}".strip()
        told = [result_said(one, self.words), by, self.desk.person(one.by), mark]
        return Row(" · ".join(part for part in told if part), "bold" if bad else "")

    def ways(self) -> tuple[Face, ...]:
        return (
            self.way("review-trace", "t", self._trace),
            self.way("review-picture", "p", self._draw_results),
        )

    def _draw_results(self) -> None:
        """Show the results over time."""
        of, name = self.of, " · ".join(self.heading())
        drawn = Picture(name, partial(picture, of, self.desk.reader))
        self.show(PictureScreen(self.desk, lambda _: (drawn,)))

    def _trace(self) -> None:
        """Trace the last result over its limit; where none is, the last one that may be."""
        found = [one for one in self.of.entered if over(one, self.who)]
        found = found or [one for one in self.of.entered if over(one, self.who) is None]
        if not found:
            self.notice = self.words.say("review-nothing-to-trace")
            self.draw()
            return
        self.show(TraceScreen(self.desk, self.who, found[-1]))
