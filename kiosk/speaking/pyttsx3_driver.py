"""pyttsx3 inside the worker's process: one text to one checked wave file.

On Linux the library and the data come from the espeakng_loader wheel, so no system package is
needed. On macOS and Windows the computer's own voices speak.
"""

from __future__ import annotations

import ctypes
import os
import platform
import shutil
import subprocess
import sys
import time
import wave
from collections.abc import Iterable
from pathlib import Path
from typing import Any

from kiosk.speaking.speech import Speech
from kiosk.speaking.voices import (
    USUAL,
    SpeechFailed,
    checked_rate,
    choice_for,
    is_voice,
    native_voice,
)

ESPEAK_RATE, ESPEAK_VOLUME, ESPEAK_PITCH, ESPEAK_WORDGAP = 1, 2, 3, 7
"""espeakRATE, espeakVOLUME, espeakPITCH and espeakWORDGAP of espeak-ng's speak_lib.h."""
MIDDLE_PITCH = 50
"""A voice's own pitch, of 0 to 99."""
ESPEAK_CURRENT = 1
"""espeak_GetParameter's flag for the value in force, not the default."""
IDLE_POLL_S = 0.001
"""espeak_Synchronize polls every 20 ms, longer than most prompts take to speak."""


def load_espeak() -> ctypes.CDLL:
    """Load the wheel's espeak-ng so that pyttsx3, which looks for it by its SONAME, finds it.

    Must run before pyttsx3's driver is imported. The working folder becomes the wheel's: espeak-ng
    keeps its data path in 160 bytes and a virtual environment's path can be longer.
    """
    import espeakng_loader

    data = Path(espeakng_loader.get_data_path())
    os.chdir(data.parent)
    os.environ["ESPEAK_DATA_PATH"] = data.name
    return ctypes.CDLL(espeakng_loader.get_library_path(), mode=ctypes.RTLD_GLOBAL)


