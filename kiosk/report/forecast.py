"""How wearing parts and spare parts stand on the day of a report, and what is to be expected."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from datetime import date

from kiosk.journal.shop_facts import PartsReceived, ShopEvent, StockCounted
from kiosk.procedure.load_review import load_schedule
from kiosk.report.desk import Desk
from kiosk.report.paper import Block, Cell, Notice, Row, Seqs
from kiosk.review.ledger_lines import PartLine
from kiosk.review.lifetimes import Spread
from kiosk.review.parts import Wear, next_replacements, wear
from kiosk.review.parts_said import stock_said, wear_said
from kiosk.review.stock import Stock, runs_out, stocks
from kiosk.trade.code_dates import day_of

Numbered = Sequence[tuple[int, ShopEvent]]
"""What was received and counted, each with its row of the journal."""


def forecast(desk: Desk) -> Iterator[Block]:
    """Yield each wearing part and each shelf, with what is likely and how sure that is."""
    practice, today = desk.site.practice, day_of(desk.now_utc, desk.zone)
    lines = desk.ledger.wearing(practice=practice)
    intervals = load_schedule(library=desk.library).intervals
    worn = wear(lines, desk.site, desk.library, intervals, desk.now_utc)
    likely = next_replacements(worn)
    yield desk.table(
        id="wear", caption=desk.say("wear-caption", day=today.isoformat()),
        columns={"machine": 22, "part": 22, "known": 70}, empty=desk.words.say("parts-none-seen"),
        rows=(
            _worn(one, likely[one.machine, one.part], lines, today, desk) for one in worn
        ),
    )  # fmt: skip
    events = desk.journal.numbered_shop_events(PartsReceived, StockCounted)
    shelf = stocks((one for _, one in events), lines, desk.site, desk.library, practice=practice)
    yield desk.table(
        id="shelf", caption=desk.say("shelf-caption", day=today.isoformat()),
        columns={"kind": 22, "part": 22, "known": 70}, empty=desk.say("none"),
        rows=(_shelf(one, events, lines, worn, today, desk) for one in shelf),
    )  # fmt: skip
    yield Notice(desk.words.say("parts-how-foretold"))


def _worn(
    one: Wear, likely: Spread | None, lines: Sequence[PartLine], today: date, desk: Desk
) -> Row:
    def who(line: PartLine) -> str:
        return desk.people(desk.ledger.replaced_by(line))

    told = " ".join(wear_said(one, likely, desk.words, desk.zone, today, who))
    cells = (desk.machine(one.machine), desk.text(one.name, one.part), told)
    first = next(
        line
        for line in lines
        if (line.machine, line.part) == (one.machine, one.part) and line.finding
    )
    seen = [first, *one.replaced, one.seen, *([one.worn] if one.worn else [])]
    seqs = tuple(sorted({line.seq for line in seen}))
    return Row(tuple(map(Cell, cells)), seqs, off=one.worn is not None or one.overdue)


def _shelf(
    one: Stock, events: Numbered, lines: Sequence[PartLine], worn: Sequence[Wear], today: date,
    desk: Desk,
) -> Row:  # fmt: skip
    told = " ".join(stock_said(one, runs_out(one, worn), desk.words, desk.zone, today))
    kind = desk.text(desk.library.kinds[one.kind].title, one.kind)
    cells = (kind, desk.text(one.name, one.part), told)
    seqs = _of_shelf(one, events, lines, desk)
    return Row(tuple(map(Cell, cells)), seqs, off=bool(one.short) or one.none_left_utc is not None)


def _of_shelf(one: Stock, events: Numbered, lines: Sequence[PartLine], desk: Desk) -> Seqs:
    """Return the rows that a shelf is reckoned from: came, counted, taken, not found."""
    machines = {machine.id for machine in desk.site.machines if machine.kind == one.kind}
    found = {
        seq
        for seq, event in events
        if isinstance(event.fact, PartsReceived | StockCounted)
        and (event.fact.kind, event.fact.part) == (one.kind, one.part)
        and event.fact.practice == desk.site.practice
    }
    found |= {
        line.seq
        for line in lines
        if line.machine in machines and line.part == one.part and line.finding not in ("", "good")
    }
    return tuple(sorted(found))
