"""Which folder, which site and which shop a command works with."""

from __future__ import annotations

import sys
from pathlib import Path

from kiosk import home
from kiosk.checking.own_kinds import library_of
from kiosk.clock import SystemClock
from kiosk.journal.store import FILE, Journal
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load import Library
from kiosk.procedure.model import MachineKind
from kiosk.procedure.site import Machine, Site, load_site
from kiosk.shipped import shipped
from kiosk.shop import Shop


class Failed(Exception):
    """A command cannot do its work; the message says why and how to mend it."""


def shop(folder: Path, site: Site, journal: Journal) -> Shop:
    """Return the shop of a site."""
    return Shop(site, library(folder, site), journal, SystemClock(), folder)


def library(folder: Path, site: Site | None = None) -> Library:
    """Return the procedures of a site: the shipped ones, and those of its own.

    Without a site, its file in the folder says which languages they must be in; where there is
    none, only English is asked for.
    """
    spoken = spoken_in(folder) if site is None else site.languages
    return library_of(folder, spoken, lambda line: print(line, file=sys.stderr))


def kind_of(folder: Path, site: Site, machine: Machine) -> MachineKind:
    """Return the kind of a machine. Raises Failed where it is not here, as a copied one may be."""
    kind = library(folder, site).kinds.get(machine.kind)
    if kind is None:
        raise Failed(
            f"The kind '{machine.kind}' of {machine.id} is not here, or cannot be used. "
            "'kiosk setup --check' tells why."
        )
    return kind


def spoken_in(folder: Path) -> tuple[str, ...]:
    """Return the languages of a data folder's site; none where no sound site file is there."""
    try:
        return load_site(folder / home.SITE_FILE).languages
    except FaultyFile:
        # What is wrong with it is told where the site itself is wanted.
        return ()


def demo_folder() -> Path:
    """Return the folder of the invented shop's data."""
    return home.home_folder() / "demo"


def demo_site() -> Site:
    """Return the invented shop."""
    return load_site(shipped("demo") / home.SITE_FILE)


def data() -> tuple[Path, Site]:
    """Return the site's data folder, or the demo's while there is no site file."""
    folder = home.home_folder()
    if (folder / home.SITE_FILE).exists():
        return folder, load_site(folder / home.SITE_FILE)
    return demo_folder(), demo_site()


def person_id(site: Site, given: str) -> str:
    """Return the id of somebody on the list. The journal holds ids and no names. Raises Failed."""
    known = {one.id: one.name for one in site.people}
    if given not in known:
        there = ", ".join(f"{one} ({name})" for one, name in known.items())
        raise Failed(f"--by is '{given}', which is no id in the site file. There are: {there}.")
    return given


def journal() -> Journal:
    """Open the journal that is there. Raises Failed when nothing was walked yet."""
    folder, _ = data()
    if not (folder / FILE).exists():
        raise Failed(f"There is no journal in {folder} yet: nothing was walked.")
    return Journal(folder)
