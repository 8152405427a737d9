"""One procedure as an SVG picture: its steps downwards, and a lane for each condition."""

from __future__ import annotations

from collections.abc import Iterator
from dataclasses import dataclass

from kiosk.drawing.lane_marks import bar, mark_of, swatch
from kiosk.drawing.lanes import Lane, Mark, Sort, lanes
from kiosk.drawing.markup import Element, add, as_xml, element
from kiosk.drawing.rows import SMALL, Row, rows
from kiosk.drawing.wrap import BOLD, width, wrap
from kiosk.languages.words import Words
from kiosk.procedure.plan import Plan

WIDTH, PAGE = 190.0, 259.0
"""A page in mm: what A4 and US Letter both hold within margins of a centimetre (ISO 216: 210 x 297;
Letter 8.5 x 11 in)."""

_MOST_FOR_LANES = 92.0
_WIDEST_LANE = 4.2
_FOOT = 5.0
_FIRST_TOP = 46.0
_HEADING = 2.4
_LONGEST_HEADING = 40.0
_FONTS = (
    "'Noto Sans', 'Segoe UI', Helvetica, Arial, 'Noto Sans CJK KR', 'Malgun Gothic', sans-serif"
)

_STYLE = (
    "@page { size: 210mm 279mm; margin: 10mm; }"
    f" text {{ font-family: {_FONTS}; white-space: pre; text-rendering: geometricPrecision; }}"
)


def picture(plan: Plan, words: Words) -> str:
    """Return the picture of a plan in one language: an SVG document, one page below the other."""
    return as_xml(_Picture(plan, words).drawn())


@dataclass(frozen=True, slots=True)
class _Placed:
    row: Row
    y: float


