"""Whether a sanitizing solution is strong enough by a code's rows, and how long it must stay on."""

from __future__ import annotations

from collections.abc import Mapping, Sequence
from dataclasses import dataclass
from decimal import Decimal
from enum import StrEnum

from kiosk.trade.keyed import Keyed
from kiosk.trade.solution_table import WATER, Agent, Cap, ContactRow, SolutionRow, SolutionTable
from kiosk.trade.units import Quantity

_SAYS = {
    "bad-strength": "a strength of {strength} mg/L cannot be; read the strip again",
    "bad-ph": "a pH of {ph} cannot be; it lies between 0 and 14, read the strip again",
    "bad-hardness": "a hardness of {hardness} mg/L cannot be; test the water again",
    "bad-temperature": "{temperature} cannot be the temperature of a solution; give it in °C or °F "
    "and read again",
    "other-label": "the label is for {label}, the solution is {agent}; use the right label",
}
_ABSURD = {"°C": (Decimal(-5), Decimal(110)), "°F": (Decimal(23), Decimal(230))}


class NotASolution(Keyed, ValueError):
    """A reading cannot be; the message says what to mend."""

    says = _SAYS


@dataclass(frozen=True, slots=True, kw_only=True)
class Solution:
    """A solution as it was tested; None for what was not tested."""

    agent: Agent
    strength: Decimal | None = None
    """mg/L of agent (for chlorine: free available chlorine), as the strip shows it."""
    ph: Decimal | None = None
    temperature: Quantity | None = None
    """In °C or °F, in the unit in which it was taken."""
    hardness: Decimal | None = None
    """mg/L as CaCO3, of the water."""

    def __post_init__(self) -> None:
        if self.strength is not None and not (self.strength.is_finite() and self.strength >= 0):
            raise NotASolution("bad-strength", strength=self.strength)
        if self.ph is not None and not (self.ph.is_finite() and 0 <= self.ph <= 14):
            raise NotASolution("bad-ph", ph=self.ph)
        if self.hardness is not None and not (self.hardness.is_finite() and self.hardness >= 0):
            raise NotASolution("bad-hardness", hardness=self.hardness)
        if self.temperature is not None:
            least, most = _ABSURD.get(self.temperature.unit, (Decimal(1), Decimal(0)))
            value = self.temperature.value
            if not (value.is_finite() and least <= value <= most):
                raise NotASolution("bad-temperature", temperature=self.temperature)


@dataclass(frozen=True, slots=True, kw_only=True)
class Label:
    """What the product's label asks; None for what it does not print. It narrows, never widens,
    but for a pH or a hardness where the code lets the label speak."""

    agent: Agent
    least: Decimal | None = None
    most: Decimal | None = None
    """Strength in mg/L."""
    seconds: Decimal | None = None
    """Contact time."""
    ph_most: Decimal | None = None
    hardness_most: Decimal | None = None
    temperature: Quantity | None = None
    """Least temperature in °C or °F; judged in the reading's unit."""
    compound: str | None = None


class Kind(StrEnum):
    """Something to change or to find out, before a solution can pass."""

    STRONGER = "stronger"
    WEAKER = "weaker"
    WARMER = "warmer"
    LOWER_PH = "lower pH"
    SOFTER = "softer water"
    MEASURE_STRENGTH = "measure strength"
    MEASURE_PH = "measure pH"
    MEASURE_TEMPERATURE = "measure temperature"
    MEASURE_HARDNESS = "measure hardness"
    READ_LABEL = "read label"


@dataclass(frozen=True, slots=True)
class Need:
    """One such thing, and the value that it must reach."""

    kind: Kind
    value: Quantity | None = None


class Why(StrEnum):
    """What a verdict rests on."""

    LISTED = "listed"
    """The code lists this combination, and the label does not object."""
    NO_ROW = "no row"
    """The code lists no such combination. No row, no pass."""
    OVER_CAP = "over cap"
    OFF_LABEL = "off label"
    NO_CONTACT = "no contact time"
    """The combination is listed, but nothing says how long it must stay on."""


