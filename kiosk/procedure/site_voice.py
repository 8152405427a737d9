"""How a site wants the voice to speak: everywhere, in one language, or to one person."""

from __future__ import annotations

from collections.abc import Collection, Iterator, Mapping
from dataclasses import dataclass, field, fields
from typing import Annotated, Any, ClassVar, Final

from pydantic import BeforeValidator

from kiosk.procedure.fault import Fault

_STRICT: dict[str, Any] = {"extra": "forbid"}

BOUNDS: Final = {"rate": (60, 160), "pitch": (50, 150), "volume": (20, 200)}
"""Percent. Outside the first two espeak-ng is hard to follow or stops at its own ends; above 150
percent of volume it begins to cut off the loudest sounds (measured: 0.01 to 0.1 % of them)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Manner:
    """How the voice speaks, in percent of its usual; what is left out is as it is elsewhere."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    rate: int | None = None
    """Pace; 80 is slower by a fifth."""
    pitch: int | None = None
    """Above 100 is higher."""
    volume: int | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Voice:
    """How the voice speaks in this place, and in one language of it."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    everywhere: Manner = Manner()
    languages: Mapping[str, Manner] = field(default_factory=dict)


def _languages_apart(table: Any) -> Any:
    if not isinstance(table, dict):
        return table
    languages = {name: value for name, value in table.items() if isinstance(value, dict)}
    everywhere = {name: value for name, value in table.items() if name not in languages}
    return {"everywhere": everywhere, "languages": languages}


VoiceTable = Annotated[Voice, BeforeValidator(_languages_apart)]
"""The table `[voice]`, in which those of the languages stand as `[voice.es]`."""


def faults_of_voice(
    name: str, voice: Voice, people: Mapping[str, Manner], languages: Collection[str]
) -> Iterator[Fault]:
    """Yield what is out of bounds, and languages that nobody there speaks."""
    for language in voice.languages:
        if language not in languages:
            what = f"'{language}' is not among the site's languages"
            mend = f"add '{language}' to languages, or take the table out"
            yield Fault(name, 0, f"voice.{language}", what, mend)
    manners = {"voice": voice.everywhere}
    manners |= {f"voice.{language}": manner for language, manner in voice.languages.items()}
    manners |= {f"people.{person}.voice": manner for person, manner in people.items()}
    for place, manner in manners.items():
        for one in fields(manner):
            percent, (least, most) = getattr(manner, one.name), BOUNDS[one.name]
            if percent is not None and not least <= percent <= most:
                what = f"{percent} is not from {least} to {most}"
                mend = f"write percent of the usual {one.name}; 100 leaves it"
                yield Fault(name, 0, f"{place}.{one.name}", what, mend)
