"""Letters along a sound: the sum over all ways, against every way written out."""

from __future__ import annotations

from itertools import groupby, product
from pathlib import Path

import numpy as np
import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.listening.letters import ALPHABET, Letters, free, likelihoods, spelled, spelling
from kiosk.shipped import shipped

FEW = " ab"
"""The first classes of the alphabet are enough: every way of five frames is 1,024 ways."""


def sound(seed: int, frames: int, classes: int = len(FEW) + 1) -> np.ndarray:
    chance = np.random.default_rng(seed).dirichlet(np.full(classes, 0.7), frames)
    return np.log(chance)


def collapsed(way: tuple[int, ...]) -> str:
    """Return what a way spells: repeated classes once, without 'no new letter' (the paper's B)."""
    return "".join(ALPHABET[one - 1] for one, _ in groupby(way) if one)


@given(st.integers(0, 10**6), st.integers(1, 5), st.text(FEW, min_size=1, max_size=4))
def test_a_texts_probability_is_the_sum_over_every_way_that_spells_it(seed, frames, text):
    said = sound(seed, frames)
    ways = product(range(len(FEW) + 1), repeat=frames)
    total = sum(
        np.exp(said[np.arange(frames), way].sum()) for way in ways if collapsed(way) == text
    )
    found = float(np.exp(likelihoods(said, [text])[0]))
    assert found == pytest.approx(total, rel=1e-9, abs=1e-300)


def test_the_example_of_the_paper():
    """Graves et al. 2006, section 3.1 (from memory): a-ab- and -aa--abb both spell 'aab'."""
    a, b = ALPHABET.index("a") + 1, ALPHABET.index("b") + 1
    assert collapsed((a, 0, a, b, 0)) == collapsed((0, a, a, 0, 0, a, b, b)) == "aab"


@given(st.integers(0, 10**6), st.integers(1, 4))
def test_the_texts_of_a_sound_share_one_whole(seed, frames):
    said = sound(seed, frames)
    texts = ["".join(one) for n in range(1, frames + 1) for one in product(FEW, repeat=n)]
    silence = np.exp(said[:, 0].sum())
    assert np.exp(likelihoods(said, texts)).sum() + silence == pytest.approx(1.0)


@given(st.integers(0, 10**6), st.integers(1, 30))
def test_texts_are_scored_alike_alone_and_beside_others(seed, frames):
    said = sound(seed, frames, len(ALPHABET) + 1)
    texts = ["next", "go back", "a", "i see everyone standing clear"]
    alone = [likelihoods(said, [one])[0] for one in texts]
    np.testing.assert_allclose(likelihoods(said, texts), alone)


@given(st.integers(0, 10**6), st.integers(1, 8))
def test_what_is_spelled_freely_is_read_off_the_likeliest_way(seed, frames):
    said = sound(seed, frames)
    assert spelled(said) == collapsed(tuple(said.argmax(axis=1)))
    assert free(said) == pytest.approx(said.max(axis=1).sum())


def test_what_cannot_be_spelled_has_no_chance():
    said = sound(1, 3, len(ALPHABET) + 1)
    assert (likelihoods(said, ["", "다음", "aa", "abcd"]) < -1e20).tolist() == [
        True, True, False, True,
    ]  # fmt: skip
    assert spelling("Ab-1") == [ALPHABET.index("b") + 1]


# The weights that are shipped.


def test_the_shipped_weights_spell_and_are_small():
    file = shipped("models") / "letters-tiny-en.npz"
    assert file.stat().st_size < 1_000_000
    letters = Letters(file)
    frames = np.random.default_rng(0).standard_normal((40, 384)).astype(np.float16)
    found = letters(frames)
    assert found.shape == (40, len(ALPHABET) + 1)
    np.testing.assert_allclose(np.exp(found).sum(axis=1), 1.0)


@pytest.mark.parametrize("spoilt", [b"", b"no weights", "cut", "other"])
def test_spoilt_weights_are_refused(tmp_path: Path, spoilt):
    whole = shipped("models") / "letters-tiny-en.npz"
    file = tmp_path / "letters.npz"
    if spoilt == "cut":
        file.write_bytes(whole.read_bytes()[:5000])
    elif spoilt == "other":
        with np.load(whole) as found:
            narrow = {**found, "w3": found["w3"][:, :9], "b3": found["b3"][:9]}
        np.savez(file, **narrow)
    else:
        file.write_bytes(spoilt)
    with pytest.raises(ValueError, match="install the kiosk again"):
        Letters(file)
