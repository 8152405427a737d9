"""Searches of several plans at once, one on each processor core."""

from __future__ import annotations

from collections.abc import Hashable, Iterable, Iterator
from concurrent.futures import Executor, ProcessPoolExecutor
from contextlib import contextmanager
from multiprocessing import get_context
from os import cpu_count

from kiosk.procedure.plan import Plan
from kiosk.proof.must_hold import must_hold
from kiosk.proof.prove import shape
from kiosk.proof.search import Counterexample, Proof, TooManyStates, search


@contextmanager
def cores() -> Iterator[Executor]:
    """Lend processes that search, as many as there are cores."""
    with ProcessPoolExecutor(cpu_count(), get_context("spawn")) as pool:
        yield pool


def proofs(plans: Iterable[Plan], pool: Executor) -> dict[Hashable, Proof]:
    """Return the proofs of plans by shape. A single one is left to the caller, as is what fails."""
    different = {shape(plan): plan for plan in plans}
    if len(different) < 2:
        return {}
    outcomes = pool.map(_proof, different.values())
    return {one: proof for one, proof in zip(different, outcomes, strict=True) if proof}


def _proof(plan: Plan) -> Proof | None:
    if must_hold(plan).faults:
        return None
    try:
        outcome = search(plan)
    except TooManyStates:
        return None
    return None if isinstance(outcome, Counterexample) else outcome
