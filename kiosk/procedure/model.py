"""What the YAML files under procedures/ may say, as typed records."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum
from typing import Any, ClassVar

from kiosk.trade.solution_table import SolutionTable

Text = Mapping[str, str]
"""A sentence in each language: language tag (BCP 47, such as `en`) to text."""

_STRICT: dict[str, Any] = {"extra": "forbid", "strict": False, "coerce_numbers_to_str": True}


class Strength(StrEnum):
    """How sure a confirmation must be."""

    ANY = "any"
    PHRASE = "phrase"
    SECOND_PERSON = "second person"


class Signal(StrEnum):
    """Signal words as ANSI Z535 uses them; DITA calls the same list a hazard statement's type."""

    DANGER = "danger"
    WARNING = "warning"
    CAUTION = "caution"
    NOTICE = "notice"


class Standing(StrEnum):
    """What a machine is, between and during sessions."""

    IN_SERVICE = "in service"
    COMING_APART = "being taken apart"
    DRYING = "apart and drying"
    GOING_TOGETHER = "being put together"
    HELD = "held"
    UNFINISHED = "left unfinished"
    OUT_OF_SERVICE = "out of service"


@dataclass(frozen=True, slots=True, kw_only=True)
class Caution:
    """A hazard statement in the parts of OASIS DITA 1.3 `hazardstatement`."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    signal: Signal
    hazard: Text
    consequence: Text
    avoid: Text


@dataclass(frozen=True, slots=True, kw_only=True)
class HoldBlock:
    """A safety hold: the challenge phrase, and what to try afterwards to see that it is true."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    phrase: Text
    strength: Strength = Strength.PHRASE
    verify: Text | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class MeasureBlock:
    """A reading that the worker takes."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    quantity: str
    """What is measured, in the words of the record: `mix temperature`."""
    unit: str
    """Unit symbol, or the name of a setting that gives it."""
    limit: str | None = None
    """Name of a limit in the limits profile; none means: recorded, not judged."""
    least: Decimal
    """Smallest believable reading; below it the kiosk asks again."""
    most: Decimal
    """Largest believable reading."""
    choices: tuple[Decimal, ...] = ()
    """The closed list of values that can be said (the steps of the instrument)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MixBlock:
    """A sanitizer solution: the kiosk works out the dose, the worker reads the strip."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    volume: str
    """Name of the setting that holds the volume."""
    limit: str
    """Name of the strength limit in the limits profile."""
    choices: tuple[Decimal, ...]
    """What the test strip can show, in mg/L (ppm)."""


@dataclass(frozen=True, slots=True, kw_only=True)
class WaitBlock:
    """A time that must pass: contact, soak, circulation, freeze-down."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    at_least: str
    """Name of the setting that holds the time."""
    limit: str | None = None
    """Name of a time limit in the profile that the setting may not undercut."""


@dataclass(frozen=True, slots=True, kw_only=True)
class RepeatBlock:
    """Passes until the answer to a question is yes."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    least: int
    most: int
    until: Text
    """The question after each pass: `Did the water run clear?`"""


@dataclass(frozen=True, slots=True, kw_only=True)
class CountBlock:
    """A count of one part, compared with the machine's parts list."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    part: str


@dataclass(frozen=True, slots=True, kw_only=True)
class InspectBlock:
    """A look at one wearing part: good, replaced, or none left in stock."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    part: str


@dataclass(frozen=True, slots=True, kw_only=True)
class StepBlock:
    """One step. At most one of the task blocks may stand in it; with none it is a plain `do`."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    say: Text
    requires: tuple[str, ...] = ()
    establishes: tuple[str, ...] = ()
    ends: tuple[str, ...] = ()
    regardless: tuple[str, ...] = ()
    """Conditions that lapse and are in force here, and that this step can do without. Every other
    one it requires, whether it says so or not."""
    caution: Caution | None = None
    corrective: Text | None = None
    """What to do when the reading is out of its limit, the passes ran out, or the count is off."""
    when: Mapping[str, str] = field(default_factory=dict)
    """Options that this step belongs to: option name to value; absent options do not matter."""
    hold: HoldBlock | None = None
    measure: MeasureBlock | None = None
    mix: MixBlock | None = None
    wait: WaitBlock | None = None
    repeat: RepeatBlock | None = None
    count: CountBlock | None = None
    inspect: InspectBlock | None = None
    shows: str = ""
    """What the step points at: a part of the machine, or the name of a picture. A count and an
    inspection show their part without a word."""
    line: int = 0
    """Line in the file; the loader fills it in."""


