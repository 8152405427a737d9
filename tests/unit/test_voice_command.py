"""`kiosk voice` says what it does, asks in clear words, and fails in a sentence."""

from __future__ import annotations

import argparse
import hashlib
import io
import sys
from pathlib import Path

import pytest

from kiosk.cli import voice
from kiosk.cli.place import Failed
from kiosk.listening import model_store
from kiosk.listening.model_list import known_models
from kiosk.listening.model_store import Shelved, State
from tests.file_server import serving
from tests.unit.test_voice_store import NAME, ZIP, on_stick

ZIP_SHA = hashlib.sha256(ZIP).hexdigest()


@pytest.fixture(autouse=True)
def home(tmp_path, monkeypatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path / "home"))
    monkeypatch.setenv("COLUMNS", "200")
    monkeypatch.setenv("no_proxy", "127.0.0.1")
    return tmp_path / "home"


def kiosk(*words: str) -> int:
    parser = argparse.ArgumentParser()
    voice.add(parser.add_subparsers())
    parsed = parser.parse_args(["voice", *words])
    return parsed.command(parsed)


class Terminal(io.StringIO):
    """A keyboard at which something is typed."""

    def isatty(self) -> bool:
        return True


def test_the_list_shows_each_language_and_how_it_stands(home, tmp_path, capsys):
    kiosk("add", "es", "--from", on_stick(tmp_path, ZIP), "--sha256", ZIP_SHA)
    capsys.readouterr()
    assert kiosk("list") == 0
    rows = {
        words[0]: line
        for line in capsys.readouterr().out.splitlines()
        if len(words := line.replace("│", " ").split()) > 4
    }
    assert "installed" in rows["es"]
    assert "can be added" in rows["vi"]
    assert "34 MB" in rows["vi"]
    assert "MEM" in rows["vi"]
    assert "alphacephei.com" in rows["zh"]
    assert "264 MB" in rows["ko"]
    assert "pip" in rows["ko"]


def test_a_narrow_list_loses_no_letter(home, monkeypatch, capsys):
    monkeypatch.setenv("COLUMNS", "80")
    korean = next(one for one in known_models("ko"))
    monkeypatch.setattr(model_store, "shelf", lambda _: [Shelved(korean, State.BY_PIP, None)])
    kiosk("list")
    out = capsys.readouterr().out
    assert "…" not in out
    cells = [line.split("│") for line in out.splitlines() if line.startswith("│")]
    state = "".join(row[7].strip() for row in cells)
    assert "'brushdown[korean]'" in state


def test_the_list_names_a_broken_model_and_ends_with_one(home, capsys):
    (home / "models" / NAME / "am").mkdir(parents=True)
    assert kiosk("list") == 1
    said = capsys.readouterr()
    assert "broken" in said.out
    assert f"{NAME} in {home / 'models' / NAME} is not whole: am/final.mdl" in said.err


def test_adding_from_a_server_says_licence_source_and_place(home, capsys):
    with serving(ZIP) as served:
        kiosk("add", "es", "--from", served.address, "--sha256", ZIP_SHA)
    said = capsys.readouterr().out
    assert "Apache-2.0 (from memory" in said
    assert served.address in said
    assert f"is installed in {home / 'models' / NAME}" in said
    assert (home / "models" / NAME / "am" / "final.mdl").is_file()


@pytest.mark.parametrize(
    ("typed", "taken"), [("trust\n", True), (" TRUST \n", True), ("yes\n", False), ("", False)]
)
def test_an_unknown_checksum_wants_the_clear_word(home, tmp_path, monkeypatch, typed, taken):
    monkeypatch.setattr(sys, "stdin", Terminal(typed))
    command = ("add", "vi", "--from", on_stick(tmp_path, ZIP))
    if taken:
        assert kiosk(*command) == 0
    else:
        with pytest.raises(Failed, match="not accepted"):
            kiosk(*command)
    assert (home / "models" / "vosk-model-small-vn-0.4").exists() is taken


def test_without_a_keyboard_an_unknown_checksum_is_not_taken(home, tmp_path, monkeypatch):
    monkeypatch.setattr(sys, "stdin", io.StringIO("trust\n"))
    with pytest.raises(Failed, match=f"add --sha256 {ZIP_SHA}"):
        kiosk("add", "vi", "--from", on_stick(tmp_path, ZIP))


def test_removing_names_the_folder(home, tmp_path, capsys):
    kiosk("add", "es", "--from", on_stick(tmp_path, ZIP), "--sha256", ZIP_SHA)
    assert kiosk("remove", "es") == 0
    assert f"{home / 'models' / NAME} is removed" in capsys.readouterr().out
    with pytest.raises(Failed, match="Nothing is removed"):
        kiosk("remove", "es")


def test_an_unknown_language_names_the_known(home):
    with pytest.raises(Failed, match="Known are: en, es, zh, vi, fr, pt, ko"):
        kiosk("add", "tlh")
