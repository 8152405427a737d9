"""Disks that fill up, turn read-only, are locked by another tool, or are taken away."""

from __future__ import annotations

import os
import random
import shutil
import sqlite3
import subprocess
import sys
from collections.abc import Iterator
from contextlib import closing, contextmanager, suppress
from pathlib import Path

from kiosk.journal.store import FILE, Journal
from tests.endtoend.test_kill import kill_one
from tests.faults.judging import ROOT, Withstood, Worker

_IMPATIENT_MS = 20
"""How long the database waits for a lock here; a kiosk waits five seconds."""


class NoSuchDisk(Exception):
    """This machine cannot make the disk that the fault needs; the message is the reason."""


@contextmanager
def disk(folder: Path, kilobytes: int = 0) -> Iterator[Path]:
    """Mount a small disk of its own on a folder: in memory, or without a size ext4 in a file.

    Raises NoSuchDisk.
    """
    folder.mkdir(parents=True)
    image = folder.with_name(f"{folder.name}.image")
    commands = [["mount", "-t", "tmpfs", "-o", f"size={kilobytes}k", "faults", str(folder)]]
    if not kilobytes:
        with image.open("wb") as made:
            made.truncate(16 << 20)
        maker = shutil.which("mkfs.ext4", path="/sbin:/usr/sbin") or "mkfs.ext4"
        commands = [[maker, "-q", str(image)], ["mount", "-o", "loop", str(image), str(folder)]]
    try:
        for command in commands:
            subprocess.run(command, check=True, capture_output=True)
    except (OSError, subprocess.CalledProcessError) as error:
        raise NoSuchDisk(f"a disk of one's own cannot be mounted here ({error})") from error
    try:
        yield folder
    finally:
        subprocess.run(["umount", str(folder)], check=True)
        image.unlink(missing_ok=True)


