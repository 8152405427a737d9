"""What a report rests on: the journal, its head, and how anyone can check both."""

from __future__ import annotations

from collections.abc import Iterator

from kiosk.report.desk import Desk
from kiosk.report.paper import Block, Cell, Heading, Notice, Seqs, Sheet
from kiosk.report.signing import meaning

PAGE = "kiosk/journal/VERIFY.md"
"""The page by which an outsider verifies a journal with nothing of ours."""


def resting(desk: Desk, seqs: Seqs) -> Iterator[Block]:
    """Yield what a signature means, where limits come from, and how to verify.

    `seqs` are rows that the report is from; all from the first to the last are looked at again.
    """
    yield Heading(desk.say("rests-on"), new_page=True)
    yield meaning(desk)
    yield Notice(desk.say("limits-are"))
    yield Notice(desk.say("deviations-are"))
    yield Notice(desk.say("rows-are", column=desk.say("column-rows")))
    yield Heading(desk.say("verify"), 3)
    yield _head(desk)
    if seqs:
        yield _checked(min(seqs), max(seqs), desk)
    yield Notice(desk.say("verify-how", page=PAGE))
    yield Notice(desk.say("verify-not"))
    yield Notice(desk.say("caution"), strong=True)


def _checked(first: int, last: int, desk: Desk) -> Notice:
    bad = desk.rows.first_bad(first, last)
    if bad is None:
        return Notice(desk.say("hashes-agree", first=str(first), last=str(last)))
    return Notice(desk.say("hashes-differ", row=str(bad)), strong=True)


def _head(desk: Desk) -> Sheet:
    last = desk.rows.last()
    pairs = []
    if last is not None:
        pairs += [
            (desk.say("kiosk"), Cell(last.kiosk, (last.seq,))),
            (desk.say("head-row"), Cell(str(last.seq), (last.seq,))),
            (desk.say("head-hash"), Cell(last.hash, (last.seq,), "head")),
            (desk.say("head-time"), Cell(last.utc, (last.seq,))),
        ]
    pairs.append((desk.say("made"), Cell(desk.second(desk.now_utc))))
    return Sheet(tuple(pairs))
