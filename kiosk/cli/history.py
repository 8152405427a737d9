"""`kiosk invent`: an invented shop's history, to look at what a review shows."""

from __future__ import annotations

import argparse
import time
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from kiosk import home
from kiosk.cli.place import Failed, demo_folder, demo_site
from kiosk.procedure.load import load_library
from kiosk.shipped import shipped

_MOST_DAYS = 400


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    invent = commands.add_parser(
        "invent",
        help="invent the demo's history: sessions, results and their causes",
        description="Walks every session of an invented shop through the real engine into an empty "
        "journal, marked as practice. Never writes into a site's own journal.",
    )
    invent.add_argument("--days", type=int, default=60, help="how many, up to yesterday")
    invent.add_argument("--seed", type=int, default=1, help="another seed, another story")
    invent.add_argument(
        "--into", type=Path, help="an empty folder (default: where 'kiosk demo' keeps its data)"
    )
    invent.set_defaults(command=run)


def run(parsed: argparse.Namespace) -> int:
    """Invent the history and say what came of it."""
    from kiosk.rehearsal.history import NotInvented
    from kiosk.rehearsal.invent import invent

    if not 1 <= parsed.days <= _MOST_DAYS:
        raise Failed(f"--days is {parsed.days}; give 1 to {_MOST_DAYS}.")
    site = demo_site()
    folder = parsed.into or demo_folder()
    first = datetime.now(ZoneInfo(site.time_zone)).date() - timedelta(days=parsed.days)
    begun = time.perf_counter()
    with home.take(folder):
        try:
            made = invent(
                folder, site, load_library(shipped("procedures")), first, parsed.days, parsed.seed
            )
        except NotInvented as error:
            raise Failed(str(error)) from error
    print(
        f"Invented {parsed.days} days: {made.sessions} sessions and {len(made.results)} results, "
        f"in {time.perf_counter() - begun:.1f} s, into {folder}."
    )
    for one in made.planted:
        day = first + timedelta(days=one.of.day)
        print(f"Planted for the sample of {day}: {one.of.cause} at {one.of.machine}.")
    return 0
