"""An error as data, so that it can be said in every language: a key and what fills its sentence."""

from __future__ import annotations

from collections.abc import Mapping
from typing import ClassVar


class Keyed(Exception):
    """Something cannot be; `key` and `values` are data, the text says what to mend."""

    says: ClassVar[Mapping[str, str]]
    """Key to English sentence."""

    def __init__(self, key: str, **values: object) -> None:
        super().__init__(self.says[key].format(**values))
        self.key = key
        self.values = values
