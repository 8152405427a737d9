"""Spoken remarks in a backup: one file to copy, each sound by its hash, none that was erased."""

from __future__ import annotations

import hashlib
import shutil
import sqlite3
import stat
import subprocess
import sys
from contextlib import closing

import pytest

from kiosk import home
from kiosk.cli import main
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import PersonErased, RemarkRecorded, ShopEvent
from kiosk.journal.store import FILE, Journal
from kiosk.remarks.sounds import FOLDER, Sounds
from kiosk.shipped import shipped
from tests.tampering import write_sessions
from tests.verify_page import block

TOUCH = Evidence(Channel.TOUCH)
SAID = tuple(f"RIFF, an invented sound of {who}. ".encode() * 2000 for who in ("ana", "ben", "lu"))
ANA, BEN, LU = (hashlib.sha256(one).hexdigest() for one in SAID)


def tell(journal, *facts):
    journal.append_shop([ShopEvent(Instant(1.77e9, 1.0, "b"), TOUCH, fact) for fact in facts])


@pytest.fixture
def kiosk(tmp_path, monkeypatch):
    """A data folder with three remarks, of which Lu's was erased."""
    folder = tmp_path / "kiosk"
    folder.mkdir()
    (folder / home.SITE_FILE).write_bytes((shipped("demo") / home.SITE_FILE).read_bytes())
    monkeypatch.setenv("KIOSK_HOME", str(folder))
    sounds = Sounds(folder)
    with closing(Journal(folder)) as journal:
        write_sessions(journal, 1)
        for who, said in zip(("ana", "ben", "lu"), SAID, strict=True):
            tell(journal, RemarkRecorded("s0", "step-1", who, sounds.keep(said), 2.0, True))
        tell(journal, PersonErased("lu", "boss", 0, (LU,)))
    return folder


@pytest.fixture
def other(tmp_path, monkeypatch):
    """Say where the commands work from now on: a new device."""

    def there():
        folder = tmp_path / "new"
        folder.mkdir()
        (folder / home.SITE_FILE).write_bytes((shipped("demo") / home.SITE_FILE).read_bytes())
        monkeypatch.setenv("KIOSK_HOME", str(folder))
        return folder

    return there


def sounds_in(folder):
    found = folder / FOLDER
    return {one.name: one.read_bytes() for one in found.iterdir()} if found.exists() else {}


def taken(tmp_path, *words):
    file = tmp_path / "stick" / "b.db"
    assert main(["log", "backup", str(file), *words]) == 0
    assert [one.name for one in file.parent.iterdir()] == ["b.db"]
    return file


def test_a_backup_is_one_file_that_brings_the_remarks_to_another_device(
    kiosk, other, tmp_path, capsys
):
    # As where the erasing failed after it was journaled.
    assert f"{LU}.wav" in sounds_in(kiosk)
    file = taken(tmp_path)
    assert "Spoken remarks in it: 2," in capsys.readouterr().out
    assert stat.S_IMODE(file.stat().st_mode) == 0o600
    assert SAID[2] not in file.read_bytes()
    assert main(["log", "verify", str(file)]) == 0
    assert "Spoken remarks in it: 2," in capsys.readouterr().out

    new = other()
    assert main(["log", "restore", str(file), "--new-device"]) == 0
    assert "Spoken remarks here: 2," in capsys.readouterr().out
    assert sounds_in(new) == {f"{ANA}.wav": SAID[0], f"{BEN}.wav": SAID[1]}
    assert main(["log", "verify"]) == 0
    with closing(Journal(new)) as journal:
        write_sessions(journal, 1)
        assert journal.verify().whole


def test_a_restored_journal_holds_no_voice_and_is_no_longer_for_it(kiosk, other, tmp_path):
    file = taken(tmp_path)
    new = other()
    assert main(["log", "restore", str(file), "--new-device"]) == 0
    with closing(sqlite3.connect(new / FILE)) as journal:
        journal.execute("pragma wal_checkpoint(truncate)")
        tables = {name for (name,) in journal.execute("select name from sqlite_master")}
    assert "carried" not in tables
    data = (new / FILE).read_bytes()
    assert b"an invented sound" not in data
    assert len(data) < file.stat().st_size - len(SAID[0])


def test_a_backup_goes_on_twice_and_brings_them_each_time(kiosk, other, tmp_path, monkeypatch):
    first = taken(tmp_path)
    new = other()
    assert main(["log", "restore", str(first), "--new-device"]) == 0
    second = tmp_path / "second.db"
    assert main(["log", "backup", str(second)]) == 0
    newer = tmp_path / "newer"
    newer.mkdir()
    (newer / home.SITE_FILE).write_bytes((new / home.SITE_FILE).read_bytes())
    monkeypatch.setenv("KIOSK_HOME", str(newer))
    assert main(["log", "restore", str(second), "--new-device"]) == 0
    assert sounds_in(newer) == sounds_in(new)
    with closing(Journal(newer)) as journal:
        kiosks = [row["kiosk"] for row in journal.rows()]
        assert journal.kiosk == kiosks[-1]
        assert len(set(kiosks)) == 3
        assert journal.verify().whole


