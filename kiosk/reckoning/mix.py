"""Calculators for the mix: how long it was cold, what may grow in it, and until when it keeps."""

from __future__ import annotations

from decimal import Decimal

from kiosk.engine.prompt import Message
from kiosk.reckoning.asking import (
    HALF_HOURS,
    Args,
    finding,
    first_open,
    hours,
    limit_source,
    measured,
    one_of,
    shown,
    temperature,
    thermometer,
    time_shown,
)
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
from kiosk.trade import cold_holding as cold
from kiosk.trade.growth import LISTERIA, PSEUDOMONAS, Explanation, NoGrowth, growth_over
from kiosk.trade.temperature_log import NoVerdict, Printed, Reading
from kiosk.trade.units import Quantity

WATCHED_H = 4
"""Hours between two cold readings within which the mix counts as watched. Common practice, no
source; the discard rule of 3-501.19(B) has the same length."""

DAY_H = 24
"""Hours after which a last cold reading says nothing any more. Our choice; no clause sets it."""

_NOBODY_KNOWS = Decimal(72)
"""Hours to answer when nobody knows when the mix was last cold: past every rule."""

_LIMIT = "mix temperature"


def _cold_limit(bench: Bench) -> Printed:
    """Return the profile's limit for mix, else the one of the Food Code."""
    limit = bench.profile.limits.get(_LIMIT)
    ends = {unit: one.most for unit, one in limit.bounds.items()} if limit else {}
    celsius, fahrenheit = ends.get("°C"), ends.get("°F")
    if fahrenheit is None and celsius is not None:
        fahrenheit = celsius * 9 / 5 + 32
    return cold.COLD if fahrenheit is None else Printed(fahrenheit, celsius)


def _cold_source(bench: Bench) -> str:
    if _LIMIT in bench.profile.limits:
        return limit_source(bench, _LIMIT)
    return "3-501.16(A)(2); 16 Del. Admin. Code 3-501.16; WAC 246-215-03525. READ (state)"


def _ask_cold(bench: Bench, answers: Answers) -> Question | None:
    always = (
        hours("hours", "72", (*HALF_HOURS, Decimal(48), _NOBODY_KNOWS)),
        temperature(bench, "now", ("-5", "40", "0.5"), ("20", "104", "1")),
        one_of("power", "stayed-on", "was-out", "not-known"),
    )
    question = first_open(always, answers)
    if question is not None or _proven_cold(bench, answers) or _unwatched(bench, answers):
        return question
    question = first_open((one_of("plan", "plan-there", "plan-missing"),), answers)
    if question is not None or not _six_hours_may_help(bench, answers):
        return question
    return first_open((one_of("watched", "watched", "not-watched"),), answers)


def _since(answers: Answers) -> float:
    return float(number(answers, "hours")) * cold.HOUR


def _proven_cold(bench: Bench, answers: Answers) -> bool:
    """Say whether the mix was cold all the time; a time that nobody watched proves nothing."""
    return _cold_both_times(bench, answers, WATCHED_H)


def _unwatched(bench: Bench, answers: Answers) -> bool:
    """Say whether it was cold at both readings, and nobody knows of the time between."""
    watched = _cold_both_times(bench, answers, WATCHED_H)
    return not watched and _cold_both_times(bench, answers, DAY_H)


def _cold_both_times(bench: Bench, answers: Answers, most_hours: int) -> bool:
    if answers["power"] != "stayed-on":
        return False
    limit, since = _cold_limit(bench), _since(answers)
    log = [_at_limit(0.0, limit), Reading(since, measured(bench, answers, "now"))]
    known = cold.account(log, most_hours * cold.HOUR, limit)
    return known.standing is cold.Spell.COLD


def _at_limit(at: float, limit: Printed) -> Reading:
    """Return a reading that is as warm as a limit allows."""
    return Reading(at, Quantity(limit.fahrenheit, "°F"))


