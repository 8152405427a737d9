"""Sound from files and from memory comes out as frames at 16 kHz, unchanged in pitch and level."""

from __future__ import annotations

import wave
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.listening.ear import RATE
from kiosk.listening.endpoint import FRAME
from kiosk.listening.sources import Samples, SourceTrouble, WaveFile, read_wave, resample

HALF = 0.5


def tone(hertz: float, rate: int, seconds: float = 0.5) -> np.ndarray:
    count = round(seconds * rate)
    return (HALF * np.sin(2 * np.pi * hertz * np.arange(count) / rate)).astype(np.float32)


def write_wave(path: Path, sound: np.ndarray, rate: int, width: int) -> Path:
    """Write sound of shape (samples, channels) as whole numbers of `width` bytes."""
    whole = np.round(sound * (2 ** (8 * width - 1) - 1)).astype(np.int64)
    if width == 1:
        raw = (whole + 128).astype(np.uint8).tobytes()
    else:
        raw = whole.astype("<i8").reshape(-1, 1).view(np.uint8)[:, :width].tobytes()
    with wave.open(str(path), "wb") as file:
        file.setnchannels(sound.shape[1])
        file.setsampwidth(width)
        file.setframerate(rate)
        file.writeframes(raw)
    return path


def level(sound: np.ndarray) -> float:
    """Root mean square of the middle, away from the ends."""
    return float(np.sqrt(np.mean(sound[800:-800] ** 2)))


def pitch(sound: np.ndarray) -> float:
    windowed = sound * np.hanning(len(sound))
    return float(np.abs(np.fft.rfft(windowed)).argmax() * RATE / len(sound))


@pytest.mark.parametrize("rate", [8_000, 11_025, 16_000, 22_050, 44_100, 48_000])
def test_a_tone_keeps_its_pitch_its_level_and_its_length_at_any_rate(rate):
    out = resample(tone(1000, rate), rate)
    assert len(out) == pytest.approx(RATE * 0.5, abs=1)
    assert pitch(out) == pytest.approx(1000, abs=RATE / len(out))
    assert level(out) == pytest.approx(HALF / np.sqrt(2), rel=0.01)
    expected = tone(1000, RATE)[: len(out)]
    assert out[800:-800] == pytest.approx(expected[800:-800], abs=0.01)


@pytest.mark.parametrize(("rate", "hertz"), [(44_100, 9_500), (48_000, 12_000), (22_050, 9_000)])
def test_a_tone_above_what_the_new_rate_can_hold_is_removed(rate, hertz):
    assert level(resample(tone(hertz, rate), rate)) < HALF / np.sqrt(2) / 300


def test_raising_the_rate_adds_no_mirror_of_the_tone():
    out = resample(tone(1000, 8_000), 8_000)
    spectrum = np.abs(np.fft.rfft(out[800:-800] * np.hanning(len(out) - 1600)))
    mirror = round(7000 * (len(out) - 1600) / RATE)
    assert spectrum[mirror - 5 : mirror + 5].max() < spectrum.max() / 1000


@pytest.mark.parametrize("rate", [0, -8000])
def test_a_rate_that_is_none_is_refused(rate):
    with pytest.raises(ValueError, match="hertz"):
        resample(np.zeros(10, dtype=np.float32), rate)


@pytest.mark.parametrize("width", [1, 2, 3, 4])
@pytest.mark.parametrize("channels", [1, 2])
def test_a_wave_of_any_width_and_channels_is_read_alike(tmp_path, width, channels):
    sound = np.repeat(tone(440, RATE)[:, None], channels, axis=1)
    read, rate = read_wave(write_wave(tmp_path / "tone.wav", sound, RATE, width))
    assert rate == RATE
    assert read.dtype == np.float32
    assert read == pytest.approx(sound[:, 0], abs=1.5 / 2 ** (8 * width - 1) + 1e-6)


def test_two_channels_are_mixed_to_their_mean(tmp_path):
    left = tone(440, RATE)
    sound = np.stack([left, np.zeros_like(left)], axis=1)
    read, _ = read_wave(write_wave(tmp_path / "left.wav", sound, RATE, 2))
    assert read == pytest.approx(left / 2, abs=1e-4)


def test_a_file_of_another_rate_comes_out_in_frames_at_ours(tmp_path):
    path = write_wave(tmp_path / "tone.wav", tone(440, 44_100)[:, None], 44_100, 2)
    frames = list(WaveFile(path).frames())
    assert {frame.shape for frame in frames} == {(FRAME,)}
    assert {frame.dtype for frame in frames} == {np.dtype(np.float32)}
    assert len(frames) == -(-RATE // 2 // FRAME)
    assert pitch(np.concatenate(frames)[: RATE // 2]) == pytest.approx(440, abs=2)


def test_a_file_cut_short_in_the_middle_of_a_sample_is_read_up_to_there(tmp_path):
    path = write_wave(tmp_path / "tone.wav", tone(440, RATE)[:, None], RATE, 2)
    path.write_bytes(path.read_bytes()[:-3])
    read, _ = read_wave(path)
    assert len(read) == RATE // 2 - 2


@pytest.mark.parametrize("content", [b"", b"RIFF", b"not a wave at all, only text", b"\0" * 200])
def test_a_file_that_is_no_wave_says_what_to_save_it_as(tmp_path, content):
    path = tmp_path / "faulty.wav"
    path.write_bytes(content)
    with pytest.raises(SourceTrouble, match=r"faulty\.wav is not .* save it as 16-bit PCM"):
        WaveFile(path)


def test_a_file_that_is_missing_is_named(tmp_path):
    with pytest.raises(SourceTrouble, match=r"there is no sound file .*none\.wav"):
        WaveFile(tmp_path / "none.wav")


def test_raw_samples_in_memory_come_out_as_they_went_in():
    sound = tone(440, RATE)
    whole = (sound * 32767).astype("<i2").tobytes()
    assert Samples.from_int16(whole).samples == pytest.approx(sound, abs=1e-4)
    assert Samples.from_float32(sound.astype("<f4").tobytes()).samples == pytest.approx(sound)


def test_a_closed_source_gives_no_more_frames():
    source = Samples(np.zeros(FRAME * 10, dtype=np.float32))
    frames = source.frames()
    next(frames)
    source.close()
    assert list(frames) == []


@given(st.integers(0, 3000))
def test_frames_hold_every_sample_and_silence_after_the_last(count):
    sound = np.ones(count, dtype=np.float32)
    frames = list(Samples(sound).frames())
    joined = np.concatenate(frames) if frames else np.empty(0)
    assert len(joined) % FRAME == 0
    assert joined.sum() == count
    assert not joined[count:].any()
