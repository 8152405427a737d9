"""A loudspeaker that is missing, mute or does not answer is a reason in words, never a hang."""

from __future__ import annotations

import os
import sys
import threading
import wave
from functools import partial
from pathlib import Path

import pytest

from kiosk.speaking import player as player_module
from kiosk.speaking.aplay_player import AplayPlayer
from kiosk.speaking.player import MiniaudioPlayer, NoSpeaker, open_player, wave_seconds
from kiosk.speaking.voices import SpeechFailed

posix = pytest.mark.skipif(os.name != "posix", reason="the command aplay is a shell script here")
LONG_S = 30.0


def put_aplay(folder: Path, script: str, monkeypatch: pytest.MonkeyPatch) -> None:
    command = folder / "aplay"
    command.write_text(f"#!/bin/sh\n{script}\n")
    command.chmod(0o755)
    monkeypatch.setenv("PATH", f"{folder}:/usr/bin:/bin")


def put_wave(path: Path, rate: int = 22_050, width: int = 2, channels: int = 1) -> Path:
    with wave.open(str(path), "wb") as file:
        file.setnchannels(channels)
        file.setsampwidth(width)
        file.setframerate(rate)
        file.writeframes(bytes([1]) * (rate // 2 * width * channels))
    return path


@pytest.fixture
def null_backend(monkeypatch: pytest.MonkeyPatch) -> None:
    """Make miniaudio find its own Null backend alone, as on a machine without sound libraries."""
    miniaudio = pytest.importorskip("miniaudio", reason="miniaudio is not installed")
    only_null = partial(miniaudio.PlaybackDevice, backends=[miniaudio.Backend.NULL])
    monkeypatch.setattr(miniaudio, "PlaybackDevice", only_null)


def test_a_device_that_swallows_everything_is_no_loudspeaker(null_backend: None) -> None:
    with pytest.raises(NoSpeaker, match="no sound library: install"):
        open_player()


def test_a_device_that_never_opens_is_given_up(monkeypatch: pytest.MonkeyPatch) -> None:
    pytest.importorskip("miniaudio", reason="miniaudio is not installed")
    answered = threading.Event()
    closed = threading.Event()

    class Late:
        def __init__(self) -> None:
            answered.wait(LONG_S)
            self.fed = answered

        def close(self) -> None:
            closed.set()

    monkeypatch.setattr(player_module, "MiniaudioPlayer", Late)
    with pytest.raises(NoSpeaker, match=r"took no sound in 0\.01 s"):
        open_player(0.01)
    answered.set()
    assert closed.wait(LONG_S), "a device that opens too late is given back"


@pytest.mark.parametrize(
    ("rate", "width", "channels"), [(22_050, 2, 1), (48_000, 2, 2), (8_000, 1, 1)]
)
def test_waves_of_any_shape_are_read(tmp_path: Path, rate: int, width: int, channels: int) -> None:
    pytest.importorskip("miniaudio", reason="miniaudio is not installed")
    reader = object.__new__(MiniaudioPlayer)
    reader._miniaudio = sys.modules["miniaudio"]
    sound = reader.load(put_wave(tmp_path / "one.wav", rate, width, channels))
    assert sound.seconds == pytest.approx(0.5, abs=0.01)
    assert len(sound.pcm) == pytest.approx(22_050, abs=100)


def test_a_broken_wave_is_a_sentence(tmp_path: Path) -> None:
    broken = tmp_path / "broken.wav"
    broken.write_bytes(b"RIFF")
    with pytest.raises(SpeechFailed, match="cannot be read"):
        wave_seconds(broken)
    with pytest.raises(SpeechFailed, match="cannot be read"):
        wave_seconds(tmp_path / "missing.wav")


def test_without_the_library_and_the_command_the_mend_is_named(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    monkeypatch.setitem(sys.modules, "miniaudio", None)
    monkeypatch.setenv("PATH", str(tmp_path))
    with pytest.raises(NoSpeaker, match="install alsa-utils"):
        open_player()


@posix
def test_without_the_library_the_command_plays(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    put_aplay(tmp_path, f'printf "%s\\n" "$*" >> {tmp_path}/calls; cat > /dev/null', monkeypatch)
    monkeypatch.setitem(sys.modules, "miniaudio", None)
    player = open_player()
    assert isinstance(player, AplayPlayer)
    ends: list[str] = []
    ended = threading.Event()
    sound = player.load(put_wave(tmp_path / "one.wav"))

    def on_done(reason: str) -> None:
        ends.append(reason)
        ended.set()

    player.play(sound, on_done)
    assert ended.wait(LONG_S)
    assert ends == [""]
    assert sound.seconds == 0.5
    trial, played = (tmp_path / "calls").read_text().splitlines()
    assert trial == "-q -t raw -f S16_LE -c 1 -r 22050 -"
    assert played == f"-q -- {tmp_path}/one.wav"


@posix
def test_a_command_that_fails_or_hangs_is_no_loudspeaker(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    put_aplay(tmp_path, "echo first >&2; echo 'audio open error' >&2; exit 1", monkeypatch)
    with pytest.raises(NoSpeaker, match=r"no sound device \(audio open error\)"):
        AplayPlayer()
    put_aplay(tmp_path, "exec sleep 60", monkeypatch)
    with pytest.raises(NoSpeaker, match=r"took no sound in 0\.1 s"):
        AplayPlayer(0.1)


@posix
def test_a_command_that_breaks_later_tells_and_one_that_is_stopped_does_not(
    tmp_path: Path, monkeypatch: pytest.MonkeyPatch
) -> None:
    put_aplay(tmp_path, "cat > /dev/null", monkeypatch)
    player = AplayPlayer()
    sound = player.load(put_wave(tmp_path / "one.wav"))
    ends: list[str] = []
    came = threading.Semaphore(0)

    def on_done(reason: str) -> None:
        ends.append(reason)
        came.release()

    put_aplay(tmp_path, "exec sleep 60", monkeypatch)
    player.play(sound, on_done)
    player.stop()
    put_aplay(tmp_path, "echo 'device unplugged' >&2; exit 1", monkeypatch)
    player.play(sound, on_done)
    assert came.acquire(timeout=LONG_S)
    assert ends == ["the sound device failed (device unplugged)"]
    player.close()
