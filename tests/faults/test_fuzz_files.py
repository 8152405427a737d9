"""Every file that a kiosk reads, spoilt at random: it is read, or refused in plain words."""

from __future__ import annotations

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from tests.faults.fuzzing import EDITS, EXAMPLES, TARGETS, Target, read_spoilt, spoilt


@pytest.mark.parametrize("target", TARGETS, ids=lambda one: one.name.replace(" ", "-"))
def test_a_spoilt_file_is_read_or_refused_in_words(target: Target, tmp_path):
    seeds = target.seeds(tmp_path)
    refusals = set()
    for seed in seeds:
        assert read_spoilt(target, tmp_path, seed) == ""

    @settings(
        max_examples=EXAMPLES, deadline=None, database=None,
        suppress_health_check=[HealthCheck.too_slow, HealthCheck.data_too_large],
    )  # fmt: skip
    @given(seed=st.integers(0, len(seeds) - 1), edits=EDITS)
    def spoil(seed, edits):
        refusals.add(read_spoilt(target, tmp_path, spoilt(seeds[seed], edits)))

    spoil()
    # Nothing was shown where nothing was refused, or all of it.
    assert not target.refusals or len(refusals) > 1
