"""The triggers: whoever opens the file with SQLite alone can add a right row, and no more."""

from __future__ import annotations

import sqlite3
from contextlib import closing

import pytest

from kiosk.journal.guards import TRIGGERS
from kiosk.journal.store import Journal
from kiosk.journal.verify import check
from tests.tampering import COLUMNS, write_sessions

MARKS = f"insert into journal ({', '.join(COLUMNS)}) select "


@pytest.fixture
def bare(tmp_path):
    """A journal opened by SQLite with nothing turned on, recursive triggers neither."""
    with closing(Journal(tmp_path)) as journal:
        write_sessions(journal, 1)
    with closing(sqlite3.connect(tmp_path / "journal.db")) as db:
        yield db


def copy_of_row(of: int, /, **other: str) -> str:
    return MARKS + ", ".join(other.get(name, name) for name in COLUMNS) + (
        f" from journal where seq = {of}"
    )  # fmt: skip


@pytest.mark.parametrize(
    "statement",
    [
        "update journal set body = '{}' where seq = 2",
        "update or replace journal set seq = 1 where seq = 2",
        "delete from journal where seq = 7",
        "delete from journal",
        copy_of_row(2),
        copy_of_row(2).replace("insert", "insert or replace"),
        copy_of_row(2).replace("insert into", "replace into"),
        copy_of_row(2).replace("insert", "insert or ignore"),
        copy_of_row(2, seq="99"),
        copy_of_row(2, seq="8"),
        copy_of_row(2, seq="null"),
        copy_of_row(2, seq="0"),
        "update kiosk set id = 'another'",
        "delete from kiosk",
        "insert or replace into kiosk select id from kiosk",
    ],
)
def test_a_statement_that_is_no_append_is_refused(bare, statement):
    before = list(bare.execute("select * from journal"))
    with pytest.raises(sqlite3.DatabaseError):
        bare.execute(statement)
    bare.rollback()
    assert list(bare.execute("select * from journal")) == before
    assert bare.execute("select count(*) from kiosk").fetchone() == (1,)


def test_a_row_that_follows_the_last_one_is_taken(bare):
    bare.execute(copy_of_row(7, seq="8", prev="hash"))
    assert bare.execute("select count(*) from journal").fetchone() == (8,)


def test_a_file_without_its_guards_is_named_and_the_kiosk_puts_them_back(tmp_path):
    with closing(Journal(tmp_path)) as journal:
        write_sessions(journal, 1)
    file = tmp_path / "journal.db"
    assert check(file).unguarded == ()
    with closing(sqlite3.connect(file)) as db:
        db.execute(f"drop trigger {TRIGGERS[0]}")
    assert check(file).unguarded == TRIGGERS[:1]
    Journal(tmp_path).close()
    assert check(file).unguarded == ()


def test_verifying_writes_nothing(tmp_path):
    with closing(Journal(tmp_path)) as journal:
        write_sessions(journal, 1)
    file = tmp_path / "journal.db"
    with closing(sqlite3.connect(file)) as db:
        db.execute("pragma journal_mode = delete")
        db.execute("drop trigger journal_never_deleted")
    before = file.read_bytes()
    check(file)
    assert file.read_bytes() == before
