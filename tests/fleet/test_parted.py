"""Journals that parted, fell behind, have gaps or were altered: named, never written over."""

from __future__ import annotations

import shutil

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from kiosk.clock import SystemClock
from kiosk.fleet import office
from kiosk.journal import chain
from kiosk.journal.backup import back_up, restore
from kiosk.journal.store import FILE
from tests.fleet.journals import as_rows, rows, rows_there, send, shipped, walk, walks


def troubles(head_office) -> list[tuple[object, ...]]:
    return head_office.rows("select kind, seq from fleet.trouble order by id")


def old_backup(tmp_path):
    """Return a folder with ten rows of a journal, and one with the same ten and five more."""
    old = walks(tmp_path / "old", 2)
    new = tmp_path / "new"
    shutil.copytree(old, new)
    walk(new, "third")
    return old, new


def test_an_old_backup_that_is_put_back_is_named(head_office, tmp_path):
    address = head_office.admit("one")
    old, new = old_backup(tmp_path)
    shipped(new, address)
    done = shipped(old, address)
    assert "ends at row 10, but rows up to 15" in done.troubles[0]
    assert troubles(head_office) == [("old backup", 10)]
    assert rows_there(head_office.admin) == rows(new)


def test_a_fork_keeps_both_and_overwrites_neither(head_office, tmp_path):
    address = head_office.admit("one")
    old, new = old_backup(tmp_path)
    shipped(new, address)
    walk(old, "another third")
    walk(old, "fourth")
    done = shipped(old, address, most=4)
    assert (done.taken, done.aside) == (0, 10)
    assert "From row 11 on" in done.troubles[0]
    assert rows_there(head_office.admin) == rows(new)
    assert rows_there(head_office.admin, "branch") == rows(old)[10:]
    assert troubles(head_office) == [("fork", 11)]


def test_a_fork_that_goes_on_is_sent_once(head_office, tmp_path):
    address = head_office.admit("one")
    old, new = old_backup(tmp_path)
    shipped(new, address)
    walk(old, "another third")
    shipped(old, address)
    walk(old, "fourth")
    assert shipped(old, address).aside == 5
    assert shipped(old, address).aside == 0
    assert rows_there(head_office.admin, "branch") == rows(old)[10:]
    walk(new, "the right fourth")
    assert shipped(new, address).taken == 5
    assert rows_there(head_office.admin) == rows(new)


def test_a_gap_is_named_and_nothing_after_it_is_taken(head_office, tmp_path):
    line = head_office.line(head_office.admit("one"))
    batch = as_rows(walks(tmp_path, 3))
    kiosk = batch[0]["kiosk"]
    send(line, kiosk, batch[:5])
    answer = send(line, kiosk, batch[7:])
    assert (answer["bad_seq"], answer["taken"]) == (8, 0)
    assert "what comes before row 8 is not here" in answer["trouble"]
    inside = send(line, kiosk, batch[5:7] + batch[9:])
    assert (inside["bad_seq"], inside["taken"]) == (10, 2)
    assert rows_there(head_office.admin) == rows(tmp_path)[:7]
    assert troubles(head_office) == [("gap", 8), ("altered", 10)]
    assert shipped(tmp_path, head_office.addresses["one"]).taken == 8


def test_the_head_office_finds_an_altered_row_by_itself(head_office, tmp_path):
    line = head_office.line(head_office.admit("one"))
    batch = as_rows(walks(tmp_path, 2))
    for name in (*chain.COVERED, "prev", "hash"):
        row = batch[6]
        changed = row[name] + 50 if isinstance(row[name], int) else f"{row[name]}x"
        altered = [*batch[:6], row | {name: changed}, *batch[7:]]
        answer = send(line, batch[0]["kiosk"], altered)
        # A row under another id is not this kiosk's at all: the next one has a gap before it.
        assert answer["bad_seq"] == {"kiosk": 8, "seq": 8}.get(name, 7), name
        assert "was altered" in answer["trouble"]
        assert rows_there(line) == rows(tmp_path)[:6]
    assert troubles(head_office) == [("altered", 8), ("altered", 7)]


def test_a_row_that_is_sound_by_itself_but_follows_another_is_not_taken(head_office, tmp_path):
    line = head_office.line(head_office.admit("one"))
    batch = as_rows(walks(tmp_path, 2))
    batch[6] |= {"prev": "f" * 64}
    batch[6] |= {"hash": chain.row_hash(batch[6]["prev"], batch[6])}
    assert send(line, batch[0]["kiosk"], batch)["bad_seq"] == 7
    assert rows_there(line) == rows(tmp_path)[:6]


