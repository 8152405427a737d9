"""The spectrogram is the one that the model was trained on, as far as known properties tell."""

from __future__ import annotations

import numpy as np
import pytest

from kiosk.listening.ear import RATE
from kiosk.listening.mel import hertz_of, log_mel, mel_filters, mel_of


def tone(hertz: float, seconds: float = 1.0) -> np.ndarray:
    return np.sin(2 * np.pi * hertz * np.arange(round(seconds * RATE)) / RATE).astype(np.float32)


def test_slaneys_scale_is_linear_to_one_kilohertz_and_multiplies_beyond():
    # Auditory Toolbox: 66.67 Hz a mel up to 1000 Hz, then 6.4-fold in every 27 mels.
    assert mel_of(np.array([0.0, 200.0, 1000.0, 6400.0])) == pytest.approx([0, 3, 15, 42])


def test_hertz_and_mels_are_inverse():
    mels = np.linspace(0, 45, 91)
    assert mel_of(hertz_of(mels)) == pytest.approx(mels)


def test_every_filter_has_the_same_area():
    # Slaney's normalisation divides by the width of a band: each triangle's area is 1 (in hertz).
    filters = mel_filters()
    assert filters.shape == (80, 201)
    assert (filters >= 0).all()
    # Low triangles are but two or three bins wide, and a sum over those is no area.
    areas = filters[50:].sum(axis=1) * (RATE / 2 / 200)
    assert areas == pytest.approx(np.ones(30), rel=0.05)


def test_the_first_filter_is_the_one_worked_out_by_hand():
    # 8000 Hz are 15 + ln(8) / (ln(6.4) / 27) = 45.245 mel; 81 steps of 0.55859 mel, 37.239 Hz each.
    # The first triangle runs 0, 37.239, 74.479 Hz and is 2 / 74.479 high. Bin 1 lies at 40 Hz.
    assert mel_filters()[0, :4] == pytest.approx([0, 0.0268534 * 0.92587, 0, 0], rel=1e-3)


def test_filters_rise_in_frequency():
    peaks = mel_filters().argmax(axis=1)
    assert (np.diff(peaks) >= 0).all()
    assert peaks[-1] < 200


@pytest.mark.parametrize("hertz", [300, 1000, 3000, 6000])
def test_a_tone_is_loudest_in_the_band_around_it(hertz):
    edges = hertz_of(np.linspace(0, float(mel_of(np.array(RATE / 2))), 82))
    loudest = int(log_mel(tone(hertz), 1.0)[:, 50].argmax())
    assert edges[loudest] < hertz < edges[loudest + 2]


def test_features_have_a_hundred_columns_a_second_whatever_the_length():
    for seconds in (0.1, 1.0, 5.0):
        features = log_mel(tone(440, seconds), 2.0)
        assert features.shape == (80, 200)
        assert features.dtype == np.float32


def test_silence_after_the_sound_is_the_floor_of_the_scale():
    features = log_mel(tone(440, 0.5), 2.0)
    # The scale spans 8 decades, a quarter each: the floor lies 2 below the loudest point.
    assert features.max() - features.min() == pytest.approx(2.0)
    assert features[:, 60:] == pytest.approx(features.min())


def test_computing_only_where_there_is_sound_gives_what_computing_everywhere_gives():
    sound = np.concatenate([tone(440, 0.5), np.zeros(RATE, dtype=np.float32)])
    assert log_mel(sound, 3.0) == pytest.approx(log_mel(sound[: RATE // 2], 3.0), abs=1e-5)


def test_no_sound_at_all_is_no_error():
    assert np.ptp(log_mel(np.empty(0, dtype=np.float32), 1.0)) == pytest.approx(0, abs=1e-5)
