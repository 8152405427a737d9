"""A block of targets, side by side."""

from __future__ import annotations

from collections.abc import Iterable
from itertools import zip_longest

from textual.containers import Container

from kiosk.clock import Clock
from kiosk.screens.arrangement import Block
from kiosk.screens.target import Target


class Panel(Container):
    """Shows a block of faces; its targets are kept and given new faces, not made anew."""

    def __init__(self, clock: Clock, name: str) -> None:
        super().__init__(id=name)
        self._clock = clock
        self._made: list[Target] = []
        self.block = Block()

    @property
    def targets(self) -> list[Target]:
        """The targets that are shown."""
        return self._made[: len(self.block.faces)]

    def show(self, block: Block) -> None:
        """Show a block in place of the one before."""
        self.block = block
        self.display = bool(block.faces)
        self.styles.grid_size_columns = block.columns
        self.styles.grid_rows = str(block.height)
        self.styles.height = block.rows
        fresh: list[Target] = []
        for target, face in zip_longest(list(self._made), block.faces):
            if target is None:
                fresh.append(Target(face, self._clock))
            elif face is None:
                target.display = False
            else:
                target.display = True
                target.show(face)
        if fresh:
            self._made += fresh
            self.mount(*fresh)

    def focus_first(self) -> None:
        """Put the focus on the first target."""
        for target in self.targets[:1]:
            target.focus(scroll_visible=False)

    def focus_way_on(self) -> None:
        """Put the focus on the target that leads on, where there is exactly one.

        Enter then answers the question. Where there are several answers, one of them must be
        chosen: a row of Enters given out of habit answers none of them.
        """
        ways = [one for one in self.targets if one.face.primary and not one.face.listed]
        if len(ways) == 1:
            ways[0].focus(scroll_visible=False)


def neighbour(targets: Iterable[Target], of: Target, key: str) -> Target | None:
    """Return the nearest target in the direction of an arrow key; None when there is none."""
    here = of.region
    x, y = here.x * 2 + here.width, here.y * 2 + here.height
    found: list[tuple[int, Target]] = []
    for target in targets:
        there = target.region
        dx, dy = there.x * 2 + there.width - x, there.y * 2 + there.height - y
        along, across = (dx, dy) if key in ("left", "right") else (dy, dx)
        if key in ("left", "up"):
            along = -along
        if along > 0 and (key in ("up", "down") or abs(across) < here.height):
            found.append((along * 3 + abs(across), target))
    return min(found, key=lambda one: one[0])[1] if found else None
