"""A rule for the kiosk's own words: every language has every message, with the same places."""

from __future__ import annotations

from collections.abc import Iterator, Mapping
from dataclasses import dataclass

from fluent.syntax import FluentParser
from fluent.syntax.ast import Junk, Message, VariableReference
from fluent.syntax.visitor import Visitor

from kiosk.checking.subject import Subject
from kiosk.languages.words import SOURCE, files_of
from kiosk.procedure.fault import Fault

Files = Mapping[str, str]
"""Name of a file of messages to its text."""


@dataclass(frozen=True, slots=True)
class _Said:
    """A message: its file, its line, and the names of what is filled in."""

    file: str
    line: int
    places: frozenset[str]


def missing_message(subject: Subject) -> Iterator[Fault]:
    """A message of the kiosk's own is not there in one of the languages, or not as in English."""
    english = _files(SOURCE)
    for language in subject.languages:
        if language != SOURCE:
            yield from lacking(language, _files(language), english)


def lacking(language: str, files: Files, english: Files) -> Iterator[Fault]:
    """Yield what the messages of a language lack of the English ones, and have too much."""
    wanted, _ = _messages(english)
    found, broken = _messages(files)
    for file, line in broken:
        what, mend = "a message cannot be read", "see how its neighbours are written"
        yield Fault(_path(language, file), line, "", what, mend)
    for name, said in wanted.items():
        there = found.get(name)
        if there is None:
            what, mend = f"the message is not there in '{language}'", "translate the English one"
            yield Fault(_path(language, said.file), 0, name, what, mend)
        elif there.places != said.places:
            what = f"'{language}' fills in {_list(there)}, and '{SOURCE}' {_list(said)}"
            mend = "use the same places in every language"
            yield Fault(_path(language, there.file), there.line, name, what, mend)
    for name, said in found.items():
        if name not in wanted:
            what, mend = f"there is no such message in '{SOURCE}'", "take it out, or mend its name"
            yield Fault(_path(language, said.file), said.line, name, what, mend)


class _Places(Visitor):
    """Gathers the names of what a message fills in."""

    def __init__(self) -> None:
        self.names: set[str] = set()

    def visit_VariableReference(self, node: VariableReference) -> None:  # noqa: N802
        """Take a name."""
        self.names.add(node.id.name)


def _messages(files: Files) -> tuple[dict[str, _Said], list[tuple[str, int]]]:
    """Return the messages by name, and file and line of what cannot be read."""
    found: dict[str, _Said] = {}
    broken: list[tuple[str, int]] = []
    for file, text in files.items():
        for entry in FluentParser().parse(text).body:
            line = text.count("\n", 0, entry.span.start if entry.span else 0) + 1
            if isinstance(entry, Junk):
                broken.append((file, line))
            elif isinstance(entry, Message):
                places = _Places()
                places.visit(entry)
                found[entry.id.name] = _Said(file, line, frozenset(places.names))
    return found, broken


def _files(language: str) -> Files:
    return {one.name: one.read_text("utf-8") for one in files_of(language)}


def _path(language: str, file: str) -> str:
    return f"kiosk/languages/{language}/{file}"


def _list(said: _Said) -> str:
    return ", ".join(f"${one}" for one in sorted(said.places)) or "nothing"
