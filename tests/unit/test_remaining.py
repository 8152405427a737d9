"""What is left of a walk, from earlier walks."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.review.remaining import LEAST_WALKS, remaining
from tests.screens.scene import StillClock, shop

STARTED = e.SessionStarted(
    "short", 1, "digest", "m1", "in service", "in service", "ana", "en", practice=True
)
TOUCH = Evidence(Channel.TOUCH)


def walk(*facts: tuple[float, e.Fact], begun: float = 1_774_000_000.0) -> list[e.Event]:
    return [e.Event(Instant(begun + at, at, "boot"), TOUCH, fact) for at, fact in facts]


def whole(*stays: float) -> list[e.Event]:
    """A walk through steps s0, s1 ... with so many seconds at each."""
    facts: list[tuple[float, e.Fact]] = [(0.0, STARTED)]
    now = 0.0
    for n, stay in enumerate(stays):
        facts.append((now, e.StepEntered(f"s{n}", f"s{n}")))
        now += stay
    return walk(*facts, (now, e.SessionCompleted()))


def test_what_is_left_is_the_time_from_a_step_to_the_end():
    left = remaining([whole(10, 20, 30), whole(10, 20, 40), whole(10, 20, 50)])
    assert [left[f"s{n}"].median_s for n in range(3)] == [70, 60, 40]
    assert left["s2"].walks == 3


def test_too_few_walks_say_nothing():
    assert remaining([whole(10, 20)] * (LEAST_WALKS - 1)) == {}


def test_a_walk_that_was_ended_early_teaches_nothing():
    ended = [*whole(10, 20)[:-1], *walk((30, e.SessionAborted((), False, "")))]
    assert remaining([ended] * LEAST_WALKS) == {}


def test_time_in_which_a_walk_was_held_does_not_count():
    broken = walk(
        (0, STARTED),
        (0, e.StepEntered("s0", "s0")),
        (10, e.SessionHeld("pause")),
        (4000, e.SessionResumed("")),
        (4000, e.StepEntered("s0", "s0")),
        (4030, e.SessionCompleted()),
    )
    left = remaining([broken] * LEAST_WALKS)
    assert left["s0"].median_s == 30


def test_a_way_back_to_what_lapsed_is_no_step_of_its_own():
    facts = [(0.0, STARTED), (0.0, e.StepEntered("s0", "s1")), (5.0, e.StepEntered("s1", "s1"))]
    left = remaining([walk(*facts, (9.0, e.SessionCompleted()))] * LEAST_WALKS)
    assert set(left) == {"s1"}


def test_a_clock_that_was_set_back_takes_nothing_off():
    facts = [(0.0, STARTED), (0.0, e.StepEntered("s0", "s0")), (-3600.0, e.PromptRepeated("s0"))]
    left = remaining([walk(*facts, (-3590.0, e.SessionCompleted()))] * LEAST_WALKS)
    assert left["s0"].median_s == 10


@given(st.lists(st.integers(1, 5000), min_size=LEAST_WALKS, max_size=20))
def test_the_middle_half_is_that_of_numpy(stays: Sequence[int]):
    """Reference: numpy.percentile, method 'linear' (Hyndman and Fan's type 7)."""
    left = remaining([whole(stay) for stay in stays])["s0"]
    expected = np.percentile(stays, [25, 50, 75])
    assert (left.least_s, left.median_s, left.most_s) == pytest.approx(tuple(expected))


def test_a_shop_learns_from_its_last_complete_walks(tmp_path):
    made = shop(tmp_path, StillClock())
    plan = made.fresh("m1", "short").plan
    assert made.time_left(plan) == {}
    for n in range(LEAST_WALKS):
        session = made.fresh("m1", "short")
        made.journal.append(session.id, whole(10, 20 + n)[:-1])
        if n:
            made.journal.append(session.id, whole(10, 20 + n)[-1:])
    assert len(made.journal.walked("m1", "short", practice=True, most=9)) == LEAST_WALKS - 1
    assert made.time_left(plan) == {}
    other = made.fresh("m1", "short")
    made.journal.append(other.id, whole(10, 40))
    assert made.time_left(plan)["s0"].walks == LEAST_WALKS
    assert made.journal.walked("m1", "short", practice=True, most=1) == [other.id]
    assert made.journal.walked("m1", "short", practice=False, most=9) == []
    made.journal.close()
