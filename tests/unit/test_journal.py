"""The journal: written whole or not at all, never changed, and any change noticed."""

from __future__ import annotations

import sqlite3
from pathlib import Path

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal import chain, codec
from kiosk.journal.store import Journal, JournalFailed

AT = Instant(1_774_000_000.25, 12.5, "boot-1")
TOUCH = Evidence(Channel.TOUCH)
STARTED = e.SessionStarted("close", 1, "d" * 64, "m1", "ana", "en", "in service", "drying", True)


def event(fact: e.Fact, by: Evidence = TOUCH) -> e.Event:
    return e.Event(AT, by, fact)


@pytest.fixture
def journal(tmp_path: Path):
    opened = Journal(tmp_path)
    yield opened
    opened.close()


def fill(journal: Journal, rows: int = 6) -> None:
    journal.append("s1", [event(STARTED)])
    for number in range(rows - 1):
        journal.append("s1", [event(e.StepEntered(f"step-{number}", "goal"))])


def tamper(journal: Journal, *statements: str) -> None:
    """Change rows as a dishonest person would: the triggers dropped first."""
    other = sqlite3.connect(journal.file)
    for trigger in ("journal_never_updated", "journal_never_deleted"):
        other.execute(f"drop trigger {trigger}")
    for statement in statements:
        other.execute(statement)
    other.commit()
    other.close()


def test_the_open_journal_syncs_every_commit_to_disk(journal):
    assert journal._db.execute("pragma synchronous").fetchone()[0] == 2
    assert journal._db.execute("pragma journal_mode").fetchone()[0] == "wal"


def test_a_new_journal_is_whole_and_empty(journal):
    assert journal.verify() == chain.Verdict(0, chain.FIRST)


def test_events_come_back_as_they_were_written(journal):
    voice = Evidence(Channel.VOICE, "power is off", 0.913, "whisper-tiny.en")
    confirmed = e.StepConfirmed("isolate", "phrase", "", "", "", ("power isolated",), (), "")
    written = [event(STARTED), event(confirmed, voice)]
    journal.append("s1", written)
    assert journal.events("s1") == written
    assert journal.verify().whole


def test_sessions_that_did_not_end_are_open(journal):
    journal.append("s1", [event(STARTED)])
    journal.append("s2", [event(STARTED)])
    journal.append("s1", [event(e.SessionCompleted())])
    assert journal.sessions() == ["s1", "s2"]
    assert journal.open_sessions() == ["s2"]


@pytest.mark.parametrize(
    "statement",
    [
        "update journal set body = '{}' where seq = 2",
        "delete from journal where seq = 2",
        "insert or replace into journal select * from journal where seq = 2",
    ],
)
def test_the_database_refuses_to_change_a_row(journal, statement):
    fill(journal)
    with pytest.raises(sqlite3.DatabaseError, match="append-only"):
        journal._db.execute(statement)
    assert journal.verify().whole


@pytest.mark.parametrize(
    ("statement", "bad_seq", "what"),
    [
        ("update journal set body = replace(body, 'step-2', 'step-9') where seq = 4", 4, "altered"),
        ("update journal set utc = '2020-01-01T00:00:00.000000Z' where seq = 3", 3, "altered"),
        ("update journal set kiosk = 'another' where seq = 5", 5, "altered"),
        ("delete from journal where seq = 3", 3, "missing"),
        ("delete from journal where seq = 1", 1, "missing"),
        ("update journal set seq = 99 where seq = 2", 2, "missing"),
        ("update journal set hash = prev, prev = hash where seq = 4", 4, "altered"),
    ],
)
def test_verify_names_the_first_bad_row(journal, statement, bad_seq, what):
    fill(journal)
    tamper(journal, statement)
    verdict = journal.verify()
    assert (verdict.bad_seq, what in verdict.what) == (bad_seq, True), verdict


@pytest.fixture(scope="module")
def six_rows(tmp_path_factory):
    journal = Journal(tmp_path_factory.mktemp("journal"))
    fill(journal)
    rows = list(journal.rows())
    journal.close()
    return rows


@given(
    seq=st.integers(1, 6),
    name=st.sampled_from([name for name in chain.COVERED if name not in ("seq", "mono_us")]),
    place=st.integers(0, 10_000),
    flip=st.integers(1, 127),
)
def test_a_changed_character_in_any_covered_field_is_named(six_rows, seq, name, place, flip):
    text = six_rows[seq - 1][name]
    at = place % len(text)
    changed = text[:at] + chr(ord(text[at]) ^ flip) + text[at + 1 :]
    rows = [{**row, name: changed} if row["seq"] == seq else row for row in six_rows]
    assert chain.verify(rows).bad_seq == seq


def test_one_byte_flipped_in_the_file_makes_verify_name_the_row(journal):
    fill(journal)
    journal.close()
    data = journal.file.read_bytes()
    place = data.index(b'"step":"step-3"') + len(b'"step":"step-')
    journal.file.write_bytes(data[:place] + b"7" + data[place + 1 :])
    again = Journal(journal.file.parent)
    verdict = again.verify()
    again.close()
    assert verdict.bad_seq == 5


def test_a_failed_append_writes_nothing(journal):
    fill(journal, 2)

    class Unwritable:
        pass

    with pytest.raises(TypeError):
        journal.append("s1", [event(e.EndAsked()), event(Unwritable())])
    assert journal.verify() == chain.Verdict(2, journal.verify().head)


def test_a_folder_that_cannot_be_written_is_a_plain_error(tmp_path):
    (tmp_path / "file").write_text("in the way")
    with pytest.raises(JournalFailed, match="file"):
        Journal(tmp_path / "file" / "folder")


def test_a_row_of_an_unknown_kind_is_a_plain_error():
    with pytest.raises(codec.UnknownEvent, match="StepDreamt"):
        codec.event("StepDreamt", "2026-01-01T00:00:00.000000Z", 0, "b", '{"by":{},"fact":{}}')


instants = st.builds(
    Instant,
    st.integers(0, 4_000_000_000_000_000).map(lambda us: us / 1e6),
    st.integers(0, 10**15).map(lambda us: us / 1e6),
    st.text(min_size=1, max_size=8),
)


@given(
    at=instants,
    heard=st.text(max_size=20),
    confidence=st.none() | st.integers(0, 1000).map(lambda thousandths: thousandths / 1000),
    names=st.lists(st.text(max_size=10), max_size=3).map(tuple),
)
def test_every_event_survives_the_journal_text(at, heard, confidence, names):
    by = Evidence(Channel.VOICE, heard, confidence, "ear")
    written = e.Event(at, by, e.StepConfirmed("s", "any", heard, "", "", names, names))
    kind = type(written.fact).__name__
    stamp, mono = codec.stamp(at.utc), round(at.mono * 1e6)
    assert codec.event(kind, stamp, mono, at.boot, codec.body(written)) == written
