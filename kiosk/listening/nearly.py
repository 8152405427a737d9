"""Whether words that were not taken were meant for a phrase, or for somebody else."""

from __future__ import annotations

from collections.abc import Iterable
from typing import Final

from rapidfuzz.fuzz import ratio

_NEAR: Final = 70
"""Likeness in percent (normalised edit distance) from which words were meant for a phrase."""


def nearly(text: str, phrases: Iterable[str]) -> bool:
    """True when words are nearly a phrase that may be said: talk of others beside is none."""
    return any(ratio(text, phrase) >= _NEAR for phrase in phrases)
