"""What a kiosk withstands of clocks, sound, files and texts: the walk goes on, and it is said."""

from __future__ import annotations

import pytest

from kiosk.languages.words import words
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.site import load_site
from tests.faults import clocks, files, half_a_model, sounds, texts
from tests.faults.judging import ROOT
from tests.sound_server import missing_for_a_sound_server


def test_a_clock_that_is_set_neither_shortens_a_wait_nor_stops_the_review(tmp_path, chance):
    found = clocks.set_in_a_wait(tmp_path, 4, chance)
    assert found.nothing_lost
    assert found.seen
    assert all(one.startswith("Not yet.") for one in found.seen)


def test_a_loudspeaker_unplugged_in_the_middle_of_a_sentence(tmp_path, chance):
    lacking = missing_for_a_sound_server()
    if lacking:
        pytest.skip(lacking)
    pytest.importorskip("miniaudio", reason="miniaudio is not installed")
    found = sounds.speaker_unplugged(tmp_path, 1, chance)
    assert found.nothing_lost
    assert found.seen == ["the loudspeaker stopped taking sound"]


def test_a_microphone_unplugged_while_its_ear_is_loaded_stays_said(tmp_path, chance):
    found = sounds.microphone_unplugged(tmp_path, 2, chance)
    assert found.nothing_lost
    assert len(found.seen) >= 1


@pytest.mark.parametrize("engine", ["vosk", "whisper"])
def test_a_model_that_was_half_copied_is_named_with_its_mend(tmp_path, engine, chance):
    if half_a_model.whole(engine) is None:
        pytest.skip(f"no whole {engine} model is installed")
    found = half_a_model.half_copied(engine, tmp_path, 1, chance)
    assert found.nothing_lost
    assert all(one == half_a_model.OPENED or "To mend: " in one for one in found.seen)


def test_a_procedure_spoiled_while_it_is_walked(tmp_path, chance):
    assert files.procedure_spoiled(tmp_path, 2, chance).nothing_lost


def test_any_file_beside_the_journal_may_be_spoiled(tmp_path, chance):
    found = files.beside_spoiled(tmp_path, 7, chance)
    assert found.nothing_lost
    assert found.seen


def test_hostile_texts_come_back_as_they_were_and_harm_no_terminal(tmp_path, chance):
    assert texts.hostile_texts(tmp_path, 5, chance).nothing_lost


def test_an_id_that_cannot_be_printed_is_refused_where_it_is_written(tmp_path):
    text = (ROOT / "demo" / "site.toml").read_text(encoding="utf-8")
    (tmp_path / "site.toml").write_text(text.replace('id = "patio"', r'id = "pat\nio"'), "utf-8")
    with pytest.raises(FaultyFile, match="cannot be printed"):
        load_site(tmp_path / "site.toml")


def test_a_very_long_session(tmp_path, chance):
    found = texts.very_long(tmp_path, 300, chance)
    assert found.nothing_lost
    assert found.seen in ([], [words("en").say("held-restart")])
