"""Signatures: who signed what and when, and what it means."""

from __future__ import annotations

from collections.abc import Sequence

from kiosk.report.desk import Desk
from kiosk.report.paper import Cell, Notice, Row, Table
from kiosk.review.ledger_lines import Line, Signed, Stood


def signed_cell(line: Line, desk: Desk) -> Cell:
    """Return how a session stands with its supervisor."""
    if line.signed is None:
        return Cell(desk.say("signed-not"))
    return Cell(_in_words(line.signed, desk), (line.signed.seq,))


def _in_words(one: Signed, desk: Desk) -> str:
    name = "signed-off" if one.what is Stood.SIGNED_OFF else "signed-back"
    return desk.say(name, person=desk.person(one.by), at=desk.moment(one.at_utc))


def signings(found: Sequence[Signed], desk: Desk, session: str) -> Table:
    """Return everything that supervisors said about a session, oldest first."""
    return desk.table(
        id=f"signings-{session}", caption=desk.say("signings-caption"),
        columns={"time": 19, "who": 24, "what": 22, "remark": 45},
        rows=(
            Row(
                (
                    Cell(desk.second(one.at_utc)),
                    Cell(desk.person(one.by)),
                    Cell(desk.say("meaning", what=one.what.replace(" ", "-"))),
                    Cell(desk.remark(one.remark)),
                ),
                (one.seq,),
            )
            for one in found
        ),
        empty=desk.say("signed-not"),
    )  # fmt: skip


def meaning(desk: Desk) -> Notice:
    """Return what a signature means, and what it does not.

    Name, time and meaning beside each: 21 CFR 11.50, READ in a copy of its text.
    """
    return Notice(desk.say("signature-means"))
