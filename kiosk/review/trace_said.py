"""What speaks against a session, in one language."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.languages.words import Words
from kiosk.review.trace import Suspect


def signs_said(of: Suspect, words: Words) -> Iterator[str]:
    """Yield each sign with its details, the heaviest first."""
    for sign in of.signs:
        clue = words.say(f"clue-{sign.clue.replace(' ', '-')}")
        yield f"{clue}: {words.told(sign.told)}"
