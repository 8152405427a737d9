"""What the calculators of a site know before the first question."""

from __future__ import annotations

from datetime import datetime
from functools import lru_cache
from zoneinfo import ZoneInfo

from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.load import Library
from kiosk.procedure.site import Site
from kiosk.reckoning.calculator import Bench
from kiosk.trade.authorities import Authorities


def bench(site: Site, library: Library, utc: float) -> Bench:
    """Return what calculators may know at an instant (POSIX seconds). Raises FaultyFile."""
    if site.limits not in library.limits:
        mend = f"use one of: {', '.join(sorted(library.limits))}"
        what = f"there is no limits profile '{site.limits}'"
        raise FaultyFile([Fault("site.toml", 0, "limits", what, mend)])
    today = datetime.fromtimestamp(utc, ZoneInfo(site.time_zone)).date()
    return Bench(
        site=site, profile=library.limits[site.limits], authorities=_authorities(), today=today
    )


@lru_cache
def _authorities() -> Authorities:
    return load_authorities()
