"""The signs that one session's record shows, each as a share of its clue's weight."""

from __future__ import annotations

import re
from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal, InvalidOperation

from kiosk.engine import events as e
from kiosk.engine.commands import Channel
from kiosk.procedure.model import Standing
from kiosk.procedure.plan import Plan
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
    english: str
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
    of: Walked, worn: Mapping[str, float], nth: int | None, late_h: float
) -> tuple[Sign, ...]:
    """Return what speaks against a session, the heaviest sign first.

    `worn` has each part that was worn and not replaced when the session began, with the time of
    that finding in POSIX seconds; `nth` is which session of a new worker this is, from 1, or None;
    `late_h` is how many hours after closing a breakdown began.
    """
    found = [
        *_short_contact(of),
        *(sign for step in of.record.steps for sign in _readings(step)),
        *(_worn(part, since, of.record.begun_utc) for part, since in worn.items()),
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
            said = f"waited {stay.waited_s:.0f} s of {stay.needed_s:.0f} s"
            found.append(Sign(Clue.SHORT_CONTACT, 1.0, said, step, at))
        mixed = [utc for utc, _, named in of.established if _MIXED in named and utc < at]
        filling = stay.entered_utc - mixed[-1] if mixed else least
        if 0 <= filling < least:
            said = (
                f"the contact began {filling:.0f} s after the strip was read: too soon to have "
                f"filled and wetted everything ({least:.0f} s)"
            )
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
            found.append(_weak(step, part, after, f"{value:f} of {least:f} {part.unit}"))
        elif limit["name"] == "mix temperature" and most is not None and value > most:
            over = float(value - most) / (1.8 if part.unit == "°F" else 1.0)
            found.append(_warm(step, part, after, over))
    return found


def _weak(step: StepRecord, part: Part, after: Part | None, read: str) -> Sign:
    figures = CLUES[Clue.WEAK_SANITIZER].figures
    least, mended = figures["remix_least_s"], figures["mended"]
    if after is None:
        return Sign(Clue.WEAK_SANITIZER, mended, f"the strip read {read}", step.step, part.at_utc)
    took = after.at_utc - part.at_utc
    share = max(mended, 1 - took / least)
    said = f"the strip read {read}, and {took:.0f} s later {after.value} {after.unit}"
    if took < least:
        said += f": too soon to have mixed anew ({least:.0f} s)"
    return Sign(Clue.WEAK_SANITIZER, min(share, 1.0), said, step.step, part.at_utc)


def _warm(step: StepRecord, part: Part, after: Part | None, over_c: float) -> Sign:
    figures = CLUES[Clue.WARM_MIX].figures
    share = min(1.0, 0.5 + over_c / figures["full_at_degrees_c"] / 2)
    said = f"the mix was at {part.value} {part.unit}"
    if after is not None:
        took, need = after.at_utc - part.at_utc, over_c * figures["cooling_s_per_degree_c"]
        said += f", and {took:.0f} s later at {after.value} {after.unit}"
        if took < need:
            said += f": no hopper cools so fast ({need:.0f} s)"
        else:
            share *= figures["mended"]
    return Sign(Clue.WARM_MIX, share, said, step.step, part.at_utc)


def _worn(part: str, since: float, begun: float) -> Sign:
    figures = CLUES[Clue.WORN_PART].figures
    days = max(0.0, (begun - since) / _DAY_S)
    share = figures["at_once"] + (1 - figures["at_once"]) * days / figures["full_at_days"]
    said = f"{part}: found worn {days:.0f} days before, none in stock, not replaced since"
    return Sign(Clue.WORN_PART, min(1.0, share), said)


def _new(record: SessionRecord, nth: int | None) -> list[Sign]:
    first = CLUES[Clue.NEW_WORKER].figures["first_sessions"]
    if nth is None or nth > first:
        return []
    said = f"session {nth} of a new worker ({', '.join(record.workers)})"
    return [Sign(Clue.NEW_WORKER, 1 - (nth - 1) / first, said)]


def _late(late_h: float) -> list[Sign]:
    figures = CLUES[Clue.LATE_CLOSE].figures
    if late_h < figures["from_h"]:
        return []
    share = (late_h - figures["from_h"]) / (figures["full_at_h"] - figures["from_h"])
    said = f"the breakdown began {late_h:.1f} hours after closing"
    return [Sign(Clue.LATE_CLOSE, min(1.0, share), said)]


def _early(record: SessionRecord) -> list[Sign]:
    if record.ended is Ended.COMPLETE:
        return []
    return [Sign(Clue.ENDED_EARLY, 1.0, f"it is {record.ended}, at {record.ended_step}")]


def _doubts(record: SessionRecord) -> list[Sign]:
    """Read-backs refused, try-outs failed, and touch where the ear had not understood."""
    said: list[str] = []
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
            said.append(step.step)
    if not count:
        return []
    share = min(1.0, count / CLUES[Clue.DOUBTFUL_HOLD].figures["full_at"])
    return [Sign(Clue.DOUBTFUL_HOLD, share, f"holds answered doubtfully: {', '.join(said)}")]


def _number(text: str) -> Decimal | None:
    try:
        return Decimal(text)
    except InvalidOperation:
        return None
