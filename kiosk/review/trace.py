"""From a bad result back to the sessions that could have led to it, the most suspect first."""

from __future__ import annotations

from collections.abc import Iterable, Iterator, Sequence
from dataclasses import dataclass
from datetime import date, datetime, time, timedelta
from math import inf
from zoneinfo import ZoneInfo

from kiosk.journal.shop_facts import PartReplaced, ShopEvent
from kiosk.languages.words import notice
from kiosk.procedure.model import Standing
from kiosk.procedure.site import Site
from kiosk.review.barrels import over
from kiosk.review.clues import CLUES, FADE_PER_DAY, SAMPLED_BEFORE_CLOSING_S, WINDOW_DAYS, Clue
from kiosk.review.record import Ended
from kiosk.review.results import Entered
from kiosk.review.signs import Sign, Walked, signs
from kiosk.trade.authorities import Authority, MicrobialLimit, NoSuchLimit, limit_for

A_LEAD = (
    "This is a lead, not a proof. The order comes from weights that have no published source, and "
    "from what was said to the kiosk; a cause outside the record (mix, water, hands, the sample "
    "itself) cannot stand here. Look, ask, and take another sample."
)

_DAY_S = 86_400.0
_A_NIGHT_S = 8 * 3600.0
"""A breakdown that begins later than this after closing was not made that night."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Suspect:
    """A session before the sample, or a night without one."""

    session: str
    """Empty for a night on which no breakdown is recorded."""
    machine: str
    at_utc: float
    """When it began, or when the shop closed that night."""
    workers: tuple[str, ...]
    leaves: Standing
    days_before: float
    """Days from there to the sample."""
    score: float
    signs: tuple[Sign, ...]
    """What speaks against it, the heaviest first; none for a session without a sign."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Trace:
    """A result and what came before it."""

    result: Entered
    limit: MicrobialLimit
    over: bool | None
    from_utc: float
    until_utc: float
    """The sessions that began between these could have led to it."""
    good: Entered | None
    """The last result within the limit before it, where the looking back ends."""
    suspects: tuple[Suspect, ...]
    """Every one of them, the most suspect first."""
    statement: str = A_LEAD


def trace(
    result: Entered,
    entered: Iterable[Entered],
    who: Authority,
    walks: Sequence[Walked],
    shop: Iterable[ShopEvent],
    site: Site,
    window_days: int = WINDOW_DAYS,
) -> Trace:
    """Trace a result back over the walks of its machine.

    `walks` are all sessions of the site, of practice or of real work as the site is; `shop` has the
    parts that were replaced. Raises NoSuchLimit when the authority has no limit for the result.
    """
    verdict = over(result, who)
    of = result.of
    limit = limit_for(who, of.analysis, of.product)
    until = closing(site, of.day) - SAMPLED_BEFORE_CLOSING_S
    good = _last_good(result, entered, who)
    since = until - window_days * _DAY_S
    if good is not None:
        since = max(since, closing(site, good.of.day) - SAMPLED_BEFORE_CLOSING_S)
    ours = sorted(
        (one for one in walks if one.record.practice == site.practice),
        key=lambda one: one.record.begun_utc,
    )
    here = [one for one in ours if one.record.machine == of.machine]
    replaced = [
        (event.at.utc, event.fact)
        for event in shop
        if isinstance(event.fact, PartReplaced) and event.fact.machine == of.machine
    ]
    found = [
        _suspect(one, here, ours, replaced, site, until)
        for one in here
        if since <= one.record.begun_utc < until
    ]
    found += [
        _missed(of.machine, night, until)
        for night in _missed_nights(here, site, until)
        if since <= night < until
    ]
    ranked = sorted(found, key=lambda one: (-one.score, one.days_before))
    return Trace(
        result=result, limit=limit, over=verdict, from_utc=since, until_utc=until, good=good,
        suspects=tuple(ranked),
    )  # fmt: skip


def closing(site: Site, day: date) -> float:
    """Return when the site closes on a day, POSIX seconds; after midnight where it closes then."""
    opens, closes = time.fromisoformat(site.opens), time.fromisoformat(site.closes)
    late = day + timedelta(days=1) if closes <= opens else day
    return datetime.combine(late, closes, ZoneInfo(site.time_zone)).timestamp()


