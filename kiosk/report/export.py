"""The records as tables for a spreadsheet or a program: CSV (RFC 4180) or JSON Lines."""

from __future__ import annotations

import csv
import json
import re
from collections.abc import Callable, Iterable, Iterator, Mapping
from dataclasses import dataclass
from pathlib import Path
from types import MappingProxyType
from typing import Final

from kiosk.journal.codec import stamp
from kiosk.report.desk import Desk, Span
from kiosk.report.gathered import in_span
from kiosk.report.of_findings import seqs_of
from kiosk.review.barrels import over
from kiosk.review.deviations import in_order, sentence
from kiosk.review.ledger_lines import Line
from kiosk.review.record import in_zone
from kiosk.trade.authorities import NoSuchLimit

Value = str | int | float | bool | None | list[int] | list[str]
Record = dict[str, Value]

_NUMBER = re.compile(r"[+-]?[0-9]+(\.[0-9]+)?")
_FORMULA = ("=", "+", "-", "@", "\t", "\r", "\n")
"""What a spreadsheet may take for the beginning of a formula. OWASP, CSV Injection, MEM; the line
feed is added."""


@dataclass(frozen=True, slots=True)
class Exported:
    """One table: its columns with what stands in each, and where its rows come from."""

    columns: Mapping[str, str]
    records: Callable[[Span, Desk], Iterator[Record]]


def write_csv(records: Iterable[Record], columns: Iterable[str], file: Path) -> int:
    """Write a CSV file and return how many rows it has.

    UTF-8 with a byte order mark, which spreadsheets need for names; line ends are CRLF. What could
    be taken for a formula gets an apostrophe before it.
    """
    count = 0
    with file.open("w", encoding="utf-8-sig", newline="") as out:
        writer = csv.writer(out)
        writer.writerow(columns)
        for count, record in enumerate(records, 1):  # noqa: B007
            writer.writerow([cell(value) for value in record.values()])
    return count


def write_jsonl(records: Iterable[Record], file: Path) -> int:
    """Write a file with one JSON object in each line, and return how many it has."""
    count = 0
    with file.open("w", encoding="utf-8", newline="\n") as out:
        for count, record in enumerate(records, 1):  # noqa: B007
            out.write(json.dumps(record, ensure_ascii=False) + "\n")
    return count


def cell(value: Value) -> str:
    """Return a value as the text of a CSV cell that no spreadsheet computes."""
    if value is None:
        return ""
    if isinstance(value, bool):
        return "true" if value else "false"
    if isinstance(value, list):
        return " ".join(map(str, value))
    text = str(value)
    if text.startswith(_FORMULA) and not _NUMBER.fullmatch(text):
        return f"'{text}"
    return text


# The tables.


def _local(at_utc: float, desk: Desk) -> str:
    return in_zone(at_utc, desk.zone).isoformat(timespec="seconds")


def _sessions(span: Span, desk: Desk) -> Iterator[Record]:
    lines = desk.ledger.lines(
        practice=desk.site.practice, from_utc=span.from_utc, until_utc=span.until_utc, limit=None
    )
    for one in reversed(lines):
        yield {
            "session": one.session, "procedure": one.procedure, "version": one.version,
            "machine": one.machine, "practice": one.practice, "workers": list(one.workers),
            "begun_utc": stamp(one.begun_utc), "begun_local": _local(one.begun_utc, desk),
            "last_utc": stamp(one.last_utc), "length_s": round(one.length_s, 3),
            "usual_s": None if one.usual_s is None else round(one.usual_s, 3),
            "ended": one.ended.value, "steps": one.steps, "spoken": one.spoken,
            "deviations": one.deviations, "heaviest": one.heaviest,
            "signed": None if one.signed is None else one.signed.what.value,
            "signed_by": None if one.signed is None else one.signed.by,
            "signed_utc": None if one.signed is None else stamp(one.signed.at_utc),
            "remark": _remark(one, desk),
            "signed_seq": None if one.signed is None else one.signed.seq,
            "first_seq": one.first_seq, "last_seq": one.last_seq,
        }  # fmt: skip


def _remark(one: Line, desk: Desk) -> str | None:
    if one.signed is None or not one.signed.remark:
        return None
    return desk.remark(one.signed.remark)


def _readings(span: Span, desk: Desk) -> Iterator[Record]:
    for one in desk.ledger.readings(
        practice=desk.site.practice, from_utc=span.from_utc, until_utc=span.until_utc
    ):
        yield {
            "seq": one.seq, "session": one.session, "step": one.step, "machine": one.machine,
            "practice": one.practice, "at_utc": stamp(one.at_utc),
            "at_local": _local(one.at_utc, desk), "quantity": one.quantity, "value": one.value,
            "unit": one.unit, "limit": one.limit or None, "kept": one.kept,
        }  # fmt: skip


def _events(span: Span, desk: Desk) -> Iterator[Record]:
    for row in desk.rows.between(stamp(span.from_utc), stamp(span.until_utc)):
        record = json.loads(row.body)
        by = record["by"]
        yield {
            "seq": row.seq, "kiosk": row.kiosk, "session": row.session, "kind": row.kind,
            "utc": row.utc, "mono_us": row.mono_us, "boot": row.boot, "channel": by["channel"],
            "heard": by.get("heard"), "ear": by.get("ear"), "confidence": by.get("confidence"),
            "fact": json.dumps(record["fact"], ensure_ascii=False, sort_keys=True),
            "hash": row.hash,
        }  # fmt: skip


