"""A supervisor at the review of an invented shop with nine days of history."""

from __future__ import annotations

import json
import shutil
import sqlite3
from collections.abc import AsyncIterator
from contextlib import asynccontextmanager, closing
from dataclasses import replace
from datetime import date
from pathlib import Path
from typing import Any

from kiosk.procedure.load import load_library
from kiosk.procedure.site import Site, load_site
from kiosk.rehearsal.invent import invent
from kiosk.screens.review_opening import OpeningScreen
from kiosk.screens.review_page import PageScreen
from kiosk.screens.review_screen import ReviewScreen
from kiosk.shipped import shipped
from tests.screens.scene import Kiosk, StillClock, kiosk, shop

PROCEDURES = load_library(shipped("procedures"))
SHOP = replace(load_site(shipped("demo") / "site.toml"), time_zone="Etc/UTC")
FIRST, DAYS, SEED = date(2026, 3, 12), 9, 13
PRIYA = "p5"


def make_history(folder: Path) -> Path:
    """Walk nine invented days into an empty folder, and have the ledger read them."""
    invent(folder, SHOP, PROCEDURES, FIRST, DAYS, SEED)
    made = shop(folder, Morning(), PROCEDURES, SHOP)
    with closing(made.journal), closing(made.ledger()) as ledger:
        ledger.catch_up()
    return folder


def speaking(language: str, **supervisor: object) -> Site:
    """The shop with a supervisor who speaks a language."""
    people = [
        replace(one, language=language, **supervisor) if one.id == PRIYA else one
        for one in SHOP.people
    ]
    return replace(SHOP, people=tuple(people))


class Morning(StillClock):
    """Half past seven on the day after."""

    def __init__(self) -> None:
        super().__init__("boot-review")
        # 2026-03-21 07:30 UTC.
        self.seconds = 1_774_078_200.0 - 1_774_000_000.0


@asynccontextmanager
async def reviewing(
    history: Path, folder: Path, size: tuple[int, int] = (80, 24), site: Site = SHOP,
) -> AsyncIterator[Kiosk]:  # fmt: skip
    """The review of a copy of the history, opened with the supervisor's PIN."""
    shutil.copytree(history, folder, dirs_exist_ok=True)
    async with kiosk(folder, size, Morning(), PROCEDURES, site) as it:
        await enter(it)
        yield it


async def enter(it: Kiosk) -> None:
    """From the board: the PIN, then wait until the journal is read."""
    await it.press("r", *"2468", "enter")
    await until_read(it)


async def until_read(it: Kiosk) -> None:
    while isinstance(it.app.screen, OpeningScreen):
        await it.app.workers.wait_for_complete()
        await it.settle()


def page(it: Kiosk) -> PageScreen:
    screen = it.app.screen
    assert isinstance(screen, PageScreen), f"{screen!r}\n{it.seen()}"
    return screen


def home(it: Kiosk) -> ReviewScreen:
    screen = it.app.screen
    assert isinstance(screen, ReviewScreen), f"{screen!r}\n{it.seen()}"
    return screen


def rows(folder: Path, kind: str = "") -> list[dict[str, Any]]:
    """The journal's rows, read past the kiosk; `fact` and `by` are the body's."""
    with sqlite3.connect(folder / "journal.db") as db:
        db.row_factory = sqlite3.Row
        found = [dict(row) for row in db.execute("select * from journal order by seq")]
    db.close()
    read = [row | json.loads(row["body"]) for row in found]
    return [row for row in read if not kind or row["kind"] == kind]


def text_of(it: Kiosk) -> str:
    """The whole text of a page to read, seen or not, in one line."""
    width = it.app.size.width - 3
    parts = page(it).parts(width)
    return " ".join(" ".join(getattr(part, "text", str(part)).split()) for part in parts)


async def pages(it: Kiosk) -> AsyncIterator[list[Any]]:
    """Turn through a list; yield what stands on the items of each page."""
    while True:
        yield [one.face for one in it.targets() if one.parent.id == "items"]
        top = page(it).top
        await it.press("pagedown")
        if page(it).top <= top:
            return
