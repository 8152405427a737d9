"""What was written down in noise, and what it may have been without the noise."""

from __future__ import annotations

from collections.abc import Sequence
from typing import Final

from kiosk.listening.wording import NUMBER_WORDS, normal, said_once

MORE_WORDS: Final = 2
"""So many words more than a phrase has may be made of it by a noise."""
DENIALS: Final = frozenset(("no", "not", "none", "nothing", "never", "nobody", "without", "cannot"))


def may_be_misheard(written: str, phrase: str) -> bool:
    """Tell whether `phrase`, heard without the noise, may be what was written down in the noise.

    Not when one of them denies what the other says, not when the phrase stands in what was written
    with something more, and not when that was a longer sentence. Two numbers are never the same,
    and a single word may sound like a denial: 'no' and 'go'. `written` is in normal form.
    """
    words = normal(phrase).split()
    if written == " ".join(words):
        return True
    if value(words) and value(written.split()):
        return False
    if _says_more(written, words):
        return False
    return len(words) == 1 or _denied(written.split()) == _denied(words)


def value(words: Sequence[str]) -> tuple[str, ...]:
    """Return those of some words that make a number, its sign and its point too; () for none."""
    if NUMBER_WORDS.isdisjoint(words):
        return ()
    return tuple(one for one in words if one in NUMBER_WORDS or one in ("minus", "point"))


def _says_more(written: str, words: list[str]) -> bool:
    wrote, count = written.split(), len(words)
    within = any(wrote[at : at + count] == words for at in range(len(wrote) - count + 1))
    return within or len(said_once(written).split()) > count + MORE_WORDS


def _denied(words: Sequence[str]) -> frozenset[str]:
    return DENIALS.intersection(words)
