"""Runs the application and its web server together, and lets screens take it over."""

from __future__ import annotations

import asyncio
import ipaddress
import signal
import ssl
from collections.abc import Callable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Final

from aiohttp import web

from kiosk.engine import commands as c
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import ScreenTakenOver, ShopEvent
from kiosk.journal.store import JournalFailed
from kiosk.languages.words import Words, languages, words
from kiosk.screens.app import KioskApp
from kiosk.screens.board import BoardScreen
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.remark_screen import RemarkScreen
from kiosk.screens.summary import SummaryScreen
from kiosk.screens.walk_screen import WalkScreen
from kiosk.serve.driver import driver_for
from kiosk.serve.hub import Hub
from kiosk.serve.pairing import Paired, Pairing
from kiosk.serve.server import Door, Pages

_OPEN_TO_ALL: Final = (BoardScreen, WalkScreen, SummaryScreen, ChooseScreen, RemarkScreen)
"""Screens that other screens may watch. Textual's own blank one lies under them."""


class CannotServe(Exception):
    """No screen can be served; the message says why and how to mend it."""


@dataclass(frozen=True, slots=True)
class Place:
    """Where the kiosk is served."""

    host: str
    port: int
    certificate: Path | None = None
    key: Path | None = None

    def address(self, port: int = 0) -> str:
        """What is typed into a browser; `port` is the one that was found where none was named."""
        host = f"[{self.host}]" if ":" in self.host else self.host
        return f"{'https' if self.certificate else 'http'}://{host}:{self.port or port}/"

    @property
    def only_here(self) -> bool:
        """True when no other machine reaches it."""
        try:
            return ipaddress.ip_address(self.host).is_loopback
        except ValueError:
            return self.host == "localhost"


class Serving:
    """One application with the screens that show it."""

    def __init__(self, app: KioskApp, place: Place, tell: Callable[[str], None]) -> None:
        """Serve an application at a place; `tell` prints a line where the server was started."""
        self._app, self._place, self._tell = app, place, tell
        self.hub = Hub(app.refresh, self._taken_over, lambda: is_private(app))
        app.driver_class = driver_for(self.hub)

    @property
    def _words(self) -> Words:
        known = (one for one in self._app.shop.site.languages if one in languages())
        return words(next(known, "en"))

    async def run(self) -> None:
        """Serve until the application is left or the process is told to end. Raises CannotServe."""
        app = self._app
        paired = Paired(app.shop.folder)
        pairing = Pairing(paired, app.shop.clock, self._show_code)
        pages = Pages(self.hub, Door(paired, pairing), self._words, app.shop.site.name)
        runner = web.AppRunner(pages.application(), access_log=None)
        await runner.setup()
        try:
            await self._listen(runner)
            pairing.renew()
            loop = asyncio.get_running_loop()
            with suppress(NotImplementedError):
                for one in (signal.SIGINT, signal.SIGTERM):
                    loop.add_signal_handler(one, app.exit)
            await app.run_async()
        finally:
            await runner.cleanup()

    async def _listen(self, runner: web.AppRunner) -> None:
        place, context = self._place, None
        try:
            if place.certificate is not None:
                context = ssl.create_default_context(ssl.Purpose.CLIENT_AUTH)
                context.load_cert_chain(place.certificate, place.key)
            await web.TCPSite(runner, place.host, place.port, ssl_context=context).start()
        except OSError as error:
            raise CannotServe(
                f"The kiosk cannot be served at {place.address()}: {error}. "
                "Name another --host, --port or --certificate."
            ) from error
        address = place.address(runner.addresses[0][1])
        self._tell(f"Open {address} in a browser. Ctrl+C ends the kiosk.")

    def _show_code(self, code: str) -> None:
        """Show the code where it can be seen by whoever stands at the kiosk."""
        said = self._words.say
        self._tell(said("pairing-code", code=code) if code else said("pairing-closed"))
        self._app.pairing_code = code
        self._app.call_later(self._draw_board)

    def _draw_board(self) -> None:
        if isinstance(self._app.screen, BoardScreen):
            self._app.screen.draw()

    def _taken_over(self, screen: str, before: str) -> str:
        """Journal that a screen takes the kiosk over; return why it cannot, in words."""
        shop = self._app.shop
        fact = ScreenTakenOver(screen, before)
        try:
            shop.journal.append_shop([ShopEvent(shop.clock.now(), Evidence(Channel.TOUCH), fact)])
        except JournalFailed as error:
            return self._words.say("screen-not-taken", why=str(error))
        self._app.call_later(interrupt, self._app)
        return ""


def is_private(app: KioskApp) -> bool:
    """True while a PIN is entered, or what a PIN guards is looked at: no screen may watch that."""
    return not all(isinstance(one, _OPEN_TO_ALL) for one in app.screen_stack[1:])


def interrupt(app: KioskApp) -> None:
    """Close what a PIN had opened, sign out who stood at the board, and pause the walk: somebody
    else may stand at the new screen.

    What an absence may change is asked again when the walk is gone on with.
    """
    while not isinstance(app.screen, BoardScreen | WalkScreen | SummaryScreen):
        app.pop_screen()
    for screen in app.screen_stack:
        if isinstance(screen, BoardScreen):
            screen.sign_out()
    if isinstance(app.screen, WalkScreen):
        walk = app.screen.walk
        if c.Pause() in walk.session.offers():
            walk.do(c.Pause(), Evidence(Channel.KIOSK))
