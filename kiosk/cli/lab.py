"""`kiosk lab`: laboratory results, what they mean, and what may have led to a bad one."""

from __future__ import annotations

import argparse
import sys
from collections.abc import Sequence
from contextlib import closing
from datetime import date, datetime
from pathlib import Path
from zoneinfo import ZoneInfo

from kiosk import home
from kiosk.cli.place import Failed, data, kind_of, person_id
from kiosk.cli.place import journal as open_journal
from kiosk.cli.place import library as library_of
from kiosk.cli.place import shop as shop_of
from kiosk.clock import SystemClock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import PartReplaced, ShopEvent, ShopFact
from kiosk.journal.store import Journal
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.site import Site
from kiosk.review import results as r
from kiosk.review.barrels import Judged, barrels, heading, over
from kiosk.review.result_file import read_csv, sort_out
from kiosk.review.trace import Suspect, trace
from kiosk.review.trace_walks import walks_before
from kiosk.trade.authorities import Authority, NoSuchLimit, authority

_MANY_ROWS = 100_000
"""Rows of a journal whose reading takes long enough to be told of."""


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    lab = commands.add_parser("lab", help="laboratory results and their causes").add_subparsers(
        required=True, metavar="COMMAND"
    )
    adding = lab.add_parser("add", help="enter one result")
    for name in r.COLUMNS:
        adding.add_argument(f"--{name}", required=True)
    for name, usual in r.OPTIONAL.items():
        adding.add_argument(f"--{name}", default=usual)
    adding.set_defaults(command=_add)

    importing = lab.add_parser(
        "import",
        help="enter a file of results",
        description=f"A CSV file in UTF-8 with the columns {', '.join(r.COLUMNS)}; "
        f"{', '.join(r.OPTIONAL)} may be added. Nothing is entered while one row is wrong; rows "
        "that are known already are left out.",
    )
    importing.add_argument("file", type=Path)
    importing.set_defaults(command=_import)

    lab.add_parser("list", help="list the results in force").set_defaults(command=_list)

    striking = lab.add_parser("strike", help="strike a wrong result; enter the right one anew")
    striking.add_argument("result")
    striking.add_argument("--because", required=True, help="name nobody: it is kept for good")
    striking.set_defaults(command=_strike)

    replaced = lab.add_parser("replaced", help="enter a part that was replaced outside a session")
    for name in ("machine", "part", "day"):
        replaced.add_argument(f"--{name}", required=True)
    replaced.add_argument("--remark", default="", help="name nobody: it is kept for good")
    replaced.set_defaults(command=_replaced)

    stands = lab.add_parser("standing", help="where each barrel stands with an authority")
    stands.set_defaults(command=_standing)

    tracing = lab.add_parser("trace", help="the sessions that may have led to a bad result")
    tracing.add_argument("result", nargs="?", help="its id (default: the last one over its limit)")
    tracing.add_argument("--most", type=int, default=5, help="how many sessions to print")
    tracing.set_defaults(command=_trace)

    for writing in (adding, importing, striking, replaced):
        writing.add_argument("--by", required=True, help="id of who enters it")
    for reading in (stands, tracing):
        reading.add_argument(
            "--authority", required=True, help="its id, as usda; no default is taken"
        )


# Entering.


def _today(site: Site) -> date:
    return datetime.now(ZoneInfo(site.time_zone)).date()


def _heads(folder: Path, site: Site) -> dict[str, tuple[str, ...]]:
    return r.heads_of(site, library_of(folder, site))


def _write(journal: Journal, facts: Sequence[ShopFact]) -> None:
    at = SystemClock().now()
    journal.append_shop([ShopEvent(at, Evidence(Channel.KEY), fact) for fact in facts])


def _enter(name: str, rows: dict[int, r.Sample], by: str) -> int:
    folder, site = data()
    by = person_id(site, by)
    with home.take(folder), closing(Journal(folder)) as journal:
        known = r.results(journal.shop_events(*r.FACTS), practice=site.practice)
        sorted_out = sort_out(name, rows, known)
        facts = [r.entry(one, by, practice=site.practice) for one in sorted_out.new]
        if facts:
            _write(journal, facts)
    for fact, sample in zip(facts, sorted_out.new, strict=True):
        print(f"{fact.result}  {sample}")
    for sample in sorted_out.again:
        print(f"known already, not entered again: {sample}")
    return 0


def _add(parsed: argparse.Namespace) -> int:
    folder, site = data()
    cells = {name: str(getattr(parsed, name)) for name in (*r.COLUMNS, *r.OPTIONAL)}
    read = r.read_row(cells, _heads(folder, site), _today(site))
    if isinstance(read, list):
        raise Failed(
            "\n".join(f"--{field}: {what}. To mend: {mend}." for field, what, mend in read)
        )
    return _enter("this result", {0: read}, parsed.by)


def _import(parsed: argparse.Namespace) -> int:
    folder, site = data()
    rows = read_csv(parsed.file, _heads(folder, site), _today(site))
    return _enter(str(parsed.file), rows, parsed.by)


def _strike(parsed: argparse.Namespace) -> int:
    folder, site = data()
    by = person_id(site, parsed.by)
    with home.take(folder), closing(open_journal()) as journal:
        known = r.results(journal.shop_events(*r.FACTS), practice=site.practice)
        try:
            _write(journal, [r.strike(known, parsed.result, parsed.because, by)])
        except r.NoSuchResult as error:
            raise Failed(str(error)) from error
    print(f"Struck: {parsed.result}. The entry stays in the journal and counts no more.")
    return 0


