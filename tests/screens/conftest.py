"""What the tests of the screens share."""

from __future__ import annotations

from pathlib import Path

import pytest

from tests.screens.review_scene import make_history


@pytest.fixture(scope="session")
def history(tmp_path_factory) -> Path:
    """A folder with nine invented days; copy it, and leave it as it is."""
    return make_history(tmp_path_factory.mktemp("invented"))
