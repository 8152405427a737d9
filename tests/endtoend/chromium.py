"""A real Chromium, driven over its DevTools line: pages, fingers, pictures, and what was asked for.

The line is a WebSocket with JSON messages (Chrome DevTools Protocol, stable version 1.3).
"""

from __future__ import annotations

import asyncio
import base64
import itertools
import shutil
import tempfile
from collections.abc import AsyncIterator, Awaitable, Callable
from contextlib import asynccontextmanager
from pathlib import Path
from typing import Any

import aiohttp

PROGRAM = next(filter(None, map(shutil.which, ("chromium", "chromium-browser"))), None)
PATIENCE_S = 20.0
"""Longest wait for anything: the machine may be busy."""

_LOOK_S = 0.1

_WORDS = (
    "--headless", "--no-sandbox", "--disable-gpu", "--disable-dev-shm-usage", "--no-first-run",
    "--disable-background-networking", "--disable-component-update", "--remote-debugging-port=0",
    "--host-resolver-rules=MAP * ~NOTFOUND , EXCLUDE 127.0.0.1",
)  # fmt: skip


async def until(holds: Callable[[], Awaitable[Any]]) -> Any:
    """Wait until something holds; return it."""
    async with asyncio.timeout(PATIENCE_S):
        while not (found := await holds()):
            await asyncio.sleep(0.03)
    return found


class Browser:
    """One browser; each page has cookies of its own, as another tablet would."""

    def __init__(self, line: aiohttp.ClientWebSocketResponse) -> None:
        self._line = line
        self._numbers = itertools.count(1)
        self._asked: dict[int, asyncio.Future[dict[str, Any]]] = {}
        self._pages: dict[str, Page] = {}
        self._reader = asyncio.create_task(self._read())

    async def _read(self) -> None:
        async for message in self._line:
            said = message.json()
            if "id" in said:
                answer = self._asked.pop(said["id"])
                if not answer.done():
                    answer.set_result(said)
            elif said.get("sessionId") in self._pages:
                self._pages[said["sessionId"]].told(said["method"], said["params"])

    async def ask(self, method: str, session: str = "", **params: Any) -> dict[str, Any]:
        number = next(self._numbers)
        answer = self._asked[number] = asyncio.get_running_loop().create_future()
        message = {"id": number, "method": method, "params": params}
        await self._line.send_json(message | ({"sessionId": session} if session else {}))
        async with asyncio.timeout(PATIENCE_S):
            found = await answer
        assert "error" not in found, (method, found["error"])
        return found["result"]

    async def page(self, width: int, height: int) -> Page:
        """Open an empty page of a tablet's size, with a screen that is touched."""
        context = (await self.ask("Target.createBrowserContext"))["browserContextId"]
        target = await self.ask("Target.createTarget", url="about:blank", browserContextId=context)
        opened = await self.ask("Target.attachToTarget", targetId=target["targetId"], flatten=True)
        page = self._pages[opened["sessionId"]] = Page(self, opened["sessionId"])
        for part in ("Page", "Network", "Runtime", "Log"):
            await page.ask(f"{part}.enable")
        await page.size(width, height)
        await page.ask("Emulation.setTouchEmulationEnabled", enabled=True, maxTouchPoints=5)
        return page

    async def close(self) -> None:
        self._reader.cancel()
        await self._line.close()


