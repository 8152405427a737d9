"""One page for the wall: what can be said to the kiosk, and what to do when something is wrong."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from importlib import resources
from typing import Final

from kiosk.drawing.markup import Child, Element, add, as_html, element
from kiosk.languages.words import Words
from kiosk.procedure.model import Problem

_SAID: Final = (
    "next", "repeat", "back", "problem", "remark", "pause", "continue", "hand-over", "reckon",
    "language", "help", "end",
)  # fmt: skip
"""What can be said, the most used first; `quick-NAME` tells what it does."""


def quick_sheet(problems: Mapping[str, Problem], words: Words, *, drafted: bool) -> str:
    """Return the sheet in one language: one HTML document that needs no other file.

    `drafted` marks a language whose text no fluent speaker has checked.
    """
    say = words.say
    style = resources.files("kiosk.drawing").joinpath("sheet.css").read_text("utf-8")
    head = element(
        "head",
        element("meta", charset="utf-8"),
        element("meta", name="viewport", content="width=device-width"),
        element("title", say("quick-title")),
        element("style", style),
    )
    body = element("body", class_="quick")
    add(body, element("h1", say("quick-title")))
    if drafted:
        add(body, element("p", say("sheet-drafted"), class_="notice"))
    add(body, element("p", say("quick-no-lockout"), class_="follow no-lockout"))
    add(body, element("h2", say("quick-say-it")), _said(words))
    rules = ("quick-whole", "quick-hold", "quick-number", "quick-loud", "quick-touch")
    add(body, element("ul", *(element("li", say(name)) for name in rules), class_="rules"))
    add(body, element("h2", say("sheet-problems")))
    add(body, element("p", say("help-hurt"), class_="no-lockout"))
    add(body, _problems(problems, words))
    return as_html(element("html", head, body, lang=words.language))


def _said(words: Words) -> Element:
    table = element("table", class_="problems")
    for name in _SAID:
        ways = words.ways(f"say-{name}")
        said: list[Child] = []
        for way in ways:
            said += [*([" / "] if said else []), element("strong", way)]
        told = words.say(f"quick-{name}")
        add(table, element("tr", element("th", *said, scope="row"), element("td", told)))
    return table


def _problems(problems: Mapping[str, Problem], words: Words) -> Element:
    table = element("table", class_="problems")
    for row in _rows(problems, words):
        add(table, row)
    return table


def _rows(problems: Mapping[str, Problem], words: Words) -> Iterator[Element]:
    for problem in problems.values():
        cell: list[Child] = [words.text(problem.corrective)]
        if problem.stops_service:
            cell += [" ", element("strong", words.say("sheet-stops-service"))]
        name = element("th", words.text(problem.name), scope="row")
        yield element("tr", name, element("td", *cell))
