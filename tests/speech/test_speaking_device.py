"""What is said is heard on a real sound server, and falls silent; no server is a normal day."""

from __future__ import annotations

import os
import platform
import shutil
import subprocess
import sys
import threading
import wave
from collections.abc import Iterator
from pathlib import Path

import numpy as np
import pytest
from numpy.typing import NDArray

from kiosk.speaking.aplay_player import AplayPlayer
from kiosk.speaking.player import MiniaudioPlayer, NoSpeaker, Player, open_player
from kiosk.speaking.prompt_cache import PromptCache
from kiosk.speaking.recordings import Recording as Kept
from kiosk.speaking.recordings import Recordings
from kiosk.speaking.renderer import Renderer
from kiosk.speaking.shop_prompts import ShopPrompts
from kiosk.speaking.speech import Speech
from kiosk.speaking.voice import KioskVoice, open_voice
from kiosk.speaking.waves import read
from tests.sound_server import LOUD, RATE, Recording, missing_for_a_sound_server, null_loudspeaker

LONG_S = 30.0
TEXT = "Pull the plug and look at it."
ALSA_THROUGH_PULSE = "pcm.!default { type pulse }\nctl.!default { type pulse }\n"

linux = pytest.mark.skipif(platform.system() != "Linux", reason="the sound server is Linux's")


@pytest.fixture(scope="module")
def place() -> Iterator[dict[str, str]]:
    lacking = missing_for_a_sound_server()
    if lacking:
        pytest.skip(lacking)
    with null_loudspeaker() as variables:
        yield variables


@pytest.fixture
def recording(
    place: dict[str, str], monkeypatch: pytest.MonkeyPatch, tmp_path: Path
) -> Iterator[Recording]:
    for name, value in place.items():
        monkeypatch.setenv(name, value)
    made = Recording(place)
    yield made
    made.close()


@pytest.fixture(scope="module")
def renderer() -> Iterator[Renderer]:
    made = Renderer()
    yield made
    made.close()


@pytest.fixture(params=["miniaudio", "aplay"])
def player(
    request: pytest.FixtureRequest,
    recording: Recording,
    monkeypatch: pytest.MonkeyPatch,
    tmp_path: Path,
) -> Iterator[Player]:
    opened: Player
    if request.param == "aplay":
        if shutil.which("aplay") is None:
            pytest.skip("the command aplay is missing")
        settings = tmp_path / "alsa.conf"
        settings.write_text(ALSA_THROUGH_PULSE)
        monkeypatch.setenv("ALSA_CONFIG_PATH", str(settings))
        try:
            opened = AplayPlayer()
        except NoSpeaker as failure:
            pytest.skip(f"ALSA cannot reach the sound server: {failure}")
    else:
        pytest.importorskip("miniaudio", reason="miniaudio is not installed")
        opened = open_player()
        assert isinstance(opened, MiniaudioPlayer)
    yield opened
    opened.close()


@pytest.fixture
def voice(player: Player, renderer: Renderer, tmp_path: Path) -> Iterator[KioskVoice]:
    made = KioskVoice(ShopPrompts(PromptCache(tmp_path / "prompts", renderer)), player)
    yield made
    made.close()


def place_of(piece: NDArray[np.float64], heard: NDArray[np.float64]) -> tuple[int, float]:
    """Return where in `heard` the piece fits best, and how alike they are there, at most 1."""
    fit = np.correlate(heard, piece, "valid")
    at = int(np.argmax(fit))
    there = np.linalg.norm(heard[at : at + len(piece)])
    return at, float(fit[at] / (there * np.linalg.norm(piece)))


