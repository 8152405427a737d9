"""The faces of a walk's screen: what the walk offers, and what only a screen can."""

from __future__ import annotations

from typing import Final

from kiosk.engine import commands as c
from kiosk.engine.state import Mode
from kiosk.options import ChooseLanguage, Give, Help, Reckon
from kiosk.screens.arrangement import LEAST_HEIGHT, most_columns
from kiosk.screens.faces import Face, Leave, TryAgain, TypeNumber, faces
from kiosk.walk import Walk

_QUICK_ROWS: Final = 3
"""Most rows of numbers that are offered beside the keypad."""


def offered(walk: Walk, width: int, room: int) -> tuple[Face, ...]:
    """Return every face for what can be done now, `room` being the rows beside the question.

    A closed list of numbers is offered number by number where it has room; the keypad always is.
    """
    words, session = walk.words, walk.session
    leave = Face(Leave(), words.say("all-machines"), key="q")
    if session.state.mode is Mode.IDLE:
        return (Face(TryAgain(), words.say("try-to-begin"), key="enter", primary=True), leave)
    found = list(faces(walk.options(), session.plan, session.state.step, words))
    if walk.number is not None:
        type_it = Face(TypeNumber(), words.say("type-number"), key="enter", primary=True)
        found = _with_keypad(found, type_it, width, room)
    if session.state.mode is Mode.HELD and not session.state.ending and not walk.asking:
        # These can wait behind `more`; the way to the other machines cannot.
        later = (Reckon, ChooseLanguage, Help)
        rest = [face for face in found if isinstance(face.choice, later)]
        found = [*(face for face in found if face not in rest), leave, *rest]
    return tuple(found)


def _with_keypad(found: list[Face], type_it: Face, width: int, room: int) -> list[Face]:
    numbers = [face for face in found if _is_number(face)]
    others = [face for face in found if face not in numbers]
    rows = -(-(len(numbers) + 1) // most_columns(width))
    fits = rows <= min(room // LEAST_HEIGHT - 1, _QUICK_ROWS)
    return [*(numbers if fits else []), type_it, *others]


def _is_number(face: Face) -> bool:
    choice = face.choice
    return isinstance(choice, c.Read) or (
        isinstance(choice, Give) and not isinstance(choice.answer, str)
    )
