"""A TOML file that is changed in place: people's own comments and their order stay as they are."""

from __future__ import annotations

import re
import tomllib
from collections.abc import Iterator, Mapping
from copy import deepcopy
from dataclasses import dataclass
from decimal import Decimal
from typing import Any, Final

import tomlkit
from tomlkit.exceptions import TOMLKitError
from tomlkit.items import Item

_HEADER: Final = re.compile(r"\s*(\[\[?)\s*([^\]]+?)\s*\]")

Value = str | bool | int | Decimal | tuple[str, ...] | Mapping[str, str]


@dataclass(frozen=True, slots=True)
class _Section:
    """The lines of one table, up to the next header; the first one has no header and no name."""

    name: str
    is_listed: bool
    start: int
    end: int


class NotToml(Exception):
    """A text is not TOML; the message says where."""


class Document:
    """The text of a TOML file, and what it says."""

    def __init__(self, text: str) -> None:
        """Take a text. Raises NotToml."""
        try:
            self.data: dict[str, Any] = tomllib.loads(text)
            tomlkit.parse(text)
        except (ValueError, RecursionError, TOMLKitError) as error:
            raise NotToml(str(error)) from error
        self.text = text

    def get(self, path: str) -> Any:
        """Return the value at a path, as `sanitizer.name`; None where there is none."""
        found: Any = self.data
        for name in path.split("."):
            found = found.get(name) if isinstance(found, dict) else None
        return found

    def put(self, path: str, value: Value, comment: str = "") -> None:
        """Set a value; where field or table are new, a comment is written above them."""
        table, _, name = path.rpartition(".")
        expected = deepcopy(self.data)
        (expected.setdefault(table, {}) if table else expected)[name] = _plain(value)
        if self.get(path) is not None:
            self._replace(path.split("."), value)
            return
        line = f"{_key(name)} = {_item(value).as_string()}"
        if table and table not in self.data:
            self._append(f"[{table}]\n{line}", comment)
        elif not self._insert(self._section(table), _commented(line, "" if table else comment),
                              expected, apart=not table):  # fmt: skip
            self._replace(path.split("."), value)

    def drop(self, path: str) -> None:
        """Take a value, or a whole table, out."""
        *above, name = path.split(".")
        if self.get(path) is None:
            return
        document = tomlkit.parse(self.text)
        del self._at(document, above)[name]
        self._take(tomlkit.dumps(document))

    # Lists of tables, as [[machines]].

    def listed(self, what: str) -> list[dict[str, Any]]:
        """Return the tables of a list."""
        found = self.data.get(what, [])
        return [dict(one) for one in found if isinstance(one, dict)]

    def add(self, what: str, record: Mapping[str, Value], comment: str = "") -> None:
        """Add a table to a list."""
        lines = "\n".join(f"{_key(n)} = {_item(v).as_string()}" for n, v in record.items())
        if not self.data.get(what):
            self.drop(what)
            self._append(f"[[{what}]]\n{lines}", comment)
            return
        expected = deepcopy(self.data)
        expected[what].append({name: _plain(value) for name, value in record.items()})
        if not self._insert(self._group(what), f"[[{what}]]\n{lines}", expected, apart=True):
            document = tomlkit.parse(self.text)
            table = tomlkit.inline_table()
            for name, value in record.items():
                table[name] = _item(value)
            self._at(document, [what]).append(table)
            self._take(tomlkit.dumps(document))

    def change(self, what: str, place: int, name: str, value: Value) -> None:
        """Set a value in the table at a place of a list, counted from 0."""
        if name in self.data[what][place]:
            self._replace([what, place, name], value)
            return
        expected = deepcopy(self.data)
        expected[what][place][name] = _plain(value)
        own = [one for one in self._sections() if one.name == what and one.is_listed]
        line = f"{_key(name)} = {_item(value).as_string()}"
        section = own[place] if place < len(own) else None
        if not self._insert(section, line, expected, apart=False):
            self._replace([what, place, name], value)

    def remove(self, what: str, place: int) -> None:
        """Take the table at a place out of a list. Comments around it stay."""
        expected = deepcopy(self.data)
        del expected[what][place]
        if not expected[what]:
            del expected[what]
        group = self._groups(what)
        if place < len(group):
            lines = self.text.splitlines(keepends=True)
            start, end = group[place].start, group[place].end
            del lines[start : _last_value(lines, start, end) + 1]
            if self._would(expected, "".join(lines)):
                return
        document = tomlkit.parse(self.text)
        del self._at(document, [what])[place]
        self._take(tomlkit.dumps(document))

    # How it is done.

    def _take(self, text: str) -> None:
        self.data, self.text = tomllib.loads(text), text

    def _would(self, expected: Mapping[str, Any], text: str) -> bool:
        """Take a text when it says what is expected; return whether it does."""
        try:
            found = tomllib.loads(text)
        except ValueError:
            return False
        if found != expected:
            return False
        self.data, self.text = found, text
        return True

    def _replace(self, where: list[Any], value: Value) -> None:
        document = tomlkit.parse(self.text)
        *above, name = where
        self._at(document, above)[name] = _item(value)
        self._take(tomlkit.dumps(document))

    @staticmethod
    def _at(document: Any, above: list[Any]) -> Any:
        for name in above:
            document = document[name]
        return document

    def _append(self, lines: str, comment: str) -> None:
        above = f"{self.text.rstrip()}\n\n" if self.text.strip() else ""
        self._take(f"{above}{_commented(lines, comment)}\n")

    def _insert(
        self, section: _Section | None, text: str, expected: Mapping[str, Any], *, apart: bool
    ) -> bool:
        """Write lines after the last value of a section; False where that does not do it."""
        if section is None:
            return False
        lines = self.text.splitlines(keepends=True)
        place = _last_value(lines, section.start, section.end) + 1
        if place and not lines[place - 1].endswith("\n"):
            lines[place - 1] += "\n"
        before = "\n" if apart and place and lines[place - 1].strip() else ""
        lines.insert(place, f"{before}{text}\n")
        return self._would(expected, "".join(lines))

    def _section(self, name: str) -> _Section | None:
        found = (one for one in self._sections() if one.name == name and not one.is_listed)
        return next(found, None)

    def _groups(self, what: str) -> list[_Section]:
        """Return each table of a list with the tables inside it."""
        found: list[_Section] = []
        for one in self._sections():
            if one.name == what and one.is_listed:
                found.append(one)
            elif found and one.start == found[-1].end and one.name.startswith(f"{what}."):
                found[-1] = _Section(what, True, found[-1].start, one.end)
        return found

    def _group(self, what: str) -> _Section | None:
        found = self._groups(what)
        return found[-1] if found else None

    def _sections(self) -> Iterator[_Section]:
        lines = self.text.splitlines(keepends=True)
        start, name, is_listed = 0, "", False
        for number, line in enumerate(lines):
            header = _HEADER.match(line)
            if header is None or not _is_whole("".join(lines[:number])):
                continue
            yield _Section(name, is_listed, start, number)
            start, name, is_listed = number, header[2], header[1] == "[["
        yield _Section(name, is_listed, start, len(lines))


