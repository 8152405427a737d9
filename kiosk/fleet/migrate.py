"""Brings the head office's tables up to date: numbered SQL files, each applied once and whole."""

from __future__ import annotations

import hashlib
from collections.abc import Sequence
from dataclasses import dataclass
from pathlib import Path

from psycopg import sql

from kiosk.fleet.connection import Line

FOLDER = Path(__file__).parent / "migrations"

_ONE_AT_A_TIME = 0x6B696F736B
"""Key of the advisory lock: two runs take turns."""


class Changed(Exception):
    """A file that was applied reads otherwise now; the message names it."""


@dataclass(frozen=True, slots=True)
class Migration:
    """One file, named as `0001_ground.sql`."""

    number: int
    name: str
    text: str

    @property
    def sha256(self) -> str:
        """What the file is known by once it was applied."""
        return hashlib.sha256(self.text.encode()).hexdigest()


def migrations(folder: Path = FOLDER) -> tuple[Migration, ...]:
    """Return the files of a folder, in order."""
    return tuple(
        Migration(int(file.stem.split("_")[0]), file.stem, file.read_text(encoding="utf-8"))
        for file in sorted(folder.glob("[0-9]*.sql"))
    )


def migrate(line: Line, files: Sequence[Migration] | None = None) -> tuple[str, ...]:
    """Apply what was not applied yet, in one transaction; return the names of those.

    The login must be allowed to make roles and schemas. Raises Changed, psycopg.Error; then nothing
    was applied.
    """
    wanted = migrations() if files is None else files
    with line.transaction():
        line.execute("select pg_advisory_xact_lock(%s)", [_ONE_AT_A_TIME])
        there = line.execute("select to_regclass('fleet.migration') is not null").fetchone()
        applied: dict[int, str] = {}
        if there is not None and there[0]:
            applied = dict(line.execute("select number, sha256 from fleet.migration").fetchall())
        done = []
        for one in wanted:
            if one.number not in applied:
                # Our own files, and no place in them is filled in.
                line.execute(sql.SQL(one.text))
                line.execute(
                    "insert into fleet.migration (number, name, sha256) values (%s, %s, %s)",
                    [one.number, one.name, one.sha256],
                )
                line.execute("reset role")
                done.append(one.name)
            elif applied[one.number] != one.sha256:
                raise Changed(
                    f"{one.name}.sql was applied here in another wording. Put the old wording back "
                    "and write what is new into a file with the next number."
                )
    return tuple(done)
