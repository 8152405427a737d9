"""A kiosk on a small invented shop, worked by fingers and keys; its clock stands still."""

from __future__ import annotations

import asyncio
from collections.abc import AsyncIterator, Callable, Iterable
from contextlib import asynccontextmanager, suppress
from decimal import Decimal
from pathlib import Path

from textual import events
from textual.worker import WorkerFailed

from kiosk.engine import commands as c
from kiosk.engine.state import State
from kiosk.journal.store import Journal
from kiosk.listening.ear import Heard
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.site import Machine, Person, Sanitizer, Site
from kiosk.screens.app import KioskApp
from kiosk.screens.question import Sentence
from kiosk.screens.review_looking import LookingScreen
from kiosk.screens.target import Target
from kiosk.screens.walk_screen import WalkScreen
from kiosk.shop import Shop
from kiosk.walk import Walk
from tests.screens import blocks

_CALM_TURNS = 8
"""Turns of the event loop without a message, after which nothing more will come."""

SMALL = Path(__file__).parent / "small"
NEXT, YES, NO = c.Confirm(), c.Yes(), c.No()
ANA = Person(id="ana", name="Ana", language="en")
MINA = Person(id="mina", name="Mina", language="ko")
RITA = Person(id="rita", name="Rita", language="es")
SITE = Site(
    name="Invented shop", time_zone="Etc/UTC", opens="10:00", closes="22:00",
    languages=("en", "es", "ko"), limits="invented", people=(ANA, MINA, RITA),
    machines=(
        Machine(id="m1", name="Window machine", kind="small"),
        Machine(id="m2", name="Back machine", kind="small"),
    ),
    sanitizer=Sanitizer(
        name="x", available_chlorine=Decimal("0.5"), packet_grams=Decimal(1), target=Decimal(100)
    ),
    practice=True,
)  # fmt: skip


class StillClock:
    def __init__(self, boot: str = "boot-1") -> None:
        self.seconds = 1000.0
        self.boot = boot

    def now(self) -> c.Instant:
        return c.Instant(1_774_000_000.0 + self.seconds, self.seconds, self.boot)


class FakeVoice:
    """Says nothing, and remembers it; each text ends when the test says so."""

    notice = ""

    def __init__(self) -> None:
        self.said: list[tuple[str, str]] = []
        self.ends: list[Callable[[], None]] = []

    def say(self, text: str, language: str, on_end: Callable[[], None]) -> None:
        self.said.append((text, language))
        self.ends.append(on_end)

    def prepare(self, texts: Iterable[str], language: str) -> None: ...

    def hush(self) -> None: ...

    def close(self) -> None: ...


class FakeHearing:
    """Hears nothing, and remembers what it may hear, and of whom."""

    notice = ""

    def __init__(self) -> None:
        self.allowed: tuple[str, ...] = ()
        self.deaf = False
        self.language = self.worker = ""

    def allow(self, phrases: Iterable[str]) -> None:
        self.allowed = tuple(phrases)

    def deafen(self) -> None:
        self.deaf = True

    def undeafen(self, *, at_once: bool = False) -> None:
        self.deaf = False

    def speak(self, language: str, worker: str = "") -> None:
        self.language, self.worker = language, worker


