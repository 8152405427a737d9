"""What is wrong in a file, where, and how to mend it."""

from __future__ import annotations

from dataclasses import dataclass


def harmless(line: str) -> str:
    """Escape what a terminal would obey, or what turns the reading around."""
    escaped = (x if x.isprintable() else x.encode("unicode_escape").decode() for x in line)
    return "".join(escaped)


@dataclass(frozen=True, slots=True, order=True)
class Fault:
    """One thing that is wrong in a file."""

    file: str
    line: int
    """1-based; 0 when no line can be named."""
    field: str
    what: str
    mend: str
    rule: str = ""
    """Short name of the rule that it breaks, where that is known here already."""

    def __str__(self) -> str:
        place = f"{self.file}:{self.line}" if self.line else self.file
        field = f"{self.field}: " if self.field else ""
        return harmless(f"{place}: {field}{self.what}. To mend: {self.mend}.")


class FaultyFile(Exception):
    """A file cannot be used; `faults` has every reason found."""

    def __init__(self, faults: list[Fault]) -> None:
        self.faults = sorted(faults)
        super().__init__("\n".join(str(fault) for fault in self.faults))
