"""Signed checkpoints: made when a session ends, kept twice, and what they prove."""

from __future__ import annotations

import json
import sqlite3
import threading
from contextlib import closing
from dataclasses import asdict, replace

import pytest

from kiosk.clock import SystemClock
from kiosk.journal import checkpoints, keys
from kiosk.journal.chain import Wrong
from kiosk.journal.checkpoints import Checkpoints, name_of, read, sign
from kiosk.journal.shop_facts import CheckpointDisagreed
from kiosk.journal.store import Journal
from kiosk.journal.witness import judge
from kiosk.languages.words import words
from tests.tampering import evident, put_in_place, rechain, write_sessions


@pytest.fixture(scope="module")
def one(tmp_path_factory):
    return evident(tmp_path_factory.mktemp("one"))


@pytest.fixture(scope="module")
def other(tmp_path_factory):
    return evident(tmp_path_factory.mktemp("other"), 2)


@pytest.fixture
def journal(tmp_path):
    with closing(Journal(tmp_path / "data")) as opened:
        yield opened


def lines(folder, journal):
    return (folder / name_of(journal.kiosk)).read_bytes().splitlines()


# The key.


def test_the_key_is_the_owners_alone_and_is_made_once(tmp_path):
    first, made = keys.signing_key(tmp_path)
    again, made_again = keys.signing_key(tmp_path)
    assert (made, made_again, first.public) == (True, False, again.public)
    assert (tmp_path / keys.KEY_FILE).stat().st_mode & 0o777 == 0o600
    assert [file.name for file in tmp_path.iterdir()] == [keys.KEY_FILE]


def test_a_key_that_others_could_read_is_taken_from_them(tmp_path):
    keys.signing_key(tmp_path)
    (tmp_path / keys.KEY_FILE).chmod(0o644)
    keys.signing_key(tmp_path)
    assert (tmp_path / keys.KEY_FILE).stat().st_mode & 0o777 == 0o600


def test_a_key_does_not_show_its_private_half(tmp_path):
    key, _ = keys.signing_key(tmp_path)
    assert "rivate" not in repr(key)


def test_a_spoiled_key_says_how_to_mend_it(tmp_path):
    (tmp_path / keys.KEY_FILE).write_text("nonsense")
    with pytest.raises(keys.NoKey, match="Move it away"):
        keys.signing_key(tmp_path)


def test_a_public_key_goes_out_and_comes_back(tmp_path):
    key, _ = keys.signing_key(tmp_path)
    (tmp_path / "key.pem").write_text(keys.as_pem(key.public))
    assert keys.from_pem(tmp_path / "key.pem") == key.public


# Making them.


def test_one_is_made_when_a_session_ends_and_names_its_last_row(journal):
    made = Checkpoints(journal, SystemClock())
    journal.after_end = made.make
    write_sessions(journal, 2)
    found, none = read(journal.file.parent / name_of(journal.kiosk))
    ends = [row["seq"] for row in journal.rows() if row["kind"] == "SessionCompleted"]
    assert none == ()
    # The key was made at the first, and is journaled before it is used.
    assert [one.seq for one in found] == [ends[0] + 1, ends[1]]
    assert [row["kind"] for row in journal.rows()][ends[0]] == "SigningKeyMade"
    assert all(one.genuine({one.key}) for one in found)


def test_what_stands_already_is_not_signed_again(journal):
    made = Checkpoints(journal, SystemClock())
    write_sessions(journal, 1)
    made.make()
    made.close()
    assert len(lines(journal.file.parent, journal)) == 1


def test_a_journal_without_rows_is_not_signed(tmp_path, journal):
    keys.signing_key(journal.file.parent)
    made = Checkpoints(journal, SystemClock())
    made.close()
    assert not made.trouble
    assert not (journal.file.parent / name_of(journal.kiosk)).exists()


def test_the_second_place_gets_a_copy_and_what_it_missed(tmp_path, journal):
    stick = tmp_path / "stick"
    made = Checkpoints(journal, SystemClock(), stick)
    write_sessions(journal, 1)
    made.close()
    assert "put the stick in" in made.trouble
    assert not stick.exists()
    stick.mkdir()
    write_sessions(journal, 1)
    made.close()
    assert made.trouble == ""
    assert lines(stick, journal) == lines(journal.file.parent, journal)
    assert len(lines(stick, journal)) == 2


