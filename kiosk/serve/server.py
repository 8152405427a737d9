"""The web server: the page of the kiosk, the page that asks for the code, and the line between."""

from __future__ import annotations

import asyncio
from collections.abc import Awaitable, Callable
from contextlib import suppress
from dataclasses import dataclass
from pathlib import Path
from typing import Final
from urllib.parse import urlsplit

import jinja2
from aiohttp import WSCloseCode, WSMsgType, web

from kiosk.languages.words import Words
from kiosk.serve.hub import Hub, Viewer
from kiosk.serve.messages import LONGEST, read
from kiosk.serve.pairing import Paired, Pairing, PairingFailed

_PAGES: Final = Path(__file__).parent / "pages"
_TYPES: Final = {".js": "text/javascript", ".css": "text/css"}
_COOKIE: Final = "brushdown-screen"
_COOKIE_S: Final = 400 * 24 * 3600
"""As long as a browser may keep a cookie (RFC 6265bis, 5.6.2, MEM)."""
_HEARTBEAT_S: Final = 15.0
_MOST_WAITING: Final = 500
"""Messages that a slow page may be behind; then it is closed, comes back and is drawn anew."""

_HEADERS: Final = {
    "Content-Security-Policy": "default-src 'none'; script-src 'self'; style-src 'self'; "
    "connect-src 'self'; img-src data:; form-action 'self'; frame-ancestors 'none'; "
    "base-uri 'none'",
    "X-Content-Type-Options": "nosniff",
    "Referrer-Policy": "same-origin",
    "Cache-Control": "no-store",
}


@dataclass(frozen=True, slots=True)
class Door:
    """What lets screens in."""

    paired: Paired
    pairing: Pairing


class Pages:
    """Answers what browsers ask."""

    def __init__(self, hub: Hub, door: Door, words: Words, name: str) -> None:
        """`words` are those of the board's first language; `name` is the site's."""
        self._hub, self._door, self._words, self._name = hub, door, words, name
        loader = jinja2.FileSystemLoader(_PAGES)
        self._templates = jinja2.Environment(
            loader=loader, autoescape=True, undefined=jinja2.StrictUndefined
        )
        found = (one for one in _PAGES.iterdir() if one.suffix in _TYPES)
        self._files = {one.name: (one.read_text("utf-8"), _TYPES[one.suffix]) for one in found}
        self._open: set[web.WebSocketResponse] = set()

    def application(self) -> web.Application:
        """Return the application to serve."""
        app = web.Application(middlewares=[_guarded], client_max_size=4096)
        app.add_routes(
            [
                web.get("/", self._page),
                web.post("/pair", self._pair),
                web.get("/screen", self._screen),
                web.get("/files/{name}", self._file),
            ]
        )
        app.on_shutdown.append(self._close)
        return app

    async def _page(self, request: web.Request) -> web.StreamResponse:
        try:
            if self._screen_of(request):
                return self._made("kiosk.html")
        except PairingFailed as error:
            return self._made("pair.html", status=500, notice=str(error))
        return self._made("pair.html", notice="")

    async def _pair(self, request: web.Request) -> web.StreamResponse:
        if not _from_here(request):
            raise web.HTTPForbidden
        pairing, say = self._door.pairing, self._words.say
        if wait := pairing.wait():
            notice = say("pairing-wait", seconds=round(wait + 0.5))
            return self._made("pair.html", status=429, notice=notice)
        given = (await request.post()).get("code", "")
        try:
            token = pairing.give(given if isinstance(given, str) else "")
        except PairingFailed as error:
            return self._made("pair.html", status=500, notice=str(error))
        if not token:
            return self._made("pair.html", status=403, notice=say("pairing-wrong"))
        done = web.Response(status=303, headers={"Location": "/"})
        secure = request.secure or request.headers.get("X-Forwarded-Proto") == "https"
        done.set_cookie(
            _COOKIE, token, max_age=_COOKIE_S, httponly=True, samesite="Strict", secure=secure
        )
        return done

    async def _file(self, request: web.Request) -> web.StreamResponse:
        try:
            text, kind = self._files[request.match_info["name"]]
        except KeyError:
            raise web.HTTPNotFound from None
        return web.Response(text=text, content_type=kind)

    async def _screen(self, request: web.Request) -> web.StreamResponse:
        try:
            screen = self._screen_of(request)
        except PairingFailed:
            screen = ""
        if not screen or not _from_here(request):
            raise web.HTTPForbidden
        line = web.WebSocketResponse(heartbeat=_HEARTBEAT_S, max_msg_size=LONGEST)
        await line.prepare(request)
        await self._talk(line, screen)
        return line

    async def _talk(self, line: web.WebSocketResponse, screen: str) -> None:
        waiting: asyncio.Queue[str] = asyncio.Queue(_MOST_WAITING)
        sender = asyncio.create_task(_send(line, waiting))

        def tell(message: str) -> None:
            try:
                waiting.put_nowait(message)
            except asyncio.QueueFull:
                sender.cancel()

        viewer = Viewer(screen, tell)
        self._open.add(line)
        self._hub.join(viewer)
        try:
            async for message in line:
                said = read(message.data) if message.type is WSMsgType.TEXT else None
                if said is not None:
                    self._hub.hear(viewer, said)
        finally:
            self._hub.leave(viewer)
            self._open.discard(line)
            sender.cancel()
            with suppress(asyncio.CancelledError):
                await sender

    async def _close(self, _: web.Application) -> None:
        for line in set(self._open):
            await line.close(code=WSCloseCode.GOING_AWAY)

    def _screen_of(self, request: web.Request) -> str:
        """Return the id of the paired screen that asks, or nothing. Raises PairingFailed."""
        token = request.cookies.get(_COOKIE, "")
        return self._door.paired.screen(token) if token else ""

    def _made(self, template: str, status: int = 200, **places: str) -> web.Response:
        words = self._words
        text = self._templates.get_template(template).render(
            say=words.say, language=words.language, name=self._name, **places
        )
        return web.Response(text=text, content_type="text/html", status=status)


async def _send(line: web.WebSocketResponse, waiting: asyncio.Queue[str]) -> None:
    """Send a page its messages, until it is gone or too far behind."""
    with suppress(ConnectionError):
        try:
            while True:
                await line.send_str(await waiting.get())
        finally:
            # A page that is closed for being slow opens itself again.
            asyncio.get_running_loop().create_task(line.close(code=WSCloseCode.TRY_AGAIN_LATER))


def _from_here(request: web.Request) -> bool:
    """True when one of the kiosk's own pages asks, and not another site's in the same browser."""
    origin = request.headers.get("Origin")
    return origin is not None and urlsplit(origin).netloc == request.host


@web.middleware
async def _guarded(
    request: web.Request, handler: Callable[[web.Request], Awaitable[web.StreamResponse]]
) -> web.StreamResponse:
    """Let a page load nothing from elsewhere, and be framed by nobody."""
    try:
        found = await handler(request)
    except web.HTTPException as error:
        error.headers.update(_HEADERS)
        raise
    if not found.prepared:
        found.headers.update(_HEADERS)
    return found
