"""Whether the answer to a step is enough for what its plan asks: the judge's own arithmetic."""

from __future__ import annotations

from collections.abc import Iterator
from decimal import Decimal, InvalidOperation
from typing import NamedTuple

from kiosk.engine.commands import Finding, Instant
from kiosk.procedure.model import Strength
from kiosk.procedure.plan import Count, Do, Hold, Inspect, Measure, Repeat, Step, Wait

Broken = tuple[str, str]
"""Name of a rule, and the sentence."""

_RESOLUTION = 1e-6
"""Seconds: the journal keeps whole microseconds."""


class Told(NamedTuple):
    """What the judge knows of how an answer came about."""

    told: tuple[str, ...]
    told_at: Instant | None
    reading: str
    since: Instant | None
    passes: int
    looked: bool
    worker: str
    witness: str
    at: Instant
    by_voice: bool


def wrong_answer(step: Step, answer: str, unit: str, told: Told) -> Iterator[Broken]:
    """Yield what is wrong with the confirmation of a step; nothing when it is enough."""
    match step.task:
        case Hold():
            yield from _hold(step, step.task, told)
        case Measure() | Count():
            yield from _number(step, step.task, answer, unit, told)
        case Wait(seconds=seconds):
            passed = _passed(told)
            if passed + _RESOLUTION < seconds:
                yield "waited", f"'{step.id}' needs {seconds:.0f} s, and {passed:.0f} s had passed"
        case Repeat(least=least):
            if told.passes < least:
                yield "passes", f"'{step.id}' needs {least} passes, and {told.passes} were done"
            if not told.looked:
                yield "passes", f"nobody was asked about the last pass of '{step.id}'"
        case Inspect():
            if answer not in tuple(Finding):
                yield "answered", f"'{step.id}' has no finding"
        case Do():
            return


def _hold(step: Step, hold: Hold, told: Told) -> Iterator[Broken]:
    second = hold.strength is Strength.SECOND_PERSON
    wanted = ("phrase", *(["verify"] if hold.verify else []), *(["witness"] if second else []))
    if told.told != wanted:
        missing = ", ".join(one for one in wanted if one not in told.told) or "the right order"
        yield "hold-confirmed", f"the hold '{step.id}' counts without: {missing}"
    elif told.told_at == told.at:
        yield "two-answers", f"the hold '{step.id}' was asked and agreed to in a single act"
    if second and told.witness in ("", told.worker):
        yield "hold-confirmed", f"the hold '{step.id}' counts without a second person"


def _number(
    step: Step, task: Measure | Count, answer: str, unit: str, told: Told
) -> Iterator[Broken]:
    try:
        value = Decimal(answer)
    except InvalidOperation:
        yield "answered", f"'{step.id}' has '{answer}' for a number"
        return
    if told.reading != answer and (told.by_voice or told.reading):
        yield "two-answers", f"the number of '{step.id}' was not read back as {answer}"
    if isinstance(task, Count):
        if value != task.expected:
            yield "in-bounds", f"'{step.id}' counted {answer}, and there are {task.expected}"
        return
    if unit != task.unit:
        yield "in-bounds", f"'{step.id}' is in {unit or 'no unit'}, and its limit in {task.unit}"
    by = task.judged_by
    ends = [(task.least, task.most), *([] if by is None else [(by.least, by.most)])]
    for least, most in ends:
        if not value.is_finite() or not _between(value, least, most):
            yield "in-bounds", f"'{step.id}' counts with {answer}, outside {least} to {most}"


def _between(value: Decimal, least: Decimal | None, most: Decimal | None) -> bool:
    return (least is None or least <= value) and (most is None or value <= most)


def _passed(told: Told) -> float:
    """Seconds since the entry, by the monotonic clock of one boot; another boot counts nothing."""
    if told.since is None or told.since.boot != told.at.boot:
        return 0.0
    return max(0.0, told.at.mono - told.since.mono)
