"""The site: its machines, people, product and settings, read from a TOML file."""

from __future__ import annotations

import tomllib
from collections.abc import Mapping
from dataclasses import dataclass, field
from datetime import date, time
from decimal import Decimal
from enum import StrEnum
from pathlib import Path
from typing import Any, ClassVar, Final
from zoneinfo import ZoneInfo, ZoneInfoNotFoundError

from pydantic import TypeAdapter, ValidationError

from kiosk.procedure.fault import Fault, FaultyFile
from kiosk.procedure.site_fault import site_fault
from kiosk.procedure.site_voice import Manner, Voice, VoiceTable, faults_of_voice

_STRICT: dict[str, Any] = {"extra": "forbid", "coerce_numbers_to_str": True}


@dataclass(frozen=True, slots=True, kw_only=True)
class Sanitizer:
    """The chlorine sanitizer in use, as its label has it; nothing here is assumed."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    name: str
    available_chlorine: Decimal
    """Share of available chlorine by weight, 0 to 1."""
    packet_grams: Decimal
    target: Decimal
    """Wanted strength in mg/L."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Machine:
    """One machine in the shop."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    name: str
    kind: str
    settings: Mapping[str, str] = field(default_factory=dict)
    options: Mapping[str, str] = field(default_factory=dict)


TRAINEE_ALONE: Final = "trainee-alone"
"""The rule of a fault: there is a trainee, and no supervisor."""


class Role(StrEnum):
    """What someone is in the shop; `kiosk.people.may` says what each may do."""

    WORKER = "worker"
    TRAINEE = "trainee"
    SUPERVISOR = "supervisor"


@dataclass(frozen=True, slots=True, kw_only=True)
class Person:
    """Someone who may walk a session."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    name: str
    language: str
    role: Role = Role.WORKER
    walks: tuple[str, ...] = ()
    """Ids of the procedures that this person may walk; empty for all."""
    voice: Manner = field(default_factory=Manner)
    """How the voice speaks to this person."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Pins:
    """When a PIN is asked for, beyond a second person's and a supervisor's."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    at_start: bool = False
    """True where everyone who begins or takes over a session gives their PIN."""
    spoken_pins: bool = False
    """True where nobody overhears: then the digits of a PIN may be said."""
    invented: str = ""
    """A PIN of everybody who has none of their own, shown on the screen: for an invented shop."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Kept:
    """How long personal data are kept that lie beside the journal; 0 days keeps them for good."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    names_days: int = 0
    """Days that the name of someone is kept who is no longer on the list."""
    remarks_days: int = 0
    """Days that the text or the sound of a remark is kept."""


_WEEKDAYS: Final = (
    "monday", "tuesday", "wednesday", "thursday", "friday", "saturday", "sunday",
)  # fmt: skip

TAKEN_KEYS: Final = frozenset(
    {"b", "e", "h", "l", "m", "n", "o", "p", "q", "r", "v", "w", "y", *"0123456789"}
)
"""Keys of the walk's own buttons, which cannot be the key to talk."""

_OTHER_KEYS: Final = frozenset(
    {"pageup", "pagedown", "home", "end", "insert", "delete", *(f"f{n}" for n in range(1, 25))}
)


