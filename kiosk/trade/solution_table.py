"""What a code asks of a sanitizing solution, as typed rows; every row says where it stands."""

from __future__ import annotations

from collections.abc import Mapping
from dataclasses import dataclass, field
from decimal import Decimal
from enum import StrEnum
from typing import Any, ClassVar

_STRICT: dict[str, Any] = {"extra": "forbid", "strict": False, "coerce_numbers_to_str": True}


class Agent(StrEnum):
    """What sanitizes."""

    CHLORINE = "chlorine"
    IODINE = "iodine"
    QUAT = "quaternary ammonium"
    HOT_WATER = "hot water"
    HOT_WATER_MACHINE = "hot water machine"
    """Hot water in a machine, read at the utensil's surface."""


WATER = frozenset({Agent.HOT_WATER, Agent.HOT_WATER_MACHINE})
"""Agents that have a temperature and no strength."""


@dataclass(frozen=True, slots=True, kw_only=True)
class SolutionRow:
    """One combination that a code lists; all of its parts must be met."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    agent: Agent
    least: Decimal | None = None
    """Strength in mg/L from which the row holds; none for hot water, or where the label says it."""
    most: Decimal | None = None
    """Last strength in mg/L that the code prints for the row; none for an open end. Between two
    rows the weaker one holds."""
    by_label: bool = False
    """True when the strength is what the product's label says: without a label nothing passes."""
    ph_most: Decimal | None = None
    label_ph: bool = False
    """True when the label may set another pH."""
    temperature: Mapping[str, Decimal] = field(default_factory=dict)
    """Least temperature, as printed in °C and in °F; none when the code sets none."""
    hardness_most: Decimal | None = None
    """Most water hardness in mg/L as CaCO3."""
    label_hardness: bool = False
    """True when the label may set another hardness."""
    clause: str
    source: str
    tag: str
    edition: str | None = None
    """Edition of this row, when it is not the profile's."""
    date: str | None = None

    def __post_init__(self) -> None:
        _check(self.least, self.most, self.temperature)
        if self.agent in WATER:
            if not self.temperature:
                raise ValueError(f"a row for {self.agent} needs its least temperature")
        elif self.least is None and not self.by_label:
            raise ValueError(f"a row for {self.agent} needs 'least' or 'by_label: true'")


@dataclass(frozen=True, slots=True, kw_only=True)
class ContactRow:
    """How long a solution must stay on; the shortest time whose conditions are met holds."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    agent: Agent
    least: Decimal | None = None
    most: Decimal | None = None
    """Ends of the strength in mg/L, exactly as printed."""
    ph_most: Decimal | None = None
    temperature: Mapping[str, Decimal] = field(default_factory=dict)
    seconds: Decimal | None = None
    """None when the time is what the product's label says."""
    clause: str
    source: str
    tag: str
    edition: str | None = None
    date: str | None = None

    def __post_init__(self) -> None:
        _check(self.least, self.most, self.temperature)
        if self.seconds is not None and not self.seconds >= 0:
            raise ValueError(f"a contact time of {self.seconds} s cannot be; write 0 or more")


@dataclass(frozen=True, slots=True, kw_only=True)
class Cap:
    """The most that may be used without a rinse."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    agent: Agent
    compound: str | None = None
    """The compound that it is for; none for every compound of the agent."""
    most: Decimal
    """mg/L."""
    clause: str
    source: str
    tag: str
    edition: str | None = None
    date: str | None = None


@dataclass(frozen=True, slots=True, kw_only=True)
class SolutionTable:
    """All that one profile says of sanitizing solutions."""

    __pydantic_config__: ClassVar[Any] = _STRICT
    rows: tuple[SolutionRow, ...] = ()
    contacts: tuple[ContactRow, ...] = ()
    caps: tuple[Cap, ...] = ()

    def cap(self, agent: Agent, compound: str | None = None) -> Cap | None:
        """Return the lowest cap for an agent, or None when the profile has none."""
        known = [
            one for one in self.caps if one.agent == agent and one.compound in (None, compound)
        ]
        return min(known, key=lambda one: one.most, default=None)


def _check(least: Decimal | None, most: Decimal | None, temperature: Mapping[str, Decimal]) -> None:
    if temperature and set(temperature) != {"°C", "°F"}:
        raise ValueError("a temperature needs both printed numbers, as {°C: 24, °F: 75}")
    if least is not None and most is not None and least > most:
        raise ValueError(f"'least' ({least}) must not lie above 'most' ({most})")