class Page:
    """One page, with every address that it asked for and every complaint of its console."""

    def __init__(self, browser: Browser, session: str) -> None:
        self._browser, self._session = browser, session
        self.asked: list[str] = []
        self.complaints: list[str] = []

    def told(self, event: str, params: dict[str, Any]) -> None:
        match event:
            case "Network.requestWillBeSent":
                self.asked.append(params["request"]["url"])
            case "Network.webSocketCreated":
                self.asked.append(params["url"])
            case "Runtime.exceptionThrown":
                self.complaints.append(params["exceptionDetails"]["text"])
            case "Log.entryAdded" if params["entry"]["level"] == "error":
                self.complaints.append(params["entry"]["text"])

    async def ask(self, method: str, **params: Any) -> dict[str, Any]:
        return await self._browser.ask(method, self._session, **params)

    async def size(self, width: int, height: int) -> None:
        await self.ask("Emulation.setDeviceMetricsOverride", width=width, height=height,
                       deviceScaleFactor=1, mobile=True)  # fmt: skip

    async def go(self, address: str) -> None:
        await self.ask("Page.navigate", url=address)
        await self.loaded()

    async def loaded(self) -> None:
        """Wait until a page is there with all its parts."""
        script = "location.href != 'about:blank' && document.readyState == 'complete'"
        await until(lambda: self.run(script))

    async def run(self, script: str) -> Any:
        """Return what a script says."""
        found = await self.ask("Runtime.evaluate", expression=script, returnByValue=True)
        return found["result"].get("value")

    async def find(self, selector: str) -> tuple[float, float]:
        """Wait for something that can be seen; return its middle."""
        script = (
            "(() => { const one = document.querySelector(" + repr(selector) + ");"
            "const box = one && one.getBoundingClientRect();"
            "return box && box.width ? [box.x + box.width / 2, box.y + box.height / 2] : null })()"
        )
        return tuple(await until(lambda: self.run(script)))

    async def down(self, x: float, y: float) -> None:
        await self.finger("touchStart", {"x": x, "y": y})

    async def up(self) -> None:
        await self.finger("touchEnd")

    async def finger(self, what: str, *points: dict[str, float]) -> None:
        await self.ask("Input.dispatchTouchEvent", type=what, touchPoints=points)

    async def tap(self, x: float, y: float) -> None:
        await self.down(x, y)
        await self.up()

    async def picture(self, file: Path) -> None:
        found = await self.ask("Page.captureScreenshot", format="png")
        file.write_bytes(base64.b64decode(found["data"]))

    # What the kiosk shows.

    async def lines(self) -> list[str]:
        """Return the rows of cells, as text."""
        return (await self.run("cells.lines()")) or []

    async def text(self) -> str:
        return "\n".join(await self.lines())

    async def place(self, said: str) -> tuple[float, float]:
        """Wait for a text in the cells; return where its lowest place is: targets lie below."""
        script = (
            "(() => { const lines = typeof cells === 'undefined' ? [] : cells.lines();"
            f"const said = {said!r}; const y = lines.findLastIndex((one) => one.includes(said));"
            "if (y < 0) return null; const box = canvas.getBoundingClientRect();"
            "const x = lines[y].lastIndexOf(said) + said.length / 2;"
            "return [box.x + x * box.width / cells.columns,"
            " box.y + (y + 0.5) * box.height / cells.rows] })()"
        )
        try:
            return tuple(await until(lambda: self.run(script)))
        except TimeoutError:
            raise LookupError(f"no {said!r} on the screen:\n{await self.text()}") from None

    async def calm(self) -> None:
        """Wait until the cells stay as they are: no finger comes down sooner."""
        before: list[str] = []

        async def still() -> bool:
            nonlocal before
            before, last = await self.lines(), before
            await asyncio.sleep(_LOOK_S)
            return before == last

        await until(still)


@asynccontextmanager
async def browser() -> AsyncIterator[Browser]:
    """Start a browser that reaches this machine and nothing else."""
    with tempfile.TemporaryDirectory(ignore_cleanup_errors=True) as folder:
        process = await asyncio.create_subprocess_exec(
            PROGRAM, *_WORDS, f"--user-data-dir={folder}", "about:blank",
            stdout=asyncio.subprocess.DEVNULL, stderr=asyncio.subprocess.DEVNULL,
        )  # fmt: skip
        told = Path(folder) / "DevToolsActivePort"

        async def address() -> list[str]:
            return told.read_text().split() if told.exists() else []

        try:
            port, path = await until(address)
            async with (
                aiohttp.ClientSession() as client,
                client.ws_connect(f"ws://127.0.0.1:{port}{path}", max_msg_size=0) as line,
            ):
                opened = Browser(line)
                try:
                    yield opened
                finally:
                    await opened.close()
        finally:
            process.terminate()
            await process.wait()
