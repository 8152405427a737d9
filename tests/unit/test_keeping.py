"""Backups, moves and retirement: nothing lost, nothing twice, and each said in the journal."""

from __future__ import annotations

import json
import os
import sqlite3
import threading
from contextlib import closing
from datetime import UTC, datetime

import pytest

from kiosk import home
from kiosk.cli import main
from kiosk.clock import SystemClock
from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal import chain, keys
from kiosk.journal.backup import BackupFailed, back_up, restore
from kiosk.journal.checkpoints import name_of
from kiosk.journal.shop_facts import (
    KioskMoved,
    KioskRetired,
    ShopEvent,
    SignedOff,
    SigningKeyMade,
)
from kiosk.journal.store import FILE, Journal, JournalFailed
from kiosk.journal.verify import check
from kiosk.shipped import shipped
from tests.tampering import evident, put_in_place, started, write_sessions


@pytest.fixture(scope="module")
def one(tmp_path_factory):
    return evident(tmp_path_factory.mktemp("one"), 2)


def rows(file):
    with closing(sqlite3.connect(file)) as db:
        return db.execute("select * from journal order by seq").fetchall()


# Backup.


def test_a_backup_has_every_row_and_is_one_file(one, tmp_path):
    verdict = back_up(one.file, tmp_path / "copy" / "b.db")
    assert verdict == check(one.file).verdict
    assert rows(tmp_path / "copy" / "b.db") == rows(one.file)
    assert [file.name for file in (tmp_path / "copy").iterdir()] == ["b.db"]


def test_a_backup_is_taken_while_the_kiosk_writes(tmp_path):
    """Whatever moment it catches, it holds whole appends, from the first row on."""
    with closing(Journal(tmp_path)) as journal:
        write_sessions(journal, 1)
    stop = threading.Event()

    def work():
        with closing(Journal(tmp_path)) as busy:
            while not stop.is_set():
                write_sessions(busy, 1)

    worker = threading.Thread(target=work)
    worker.start()
    try:
        taken = [tmp_path / f"{number}.db" for number in range(5)]
        counts = [back_up(tmp_path / FILE, file).rows for file in taken]
    finally:
        stop.set()
        worker.join()
    assert counts == sorted(counts)
    everything = rows(tmp_path / FILE)
    for file, count in zip(taken, counts, strict=True):
        assert rows(file) == everything[:count]


def test_a_backup_never_takes_the_place_of_another(one, tmp_path):
    (tmp_path / "b.db").write_text("an older one")
    with pytest.raises(BackupFailed, match="there already"):
        back_up(one.file, tmp_path / "b.db")
    assert (tmp_path / "b.db").read_text() == "an older one"


def test_a_backup_of_a_spoiled_journal_is_refused_and_leaves_nothing(one, tmp_path):
    bad = [dict(row) for row in one.rows]
    bad[4]["utc"] = "2020-01-01T00:00:00.000000Z"
    put_in_place(one, tmp_path / "bad.db", bad)
    with pytest.raises(BackupFailed, match=r"NOT whole\. Row 5"):
        back_up(tmp_path / "bad.db", tmp_path / "b.db")
    assert [file.name for file in tmp_path.iterdir()] == ["bad.db"]


# Another device.


def test_a_restored_journal_goes_on_as_a_new_kiosk(one, tmp_path):
    old = one.rows[-1]
    moved = restore(one.file, tmp_path / "new", SystemClock())
    assert moved == KioskMoved(old["kiosk"], old["seq"], old["hash"])
    with closing(Journal(tmp_path / "new")) as journal:
        write_sessions(journal, 1)
        found = list(journal.rows())
        assert journal.kiosk != old["kiosk"]
        assert found[: old["seq"]] == list(one.rows)
        assert {row["kiosk"] for row in found[old["seq"] :]} == {journal.kiosk}
        assert found[old["seq"]]["kind"] == "KioskMoved"
        assert journal.verify().whole
        assert [event.fact for event in journal.shop_events()][-1] == moved


def test_a_journal_can_move_twice(one, tmp_path):
    restore(one.file, tmp_path / "new", SystemClock())
    restore(tmp_path / "new" / FILE, tmp_path / "newer", SystemClock())
    with closing(Journal(tmp_path / "newer")) as journal:
        assert journal.verify().whole
        assert len({row["kiosk"] for row in journal.rows()}) == 3


def test_a_journal_that_is_there_is_never_restored_over(one, tmp_path):
    Journal(tmp_path).close()
    before = (tmp_path / FILE).read_bytes()
    with pytest.raises(BackupFailed, match="there already"):
        restore(one.file, tmp_path, SystemClock())
    assert (tmp_path / FILE).read_bytes() == before


