"""The hash chain: what each row's hash covers, and how a chain is verified.

The hash of a row is the SHA-256, in hexadecimal, of these fields as UTF-8 text, each followed by a
line feed: the hash of the row before (64 zeros for the first), seq, kiosk, session, kind, utc,
mono_us, boot, body. No field can hold a line feed: body is JSON, which escapes it.
"""

from __future__ import annotations

import hashlib
import json
from collections.abc import Iterable, Iterator
from dataclasses import dataclass
from enum import StrEnum
from operator import itemgetter
from typing import Any, Protocol

FIRST = "0" * 64
COVERED = ("seq", "kiosk", "session", "kind", "utc", "mono_us", "boot", "body")
MOVED, RETIRED = "KioskMoved", "KioskRetired"
"""Kinds of the two rows at which a chain passes from one kiosk to another."""


class Row(Protocol):
    """Whatever gives its columns by name."""

    def __getitem__(self, name: str, /) -> Any:
        """Return a column."""


_covered = itemgetter(*COVERED)


class Wrong(StrEnum):
    """What is wrong with the first bad row."""

    ALTERED = "altered"
    MISSING = "missing"
    REORDERED = "reordered"
    SPLICED = "spliced"
    """From another kiosk, with no move between."""
    RETIRED = "retired"
    """Written after its kiosk was retired."""
    TRUNCATED = "truncated"
    """Not there any more, though a checkpoint was signed for it."""
    REWRITTEN = "rewritten"
    """The chain is whole, but is not the one that a checkpoint was signed for."""
    UNREADABLE = "unreadable"


@dataclass(frozen=True, slots=True)
class Verdict:
    """What a verification found."""

    rows: int
    """Rows that were looked at; what came before the first one given does not count."""
    head: str
    """Hash of the last good row."""
    bad_seq: int | None = None
    what: str = ""
    wrong: Wrong | None = None

    @property
    def whole(self) -> bool:
        """True when no row is bad."""
        return self.bad_seq is None


def row_hash(before: str, row: Row) -> str:
    """Return the hash of a row, given the hash of the row before."""
    seq, kiosk, session, kind, utc, mono_us, boot, body = _covered(row)
    text = f"{before}\n{seq}\n{kiosk}\n{session}\n{kind}\n{utc}\n{mono_us}\n{boot}\n{body}\n"
    return hashlib.sha256(text.encode("utf-8", "surrogatepass")).hexdigest()


def verify(rows: Iterable[Row], before: str = FIRST, expected: int = 1, kiosk: str = "") -> Verdict:
    """Walk rows in the order of `seq` and stop at the first bad one.

    To begin in the middle of a chain, give the hash of the row before, the seq to expect, and the
    kiosk of the row before; an empty one lets any kiosk begin.
    """
    first, rest, retired = expected, iter(rows), False
    for row in rest:
        wrong: Wrong | None
        if row["seq"] != expected:
            wrong, what = _not_in_place(row, expected, before, rest)
        elif row["hash"] != row_hash(before, row):
            wrong, what = _not_as_written(row, before, kiosk, rest, first)
        elif row["prev"] != before:
            wrong, what = Wrong.ALTERED, "its field 'prev' was altered after it was written"
        elif row["kind"] == MOVED:
            wrong, what = _not_moved(row, before, kiosk)
        elif retired:
            wrong, what = Wrong.RETIRED, f"kiosk {kiosk} was retired with the row before"
        elif kiosk not in ("", row["kiosk"]):
            wrong, what = Wrong.SPLICED, _from_another(row, kiosk)
        else:
            wrong = None
        if wrong is not None:
            return Verdict(min(expected, row["seq"]) - first + 1, before, expected, what, wrong)
        before, kiosk, retired = row["hash"], row["kiosk"], row["kind"] == RETIRED
        expected += 1
    return Verdict(expected - first, before)


def _not_in_place(row: Row, expected: int, before: str, rest: Iterator[Row]) -> tuple[Wrong, str]:
    seq = row["seq"]
    if seq < expected:
        return Wrong.REORDERED, f"row {seq} stands again, after row {expected - 1}"
    for one in (row, *rest):
        if one["hash"] == row_hash(before, {**_fields(one), "seq": expected}):
            what = f"row {expected} is missing here: it stands as row {one['seq']}"
            return Wrong.REORDERED, what
    return Wrong.MISSING, f"row {expected} is missing: row {seq} stands in its place"


def _not_as_written(
    row: Row, before: str, kiosk: str, rest: Iterator[Row], first: int
) -> tuple[Wrong, str]:
    """Tell how a row came by a hash that is not that of its fields after the row before."""
    if row["hash"] == row_hash(row["prev"], row):
        if kiosk not in ("", row["kiosk"]):
            return Wrong.SPLICED, _from_another(row, kiosk)
        what = "it does not follow the row before it: one of the two was put in or altered"
        return Wrong.ALTERED, what
    last = row["seq"]
    for one in rest:
        last += 1
        if row["hash"] == row_hash(before, {**_fields(one), "seq": row["seq"]}):
            return Wrong.REORDERED, f"what belongs here stands in row {one['seq']}"
    fields = _fields(row)
    for seq in range(first, last + 1):
        if row["hash"] == row_hash(row["prev"], {**fields, "seq": seq}):
            return Wrong.REORDERED, f"row {seq} stands in its place"
    return Wrong.ALTERED, "its fields were altered after it was written"


def _not_moved(row: Row, before: str, kiosk: str) -> tuple[Wrong | None, str]:
    """Tell whether a move to this row's kiosk names another row than the one before it."""
    try:
        fact = json.loads(row["body"])["fact"]
        came = (fact["kiosk"], fact["seq"], fact["head"])
    except (ValueError, KeyError, TypeError, RecursionError):
        return Wrong.UNREADABLE, "it tells of a move, but not from which kiosk and row"
    if came != (kiosk or came[0], row["seq"] - 1, before) or came[0] == row["kiosk"]:
        return Wrong.SPLICED, "it tells of a move from another row than the one before it"
    return None, ""


def _from_another(row: Row, kiosk: str) -> str:
    return f"it was written by kiosk {row['kiosk']}, the row before by {kiosk}, and no move between"


def _fields(row: Row) -> dict[str, Any]:
    return dict(zip(COVERED, _covered(row), strict=True))
