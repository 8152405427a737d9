"""Pages that take a while: looked up in another thread, so that no key and no touch waits."""

from __future__ import annotations

import gc
from collections.abc import Iterator, Sequence
from contextlib import contextmanager
from functools import partial
from typing import Any

from textual import on
from textual.worker import Worker, WorkerState

from kiosk.screens.panel import Panel
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import PageScreen, ReadScreen, Row


class LookingScreen(PageScreen):
    """A page whose contents are looked up, and that says so until they are there."""

    looking: Worker[Any] | None = None
    """The search that goes on; None when there is none."""

    def look_up(self) -> None:
        """Look the contents up, again where they are there already."""
        search = partial(self._look_up, self.search())
        self.looking = self.run_worker(search, thread=True, exclusive=True, exit_on_error=False)

    def search(self) -> Any:
        """Return a function of a Desk that looks the contents up.

        It runs in another thread: the desk that it is given is its own, the page's it may not use.
        """
        raise NotImplementedError

    def found(self, contents: Any) -> None:
        """Take what was looked up."""
        raise NotImplementedError

    def wait_text(self) -> str:
        """Return what is said while the contents are not there; nothing when they are."""
        return self.words.say("review-reading") if self.looking is not None else ""

    def on_mount(self) -> None:
        self.look_up()
        super().on_mount()

    def _look_up(self, search: Any) -> Any:
        with _uncollected(), self.desk.elsewhere() as desk:
            return search(desk)

    @on(Worker.StateChanged)
    def _on_looked(self, message: Worker.StateChanged) -> None:
        message.stop()
        if message.worker is not self.looking or not message.worker.is_finished:
            return
        self.looking = None
        if message.state is WorkerState.CANCELLED:
            return
        if message.state is WorkerState.SUCCESS:
            self.found(message.worker.result)
        elif message.state is WorkerState.ERROR:
            self.notice = self.words.say("review-cannot-look", why=str(message.worker.error))
        self.unsteady()
        self.draw()
        if self.focused is None:
            for panel in self.query("#items").results(Panel):
                panel.focus_first()


@contextmanager
def _uncollected() -> Iterator[None]:
    """Keep Python from looking for dead cycles: for years of records that stops all threads long.

    A search that ends while another goes on may let it look again; that costs time, and no more.
    """
    looks = gc.isenabled()
    gc.disable()
    try:
        yield
    finally:
        if looks:
            gc.enable()


class LookingTextScreen(LookingScreen, ReadScreen):
    """A text to read that is looked up."""

    def __init__(self, desk: Desk) -> None:
        super().__init__(desk)
        self._rows: Sequence[Row] = ()

    def parts(self, width: int) -> Sequence[Row]:  # noqa: ARG002
        return (Row(self.wait_text()),) if self.looking is not None else self._rows

    def found(self, contents: Any) -> None:
        self._rows = contents
