"""Journals tampered with, as a dishonest hand or a bad disk would, each tampering known."""

from __future__ import annotations

import random
import shutil
import sqlite3
from collections.abc import Callable
from contextlib import closing
from dataclasses import dataclass
from pathlib import Path
from typing import Any

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal import chain
from kiosk.journal.checkpoints import Checkpoint, Checkpoints, name_of, read
from kiosk.journal.guards import TRIGGERS
from kiosk.journal.store import FILE, Journal

COLUMNS = (*chain.COVERED, "prev", "hash")
TOUCH = Evidence(Channel.TOUCH)
Rows = list[dict[str, Any]]


@dataclass(frozen=True, slots=True)
class Evident:
    """A journal at rest with its checkpoints, made to be tampered with."""

    file: Path
    checkpoints_file: Path
    checkpoints: tuple[Checkpoint, ...]
    rows: tuple[dict[str, Any], ...]

    @property
    def folder(self) -> Path:
        return self.file.parent


def started(machine: str = "m1") -> e.SessionStarted:
    return e.SessionStarted(
        "close", 1, "d" * 64, machine, "ana", "en", "in service", "drying", True
    )


def write_sessions(journal: Journal, sessions: int, steps: int = 5) -> None:
    """Write invented sessions, each in one append."""
    clock = LeapingClock(SystemClock())
    for number in range(sessions):
        name = f"s{number}"
        facts = (started(), *(e.StepEntered(f"step-{n}", "goal") for n in range(steps)))
        events = []
        for fact in (*facts, e.SessionCompleted()):
            clock.leap(1.5)
            events.append(e.Event(clock.now(), TOUCH, fact))
        journal.append(name, events)


def evident(folder: Path, sessions: int = 6) -> Evident:
    """Make a journal of sessions with a checkpoint after each."""
    with closing(Journal(folder)) as journal:
        made = Checkpoints(journal, SystemClock())
        journal.after_end = made.make
        write_sessions(journal, sessions)
        made.close()
        assert not made.trouble
        rows = tuple(dict(row) for row in journal.rows())
        checkpoints_file = folder / name_of(journal.kiosk)
    with closing(sqlite3.connect(folder / FILE)) as db:
        db.execute("pragma journal_mode = delete")
    return Evident(folder / FILE, checkpoints_file, read(checkpoints_file)[0], rows)


def rechain(rows: Rows, first: int) -> None:
    """Write the hashes of rows anew from a place on, as one who knows how would."""
    before = rows[first - 1]["hash"] if first else chain.FIRST
    for row in rows[first:]:
        row["prev"] = before
        row["hash"] = before = chain.row_hash(before, row)


def _place(rows: Rows, chance: random.Random) -> int:
    return chance.randrange(1, len(rows) - 1)


def alter_a_field(rows: Rows, chance: random.Random, _: Rows) -> None:
    row, name = chance.choice(rows), chance.choice(COLUMNS[1:])
    if name == "mono_us":
        row[name] += chance.choice((-1, 1, 1_000_000))
        return
    at = chance.randrange(len(row[name]))
    other = chr((ord(row[name][at]) + chance.randrange(1, 90) - 32) % 95 + 32)
    row[name] = row[name][:at] + (other if other != row[name][at] else "~~") + row[name][at + 1 :]


def alter_and_rehash_one(rows: Rows, chance: random.Random, _: Rows) -> None:
    row = rows[_place(rows, chance)]
    row["body"] = row["body"].replace("touch", "voice")
    row["hash"] = chain.row_hash(row["prev"], row)


def rewrite_from(rows: Rows, chance: random.Random, _: Rows) -> None:
    first = _place(rows, chance)
    rows[first]["body"] = rows[first]["body"].replace("touch", "voice")
    rechain(rows, first)


def take_one_out(rows: Rows, chance: random.Random, _: Rows) -> None:
    del rows[_place(rows, chance)]


def take_one_out_and_close_the_gap(rows: Rows, chance: random.Random, _: Rows) -> None:
    first = _place(rows, chance)
    del rows[first]
    for row in rows[first:]:
        row["seq"] -= 1
    if chance.random() < 0.5:
        rechain(rows, first)


