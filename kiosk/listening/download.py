"""Fetches one file over HTTP, and goes on where it was cut off (RFC 9110, sections 13 and 14)."""

from __future__ import annotations

import errno
import http.client
import json
import re
import shutil
import urllib.error
import urllib.request
from collections.abc import Callable
from dataclasses import asdict, dataclass
from http import HTTPStatus
from pathlib import Path
from typing import Any, Final

CHUNK: Final = 1 << 18
TIMEOUT_S: Final = 30.0
KEEP_FREE: Final = 64 << 20
"""Bytes of disk that are left alone: the journal needs room."""
_IDLE_ATTEMPTS: Final = 3
"""So often is a server asked again that sends nothing new."""
_ATTEMPTS: Final = 50
_RANGE: Final = re.compile(r"bytes (\d+)-\d+/(\d+)")
Progress = Callable[[int, int], None]
"""Bytes there so far, bytes in all (0 when that is not known)."""


class NotFetched(Exception):
    """A file could not be fetched; the message says why and what to do."""


class DiskFull(Exception):
    """There is no room; the message says how much is needed."""


@dataclass(frozen=True, slots=True)
class Download:
    """Where a file comes from, and where it is kept while it grows."""

    url: str
    part: Path
    """The file that grows; what is known of it lies beside it with `.json` at the end."""
    expected: int = 0
    """Bytes in all, when known beforehand; a server that tells another number is refused."""
    room: int = 0
    """Bytes of disk wanted besides the file itself."""
    keep_free: int = KEEP_FREE
    progress: Progress = lambda _so_far, _all: None
    say: Callable[[str], None] = lambda _text: None

    def run(self) -> Path:
        """Fetch the file, or the rest of it; return `part`. Raises NotFetched, DiskFull, OSError.

        After NotFetched the part stays, and the next run goes on from there; after DiskFull it
        goes, so that it does not take the journal's room.
        """
        self.part.parent.mkdir(parents=True, exist_ok=True)
        idle = 0
        for _ in range(_ATTEMPTS):
            before = self._size()
            try:
                if self._attempt():
                    return self.part
                why = "the line was cut"
            except urllib.error.HTTPError as error:
                error.close()
                why = f"the server answers {error.code} {error.reason}"
                if error.code != HTTPStatus.REQUESTED_RANGE_NOT_SATISFIABLE:
                    raise NotFetched(f"{self.url}: {why}") from error
                self.forget()
            except (http.client.HTTPException, OSError) as error:
                if isinstance(error, OSError) and error.errno in (errno.ENOSPC, errno.EDQUOT):
                    self.forget()
                    raise DiskFull(f"the disk of {self.part.parent} is full") from error
                why = str(error) or type(error).__name__
            idle = 0 if self._size() > before else idle + 1
            if idle == _IDLE_ATTEMPTS:
                break
        raise NotFetched(
            f"{self.url} could not be fetched ({why}); {self._size():,} bytes of it are kept: "
            "run the command again to go on"
        )

    def forget(self) -> None:
        """Remove the part and what is known of it."""
        self.part.unlink(missing_ok=True)
        self._facts_file.unlink(missing_ok=True)

    @property
    def _facts_file(self) -> Path:
        return self.part.with_name(self.part.name + ".json")

    def _size(self) -> int:
        return self.part.stat().st_size if self.part.is_file() else 0

    def _attempt(self) -> bool:
        """Ask once. True when the file is whole, False when the line was cut."""
        facts = self._facts()
        have = self._size()
        if facts is None:
            have = 0
        if facts is not None and have and have == facts.total:
            self.progress(have, have)
            return True
        headers = {"Accept-Encoding": "identity", "User-Agent": "kiosk-voice-add"}
        if facts is not None and have and facts.validator:
            headers |= {"Range": f"bytes={have}-", "If-Range": facts.validator}
        asked = urllib.request.Request(self.url, headers=headers)  # noqa: S310 (checked by caller)
        with urllib.request.urlopen(asked, timeout=TIMEOUT_S) as answer:  # noqa: S310
            if self.url.startswith("https:") and not answer.url.startswith("https:"):
                raise NotFetched(f"{self.url} leads to {answer.url}, which is not encrypted")
            start, total = _span(answer)
            if start != (have if answer.status == 206 else 0):
                self.forget()
                raise NotFetched(f"{self.url}: the server sends another part than was asked for")
            if have and not start:
                self.say("The server sends the file from its beginning: it cannot go on, or the "
                         "file has changed.")  # fmt: skip
            if self.expected and total and total != self.expected:
                self.forget()
                raise NotFetched(
                    f"{self.url} is {total:,} bytes and should be {self.expected:,}: it is not the "
                    "file that is listed"
                )
            self._has_room(total - start)
            if not start:
                # Before its validator is written: bytes of an older file never go under a new one.
                self.part.unlink(missing_ok=True)
            self._note(_Facts(self.url, _validator(answer.headers), total))
            return self._take(answer, start, total)

    def _take(self, answer: Any, start: int, total: int) -> bool:
        # A file told to be of some length is never let grow beyond it.
        most = total or self.expected
        so_far = start
        with self.part.open("ab") as part:
            while chunk := answer.read(CHUNK):
                so_far += len(chunk)
                if most and so_far > most:
                    raise NotFetched(f"{self.url} is longer than the {most:,} bytes it should be")
                self._has_room(len(chunk) if not total else total - so_far + len(chunk))
                part.write(chunk)
                part.flush()
                self.progress(so_far, total)
        if total:
            return so_far == total
        if self.expected and so_far != self.expected:
            return False
        # Without a length, the end of the answer is the end of the file; the checksum judges it.
        self._note(_Facts(self.url, "", so_far))
        return True

    def _has_room(self, bytes_to_come: int) -> None:
        wanted = max(bytes_to_come, 0) + self.room + self.keep_free
        free = shutil.disk_usage(self.part.parent).free
        if free < wanted:
            self.forget()
            raise DiskFull(
                f"{self.part.parent} has {free / 1e6:,.1f} MB free and {wanted / 1e6:,.1f} MB are "
                "wanted; make room and run the command again"
            )

    def _note(self, facts: _Facts) -> None:
        self._facts_file.write_text(json.dumps(asdict(facts)), encoding="utf-8")

    def _facts(self) -> _Facts | None:
        """Return what is known of the part; None when it is another file's or cannot be told."""
        try:
            facts = _Facts(**json.loads(self._facts_file.read_text(encoding="utf-8")))
        except (OSError, ValueError, TypeError):
            return None
        return facts if facts.url == self.url else None


@dataclass(frozen=True, slots=True)
class _Facts:
    url: str
    validator: str
    """A strong ETag or a Last-Modified; empty when the server gave none."""
    total: int


def _validator(headers: Any) -> str:
    tag = str(headers.get("ETag", ""))
    return tag if tag and not tag.startswith("W/") else str(headers.get("Last-Modified", ""))


def _span(answer: Any) -> tuple[int, int]:
    """Return where the answer starts and how long the whole file is (0: not told)."""
    if answer.status == 206:
        found = _RANGE.fullmatch(str(answer.headers.get("Content-Range", "")))
        return (int(found[1]), int(found[2])) if found else (-1, 0)
    return 0, int(answer.length or 0)
