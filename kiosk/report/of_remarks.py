"""Spoken remarks in a report: who left them, how long they are, the hash of their sound."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import datetime
from typing import Any

from kiosk.journal.codec import SHOP_FACTS
from kiosk.remarks.told import KINDS, Remark, Told, remarks
from kiosk.report.desk import Desk


def remarks_of(session: str, desk: Desk) -> tuple[Remark, ...]:
    """Return the spoken remarks of a session, in order."""
    told = sorted(_told(desk), key=lambda one: one[0])
    return tuple(one for one in remarks(told) if one.session == session)


def _told(desk: Desk) -> Iterator[Told]:
    for kind in KINDS:
        for seq, utc, fact in desk.rows.shop(kind.__name__):
            at_utc = datetime.fromisoformat(utc).timestamp()
            yield seq, at_utc, SHOP_FACTS[kind.__name__](**_fields(fact))


def _fields(fact: dict[str, Any]) -> dict[str, Any]:
    return {key: tuple(one) if isinstance(one, list) else one for key, one in fact.items()}


def remark_told(one: Remark, desk: Desk) -> str:
    """Return who left a remark, its length and its hash, and when its sound was erased."""
    said = desk.say(
        "spoken-told", who=desk.person(one.worker), time=desk.length(one.seconds), hash=one.sha256
    )
    erased = one.erased
    if erased is None:
        return said
    at = desk.moment(erased.at_utc)
    if not erased.by:
        return f"{said}; {desk.say('spoken-erased-by-time', at=at)}"
    return f"{said}; {desk.say('spoken-erased-by', at=at, by=desk.person(erased.by))}"
