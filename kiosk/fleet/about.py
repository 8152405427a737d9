"""What a kiosk tells the head office of its shop: machines, and what is due when. No names."""

from __future__ import annotations

from datetime import date, timedelta
from typing import Any

from kiosk.procedure.load import Library
from kiosk.procedure.review_rules import Schedule
from kiosk.procedure.site import Site
from kiosk.review.schedule import daily

DAYS_AHEAD = 14
"""Business days told ahead: so long may a shop be offline and still be missed."""


def about(site: Site, library: Library, schedule: Schedule, today: date) -> dict[str, Any]:
    """Return the site as JSON has it; times in POSIX seconds. Raises BadTime.

    Opening hours and time zones are reckoned here, where the review reckons them.
    """
    dues = daily(site, library, schedule, today - timedelta(1), today + timedelta(DAYS_AHEAD))
    return {
        "site": site.name,
        "time_zone": site.time_zone,
        "practice": site.practice,
        "machines": [{"id": one.id, "name": one.name, "kind": one.kind} for one in site.machines],
        "dues": [
            {
                "id": one.id,
                "duty": one.duty,
                "machine": one.machine,
                "day": one.day.isoformat(),
                "claim_utc": one.claim_utc,
                "from_utc": one.from_utc,
                "until_utc": one.until_utc,
                "procedures": one.procedures,
            }
            for one in dues
        ],
    }
