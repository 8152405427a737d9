"""An invented shop of ten days to report on, a page read back, and the journal by plain SQL."""

from __future__ import annotations

import json
import sqlite3
from collections.abc import Iterator
from contextlib import contextmanager
from dataclasses import dataclass, field, replace
from datetime import date, timedelta
from html.parser import HTMLParser
from pathlib import Path
from typing import Any

from kiosk.clock import SystemClock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import ResultStruck, SentBack, ShopEvent
from kiosk.journal.store import FILE, Journal
from kiosk.languages.words import words
from kiosk.people.beside import Beside
from kiosk.procedure.load_review import load_deviation_rules
from kiosk.procedure.site import Site
from kiosk.report.desk import Desk
from kiosk.report.rows import Rows
from kiosk.review.results import results
from kiosk.review.trace import closing as closing_time
from kiosk.shop import Shop
from tests.histories import FIRST, history, library, usda
from tests.histories import site as demo_site

DAYS = 10
LAST = FIRST + timedelta(days=DAYS - 1)
NAME = "안미나"
REMARK = '=cmd|"/c"!A1 <script>alert(1)</script> 다시 확인'


def site() -> Site:
    """The demo's shop, with a worker whose name is written in Hangul."""
    people = tuple(replace(x, name=NAME) if x.id == "p1" else x for x in demo_site().people)
    return replace(demo_site(), people=people)


def make(folder: Path) -> None:
    """Invent the days, send a session back with a remark, and strike a result."""
    made = history(folder, 3, [])
    made.run(FIRST, DAYS)
    journal = made.journal
    beside = Beside(folder)
    now = SystemClock().now()
    at = replace(now, utc=closing_time(site(), LAST) + 7200)
    facts = (
        SentBack(journal.sessions()[-1], "p4", beside.keep(REMARK, "p4", at.utc)),
        ResultStruck(made.made.results[0], "wrong head", "p4"),
    )
    journal.append_shop([ShopEvent(at, Evidence(Channel.KEY), fact) for fact in facts])
    beside.close()
    journal.close()


@contextmanager
def desk(folder: Path, language: str = "en", *, judged: bool = True) -> Iterator[Desk]:
    journal = Journal(folder)
    shop = Shop(site(), library(), journal, SystemClock(), folder)
    ledger, rows = shop.ledger(), Rows(journal.file)
    ledger.catch_up()
    yield Desk(
        site=shop.site, library=library(), rules=load_deviation_rules(), ledger=ledger, rows=rows,
        journal=journal, plan_of=shop.plan_of, beside=shop.beside,
        results=results(journal.shop_events(), practice=True), authority=usda() if judged else None,
        words=words(language), now_utc=closing_time(site(), LAST) + 86_400,
    )  # fmt: skip
    shop.beside.close()
    rows.close()
    ledger.close()
    journal.close()


def sql(folder: Path, query: str, *args: Any) -> list[tuple[Any, ...]]:
    with sqlite3.connect(folder / FILE) as db:
        found = db.execute(query, args).fetchall()
    db.close()
    return found


def facts(folder: Path, *kinds: str) -> dict[int, dict[str, Any]]:
    """Return the facts of some kinds by their row."""
    marks = ", ".join("?" * len(kinds))
    query = f"select seq, body from journal where kind in ({marks}) order by seq"
    return {seq: json.loads(body)["fact"] for seq, body in sql(folder, query, *kinds)}


@dataclass
class Line:
    """A row of a table as it stands on the page."""

    seqs: list[int]
    cells: list[str] = field(default_factory=list)


class Page(HTMLParser):
    """A page read back: its tables by id, and its counted figures by key."""

    def __init__(self, text: str) -> None:
        super().__init__()
        self.tables: dict[str, list[Line]] = {}
        self.keys: dict[str, tuple[str, list[int]]] = {}
        self.said: list[str] = []
        self.tags: set[str] = set()
        self._table = self._key = ""
        self._open = False
        self.feed(text)

    def handle_starttag(self, tag: str, attrs: list[tuple[str, str | None]]) -> None:
        given = {name: value or "" for name, value in attrs}
        self.tags.add(tag)
        seqs = [int(one) for one in given.get("data-seq", "").split()]
        if tag == "table":
            self._table = given["id"]
            self.tables[self._table] = []
        elif tag == "tr" and self._table:
            self.tables[self._table].append(Line(seqs))
        elif tag == "td":
            self.tables[self._table][-1].cells.append("")
            self._open = True
        if "data-key" in given:
            self._key = given["data-key"]
            self.keys[self._key] = ("", seqs)

    def handle_endtag(self, tag: str) -> None:
        if tag == "table":
            self.tables[self._table].pop(0)
            self._table = ""
        if tag == "td":
            self._open = False
        if tag in ("td", "dd", "span"):
            self._key = ""

    def handle_data(self, data: str) -> None:
        self.said.append(data)
        if self._open:
            self.tables[self._table][-1].cells[-1] += data
        if self._key:
            text, seqs = self.keys[self._key]
            self.keys[self._key] = (text + data, seqs)


def number(text: str) -> str:
    """Return the number that a counted figure says."""
    return text.split()[0]


ONE_DAY = date(2026, 9, 5)
