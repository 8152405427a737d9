"""Spoken remarks: when a recording ends, that its sound is kept before it is told, and erased."""

from __future__ import annotations

import io
import json
import os
import shutil
import stat
import subprocess
import wave
from dataclasses import replace
from pathlib import Path

import numpy as np
import pytest

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.codec import shop_event, stamp
from kiosk.journal.shop_facts import KeptTimeOver, PersonErased, RemarkRecorded, ShopEvent
from kiosk.journal.store import Journal, JournalFailed
from kiosk.listening.endpoint import FRAME, FRAME_S
from kiosk.people.beside import Beside
from kiosk.people.erase import erase_person, keep_to_time
from kiosk.procedure.site import Kept
from kiosk.remarks.keeping import NotKept, keep
from kiosk.remarks.recorder import BEGIN_S, MOST_S, QUIET_S, TAIL_S, Ended, Recorder, level_of
from kiosk.remarks.sounds import FOLDER, Lies, Sounds, SoundsFailed
from kiosk.remarks.told import Erasure, journaled
from tests.screens.scene import RITA, SITE

DAY = 86_400.0
NOW = 1_774_000_000.0
TOUCH = Evidence(Channel.TOUCH)
SPEECH, SILENCE = np.full(FRAME, 0.5, np.float32), np.zeros(FRAME, np.float32)
# 1 kHz, a whole number of periods in a frame.
SINE = np.sin(2 * np.pi * 1000 * np.arange(FRAME) / 16_000).astype(np.float32)


class Scene:
    """A recording with a detector that takes what is loud for speech."""

    def __init__(self) -> None:
        self.ends = 0
        self.silent = True
        self.recorder = Recorder(
            self._ended, lambda: self.silent, lambda frame: float(frame.max() > 0.3)
        )

    def _ended(self) -> None:
        self.ends += 1

    def take(self, frame: np.ndarray, seconds: float) -> None:
        for _ in range(round(seconds / FRAME_S)):
            self.recorder.take(frame)


@pytest.fixture
def scene() -> Scene:
    return Scene()


def test_it_ends_after_two_seconds_of_silence_and_not_before(scene):
    scene.take(SPEECH, 1.0)
    scene.take(SILENCE, QUIET_S - 0.1)
    assert scene.recorder.ended is None
    scene.take(SPEECH, 0.5)
    scene.take(SILENCE, QUIET_S - 0.1)
    assert scene.recorder.ended is None
    scene.take(SILENCE, 0.2)
    assert scene.recorder.ended is Ended.SILENT
    assert scene.recorder.spoke
    assert scene.ends == 1
    assert scene.recorder.seconds == pytest.approx(1.0 + 1.9 + 0.5 + QUIET_S, abs=0.15)


def test_thirty_seconds_are_the_most_and_what_comes_after_is_dropped(scene):
    scene.take(SPEECH, MOST_S + 5)
    assert scene.recorder.ended is Ended.FULL
    assert scene.ends == 1
    assert scene.recorder.seconds == pytest.approx(30, abs=FRAME_S)


def test_who_says_nothing_is_not_recorded_for_ever(scene):
    scene.take(SILENCE, BEGIN_S - 0.1)
    assert scene.recorder.ended is None
    scene.take(SILENCE, 0.2)
    assert scene.recorder.ended is Ended.NOTHING_SAID
    assert not scene.recorder.spoke


def test_the_kiosks_own_voice_and_its_tail_are_left_out(scene):
    scene.silent = False
    scene.take(SPEECH, 1.0)
    assert scene.recorder.seconds == 0
    assert not scene.recorder.spoke
    scene.silent = True
    scene.take(SPEECH, TAIL_S)
    assert scene.recorder.seconds == 0
    scene.take(SPEECH, 1.0)
    assert scene.recorder.seconds == pytest.approx(1.0, abs=2 * FRAME_S)


def test_a_press_stops_it_and_nobody_is_told_of_it_twice(scene):
    scene.take(SPEECH, 1.0)
    scene.recorder.stop()
    scene.take(SPEECH, MOST_S)
    assert scene.recorder.ended is Ended.STOPPED
    assert scene.recorder.seconds == pytest.approx(1.0, abs=FRAME_S)
    assert scene.ends == 0


def test_the_wave_file_has_what_was_said_as_scipy_reads_it(scene):
    wavfile = pytest.importorskip("scipy.io.wavfile")
    scene.take(SINE, 1.0)
    rate, samples = wavfile.read(io.BytesIO(scene.recorder.wave()))
    assert rate == 16_000
    assert samples.dtype == np.int16
    frames = round(1.0 / FRAME_S)
    assert np.abs(samples / 32_767 - np.tile(SINE, frames)).max() < 1 / 32_767