def _six_hours_may_help(bench: Bench, answers: Answers) -> bool:
    late = 4 <= number(answers, "hours") < 6
    mild = cold.NEVER_ABOVE.at_most(measured(bench, answers, "now"))
    return late and mild and answers["plan"] == "plan-there"


def _cold(bench: Bench, answers: Answers) -> Finding:
    now = shown(number(answers, "now"), thermometer(bench), 1)
    source = _cold_source(bench)
    if _proven_cold(bench, answers):
        return finding(Message("cold-kept", {"now": now}), good=True, sources=(source,))
    if _unwatched(bench, answers):
        gone = time_shown(float(number(answers, "hours")))
        lines = Message("cold-unwatched", {"now": now, "time": gone}), Message("cold-watch-it")
        return finding(*lines, good=False, sources=(source,))
    rule = cold.SIX_HOURS if answers.get("watched") == "watched" else cold.FOUR_HOURS
    try:
        verdict = _time_verdict(bench, answers, rule)
    except NoVerdict as error:
        return cannot(error)
    sources = (source, f"{rule.clause}; {rule.source}")
    if verdict.usable:
        left = time_shown((verdict.discard_at - _since(answers)) / cold.HOUR)
        lines = Message("cold-left", {"left": left}), Message("cold-clock-runs")
        return finding(*lines, good=True, sources=sources)
    why = [Message(f"cold-ground-{one.name.lower().replace('_', '-')}") for one in verdict.grounds]
    unknown = Message("cold-unknown-is-warm")
    return finding(Message("cold-throw-away"), why, unknown, good=False, sources=sources)


def _time_verdict(bench: Bench, answers: Answers, rule: cold.TimeRule) -> cold.TimeVerdict:
    """Judge by time. Whoever says that it was watched says that it never passed the ceiling."""
    since, there = _since(answers), answers["plan"] == "plan-there"
    log = [_at_limit(0.0, _cold_limit(bench)), Reading(since, measured(bench, answers, "now"))]
    if rule.ceiling is not None:
        whole = int(since // cold.HOUR)
        log += [_at_limit(hour * cold.HOUR, rule.ceiling) for hour in range(1, whole + 1)]
    return cold.time_as_control(
        log, rule, removed_at=0.0, now=since, longest_gap=cold.HOUR,
        marked=rule.hours * cold.HOUR if there else None, written_procedure=there,
        start=_cold_limit(bench),
    )  # fmt: skip


def _ask_growth(bench: Bench, answers: Answers) -> Question | None:
    length = NumberWanted(
        "h", Decimal("0.5"), Decimal(240), evenly("1", "24", "1"), said="say-hours"
    )
    at = temperature(bench, "temperature", ("-2", "25", "1"), ("28", "77", "1"))
    return first_open((at, Question("hours", length)), answers)


def _growth(bench: Bench, answers: Answers) -> Finding:
    at, length = measured(bench, answers, "temperature"), _since(answers)
    log = (Reading(0.0, at), Reading(length, at))
    try:
        listeria = growth_over(log, LISTERIA, length + 1)
        spoilers = growth_over(log, PSEUDOMONAS, length + 1)
    except (NoGrowth, NoVerdict) as error:
        return cannot(error)
    same = {
        "temperature": shown(at.value, at.unit, 1),
        "time": shown(number(answers, "hours"), "h"),
    }
    lines = (
        Message("growth-listeria", {**same, **_grown(listeria)}),
        Message("growth-spoilers", {**_grown(spoilers)}),
        Message("growth-explains"),
    )
    sources = (f"{one.model}: {one.source}" for one in (listeria, spoilers))
    return finding(*lines, good=None, sources=sources)


def _grown(one: Explanation) -> Args:
    times = 10 ** min(one.value, 12.0)
    return {"times": shown(times, places=1 if times < 100 else 0), "log": shown(one.value)}


CALCULATORS = (
    Calculator("cold", _ask_cold, _cold),
    Calculator("growth", _ask_growth, _growth),
)
