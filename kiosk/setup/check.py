"""Everything that is wrong with a site: in its file, and with the procedures it would walk."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from pathlib import Path
from typing import Final

from kiosk.languages.words import languages, words
from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library
from kiosk.procedure.plan import Plan
from kiosk.procedure.site import Machine, Site, load_site

NO_KIND: Final = "no-kind"
"""The rule of a fault: a machine is of a kind that is not here."""


def check_site(file: Path, library: Library) -> Site:
    """Return the site of a file with which everything can be walked.

    Raises FaultyFile with every reason against it, each with its field and its mend.
    """
    site = load_site(file)
    faults = faults_of(site, library, str(file))
    if faults:
        raise FaultyFile(faults)
    return site


def faults_of(site: Site, library: Library, name: str) -> list[Fault]:
    """Return what in a sound site file does not suit the procedures; `name` is the file's."""
    faults = list(_unknown(site, library, name))
    if not faults:
        for machine in site.machines:
            faults += [one for one in _fitted(site, machine, library) if isinstance(one, Fault)]
    return list(dict.fromkeys(faults))


def plans_of(site: Site, machine: Machine, library: Library) -> list[Plan]:
    """Return the procedures of a machine that can be walked on it."""
    return [one for one in _fitted(site, machine, library) if isinstance(one, Plan)]


def _fitted(site: Site, machine: Machine, library: Library) -> Iterator[Plan | Fault]:
    for procedure in library.procedures.values():
        if procedure.machine_kind != machine.kind:
            continue
        try:
            yield fit(library, procedure, machine, site, lambda q, to: words(to).quantity(q))
        except FaultyFile as error:
            yield from error.faults


def _unknown(site: Site, library: Library, name: str) -> Iterator[Fault]:
    """Yield what the site names and nobody knows."""
    if site.limits not in library.limits:
        mend = f"use one of: {', '.join(sorted(library.limits))}"
        yield Fault(name, 0, "limits", f"there is no limits profile '{site.limits}'", mend)
    mend = f"use some of: {', '.join(languages())}"
    for one in site.languages:
        if one not in languages():
            yield Fault(name, 0, "languages", f"the kiosk has no words in '{one}'", mend)
    for place, machine in enumerate(site.machines, 1):
        kind = library.kinds.get(machine.kind)
        where = f"machines.{place}"
        yield from library.against(machine.kind)
        if kind is None:
            if machine.kind not in library.spoilt:
                mend = f"use one of: {', '.join(library.kinds)}"
                what = f"there is no kind of machine '{machine.kind}'"
                yield Fault(name, 0, f"{where}.kind", what, mend, NO_KIND)
            continue
        for option, value in machine.options.items():
            yield from _option(name, f"{where}.options", option, value, kind.options)
        for setting in machine.settings:
            if setting not in kind.settings:
                mend = f"use one of: {', '.join(kind.settings)}"
                what = f"the kind '{kind.id}' has no setting '{setting}'"
                yield Fault(name, 0, f"{where}.settings", what, mend)
    everything = {n: v for one in library.kinds.values() for n, v in one.options.items()}
    for option, value in site.options.items():
        yield from _option(name, "options", option, value, everything)
    for place, person in enumerate(site.people, 1):
        for procedure in person.walks:
            if procedure not in library.procedures:
                mend = f"use some of: {', '.join(library.procedures)}"
                what = f"there is no procedure '{procedure}'"
                yield Fault(name, 0, f"people.{place}.walks", what, mend)


def _option(
    name: str, where: str, option: str, value: str, options: Mapping[str, tuple[str, ...]]
) -> Iterator[Fault]:
    if option not in options:
        mend = f"use one of: {', '.join(options)}"
        yield Fault(name, 0, where, f"there is no option '{option}'", mend)
    elif value not in options[option]:
        mend = f"use one of: {', '.join(options[option])}"
        yield Fault(name, 0, where, f"the option '{option}' cannot be '{value}'", mend)
