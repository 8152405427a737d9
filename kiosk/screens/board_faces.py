"""The targets under the cards of the board, and how it greets."""

from __future__ import annotations

from datetime import datetime
from enum import Enum
from typing import Final
from zoneinfo import ZoneInfo

from kiosk.languages.words import Words
from kiosk.procedure.site import Person
from kiosk.screens.faces import Face, Leave, Pick
from kiosk.screens.target_screen import HELP_KEY

_MORNING_FROM: Final = 4
_DAY_FROM: Final = 12
_EVENING_FROM: Final = 18
"""Hours from which it is greeted otherwise; our choice."""


class OnBoard(Enum):
    """What can be asked of the board itself."""

    SIGN_IN = "sign in"
    """Say who stands here, or that nobody does."""
    LANGUAGE = "language"
    THEME = "theme"
    """Change between light and dark."""
    PRACTICE_OR_PIN = "practice or PIN"
    REVIEW = "review"
    """Look at what was done, as a supervisor."""
    HELP = "help"
    FAULTS = "faults"
    """Read why something cannot be walked."""


def board_faces(
    words: Words,
    who: Person | None,
    *,
    several_languages: bool,
    practice: bool,
    for_a_while: bool,
    faulty: bool,
) -> tuple[Face, ...]:
    """Return the faces under the cards, the most needed first. `who` is signed in."""
    say = words.say
    label, detail = (say("sign-in"), "") if who is None else (who.name, say("sign-out-or-other"))
    faces = [Face(Pick(OnBoard.SIGN_IN), label, detail, key="i")]
    if several_languages:
        name = say("language-name")
        faces.append(Face(Pick(OnBoard.LANGUAGE), say("say-language"), name, key="l"))
    faces.append(Face(Pick(OnBoard.THEME), say("day-or-night"), key="t"))
    if for_a_while:
        faces.append(Face(Leave(), say("back-to-work"), key="escape"))
    else:
        first = "" if practice else f"{say('to-practise')}, "
        faces.append(Face(Pick(OnBoard.PRACTICE_OR_PIN), f"{first}{say('to-set-pin')}", key="k"))
        faces.append(Face(Pick(OnBoard.REVIEW), say("review"), key="r"))
    faces.append(Face(Pick(OnBoard.HELP), say("help"), key=HELP_KEY))
    if faulty:
        faces.append(Face(Pick(OnBoard.FAULTS), say("what-is-faulty"), key="f"))
    return tuple(faces)


def greeting(words: Words, who: Person, now_utc: float, zone: ZoneInfo) -> str:
    """Return a greeting by the hour of the site's clock."""
    hour = datetime.fromtimestamp(now_utc, zone).hour
    part = "evening"
    if _MORNING_FROM <= hour < _EVENING_FROM:
        part = "morning" if hour < _DAY_FROM else "day"
    return words.say("board-greeting", part=part, who=who.name)