@pytest.mark.parametrize("text", [None, "", "no journal"])
def test_what_is_no_backup_is_refused(tmp_path, text):
    if text is not None:
        (tmp_path / "b.db").write_text(text)
    with pytest.raises(BackupFailed, match="no backup"):
        restore(tmp_path / "b.db", tmp_path / "new", SystemClock())
    assert not (tmp_path / "new" / FILE).exists()


def test_a_spoiled_backup_is_not_restored(one, tmp_path):
    put_in_place(one, tmp_path / "b.db", [dict(row) for row in one.rows if row["seq"] != 3])
    with pytest.raises(BackupFailed, match="Row 3"):
        restore(tmp_path / "b.db", tmp_path / "new", SystemClock())
    assert not (tmp_path / "new").exists()


# The commands.


@pytest.fixture
def site(tmp_path, monkeypatch):
    """A kiosk's folder with a site that names a stick; commands work there."""
    folder, stick = tmp_path / "kiosk", tmp_path / "stick"
    folder.mkdir()
    stick.mkdir()
    text = (shipped("demo") / home.SITE_FILE).read_text(encoding="utf-8")
    named = text.replace("practice = true", f'practice = true\ncheckpoints_to = "{stick}"', 1)
    (folder / home.SITE_FILE).write_text(named, encoding="utf-8")
    monkeypatch.setenv("KIOSK_HOME", str(folder))
    with closing(Journal(folder)) as journal:
        write_sessions(journal, 2)
    return folder


def kiosk_of(folder):
    with closing(Journal(folder)) as journal:
        return journal.kiosk


def test_the_board_signs_at_the_end_of_a_session_and_when_it_is_closed(site, monkeypatch):
    signed_at_end: list[int] = []

    def board(shop, **_):
        write_sessions(shop.journal, 1)
        points = site / name_of(shop.journal.kiosk)
        signed_at_end.extend(json.loads(line)["seq"] for line in points.read_text().splitlines())
        shop.journal.append("s9", [e.Event(shop.clock.now(), Evidence(Channel.KEY), started())])
        return 0

    monkeypatch.setattr("kiosk.opening.open_kiosk", board)
    assert main(["run"]) == 0
    points = site.parent / "stick" / name_of(kiosk_of(site))
    # 14 rows were there, 7 of a session came, then the key, then the unfinished session.
    assert signed_at_end == [22]
    assert [json.loads(line)["seq"] for line in points.read_text().splitlines()] == [22, 23]


def test_retiring_signs_the_last_row_and_ends_the_journal(site, capsys):
    kiosk = kiosk_of(site)
    assert main(["log", "retire", "another"]) == 1
    assert kiosk in capsys.readouterr().err
    assert main(["log", "retire", kiosk]) == 0
    with closing(Journal(site)) as journal:
        kinds = [type(event.fact) for event in journal.shop_events()]
        assert kinds == [SigningKeyMade, KioskRetired]
        seq, head = journal.mark()
        assert journal.retired
        with pytest.raises(JournalFailed, match="retired"):
            write_sessions(journal, 1)
        assert journal.mark() == (seq, head)
    assert head in capsys.readouterr().out
    stick = site.parent / "stick" / name_of(kiosk)
    assert json.loads(stick.read_text().splitlines()[-1])["hash"] == head
    assert main(["log", "retire", kiosk]) == 1
    assert main(["run"]) == 1
    assert "is retired" in capsys.readouterr().err


def test_a_retired_kiosk_goes_on_elsewhere(site, tmp_path, monkeypatch, capsys):
    kiosk = kiosk_of(site)
    assert main(["log", "retire", kiosk]) == 0
    assert main(["log", "backup", str(tmp_path / "b.db")]) == 0
    new = tmp_path / "new"
    new.mkdir()
    (new / home.SITE_FILE).write_bytes((site / home.SITE_FILE).read_bytes())
    monkeypatch.setenv("KIOSK_HOME", str(new))
    assert main(["log", "restore", str(tmp_path / "b.db")]) == 1
    assert "--new-device" in capsys.readouterr().err
    assert main(["log", "restore", str(tmp_path / "b.db"), "--new-device"]) == 0
    assert main(["log", "verify"]) == 0
    with closing(Journal(new)) as journal:
        write_sessions(journal, 1)
        assert not journal.retired
        assert journal.verify().whole


def test_verify_says_that_rows_were_lost_with_an_older_backup(site, tmp_path, capsys):
    kiosk = kiosk_of(site)
    assert main(["log", "backup", str(tmp_path / "b.db")]) == 0
    assert main(["log", "retire", kiosk]) == 0
    for name in (FILE, f"{FILE}-wal", f"{FILE}-shm"):
        (site / name).unlink(missing_ok=True)
    assert main(["log", "restore", str(tmp_path / "b.db"), "--new-device"]) == 0
    capsys.readouterr()
    assert main(["log", "verify"]) == 1
    said = capsys.readouterr().out
    assert "The journal is whole" in said
    assert f"Lost with a move: kiosk {kiosk} signed row 16" in said
    assert "rows 15 to 16 are not here" in said