@dataclass(frozen=True, slots=True, kw_only=True)
class Hearing:
    """How the ear is used in this place."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    push_to_talk: bool = False
    """True where it is too loud to listen all the time: the ear is deaf until a key is pressed."""
    key: str = "t"
    """That key, as the terminal names it: a letter, `f1` to `f24`, `pageup`, `pagedown` ..."""
    cut_short: bool = False
    """True where a worker may speak into a prompt, to hear it again, to go back or to stop. Needs
    the library pywebrtc-audio."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Site:
    """One shop."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    name: str
    time_zone: str
    opens: str
    closes: str
    """Local times, as 10:00."""
    languages: tuple[str, ...]
    limits: str
    sanitizer: Sanitizer
    machines: tuple[Machine, ...]
    people: tuple[Person, ...]
    settings: Mapping[str, str] = field(default_factory=dict)
    options: Mapping[str, str] = field(default_factory=dict)
    hearing: Hearing = Hearing()
    voice: VoiceTable = field(default_factory=Voice)
    pins: Pins = Pins()
    kept: Kept = Kept()
    trainee_walks: int = 3
    """How many walks of each procedure a trainee begins with a supervisor beside them."""
    checkpoints_to: str = ""
    """Folder in which the journal's checkpoints are written a second time, as a stick's."""
    closed_days: tuple[str, ...] = ()
    """When the shop does not open: `monday`, `12-25` in every year, or `2026-12-26`."""
    practice: bool = False
    """True for an invented shop: its sessions are marked as practice."""

    def closed(self, day: date) -> bool:
        """True on a day on which the shop does not open."""
        names = {_WEEKDAYS[day.weekday()], f"{day:%m-%d}", day.isoformat()}
        return not names.isdisjoint(self.closed_days)

    def machine(self, machine_id: str) -> Machine:
        """Return a machine by id; KeyError when there is none."""
        return {one.id: one for one in self.machines}[machine_id]

    def person(self, person_id: str) -> Person:
        """Return a person by id; KeyError when there is none."""
        return {one.id: one for one in self.people}[person_id]


def load_site(path: Path) -> Site:
    """Load a site file. Raises FaultyFile, naming field and mend."""
    name = str(path)
    try:
        text = path.read_text(encoding="utf-8")
    except (OSError, UnicodeDecodeError) as error:
        mend = "make the file readable, as UTF-8 text"
        raise FaultyFile([Fault(name, 0, "", f"cannot be read ({error})", mend)]) from error
    return read_site(text, name)


def read_site(text: str, name: str) -> Site:
    """Return the site that a TOML text tells of; `name` stands in faults. Raises FaultyFile."""
    try:
        data = tomllib.loads(text)
    except (ValueError, RecursionError) as error:
        # Of a number too long and of brackets too deep the reader itself says nothing better.
        mend = "look at the quotes, brackets and equal signs at this place"
        raise FaultyFile([Fault(name, 0, "", f"is not TOML: {error}", mend)]) from error
    try:
        site = TypeAdapter(Site).validate_python(data)
    except ValidationError as error:
        faults = [site_fault(name, Site, one) for one in error.errors()]
        raise FaultyFile(faults) from error
    _check(name, site)
    return site


def _is_date(text: str) -> bool:
    try:
        # A leap year, so that 02-29 is a day.
        date.fromisoformat(text if text.count("-") > 1 else f"2000-{text}")
    except ValueError:
        return False
    return True


def _is_time(text: str) -> bool:
    try:
        return f"{time.fromisoformat(text):%H:%M}" == text
    except ValueError:
        return False


_AN_ID: Final = "write letters, digits and hyphens"


def _check(name: str, site: Site) -> None:
    faults: list[Fault] = []
    try:
        ZoneInfo(site.time_zone)
    except (ZoneInfoNotFoundError, ValueError, OSError):
        # The OSError is that of a folder of zones, as 'Etc', or of too long a name.
        mend = "write a name of the IANA time zone list, as 'Etc/UTC'"
        faults.append(Fault(name, 0, "time_zone", f"'{site.time_zone}' is no time zone", mend))
    faults += [
        Fault(name, 0, field_name, f"'{text}' is no time of day", "write it as 09:30 or 21:30")
        for field_name, text in (("opens", site.opens), ("closes", site.closes))
        if not _is_time(text)
    ]
    faults += _faults_of_texts(name, site)
    for what, ids in (("machines", [m.id for m in site.machines]),
                      ("people", [p.id for p in site.people])):  # fmt: skip
        if not ids:
            faults.append(Fault(name, 0, what, "none is listed", f"add a [[{what}]] table"))
        faults += [
            Fault(name, 0, what, f"the id '{one}' stands twice", "give each an id of its own")
            for one in sorted({one for one in ids if ids.count(one) > 1})
        ]
        faults += [
            Fault(name, 0, what, f"the id {one!r} holds what cannot be printed, or nothing", _AN_ID)
            for one in ids
            if not one or not one.isprintable()
        ]
    faults += [
        Fault(name, 0, "closed_days", f"'{one}' is no day",
              "write a weekday as 'monday', or a date as '12-25' or '2026-12-26'")
        for one in site.closed_days
        if one not in _WEEKDAYS and not _is_date(one)
    ]  # fmt: skip
    if set(_WEEKDAYS) <= set(site.closed_days):
        what = "the shop is closed on every day of the week"
        faults.append(Fault(name, 0, "closed_days", what, "leave out the days on which it opens"))
    if site.hearing.cut_short and site.hearing.push_to_talk:
        what = "an ear that waits for a key hears nothing while the kiosk speaks"
        mend = "set either push_to_talk or cut_short to false"
        faults.append(Fault(name, 0, "hearing.cut_short", what, mend))
    key = site.hearing.key
    if not (len(key) == 1 and "a" <= key <= "z") and key not in _OTHER_KEYS:
        mend = "write a small letter, f1 to f24, pageup, pagedown, home, end, insert or delete"
        faults.append(Fault(name, 0, "hearing.key", f"'{key}' is no key to talk with", mend))
    elif key in TAKEN_KEYS:
        what = f"the key '{key}' is that of a button"
        faults.append(Fault(name, 0, "hearing.key", what, "choose another one, as 't' or 'f9'"))
    faults += _faults_of_product(name, site.sanitizer)
    faults += _faults_of_people(name, site)
    manners = {one.id: one.voice for one in site.people}
    faults += faults_of_voice(name, site.voice, manners, site.languages)
    for person in site.people:
        if person.language not in site.languages:
            what = (
                f"{person.id} speaks '{person.language}', which is not among the site's languages"
            )
            faults.append(Fault(name, 0, "people", what, f"add '{person.language}' to languages"))
    if faults:
        raise FaultyFile(faults)


def _faults_of_texts(name: str, site: Site) -> list[Fault]:
    """An id is a part of names of sessions, which a line feed would spoil in the journal's hashes;
    an escape in a name would work on the terminal."""
    texts = [("name", site.name)]
    for what, listed in (("machines", site.machines), ("people", site.people)):
        for one in listed:
            texts += [(f"{what}.id", one.id), (f"{what}.name", one.name)]
    mend = "write letters, digits and signs that can be seen, on one line"
    return [
        Fault(name, 0, where, f"{text!r} is empty or holds what cannot be printed", mend)
        for where, text in texts
        if not text or not text.isprintable()
    ]


def _faults_of_product(name: str, product: Sanitizer) -> list[Fault]:
    share = product.available_chlorine
    figures = [("packet_grams", product.packet_grams, "the grams of one packet"),
               ("target", product.target, "the wanted strength in mg/L (ppm)")]  # fmt: skip
    faults = [
        Fault(name, 0, f"sanitizer.{field_name}", f"{number} is not above 0",
              f"write {what}, as the label has it")
        for field_name, number, what in figures
        if not (number.is_finite() and number > 0)
    ]  # fmt: skip
    if not (share.is_finite() and 0 < share <= 1):
        what = f"{share} is no share of available chlorine by weight, which lies from 0 to 1"
        mend = "write the label's percent divided by 100: 0.05 for 5 %"
        faults.append(Fault(name, 0, "sanitizer.available_chlorine", what, mend))
    return faults


def _faults_of_people(name: str, site: Site) -> list[Fault]:
    faults: list[Fault] = []
    trainees = [one.id for one in site.people if one.role is Role.TRAINEE]
    if trainees and not any(one.role is Role.SUPERVISOR for one in site.people):
        what = f"{trainees[0]} is a trainee, and nobody is there to stand by as supervisor"
        mend = "give somebody the role 'supervisor'"
        faults.append(Fault(name, 0, "people", what, mend, TRAINEE_ALONE))
    for field_name, number in (("trainee_walks", site.trainee_walks),
                               ("kept.names_days", site.kept.names_days),
                               ("kept.remarks_days", site.kept.remarks_days)):  # fmt: skip
        if number < 0:
            faults.append(Fault(name, 0, field_name, f"{number} is below 0", "write 0 or more"))
    invented = site.pins.invented
    if invented and not site.practice:
        what = "an invented PIN is known to everybody who reads this file"
        mend = "take it out, and set a PIN for each person with 'kiosk people pin ID'"
        faults.append(Fault(name, 0, "pins.invented", what, mend))
    if invented and not (invented.isascii() and invented.isdigit()):
        mend = 'write it as text in quotation marks, as "2468"'
        faults.append(Fault(name, 0, "pins.invented", f"'{invented}' is not digits", mend))
    return faults
