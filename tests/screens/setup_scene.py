"""The setup on an empty data folder, worked by fingers and keys."""

from __future__ import annotations

from collections.abc import AsyncIterator, Callable
from contextlib import asynccontextmanager, closing
from pathlib import Path

from kiosk.journal.store import Journal
from kiosk.languages.words import words
from kiosk.listening.microphone import NoMicrophone
from kiosk.listening.models import Missing
from kiosk.listening.sources import Source
from kiosk.procedure.load import Library, load_library
from kiosk.screens.reading import decimal_mark
from kiosk.screens.setup_app import SetupApp
from kiosk.screens.setup_sound import Sound
from kiosk.setup.draft import Draft
from kiosk.shipped import shipped
from kiosk.shop import Shop
from kiosk.speaking.voice import SilentVoice
from tests.screens.scene import Kiosk, StillClock

Seen = Callable[[str], None]


def no_source() -> Source:
    raise NoMicrophone("this test has no microphone")


SILENT = Sound(
    lambda: SilentVoice("This test has no speaker."),
    no_source,
    lambda language: Missing(language, "this test has no ear"),
)


class Setting(Kiosk):
    """What somebody at the setup sees and does."""

    app: SetupApp
    journal: Journal
    say = staticmethod(words("en").say)

    async def write(self, text: str) -> None:
        """Type on a real keyboard, and take it."""
        for letter in text:
            await self.quick_press("space" if letter == " " else letter)
        await self.press("enter")

    async def tap(self, text: str) -> int:
        """Type on the keys of the screen; return the taps."""
        taps = await self._to_keys()
        for letter in text:
            board = self.app.screen.keyboard
            if letter == " ":
                await self.touch(self.say("setup-key-space"))
                taps += 1
                continue
            if letter.isalpha() and board.capital != letter.isupper():
                shift = "setup-key-capital" if letter.isupper() else "setup-key-small"
                await self.touch(self.say(shift))
                taps += 1
            group = next(one for one in self.app.screen.keyboard.keys if letter in one)
            await self.touch(" ".join(group))
            await self.touch(letter)
            taps += 2
        return taps

    async def _to_keys(self) -> int:
        """Go on from a question that leaves no room for the keys."""
        on = self.say("setup-to-the-keys")
        if on not in self.labels():
            return 0
        await self.touch(on)
        return 1

    async def digits(self, text: str) -> None:
        """Press the keys of a number, and take it."""
        await self._to_keys()
        mark = decimal_mark(words(self.app.flow.draft.language or "en"))
        await self.touch(*text.replace(".", mark), self.say("setup-take"))


@asynccontextmanager
async def setting_up(
    folder: Path,
    size: tuple[int, int] = (80, 24),
    sound: Sound = SILENT,
    library: Library | None = None,
) -> AsyncIterator[Setting]:
    """The setup of a data folder."""
    clock = StillClock()
    known = library or load_library(shipped("procedures"))
    with closing(Journal(folder)) as journal:
        app = SetupApp(
            Draft.of(folder), known, clock,
            lambda site: Shop(site, known, journal, clock, folder), sound,
        )  # fmt: skip
        async with app.run_test(size=size):
            it = Setting(app, clock)
            it.journal = journal
            await it.settle()
            yield it


async def find(it: Setting, label: str) -> None:
    """Turn the pages of a list until a target is there, and press it."""
    for _ in range(30):
        if label in it.labels():
            break
        await it.touch(it.say("more"))
    await it.touch(label)


async def answer_all(it: Setting, language: str = "en", seen: Seen = lambda _: None) -> None:
    """Answer every question of a new site by touch; `seen` is told what is on the screen."""
    said, library = words(language), it.app.flow.library
    say = it.say = said.say

    async def press(label: str) -> None:
        await find(it, label)

    async def take(text: str) -> None:
        await it.tap(text)
        await press(say("setup-take"))

    seen("language")
    await press(say("language-name"))
    seen("practice")
    await press(say("setup-real"))
    seen("name")
    await take("Jo")
    seen("time zone")
    await press(say("setup-zone-america"))
    seen("letters")
    await press("C")
    seen("cities")
    await press("Chicago")
    seen("opens")
    await it.digits("1000")
    seen("closes")
    await it.digits("2130")
    seen("closed days")
    await press(say("setup-weekday", day="monday"))
    seen("one day closed")
    await press(say("setup-done"))
    seen("limits")
    await press(said.text(library.limits["food-code-2022"].title))
    seen("kind")
    await press(said.text(library.kinds["single-pump"].title))
    seen("machine name")
    await take("W")
    seen("isolation")
    await press(say("setup-option-isolation-plug"))
    seen("amounts")
    await press(say("setup-amounts-right"))
    seen("machines")
    await press(say("setup-done"))
    seen("thermometer")
    await press(say("setup-option-thermometer-celsius"))
    seen("sink")
    await press(say("setup-option-sink-three"))
    seen("product")
    await take("Cl")
    seen("chlorine")
    await it.digits("55.4")
    seen("packet")
    await it.digits("2")
    seen("strength")
    await it.digits("100")
    seen("dose")
    await press(say("setup-dose-right"))
    seen("rinse")
    await press(say("setup-option-label-rinse-no"))
    seen("languages")
    await press(say("language-name"))
    await press(say("setup-done"))
    seen("person name")
    await take("Ana")
    seen("role")
    await press(say("people-role-supervisor"))
    seen("people")
    await press(say("setup-done"))
    seen("overview")
