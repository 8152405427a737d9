"""The head office's tables are made once and whole, and a file that was applied stays as it was."""

from __future__ import annotations

import itertools
from dataclasses import replace

import psycopg
import pytest

from kiosk.fleet.migrate import Changed, Migration, migrate, migrations

_NUMBER = itertools.count(1)
NEXT = Migration(9000, "9000_more", "create table fleet.more (id int)")


@pytest.fixture
def empty(head_office):
    """A database of its own with nothing in it."""
    name = head_office.server.database(f"migrated_{next(_NUMBER)}")
    return head_office.line(head_office.server.admin(name))


def test_files_are_applied_in_order_and_once(empty):
    names = tuple(one.name for one in migrations())
    assert migrate(empty) == names
    assert migrate(empty) == ()
    assert migrate(empty, [*migrations(), NEXT]) == ("9000_more",)
    assert [one.number for one in migrations()] == list(range(1, len(names) + 1))


def test_a_file_that_fails_leaves_nothing_of_any_file_behind(empty):
    with pytest.raises(psycopg.Error):
        migrate(empty, [*migrations(), replace(NEXT, text=f"{NEXT.text}; select 1 / 0")])
    row = empty.execute("select to_regclass('fleet.shop'), current_user = session_user").fetchone()
    assert row == (None, True)
    assert len(migrate(empty)) == len(migrations())


def test_an_applied_file_in_another_wording_is_refused(empty):
    migrate(empty)
    first, *rest = migrations()
    with pytest.raises(Changed, match="0001_ground"):
        migrate(empty, [replace(first, text=first.text + "\n-- more"), *rest, NEXT])
    assert empty.execute("select to_regclass('fleet.more')").fetchone() == (None,)
