"""Sentences about what is amiss: English in a log, and in the reader's language on a screen."""

from __future__ import annotations

from collections.abc import Mapping
from typing import Any


class Notice(str):
    """A sentence in English, with the message by which any language says it.

    It may be kept, compared and printed as any text. `Words.say` and `Words.told` say it in their
    language; made by `kiosk.languages.words.notice`.
    """

    __slots__ = ("args", "name")

    name: str
    args: Mapping[str, Any]

    def __new__(cls, english: str, name: str, args: Mapping[str, Any]) -> Notice:
        made = super().__new__(cls, english)
        made.name, made.args = name, args
        return made


class Told(Exception):
    """An error whose text is a Notice, or is English alone."""

    def __str__(self) -> str:
        # That of Exception makes a plain text of a Notice.
        return self.args[0] if self.args else ""