def _replaced(parsed: argparse.Namespace) -> int:
    folder, site = data()
    machines = {one.id: one for one in site.machines}
    if parsed.machine not in machines:
        raise Failed(f"'{parsed.machine}' is no machine here. There are: {', '.join(machines)}.")
    kind = kind_of(folder, site, machines[parsed.machine])
    wears = [name for name, part in kind.parts.items() if part.wears]
    if parsed.part not in wears:
        known = ", ".join(wears)
        raise Failed(f"{parsed.machine} has no wearing part '{parsed.part}'. There are: {known}.")
    try:
        day = date.fromisoformat(parsed.day)
    except ValueError as error:
        raise Failed(f"'{parsed.day}' is no day. Write it as 2026-11-25.") from error
    if day > _today(site):
        raise Failed(f"{day} is still to come. Look at the date.")
    fact = PartReplaced(
        parsed.machine,
        parsed.part,
        day.isoformat(),
        person_id(site, parsed.by),
        parsed.remark,
        site.practice,
    )
    with home.take(folder), closing(Journal(folder)) as journal:
        _write(journal, [fact])
    print(f"Entered: {parsed.part} of {parsed.machine} replaced on {day}.")
    return 0


# Reading.


def _known(journal: Journal, site: Site) -> tuple[r.Entered, ...]:
    found = r.results(journal.shop_events(*r.FACTS), practice=site.practice)
    if not found:
        raise Failed("No result has been entered yet. 'kiosk lab import FILE' enters them.")
    return found


def _authority(name: str) -> Authority:
    try:
        return authority(load_authorities(), name)
    except NoSuchLimit as error:
        raise Failed(str(error)) from error


def _list(_: argparse.Namespace) -> int:
    site = data()[1]
    with closing(open_journal()) as journal:
        for one in _known(journal, site):
            print(f"{one.id}  {one.of}  ({one.of.laboratory} {one.of.sample}; {one.by})")
    return 0


def _standing(parsed: argparse.Namespace) -> int:
    _, site = data()
    who = _authority(parsed.authority)
    with closing(open_journal()) as journal:
        known = _known(journal, site)
    judged = barrels(known, who, _today(site))
    print(f"{who.title}, {who.law} ({who.tag})")
    for one in judged:
        print(*_told(one), sep="\n")
    return 0 if all(one.state in ("clear", "no results") for one in judged) else 1


def _told(one: Judged) -> list[str]:
    limits = ", ".join(f"{limit.most:,} per {limit.per}" for limit in one.limits) or "no limit"
    told = [f"{one.of.machine} {one.of.barrel}, {one.of.analysis} ({limits}): {one.state}"]
    if one.standing is not None:
        told.append(f"  {one.standing.english}")
        if one.standing.resample is not None:
            first, last = (date.fromordinal(day) for day in one.standing.resample)
            told.append(f"  Additional sample: from {first} to {last}.")
    head = heading(one)
    told.append(f"  Trend: {head if isinstance(head, str) else head.english}")
    told += [f"  Left out {lost.id}: {why}." for lost, why in one.left_out]
    return told


def _trace(parsed: argparse.Namespace) -> int:
    folder, site = data()
    who = _authority(parsed.authority)
    with closing(open_journal()) as journal:
        known = _known(journal, site)
        shop = shop_of(folder, site, journal)
        result = _chosen(parsed.result, known, who)
        with closing(shop.ledger()) as ledger:
            ledger.catch_up(_reading)
            walked = walks_before(result, ledger, journal.events, shop.plan_of, site)
        events = journal.shop_events(PartReplaced)
    try:
        found = trace(result, known, who, walked, events, site)
    except NoSuchLimit as error:
        raise Failed(str(error)) from error
    zone = ZoneInfo(site.time_zone)
    verdict = {True: "over", False: "within", None: "not sure to be over"}[found.over]
    print(f"{result.id}  {result.of}: {verdict} the limit of {found.limit.most:,}.")
    since, until = (datetime.fromtimestamp(at, zone) for at in (found.from_utc, found.until_utc))
    why = "the last good result" if found.good else "no good result in that time"
    print(
        f"Looked at from {since:%Y-%m-%d %H:%M} ({why}) to {until:%Y-%m-%d %H:%M} (the latest that "
        f"a sample is taken on its day): {len(found.suspects)} sessions and missed nights."
    )
    for place, one in enumerate(found.suspects[: parsed.most], 1):
        print(*_suspected(place, one, zone), sep="\n")
    print(found.statement)
    return 0


def _reading(done: int, of: int) -> None:
    if of > _MANY_ROWS:
        print(f"Reading the journal: {done:,} of {of:,} rows", file=sys.stderr, flush=True)


def _suspected(place: int, one: Suspect, zone: ZoneInfo) -> list[str]:
    at = datetime.fromtimestamp(one.at_utc, zone)
    name = f"{one.session} by {', '.join(one.workers)}" if one.session else "no session"
    told = [f"{place}. {at:%Y-%m-%d %H:%M}  {name}  (score {one.score:.2f})"]
    told += [f"   {sign.clue}: {sign.told}" for sign in one.signs]
    return told if one.signs else [*told, "   nothing speaks against it"]


def _chosen(name: str | None, known: Sequence[r.Entered], who: Authority) -> r.Entered:
    if name is not None:
        found = next((one for one in known if one.id == name), None)
        if found is None:
            raise Failed(f"No result is called '{name}'. 'kiosk lab list' names them.")
        return found
    for one in reversed(known):
        try:
            if over(one, who):
                return one
        except NoSuchLimit:
            continue
    raise Failed(f"No result is over a limit of {who.title}. Name one to trace it all the same.")
