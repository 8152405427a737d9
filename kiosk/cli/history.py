"""`kiosk invent`: an invented shop's history, to look at what a review shows."""

from __future__ import annotations

import argparse
import tempfile
import time
from datetime import datetime, timedelta
from pathlib import Path
from zoneinfo import ZoneInfo

from kiosk import home
from kiosk.cli.place import Failed, demo_folder, demo_site
from kiosk.cli.place import library as library_of
from kiosk.procedure.site import Site, load_site
from kiosk.shipped import shipped

_MOST_DAYS = 3653
"""Ten years."""
_MOST_MACHINES = 8


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
        "--machines", type=int, help="how many, into a folder with a site file of its own"
    )
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
    site, text = demo_site(), ""
    if parsed.machines is not None:
        text = _more_machines(parsed, len(site.machines))
        site = _read(text)
    folder = parsed.into or demo_folder()
    first = datetime.now(ZoneInfo(site.time_zone)).date() - timedelta(days=parsed.days)
    begun = time.perf_counter()
    with home.take(folder):
        try:
            made = invent(
                folder, site, library_of(folder, site), first, parsed.days, parsed.seed, _yearly
            )
        except NotInvented as error:
            raise Failed(str(error)) from error
        if text:
            (folder / home.SITE_FILE).write_text(text, encoding="utf-8")
    print(
        f"Invented {parsed.days} days: {made.sessions} sessions and {len(made.results)} results, "
        f"in {time.perf_counter() - begun:.1f} s, into {folder}."
    )
    for one in made.planted:
        day = first + timedelta(days=one.of.day)
        print(f"Planted for the sample of {day}: {one.of.cause} at {one.of.machine}.")
    return 0


def _more_machines(parsed: argparse.Namespace, fewest: int) -> str:
    from kiosk.rehearsal.invent import many_machines

    if not fewest <= parsed.machines <= _MOST_MACHINES:
        raise Failed(f"--machines is {parsed.machines}; give {fewest} to {_MOST_MACHINES}.")
    if parsed.into is None:
        raise Failed("--machines makes another shop than the demo's: name its folder with --into.")
    text = (shipped("demo") / home.SITE_FILE).read_text(encoding="utf-8")
    return many_machines(text, parsed.machines)


def _read(text: str) -> Site:
    with tempfile.TemporaryDirectory() as folder:
        file = Path(folder) / home.SITE_FILE
        file.write_text(text, encoding="utf-8")
        return load_site(file)


def _yearly(day: int, days: int) -> None:
    if day % 365 == 0 and day < days:
        print(f"{day} of {days} days invented", flush=True)
