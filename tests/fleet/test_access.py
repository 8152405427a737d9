"""Who may do what at the head office: a shop touches nothing but its own rows."""

from __future__ import annotations

import shutil

import psycopg
import pytest
from psycopg.errors import InsufficientPrivilege, InvalidPassword, RaiseException

from kiosk.fleet import office
from kiosk.fleet.connection import connect
from tests.fleet.journals import as_rows, rows, rows_there, send, shipped, walk, walks

READ = (
    "journal", "branch", "trouble", "kiosk", "session", "hold_time", "machine", "standing", "heard",
    "late_tonight", "longest_holds", "shop",
)  # fmt: skip


@pytest.fixture
def two(head_office, tmp_path):
    """Two shops that have shipped, each with a session and a fork."""
    for name in ("one", "two"):
        folder, other = walks(tmp_path / name, 1, name), tmp_path / f"{name}-other"
        shutil.copytree(folder, other)
        walk(folder, f"{name}-second")
        walk(other, f"{name}-parted")
        for one in (folder, other):
            shipped(one, head_office.addresses.get(name) or head_office.admit(name))
    return head_office


def test_a_shop_reads_its_own_rows_and_no_others(two, tmp_path):
    line = two.line(two.addresses["one"])
    assert rows_there(line) == rows(tmp_path / "one")
    everything = two.admin
    for name in READ:
        seen = line.execute(f"select * from fleet.{name}").fetchall()
        both = everything.execute(f"select * from fleet.{name}").fetchall()
        assert set(seen) <= set(both), name
        if len(both) > 1 and name not in ("longest_holds",):
            assert len(seen) * 2 == len(both), name


FORBIDDEN = (
    "insert into fleet.journal select kiosk, seq + 100, session, kind, utc, mono_us, boot, body, "
    "prev, hash from fleet.journal",
    "update fleet.journal set body = '{}'",
    "delete from fleet.journal",
    "truncate fleet.journal",
    "delete from fleet.branch",
    "update fleet.kiosk set head_seq = 0",
    "update fleet.trouble set settled_by = 'me'",
    "insert into fleet.shop values ('mine', current_user, 'mine')",
    "delete from fleet.due",
    "alter table fleet.journal disable row level security",
    "select fleet.settle(1, 'me', 'nothing')",
    "select fleet.derive('k', 1, 2)",
    "select fleet.note('k', 'fork', 1, '', '')",
    "select fleet.rebuild()",
    "set role fleet_owner",
)


def test_a_shop_changes_nothing_by_itself(two):
    line = two.line(two.addresses["one"])
    before = rows_there(two.admin)
    for statement in FORBIDDEN:
        with pytest.raises(InsufficientPrivilege):
            line.execute(statement)
    assert rows_there(two.admin) == before


def test_a_shop_cannot_speak_for_the_kiosk_of_another(two, tmp_path):
    walk(tmp_path / "two", "more")
    batch = as_rows(tmp_path / "two")
    line = two.line(two.addresses["one"])
    kiosk = batch[0]["kiosk"]
    with pytest.raises(InsufficientPrivilege, match="is not of the shop"):
        send(line, kiosk, batch)
    for statement in (
        "select * from fleet.take(%s)",
        "select fleet.tell(%s, '{}')",
        "select fleet.whole(%s, now())",
        "select fleet.behind(%s, 1, '')",
    ):
        with pytest.raises(InsufficientPrivilege, match="is not of the shop"):
            line.execute(statement, [kiosk])
    known = line.execute("select fleet.knows(%s, 1, %s)", [kiosk, batch[0]["hash"]]).fetchone()
    assert known == (False,)


def test_a_table_that_a_shop_made_itself_is_not_read(head_office):
    # A view of its own in that place would be run with the rights of the tables' owner.
    line = head_office.line(head_office.admit("one"))
    line.execute("create temporary table arriving (like fleet.journal)")
    with pytest.raises(InsufficientPrivilege):
        line.execute("select * from fleet.hello('k')")
    line.execute("drop table arriving")
    line.execute("select * from fleet.hello('k')")
    with pytest.raises(InsufficientPrivilege):
        line.execute("drop table arriving")
    line.execute("discard temp")
    line.execute("create temporary view arriving as select * from fleet.journal")
    with pytest.raises(RaiseException, match="say hello first"):
        line.execute("select * from fleet.take('k')")


def test_a_login_of_no_shop_ships_nothing(head_office):
    login = f"reader_{head_office.number}"
    password = office.appoint(head_office.admin, login)
    line = head_office.line(head_office.server.address(login, password, head_office.database))
    with pytest.raises(InsufficientPrivilege):
        line.execute("select * from fleet.hello('k')")


def test_a_reader_sees_every_shop_and_changes_none(two, tmp_path):
    login = f"reader_{two.number}"
    password = office.appoint(two.admin, login)
    line = two.line(two.server.address(login, password, two.database))
    assert rows_there(line) == sorted(rows(tmp_path / "one") + rows(tmp_path / "two"))
    for question in office.QUESTIONS:
        assert office.ask(line, question).rows == office.ask(two.admin, question).rows
    with pytest.raises(InsufficientPrivilege):
        line.execute("delete from fleet.journal")
    (trouble, *_) = line.execute("select id from fleet.trouble").fetchone()
    assert office.settle(line, trouble, "priya", "looked at")


def test_not_even_the_owner_changes_the_journal(two):
    owner = two.admin
    for statement in (
        "update fleet.journal set body = '{}'",
        "delete from fleet.journal where seq = 2",
        "truncate fleet.journal",
        "truncate fleet.journal_07",
        "delete from fleet.branch",
        "truncate fleet.branch",
    ):
        with pytest.raises(RaiseException, match="append-only"):
            owner.execute(statement)


def test_what_the_owner_changed_behind_the_triggers_is_found(two, tmp_path):
    assert [bad for *_, bad in office.bad_rows(two.admin)] == [None, None]
    with two.admin.transaction() as inside:
        line = inside.connection
        line.execute("set local session_replication_role = replica")
        line.execute("update fleet.journal set utc = replace(utc, '-', '/') where seq = 4")
    assert [bad for *_, bad in office.bad_rows(two.admin)] == [4, 4]


def test_a_wrong_password_opens_nothing(two):
    address = two.addresses["one"]
    with pytest.raises((InvalidPassword, psycopg.OperationalError), match="password"):
        connect(address.replace("@", "x@"))
