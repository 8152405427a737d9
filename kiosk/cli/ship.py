"""`kiosk ship`: the journal sent to the head office. Everything works without it."""

from __future__ import annotations

import argparse
import os
import sqlite3
import time
from collections.abc import Iterator
from contextlib import closing, contextmanager
from datetime import datetime
from typing import TYPE_CHECKING
from zoneinfo import ZoneInfo

from kiosk.cli.place import Failed, data
from kiosk.cli.place import library as library_of
from kiosk.procedure.load_review import load_schedule

if TYPE_CHECKING:
    from kiosk.fleet.connection import Line

ADDRESS = "KIOSK_HEAD_OFFICE"
"""Environment variable that holds the head office's address."""

_NO_LIBRARY = "The head office is reached by the extra 'fleet': pip install 'brushdown[fleet]'."
_BROKE = (
    "Nothing is lost: the journal is here, and the next run goes on where this one ended. The line "
    "broke, or the head office refused"
)


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    shipping = commands.add_parser(
        "ship",
        help="send the journal to the head office",
        description="Sends all rows that the head office has not. It may be broken off and run "
        "again at any time, also while the kiosk is at work; nothing is sent twice, and nothing "
        "waits for it.",
    )
    takes_address(shipping)
    shipping.add_argument(
        "--every", type=float, default=0.0, metavar="MINUTES", help="go on, and ship so often"
    )
    shipping.set_defaults(command=_ship)


def takes_address(parser: argparse.ArgumentParser) -> None:
    parser.add_argument(
        "--to",
        default=os.environ.get(ADDRESS, ""),
        metavar="ADDRESS",
        help=f"postgresql://LOGIN@HOST/DATABASE (default: {ADDRESS}). Others on this machine can "
        "read a password on the command line: put it into a file and add '?passfile=FILE'",
    )


@contextmanager
def head_office(address: str, otherwise: str) -> Iterator[Line]:
    """Open a line to the head office, and close it.

    Raises Failed with the mend; when the line breaks, its message begins with `otherwise`.
    """
    try:
        import psycopg

        from kiosk.fleet.connection import NotPrivate, connect
    except ImportError as error:
        raise Failed(_NO_LIBRARY) from error
    if not address:
        raise Failed(f"Say where the head office is: --to postgresql://..., or set {ADDRESS}.")
    try:
        line = connect(address)
    except NotPrivate as error:
        raise Failed(str(error)) from error
    except psycopg.Error as error:
        raise Failed(f"The head office cannot be reached: {_short(error)}") from error
    with closing(line):
        try:
            yield line
        except psycopg.Error as error:
            raise Failed(f"{otherwise}: {_short(error)}") from error


def _short(error: Exception) -> str:
    """Return the first line of what a server or a library said."""
    return str(error).strip().split("\n")[0]


def _ship(parsed: argparse.Namespace) -> int:
    if parsed.every < 0:
        raise Failed(f"--every is {parsed.every:g}; give minutes, or leave it out to ship once.")
    if not parsed.every:
        return _once(parsed.to)
    while True:
        try:
            _once(parsed.to)
        except (Failed, OSError) as error:
            # A head office that cannot be reached is a normal day, and so is an empty journal.
            print(error, flush=True)
        time.sleep(parsed.every * 60)


def _once(address: str) -> int:
    folder, site = data()
    known = library_of(folder, site)
    today = datetime.now(ZoneInfo(site.time_zone)).date()
    with head_office(address, _BROKE) as line:
        from kiosk.fleet.about import about
        from kiosk.fleet.outgoing import Outgoing
        from kiosk.fleet.ship import Refused, ship

        told = about(site, known, load_schedule(library=known), today)
        try:
            with closing(Outgoing(folder)) as journal:
                done = ship(journal, line, told, told=_progress)
        except Refused as error:
            raise Failed(str(error)) from error
        except sqlite3.Error as error:
            raise Failed(f"The journal in {folder} cannot be read: {error}") from error
    print(
        f"The head office has the journal of kiosk {done.kiosk} up to row {done.seq}: "
        f"{done.taken} rows are new there."
    )
    for trouble in done.troubles:
        print(trouble)
    return 1 if done.troubles else 0


def _progress(seq: int, last: int) -> None:
    print(f"row {seq} of {last}", flush=True)
