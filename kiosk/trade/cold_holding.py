"""How long mix stood cold, warm or unwatched, and what the clauses on time then ask."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal
from enum import Enum
from itertools import pairwise

from kiosk.trade.temperature_log import (
    NoVerdict,
    Printed,
    Reading,
    by_time,
    check_gap,
    check_instants,
)
from kiosk.trade.units import Quantity

HOUR = 3600.0

COLD = Printed(Decimal(41), Decimal(5))
"""Food Code 3-501.16(A)(2). READ (state) 16 Del. Admin. Code 3-501.16; WAC 246-215-03525."""
DAIRY_COLD = Printed(Decimal(45), Decimal(7))
"""Storage of mix in state dairy rules, for one COMAR 10.15.05.25. READ."""
NEVER_ABOVE = Printed(Decimal(70), Decimal(21))
"""3-501.19(C). READ Wisconsin 3-501.19 (regulations.justia.com)."""


class Spell(Enum):
    """What is known of a stretch of time."""

    COLD = "cold"
    WARM = "warm"
    UNKNOWN = "unknown"


@dataclass(frozen=True, slots=True)
class Account:
    """The time of one hopper, in seconds; cold + warm + unknown is the whole."""

    cold: float
    warm: float
    unknown: float
    longest_warm: float
    longest_unproven: float
    """Longest unbroken time that was warm or unknown."""
    standing: Spell
    """COLD only when every moment is proven cold; WARM when any reading was."""

    @property
    def unproven(self) -> float:
        """Seconds not proven cold: what a rule must count as warm."""
        return self.warm + self.unknown


def account(
    readings: Iterable[Reading],
    longest_gap: float,
    limit: Printed = COLD,
    since: float | None = None,
    until: float | None = None,
) -> Account:
    """Share out the time from `since` to `until` (default: first to last reading).

    Readings may come in any order and are sorted; of several at one instant the warmest counts.
    Between two readings mix was warm when it was warm at either end. Between readings more than
    `longest_gap` seconds apart, before the first and after the last nothing is known. A lost
    reading can only show when `longest_gap` is less than twice the usual spacing.
    """
    check_gap(longest_gap)
    check_instants(since, until)
    warm_at = _warm_instants(readings, limit)
    instants = sorted(warm_at)
    begin = instants[0] if since is None else since
    end = instants[-1] if until is None else until
    if end < begin:
        raise NoVerdict("ends-first", since=begin, until=end)
    spells = _spells(warm_at, longest_gap, begin, end)
    total = {kind: math.fsum(length for one, length in spells if one is kind) for kind in Spell}
    seen_warm = any(warm for at, warm in warm_at.items() if begin <= at <= end)
    if total[Spell.WARM] > 0 or seen_warm:
        standing = Spell.WARM
    elif total[Spell.UNKNOWN] > 0:
        standing = Spell.UNKNOWN
    else:
        standing = Spell.COLD
    return Account(
        total[Spell.COLD],
        total[Spell.WARM],
        total[Spell.UNKNOWN],
        _longest(spells, {Spell.WARM}),
        _longest(spells, {Spell.WARM, Spell.UNKNOWN}),
        standing,
    )


class Ground(Enum):
    """Why mix under time control must go."""

    NO_PROCEDURE = "no written procedure is at hand"
    START_NOT_COLD = "no reading shows that it was cold when it left the cold"
    UNMARKED = "its container bears no time"
    MARKED_TOO_LATE = "its container bears a time past the limit"
    TIME_IS_UP = "its time is up"
    TOO_WARM = "it was warmer than the rule allows at any time"
    NOT_WATCHED = "readings are missing, so nothing shows how warm it became"


@dataclass(frozen=True, slots=True)
class TimeRule:
    """A rule that lets time stand in for temperature."""

    hours: int
    ceiling: Printed | None
    """What no reading may pass; None where the rule sets no temperature after the start."""
    clause: str
    source: str


FOUR_HOURS = TimeRule(4, None, "3-501.19(B)", "READ WAC 246-215-03530; Wisconsin 3-501.19")
SIX_HOURS = TimeRule(6, NEVER_ABOVE, "3-501.19(C)", "READ Wisconsin 3-501.19")


@dataclass(frozen=True, slots=True)
class TimeVerdict:
    """Whether mix without cold may still be served."""

    discard_at: float
    """Seconds since the epoch; at this instant it goes."""
    grounds: tuple[Ground, ...]

    @property
    def usable(self) -> bool:
        """True when nothing speaks against serving it now."""
        return not self.grounds


def time_as_control(
    readings: Iterable[Reading],
    rule: TimeRule,
    removed_at: float,
    now: float,
    longest_gap: float,
    marked: float | None,
    written_procedure: bool,
    start: Printed = COLD,
) -> TimeVerdict:
    """Judge mix that left the cold at `removed_at`. All instants in seconds since the epoch.

    `marked` is the discard time on the container, None when there is none; an earlier mark binds.
    The last reading up to `removed_at`, no older than `longest_gap`, must be cold. The clock never
    stops: mix cooled again keeps its discard time. Where the rule has a ceiling, a gap counts
    against the mix.
    """
    log = by_time(readings)
    check_gap(longest_gap)
    check_instants(removed_at, now, marked)
    if now < removed_at:
        raise NoVerdict("before-start", now=now, start=removed_at)
    limit = removed_at + rule.hours * HOUR
    grounds = []
    if not written_procedure:
        grounds.append(Ground.NO_PROCEDURE)
    before = [one for one in log if one.at <= removed_at]
    newest = [one for one in before if one.at == before[-1].at]
    if not newest or removed_at - newest[0].at > longest_gap or not _all(newest, start):
        grounds.append(Ground.START_NOT_COLD)
    if marked is None:
        grounds.append(Ground.UNMARKED)
    elif marked > limit:
        grounds.append(Ground.MARKED_TOO_LATE)
    discard_at = limit if marked is None else min(marked, limit)
    if now >= discard_at:
        grounds.append(Ground.TIME_IS_UP)
    if rule.ceiling is not None:
        during = [one for one in log if removed_at <= one.at <= now]
        if not _all(during, rule.ceiling):
            grounds.append(Ground.TOO_WARM)
        watched = [removed_at, *(one.at for one in during), now]
        if any(b - a > longest_gap for a, b in pairwise(watched)):
            grounds.append(Ground.NOT_WATCHED)
    return TimeVerdict(discard_at, tuple(grounds))


def last_proven_cold(
    readings: Iterable[Reading], longest_gap: float, now: float, limit: Printed = COLD
) -> float | None:
    """Return the instant until which mix has been cold without a doubt, None when it never was.

    After a power loss this is when the clock of `time_as_control` began: the first reading after
    the gap says nothing of the gap. A hole or a warm reading ends the proof for good; a battery
    logger that kept reading carries it across. The proof starts at the log's first reading, so
    give the log from when the hopper was filled.
    """
    check_gap(longest_gap)
    check_instants(now)
    warm_at = _warm_instants((one for one in readings if one.at <= now), limit)
    proven: float | None = None
    for at in sorted(warm_at):
        if warm_at[at] or (proven is not None and at - proven > longest_gap):
            break
        proven = at
    return proven


class Cooling(Enum):
    """How the cooling of freshly made mix stands."""

    COOLED = "cooled in time"
    STILL_COOLING = "still within its time"
    TOO_SLOW = "not shown to be cold in time"


def cooling(
    readings: Iterable[Reading], made_at: float, now: float, limit: Printed = COLD
) -> Cooling:
    """Judge mix made from ingredients at room temperature: cold within 4 h.

    3-501.14(B). READ WAC 246-215-03515(3).
    """
    check_instants(made_at, now)
    if now < made_at:
        raise NoVerdict("before-start", now=now, start=made_at)
    warm_at = _warm_instants(readings, limit)
    deadline = made_at + 4 * HOUR
    if any(made_at <= at <= min(deadline, now) and not warm for at, warm in warm_at.items()):
        return Cooling.COOLED
    return Cooling.STILL_COOLING if now <= deadline else Cooling.TOO_SLOW


CLEANING_HOURS = (
    (COLD, 24),
    (Printed(Decimal(45), Decimal("7.2")), 20),
    (Printed(Decimal(50), Decimal("10.0")), 16),
    (Printed(Decimal(55), Decimal("12.8")), 10),
)
"""4-602.11(D)(2). READ WAC 246-215-04605; both columns READ Minn. R. 4626.0845."""


def cleaning_hours(warmest_room: Quantity | None) -> int:
    """Return the hours between cleanings of equipment that holds mix in a refrigerated room.

    `warmest_room` in °C or °F is the warmest the room has been since the last cleaning. A warmer
    room, or an unknown one (None), leaves the 4 h of 4-602.11(C).
    """
    if warmest_room is not None:
        Reading(0.0, warmest_room)
        for limit, hours in CLEANING_HOURS:
            if limit.at_most(warmest_room):
                return hours
    return 4


def _all(readings: Iterable[Reading], ceiling: Printed) -> bool:
    return all(ceiling.at_most(one.temperature) for one in readings)


def _warm_instants(readings: Iterable[Reading], limit: Printed) -> dict[float, bool]:
    warm: dict[float, bool] = {}
    for one in readings:
        warm[one.at] = warm.get(one.at, False) or not limit.at_most(one.temperature)
    if not warm:
        raise NoVerdict("no-readings")
    return warm


def _spells(
    warm_at: dict[float, bool], longest_gap: float, begin: float, end: float
) -> list[tuple[Spell, float]]:
    instants = sorted(warm_at)
    found = [(Spell.UNKNOWN, begin, min(instants[0], end))]
    for a, b in pairwise(instants):
        if b - a > longest_gap:
            kind = Spell.UNKNOWN
        else:
            kind = Spell.WARM if warm_at[a] or warm_at[b] else Spell.COLD
        found.append((kind, max(a, begin), min(b, end)))
    found.append((Spell.UNKNOWN, max(instants[-1], begin), end))
    return [(kind, b - a) for kind, a, b in found if b > a]


def _longest(spells: list[tuple[Spell, float]], kinds: set[Spell]) -> float:
    longest = running = 0.0
    for kind, length in spells:
        running = running + length if kind in kinds else 0.0
        longest = max(longest, running)
    return longest
