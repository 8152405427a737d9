"""How long the review's pages take with ten years in the journal, and how long a key would wait.

Run it with `python -m tests.bench.bench_review_pages FOLDER`, on a folder that `bench_review` made.
Processor time is this process's; the wait is the processor time that was used between two turns of
the screen's loop while the page was looked up.
"""

from __future__ import annotations

import asyncio
import sys
import time
from collections.abc import Callable, Iterator
from contextlib import closing
from functools import partial
from pathlib import Path

from kiosk.home import SITE_FILE
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.load import load_library
from kiosk.procedure.site import Role, load_site
from kiosk.review.barrels import over
from kiosk.screens.review_dates import DatesScreen
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_laboratory import LaboratoryScreen
from kiosk.screens.review_looking import LookingScreen
from kiosk.screens.review_parts import PartsScreen
from kiosk.screens.review_pictures import PictureScreen, pictures
from kiosk.screens.review_trace import TraceScreen
from kiosk.shipped import shipped
from kiosk.trade.authorities import authority
from tests.screens.scene import Kiosk, StillClock, kiosk

_TURN_S = 0.005
_PICTURES = 3
"""The first ones are those of the whole shop."""


async def main(folder: Path) -> None:
    """Print all figures."""
    clock = StillClock()
    site, library = load_site(folder / SITE_FILE), load_library(shipped("procedures"))
    async with kiosk(folder, (100, 30), clock, library, site) as it:
        shop = it.app.shop
        with closing(shop.ledger()) as ledger:
            ledger.catch_up()
            last = ledger.lines(practice=True, limit=1)[0]
            clock.seconds += last.last_utc + 8 * 3600 - clock.now().utc
            supervisor = next(one for one in site.people if one.role is Role.SUPERVISOR)
            for name, make in _pages(Desk(shop, ledger, supervisor)):
                await _show(it, name, make)


def _pages(desk: Desk) -> Iterator[tuple[str, Callable[[], LookingScreen]]]:
    who = authority(load_authorities(), "usda")
    yield "dates", lambda: DatesScreen(desk)
    yield "dates again", lambda: DatesScreen(desk)
    yield "parts", lambda: PartsScreen(desk)
    yield "laboratory", lambda: LaboratoryScreen(desk, who)
    yield "laboratory again", lambda: LaboratoryScreen(desk, who)
    bad = [one for one in desk.results() if over(one, who)]
    if bad:
        yield "trace", lambda: TraceScreen(desk, who, bad[-1])
        yield "trace again", lambda: TraceScreen(desk, who, bad[-1])
    for days in (90, 365, 3660):
        of = partial(pictures, days=days)
        for number in range(_PICTURES):
            name = f"{days} days: {of(desk)[number].name[:30]}"
            yield name, partial(PictureScreen, desk, of, number)


async def _show(it: Kiosk, name: str, make: Callable[[], LookingScreen]) -> None:
    longest = 0.0
    begun = time.process_time()
    it.app.push_screen(screen := make())
    while not screen.is_mounted or screen.looking is not None:
        turn = time.process_time()
        await asyncio.sleep(_TURN_S)
        longest = max(longest, time.process_time() - turn)
    took = time.process_time() - begun
    print(f"{name}: {took * 1000:.0f} ms of processor time, a key waits {longest * 1000:.0f} ms")


if __name__ == "__main__":
    asyncio.run(main(Path(sys.argv[1])))
