"""What a figure shows, without a word on how it is drawn. All texts are in the reader's language.

A Chart has two axes, a Strip has boxes in rows and columns, Lanes have bars along one axis. Draw
one with `kiosk.plots.svg.svg` or `kiosk.plots.cells.cells`.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum


class Ink(StrEnum):
    """What something drawn means. Each also differs from the others in shape or stroke."""

    DATA = "data"
    OFF = "off"
    """Out of its limit, late, or missing."""
    LIMIT = "limit"
    BAND = "band"
    """Where values should lie."""
    AVERAGE = "average"
    LIKELY = "likely"
    """What is to be expected."""


class Shape(StrEnum):
    """How a point is drawn."""

    DOT = "dot"
    CROSS = "cross"
    RING = "ring"
    DOWN = "down"
    """The true value lies below it."""
    UP = "up"
    """The true value lies above it."""
    BAR = "bar"
    """A short upright stroke."""


class Dash(StrEnum):
    """How a line is drawn."""

    SOLID = "solid"
    DASHED = "dashed"
    DOTTED = "dotted"


class Fill(StrEnum):
    """How a box or a bar is filled: the first four from pale to dark."""

    NONE = "none"
    PALE = "pale"
    MIDDLE = "middle"
    DARK = "dark"
    HATCHED = "hatched"
    """What is to be expected, or was not there."""
    CROSSED = "crossed"
    """Something to look at."""


@dataclass(frozen=True, slots=True)
class Source:
    """Where something drawn comes from in the journal."""

    seq: int = 0
    """The journal's row; 0 when there is no single one."""
    session: str = ""
    told: str = ""
    """A sentence for who points at it; empty when there is nothing to say."""


NOWHERE = Source()


@dataclass(frozen=True, slots=True)
class Point:
    """One value at one place of the x axis."""

    x: float
    y: float
    source: Source = NOWHERE


@dataclass(frozen=True, slots=True)
class Tick:
    """A labelled place on an axis; `label` may be empty."""

    at: float
    label: str


@dataclass(frozen=True, slots=True)
class Axis:
    """One axis, from `least` to `most`, `most` above `least`."""

    name: str
    """What is measured, with its unit."""
    least: float
    most: float
    ticks: tuple[Tick, ...]

    def share(self, at: float) -> float:
        """Return how far along the axis a value lies, 0 to 1; one beyond an end lies on it."""
        return min(1.0, max(0.0, (at - self.least) / (self.most - self.least)))


@dataclass(frozen=True, slots=True)
class Points:
    """Values that stand by themselves."""

    name: str
    points: tuple[Point, ...]
    shape: Shape = Shape.DOT
    ink: Ink = Ink.DATA


@dataclass(frozen=True, slots=True)
class Line:
    """A line through points, in the order of x."""

    name: str
    points: tuple[Point, ...]
    dash: Dash = Dash.SOLID
    ink: Ink = Ink.AVERAGE


@dataclass(frozen=True, slots=True)
class Bars:
    """Upright bars from the axis' foot; each as wide as the axis' units say."""

    name: str
    points: tuple[Point, ...]
    wide: float
    fill: Fill = Fill.MIDDLE


@dataclass(frozen=True, slots=True)
class Level:
    """A line across the whole chart at one value."""

    name: str
    at: float
    dash: Dash = Dash.SOLID
    ink: Ink = Ink.LIMIT


@dataclass(frozen=True, slots=True)
class Band:
    """The zone between two values; an end that is None lies beyond the chart."""

    name: str
    least: float | None
    most: float | None


@dataclass(frozen=True, slots=True)
class Spread:
    """From where to where values lie: one upright stroke at each place."""

    name: str
    reach: tuple[tuple[float, float, float], ...]
    """x, lowest, highest."""


Layer = Band | Bars | Spread | Line | Level | Points


@dataclass(frozen=True, slots=True, kw_only=True)
class Chart:
    """Layers between two axes, drawn in their order."""

    title: str
    told: str
    """What there is to see, for who cannot see it."""
    x: Axis
    y: Axis
    layers: tuple[Layer, ...]


@dataclass(frozen=True, slots=True)
class Box:
    """One box of a strip."""

    fill: Fill
    mark: str = ""
    """One or two letters or digits to stand in it."""
    source: Source = NOWHERE


@dataclass(frozen=True, slots=True, kw_only=True)
class Strip:
    """Rows of boxes under the same columns."""

    title: str
    told: str
    columns: tuple[str, ...]
    """One label for each column; empty where none stands."""
    rows: tuple[tuple[str, tuple[Box, ...]], ...]
    """A name, and as many boxes as there are columns."""
    key: tuple[tuple[Fill, str], ...] = ()
    """What the fills mean."""


@dataclass(frozen=True, slots=True)
class Bar:
    """A bar in a lane."""

    begin: float
    end: float
    fill: Fill
    source: Source = NOWHERE


@dataclass(frozen=True, slots=True)
class Mark:
    """A mark in a lane."""

    at: float
    shape: Shape
    ink: Ink = Ink.DATA
    source: Source = NOWHERE


@dataclass(frozen=True, slots=True)
class Lane:
    """One lane: its bars, and the marks upon them."""

    name: str
    bars: tuple[Bar, ...] = ()
    marks: tuple[Mark, ...] = ()


@dataclass(frozen=True, slots=True, kw_only=True)
class Lanes:
    """Bars and marks along one axis, a lane for each name."""

    title: str
    told: str
    x: Axis
    lanes: tuple[Lane, ...]
    key: tuple[tuple[Fill | tuple[Shape, Ink], str], ...] = ()
    """What the fills and marks mean."""


Figure = Chart | Strip | Lanes
