"""Calculators for a barrel's results in a row: what an authority does, and where they head."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal

from kiosk.engine.prompt import Message, Number
from kiosk.reckoning import bounds
from kiosk.reckoning.asking import Args, count, finding, first_open, one_of
from kiosk.reckoning.bounds import MOST_COLONIES
from kiosk.reckoning.calculator import (
    Answers,
    Bench,
    Calculator,
    Finding,
    NumberWanted,
    Question,
    evenly,
    number,
)
from kiosk.reckoning.cannot import cannot
from kiosk.trade.authorities import (
    Analysis,
    Authority,
    Enforcing,
    MicrobialLimit,
    NoSuchLimit,
    authority,
)
from kiosk.trade.rounding import Amount, NotAResult
from kiosk.trade.standing import ACTION_OF, NOTICE_OF, Day, Standing, State, log_average, standing

LEAST_FOR_A_TREND, MOST_FOR_A_TREND = 8, 24
"""How many results a trend is asked from; fewer are judged by `kiosk.review.trend` as too few."""

_THOUSANDS = (*evenly("0", "9000", "1000"), *evenly("10000", "100000", "5000"))
_SMALL = evenly("0", "50", "1")
_AVERAGE = {True: "over", False: "kept", None: "unknown"}
_LOOP_SOURCE = (
    "Tex. Admin. Code 25-217.45(c); Ala. Admin. Code 420-3-16 App. E; S.D. Rule 12:17:02:13. READ"
)


def _key(name: str) -> str:
    return name.replace(" ", "-")


def _results(answers: Answers, test: str) -> Iterator[Question]:
    said = _THOUSANDS if test == Analysis.TOTAL_COUNT else _SMALL
    for place in range(1, _asked(answers) + 1):
        yield from bounds.about(answers, "result", place, said)


def _row(answers: Answers) -> list[Amount]:
    """Return the results that were given, oldest first."""
    return [bounds.amount(answers, "result", place) for place in range(1, _asked(answers) + 1)]


def _asked(answers: Answers) -> int:
    return int(number(answers, "results"))


def _ask_authority(bench: Bench, answers: Answers) -> Question | None:
    return first_open(_authority_questions(bench, answers), answers)


def _authority_questions(bench: Bench, answers: Answers) -> Iterator[Question]:
    yield one_of("who", *(one.id for one in bench.authorities.authorities))
    who = authority(bench.authorities, str(answers["who"]))
    yield one_of("test", *dict.fromkeys(_key(one.test) for one in who.limits))
    products = [
        product
        for one in who.limits
        if _key(one.test) == answers["test"]
        for product in one.products
    ]
    yield one_of("product", *(_key(product) for product in products))
    yield count("results", 1, ACTION_OF, "say-results")
    yield from _results(answers, str(_limit(who, answers).test))


def _limit(who: Authority, answers: Answers) -> MicrobialLimit:
    """Return the limit that was asked for. Raises NoSuchLimit; none is ever guessed."""
    for one in who.limits:
        named = _key(one.test) == answers["test"]
        if named and answers["product"] in [_key(product) for product in one.products]:
            return one
    known = "; ".join(f"{one.test} in {', '.join(one.products)}" for one in who.limits)
    raise NoSuchLimit(
        "no-limit", title=who.title, test=answers["test"], product=answers["product"], known=known
    )


def _authority(bench: Bench, answers: Answers) -> Finding:
    try:
        who = authority(bench.authorities, str(answers["who"]))
        limit = _limit(who, answers)
        amounts = _row(answers)
    except (NoSuchLimit, NotAResult) as error:
        return cannot(error)
    told = Message(f"authority-limit-{limit.per.lower()}", {"limit": Number(str(limit.most))})
    sources = [f"{who.law}; {who.source}. {who.tag}"]
    if who.enforcing is Enforcing.LOG_AVERAGE:
        over = log_average(amounts).exceeds(limit.most)
        left_open = bounds.left_open(amounts[-NOTICE_OF:], limit.most) if over is None else ()
        return finding(
            Message(f"authority-average-{_AVERAGE[over]}"), told, left_open,
            good=over is False, sources=sources,
        )  # fmt: skip
    # On separate days; which days does not change notice and action.
    days = [Day(place, one.exceeds(limit.most), 1) for place, one in enumerate(amounts, 1)]
    found = standing(days, len(days), who.enforcing)
    lines = [_state_line(found, who.enforcing, len(days)), told]
    # Where each result counts alone, only the last one does.
    counted = amounts[-1:] if who.enforcing is Enforcing.EACH else amounts
    lines += bounds.left_open(counted, limit.most)
    if found.state is State.NOTICE and found.could_be is State.ACTION:
        lines.append(Message("authority-may-be-action"))
    if found.clear_after and found.state is not State.CLEAR:
        lines.append(Message("authority-cleared-by", {"days": Number(str(found.clear_after))}))
    if who.enforcing is Enforcing.NOT_STATED:
        lines.append(Message("authority-rule-not-stated"))
    if who.enforcing is not Enforcing.EACH:
        sources.append(_LOOP_SOURCE)
    return finding(lines, good=found.state is State.CLEAR, sources=sources)


def _state_line(found: Standing, enforcing: Enforcing, days: int) -> Message:
    if enforcing is Enforcing.EACH:
        return Message(f"authority-each-{found.state}")
    of_five = found.state is State.ACTION
    over, window = (found.over_of_five, 5) if of_five else (found.over_of_four, 4)
    args: Args = {"over": Number(str(over)), "of": Number(str(min(days, window)))}
    return Message(f"authority-{found.state}", args)


def _ask_trend(_: Bench, answers: Answers) -> Question | None:
    return first_open(_trend_questions(answers), answers)


def _trend_questions(answers: Answers) -> Iterator[Question]:
    yield one_of("test", *(_key(one) for one in (Analysis.TOTAL_COUNT, Analysis.COLIFORM)))
    total = answers["test"] == _key(Analysis.TOTAL_COUNT)
    said = tuple(map(Decimal, (20_000, 50_000) if total else (5, 10, 20, 40)))
    wants = NumberWanted("", Decimal(1), MOST_COLONIES, said, whole=True, said="say-colonies")
    yield Question("limit", wants)
    yield count("results", LEAST_FOR_A_TREND, MOST_FOR_A_TREND, "say-results")
    yield from _results(answers, str(Analysis.TOTAL_COUNT if total else Analysis.COLIFORM))


def _trend(_: Bench, answers: Answers) -> Finding:
    # scipy comes with the extra `laboratory`; everything else works without it.
    try:
        from kiosk.review import trend as review
    except ImportError:
        return Finding((Message("trend-needs-scipy"),), good=False)
    limit = number(answers, "limit")
    amounts = _row(answers)
    points = [review.Point(place, one) for place, one in enumerate(amounts, 1)]
    found = review.trend(points, limit)
    passed = any(one.exceeds(limit) for one in amounts)
    lines = [Message(f"trend-{_key(one)}") for one in found.warned]
    told: Args = {"limit": Number(str(limit))}
    if passed:
        lines.append(Message("trend-over", told))
    elif found.early:
        lines.append(Message("trend-early", told))
    left_open = bounds.left_open(amounts, limit)
    lines += left_open
    if found.baseline is None:
        lines.append(Message("trend-no-chart"))
    lines.append(Message("trend-even-days"))
    steady = found.warned == (review.Warned.STEADY,) and not left_open
    source = (
        "EWMA chart, Engineering Statistics Handbook: width READ in a copy, weight MEM; "
        "Kendall's tau: common practice"
    )
    return finding(lines, good=False if passed else True if steady else None, sources=(source,))


CALCULATORS = (
    Calculator("authority", _ask_authority, _authority),
    Calculator("trend", _ask_trend, _trend),
)
