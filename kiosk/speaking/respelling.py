"""Words that the voice says badly, spelt so that it says them well; nobody ever sees them so."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Mapping
from functools import lru_cache
from importlib import resources

from kiosk.languages.number_words import said_right


@lru_cache
def respellings(language: str) -> Mapping[str, str]:
    """Return how the words of a language are spelt for its voice: lower case word to spelling.

    They lie in `respellings/LANGUAGE.toml`; a language without that file has none.
    """
    file = resources.files("kiosk.speaking") / "respellings" / f"{language}.toml"
    return tomllib.loads(file.read_text("utf-8")) if file.is_file() else {}


def respelt(text: str, language: str) -> str:
    """Return a text as it is spelt for the voice: numbers that it misreads in words, and whole
    words as they are listed, whatever their case."""
    text = said_right(text, language)
    found = respellings(language)
    if not found:
        return text
    return _any_of(language).sub(lambda word: found[word.group().lower()], text)


@lru_cache
def _any_of(language: str) -> re.Pattern[str]:
    longest_first = sorted(respellings(language), key=len, reverse=True)
    words = "|".join(map(re.escape, longest_first))
    return re.compile(rf"(?<!\w)(?:{words})(?!\w)", re.IGNORECASE)
