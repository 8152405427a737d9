"""What a browser may say. It comes from outside, so whatever is not one of these is nothing."""

from __future__ import annotations

import json
from dataclasses import dataclass
from enum import StrEnum
from typing import Any, Final

LONGEST: Final = 200
"""Bytes of a message; no honest one is half as long."""
LEAST_SIZE: Final = (60, 18)
MOST_SIZE: Final = (160, 60)
"""Columns and rows between which a screen may choose."""

NAMED_KEYS: Final = {
    "Enter": "enter",
    "Escape": "escape",
    "Backspace": "backspace",
    "Delete": "delete",
    "Tab": "tab",
    "ArrowUp": "up",
    "ArrowDown": "down",
    "ArrowLeft": "left",
    "ArrowRight": "right",
    "PageUp": "pageup",
    "PageDown": "pagedown",
    "Home": "home",
    "End": "end",
}
"""Keys that a browser names, and what the application calls them. None of them ends the kiosk."""


@dataclass(frozen=True, slots=True)
class Fit:
    """So many cells fit on the screen."""

    columns: int
    rows: int


class Finger(StrEnum):
    """What a finger did."""

    DOWN = "down"
    MOVE = "move"
    UP = "up"


@dataclass(frozen=True, slots=True)
class Touch:
    """A finger, or a mouse, at a cell."""

    finger: Finger
    x: int
    y: int


@dataclass(frozen=True, slots=True)
class Away:
    """The finger is no longer known: nothing was meant."""


@dataclass(frozen=True, slots=True)
class Scroll:
    """What lies at a cell is to be moved by a row."""

    x: int
    y: int
    down: bool


@dataclass(frozen=True, slots=True)
class Key:
    """A key: one printable character, or the application's name of it."""

    name: str
    character: str


@dataclass(frozen=True, slots=True)
class TakeOver:
    """This screen wants to hold the kiosk."""


FromScreen = Fit | Touch | Away | Scroll | Key | TakeOver


def read(text: str) -> FromScreen | None:
    """Return what a browser said; None when it is none of what may be said."""
    if len(text) > LONGEST:
        return None
    try:
        said = json.loads(text)
    except (ValueError, RecursionError):
        return None
    match said:
        case ["fit", columns, rows] if _within(columns, 10_000) and _within(rows, 10_000):
            return Fit(
                min(max(columns, LEAST_SIZE[0]), MOST_SIZE[0]),
                min(max(rows, LEAST_SIZE[1]), MOST_SIZE[1]),
            )
        case ["down" | "move" | "up" as finger, x, y] if _cell(x, y):
            return Touch(Finger(finger), x, y)
        case ["away"]:
            return Away()
        case ["scroll", x, y, bool(down)] if _cell(x, y):
            return Scroll(x, y, down)
        case ["key", str(key)]:
            return _key(key)
        case ["take"]:
            return TakeOver()
        case _:
            return None


def _key(key: str) -> Key | None:
    if key in NAMED_KEYS:
        return Key(NAMED_KEYS[key], "")
    return Key("", key) if len(key) == 1 and key.isprintable() else None


def _cell(x: Any, y: Any) -> bool:
    return _within(x, MOST_SIZE[0]) and _within(y, MOST_SIZE[1])


def _within(number: Any, most: int) -> bool:
    # A truth value is a whole number to Python, and none here.
    return type(number) is int and 0 <= number < most