def test_what_is_missing_or_altered_is_said_and_left_behind(kiosk, other, tmp_path, capsys):
    (kiosk / FOLDER / f"{ANA}.wav").unlink()
    (kiosk / FOLDER / f"{BEN}.wav").write_bytes(SAID[0])
    assert main(["log", "verify"]) == 1
    said = capsys.readouterr().out
    assert "The journal is whole" in said
    assert "NOT here, though not erased: 1 missing" in said
    assert "NOT here, though not erased: 1 altered" in said
    file = taken(tmp_path)
    assert "NOT in it, though not erased: 1 altered" in capsys.readouterr().out
    new = other()
    assert main(["log", "restore", str(file), "--new-device"]) == 0
    assert sounds_in(new) == {}


def test_a_sound_that_was_altered_in_the_backup_stays_there(kiosk, other, tmp_path, capsys):
    file = taken(tmp_path)
    with closing(sqlite3.connect(file)) as copy, copy:
        copy.execute("update carried set data = ? where sha256 = ?", [SAID[0] + b"!", ANA])
    assert main(["log", "verify", str(file)]) == 1
    assert "NOT in it, though not erased: 1 altered" in capsys.readouterr().out
    new = other()
    assert main(["log", "restore", str(file), "--new-device"]) == 0
    assert "NOT here, though not erased: 1 altered" in capsys.readouterr().out
    assert sounds_in(new) == {f"{BEN}.wav": SAID[1]}


def test_a_backup_without_remarks_is_the_journal_alone(kiosk, other, tmp_path, capsys):
    file = taken(tmp_path, "--without-remarks")
    assert b"an invented sound" not in file.read_bytes()
    assert main(["log", "verify", str(file)]) == 0
    assert "Spoken remarks" not in capsys.readouterr().out
    new = other()
    assert main(["log", "restore", str(file), "--new-device"]) == 0
    assert sounds_in(new) == {}


def test_a_backup_with_remarks_can_be_gone_on_with_without_them(kiosk, other, tmp_path):
    file = taken(tmp_path)
    new = other()
    assert main(["log", "restore", str(file), "--new-device", "--without-remarks"]) == 0
    assert sounds_in(new) == {}
    assert b"an invented sound" not in (new / FILE).read_bytes()


def test_only_what_the_journal_tells_of_is_taken_out_of_a_backup(kiosk, other, tmp_path):
    file = taken(tmp_path)
    stranger = b"a sound that no row names"
    with closing(sqlite3.connect(file)) as copy, copy:
        copy.execute(
            "insert into carried values (?, ?)", [hashlib.sha256(stranger).hexdigest(), stranger]
        )
        copy.execute("insert into carried values (?, ?)", [LU, SAID[2]])
    new = other()
    assert main(["log", "restore", str(file), "--new-device"]) == 0
    assert set(sounds_in(new)) == {f"{ANA}.wav", f"{BEN}.wav"}


def test_a_view_in_the_place_of_the_table_is_not_asked(kiosk, other, tmp_path, capsys):
    file = taken(tmp_path, "--without-remarks")
    endless = "with recursive n(x) as (select 1 union all select x + 1 from n) select x, x from n"
    with closing(sqlite3.connect(file)) as copy, copy:
        copy.execute(f"create view carried (sha256, data) as {endless}")
    assert main(["log", "verify", str(file)]) == 0
    new = other()
    assert main(["log", "restore", str(file), "--new-device"]) == 0
    assert sounds_in(new) == {}


def test_where_it_cannot_be_told_what_was_erased_nothing_is_carried(kiosk, tmp_path, capsys):
    """A row of another version of the kiosk."""
    with closing(Journal(kiosk)) as journal, pytest.MonkeyPatch.context() as patch:
        patch.setattr("kiosk.journal.codec.body", lambda _: '{"by":{"channel":"key"},"fact":{}}')
        tell(journal, PersonErased("ben", "boss", 0, (BEN,)))
    file = tmp_path / "b.db"
    assert main(["log", "backup", str(file)]) == 1
    assert "--without-remarks" in capsys.readouterr().err
    assert not file.exists()
    assert main(["log", "backup", str(file), "--without-remarks"]) == 0


def test_a_folder_that_takes_no_sounds_gets_no_journal(kiosk, other, tmp_path, capsys):
    file = taken(tmp_path)
    new = other()
    (new / FOLDER).write_text("somebody's file")
    assert main(["log", "restore", str(file), "--new-device"]) == 1
    assert FOLDER in capsys.readouterr().err
    assert not (new / FILE).exists()


def test_the_page_writes_the_sounds_out_and_sha256sum_agrees(kiosk, tmp_path):
    """VERIFY.md's own lines, in a process without the kiosk's code; then coreutils' sha256sum."""
    file = taken(tmp_path)
    out = tmp_path / "out"
    out.mkdir()
    (out / "sounds.py").write_text(block("sounds"), encoding="utf-8")
    done = subprocess.run(
        [sys.executable, "-I", "sounds.py", str(file)], cwd=out, capture_output=True, text=True,
        check=True,
    )  # fmt: skip
    assert set(done.stdout.split("\n")) == {f"{ANA} WHOLE", f"{BEN} WHOLE", ""}
    if shutil.which("sha256sum") is None:
        pytest.skip("sha256sum (coreutils) is missing")
    said = subprocess.run(
        ["sha256sum", f"{ANA}.wav", f"{BEN}.wav"], cwd=out, capture_output=True, text=True,
        check=True,
    )  # fmt: skip
    assert [line.split()[0] for line in said.stdout.splitlines()] == [ANA, BEN]