@linux
def test_what_is_heard_is_the_prompt_and_its_end_is_told(
    voice: KioskVoice, recording: Recording, renderer: Renderer, tmp_path: Path
) -> None:
    with wave.open(
        str(PromptCache(tmp_path / "prompts", renderer).wave(Speech(TEXT, "en")))
    ) as file:
        prompt = np.frombuffer(file.readframes(file.getnframes()), "<i2") / 32_768
    ended = threading.Event()
    voice.say(TEXT, "en", ended.set)
    # Half a second more than the prompt, for the gaps of a busy machine.
    heard = np.concatenate([recording.until_loud(10), recording.next(len(prompt) + RATE // 2)])
    pieces = prompt[: len(prompt) // (RATE // 5) * (RATE // 5)].reshape(-1, RATE // 5)
    loud = [piece for piece in pieces if np.abs(piece).max() > 5 * LOUD]
    assert len(loud) >= 4
    found = [place_of(piece, heard) for piece in loud]
    alike = [at for at, likeness in found if likeness > 0.95]
    # A machine with too few free cores tears pieces apart; of another text none is alike.
    assert len(alike) >= 0.3 * len(loud)
    assert alike == sorted(alike)
    assert ended.wait(LONG_S)
    assert voice.notice == ""


@linux
def test_a_crew_members_recording_is_heard_after_what_is_rendered(
    player: Player, recording: Recording, renderer: Renderer, tmp_path: Path
) -> None:
    own = tmp_path / "own.wav"
    renderer.render(Speech("Keep your hands away.", "en", "gmw/en-us+f3"), own)
    said = read(own)
    recordings = Recordings(tmp_path)
    recordings.keep(Kept(text="Wear gloves.", language="en", by="p1", at_utc=0.0), said)
    prompts = ShopPrompts(PromptCache(tmp_path / "prompts", renderer), recordings=recordings)
    voice = KioskVoice(prompts, player)
    ended = threading.Event()
    voice.say("Rinse. Wear gloves.", "en", ended.set)
    heard = np.concatenate([recording.until_loud(10), recording.next(len(said) + 3 * RATE)])
    pieces = said[: len(said) // (RATE // 5) * (RATE // 5)].reshape(-1, RATE // 5)
    loud = [piece.astype(np.float64) for piece in pieces if np.abs(piece).max() > 5 * LOUD]
    found = [at for at, likeness in (place_of(piece, heard) for piece in loud) if likeness > 0.95]
    # A machine with too few free cores tears pieces apart; of another text none is alike.
    assert len(found) >= 0.3 * len(loud) > 1
    assert min(found) > RATE // 2
    assert ended.wait(LONG_S)
    assert voice.notice == ""
    voice.close()


@linux
def test_hush_is_heard_as_silence_long_before_the_end(
    voice: KioskVoice, recording: Recording
) -> None:
    ended = threading.Event()
    voice.say(f"{TEXT} {TEXT} {TEXT}", "en", ended.set)
    recording.until_loud(10)
    voice.hush()
    assert ended.wait(LONG_S)
    tail = recording.next(3 * RATE // 2)
    assert np.abs(tail[RATE // 2 :]).max() < 0.001


@linux
def test_a_newer_text_is_heard_in_place_of_the_older(
    voice: KioskVoice, recording: Recording
) -> None:
    ends = [threading.Event(), threading.Event()]
    voice.say(f"{TEXT} {TEXT} {TEXT}", "en", ends[0].set)
    recording.until_loud(10)
    voice.say("Rinse.", "en", ends[1].set)
    assert ends[0].wait(LONG_S)
    assert ends[1].wait(LONG_S)
    tail = recording.next(5 * RATE // 2)
    assert np.abs(tail[RATE // 2 : 3 * RATE // 2]).max() > LOUD
    assert np.abs(tail[2 * RATE :]).max() < 0.001


@linux
def test_open_voice_finds_the_loudspeaker(recording: Recording, tmp_path: Path) -> None:
    voice = open_voice(tmp_path / "prompts")
    assert (type(voice), voice.notice) == (KioskVoice, "")
    ended = threading.Event()
    voice.say("Rinse.", "en", ended.set)
    recording.until_loud(10)
    assert ended.wait(LONG_S)
    voice.close()


@linux
def test_a_loudspeaker_that_goes_away_in_the_middle_ends_the_text(
    renderer: Renderer, tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    lacking = missing_for_a_sound_server()
    if lacking:
        pytest.skip(lacking)
    pytest.importorskip("miniaudio", reason="miniaudio is not installed")
    ends = [threading.Event(), threading.Event()]
    with null_loudspeaker() as place:
        for name, value in place.items():
            monkeypatch.setenv(name, value)
        voice = KioskVoice(
            ShopPrompts(PromptCache(tmp_path, renderer)), open_player(), overdue_s=0.2
        )
        recording = Recording(place)
        try:
            voice.say(TEXT, "en", ends[0].set)
            recording.until_loud(10)
        finally:
            recording.close()
    try:
        assert ends[0].wait(LONG_S)
        assert voice.notice == "the loudspeaker stopped taking sound"
        voice.say("Rinse.", "en", ends[1].set)
        assert ends[1].wait(LONG_S)
        assert voice.notice.startswith("no sound")
    finally:
        voice.close()


NO_SPEAKER = """
import sys
from pathlib import Path
from kiosk.speaking.voice import open_voice
voice = open_voice(Path(sys.argv[1]))
voice.say("Rinse.", "en", lambda: Path(sys.argv[1], "ended").touch())
Path(sys.argv[1], "notice").write_text(f"{type(voice).__name__}: {voice.notice}")
voice.close()
"""


@linux
def test_no_sound_server_and_no_card_is_a_silent_voice_and_a_clean_screen(tmp_path: Path) -> None:
    (tmp_path / "alsa.conf").write_text("pcm.!default { type hw card 77 }\n")
    nowhere = {
        "PULSE_SERVER": f"unix:{tmp_path}/none",
        "XDG_RUNTIME_DIR": str(tmp_path),
        "ALSA_CONFIG_PATH": str(tmp_path / "alsa.conf"),
        "JACK_NO_START_SERVER": "1",
    }
    ran = subprocess.run(
        [sys.executable, "-c", NO_SPEAKER, str(tmp_path)],
        env={**os.environ, **nowhere},
        cwd=Path(__file__).parents[2],
        capture_output=True,
        timeout=LONG_S,
        check=False,
    )
    assert (ran.returncode, ran.stdout, ran.stderr) == (0, b"", b"")
    assert (tmp_path / "notice").read_text().startswith("SilentVoice: no ")
    assert (tmp_path / "ended").exists()
