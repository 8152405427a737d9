"""What a session recorded, told from its events alone."""

from __future__ import annotations

from collections import Counter
from collections.abc import Iterator, Sequence
from decimal import Decimal

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Finding
from kiosk.engine.events import Event
from kiosk.engine.prompt import Number
from kiosk.languages.words import Words
from kiosk.procedure.plan import Count, Inspect, JudgedBy, Measure, Plan
from kiosk.trade.units import Quantity

_CHANNELS = (Channel.VOICE, Channel.TOUCH, Channel.KEY)


def duration_s(events: Sequence[Event]) -> float:
    """Return the seconds from the first event to the last by the wall clock, never below 0."""
    return max(0.0, events[-1].at.utc - events[0].at.utc) if events else 0.0


def confirmations(events: Sequence[Event]) -> Counter[Channel]:
    """Return how many steps were confirmed by each channel."""
    return Counter(one.by.channel for one in events if isinstance(one.fact, e.StepConfirmed))


def recorded_lines(events: Sequence[Event], words: Words) -> list[str]:
    """Return how long the session took, and by which channels its steps were confirmed."""
    minutes = Decimal(round(duration_s(events) / 60))
    took = (
        Quantity(minutes, "min") if minutes else Quantity(Decimal(round(duration_s(events))), "s")
    )
    by = confirmations(events)
    counted = [
        words.say(f"confirmed-by-{channel.value}", n=by[channel])
        for channel in _CHANNELS
        if by[channel]
    ]
    return [words.say("took", time=words.quantity(took)), *counted]


def reading_lines(events: Sequence[Event], plan: Plan, words: Words) -> list[str]:
    """Return each reading that was accepted, with the limit that it was judged by."""
    return list(_readings(events, plan, words))


def _readings(events: Sequence[Event], plan: Plan, words: Words) -> Iterator[str]:
    for event in events:
        fact = event.fact
        if not isinstance(fact, e.StepConfirmed) or fact.step not in plan.index:
            continue
        task = plan.step(fact.step).task
        if isinstance(task, Measure):
            number = words.number(Number(fact.answer, fact.unit))
            taken = words.say("reading-taken", what=_what(plan, fact.step, words), number=number)
            yield f"{taken} ({_limit(task.judged_by, fact.unit, words)})"


def _limit(judged_by: JudgedBy | None, unit: str, words: Words) -> str:
    if judged_by is None:
        return words.say("limit-none")
    ends = {
        name: words.number(Number(str(bound), unit))
        for name, bound in (("least", judged_by.least), ("most", judged_by.most))
        if bound is not None
    }
    if not ends:
        return words.say("limit-none")
    return f"{words.say('limit-' + '-'.join(ends), **ends)}; {judged_by.source}"


def deviation_lines(events: Sequence[Event], plan: Plan, words: Words) -> list[str]:
    """Return each deviation and each problem, in the order in which they came."""
    return list(_deviations(events, plan, words))


def _deviations(events: Sequence[Event], plan: Plan, words: Words) -> Iterator[str]:
    for event in events:
        match event.fact:
            case e.ReadingOff(step=step, value=value, unit=unit):
                yield _off(plan, step, Number(value, unit), words)
            case e.PassesRanOut(step=step, passes=passes):
                what = _what(plan, step, words)
                yield words.say("deviation-passes", what=what, number=str(passes))
            case e.VerifyFailed(step=step):
                yield words.say("deviation-verify", what=_what(plan, step, words))
            case e.StepConfirmed(step=step, answer=Finding.NONE_LEFT):
                yield words.say("deviation-none-left", what=_what(plan, step, words))
            case e.ReasonNamed(reason=reason):
                problem = plan.problems.get(reason)
                what = reason if problem is None else words.text(problem.name)
                yield words.say("deviation-problem", what=what)
            case _:
                pass


def _off(plan: Plan, step: str, number: Number, words: Words) -> str:
    task = plan.step(step).task if step in plan.index else None
    what, said = _what(plan, step, words), words.number(number)
    if isinstance(task, Count):
        return words.say("deviation-count", what=what, number=said, expected=str(task.expected))
    return words.say("deviation-reading", what=what, number=said)


def _what(plan: Plan, step: str, words: Words) -> str:
    """Return what a step is about: its part, what it measures, or its sentence."""
    if step not in plan.index:
        return step
    found = plan.step(step)
    match found.task:
        case Count(name=name) | Inspect(name=name):
            return words.text(name)
        case Measure(quantity=quantity):
            return words.measured(quantity)
        case _:
            return words.text(found.say)