def _deviations(span: Span, desk: Desk) -> Iterator[Record]:
    practice, now = desk.site.practice, desk.now_utc
    of_sessions = desk.ledger.deviations_between(
        span.from_utc, span.until_utc, now, practice=practice
    )
    scheduled = desk.ledger.schedule_deviations(
        span.first, span.last, now, practice=practice, entered=desk.results
    )
    for one in in_order([*of_sessions, *in_span(span, scheduled)]):
        yield {
            "rule": one.rule, "weight": one.weight, "finds": one.finds.value,
            "machine": one.machine, "procedure": one.procedure or None,
            "session": one.session or None, "step": one.step or None,
            "at_utc": stamp(one.at_utc), "at_local": _local(one.at_utc, desk),
            "sentence": sentence(one, desk.words), "reason": desk.text(one.reason),
            "seqs": list(seqs_of(one, desk)),
        }  # fmt: skip


def _results(span: Span, desk: Desk) -> Iterator[Record]:
    entered = {fact["result"]: seq for seq, _, fact in desk.rows.shop("ResultEntered")}
    for one in desk.results:
        of = one.of
        if not span.first <= of.day <= span.last:
            continue
        verdict: bool | None = None
        if desk.authority is not None:
            try:
                verdict = over(one, desk.authority)
            except NoSuchLimit:
                verdict = None
        yield {
            "seq": entered[one.id], "result": one.id, "machine": of.machine, "barrel": of.barrel,
            "day": of.day.isoformat(), "product": of.product.value, "analysis": of.analysis.value,
            "amount": str(of.amount), "per": of.per, "laboratory": of.laboratory,
            "sample": of.sample or None, "entered_by": one.by, "entered_utc": stamp(one.utc),
            "over": verdict,
        }  # fmt: skip


_TIME = "as 2026-10-12T02:41:07.123456Z"
_LOCAL = "the same as the site's clock showed it, ISO 8601 with the offset from UTC"

TABLES: Final[Mapping[str, Exported]] = MappingProxyType(
    {
        "sessions": Exported(
            {
                "session": "id of the session",
                "procedure": "id of the procedure",
                "version": "its version",
                "machine": "id of the machine",
                "practice": "true for an invented shop or a rehearsal",
                "workers": "ids of the people, in the order in which they took part",
                "begun_utc": f"time of the first event, {_TIME}",
                "begun_local": _LOCAL,
                "last_utc": "time of the last event",
                "length_s": "seconds from the first event to the last, by the wall clock",
                "usual_s": "median length of the complete sessions of the same procedure, machine "
                "and kind of work that had begun before it; empty when there was none",
                "ended": "`complete`, `ended early`, `out of service` or `open`",
                "steps": "how many steps were confirmed",
                "spoken": "true when something was answered by voice",
                "deviations": "how many deviations its record shows; those of the schedule not "
                "among them",
                "heaviest": "the highest weight of these; 0 without one",
                "signed": "`signed off`, `sent back`, or empty",
                "signed_by": "id of the supervisor",
                "signed_utc": "when",
                "remark": "the supervisor's remark",
                "signed_seq": "the journal row of the signature",
                "first_seq": "the session's first row in the journal",
                "last_seq": "its last row",
            },
            _sessions,
        ),
        "readings": Exported(
            {
                "seq": "the journal row",
                "session": "id of the session",
                "step": "id of the step",
                "machine": "id of the machine",
                "practice": "true for an invented shop or a rehearsal",
                "at_utc": f"when, {_TIME}",
                "at_local": _LOCAL,
                "quantity": "what was measured; the step's id when the text is not here any more",
                "value": "the number as it was given",
                "unit": "its unit, as °C, °F or mg/L",
                "limit": "the limit with its source, as journaled; empty when there was none",
                "kept": "true or false; empty without a limit",
            },
            _readings,
        ),
        "events": Exported(
            {
                "seq": "the journal row",
                "kiosk": "id of the kiosk",
                "session": "id of the session; `shop` for what belongs to none",
                "kind": "kind of fact",
                "utc": f"when, {_TIME}",
                "mono_us": "microseconds of the clock that is never set",
                "boot": "which run of that clock",
                "channel": "`voice`, `touch`, `key` or `kiosk`",
                "heard": "the words heard; for a press, words before it that were not taken",
                "ear": "which ear heard them",
                "confidence": "how sure it was, 0 to 1; empty when it cannot tell",
                "fact": "the fact as a JSON object",
                "hash": "the row's hash in the chain",
            },
            _events,
        ),
        "deviations": Exported(
            {
                "rule": "id of the rule",
                "weight": "1 to 100; the highest needs eyes first",
                "finds": "what the rule finds",
                "machine": "id of the machine",
                "procedure": "id of the procedure; empty where several would do",
                "session": "id of the session; empty when none was begun",
                "step": "id of the step; empty when it concerns the whole session",
                "at_utc": f"when, {_TIME}",
                "at_local": _LOCAL,
                "sentence": "what happened, in the language asked for",
                "reason": "why it should be seen",
                "seqs": "the journal rows it is from; the first and the last row of the session "
                "where it concerns the whole of it",
            },
            _deviations,
        ),
        "results": Exported(
            {
                "seq": "the journal row",
                "result": "id of the entry",
                "machine": "id of the machine",
                "barrel": "the head that was sampled",
                "day": "local day of the sample",
                "product": "what was sampled",
                "analysis": "what was looked for",
                "amount": "colony-forming units, with the qualifier, as `< 10`",
                "per": "g or mL",
                "laboratory": "the laboratory",
                "sample": "its own number for the sample",
                "entered_by": "id of who entered it",
                "entered_utc": "when",
                "over": "true or false by the authority named; empty when it cannot be told or "
                "none was named",
            },
            _results,
        ),
    }
)
"""Every table that can be exported, by name."""
