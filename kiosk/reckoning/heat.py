"""The calculator for a machine that heats its mix each day: may it dispense?"""

from __future__ import annotations

from decimal import Decimal

from kiosk.engine.prompt import Message, Number
from kiosk.reckoning.asking import (
    HALF_HOURS,
    Args,
    count,
    finding,
    first_open,
    hours,
    measured,
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
from kiosk.trade.heat_treatment import (
    DAY,
    HOT,
    HOT_SECONDS,
    STRIP_DAYS,
    Cycle,
    dispensing,
    hold,
)
from kiosk.trade.temperature_log import NoVerdict, Reading
from kiosk.trade.units import Quantity, degrees_celsius

_SOURCE = "7 Pa. Code 39.54; pacodeandbulletin.gov. READ"
_HOUR = 3600.0


def _ask(bench: Bench, answers: Answers) -> Question | None:
    held = NumberWanted("min", Decimal(0), Decimal(600), evenly("0", "60", "5"), said="say-minutes")
    questions = (
        temperature(bench, "coldest", ("50", "95", "1"), ("122", "203", "1")),
        Question("minutes", held),
        hours("ended", "96", HALF_HOURS),
        count("strip", 0, 60, "say-days"),
    )
    return first_open(questions, answers)


def _work(bench: Bench, answers: Answers) -> Finding:
    coldest = measured(bench, answers, "coldest")
    held = float(number(answers, "minutes")) * 60
    log = {"coldest point": (Reading(0.0, coldest), Reading(held, coldest))}
    now = (STRIP_DAYS + 60) * DAY
    stripped = now - float(number(answers, "strip")) * DAY
    try:
        cycle = Cycle(now - float(number(answers, "ended")) * _HOUR, hold(log, held + 1).held)
        found = dispensing((cycle,), stripped, now)
    except NoVerdict as error:
        return cannot(error)
    pair = Message("heat-only-this-pair", {
        "hot": _hot(bench), "time": Number(str(int(HOT_SECONDS // 60)), "min")
    })  # fmt: skip
    if found.allowed and found.locks_at is not None:
        left = time_shown((found.locks_at - now) / _HOUR)
        allowed = Message("heat-allowed", {"left": left})
        return finding(allowed, pair, good=True, sources=(_SOURCE,))
    args: Args = {
        "coldest": shown(coldest.value, coldest.unit, 1),
        "minutes": shown(number(answers, "minutes"), "min", 1),
        "days": Number(str(STRIP_DAYS)),
    }
    why = [
        Message(f"heat-lapse-{one.name.lower().replace('_', '-')}", args) for one in found.lapses
    ]
    return finding(Message("heat-locked"), why, pair, good=False, sources=(_SOURCE,))


def _hot(bench: Bench) -> Number:
    """Return the temperature of the rule in the site's unit; it prints °F alone."""
    if thermometer(bench) == "°F":
        return Number(str(HOT.fahrenheit), "°F")
    return shown(degrees_celsius(Quantity(HOT.fahrenheit, "°F")), "°C", 1)


CALCULATORS = (Calculator("heat-treatment", _ask, _work),)
