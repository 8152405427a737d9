"""Sets the evening up: a shop of its own, and the application anew after a power cut."""

from __future__ import annotations

import asyncio
import tempfile
from collections.abc import Callable
from contextlib import closing
from datetime import UTC, datetime, time, timedelta
from pathlib import Path
from typing import Final
from zoneinfo import ZoneInfo

from kiosk.clock import LeapingClock, SystemClock
from kiosk.crew.app import CrewApp
from kiosk.crew.director import Director
from kiosk.crew.film import Film
from kiosk.crew.story import Crew, Pace, Played, RealPace
from kiosk.crew.voices import CrewHearing, CrewSpeaker, CrewVoice
from kiosk.journal.store import FILE, Journal
from kiosk.journal.verify import check
from kiosk.procedure.load import load_library
from kiosk.procedure.site import Site
from kiosk.shipped import shipped
from kiosk.shop import Shop
from kiosk.speaking.voice import SilentVoice, Voice, open_voice
from kiosk.speaking.voices import SpeechFailed

FILM_SIZE: Final = (100, 30)
_AFTER_CLOSING: Final = timedelta(minutes=10)
_FRAME_S: Final = 0.05
"""For the application to draw before a frame is taken."""

Show = Callable[[CrewApp], object]


class FilmPace:
    """Films what is shown; the film's time is not that of the clock on the wall."""

    def __init__(self, film: Film) -> None:
        self.app: CrewApp | None = None
        self._film = film
        self._now = 0.0

    def now(self) -> float:
        """Return the film's time."""
        return self._now

    async def pause(self, seconds: float) -> None:
        """Take a frame that is seen for so long."""
        await asyncio.sleep(_FRAME_S)
        self._now += seconds
        if self.app is not None:
            # What the application's own screenshots are made of; there is no public name for it.
            self._film.take(self.app.screen._compositor.render_strips(), seconds)


def crew_of(site: Site, procedure: str, kind: str) -> Crew:
    """Return who plays: the first who speaks the board's language, and one who speaks another."""
    told_in = site.languages[0]
    first = next(one for one in site.people if one.language == told_in)
    second = next(one for one in site.people if one.language != told_in)
    machine = next(one for one in site.machines if one.kind == kind)
    return Crew(first, second, machine.name, procedure, told_in)


def evening(clock: SystemClock, site: Site) -> LeapingClock:
    """Return a clock that stands shortly after the shop has closed."""
    found = LeapingClock(clock)
    now = datetime.fromtimestamp(clock.now().utc, UTC).astimezone(ZoneInfo(site.time_zone))
    wanted = datetime.combine(now.date(), time.fromisoformat(site.closes), now.tzinfo)
    wanted += _AFTER_CLOSING
    if wanted <= now:
        wanted += timedelta(days=1)
    found.leap((wanted - now).total_seconds())
    return found


def play(
    site: Site, *, minutes: float, silent: bool = False, deaf: bool = False, show: Show,
    pace: Pace | None = None, folder: Path | None = None,
) -> Played:  # fmt: skip
    """Play an evening at a site, in a folder that is thrown away unless one is named.

    `silent` opens no speaker; `deaf` leaves speech out, so that the crew presses. `show` runs the
    application. Raises hand.LostThread and worker.Stuck.
    """
    if folder is None:
        with tempfile.TemporaryDirectory() as made:
            return play(
                site, minutes=minutes, silent=silent, deaf=deaf, show=show, pace=pace,
                folder=Path(made),
            )  # fmt: skip
    played, clock = Played(), evening(SystemClock(), site)
    library = load_library(shipped("procedures"))
    crew = crew_of(site, "close-twin-gravity", "twin-gravity")
    hearing = CrewHearing(folder, deaf=deaf)
    speaker = _speaker(folder, deaf=deaf)
    try:
        while not played.done:
            with closing(Journal(folder)) as journal:
                shop = Shop(site, library, journal, clock, folder)
                app = CrewApp(shop)
                director = Director(
                    app, clock, hearing, speaker, crew, played, minutes, pace or RealPace()
                )
                app.hearing, app.voice = hearing, CrewVoice(_voice(folder, silent), director.aloud)
                app.script = director.play
                if isinstance(pace, FilmPace):
                    pace.app = app
                show(app)
                if app.failure is not None:
                    raise app.failure
            if not played.cut:
                break
        played.journal = check(folder / FILE).verdict
    finally:
        if speaker is not None:
            speaker.close()
    return played


def film(
    file: Path, site: Site, *, minutes: float, deaf: bool = False, folder: Path | None = None
) -> tuple[Played, Film]:
    """Play an evening without sound, and write it as an animated SVG file. Raises OSError, and what
    `play` raises."""
    width, height = FILM_SIZE
    made = Film(width, height)

    def unseen(app: CrewApp) -> None:
        app.run(headless=True, size=FILM_SIZE)

    played = play(
        site, minutes=minutes, silent=True, deaf=deaf, show=unseen, pace=FilmPace(made),
        folder=folder,
    )  # fmt: skip
    file.write_text(made.svg(f"{site.name}: an evening, played by itself"), encoding="utf-8")
    return played, made


def _voice(folder: Path, silent: bool) -> Voice:
    return SilentVoice("") if silent else open_voice(folder / "prompts")


def _speaker(folder: Path, *, deaf: bool) -> CrewSpeaker | None:
    """Return what renders the crew's speech; None where nothing could hear it."""
    if deaf:
        return None
    try:
        return CrewSpeaker(folder / "prompts")
    except SpeechFailed:
        return None
