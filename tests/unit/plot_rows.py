"""Rows as a ledger has them, for the tests of figures and parts."""

from __future__ import annotations

from datetime import date, datetime, timedelta
from decimal import Decimal
from pathlib import Path

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import PartsReceived, ShopEvent, ShopFact
from kiosk.procedure.load import load_library
from kiosk.procedure.site import load_site
from kiosk.review.ledger_lines import Line, PartLine, Reading
from kiosk.review.record import Ended
from kiosk.trade.code_dates import site_zone

ROOT = Path(__file__).parents[2]
SITE = load_site(ROOT / "demo" / "site.toml")
LIBRARY = load_library(ROOT / "procedures")
ZONE = site_zone(SITE.time_zone)
FIRST = date(2026, 9, 1)
LIMIT = "mix temperature None to 5: a published clause"


def at(day: int, hour: float = 12.0) -> float:
    """POSIX seconds of an hour by the shop's clock, so many days after the first one."""
    midnight = datetime.combine(FIRST + timedelta(days=day), datetime.min.time(), ZONE)
    return midnight.timestamp() + hour * 3600


def line(day: int, minutes: float = 50, **other: object) -> Line:
    """One session that began in the evening of a day."""
    begun = at(day, 21)
    fields = {
        "session": f"s{day}", "procedure": "close-twin-gravity", "title": {}, "version": 1,
        "machine": "patio", "practice": True, "workers": ("p1",), "begun_utc": begun,
        "last_utc": begun + minutes * 60, "ended": Ended.COMPLETE, "ended_step": "",
        "text_known": True, "first_seq": day * 100 + 1, "last_seq": day * 100 + 90, "steps": 40,
        "spoken": True, "deviations": 0, "heaviest": 0, "usual_s": None, "usual_of": 0,
        "signed": None,
    }  # fmt: skip
    return Line(**(fields | other))  # type: ignore[arg-type]


def reading(day: int, value: str, **other: object) -> Reading:
    """A temperature of the mix, judged by a limit of 5 °C."""
    fields = {
        "seq": day + 1, "session": f"s{day}", "step": "mix", "machine": "patio", "practice": True,
        "at_utc": at(day), "quantity": "mix temperature", "value": value, "unit": "°C",
        "limit": LIMIT, "kept": Decimal(value) <= 5,
    }  # fmt: skip
    return Reading(**(fields | other))  # type: ignore[arg-type]


def part(day: int, finding: str, name: str = "o-rings", **other: object) -> PartLine:
    """A part of the patio machine that was looked at or replaced."""
    fields = {
        "seq": day + 1, "session": f"s{day}", "step": "look", "machine": "patio",
        "practice": True, "at_utc": at(day), "part": name, "finding": finding,
    }  # fmt: skip
    return PartLine(**(fields | other))  # type: ignore[arg-type]


def told(fact: ShopFact, when: float) -> ShopEvent:
    """A fact of the shop at a moment."""
    return ShopEvent(Instant(when, when, "b"), Evidence(Channel.KEY), fact)


def received(day: float, count: int, name: str = "o-rings", *, practice: bool = True) -> ShopEvent:
    """Parts for the patio machine's kind that came in."""
    return told(PartsReceived("twin-gravity", name, count, "p4", practice), at(0) + day * 86_400)