def _is_whole(text: str) -> bool:
    """True when a text ends outside of any list or string of several lines."""
    try:
        tomllib.loads(text)
    except ValueError:
        return False
    return True


def _last_value(lines: list[str], start: int, end: int) -> int:
    """Return the last line of a section that is neither empty nor a comment; before it if none."""
    for number in range(end - 1, start - 1, -1):
        line = lines[number].strip()
        if line and not line.startswith("#"):
            return number
    # A file of comments alone: what is new goes below the first of them.
    for number in range(start, end):
        if not lines[number].strip():
            return number
    return end - 1


def _commented(lines: str, comment: str) -> str:
    above = "".join(f"# {line}\n" for line in comment.splitlines())
    return f"{above}{lines}"


def _key(name: str) -> str:
    return tomlkit.key(name).as_string()


def _item(value: Value) -> Item:
    if isinstance(value, Decimal):
        return tomlkit.value(f"{value.normalize():f}")
    if isinstance(value, Mapping):
        table = tomlkit.inline_table()
        for name, text in value.items():
            table[name] = text
        return table
    return tomlkit.item(list(value) if isinstance(value, tuple) else value)


def _plain(value: Value) -> Any:
    """Return a value as `tomllib` reads it."""
    return tomllib.loads(f"x = {_item(value).as_string()}")["x"]
