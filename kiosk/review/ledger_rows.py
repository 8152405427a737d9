"""A session's record as rows of the ledger, and rows as what they were made of."""

from __future__ import annotations

import json
import re
from collections.abc import Iterator, Mapping, Sequence
from dataclasses import dataclass
from functools import lru_cache
from typing import Any, Final

from kiosk.engine.prompt import Number
from kiosk.procedure.model import Text
from kiosk.procedure.review_rules import DeviationRule
from kiosk.review.deviations import Deviation
from kiosk.review.earlier import Earlier
from kiosk.review.finding import Facts
from kiosk.review.ledger_lines import Line, PartLine, Reading, Signed, Stood
from kiosk.review.record import Asked, Became, Ended, Part, Said, SessionRecord

Row = tuple[Any, ...]

LINE = """
    s.session, s.procedure, s.title, s.version, s.machine, s.practice, s.workers, s.begun_utc,
    s.last_utc, s.ended, s.ended_step, s.text_known, s.first_seq, s.last_seq, s.steps, s.spoken,
    s.deviations, s.heaviest, s.usual_s, s.usual_of, g.seq, g.what, g.by, g.at_utc, g.remark
"""
"""What a line is made of, as columns."""
LINES = f"""
    select {LINE} from session s left join signed g on g.seq = (
        select max(seq) from signed where signed.session = s.session and seq > s.last_seq
    )
"""  # noqa: S608
SIGNED_OFF = f"g.what is '{Stood.SIGNED_OFF}'"
"""True of a line that was signed off after its last event."""


_ENDED: Final = {str(one): one for one in Ended}
"""Looked up, for years of sessions: to make an enumeration's member of its value takes longer."""
_PASSES: Final = "passes"
"""The unit of a step that was repeated."""
_LIMIT: Final = re.compile(r"(?P<name>.+?) \S+ to \S+: ")
"""A limit as journaled: `mix temperature None to 5: ...`."""


@dataclass(frozen=True, slots=True)
class Short:
    """What is asked of other sessions than the one that is looked at."""

    session: str
    procedure: str
    machine: str
    practice: bool
    begun_utc: float
    last_utc: float
    ended: Ended
    spoken: bool

    @property
    def length_s(self) -> float:
        """Seconds from the first event to the last by the wall clock, never below 0."""
        return max(0.0, self.last_utc - self.begun_utc)


def short(one: SessionRecord) -> Short:
    """Return what other sessions may ask of this one."""
    return Short(
        one.session, one.procedure, one.machine, one.practice, one.begun_utc, one.last_utc,
        one.ended, one.spoken,
    )  # fmt: skip


SHORT = "session, procedure, machine, practice, begun_utc, last_utc, ended, spoken"
"""What that is made of, as columns."""


def short_of(row: Sequence[Any]) -> Short:
    """Return it from its columns."""
    session, procedure, machine, practice, begun, last, ended, spoken = row
    return Short(
        session, procedure, machine, bool(practice), begun, last, _ENDED[ended], bool(spoken)
    )


# Sessions.


def settled(record: SessionRecord) -> bool:
    """True when what the rules find in a session does not change with the time of looking."""
    return record.over and all(one.became is not Became.OPEN for one in record.problems)


def session_row(record: SessionRecord, before: Earlier, found: Sequence[Deviation]) -> Row:
    """Return the row of a session."""
    return (
        record.session, record.procedure, _json(record.title), record.version, record.machine,
        record.practice, _json(record.workers), record.begun_utc, record.last_utc, record.ended,
        record.ended_step, record.text_known, record.first_seq, record.last_seq,
        len(record.confirmed()), record.spoken, settled(record), len(found),
        max((one.weight for one in found), default=0), before.usual_s, before.usual_of,
    )  # fmt: skip


def line(row: Sequence[Any]) -> Line:
    """Return a line from the columns of `LINE`."""
    (
        session, procedure, title, version, machine, practice, workers, begun, last, ended,
        ended_step, text_known, first_seq, last_seq, steps, spoken, deviations, heaviest, usual_s,
        usual_of, seq, what, by, at_utc, remark,
    ) = row  # fmt: skip
    word = None
    if seq is not None:
        word = Signed(
            seq=seq, session=session, what=Stood(what), by=by, at_utc=at_utc, remark=remark
        )
    return Line(
        session=session, procedure=procedure, title=_read(title), version=version,
        machine=machine, practice=bool(practice), workers=tuple(_read(workers)),
        begun_utc=begun, last_utc=last, ended=_ENDED[ended], ended_step=ended_step,
        text_known=bool(text_known), first_seq=first_seq, last_seq=last_seq, steps=steps,
        spoken=bool(spoken), deviations=deviations, heaviest=heaviest, usual_s=usual_s,
        usual_of=usual_of, signed=word,
    )  # fmt: skip


