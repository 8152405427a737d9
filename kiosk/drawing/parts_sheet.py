"""One page of drawings for the wall: the parts of a machine, and where things go."""

from __future__ import annotations

from collections.abc import Iterator, Sequence
from importlib import resources

from kiosk.drawing.markup import Child, Element, as_html, element
from kiosk.languages.words import Words
from kiosk.pictures.gallery import PICTURES, picture
from kiosk.pictures.svg import drawn, title, told
from kiosk.procedure.model import MachineKind, Part, Procedure

_ROOM = 52.0, 34.0
"""Room for a drawing, in mm."""


def parts_sheet(kind: MachineKind, procedures: Sequence[Procedure], words: Words) -> str:
    """Return the page in one language: one HTML document that needs no other file.

    After the parts come the pictures that the kind's procedures show of something else.
    """
    style = resources.files("kiosk.drawing").joinpath("sheet.css").read_text("utf-8")
    heading = f"{words.say('pictures-title')} – {words.text(kind.title)}"
    head = element(
        "head",
        element("meta", charset="utf-8"),
        element("meta", name="viewport", content="width=device-width"),
        element("title", heading),
        element("style", style),
    )
    drafted = any(words.language in one.drafted for one in procedures)
    body: list[Child] = [element("h1", heading)]
    if drafted:
        body.append(element("p", words.say("sheet-drafted"), class_="notice"))
    body += [
        element("p", words.say("pictures-schematic"), class_="follow"),
        element("p", words.say("pictures-look")),
        element("h2", words.say("pictures-parts")),
        element("div", *_parts(kind, words), class_="pictures"),
        element("h2", words.say("pictures-places")),
        element("div", *_places(kind, procedures, words), class_="pictures"),
    ]
    return as_html(element("html", head, element("body", *body), lang=words.language))


def _parts(kind: MachineKind, words: Words) -> Iterator[Element]:
    for name, part in kind.parts.items():
        shown = part.picture or name
        notes = [words.say(note) for note in _notes(part)]
        if shown in PICTURES:
            notes.insert(0, told(shown, words))
        yield _figure(shown, f"{words.text(part.name)} × {part.count}", notes, words)


def _notes(part: Part) -> Iterator[str]:
    if part.wears:
        yield "pictures-wears"
    if part.lubricate:
        yield "pictures-lubricate"


def _places(
    kind: MachineKind, procedures: Sequence[Procedure], words: Words
) -> Iterator[Element]:  # fmt: skip
    of_parts = {part.picture or name for name, part in kind.parts.items()}
    wanted = {
        step.shows
        for one in procedures
        for phase in one.phases
        for step in phase.steps
        if step.shows not in kind.parts
    }
    for name in PICTURES:
        if name in wanted - of_parts:
            yield _figure(name, title(name, words), [told(name, words)], words)


def _figure(name: str, heading: str, notes: Sequence[str], words: Words) -> Element:
    lines: list[Child] = [element("strong", heading)]
    for note in notes:
        lines += [element("br"), note]
    image = [drawn(picture(name), words, *_ROOM)] if name in PICTURES else []
    return element("figure", *image, element("figcaption", *lines))