def test_what_is_too_loud_is_clipped_and_not_turned_over(scene):
    scene.take(SINE * 3, FRAME_S)
    with wave.open(io.BytesIO(scene.recorder.wave())) as file:
        samples = np.frombuffer(file.readframes(FRAME), dtype="<i2")
    assert samples.max() == 32_767
    assert samples.min() == -32_767
    assert (np.sign(samples[np.abs(SINE) > 0.4]) == np.sign(SINE[np.abs(SINE) > 0.4])).all()


def test_the_level_is_in_decibels_to_full_scale():
    # A sine of full scale has a power of -3.01 dB to a square wave of full scale (CALC).
    assert level_of(SINE) == pytest.approx(1 - 3.01 / 60, abs=0.001)
    assert level_of(SINE / 10) == pytest.approx(1 - 23.01 / 60, abs=0.001)
    assert level_of(np.full(FRAME, 1.0, np.float32)) == 1
    assert level_of(SINE / 10_000) == level_of(SILENCE) == 0


# Keeping.


class Clock:
    def __init__(self) -> None:
        self.utc = NOW

    def now(self) -> Instant:
        return Instant(self.utc, 100.0, "boot-1")


class Shelf:
    """A data folder with its journal and what lies beside it."""

    def __init__(self, folder: Path) -> None:
        self.folder, self.clock = folder, Clock()
        self.journal, self.beside = Journal(folder), Beside(folder)
        self.sounds = Sounds(folder)
        self.said = 0

    def remark(self, worker: str = "ana") -> RemarkRecorded:
        """Keep a remark; each is another sound."""
        self.said += 1
        made = Scene()
        made.take(SINE / self.said, 2.0)
        return keep(
            made.recorder, self.folder, self.journal, self.clock, TOUCH,
            session="a-session", step="lid", worker=worker, practice=True,
        )  # fmt: skip

    def files(self) -> set[str]:
        found = self.folder / FOLDER
        return {one.name for one in found.iterdir()} if found.exists() else set()

    def facts(self) -> list[object]:
        return [one.fact for one in self.journal.shop_events()]


@pytest.fixture
def shelf(tmp_path: Path):
    made = Shelf(tmp_path)
    yield made
    made.journal.close()
    made.beside.close()


def mode(path: Path) -> int:
    return stat.S_IMODE(path.stat().st_mode)


def test_the_sound_lies_beside_the_journal_which_has_its_hash_and_no_sound(shelf):
    before = os.umask(0)
    try:
        fact = shelf.remark()
    finally:
        os.umask(before)
    assert fact == RemarkRecorded("a-session", "lid", "ana", fact.sha256, 2.0, True)
    assert shelf.facts() == [fact]
    assert shelf.files() == {f"{fact.sha256}.wav"}
    file = shelf.sounds.file(fact.sha256)
    assert mode(file) == 0o600
    assert mode(file.parent) == 0o700
    row = next(shelf.journal.rows())
    assert len(row["body"]) < 300
    assert set(json.loads(row["body"])["fact"]) == {
        "session", "step", "worker", "sha256", "seconds", "practice",
    }  # fmt: skip


@pytest.mark.skipif(shutil.which("sha256sum") is None, reason="sha256sum (coreutils) is missing")
def test_the_hash_is_the_one_that_sha256sum_finds(shelf):
    fact = shelf.remark()
    file = shelf.sounds.file(fact.sha256)
    found = subprocess.run(["sha256sum", file], capture_output=True, text=True, check=True)
    assert found.stdout.split()[0] == fact.sha256


def test_the_sound_is_on_the_disk_before_the_journal_tells_of_it(shelf, monkeypatch):
    order: list[str] = []
    fsync, append = os.fsync, shelf.journal.append_shop

    def synced(handle: int) -> None:
        kind = "folder" if stat.S_ISDIR(os.fstat(handle).st_mode) else "file"
        order.append(kind)
        fsync(handle)

    def told(events: list[ShopEvent]) -> None:
        order.append("fact")
        assert shelf.files() == {f"{events[0].fact.sha256}.wav"}
        append(events)

    monkeypatch.setattr(os, "fsync", synced)
    monkeypatch.setattr(shelf.journal, "append_shop", told)
    shelf.remark()
    assert order == ["folder", "file", "folder", "fact"]


def test_what_the_journal_cannot_tell_of_is_not_kept(shelf, monkeypatch):
    def full(events: object) -> None:
        raise JournalFailed("disk full")

    monkeypatch.setattr(shelf.journal, "append_shop", full)
    with pytest.raises(NotKept, match="disk full"):
        shelf.remark()
    assert shelf.files() == set()
    assert shelf.facts() == []


def test_what_cannot_be_written_is_not_told(shelf):
    (shelf.folder / FOLDER).write_text("somebody's file", encoding="utf-8")
    with pytest.raises(NotKept, match="remarks"):
        shelf.remark()
    assert shelf.facts() == []
    assert (shelf.folder / FOLDER).read_text(encoding="utf-8") == "somebody's file"


