"""`kiosk parts`: wearing parts, spare parts, and what will run out when."""

from __future__ import annotations

import argparse
import shutil
from contextlib import closing
from pathlib import Path

from kiosk import home
from kiosk.cli.place import Failed, data, kind_of
from kiosk.cli.place import journal as open_journal
from kiosk.cli.place import shop as shop_of
from kiosk.clock import SystemClock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import PartsReceived, ShopEvent, StockCounted
from kiosk.journal.store import Journal
from kiosk.languages.words import languages, words
from kiosk.procedure.model import Part
from kiosk.procedure.site import Site

_MOST_PIECES = 10_000
"""Most pieces that are believed in one entry; our choice."""


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    parts = commands.add_parser(
        "parts", help="wearing parts, spare parts, and what will run out when"
    ).add_subparsers(required=True, metavar="COMMAND")
    listing = parts.add_parser("list", help="when each was replaced, is due, and will run out")
    listing.set_defaults(command=_list)

    received = parts.add_parser("received", help="enter spare parts that came in")
    received.set_defaults(command=_enter, fact=PartsReceived, told="parts-received")
    counted = parts.add_parser("counted", help="enter how many spare parts lie on the shelf")
    counted.set_defaults(command=_enter, fact=StockCounted, told="parts-counted")
    for one in (received, counted):
        one.add_argument("--machine", required=True, help="a machine that the part is for")
        one.add_argument("--part", required=True, help="its id, as o-rings")
        one.add_argument("--count", required=True, type=int, help="single pieces")
        one.add_argument("--by", required=True, help="id of who enters it")
    for one in (listing, received, counted):
        one.add_argument("--language", default="en", choices=languages(), help="of the reader")


def _enter(parsed: argparse.Namespace) -> int:
    folder, site = data()
    kind, part = _part(folder, site, parsed.machine, parsed.part)
    least = 1 if parsed.fact is PartsReceived else 0
    if not least <= parsed.count <= _MOST_PIECES:
        raise Failed(f"--count is {parsed.count}; give {least} to {_MOST_PIECES}.")
    known = [one.id for one in site.people]
    if parsed.by not in known:
        raise Failed(f"--by is '{parsed.by}', who is not in the site file: {', '.join(known)}.")
    fact = parsed.fact(kind, parsed.part, parsed.count, parsed.by, site.practice)
    with home.take(folder), closing(Journal(folder)) as journal:
        at = SystemClock().now()
        journal.append_shop([ShopEvent(at, Evidence(Channel.KEY), fact)])
    said = words(parsed.language)
    print(said.say(parsed.told, count=parsed.count, part=said.text(part.name)))
    return 0


def _part(folder: Path, site: Site, machine: str, part: str) -> tuple[str, Part]:
    """Return the machine's kind and its wearing part. Raises Failed."""
    machines = {one.id: one for one in site.machines}
    if machine not in machines:
        raise Failed(f"'{machine}' is no machine here. There are: {', '.join(machines)}.")
    kind = kind_of(folder, site, machines[machine])
    wears = {name: one for name, one in kind.parts.items() if one.wears}
    if part not in wears:
        raise Failed(f"{machine} has no wearing part '{part}'. There are: {', '.join(wears)}.")
    return kind.id, wears[part]


def _list(parsed: argparse.Namespace) -> int:
    # Imported here, so that the other commands do not wait for it.
    from kiosk.plots.cells import cells, plain
    from kiosk.plots.of_parts import wear as picture
    from kiosk.plots.reader import reader
    from kiosk.procedure.load_review import load_schedule
    from kiosk.review.parts import next_replacements, wear
    from kiosk.review.parts_said import stock_said, wear_said
    from kiosk.review.stock import runs_out, stocks

    folder, site = data()
    said = words(parsed.language)
    look = reader(site, said)
    with closing(open_journal()) as journal:
        shop = shop_of(folder, site, journal)
        now = shop.clock.now().utc
        intervals = load_schedule(library=shop.library).intervals
        with closing(shop.ledger()) as ledger:
            ledger.catch_up()
            lines = ledger.wearing(practice=site.practice)
            worn = wear(lines, site, shop.library, intervals, now)
            who = {
                line: look.replaced_by(line, ledger) for one in worn for line in one.replaced[-1:]
            }
        events = journal.shop_events()
    today = look.day(now)
    likely = next_replacements(worn)
    print(said.say("parts-on-machines"))
    for one in worn:
        print(f"  {look.machine(one.machine)} · {said.text(one.name)}")
        spread = likely[one.machine, one.part]
        for line in wear_said(one, spread, said, look.zone, today, who.__getitem__):
            print(f"    {line}")
    if not worn:
        print(f"  {said.say('parts-none-seen')}")
    print(said.say("parts-on-shelf"))
    for kept in stocks(events, lines, site, shop.library, practice=site.practice):
        print(f"  {said.text(shop.library.kinds[kept.kind].title)} · {said.text(kept.name)}")
        for line in stock_said(kept, runs_out(kept, worn), said, look.zone, today):
            print(f"    {line}")
    print(said.say("parts-how-foretold"))
    drawn = picture(worn, look, now)
    if drawn is not None:
        width = min(100, shutil.get_terminal_size().columns)
        print("", plain(cells(drawn, width, len(worn) + 8)), sep="\n")
    return 0
