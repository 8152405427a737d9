"""Events to journal text and back."""

from __future__ import annotations

import json
import re
from dataclasses import asdict
from datetime import UTC, datetime
from typing import Any, get_args, get_type_hints

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.engine.events import Event, Fact, ReadBackAgreed
from kiosk.engine.state import Stage
from kiosk.journal.shop_facts import ShopEvent, ShopFact
from kiosk.languages.notice import Told
from kiosk.languages.words import notice

FACTS: dict[str, type] = {one.__name__: one for one in get_args(Fact)}
"""Kind of a session's row to the class of its fact."""

SHOP_FACTS: dict[str, type] = {one.__name__: one for one in get_args(ShopFact)}
"""Kind of a row of the shop's stream to the class of its fact."""

_STAMP = "%Y-%m-%dT%H:%M:%S.%fZ"
_STAMPED = re.compile(r"\d{4}-\d\d-\d\dT\d\d:\d\d:\d\d\.\d{6}Z", re.ASCII)
_LONE_SURROGATE = re.compile("[\ud800-\udfff]")


_JSON: dict[object, frozenset[type]] = {
    str: frozenset({str}),
    int: frozenset({int}),
    float: frozenset({int, float}),
    bool: frozenset({bool}),
    tuple[str, ...]: frozenset({tuple}),
}
_HOLDS: dict[type, dict[str, frozenset[type]]] = {
    fact: {name: _JSON[kind] for name, kind in get_type_hints(fact).items()}
    for fact in (*FACTS.values(), *SHOP_FACTS.values())
}
"""What each field of each fact may be. `evolve` believes a fact, so it is not believed here."""


class UnknownEvent(Told, ValueError):
    """A row holds a kind or a field that this version does not know."""


def stamp(utc: float) -> str:
    """Write POSIX seconds as `2026-11-25T22:15:00.000000Z`."""
    return datetime.fromtimestamp(utc, UTC).strftime(_STAMP)


def body(event: Event | ShopEvent) -> str:
    """Return the evidence and the fact as JSON: sorted keys, no spaces, UTF-8 kept."""
    by: dict[str, Any] = {"channel": event.by.channel.value}
    if event.by.channel is Channel.VOICE:
        by |= {"heard": event.by.heard, "ear": event.by.ear}
        by["confidence"] = None if event.by.confidence is None else round(event.by.confidence, 3)
    elif event.by.heard:
        # Pressed, after these words were not taken.
        by["heard"] = event.by.heard
    record = {"by": by, "fact": asdict(event.fact)}
    text = json.dumps(record, ensure_ascii=False, sort_keys=True, separators=(",", ":"))
    # What a file name or a terminal could not decode has no UTF-8 form; JSON can escape it.
    return _LONE_SURROGATE.sub(lambda found: f"\\u{ord(found[0]):04x}", text)


def event(kind: str, utc: str, mono_us: int, boot: str, text: str) -> Event:
    """Read a session's event back from the columns of its row. Raises UnknownEvent."""
    return Event(*_parts(FACTS, kind, utc, mono_us, boot, text))


def shop_event(kind: str, utc: str, mono_us: int, boot: str, text: str) -> ShopEvent:
    """Read an event of the shop back from the columns of its row. Raises UnknownEvent."""
    return ShopEvent(*_parts(SHOP_FACTS, kind, utc, mono_us, boot, text))


def _parts(
    facts: dict[str, type], kind: str, utc: str, mono_us: int, boot: str, text: str
) -> tuple[Instant, Evidence, Any]:
    try:
        record = json.loads(text)
        if not _STAMPED.fullmatch(utc):
            raise ValueError(f"'{utc}' is no time as the journal writes it")
        at = Instant(datetime.fromisoformat(utc).timestamp(), mono_us / 1e6, boot)
        by = record["by"]
        evidence = Evidence(
            Channel(by["channel"]), by.get("heard", ""), by.get("confidence"), by.get("ear", "")
        )
        fields = {k: tuple(v) if isinstance(v, list) else v for k, v in record["fact"].items()}
        return at, _plain(evidence), _sound(facts[kind](**fields))
    except (KeyError, TypeError, ValueError, AttributeError, RecursionError) as error:
        raise UnknownEvent(notice("row-unknown", kind=kind, reason=str(error))) from error


def _plain(by: Evidence) -> Evidence:
    """Return evidence whose fields are what they should be. Raises TypeError."""
    sure = by.confidence is None or type(by.confidence) in (int, float)
    if not (sure and type(by.heard) is str and type(by.ear) is str):
        raise TypeError("what was heard is not written as the journal writes it")
    return by


def _sound(fact: Any) -> Any:
    """Return a fact whose fields are what they should be. Raises TypeError, ValueError."""
    for name, kinds in _HOLDS[type(fact)].items():
        value = getattr(fact, name)
        if type(value) not in kinds or (
            type(value) is tuple and not all(type(one) is str for one in value)
        ):
            raise TypeError(f"its field '{name}' is {value!r}")
    if isinstance(fact, ReadBackAgreed):
        Stage(fact.next)
    return fact
