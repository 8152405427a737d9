"""How long each figure of a shop takes to draw. Prints figures and never fails.

Run it with `python -m tests.bench.bench_pictures FOLDER [DAYS]` on a data folder with a history, as
`kiosk invent --into FOLDER --machines 8 --days 3650` makes one; the time is that of the processor.
"""

from __future__ import annotations

import sys
import time
from collections.abc import Callable
from contextlib import closing
from pathlib import Path
from typing import TypeVar

from kiosk.cli.place import demo_site
from kiosk.cli.place import shop as shop_of
from kiosk.home import SITE_FILE
from kiosk.journal.store import Journal
from kiosk.languages.words import words
from kiosk.plots.cells import cells
from kiosk.plots.gallery import Gallery
from kiosk.plots.reader import reader
from kiosk.plots.svg import svg
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.load_review import load_schedule
from kiosk.procedure.site import load_site
from kiosk.review.barrels import barrels
from kiosk.review.results import results
from kiosk.trade.authorities import authority

Made = TypeVar("Made")


def main(folder: Path, days: int) -> None:
    """Print what each figure takes."""
    file = folder / SITE_FILE
    site = load_site(file) if file.exists() else demo_site()
    with closing(Journal(folder)) as journal:
        shop = shop_of(folder, site, journal)
        with closing(shop.ledger()) as ledger:
            ledger.catch_up()
            now, look = shop.clock.now().utc, reader(site, words("en"))
            entered = results(journal.shop_events(), practice=site.practice)
            judged = barrels(entered, authority(load_authorities(), "usda"), look.day(now))
            gallery = Gallery(
                ledger=ledger, reader=look, site=site, library=shop.library,
                intervals=load_schedule(library=shop.library).intervals, judged=judged,
                now_utc=now, days=days,
            )  # fmt: skip
            for one in gallery.pictures():
                drawn, made_ms = timed(one.draw)
                if drawn is None:
                    continue
                text, svg_ms = timed(lambda drawn=drawn: svg(drawn))
                _, cells_ms = timed(lambda drawn=drawn: cells(drawn, 100, 28))
                print(
                    f"{made_ms:6.0f} ms, as SVG {svg_ms:4.0f} ms and {len(text) / 1e3:4.0f} kB, "
                    f"in cells {cells_ms:4.0f} ms: {one.name}"
                )


def timed(make: Callable[[], Made]) -> tuple[Made, float]:
    """Return what was made, and the milliseconds of processor time that it took."""
    begun = time.process_time()
    made = make()
    return made, 1e3 * (time.process_time() - begun)


if __name__ == "__main__":
    main(Path(sys.argv[1]), int(sys.argv[2]) if len(sys.argv) > 2 else 365)
