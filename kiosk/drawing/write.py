"""Write a plan's picture and wall sheets into a folder."""

from __future__ import annotations

import re
from collections.abc import Collection, Mapping, Sequence
from pathlib import Path

from kiosk.drawing.parts_sheet import parts_sheet
from kiosk.drawing.picture import picture
from kiosk.drawing.quick import quick_sheet
from kiosk.drawing.sheet import sheet
from kiosk.languages.words import languages as known_languages
from kiosk.languages.words import words
from kiosk.procedure.load import Library
from kiosk.procedure.model import Problem
from kiosk.procedure.plan import Plan

_NO_NAME = re.compile(r"[^\w-]+")


class CannotDraw(Exception):
    """A plan cannot be drawn as asked; the message says why and how to mend it."""


def draw(plan: Plan, languages: Sequence[str], into: Path) -> list[Path]:
    """Write `PROCEDURE-MACHINE.svg` and a `PROCEDURE-MACHINE-LANGUAGE.html` for each language.

    The picture is in English when that is among the languages, else in the first one. The folder
    `into` is made when it is missing, and files of the same names are replaced. Returns the paths,
    the picture first. Raises CannotDraw for no language or an unknown one, OSError when the folder
    cannot be written.
    """
    wanted = _known(languages)
    stem = f"{_plain(plan.procedure)}-{_plain(plan.machine)}"
    pictured = "en" if "en" in wanted else wanted[0]
    drawn = {f"{stem}.svg": picture(plan, words(pictured))}
    drawn.update({f"{stem}-{one}.html": sheet(plan, words(one)) for one in wanted})
    return _write(drawn, into)


def draw_quick(
    problems: Mapping[str, Problem], languages: Sequence[str], drafted: Collection[str], into: Path
) -> list[Path]:
    """Write a `what-to-say-LANGUAGE.html` for each language, as `draw` does; return the paths."""
    wanted = _known(languages)
    drawn = {
        f"what-to-say-{one}.html": quick_sheet(problems, words(one), drafted=one in drafted)
        for one in wanted
    }
    return _write(drawn, into)


def draw_parts(
    library: Library, kinds: Collection[str], languages: Sequence[str], into: Path
) -> list[Path]:
    """Write a `parts-KIND-LANGUAGE.html` for each kind and language, as `draw` does."""
    wanted = _known(languages)
    drawn = {
        f"parts-{_plain(kind.id)}-{one}.html": parts_sheet(
            kind,
            [of for of in library.procedures.values() if of.machine_kind == kind.id],
            words(one),
        )
        for kind in library.kinds.values()
        if kind.id in kinds
        for one in wanted
    }
    return _write(drawn, into)


def _known(languages: Sequence[str]) -> tuple[str, ...]:
    known = known_languages()
    wanted = tuple(dict.fromkeys(languages))
    if not wanted:
        raise CannotDraw(f"No language was given. Name one or more of: {', '.join(known)}.")
    for language in wanted:
        if language not in known:
            raise CannotDraw(
                f"The kiosk has no words in '{language}'. Name one or more of: {', '.join(known)}."
            )
    return wanted


def _write(drawn: Mapping[str, str], into: Path) -> list[Path]:
    into.mkdir(parents=True, exist_ok=True)
    for name, text in drawn.items():
        (into / name).write_text(text, encoding="utf-8")
    return [into / name for name in drawn]


def _plain(name: str) -> str:
    """Return an id as part of a file name; one that holds a path stays within the folder."""
    return _NO_NAME.sub("-", name).strip("-") or "unnamed"
