"""A report as PDF: the same blocks as on the page, for a printer."""

from __future__ import annotations

import io
from collections.abc import Sequence
from datetime import datetime
from itertools import groupby
from pathlib import Path
from typing import Final
from xml.etree import ElementTree

from fpdf import FPDF
from fpdf.enums import TextMode, XPos, YPos

from kiosk.plots.figure import Figure
from kiosk.plots.svg import svg
from kiosk.report import paper as p
from kiosk.report.as_html import ROWS_WIDTH
from kiosk.report.fonts import characters
from kiosk.report.grid import GREY, Grid, Wrap
from kiosk.report.paper import writable

_FONT: Final = "paper"
_OTHERS: Final = ("paper2", "paper3")
_SIZES: Final = {1: 17.0, 2: 12.5, 3: 10.5}
"""Points of the titles, by level."""
_BODY, _SMALL = 9.0, 7.5
_MARGIN_MM, _FOOT_MM = 14.0, 16.0
_FRAME_MM: Final = 8.0
_LABEL_MM: Final = 46.0
_KEPT_TOGETHER_MM: Final = 42.0
"""A title stands on the next page when less than this is left for what follows it."""


def as_pdf(paper: p.Paper, made: datetime, fonts: Sequence[Path]) -> bytes:
    """Return the PDF, A4, in the first font; what it lacks is taken from the others.

    `made`, with its zone, is the time that the file bears.
    """
    printed = _Print(paper)
    printed.take(fonts)
    printed.set_lang(paper.language)
    printed.set_title(writable(f"{paper.title} – {paper.under}"))
    printed.set_creation_date(made)
    printed.write_all()
    return bytes(printed.output())


