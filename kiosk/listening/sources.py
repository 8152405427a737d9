"""Where frames come from when it is not a microphone: wave files and samples in memory."""

from __future__ import annotations

import wave
from collections.abc import Iterator
from math import gcd
from pathlib import Path
from typing import Final, Protocol

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import RATE
from kiosk.listening.endpoint import FRAME

ZERO_CROSSINGS: Final = 16
"""Half-width of the resampling filter in zero crossings of its sinc: below -60 dB of images."""
ROLL_OFF: Final = 0.945
"""Part of the lower Nyquist frequency that is kept, so that the filter's slope ends before it."""


_WIDEST: Final = 4
"""Bytes of a sample."""
LOWEST_RATE: Final = 1_000
HIGHEST_RATE: Final = 384_000
"""Hertz. A header may name any rate: below the first a second of sound would fill the memory, above
the second the filter alone would."""


class SourceTrouble(Exception):
    """A source that cannot be read; the message says what to mend."""


class Source(Protocol):
    """A stream of frames of 512 mono float32 samples at 16 kHz."""

    live: bool
    """True when frames arrive as they are spoken, so that their time is the clock's."""

    def frames(self) -> Iterator[NDArray[np.float32]]:
        """Yield frames until the source ends or is closed."""
        ...

    def waiting(self) -> int:
        """Return how many frames were taken in but not yet given out."""
        ...

    def close(self) -> None:
        """Stop; `frames` ends soon after. May be called from any thread, and twice."""
        ...


class Samples:
    """A source of samples held in memory, given out as fast as they are taken."""

    live = False

    def __init__(self, samples: NDArray[np.float32], rate: int = RATE) -> None:
        """Take mono samples (-1..1) at any rate in hertz."""
        self._samples = resample(np.asarray(samples, dtype=np.float32), rate)
        self._closed = False

    @classmethod
    def from_int16(cls, raw: bytes, rate: int = RATE) -> Samples:
        """Take raw signed 16-bit little-endian mono."""
        return cls(_from_pcm(raw, 2), rate)

    @classmethod
    def from_float32(cls, raw: bytes, rate: int = RATE) -> Samples:
        """Take raw 32-bit float little-endian mono, -1..1."""
        return cls(np.frombuffer(raw, dtype="<f4"), rate)

    @property
    def samples(self) -> NDArray[np.float32]:
        """The whole of it, mono, 16 kHz."""
        return self._samples

    def frames(self) -> Iterator[NDArray[np.float32]]:
        """Yield every frame; the last one is filled up with silence."""
        for start in range(0, len(self._samples), FRAME):
            if self._closed:
                return
            frame = self._samples[start : start + FRAME]
            if len(frame) < FRAME:
                frame = np.pad(frame, (0, FRAME - len(frame)))
            yield frame

    def waiting(self) -> int:
        """Return 0: nothing piles up in memory."""
        return 0

    def close(self) -> None:
        """Give out no further frame."""
        self._closed = True


class WaveFile(Samples):
    """A source that reads a wave file of any rate, width and channel count."""

    def __init__(self, path: Path) -> None:
        samples, rate = read_wave(path)
        super().__init__(samples, rate)


def read_wave(path: Path) -> tuple[NDArray[np.float32], int]:
    """Return a wave file's sound as mono float32 (-1..1) and its rate in hertz.

    Raises SourceTrouble when the file is missing, is not uncompressed wave, or has a sample rate
    that no microphone has.
    """
    try:
        with wave.open(str(path), "rb") as file:
            channels, width, rate = file.getnchannels(), file.getsampwidth(), file.getframerate()
            raw = file.readframes(file.getnframes())
    except FileNotFoundError:
        raise SourceTrouble(f"there is no sound file {path}") from None
    except (wave.Error, EOFError, OSError, RuntimeError) as error:
        raise SourceTrouble(
            f"{path} is not an uncompressed wave file ({error}); save it as 16-bit PCM"
        ) from None
    if channels <= 0 or not LOWEST_RATE <= rate <= HIGHEST_RATE:
        raise SourceTrouble(
            f"{path} names a sample rate of {rate} Hz and {channels} channels; save it again as "
            "16-bit PCM at 16000 Hz, mono"
        )
    if width > _WIDEST:
        raise SourceTrouble(f"{path} has samples of {width * 8} bits; save it as 16-bit PCM")
    samples = _from_pcm(raw[: len(raw) // (width * channels) * (width * channels)], width)
    return samples.reshape(-1, channels).mean(axis=1, dtype=np.float32), rate


def _from_pcm(raw: bytes, width: int) -> NDArray[np.float32]:
    """Return samples of 1 to 4 bytes as -1..1. A wave's single bytes are unsigned."""
    match width:
        case 1:
            whole = np.frombuffer(raw, dtype=np.uint8).astype(np.int32) - 128
        case 2:
            whole = np.frombuffer(raw, dtype="<i2").astype(np.int32)
        case 3:
            wide = np.zeros((len(raw) // 3, 4), dtype=np.uint8)
            wide[:, 1:] = np.frombuffer(raw, dtype=np.uint8).reshape(-1, 3)
            whole = wide.view("<i4").reshape(-1) >> 8
        case _:
            whole = np.frombuffer(raw, dtype="<i4").astype(np.int32)
    samples: NDArray[np.float32] = (whole / float(1 << (8 * width - 1))).astype(np.float32)
    return samples


def resample(samples: NDArray[np.float32], rate: int, to: int = RATE) -> NDArray[np.float32]:
    """Return `samples` at rate `to`, by a windowed-sinc filter applied in polyphase form.

    Frequencies above the lower of the two Nyquist limits are removed. Rates in hertz.
    """
    if rate <= 0 or to <= 0:
        raise ValueError(f"a sample rate is a positive number of hertz, not {rate} or {to}")
    if rate == to or not len(samples):
        return np.asarray(samples, dtype=np.float32)
    up, down = to // gcd(rate, to), rate // gcd(rate, to)
    cutoff = ROLL_OFF * min(1.0, to / rate)
    half = int(np.ceil(ZERO_CROSSINGS / cutoff))
    taps = np.arange(-half, half + 1)
    out_length = int(np.ceil(len(samples) * up / down))
    padded = np.pad(np.asarray(samples, dtype=np.float64), (half, half + down + 1))
    out = np.empty(out_length, dtype=np.float32)
    for phase in range(min(up, out_length)):
        whole, rest = divmod(phase * down, up)
        distance = taps - rest / up
        window = np.cos(np.pi * np.clip(distance / (half + 1), -1, 1) / 2) ** 2
        kernel = cutoff * np.sinc(cutoff * distance) * window
        kernel /= kernel.sum()
        count = len(range(phase, out_length, up))
        windows = np.lib.stride_tricks.sliding_window_view(padded, 2 * half + 1)[whole::down]
        out[phase::up] = np.einsum("ij,j->i", windows[:count], kernel)
    return out
