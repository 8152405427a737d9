"""A sound server of our own: a loudspeaker and a microphone without hardware."""

from __future__ import annotations

import os
import shutil
import socket
import subprocess
import tempfile
import threading
from collections.abc import Iterator
from contextlib import contextmanager
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

RATE = 22_050
LOUD = 0.02


def missing_for_a_sound_server() -> str:
    """Name what this machine lacks for a loudspeaker without hardware; '' when it has all."""
    lacking = [
        name for name in ("pulseaudio", "pactl", "paplay", "parec") if shutil.which(name) is None
    ]
    return f"no sound server without hardware: {', '.join(lacking)} missing" if lacking else ""


@contextmanager
def null_loudspeaker() -> Iterator[dict[str, str]]:
    """Run a sound server whose loudspeaker is heard by recording alone.

    Its microphone hears what is played to the sink `mic`. Yields the variables that lead a process
    to it.
    """
    with tempfile.TemporaryDirectory(prefix="spk") as folder:
        place = {
            "XDG_RUNTIME_DIR": folder,
            "PULSE_SERVER": f"unix:{folder}/native",
            "HOME": folder,
        }
        speaker = "module-null-sink sink_name=spk rate=48000 channels=2"
        command = ["pulseaudio", "-n", "--daemonize=no", "--exit-idle-time=-1", "-L", speaker]
        command += ["-L", "module-null-sink sink_name=mic rate=16000 channels=1"]
        command += ["-L", "module-remap-source master=mic.monitor source_name=ear"]
        command += ["-L", f"module-native-protocol-unix socket={folder}/native"]
        own = {name: value for name, value in place.items() if name != "PULSE_SERVER"}
        server = subprocess.Popen(
            command,
            env={**os.environ, **own},
            stdout=subprocess.DEVNULL,
            stderr=subprocess.DEVNULL,
        )
        try:
            wait_until_it_answers(Path(folder, "native"), server)
            for command in (["set-default-sink", "spk"], ["set-default-source", "ear"]):
                subprocess.run(["pactl", *command], env={**os.environ, **place}, check=True)
            yield place
        finally:
            server.terminate()
            server.wait()


def wait_until_it_answers(path: Path, server: subprocess.Popen[bytes]) -> None:
    pause = threading.Event()
    for _ in range(500):
        with socket.socket(socket.AF_UNIX) as client:
            if client.connect_ex(str(path)) == 0:
                return
        assert server.poll() is None, "the sound server ended"
        pause.wait(0.02)
    raise AssertionError("the sound server did not answer in 10 s")


class Recording:
    """What the loudspeaker plays, as samples from -1 to 1, mono at RATE."""

    def __init__(self, place: dict[str, str], rate: int = RATE, latency_ms: int = 20) -> None:
        command = ["parec", "--device=spk.monitor", "--format=s16le", "--channels=1"]
        command += [f"--rate={rate}", f"--latency-msec={latency_ms}"]
        self._process = subprocess.Popen(
            command, env={**os.environ, **place}, stdout=subprocess.PIPE, stderr=subprocess.DEVNULL
        )
        # What is said before the recorder is connected is lost to it.
        self.next(rate // 10)

    def next(self, count: int) -> NDArray[np.float64]:
        assert self._process.stdout is not None
        read = self._process.stdout.read(count * 2)
        assert len(read) == count * 2, "the recording ended"
        return np.frombuffer(read, "<i2") / 32_768

    def until_loud(self, limit_s: float) -> NDArray[np.float64]:
        """Return the first loud 20 ms; fails after `limit_s` seconds of recorded silence."""
        for _ in range(int(limit_s / 0.02)):
            piece = self.next(RATE // 50)
            if np.abs(piece).max() > LOUD:
                return piece
        raise AssertionError(f"{limit_s} s of silence were recorded")

    def close(self) -> None:
        assert self._process.stdout is not None
        self._process.kill()
        self._process.wait()
        self._process.stdout.close()
