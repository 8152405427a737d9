"""Erasing what is kept of people beside the journal, and saying so in it.

The fact is journaled first. When the erasing then fails it can be done again, and says so again;
nothing is ever gone without a word.
"""

from __future__ import annotations

from collections.abc import Iterable
from pathlib import Path
from typing import Final

from kiosk.clock import Clock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import KeptTimeOver, PersonErased, ShopEvent, ShopFact
from kiosk.journal.store import Journal
from kiosk.languages.words import languages
from kiosk.listening.own_words import forget
from kiosk.people.beside import Beside
from kiosk.people.pins import Pins
from kiosk.procedure.site import Site
from kiosk.remarks.sounds import Sounds
from kiosk.remarks.told import journaled
from kiosk.speaking.recordings import Recordings

_DAY_S: Final = 86_400.0


class StillHere(Exception):
    """The person is still on the site's list; the message says how to mend it."""


def erase_person(
    person: str, by: str, site: Site, folder: Path, beside: Beside, journal: Journal, clock: Clock
) -> PersonErased:
    """Erase a person's name, PIN, own words, recordings and remarks. Raises StillHere,
    JournalFailed, UnknownEvent, BesideFailed, PinsFailed, SoundsFailed, RecordingsFailed, OSError.
    """
    if any(one.id == person for one in site.people):
        raise StillHere(
            f"'{person}' is still in the site file, with a name. Take that [[people]] table out of "
            "it first: what the site file says cannot be erased from here."
        )
    spoken = [one for one in journaled(journal) if one.worker == person]
    sounds = tuple(one.sha256 for one in spoken if one.erased is None)
    fact = PersonErased(person, by, beside.remarks_of(person), sounds)
    _tell(journal, clock, fact, Channel.KEY)
    Pins(folder).remove(person)
    for language in {*site.languages, *languages()}:
        forget(folder, person, language)
    Recordings(folder).erase(person)
    beside.erase(person)
    # Those that the journal already calls erased too: the erasing may have failed then.
    Sounds(folder).erase({one.sha256 for one in spoken})
    return fact


def keep_to_time(site: Site, beside: Beside, journal: Journal, clock: Clock) -> KeptTimeOver | None:
    """Erase names and remarks that were kept for as long as the site says; None when none were.

    A name counts from the last day on which its person was on the list. A clock that has gone back
    erases nothing. Raises JournalFailed, UnknownEvent, BesideFailed, SoundsFailed.
    """
    now = clock.now().utc
    kept = site.kept
    names: Iterable[str] = ()
    if kept.names_days:
        here = {one.id for one in site.people}
        found = beside.names_before(now - kept.names_days * _DAY_S)
        names = tuple(one for one in found if one not in here)
    remarks_until = now - kept.remarks_days * _DAY_S if kept.remarks_days else 0.0
    spoken = journaled(journal)
    over = [one.sha256 for one in spoken if one.erased is None and one.at_utc < remarks_until]
    fact = KeptTimeOver(tuple(names), beside.remarks_before(remarks_until), tuple(over))
    gone = {one.sha256 for one in spoken if one.erased is not None}
    sounds = Sounds(beside.file.parent)
    sounds.erase(gone)
    sounds.erase_strays({one.sha256 for one in spoken}, remarks_until)
    if not (fact.people or fact.remarks or fact.sounds):
        return None
    _tell(journal, clock, fact, Channel.KIOSK)
    beside.erase_names(fact.people)
    beside.erase_remarks_before(remarks_until)
    sounds.erase(fact.sounds)
    return fact


def _tell(journal: Journal, clock: Clock, fact: ShopFact, channel: Channel) -> None:
    journal.append_shop([ShopEvent(clock.now(), Evidence(channel), fact)])
