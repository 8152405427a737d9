"""Wearing parts: what each machine has in it, what lies on the shelf, and what to expect."""

from __future__ import annotations

from collections.abc import Callable, Iterator, Sequence

from kiosk.journal.shop_facts import PartsReceived, StockCounted
from kiosk.procedure.load_review import load_schedule
from kiosk.review.parts import next_replacements, wear
from kiosk.review.parts_said import stock_said, wear_said
from kiosk.review.stock import runs_out, stocks
from kiosk.screens.review_desk import Desk
from kiosk.screens.review_looking import LookingTextScreen
from kiosk.screens.review_page import Row
from kiosk.screens.review_timeline import OFF


class PartsScreen(LookingTextScreen):
    """Each wearing part with its age and its due date, and the spare pieces."""

    def heading(self) -> tuple[str, str]:
        return self.words.say("review-parts"), str(self.desk.today())

    def search(self) -> Callable[[Desk], Sequence[Row]]:
        return lambda desk: tuple(_rows(desk))


def _rows(desk: Desk) -> Iterator[Row]:
    shop, words, today = desk.shop, desk.words, desk.today()
    lines = desk.ledger.wearing(practice=desk.practice)
    intervals = load_schedule(library=shop.library).intervals
    worn = wear(lines, shop.site, shop.library, intervals, desk.now())
    likely = next_replacements(worn)
    yield Row(words.say("parts-on-machines" if worn else "parts-none-seen"), "bold")
    for one in sorted(worn, key=lambda one: not (one.worn or one.overdue)):
        look = bool(one.worn or one.overdue)
        mark = f"{OFF} " if look else ""
        yield Row(f"{mark}{desk.machine(one.machine)} · {words.text(one.name)}", "bold")
        spread = likely[one.machine, one.part]
        for told in wear_said(one, spread, words, desk.zone, today, desk.replaced_by):
            yield Row(f"  {told}")
    yield Row()
    yield Row(words.say("parts-on-shelf"), "bold")
    events = shop.journal.shop_events(PartsReceived, StockCounted)
    for kept in stocks(events, lines, shop.site, shop.library, practice=desk.practice):
        kind = words.text(shop.library.kinds[kept.kind].title)
        yield Row(f"{kind} · {words.text(kept.name)}", "bold")
        for told in stock_said(kept, runs_out(kept, worn), words, desk.zone, today):
            yield Row(f"  {told}")
    yield Row()
    yield Row(words.say("parts-how-foretold"))
