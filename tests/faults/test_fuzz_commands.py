"""Commands given spoilt files: they end with a sentence, never with a traceback."""

from __future__ import annotations

import io
from contextlib import redirect_stderr, redirect_stdout
from pathlib import Path

import pytest
from hypothesis import HealthCheck, given, settings
from hypothesis import strategies as st

from kiosk.cli import main
from kiosk.journal.store import FILE
from kiosk.shipped import shipped
from tests.faults.fuzzing import EDITS, EXAMPLES, TARGETS, spoilt

BY_NAME = {one.name: one for one in TARGETS}

COMMANDS = (
    ("laboratory results", ["lab", "import", "{file}", "--by", "p1"]),
    ("export", ["log", "verify", "{file}"]),
    ("journal", ["log", "verify", "{file}"]),
    ("backup", ["log", "restore", "{file}", "--new-device"]),
    ("backup with remarks", ["log", "restore", "{file}", "--new-device"]),
    ("backup with remarks", ["log", "verify", "{file}"]),
    ("checkpoints", ["log", "verify", "{journal}", "--checkpoints", "{file}"]),
    ("public key", ["log", "verify", "{journal}", "--key", "{file}"]),
    ("list of models", ["voice", "list"]),
    ("site", ["log", "list"]),
    ("site", ["lab", "list"]),
    ("journal in use", ["log", "list"]),
    ("journal in use", ["log", "show", "shop"]),
    ("journal in use", ["log", "audit"]),
    ("journal in use", ["lab", "list"]),
    ("journal in use", ["parts", "list"]),
    ("journal in use", ["report", "day", "2026-11-25"]),
    ("journal in use", ["log", "backup", "{folder}/copy.db"]),
    ("signing key", ["log", "key"]),
)
"""What is spoilt, and the command that reads it."""
_PLACES = {"list of models": "models/models.toml", "site": "site.toml", "journal in use": FILE,
           "signing key": "signing.key"}  # fmt: skip


def run(words: list[str]) -> tuple[int, str]:
    """Run a command; return its status, and all that it printed."""
    out = io.TextIOWrapper(io.BytesIO(), encoding="utf-8", write_through=True)
    with redirect_stdout(out), redirect_stderr(out):
        status = main(words)
    out.seek(0)
    return status, out.read()


def put(folder: Path, name: str, data: bytes) -> Path:
    """Lay a file where the command looks for it, beside a site of its own."""
    for place in folder.rglob("*"):
        if place.is_file():
            place.unlink()
    (folder / "site.toml").write_bytes((shipped("demo") / "site.toml").read_bytes())
    file = folder / _PLACES.get(name, f"given/{BY_NAME.get(name, TARGETS[0]).file}")
    file.parent.mkdir(exist_ok=True)
    file.write_bytes(data)
    return file


@pytest.mark.parametrize(
    ("name", "words"),
    COMMANDS,
    ids=lambda one: (
        "-".join(one).replace(" ", "-") if isinstance(one, list) else one.replace(" ", "-")
    ),
)
def test_a_command_ends_with_a_sentence(name, words, tmp_path, monkeypatch):
    home, made = tmp_path / "home", tmp_path / "made"
    home.mkdir()
    made.mkdir()
    monkeypatch.setenv("KIOSK_HOME", str(home))
    monkeypatch.chdir(home)
    seeds = BY_NAME["journal" if name == "journal in use" else name].seeds(made)
    journal = made / "evident" / FILE

    @settings(
        max_examples=max(3, EXAMPLES // 4), deadline=None, database=None,
        suppress_health_check=list(HealthCheck),
    )  # fmt: skip
    @given(seed=st.integers(0, len(seeds) - 1), edits=EDITS)
    def spoil(seed, edits):
        file = put(home, name, spoilt(seeds[seed], edits))
        places = {"file": file, "journal": journal, "folder": home}
        status, said = run([word.format(**places) for word in words])
        assert status in (0, 1)
        assert status == 0 or said.strip()
        assert "Traceback" not in said
        assert all(line.isprintable() for line in said.split("\n")), said

    spoil()
