"""`kiosk serve`: the board and the walks on a tablet, in its browser."""

from __future__ import annotations

import argparse
import asyncio
import os
import sys
from contextlib import closing
from pathlib import Path

from kiosk import home
from kiosk.cli.keeping import kept_signed, not_retired
from kiosk.cli.place import Failed, data
from kiosk.cli.place import shop as shop_of
from kiosk.journal.store import Journal

PORT = 8460
"""Assigned to nobody when this was written (IANA's list, MEM)."""

_OPEN_TO_MORE = """\
WARNING: other machines can reach this kiosk at {address}
  Whoever has the pairing code works it, and sees what is on its screen.
  - Use a network that guests are not in.
{plain}"""

_PLAIN = """\
  - The line is not encrypted: code, PINs and answers can be read on the way. Put TLS in front
    (a reverse proxy on this machine, and --host 127.0.0.1), or give --certificate and --key.
"""


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    serve = commands.add_parser(
        "serve",
        help="show the board and the walks on a tablet, in its browser",
        description="Runs the kiosk here, with this machine's speaker and microphone, and shows it "
        "in browsers. A browser is paired once, with the code that stands here and on the board. "
        "One screen holds the kiosk; others watch until they take it over.",
    )
    serve.add_argument(
        "--host", default="127.0.0.1", help="address to serve at (default: %(default)s)"
    )
    serve.add_argument("--port", type=int, default=PORT, help="(default: %(default)s)")
    serve.add_argument("--certificate", type=Path, metavar="FILE", help="PEM file, for TLS")
    serve.add_argument("--key", type=Path, metavar="FILE", help="PEM file of the certificate's key")
    serve.add_argument("--forget", action="store_true", help="begin with no screen paired")
    serve.add_argument("--silent", action="store_true", help="open no speaker")
    serve.add_argument("--deaf", action="store_true", help="open no microphone")
    serve.set_defaults(command=run)


def run(parsed: argparse.Namespace) -> int:
    """Serve this site, or the invented shop while there is no site file."""
    # A browser shows every colour, whatever the terminal is that this was started from. Textual
    # reads this when it is imported.
    os.environ["TEXTUAL_COLOR_SYSTEM"] = "truecolor"
    try:
        from kiosk.serve.pairing import Paired, PairingFailed
        from kiosk.serve.serving import CannotServe, Place, Serving
    except ModuleNotFoundError as error:
        raise Failed(
            f"'{error.name}' is not installed. It comes with the extra: pip install '.[tablet]'"
        ) from error
    from kiosk.opening import open_kiosk
    from kiosk.screens.app import KioskApp

    place = Place(parsed.host, parsed.port, parsed.certificate, parsed.key)
    folder, site = data()

    def show(app: KioskApp) -> None:
        asyncio.run(Serving(app, place, _tell).run())

    try:
        with home.take(folder), closing(Journal(folder)) as journal, kept_signed(journal, site):
            not_retired(journal)
            if parsed.forget:
                Paired(folder).forget()
            if not place.only_here:
                _tell(_warning(place.address(), encrypted=place.certificate is not None))
            shop = shop_of(folder, site, journal)
            return open_kiosk(shop, silent=parsed.silent, deaf=parsed.deaf, show=show)
    except (CannotServe, PairingFailed) as error:
        raise Failed(str(error)) from error


def _warning(address: str, *, encrypted: bool) -> str:
    return _OPEN_TO_MORE.format(address=address, plain="" if encrypted else _PLAIN).rstrip()


def _tell(line: str) -> None:
    # Textual takes what is printed while it runs; this is for the terminal all the same.
    print(line, file=sys.__stdout__, flush=True)
