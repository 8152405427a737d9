"""The file of PINs: an argon2id hash for each person, and nothing else.

It lies outside the journal and can be read by the kiosk's own account only. Four digits are soon
found by who can copy the file and try all of them: the hash protects against a glance, the
lock-out against the keypad, and the file's rights against the rest.
"""

from __future__ import annotations

import json
from itertools import pairwise
from pathlib import Path
from typing import Final

from argon2 import PasswordHasher
from argon2.exceptions import VerificationError, VerifyMismatchError

from kiosk.engine.commands import Refusal
from kiosk.home import write_private
from kiosk.languages.notice import Told
from kiosk.languages.words import notice

FILE: Final = "pins.json"
LEAST, MOST = 4, 12
"""Digits of a PIN: ISO 9564-1 (READ in a quotation)."""


class PinsFailed(Told):
    """The file of PINs cannot be read or written; the message says why and how to mend it."""


def fault_of(digits: str) -> Refusal | None:
    """Return why digits cannot be a PIN; None when they can."""
    if not (digits.isascii() and digits.isdigit() and LEAST <= len(digits) <= MOST):
        return Refusal("pin-length", (("least", str(LEAST)), ("most", str(MOST))))
    steps = {int(after) - int(before) for before, after in pairwise(digits)}
    return Refusal("pin-easy") if steps in ({0}, {1}, {-1}) else None


class Pins:
    """The hashes of a data folder. Every call reads the file, so two programs may share it."""

    def __init__(self, folder: Path, hasher: PasswordHasher | None = None) -> None:
        """Take a folder; the file is made with the first PIN."""
        self.file = folder / FILE
        # The library's defaults are the second recommended set of RFC 9106: 64 MiB, 3 passes (MEM).
        self._hasher = hasher or PasswordHasher()

    def has(self, person: str) -> bool:
        """True when a person has a PIN. Raises PinsFailed."""
        return person in self._read()

    def right(self, person: str, digits: str) -> bool:
        """True when these are a person's digits. Raises PinsFailed."""
        kept = self._read().get(person)
        if kept is None:
            return False
        try:
            return self._hasher.verify(kept, digits)
        except VerifyMismatchError:
            return False
        except (ValueError, VerificationError) as error:
            raise self._failed(notice("pins-damaged", person=person)) from error

    def put(self, person: str, digits: str) -> None:
        """Keep a person's PIN in place of the one before. Raises PinsFailed."""
        self._write({**self._read(), person: self._hasher.hash(digits)})

    def remove(self, person: str) -> bool:
        """Forget a person's PIN; return whether there was one. Raises PinsFailed."""
        kept = self._read()
        if kept.pop(person, None) is None:
            return False
        self._write(kept)
        return True

    def _read(self) -> dict[str, str]:
        try:
            found = json.loads(self.file.read_text(encoding="utf-8"))
        except FileNotFoundError:
            return {}
        except (OSError, ValueError, RecursionError) as error:
            raise self._failed(str(error)) from error
        if not isinstance(found, dict) or not all(isinstance(one, str) for one in found.values()):
            raise self._failed(notice("pins-no-list"))
        return found

    def _failed(self, why: str) -> PinsFailed:
        return PinsFailed(notice("pins-unusable", file=str(self.file), why=why))

    def _write(self, kept: dict[str, str]) -> None:
        try:
            write_private(self.file, json.dumps(kept, indent=1, sort_keys=True))
        except OSError as error:
            why = notice("pins-not-written", file=str(self.file), reason=str(error))
            raise PinsFailed(why) from error
