"""Ids for what is new: none that the record has seen, for it would mix two of them up."""

from __future__ import annotations

import re
import sqlite3
from collections.abc import Iterable
from contextlib import closing
from pathlib import Path
from typing import Final

from kiosk.journal.store import FILE
from kiosk.journal.verify import open_read_only
from kiosk.people import beside

_STARTS: Final = """
select json_extract(body, '$.fact.machine'), json_extract(body, '$.fact.worker'),
       json_extract(body, '$.fact.supervisor')
from journal where kind = 'SessionStarted' and json_valid(body)
"""
_PEOPLE: Final = """
select json_extract(body, '$.fact.person') from journal
where session = 'shop' and json_valid(body)
"""


def fresh_id(letter: str, listed: Iterable[str], folder: Path) -> str:
    """Return an id, as `p7`: above every number that the site file or the record has used."""
    used = {*listed, *_seen(folder / FILE, _STARTS, _PEOPLE)}
    used |= _seen(folder / beside.FILE, "select person from name")
    numbers = [int(found[1]) for one in used if (found := re.fullmatch(rf"{letter}(\d+)", one))]
    return f"{letter}{max(numbers, default=0) + 1}"


def _seen(file: Path, *queries: str) -> set[str]:
    """Return the texts that queries find; none where the file is not there or cannot be read."""
    if not file.exists():
        return set()
    try:
        with closing(open_read_only(file)) as db:
            rows = [tuple(row) for sql in queries for row in db.execute(sql)]
    except (sqlite3.Error, UnicodeDecodeError):
        return set()
    return {one for row in rows for one in row if isinstance(one, str)}
