"""YAML text to plain data with the line of every field.

Plain scalars follow the YAML 1.2 core schema, so that the spoken answers `yes` and `no` stay words
and `12:30` stays a time; PyYAML's own resolver follows YAML 1.1 and would turn them into booleans
and numbers. PyYAML's C parser is kept, for it is some ten times as fast as a 1.2 parser in Python.
"""

from __future__ import annotations

import re
from dataclasses import dataclass, field
from decimal import Decimal, InvalidOperation
from pathlib import Path
from typing import Any

import yaml

from kiosk.procedure.fault import Fault, FaultyFile

Where = tuple[str | int, ...]

_INTEGER = re.compile(r"[-+]?[0-9]+")
_DECIMAL = re.compile(r"[-+]?(\.[0-9]+|[0-9]+(\.[0-9]*)?)([eE][-+]?[0-9]+)?")
_LOADER = getattr(yaml, "CBaseLoader", yaml.BaseLoader)
_MOST_VALUES = 50_000
_DEEPEST = 40
"""An alias may stand for what it stands in, or double a file with every line; the shipped files
hold up to 1,200 values, seven deep."""


@dataclass(slots=True)
class YamlSource:
    """The data of one file, and the 1-based line of each path into it."""

    file: str
    data: Any
    lines: dict[Where, int] = field(default_factory=dict)

    def line(self, where: Where) -> int:
        """Return the line of a path, or of the nearest thing around it."""
        while where and where not in self.lines:
            where = where[:-1]
        return self.lines.get(where, 1)


def _plain(text: str) -> Any:
    if text in ("null", "Null", "NULL", "~", ""):
        return None
    if text in ("true", "True", "TRUE"):
        return True
    if text in ("false", "False", "FALSE"):
        return False
    if _INTEGER.fullmatch(text):
        return int(text)
    if _DECIMAL.fullmatch(text):
        return Decimal(text)
    return text


def read_yaml(path: Path) -> YamlSource:
    """Read one YAML 1.2 file.

    Raises FaultyFile when it cannot be read, is no YAML, or says a key twice.
    """
    name = str(path)
    try:
        node = yaml.compose(path.read_text(encoding="utf-8"), Loader=_LOADER)
    except (OSError, UnicodeDecodeError) as error:
        mend = "make the file readable, as UTF-8 text"
        raise FaultyFile([Fault(name, 0, "", f"cannot be read ({error})", mend)]) from error
    except yaml.YAMLError as error:
        mark = getattr(error, "problem_mark", None)
        line = mark.line + 1 if mark else 0
        told = getattr(error, "problem", None) or str(error).partition("\n")[0]
        what = f"is not YAML: {told}"
        mend = "look at the indents, colons and quotes at this line"
        raise FaultyFile([Fault(name, line, "", what, mend)]) from error
    source = YamlSource(name, None)
    faults: list[Fault] = []
    try:
        source.data = _value(node, (), source, faults)
    except _TooMuch as error:
        faults.append(error.args[0])
    if faults:
        raise FaultyFile(faults)
    return source


class _TooMuch(Exception):
    """A file says more than can be read; the fault is its argument."""


def _value(node: Any, where: Where, source: YamlSource, faults: list[Fault]) -> Any:
    if node is None:
        return None
    line = node.start_mark.line + 1
    source.lines.setdefault(where, line)
    if len(where) > _DEEPEST or len(source.lines) > _MOST_VALUES:
        what = f"holds more than {_MOST_VALUES:,} values, or more than {_DEEPEST} in one another"
        mend = "write out what an alias (as *mix) stands for here, or split the file"
        raise _TooMuch(Fault(source.file, line, dotted(where[:_DEEPEST]), what, mend))
    if isinstance(node, yaml.ScalarNode):
        if node.style in ("'", '"', "|", ">"):
            return node.value
        try:
            return _plain(node.value)
        except (ValueError, InvalidOperation):
            what, mend = f"'{node.value[:20]}...' is too long a number", "write a plain one, as 4.5"
            faults.append(Fault(source.file, line, dotted(where), what, mend))
            return None
    if isinstance(node, yaml.SequenceNode):
        return [_value(one, (*where, i), source, faults) for i, one in enumerate(node.value)]
    found: dict[str, Any] = {}
    for key_node, value_node in node.value:
        key = str(key_node.value)
        line = key_node.start_mark.line + 1
        if key in found:
            what, mend = f"the key '{key}' stands twice", "keep one of them"
            faults.append(Fault(source.file, line, dotted(where), what, mend))
        source.lines[(*where, key)] = line
        found[key] = _value(value_node, (*where, key), source, faults)
    return found


def dotted(where: Where) -> str:
    """Return a path as people write it: `phases[0].steps[3].say`."""
    text = ""
    for part in where:
        text += f"[{part}]" if isinstance(part, int) else f".{part}" if text else str(part)
    return text
