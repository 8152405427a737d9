"""A made-up room between a loudspeaker and a microphone."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from dataclasses import dataclass
from pathlib import Path

import numpy as np
from numpy.typing import NDArray

from kiosk.listening.ear import RATE
from kiosk.listening.echo import Cleaned, EchoFilter
from kiosk.listening.endpoint import FRAME
from kiosk.listening.reference import Reference
from kiosk.listening.sources import read_wave, resample
from kiosk.speaking.player import RATE as PLAYED_RATE

Sound = NDArray[np.float32]
PIECE = 441
"""Samples that the device takes at a time: 20 ms."""
DEVICE_S = 0.079
"""From the handing over of a sample to a frame that holds its sound: 47 ms is the least that was
measured until it is heard, and the microphone hands over 32 ms at a time."""
BEFORE_S, AFTER_S = 0.5, 1.0
FLOOR = 0.001
"""Root mean square of the room's own noise: 60 dB under full scale."""


@dataclass(frozen=True, slots=True)
class Room:
    """The way from the loudspeaker to the microphone."""

    delay_ms: float = 60.0
    """Beside the device's own."""
    gain_db: float = -6.0
    """Level of the echo against what was played."""
    dies_away_s: float = 0.3
    """Until it has fallen by 60 dB."""
    driven: float = 0.0
    """How hard the loudspeaker is driven into its limit; 0 not at all."""
    seed: int = 1

    def echo(self, played: Sound) -> Sound:
        """Return what the microphone gets of a sound at 16 kHz."""
        chance = np.random.default_rng(self.seed)
        time = np.arange(int(RATE * self.dies_away_s)) / RATE
        tail = chance.standard_normal(len(time)) * 10 ** (-3 * time / self.dies_away_s)
        tail[: RATE // 300] = 0.0
        response = 0.5 * tail / np.sqrt(np.sum(tail**2))
        response[0] = 1.0
        response *= 10 ** (self.gain_db / 20) / np.sqrt(np.sum(response**2))
        late = round((self.delay_ms / 1000 + DEVICE_S) * RATE)
        source = np.tanh(self.driven * played) / self.driven if self.driven else played
        return convolved(np.pad(source, (late, 0)), response)[: len(played)]


def convolved(sound: Sound, response: NDArray[np.float64]) -> Sound:
    """Return a sound after a linear way, as long as the sound."""
    length = len(sound) + len(response)
    spectrum = np.fft.rfft(sound, length) * np.fft.rfft(response, length)
    return np.fft.irfft(spectrum, length)[: len(sound)].astype(np.float32)


def rms(sound: Sound) -> float:
    """Return the root mean square."""
    return float(np.sqrt(np.mean(np.square(sound, dtype=np.float64))))


def decibels(sound: Sound) -> float:
    """Return the level against full scale."""
    return 20 * float(np.log10(max(rms(sound), 1e-9)))


class Kiosk:
    """A kiosk that speaks in a room and hears itself, and somebody else."""

    def __init__(self, room: Room) -> None:
        self.room = room
        self.reference = Reference()
        self.filter = EchoFilter(self.reference)
        self._noise = np.random.default_rng(7)
        self._rest = np.empty(0, dtype=np.float32)

    def play(
        self, prompt: Path, beside: Callable[[int], Sound] | None = None
    ) -> Iterator[tuple[Sound, Cleaned]]:
        """Say a prompt; yield each microphone frame, and what the filter leaves of it."""
        for frame in self.frames(prompt, beside):
            yield frame, self.filter.clean(frame)

    def frames(self, prompt: Path, beside: Callable[[int], Sound] | None = None) -> Iterator[Sound]:
        """Say a prompt, silence around it; yield the microphone's frames.

        `beside` returns what somebody says meanwhile, for a count of samples at 16 kHz.
        """
        samples, rate = read_wave(prompt)
        given = resample(samples, rate, PLAYED_RATE)
        given = np.pad(given, (round(BEFORE_S * PLAYED_RATE), round(AFTER_S * PLAYED_RATE)))
        given = given[: len(given) // PIECE * PIECE]
        microphone = self.room.echo(resample(given, PLAYED_RATE))
        microphone += (FLOOR * self._noise.standard_normal(len(microphone))).astype(np.float32)
        if beside is not None:
            microphone += beside(len(microphone))
        pcm = (np.clip(given, -1, 1) * 32_767).astype("<i2").tobytes()
        for start in range(0, len(given), PIECE):
            self.reference.put(pcm[2 * start : 2 * (start + PIECE)])
            sounded = microphone[start * RATE // PLAYED_RATE :][: PIECE * RATE // PLAYED_RATE]
            self._rest = np.concatenate([self._rest, sounded])
            while len(self._rest) >= FRAME:
                frame, self._rest = self._rest[:FRAME], self._rest[FRAME:]
                yield frame
