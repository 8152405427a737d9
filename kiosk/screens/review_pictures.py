"""Figures of what was done, drawn in the cells of the terminal."""

from __future__ import annotations

from collections.abc import Callable, Sequence
from functools import partial
from typing import Final

from textual.app import ComposeResult
from textual.containers import Container
from textual.content import Content
from textual.widgets import Static

from kiosk.plots.cells import cells
from kiosk.plots.figure import Figure, Ink
from kiosk.plots.gallery import Gallery, Picture
from kiosk.procedure.load_review import load_schedule
from kiosk.screens.faces import Face, Pick
from kiosk.screens.question import Line
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_looking import LookingScreen
from kiosk.screens.review_page import ListScreen

_SPANS: Final = (90, 365, 3660)
"""Days back that can be looked at."""
_LEAST_WORDS_AT: Final = 24
"""Rows from which the description stands above the figure."""


def pictures(desk: Desk, days: int) -> tuple[Picture, ...]:
    """Return the figures of a shop, in the reader's language."""
    shop = desk.shop
    return Gallery(
        ledger=desk.ledger, reader=desk.reader, site=shop.site, library=shop.library,
        intervals=load_schedule(library=shop.library).intervals, now_utc=desk.now(), days=days,
    ).pictures()  # fmt: skip


class PicturesScreen(ListScreen):
    """Which figures there are."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._span = 0
        self._pictures = pictures(desk, _SPANS[0])

    def heading(self) -> tuple[str, str]:
        days = self.words.say("review-days", n=_SPANS[self._span])
        return f"{self.words.say('review-pictures')} · {days}", self.place()

    def items(self) -> Sequence[int]:
        return range(len(self._pictures))

    def face(self, item: int) -> Face:
        return Face(Pick(item), self._pictures[item].name, listed=True)

    def chosen(self, item: object) -> None:
        if isinstance(item, int):
            of = partial(pictures, days=_SPANS[self._span])
            self.show(PictureScreen(self.desk, of, item))

    def ways(self) -> tuple[Face, ...]:
        return (self.way("review-other-days", "t", self._other_days),)

    def _other_days(self) -> None:
        self._span = (self._span + 1) % len(_SPANS)
        self._pictures = pictures(self.desk, _SPANS[self._span])
        self.draw()


class PictureScreen(LookingScreen):
    """One figure, as large as the screen; `more` shows the next. `of` finds the figures."""

    def __init__(
        self, desk: Desk, of: Callable[[Desk], Sequence[Picture]], number: int = 0
    ) -> None:
        super().__init__(desk)
        self._of, self._number = of, number
        self._pictures = tuple(of(desk))
        self._figure: Figure | None = None

    def body(self) -> ComposeResult:
        with Container(id="drawing"):
            yield Line("note")
            yield Static(id="lines", markup=False)

    def search(self) -> Callable[[Desk], Figure | None]:
        of, number = self._of, self._number
        return lambda desk: of(desk)[number].draw()

    def found(self, contents: Figure | None) -> None:
        self._figure = contents

    def heading(self) -> tuple[str, str]:
        return self._pictures[self._number].name, f"{self._number + 1}/{len(self._pictures)}"

    def draw(self) -> None:
        if not self.is_mounted:
            return
        width, height = self.room
        room = self.draw_frame(width, height, more=len(self._pictures) > 1)
        figure, note = self._figure, self.query_one("#note", Line)
        told = self.wait_text() or self.words.say("review-nothing-here")
        if figure is not None:
            told = figure.told if height >= _LEAST_WORDS_AT else ""
        room -= note.say(told, width - 2, room // 3)
        rows = () if figure is None else cells(figure, width - 2, room)
        drawn = [[_inked(piece.text, piece.ink) for piece in row] for row in rows]
        lines = [Content.assemble(" ", *row) for row in drawn]
        self.query_one("#lines", Static).update(Content("\n").join(lines))

    def go_on(self) -> None:
        self._turn(1)

    def go_back(self) -> None:
        self._turn(-1)

    def _turn(self, by: int) -> None:
        self._number = (self._number + by) % len(self._pictures)
        self._figure = None
        self.look_up()
        self.unsteady()
        self.draw()


def _inked(text: str, ink: Ink | None) -> Content:
    """Return a piece of a figure; what is off is heavier, and has a shape of its own anyway."""
    return Content.styled(text, "bold" if ink is Ink.OFF else "")
