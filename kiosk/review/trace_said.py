"""What speaks against a session, in one language."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.languages.words import Words
from kiosk.review.trace import Suspect


def signs_said(of: Suspect, words: Words) -> Iterator[str]:
    """Yield each sign, the heaviest first; the details are written in English only."""
    for sign in of.signs:
        clue = words.say(f"clue-{sign.clue.replace(' ', '-')}")
        yield f"{clue}: {sign.english}" if words.language == "en" else clue
