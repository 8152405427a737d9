"""The loudspeaker through the command `aplay`, for machines without the audio library's wheel."""

from __future__ import annotations

import shutil
import subprocess
import threading
from collections.abc import Callable
from pathlib import Path

from kiosk.languages.words import notice
from kiosk.speaking.player import (
    FRAME_BYTES,
    OPEN_LIMIT_S,
    RATE,
    NoSpeaker,
    Sound,
    takes_nothing,
    wave_seconds,
)

TRIAL_S = 0.1


class AplayPlayer:
    """One `aplay` process for each sound, killed to stop it."""

    def __init__(self, limit_s: float = OPEN_LIMIT_S) -> None:
        """Find the command and play a short silence; raises NoSpeaker."""
        command = shutil.which("aplay")
        if command is None:
            raise NoSpeaker(notice("speaker-no-way"))
        self._command = command
        self._lock = threading.Lock()
        self._process: subprocess.Popen[bytes] | None = None
        trial = [command, "-q", "-t", "raw", "-f", "S16_LE", "-c", "1", "-r", str(RATE), "-"]
        try:
            ended = subprocess.run(  # noqa: S603 (a list, no shell)
                trial,
                input=bytes(int(TRIAL_S * RATE) * FRAME_BYTES),
                capture_output=True,
                timeout=limit_s,
                check=False,
            )
        except subprocess.TimeoutExpired as failure:
            raise NoSpeaker(takes_nothing(limit_s)) from failure
        except OSError as failure:
            raise _no_player(failure) from failure
        if ended.returncode:
            raise NoSpeaker(notice("speaker-none", reason=last_line(ended.stderr)))

    def load(self, path: Path) -> Sound:
        """Look at a wave file; `aplay` reads it by itself."""
        return Sound(path, b"", wave_seconds(path))

    def play(self, sound: Sound, on_done: Callable[[str], None]) -> None:
        """Start a process for this sound."""
        self.stop()
        try:
            process = subprocess.Popen(  # noqa: S603 (a list, no shell)
                [self._command, "-q", "--", str(sound.path)],
                stdin=subprocess.DEVNULL,
                stdout=subprocess.DEVNULL,
                stderr=subprocess.PIPE,
            )
        except OSError as failure:
            raise _no_player(failure) from failure
        with self._lock:
            self._process = process

        def wait() -> None:
            _, complaint = process.communicate()
            if process.returncode == 0:
                on_done("")
            elif process.returncode > 0:
                on_done(notice("speaker-failed", reason=last_line(complaint)))

        threading.Thread(target=wait, name="aplay", daemon=True).start()

    def stop(self) -> None:
        """Kill the process that is playing."""
        with self._lock:
            process, self._process = self._process, None
        if process is not None:
            process.kill()

    def close(self) -> None:
        """Fall silent."""
        self.stop()


def _no_player(failure: OSError) -> NoSpeaker:
    return NoSpeaker(notice("speaker-no-player", reason=str(failure.strerror)))


def last_line(output: bytes) -> str:
    """Return the last line of a command's complaint, for a reason in one sentence."""
    lines = output.decode(errors="replace").strip().splitlines()
    return lines[-1] if lines else "no reason given"