@dataclass(frozen=True, slots=True, kw_only=True)
class Verdict:
    """Whether a solution may be used."""

    why: Why
    seconds: Decimal | None = None
    """Least contact time; None when it does not pass."""
    row: SolutionRow | None = None
    contact: ContactRow | None = None
    cap: Cap | None = None
    """The cap that is passed; None otherwise."""
    ways: tuple[tuple[Need, ...], ...] = ()
    """What would make it pass: any one of these, each with all of its needs."""

    @property
    def passes(self) -> bool:
        """True when the solution may be used."""
        return self.why is Why.LISTED


def judge(solution: Solution, table: SolutionTable, label: Label | None = None) -> Verdict:
    """Judge a solution by a profile's rows and, where there is one, by the product's label.

    The strength picks the row: the one with the highest `least` that is not above it. A combination
    that stands in no row is refused. Raises NotASolution when the label is for another agent.
    """
    if label is not None and label.agent != solution.agent:
        raise NotASolution("other-label", label=label.agent, agent=solution.agent)
    cap = table.cap(solution.agent, label.compound if label else None)
    if cap is not None and solution.strength is not None and solution.strength > cap.most:
        need = Need(Kind.WEAKER, Quantity(cap.most, "mg/L"))
        return Verdict(why=Why.OVER_CAP, cap=cap, ways=((need,),))
    rows = [row for row in table.rows if row.agent == solution.agent]
    needs = [(row, _needs(solution, row, rows, label)) for row in _within_reach(solution, rows)]
    row = next((row for row, unmet in needs if not unmet), None)
    if row is None:
        return Verdict(why=Why.NO_ROW, ways=_fewest([unmet for _, unmet in needs]))
    off = _off_label(solution, label)
    if off:
        return Verdict(why=Why.OFF_LABEL, row=row, ways=(off,))
    return _with_contact(solution, table, label, row)


def _within_reach(solution: Solution, rows: Sequence[SolutionRow]) -> list[SolutionRow]:
    """Return the rows of this strength and of every higher one."""
    if solution.strength is None:
        return list(rows)
    below = [row.least or Decimal(0) for row in rows if (row.least or 0) <= solution.strength]
    band = max(below, default=Decimal(0))
    return [row for row in rows if (row.least or Decimal(0)) >= band]


def _needs(
    solution: Solution, row: SolutionRow, rows: Sequence[SolutionRow], label: Label | None
) -> tuple[Need, ...]:
    """Return what keeps a solution out of a row."""
    found: list[Need] = []
    if row.by_label and (label is None or (label.least is None and label.most is None)):
        found.append(Need(Kind.READ_LABEL))
    if solution.agent not in WATER:
        found += _range(solution.strength, row.least, _end(row, rows))
    ph_most = row.ph_most
    if row.label_ph and label is not None and label.ph_most is not None:
        ph_most = label.ph_most
    found += _at_most(solution.ph, ph_most, Kind.MEASURE_PH, Kind.LOWER_PH, "pH")
    hardness = row.hardness_most
    if row.label_hardness and label is not None and label.hardness_most is not None:
        hardness = label.hardness_most
    found += _at_most(solution.hardness, hardness, Kind.MEASURE_HARDNESS, Kind.SOFTER, "mg/L")
    found += _warm_enough(solution.temperature, row.temperature)
    return tuple(found)


def _end(row: SolutionRow, rows: Sequence[SolutionRow]) -> Decimal | None:
    """Return the last strength of a row; None when the next row follows without a gap.

    Rows print whole mg/L. A reading between the end of one and the start of the next is judged by
    the weaker one, whose conditions are the harder.
    """
    if row.most is None:
        return None
    follows = any(0 < (one.least or Decimal(0)) - row.most <= 1 for one in rows)
    return None if follows else row.most


