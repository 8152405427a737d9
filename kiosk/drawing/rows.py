"""The rows of the picture: phases and steps, broken into lines, with their heights."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from kiosk.drawing.asked import asked, signal
from kiosk.drawing.markup import Element, element
from kiosk.drawing.wrap import BOLD, width, wrap
from kiosk.languages.words import Words
from kiosk.procedure.plan import Hold, Plan, Step

SENTENCE = 2.9
"""Letter size of a sentence in mm."""
SMALL = 2.3
"""Letter size of what stands below it in mm."""
LEFT = 11.0
"""Where sentences begin, in mm from the left edge."""
_LINE = 1.3
"""Line height in em."""
_ABOVE, _BELOW = 1.6, 1.7
_PHASE_HEIGHT = 6.4


@dataclass(frozen=True, slots=True)
class Row:
    """A step, or a phase's band above its first step."""

    height: float
    """mm"""
    words: tuple[Element, ...]
    place: int
    """Place in the plan; a band has that of the step below it."""
    is_band: bool = False
    is_hold: bool = False


def rows(plan: Plan, words: Words, right: float) -> Iterator[Row]:
    """Yield the rows; their words end at `right`, in mm, and stand as for a row at the top."""
    phase = ""
    for place, step in enumerate(plan.steps):
        if step.phase != phase:
            phase = step.phase
            yield _band(words.text(plan.phases[phase]), place)
        yield _Writing(plan, words, right).row(place, step)


def _band(title: str, place: int) -> Row:
    line = element("text", title, x=1.5, y=4.5, font_size=3.4, font_weight="bold")
    return Row(_PHASE_HEIGHT, (line,), place, is_band=True)


class _Writing:
    """The lines of one step, from the top down."""

    def __init__(self, plan: Plan, words: Words, right: float) -> None:
        self._plan, self._words = plan, words
        self._width = right - LEFT - 2
        self._y = _ABOVE
        self._made: list[Element] = []

    def row(self, place: int, step: Step) -> Row:
        """Return the row of one step."""
        is_hold = isinstance(step.task, Hold)
        if is_hold:
            self._box(self._words.say("safety-hold"), "black", "white")
        self._lines(self._words.text(step.say), SENTENCE, weight="bold" if is_hold else "normal")
        self._lines(asked(step.task, self._words), SMALL)
        if isinstance(step.task, Hold) and step.task.verify is not None:
            verify = self._words.text(step.task.verify)
            self._lines(f"{self._words.say('sheet-try-out')}: {verify}", SMALL)
        if step.caution is not None:
            word = signal(step.caution, self._words)
            self._box(word, "white", "black", beside=self._words.text(step.caution.hazard))
        self._lines(self._changes(step), SMALL)
        made = (*_badge(place + 1, is_hold), *self._made)
        return Row(self._y + _BELOW, made, place, is_hold=is_hold)

    def _changes(self, step: Step) -> str:
        names = self._plan.conditions
        began = [self._words.text(names[one].name) for one in step.establishes]
        ended = [self._words.text(names[one].name) for one in step.ends]
        return "   ".join(
            f"{sign} {', '.join(found)}" for sign, found in (("+", began), ("−", ended)) if found
        )

    def _lines(self, text: str, size: float, weight: str = "normal", x: float = LEFT) -> None:
        room = (self._width - (x - LEFT)) / size
        for line in wrap(text, room / BOLD if weight == "bold" else room):
            self._y += size * _LINE
            made = element("text", line, x=x, y=self._y - size * 0.25, font_size=size)
            if weight != "normal":
                made.set("font-weight", weight)
            self._made.append(made)

    def _box(self, word: str, ground: str, ink: str, beside: str = "") -> None:
        """Write a word in a box, and lines of text to its right."""
        size = SMALL
        wide = width(word) * BOLD * size + 2
        self._y += 0.5
        top, high = self._y, size * _LINE + 0.3
        attributes = {"width": wide, "height": high, "stroke_width": 0.35}
        self._made += [
            element("rect", x=LEFT, y=top, fill=ground, stroke="black", **attributes),
            element(
                "text", word, x=LEFT + wide / 2, y=top + high - 0.95, font_size=size, fill=ink,
                font_weight="bold", text_anchor="middle",
            ),
        ]  # fmt: skip
        self._y = top + 0.1
        self._lines(beside, size, x=LEFT + wide + 1.2)
        self._y = max(self._y, top + high) + 0.3


def _badge(number: int, is_hold: bool) -> tuple[Element, Element]:
    """Return the step's number: in a circle, or in a filled octagon at a hold."""
    x, y = 5.4, _ABOVE + 2.6
    if is_hold:
        near, far = 1.35, 3.25
        corners = [(-near, -far), (near, -far), (far, -near), (far, near),
                   (near, far), (-near, far), (-far, near), (-far, -near)]  # fmt: skip
        points = " ".join(f"{x + dx:.2f},{y + dy:.2f}" for dx, dy in corners)
        shape = element("polygon", points=points, fill="black")
    else:
        shape = element("circle", cx=x, cy=y, r=2.6, fill="white", stroke="black", stroke_width=0.3)
    ink = "white" if is_hold else "black"
    text = element(
        "text", str(number), x=x, y=y + 1, font_size=2.8, font_weight="bold",
        text_anchor="middle", fill=ink,
    )  # fmt: skip
    return shape, text
