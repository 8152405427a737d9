"""A thousand kiosks and one head office: what arrives, how fast, and what goes wrong on the way.

Every kiosk has the same invented day, walked once through the real engine and journaled anew under
each kiosk's own id. Lines are cut at random and the server loses its power while they ship; then
batches are sent twice, and old backups are put back. What is counted is compared on both sides.

Run it with `python -m tests.bench.bench_fleet [KIOSKS]`.
"""

from __future__ import annotations

import random
import shutil
import statistics
import sys
import tempfile
import time
from concurrent.futures import ThreadPoolExecutor
from contextlib import closing
from dataclasses import dataclass
from datetime import date, timedelta
from pathlib import Path

import psycopg

from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.engine.events import Event
from kiosk.fleet import office
from kiosk.fleet.about import about
from kiosk.fleet.connection import Line, connect
from kiosk.fleet.migrate import migrate
from kiosk.fleet.outgoing import Outgoing
from kiosk.fleet.ship import Shipped, ship
from kiosk.journal.shop_facts import ResultEntered, ShopEvent
from kiosk.journal.store import Journal
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.load_review import load_schedule
from tests.fleet.cutting_line import CuttingLine
from tests.fleet.journals import as_rows, send
from tests.fleet.server import Server, why_not
from tests.histories import history, library, site

DATABASE = "fleet_bench"
AT_ONCE = 8
CUT, TWICE, BACKUPS = 0.3, 50, 20
"""Share of connections that are cut; kiosks that send everything twice; backups put back."""


class BadLine(CuttingLine):
    """Cuts some of its connections, after a random share of what a day needs."""

    chance = random.Random(1)
    cut = 0

    def shares(self) -> tuple[int | None, int | None]:
        if self.chance.random() >= CUT:
            return None, None
        self.cut += 1
        return self.chance.randrange(1000, 300_000), None


@dataclass(slots=True)
class Kiosk:
    """One kiosk of the fleet."""

    folder: Path
    address: str
    took: float = 0.0
    """Seconds of the shipment that went through."""
    tries: int = 0


def invented_days(folder: Path, days: int) -> list[list[tuple[str, list[Event]]]]:
    """Walk some days through the real engine; return each day's sessions."""
    made = history(folder, 7, [])
    made.run(date.today() - timedelta(days=days), days)  # noqa: DTZ011
    journal = made.journal
    by_day: dict[str, list[tuple[str, list[Event]]]] = {}
    for session in journal.sessions():
        by_day.setdefault(session[:10], []).append((session, journal.events(session)))
    journal.close()
    return list(by_day.values())


def walk(folder: Path, day: list[tuple[str, list[Event]]], name: str) -> int:
    """Journal a day at one kiosk; return its rows."""
    with closing(Journal(folder)) as journal:
        for session, events in day:
            journal.append(f"{session}-{name}", events)
    return sum(len(events) for _, events in day)


def sample(folder: Path, seed: int) -> int:
    """Journal a kiosk's laboratory results, some of them over the limit; return its rows."""
    chance, at = random.Random(seed), Instant(time.time(), 1.0, "laboratory")
    facts = [
        ResultEntered(
            f"r{day}-{machine.id}", machine.id, "left", f"2026-01-{day:02}", "plain", "total count",
            str(round(chance.lognormvariate(10, 1))), "g", "Sample laboratory (invented)", "", "p1",
            True,
        )
        for day in range(1, 11)
        for machine in site().machines
    ]  # fmt: skip
    with closing(Journal(folder)) as journal:
        journal.append_shop([ShopEvent(at, Evidence(Channel.KEY), fact) for fact in facts])
    return len(facts)


def shipped(one: Kiosk, told: dict[str, object]) -> Shipped:
    """Ship one kiosk's journal, again and again until a line holds."""
    while True:
        one.tries += 1
        begun = time.perf_counter()
        try:
            with closing(connect(one.address)) as line, closing(Outgoing(one.folder)) as journal:
                done = ship(journal, line, told)
        except psycopg.OperationalError:
            time.sleep(0.1)
            continue
        one.took = time.perf_counter() - begun
        return done


def same(fleet: list[Kiosk], admin: Line) -> str:
    """Compare both sides; return how many kiosks have equal counts and heads on both."""
    there = {
        kiosk: (rows, head)
        for kiosk, rows, head in admin.execute(
            "select k.id, count(*), k.head_hash from fleet.kiosk k join fleet.journal j "
            "on j.kiosk = k.id group by k.id, k.head_hash"
        ).fetchall()
    }
    equal = 0
    for one in fleet:
        with closing(Outgoing(one.folder)) as journal:
            last = journal.last()
            assert last is not None
            equal += there.get(last.kiosk) == (last.seq, last.hash)
    return f"{equal} of {len(fleet)} kiosks have equal counts and heads on both sides"


def main(count: int) -> None:
    """Ship a fleet and print the figures."""
    if reason := why_not():
        print(f"not measured: {reason}")
        return
    server, root = Server(), Path(tempfile.mkdtemp(prefix="fleet-kiosks-"))
    try:
        server.begin("shared_buffers = 256MB", "max_wal_size = 2GB")
        run(count, server, root)
    finally:
        server.end()
        shutil.rmtree(root)


