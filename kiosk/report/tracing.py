"""What may have led to the bad results of some days: leads, not proofs."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from contextlib import suppress
from datetime import date
from functools import cache
from typing import Final

from kiosk.journal.shop_facts import PartReplaced
from kiosk.report.desk import Desk, Span
from kiosk.report.paper import Block, Cell, Heading, Notice, Row, Seqs, Table
from kiosk.review.barrels import over
from kiosk.review.results import Entered
from kiosk.review.trace import Suspect, trace
from kiosk.review.trace_said import signs_said
from kiosk.review.trace_walks import walks_before
from kiosk.trade.authorities import Authority, NoSuchLimit, limit_for

_MOST: Final = 6
"""Bad results that are traced in one report, the last ones."""
_SUSPECTS: Final = 5


def traces(span: Span, desk: Desk) -> Iterator[Block]:
    """Yield the trace of each bad result that was sampled in some days.

    Of several from one machine on one day, the one that is most over its limit is traced. Without
    an authority no result is bad.
    """
    who = desk.authority
    if who is None:
        return
    bad = _worst(span, who, desk)
    if not bad:
        return
    yield Heading(desk.say("traces"), level=3)
    yield Notice(desk.words.say("review-trace-lead"), strong=True)
    if len(bad) > _MOST:
        yield Notice(desk.say("traces-more", n=len(bad) - _MOST))
    events, plan_of = cache(desk.journal.events), cache(desk.plan_of)
    replaced = desk.journal.shop_events(PartReplaced)
    for one in bad[-_MOST:]:
        walks = walks_before(one, desk.ledger, events, plan_of, desk.site)
        found = trace(one, desk.results, who, walks, replaced, desk.site)
        of = one.of
        named = f"{desk.barrel(of.machine, of.barrel)}, {desk.kind(of.analysis)}"
        caption = desk.say(
            "trace-caption", day=of.day.isoformat(), what=named, amount=f"{of.amount} / {of.per}",
            first=desk.moment(found.from_utc), last=desk.moment(found.until_utc),
        )  # fmt: skip
        yield _table(f"trace-{one.id}", caption, found.suspects, desk)


def _worst(span: Span, who: Authority, desk: Desk) -> Sequence[Entered]:
    """Return the results to trace, oldest first."""
    found: dict[tuple[date, str], tuple[float, Entered]] = {}
    for one in desk.results:
        of = one.of
        if not span.first <= of.day <= span.last:
            continue
        with suppress(NoSuchLimit):
            if over(one, who):
                most = limit_for(who, of.analysis, of.product).most
                share = float(of.amount.value or 0) / float(most or 1)
                known = found.get((of.day, of.machine))
                if known is None or share > known[0]:
                    found[of.day, of.machine] = share, one
    return [one for _, (_, one) in sorted(found.items(), key=lambda item: item[0])]


def _table(table_id: str, caption: str, suspects: Sequence[Suspect], desk: Desk) -> Table:
    return desk.table(
        id=table_id, caption=caption, empty=desk.words.say("review-no-sign"),
        columns={"begun": 19, "session": 26, "who": 22, "signs": 56},
        rows=(_suspect(one, desk) for one in suspects[:_SUSPECTS] if one.signs),
    )  # fmt: skip


def _suspect(one: Suspect, desk: Desk) -> Row:
    told = "\n".join(signs_said(one, desk.words))
    session = one.session or desk.words.say("review-no-session")
    cells = (desk.moment(one.at_utc), session, desk.people(one.workers) or "–", told)
    seqs: Seqs = ()
    if one.session:
        line = desk.ledger.line(one.session)
        seqs = (line.first_seq, line.last_seq)
    return Row(tuple(map(Cell, cells)), seqs)
