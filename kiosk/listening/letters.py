"""Letters: a small network that spells what a Whisper encoder heard.

The model's own decoder writes sentences that people write: in noise it prefers a likely sentence to
what was said. Letters know no sentences. A phrase is scored by connectionist temporal
classification: the probability of every way in which its letters may lie along the sound, summed
(Graves et al., 'Connectionist Temporal Classification', ICML 2006, section 4.1).

The weights are made by `python -m tests.bench.train_letters`.
"""

from __future__ import annotations

from collections.abc import Sequence
from io import BytesIO
from pathlib import Path
from typing import Final
from zipfile import BadZipFile

import numpy as np
from numpy.typing import NDArray

ALPHABET: Final = " abcdefghijklmnopqrstuvwxyz'"
"""What can be spelled; the class before them all is 'no new letter'."""
FRAME: Final = 320
"""Samples of sound for one frame of the encoder: 20 ms."""
BEYOND: Final = 12
"""Frames after the end of the sound that are looked at as well."""
CONVOLUTIONS: Final = ("1", "2")
_NUMBER_OF: Final = {letter: place for place, letter in enumerate(ALPHABET, 1)}
_NEVER: Final = -1e30


class Letters:
    """Spells frames of one encoder."""

    def __init__(self, file: Path) -> None:
        """Load the weights, an .npz file. Raises OSError, or ValueError when it is spoilt."""
        whole = BytesIO(file.read_bytes())
        try:
            with np.load(whole, allow_pickle=False) as found:
                self._weights = {name: found[name].astype(np.float32) for name in found.files}
            frames = np.zeros((2, len(self._weights["mean"])), dtype=np.float32)
            fits = self(frames).shape == (2, len(ALPHABET) + 1)
        except (AttributeError, BadZipFile, EOFError, KeyError, TypeError, ValueError) as error:
            raise ValueError(f"{file} holds no letters; install the kiosk again") from error
        if not fits:
            raise ValueError(f"{file} spells other letters; install the kiosk again")

    def __call__(self, frames: NDArray[np.floating]) -> NDArray[np.float64]:
        """Return natural logarithms of probabilities, shape (frames, 1 + letters).

        `frames` are the encoder's, shape (frames, width).
        """
        of = self._weights
        hidden = (frames.astype(np.float32) - of["mean"]) / of["std"]
        hidden = np.maximum(hidden @ of["w0"] + of["b0"], 0)
        for one in CONVOLUTIONS:
            hidden = hidden + np.maximum(_convolved(hidden, of[f"w{one}"]) + of[f"b{one}"], 0)
        scores = (hidden @ of["w3"] + of["b3"]).astype(np.float64)
        scores -= scores.max(axis=1, keepdims=True)
        logs: NDArray[np.float64] = scores - np.log(np.exp(scores).sum(axis=1, keepdims=True))
        return logs


def _convolved(frames: NDArray[np.float32], kernel: NDArray[np.float32]) -> NDArray[np.float32]:
    side = len(kernel) // 2
    padded = np.pad(frames, ((side, side), (0, 0)))
    total = np.zeros((len(frames), kernel.shape[2]), dtype=np.float32)
    for at, one in enumerate(kernel):
        total += padded[at : at + len(frames)] @ one
    return total


def spelling(text: str) -> list[int]:
    """Return the classes of a text's letters; what is no letter is left out."""
    return [_NUMBER_OF[letter] for letter in text if letter in _NUMBER_OF]


def free(log_probabilities: NDArray[np.float64]) -> float:
    """Return how likely the likeliest way of spelling is, whatever it spells (a logarithm)."""
    return float(log_probabilities.max(axis=1).sum())


def spelled(log_probabilities: NDArray[np.float64]) -> str:
    """Return what the likeliest way spells."""
    best = log_probabilities.argmax(axis=1)
    kept = best[(best != 0) & (best != np.concatenate([[0], best[:-1]]))]
    return "".join(ALPHABET[one - 1] for one in kept)


def likelihoods(
    log_probabilities: NDArray[np.float64], texts: Sequence[str]
) -> NDArray[np.float64]:
    """Return the natural logarithm of the probability of each text, shape (texts,).

    A text without a letter, or with more than the frames can hold, has about -1e30.
    """
    classes = [spelling(one) for one in texts]
    longest = max(map(len, classes))
    rows = np.arange(len(texts))
    # Each letter between two places for 'no new letter', as the paper's l'.
    along = np.zeros((len(texts), 2 * longest + 1), dtype=np.intp)
    for row, one in enumerate(classes):
        along[row, 1 : 2 * len(one) : 2] = one
    may_skip = np.zeros(along.shape, dtype=bool)
    may_skip[:, 2:] = (along[:, 2:] != 0) & (along[:, 2:] != along[:, :-2])
    forward = np.full(along.shape, _NEVER)
    forward[:, :2] = log_probabilities[0, along[:, :2]]
    for frame in log_probabilities[1:]:
        one_on = np.pad(forward[:, :-1], ((0, 0), (1, 0)), constant_values=_NEVER)
        two_on = np.pad(forward[:, :-2], ((0, 0), (2, 0)), constant_values=_NEVER)
        two_on = np.where(may_skip, two_on, _NEVER)
        forward = np.logaddexp(np.logaddexp(forward, one_on), two_on) + frame[along]
    ends = np.array([2 * len(one) for one in classes])
    whole = np.logaddexp(forward[rows, ends], forward[rows, ends - 1])
    return np.where(ends > 0, whole, _NEVER)
