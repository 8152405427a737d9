"""The hash chain: what each row's hash covers, and how a journal is verified.

The hash of a row is the SHA-256, in hexadecimal, of these fields as UTF-8 text, each followed by a
line feed: the hash of the row before (64 zeros for the first), seq, kiosk, session, kind, utc,
mono_us, boot, body. No field can hold a line feed: body is JSON, which escapes it.
"""

from __future__ import annotations

import hashlib
from collections.abc import Iterable, Mapping
from dataclasses import dataclass
from typing import Any

FIRST = "0" * 64
COVERED = ("seq", "kiosk", "session", "kind", "utc", "mono_us", "boot", "body")


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a verification found."""

    rows: int
    """Rows that were looked at."""
    head: str
    """Hash of the last good row."""
    bad_seq: int | None = None
    what: str = ""

    @property
    def whole(self) -> bool:
        """True when no row is bad."""
        return self.bad_seq is None


def row_hash(before: str, row: Mapping[str, Any]) -> str:
    """Return the hash of a row, given the hash of the row before."""
    text = "".join(f"{part}\n" for part in (before, *(row[name] for name in COVERED)))
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def verify(rows: Iterable[Mapping[str, Any]]) -> Verdict:
    """Walk rows in the order of `seq` and stop at the first bad one."""
    before, expected = FIRST, 1
    for row in rows:
        seq = row["seq"]
        if seq != expected:
            what = f"row {expected} is missing: row {seq} stands in its place"
            return Verdict(expected - 1, before, expected, what)
        if row["hash"] != row_hash(before, row):
            what = "its fields were altered after it was written, or the row before it was"
            if row["prev"] != before:
                what = "it does not follow the row before it: one of the two was put in or altered"
            return Verdict(expected, before, seq, what)
        before, expected = row["hash"], expected + 1
    return Verdict(expected - 1, before)
