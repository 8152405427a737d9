"""How often the planted cause comes out first when an invented bad result is traced back.

The histories plant what the clues look for, so that this measures the order of the suspects among
other mishaps, not whether the weights hold in a real shop. Run it with
`python -m tests.bench.bench_trace [SEEDS]`.
"""

from __future__ import annotations

import statistics
import sys
import tempfile
import time
from collections import Counter
from pathlib import Path

from kiosk.rehearsal.planting import CAUSES
from tests.histories import DAYS, Case, case, plans


def main(seeds: int) -> None:
    """Invent and trace a history for each seed; print the figures."""
    plans()
    begun = time.perf_counter()
    with tempfile.TemporaryDirectory() as folder:
        cases = [case(Path(folder) / str(seed), seed) for seed in range(seeds)]
    seconds = time.perf_counter() - begun
    print(f"{seeds} histories of {DAYS} days invented and traced in {seconds:.0f} s")
    over = [one for one in cases if one.trace.over]
    print(f"the sample was over the limit in {len(over)}; of these:")
    cause = sum(one.cause_first for one in over)
    session = sum(one.session_first for one in over)
    print(f"the planted cause leads the first suspect: {cause}")
    print(f"the first suspect is the planted session, night or part: {session}")
    last = sum(latest(one) for one in over)
    chance = sum(1 / len(one.trace.suspects) for one in over)
    print(f"for comparison, blaming the last session: {last}; blaming any one: {chance:.1f}")
    looked_at = statistics.median(len(one.trace.suspects) for one in over)
    print(f"sessions and nights looked at in a trace, median: {looked_at:.0f}")
    of = Counter(one.plant.cause for one in over)
    led = Counter(one.plant.cause for one in over if one.cause_first)
    found = Counter(one.plant.cause for one in over if one.session_first)
    for name in CAUSES:
        print(f"  {name}: cause {led[name]}, session {found[name]} of {of[name]}")
    for seed, one in enumerate(cases):
        if not one.session_first:
            first = one.trace.suspects[0]
            said = "; ".join(f"{sign.clue} {sign.share:.2f}" for sign in first.signs)
            print(
                f"  seed {seed}, {one.plant.cause}: first came {first.session or 'a night'}: {said}"
            )


def latest(one: Case) -> bool:
    """True when the last thing before the sample is what was planted."""
    last = min(one.trace.suspects, key=lambda suspect: suspect.days_before)
    return last.session in one.planted.sessions


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 50)
