"""Print what becomes of spoiled procedures: `python -m tests.bench.bench_mutants [EVERY]`.

Each shipped procedure is spoiled in one place at a time. The search is run on every EVERYth mutant
that no rule is against, 20 unless told; 1 takes some minutes.
"""

from __future__ import annotations

import sys
import time
from collections import Counter

from kiosk.proof.search import Proof, search
from tests.proof.test_procedure_mutants import KINDS, PROCEDURES, Judged, judged


def _line(procedure: str, kind: str, of: list[Judged]) -> None:
    unsafe = [one for one in of if one.unsafe]
    by = Counter(one.caught[0] for one in of if one.caught)
    names = ", ".join(f"{name} {number}" for name, number in by.most_common()) or "none"
    straight = sum(bool(one.straight) for one in of)
    missed = sum(not one.caught for one in unsafe)
    silent = sum(not one.caught for one in of)
    print(
        f"{procedure:20} {kind:20} {len(of):5} {straight:9} {len(unsafe) - straight:8} "
        f"{sum(by.values()):7} {silent:7} {missed:7}  {names}"
    )


def main() -> None:
    """Print the table, the survivors with their reasons, and what the search says of a sample."""
    every = int(sys.argv[1]) if len(sys.argv) > 1 else 20
    begun = time.process_time()
    everything = [one for name in PROCEDURES for one in judged(name)]
    spent = time.process_time() - begun
    print(
        f"{'procedure':20} {'spoiled':20} {'made':>5} {'straight':>9} {'absence':>8} "
        f"{'caught':>7} {'silent':>7} {'missed':>7}  caught by"
    )
    for name in PROCEDURES:
        for kind in KINDS:
            _line(name, kind, [one for one in judged(name) if one.mutant.kind == kind])
    for kind in KINDS:
        _line("all", kind, [one for one in everything if one.mutant.kind == kind])
    print(f"{len(everything)} mutants, {spent:.1f} CPU s")
    silent = [one for one in everything if not one.caught]
    print(f"\n{len(silent)} mutants that no rule is against:")
    for one in sorted(silent, key=lambda one: one.reason):
        print(f"{one.reason}: {one.mutant}" + (f": {one.absent}" if one.absent else ""))
    print()
    for reason, number in sorted(Counter(one.reason for one in silent).items()):
        print(f"{number:5}  {reason}")
    sample = silent[::every]
    begun = time.process_time()
    proven = sum(isinstance(search(one.mutant.plan), Proof) for one in sample)
    spent = time.process_time() - begun
    print(f"search: {proven} of {len(sample)} sampled proven, {spent:.1f} CPU s")


if __name__ == "__main__":
    main()
