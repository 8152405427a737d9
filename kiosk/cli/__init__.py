"""The command `kiosk`."""

from __future__ import annotations

import argparse
import sqlite3
import sys
from collections.abc import Callable, Sequence
from contextlib import closing
from dataclasses import replace
from pathlib import Path
from typing import Final

from kiosk import home
from kiosk.cli import (
    calc,
    check,
    crew,
    fleet,
    history,
    lab,
    log,
    parts,
    people,
    report,
    review,
    serve,
    setup,
    ship,
    texts,
    voice,
)
from kiosk.cli.board import open_board
from kiosk.cli.keeping import verdict_line
from kiosk.cli.place import Failed, data, demo_folder, demo_site
from kiosk.cli.place import library as library_of
from kiosk.cli.place import shop as shop_of
from kiosk.clock import LeapingClock
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.keys import NoKey
from kiosk.journal.store import Journal, JournalFailed
from kiosk.languages.signed import still_drafted
from kiosk.procedure.fault import FaultyFile, harmless
from kiosk.procedure.site import Person, load_site
from kiosk.shop import Shop

_DAMAGED: Final = (
    "the database cannot be read. 'kiosk log verify' tells what is wrong with the journal, and "
    "'kiosk log restore' goes on with a backup of it"
)


def main(arguments: Sequence[str] | None = None) -> int:
    """Run the command; return its exit status: 0 done, 1 failed, 2 wrong words."""
    parsed = _parser().parse_args(arguments)
    command: Callable[[argparse.Namespace], int] = parsed.command
    try:
        return command(parsed)
    except (Failed, FaultyFile, JournalFailed, UnknownEvent, NoKey, home.InUse, OSError) as error:
        print(*map(harmless, str(error).split("\n")), sep="\n", file=sys.stderr)
        return 1
    except (sqlite3.Error, UnicodeDecodeError) as error:
        print(f"{harmless(str(error))}: {_DAMAGED}", file=sys.stderr)
        return 1
    except KeyboardInterrupt:
        return 130


def _parser() -> argparse.ArgumentParser:
    parser = argparse.ArgumentParser(
        prog="kiosk",
        description="Walk a worker through closing and opening a frozen-dessert freezer.",
        epilog="The data folder is named by KIOSK_HOME. The kiosk guides and records; it is no "
        "substitute for lockout, the machine's manual or the product label.",
    )
    commands = parser.add_subparsers(required=True, metavar="COMMAND")

    run = commands.add_parser("run", help="open the board of this site")
    run.set_defaults(command=_run)
    demo = commands.add_parser("demo", help="open the board of an invented shop")
    demo.set_defaults(command=_demo)
    crew.add(demo)
    for one in (run, demo):
        one.add_argument("--silent", action="store_true", help="open no speaker")
        one.add_argument("--deaf", action="store_true", help="open no microphone")

    rehearse = commands.add_parser(
        "rehearse", help="walk a whole procedure with a simulated worker, and no screen"
    )
    rehearse.add_argument("procedure", help="its id, as close-twin-gravity")
    rehearse.add_argument("--language", default="en", help="language of the worker (default: en)")
    rehearse.add_argument("--by", choices=("voice", "touch"), default="voice")
    rehearse.add_argument("--machine", help="machine id (default: the first one of the kind)")
    rehearse.set_defaults(command=_rehearse)

    check.add(commands)

    draw = commands.add_parser(
        "draw", help="write a procedure as a picture and as a sheet for the wall in each language"
    )
    draw.add_argument("procedure", nargs="?", help="its id, as close-twin-gravity")
    draw.add_argument(
        "--quick", action="store_true", help="write the sheet of what can be said instead"
    )
    draw.add_argument(
        "--parts", action="store_true", help="write the drawings of all parts and places instead"
    )
    draw.add_argument("--machine", help="machine id (default: the first one of the kind)")
    draw.add_argument("--into", type=Path, default=Path(), help="folder (default: this one)")
    draw.set_defaults(command=_draw)

    for group in (
        log,
        calc,
        voice,
        lab,
        parts,
        history,
        people,
        report,
        review,
        serve,
        setup,
        ship,
        fleet,
        texts,
    ):
        group.add(commands)
    return parser


# The board.


def _run(parsed: argparse.Namespace) -> int:
    folder = home.home_folder()
    site_file = folder / home.SITE_FILE
    if not site_file.exists() and not setup.set_up(folder, silent=parsed.silent, deaf=parsed.deaf):
        return 0
    site = load_site(site_file)
    return open_board(folder, site, silent=parsed.silent, deaf=parsed.deaf)


def _demo(parsed: argparse.Namespace) -> int:
    if parsed.crew or parsed.record:
        return crew.show(parsed)
    return open_board(demo_folder(), demo_site(), silent=parsed.silent, deaf=parsed.deaf)


# The rehearsal.


def _rehearse(parsed: argparse.Namespace) -> int:
    from kiosk.rehearsal.stage import rehearse

    folder, site = data()
    with home.take(folder), closing(Journal(folder)) as journal:
        shop = shop_of(folder, replace(site, practice=True), journal)
        shop.clock = LeapingClock(shop.clock)
        machine = parsed.machine or _machine_for(shop, parsed.procedure)
        worker = next(
            (one for one in site.people if one.language == parsed.language),
            Person(id="rehearsal", name="Rehearsal", language=parsed.language),
        )
        done = rehearse(shop, machine, parsed.procedure, worker, parsed.by, print)
        verdict = journal.verify()
        print(verdict_line(verdict.rows, verdict.head, verdict.bad_seq, verdict.what))
        return 0 if done and verdict.whole else 1


def _machine_for(shop: Shop, procedure_id: str) -> str:
    procedure = shop.library.procedures.get(procedure_id)
    if procedure is None:
        known = ", ".join(shop.library.procedures)
        raise Failed(f"No procedure is called '{procedure_id}'. There are: {known}.")
    found = [one.id for one in shop.site.machines if one.kind == procedure.machine_kind]
    if not found:
        raise Failed(f"The site has no machine of the kind '{procedure.machine_kind}'.")
    return found[0]


# The drawings.


def _draw(parsed: argparse.Namespace) -> int:
    from kiosk.drawing.write import CannotDraw, draw, draw_parts, draw_quick

    folder, site = data()
    if parsed.quick:
        library = library_of(folder, site)
        tags = {tag for one in library.procedures.values() for tag in one.drafted}
        drafted = still_drafted(tags, library, folder)
        try:
            written = draw_quick(library.common.problems, site.languages, drafted, parsed.into)
        except CannotDraw as error:
            raise Failed(str(error)) from error
        print(*written, sep="\n")
        return 0
    if parsed.parts:
        library = library_of(folder, site)
        kinds = {one.kind for one in site.machines}
        try:
            written = draw_parts(library, kinds, site.languages, parsed.into)
        except CannotDraw as error:
            raise Failed(str(error)) from error
        print(*written, sep="\n")
        return 0
    if parsed.procedure is None:
        raise Failed("Name a procedure, as close-twin-gravity, or ask for --quick or --parts.")
    with closing(Journal(folder)) as journal:
        shop = shop_of(folder, site, journal)
        machine = parsed.machine or _machine_for(shop, parsed.procedure)
        plan = shop.fresh(machine, parsed.procedure).plan
    try:
        written = draw(plan, site.languages, parsed.into)
    except CannotDraw as error:
        raise Failed(str(error)) from error
    print(*written, sep="\n")
    return 0