def cut(folder, last):
    with closing(sqlite3.connect(folder / FILE)) as db, db:
        db.execute("drop trigger journal_never_deleted")
        db.execute("delete from journal where seq > ?", [last])


def test_verify_looks_at_the_stick_when_the_checkpoints_here_are_gone(site, capsys):
    kiosk = kiosk_of(site)
    assert main(["log", "retire", kiosk]) == 0
    assert main(["log", "verify"]) == 0
    assert "Row 16 was signed" in capsys.readouterr().out
    (site / name_of(kiosk)).unlink()
    cut(site, 15)
    assert main(["log", "verify"]) == 1
    said = capsys.readouterr().out
    assert "Row 16: kiosk" in said
    assert "truncated" in said
    assert "Guards missing in the file: journal_never_deleted" in said


def test_verify_says_that_the_stick_is_not_in(site, capsys):
    (site.parent / "stick").rmdir()
    assert main(["log", "verify"]) == 0
    said = capsys.readouterr().out
    assert "is not there" in said
    assert "would not be noticed" in said


def test_verify_takes_checkpoints_and_a_key_from_elsewhere(site, tmp_path, capsys):
    kiosk = kiosk_of(site)
    assert main(["log", "key"]) == 1
    assert main(["log", "retire", kiosk]) == 0
    capsys.readouterr()
    assert main(["log", "key"]) == 0
    (tmp_path / "key.pem").write_text(capsys.readouterr().out)
    points = str(site / name_of(kiosk))
    copy = str(tmp_path / "b.db")
    assert main(["log", "backup", copy]) == 0
    arguments = ["log", "verify", copy, "--checkpoints", points, "--key", str(tmp_path / "key.pem")]
    assert main(arguments) == 0
    assert "Row 16 was signed" in capsys.readouterr().out
    stranger, _ = keys.signing_key(tmp_path)
    (tmp_path / "key.pem").write_text(keys.as_pem(stranger.public))
    main(arguments)
    assert "No checkpoint that a trusted key signed" in capsys.readouterr().out


def test_an_export_has_the_rows_as_they_were_hashed(site, tmp_path, capsys):
    assert main(["log", "export", "--since", "5"]) == 0
    given = [json.loads(line) for line in capsys.readouterr().out.splitlines()]
    with closing(Journal(site)) as journal:
        kept = list(journal.rows())
    assert given == kept[4:]
    assert chain.verify(given, kept[3]["hash"], 5).whole
    assert main(["log", "export", "--to", str(tmp_path / "x.jsonl")]) == 0
    assert main(["log", "verify", str(tmp_path / "x.jsonl")]) == 0
    assert "whole: 14 rows" in capsys.readouterr().out
    assert main(["log", "export", "--to", str(tmp_path / "x.jsonl")]) == 1


def test_an_export_begins_with_the_local_day(site, capsys):
    """The invented shop keeps the time of Chicago: in winter its day begins at 06:00 UTC."""
    midnight = datetime(2099, 1, 15, 6, tzinfo=UTC).timestamp()
    with closing(Journal(site)) as journal:
        for utc in (midnight - 1, midnight, midnight + 1):
            fact = SignedOff("s1", "ana", "")
            event = ShopEvent(Instant(utc, 1.0, "b"), Evidence(Channel.KEY), fact)
            journal.append_shop([event])
    assert main(["log", "export", "--since", "2099-01-15"]) == 0
    given = [json.loads(line)["seq"] for line in capsys.readouterr().out.splitlines()]
    assert given == [16, 17]
    assert main(["log", "export", "--since", "2999-01-01"]) == 1
    assert main(["log", "export", "--since", "yesterday"]) == 1
    assert "as 2026-11-25" in capsys.readouterr().err


@pytest.mark.skipif(not hasattr(os, "fork"), reason="this platform cannot fork")
def test_two_processes_that_append_make_one_chain(tmp_path):
    Journal(tmp_path).close()
    children = []
    for _ in range(2):
        child = os.fork()
        if child == 0:
            status = 1
            try:
                with closing(Journal(tmp_path)) as journal:
                    write_sessions(journal, 5)
                status = 0
            finally:
                os._exit(status)
        children.append(child)
    assert [os.waitpid(child, 0)[1] for child in children] == [0, 0]
    with closing(Journal(tmp_path)) as journal:
        verdict = journal.verify()
    assert (verdict.whole, verdict.rows) == (True, 70)
