"""How a walk stands on its screen: the question, the lines around it, and the targets under it."""

from __future__ import annotations

from dataclasses import replace
from typing import Final

from textual.containers import Container

from kiosk.screens.arrangement import LEAST_HEIGHT, Arrangement, Block, arrange, page
from kiosk.screens.block_letters import figure_rows
from kiosk.screens.faces import Face, back_face, more_face
from kiosk.screens.lettering import signalled
from kiosk.screens.offered import offered
from kiosk.screens.panel import Panel
from kiosk.screens.question import Around, Line, Question, Status
from kiosk.screens.reading import Typing, keypad, shown
from kiosk.screens.target_screen import TargetScreen
from kiosk.screens.type_sizes import Wording, best, plain_rows
from kiosk.screens.walk_question import main_line, number_of, picture_of, wait_of
from kiosk.walk import Walk

_LARGEST_TIME: Final = 3
"""How many times the letters of a sentence the time of a wait may be as large."""
_LOW: Final = 22
"""Below so many rows the lines around the question make room for the keypad."""


class WalkSheet:
    """Shares a screen between what a walk asks and what can be pressed."""

    def __init__(self, screen: TargetScreen, walk: Walk) -> None:
        self.in_reach: tuple[Face, ...] = ()
        """All whose keys work now, shown or not."""
        self._screen = screen
        self._walk = walk
        self._more = False
        """True while it shows what there was no room for, in place of the question's targets."""
        self._page = 0
        self._time_size = 1

    def turn(self) -> None:
        """Show what there was no room for, or the next page of it."""
        self._page += self._more
        self._more = True

    def turn_back(self) -> None:
        """Show the question's targets."""
        self._more = False

    def begin_anew(self) -> None:
        """Another question stands there."""
        self._page, self._more = 0, False

    def draw(self, notice: str, now: Typing | None, *, held: bool) -> None:
        """Draw the walk, or the keypad with the number so far. `notice` stands in place of the
        walk's own."""
        self._draw_frame(held=held)
        if now is not None:
            self._draw_typing(now, notice)
        elif not self._draw_walk(notice, tight=False):
            self._draw_walk(notice, tight=True)

    def tick(self) -> None:
        """Show what a wait still needs."""
        self._draw_time(self._time_size)

    def _draw_frame(self, *, held: bool) -> None:
        self._screen.set_class(held, "-held")
        word = self._walk.words.say("held").upper()
        self._screen.query_one("#frame", Container).border_title = f" {word} " if held else ""

    def _room(self) -> tuple[int, int]:
        """Return the columns and rows inside the frame."""
        edge = 2 if self._screen.has_class("-held") else 0
        width, height = self._screen.room
        return width - edge, height - edge

    def _draw_notice(self, notice: str, width: int) -> int:
        text = signalled(notice or self._walk.notice, self._walk.words)
        return self._screen.query_one("#notice", Line).say(text, width - 2)

    def _draw_walk(self, notice: str, *, tight: bool) -> bool:
        """Draw the question with its targets; return whether every row of it is seen."""
        walk = self._walk
        width, height = self._room()
        height -= self._screen.query_one(Around).draw(walk, width, tight=tight)
        height -= self._screen.query_one(Status).draw(walk, self._screen.room.width, tight=tight)
        height -= self._draw_notice(notice, width)
        height -= self._draw_time(1)
        is_web = self._screen.app.is_web
        wording = Wording(walk.lines(), main_line(walk), walk.sources, tight, is_web)
        least = max(1, plain_rows(wording, width))
        made = self._arranged(width, height, least)
        room = height - made.primary.least_rows - made.secondary.rows
        draw = None if self._more else picture_of(walk)
        setting = best(wording, width, room, draw)
        if not setting.large and made.secondary.rows > LEAST_HEIGHT:
            # Large letters matter more than a second row of what is seldom needed.
            larger = best(wording, width, room + LEAST_HEIGHT, draw)
            room, setting = (room + LEAST_HEIGHT, larger) if larger.large else (room, setting)
        rows = max(1, len(setting.rows))
        height -= self._enlarge_time(room - rows)
        if not self._more:
            made = arrange(self.in_reach, width, height, rows, more_face(walk.words))
        self._screen.query_one(Question).draw(setting)
        self._screen.query_one("#primary", Panel).show(made.primary)
        self._screen.query_one("#secondary", Panel).show(made.secondary)
        return rows <= room

    def _draw_typing(self, now: Typing, notice: str) -> None:
        """Draw the keypad with the number so far, and as much of the question as there is room."""
        walk, words = self._walk, self._walk.words
        width, height = self._room()
        low = height < _LOW
        around, foot = self._screen.query_one(Around), self._screen.query_one(Status)
        block = keypad(now, words, width)
        self.in_reach = block.faces
        height -= block.rows + self._draw_notice(notice, width)
        number, name = shown(now, words), number_of(walk)
        if low:
            around.vanish()
            foot.vanish()
            lines = [f"{number} {name}"]
        else:
            height -= around.draw(walk, width, tight=True)
            height -= foot.draw(walk, width, tight=True)
            lines = [*walk.lines(), name]
        question = self._screen.query_one(Question)
        height -= question.draw_digits("" if low else number)
        question.draw(best(Wording(lines), width, height))
        self._screen.query_one("#primary", Panel).show(block)
        self._screen.query_one("#secondary", Panel).show(Block())

    def _draw_time(self, size: int) -> int:
        """Show what a wait still needs, in digits of a size; return the rows that it takes."""
        self._time_size = size
        return self._screen.query_one(Question).draw_digits(wait_of(self._walk), size)

    def _enlarge_time(self, spare: int) -> int:
        """Show it as large as there is room for; return the rows that it takes on top."""
        first = self._draw_time(1)
        if not first:
            return 0
        sizes = range(2, _LARGEST_TIME + 1)
        size = max((one for one in sizes if figure_rows(one) - first <= spare), default=1)
        return self._draw_time(size) - first

    def _arranged(self, width: int, height: int, rows: int) -> Arrangement:
        """Arrange all that can be pressed; the question takes `rows` of the `height` rows."""
        more = more_face(self._walk.words)
        found = offered(self._walk, width, height - rows)
        self.in_reach = found
        if self._more:
            back = back_face(self._walk.words)
            rest = [face for face in found if not face.primary]
            # The key that leads back from here is one that pauses elsewhere.
            rest = [replace(one, key="") if one.key == back.key else one for one in rest]
            rest.append(back)
            self.in_reach = tuple(rest)
            return Arrangement(page(rest, width, height - rows, self._page, more), Block())
        made = arrange(found, width, height, rows, more)
        if more in made.secondary.faces:
            self.in_reach = (*found, more)
        return made
