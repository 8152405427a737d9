"""Calculators for dates: the last day of a bag of mix, and which bag to pour next."""

from __future__ import annotations

from collections.abc import Iterator
from datetime import timedelta

from kiosk.engine.prompt import Message, Number
from kiosk.reckoning.asking import (
    Args,
    count,
    finding,
    first_open,
    one_of,
    shown,
    thermometer,
)
from kiosk.reckoning.calculator import Answers, Bench, Calculator, Finding, Question, number
from kiosk.reckoning.cannot import cannot
from kiosk.reckoning.days import day_said
from kiosk.trade.code_dates import (
    SEVEN_DAYS,
    Freeze,
    NoDate,
    Package,
    Standing,
    pour_next,
    standing,
)

BAGS = 6
"""Most bags that are asked for at once; our choice."""

_STATES = ("opened", "sealed", "nobody-wrote")
_SOURCE = f"{SEVEN_DAYS.clause}; {SEVEN_DAYS.source}"


def _about(answers: Answers, place: str, *, frozen: bool) -> Iterator[Question]:
    """Yield what is asked of one bag; `place` ends the ids, as `-2`."""
    yield one_of(f"state{place}", *_STATES)
    if answers[f"state{place}"] == "opened":
        yield count(f"opened{place}", 0, 60, "say-days", "30")
        if frozen:
            yield count(f"frozen{place}", 0, 365, "say-days", "30")
    yield one_of(f"printed{place}", "date-printed", "no-date")
    if answers[f"printed{place}"] == "date-printed":
        yield one_of(f"when{place}", "still-to-come", "already-over")
        yield count(f"date{place}", 0, 365, "say-days", "60")


def _package(bench: Bench, answers: Answers, place: str, name: str) -> Package:
    """Return one bag. Raises NoDate."""
    state = answers[f"state{place}"]
    opened = makers = None
    if state == "opened":
        opened = bench.today - timedelta(days=int(number(answers, f"opened{place}")))
    if answers[f"printed{place}"] == "date-printed":
        away = timedelta(days=int(number(answers, f"date{place}")))
        over = answers[f"when{place}"] == "already-over"
        makers = bench.today - away if over else bench.today + away
    freezes: tuple[Freeze, ...] = ()
    if opened is not None and answers.get(f"frozen{place}"):
        # Its first day in the freezer is taken as the day of opening: only the whole days count.
        whole = int(number(answers, f"frozen{place}"))
        freezes = (Freeze(opened, opened + timedelta(days=whole + 1)),)
    return Package(name, state != "sealed", opened, makers, freezes=freezes)


def _ask_use_by(_: Bench, answers: Answers) -> Question | None:
    return first_open(_about(answers, "", frozen=True), answers)


def _use_by(bench: Bench, answers: Answers) -> Finding:
    days, whole = answers.get("opened"), answers.get("frozen")
    if days is not None and whole and number(answers, "frozen") >= number(answers, "opened"):
        told = {one: shown(number(answers, one)) for one in ("frozen", "opened")}
        return Finding((Message("use-by-frozen-too-long", told),), good=False)
    try:
        found = standing(_package(bench, answers, "", "mix"), bench.today)
    except NoDate as error:
        return cannot(error)
    kept = Message("use-by-kept-cold", {"most": _warmest(bench)})
    if found.usable and found.last_day is not None:
        args: Args = {"day": day_said(found.last_day), "left": Number(str(found.days_left))}
        lines = Message("use-by-last-day", args), Message("use-by-then-away"), kept
        return finding(*lines, good=True, sources=(_SOURCE,))
    why = [Message(f"bar-{name}") for name in _bars(found)]
    return finding(Message("use-by-throw-away"), why, good=False, sources=(_SOURCE,))


def _warmest(bench: Bench) -> Number:
    limit, unit = SEVEN_DAYS.limit, thermometer(bench)
    return Number(str(limit.fahrenheit if unit == "°F" else limit.celsius), unit)


def _bars(one: Standing) -> list[str]:
    return [bar.name.lower().replace("_", "-") for bar in one.bars]


def _ask_pour_next(_: Bench, answers: Answers) -> Question | None:
    return first_open(_run(answers), answers)


def _run(answers: Answers) -> Iterator[Question]:
    for bag in range(1, BAGS + 1):
        yield from _about(answers, f"-{bag}", frozen=False)
        if bag < BAGS:
            yield one_of(f"another-{bag}", "another", "no-more")
            if answers[f"another-{bag}"] == "no-more":
                return


def _pour_next(bench: Bench, answers: Answers) -> Finding:
    bags = [str(bag) for bag in range(1, BAGS + 1) if f"state-{bag}" in answers]
    try:
        choice = pour_next([_package(bench, answers, f"-{bag}", bag) for bag in bags], bench.today)
    except NoDate as error:
        return cannot(error)
    lines: list[Message] = []
    if choice.pour is None:
        lines.append(Message("pour-none"))
    else:
        lines.append(Message("pour-first", _bag(choice.pour)))
    lines += [Message("pour-then", _bag(one)) for one in choice.then]
    for one in choice.refused:
        lines.append(Message("pour-not", {"bag": Number(one.package.name)}))
        lines += [Message(f"bar-{name}") for name in _bars(one)]
    lines.append(Message("use-by-kept-cold", {"most": _warmest(bench)}))
    return finding(lines, good=choice.pour is not None, sources=(_SOURCE,))


def _bag(one: Standing) -> Args:
    day = one.last_day or one.package.makers_use_by
    return {"bag": Number(one.package.name), "day": day_said(day) if day else ""}


CALCULATORS = (
    Calculator("use-by", _ask_use_by, _use_by),
    Calculator("pour-next", _ask_pour_next, _pour_next),
)
