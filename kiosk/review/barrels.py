"""Where each barrel stands with an authority by its results, and where the results head."""

from __future__ import annotations

from collections.abc import Iterable, Mapping, Sequence
from dataclasses import dataclass
from datetime import date
from decimal import Decimal
from typing import TYPE_CHECKING

from kiosk.review.results import Entered
from kiosk.trade.authorities import (
    Authority,
    Enforcing,
    MicrobialLimit,
    NoSuchLimit,
    limit_for,
)
from kiosk.trade.standing import (
    Barrel,
    Day,
    LogAverage,
    Result,
    Standing,
    State,
    days_of,
    log_average,
    standing,
)

if TYPE_CHECKING:
    from kiosk.review.trend import Trend


@dataclass(frozen=True, slots=True, kw_only=True)
class Judged:
    """One barrel under one analysis, as one authority sees it."""

    of: Barrel
    limits: tuple[MicrobialLimit, ...]
    """One for each product that was sampled and that the authority has a limit for."""
    state: State
    days: tuple[Day, ...]
    standing: Standing | None
    """None where nothing could be judged, or the authority goes by the logarithmic average."""
    average: LogAverage | None
    left_out: tuple[tuple[Entered, str], ...]
    """Results that this authority has no limit for, and why."""
    entered: tuple[Entered, ...]
    """The results that were judged, by day."""


def over(of: Entered, who: Authority) -> bool | None:
    """Say whether a result exceeds the authority's limit; None when the result cannot tell.

    Raises NoSuchLimit; no limit is ever guessed.
    """
    return of.of.amount.exceeds(_limit(of, who).most)


def barrels(
    entered: Iterable[Entered],
    who: Authority,
    today: date,
    notified: Mapping[Barrel, date] | None = None,
) -> tuple[Judged, ...]:
    """Judge every barrel that has results up to today; each result by its own product's limit.

    `notified` has the day of the authority's written notice, where one came.
    """
    by_barrel: dict[Barrel, list[Entered]] = {}
    for one in sorted(entered, key=lambda one: one.of.day):
        if one.of.day <= today:
            of = Barrel(one.of.machine, one.of.barrel, one.of.analysis)
            by_barrel.setdefault(of, []).append(one)
    told = notified or {}
    return tuple(_judged(of, found, who, today, told.get(of)) for of, found in by_barrel.items())


def heading(of: Judged) -> Trend | str:
    """Return the trend of a barrel's results, or why there is none.

    The strictest limit among the products counts.
    """
    if not of.limits:
        return "no limit to compare with"
    # scipy comes with the extra `laboratory`; everything else works without it.
    try:
        from kiosk.review.trend import Point, trend
    except ImportError:
        return "the trend needs the extra 'laboratory'"
    points = [Point(one.of.day.toordinal(), one.of.amount) for one in of.entered]
    return trend(points, min(one.most for one in of.limits))


def _limit(of: Entered, who: Authority) -> MicrobialLimit:
    limit = limit_for(who, of.of.analysis, of.of.product)
    if limit.per != of.of.per:
        raise NoSuchLimit("other-unit", title=who.title, limit_per=limit.per, per=of.of.per)
    return limit


def _judged(
    of: Barrel, found: Sequence[Entered], who: Authority, today: date, notified: date | None
) -> Judged:
    limits: dict[MicrobialLimit, list[Entered]] = {}
    left_out: list[tuple[Entered, str]] = []
    for one in found:
        try:
            limits.setdefault(_limit(one, who), []).append(one)
        except NoSuchLimit as error:
            left_out.append((one, str(error)))
    days = _days(of, limits)
    stands, average, state = None, None, State.NO_RESULTS
    judged = tuple(one for one in found if one not in {lost for lost, _ in left_out})
    if days and who.enforcing is Enforcing.LOG_AVERAGE:
        state, average = _by_average(judged, min(one.most for one in limits))
    elif days:
        day = None if notified is None else notified.toordinal()
        stands = standing(days, today.toordinal(), who.enforcing, day)
        state = stands.state
    return Judged(
        of=of, limits=tuple(limits), state=state, days=tuple(days), standing=stands,
        average=average, left_out=tuple(left_out), entered=judged,
    )  # fmt: skip


def _days(of: Barrel, limits: Mapping[MicrobialLimit, Sequence[Entered]]) -> list[Day]:
    """Take each day's results as one, the worst, though products have limits of their own."""
    found: dict[int, list[Day]] = {}
    for limit, entered in limits.items():
        rows = [Result(of, one.of.day.toordinal(), one.of.amount) for one in entered]
        for day in days_of(rows, limit.most):
            found.setdefault(day.day, []).append(day)
    return [
        Day(day, _worst([one.over for one in same]), sum(one.results for one in same))
        for day, same in sorted(found.items())
    ]


def _worst(verdicts: Sequence[bool | None]) -> bool | None:
    return True if True in verdicts else None if None in verdicts else False


def _by_average(entered: Sequence[Entered], limit: Decimal) -> tuple[State, LogAverage | None]:
    counted = [one.of.amount for one in entered if one.of.amount.value is not None]
    if not counted:
        return State.UNKNOWN, None
    average = log_average(counted)
    verdict = {True: State.ACTION, False: State.CLEAR, None: State.UNKNOWN}
    return verdict[average.exceeds(limit)], average
