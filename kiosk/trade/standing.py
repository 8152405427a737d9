"""Where a barrel stands by its last laboratory results: clear, notice or action."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass, replace
from decimal import Decimal
from enum import StrEnum
from fractions import Fraction
from itertools import groupby
from math import exp, fsum, inf, log, prod

from kiosk.trade.authorities import Analysis, Enforcing
from kiosk.trade.rounding import Amount, Qualifier

# READ: Tex. Admin. Code 25-217.45(c); Ala. Admin. Code 420-3-16 App. E; S.D. Rule 12:17:02:13.
NOTICE_AT, NOTICE_OF = 2, 4
"""Notice: 2 of the last 4 results, on separate days, exceed the limit."""
ACTION_AT, ACTION_OF = 3, 5
"""Action: 3 of the last 5 exceed it."""
RESAMPLE_FROM, RESAMPLE_TO = 3, 21
"""Days after the notice: not before 3 have passed, within 21."""
SAMPLES, IN_DAYS = 4, 183
"""Least sample days (READ: Texas, Hawaii) in six months; 183 days for six months is our reading."""


class State(StrEnum):
    """What the results so far mean."""

    NO_RESULTS = "no results"
    CLEAR = "clear"
    UNKNOWN = "unknown"
    """Not over by what is sure, but a result that is only a bound may hide it."""
    NOTICE = "notice"
    ACTION = "action"


@dataclass(frozen=True, slots=True)
class Barrel:
    """One barrel of one machine, under one analysis."""

    machine: str
    barrel: str
    analysis: Analysis


@dataclass(frozen=True, slots=True)
class Result:
    """One laboratory result. `day` is a day number, as date.toordinal() gives."""

    of: Barrel
    day: int
    amount: Amount


@dataclass(frozen=True, slots=True)
class Day:
    """All results of one day taken as one: the worst counts."""

    day: int
    over: bool | None
    """Whether the limit is exceeded; None when the results cannot tell."""
    results: int


@dataclass(frozen=True, slots=True, kw_only=True)
class Standing:
    """Where a barrel stands, what follows, and what would clear it. All days are day numbers."""

    state: State
    could_be: State
    """The state if every result that cannot tell were over the limit."""
    over_of_four: int
    over_of_five: int
    untold: tuple[int, ...]
    """Days among the last five whose results cannot tell."""
    since: int | None
    """Day of the result that set off the notice or action in force."""
    resample: tuple[int, int] | None
    """First and last day for the additional sample; None when none is due."""
    clear_after: int
    """Sample days in a row within the limit until neither notice nor action holds."""
    samples_owed: int
    """Sample days still missing to the least number in the six months up to today."""
    english: str


@dataclass(frozen=True, slots=True)
class LogAverage:
    """The logarithmic average (geometric mean) of results, between what bounds leave open."""

    lows: tuple[Decimal, ...]
    """The least that each result may be, 1 or more."""
    highs: tuple[Decimal, ...] | None
    """The most that each may be; None when a more-than result sets no upper end."""
    strict: bool
    """Whether the average lies above its lower end, not on it."""

    @property
    def low(self) -> float:
        """The least that the average may be."""
        return _mean(self.lows)

    @property
    def high(self) -> float:
        """The most that the average may be."""
        return _mean(self.highs) if self.highs else inf

    def exceeds(self, limit: Decimal) -> bool | None:
        """Say whether the average lies above a limit; None when bounds leave it open.

        Exact: the product of n results against the n-th power of the limit.
        """
        power = Fraction(limit) ** len(self.lows)
        low = prod(map(Fraction, self.lows))
        if low > power or (self.strict and low == power):
            return True
        return False if self.highs and prod(map(Fraction, self.highs)) <= power else None


def days_of(results: Iterable[Result], limit: Decimal) -> list[Day]:
    """Take the results of each day as one, the worst, oldest day first.

    Laws speak of results on separate days. Over the limit is worse than untold, untold worse than
    within.
    """
    found = sorted(
        ((one.day, one.amount.exceeds(limit)) for one in results), key=lambda one: one[0]
    )
    days = []
    for day, group in groupby(found, key=lambda one: one[0]):
        verdicts = [over for _, over in group]
        over = True if True in verdicts else None if None in verdicts else False
        days.append(Day(day, over, len(verdicts)))
    return days


def standing(
    days: Sequence[Day],
    today: int,
    enforcing: Enforcing = Enforcing.LAST_FIVE,
    notified: int | None = None,
) -> Standing:
    """Judge a barrel by its sample days, oldest first.

    `notified` is the day on which the authority sent its notice; without it, the day of the result
    that set the notice off stands for it. An authority that states no rule is judged as LAST_FIVE.
    Raises ValueError for LOG_AVERAGE, which needs the numbers: use log_average().
    """
    if enforcing is Enforcing.LOG_AVERAGE:
        raise ValueError("days over a limit give no logarithmic average: use log_average()")
    overs = [one.over for one in days]
    state, could_be = _states(overs, enforcing)
    since = _since(days, enforcing) if state in (State.NOTICE, State.ACTION) else None
    recent = sum(1 for one in days if today - IN_DAYS < one.day <= today)
    four, five = overs[-NOTICE_OF:].count(True), overs[-ACTION_OF:].count(True)
    untold = tuple(one.day for one in days[-ACTION_OF:] if one.over is None)
    found = Standing(
        state=state, could_be=could_be, over_of_four=four, over_of_five=five, untold=untold,
        since=since, resample=_resample(days, since, notified),
        clear_after=_clear_after(overs, enforcing), samples_owed=max(0, SAMPLES - recent),
        english="",
    )  # fmt: skip
    return replace(found, english=_english(found, len(days), enforcing))


def standings(
    results: Iterable[Result],
    limits: Mapping[Barrel, Decimal],
    today: int,
    enforcing: Enforcing = Enforcing.LAST_FIVE,
) -> dict[Barrel, Standing]:
    """Judge every barrel that has results by its own limit.

    Raises KeyError when a barrel has no limit: none is ever guessed.
    """
    by_barrel: dict[Barrel, list[Result]] = {}
    for one in results:
        by_barrel.setdefault(one.of, []).append(one)
    return {
        of: standing(days_of(found, limits[of]), today, enforcing)
        for of, found in by_barrel.items()
    }


def log_average(last: Sequence[Amount]) -> LogAverage:
    """Return the geometric mean of the last four results, or of fewer when there are no more.

    Older ordinances used it (READ, Paris TX). A less-than result lies below its bound, a
    more-than result above it; counts below 1 are taken as 1 (our choice, so that one empty
    plate does not make the mean zero). Raises ValueError for no results or one without a number.
    """
    four = last[-NOTICE_OF:]
    values = [max(one.value, Decimal(1)) for one in four if one.value is not None]
    if not four or len(values) < len(four):
        raise ValueError("the logarithmic average needs results with numbers: leave the others out")
    kinds = [one.qualifier for one in four]
    open_above = Qualifier.MORE_THAN in kinds
    lows = [
        Decimal(1) if kind is Qualifier.LESS_THAN else value
        for kind, value in zip(kinds, values, strict=True)
    ]
    return LogAverage(tuple(lows), None if open_above else tuple(values), open_above)


def _mean(values: Sequence[Decimal]) -> float:
    return exp(fsum(log(one) for one in values) / len(values))


def _state(overs: Sequence[bool | None], enforcing: Enforcing, *, untold_is_over: bool) -> State:
    if not overs:
        return State.NO_RESULTS
    over = [one is True or (untold_is_over and one is None) for one in overs[-ACTION_OF:]]
    if enforcing is Enforcing.EACH:
        return State.ACTION if over[-1] else State.CLEAR
    if sum(over) >= ACTION_AT:
        return State.ACTION
    return State.NOTICE if sum(over[-NOTICE_OF:]) >= NOTICE_AT else State.CLEAR


def _states(overs: Sequence[bool | None], enforcing: Enforcing) -> tuple[State, State]:
    sure = _state(overs, enforcing, untold_is_over=False)
    worst = _state(overs, enforcing, untold_is_over=True)
    return (State.UNKNOWN if sure is State.CLEAR and worst is not sure else sure), worst


def _since(days: Sequence[Day], enforcing: Enforcing) -> int:
    """Return the day on which the present run of notice or action began."""
    overs = [one.over for one in days]
    began = len(days) - 1
    while began > 0:
        before = _state(overs[:began][-ACTION_OF:], enforcing, untold_is_over=False)
        if before is State.CLEAR:
            break
        began -= 1
    return days[began].day


def _resample(
    days: Sequence[Day], since: int | None, notified: int | None
) -> tuple[int, int] | None:
    """Return the window of the additional sample, unless a later sample lies in it or past it."""
    if since is None:
        return None
    start = since if notified is None else notified
    if any(one.day >= start + RESAMPLE_FROM for one in days):
        return None
    return start + RESAMPLE_FROM, start + RESAMPLE_TO


def _clear_after(overs: Sequence[bool | None], enforcing: Enforcing) -> int:
    """Count the complying sample days until nothing holds, not even at worst."""
    padded = list(overs[-ACTION_OF:])
    for count in range(ACTION_OF + 1):
        if _state(padded, enforcing, untold_is_over=True) in (State.CLEAR, State.NO_RESULTS):
            return count
        padded.append(False)
    return ACTION_OF


def _english(found: Standing, samples: int, enforcing: Enforcing) -> str:
    """Write the English sentence, without dates: the caller knows how to write a day."""
    four, five = min(samples, NOTICE_OF), min(samples, ACTION_OF)
    match found.state:
        case State.NO_RESULTS:
            said = "No results yet."
        case State.CLEAR:
            said = f"Clear: {found.over_of_four} of the last {four} results over the limit."
        case State.UNKNOWN:
            said = f"Unknown: a result that is only a bound may make it {found.could_be}."
        case State.NOTICE:
            said = f"Notice: {found.over_of_four} of the last {four} results over the limit."
        case State.ACTION if enforcing is Enforcing.EACH:
            said = "Action: the last result is over the limit, and none may be."
        case State.ACTION:
            said = f"Action: {found.over_of_five} of the last {five} results over the limit."
    if found.state is State.NOTICE and found.could_be is State.ACTION:
        said += " A result that is only a bound may make it action."
    if found.resample:
        said += f" Sample again, from {RESAMPLE_FROM} to {RESAMPLE_TO} days after the notice."
    if found.clear_after:
        said += f" Sample days in a row within the limit to clear it: {found.clear_after}"
        said += ", if the authority agrees." if found.state is State.ACTION else "."
    if found.samples_owed:
        said += f" Sample days still owed in six months: {found.samples_owed}."
    return said