def cut_the_end_off(rows: Rows, chance: random.Random, _: Rows) -> None:
    del rows[_place(rows, chance) :]


def swap(rows: Rows, chance: random.Random, _: Rows) -> None:
    one, other = chance.sample(range(len(rows)), 2)
    for name in COLUMNS[1:]:
        rows[one][name], rows[other][name] = rows[other][name], rows[one][name]


def swap_but_leave_the_hashes(rows: Rows, chance: random.Random, _: Rows) -> None:
    one, other = chance.sample(range(len(rows)), 2)
    for name in chain.COVERED[1:]:
        rows[one][name], rows[other][name] = rows[other][name], rows[one][name]


def renumber(rows: Rows, chance: random.Random, _: Rows) -> None:
    row = rows.pop(_place(rows, chance))
    row["seq"] = rows[-1]["seq"] + chance.randrange(1, 50)
    rows.append(row)


def put_one_in(rows: Rows, chance: random.Random, _: Rows) -> None:
    first = _place(rows, chance)
    rows.insert(first, dict(rows[first]))
    for row in rows[first + 1 :]:
        row["seq"] += 1
    if chance.random() < 0.5:
        rechain(rows, first)


def splice(rows: Rows, chance: random.Random, foreign: Rows) -> None:
    first = _place(rows, chance)
    rows[first : first + chance.randrange(1, 4)] = []
    rows[first:first] = [dict(row) for row in foreign[first : len(foreign) - len(rows) + first]]
    if chance.random() < 0.5:
        rechain(rows, first)


def exchange_all(rows: Rows, _: random.Random, foreign: Rows) -> None:
    rows[:] = [dict(row) for row in foreign]


Tampering = Callable[[Rows, random.Random, Rows], None]
TAMPERINGS: tuple[Tampering, ...] = (
    alter_a_field, alter_and_rehash_one, rewrite_from, take_one_out,
    take_one_out_and_close_the_gap, cut_the_end_off, swap, swap_but_leave_the_hashes, renumber,
    put_one_in, splice, exchange_all,
)  # fmt: skip


def put_in_place(of: Evident, into: Path, rows: Rows) -> None:
    """Copy a journal with other rows; the guards are dropped, as one would who can write it."""
    shutil.copyfile(of.file, into)
    marks = ", ".join(f":{name}" for name in COLUMNS)
    with closing(sqlite3.connect(into)) as db, db:
        db.execute("pragma synchronous = off")
        for trigger in TRIGGERS:
            db.execute(f"drop trigger {trigger}")
        db.execute("delete from journal")
        db.executemany(f"insert into journal ({', '.join(COLUMNS)}) values ({marks})", rows)


def tampered(
    of: Evident, into: Path, how: Tampering, chance: random.Random, foreign: Evident
) -> int:
    """Copy a journal and tamper with the copy; return the first seq that is another one now."""
    rows = [dict(row) for row in of.rows]
    while rows == list(of.rows):
        how(rows, chance, [dict(row) for row in foreign.rows])
    put_in_place(of, into, rows)
    for number, row in enumerate(of.rows):
        if number >= len(rows) or rows[number] != row:
            return number + 1
    return len(of.rows) + 1


def flip_a_byte(of: Evident, into: Path, chance: random.Random) -> bool:
    """Copy a journal with one byte of its file changed; False when no row changed by that."""
    data = bytearray(of.file.read_bytes())
    data[chance.randrange(len(data))] ^= 1 << chance.randrange(8)
    into.write_bytes(data)
    try:
        with closing(sqlite3.connect(into)) as db:
            db.text_factory = bytes
            found = db.execute(f"select {', '.join(COLUMNS)} from journal order by seq").fetchall()
    except (sqlite3.Error, UnicodeDecodeError):
        return True
    was = [tuple(v.encode() if isinstance(v, str) else v for v in map(row.get, COLUMNS))
           for row in of.rows]  # fmt: skip
    return found != was
