"""Events to journal text and back."""

from __future__ import annotations

import json
from dataclasses import asdict
from datetime import UTC, datetime
from typing import Any, get_args

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.engine.events import Event, Fact

FACTS: dict[str, type] = {one.__name__: one for one in get_args(Fact)}
"""Kind of a row to the class of its fact."""

_STAMP = "%Y-%m-%dT%H:%M:%S.%fZ"


class UnknownEvent(ValueError):
    """A row holds a kind or a field that this version does not know."""


def stamp(utc: float) -> str:
    """Write POSIX seconds as `2026-11-25T22:15:00.000000Z`."""
    return datetime.fromtimestamp(utc, UTC).strftime(_STAMP)


def body(event: Event) -> str:
    """Return the evidence and the fact as JSON: sorted keys, no spaces, UTF-8 kept."""
    by: dict[str, Any] = {"channel": event.by.channel.value}
    if event.by.channel is Channel.VOICE:
        by |= {"heard": event.by.heard, "ear": event.by.ear}
        by["confidence"] = None if event.by.confidence is None else round(event.by.confidence, 3)
    record = {"by": by, "fact": asdict(event.fact)}
    return json.dumps(record, ensure_ascii=False, sort_keys=True, separators=(",", ":"))


def event(kind: str, utc: str, mono_us: int, boot: str, text: str) -> Event:
    """Read an event back from the columns of its row. Raises UnknownEvent."""
    try:
        record = json.loads(text)
        at = Instant(
            datetime.strptime(utc, _STAMP).replace(tzinfo=UTC).timestamp(), mono_us / 1e6, boot
        )
        by = record["by"]
        evidence = Evidence(
            Channel(by["channel"]), by.get("heard", ""), by.get("confidence"), by.get("ear", "")
        )
        fields = {k: tuple(v) if isinstance(v, list) else v for k, v in record["fact"].items()}
        return Event(at, evidence, FACTS[kind](**fields))
    except (KeyError, TypeError, ValueError) as error:
        raise UnknownEvent(f"a row of kind '{kind}' cannot be read: {error}") from error
