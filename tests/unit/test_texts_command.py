"""`kiosk texts`: what waits for a fluent speaker is listed, shown and signed."""

from __future__ import annotations

from pathlib import Path

import pytest

from kiosk.cli import main
from kiosk.cli.place import demo_folder
from kiosk.languages.signed import FILE, signatures
from kiosk.languages.words import words


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    return tmp_path


def test_a_language_is_listed_shown_signed_and_taken_back(capsys):
    assert main(["texts", "list", "es"]) == 0
    told = capsys.readouterr().out
    assert told.startswith("es · Español: ")
    assert "  walk.ftl: " in told

    assert main(["texts", "show", "es", "--only", "help.ftl"]) == 0
    assert "help.ftl help\n  en: help\n  es: ayuda\n" in capsys.readouterr().out

    assert main(["texts", "sign", "es", "--by", "Ana Prueba", "--only", "help.ftl"]) == 0
    assert capsys.readouterr().out.startswith("Ana Prueba firmó ")
    assert main(["texts", "show", "es", "--only", "help.ftl"]) == 0
    assert capsys.readouterr().out == ""
    assert main(["texts", "show", "es", "--only", "help.ftl", "--all"]) == 0
    assert "ayuda" in capsys.readouterr().out

    assert main(["texts", "sign", "es", "--by", "Beto"]) == 0
    assert main(["texts", "sign", "es", "--by", "Beto"]) == 0
    assert words("es").say("texts-nothing-left") in capsys.readouterr().out
    assert main(["texts", "list", "es"]) == 0
    first, second = [line for line in capsys.readouterr().out.splitlines() if "firmado por" in line]
    assert "Ana Prueba" in first
    assert "Beto" in second
    assert [one.by for one in signatures(demo_folder())] == ["Ana Prueba", "Beto"]

    assert main(["texts", "withdraw", "es"]) == 0
    assert signatures(demo_folder()) == ()


def test_a_text_that_changed_since_is_named(capsys):
    assert main(["texts", "sign", "es", "--by", "Ana", "--only", "help.ftl"]) == 0
    capsys.readouterr()
    assert main(["texts", "list", "es"]) == 0
    named = capsys.readouterr().out
    assert "common.yaml problems/" in named
    assert "help.ftl" not in named


@pytest.mark.parametrize(
    ("words_", "mend"),
    [
        (["sign", "es", "--by", " "], "write the name of who has read the texts"),
        (["sign", "es", "--by", "A\x1b[2J"], "write the name"),
        (["sign", "es", "--by", "Ana", "--only", "nothing.ftl"], "There are: "),
    ],
)
def test_what_cannot_be_is_refused_and_nothing_is_written(words_, mend, capsys):
    assert main(["texts", *words_]) == 1
    assert mend in capsys.readouterr().err
    assert not (demo_folder() / FILE).exists()


@pytest.mark.parametrize("command", ["list", "sign", "withdraw"])
def test_signatures_that_cannot_be_read_are_said(command, capsys):
    demo_folder().mkdir(parents=True)
    (demo_folder() / FILE).write_text("no list", encoding="utf-8")
    by = ["--by", "Ana"] if command == "sign" else []
    assert main(["texts", command, "es", *by]) == 1
    assert "To mend:" in capsys.readouterr().err
