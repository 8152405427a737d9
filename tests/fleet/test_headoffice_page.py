"""The page for the head office names every trouble and every view that there is."""

from __future__ import annotations

import re

from kiosk.fleet.migrate import FOLDER, migrations

PAGE = (FOLDER.parent / "HEADOFFICE.md").read_text(encoding="utf-8")
SQL = "\n".join(one.text for one in migrations())


def test_every_trouble_has_its_line():
    noted = set(re.findall(r"fleet\.note\(\s*[a-z.]+,\s*'([a-z ]+)'", SQL))
    assert noted == set(re.findall(r"^\| `([a-z ]+)` \|", PAGE, re.MULTILINE))
    assert len(noted) == 7


def test_every_view_is_told_of():
    views = set(re.findall(r"create view (fleet\.\w+)", SQL))
    assert views
    assert views <= set(re.findall(r"`(fleet\.\w+)`", PAGE))
