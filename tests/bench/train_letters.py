"""Trains the letters: `python -m tests.bench.train_letters FOLDER models/letters-tiny-en.npz`.

FOLDER is what tests.bench.letters_material made. `--without slt` leaves out the voices with that
name, to judge by voices that were not learned from. Needs jax and optax (`pip install jax optax`).
"""

from __future__ import annotations

import argparse
import math
import time
from collections.abc import Iterator
from pathlib import Path
from typing import Any, Final

import jax
import jax.numpy as jnp
import numpy as np
import optax

from kiosk.listening.letters import ALPHABET, CONVOLUTIONS, spelling
from tests.bench.letters_material import read

WIDTH: Final = 160
KERNEL: Final = 5
BATCH: Final = 48
BEST_RATE: Final = 2.5e-3
DROPPED: Final = (0.1, 0.15, 0.15)
HIDDEN_FRAMES: Final = 5
"""At most so many frames of every other clip are hidden."""
TO_SCALE: Final = 3000
"""Clips by which the encoder's numbers are scaled."""
Weights = dict[str, jax.Array]


def begun(width: int, chance: np.random.Generator) -> Weights:
    """Return weights to begin with."""

    def drawn(*shape: int) -> jax.Array:
        return jnp.array(chance.standard_normal(shape) * math.sqrt(1 / math.prod(shape[:-1])))

    sizes = {"0": (width, WIDTH), "3": (WIDTH, len(ALPHABET) + 1)}
    sizes |= dict.fromkeys(CONVOLUTIONS, (KERNEL, WIDTH, WIDTH))
    found = {f"w{name}": drawn(*shape) for name, shape in sizes.items()}
    return found | {f"b{name}": jnp.zeros(shape[-1]) for name, shape in sizes.items()}


def scores(weights: Weights, frames: jax.Array, key: jax.Array) -> jax.Array:
    """Return the scores of letters for a batch, with a part of the network left out by chance."""

    def dropped(number: int, values: jax.Array) -> jax.Array:
        kept = jax.random.bernoulli(
            jax.random.fold_in(key, number), 1 - DROPPED[number], values.shape
        )
        return jnp.where(kept, values / (1 - DROPPED[number]), 0)

    hidden = jax.nn.relu(dropped(0, frames) @ weights["w0"] + weights["b0"])
    for number, name in enumerate(CONVOLUTIONS, 1):
        along = jax.lax.conv_general_dilated(
            dropped(number, hidden), weights[f"w{name}"], (1,), "SAME",
            dimension_numbers=("NWC", "WIO", "NWC"),
        )  # fmt: skip
        hidden = hidden + jax.nn.relu(along + weights[f"b{name}"])
    return hidden @ weights["w3"] + weights["b3"]


class Material:
    """Clips in batches of about the same length."""

    def __init__(self, folder: Path, without: list[str], chance: np.random.Generator) -> None:
        kept = [
            (one.frames, spelling(one.text))
            for one in read(folder)
            if not any(name in one.voice for name in without)
        ]
        self._clips = [one for one in kept if len(one[0]) > len(one[1]) + 2]
        self._clips.sort(key=lambda one: len(one[0]))
        self._chance = chance
        places = chance.permutation(len(self._clips))[:TO_SCALE]
        some = np.concatenate([self._clips[at][0] for at in places]).astype(np.float32)
        self.mean, self.std = some.mean(axis=0), some.std(axis=0) + 1e-3

    def __len__(self) -> int:
        return len(self._clips)

    def batches(self) -> Iterator[tuple[np.ndarray, ...]]:
        """Yield all clips once: frames, what of them is padding, letters, and their padding."""
        near = np.argsort(np.arange(len(self)) + self._chance.uniform(0, 600, len(self)))
        starts = np.arange(0, len(self) - BATCH + 1, BATCH)
        for start in self._chance.permutation(starts):
            yield self._padded([self._clips[at] for at in near[start : start + BATCH]])

    def _padded(self, clips: list[tuple[np.ndarray, list[int]]]) -> tuple[np.ndarray, ...]:
        long = _up_to(32, max(len(frames) for frames, _ in clips))
        many = _up_to(16, max(len(letters) for _, letters in clips))
        sound = np.zeros((len(clips), long, len(self.mean)), np.float32)
        text = np.zeros((len(clips), many), np.int32)
        no_sound, no_text = np.ones(sound.shape[:2], np.float32), np.ones(text.shape, np.float32)
        for row, (frames, letters) in enumerate(clips):
            scaled = (frames.astype(np.float32) - self.mean) / self.std
            if self._chance.random() < 0.5:
                at = self._chance.integers(0, len(scaled))
                scaled[at : at + self._chance.integers(1, HIDDEN_FRAMES)] = 0
            sound[row, : len(scaled)], no_sound[row, : len(scaled)] = scaled, 0
            text[row, : len(letters)], no_text[row, : len(letters)] = letters, 0
        return sound, no_sound, text, no_text


def _up_to(step: int, length: int) -> int:
    return -(-length // step) * step


def trained(material: Material, rounds: int, chance: np.random.Generator) -> Iterator[Weights]:
    """Yield the weights after each round through the material."""
    steps = rounds * (len(material) // BATCH)
    rule = optax.chain(
        optax.clip_by_global_norm(1.0),
        optax.adamw(optax.cosine_onecycle_schedule(steps, BEST_RATE, 0.1), weight_decay=1e-4),
    )

    def loss(weights: Weights, batch: Any, key: jax.Array) -> jax.Array:
        sound, no_sound, text, no_text = batch
        lost = optax.ctc_loss(scores(weights, sound, key), no_sound, text, no_text)
        return jnp.mean(lost / jnp.maximum(1, (1 - no_text).sum(axis=1)))

    @jax.jit
    def step(weights: Weights, state: Any, batch: Any, key: jax.Array) -> tuple[Any, Any, Any]:
        lost, gradients = jax.value_and_grad(loss)(weights, batch, key)
        updates, state = rule.update(gradients, state, weights)
        return optax.apply_updates(weights, updates), state, lost

    weights, key = begun(len(material.mean), chance), jax.random.PRNGKey(0)
    state = rule.init(weights)
    for number in range(rounds):
        lost = []
        for batch in material.batches():
            key, now = jax.random.split(key)
            weights, state, one = step(weights, state, batch, now)
            lost.append(float(one))
        print(f"round {number}: {np.mean(lost):.4f} lost a letter", flush=True)
        yield weights


def main() -> None:
    """Train, and write the weights after each round."""
    asked = argparse.ArgumentParser(description=__doc__)
    asked.add_argument("folder", type=Path)
    asked.add_argument("out", type=Path)
    asked.add_argument("--rounds", type=int, default=16)
    asked.add_argument("--without", nargs="*", default=[])
    given = asked.parse_args()
    chance, begin = np.random.default_rng(0), time.perf_counter()
    material = Material(given.folder, given.without, chance)
    print(f"{len(material)} clips", flush=True)
    for weights in trained(material, given.rounds, chance):
        whole = {"mean": material.mean, "std": material.std, **weights}
        np.savez_compressed(
            given.out, **{name: np.asarray(one, np.float16) for name, one in whole.items()}
        )
    print(f"{time.perf_counter() - begin:.0f} s")


if __name__ == "__main__":
    main()
