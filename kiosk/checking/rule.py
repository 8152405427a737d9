"""What a rule is, and what it finds."""

from __future__ import annotations

from collections.abc import Callable, Iterable
from dataclasses import dataclass
from enum import StrEnum

from kiosk.checking.subject import Subject
from kiosk.procedure.fault import Fault


class Severity(StrEnum):
    """An error keeps a file from use; a warning does not."""

    ERROR = "error"
    WARNING = "warning"


@dataclass(frozen=True, slots=True)
class NotLookedAt:
    """A rule, or a part of it, that could not be applied on this machine."""

    what: str
    """A whole sentence: what was not looked at, and why."""


Finds = Callable[[Subject], Iterable[Fault | NotLookedAt]]


def _by_the_reading(_: Subject) -> Iterable[Fault | NotLookedAt]:
    return ()


@dataclass(frozen=True, slots=True)
class Rule:
    """One thing that can be wrong."""

    name: str
    """Kebab case; also the name of its page under `pages/`."""
    severity: Severity
    find: Finds = _by_the_reading
    """Without one, it is found while the files are read, fitted and proven."""


@dataclass(frozen=True, slots=True, order=True)
class Finding:
    """A fault, and the rule that found it."""

    fault: Fault
    severity: Severity
    rule: str

    def __str__(self) -> str:
        fault = self.fault
        place = f"{fault.file}:{fault.line}" if fault.line else fault.file
        field = f"{fault.field}: " if fault.field else ""
        return f"{place}: {self.severity} {self.rule}: {field}{fault.what}. To mend: {fault.mend}."
