"""A limit, as it stands in the journal, in the words of a language."""

from __future__ import annotations

import re
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.languages.words import Words

_BOUNDS: Final = re.compile(r"(?P<name>.+?) (?P<least>\S+) to (?P<most>\S+): (?P<source>.*)")
_AT_LEAST: Final = re.compile(r"at least (?P<least>[0-9.]+) s")
_PARTS_LIST: Final = re.compile(r"parts list: (?P<count>\d+)")


def limit_said(limit: str, unit: str, said: Words) -> str:
    """Return a limit, as journaled, in words, with its source; as it is where it has no such form.

    The journal has `NAME LEAST to MOST: SOURCE` with `None` for an end that is open, `at least N s`
    of a wait, and `parts list: N` of a count.
    """
    if (found := _AT_LEAST.fullmatch(limit)) is not None:
        return said.say("limit-least", least=said.number(Number(found["least"], "s")))
    if (found := _PARTS_LIST.fullmatch(limit)) is not None:
        return said.say("review-limit-parts", number=found["count"])
    found = _BOUNDS.fullmatch(limit)
    if found is None:
        return limit
    ends = {
        name: said.number(Number(found[name], unit))
        for name in ("least", "most")
        if found[name] != "None"
    }
    if not ends:
        return f"{said.say('limit-none')}; {found['source']}"
    return f"{said.say('limit-' + '-'.join(ends), **ends)}; {found['source']}"
