"""The loudspeaker: one wave at a time, cut off at once when asked."""

from __future__ import annotations

import threading
import wave
from collections.abc import Callable, Generator
from dataclasses import dataclass, field
from functools import partial
from pathlib import Path
from typing import Any, Protocol

from kiosk.in_time import opened_in_time
from kiosk.languages.notice import Notice, Told
from kiosk.languages.words import notice
from kiosk.speaking.quiet_alsa import quiet_alsa
from kiosk.speaking.voices import SpeechFailed

RATE = 22_050
"""Hz, what espeak-ng speaks at; mono, 16 bits. The device converts."""
BUFFER_MS = 40
"""Short, so that a stop is heard soon."""
OPEN_LIMIT_S = 5.0
"""A sound server that does not answer must not keep the kiosk from starting."""
END_TAIL_S = 0.08
"""Silence handed over after the last sample before a wave counts as ended, for what still lies in
the buffers; a play took 47 to 89 ms to be heard."""
FRAME_BYTES = 2

Tap = Callable[[bytes], None]
"""Is told what was handed to the device, silence too: 16-bit mono samples at RATE, in order. Called
in the audio thread, so it must only keep them."""


class NoSpeaker(Told):
    """Nothing can be heard here; the message is the plain reason."""


@dataclass(frozen=True, slots=True)
class Sound:
    """A wave ready to be played."""

    path: Path
    pcm: bytes
    """16-bit mono samples at RATE; empty for a player that reads the file itself."""
    seconds: float


class Player(Protocol):
    """What the voice needs of a loudspeaker. No method waits for the sound."""

    def load(self, path: Path) -> Sound:
        """Read a wave file; raises SpeechFailed."""
        ...

    def play(self, sound: Sound, on_done: Callable[[str], None]) -> None:
        """Play in place of what is playing; raises NoSpeaker.

        `on_done` is called at most once, from another thread and so that it must only post: with ''
        when the sound was played to its end, with a reason when it broke. A sound that was stopped
        or replaced may or may not call it.
        """
        ...

    def stop(self) -> None:
        """Fall silent."""
        ...

    def close(self) -> None:
        """Give the device back."""
        ...


@dataclass(slots=True)
class _Playing:
    sound: Sound
    on_done: Callable[[str], None]
    tail_frames: int
    at: int = field(default=0)


class MiniaudioPlayer:
    """One output device kept open; it is fed silence between the prompts.

    Kept open, because the first sound of a fresh device came half a second late.
    """

    def __init__(self, buffer_ms: int = BUFFER_MS, tap: Tap | None = None) -> None:
        """Open the device and feed it; raises NoSpeaker, ImportError. May block for long."""
        import miniaudio

        quiet_alsa()
        self._miniaudio: Any = miniaudio
        self._lock = threading.Lock()
        self._playing: _Playing | None = None
        self._tap = tap
        self.fed = threading.Event()
        """Set when the device has taken its first silence."""
        try:
            self._device: Any = miniaudio.PlaybackDevice(
                output_format=miniaudio.SampleFormat.SIGNED16,
                nchannels=1,
                sample_rate=RATE,
                buffersize_msec=buffer_ms,
                app_name="kiosk",
            )
        except miniaudio.MiniaudioError as failure:
            raise NoSpeaker(notice("speaker-none", reason=str(failure.args[0]))) from failure
        if self._device.backend == "Null":
            self._device.close()
            raise NoSpeaker(notice("sound-no-library"))
        frames = self._frames()
        next(frames)
        try:
            self._device.start(frames)
        except miniaudio.MiniaudioError as failure:
            self._device.close()
            why = notice("speaker-not-started", reason=str(failure.args[0]))
            raise NoSpeaker(why) from failure

    def load(self, path: Path) -> Sound:
        """Read a wave file of any rate and width into samples for the device."""
        try:
            decoded = self._miniaudio.decode_file(
                str(path), self._miniaudio.SampleFormat.SIGNED16, 1, RATE
            )
        except (self._miniaudio.MiniaudioError, OSError) as failure:
            raise unreadable(path, failure) from failure
        pcm = decoded.samples.tobytes()
        return Sound(path, pcm, len(pcm) / FRAME_BYTES / RATE)

    def play(self, sound: Sound, on_done: Callable[[str], None]) -> None:
        """Play from the next buffer on."""
        with self._lock:
            self._playing = _Playing(sound, on_done, int(END_TAIL_S * RATE))

    def stop(self) -> None:
        """Hand over silence from the next buffer on."""
        with self._lock:
            self._playing = None

    def close(self) -> None:
        """Stop feeding and close the device."""
        self._device.close()

    def _frames(self) -> Generator[bytes, int, None]:
        count = yield b""
        self.fed.set()
        while True:
            given = self._next(count)
            if self._tap is not None:
                self._tap(given)
            count = yield given

    def _next(self, count: int) -> bytes:
        """Return the next `count` frames; runs in the audio thread."""
        with self._lock:
            playing = self._playing
            if playing is None:
                return bytes(count * FRAME_BYTES)
            chunk = playing.sound.pcm[playing.at : playing.at + count * FRAME_BYTES]
            playing.at += len(chunk)
            silent = count - len(chunk) // FRAME_BYTES
            playing.tail_frames -= silent
            ended = playing.tail_frames <= 0
            if ended:
                self._playing = None
        if ended:
            playing.on_done("")
        return chunk + bytes(silent * FRAME_BYTES)


def open_player(limit_s: float = OPEN_LIMIT_S, tap: Tap | None = None) -> Player:
    """Open the loudspeaker within about `limit_s` seconds; raises NoSpeaker with the reason.

    Where `aplay` plays, nothing comes to the `tap`.
    """
    try:
        import miniaudio  # noqa: F401 (there is no wheel of it for ARM Linux)
    except ImportError:
        from kiosk.speaking.aplay_player import AplayPlayer

        return AplayPlayer(limit_s)
    make = MiniaudioPlayer if tap is None else partial(MiniaudioPlayer, tap=tap)

    def fed() -> MiniaudioPlayer:
        player = make()
        if not player.fed.wait(limit_s):
            player.close()
            raise NoSpeaker(takes_nothing(limit_s))
        return player

    opened = opened_in_time(fed, limit_s, "open-speaker", NoSpeaker)
    if opened is None:
        raise NoSpeaker(takes_nothing(limit_s))
    return opened


def wave_seconds(path: Path) -> float:
    """Return the length of a wave file in seconds; raises SpeechFailed."""
    try:
        with wave.open(str(path), "rb") as file:
            return file.getnframes() / file.getframerate()
    except (OSError, EOFError, wave.Error, RuntimeError, ZeroDivisionError) as failure:
        raise unreadable(path, failure) from failure


def unreadable(path: Path, failure: Exception) -> SpeechFailed:
    """Return what to raise for a wave file that cannot be read."""
    return SpeechFailed(notice("prompt-unreadable", file=str(path), reason=str(failure)))


def takes_nothing(limit_s: float) -> Notice:
    """Return that the device took no sound within a time limit."""
    return notice("speaker-takes-nothing", seconds=f"{limit_s:g}")
