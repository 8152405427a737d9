"""Power cuts: what a disk may hold when the current fails in the middle of a write.

A disk keeps what was synced. What was written since may be there whole, in part, torn at any byte,
or not at all. Either the file of the journal's log is cut at chosen bytes, or the calls that the
database really made are recorded by `strace` and a disk is put together from them.
"""

from __future__ import annotations

import random
import re
import shutil
import subprocess
import sys
from collections import defaultdict
from contextlib import closing
from dataclasses import dataclass, field
from pathlib import Path

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine.events import Event
from kiosk.journal.store import FILE, Journal
from tests.faults.judging import ROOT, Shown, Withstood, Worker

LOG = f"{FILE}-wal"
_LATER_S = 1e6
"""The walker leaps over its waits; the clock must not fall behind it."""
FRAME, HEADER = 4096 + 24, 32
"""Bytes of a frame of the log and of the log's header, by SQLite's file format (MEM)."""


@dataclass(frozen=True, slots=True)
class Disk:
    """The journal's two files at one moment."""

    db: bytes
    log: bytes

    @classmethod
    def of(cls, folder: Path) -> Disk:
        """Read them."""
        return cls((folder / FILE).read_bytes(), (folder / LOG).read_bytes())

    def put(self, folder: Path) -> None:
        """Write them into a folder, as the only ones there."""
        shutil.rmtree(folder, ignore_errors=True)
        folder.mkdir()
        (folder / FILE).write_bytes(self.db)
        (folder / LOG).write_bytes(self.log)


def copied(shown: Shown) -> Shown:
    """Return what was shown so far."""
    return {session: list(events) for session, events in shown.items()}


def come_back(found: Withstood, folder: Path, shown: Shown, last: list[Event]) -> None:
    """Switch the kiosk on again: all that was shown is there, and of the last act all or nothing.

    Then the work goes on.
    """
    with closing(Journal(folder)) as journal:
        there = [one for session in journal.sessions() for one in journal.events(session)]
        found.broken += not re.fullmatch("[0-9a-f]{16}", journal.kiosk)
    of_last = sum(one in there for one in last)
    found.broken += of_last not in (0, len(last))
    later = LeapingClock(SystemClock())
    later.leap(_LATER_S)
    with closing(Worker(folder, later)) as worker:
        found.saw(worker.walk.lines()[0], worker.on(2))
        again = worker.shown
    found.judge(folder, {**again, **shown})