def _range(value: Decimal | None, least: Decimal | None, most: Decimal | None) -> list[Need]:
    if least is None and most is None:
        return []
    if value is None:
        return [Need(Kind.MEASURE_STRENGTH)]
    if least is not None and value < least:
        return [Need(Kind.STRONGER, Quantity(least, "mg/L"))]
    if most is not None and value > most:
        return [Need(Kind.WEAKER, Quantity(most, "mg/L"))]
    return []


def _at_most(
    value: Decimal | None, most: Decimal | None, measure: Kind, change: Kind, unit: str
) -> list[Need]:
    if most is None:
        return []
    if value is None:
        return [Need(measure)]
    return [Need(change, Quantity(most, unit))] if value > most else []


def _warm_enough(temperature: Quantity | None, least: Mapping[str, Decimal]) -> list[Need]:
    """Judge a temperature in its own unit, against the number that is printed for that unit."""
    if not least:
        return []
    if temperature is None:
        return [Need(Kind.MEASURE_TEMPERATURE)]
    printed = least[temperature.unit]
    cold = temperature.value < printed
    return [Need(Kind.WARMER, Quantity(printed, temperature.unit))] if cold else []


def _fewest(unmet: Sequence[tuple[Need, ...]]) -> tuple[tuple[Need, ...], ...]:
    """Keep the ways that change the fewest things, and of two alike the lesser change."""
    fewest = min((len(way) for way in unmet), default=0)
    ways = list(dict.fromkeys(way for way in unmet if len(way) == fewest))
    return tuple(way for way in ways if not any(_lesser(one, way) for one in ways))


_UPWARD = (Kind.STRONGER, Kind.WARMER)


def _lesser(one: tuple[Need, ...], other: tuple[Need, ...]) -> bool:
    """Say whether `one` changes the same things as `other`, and less."""
    if one == other or [need.kind for need in one] != [need.kind for need in other]:
        return False
    for mine, yours in zip(one, other, strict=True):
        if mine.value is None or yours.value is None:
            continue
        more = mine.value.value > yours.value.value
        if mine.value != yours.value and more == (mine.kind in _UPWARD):
            return False
    return True


def _off_label(solution: Solution, label: Label | None) -> tuple[Need, ...]:
    if label is None:
        return ()
    found = _range(solution.strength, label.least, label.most)
    found += _at_most(solution.ph, label.ph_most, Kind.MEASURE_PH, Kind.LOWER_PH, "pH")
    found += _at_most(
        solution.hardness, label.hardness_most, Kind.MEASURE_HARDNESS, Kind.SOFTER, "mg/L"
    )
    if label.temperature is not None:
        found += _warm_enough(solution.temperature, _both_units(label.temperature))
    return tuple(found)


def _both_units(one: Quantity) -> Mapping[str, Decimal]:
    if one.unit == "°C":
        return {"°C": one.value, "°F": one.value * 9 / 5 + 32}
    return {"°F": one.value, "°C": (one.value - 32) * 5 / 9}


def _with_contact(
    solution: Solution, table: SolutionTable, label: Label | None, row: SolutionRow
) -> Verdict:
    said = label.seconds if label is not None else None
    found = [
        one for one in table.contacts if one.agent == solution.agent and _applies(solution, one)
    ]
    best = min(
        found, key=lambda one: (one.seconds is None, one.seconds or Decimal(0)), default=None
    )
    if best is None or (best.seconds is None and said is None):
        return Verdict(why=Why.NO_CONTACT, row=row, ways=((Need(Kind.READ_LABEL),),))
    seconds = max(best.seconds or Decimal(0), said or Decimal(0))
    return Verdict(why=Why.LISTED, seconds=seconds, row=row, contact=best)


def _applies(solution: Solution, one: ContactRow) -> bool:
    return not [
        *_range(solution.strength, one.least, one.most),
        *_at_most(solution.ph, one.ph_most, Kind.MEASURE_PH, Kind.LOWER_PH, "pH"),
        *_warm_enough(solution.temperature, one.temperature),
    ]
