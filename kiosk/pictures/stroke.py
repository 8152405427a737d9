"""What a drawing is made of: strokes on a sheet of about 120 by 80, y downwards.

A picture is drawn as large as its place allows, whatever part of the sheet it takes.
"""

from __future__ import annotations

from dataclasses import dataclass
from enum import StrEnum

Point = tuple[float, float]


class Pen(StrEnum):
    """What a stroke means. Each differs in width or dash, so that no colour is needed."""

    OUTLINE = "outline"
    FINE = "fine"
    """Detail, left out where the drawing is small."""
    HIDDEN = "hidden"
    """An edge behind something else: dashed."""
    LOOK = "look"
    """Look here: the thickest one."""


class Fill(StrEnum):
    """What is inside a closed stroke."""

    NONE = "none"
    PAPER = "paper"
    """It hides what was drawn before it."""
    SOLID = "solid"


@dataclass(frozen=True, slots=True)
class Stroke:
    """A line from point to point; a closed one goes back to its first point."""

    points: tuple[Point, ...]
    pen: Pen = Pen.OUTLINE
    closed: bool = False
    fill: Fill = Fill.NONE


@dataclass(frozen=True, slots=True)
class Picture:
    """A drawing: strokes in the order in which they are drawn."""

    name: str
    strokes: tuple[Stroke, ...]

    @property
    def box(self) -> tuple[float, float, float, float]:
        """Left, top, right and bottom of all strokes."""
        across, down = zip(*(point for one in self.strokes for point in one.points), strict=True)
        return min(across), min(down), max(across), max(down)