def test_a_restored_backup_goes_on_as_a_new_kiosk(head_office, tmp_path):
    address = head_office.admit("one")
    old = walks(tmp_path / "old", 2)
    shipped(old, address)
    kept = tmp_path / "kept.db"
    back_up(old / FILE, kept)
    new = tmp_path / "new"
    restore(kept, new, SystemClock())
    walk(new, "third")
    done = shipped(new, address, most=4)
    assert (done.taken, done.troubles) == (6, [])
    assert sorted(rows_there(head_office.admin), key=lambda row: row[1]) == rows(new)
    assert head_office.rows(
        "select begins_after, follows from fleet.kiosk where follows is not null"
    ) == [(10, rows(old)[0][0])]
    assert [bad for *_, bad in office.bad_rows(head_office.admin)] == [None, None]


def test_a_backup_that_left_rows_behind_and_an_old_device_that_speaks_on(head_office, tmp_path):
    address = head_office.admit("one")
    old = walks(tmp_path / "old", 1)
    kept = tmp_path / "kept.db"
    back_up(old / FILE, kept)
    walk(old, "second")
    shipped(old, address)
    new = tmp_path / "new"
    restore(kept, new, SystemClock())
    assert shipped(new, address).taken == 1
    assert troubles(head_office) == [("left behind", 6)]
    walk(old, "third")
    shipped(old, address)
    assert troubles(head_office) == [("left behind", 6), ("two devices", 11)]
    assert head_office.one("select count(*) from fleet.journal") == 16


def test_the_same_trouble_is_kept_once_until_it_is_settled(head_office, tmp_path):
    address = head_office.admit("one")
    old, new = old_backup(tmp_path)
    shipped(new, address)
    shipped(old, address)
    shipped(old, address)
    (trouble,) = head_office.rows("select id, times from fleet.trouble")
    assert trouble[1] == 2
    assert office.settle(head_office.admin, trouble[0], "priya", "the right disk is back")
    assert not office.settle(head_office.admin, trouble[0], "priya", "again")
    assert office.ask(head_office.admin, "trouble").rows == ()
    assert head_office.one("select remark from fleet.trouble") == "the right disk is back"


def test_a_row_that_is_sound_and_cannot_be_understood_is_kept(head_office, tmp_path):
    line = head_office.line(head_office.admit("one"))
    batch = as_rows(walks(tmp_path, 1))
    first = batch[0] | {"body": '{"fact":"of a kind nobody knows"}'}
    first["hash"] = chain.row_hash(chain.FIRST, first)
    assert send(line, first["kiosk"], [first])["taken"] == 1
    broken = batch[1] | {"kind": "SessionStarted", "body": "no JSON", "prev": first["hash"]}
    broken["hash"] = chain.row_hash(first["hash"], broken)
    assert send(line, first["kiosk"], [broken])["taken"] == 1
    assert len(rows_there(head_office.admin)) == 2
    assert ("not understood", 2) in troubles(head_office)


def test_both_sides_reckon_sha_256_as_the_standard_has_it(head_office):
    # FIPS 180-4, example of one block, "abc". MEM.
    wanted = "ba7816bf8f01cfea414140de5dae2223b00361a396177a9cb410ff61f20015ad"
    assert head_office.one("select encode(sha256('abc'), 'hex')") == wanted


@pytest.fixture
def line(head_office):
    return head_office.admin


TEXT = st.text(st.characters(exclude_characters="\x00", exclude_categories=["Cs"]), max_size=12)


@settings(
    deadline=None, max_examples=60, suppress_health_check=[HealthCheck.function_scoped_fixture]
)
@given(
    texts=st.fixed_dictionaries(
        {name: TEXT for name in chain.COVERED if name not in ("seq", "mono_us")}
    ),
    seq=st.integers(1, 2**63 - 1),
    mono=st.integers(-(2**63), 2**63 - 1),
)
def test_both_sides_reckon_the_same_hash(line, texts, seq, mono):
    row = texts | {"seq": seq, "mono_us": mono}
    values = [chain.FIRST, *(row[name] for name in chain.COVERED)]
    places = "%s, %s::bigint, %s, %s, %s, %s, %s::bigint, %s, %s"
    found = line.execute(f"select fleet.row_hash({places})", values).fetchone()
    assert found == (chain.row_hash(chain.FIRST, row),)
