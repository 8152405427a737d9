"""A file of laboratory results: read whole or not at all, and nothing entered twice."""

from __future__ import annotations

import csv
import io
from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from pathlib import Path

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.review.results import COLUMNS, OPTIONAL, Entered, Sample, read_row
from kiosk.trade.rounding import Amount


@dataclass(frozen=True, slots=True)
class Sorted:
    """Rows of a file, against what the journal has."""

    new: tuple[Sample, ...]
    again: tuple[Sample, ...]
    """Rows that are there already, or stand twice in the file; nothing is entered for them."""


def read_csv(path: Path, machines: Mapping[str, Sequence[str]], today: date) -> dict[int, Sample]:
    """Read a file of results: line number to result.

    UTF-8, commas or semicolons, the first line names the columns. Raises FaultyFile with every
    fault of every row; then nothing of the file is used.
    """
    name = str(path)
    try:
        text = path.read_text(encoding="utf-8-sig")
    except (OSError, UnicodeDecodeError) as error:
        mend = "save it as a CSV file in UTF-8"
        raise FaultyFile([Fault(name, 0, "", f"cannot be read ({error})", mend)]) from error
    first = text.partition("\n")[0]
    mark = ";" if ";" in first and "," not in first else ","
    rows = csv.DictReader(io.StringIO(text, newline=""), delimiter=mark, strict=True)
    found: dict[int, Sample] = {}
    faults: list[Fault] = []
    try:
        _check_columns(name, rows.fieldnames)
        for row in rows:
            line = rows.line_num
            if None in row:
                mend = "put a cell that has a comma in it in quotes"
                faults.append(Fault(name, line, "", "has more cells than columns", mend))
                continue
            read = read_row({key: value or "" for key, value in row.items()}, machines, today)
            if isinstance(read, Sample):
                found[line] = read
            else:
                faults += [Fault(name, line, *one) for one in read]
    except csv.Error as error:
        mend = "look at the quotes on this line, or save the table anew"
        faults.append(Fault(name, rows.line_num, "", f"is no CSV: {error}", mend))
    if not found and not faults:
        faults.append(Fault(name, 0, "", "has no results", "add a row for each result"))
    if faults:
        raise FaultyFile(faults)
    return found


def sort_out(name: str, rows: Mapping[int, Sample], entered: Iterable[Entered]) -> Sorted:
    """Tell new rows from those that are known already.

    Raises FaultyFile where a row says another amount for a result that is known.
    """
    known: dict[object, tuple[Amount, str]] = {
        (*one.of.key,): (one.of.amount, f"the journal has it as {one.of.amount} ({one.id})")
        for one in entered
    }
    new, again, faults = [], [], []
    for line, row in sorted(rows.items()):
        before = known.get(row.key)
        if before is None:
            known[row.key] = (row.amount, f"line {line} has it as {row.amount}")
            new.append(row)
        elif before[0] == row.amount:
            again.append(row)
        else:
            what = f"says {row.amount} where {before[1]}"
            mend = "give each sample its number in the column 'sample', or strike the wrong entry"
            faults.append(Fault(name, line, "amount", what, mend))
    if faults:
        raise FaultyFile(faults)
    return Sorted(tuple(new), tuple(again))


def _check_columns(name: str, columns: Sequence[str] | None) -> None:
    there = list(columns or ())
    mend = f"write the columns {', '.join(COLUMNS)}; you may add {', '.join(OPTIONAL)}"
    faults = [Fault(name, 1, one, "is missing", mend) for one in COLUMNS if one not in there]
    faults += [
        Fault(name, 1, one, "is no column of results", mend)
        for one in there
        if one not in (*COLUMNS, *OPTIONAL)
    ]
    faults += [
        Fault(name, 1, one, "stands twice", "keep one of the two columns")
        for one in sorted({one for one in there if there.count(one) > 1})
    ]
    if faults:
        raise FaultyFile(faults)
