"""The signs that one session's record shows, each as a share of its clue's weight."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation
from functools import reduce
from types import MappingProxyType

from kiosk.engine import events as e
from kiosk.engine.commands import Channel
from kiosk.engine.prompt import Number
from kiosk.languages.notice import Notice
from kiosk.languages.words import notice
from kiosk.procedure.model import Standing, Text
from kiosk.procedure.plan import Plan
from kiosk.review.answers import named
from kiosk.review.clues import CLUES, Clue
from kiosk.review.record import Asked, Ended, Part, Said, SessionRecord, StepRecord
from kiosk.review.recording import record_of

_LIMIT = re.compile(r"(?P<name>.+?) (?P<least>\S+) to (?P<most>\S+): ")
_SANITIZED = frozenset({"surfaces sanitized", "parts sanitized"})
_MIXED = "solution mixed"
_DAY_S = 86_400.0


@dataclass(frozen=True, slots=True)
class Walked:
    """A session with what its events say beyond the record."""

    record: SessionRecord
    leaves: Standing
    """What the machine is after the session: apart and drying after a breakdown."""
    established: tuple[tuple[float, str, tuple[str, ...]], ...]
    """POSIX seconds, step and conditions of each confirmation that established any, in order."""


@dataclass(frozen=True, slots=True)
class Sign:
    """One thing that speaks against a session."""

    clue: Clue
    share: float
    """0 to 1 of the clue's weight."""
    told: Notice
    step: str = ""
    at_utc: float | None = None

    @property
    def score(self) -> float:
        """What it adds to the session's score."""
        return CLUES[self.clue].weight * self.share


def walked(session: str, events: Sequence[e.Event], plan: Plan | None) -> Walked:
    """Return a session for tracing. Raises UnknownEvent when it has no beginning."""
    record = record_of(session, events, plan)
    started = next(x.fact for x in events if isinstance(x.fact, e.SessionStarted))
    established = tuple(
        (x.at.utc, x.fact.step, x.fact.establishes)
        for x in events
        if isinstance(x.fact, e.StepConfirmed) and x.fact.establishes
    )
    return Walked(record, Standing(started.leaves), established)


def signs(
    of: Walked,
    worn: Mapping[str, float],
    nth: int | None,
    late_h: float,
    names: Mapping[str, Text] = MappingProxyType({}),
) -> tuple[Sign, ...]:
    """Return what speaks against a session, the heaviest sign first.

    `worn` has each part that was worn and not replaced when the session began, with the time of
    that finding in POSIX seconds; `nth` is which session of a new worker this is, from 1, or None;
    `late_h` is how many hours after closing a breakdown began; `names` has the names of parts.
    """
    found = [
        *_short_contact(of),
        *(sign for step in of.record.steps for sign in _readings(step)),
        *(
            _worn(names.get(part) or part, since, of.record.begun_utc)
            for part, since in worn.items()
        ),
        *_new(of.record, nth),
        *_late(late_h),
        *_early(of.record),
        *_doubts(of.record),
    ]
    return tuple(sorted(found, key=lambda one: -one.score))


def _short_contact(of: Walked) -> list[Sign]:
    """Too little time between the strip's reading and the wait, or a wait that was cut."""
    found = []
    least = CLUES[Clue.SHORT_CONTACT].figures["fill_least_s"]
    for at, step, conditions in of.established:
        if not _SANITIZED & set(conditions):
            continue
        stay = next(
            (one for one in reversed(of.record.steps) if one.step == step and one.left_utc <= at),
            None,
        )
        if stay is None:
            continue
        if stay.waited_s is not None and stay.needed_s and stay.waited_s < stay.needed_s:
            waited, needed = _seconds(stay.waited_s), _seconds(stay.needed_s)
            said = notice("sign-waited", waited=waited, needed=needed)
            found.append(Sign(Clue.SHORT_CONTACT, 1.0, said, step, at))
        mixed = [utc for utc, _, named in of.established if _MIXED in named and utc < at]
        filling = stay.entered_utc - mixed[-1] if mixed else least
        if 0 <= filling < least:
            said = notice("sign-filled", after=_seconds(filling), least=_seconds(least))
            found.append(Sign(Clue.SHORT_CONTACT, 1 - filling / least, said, step, at))
    return found


def _readings(step: StepRecord) -> list[Sign]:
    found = []
    for place, part in enumerate(step.parts):
        limit = _LIMIT.match(part.limit)
        value = _number(part.value)
        if part.said is not Said.OFF or limit is None or value is None:
            continue
        after = next((one for one in step.parts[place:] if one.said is Said.CONFIRMED), None)
        least, most = _number(limit["least"]), _number(limit["most"])
        if limit["name"] == "sanitizer strength" and least is not None and value < least:
            found.append(_weak(step, part, after, least))
        elif limit["name"] == "mix temperature" and most is not None and value > most:
            over = float(value - most) / (1.8 if part.unit == "°F" else 1.0)
            found.append(_warm(step, part, after, over))
    return found