def cut_in_the_log(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Cut the log at any byte of one act's write; in every other try the log begins anew."""
    found = Withstood()
    for number in range(-(-tries // 40)):
        home = folder / f"walk-{number}"
        with closing(Worker(home)) as worker:
            worker.on(chance.randrange(1, 30))
            if number % 2:
                worker.journal._db.execute("pragma wal_checkpoint(restart)").fetchall()
            shown, before = copied(worker.shown), Disk.of(home)
            worker.on()
            after = Disk.of(home)
            last = [one for events in worker.shown.values() for one in events]
            last = last[sum(map(len, shown.values())) :]
        for cut in cuts(before.log, after.log, min(40, tries - found.tries), chance):
            Disk(before.db, after.log[:cut] + before.log[cut:]).put(folder / "cut")
            come_back(found, folder / "cut", shown, last)
    return found


def cuts(before: bytes, after: bytes, most: int, chance: random.Random) -> list[int]:
    """Return bytes at which to cut a write: around each frame's edges, and anywhere else."""
    first = next((n for n, (a, b) in enumerate(zip(before, after, strict=False)) if a != b), None)
    first = min(len(before), len(after)) if first is None else first
    edges = [edge + by for edge in range(HEADER, len(after) + 1, FRAME) for by in (-1, 0, 1, 24)]
    edges = [one for one in edges if first <= one <= len(after)]
    chosen = chance.sample(edges, min(len(edges), most // 2))
    return [*chosen, *(chance.randint(first, len(after)) for _ in range(most - len(chosen)))]


def cut_while_tidying(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Cut while the log is brought into the database: each page old, new, or torn between."""
    found, home = Withstood(), folder / "walk"
    with closing(Worker(home)) as worker:
        worker.on(90)
        before = Disk.of(home)
        worker.journal._db.execute("pragma wal_checkpoint(full)").fetchall()
        after, shown = Disk.of(home), copied(worker.shown)
    assert before.db != after.db
    for _ in range(tries):
        mixed = bytearray(before.db.ljust(len(after.db), b"\0"))
        for at in range(0, len(mixed), 4096):
            upto = chance.choice((0, 4096, chance.randrange(4096)))
            mixed[at : at + upto] = after.db[at : at + upto]
        size = chance.choice((len(before.db), len(mixed), chance.randrange(1, len(mixed))))
        Disk(bytes(mixed[: max(size, len(before.db))]), before.log).put(folder / "cut")
        come_back(found, folder / "cut", shown, [])
    return found


# The calls that were really made.

_WALK = """
import sys
from pathlib import Path
from tests.faults.judging import Worker
worker = Worker(Path(sys.argv[1]))
worker.journal._db.execute(f"pragma synchronous = {sys.argv[3]}")
for _ in range(int(sys.argv[2])):
    worker.on()
    count = sum(map(len, worker.shown.values()))
    sys.stdout.write(f"shown {count}\\n")
    sys.stdout.flush()
"""
_CALL = re.compile(
    r'(?:\d+ +)?(\w+)\((?:AT_FDCWD\S*, )?(?:(\d+)<(.*?)>|"(.*?)")?(?:, )?(.*?)\) += (\S+)'
)
_TEXT = re.compile(r'"((?:\\x[0-9a-f]{2})*)"(?:, (\d+)(?:, (\d+))?)?')


@dataclass(slots=True)
class Recorded:
    """One call: a write, a cut of a file's length, a removal, a sync, or something shown."""

    call: str
    name: str = ""
    data: bytes = b""
    at: int = 0


def recorded(
    folder: Path, answers: int, synchronous: str
) -> tuple[list[Recorded], list[tuple[str, Event]]]:
    """Walk in another process; return its calls on the journal's files, and events by session."""
    home, traced = folder / "traced", folder / "calls.txt"
    calls = "pwrite64,write,ftruncate,unlink,fsync,fdatasync"
    command = ["strace", "-y", "-xx", "-s", "1000000", "-e", f"trace={calls}", "-o", str(traced)]
    command += [sys.executable, "-c", _WALK, str(home), str(answers), synchronous]
    subprocess.run(command, cwd=ROOT, check=True, capture_output=True)
    with closing(Journal(home)) as journal:
        events = [(name, one) for name in journal.sessions() for one in journal.events(name)]
    with traced.open(encoding="ascii") as lines:
        found = [one for line in lines if (one := _read(line)) is not None]
    return found, events


def _read(line: str) -> Recorded | None:
    said = _CALL.match(line)
    if said is None:
        return None
    call, descriptor, file, path, rest, _ = said.groups()
    name = _plain(file or path or "").rsplit("/", 1)[-1]
    text = _TEXT.match(rest)
    if call == "write" and descriptor == "1" and text:
        return Recorded("shown", data=_bytes(text[1]))
    if not name.startswith(FILE) or name.endswith("-shm"):
        return None
    match call:
        case "pwrite64" if text:
            return Recorded("write", name, _bytes(text[1]), int(text[3]))
        case "ftruncate":
            return Recorded("cut", name, at=int(rest))
        case "unlink":
            return Recorded("removed", name)
        case "fsync" | "fdatasync":
            return Recorded("synced", name)
    return None


def _bytes(text: str) -> bytes:
    return bytes.fromhex(text.replace("\\x", ""))


def _plain(text: str) -> str:
    return _bytes(text).decode() if text.startswith("\\x") else text


@dataclass(slots=True)
class Platter:
    """A disk made from recorded calls: what is surely there, and what is still on its way."""

    sure: dict[str, bytearray] = field(default_factory=dict)
    under_way: dict[str, list[Recorded]] = field(default_factory=lambda: defaultdict(list))

    def take(self, one: Recorded) -> None:
        """Take one call."""
        if one.call == "removed":
            self.sure.pop(one.name, None)
            self.under_way.pop(one.name, None)
        elif one.call == "synced":
            for waiting in self.under_way.pop(one.name, []):
                _apply(self.sure, waiting)
        else:
            self.under_way[one.name].append(one)

    def after_a_cut(self, chance: random.Random) -> dict[str, bytearray]:
        """Return what lies there when the power fails now."""
        files = {name: bytearray(data) for name, data in self.sure.items()}
        for name, calls in self.under_way.items():
            files.setdefault(name, bytearray())
            for one in calls:
                if chance.random() < 0.5:
                    upto = chance.choice((len(one.data), chance.randint(0, len(one.data))))
                    _apply(files, Recorded(one.call, name, one.data[:upto], one.at))
        return files


def _apply(files: dict[str, bytearray], one: Recorded) -> None:
    data = files.setdefault(one.name, bytearray())
    if one.call == "cut":
        del data[one.at :]
        data.extend(bytes(one.at - len(data)))
        return
    data.extend(bytes(max(0, one.at - len(data))))
    data[one.at : one.at + len(one.data)] = one.data


def cut_between_recorded_calls(
    folder: Path, tries: int, chance: random.Random, synchronous: str = "full"
) -> Withstood:
    """Cut the power after any of the recorded calls, from the first opening of the journal on."""
    found = Withstood()
    calls, events = recorded(folder, 40, synchronous)
    for moment in sorted(chance.randrange(len(calls) + 1) for _ in range(tries)):
        platter, shown = Platter(), 0
        for one in calls[:moment]:
            if one.call == "shown":
                shown = int(one.data.split()[1])
            else:
                platter.take(one)
        home = folder / "cut"
        shutil.rmtree(home, ignore_errors=True)
        home.mkdir()
        for name, data in platter.after_a_cut(chance).items():
            (home / name).write_bytes(data)
        promised: Shown = {}
        for session, event in events[:shown]:
            promised.setdefault(session, []).append(event)
        come_back(found, home, promised, [])
    return found
