"""A session as a supervisor reads it: its account and its timeline, as rows of text."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from decimal import Decimal, InvalidOperation
from typing import Final

from kiosk.engine.commands import Channel
from kiosk.engine.prompt import Number
from kiosk.languages.words import Words, words
from kiosk.procedure.plan import Plan
from kiosk.remarks.told import Remark
from kiosk.review import record as r
from kiosk.review.deviations import Deviation, sentence
from kiosk.review.ledger_lines import Line, Signed
from kiosk.review.limit_said import limit_said
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_page import Row
from kiosk.screens.review_remarks import remark_rows
from kiosk.trade.units import UNITS

OFF: Final = "▲"
"""The sign of a deviation, beside the words."""
_STEP: Final = "  "
_FINDINGS: Final = {"good": "sheet-good", "replaced": "sheet-replaced",
                    "none left": "sheet-none-left"}  # fmt: skip

Timed = tuple[float, list[Row]]
"""When it happened, POSIX seconds, and what is read of it."""


def key(value: str) -> str:
    """Return a value of the record as the last part of a message's name."""
    return value.replace(" ", "-")


def account(
    line: Line, record: r.SessionRecord, plan: Plan | None, signed: Sequence[Signed],
    found: Sequence[Deviation], desk: Desk,
) -> Iterator[Row]:  # fmt: skip
    """Yield who walked it, how it ended, what was signed, and every deviation with its reason."""
    say = desk.words.say
    ended = say(f"review-ended-{key(record.ended)}")
    yield Row(f"{desk.people(record.workers)} · {ended}", "bold")
    since, until = desk.day_and_time(record.begun_utc), desk.day_and_time(record.last_utc)
    yield Row(say("review-from-to", begun=since, ended=until))
    yield Row(length_line(line, desk))
    yield Row(_text_line(record, desk))
    for condition in record.unsafe:
        known = None if plan is None else plan.conditions.get(condition)
        text = None if known is None else known.present or known.without
        yield Row(f"{OFF} {condition if text is None else desk.words.text(text)}", "bold")
    yield from signatures(signed, desk)
    yield Row()
    yield Row(say("deviations") if found else say("no-deviations"), "bold")
    for one in found:
        yield Row(f"{OFF} {sentence(one, desk.words)}")
        yield Row(f"{_STEP}{desk.words.text(one.reason)}")


def length_line(line: Line, desk: Desk) -> str:
    """Return how long a session took, against earlier ones of its kind."""
    took = desk.length(line.length_s)
    if line.usual_s is None:
        return desk.words.say("review-length", time=took)
    usual = desk.length(line.usual_s)
    return desk.words.say("review-length-usual", time=took, usual=usual, number=str(line.usual_of))


def signatures(signed: Sequence[Signed], desk: Desk) -> Iterator[Row]:
    """Yield what supervisors said about a session."""
    for one in signed:
        at = desk.day_and_time(one.at_utc)
        text = desk.words.say(f"review-was-{key(one.what)}", by=desk.person(one.by), at=at)
        yield Row(f"{text} {desk.remark(one.remark)}".rstrip(), "bold")


def _text_line(record: r.SessionRecord, desk: Desk) -> str:
    name = "review-text-here" if record.text_known else "review-text-gone"
    return desk.words.say(name, version=str(record.version), digest=record.digest[:12])


def timeline(
    record: r.SessionRecord, plan: Plan | None, found: Sequence[Deviation], desk: Desk,
    remarks: Sequence[Remark] = (),
) -> list[Row]:  # fmt: skip
    """Return everything that was asked, answered, interrupted and remarked, in order of time."""
    timed = [
        *_stays(record, plan, found, desk),
        *_breaks(record, desk),
        *_problems(record, desk),
        *_others(record, desk),
        *remark_rows(remarks, desk),
    ]
    return [row for _, rows in sorted(timed, key=lambda one: one[0]) for row in rows]


def _stays(
    record: r.SessionRecord, plan: Plan | None, found: Sequence[Deviation], desk: Desk
) -> Iterator[Timed]:
    open_ones = list(found)
    for stay in record.steps:
        mine = [
            one
            for one in open_ones
            if one.step == stay.step and stay.entered_utc <= one.at_utc <= stay.left_utc
        ]
        open_ones = [one for one in open_ones if one not in mine]
        yield stay.entered_utc, list(_stay(stay, plan, mine, desk))


