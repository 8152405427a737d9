"""What is due as an iCalendar file (RFC 5545), for the calendar of a phone or an office."""

from __future__ import annotations

from collections.abc import Iterable
from datetime import UTC, datetime, timedelta
from typing import Final

from icalendar import Calendar, Event

from kiosk.languages.words import Words
from kiosk.procedure.site import Site
from kiosk.review.schedule import DAILY, Due, Duty, Kept, Stand

_MAKER: Final = "-//brushdown//what is due//EN"
_HAS_WORDS = (*DAILY, Duty.SAMPLE)
_TO_COME = (Stand.NOT_YET, Stand.DUE)
_WHOLE_DAY = (Duty.INTERVAL, Duty.PART, Duty.SAMPLE)


def calendar(kept: Iterable[Kept], site: Site, site_id: str, words: Words, now_utc: float) -> bytes:
    """Return an iCalendar file of what is to come, UTF-8 with CRLF, in one language.

    `site_id` makes the entries of this site's kiosk unlike those of another, as the journal's kiosk
    id does; an entry keeps its id, so that a calendar that reads the file again does not double it.
    `now_utc` is in POSIX seconds. Daily work has its times, in UTC; the rest has its last day.
    """
    found = Calendar()
    found.add("prodid", _MAKER)
    found.add("version", "2.0")
    found.add("calscale", "GREGORIAN")
    found.add("x-wr-calname", site.name)
    names = {one.id: one.name for one in site.machines}
    for one in kept:
        if one.stand in _TO_COME:
            event = _event(one.due, site_id, now_utc)
            event.add("summary", summary(one.due, names.get(one.due.machine, ""), words))
            event.add("location", site.name)
            found.add_component(event)
    return bytes(found.to_ical())


def summary(due: Due, machine: str, words: Words) -> str:
    """Return what is due in a few words."""
    if due.duty in _HAS_WORDS:
        return words.say(f"due-{due.duty.value}", machine=machine)
    return words.say("due-other", title=words.text(due.title), machine=machine)


def _event(due: Due, site_id: str, now_utc: float) -> Event:
    event = Event()
    event.add("uid", f"{due.id.replace('/', '.')}@{site_id}")
    event.add("dtstamp", datetime.fromtimestamp(int(now_utc), UTC))
    if due.duty in _WHOLE_DAY:
        event.add("dtstart", due.day)
        event.add("dtend", due.day + timedelta(days=1))
        event.add("transp", "TRANSPARENT")
    else:
        event.add("dtstart", datetime.fromtimestamp(int(due.from_utc), UTC))
        event.add("dtend", datetime.fromtimestamp(int(due.until_utc), UTC))
    if due.source:
        event.add("description", due.source)
    return event
