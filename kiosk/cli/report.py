"""`kiosk report` and `kiosk export`: what was recorded, on paper and as tables."""

from __future__ import annotations

import argparse
import re
import sqlite3
import sys
from collections.abc import Callable, Iterator
from contextlib import closing, contextmanager
from dataclasses import replace
from datetime import date, datetime
from pathlib import Path
from typing import TYPE_CHECKING

from rich.console import Console
from rich.progress import BarColumn, Progress, TextColumn, TimeElapsedColumn

from kiosk.cli.place import Failed, data
from kiosk.cli.place import journal as open_journal
from kiosk.cli.place import shop as shop_of
from kiosk.journal.store import Journal
from kiosk.languages.words import languages, words
from kiosk.procedure.site import Site
from kiosk.trade.authorities import Authority, NoSuchLimit, authority

if TYPE_CHECKING:
    from kiosk.report.desk import Desk, Span
    from kiosk.report.paper import Paper
    from kiosk.review.results import Entered

_MONTH = re.compile(r"(\d{4})-(\d{2})")
_YEARS = range(2001, 2200)
_NO_PDF = (
    "No PDF: it needs the extra 'paper'. Install it with: pip install \"brushdown[paper]\". "
    "The page in HTML is whole; a browser prints it."
)
_READING = "reading the journal"
_TABLES = ("sessions", "readings", "events", "deviations", "results")


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the commands."""
    report = commands.add_parser("report", help="write a report to print: HTML and PDF")
    kinds = report.add_subparsers(required=True, metavar="KIND")

    session = kinds.add_parser("session", help="one session, step by step")
    session.add_argument("session", help="its id; 'kiosk log list' names them")
    session.set_defaults(paper=_session)
    day = kinds.add_parser("day", help="one business day")
    day.add_argument("day", type=_day, metavar="DATE", help="as 2026-11-25")
    day.set_defaults(paper=_one_day)
    month = kinds.add_parser("month", help="a month: figures, and all that needs eyes")
    month.add_argument("month", help="as 2026-11")
    month.set_defaults(paper=_month)
    folder = kinds.add_parser("folder", help="an inspector's folder of some days")
    folder.add_argument("first", type=_day, metavar="FROM")
    folder.add_argument("last", type=_day, metavar="UNTIL")
    folder.add_argument("--steps", action="store_true", help="with every session step by step")
    folder.set_defaults(paper=_folder)
    for one in (session, day, month, folder):
        one.set_defaults(command=_report)
        _shared(one)

    export = commands.add_parser(
        "export", help="write the records as CSV or JSON Lines, one file for each table"
    )
    export.add_argument(
        "tables", nargs="*", metavar="TABLE", help=f"{', '.join(_TABLES)} (default: all)"
    )
    form = export.add_mutually_exclusive_group(required=True)
    form.add_argument("--csv", action="store_true", help="for spreadsheets (RFC 4180, UTF-8)")
    form.add_argument("--jsonl", action="store_true", help="for programs (JSON Lines)")
    export.add_argument("--from", dest="first", type=_day, metavar="DATE", help="default: all")
    export.add_argument("--until", dest="last", type=_day, metavar="DATE", help="default: today")
    _shared(export)
    export.set_defaults(command=_export)


def _shared(parser: argparse.ArgumentParser) -> None:
    parser.add_argument("--language", default="en", choices=languages(), help="of the reader")
    parser.add_argument("--authority", help="by whose limits results are judged, as usda")
    parser.add_argument("--into", type=Path, default=Path(), help="folder (default: this one)")


def _day(text: str) -> date:
    try:
        day = date.fromisoformat(text)
    except ValueError:
        raise argparse.ArgumentTypeError(f"'{text}' is no day; write it as 2026-11-25") from None
    if day.year not in _YEARS:
        raise argparse.ArgumentTypeError(f"{day} cannot be; look at the year")
    return day


# Reports.


def _report(parsed: argparse.Namespace) -> int:
    from kiosk.report.as_html import as_html
    from kiosk.report.fonts import font_files

    make: Callable[[argparse.Namespace, Desk], Paper] = parsed.paper
    with _bar() as bar:
        work = bar.add_task(_READING, total=4)

        def tell(done: int, of: int) -> None:
            bar.update(work, description=f"{_READING}: {done} of {of} sessions")

        with _desk(parsed, tell) as desk:
            bar.update(work, advance=1, description="gathering")
            paper = make(parsed, desk)
            made = datetime.fromtimestamp(int(desk.now_utc), desk.zone)
        bar.update(work, advance=1, description="writing the page")
        parsed.into.mkdir(parents=True, exist_ok=True)
        page = parsed.into / f"{paper.name}.html"
        page.write_text(as_html(paper), "utf-8")
        bar.update(work, advance=1, description="printing")
        fonts, file = font_files(paper.language), parsed.into / f"{paper.name}.pdf"
        if fonts:
            from kiosk.report.as_pdf import as_pdf

            file.write_bytes(as_pdf(paper, made, fonts))
        bar.update(work, advance=1)
    print(page)
    if not fonts:
        print(_NO_PDF, file=sys.stderr)
    else:
        print(file)
    return 0


def _bar() -> Progress:
    """Return a bar for the parts of a report, shown where somebody looks on."""
    return Progress(
        TextColumn("{task.description}"), BarColumn(), TimeElapsedColumn(),
        console=Console(stderr=True), transient=True, disable=not sys.stderr.isatty(),
    )  # fmt: skip


def _session(parsed: argparse.Namespace, desk: Desk) -> Paper:
    from kiosk.report.papers import session_paper

    try:
        return session_paper(parsed.session, desk)
    except KeyError as error:
        raise Failed(
            f"No session is called '{parsed.session}'. 'kiosk log list' names them."
        ) from error


def _one_day(parsed: argparse.Namespace, desk: Desk) -> Paper:
    from kiosk.report.papers import day_paper

    return day_paper(parsed.day, desk)


def _month(parsed: argparse.Namespace, desk: Desk) -> Paper:
    from kiosk.report.papers import month_paper

    found = _MONTH.fullmatch(parsed.month)
    if found is None or int(found[2]) not in range(1, 13) or int(found[1]) not in _YEARS:
        raise Failed(f"'{parsed.month}' is no month. Write it as 2026-11.")
    return month_paper(int(found[1]), int(found[2]), desk)


def _folder(parsed: argparse.Namespace, desk: Desk) -> Paper:
    from kiosk.report.papers import folder_paper

    if parsed.first > parsed.last:
        raise Failed(f"{parsed.first} lies after {parsed.last}. Swap the two.")
    return folder_paper(parsed.first, parsed.last, desk, steps=parsed.steps)


# Tables.


def _export(parsed: argparse.Namespace) -> int:
    from kiosk.report.export import TABLES, write_csv, write_jsonl

    for name in parsed.tables:
        if name not in TABLES:
            raise Failed(f"No table is called '{name}'. There are: {', '.join(TABLES)}.")
    parsed.into.mkdir(parents=True, exist_ok=True)
    with _desk(parsed) as desk:
        span = _span(parsed, desk)
        for name in parsed.tables or TABLES:
            table = TABLES[name]
            records = table.records(span, desk)
            file = parsed.into / f"{name}.{'csv' if parsed.csv else 'jsonl'}"
            if parsed.csv:
                count = write_csv(records, table.columns, file)
            else:
                count = write_jsonl(records, file)
            print(f"{file}: {count}")
    return 0


def _span(parsed: argparse.Namespace, desk: Desk) -> Span:
    """Return the days asked for; without them, all that the journal has, by whatever clock."""
    ends = desk.rows.ends()
    if ends is None:
        raise Failed("The journal has no row yet: nothing was walked.")
    begun, ended = (desk.day_of(datetime.fromisoformat(end).timestamp()) for end in ends)
    first, last = parsed.first or begun, parsed.last or ended
    if first > last:
        raise Failed(f"{first} lies after {last}. Swap the two.")
    return desk.span(first, last)


# What both are made from.


@contextmanager
def _desk(
    parsed: argparse.Namespace, tell: Callable[[int, int], None] | None = None
) -> Iterator[Desk]:
    """Open the records of the site, the ledger caught up. Raises Failed."""
    from kiosk.languages.signed import still_drafted
    from kiosk.people.beside import BesideFailed
    from kiosk.procedure.load_review import load_deviation_rules
    from kiosk.report.desk import Desk
    from kiosk.report.rows import Rows
    from kiosk.review.ledger import LedgerFailed

    who = _authority(parsed.authority)
    folder, site = data()
    try:
        with closing(open_journal()) as journal:
            shop = shop_of(folder, site, journal)
            rules = load_deviation_rules()
            left = still_drafted(rules.drafted, shop.library, folder)
            with (
                closing(shop.ledger()) as ledger,
                closing(shop.beside) as beside,
                closing(Rows(journal.file)) as rows,
            ):
                ledger.catch_up(tell or _tell)
                yield Desk(
                    site=site, library=shop.library, rules=replace(rules, drafted=left),
                    ledger=ledger, rows=rows, journal=journal, plan_of=shop.plan_of, beside=beside,
                    results=_results(journal, site), authority=who, words=words(parsed.language),
                    now_utc=shop.clock.now().utc,
                )  # fmt: skip
    except (LedgerFailed, BesideFailed, sqlite3.Error) as error:
        raise Failed(str(error)) from error


def _results(journal: Journal, site: Site) -> tuple[Entered, ...]:
    from kiosk.journal.shop_facts import ResultEntered, ResultStruck
    from kiosk.review.results import results

    return results(journal.shop_events(ResultEntered, ResultStruck), practice=site.practice)


def _tell(done: int, of: int) -> None:
    """Say how far the reading is, where somebody looks on."""
    if sys.stderr.isatty():
        end = "\n" if done == of else ""
        print(f"\r{_READING}: {done} of {of} sessions", end=end, file=sys.stderr, flush=True)


def _authority(name: str | None) -> Authority | None:
    from kiosk.procedure.authorities import load_authorities

    try:
        return None if name is None else authority(load_authorities(), name)
    except NoSuchLimit as error:
        raise Failed(str(error)) from error
