"""How the voice speaks to somebody: the site's wishes put together."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import dataclass

from kiosk.procedure.site import Site


@dataclass(frozen=True, slots=True)
class Tone:
    """Pace, pitch and volume, in percent of the usual ones of a language."""

    rate: int = 100
    pitch: int = 100
    volume: int = 100


Tones = Callable[[str, str], Tone]
"""Given a language and the id of a person, who may be nobody."""


def usual(language: str, person: str) -> Tone:  # noqa: ARG001
    """Speak to everybody in the same way."""
    return Tone()


def tones_of(site: Site) -> Tones:
    """Return the tones of a site: a person's own goes before that of the language, and that before
    the place's."""
    people = {one.id: one.voice for one in site.people}

    def tone(language: str, person: str) -> Tone:
        wishes = (people.get(person), site.voice.languages.get(language), site.voice.everywhere)
        found = {
            name: next((value for one in wishes if (value := getattr(one, name, None))), 100)
            for name in ("rate", "pitch", "volume")
        }
        return Tone(**found)

    return tone