def test_a_checkpoint_made_while_the_stick_is_being_written_still_comes_to_it(
    tmp_path, journal, monkeypatch
):
    """The copy on its way has read the lines already when the last one is made."""
    stick = tmp_path / "stick"
    stick.mkdir()
    writing, go_on = threading.Event(), threading.Event()
    append = checkpoints._append

    def slowly(file, added):
        if file.parent == stick:
            writing.set()
            assert go_on.wait(60)
        append(file, added)

    monkeypatch.setattr(checkpoints, "_append", slowly)
    made = Checkpoints(journal, SystemClock(), stick)
    write_sessions(journal, 1)
    made.make()
    assert writing.wait(60)
    write_sessions(journal, 1)
    made.make()
    go_on.set()
    made.close()
    assert len(lines(stick, journal)) == 2
    assert lines(stick, journal) == lines(journal.file.parent, journal)


def test_a_missing_second_place_is_told_at_the_start(tmp_path, journal):
    made = Checkpoints(journal, SystemClock(), tmp_path / "stick")
    made.begin()
    made.close()
    assert journal.trouble == "record-second-place"
    (tmp_path / "stick").mkdir()
    made.make()
    made.close()
    assert journal.trouble == ""


def test_what_the_second_place_has_more_stays_there(tmp_path, journal):
    stick = tmp_path / "stick"
    stick.mkdir()
    made = Checkpoints(journal, SystemClock(), stick)
    write_sessions(journal, 1)
    made.close()
    (journal.file.parent / name_of(journal.kiosk)).unlink()
    write_sessions(journal, 1)
    made.close()
    assert len(lines(stick, journal)) == 2


def test_half_a_line_is_closed_and_left_out(journal):
    made = Checkpoints(journal, SystemClock())
    write_sessions(journal, 1)
    made.make()
    file = journal.file.parent / name_of(journal.kiosk)
    with file.open("ab") as out:
        out.write(b'{"kiosk":"half')
    write_sessions(journal, 1)
    made.close()
    found, none = read(file)
    assert (len(found), none) == (2, (2,))


def test_trouble_is_kept_and_the_session_goes_on(journal):
    (journal.file.parent / keys.KEY_FILE).write_text("nonsense")
    made = Checkpoints(journal, SystemClock())
    journal.after_end = made.make
    write_sessions(journal, 1)
    assert "holds no key" in made.trouble
    assert journal.verify().whole


# What they prove.


def tampered(of, tmp_path, change):
    """Return a copy of a journal whose rows another function changed."""
    rows = [dict(row) for row in of.rows]
    change(rows)
    file = tmp_path / "tampered.db"
    put_in_place(of, file, rows)
    return file


def test_a_journal_is_vouched_for_up_to_its_last_checkpoint(one):
    found = judge(one.file, one.checkpoints)
    assert found.sound
    assert found.vouched == one.checkpoints[-1]


def test_rows_taken_off_the_end_are_named(one, tmp_path):
    last = len(one.rows)
    found = judge(tampered(one, tmp_path, lambda rows: rows.__delitem__(slice(-4, None))),
                  one.checkpoints)  # fmt: skip
    assert (found.verdict.wrong, found.verdict.bad_seq) == (Wrong.TRUNCATED, last - 3)
    assert f"rows {last - 3} to {last} are not here" in found.verdict.what


def test_all_rows_taken_out_are_noticed(one, tmp_path):
    empty = tampered(one, tmp_path, list.clear)
    assert judge(empty, one.checkpoints, {one.checkpoints[0].key}).verdict.wrong is Wrong.TRUNCATED
    # Without the key nothing is proven, and nothing passes either.
    assert not judge(empty, one.checkpoints).sound


def test_a_chain_written_anew_is_noticed_at_the_checkpoint_before(one, tmp_path):
    def rewrite(rows):
        rows[20]["body"] = rows[20]["body"].replace("touch", "voice")
        rechain(rows, 20)

    found = judge(tampered(one, tmp_path, rewrite), one.checkpoints)
    good = max(point.seq for point in one.checkpoints if point.seq <= 20)
    assert (found.verdict.wrong, found.verdict.bad_seq) == (Wrong.REWRITTEN, good + 1)
    assert found.vouched is not None
    assert found.vouched.seq == good


def test_another_kiosks_journal_in_its_place_is_noticed(one, other):
    key = {one.checkpoints[0].key}
    assert judge(other.file, one.checkpoints, key).verdict.wrong is Wrong.SPLICED