class _Print(FPDF):
    """The pages being written."""

    def __init__(self, paper: p.Paper) -> None:
        super().__init__(format="A4")
        self.paper = paper
        self._signs: dict[str, frozenset[int]] = {}
        self._wrap = Wrap(self.get_string_width)
        self.set_margins(_MARGIN_MM, _MARGIN_MM)
        self.set_auto_page_break(True, _FOOT_MM)

    def take(self, fonts: Sequence[Path]) -> None:
        """Take the first font, and of the others those that are needed: each takes long to read."""
        missing = {ord(sign) for sign in repr(self.paper)}
        for name, file in zip((_FONT, *_OTHERS), fonts, strict=False):
            if name == _FONT or missing & characters(file):
                self.add_font(name, "", str(file))
                self._signs[name] = characters(file)
                missing -= self._signs[name]
        self.set_fallback_fonts([name for name in self._signs if name != _FONT])

    def footer(self) -> None:
        """Write the foot of each page."""
        self.set_y(-_FOOT_MM + 4)
        self._small()
        page = self.paper.page_of.format(page=self.page_no(), pages="{nb}")
        room = self.epw * 0.8
        self.cell(room, 4, self._wrap.lines(self._shown(self.paper.running), room)[0])
        self.cell(0, 4, page, align="R")

    def write_all(self) -> None:
        """Write every block in order."""
        self.add_page()
        self._title(self.paper.title, 1)
        self._small()
        self._text(self.paper.under)
        for block in self.paper.blocks:
            match block:
                case p.Heading():
                    self._heading(block)
                case p.Notice():
                    self._notice(block)
                case p.Sheet():
                    self._sheet(block)
                case p.Table():
                    self._table(block)
                case p.Picture(of=figure):
                    self._picture(figure)
                case p.Blanks(labels=labels):
                    self._blanks(labels)

    # Text.

    def _shown(self, text: str) -> str:
        """Return a text with every character that the fonts lack written out: `\\u2717`."""
        known = self._signs.values()
        return "".join(
            sign
            if sign == "\n" or any(ord(sign) in one for one in known)
            else f"\\u{ord(sign):04x}"
            for sign in writable(text)
        )

    def _fonts_with(self, text: str) -> list[str]:
        """Return the fonts that have every character of a text."""
        wanted = set(map(ord, text))
        return [name for name, signs in self._signs.items() if wanted <= signs]

    def text(self, x: float, y: float, text: str = "") -> None:
        """Write a text at a place; the library takes no second font there."""
        if _FONT in self._fonts_with(text):
            super().text(x, y, text)
            return
        size = self.font_size_pt
        for name, signs in groupby(text, lambda sign: next(iter(self._fonts_with(sign)), _FONT)):
            run = "".join(signs)
            self.set_font(name, size=size)
            super().text(x, y, run)
            x += self.get_string_width(run)
        self.set_font(_FONT, size=size)

    def _body(self) -> None:
        self.set_font(_FONT, size=_BODY)
        self.set_text_color(0)

    def _small(self) -> None:
        self.set_font(_FONT, size=_SMALL)
        self.set_text_color(*GREY)

    def _text(self, text: str, width: float = 0) -> None:
        self.multi_cell(
            width, self.font_size * 1.35, self._folded(text, width or self.epw), align="L",
            new_x=XPos.LMARGIN, new_y=YPos.NEXT,
        )  # fmt: skip

    def _folded(self, text: str, width: float) -> str:
        """Return a text to be shown; Chinese in lines, for which the library would break anywhere.

        The lines leave the padding of the strongest frame.
        """
        shown = self._shown(text)
        if self.paper.language != "zh":
            return shown
        return "\n".join(Wrap(self.get_string_width).lines(shown, width - _FRAME_MM))

    def _title(self, text: str, level: int) -> None:
        self.set_font(_FONT, size=_SIZES[level])
        self.set_text_color(0)
        # The font has one weight; the titles are drawn with a stroke around them.
        with self.local_context(text_mode=TextMode.FILL_STROKE, line_width=0.12):
            self.start_section(self._shown(text), level=level - 1)
            self._text(text)

    def _heading(self, of: p.Heading) -> None:
        needed = self.eph / 2 if of.new_page else _KEPT_TOGETHER_MM
        if self.will_page_break(needed):
            self.add_page()
        else:
            self.ln(4 if of.level == 2 else 2)
        self._title(of.text, of.level)
        if of.level == 2:
            y = self.get_y() + 0.5
            self.set_line_width(0.4)
            self.line(self.l_margin, y, self.l_margin + self.epw, y)
        self.ln(1.5)

    def _notice(self, of: p.Notice) -> None:
        self._body()
        with self.local_context(line_width=0.5 if of.strong else 0.2):
            self.multi_cell(
                0, self.font_size * 1.35, self._folded(of.text, self.epw), align="L",
                border=1 if of.strong else 0, padding=2 if of.strong else 0, new_x=XPos.LMARGIN,
                new_y=YPos.NEXT,
            )  # fmt: skip
        self.ln(1.2)

    # Tables.

    def _sheet(self, of: p.Sheet) -> None:
        self._body()
        grid = Grid(self, (_LABEL_MM, self.epw - _LABEL_MM), pale=0)
        for label, cell in of.pairs:
            rows = p.shown(cell.seqs)
            said = f"{cell.text}  ({self.paper.rows_column} {rows})" if rows else cell.text
            grid.row([self._shown(label), self._shown(said)])
        self.ln(1)

    def _table(self, of: p.Table) -> None:
        if not of.rows:
            self._notice(p.Notice(f"{of.caption}: {of.empty}"))
            return
        if self.will_page_break(24):
            self.add_page()
        self._body()
        self._text(of.caption)
        self.set_font(_FONT, size=_SMALL)
        names = [self._shown(name) for name in (*of.columns, self.paper.rows_column)]
        grid = Grid(self, (*of.widths, ROWS_WIDTH), names)
        for row in of.rows:
            texts = [self._shown(cell.text) for cell in row.cells]
            grid.row([*texts, p.shown(row.seqs).replace("–", "–\n")], shaded=row.off)
        self.ln(2)

    # Figures and the pen.

    def _picture(self, figure: Figure) -> None:
        self._body()
        drawn, high = self._drawn(figure)
        if self.will_page_break(high):
            self.add_page()
        # The words of a figure take the colour that fills: after a table that is its shade.
        self.set_fill_color(0)
        self.image(io.BytesIO(drawn), w=self.epw, h=high, alt_text=self._shown(figure.told))
        self.ln(2)

    def _drawn(self, figure: Figure) -> tuple[bytes, float]:
        """Return a figure as SVG in the font of the print, and how high it is in mm."""
        root = ElementTree.fromstring(svg(figure, self.epw))  # noqa: S314  (our own, not a file's)
        for one in list(root.iter()):
            one.tag = one.tag.rpartition("}")[2]
            # What stands there is for pointers and readers of a screen.
            for child in [
                child for child in one if child.tag.rpartition("}")[2] in ("title", "desc")
            ]:
                one.remove(child)
            one.attrib.pop("font-weight", None)  # the font has one weight
            if one.text is not None:
                one.text = self._shown(one.text)
                one.set("font-family", next(iter(self._fonts_with(one.text)), _FONT))
        root.set("xmlns", "http://www.w3.org/2000/svg")
        root.set("font-family", _FONT)
        return ElementTree.tostring(root), float(root.get("viewBox", "").split()[3])

    def _blanks(self, labels: tuple[str, ...]) -> None:
        if self.will_page_break(24):
            self.add_page()
        self.ln(14)
        self._small()
        gap = 6.0
        width = (self.epw - gap * (len(labels) - 1)) / len(labels)
        y = self.get_y()
        for n, label in enumerate(labels):
            x = self.l_margin + n * (width + gap)
            self.set_line_width(0.2)
            self.line(x, y, x + width, y)
            self.set_xy(x, y + 1)
            self.multi_cell(width, 4, self._shown(label), align="L")
        self.set_y(y + 10)
