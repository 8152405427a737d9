"""A synthetic speaker for tests: espeak-ng's library through ctypes, no device, no file."""

from __future__ import annotations

import ctypes
from functools import cache

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.sources import resample

_RETRIEVAL, _SYNCHRONOUS, _UTF8, _RATE, _PITCH = 1, 2, 1, 1, 3
_ON_SOUND = ctypes.CFUNCTYPE(
    ctypes.c_int, ctypes.POINTER(ctypes.c_short), ctypes.c_int, ctypes.c_void_p
)


class Speaker:
    """Speaks into memory. One per process: the library keeps its state in globals."""

    def __init__(self) -> None:
        import espeakng_loader

        self._library = ctypes.CDLL(espeakng_loader.get_library_path())
        data = espeakng_loader.get_data_path().encode()
        self._native_rate = self._library.espeak_Initialize(_SYNCHRONOUS, 0, data, 0)
        if self._native_rate <= 0:
            raise RuntimeError("espeak-ng could not be started")
        self._pieces: list[bytes] = []
        self._callback = _ON_SOUND(self._take)
        self._library.espeak_SetSynthCallback(self._callback)

    def _take(self, samples: object, count: int, _events: object) -> int:
        if samples and count > 0:
            self._pieces.append(ctypes.string_at(samples, count * 2))
        return 0

    def say(
        self, text: str, voice: str = "en-us", words_per_minute: int = 160, pitch: int = 50
    ) -> NDArray[np.float32]:
        """Return `text` spoken, mono 16 kHz float32, 0.3 s of silence before and 0.8 s after.

        Pitch is 0 to 99, 50 the voice's own.
        """
        if self._library.espeak_SetVoiceByName(voice.encode()) != 0:
            raise ValueError(f"espeak-ng has no voice '{voice}'")
        self._library.espeak_SetParameter(_RATE, words_per_minute, 0)
        self._library.espeak_SetParameter(_PITCH, pitch, 0)
        self._pieces.clear()
        raw = text.encode()
        self._library.espeak_Synth(raw, len(raw) + 1, 0, 1, 0, _UTF8, None, None)
        self._library.espeak_Synchronize()
        spoken = np.frombuffer(b"".join(self._pieces), dtype="<i2").astype(np.float32) / 32768
        return np.pad(resample(spoken, self._native_rate), (4800, 12800))


@cache
def speaker() -> Speaker:
    """Return the process's speaker."""
    return Speaker()