class Kiosk:
    """What a worker at the kiosk sees and does."""

    def __init__(self, app: KioskApp, clock: StillClock) -> None:
        self.app = app
        self.clock = clock

    @property
    def walk(self) -> Walk:
        screen = self.app.screen
        if not isinstance(screen, WalkScreen):
            raise LookupError(
                f"no walk is on the screen, but {type(screen).__name__}:\n{self.seen()}"
            )
        return screen.walk

    @property
    def state(self) -> State:
        return self.walk.session.state

    def facts(self) -> list[str]:
        """The kinds of all rows in the journal."""
        return [row["kind"] for row in self.app.shop.journal.rows()]

    def seen(self) -> str:
        """The screen as text, row by row."""
        strips = self.app.screen._compositor.render_strips()
        return "\n".join("".join(segment.text for segment in strip) for strip in strips)

    def words(self) -> str:
        """The screen as running text, without its lines and blanks; large letters are read, too."""
        small = self.seen().translate(dict.fromkeys(map(ord, "▀┃»«━─"), " ")).split()
        return " ".join([*small, self.large()])

    def large(self) -> str:
        """What is written in large letters."""
        found = self.app.screen.query(Sentence)
        if not found:
            return ""
        place, aside = found.first().region, found.first().setting.aside
        rows = self.seen().split("\n")[place.y : place.bottom]
        screen = self.app.screen
        vietnamese = isinstance(screen, WalkScreen) and screen.walk.words.language == "vi"
        cut = [row[place.x + aside : place.right] for row in rows]
        return blocks.read(cut, vietnamese=vietnamese)

    def targets(self) -> list[Target]:
        """The targets that can be pressed now."""
        return [one for one in self.app.screen.query(Target) if one.display and one.parent.display]

    def first(self, count: int = 1) -> list[object]:
        """What the first targets stand for."""
        return [one.face.choice for one in self.targets()[:count]]

    def labels(self) -> list[str]:
        return [one.face.label for one in self.targets()]

    def target(self, what: object) -> Target:
        """Find a target by its act, or by a text on it."""
        for one in self.targets():
            if what in (one.face.choice, one.face.label, one.face.detail):
                return one
        raise LookupError(f"no target for {what!r} among {self.labels()}:\n{self.seen()}")

    def offers(self, what: object) -> bool:
        """True when there is a target for it."""
        return any(what == one.face.choice for one in self.targets())

    async def down(self, target: Target) -> None:
        """A finger comes down in the middle of a target."""
        await self._finger(events.MouseDown, target)

    async def up(self, target: Target) -> None:
        """A finger leaves the screen over the middle of a target."""
        await self._finger(events.MouseUp, target)

    async def _finger(self, kind: type[events.MouseEvent], target: Target) -> None:
        x, y = target.region.x + target.region.width // 2, target.region.y + 1
        self.app.post_message(kind(None, x, y, 0, 0, 1, False, False, False, x, y))
        await self.settle()

    async def touch(self, *targets: object) -> None:
        for what in targets:
            self.clock.seconds += 1
            target = self.target(what)
            await self.down(target)
            await self.up(target)

    async def keep(self, label: str, seconds: float = 1.3) -> None:
        """Press, keep pressed, let go."""
        self.clock.seconds += 1
        target = self.target(label)
        await self.down(target)
        self.clock.seconds += seconds
        await self.up(target)

    async def press(self, *keys: str) -> None:
        for key in keys:
            self.clock.seconds += 1
            await self.quick_press(key)

    async def quick_press(self, key: str) -> None:
        """Press a key without letting any time pass."""
        typed = {"space": " ", "comma": ",", ".": "."}.get(key, key)
        name = "full_stop" if key == "." else key
        self.app.post_message(events.Key(name, typed if len(typed) == 1 else None))
        await self.settle()

    async def say(self, act: c.Act) -> None:
        """Have the ear hear the words for an act."""
        await self.hear(self.walk.words.phrases(act)[0])

    async def hear(self, phrase: str, *, why: str = "") -> None:
        self.clock.seconds += 1
        heard = Heard(phrase, None if why else phrase, 0.9, "test-ear", why, 0.1, 0.0)
        self.app.heard(heard)
        await self.settle()

    async def pass_time(self, seconds: float) -> None:
        """Let the clock run; the screen looks at it as it does every second."""
        self.clock.seconds += seconds
        self.app.screen.tick()
        await self.settle()

    async def settle(self) -> None:
        """Let the application work until no message waits anywhere and everything is drawn; a page
        that is looked up is waited for."""
        await self.calm()
        screen = self.app.screen
        if isinstance(screen, LookingScreen) and screen.looking is not None:
            with suppress(WorkerFailed):
                await screen.looking.wait()
            await self.settle()

    async def calm(self) -> None:
        """Let the application work until no message waits anywhere.

        Pilot's own pause watches the processor's time instead, and takes 25 ms for each press.
        """
        for _ in range(2):
            calm = 0
            while calm < _CALM_TURNS:
                await asyncio.sleep(0)
                pumps = [self.app, *self.app._registry]
                waiting = any(not one._message_queue.empty() for one in pumps if one.is_running)
                calm = 0 if waiting else calm + 1
            self.app.screen._on_timer_update()

    async def begin(self, worker: str = "Ana") -> None:
        """Walk the only procedure of the first machine."""
        await self.touch("Window machine", worker)


def shop(
    folder: Path, clock: StillClock, library: Path | Library = SMALL, site: Site = SITE
) -> Shop:
    known = library if isinstance(library, Library) else load_library(library)
    return Shop(site, known, Journal(folder), clock, folder)


@asynccontextmanager
async def kiosk(
    folder: Path, size: tuple[int, int] = (80, 24), clock: StillClock | None = None,
    library: Path | Library = SMALL, site: Site = SITE,
) -> AsyncIterator[Kiosk]:  # fmt: skip
    """A kiosk with a voice and an ear that are fakes, on a data folder."""
    clock = clock or StillClock()
    made = shop(folder, clock, library, site)
    app = KioskApp(made)
    app.voice, app.hearing = FakeVoice(), FakeHearing()
    try:
        async with app.run_test(size=size):
            found = Kiosk(app, clock)
            await found.settle()
            yield found
    finally:
        made.journal.close()
