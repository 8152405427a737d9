"""How long a report takes with ten years in the journal.

Run it with `python -m tests.bench.bench_report FOLDER [YYYY-MM]`, on the folder of an invented
history as `tests.bench.bench_review` makes it. The month is the last whole one where none is named.
"""

from __future__ import annotations

import re
import sys
import time
from contextlib import closing
from datetime import date, datetime, timedelta
from pathlib import Path

from kiosk.cli.place import shop as shop_of
from kiosk.home import SITE_FILE
from kiosk.journal.shop_facts import ResultEntered, ResultStruck
from kiosk.journal.store import Journal
from kiosk.languages.words import words
from kiosk.procedure.load_review import load_deviation_rules
from kiosk.procedure.site import load_site
from kiosk.report.as_html import as_html
from kiosk.report.as_pdf import as_pdf
from kiosk.report.desk import Desk
from kiosk.report.fonts import font_files
from kiosk.report.paper import Paper
from kiosk.report.papers import day_paper, month_paper, session_paper
from kiosk.report.rows import Rows
from kiosk.review.results import results
from tests.histories import usda


class Clock:
    """Prints how long each part took, by the wall and by this process."""

    def __init__(self) -> None:
        self.begun, self.used = time.perf_counter(), time.process_time()

    def tell(self, what: str) -> None:
        wall, used = time.perf_counter() - self.begun, time.process_time() - self.used
        print(f"{what}: {wall:.2f} s, of which {used:.2f} s at work")
        self.begun, self.used = time.perf_counter(), time.process_time()


def main(folder: Path, month: str) -> None:
    """Print all figures."""
    clock = Clock()
    with closing(Journal(folder)) as journal:
        shop = shop_of(folder, load_site(folder / SITE_FILE), journal)
        with closing(shop.ledger()) as ledger, closing(Rows(journal.file)) as rows:
            clock.tell("open site, library, journal and ledger")
            print(f"{ledger.catch_up()} sessions read")
            clock.tell("catch up")
            last = ledger.lines(practice=True, limit=1)[0]
            at = Desk(
                site=shop.site, library=shop.library, rules=load_deviation_rules(), ledger=ledger,
                rows=rows, journal=journal, plan_of=shop.plan_of, beside=shop.beside,
                results=results(
                    journal.shop_events(ResultEntered, ResultStruck), practice=True
                ),
                authority=usda(), words=words("ko"), now_utc=last.last_utc + 8 * 3600,
            )  # fmt: skip
            clock.tell(f"read {len(at.results):,} laboratory results")
            first = _first(month, at.day_of(last.begun_utc))
            _write(month_paper(first.year, first.month, at), f"month {first:%Y-%m}", clock)
            _write(day_paper(first, at), f"day {first}", clock)
            _write(session_paper(last.session, at), f"session {last.session}", clock)


def _first(month: str, today: date) -> date:
    if month:
        return date.fromisoformat(f"{month}-01")
    return (today.replace(day=1) - timedelta(days=1)).replace(day=1)


def _write(paper: Paper, name: str, clock: Clock) -> None:
    clock.tell(f"{name}: gather")
    page = as_html(paper)
    clock.tell(f"{name}: page of {len(page) / 1e6:.1f} MB, {page.count('<tr'):,} rows")
    made = datetime.now().astimezone()
    printed = as_pdf(paper, made, font_files(paper.language))
    pages = len(re.findall(rb"/Type /Page\b", printed))
    clock.tell(f"{name}: print of {len(printed) / 1e6:.1f} MB, {pages} pages")


if __name__ == "__main__":
    main(Path(sys.argv[1]), sys.argv[2] if len(sys.argv) > 2 else "")
