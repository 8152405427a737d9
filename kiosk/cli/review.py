"""`kiosk review`: the supervisor's morning."""

from __future__ import annotations

import argparse
from contextlib import closing

from kiosk import home
from kiosk.cli.keeping import kept_signed
from kiosk.cli.place import data
from kiosk.cli.place import shop as shop_of
from kiosk.journal.store import Journal


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    review = commands.add_parser(
        "review",
        help="look at what was done, sign it off or send it back",
        description="Opens the board's application with the review, behind a supervisor's PIN.",
    )
    review.set_defaults(command=run)


def run(_: argparse.Namespace) -> int:
    """Open the review of this site, or of the invented shop while there is no site file."""
    # Imported here, so that the other commands do not wait for the screens and the ears.
    from kiosk.opening import open_kiosk

    folder, site = data()
    with home.take(folder), closing(Journal(folder)) as journal, kept_signed(journal, site):
        return open_kiosk(shop_of(folder, site, journal), silent=True, deaf=True, review=True)
