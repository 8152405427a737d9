"""The judge over a session that really took place: from proven to happened."""

from __future__ import annotations

from collections.abc import Iterable

from kiosk.engine.events import Event
from kiosk.procedure.plan import Plan
from kiosk.proof.account import Violation
from kiosk.proof.monitor import Monitor


def audit(plan: Plan, events: Iterable[Event]) -> list[Violation]:
    """Return every rule that a session's events broke; none when the session was sound.

    The plan must be the one that was walked (same digest); another one is itself a violation.
    A session that is still open is judged as far as it has come.
    """
    return list(Monitor(plan).violations(events))
