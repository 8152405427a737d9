"""`kiosk people`: who is on the list, their PINs, and what is kept of them."""

from __future__ import annotations

import argparse
import getpass
from collections.abc import Iterator
from contextlib import closing, contextmanager
from pathlib import Path

from kiosk import home
from kiosk.cli.place import Failed, data
from kiosk.clock import SystemClock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.store import Journal
from kiosk.languages.words import words
from kiosk.people.beside import Beside, BesideFailed
from kiosk.people.erase import StillHere, erase_person, keep_to_time
from kiosk.people.gate import COMMAND_LINE, PinGate
from kiosk.people.pins import Pins, PinsFailed, fault_of
from kiosk.procedure.site import Person, Site
from kiosk.remarks.sounds import SoundsFailed
from kiosk.speaking.recordings import RecordingsFailed


def add(commands: argparse._SubParsersAction[argparse.ArgumentParser]) -> None:
    """Add the command."""
    people = commands.add_parser("people", help="PINs, and what is kept of people")
    group = people.add_subparsers(required=True, metavar="COMMAND")

    group.add_parser("list", help="who is on the list, and who has a PIN").set_defaults(
        command=_list
    )
    pin = group.add_parser("pin", help="set somebody's PIN; it is asked for and not shown")
    pin.set_defaults(command=_pin)
    erasing = group.add_parser(
        "erase",
        help="erase name, PIN, own words, recordings and remarks of somebody who has left",
        description="The journal holds ids and hashes only, and stays whole; that something was "
        "erased is written into it. Copies of the data folder made before are not touched.",
    )
    erasing.set_defaults(command=_erase)
    for one in (pin, erasing):
        one.add_argument("person", metavar="ID", help="id in the site file")
    erasing.add_argument("--by", default=COMMAND_LINE, metavar="ID", help="who asked for it")
    group.add_parser(
        "tidy", help="erase what was kept longer than the site file says ([kept])"
    ).set_defaults(command=_tidy)


def _list(_: argparse.Namespace) -> int:
    folder, site = data()
    pins = Pins(folder)
    say = words(site.languages[0]).say
    for one in site.people:
        walks = ", ".join(one.walks)
        walked = say("people-walks", procedures=walks) if walks else say("people-walks-all")
        try:
            has = "yes" if site.pins.invented or pins.has(one.id) else "no"
        except PinsFailed as error:
            raise Failed(str(error)) from error
        role = say(f"people-role-{one.role}")
        print(f"{one.id}  {one.name}  {role}  {walked}  {say(f'people-pin-{has}')}")
    return 0


def _pin(parsed: argparse.Namespace) -> int:
    folder, site = data()
    person = _person(site, parsed.person)
    said = words(person.language)
    with home.take(folder), closing(Journal(folder)) as journal:
        gate = PinGate.of(folder, journal, SystemClock(), site.pins.invented)
        asked = said.say("people-ask-pin", who=person.name, person=person.id)
        digits = getpass.getpass(f"{asked} ")
        refusal = fault_of(digits)
        if refusal is None and getpass.getpass(f"{said.say('people-ask-again')} ") != digits:
            raise Failed(said.say("refused-pin-differs"))
        refusal = refusal or gate.put(person.id, digits, COMMAND_LINE, Evidence(Channel.KEY))
        if refusal is not None:
            raise Failed(said.refusal(refusal))
    print(said.say("people-pin-set", who=person.name, person=person.id))
    return 0


def _person(site: Site, person: str) -> Person:
    found = {one.id: one for one in site.people}
    if person not in found:
        known = ", ".join(f"{one.id} ({one.name})" for one in site.people)
        raise Failed(words(site.languages[0]).say("people-nobody", person=person, known=known))
    return found[person]


def _erase(parsed: argparse.Namespace) -> int:
    folder, site = data()
    with _open(folder) as (journal, beside):
        try:
            fact = erase_person(
                parsed.person, parsed.by, site, folder, beside, journal, SystemClock()
            )
        except StillHere as error:
            raise Failed(str(error)) from error
    say = words(site.languages[0]).say
    print(say("people-erased", person=fact.person, n=fact.remarks))
    _tell_sounds(site, len(fact.sounds))
    return 0


def _tell_sounds(site: Site, count: int) -> None:
    if count:
        print(words(site.languages[0]).say("remark-sounds-erased", n=count))


@contextmanager
def _open(folder: Path) -> Iterator[tuple[Journal, Beside]]:
    """Open what erasing works on. Raises Failed for what lies beside the journal."""
    try:
        with (
            home.take(folder),
            closing(Journal(folder)) as journal,
            closing(Beside(folder)) as beside,
        ):
            yield journal, beside
    except (BesideFailed, PinsFailed, RecordingsFailed, SoundsFailed, UnknownEvent) as error:
        raise Failed(str(error)) from error


def _tidy(_: argparse.Namespace) -> int:
    folder, site = data()
    with _open(folder) as (journal, beside):
        beside.meet(site.people, SystemClock().now().utc)
        fact = keep_to_time(site, beside, journal, SystemClock())
    say = words(site.languages[0]).say
    if fact is None:
        print(say("people-nothing-over"))
    else:
        print(say("people-kept-over", names=len(fact.people), remarks=fact.remarks))
        _tell_sounds(site, len(fact.sounds))
    return 0
