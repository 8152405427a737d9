"""What is looked for in a session as a whole."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from types import MappingProxyType
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.procedure.review_rules import Finds
from kiosk.review.finding import (
    Case,
    Finder,
    Found,
    Parameters,
    about,
    in_step,
    time_of,
)
from kiosk.review.record import Became, Ended

_DAY_S = 86_400


# How the session ended.


def _problem_open(case: Case, _: Parameters) -> Iterator[Found]:
    for one in case.record.problems:
        if one.became is Became.OPEN:
            since = time_of(max(0.0, case.now_utc - one.at_utc))
            yield in_step(
                case.record, one.step, one.at_utc, reason=one.name or {"en": ""},
                named="yes" if one.reasons else "no", time=since,
            )  # fmt: skip


def _problem(case: Case, _: Parameters) -> Iterator[Found]:
    for one in case.record.problems:
        if one.became is not Became.OPEN:
            yield in_step(
                case.record, one.step, one.at_utc, reason=one.name or {"en": ""},
                named="yes" if one.reasons else "no", became=one.became.replace(" ", "-"),
            )  # fmt: skip


def _ended(how: Ended) -> Finder:
    def find(case: Case, _: Parameters) -> Iterator[Found]:
        record = case.record
        if record.ended is how:
            yield in_step(record, record.ended_step, record.last_utc)

    return find


def _unfinished(case: Case, numbers: Parameters) -> Iterator[Found]:
    record, idle_s = case.record, case.now_utc - case.record.last_utc
    if record.ended is Ended.OPEN and idle_s > float(numbers["after_min"]) * 60:
        yield in_step(record, record.ended_step, record.last_utc, time=time_of(idle_s))


def _no_way_in(case: Case, _: Parameters) -> Iterator[Found]:
    for one in case.record.breaks:
        if one.because == "no way in":
            yield in_step(case.record, one.step, one.at_utc)


# The session as a whole.


def _length(*, longer: bool) -> Finder:
    def find(case: Case, numbers: Parameters) -> Iterator[Found]:
        record, usual, of = case.record, case.earlier.usual_s, case.earlier.usual_of
        enough = usual is not None and of >= numbers["least_sessions"]
        if usual is None or not enough or record.ended is not Ended.COMPLETE:
            return
        bound = float(numbers["ratio"]) * usual
        if record.length_s > bound if longer else record.length_s < bound:
            facts = {"time": time_of(record.length_s), "usual": time_of(usual)}
            yield Found("", record.last_utc, {**facts, "number": Number(str(of))})

    return find


def _restarted(case: Case, _: Parameters) -> Iterator[Found]:
    for one in case.record.breaks:
        if one.restarted:
            yield in_step(
                case.record, one.step, one.at_utc, time=time_of(one.dark_s),
                power="cut" if one.power_cut else "kept",
            )  # fmt: skip


def _back_step(case: Case, _: Parameters) -> Iterator[Found]:
    for one in case.record.back_steps:
        yield in_step(case.record, one.step, one.at_utc, to=about(case.record, one.to))


def _touch_only(case: Case, numbers: Parameters) -> Iterator[Found]:
    record = case.record
    steps = len(record.confirmed())
    if steps < numbers["least_steps"] or record.spoken:
        return
    since = record.begun_utc - float(numbers["ear_within_days"]) * _DAY_S
    spoken = case.earlier.spoken_utc
    if spoken is not None and spoken >= since:
        yield Found("", record.last_utc, {"number": Number(str(steps))})


def _text_unknown(case: Case, _: Parameters) -> Iterator[Found]:
    if not case.record.text_known:
        record = case.record
        facts = {"procedure": record.procedure, "version": str(record.version)}
        yield Found("", record.begun_utc, {**facts, "digest": record.digest[:12]})


OF_SESSIONS: Final[Mapping[Finds, Finder]] = MappingProxyType(
    {
        Finds.PROBLEM_OPEN: _problem_open,
        Finds.PROBLEM: _problem,
        Finds.OUT_OF_SERVICE: _ended(Ended.OUT_OF_SERVICE),
        Finds.ENDED_EARLY: _ended(Ended.EARLY),
        Finds.UNFINISHED: _unfinished,
        Finds.NO_WAY_IN: _no_way_in,
        Finds.SHORTER: _length(longer=False),
        Finds.LONGER: _length(longer=True),
        Finds.RESTARTED: _restarted,
        Finds.BACK_STEP: _back_step,
        Finds.TOUCH_ONLY: _touch_only,
        Finds.TEXT_UNKNOWN: _text_unknown,
    }
)
"""What is found in the session as a whole."""