def _last_good(result: Entered, entered: Iterable[Entered], who: Authority) -> Entered | None:
    """Return the last result before it, of the same barrel and test, surely within the limit."""
    of = result.of
    found = []
    for one in entered:
        same = (one.of.machine, one.of.barrel, one.of.analysis)
        if same != (of.machine, of.barrel, of.analysis) or one.of.day >= of.day:
            continue
        try:
            if over(one, who) is False:
                found.append(one)
        except NoSuchLimit:
            continue
    return max(found, key=lambda one: one.of.day, default=None)


def _suspect(
    one: Walked,
    here: Sequence[Walked],
    ours: Sequence[Walked],
    replaced: Sequence[tuple[float, PartReplaced]],
    site: Site,
    until: float,
) -> Suspect:
    record = one.record
    days = (until - record.begun_utc) / _DAY_S
    late = _late_h(one, site) if one.leaves is Standing.DRYING else 0.0
    worn = _worn(record.begun_utc, here, replaced)
    names = {seen.part: seen.name for other in here for seen in other.record.parts if seen.name}
    found = signs(one, worn, _nth(one, ours), late, names)
    return Suspect(
        session=record.session, machine=record.machine, at_utc=record.begun_utc,
        workers=record.workers, leaves=one.leaves, days_before=days,
        score=_faded(found, days), signs=found,
    )  # fmt: skip


def _missed(machine: str, night: float, until: float) -> Suspect:
    days = (until - night) / _DAY_S
    found = (Sign(Clue.MISSED_CLOSE, 1.0, notice("sign-missed"), at_utc=night),)
    return Suspect(
        session="", machine=machine, at_utc=night, workers=(), leaves=Standing.IN_SERVICE,
        days_before=days, score=_faded(found, days), signs=found,
    )  # fmt: skip


def _faded(found: Sequence[Sign], days: float) -> float:
    return float(sum(sign.score for sign in found) * FADE_PER_DAY**days)


def _late_h(one: Walked, site: Site) -> float:
    """Return how many hours after the closing before it a breakdown began; 0 when before."""
    begun = one.record.begun_utc
    day = datetime.fromtimestamp(begun, ZoneInfo(site.time_zone)).date()
    before = [closing(site, day - timedelta(days=back)) for back in (0, 1)]
    after = [begun - at for at in before if 0 <= begun - at <= _A_NIGHT_S]
    return min(after, default=0.0) / 3600


def _missed_nights(here: Sequence[Walked], site: Site, until: float) -> Iterator[float]:
    """Yield the closings after which a machine that stood ready was not taken apart."""
    zone = ZoneInfo(site.time_zone)
    for place, one in enumerate(here):
        if one.leaves is not Standing.IN_SERVICE or one.record.ended is not Ended.COMPLETE:
            continue
        following = here[place + 1].record.begun_utc if place + 1 < len(here) else inf
        day = datetime.fromtimestamp(one.record.last_utc, zone).date()
        if closing(site, day) < one.record.last_utc:
            day += timedelta(days=1)
        while (night := closing(site, day)) < until and night + _A_NIGHT_S < following:
            if not site.closed(day):
                yield night
            day += timedelta(days=1)


def _worn(
    at: float, here: Sequence[Walked], replaced: Sequence[tuple[float, PartReplaced]]
) -> dict[str, float]:
    """Return the parts that were worn and unreplaced at a time, with when that was first found.

    A later finding of `good` mends nothing: a worn part does not heal.
    """
    told: list[tuple[float, str, bool]] = [(utc, fact.part, False) for utc, fact in replaced]
    told += [
        (seen.at_utc, seen.part, seen.finding == "none left")
        for one in here
        for seen in one.record.parts
        if seen.finding in ("none left", "replaced")
    ]
    worn: dict[str, float] = {}
    for utc, part, is_worn in sorted(told):
        if utc >= at:
            break
        if is_worn:
            worn.setdefault(part, utc)
        else:
            worn.pop(part, None)
    return worn


def _nth(one: Walked, ours: Sequence[Walked]) -> int | None:
    """Return which session this is of its newest worker, from 1; None when nobody is new.

    Who walked in the first days of the journal is not called new.
    """
    settled = ours[0].record.begun_utc + CLUES[Clue.NEW_WORKER].figures["after_days"] * _DAY_S
    found = []
    for worker in one.record.workers:
        earlier = [
            x.record.begun_utc
            for x in ours
            if worker in x.record.workers and x.record.begun_utc <= one.record.begun_utc
        ]
        if earlier and min(earlier) > settled:
            found.append(len(earlier))
    return min(found, default=None)
