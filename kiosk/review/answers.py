"""Answers to one step's question: an event as a part of the record, and what the step is about."""

from __future__ import annotations

from decimal import Decimal, InvalidOperation

from kiosk.engine import events as e
from kiosk.languages.notice import Notice
from kiosk.languages.words import notice
from kiosk.procedure.model import Text
from kiosk.procedure.plan import Count, Do, Hold, Inspect, Measure, Repeat, Step, Wait
from kiosk.review.record import Asked, Part, PartSeen, Said

_KINDS: dict[type, Asked] = {
    Do: Asked.DO,
    Hold: Asked.HOLD,
    Measure: Asked.MEASURE,
    Wait: Asked.WAIT,
    Repeat: Asked.REPEAT,
    Count: Asked.COUNT,
    Inspect: Asked.INSPECT,
}


def part_of(event: e.Event, after_s: float | None, seq: int = 0) -> Part | None:
    """Return an event as a part of an answer; None when it answers nothing.

    `seq` is its row in the journal.
    """
    by = event.by
    value = unit = limit = ""
    clear: bool | None = None
    match event.fact:
        case e.PhraseGiven():
            said = Said.PHRASE
        case e.ReadBackAgreed():
            said = Said.AGREED
        case e.ReadBackDenied():
            said = Said.DENIED
        case e.VerifyFailed():
            said = Said.TRY_OUT_FAILED
        case e.ReadingGiven(value=value, unit=unit):
            said = Said.NUMBER
        case e.ReadingOff(value=value, unit=unit, limit=limit):
            said = Said.OFF
        case e.PassDone(passes=passes):
            said, value = Said.ROUND_DONE, str(passes)
        case e.PassJudged(clear=clear):
            said = Said.JUDGED
        case e.PassesRanOut(passes=passes):
            said, value = Said.RAN_OUT, str(passes)
        case e.TriedAgain():
            said = Said.TRIED_AGAIN
        case e.WaitEnded():
            said = Said.TIME_UP
        case e.StepConfirmed(answer=value, unit=unit, limit=limit):
            said = Said.CONFIRMED
        case _:
            return None
    return Part(
        said=said, at_utc=event.at.utc, after_s=after_s, channel=by.channel, heard=by.heard,
        ear=by.ear, confidence=by.confidence, value=value, unit=unit, limit=limit, clear=clear,
        seq=seq,
    )  # fmt: skip


def part_seen(
    step: Step | None, fact: e.StepConfirmed, at_utc: float, seq: int = 0
) -> PartSeen | None:
    """Return which part of the machine a confirmation accepted; None when the step has none."""
    match None if step is None else step.task:
        case Count(part=part, name=name, expected=expected):
            return PartSeen(
                at_utc=at_utc, step=fact.step, part=part, name=name, counted=_whole(fact.answer),
                expected=expected, seq=seq,
            )  # fmt: skip
        case Inspect(part=part, name=name):
            return PartSeen(
                at_utc=at_utc, step=fact.step, part=part, name=name, finding=fact.answer,
                seq=seq,
            )  # fmt: skip
        case _:
            return None


def kind_of(step: Step) -> Asked:
    """Return what kind of answer a step asks for."""
    return _KINDS[type(step.task)]


def sentence_in(text: Text, language: str) -> str:
    """Return a sentence as it was asked, in English where the language was missing."""
    return text.get(language) or text.get("en") or next(iter(text.values()), "")


def about(step: Step) -> Text:
    """Return what a step is about: its part, what it measures, or its sentence."""
    match step.task:
        case Count(name=name) | Inspect(name=name):
            return name
        case Measure(quantity=quantity):
            return {"en": quantity}
        case _:
            return step.say


def named(about: Text) -> Text | Notice:
    """Return what a step is about, so that it can be told in any language.

    What is measured is journaled by an English name, and the kiosk's own words have others for it.
    """
    if about.keys() != {"en"}:
        return about
    english = about["en"]
    return notice("plot-quantity", quantity=english.replace(" ", "-"), other=english)


def _whole(text: str) -> int | None:
    try:
        return int(Decimal(text))
    except (InvalidOperation, ValueError, OverflowError):
        return None
