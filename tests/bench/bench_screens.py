"""Figures of the screens in a real pseudo-terminal: start to first screen, key to screen.

    python -m tests.bench.bench_screens

The kiosk runs as a process of its own, silent and deaf, in 80 columns and 24 rows: the start is
that of the invented shop with all shipped procedures, the keys are pressed in the tests' small one,
whose first step does not end by itself. A screen counts as shown when the text that only it holds
has come out of the terminal.
"""

from __future__ import annotations

import fcntl
import os
import pty
import select
import signal
import statistics
import struct
import sys
import tempfile
import termios
import time
from pathlib import Path

ROUNDS = 12
STARTS = 5
STEADY_S = 0.5
"""Longer than a bouncing press, so that each key counts."""


class Terminal:
    """The kiosk in a pseudo-terminal."""

    def __init__(self, folder: Path, shop: str) -> None:
        self.began = time.perf_counter()
        self.pid, self._file = pty.fork()
        if self.pid == 0:
            os.environ["TERM"], os.environ["COLORTERM"] = "xterm-256color", "truecolor"
            command = [
                sys.executable,
                "-m",
                "tests.bench.bench_screens",
                "serve",
                shop,
                str(folder),
            ]
            os.execv(sys.executable, command)
        fcntl.ioctl(self._file, termios.TIOCSWINSZ, struct.pack("HHHH", 24, 80, 0, 0))

    def until(self, text: str, limit_s: float = 20.0) -> float:
        """Read until a text has come out; return the moment. Raises TimeoutError."""
        seen, end = b"", time.perf_counter() + limit_s
        while time.perf_counter() < end:
            if select.select([self._file], [], [], 0.05)[0]:
                seen += os.read(self._file, 65536)
                if text.encode() in seen:
                    return time.perf_counter()
        raise TimeoutError(f"'{text}' was not shown; the end of what was: {seen[-300:]!r}")

    def key(self, keys: str, shows: str) -> float:
        """Press a key; return the milliseconds until a text is shown."""
        time.sleep(STEADY_S)
        while select.select([self._file], [], [], 0)[0]:
            os.read(self._file, 65536)
        pressed = time.perf_counter()
        os.write(self._file, keys.encode())
        return (self.until(shows) - pressed) * 1000

    def close(self) -> None:
        os.kill(self.pid, signal.SIGKILL)
        os.waitpid(self.pid, 0)
        os.close(self._file)


def serve(shop: str, folder: Path) -> None:
    """Run the kiosk on one of the two shops."""
    from kiosk.clock import SystemClock
    from kiosk.journal.store import Journal
    from kiosk.procedure.load import load_library
    from kiosk.procedure.site import load_site
    from kiosk.screens.app import KioskApp
    from kiosk.shipped import shipped
    from kiosk.shop import Shop

    if shop == "small":
        from tests.screens.scene import SITE, SMALL

        site, library = SITE, load_library(SMALL)
    else:
        site = load_site(shipped("demo") / "site.toml")
        library = load_library(shipped("procedures"))
    KioskApp(Shop(site, library, Journal(folder), SystemClock(), folder)).run()


def starts() -> list[float]:
    """Return the milliseconds from the start of the process to the board, several times."""
    took = []
    for _ in range(STARTS):
        with tempfile.TemporaryDirectory() as folder:
            terminal = Terminal(Path(folder), "invented")
            try:
                took.append((terminal.until("Patio twin") - terminal.began) * 1000)
            finally:
                terminal.close()
    return took


def keys() -> dict[str, list[float]]:
    """Return the milliseconds from a key to its screen, by what the key does."""
    took: dict[str, list[float]] = {
        "a list opens (no event)": [],
        "the question comes back (no event)": [],
        "a problem is called (event on the disk, then the screen)": [],
        "its reason is named (event on the disk, then the screen)": [],
        "the walk goes on (events on the disk, then the screen)": [],
    }
    first, second, third, fourth, fifth = took.values()
    with tempfile.TemporaryDirectory() as folder:
        terminal = Terminal(Path(folder), "small")
        try:
            terminal.until("Window machine")
            terminal.key("1", "Who does it?")
            terminal.key("1", "Wash your hands")
            for _ in range(ROUNDS):
                first.append(terminal.key("l", "Español"))
                second.append(terminal.key("\x1b", "Wash your hands"))
                third.append(terminal.key("p", "HELD"))
                fourth.append(terminal.key("1", "Find the seal"))
                fifth.append(terminal.key("\r", "Wash your hands"))
        finally:
            terminal.close()
    return took


def line(name: str, took: list[float]) -> str:
    worst, median = max(took), statistics.median(took)
    return f"{name}: median {median:.0f} ms, worst {worst:.0f} ms (n={len(took)})"


def main() -> None:
    print(line("process start to board", starts()))
    for name, took in keys().items():
        print(line(f"key to screen, {name}", took))


if __name__ == "__main__":
    if sys.argv[1:2] == ["serve"]:
        serve(sys.argv[2], Path(sys.argv[3]))
    else:
        main()