class Pyttsx3Driver:
    """One pyttsx3 engine, used for one text at a time."""

    def __init__(self) -> None:
        self._espeak = load_espeak() if platform.system() == "Linux" else None
        from pyttsx3.engine import Engine

        self._engine: Any = Engine("espeak" if self._espeak else None)
        self._errors: list[str] = []
        self._engine.connect("error", self._note_error)
        self._engine.connect("finished-utterance", self._note_finished)
        sys.unraisablehook = self._note_unraisable
        # Until a first empty run the engine queues every property instead of setting it. A run that
        # starts while espeak-ng still works on its first settings would cut off the first text.
        self._until_idle()
        self._engine.runAndWait()

    def render(self, speech: Speech, into: Path) -> float:
        """Speak into the wave file `into`; return its length in seconds.

        The computer's own voices keep their pitch, and are not louder than their usual. Raises
        SpeechFailed.
        """
        self._errors.clear()
        self._set_voice(speech.voice or self._default_voice(speech.language))
        if self._espeak:
            self._set_espeak(self._espeak, speech)
        else:
            self._engine.setProperty("rate", checked_rate(speech.language, speech.rate))
            self._engine.setProperty("volume", min(1.0, speech.volume / USUAL))
        self._engine.save_to_file(speech.text, str(into))
        self._engine.runAndWait()
        # espeak-ng speaks in a thread of its own, which ends the engine's loop before it is done.
        self._until_idle()
        if self._errors:
            raise SpeechFailed(f"the speech driver could not speak: {self._errors[0]}")
        return checked_length(as_wave(into))

    def _default_voice(self, language: str) -> str:
        if self._espeak:
            return choice_for(language).voice
        return native_voice(language, self._native_voices())

    def _native_voices(self) -> Iterable[tuple[str, list[str]]]:
        for voice in self._engine.getProperty("voices"):
            yield voice.id, [str(tag) for tag in voice.languages or ()]

    def _set_voice(self, voice: str) -> None:
        # A voice that is unknown is passed over and the previous one goes on speaking.
        self._engine.setProperty("voice", voice)
        if not is_voice(voice, str(self._engine.getProperty("voice"))):
            self._errors.clear()
            raise SpeechFailed(
                f"the voice '{voice}' is unknown here; take one that this computer has"
            )

    def _set_espeak(self, espeak: ctypes.CDLL, speech: Speech) -> None:
        rate = checked_rate(speech.language, speech.rate)
        pitch = round(MIDDLE_PITCH * speech.pitch / USUAL)
        gap = 0 if speech.voice else choice_for(speech.language).gap
        self._engine.setProperty("rate", rate)
        self._engine.setProperty("pitch", pitch)
        self._engine.setProperty("volume", speech.volume / USUAL)
        # The driver has no word for this one.
        espeak.espeak_SetParameter(ESPEAK_WORDGAP, gap, 0)
        # They wait in espeak-ng's queue, and the driver empties that queue when the next text
        # starts: without this wait the earlier ones speak.
        self._until_idle()
        for name, parameter, wanted in (
            ("rate", ESPEAK_RATE, rate),
            ("pitch", ESPEAK_PITCH, pitch),
            ("volume", ESPEAK_VOLUME, speech.volume),
            ("gap between words", ESPEAK_WORDGAP, gap),
        ):
            in_force = espeak.espeak_GetParameter(parameter, ESPEAK_CURRENT)
            if in_force != wanted:
                raise SpeechFailed(f"the {name} stayed at {in_force} where {wanted} was asked for")

    def _until_idle(self) -> None:
        """Wait until espeak-ng's queue is done; the client ends a worker that takes too long."""
        while self._espeak and self._espeak.espeak_IsPlaying():
            time.sleep(IDLE_POLL_S)

    def _note_error(self, exception: BaseException, name: str | None = None) -> None:
        self._errors.append(f"{exception} {name or ''}".strip())

    def _note_finished(self, completed: bool, name: str | None = None) -> None:
        if not completed:
            self._errors.append(f"it was cut off {name or ''}".strip())

    def _note_unraisable(self, unraisable: sys.UnraisableHookArgs) -> None:
        # The driver saves inside a C callback, where an exception has nowhere to go, and its loop
        # then waits for an end that never comes.
        if "callback" in (unraisable.err_msg or ""):
            self._errors.append(str(unraisable.exc_value))
            self._engine.proxy._driver.endLoop()


def as_wave(path: Path) -> Path:
    """Make a wave file of the AIFF file that macOS writes whatever its name; return `path`."""
    try:
        with path.open("rb") as file:
            first = file.read(4)
    except FileNotFoundError:
        raise SpeechFailed(f"the speech driver left no file at {path}") from None
    if first != b"FORM":
        return path
    converter = shutil.which("afconvert")
    if converter is None:
        raise SpeechFailed("the speech is an AIFF file and the command 'afconvert' is missing")
    made = path.with_suffix(".converted")
    command = [converter, "-f", "WAVE", "-d", "LEI16", str(path), str(made)]
    ended = subprocess.run(command, capture_output=True, check=False)  # noqa: S603 (a list, no shell)
    if ended.returncode:
        raise SpeechFailed(f"'afconvert' failed: {ended.stderr.decode(errors='replace').strip()}")
    os.replace(made, path)  # noqa: PTH105 (the same word everywhere for an atomic change)
    return path


def checked_length(path: Path) -> float:
    """Return the seconds of sound in a wave file; raises SpeechFailed for none or for silence."""
    try:
        with wave.open(str(path), "rb") as file:
            frames = file.readframes(file.getnframes())
            seconds = file.getnframes() / file.getframerate()
    except (wave.Error, EOFError, OSError, RuntimeError, ZeroDivisionError) as error:
        raise SpeechFailed(f"the speech at {path} is no wave file: {error}") from error
    if not any(frames):
        raise SpeechFailed("the speech driver made nothing but silence of the text")
    return seconds
