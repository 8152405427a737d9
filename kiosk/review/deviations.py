"""Deviations: what the rules find in sessions and in the schedule, heaviest first. None hidden."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from types import MappingProxyType
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.languages.notice import Notice
from kiosk.languages.words import Words
from kiosk.procedure.model import Text
from kiosk.procedure.review_rules import DeviationRule, DeviationRules, Finds
from kiosk.procedure.site import Site
from kiosk.review.answers import named
from kiosk.review.earlier import Earlier, earlier
from kiosk.review.finding import Case, Facts, Finder, Found
from kiosk.review.limit_said import limit_said
from kiosk.review.of_sessions import OF_SESSIONS
from kiosk.review.of_steps import OF_STEPS
from kiosk.review.record import Brief, SessionRecord, in_zone
from kiosk.review.schedule import Duty, Kept, Stand
from kiosk.trade.code_dates import site_zone

FINDERS: Final[Mapping[Finds, Finder]] = MappingProxyType({**OF_SESSIONS, **OF_STEPS})
"""What is looked for in a session; the other kinds are found in the schedule."""

_STANDS: Final[Mapping[Stand, Finds]] = MappingProxyType(
    {
        Stand.EARLY: Finds.EARLY,
        Stand.LATE: Finds.LATE,
        Stand.NOT_FINISHED: Finds.NOT_FINISHED,
        Stand.MISSED: Finds.NEVER_STARTED,
    }
)
_SPACED = (Duty.INTERVAL, Duty.PART, Duty.SAMPLE)


@dataclass(frozen=True, slots=True, kw_only=True)
class Deviation:
    """One thing that a supervisor must see."""

    rule: str
    """Id of the rule."""
    finds: Finds
    weight: int
    title: Text
    reason: Text
    """Why it should be seen."""
    machine: str
    procedure: str
    """Empty where something due can be fulfilled by several procedures, or by none."""
    session: str
    """Empty when no session was begun."""
    step: str
    """Empty when it concerns the whole session."""
    at_utc: float
    """POSIX seconds."""
    facts: Facts
    """What fills the sentence: words, texts by language, numbers with their unit."""
    seq: int = 0
    """Row of the journal that it stands on; 0 where it was made without, or none was written."""


def deviations(
    record: SessionRecord, history: Iterable[Brief], rules: DeviationRules, now_utc: float
) -> tuple[Deviation, ...]:
    """Return all deviations of one session.

    `history` holds the site's sessions in any order; this one may be among them.
    """
    return judged(record, earlier(record, history), rules, now_utc)


def judged(
    record: SessionRecord, before: Earlier, rules: DeviationRules, now_utc: float
) -> tuple[Deviation, ...]:
    """Return all deviations of one session, from what was before it."""
    case = Case(record, before, now_utc)
    return in_order(
        _deviation(rule, found, record.machine, record.procedure, record.session)
        for rule in rules.rules
        if rule.finds in FINDERS
        for found in FINDERS[rule.finds](case, rule.parameters or {})
    )


def schedule_deviations(
    kept: Iterable[Kept], rules: DeviationRules, site: Site
) -> tuple[Deviation, ...]:
    """Return what was late, early, left unfinished, never started or is overdue."""
    zone = site_zone(site.time_zone)
    machines = {one.id: one.name for one in site.machines}
    found: list[Deviation] = []
    for one in kept:
        due, finds = one.due, _STANDS.get(one.stand)
        if finds is Finds.NEVER_STARTED and due.duty in _SPACED:
            finds = Finds.OVERDUE
        procedure = due.procedures[0] if len(due.procedures) == 1 else ""
        facts: Facts = {
            "machine": machines.get(due.machine, due.machine),
            "duty": due.duty.value,
            "title": due.title or {"en": ""},
            "day": str(due.day),
            "until": f"{in_zone(due.until_utc, zone):%Y-%m-%d %H:%M}",
            "begins": f"{in_zone(due.from_utc, zone):%Y-%m-%d %H:%M}",
            "at": f"{in_zone(one.at_utc, zone):%Y-%m-%d %H:%M}" if one.session else "",
        }
        found += [
            _deviation(
                rule, Found("", due.until_utc, facts), due.machine, procedure, one.session
            )
            for rule in rules.rules
            if rule.finds is finds
        ]  # fmt: skip
    return in_order(found)


def of_site(
    records: Sequence[SessionRecord],
    kept: Iterable[Kept],
    rules: DeviationRules,
    site: Site,
    now_utc: float,
) -> tuple[Deviation, ...]:
    """Return the deviations of all sessions and of the schedule, heaviest first."""
    of_sessions = [x for one in records for x in deviations(one, records, rules, now_utc)]
    return in_order([*of_sessions, *schedule_deviations(kept, rules, site)])


def in_order(found: Iterable[Deviation]) -> tuple[Deviation, ...]:
    """Return deviations heaviest first, then in order of time."""
    return tuple(
        sorted(
            found, key=lambda one: (-one.weight, one.at_utc, one.machine, one.session, one.rule,
                                    one.step),
        )
    )  # fmt: skip


def sentence(deviation: Deviation, words: Words) -> str:
    """Return what happened, in one language."""
    name = f"found-{deviation.finds.value.replace(' ', '-')}"
    told = {what: _told(what, deviation.facts, words) for what in deviation.facts}
    return words.say(name, **told)


def _told(what: str, facts: Facts, words: Words) -> str | Text | Number | Notice:
    """Return a fact so that it can be told in any language; a limit in this one."""
    match facts[what]:
        case str(limit) if what == "limit":
            number = facts.get("number")
            return limit_said(limit, number.unit if isinstance(number, Number) else "", words)
        case Mapping() as text:
            return named(text)
        case fact:
            return fact


def _deviation(
    rule: DeviationRule, found: Found, machine: str, procedure: str, session: str
) -> Deviation:
    return Deviation(
        rule=rule.id,
        finds=rule.finds,
        weight=rule.weight,
        title=rule.title,
        reason=rule.reason,
        machine=machine,
        procedure=procedure,
        session=session,
        step=found.step,
        at_utc=found.at_utc,
        facts=found.facts,
    )
