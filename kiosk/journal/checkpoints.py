"""Signed checkpoints: where the journal stood, kept apart so that shortening it is noticed.

A checkpoint is a line of JSON. Its signature is over the lines of `message`.
"""

from __future__ import annotations

import json
import os
import threading
from collections.abc import Iterable
from dataclasses import asdict, dataclass
from pathlib import Path

from kiosk.clock import Clock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal import keys
from kiosk.journal.codec import stamp
from kiosk.journal.shop_facts import CheckpointDisagreed, ShopEvent, SigningKeyMade
from kiosk.journal.store import Journal, JournalFailed

_LAST_SEQ = (1 << 63) - 1
"""The largest that SQLite can look for."""
_WAIT_S = 5.0
"""How long a stick may keep the kiosk from closing."""


@dataclass(frozen=True, slots=True)
class Checkpoint:
    """The last row of a journal at one moment, signed."""

    kiosk: str
    seq: int
    hash: str
    utc: str
    key: str
    """The public key, in hexadecimal."""
    signature: str

    @property
    def message(self) -> bytes:
        """The text that is signed."""
        return _message(self.kiosk, self.seq, self.hash, self.utc)

    def genuine(self, trusted: Iterable[str]) -> bool:
        """Tell whether it was signed by one of the trusted keys."""
        return self.key in trusted and keys.signed_by(self.key, self.message, self.signature)


def _message(kiosk: str, seq: int, hash_: str, utc: str) -> bytes:
    return f"brushdown checkpoint 1\n{kiosk}\n{seq}\n{hash_}\n{utc}\n".encode()


def sign(key: keys.SigningKey, kiosk: str, seq: int, hash_: str, utc: str) -> Checkpoint:
    """Return a signed checkpoint."""
    signature = key.sign(_message(kiosk, seq, hash_, utc))
    return Checkpoint(kiosk, seq, hash_, utc, key.public, signature)


def name_of(kiosk: str) -> str:
    """Return the name of the file that holds a kiosk's checkpoints."""
    return f"checkpoints-{kiosk}.jsonl"


def files(folder: Path) -> tuple[Path, ...]:
    """Return the files of checkpoints in a folder."""
    return tuple(sorted(folder.glob(name_of("*"))))


def read(file: Path) -> tuple[tuple[Checkpoint, ...], tuple[int, ...]]:
    """Return the checkpoints of a file as they stand, and the numbers of lines that are none.

    No signature is checked here. A power cut may leave half a line. Raises OSError.
    """
    found: list[Checkpoint] = []
    none: list[int] = []
    for number, line in enumerate(file.read_bytes().splitlines(), 1):
        one = _parsed(line)
        if one is None:
            none.append(number)
        else:
            found.append(one)
    return tuple(found), tuple(none)


def _parsed(line: bytes) -> Checkpoint | None:
    try:
        one = Checkpoint(**json.loads(line))
    except (ValueError, TypeError, RecursionError):
        return None
    texts = (one.kiosk, one.hash, one.utc, one.key, one.signature)
    whole = type(one.seq) is int and 0 <= one.seq <= _LAST_SEQ
    return one if whole and all(map(_is_plain, texts)) else None


def _is_plain(text: object) -> bool:
    # What no kiosk writes is not printed either: an escape could move the cursor.
    return isinstance(text, str) and text.isprintable()


