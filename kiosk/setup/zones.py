"""Time zones as they are chosen: a part of the world, the first letter of a city, the city."""

from __future__ import annotations

import os
from contextlib import suppress
from datetime import datetime
from functools import lru_cache
from importlib import resources
from pathlib import Path
from typing import Final
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError, available_timezones

_REGIONS: Final = (
    "America", "Europe", "Asia", "Africa", "Australia", "Pacific", "Atlantic", "Indian",
)  # fmt: skip
UTC: Final = "Etc/UTC"
_MOST: Final = 12
"""Cities behind one target of letters, where a letter has no more."""


def here() -> str:
    """Return the time zone of this machine; empty when that is not told or has no name."""
    told = [os.environ.get("TZ", "").removeprefix(":")]
    link = Path("/etc/localtime")
    if link.is_symlink():
        told.append(str(link.resolve()).partition("zoneinfo/")[2])
    with suppress(OSError, UnicodeDecodeError):
        told.append(Path("/etc/timezone").read_text(encoding="utf-8").strip())
    known = available_timezones()
    return next((one for one in told if "/" in one and one in known), "")


def regions() -> tuple[str, ...]:
    """Return the parts of the world, the most peopled with such machines first."""
    return _REGIONS


def cities(region: str) -> tuple[str, ...]:
    """Return the names of the zones of a region, by city."""
    return tuple(one for one in _listed() if one.startswith(f"{region}/"))


def by_letters(zones: tuple[str, ...]) -> dict[str, tuple[str, ...]]:
    """Return zones under the letters with which their cities begin, as `A`, `K L M`."""
    letters: dict[str, list[str]] = {}
    for zone in zones:
        letters.setdefault(city(zone)[0], []).append(zone)
    found: dict[str, tuple[str, ...]] = {}
    name, together = "", list[str]()
    for letter, listed in sorted(letters.items()):
        if together and len(together) + len(listed) > _MOST:
            found[name] = tuple(together)
            name, together = "", []
        name = f"{name} {letter}".strip()
        together += listed
    if together:
        found[name] = tuple(together)
    return found


def city(zone: str) -> str:
    """Return the city that a zone is named after: `New York`, `Indiana, Knox`."""
    return zone.partition("/")[2].replace("_", " ").replace("/", ", ")


def time_in(zone: str, utc: float) -> str:
    """Return the time of day in a zone at an instant (POSIX seconds), as 21:30."""
    try:
        return f"{datetime.fromtimestamp(utc, ZoneInfo(zone)):%H:%M}"
    except (ZoneInfoNotFoundError, ValueError, OSError):
        return ""


@lru_cache
def _listed() -> tuple[str, ...]:
    """Return the zones in use, without old spellings: those of the IANA list's `zone.tab`."""
    text = (resources.files("tzdata") / "zoneinfo" / "zone.tab").read_text("utf-8")
    rows = (line.split("\t") for line in text.splitlines() if not line.startswith("#"))
    return tuple(sorted((row[2] for row in rows), key=city))
