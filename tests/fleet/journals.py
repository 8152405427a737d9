"""Small journals of invented kiosks, written by the real journal."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path
from typing import Any

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.fleet.connection import Line, connect
from kiosk.fleet.outgoing import COLUMNS, Outgoing, Row
from kiosk.fleet.ship import Shipped, ship
from kiosk.journal.store import FILE, Journal

BEGAN = 1_774_000_000.25
ABOUT: dict[str, Any] = {
    "site": "Sample stand (invented)", "time_zone": "Etc/UTC", "practice": True,
    "machines": [{"id": "m1", "name": "One", "kind": "twin-gravity"}], "dues": [],
}  # fmt: skip
VOICE = Evidence(Channel.VOICE, "power is off, ya está apagado \N{GRINNING FACE}", 0.913, "ear")
ROWS_OF_A_WALK = 5
COPY = f"copy pg_temp.arriving ({', '.join(COLUMNS)}) from stdin"


def walk(folder: Path, name: str, at: float = BEGAN) -> None:
    """Journal a short session; ROWS_OF_A_WALK rows."""
    facts: list[e.Fact] = [
        e.SessionStarted("close", 1, "d" * 64, "m1", "ana", "en", "in service", "drying", True),
        e.StepEntered("isolate", "isolate"),
        e.PhraseGiven("isolate"),
        e.StepConfirmed("isolate", "phrase", "", "", "", ("power isolated",), ()),
        e.SessionCompleted(),
    ]
    events = [
        e.Event(Instant(at + 10 * n, 100.0 + 10 * n, "boot"), VOICE, fact)
        for n, fact in enumerate(facts)
    ]
    with closing(Journal(folder)) as journal:
        journal.append(name, events)


def walks(folder: Path, count: int, prefix: str = "s") -> Path:
    """Journal some sessions in a folder and return it."""
    for n in range(count):
        walk(folder, f"{prefix}{n}", BEGAN + 1000 * n)
    return folder


def shipped(folder: Path, address: str, most: int = 5000, about: dict[str, Any] = ABOUT) -> Shipped:
    """Ship a folder's journal over a line of its own."""
    with closing(connect(address)) as line, closing(Outgoing(folder)) as journal:
        return ship(journal, line, about, most)


def rows(folder: Path) -> list[tuple[Any, ...]]:
    """Return all rows of a journal as they lie on the disk."""
    with closing(sqlite3.connect(folder / FILE)) as db:
        return db.execute(f"select {', '.join(COLUMNS)} from journal order by seq").fetchall()


def rows_there(line: Line, table: str = "journal") -> list[tuple[Any, ...]]:
    """Return all rows of all kiosks that a login may see at the head office."""
    return line.execute(
        f"select {', '.join(COLUMNS)} from fleet.{table} order by kiosk, seq"
    ).fetchall()


def send(line: Line, kiosk: str, batch: list[Row]) -> dict[str, Any]:
    """Send rows as a kiosk that checks nothing would; return what the head office answers."""
    line.execute("select * from fleet.hello(%s)", [kiosk])
    with line.transaction(), line.cursor() as cursor:
        with cursor.copy(COPY) as copy:
            for row in batch:
                copy.write_row([row[name] for name in COLUMNS])
        cursor.execute("select * from fleet.take(%s)", [kiosk])
        answer = cursor.fetchone()
        assert answer is not None
        assert cursor.description is not None
        return dict(zip([one.name for one in cursor.description], answer, strict=True))


def as_rows(folder: Path) -> list[Row]:
    return [dict(zip(COLUMNS, row, strict=True)) for row in rows(folder)]
