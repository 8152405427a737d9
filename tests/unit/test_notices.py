"""What is amiss is told in the reader's language, with what mends it."""

from __future__ import annotations

import sqlite3
from contextlib import closing
from pathlib import Path

import pytest

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import PinSet, ShopEvent
from kiosk.journal.store import GoneOn, Journal, JournalFailed
from kiosk.languages.notice import Notice, Told
from kiosk.languages.words import languages, notice, words
from kiosk.listening.models import Missing, open_ear
from kiosk.speaking.player import NoSpeaker
from kiosk.speaking.voices import SpeechFailed, choice_for

NOW = Instant(1_774_000_000.0, 1.0, "boot-1")
FACT = ShopEvent(NOW, Evidence(Channel.KEY), PinSet("p1", "p2"))


def told(text: str, language: str) -> str:
    return words(language).told(text)


def test_a_notice_is_english_until_it_is_told():
    found = notice("speaker-none", reason="x1")
    assert found == "no sound device (x1)"
    assert told(found, "es") == "no hay dispositivo de sonido (x1)"
    assert told("as it is", "es") == "as it is"


def test_a_notice_inside_another_one_is_told_as_well():
    why = notice("voice-off", why=notice("speaker-stopped"))
    assert why == "I cannot speak: the loudspeaker stopped taking sound"
    for language in languages():
        inner = words(language).say("speaker-stopped")
        assert told(why, language) == words(language).say("voice-off", why=inner)
        assert words(language).say("voice-off", why=notice("speaker-stopped")).endswith(inner)


def test_an_error_keeps_its_notice_through_its_text():
    error = NoSpeaker(notice("speaker-stopped"))
    assert isinstance(str(error), Notice)
    assert str(SpeechFailed("it is gone")) == "it is gone"
    assert str(Told()) == ""


def test_a_language_without_a_voice_is_told_in_each_language():
    with pytest.raises(SpeechFailed, match="there is no voice for the language 'xx'") as failure:
        choice_for("xx")
    said = {told(str(failure.value), one) for one in languages()}
    assert len(said) == len(languages())
    assert all("xx" in one for one in said)


def test_a_language_without_an_ear_is_told_with_its_mend(tmp_path, monkeypatch):
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    ear = open_ear("vi", tmp_path)
    assert isinstance(ear, Missing)
    said = {told(ear.mend, one) for one in languages()}
    assert len(said) == len(languages())
    assert all("kiosk voice add vi" in one for one in said)


# The journal, on a real disk with a real SQLite.


def write(journal: Journal, times: int = 1) -> None:
    for _ in range(times):
        journal.append_shop([FACT])


def failing(journal: Journal) -> Notice:
    with pytest.raises(JournalFailed) as failure:
        write(journal)
    found = str(failure.value)
    assert isinstance(found, Notice)
    return found


def test_a_full_disk_is_to_be_freed(tmp_path):
    with closing(Journal(tmp_path)) as journal:
        write(journal)
        # SQLite gives SQLITE_FULL, as for a full disk: sqlite.org/pragma, max_page_count.
        pages = journal._db.execute("pragma page_count").fetchone()[0]
        journal._db.execute(f"pragma max_page_count = {pages}")
        with pytest.raises(JournalFailed) as failure:
            write(journal, 200)
    found = str(failure.value)
    assert found.name == "journal-full"
    assert "Free some of it" in found
    assert str(tmp_path) in told(found, "ko")


def test_a_journal_that_was_moved_is_to_be_put_back(tmp_path):
    with closing(Journal(tmp_path)) as journal:
        write(journal)
        journal.file.rename(tmp_path / "elsewhere.db")
        found = failing(journal)
        assert found.name == "journal-moved"
        assert "Put it back" in found
        assert "disk" not in found
        (tmp_path / "elsewhere.db").rename(journal.file)
        write(journal)


def test_a_second_kiosk_is_to_be_closed(tmp_path):
    with closing(Journal(tmp_path)) as journal, closing(Journal(tmp_path)) as other:
        last = journal.append("2026-03-12-m1-0a0a0a0a", [FACT])
        other.append("2026-03-12-m1-0a0a0a0a", [FACT], last)
        with pytest.raises(GoneOn) as failure:
            journal.append("2026-03-12-m1-0a0a0a0a", [FACT], last)
    found = str(failure.value)
    assert found.name == "journal-two-kiosks"
    assert "Close one of them" in found
    assert str(tmp_path) in told(found, "zh")


def test_a_journal_that_another_program_holds_is_busy(tmp_path):
    with (
        closing(Journal(tmp_path)) as journal,
        closing(sqlite3.connect(journal.file, isolation_level=None)) as other,
    ):
        journal._db.execute("pragma busy_timeout = 0")
        other.execute("begin immediate")
        assert failing(journal).name == "journal-busy"


def test_a_damaged_file_needs_a_backup(tmp_path):
    Path(tmp_path, "journal.db").write_bytes(b"no database at all, but long enough to be read" * 99)
    with pytest.raises(JournalFailed) as failure:
        Journal(tmp_path)
    found = str(failure.value)
    assert found.name == "journal-damaged"
    assert "go on with a backup" in found


def test_a_place_that_may_not_be_written_is_told_with_its_reason():
    with pytest.raises(JournalFailed) as failure:
        Journal(Path("/proc/brushdown"))
    assert str(failure.value).name in ("journal-read-only", "journal-failed")
