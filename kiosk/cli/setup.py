"""`kiosk setup`: asks on the screen for all that a site needs, and checks a site file."""

from __future__ import annotations

import argparse
import os
import sys
from contextlib import closing
from datetime import UTC, datetime
from pathlib import Path

from kiosk import home
from kiosk.cli.board import open_board
from kiosk.cli.keeping import not_retired
from kiosk.cli.place import Failed
from kiosk.cli.place import library as library_of
from kiosk.cli.place import shop as shop_of
from kiosk.clock import SystemClock
from kiosk.journal.store import Journal
from kiosk.languages.words import languages
from kiosk.procedure.own_kinds import AS_COPIED
from kiosk.procedure.site import load_site
from kiosk.setup.check import check_site
from kiosk.setup.copy_kind import NotCopied, copy_kind
from kiosk.setup.draft import Draft
from kiosk.shipped import shipped


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    setup = commands.add_parser(
        "setup",
        help="set this site up on the screen, or change it",
        description="Asks, one question a screen, for all that a site needs, and writes site.toml "
        "in the data folder. It can be stopped and taken up again. On a site that is set up it "
        "shows each answer, to be changed.",
    )
    setup.add_argument(
        "--check", nargs="?", const="", metavar="FILE",
        help="ask nothing: tell what is wrong with a site file (default: this site's)",
    )  # fmt: skip
    setup.add_argument(
        "--copy", metavar="KIND",
        help="ask nothing: copy a machine kind with its procedures, to be changed for this site",
    )  # fmt: skip
    setup.add_argument(
        "--as", dest="name", default="", metavar="NAME", help="the copy's name (default: own-KIND)"
    )
    setup.add_argument("--silent", action="store_true", help="open no speaker")
    setup.add_argument("--deaf", action="store_true", help="open no microphone")
    setup.set_defaults(command=run)


def run(parsed: argparse.Namespace) -> int:
    """Set the site up, or check its file."""
    folder = home.home_folder()
    if parsed.copy is not None:
        return _copy(folder, parsed.copy, parsed.name)
    if parsed.name:
        raise Failed("--as names a copy: say of what, with --copy KIND.")
    if parsed.check is not None:
        return _check(Path(parsed.check) if parsed.check else folder / home.SITE_FILE)
    if not set_up(folder, silent=parsed.silent, deaf=parsed.deaf):
        return 0
    site = load_site(folder / home.SITE_FILE)
    return open_board(folder, site, silent=parsed.silent, deaf=parsed.deaf)


def set_up(folder: Path, *, silent: bool = False, deaf: bool = False) -> bool:
    """Ask for the site of a data folder; return whether the board can follow.

    Raises Failed where there is no terminal to ask on, FaultyFile for a site file that is no TOML.
    """
    if not (sys.stdin.isatty() and sys.stdout.isatty()):
        raise Failed(
            f"There is no terminal to ask on. Run 'kiosk setup' in one, or write "
            f"{folder / home.SITE_FILE} after the example of {shipped('demo') / home.SITE_FILE}."
        )
    # Imported here, so that the other commands do not wait for the screens and the ears.
    from kiosk.listening.microphone import NoMicrophone, open_microphone
    from kiosk.listening.models import open_ear
    from kiosk.listening.sources import Source
    from kiosk.screens.setup_app import SetupApp
    from kiosk.screens.setup_sound import Sound
    from kiosk.speaking.voice import SilentVoice, Voice, open_voice

    def voice() -> Voice:
        return SilentVoice("--silent") if silent else open_voice(folder / "prompts")

    def source() -> Source:
        if deaf:
            raise NoMicrophone("--deaf")
        return open_microphone()

    with home.take(folder), closing(Journal(folder)) as journal:
        not_retired(journal)
        app = SetupApp(
            Draft.of(folder),
            library_of(folder),
            SystemClock(),
            lambda site: shop_of(folder, site, journal),
            Sound(voice, source, lambda language: open_ear(language, folder)),
            _own_language(),
        )
        done = bool(app.run())
    if not done:
        print("The setup was stopped. 'kiosk setup' goes on where it was; nothing is lost.")
    return done


def _own_language() -> str:
    """Return the language of this machine where the kiosk speaks it, else English."""
    told = os.environ.get("LC_ALL") or os.environ.get("LANG") or ""
    return told[:2] if told[:2] in languages() else "en"


def _copy(folder: Path, kind: str, name: str) -> int:
    """Copy a machine kind, and say what to do with it. Raises Failed, FaultyFile, OSError."""
    today = datetime.now(UTC).astimezone().date()
    try:
        written = copy_kind(library_of(folder), folder, kind, name, today)
    except NotCopied as error:
        raise Failed(str(error)) from error
    print(f"'{kind}' is copied. Change these files, and leave those in '{AS_COPIED}' as they are:")
    print(*(f"  {one}" for one in written), sep="\n")
    print(
        "Then 'kiosk check' tells what is wrong, and 'kiosk setup' has it among the machine kinds."
    )
    return 0


def _check(file: Path) -> int:
    """Tell what is wrong with a site file. Raises FaultyFile, Failed."""
    if not file.exists():
        raise Failed(f"There is no {file}. 'kiosk setup' asks for all that stands in it.")
    site = check_site(file, library_of(home.home_folder(), load_site(file)))
    mark = ", practice" if site.practice else ""
    machines, people = len(site.machines), len(site.people)
    print(f"{file}: nothing is wrong. {site.name}: machines: {machines}, people: {people}{mark}.")
    return 0
