"""Print how many states a proof visits, and how long it takes: `python -m tests.bench.bench_proof`.

With `--exact`, the shipped procedures are searched once more with conditions that no step requires
kept apart; it takes about a minute, and every verdict must stay.
"""

from __future__ import annotations

import sys
import time

from kiosk.procedure.fit import fit
from kiosk.procedure.load import load_library
from kiosk.procedure.plan import Plan
from kiosk.proof.prove import check_library, fittings, shape
from kiosk.proof.search import Proof, search
from kiosk.shipped import shipped
from tests.proof.plans import chain

_LENGTHS = (40, 80, 160, 320)


def _line(name: str, plan: Plan, *, exact: bool = False) -> None:
    begun = time.process_time()
    outcome = search(plan, exact=exact)
    seconds = time.process_time() - begun
    verdict = "proven" if isinstance(outcome, Proof) else f"BROKEN ({outcome.rule})"
    tried = f"{outcome.transitions:9}" if isinstance(outcome, Proof) else " " * 9
    print(f"{name:28} {len(plan.steps):5} {outcome.states:7} {tried} {seconds:8.2f}  {verdict}")


def main() -> None:
    """Print the figures."""
    print(f"{'plan':28} {'steps':>5} {'states':>7} {'moves':>9} {'CPU s':>8}")
    for length in _LENGTHS:
        _line(f"chain of {length}", chain(length))
    library = load_library(shipped("procedures"))
    for procedure in library.procedures.values():
        plans = {}
        for machine, site in fittings(library, procedure, None):
            plan = fit(library, procedure, machine, site, lambda amount, _: str(amount))
            plans.setdefault(shape(plan), plan)
        for plan in plans.values():
            _line(procedure.id, plan)
            if "--exact" in sys.argv:
                _line(f"{procedure.id}, exact", plan, exact=True)
    begun = time.process_time()
    report = check_library(library)
    print(f"whole library: {time.process_time() - begun:.2f} CPU s")
    for one in report.proven:
        proof = one.proof
        print(f"{one.procedure}: {one.steps} steps, {proof.states} states, {proof.seconds:.2f} s")


if __name__ == "__main__":
    main()
