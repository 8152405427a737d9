"""How fast a long journal is verified and backed up, and how many tamperings are caught.

Run it with `python -m tests.bench.bench_record [ROWS] [TAMPERINGS]`.
"""

from __future__ import annotations

import random
import sqlite3
import sys
import tempfile
import time
from contextlib import closing
from itertools import islice
from pathlib import Path

from kiosk.clock import SystemClock
from kiosk.journal import chain
from kiosk.journal.backup import back_up
from kiosk.journal.checkpoints import Checkpoint, Checkpoints, sign
from kiosk.journal.codec import stamp
from kiosk.journal.keys import signing_key
from kiosk.journal.store import Journal
from kiosk.journal.witness import judge
from tests.tampering import COLUMNS, TAMPERINGS, evident, tampered

SESSION = 116
"""Rows of a session of the shipped evening breakdown."""
BODY = (
    '{{"by":{{"channel":"voice","confidence":0.913,"ear":"whisper-tiny.en","heard":"next"}},'
    '"fact":{{"answer":"","ends":[],"establishes":[],"step":"step-{}","strength":"any"}}}}'
)


def long_journal(folder: Path, rows: int) -> tuple[Path, list[Checkpoint]]:
    """Write a chained journal past the kiosk, with a checkpoint for each session."""
    with closing(Journal(folder)) as journal:
        made = Checkpoints(journal, SystemClock())
        made.make()
        made.close()
        file, kiosk = journal.file, journal.kiosk
        seq, before = journal.mark()
    key, _ = signing_key(folder)
    checkpoints: list[Checkpoint] = []

    def fresh():
        nonlocal seq, before
        while seq < rows:
            seq += 1
            utc = stamp(1_700_000_000 + seq * 20)
            session = f"2026-01-01-m{seq // SESSION % 8}-{seq // SESSION:08x}"
            row = dict(zip(chain.COVERED, (seq, kiosk, session, "StepConfirmed", utc,
                                           seq * 20_000_000, "b" * 36, BODY.format(seq % 47)),
                           strict=True))  # fmt: skip
            row["prev"] = before
            row["hash"] = before = chain.row_hash(before, row)
            if seq % SESSION == 0:
                checkpoints.append(sign(key, kiosk, seq, before, utc))
            yield row

    rest = fresh()
    marks = ", ".join(f":{name}" for name in COLUMNS)
    with closing(sqlite3.connect(file)) as db:
        while batch := list(islice(rest, 50_000)):
            db.executemany(f"insert into journal ({', '.join(COLUMNS)}) values ({marks})", batch)
            db.commit()
    return file, checkpoints


def main(rows: int, tamperings: int) -> None:
    """Print the figures."""
    with tempfile.TemporaryDirectory(dir=Path.cwd()) as place:
        folder = Path(place)
        begun = time.perf_counter()
        file, checkpoints = long_journal(folder / "long", rows)
        print(
            f"written past the kiosk, guards on: {rows} rows, {time.perf_counter() - begun:.1f} s"
        )
        begun, busy = time.perf_counter(), time.process_time()
        found = judge(file, checkpoints)
        print(
            f"verify: {found.verdict.rows} rows against {len(checkpoints)} checkpoints in "
            f"{time.perf_counter() - begun:.1f} s ({time.process_time() - busy:.1f} s of "
            f"processor), sound: {found.sound}, {file.stat().st_size / rows:.0f} bytes a row"
        )
        begun = time.perf_counter()
        verdict = back_up(file, folder / "copy.db")
        print(f"backup and its check: {time.perf_counter() - begun:.1f} s, whole: {verdict.whole}")
        one, other = evident(folder / "one"), evident(folder / "other")
        caught = 0
        for number in range(tamperings):
            how, chance = TAMPERINGS[number % len(TAMPERINGS)], random.Random(number)
            tampered(one, folder / "tampered.db", how, chance, other)
            known = {one.checkpoints[0].key}
            caught += not judge(folder / "tampered.db", one.checkpoints, known).verdict.whole
        print(f"tamperings caught: {caught} of {tamperings}")


if __name__ == "__main__":
    main(*(int(one) for one in (*sys.argv[1:], *("1000000", "1000")[len(sys.argv) - 1 :])))
