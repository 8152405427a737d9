"""The journal in plain lines."""

from __future__ import annotations

from collections.abc import Sequence
from dataclasses import fields

from kiosk.engine.events import Event, SessionStarted
from kiosk.engine.state import fold
from kiosk.journal.codec import stamp
from kiosk.journal.shop_facts import ShopEvent
from kiosk.procedure.fault import harmless


def session_line(session: str, events: Sequence[Event]) -> str:
    """Return one session in a line: id, start, minutes, procedure, worker, mode."""
    started = next((x.fact for x in events if isinstance(x.fact, SessionStarted)), None)
    if started is None:
        return f"{session}  (no beginning)"
    minutes = (events[-1].at.utc - events[0].at.utc) / 60
    practice = "  practice" if started.practice else ""
    return harmless(
        f"{session}  {stamp(events[0].at.utc)[:16]}Z  {minutes:4.0f} min  {started.procedure}"
        f"  {started.worker}  {fold(events).mode}{practice}"
    )


def event_line(event: Event | ShopEvent) -> str:
    """Return one event in a line: time, channel, kind, what it says."""
    said = [
        f"{field.name}={_plain(value)}"
        for field in fields(event.fact)
        if (value := getattr(event.fact, field.name)) not in ("", (), False)
    ]
    heard = ""
    if event.by.heard:
        sure = "" if event.by.confidence is None else f" {event.by.confidence:.2f}"
        heard = f"  heard '{event.by.heard}'{sure} by {event.by.ear}"
    kind = type(event.fact).__name__
    line = f"{stamp(event.at.utc)}  {event.by.channel:5}  {kind}  {'  '.join(said)}{heard}"
    return harmless(line)


def _plain(value: object) -> str:
    return ", ".join(map(str, value)) if isinstance(value, tuple) else str(value)
