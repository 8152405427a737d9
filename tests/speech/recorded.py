"""Recordings of people and of a kitchen that may lie beside the project or on the machine."""

from __future__ import annotations

import shutil
import subprocess
from functools import cache
from pathlib import Path

import numpy as np

from kiosk.listening.ear import RATE
from kiosk.listening.sources import WaveFile
from tests.speech.clips import RECORDINGS, Sound

READ_ALOUD = Path("/usr/share/asterisk/sounds")
"""Half an hour of short sentences read by one woman for telephone exchanges: Debian's package
asterisk-core-sounds-en-g722 (CC BY-SA 3.0), decoded by ffmpeg."""
_PHRASES = ("vm-next", "vm-no", "vm-repeat")
"""Those that are phrases of the kiosk, or may be."""
_NO_SPEECH = ("digits", "silence", "beep", "beeperr", "ascending-2tone", "descending-2tone")


@cache
def read_aloud() -> tuple[Path, ...]:
    """Return the sentences read aloud in English; none where they or ffmpeg are not to be had."""
    if shutil.which("ffmpeg") is None:
        return ()
    found = sorted(READ_ALOUD.glob("en*/**/*.g722"))
    unwanted = {*_PHRASES, *_NO_SPEECH}
    return tuple(one for one in found if unwanted.isdisjoint((one.stem, one.parent.name)))


@cache
def beside(folder: str) -> tuple[Path, ...]:
    """Return the recordings of people in a folder beside the project."""
    found = sorted((RECORDINGS / folder).glob("*.wav"))
    return tuple(one for one in found if one.stem != "kitchen")


@cache
def recorded(path: Path) -> Sound:
    """Return a recording, mono 16 kHz."""
    if path.suffix == ".wav":
        return WaveFile(path).samples
    command = ["ffmpeg", "-v", "error", "-f", "g722", "-i", str(path)]
    command += ["-f", "f32le", "-ac", "1", "-ar", str(RATE), "-"]
    done = subprocess.run(command, stdout=subprocess.PIPE, check=True)
    return np.frombuffer(done.stdout, dtype="<f4").astype(np.float32)
