"""Laboratory results, as they were entered and as an authority judges them."""

from __future__ import annotations

from collections.abc import Iterator, Mapping, Sequence
from datetime import date
from typing import Any

from kiosk.report.desk import Desk, Span
from kiosk.report.paper import Block, Cell, Notice, Row, Table
from kiosk.report.standings import standings
from kiosk.review.barrels import barrels, over
from kiosk.review.results import Entered
from kiosk.trade.authorities import NoSuchLimit, limit_for


def laboratory(span: Span, desk: Desk) -> Iterator[Block]:
    """Yield the results sampled in some days, and the standing on the last of them."""
    rows = {fact["result"]: (seq, fact) for seq, _, fact in desk.rows.shop("ResultEntered")}
    entered = {result: seq for result, (seq, _) in rows.items()}
    sampled = [one for one in desk.results if span.first <= one.of.day <= span.last]
    yield _results(sampled, entered, desk)
    yield from _struck(rows, span, desk)
    if desk.authority is None:
        yield Notice(desk.say("authority-none"))
        return
    who = desk.authority
    args = {"title": who.title, "law": who.law, "source": who.source, "tag": who.tag}
    yield Notice(desk.say("authority", **args))
    yield from standings(barrels(desk.results, who, span.last), entered, span.last, desk)


def _results(found: Sequence[Entered], entered: dict[str, int], desk: Desk) -> Table:
    return desk.table(
        id="results", caption=desk.say("results-caption"),
        columns={
            "day": 14, "barrel": 18, "product": 15, "analysis": 15, "result": 13, "limit": 14,
            "kept": 12, "laboratory": 19,
        },
        rows=(_result(one, (entered[one.id],), desk) for one in found),
        empty=desk.say("results-none"),
    )  # fmt: skip


def _result(one: Entered, seqs: tuple[int, ...], desk: Desk) -> Row:
    of = one.of
    limit, kept, off = "–", desk.say("kept-without"), False
    if desk.authority is not None:
        try:
            found = limit_for(desk.authority, of.analysis, of.product)
            verdict = over(one, desk.authority)
        except NoSuchLimit:
            pass
        else:
            limit, off = f"≤ {found.most:,} / {found.per}", verdict is True
            name = {True: "kept-no", False: "kept-yes", None: "kept-unknown"}[verdict]
            kept = desk.say(name)
    cells = (
        of.day.isoformat(), desk.barrel(of.machine, of.barrel),
        desk.kind(of.product), desk.kind(of.analysis), f"{of.amount} / {of.per}", limit, kept,
        f"{of.laboratory} {of.sample}".strip(),
    )  # fmt: skip
    return Row(tuple(Cell(text) for text in cells), seqs, off=off)


def _struck(
    entered: Mapping[str, tuple[int, dict[str, Any]]], span: Span, desk: Desk
) -> Iterator[Block]:
    """Yield the entries that were struck: they stay to be seen, and count no more."""
    rows = []
    for seq, _, fact in desk.rows.shop("ResultStruck"):
        first, was = entered.get(fact["result"], (0, {}))
        ours = bool(was) and was["practice"] == desk.site.practice
        if ours and span.first <= date.fromisoformat(was["day"]) <= span.last:
            who = desk.person(fact["by"])
            cells = (was["day"], was["machine"], was["amount"], fact["because"], who)
            rows.append(Row(tuple(Cell(text) for text in cells), (first, seq)))
    if rows:
        yield desk.table(
            id="struck", caption=desk.say("struck-caption"),
            columns={"day": 14, "machine": 20, "result": 16, "because": 40, "who": 20},
            rows=rows, empty=desk.say("none"),
        )  # fmt: skip
