"""A disk that takes seconds for one write: what is pressed or said meanwhile confirms nothing."""

from __future__ import annotations

import pytest

from tests.faults.stalls import WAYS, stalled


@pytest.mark.parametrize("way", WAYS)
async def test_what_is_pressed_or_said_during_a_stall_answers_no_later_question(tmp_path, way):
    assert (await stalled(tmp_path, way)).nothing_lost