def test_a_sound_is_looked_at_by_its_hash(shelf):
    sha256 = shelf.remark().sha256
    assert shelf.sounds.look(sha256) is Lies.HERE
    file = shelf.sounds.file(sha256)
    data = bytearray(file.read_bytes())
    data[-1] ^= 1
    file.write_bytes(data)
    assert shelf.sounds.look(sha256) is Lies.ALTERED
    file.unlink()
    assert shelf.sounds.look(sha256) is Lies.MISSING
    file.mkdir()
    assert shelf.sounds.look(sha256) is Lies.UNREADABLE
    # A row that was tampered with leads to no other file.
    (shelf.folder / "site.wav").write_text("x", encoding="utf-8")
    assert shelf.sounds.look("../site") is Lies.MISSING


# Erasing.


def without_rita():
    return replace(SITE, people=tuple(one for one in SITE.people if one != RITA))


def test_an_erased_remark_keeps_its_hash_and_tells_when_and_by_whom(shelf):
    ana, rita = shelf.remark("ana"), shelf.remark("rita")
    shelf.clock.utc += 5 * DAY
    done = erase_person(
        "rita", "boss", without_rita(), shelf.folder, shelf.beside, shelf.journal, shelf.clock
    )
    assert done == PersonErased("rita", "boss", 0, (rita.sha256,))
    assert shelf.files() == {f"{ana.sha256}.wav"}
    first, second = journaled(shelf.journal)
    assert (first.sha256, first.erased) == (ana.sha256, None)
    assert (second.sha256, second.seconds) == (rita.sha256, 2.0)
    assert second.erased == Erasure(NOW + 5 * DAY, "boss")
    assert shelf.journal.verify().whole


def test_an_erasing_that_failed_can_be_done_again_and_keeps_its_first_date(shelf, monkeypatch):
    shelf.remark("rita")

    def fails(*_: object) -> None:
        raise SoundsFailed("the disk is read-only")

    people = (without_rita(), shelf.folder, shelf.beside, shelf.journal, shelf.clock)
    with monkeypatch.context() as patch:
        patch.setattr(Sounds, "erase", fails)
        with pytest.raises(SoundsFailed):
            erase_person("rita", "boss", *people)
    assert shelf.files()
    shelf.clock.utc += DAY
    assert erase_person("rita", "other", *people).sounds == ()
    assert shelf.files() == set()
    assert journaled(shelf.journal)[0].erased == Erasure(NOW, "boss")


def test_remarks_are_kept_for_as_long_as_the_site_says(shelf):
    site = replace(SITE, kept=Kept(remarks_days=30))
    old = shelf.remark("ana")
    shelf.clock.utc += 20 * DAY
    new = shelf.remark("ana")
    assert keep_to_time(site, shelf.beside, shelf.journal, shelf.clock) is None
    shelf.clock.utc += 11 * DAY
    done = keep_to_time(site, shelf.beside, shelf.journal, shelf.clock)
    assert done == KeptTimeOver((), 0, (old.sha256,))
    assert shelf.files() == {f"{new.sha256}.wav"}
    assert journaled(shelf.journal)[0].erased == Erasure(NOW + 31 * DAY, "")
    assert keep_to_time(site, shelf.beside, shelf.journal, shelf.clock) is None
    assert shelf.files() == {f"{new.sha256}.wav"}


def test_without_days_remarks_are_kept_for_good(shelf):
    shelf.remark()
    shelf.clock.utc += 10_000 * DAY
    assert keep_to_time(SITE, shelf.beside, shelf.journal, shelf.clock) is None
    assert len(shelf.files()) == 1


def test_a_sound_that_no_row_names_goes_with_time_and_other_files_stay(shelf):
    kept = shelf.remark()
    stray = shelf.sounds.keep(b"left when the power failed")
    half = shelf.sounds.file("a" * 64).with_suffix(".new")
    half.write_bytes(b"half")
    other = shelf.folder / FOLDER / "notes.wav"
    other.write_bytes(b"somebody's")
    for one in (shelf.sounds.file(stray), half, other):
        os.utime(one, (NOW, NOW))
    shelf.clock.utc += 29 * DAY
    site = replace(SITE, kept=Kept(remarks_days=30))
    keep_to_time(site, shelf.beside, shelf.journal, shelf.clock)
    assert len(shelf.files()) == 4
    shelf.clock.utc = NOW + 30 * DAY + 1
    keep_to_time(SITE, shelf.beside, shelf.journal, shelf.clock)
    assert len(shelf.files()) == 4
    keep_to_time(site, shelf.beside, shelf.journal, shelf.clock)
    assert shelf.files() == {"notes.wav"}
    assert journaled(shelf.journal)[0].sha256 == kept.sha256


def test_rows_of_an_erasing_that_tell_of_no_sounds_are_read(shelf):
    """Rows written before there were spoken remarks."""
    body = '{"by":{"channel":"key"},"fact":{"by":"boss","person":"rita","remarks":2}}'
    assert shop_event("PersonErased", stamp(NOW), 1, "b", body).fact == PersonErased(
        "rita", "boss", 2
    )
