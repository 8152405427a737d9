"""`kiosk voice record`: real speech from a file becomes recordings that the kiosk plays."""

from __future__ import annotations

import builtins
from collections.abc import Callable, Iterator
from pathlib import Path

import numpy as np
import pytest

from kiosk.cli import main
from kiosk.cli import voice_record as command
from kiosk.cli.voice_record import sentences_of
from kiosk.procedure.site import load_site
from kiosk.shipped import shipped
from kiosk.speaking.player import RATE, NoSpeaker
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.recordings import Recordings
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.shop_prompts import ShopPrompts
from kiosk.speaking.speech import Speech
from kiosk.speaking.waves import Samples, as_wave, read

PROCEDURE = "check-twin-gravity"
QUIET_S = 2.6


@pytest.fixture(autouse=True)
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    text = (shipped("demo") / "site.toml").read_text("utf-8")
    (tmp_path / "site.toml").write_text(text, encoding="utf-8")
    return tmp_path


@pytest.fixture(scope="module")
def renderer() -> Iterator[Renderer]:
    made = Renderer()
    yield made
    made.close()


@pytest.fixture
def played(monkeypatch: pytest.MonkeyPatch) -> list[Samples]:
    heard: list[Samples] = []
    monkeypatch.setattr(command, "play", lambda file: heard.append(read(file)))
    return heard


@pytest.fixture
def answers(monkeypatch: pytest.MonkeyPatch) -> Callable[..., list[str]]:
    """Types some answers, then nothing more; gives the questions that they answer."""

    def given(*texts: str) -> list[str]:
        waiting, asked = iter(texts), list[str]()

        def ask(question: str) -> str:
            asked.append(question)
            try:
                return next(waiting)
            except StopIteration:
                raise EOFError from None

        monkeypatch.setattr(builtins, "input", ask)
        return asked

    return given


def room(seconds: float) -> Samples:
    return np.random.default_rng(3).normal(0, 3e-4, round(seconds * RATE)).astype(np.float32)


def spoken(renderer: Renderer, folder: Path, *parts: str | float) -> Path:
    """A file in which sentences are said, with seconds of a quiet room between them."""
    cache = PromptCache(folder / "spoken", renderer)
    whole = [
        room(part) if isinstance(part, float) else read(cache.wave(Speech(part, "en"))) * 0.4
        for part in parts
    ]
    file = folder / "said.wav"
    file.write_bytes(as_wave(np.concatenate(whole)))
    return file


def record(*more: str) -> int:
    return main(["voice", "record", PROCEDURE, "--worker", "p3", *more])


def test_sentences_are_recorded_heard_kept_and_then_played(
    home: Path, renderer: Renderer, played: list[Samples], answers: Callable[..., list[str]], capsys
):
    first, second, third, *_ = sentences_of(load_site(home / "site.toml"), "en", PROCEDURE)
    file = spoken(
        renderer, home, 1.0, first, QUIET_S, 1.0, "No, wrong.", QUIET_S, 1.0, second, QUIET_S
    )
    answers("", "", "", "a", "", "s", "q")
    assert record("--source", str(file)) == 0
    out = capsys.readouterr().out
    assert all(one in out for one in (first, second, third))
    assert "Kept: 2." in out
    assert len(played) == 3
    kept = Recordings(home)
    assert [one.text for one in kept.listed("en")] == [first, second]
    prompts = ShopPrompts(PromptCache(home / "prompts", renderer), recordings=kept)
    assert prompts.wave(first, "en") == kept.find(first, "en")
    said = read(prompts.wave(f"{first} {third}", "en"))
    alone = read(kept.file(first, "en"))
    assert said[: len(alone)] == pytest.approx(alone, abs=1e-4)


@pytest.mark.parametrize("silent", [True, False])
def test_silence_and_a_cut_beginning_cannot_be_kept(
    silent: bool, home: Path, renderer: Renderer, played: list[Samples],
    answers: Callable[..., list[str]], capsys,
):  # fmt: skip
    first, *_ = sentences_of(load_site(home / "site.toml"), "en", PROCEDURE)
    asked = answers("", "q")
    parts = (7.0,) if silent else (first, QUIET_S)
    assert record("--source", str(spoken(renderer, home, *parts))) == 0
    out = capsys.readouterr().out
    assert ("Nothing was heard." if silent else "The beginning is cut off.") in out
    assert "It cannot be kept so." in asked[-1]
    assert Recordings(home).listed("en") == ()


def test_where_nothing_can_be_played_recording_goes_on(
    home: Path, renderer: Renderer, answers: Callable[..., list[str]], monkeypatch, capsys
):
    def refuse(_: Path) -> None:
        raise NoSpeaker("no loudspeaker")

    monkeypatch.setattr(command, "play", refuse)
    first, *_ = sentences_of(load_site(home / "site.toml"), "en", PROCEDURE)
    answers("", "")
    assert record("--source", str(spoken(renderer, home, 1.0, first, QUIET_S))) == 0
    assert "It cannot be played back here. no loudspeaker" in capsys.readouterr().out
    assert [one.text for one in Recordings(home).listed("en")] == [first]


def test_what_is_recorded_is_listed_forgotten_and_erased(
    home: Path, renderer: Renderer, played: list[Samples], answers: Callable[..., list[str]], capsys
):
    first, *others = sentences_of(load_site(home / "site.toml"), "en", PROCEDURE)
    file = str(spoken(renderer, home, 1.0, first, QUIET_S))
    answers("", "")
    record("--source", file)
    capsys.readouterr()
    assert main(["voice", "record", PROCEDURE, "--list", "--language", "en"]) == 0
    listed = capsys.readouterr().out
    assert f"Dale Whitcomb  {first}" in listed
    assert f"  missing  {others[0]}" in listed
    assert f"Recorded: 1. Missing: {len(others)}. No longer said: 0." in listed
    assert record("--forget") == 0
    assert "One recorded sentence is erased." in capsys.readouterr().out
    answers("", "")
    record("--source", file)
    site = home / "site.toml"
    head, _, rest = site.read_text("utf-8").partition('[[people]]\nid = "p3"')
    site.write_text(
        head + rest.partition("[[people]]")[1] + rest.partition("[[people]]")[2], "utf-8"
    )
    assert main(["people", "erase", "p3"]) == 0
    assert not any((home / "recordings").rglob("*.wav"))


@pytest.mark.parametrize(
    ("typed", "says"),
    [
        (["voice", "record"], "--worker ID"),
        (["voice", "record", "--worker", "nobody"], "'nobody'"),
        (["voice", "record", "no-such", "--worker", "p3"], "'no-such'"),
        (["voice", "record", "--worker", "p3", "--language", "tl"], "'tl'"),
    ],
)
def test_what_cannot_be_done_is_a_sentence(typed: list[str], says: str, capsys):
    assert main(typed) == 1
    assert says in capsys.readouterr().err
