"""What the ledger has of some business days."""

from __future__ import annotations

from collections.abc import Iterable
from dataclasses import dataclass

from kiosk.procedure.review_rules import Finds
from kiosk.report.desk import Desk, Span
from kiosk.report.of_findings import Traced, traced
from kiosk.review.deviations import Deviation, in_order
from kiosk.review.ledger_lines import Line, PartLine, Reading
from kiosk.review.schedule import Kept


@dataclass(frozen=True, slots=True)
class Gathered:
    """What the ledger has of some days, oldest first."""

    span: Span
    lines: tuple[Line, ...]
    readings: tuple[Reading, ...]
    parts: tuple[PartLine, ...]
    kept: tuple[Kept, ...]
    deviations: tuple[Traced, ...]
    """Of the sessions and of the schedule, heaviest first."""


def gather(span: Span, desk: Desk) -> Gathered:
    """Return what the ledger has of some days."""
    ledger, practice = desk.ledger, desk.site.practice
    begun, until = span.from_utc, span.until_utc
    lines = ledger.lines(practice=practice, from_utc=begun, until_utc=until, limit=None)
    of_sessions = ledger.deviations_between(begun, until, desk.now_utc, practice=practice)
    scheduled = ledger.schedule_deviations(
        span.first, span.last, desk.now_utc, practice=practice, entered=desk.results
    )
    return Gathered(
        span=span,
        lines=tuple(reversed(lines)),
        readings=ledger.readings(practice=practice, from_utc=begun, until_utc=until),
        parts=ledger.parts(practice=practice, from_utc=begun, until_utc=until),
        kept=ledger.kept(span.first, span.last, desk.now_utc, practice=practice),
        deviations=traced(in_order([*of_sessions, *in_span(span, scheduled)]), desk),
    )


def in_span(span: Span, found: Iterable[Deviation]) -> tuple[Deviation, ...]:
    """Return what the schedule shows, of what is overdue only what came due in the days."""
    return tuple(
        one
        for one in found
        if one.finds is not Finds.OVERDUE or span.from_utc <= one.at_utc < span.until_utc
    )
