"""Figures of the screens in a real pseudo-terminal: start to first screen, key to screen, and what
the meter of the ear costs.

    python -m tests.bench.bench_screens

The kiosk runs as a process of its own, silent and deaf, in 80 columns and 24 rows: the start is
that of the invented shop with all shipped procedures, the keys are pressed in the tests' small one,
whose first step does not end by itself. A screen counts as shown when the text that only it holds
has come out of the terminal.
"""

from __future__ import annotations

import fcntl
import itertools
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
from collections.abc import Iterable
from pathlib import Path

ROUNDS = 12
STARTS = 5
IDLE_S = 20.0
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

    def quiet(self, seconds: float) -> int:
        """Press nothing for some time; return how many bytes came out."""
        written, end = 0, time.perf_counter() + seconds
        while time.perf_counter() < end:
            if select.select([self._file], [], [], 0.05)[0]:
                written += len(os.read(self._file, 65536))
        return written

    def processor_s(self) -> float:
        """Return the processor's seconds that the kiosk has taken so far."""
        stat = Path(f"/proc/{self.pid}/stat").read_text(encoding="ascii")
        user, system = stat.rpartition(")")[2].split()[11:13]
        return (int(user) + int(system)) / os.sysconf("SC_CLK_TCK")

    def close(self) -> None:
        os.kill(self.pid, signal.SIGKILL)
        os.waitpid(self.pid, 0)
        os.close(self._file)


class Swaying:
    """An ear that is always open, and whose level changes at every look."""

    notice = ""

    def __init__(self) -> None:
        self._levels = itertools.cycle(range(-60, -11, 6))

    @property
    def level(self) -> float:
        return float(next(self._levels))

    def allow(self, phrases: Iterable[str]) -> None: ...

    def deafen(self) -> None: ...

    def undeafen(self, *, at_once: bool = False) -> None: ...

    def speak(self, language: str, worker: str = "") -> None: ...


def serve(shop: str, folder: Path) -> None:
    """Run the kiosk on one of the shops; "metered" is the small one, with an ear with a meter."""
    from kiosk.clock import SystemClock
    from kiosk.journal.store import Journal
    from kiosk.procedure.load import load_library
    from kiosk.procedure.site import load_site
    from kiosk.screens.app import KioskApp
    from kiosk.shipped import shipped
    from kiosk.shop import Shop

    if shop in ("small", "metered"):
        from tests.screens.scene import SITE, SMALL

        site, library = SITE, load_library(SMALL)
    else:
        site = load_site(shipped("demo") / "site.toml")
        library = load_library(shipped("procedures"))
    app = KioskApp(Shop(site, library, Journal(folder), SystemClock(), folder))
    if shop == "metered":
        app.hearing = Swaying()
    app.run()


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
            terminal.key("1", "my hands are clean")
            for _ in range(ROUNDS):
                first.append(terminal.key("l", "Español"))
                second.append(terminal.key("\x1b", "my hands are clean"))
                third.append(terminal.key("p", "HELD"))
                fourth.append(terminal.key("1", "keep going"))
                fifth.append(terminal.key("\r", "my hands are clean"))
        finally:
            terminal.close()
    return took


def idling(shop: str) -> tuple[float, float]:
    """Return the share of one core, and the bytes a second, of a walk in which nothing happens."""
    with tempfile.TemporaryDirectory() as folder:
        terminal = Terminal(Path(folder), shop)
        try:
            terminal.until("Window machine")
            terminal.key("1", "Who does it?")
            terminal.key("1", "my hands are clean")
            terminal.quiet(1.0)
            before, began = terminal.processor_s(), time.perf_counter()
            written = terminal.quiet(IDLE_S)
            took = time.perf_counter() - began
            return (terminal.processor_s() - before) / took, written / took
        finally:
            terminal.close()


def line(name: str, took: list[float]) -> str:
    worst, median = max(took), statistics.median(took)
    return f"{name}: median {median:.0f} ms, worst {worst:.0f} ms (n={len(took)})"


def main() -> None:
    print(line("process start to board", starts()))
    for name, took in keys().items():
        print(line(f"key to screen, {name}", took))
    for name, shop in (
        ("without a meter", "small"),
        ("with a level that always changes", "metered"),
    ):
        share, bytes_s = idling(shop)
        print(f"a walk at rest, {name}: {share:.2%} of one core, {bytes_s:.0f} bytes a second")


if __name__ == "__main__":
    if sys.argv[1:2] == ["serve"]:
        serve(sys.argv[2], Path(sys.argv[3]))
    else:
        main()
