"""The keypad: a number put together key by key, and the keys that are shown for it."""

from __future__ import annotations

from dataclasses import dataclass, replace
from decimal import Decimal, InvalidOperation
from typing import Final

from kiosk.engine.prompt import Number
from kiosk.languages.words import Words
from kiosk.reckoning.calculator import NumberWanted
from kiosk.screens.arrangement import LEAST_HEIGHT, Block, most_columns
from kiosk.screens.faces import Face, KeypadKey, back_face

ENTER: Final = "enter"
RUB_OUT: Final = "backspace"
_MOST_CHARACTERS: Final = 7


@dataclass(frozen=True, slots=True)
class Typing:
    """A number while it is typed; always written with a point inside."""

    fraction: bool
    """True when it may have a decimal mark."""
    below_zero: bool
    """True when it may be negative."""
    text: str = ""

    def press(self, key: str) -> Typing:
        """Return what is there after a key; one that does not fit changes nothing.

        Comma and point are the same decimal mark.
        """
        text, key = self.text, "." if key == "," else key
        if key == RUB_OUT:
            return replace(self, text=text[:-1])
        if key == "-":
            if not self.below_zero:
                return self
            return replace(self, text=text[1:] if text.startswith("-") else f"-{text}")
        fits = key.isdecimal() or (key == "." and self.fraction and "." not in text)
        if not fits or len(text) >= _MOST_CHARACTERS:
            return self
        return replace(self, text=text + key)

    def value(self) -> Decimal | None:
        """Return the number; None while there is none yet."""
        try:
            return Decimal(self.text)
        except InvalidOperation:
            return None


def typing(wanted: NumberWanted) -> Typing:
    """Return an empty number for what is wanted."""
    return Typing(fraction=not wanted.whole, below_zero=wanted.least < 0)


def decimal_mark(words: Words) -> str:
    """Return the decimal mark of a language."""
    return words.number(Number("0.5")).replace("0", "").replace("5", "")[:1] or "."


def shown(now: Typing, words: Words) -> str:
    """Return the number so far as the language writes it; a low line stands for no number."""
    return now.text.replace(".", decimal_mark(words)) or "_"


def unit_name(wanted: NumberWanted, words: Words) -> str:
    """Return the unit in words; '' when there is none."""
    return words.number(Number("0", wanted.unit)).replace("0", "", 1).strip()


def keypad(now: Typing, words: Words, width: int) -> Block:
    """Return the keys in four columns where they fit, else in three: five rows of targets."""

    def digit(name: str) -> Face:
        return Face(KeypadKey(name), name, listed=True)

    rub_out = Face(KeypadKey(RUB_OUT), words.say("rub-out"), key=RUB_OUT)
    enter = Face(KeypadKey(ENTER), words.say("enter-number"), key=ENTER, primary=True)
    never_mind = back_face(words)
    mark = Face(KeypadKey("."), decimal_mark(words), available=now.fraction)
    minus = Face(KeypadKey("-"), "−", available=now.below_zero)
    one, two, three, four, five, six, seven, eight, nine = (digit(str(n)) for n in range(1, 10))
    if most_columns(width) >= 4:
        faces = (one, two, three, rub_out, four, five, six, minus,
                 seven, eight, nine, mark, never_mind, digit("0"), enter)  # fmt: skip
        return Block(faces, 4, LEAST_HEIGHT)
    faces = (one, two, three, four, five, six, seven, eight, nine,
             mark, digit("0"), minus, never_mind, rub_out, enter)  # fmt: skip
    return Block(faces, 3, LEAST_HEIGHT)
