"""The application's terminal, which here is no terminal but the screens of the hub."""

from __future__ import annotations

import unicodedata
from typing import Any, ClassVar, Protocol

from textual import events
from textual.app import App
from textual.driver import Driver
from textual.geometry import Size
from textual.keys import KEY_NAME_REPLACEMENTS

from kiosk.serve.messages import Away, Finger, Key, Scroll, Touch

_OUTSIDE = -1
"""A column and a row where nothing is."""


class Shown(Protocol):
    """What the application is shown on."""

    def attach(self, driver: BrowserDriver) -> None:
        """Take the driver through which the application is worked."""

    def paint(self, data: str) -> None:
        """Show what the application writes."""


class BrowserDriver(Driver):
    """Hands on what the application writes, and what its screens are touched with."""

    shown: ClassVar[Shown]

    def __init__(
        self,
        app: App[Any],
        *,
        debug: bool = False,
        mouse: bool = True,
        size: tuple[int, int] | None = None,
    ) -> None:
        super().__init__(app, debug=debug, mouse=mouse, size=size or (80, 24))
        self._written: list[str] = []
        self._down: tuple[int, int] | None = None
        self.shown.attach(self)

    @property
    def is_web(self) -> bool:
        return True

    @property
    def columns_and_rows(self) -> tuple[int, int]:
        """How many cells the application draws."""
        return self._size or (80, 24)

    # From the application.

    def write(self, data: str) -> None:
        self._written.append(data)

    def flush(self) -> None:
        """Hand on what was written: the application calls this after each drawing."""
        data, self._written = "".join(self._written), []
        self.shown.paint(data)

    def start_application_mode(self) -> None:
        size = Size(*self.columns_and_rows)
        self.process_message(events.Resize(size, size))

    def disable_input(self) -> None:
        pass

    def stop_application_mode(self) -> None:
        pass

    # From the screen that holds the kiosk.

    def resize(self, columns: int, rows: int) -> bool:
        """Draw so many cells from now on; False when it is so already, and nothing is drawn."""
        if (columns, rows) == self._size:
            return False
        self._size = (columns, rows)
        size = Size(columns, rows)
        self.process_message(events.Resize(size, size))
        return True

    def send(self, said: Touch | Away | Scroll | Key) -> None:
        """Tell the application what was done on the screen."""
        match said:
            case Touch(Finger.DOWN, x, y):
                self._down = (x, y)
                self.process_message(events.MouseDown(*_at(x, y, button=1)))
            case Touch(Finger.MOVE, x, y) if self._down is not None:
                self._down = (x, y)
                self.process_message(events.MouseMove(*_at(x, y, button=1)))
            case Touch(Finger.UP, x, y) if self._down is not None:
                self._down = None
                self.process_message(events.MouseMove(*_at(x, y, button=1)))
                self.process_message(events.MouseUp(*_at(x, y, button=1)))
            case Away() if self._down is not None:
                # The finger slides off whatever it was on.
                self.send(Touch(Finger.UP, _OUTSIDE, _OUTSIDE))
            case Scroll(x, y, down):
                kind = events.MouseScrollDown if down else events.MouseScrollUp
                self.process_message(kind(*_at(x, y, button=0)))
            case Key(name, character):
                self.process_message(events.Key(name or _key_name(character), character or None))
            case _:
                pass


def driver_for(shown: Shown) -> type[Driver]:
    """Return the kind of driver that an application is shown with."""
    return type("BrowserDriver", (BrowserDriver,), {"shown": shown})


def _at(x: int, y: int, button: int) -> tuple[None, int, int, int, int, int, bool, bool, bool]:
    """Return the arguments of a mouse event: no widget yet, a cell, no keys beside it."""
    return None, x, y, 0, 0, button, False, False, False


def _key_name(character: str) -> str:
    """Return what the application calls the key of a character: `a`, `full_stop`, `space`."""
    if character.isalnum():
        return character
    name = unicodedata.name(character, character).lower().replace("-", "_").replace(" ", "_")
    return KEY_NAME_REPLACEMENTS.get(name, name)