def _weak(step: StepRecord, part: Part, after: Part | None, least: Decimal) -> Sign:
    figures = CLUES[Clue.WEAK_SANITIZER].figures
    needed, mended = figures["remix_least_s"], figures["mended"]
    read = {"value": _value(part), "least": Number(f"{least:f}", part.unit)}
    if after is None:
        said = notice("sign-weak", **read)
        return Sign(Clue.WEAK_SANITIZER, mended, said, step.step, part.at_utc)
    took = after.at_utc - part.at_utc
    share = max(mended, 1 - took / needed)
    read |= {"after": _seconds(took), "then": _value(after)}
    if took < needed:
        said = notice("sign-weak-too-soon", **read, needed=_seconds(needed))
    else:
        said = notice("sign-weak-mended", **read)
    return Sign(Clue.WEAK_SANITIZER, min(share, 1.0), said, step.step, part.at_utc)


def _warm(step: StepRecord, part: Part, after: Part | None, over_c: float) -> Sign:
    figures = CLUES[Clue.WARM_MIX].figures
    share = min(1.0, 0.5 + over_c / figures["full_at_degrees_c"] / 2)
    read = {"value": _value(part)}
    said = notice("sign-warm", **read)
    if after is not None:
        took, need = after.at_utc - part.at_utc, over_c * figures["cooling_s_per_degree_c"]
        read |= {"after": _seconds(took), "then": _value(after)}
        if took < need:
            said = notice("sign-warm-too-soon", **read, needed=_seconds(need))
        else:
            said = notice("sign-warm-cooled", **read)
            share *= figures["mended"]
    return Sign(Clue.WARM_MIX, share, said, step.step, part.at_utc)


def _worn(part: str | Text, since: float, begun: float) -> Sign:
    figures = CLUES[Clue.WORN_PART].figures
    days = max(0.0, (begun - since) / _DAY_S)
    share = figures["at_once"] + (1 - figures["at_once"]) * days / figures["full_at_days"]
    said = notice("sign-worn", part=part, days=round(days))
    return Sign(Clue.WORN_PART, min(1.0, share), said)


def _new(record: SessionRecord, nth: int | None) -> list[Sign]:
    first = CLUES[Clue.NEW_WORKER].figures["first_sessions"]
    if nth is None or nth > first:
        return []
    said = notice("sign-new", nth=str(nth), who=", ".join(record.workers))
    return [Sign(Clue.NEW_WORKER, 1 - (nth - 1) / first, said)]


def _late(late_h: float) -> list[Sign]:
    figures = CLUES[Clue.LATE_CLOSE].figures
    if late_h < figures["from_h"]:
        return []
    share = (late_h - figures["from_h"]) / (figures["full_at_h"] - figures["from_h"])
    said = notice("sign-late", hours=Number(f"{late_h:.1f}", "h"))
    return [Sign(Clue.LATE_CLOSE, min(1.0, share), said)]


def _early(record: SessionRecord) -> list[Sign]:
    if record.ended is Ended.COMPLETE:
        return []
    last = next((one for one in reversed(record.steps) if one.step == record.ended_step), None)
    step = record.ended_step if last is None else named(last.about)
    said = notice("sign-early", ended=record.ended.replace(" ", "-"), step=step)
    return [Sign(Clue.ENDED_EARLY, 1.0, said)]


def _doubts(record: SessionRecord) -> list[Sign]:
    """Read-backs refused, try-outs failed, and touch where the ear had not understood."""
    said: list[Text | Notice] = []
    count = 0
    for step in record.steps:
        if step.kind is not Asked.HOLD:
            continue
        denied = len(step.said(Said.DENIED))
        failed = len(step.said(Said.TRY_OUT_FAILED))
        spoken = any(one.channel is Channel.VOICE for one in step.parts)
        pressed = any(one.channel is Channel.TOUCH for one in step.parts)
        touched = pressed and spoken and step.asked_again > 0
        if denied or failed or touched:
            count += denied + failed + touched
            said.append(named(step.about))
    if not count:
        return []
    share = min(1.0, count / CLUES[Clue.DOUBTFUL_HOLD].figures["full_at"])
    holds = reduce(lambda one, other: notice("notice-and", one=one, other=other), said)
    return [Sign(Clue.DOUBTFUL_HOLD, share, notice("sign-doubts", holds=holds))]


def _seconds(seconds: float) -> Number:
    return Number(f"{seconds:.0f}", "s")


def _value(part: Part) -> Number:
    return Number(part.value, part.unit)


def _number(text: str) -> Decimal | None:
    try:
        return Decimal(text)
    except InvalidOperation:
        return None
