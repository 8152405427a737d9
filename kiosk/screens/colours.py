"""The kiosk's own colours: pairs of a text and a ground, for the light and the dark theme."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass
from typing import Final

from textual.theme import Theme


@dataclass(frozen=True, slots=True)
class Pair:
    """A text colour and the ground that it stands on, as #RRGGBB."""

    text: str
    ground: str


DARK: Final[Mapping[str, Pair]] = {
    "page": Pair("#FFFFFF", "#000000"),
    "status": Pair("#E8EEF4", "#17212C"),
    "primary": Pair("#000000", "#FFD23F"),
    "filled": Pair("#000000", "#7CE38B"),
    "listed": Pair("#FFFFFF", "#0F6358"),
    "secondary": Pair("#FFFFFF", "#3D5B78"),
    "unavailable": Pair("#C3CCD6", "#1A232D"),
    "danger": Pair("#FFFFFF", "#A3001B"),
    "warning": Pair("#000000", "#FF8C1A"),
    "caution": Pair("#000000", "#FFD23F"),
    "notice": Pair("#FFFFFF", "#004A8F"),
    "held": Pair("#FF9F40", "#000000"),
    "look": Pair("#FFD23F", "#000000"),
}
"""Signal words in the colours of ANSI Z535: red, orange, yellow, blue."""

LIGHT: Final[Mapping[str, Pair]] = {
    "page": Pair("#000000", "#FFFFFF"),
    "status": Pair("#10181F", "#E1E8EF"),
    "primary": Pair("#FFFFFF", "#00427A"),
    "filled": Pair("#FFFFFF", "#0E5A22"),
    "listed": Pair("#FFFFFF", "#0B5449"),
    "secondary": Pair("#FFFFFF", "#37474F"),
    "unavailable": Pair("#37414A", "#E6EAEE"),
    "danger": Pair("#FFFFFF", "#A3001B"),
    "warning": Pair("#000000", "#FF8C1A"),
    "caution": Pair("#000000", "#FFD23F"),
    "notice": Pair("#FFFFFF", "#004A8F"),
    "held": Pair("#7A2E00", "#FFFFFF"),
    "look": Pair("#00427A", "#FFFFFF"),
}


def variables(pairs: Mapping[str, Pair]) -> dict[str, str]:
    """Return the names that the style sheet uses: `page-text`, `page-ground` and so on."""
    texts = {f"{name}-text": pair.text for name, pair in pairs.items()}
    return texts | {f"{name}-ground": pair.ground for name, pair in pairs.items()}


def _theme(name: str, pairs: Mapping[str, Pair], *, dark: bool) -> Theme:
    page = pairs["page"]
    return Theme(
        name=name,
        primary=pairs["primary"].ground,
        foreground=page.text,
        background=page.ground,
        surface=page.ground,
        panel=page.ground,
        dark=dark,
        text_alpha=1.0,
        variables=variables(pairs),
    )


def themes() -> tuple[Theme, Theme]:
    """Return the dark theme and the light one."""
    return _theme("night", DARK, dark=True), _theme("day", LIGHT, dark=False)
