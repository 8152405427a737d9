"""Which screens are paired: a code is read off the kiosk, and typed once into a browser."""

from __future__ import annotations

import hashlib
import hmac
import json
import secrets
from collections.abc import Callable
from pathlib import Path
from typing import Final

from kiosk.clock import Clock
from kiosk.home import write_private
from kiosk.people.lockout import closed, wait_s

FILE: Final = "screens.json"
DIGITS: Final = 6


class PairingFailed(Exception):
    """The file of paired screens cannot be read or written; the message says how to mend it."""


class Paired:
    """The paired screens of a data folder: an id, and the hash of what its browser keeps."""

    def __init__(self, folder: Path) -> None:
        """Take a folder; the file is made with the first screen."""
        self.file = folder / FILE

    def screen(self, token: str) -> str:
        """Return the id of the screen that keeps this token, or nothing. Raises PairingFailed."""
        asked, found = _hash(token), ""
        for screen, kept in self._read().items():
            if hmac.compare_digest(asked, kept):
                found = screen
        return found

    def add(self) -> str:
        """Pair one more screen; return the token that its browser keeps. Raises PairingFailed."""
        token, kept = secrets.token_urlsafe(32), self._read()
        # By chance, so that an id in the journal never means two screens.
        self._write({**kept, f"screen-{secrets.token_hex(4)}": _hash(token)})
        return token

    def forget(self) -> None:
        """Let no screen be paired any more. Raises PairingFailed."""
        self._write({})

    def _read(self) -> dict[str, str]:
        try:
            found = json.loads(self.file.read_text(encoding="utf-8"))
        except FileNotFoundError:
            return {}
        except (OSError, ValueError, RecursionError) as error:
            raise self._failed(str(error)) from error
        if not isinstance(found, dict) or not all(map(_is_hash, found.values())):
            raise self._failed("it is no list of screens")
        return found

    def _failed(self, why: str) -> PairingFailed:
        mend = "move it away and pair the screens anew"
        return PairingFailed(f"{self.file} cannot be used: {why}. To mend: {mend}.")

    def _write(self, kept: dict[str, str]) -> None:
        try:
            write_private(self.file, json.dumps(kept, indent=1))
        except OSError as error:
            raise PairingFailed(f"{self.file} cannot be written: {error}") from error


class Pairing:
    """The code that is shown now. Each one pairs one screen; wrong ones make everybody wait."""

    def __init__(self, paired: Paired, clock: Clock, on_code: Callable[[str], None]) -> None:
        """`on_code` is told each code from `renew` on, and nothing when no more can be tried."""
        self._paired, self._clock, self._on_code = paired, clock, on_code
        self._wrong, self._last_wrong = 0, 0.0
        self._code = ""

    def give(self, code: str) -> str:
        """Try a code; return the token of a newly paired screen, or nothing when it was wrong.

        Raises PairingFailed. Nothing is tried while there is a wait.
        """
        if self.wait() or not self._code:
            return ""
        digits = "".join(one for one in code if one in "0123456789")
        if hmac.compare_digest(digits, self._code):
            token = self._paired.add()
            self._wrong = 0
            self.renew()
            return token
        self._wrong += 1
        self._last_wrong = self._clock.now().mono
        if closed(self._wrong):
            self._code = ""
            self._on_code("")
        elif wait_s(self._wrong):
            self.renew()
        return ""

    def wait(self) -> float:
        """Return the seconds until a code may be tried again; 0 when it may be now."""
        passed = self._clock.now().mono - self._last_wrong
        return max(0.0, wait_s(self._wrong) - passed)

    def renew(self) -> None:
        """Show another code; the one before is worth nothing any more."""
        self._code = f"{secrets.randbelow(10**DIGITS):0{DIGITS}}"
        self._on_code(f"{self._code[:3]} {self._code[3:]}")


def _hash(token: str) -> str:
    # The token is random and long: no slow hash is needed to keep it from being guessed.
    return hashlib.sha256(token.encode("utf-8", "surrogatepass")).hexdigest()


def _is_hash(kept: object) -> bool:
    return isinstance(kept, str) and kept.isascii()
