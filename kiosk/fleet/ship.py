"""Ships a journal: sends what the head office has not, and believes only what it says it has."""

from __future__ import annotations

from collections.abc import Callable, Mapping, Sequence
from dataclasses import dataclass, field
from typing import Any

from psycopg.rows import dict_row
from psycopg.types.json import Jsonb

from kiosk.fleet.connection import Line
from kiosk.fleet.outgoing import COLUMNS, Mark, Outgoing, Row
from kiosk.journal import chain

BATCH = 5000
"""Rows sent in one transaction."""

Told = Callable[[int, int], None]
"""Called after each batch with the last seq that is safe, and the last one of the journal."""

_COPY = f"copy pg_temp.arriving ({', '.join(COLUMNS)}) from stdin"


class Refused(Exception):
    """Rows were not taken; the message says which and why. All before them are safe."""


@dataclass(slots=True)
class Shipped:
    """What came of a shipment."""

    kiosk: str
    seq: int = 0
    """Last row of this journal that is at the head office, in its journal or in a branch."""
    taken: int = 0
    """Rows that are there now and were not before."""
    known: int = 0
    """Rows that were there already."""
    aside: int = 0
    """Rows that part from what came from this kiosk before; kept apart, for people to look at."""
    troubles: list[str] = field(default_factory=list)
    """What people have to look at, in words."""


def ship(
    journal: Outgoing,
    line: Line,
    about: Mapping[str, Any],
    most: int = BATCH,
    told: Told | None = None,
) -> Shipped:
    """Send all rows that the head office has not, in order, a batch in a transaction.

    No mark is kept here: where to begin is asked each time, so that a mark cannot be wrong. A line
    that breaks, on either side of a commit, costs at most one batch sent twice, and rows that are
    there are left alone. Raises Refused, psycopg.Error.
    """
    done = Shipped(journal.kiosk())
    head, said_at = _hello(line, done.kiosk)
    # Read after the head office has spoken: what came from here cannot lie behind what is here.
    last = journal.last()
    line.execute("select fleet.tell(%s, %s)", [done.kiosk, Jsonb(dict(about))])
    _look_behind(line, done, head, last)
    if last is not None:
        done.seq = _common(journal, line, head, last)
        _send(journal, line, done, most, told, last.seq)
    line.execute("select fleet.whole(%s, %s)", [done.kiosk, said_at])
    return done


def _hello(line: Line, kiosk: str) -> tuple[Mark, Any]:
    row = line.execute("select * from fleet.hello(%s)", [kiosk]).fetchone()
    if row is None:
        raise Refused("the head office said nothing")
    return Mark(kiosk, row[0], row[1]), row[2]


def _look_behind(line: Line, done: Shipped, head: Mark, last: Mark | None) -> None:
    """Say so when rows have come from this kiosk that are not in its journal."""
    here = 0 if last is None else last.seq
    if here < head.seq:
        line.execute(
            "select fleet.behind(%s, %s, %s)",
            [done.kiosk, here, chain.FIRST if last is None else last.hash],
        )
        done.troubles.append(
            f"This journal ends at row {here}, but rows up to {head.seq} have come from kiosk "
            f"{done.kiosk} before. An old backup was put back, or the journal was cut short."
        )


def _common(journal: Outgoing, line: Line, head: Mark, last: Mark) -> int:
    """Return the seq of the last row here that the head office knows; 0 for none.

    A hash covers all before it: when a row is known, so is each one before it. That makes the
    place findable by halving, whatever has become of either journal.
    """
    if head.seq and journal.mark(head.seq) == head:
        return head.seq
    first = journal.mark(1)
    if not head.seq and first is not None and first.kiosk == head.kiosk:
        return 0
    low, high = 0, last.seq
    while low < high:
        middle = (low + high + 1) // 2
        mark = journal.mark(middle)
        if mark is not None and _knows(line, mark):
            low = middle
        else:
            high = middle - 1
    return low


def _knows(line: Line, mark: Mark) -> bool:
    row = line.execute(
        "select fleet.knows(%s, %s, %s)", [mark.kiosk, mark.seq, mark.hash]
    ).fetchone()
    return row is not None and bool(row[0])


def _send(
    journal: Outgoing, line: Line, done: Shipped, most: int, told: Told | None, last: int
) -> None:
    at = journal.mark(done.seq) or Mark("", 0, chain.FIRST)
    spoken_for = {done.kiosk}
    for batch in journal.batches(done.seq, most):
        kiosk = batch[0]["kiosk"]
        if kiosk not in spoken_for:
            _hello(line, kiosk)
            spoken_for.add(kiosk)
        verdict = chain.verify(batch, at.hash, at.seq + 1, at.kiosk)
        good = batch if verdict.bad_seq is None else batch[: verdict.bad_seq - at.seq - 1]
        if good:
            _take(line, kiosk, good, done)
            at = Mark(kiosk, good[-1]["seq"], good[-1]["hash"])
            done.seq = at.seq
        if not verdict.whole:
            raise Refused(
                f"Row {verdict.bad_seq} of the journal here: {verdict.what}. The rows before it "
                "are at the head office; it and what follows are not sent. See 'kiosk log verify'."
            )
        if told is not None:
            told(done.seq, max(last, done.seq))


def _take(line: Line, kiosk: str, rows: Sequence[Row], done: Shipped) -> None:
    """Send one batch in one transaction; what the head office answers is what counts."""
    with line.transaction(), line.cursor(row_factory=dict_row) as cursor:
        with cursor.copy(_COPY) as copy:
            for row in rows:
                copy.write_row([row[name] for name in COLUMNS])
        answer = cursor.execute("select * from fleet.take(%s)", [kiosk]).fetchone()
    if answer is None or answer["trouble"]:
        why = "the head office said nothing" if answer is None else answer["trouble"]
        raise Refused(f"The head office did not take all rows of kiosk {kiosk}: {why}.")
    done.taken += answer["taken"]
    done.known += answer["known"]
    if answer["aside"] and not done.aside:
        done.troubles.append(
            f"From row {rows[0]['seq'] + answer['known']} on this journal and what came from kiosk "
            f"{kiosk} before are two: both are kept, these rows apart. Tell the head office."
        )
    done.aside += answer["aside"]