class _Picture:
    def __init__(self, plan: Plan, words: Words) -> None:
        self._plan, self._words = plan, words
        self._lanes = lanes(plan)
        count = max(1, len(self._lanes))
        self._pitch = min(_WIDEST_LANE, _MOST_FOR_LANES / count)
        self._left = WIDTH - self._pitch * count
        longest = max((width(self._name(lane)) for lane in self._lanes), default=0.0)
        self._heading = min(_LONGEST_HEADING, longest * BOLD * _HEADING) + 3

    def _name(self, lane: Lane) -> str:
        return self._words.text(self._plan.conditions[lane.condition].name)

    def _x(self, place: int) -> float:
        return self._left + self._pitch * (place + 0.5)

    def drawn(self) -> Element:
        pages = list(self._pages())
        title = self._words.text(self._plan.title)
        root = element(
            "svg",
            element("title", f"{title} – {self._plan.machine_name}"),
            element("style", _STYLE),
            width=f"{WIDTH:g}mm",
            height=f"{PAGE * len(pages):g}mm",
            viewBox=f"0 0 {WIDTH:g} {PAGE * len(pages):g}",
        )
        root.set("xmlns", "http://www.w3.org/2000/svg")
        root.set("lang", self._words.language)
        add(root, _hatching(), element("rect", width=WIDTH, height="100%", fill="white"))
        for number, placed in enumerate(pages):
            page = element("g", transform=f"translate(0 {PAGE * number:g})")
            add(page, *self._top(first=number == 0), *self._foot(number + 1, len(pages)))
            add(page, *self._guides(placed))
            for one in placed:
                add(page, self._row(one))
            add(page, *self._headings(self._top_height(first=number == 0)))
            add(root, page)
        return root

    def _top_height(self, first: bool) -> float:
        return max(self._heading + 2, _FIRST_TOP if first else 0.0)

    def _pages(self) -> Iterator[list[_Placed]]:
        """Fill page after page; a phase's band is kept with its first step."""
        page: list[_Placed] = []
        y = self._top_height(first=True)
        waiting: list[Row] = []
        for row in rows(self._plan, self._words, self._left):
            waiting.append(row)
            if row.is_band:
                continue
            if page and y + sum(one.height for one in waiting) > PAGE - _FOOT:
                yield page
                page, y = [], self._top_height(first=False)
            for one in waiting:
                page.append(_Placed(one, y))
                y += one.height
            waiting = []
        yield page

    def _top(self, first: bool) -> Iterator[Element]:
        plan, words = self._plan, self._words
        size = 5.4 if first else 3.4
        right = self._left - 3
        y = 0.0
        for line in wrap(words.text(plan.title), right / size):
            y += size * 1.2
            yield element("text", line, x=1.5, y=y, font_size=size, font_weight="bold")
        text = words.say("sheet-text", version=str(plan.version), digest=plan.digest[:12])
        lines = [plan.machine_name, text]
        if plan.practice:
            lines.append(words.say("sheet-practice"))
        for line in (piece for text in lines for piece in wrap(text, right / SMALL)):
            y += SMALL * 1.4
            yield element("text", line, x=1.5, y=y + 0.4, font_size=SMALL)
        if first:
            yield from self._legend(y + 4)

    def _legend(self, y: float) -> Iterator[Element]:
        said: dict[Mark | Sort, str] = {
            Mark.ESTABLISHES: "picture-established",
            Mark.RELIES: "picture-relied-on",
            Mark.ENDS: "picture-ended",
            Mark.NOT_IN_FORCE: "picture-not-in-force",
            Sort.HELD: "picture-by-hold",
            Sort.DANGER: "picture-danger",
            Sort.OTHER: "picture-other",
        }
        for place, (what, name) in enumerate(said.items()):
            x, below = (1.5, place) if place < 4 else (self._left / 2 - 4, place - 4)
            yield swatch(what, x, y + below * 4)
            yield element(
                "text", self._words.say(name), x=x + 6, y=y + below * 4 + 0.8, font_size=SMALL
            )

    def _headings(self, bottom: float) -> Iterator[Element]:
        for place, lane in enumerate(self._lanes):
            x = self._x(place) + _HEADING * 0.35
            name = self._name(lane)
            size = min(_HEADING, (bottom - 3) / max(1.0, width(name) * BOLD))
            yield element(
                "text",
                name,
                transform=f"translate({x:.2f} {bottom - 1.2:.2f}) rotate(-90)",
                font_size=size,
                font_weight="normal" if lane.sort is Sort.OTHER else "bold",
            )
        yield element(
            "line", x1=0, x2=WIDTH, y1=bottom, y2=bottom, stroke="black", stroke_width=0.4
        )

    def _foot(self, number: int, pages: int) -> Iterator[Element]:
        place = self._words.say("picture-page", page=str(number), pages=str(pages))
        yield element("text", place, x=WIDTH, y=PAGE - 1.2, font_size=SMALL, text_anchor="end")

    def _guides(self, placed: list[_Placed]) -> Iterator[Element]:
        """Draw a hairline down each lane, for the eye to follow."""
        top, bottom = placed[0].y, placed[-1].y + placed[-1].row.height
        for place in range(len(self._lanes)):
            x = self._x(place)
            yield element(
                "line", x1=x, x2=x, y1=top, y2=bottom, stroke="#cccccc", stroke_width=0.12
            )

    def _row(self, placed: _Placed) -> Element:
        row = placed.row
        group = element("g", class_="row", transform=f"translate(0 {placed.y:.2f})")
        if row.is_band:
            add(group, element("rect", width=WIDTH, height=row.height, fill="#dcdcdc"))
        elif row.is_hold:
            add(
                group,
                element(
                    "rect",
                    x=0.4,
                    y=0.4,
                    width=self._left - 1.6,
                    height=row.height - 0.8,
                    fill="#f3f3f3",
                    stroke="black",
                    stroke_width=0.7,
                ),
            )
        add(
            group,
            element(
                "line",
                x1=0,
                x2=WIDTH,
                y1=row.height,
                y2=row.height,
                stroke="#bbbbbb",
                stroke_width=0.15,
            ),
        )
        add(group, *row.words)
        for place, lane in enumerate(self._lanes):
            add(group, *self._crossing(lane, self._x(place), row))
        return group

    def _crossing(self, lane: Lane, x: float, row: Row) -> Iterator[Element]:
        """Draw what a lane shows in a row: its bar, then its marks."""
        change = row.height - 2.2
        step, cell = self._plan.steps[row.place], lane.cells[row.place]
        if row.is_band:
            if cell.before:
                yield bar(lane.sort, x, 0, row.height)
            return
        if cell.before:
            yield bar(lane.sort, x, 0, change if Mark.ENDS in cell.marks else row.height)
        elif cell.after:
            yield bar(lane.sort, x, change, row.height)
        for mark in cell.marks:
            y = 2.6 if mark in (Mark.RELIES, Mark.NOT_IN_FORCE) else change
            told = f"{row.place + 1} {mark}: {self._name(lane)}"
            made = mark_of(mark, x, y, told, step.id, lane.condition)
            if mark is Mark.ENDS and not cell.before:
                made.set("opacity", "0.35")
            yield made


def _hatching() -> Element:
    stripes = element(
        "path", d="M-1,1 l2,-2 M0,2 l2,-2 M1,3 l2,-2", stroke="black", stroke_width=0.5
    )
    pattern = element(
        "pattern", stripes, id="danger", width=2, height=2, patternUnits="userSpaceOnUse"
    )
    return element("defs", pattern)
