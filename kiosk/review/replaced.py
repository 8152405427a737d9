"""When each wearing part was last replaced, asked of the journal."""

from __future__ import annotations

from collections.abc import Collection
from datetime import date
from zoneinfo import ZoneInfo

from kiosk.engine.events import SessionStarted, StepConfirmed
from kiosk.journal.queries import Queries
from kiosk.journal.shop_facts import PartReplaced
from kiosk.procedure.plan import Inspect
from kiosk.review.ledger_reading import PlanOf
from kiosk.trade.code_dates import start_of

Worn = tuple[str, str]
"""A machine and one of its wearing parts."""


def last_replaced(
    journal: Queries, plan_of: PlanOf, parts: Collection[Worn], zone: ZoneInfo, *, practice: bool
) -> dict[Worn, float]:
    """Return when parts were last replaced, POSIX seconds: in a session, or at the beginning of a
    day while none ran. What was never replaced is left out. Raises codec.UnknownEvent.
    """
    found = _in_sessions(journal, plan_of, parts, practice=practice)
    for event in journal.shop_events(PartReplaced):
        match event.fact:
            case PartReplaced(machine=machine, part=part) as fact if fact.practice == practice:
                at = _begins(fact.day, zone)
                if at is not None and (machine, part) in parts:
                    found[machine, part] = max(at, found.get((machine, part), at))
            case _:
                pass
    return found


def _begins(day: str, zone: ZoneInfo) -> float | None:
    """Return when a day of the journal begins; None for what is no day."""
    try:
        return start_of(date.fromisoformat(day), zone)
    except ValueError:
        return None


def _in_sessions(
    journal: Queries, plan_of: PlanOf, parts: Collection[Worn], *, practice: bool
) -> dict[Worn, float]:
    found: dict[Worn, float] = {}
    looked_at: dict[tuple[str, str], dict[str, str]] = {}
    for begun, confirmed in journal.replaced() if parts else ():
        started, fact = begun.fact, confirmed.fact
        if not isinstance(started, SessionStarted) or not isinstance(fact, StepConfirmed):
            continue
        if started.practice != practice:
            continue
        text = (started.machine, started.digest)
        if text not in looked_at:
            looked_at[text] = _inspected(started, plan_of)
        key = (started.machine, looked_at[text].get(fact.step, ""))
        if key in parts:
            found.setdefault(key, confirmed.at.utc)
            if len(found) == len(parts):
                break
    return found


def _inspected(started: SessionStarted, plan_of: PlanOf) -> dict[str, str]:
    """Return the steps of a walked text that look at a part, each with the part; none where the
    text is not here any more."""
    plan = plan_of(started)
    steps = () if plan is None else plan.steps
    return {one.id: one.task.part for one in steps if isinstance(one.task, Inspect)}
