"""What the tests of faults share."""

from __future__ import annotations

import random

import pytest


@pytest.fixture
def chance() -> random.Random:
    """The same chance in every run."""
    return random.Random(20261126)
