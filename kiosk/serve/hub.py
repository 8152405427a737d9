"""Which screens watch the one application, and which of them holds it."""

from __future__ import annotations

import json
from collections.abc import Callable
from dataclasses import dataclass
from typing import Protocol

from kiosk.serve.messages import Away, Fit, FromScreen, Key, Scroll, TakeOver, Touch

NOT_PAIRED = ""
"""No screen."""


@dataclass(eq=False, slots=True)
class Viewer:
    """One open page of a paired screen."""

    screen: str
    """Id of the paired screen."""
    tell: Callable[[str], None]
    """Sends it a message; must not wait."""
    fit: Fit | None = None
    """How many cells it has room for; None until it says so."""


class Worked(Protocol):
    """How the application is worked: the driver's other side."""

    @property
    def columns_and_rows(self) -> tuple[int, int]: ...
    def resize(self, columns: int, rows: int) -> bool: ...
    def send(self, said: Touch | Away | Scroll | Key) -> None: ...


class Hub:
    """Shows one application on every page, and works it from the page of one screen.

    The first screen holds the kiosk. It keeps it while its page is closed or its network is gone,
    until another screen takes it over; then `taken_over` is called, which may say no.
    """

    def __init__(
        self,
        repaint: Callable[[], object],
        taken_over: Callable[[str, str], str],
        private: Callable[[], bool],
    ) -> None:
        """`repaint` has everything drawn again. `taken_over` is told which screen takes the kiosk,
        and from which one; it returns why that cannot be, in words, or nothing. `private` is true
        while what is drawn is for that screen alone which held the kiosk when it began to be."""
        self._repaint = repaint
        self._taken_over = taken_over
        self._private = private
        self._hides = False
        self._hidden_but_for = NOT_PAIRED
        self._worked: Worked | None = None
        self._viewers: list[Viewer] = []
        self._holder: Viewer | None = None
        self.held_by = NOT_PAIRED

    # From the application.

    def attach(self, driver: Worked) -> None:
        """Take the driver through which the application is worked."""
        self._worked = driver

    def paint(self, data: str) -> None:
        """Show on every page what the application writes, but for what is private."""
        message, hid = json.dumps({"paint": data}), self._hides
        self._hides = self._private()
        if self._hides and not hid:
            self._hidden_but_for = self.held_by
        for one in self._viewers:
            if one.fit is None:
                continue
            if self._hides != hid and one.screen != self._hidden_but_for:
                self._tell_state(one)
            if not self._hidden_from(one):
                one.tell(message)
        if hid and not self._hides:
            self._repaint()

    def _hidden_from(self, viewer: Viewer) -> bool:
        return self._hides and viewer.screen != self._hidden_but_for

    # From the pages.

    def join(self, viewer: Viewer) -> None:
        """Open a page. A screen that holds the kiosk works it from the page it opened last."""
        self._viewers.append(viewer)
        if self.held_by in (NOT_PAIRED, viewer.screen):
            self._give(viewer)

    def leave(self, viewer: Viewer) -> None:
        """Close a page; a press that was under way was not meant."""
        self._viewers.remove(viewer)
        if viewer is self._holder:
            self._let_go()
            self._holder = None
            self._show()

    def hear(self, viewer: Viewer, said: FromScreen) -> None:
        """Take what was done on a page. What a page does that only watches is nothing."""
        match said:
            case Fit():
                viewer.fit = said
                self._show()
            case TakeOver():
                self._take_over(viewer)
            case _ if viewer is self._holder and self._worked is not None:
                self._worked.send(said)
            case _:
                pass

    def _take_over(self, viewer: Viewer) -> None:
        if viewer is self._holder:
            return
        trouble = ""
        if viewer.screen != self.held_by:
            trouble = self._taken_over(viewer.screen, self.held_by)
        if trouble:
            viewer.tell(json.dumps({"trouble": trouble}))
        else:
            self._give(viewer)
            self._show()

    def _give(self, viewer: Viewer) -> None:
        self._let_go()
        self._holder, self.held_by = viewer, viewer.screen

    def _let_go(self) -> None:
        if self._worked is not None:
            self._worked.send(Away())

    def _show(self) -> None:
        """Tell every page how it stands, and have everything drawn again at the right size."""
        if self._worked is None:
            return
        redrawn = False
        if self._holder is not None and self._holder.fit is not None:
            redrawn = self._worked.resize(self._holder.fit.columns, self._holder.fit.rows)
        for one in self._viewers:
            if one.fit is not None:
                self._tell_state(one)
        if not redrawn:
            self._repaint()

    def _tell_state(self, viewer: Viewer) -> None:
        """Tell a page how many cells there are, and what it is; its cells are then blank."""
        if self._worked is None:
            return
        columns, rows = self._worked.columns_and_rows
        holds = viewer is self._holder
        hidden = self._hidden_from(viewer)
        state = {"columns": columns, "rows": rows, "holds": holds, "hidden": hidden}
        viewer.tell(json.dumps(state))
