"""What a kiosk withstands of its disk: nothing lost, no hold passed, and the worker is told."""

from __future__ import annotations

import shutil
from contextlib import closing

import pytest

from kiosk.journal.store import FILE, Journal
from kiosk.languages.words import words
from tests.faults import disks, power
from tests.faults.judging import Withstood, Worker

NOT_WRITTEN = words("en").say("not-recorded")


def only_refused(found: Withstood, mend: str) -> bool:
    """Tell whether everything that was seen is that nothing was recorded, why, and what to do."""
    return bool(found.seen) and all(
        one.startswith(f"{NOT_WRITTEN} ") and mend in one for one in found.seen
    )


@pytest.mark.parametrize("cut", [power.cut_in_the_log, power.cut_while_tidying])
def test_a_power_cut_at_any_byte_leaves_all_that_was_shown_and_all_or_nothing_of_an_act(
    tmp_path, cut, chance
):
    assert cut(tmp_path, 30, chance).nothing_lost


@pytest.mark.skipif(shutil.which("strace") is None, reason="strace is missing")
def test_a_power_cut_between_any_two_calls_that_were_really_made_loses_nothing(tmp_path, chance):
    assert power.cut_between_recorded_calls(tmp_path, 30, chance).nothing_lost


def test_a_power_cut_in_the_first_moments_of_a_journal_leaves_it_with_a_kiosk(tmp_path):
    journal = Journal(tmp_path)
    journal._db.execute("drop trigger kiosk_never_deleted")
    journal._db.execute("delete from kiosk")
    journal._db.conn.commit()
    journal.close()
    assert len(Journal(tmp_path).kiosk) == 16


def test_killed_at_any_moment(tmp_path, chance):
    assert disks.killed(tmp_path, 5, chance).nothing_lost


@pytest.mark.parametrize(
    ("fault", "mend"),
    [(disks.full, "Free some of it"), (disks.turned_read_only, "Call your supervisor")],
)
def test_a_disk_that_takes_nothing_more(tmp_path, fault, mend, chance):
    try:
        found = fault(tmp_path, 3, chance)
    except disks.NoSuchDisk as error:
        pytest.skip(str(error))
    assert found.nothing_lost
    assert only_refused(found, mend)


def test_a_folder_that_cannot_be_written_is_said_with_its_mend(tmp_path):
    try:
        found = disks.read_only_from_the_start(tmp_path)
    except disks.NoSuchDisk as error:
        pytest.skip(str(error))
    assert found.nothing_lost
    assert "cannot be written" in found.seen[0]
    assert "KIOSK_HOME" in found.seen[0]


def test_a_database_that_another_tool_keeps_locked(tmp_path, chance):
    found = disks.locked(tmp_path, 5, chance)
    assert found.nothing_lost
    assert only_refused(found, "Close it, then try again")


def test_a_journal_that_is_moved_away_takes_no_confirmation_with_it(tmp_path, chance):
    found = disks.moved_away(tmp_path, 6, chance)
    assert found.nothing_lost
    assert only_refused(found, "Put it back where it was")


def test_a_log_that_is_deleted_takes_no_confirmation_with_it(tmp_path, chance):
    found = disks.log_deleted(tmp_path, 3, chance)
    assert found.nothing_lost
    assert only_refused(found, "Put it back where it was")


def test_two_kiosks_in_one_session_never_decide_on_what_the_other_has_changed(tmp_path, chance):
    found = disks.two_kiosks(tmp_path, 5, chance)
    assert found.nothing_lost
    assert only_refused(found, "Close one of them")


def test_a_second_kiosk_on_one_folder_does_not_open(tmp_path):
    found = disks.second_start(tmp_path)
    assert found.nothing_lost
    assert found.seen == ["another kiosk is working in …/demo; close it first"]


# The judges can fail: without what the journal does against a fault, they find what it does.


@pytest.mark.skipif(shutil.which("strace") is None, reason="strace is missing")
def test_without_syncing_a_power_cut_loses_what_was_shown(tmp_path, chance):
    found = power.cut_between_recorded_calls(tmp_path, 20, chance, synchronous="off")
    assert found.lost


def test_without_a_look_at_the_last_row_two_kiosks_break_the_rules(tmp_path, chance, monkeypatch):
    append = Journal.append
    monkeypatch.setattr(Journal, "append", lambda self, name, rows, _: append(self, name, rows))
    assert disks.two_kiosks(tmp_path, 5, chance).bypassed


def test_without_a_look_at_its_files_a_deleted_journal_takes_confirmations(
    tmp_path, chance, monkeypatch
):
    monkeypatch.setattr(Journal, "_look_for_files", lambda self: None)
    with closing(Worker(tmp_path)) as worker:
        (tmp_path / FILE).unlink()
        worker.on(5)
    found = Withstood()
    found.judge(tmp_path, worker.shown)
    assert found.lost
