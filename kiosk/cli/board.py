"""Opens the board of a site."""

from __future__ import annotations

from contextlib import closing
from pathlib import Path

from kiosk import home
from kiosk.cli.keeping import kept_signed, not_retired
from kiosk.cli.place import shop as shop_of
from kiosk.journal.store import Journal
from kiosk.procedure.site import Site


def open_board(folder: Path, site: Site, *, silent: bool, deaf: bool) -> int:
    """Show the board until it is left; return the exit status."""
    # Imported here, so that the other commands do not wait for the screens and the ears.
    from kiosk.opening import open_kiosk

    with home.take(folder), closing(Journal(folder)) as journal:
        not_retired(journal)
        with kept_signed(journal, site):
            return open_kiosk(shop_of(folder, site, journal), silent=silent, deaf=deaf)