TASKS = ("hold", "measure", "mix", "wait", "repeat", "count", "inspect")


@dataclass(frozen=True, slots=True, kw_only=True)
class Phase:
    """A run of steps with a name that the worker knows."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    title: Text
    steps: tuple[StepBlock, ...]


@dataclass(frozen=True, slots=True, kw_only=True)
class Procedure:
    """A procedure as its file has it, for any machine of one kind at any site."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    version: int
    title: Text
    machine_kind: str
    limits: str
    """Default limits profile; a site may choose another."""
    drafted: tuple[str, ...]
    """Languages whose text was drafted by machine and not yet checked by a fluent speaker."""
    follow: Text
    """What comes first wherever this file differs: the machine's manual, the label, local code."""
    begins_from: tuple[Standing, ...]
    during: Standing
    leaves: Standing
    phases: tuple[Phase, ...]
    file: str = ""
    """Path of the file; the loader fills it in."""

    @property
    def stays_in_service(self) -> bool:
        """True for what is walked while the machine serves: day checks, the taking of samples."""
        return self.during is Standing.IN_SERVICE is self.leaves


@dataclass(frozen=True, slots=True, kw_only=True)
class Part:
    """One line of a machine's parts list."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    name: Text
    count: int
    wears: bool = False
    lubricate: bool = False
    picture: str = ""
    """Name of its picture, when it is not called as the part is."""


@dataclass(frozen=True, slots=True, kw_only=True)
class MachineKind:
    """A kind of machine: its parts, and the settings and options in which machines differ."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    title: Text
    hoppers: int
    parts: Mapping[str, Part]
    settings: Mapping[str, str]
    """Setting name to quantity, such as `8 L` or `5 min`."""
    options: Mapping[str, tuple[str, ...]]
    """Option name to its values; the first is the default."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Condition:
    """A fact that steps may require, establish or end."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    name: Text
    lapses: bool = False
    """True when the worker's absence (restart, hand-over) may have changed it."""
    needs: tuple[str, ...] = ()
    """What must be in force wherever this is established, and as long as it lasts."""
    without: Text | None = None
    """The warning when a session is left while this is not in force."""
    present: Text | None = None
    """The warning when a session is left while this is in force. Such a condition is a hazard:
    it stays until a step ends it."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Problem:
    """A reason that a worker can give for calling a problem, and what to do about it."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    name: Text
    """Also the words to say."""
    corrective: Text
    source: str
    """Published source, or `common practice, no source`."""
    stops_service: bool = False
    """True when the machine may not go on in this session."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Common:
    """What all procedures share."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    conditions: Mapping[str, Condition]
    problems: Mapping[str, Problem]


@dataclass(frozen=True, slots=True, kw_only=True)
class Bounds:
    """A limit in one unit; either end may be open."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    least: Decimal | None = None
    most: Decimal | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class Limit:
    """A critical limit, with bounds for each unit in which a reading may be taken."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    bounds: Mapping[str, Bounds]
    clause: str
    source: str
    """Where the value was read or recalled."""
    tag: str
    """READ, MEM or CALC; with READ, from which text."""
    edition: str | None = None
    """Edition of this limit, when it is not the profile's."""
    date: str | None = None
    """Date of that edition."""


@dataclass(frozen=True, slots=True, kw_only=True)
class LimitsProfile:
    """The limits of one jurisdiction in one edition."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    id: str
    title: Text
    edition: str
    date: str
    limits: Mapping[str, Limit]
    solutions: SolutionTable = field(default_factory=SolutionTable)
    """Which sanitizing solutions the code lists. What it does not list does not pass."""
