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
from kiosk.procedure.site import Site
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
    library_of: Callable[[Site], Library] | None = None,
) -> AsyncIterator[Setting]:
    """The setup of a data folder. `library_of` gives the procedures of the site that is made."""
    clock = StillClock()
    known = library or load_library(shipped("procedures"))
    for_site = library_of or (lambda _: known)
    with closing(Journal(folder)) as journal:
        app = SetupApp(
            Draft.of(folder), known, clock,
            lambda site: Shop(site, for_site(site), journal, clock, folder), sound,
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


async def answer_all(
    it: Setting, language: str = "en", seen: Seen = lambda _: None, kind: str = "single-pump"
) -> None:
    """Answer every question of a new site by touch; `seen` is told what is on the screen."""
    said, library = words(language), it.app.flow.library
    say = it.say = said.say

    async def press(label: str) -> None:
        await find(it, label)

    async def take(text: str) -> None:
        await it.tap(text)
        await press(say("setup-take"))

    for name, answer, text in (
        ("language", press, say("language-name")),
        ("practice", press, say("setup-real")),
        ("name", take, "Jo"),
        ("time zone", press, say("setup-zone-america")),
        ("letters", press, "C"),
        ("cities", press, "Chicago"),
        ("opens", it.digits, "1000"),
        ("closes", it.digits, "2130"),
        ("closed days", press, say("setup-weekday", day="monday")),
        ("one day closed", press, say("setup-done")),
        ("limits", press, said.text(library.limits["food-code-2022"].title)),
        ("kind", press, said.text(library.kinds[kind].title)),
        ("machine name", take, "W"),
        ("isolation", press, say("setup-option-isolation-plug")),
        ("amounts", press, say("setup-amounts-right")),
        ("machines", press, say("setup-done")),
        ("thermometer", press, say("setup-option-thermometer-celsius")),
        ("sink", press, say("setup-option-sink-three")),
        ("product", take, "Cl"),
        ("chlorine", it.digits, "55.4"),
        ("packet", it.digits, "2"),
        ("strength", it.digits, "100"),
        ("dose", press, say("setup-dose-right")),
        ("rinse", press, say("setup-option-label-rinse-no")),
        ("languages", press, say("language-name")),
        ("one language", press, say("setup-done")),
        ("person name", take, "Ana"),
        ("role", press, say("people-role-supervisor")),
        ("people", press, say("setup-done")),
    ):
        seen(name)
        await answer(text)
    seen("overview")
