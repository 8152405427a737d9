"""What had begun before a session, held against looking at every session anew."""

from __future__ import annotations

from statistics import median

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.review import earlier as of_earlier
from kiosk.review.earlier import Earlier, Past, earlier
from kiosk.review.ledger_rows import Short
from kiosk.review.record import Ended

times = st.integers(0, 30).map(float)
shorts = st.builds(
    lambda n, procedure, practice, begun, length, ended, spoken: Short(
        f"s{n}", procedure, "m", practice, begun, begun + length, ended, spoken
    ),
    st.integers(0, 9), st.sampled_from("ab"), st.booleans(), times, times,
    st.sampled_from([Ended.COMPLETE, Ended.OPEN, Ended.EARLY]), st.booleans(),
)  # fmt: skip


def by_hand(one: Short, known: list[Short]) -> Earlier:
    before = [x for x in known if x.begun_utc < one.begun_utc]
    lengths = [
        x.length_s
        for x in before
        if (x.procedure, x.practice, x.ended) == (one.procedure, one.practice, Ended.COMPLETE)
    ]
    spoken = [x.begun_utc for x in before if x.spoken]
    return Earlier(
        median(lengths) if lengths else None, len(lengths), max(spoken) if spoken else None
    )


@pytest.mark.parametrize("few", [0, 3, 32])
@given(st.lists(shorts, max_size=30))
def test_it_is_the_same_as_looking_at_all(few, put):
    """Each session may be put again as another one: the last counts."""
    with pytest.MonkeyPatch.context() as patch:
        patch.setattr(of_earlier, "_FEW", few)
        past, known = Past(), {}
        for one in put:
            past.put(one)
            known[one.session] = one
            assert past.before(one) == by_hand(one, list(known.values()))
        for one in known.values():
            assert past.before(one) == by_hand(one, list(known.values()))
            assert earlier(one, known.values()) == past.before(one)


def test_sessions_of_another_machine_say_nothing():
    one = Short("s1", "a", "m", True, 5.0, 6.0, Ended.COMPLETE, True)
    other = Short("s0", "a", "elsewhere", True, 1.0, 3.0, Ended.COMPLETE, True)
    assert earlier(one, [other, one]) == Earlier()