# Deviations.


def deviation_row(place: int, one: Deviation) -> Row:
    """Return the row of a deviation."""
    return (one.session, place, one.rule, one.step, one.at_utc, _json(_plain(one.facts)), one.seq)


def deviation(
    row: Sequence[Any], rules: Mapping[str, DeviationRule], machine: str, procedure: str
) -> Deviation:
    """Return a deviation from its row, in the words of its rule."""
    session, _, rule, step, at_utc, facts, seq = row
    by = rules[rule]
    return Deviation(
        rule=rule, finds=by.finds, weight=by.weight, title=by.title, reason=by.reason,
        machine=machine, procedure=procedure, session=session, step=step, at_utc=at_utc,
        facts=_facts(json.loads(facts)), seq=seq,
    )  # fmt: skip


def _plain(facts: Facts) -> dict[str, object]:
    return {
        name: [fact.value, fact.unit] if isinstance(fact, Number) else fact
        for name, fact in facts.items()
    }


def _facts(plain: Mapping[str, Any]) -> Facts:
    found: dict[str, str | Text | Number] = {}
    for name, fact in plain.items():
        found[name] = Number(*fact) if isinstance(fact, list) else fact
    return found


# Readings and parts.


def readings(record: SessionRecord) -> Iterator[Reading]:
    """Yield the numbers that were judged in a session, or accepted without a limit."""
    for stay in record.steps:
        # Without the text, a number with a unit was measured, unless it was waited or repeated.
        unknown = stay.kind is Asked.UNKNOWN and stay.needed_s is None
        for part in stay.parts:
            measured = stay.kind is Asked.MEASURE or (unknown and part.unit not in ("", _PASSES))
            if measured and part.value and part.said in (Said.OFF, Said.CONFIRMED):
                yield Reading(
                    seq=part.seq, session=record.session, step=stay.step, machine=record.machine,
                    practice=record.practice, at_utc=part.at_utc,
                    quantity=_limit_name(part) if unknown else stay.about["en"],
                    value=part.value, unit=part.unit,
                    limit=part.limit, kept=part.said is Said.CONFIRMED if part.limit else None,
                )  # fmt: skip


def _limit_name(part: Part) -> str:
    found = _LIMIT.match(part.limit)
    return found["name"] if found else ""


def reading_row(one: Reading) -> Row:
    """Return the row of a reading."""
    return (
        one.seq, one.session, one.step, one.machine, one.practice, one.at_utc, one.quantity,
        one.value, one.unit, one.limit, one.kept,
    )  # fmt: skip


def reading(row: Sequence[Any]) -> Reading:
    """Return a reading from its row."""
    seq, session, step, machine, practice, at_utc, quantity, value, unit, limit, kept = row
    return Reading(
        seq=seq, session=session, step=step, machine=machine, practice=bool(practice),
        at_utc=at_utc, quantity=quantity, value=value, unit=unit, limit=limit,
        kept=None if kept is None else bool(kept),
    )  # fmt: skip


def parts(record: SessionRecord) -> Iterator[PartLine]:
    """Yield the parts that were counted or looked at in a session."""
    for seen in record.parts:
        yield PartLine(
            seq=seen.seq, session=record.session, step=seen.step, machine=record.machine,
            practice=record.practice, at_utc=seen.at_utc, part=seen.part, counted=seen.counted,
            expected=seen.expected, finding=seen.finding,
        )  # fmt: skip


def part_row(one: PartLine) -> Row:
    """Return the row of a part."""
    return (
        one.seq, one.session, one.step, one.machine, one.practice, one.at_utc, one.part,
        one.counted, one.expected, one.finding, one.by, one.remark,
    )  # fmt: skip


def part(row: Sequence[Any]) -> PartLine:
    """Return a part from its row."""
    seq, session, step, machine, practice, at_utc, name, counted, expected, finding, by, say = row
    return PartLine(
        seq=seq, session=session, step=step, machine=machine, practice=bool(practice),
        at_utc=at_utc, part=name, counted=counted, expected=expected, finding=finding, by=by,
        remark=say,
    )  # fmt: skip


@lru_cache(maxsize=1024)
def _read(text: str) -> Any:
    """Read JSON that many rows have alike. What comes back is shared: nobody may change it."""
    return json.loads(text)


def _json(value: object) -> str:
    return json.dumps(value, ensure_ascii=False, separators=(",", ":"))
