"""What is looked for in the steps of a session: holds, waits, speed, numbers, parts."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from decimal import Decimal
from types import MappingProxyType
from typing import Final

from kiosk.engine.commands import Channel, Finding
from kiosk.engine.prompt import Number
from kiosk.procedure.model import Text
from kiosk.procedure.review_rules import Finds
from kiosk.review.finding import (
    RESOLUTION_S,
    Case,
    Finder,
    Found,
    Parameters,
    in_step,
    time_of,
)
from kiosk.review.record import Asked, Left, Part, Said, SessionRecord, StepRecord

_PRESSED = (Channel.TOUCH, Channel.KEY)


# Holds.


def _is_hold(stay: StepRecord) -> bool:
    return stay.kind is Asked.HOLD or any(part.said is Said.PHRASE for part in stay.parts)


def _hold_touched(case: Case, numbers: Parameters) -> Iterator[Found]:
    for stay, before in _confirmed_with_earlier(case.record):
        stays = (*before, stay)
        if not any(_is_hold(one) for one in stays):
            continue
        parts = [part for one in stays for part in one.parts]
        if stay.witness:
            parts.pop()
        refused = next((p for p in parts if _answers(p) and p.heard), None)
        if refused is not None:
            yield in_step(case.record, stay.step, refused.at_utc, heard=refused.heard)
            continue
        again = sum(one.asked_again for one in stays) >= numbers["asked_again"]
        doubtful = [n for n, part in enumerate(parts) if _doubtful(part, numbers["confidence"])]
        first = -1 if again else doubtful[0] if doubtful else None
        if first is None:
            continue
        heard = next((part.heard for part in parts if part.heard), "")
        pressed = next((p for n, p in enumerate(parts) if n > first and _answers(p)), None)
        if pressed is not None:
            yield in_step(case.record, stay.step, pressed.at_utc, heard=heard)


def _doubtful(part: Part, confidence: Decimal) -> bool:
    if part.said is Said.DENIED:
        return True
    low = part.confidence is not None and part.confidence < confidence
    return part.channel is Channel.VOICE and low


def _answers(part: Part) -> bool:
    counts = part.said in (Said.PHRASE, Said.AGREED, Said.CONFIRMED)
    return counts and part.channel in _PRESSED


def _hold_denied(case: Case, _: Parameters) -> Iterator[Found]:
    for stay in case.record.steps:
        heard = ""
        for part in stay.parts if _is_hold(stay) else ():
            heard = part.heard if part.said is Said.PHRASE else heard
            if part.said is Said.DENIED:
                yield in_step(case.record, stay.step, part.at_utc, heard=heard)


def _try_out_failed(case: Case, _: Parameters) -> Iterator[Found]:
    for stay in case.record.steps:
        for part in stay.said(Said.TRY_OUT_FAILED):
            yield in_step(case.record, stay.step, part.at_utc)


# Waits and speed.


def _confirmed_with_earlier(
    record: SessionRecord,
) -> Iterator[tuple[StepRecord, tuple[StepRecord, ...]]]:
    """Yield each confirmed stay with the unconfirmed ones in the same step since the last time."""
    before: dict[str, tuple[StepRecord, ...]] = {}
    for stay in record.steps:
        if stay.left is Left.CONFIRMED:
            yield stay, before.pop(stay.step, ())
        else:
            before[stay.step] = (*before.get(stay.step, ()), stay)


def _wait_short(case: Case, numbers: Parameters) -> Iterator[Found]:
    for stay in case.record.confirmed():
        if stay.needed_s is None:
            continue
        wall = stay.waited_wall_s or 0.0
        true = wall if stay.waited_s is None else stay.waited_s
        short = true + RESOLUTION_S < stay.needed_s
        clock = wall + float(numbers["clock_s"]) + RESOLUTION_S < stay.needed_s
        if short or clock:
            yield in_step(
                case.record, stay.step, stay.left_utc,
                waited=time_of(max(0.0, true if short else wall)), needed=time_of(stay.needed_s),
                clock="monotonic" if short else "wall",
            )  # fmt: skip


def _wait_cut(case: Case, _: Parameters) -> Iterator[Found]:
    record = case.record
    confirmed = {stay.step for stay in record.confirmed()}
    cut = {
        stay.step: stay
        for stay in record.steps
        if stay.needed_s is not None and stay.step not in confirmed
    }
    for stay in cut.values():
        went_on = any(one.entered_utc >= stay.left_utc for one in record.confirmed())
        if record.over or went_on:
            waited = stay.waited_s if stay.waited_s is not None else stay.waited_wall_s or 0.0
            yield in_step(
                record, stay.step, stay.left_utc, waited=time_of(max(0.0, waited)),
                needed=time_of(stay.needed_s or 0.0),
            )  # fmt: skip


def _too_fast(case: Case, numbers: Parameters) -> Iterator[Found]:
    for stay, before in _confirmed_with_earlier(case.record):
        name = f"{stay.kind}_s"
        times = [one.stayed_s for one in (*before, stay)]
        if name not in numbers or any(one is None for one in times):
            continue
        took = sum(one for one in times if one is not None)
        rounds = sum(len(one.said(Said.ROUND_DONE)) for one in (*before, stay))
        least = float(numbers[name]) * (rounds if stay.kind is Asked.REPEAT else 1)
        if took + RESOLUTION_S < least:
            yield in_step(
                case.record, stay.step, stay.left_utc, time=time_of(took), least=time_of(least)
            )


# Numbers and parts.


def _off(*, count: bool, put_right: bool) -> Finder:
    def find(case: Case, _: Parameters) -> Iterator[Found]:
        record = case.record
        for place, stay in enumerate(record.steps):
            for n, part in enumerate(stay.parts):
                counted = stay.kind is Asked.COUNT or (stay.kind is Asked.UNKNOWN and not part.unit)
                if part.said is not Said.OFF or counted is not count:
                    continue
                later = [*stay.parts[n + 1 :], *_later(record.steps[place + 1 :], stay.step)]
                right = next((one for one in later if one.said is Said.CONFIRMED), None)
                if (right is not None) is put_right:
                    yield _number_off(record, stay, part, right)

    return find


def _later(stays: Sequence[StepRecord], step: str) -> Iterator[Part]:
    for stay in stays:
        if stay.step == step:
            yield from stay.parts


def _number_off(record: SessionRecord, stay: StepRecord, part: Part, right: Part | None) -> Found:
    facts: dict[str, str | Text | Number] = {
        "number": Number(part.value, part.unit),
        "limit": part.limit,
        "told": "no" if stay.corrective is None else "yes",
        "corrective": stay.corrective or {"en": ""},
    }
    if right is not None:
        facts["then"] = Number(right.value, right.unit)
    return in_step(record, stay.step, part.at_utc, **facts)


def _passes_ran_out(case: Case, _: Parameters) -> Iterator[Found]:
    for stay in case.record.steps:
        for part in stay.said(Said.RAN_OUT):
            yield in_step(case.record, stay.step, part.at_utc, number=Number(part.value))


def _none_in_stock(case: Case, _: Parameters) -> Iterator[Found]:
    for stay in case.record.confirmed():
        if stay.answer == Finding.NONE_LEFT and stay.kind in (Asked.INSPECT, Asked.UNKNOWN):
            yield in_step(case.record, stay.step, stay.left_utc)


OF_STEPS: Final[Mapping[Finds, Finder]] = MappingProxyType(
    {
        Finds.HOLD_TOUCHED: _hold_touched,
        Finds.HOLD_DENIED: _hold_denied,
        Finds.TRY_OUT_FAILED: _try_out_failed,
        Finds.WAIT_SHORT: _wait_short,
        Finds.WAIT_CUT: _wait_cut,
        Finds.READING_OFF: _off(count=False, put_right=True),
        Finds.READING_LEFT_OFF: _off(count=False, put_right=False),
        Finds.COUNT_OFF: _off(count=True, put_right=True),
        Finds.COUNT_LEFT_OFF: _off(count=True, put_right=False),
        Finds.PASSES_RAN_OUT: _passes_ran_out,
        Finds.TOO_FAST: _too_fast,
        Finds.NONE_IN_STOCK: _none_in_stock,
    }
)
"""What is found in the steps of a session."""
