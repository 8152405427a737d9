"""What is known of people beside the journal: their names, and the texts of remarks.

The journal holds ids, and of a remark a hash. The hash covers a salt that is kept with the text, so
that once both are gone nothing can be guessed from it, and the journal's chain stays whole.

What is erased is gone from this file. Copies that were made of it, and cells of a flash memory that
were written before, are out of its reach.
"""

from __future__ import annotations

import hashlib
import os
import secrets
import sqlite3
from collections.abc import Iterable, Iterator
from contextlib import contextmanager
from pathlib import Path
from typing import Final

import sqlite_utils

from kiosk.languages.notice import Told
from kiosk.languages.words import file_failed
from kiosk.procedure.site import Person

FILE: Final = "people.db"
_KEPT: Final = "kept:"


class BesideFailed(Told):
    """What lies beside the journal cannot be read or written; the message says why."""


class Beside:
    """One kiosk's names and remarks. Use from one thread, as the journal."""

    def __init__(self, folder: Path) -> None:
        """Open or make the file, for the kiosk's own account only. Raises BesideFailed."""
        self.file = folder / FILE
        try:
            folder.mkdir(parents=True, exist_ok=True)
            os.close(os.open(self.file, os.O_RDWR | os.O_CREAT, 0o600))
            self._db = sqlite_utils.Database(self.file)
            # Erased pages are overwritten, and no log of them is left beside the file.
            self._db.execute("pragma secure_delete = on").fetchall()
            self._db.execute("pragma journal_mode = delete").fetchall()
            self._db.table("name").create(
                {"person": str, "name": str, "seen_utc": float}, pk="person", if_not_exists=True,
                strict=True,
            )  # fmt: skip
            self._db.table("remark").create(
                {"hash": str, "salt": str, "text": str, "person": str, "utc": float}, pk="hash",
                if_not_exists=True, strict=True,
            )  # fmt: skip
        except (OSError, sqlite3.Error, UnicodeDecodeError) as error:
            raise BesideFailed(file_failed(self.file, error)) from error

    @contextmanager
    def _work(self) -> Iterator[None]:
        """Work in one transaction. Raises BesideFailed, and then nothing was changed."""
        try:
            with self._db.atomic():
                yield
        except (sqlite3.Error, UnicodeDecodeError) as error:
            raise BesideFailed(file_failed(self.file, error)) from error

    # Names.

    def meet(self, people: Iterable[Person], now_utc: float) -> None:
        """Take the names of those who are on the site's list now. Raises BesideFailed."""
        rows = [{"person": one.id, "name": one.name, "seen_utc": now_utc} for one in people]
        with self._work():
            self._db.table("name").upsert_all(rows, pk="person")

    def name(self, person: str) -> str:
        """Return the name of somebody who is, or once was, on the list; the id when it is gone."""
        with self._work():
            row = self._db.execute("select name from name where person = ?", [person]).fetchone()
        return person if row is None else str(row[0])

    # Remarks.

    def keep(self, text: str, person: str, now_utc: float) -> str:
        """Keep a remark that a person wrote; return what stands for it in the journal.

        No text stays no text. Raises BesideFailed, and then nothing may be journaled.
        """
        if not text.strip():
            return ""
        salt = secrets.token_hex(16)
        found = hashlib.sha256(f"{salt}\n{text}".encode("utf-8", "surrogatepass")).hexdigest()
        row = {"hash": found, "salt": salt, "text": text, "person": person, "utc": now_utc}
        with self._work():
            self._db.table("remark").insert(row)
        return f"{_KEPT}{found}"

    def text(self, remark: str) -> str | None:
        """Return the text that a remark of the journal stands for; None when it was erased.

        A text whose hash is not the journal's is none. A remark that is its own text comes back.
        """
        if not remark.startswith(_KEPT):
            return remark
        found = remark.removeprefix(_KEPT)
        sql = "select salt, text from remark where hash = ?"
        with self._work():
            row = self._db.execute(sql, [found]).fetchone()
        if row is None:
            return None
        salt, text = row
        covered = f"{salt}\n{text}".encode("utf-8", "surrogatepass")
        return str(text) if hashlib.sha256(covered).hexdigest() == found else None

    # Erasing. Each of these raises BesideFailed.

    def erase(self, person: str) -> None:
        """Forget a person's name and the remarks that they wrote."""
        with self._work():
            self._db.execute("delete from name where person = ?", [person])
            self._db.execute("delete from remark where person = ?", [person])

    def remarks_of(self, person: str) -> int:
        """Return how many remarks of a person are kept."""
        sql = "select count(*) from remark where person = ?"
        with self._work():
            return int(self._db.execute(sql, [person]).fetchone()[0])

    def names_before(self, utc: float) -> tuple[str, ...]:
        """Return the ids of those who were last on the list before a time."""
        sql = "select person from name where seen_utc < ? order by person"
        with self._work():
            return tuple(str(row[0]) for row in self._db.execute(sql, [utc]))

    def remarks_before(self, utc: float) -> int:
        """Return how many remarks are kept that were written before a time."""
        sql = "select count(*) from remark where utc < ?"
        with self._work():
            return int(self._db.execute(sql, [utc]).fetchone()[0])

    def erase_names(self, people: Iterable[str]) -> None:
        """Forget these names."""
        with self._work():
            for one in people:
                self._db.execute("delete from name where person = ?", [one])

    def erase_remarks_before(self, utc: float) -> None:
        """Forget the remarks that were written before a time."""
        with self._work():
            self._db.execute("delete from remark where utc < ?", [utc])

    def close(self) -> None:
        """Close the file."""
        self._db.close()