class Checkpoints:
    """Makes the checkpoints of one journal, in its folder and in a second place.

    Never in the way of the work: what goes wrong is kept in `trouble` and told by the journal, and
    the second place is written by a thread of its own, as a stick may be slow or gone.
    """

    def __init__(self, journal: Journal, clock: Clock, second: Path | None = None) -> None:
        self.trouble = ""
        """Why the last checkpoint could not be made or copied; empty when it could."""
        self._journal, self._clock, self._second = journal, clock, second
        self._file = journal.file.parent / name_of(journal.kiosk)
        self._last = -1
        self._disagrees = False
        self._copying: threading.Thread | None = None
        self._turn = threading.Lock()
        self._busy = self._due = False

    def begin(self) -> None:
        """Hold the journal against its last checkpoints; look whether the second place is there.

        When they disagree that is journaled.
        """
        self._compare()
        self._copy()

    def _compare(self) -> None:
        for folder in (self._file.parent, self._second):
            last = None if folder is None else _last(folder / self._file.name)
            if last is None or self._journal.hash_at(last.seq) == last.hash:
                continue
            try:
                if not last.genuine({self._key().public}):
                    continue
                self._tell(CheckpointDisagreed(last.seq, last.hash))
            except (OSError, JournalFailed, keys.NoKey) as error:
                self._note("record-unsigned", str(error))
            self._journal.trouble, self._disagrees = "record-disagrees", True
            return

    def make(self) -> None:
        """Sign where the journal stands now, unless that was done already."""
        try:
            key = self._key()
            seq, head = self._journal.mark()
            if seq and seq != self._last:
                utc = stamp(self._clock.now().utc)
                one = sign(key, self._journal.kiosk, seq, head, utc)
                _append(self._file, [_line(one)])
                self._last = seq
        except (OSError, JournalFailed, keys.NoKey) as error:
            self._note("record-unsigned", str(error))
            return
        self._copy()

    def close(self) -> None:
        """Make the last checkpoint and wait a little for the second place."""
        self.make()
        if self._copying is not None:
            self._copying.join(_WAIT_S)
            if self._copying.is_alive():
                self._note("record-second-place", f"{self._second}: no answer")

    def _key(self) -> keys.SigningKey:
        key, made = keys.signing_key(self._journal.file.parent)
        if made and not self._journal.retired:
            self._tell(SigningKeyMade(key.public))
        return key

    def _tell(self, fact: SigningKeyMade | CheckpointDisagreed) -> None:
        event = ShopEvent(self._clock.now(), Evidence(Channel.KIOSK), fact)
        self._journal.append_shop([event])

    def _note(self, message: str, why: str) -> None:
        """Keep what went wrong; a journal that disagrees is worse than any of it."""
        self.trouble = why
        if not self._disagrees:
            self._journal.trouble = message

    def _copy(self) -> None:
        self._note("", "")
        if self._second is None:
            return
        with self._turn:
            self._due = True
            if self._busy:
                # The copy on its way may have read the lines before this one came: it looks again.
                return
            self._busy = True
        self._copying = threading.Thread(target=self._copy_due, args=[self._second], daemon=True)
        self._copying.start()

    def _copy_due(self, second: Path) -> None:
        while self._is_due():
            self._copy_lines(second)

    def _is_due(self) -> bool:
        with self._turn:
            self._busy, self._due = self._due, False
            return self._busy

    def _copy_lines(self, second: Path) -> None:
        """Bring the second place what it lacks; what it has and we have not, stays there."""
        try:
            # A folder that is missing is a stick that is not in: never make it beside.
            if not second.is_dir():
                raise FileNotFoundError(f"{second} is not there: put the stick in")
            there = second / self._file.name
            known = set(there.read_bytes().splitlines()) if there.exists() else set()
            ours = self._file.read_bytes().splitlines() if self._file.exists() else []
            _append(there, [line for line in ours if line not in known])
        except OSError as error:
            self._note("record-second-place", str(error))


def _last(file: Path) -> Checkpoint | None:
    """Return the last checkpoint of a file, if there is one that can be read."""
    try:
        for line in reversed(file.read_bytes().splitlines()[-2:]):
            found = _parsed(line)
            if found is not None:
                return found
    except OSError:
        pass
    return None


def _line(one: Checkpoint) -> bytes:
    return json.dumps(asdict(one), separators=(",", ":")).encode("ascii")


def _append(file: Path, lines: list[bytes]) -> None:
    """Append lines, on the disk on return; a line that a power cut left half is closed first."""
    if not lines:
        return
    with file.open("ab+") as out:
        if out.tell():
            out.seek(-1, os.SEEK_END)
            if out.read(1) != b"\n":
                out.write(b"\n")
        out.write(b"".join(line + b"\n" for line in lines))
        out.flush()
        os.fsync(out.fileno())
