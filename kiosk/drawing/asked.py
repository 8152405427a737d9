"""What a step asks for besides its sentence, in one line of a language."""

from __future__ import annotations

from decimal import Decimal

from kiosk.engine.commands import Finding
from kiosk.engine.prompt import Number
from kiosk.languages.words import Words
from kiosk.procedure.model import Caution
from kiosk.procedure.plan import Count, Hold, Inspect, Measure, Repeat, Task, Wait
from kiosk.trade.units import Quantity


def asked(task: Task, words: Words) -> str:
    """Return the limit, the time, the passes, the part or the phrase; '' for a plain step."""
    match task:
        case Hold(phrase=phrase):
            return words.say("sheet-say-aloud", phrase=words.text(phrase))
        case Measure():
            return limit(task, words)
        case Wait(seconds=seconds):
            return words.say("sheet-wait", time=time(seconds, words))
        case Repeat(least=least, most=most):
            return words.say("sheet-passes", least=str(least), most=str(most))
        case Count(name=name, expected=expected):
            part = words.text(name)
            return words.say("sheet-parts-list", expected=str(expected), part=part)
        case Inspect(name=name):
            return words.say("sheet-look-at", part=words.text(name))
        case _:
            return ""


def limit(task: Measure, words: Words) -> str:
    """Return the bounds that a reading must keep, with the unit written out."""
    if task.judged_by is None:
        return words.say("sheet-no-limit")
    bounds = {"least": task.judged_by.least, "most": task.judged_by.most}
    ends = {
        name: words.number(Number(str(bound), task.unit))
        for name, bound in bounds.items()
        if bound is not None
    }
    return words.say(f"sheet-{'-'.join(ends)}", **ends) if ends else words.say("sheet-no-limit")


def time(seconds: float, words: Words) -> str:
    """Return a time without rounding: in minutes when it is whole minutes, else in seconds."""
    exact = Decimal(str(seconds))
    if exact % 60 == 0:
        return words.quantity(Quantity(exact / 60, "min"))
    return words.quantity(Quantity(exact, "s"))


def signal(caution: Caution, words: Words) -> str:
    """Return the signal word in capitals, as signs have it."""
    return words.say(f"signal-{caution.signal}").upper()


def findings(words: Words) -> list[str]:
    """Return what an inspection may find, as a list to tick."""
    return [words.say(f"sheet-{finding.replace(' ', '-')}") for finding in Finding]
