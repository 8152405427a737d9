"""A log of temperatures: readings in the unit in which they were taken, and printed limits."""

from __future__ import annotations

import math
from collections.abc import Iterable
from dataclasses import dataclass
from decimal import Decimal

from kiosk.trade.keyed import Keyed
from kiosk.trade.units import Quantity

_SAYS = {
    "no-readings": "the log has no reading; take one and write it down",
    "bad-instant": "the time {at} is no number of seconds; write down when it was read",
    "bad-unit": "'{unit}' is no unit of temperature; use °C or °F",
    "absurd": "{temperature} cannot be the temperature of mix; check the probe and read again",
    "bad-gap": "the longest gap between readings, {gap} s, must be more than nothing",
    "ends-first": "the time looked at ends ({until}) before it begins ({since}); swap the two",
    "before-start": "the time looked at ({now}) lies before {start}; check the clock",
    "no-points": "no measuring point is named; name every one that must be hot",
    "empty-point": "the measuring point '{point}' has no reading; read it or mend its probe",
    "bad-time": "a time of {seconds} s cannot be held; give it as zero or more",
    "bad-fat": "{percent} % of fat cannot be; give a number from 0 to 100",
    "bad-z": "a z of {z} °C from {reference} °C makes no sense; z lies between 1 and 50,"
    " the reference between -50 and 150",
    "bad-pairs": "two pairs with different times of more than nothing are needed",
    "gap": "nothing was read for {seconds:.0f} s, and no more than {gap:.0f} s may pass unread;"
    " give a part of the log without that gap",
}
_ABSURD = {"°C": (Decimal(-50), Decimal(150)), "°F": (Decimal(-58), Decimal(302))}


class NoVerdict(Keyed, ValueError):
    """A log cannot be judged; the message says what to mend."""

    says = _SAYS


@dataclass(frozen=True, slots=True)
class Reading:
    """A temperature in the unit in which it was taken, at seconds since the epoch."""

    at: float
    temperature: Quantity
    """In °C or °F, between -50 and 150 °C."""

    def __post_init__(self) -> None:
        value, unit = self.temperature.value, self.temperature.unit
        check_instants(self.at)
        if unit not in _ABSURD:
            raise NoVerdict("bad-unit", unit=unit)
        least, most = _ABSURD[unit]
        if not value.is_finite() or not least <= value <= most:
            raise NoVerdict("absurd", temperature=self.temperature)


@dataclass(frozen=True, slots=True)
class Printed:
    """A limit as a code prints it in both units; a reading is judged in its own."""

    fahrenheit: Decimal
    celsius: Decimal | None = None
    """None where the source prints no °C: then the exact conversion is meant."""

    def at_least(self, temperature: Quantity) -> bool:
        """Say whether a temperature in °C or °F lies on the limit or above."""
        value, limit = self._alike(temperature)
        return value >= limit

    def at_most(self, temperature: Quantity) -> bool:
        """Say whether a temperature in °C or °F lies on the limit or below."""
        value, limit = self._alike(temperature)
        return value <= limit

    def _alike(self, temperature: Quantity) -> tuple[Decimal, Decimal]:
        if temperature.unit == "°F":
            return temperature.value, self.fahrenheit
        if temperature.unit != "°C":
            raise NoVerdict("bad-unit", unit=temperature.unit)
        if self.celsius is not None:
            return temperature.value, self.celsius
        return temperature.value * 9 / 5 + 32, self.fahrenheit


def check_instants(*instants: float | None) -> None:
    """Raise NoVerdict unless every instant given is a finite number of seconds."""
    for one in instants:
        if one is not None and not math.isfinite(one):
            raise NoVerdict("bad-instant", at=one)


def check_gap(longest_gap: float) -> None:
    """Raise NoVerdict unless the longest gap is finite and more than nothing, in seconds."""
    if not 0 < longest_gap < math.inf:
        raise NoVerdict("bad-gap", gap=longest_gap)


def by_time(readings: Iterable[Reading]) -> list[Reading]:
    """Sort readings by instant. Raises NoVerdict when there is none."""
    log = sorted(readings, key=lambda one: one.at)
    if not log:
        raise NoVerdict("no-readings")
    return log


def celsius(temperature: Quantity) -> float:
    """Convert a temperature in °C or °F exactly to °C: for models, never to judge a limit."""
    if temperature.unit == "°C":
        return float(temperature.value)
    if temperature.unit != "°F":
        raise NoVerdict("bad-unit", unit=temperature.unit)
    return float((temperature.value - 32) * 5 / 9)