def run(count: int, server: Server, root: Path) -> None:
    """Ship, spoil, ship again; print."""
    schedule = load_schedule(library=library())
    told = about(site(), library(), schedule, date.today())  # noqa: DTZ011
    first, second, third = invented_days(root / "invented", 3)[-3:]
    with closing(connect(server.admin(server.database(DATABASE)))) as admin:
        migrate(admin)
        office.put_limits(admin, load_authorities())
        begun = time.perf_counter()
        bad_line = BadLine(server.port)
        fleet = []
        for n in range(count):
            role, password = office.admit(admin, f"s{n}", f"Shop {n} (invented)", "usda")
            address = server.address(role, password, DATABASE, bad_line.port)
            fleet.append(Kiosk(root / f"k{n}", address))
        rows = sum(
            walk(one.folder, first, "a") + sample(one.folder, n) for n, one in enumerate(fleet)
        )
        took = time.perf_counter() - begun
        print(f"made {count} shops and kiosks with {rows} rows in {took:.0f} s")

    begun = time.perf_counter()
    with ThreadPoolExecutor(AT_ONCE) as pool:
        waiting = [pool.submit(shipped, one, told) for one in fleet]
        for waited in waiting[: count // 2]:
            waited.result()
        server.stop("immediate")
        server.start()
        for waited in waiting:
            waited.result()
    took = time.perf_counter() - begun
    print(
        f"shipped over bad lines: {rows} rows in {took:.1f} s, {bad_line.cut} lines cut, one power "
        f"loss of the server, {sum(one.tries for one in fleet)} tries"
    )
    bad_line.close()
    for one in fleet:
        one.address = one.address.replace(f":{bad_line.port}/", f":{server.port}/")

    with closing(connect(server.admin(DATABASE))) as admin:
        print(same(fleet, admin))
        for one in fleet[:BACKUPS]:
            shutil.copytree(one.folder, one.folder.with_suffix(".backup"))
        rows = sum(walk(one.folder, second, "b") for one in fleet)
        begun = time.perf_counter()
        with ThreadPoolExecutor(AT_ONCE) as pool:
            list(pool.map(lambda one: shipped(one, told), fleet))
        took = time.perf_counter() - begun
        alone = sorted(one.took for one in fleet)
        print(
            f"a day offline, whole fleet, {AT_ONCE} at once: {rows} rows in {took:.1f} s, "
            f"{rows / took:.0f} rows/s; one kiosk's day takes {statistics.median(alone):.2f} s "
            f"median beside the others, {alone[-1]:.2f} s longest"
        )
        walk(fleet[-1].folder, third, "c")
        done = shipped(fleet[-1], told)
        print(
            f"one kiosk's day with nothing beside it: {done.taken} rows in {fleet[-1].took:.2f} s"
        )

        known = total = 0
        for one in fleet[:TWICE]:
            batch = as_rows(one.folder)
            with closing(connect(one.address)) as line:
                answer = send(line, batch[0]["kiosk"], batch)
            known, total = known + answer["known"], total + len(batch)
        print(f"sent twice: {known} of {total} rows known, none kept again")
        print(same(fleet, admin))

        named = parted = 0
        for one in fleet[:BACKUPS]:
            old = Kiosk(one.folder.with_suffix(".backup"), one.address)
            named += len(shipped(old, told).troubles)
            new = walk(old.folder, third, "parted")
            parted += shipped(old, told).aside == new
        troubles = dict(
            admin.execute("select kind, count(*) from fleet.trouble group by kind").fetchall()
        )
        print(
            f"{BACKUPS} old backups put back: {named} named; walked on: {parted} forks kept whole "
            f"beside the journal; in the table: {troubles}"
        )
        print(same(fleet, admin))
        figures(admin)


def figures(admin: Line) -> None:
    """Print sizes, and how long the head office's questions take."""
    admin.execute("analyze")
    row = admin.execute(
        "select (select count(*) from fleet.journal), sum(pg_total_relation_size(c.oid)), "
        "sum(pg_indexes_size(c.oid)) from pg_inherits i join pg_class c on c.oid = i.inhrelid "
        "where i.inhparent = 'fleet.journal'::regclass"
    ).fetchone()
    assert row is not None
    rows, size, indexes = row
    print(
        f"{rows} rows at the head office: {size / rows:.0f} bytes/row, index {indexes / rows:.0f}"
    )
    for question in office.QUESTIONS:
        begun = time.perf_counter()
        answer = office.ask(admin, question)
        print(
            f"{question}: {len(answer.rows)} rows in {1000 * (time.perf_counter() - begun):.0f} ms"
        )
    begun = time.perf_counter()
    bad = [one for one in office.bad_rows(admin) if one[2] is not None]
    took = time.perf_counter() - begun
    print(f"every chain checked again there: {rows / took:.0f} rows/s, {len(bad)} bad")


if __name__ == "__main__":
    main(int(sys.argv[1]) if len(sys.argv) > 1 else 1000)