def test_a_checkpoint_signed_by_nobody_known_is_a_doubt_and_no_proof(one, tmp_path):
    stranger, _ = keys.signing_key(tmp_path)
    false = sign(stranger, one.rows[0]["kiosk"], 999, "f" * 64, "2026-01-01T00:00:00.000000Z")
    found = judge(one.file, [*one.checkpoints, false])
    assert found.verdict.whole
    assert (found.sound, "row 999" in found.doubts[0]) == (False, True)


@pytest.mark.parametrize(
    "change", [{"seq": 99}, {"hash": "0" * 64}, {"kiosk": "x"}, {"utc": "2020"}, {"key": "00" * 32}]
)
def test_a_changed_checkpoint_is_not_genuine(one, change):
    point = one.checkpoints[0]
    assert point.genuine({point.key})
    assert not replace(point, **change).genuine({point.key, "00" * 32})
    assert not replace(point, signature=point.signature[:-2] + "zz").genuine({point.key})


def test_the_key_given_is_trusted_alone(one, other):
    found = judge(one.file, one.checkpoints, {other.checkpoints[0].key}, believe_journal=False)
    assert found.vouched is None


def test_an_export_is_held_against_the_checkpoints_of_its_rows(one, tmp_path):
    file = tmp_path / "rows.jsonl"
    part = [json.dumps(row) for row in one.rows[10:]]
    file.write_text("\n".join(part) + "\n")
    key = {one.checkpoints[0].key}
    found = judge(file, one.checkpoints, key)
    assert (found.sound, found.verdict.rows) == (True, len(part))
    file.write_text("\n".join(part[:-1]) + "\n")
    assert judge(file, one.checkpoints, key).verdict.wrong is Wrong.TRUNCATED
    file.write_text("\n".join([*part[:3], part[3].replace("step", "stop")]) + "\n")
    assert judge(file, [], key).verdict.bad_seq == 14


@pytest.mark.parametrize("line", ["{}", "[]", "nonsense", '{"seq": "1"}', "\xff"])
def test_a_file_that_is_no_export_is_unreadable(tmp_path, line):
    file = tmp_path / "rows.jsonl"
    file.write_bytes(line.encode("latin-1") + b"\n")
    assert judge(file, []).verdict.wrong is Wrong.UNREADABLE


# At the kiosk's start.


def shortened(folder):
    with closing(sqlite3.connect(folder / "journal.db")) as db, db:
        db.execute("drop trigger journal_never_deleted")
        db.execute("delete from journal where seq > 5")


def test_a_start_on_a_shortened_journal_is_told_and_journaled(journal):
    made = Checkpoints(journal, SystemClock())
    made.begin()
    write_sessions(journal, 1)
    made.close()
    assert journal.trouble == ""
    seq, head = journal.mark()
    shortened(journal.file.parent)
    again = Checkpoints(journal, SystemClock())
    again.begin()
    assert journal.trouble == "record-disagrees"
    assert journal.shop_events()[-1].fact == CheckpointDisagreed(seq, head)
    again.close()
    assert journal.trouble == "record-disagrees"
    points, _ = read(journal.file.parent / name_of(journal.kiosk))
    assert judge(journal.file, points, {points[0].key}).verdict.wrong is Wrong.TRUNCATED


def test_the_second_place_tells_of_it_when_the_first_is_gone(tmp_path, journal):
    made = Checkpoints(journal, SystemClock(), tmp_path)
    write_sessions(journal, 1)
    made.close()
    shortened(journal.file.parent)
    (journal.file.parent / name_of(journal.kiosk)).unlink()
    Checkpoints(journal, SystemClock(), tmp_path).begin()
    assert journal.trouble == "record-disagrees"


def test_a_false_last_line_raises_no_alarm(tmp_path, journal):
    made = Checkpoints(journal, SystemClock())
    write_sessions(journal, 1)
    made.close()
    stranger, _ = keys.signing_key(tmp_path)
    false = sign(stranger, journal.kiosk, 99, "f" * 64, "2026-01-01T00:00:00.000000Z")
    with (journal.file.parent / name_of(journal.kiosk)).open("a") as out:
        out.write(json.dumps(asdict(false)) + "\n")
    Checkpoints(journal, SystemClock()).begin()
    assert journal.trouble == ""


def test_each_trouble_has_its_words(tmp_path, journal):
    made = Checkpoints(journal, SystemClock(), tmp_path / "gone")
    write_sessions(journal, 1)
    made.close()
    assert journal.trouble == "record-second-place"
    (journal.file.parent / keys.KEY_FILE).write_text("nonsense")
    made.make()
    assert journal.trouble == "record-unsigned"
    for name in ("record-second-place", "record-unsigned", "record-disagrees"):
        assert words("en").say(name) != name
