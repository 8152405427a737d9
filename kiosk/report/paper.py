"""What a report says, block after block, without a word on how it is laid out.

`kiosk.report.as_html` and `kiosk.report.as_pdf` write the same blocks, so that the page and the
print cannot differ. All texts are in the reader's language.
"""

from __future__ import annotations

import re
from dataclasses import dataclass

from kiosk.plots.figure import Figure

_UNWRITABLE = re.compile("[^\t\n\r\u0020-\u007e\u00a0-\ud7ff\ue000-\ufffd\U00010000-\U0010ffff]")
"""What no printer and no browser can show."""

_MOST_RUNS = 6
"""Runs of rows that are named each by itself."""

Seqs = tuple[int, ...]
"""Rows of the journal that something is from, ascending; empty where none is."""


@dataclass(frozen=True, slots=True)
class Cell:
    """A text in a table or beside a label."""

    text: str
    seqs: Seqs = ()
    """The rows that the text is from, where they are not those of the table's whole row."""
    key: str = ""
    """Names a counted or computed figure, so that it can be found and counted again."""


@dataclass(frozen=True, slots=True)
class Row:
    """One row of a table."""

    cells: tuple[Cell, ...]
    seqs: Seqs = ()
    off: bool = False
    """True for something out of its limit or its time. The text says so too."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Table:
    """A table. Its last column, the journal rows, is written by itself."""

    id: str
    caption: str
    columns: tuple[str, ...]
    widths: tuple[int, ...]
    """Shares of the width, one for each column."""
    rows: tuple[Row, ...]
    empty: str
    """Stands instead of the table when it has no row."""


@dataclass(frozen=True, slots=True)
class Heading:
    """The title of a part. Level 2 is a chapter, 3 a part of it."""

    text: str
    level: int = 2
    new_page: bool = False


@dataclass(frozen=True, slots=True)
class Notice:
    """A sentence or two; `strong` for a caution."""

    text: str
    strong: bool = False


@dataclass(frozen=True, slots=True)
class Sheet:
    """Labels and what stands beside them."""

    pairs: tuple[tuple[str, Cell], ...]


@dataclass(frozen=True, slots=True)
class Picture:
    """A figure."""

    of: Figure


@dataclass(frozen=True, slots=True)
class Blanks:
    """Places to write on with a pen."""

    labels: tuple[str, ...]


Block = Heading | Notice | Sheet | Table | Picture | Blanks


@dataclass(frozen=True, slots=True, kw_only=True)
class Paper:
    """A whole report."""

    name: str
    """For file names, as `session-2026-10-01-patio-1a2b3c4d`."""
    language: str
    title: str
    under: str
    """The line under the title."""
    running: str
    """Stands at the foot of each page."""
    page_of: str
    """As `page {page} of {pages}`, in the reader's language."""
    rows_column: str
    """The name of the last column of each table, the journal rows."""
    blocks: tuple[Block, ...]


def shown(seqs: Seqs) -> str:
    """Return journal rows in few characters: `12–19, 23`; of many, the ends and how many."""
    runs: list[list[int]] = []
    for seq in seqs:
        if runs and seq == runs[-1][1] + 1:
            runs[-1][1] = seq
        else:
            runs.append([seq, seq])
    if len(runs) > _MOST_RUNS:
        return f"{seqs[0]} … {seqs[-1]} ({len(seqs)})"
    return ", ".join(str(a) if a == b else f"{a}–{b}" for a, b in runs)


def writable(text: str) -> str:
    """Return a text with control characters and lone surrogates written out: `\\u0007`."""
    return _UNWRITABLE.sub(lambda found: f"\\u{ord(found[0]):04x}", text)
