"""Where a barrel stands and where its results head, as sentences in the reader's language."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import date
from decimal import Decimal
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.languages.words import Words
from kiosk.review.barrels import Judged, heading
from kiosk.review.results import Entered
from kiosk.trade.authorities import Authority, Enforcing
from kiosk.trade.rounding import Amount
from kiosk.trade.standing import Standing, State

SIGNS: Final = {
    State.NO_RESULTS: "○",
    State.CLEAR: "●",
    State.UNKNOWN: "?",
    State.NOTICE: "▲",
    State.ACTION: "■",
}
"""A sign beside the words."""

_AVERAGE: Final = {State.ACTION: "over", State.CLEAR: "kept", State.UNKNOWN: "unknown"}


def pick(value: str, words: Words) -> str:
    """Return what a test, a product or an authority is called."""
    return words.say(f"pick-{value.replace(' ', '-')}")


def amount_said(amount: Amount, words: Words) -> str:
    """Return a result with its qualifier, in words."""
    name = f"review-amount-{amount.qualifier.replace(' ', '-')}"
    if amount.value is None:
        return words.say(name)
    return words.say(name, amount=words.number(Number(str(amount.value))))


def result_said(one: Entered, words: Words) -> str:
    """Return one result: its day, its number, and below which line."""
    of = one.of
    per = words.say(f"review-per-{of.per.lower()}")
    return f"{of.day} · {pick(of.product, words)} · {amount_said(of.amount, words)} {per}"


def state_said(of: Judged, who: Authority, words: Words) -> str:
    """Return how the authority sees a barrel, in one sentence."""
    if of.state is State.NO_RESULTS:
        return words.say("review-no-result-judged")
    if who.enforcing is Enforcing.LOG_AVERAGE:
        return words.say(f"authority-average-{_AVERAGE[of.state]}")
    if who.enforcing is Enforcing.EACH or of.standing is None:
        return words.say(f"authority-each-{of.state}")
    five = of.state is State.ACTION
    over, window = (
        (of.standing.over_of_five, 5) if five else (of.standing.over_of_four, 4)
    )  # fmt: skip
    return words.say(f"authority-{of.state}", over=str(over), of=str(min(len(of.days), window)))


def standing_said(of: Judged, who: Authority, words: Words) -> Iterator[str]:
    """Yield what follows from how a barrel stands."""
    for limit in of.limits:
        said = words.number(Number(str(limit.most)))
        products = ", ".join(pick(one, words) for one in limit.products)
        told = words.say(f"authority-limit-{limit.per.lower()}", limit=said)
        yield f"{told} ({products})"
    if of.standing is not None:
        yield from _follows(of.standing, words)
    if who.enforcing is Enforcing.NOT_STATED:
        yield words.say("authority-rule-not-stated")
    for lost, _ in of.left_out:
        yield words.say("review-left-out", result=result_said(lost, words))


def _follows(found: Standing, words: Words) -> Iterator[str]:
    if found.state is State.NOTICE and found.could_be is State.ACTION:
        yield words.say("authority-may-be-action")
    if found.resample is not None:
        first, last = (str(date.fromordinal(day)) for day in found.resample)
        yield words.say("review-resample", first=first, last=last)
    if found.clear_after and found.state is not State.CLEAR:
        yield words.say("authority-cleared-by", days=str(found.clear_after))
    if found.samples_owed:
        yield words.say("review-samples-owed", n=found.samples_owed)


def trend_said(of: Judged, words: Words) -> Iterator[str]:
    """Yield where a barrel's results head; nothing where there is no limit to compare with."""
    if not of.limits:
        return
    found = heading(of)
    if isinstance(found, str):
        yield words.say("trend-needs-scipy")
        return
    yield from (words.say(f"trend-{one.replace(' ', '-')}") for one in found.warned)
    limit: Decimal = min(one.most for one in of.limits)
    said = words.number(Number(str(limit)))
    if any(one.of.amount.exceeds(limit) for one in of.entered):
        yield words.say("trend-over", limit=said)
    elif found.early:
        yield words.say("trend-early", limit=said)
    if found.baseline is None and len(found.warned) and found.warned[0] != "too few results":
        yield words.say("trend-no-chart")