def _stay(
    stay: r.StepRecord, plan: Plan | None, found: Sequence[Deviation], desk: Desk
) -> Iterator[Row]:
    say = desk.words.say
    asked = _sentence(stay, plan, desk.words)
    yield Row(f"{desk.clock_time(stay.entered_utc)} {asked}", "bold", indent=9)
    if stay.asked and stay.language != desk.words.language:
        language = words(stay.language).say("language-name")
        yield _under(say("review-asked-in", language=language, text=stay.asked))
    for part in stay.parts:
        yield _under(_part(part, desk))
    if stay.limit:
        yield _under(limit_said(stay.limit, stay.unit, desk.words))
    for limit, unit in _limits_missed(stay):
        yield _under(limit_said(limit, unit, desk.words))
    if stay.needed_s is not None and stay.waited_s is not None:
        waited, needed = desk.length(stay.waited_s), desk.length(stay.needed_s)
        yield _under(say("review-waited", waited=waited, needed=needed))
    if stay.witness:
        yield _under(say("review-witness", who=desk.person(stay.witness)))
    if stay.asked_again:
        yield _under(say("review-asked-again", n=stay.asked_again))
    for one in found:
        yield Row(f"{_STEP}{OFF} {sentence(one, desk.words)}", "bold")
    if stay.left is not r.Left.CONFIRMED:
        at = desk.clock_time(stay.left_utc)
        yield _under(f"{at} {say(f'review-left-{key(stay.left)}')}")


def _limits_missed(stay: r.StepRecord) -> list[tuple[str, str]]:
    """Return the limits of numbers that were off, where none was accepted after them."""
    if stay.limit:
        return []
    return list(dict.fromkeys((one.limit, one.unit) for one in stay.said(r.Said.OFF) if one.limit))


def _under(text: str) -> Row:
    return Row(f"{_STEP}{text}")


def _sentence(stay: r.StepRecord, plan: Plan | None, said: Words) -> str:
    """Return the step's sentence in the reader's language; what it is about, where it is gone."""
    if plan is not None and stay.step in plan.index:
        return said.text(plan.step(stay.step).say)
    return stay.asked or said.text(stay.about)


def _part(part: r.Part, desk: Desk) -> str:
    say = desk.words.say
    told = say(f"review-said-{key(part.said)}")
    value = value_said(part.value, part.unit, desk.words)
    if part.clear is not None:
        value = say("review-clear-yes" if part.clear else "review-clear-no")
    pieces = [f"{told}: {value}" if value else told, say(f"review-by-{part.channel}")]
    if part.heard and part.channel is Channel.VOICE:
        pieces[-1] += f": “{part.heard}”"
    elif part.heard:
        pieces.append(say("review-not-taken", heard=part.heard))
    if part.confidence is not None:
        pieces.append(say("review-sure", percent=str(round(part.confidence * 100))))
    if part.ear:
        pieces.append(say("review-ear", ear=part.ear))
    if part.after_s is not None:
        pieces.append(say("review-after", time=desk.length(part.after_s)))
    return f"{desk.clock_time(part.at_utc)} {' · '.join(pieces)}"


def value_said(value: str, unit: str, said: Words) -> str:
    """Return a number with its unit, or a finding, in words; '' for nothing."""
    if value in _FINDINGS:
        return said.say(_FINDINGS[value])
    try:
        number = Decimal(value)
    except InvalidOperation:
        return value
    if unit == "passes":
        return said.say("review-passes", n=int(number))
    return said.number(Number(value, unit)) if unit in UNITS else f"{value} {unit}"


def _breaks(record: r.SessionRecord, desk: Desk) -> Iterator[Timed]:
    for one in record.breaks:
        text = desk.words.say(f"review-break-{key(one.because)}")
        if one.restarted and one.because != "restart":
            text += f" {desk.words.say('review-break-restart')}"
        if one.power_cut:
            text += f" {desk.words.say('review-power-cut')}"
        if one.until_utc is not None:
            text += f" {desk.words.say('review-until', at=desk.clock_time(one.until_utc))}"
        yield one.at_utc, [_at(one.at_utc, f"■ {text}", desk)]


def _problems(record: r.SessionRecord, desk: Desk) -> Iterator[Timed]:
    for one in record.problems:
        name = desk.words.text(one.name) if one.name else desk.words.say("review-no-reason")
        became = desk.words.say(f"review-became-{key(one.became)}")
        text = desk.words.say("review-problem", what=name, became=became)
        yield one.at_utc, [_at(one.at_utc, f"{OFF} {text}", desk)]


def _others(record: r.SessionRecord, desk: Desk) -> Iterator[Timed]:
    say = desk.words.say
    for change in record.changes:
        before, after = desk.person(change.before), desk.person(change.after)
        text = say("review-handed-over", before=before, after=after)
        yield change.at_utc, [_at(change.at_utc, text, desk)]
    for work in record.worked_out:
        rows = [
            _at(work.at_utc, say("review-worked-out", what=say(f"reckon-{work.calculator}")), desk),
            _under(work.answers),
            _under(work.finding),
        ]
        yield work.at_utc, rows
    if record.ended is not r.Ended.OPEN:
        text = say(f"review-ended-{key(record.ended)}")
        yield record.last_utc, [_at(record.last_utc, text, desk)]


def _at(at_utc: float, text: str, desk: Desk) -> Row:
    return Row(f"{desk.clock_time(at_utc)} {text}", "bold", indent=9)
