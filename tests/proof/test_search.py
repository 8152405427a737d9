"""The search visits every state, and never passes off a search that was cut off as a proof."""

from __future__ import annotations

import pytest

from kiosk.engine.decide import decide
from kiosk.engine.state import Mode, State
from kiosk.proof.account import Account
from kiosk.proof.quotient import Quotient
from kiosk.proof.search import Proof, TooManyStates, _Search, search
from tests.plans import hold, plan, step
from tests.proof.plans import chain, every_kind


def proven(outcome: object) -> Proof:
    assert isinstance(outcome, Proof), outcome
    return outcome


def test_a_plan_with_every_kind_of_step_is_proven():
    proof = proven(search(every_kind()))
    assert proof.states > 500
    assert proof.transitions > 20 * proof.states
    assert proof.states < proof.taken < proof.transitions


def test_conditions_that_no_step_requires_change_no_verdict_and_hide_no_state():
    """The exact search, its nodes brought to the coarse key, visits what the coarse one visits."""
    made = every_kind()
    coarse = Quotient(made)
    exact_search = _Search(made, decide, 10**6, Quotient(made, exact=True))
    coarse_search = _Search(made, decide, 10**6, coarse)
    exact, short = proven(exact_search.outcome()), proven(coarse_search.outcome())
    assert exact.states > short.states
    projected = {coarse.key(node) for node in exact_search.graph.nodes}
    assert projected == set(coarse_search.graph.number)


def test_states_grow_no_faster_than_the_steps():
    short, long = proven(search(chain(40))), proven(search(chain(80)))
    assert long.states < 2.1 * short.states


def test_a_search_that_is_cut_off_proves_nothing():
    with pytest.raises(TooManyStates, match="more than 100 states; nothing is proven"):
        search(every_kind(), most_states=100)


def test_every_step_and_every_mode_is_visited():
    made = every_kind()
    made_search = _Search(made, decide, 10**6, Quotient(made))
    proven(made_search.outcome())
    states = [state for state, _ in made_search.graph.nodes]
    assert {state.mode for state in states} == set(Mode)
    assert {state.step for state in states if state.mode is Mode.RUNNING} == set(made.index)
    assert made_search.graph.nodes[0] == (State(), Account())


def test_many_holds_with_steps_back_among_them_stay_countable():
    """Eight holds in a row, each requiring the one before: lapses do not multiply them."""
    holds = [hold("h0", "c0")]
    holds += [hold(f"h{n}", f"c{n}", requires=[f"c{n - 1}"]) for n in range(1, 8)]
    last = step("reach in", requires=[f"c{n}" for n in range(8)])
    assert proven(search(plan(*holds, last))).states < 2500