def killed(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """kill -9 at any moment, again and again on one journal."""
    found = Withstood()
    rows = 0
    for _ in range(tries):
        shown = kill_one(folder, chance.randrange(1, 40))
        with closing(Journal(folder)) as journal:
            last = journal.mark()[0]
            lines = [
                f"{session} {type(one.fact).__name__} {getattr(one.fact, 'step', '')}"
                for session in journal.gained(rows, last)
                for seq, one in journal.numbered(session)
                if seq > rows
            ]
        found.lost += sum(a != b for a, b in zip(shown, lines, strict=False))
        found.lost += max(0, len(shown) - len(lines))
        rows = last
    tries_before = found.tries
    found.judge(folder, {})
    found.tries = tries_before + tries
    with closing(Worker(folder)) as worker:
        found.saw(worker.walk.lines()[0])
    return found


def full(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """A disk that fills up in the middle of a walk, to any number of bytes, and is freed again."""
    found = Withstood()
    with disk(folder / "small", kilobytes=8192) as home, closing(Worker(home)) as worker:
        for _ in range(tries):
            worker.on(chance.randrange(1, 6))
            _fill(home / "ballast", spare=chance.randrange(0, 9) * 4096)
            for _ in range(12):
                before = worker.moved
                if notice := worker.on():
                    found.broken += worker.moved != before
                    found.saw(_without(home, notice))
                    break
            (home / "ballast").unlink()
            found.broken += bool(worker.on(2))
            found.judge(home, worker.shown)
    return found


def _fill(ballast: Path, spare: int) -> None:
    """Write until the disk is full, and give some bytes back."""
    with ballast.open("wb", buffering=0) as out:
        with suppress(OSError):
            while True:
                out.write(bytes(4096))
        out.truncate(max(0, out.tell() - spare))


def turned_read_only(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """A disk with a fault, which its system turns read-only in the middle of a walk."""
    found = Withstood()
    for number in range(tries):
        with disk(folder / f"ext4-{number}") as home:
            with closing(Worker(home)) as worker:
                worker.on(chance.randrange(1, 30))
                os.sync()
                subprocess.run(["mount", "-o", "remount,abort", str(home)], check=True)
                before = worker.moved
                notice = worker.on() or worker.on()
                assert notice
                found.broken += worker.moved != before
                found.saw(_without(home, notice))
            copy = folder / f"copy-{number}"
            shutil.copytree(home, copy, ignore=shutil.ignore_patterns("lost+found", "*-shm"))
        found.judge(copy, worker.shown)
    return found


def read_only_from_the_start(folder: Path) -> Withstood:
    """The kiosk's command, started where its disk cannot be written."""
    found = Withstood()
    with disk(folder / "ro", kilobytes=4096) as home:
        with closing(Worker(home / "demo")) as worker:
            worker.on(20)
        subprocess.run(["mount", "-o", "remount,ro", str(home)], check=True)
        found.saw(_without(home, said_by("demo", "--silent", "--deaf", home=home)))
        subprocess.run(["mount", "-o", "remount,rw", str(home)], check=True)
        found.judge(home / "demo", worker.shown)
    return found


def said_by(*command: str, home: Path) -> str:
    """Run the kiosk's command where it must fail, and return what it says then."""
    ran = subprocess.run(
        [sys.executable, "-m", "kiosk", *command],
        cwd=ROOT,
        env={**os.environ, "KIOSK_HOME": str(home)},
        capture_output=True,
        text=True,
        timeout=60,
        check=False,
    )
    assert ran.returncode == 1, ran
    return ran.stderr.strip()


def locked(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Another tool keeps the database locked while somebody presses, and lets go again."""
    found = Withstood()
    with closing(Worker(folder)) as worker:
        worker.journal._db.execute(f"pragma busy_timeout = {_IMPATIENT_MS}").fetchall()
        for _ in range(tries):
            worker.on(chance.randrange(1, 6))
            with closing(sqlite3.connect(folder / FILE, isolation_level=None)) as other:
                other.execute(chance.choice(("begin immediate", "begin exclusive")))
                before = worker.moved
                found.saw(_without(folder, worker.on()))
                found.broken += worker.moved != before
                other.execute("rollback")
            found.broken += bool(worker.on())
        found.judge(folder, worker.shown)
    found.tries = tries
    return found


def moved_away(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """The journal or its log is renamed while it is open, and put back."""
    found = Withstood()
    for number in range(tries):
        home = folder / f"moved-{number}"
        with closing(Worker(home)) as worker:
            worker.on(chance.randrange(1, 20))
            file = home / chance.choice((FILE, f"{FILE}-wal"))
            file.rename(home / "elsewhere")
            before = worker.moved
            found.saw(_without(home, worker.on()))
            found.broken += worker.moved != before
            (home / "elsewhere").rename(file)
            found.broken += bool(worker.on(3))
        found.judge(home, worker.shown)
    return found


def log_deleted(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """The log, which holds the newest rows, is deleted while it is open; the kiosk is closed."""
    found = Withstood()
    for number in range(tries):
        home = folder / f"deleted-{number}"
        with closing(Worker(home)) as worker:
            worker.on(chance.randrange(1, 20))
            (home / f"{FILE}-wal").unlink()
            found.saw(_without(home, worker.on()))
        found.judge(home, worker.shown)
    return found


def two_kiosks(folder: Path, tries: int, chance: random.Random) -> Withstood:
    """Two kiosks on one folder, the file of the lock having been deleted, in one session."""
    found = Withstood()
    first, second = Worker(folder), None
    for _ in range(tries):
        first.on(chance.randrange(1, 12))
        if first.session.over:
            first.on()
        second = Worker(folder, first.clock)
        for _ in range(8):
            found.saw(_without(folder, chance.choice((first, second)).on()))
        second.close()
        found.judge(folder, {**first.shown, **second.shown})
    first.close()
    return found


def second_start(folder: Path) -> Withstood:
    """The kiosk's command, started where another kiosk works."""
    from kiosk import home

    found = Withstood()
    lock = home.take(folder / "demo")
    try:
        with closing(Worker(folder / "demo")) as worker:
            worker.on(5)
            found.saw(_without(folder, said_by("demo", "--silent", "--deaf", home=folder)))
            found.broken += bool(worker.on(5))
            found.judge(folder / "demo", worker.shown)
    finally:
        lock.release()
    return found


def _without(folder: Path, said: str) -> str:
    """Return a sentence without the folder of this run."""
    return said.replace(str(folder), "…")
