"""Times of day as people type them; a twelve-hour time without its half of the day is refused."""

from __future__ import annotations

import re
import unicodedata

from kiosk.trade.typed import NotTyped

_TIME = re.compile(
    r"(?P<before>오전|오후)?\s*(?P<hour>[0-9]{1,2})(?::(?P<minute>[0-9]{2}))?\s*"
    r"(?P<after>[ap]\.?\s?m\.?)?",
    re.IGNORECASE,
)
_WORDS = {"noon": 720, "mediodía": 720, "정오": 720, "midnight": 0, "medianoche": 0, "자정": 0}


def read_time_of_day(text: str, twelve_hours: bool) -> int:
    """Read a time of day; return minutes since midnight, 0 to 1439. Raises NotTyped.

    `twelve_hours` is true where the shop's clock shows 1 to 12: there `7:30` and `12:00` have two
    readings, and `13:00` has one. 12 am is midnight and 12 pm is noon, as US clocks have it (MEM).
    """
    plain = " ".join(unicodedata.normalize("NFKC", text).split())
    if not plain:
        raise NotTyped("typed-nothing")
    if plain.casefold() in _WORDS:
        return _WORDS[plain.casefold()]
    match = _TIME.fullmatch(plain)
    if match is None or (match["before"] and match["after"]):
        raise NotTyped("typed-no-time", text=text[:40])
    half = _half(match)
    if match["minute"] is None and not half:
        raise NotTyped("typed-no-time", text=text[:40])
    hour, minute = int(match["hour"]), int(match["minute"] or 0)
    if minute > 59 or hour > 23 or (half and not 1 <= hour <= 12):
        raise NotTyped("typed-no-such-time", text=text[:40])
    if half:
        return hour % 12 * 60 + minute + (720 if half == "pm" else 0)
    if twelve_hours and 1 <= hour <= 12:
        key = "typed-twelve" if (hour, minute) == (12, 0) else "typed-half-of-day"
        clock = f"{hour}:{minute:02}"
        raise NotTyped(key, text=text[:40], first=f"{clock} am", second=f"{clock} pm")
    return hour * 60 + minute


def _half(match: re.Match[str]) -> str:
    """Return `am`, `pm` or nothing."""
    if match["before"]:
        return "am" if match["before"] == "오전" else "pm"
    return f"{match['after'][0].lower()}m" if match["after"] else ""
