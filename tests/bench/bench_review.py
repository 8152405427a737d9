"""How long a review takes with ten years in the journal.

Run it with `python -m tests.bench.bench_review FOLDER [DAYS [MACHINES]]`. Where the folder holds no
journal, an invented shop's history is walked into it first, every session by the real engine: ten
years of eight machines take minutes and three gigabytes. So it is with the ledger: delete
`ledger.db` to see how long it takes to make.
"""

from __future__ import annotations

import argparse
import random
import statistics
import sys
import time
from collections.abc import Callable, Sequence
from contextlib import closing
from dataclasses import dataclass
from datetime import datetime
from pathlib import Path
from typing import TypeVar

from kiosk.cli import history
from kiosk.cli.place import shop as shop_of
from kiosk.home import SITE_FILE
from kiosk.journal.store import FILE, Journal
from kiosk.procedure.site import load_site
from kiosk.review.ledger import FILE as LEDGER
from kiosk.review.ledger import Ledger
from kiosk.shop import Shop

Found = TypeVar("Found")
_TIMES = 5


def main(folder: Path, days: int, machines: int) -> None:
    """Print all figures."""
    if not (folder / FILE).exists():
        invent(folder, days, machines)
    timed("open the journal (first time: its indexes are made)", lambda: Journal(folder).close())
    with closing(Journal(folder)) as journal:
        rows, sessions = journal.mark()[0], journal.sessions()
        size = (folder / FILE).stat().st_size / 1e9
        print(f"{len(sessions):,} sessions, {rows:,} rows, {size:.2f} GB")
        shop = shop_of(folder, load_site(folder / SITE_FILE), journal)
        with closing(built(folder, shop)) as ledger:
            reviewed(ledger, shop, sessions)
        board(shop)


def invent(folder: Path, days: int, machines: int) -> None:
    """Walk the history."""
    parser = argparse.ArgumentParser()
    history.add(parser.add_subparsers())
    words = ["invent", "--days", days, "--machines", machines, "--into", folder]
    parsed = parser.parse_args([str(word) for word in words])
    parsed.command(parsed)


def built(folder: Path, shop: Shop) -> Ledger:
    """Make the ledger where there is none, forget the last night, and catch up."""
    if not (folder / LEDGER).exists():
        with closing(shop.ledger()) as ledger:
            read, took = clocked(ledger.catch_up)
        size = (folder / LEDGER).stat().st_size / 1e6
        print(f"make the ledger: {read:,} sessions in {took}, {size:.0f} MB", flush=True)
    with closing(shop.ledger()) as ledger:
        ledger.catch_up()
        night = forget_last_night(ledger, shop.journal)
    with closing(shop.ledger()) as ledger:
        shop.faults()
        last = shop.journal.mark()[0] - night
        read, took = clocked(ledger.catch_up)
        print(f"catch up the last night: {read} sessions, {last:,} rows: {took}")
        timed("catch up with nothing new", ledger.catch_up)
    timed("open the ledger, made before", lambda: shop.ledger().close())
    return shop.ledger()


def forget_last_night(ledger: Ledger, journal: Journal) -> int:
    """Put the ledger back to where it was a day before the last row; return up to which row."""
    rows = journal._db.execute(
        "select max(seq) from journal where utc < "
        "(select strftime('%Y-%m-%dT%H:%M:%S', max(utc), '-1 day') from journal)"
    )
    night = int(rows.fetchone()[0])
    with ledger._file.writing():
        for session in journal.gained(night, journal.mark()[0]):
            for table in ("session", "worker", "deviation", "reading", "part"):
                ledger._file.run(f"delete from {table} where session = ?", session)
        for table in ("signed", "part"):
            ledger._file.run(f"delete from {table} where seq > ?", night)
        ledger._file.set_mark(night, journal.hash_at(night))
    return night


def reviewed(ledger: Ledger, shop: Shop, sessions: list[str]) -> None:
    """Look at what a supervisor looks at."""
    last = ledger.lines(practice=True, limit=1)[0]
    now = last.last_utc + 8 * 3600
    timed("the first page: 50 sessions, and what needs eyes first", lambda: (
        ledger.lines(practice=True),
        ledger.eyes_first(now, practice=True, entered=())))  # fmt: skip
    timed("what needs eyes first, of a month", lambda: ledger.eyes_first(
        now, practice=True, entered=(), days=31, limit=None))  # fmt: skip
    oldest = ledger.lines(practice=True, limit=None)[-60]
    timed("the last page", lambda: ledger.lines(practice=True, older_than=oldest))
    timed("one worker's sessions", lambda: ledger.lines(practice=True, worker=last.workers[0]))
    timed("who walked what", lambda: ledger.walked_by(practice=True))
    chance = random.Random(1)
    took = [
        clocked(lambda one=one: (ledger.record(one), ledger.deviations(one)))[1]
        for one in chance.sample(sessions, k=min(300, len(sessions)))
    ]
    worst = max(took, key=lambda one: one.clock)
    print(
        f"any session, record and deviations: median {middle(took)}, worst of {len(took)} {worst}"
    )
    day = datetime.fromtimestamp(now).astimezone().date()
    timed("what was due in a month", lambda: ledger.kept(
        day.replace(day=1), day, now, practice=True))  # fmt: skip
    since = now - 31 * 86_400
    timed("the readings of a month", lambda: ledger.readings(practice=True, from_utc=since))
    timed("one machine's parts of ten years", lambda: ledger.parts(
        practice=True, machine=last.machine))  # fmt: skip
    timed("all sessions of ten years", lambda: ledger.lines(practice=True, limit=None))


def board(shop: Shop) -> None:
    """Look at the board."""
    timed("the open sessions of the journal", shop.journal.open_sessions)
    shop.faults()
    timed("the board, its plans fitted", shop.cards)
    timed("what is due on each machine, after a session", lambda: due_anew(shop))
    timed("what is due on each machine, a while later", shop.due)
    with closing(Journal(shop.folder)) as again:
        other = shop_of(shop.folder, shop.site, again)
        other._plans = shop._plans
        print(f"the board when the kiosk has just begun: {clocked(other.cards)[1]}")


def due_anew(shop: Shop) -> None:
    """Ask the journal what is due, as when a row was added to it."""
    if shop._today is not None:
        shop._today = 0, shop._today[1]
    shop.due()


@dataclass(frozen=True, slots=True)
class Took:
    """Seconds by the clock, and seconds that this process computed: less where others work too."""

    clock: float
    computed: float

    def __str__(self) -> str:
        return f"{1e3 * self.clock:.0f} ms (computing {1e3 * self.computed:.0f} ms)"


def clocked(do: Callable[[], Found]) -> tuple[Found, Took]:
    """Return what came of it and how long it took."""
    begun, computed = time.perf_counter(), time.process_time()
    found = do()
    return found, Took(time.perf_counter() - begun, time.process_time() - computed)


def timed(what: str, do: Callable[[], object]) -> None:
    """Print how long the first time took, and the median of all."""
    took = [clocked(do)[1] for _ in range(_TIMES)]
    print(f"{what}: first {took[0]}, median {middle(took)}", flush=True)


def middle(took: Sequence[Took]) -> Took:
    """Return the median of each."""
    return Took(
        statistics.median(one.clock for one in took),
        statistics.median(one.computed for one in took),
    )


if __name__ == "__main__":
    named = sys.argv[2:] + ["3650", "8"][len(sys.argv) - 2 :]
    main(Path(sys.argv[1]), int(named[0]), int(named[1]))
