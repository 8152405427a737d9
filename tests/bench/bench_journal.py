"""How long a confirmation takes to be on the disk, and how fast a journal is verified.

Run it with `python -m tests.bench.bench_journal [ROWS]`.
"""

from __future__ import annotations

import statistics
import sys
import tempfile
import time
from pathlib import Path

from kiosk.clock import LeapingClock, SystemClock
from kiosk.engine import commands as c
from kiosk.journal.store import Journal
from kiosk.rehearsal.worker import answer
from kiosk.session import Session
from tests.plans import EVERY_KIND

TOUCH = c.Evidence(c.Channel.TOUCH)


def main(rows: int) -> None:
    """Walk sessions until the journal has `rows` rows; print the figures."""
    with tempfile.TemporaryDirectory(dir=Path.cwd()) as folder:
        journal = Journal(Path(folder))
        clock = LeapingClock(SystemClock())
        took: list[float] = []
        written = 0
        while written < rows:
            session = Session.fresh(EVERY_KIND, journal, clock)
            act: c.Act | None = c.Start("ana", "en")
            while not session.over:
                if act is None:
                    clock.leap(session.seconds_left() or 0.0)
                else:
                    begun = time.perf_counter()
                    outcome = session.do(act, TOUCH)
                    took.append(1000 * (time.perf_counter() - begun))
                    written += len(outcome.events)
                act = None if session.over else answer(session)
        took.sort()
        print(
            f"command to durable row: median {statistics.median(took):.2f} ms, "
            f"p95 {took[int(0.95 * len(took))]:.2f} ms, worst {took[-1]:.1f} ms (n={len(took)})"
        )
        begun = time.perf_counter()
        verdict = journal.verify()
        seconds = time.perf_counter() - begun
        print(f"verify: {verdict.rows} rows in {seconds:.2f} s, whole: {verdict.whole}")
        journal.close()


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 3000)
