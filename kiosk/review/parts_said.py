"""Wearing parts and spare parts in sentences, in one language."""

from __future__ import annotations

from collections.abc import Callable, Iterator
from datetime import date, timedelta
from zoneinfo import ZoneInfo

from kiosk.languages.words import Words
from kiosk.review.ledger_lines import PartLine
from kiosk.review.lifetimes import Spread
from kiosk.review.parts import Wear
from kiosk.review.stock import Stock
from kiosk.trade.code_dates import day_of


def wear_said(
    of: Wear, likely: Spread | None, words: Words, zone: ZoneInfo, today: date,
    who: Callable[[PartLine], str],
) -> Iterator[str]:  # fmt: skip
    """Yield what is known of a wearing part, what needs eyes first; `who` names who replaced it."""
    say = words.say
    if of.worn is not None:
        yield say("parts-worn", day=str(day_of(of.worn.at_utc, zone)))
    if of.due is not None:
        yield say("parts-overdue" if of.overdue else "parts-due", day=str(of.due))
    if of.replaced:
        last = of.replaced[-1]
        day = str(day_of(last.at_utc, zone))
        yield say("parts-replaced", day=day, by=who(last), days=int(of.age_days))
        yield say("parts-replacements", n=len(of.replaced))
    else:
        yield say("parts-never-replaced", day=str(day_of(of.known_since_utc, zone)))
    yield _spread_said("parts-likely", likely, words, today)


def stock_said(
    of: Stock, out: Spread | None, words: Words, zone: ZoneInfo, today: date
) -> Iterator[str]:
    """Yield what lies on the shelf of a part, and when it will not be enough any more."""
    say = words.say
    if of.none_left_utc is not None:
        yield say("parts-none-found", day=str(day_of(of.none_left_utc, zone)))
    if of.short:
        yield say("parts-short", n=of.short)
    if of.pieces is None:
        yield say("parts-shelf-unknown")
        return
    yield say("parts-shelf", pieces=of.pieces, takes=of.takes, n=of.replacements)
    if of.counted_utc is None:
        yield say("parts-never-counted")
    else:
        yield say("parts-counted-on", day=str(day_of(of.counted_utc, zone)))
    yield _spread_said("parts-runs-out", out, words, today)


def _spread_said(name: str, spread: Spread | None, words: Words, today: date) -> str:
    """Say from when to when something is to be expected, in the days of the site's calendar."""
    if spread is None:
        return words.say("parts-too-little")
    low, middle, high = (
        "" if days is None else str(today + timedelta(days=int(days)))
        for days in (spread.low, spread.middle, spread.high)
    )
    if not low:
        return words.say(f"{name}-later")
    if not middle:
        return words.say(f"{name}-hardly", low=low)
    if not high:
        return words.say(f"{name}-open", low=low, middle=middle)
    return words.say(name, low=low, middle=middle, high=high)
