"""The loudspeaker's samples come out in step with the microphone's frames."""

from __future__ import annotations

import numpy as np
import pytest

from kiosk.listening.ear import RATE
from kiosk.listening.endpoint import FRAME
from kiosk.listening.reference import Reference
from kiosk.listening.sources import resample
from kiosk.speaking.player import RATE as PLAYED_RATE


def pcm(sound: np.ndarray) -> bytes:
    return (sound * 32_767).astype("<i2").tobytes()


def fed(reference: Reference, sound: np.ndarray, piece: int = 441) -> list[np.ndarray | None]:
    """Give a sound in pieces to a loudspeaker whose microphone runs at the same pace."""
    given = pcm(sound)
    out: list[np.ndarray | None] = []
    for start in range(0, len(sound), piece):
        reference.put(given[2 * start : 2 * (start + piece)])
        played = min(start + piece, len(sound)) * RATE / PLAYED_RATE
        while (len(out) + 1) * FRAME <= played:
            out.append(reference.next())
    return out


@pytest.mark.parametrize("piece", [441, 100, 333, 882])
def test_it_is_the_sound_that_was_played(piece: int):
    chance = np.random.default_rng(3)
    sound = resample(chance.standard_normal(8_000).astype(np.float32), 8_000, PLAYED_RATE) * 0.1
    frames = fed(Reference(), sound, piece)
    got = np.concatenate([one for one in frames if one is not None])
    wanted = resample(sound, PLAYED_RATE)
    window = wanted[6_000:8_000]
    lag = int(np.argmax(np.correlate(got, window)))
    assert got[lag : lag + 2_000] == pytest.approx(window, abs=2e-4)


def test_the_streams_stay_in_step_for_long():
    reference = Reference()
    frames = fed(reference, np.zeros(60 * PLAYED_RATE, dtype=np.float32), 882)
    assert reference.slips == 0
    assert sum(one is None for one in frames) <= 4


def test_a_loudspeaker_that_is_not_fed_has_no_reference():
    reference = Reference()
    assert reference.next() is None
    fed(reference, np.zeros(PLAYED_RATE, dtype=np.float32))
    ended = [reference.next() for _ in range(5)]
    assert ended[-1] is None
    assert reference.slips == 1
    assert fed(reference, np.zeros(PLAYED_RATE, dtype=np.float32))[-1] is not None


def test_frames_that_wait_behind_are_counted():
    """The samples of frames still on the queue are no drift."""
    reference = Reference()
    fed(reference, np.zeros(PLAYED_RATE, dtype=np.float32))
    for _ in range(3):
        reference.put(bytes(2 * 705 * 10))
        for waiting in range(9, -1, -1):
            assert reference.next(waiting) is not None
    assert reference.slips == 0


@pytest.mark.parametrize(("rate", "sounding"), [(0.995, 40), (1.005, 400)])
def test_crystals_that_drift_apart_are_set_anew_in_a_silence(rate: float, sounding: int):
    reference = Reference()
    owed = 0.0
    tone = (0.3 * np.sin(np.arange(706) / 5)).astype(np.float32)

    def run(sound: np.ndarray, frames: int) -> list[np.ndarray | None]:
        nonlocal owed
        found = []
        for _ in range(frames):
            owed += FRAME * PLAYED_RATE / RATE * rate
            count = int(owed)
            owed -= count
            reference.put(pcm(np.resize(sound, count)))
            found.append(reference.next())
        return found

    run(np.zeros(706, dtype=np.float32), 20)
    run(tone, sounding)
    assert reference.slips == 0, "never while something sounds"
    found = run(np.zeros(706, dtype=np.float32), 400)
    assert reference.slips >= 1
    assert all(one is not None for one in found), "and before anything is missing"
