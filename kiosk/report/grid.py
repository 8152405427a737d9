"""A table in print: each row whole on its page, the head on every page.

The library's own table measures every character of every cell, twice; a month of a large shop would
keep its reader waiting for that alone. Here each word is measured once.
"""

from __future__ import annotations

from collections.abc import Callable, Sequence
from typing import Final

from fpdf import FPDF

from kiosk.languages.line_parts import line_parts

_LINE: Final = 1.3
"""Height of a line, in sizes of the font."""
_RISE: Final = 0.95
"""From the top of a line down to its foot of writing, in sizes of the font."""
_PAD_MM, _GAP_MM = 0.6, 0.8
_RULE_MM, _HEAVY_MM = 0.1, 0.3

GREY: Final = (70, 70, 70)
"""For what is beside the matter: 9.4 to 1 on white as WCAG 2.1 has it, CALC."""
SHADE: Final = (236, 236, 236)
"""Behind heads, and behind what stands out; the words say so too."""


def _parts(text: str) -> list[tuple[str, str]]:
    """Return what stays on one line, each with the blank before it."""
    return [
        ("" if place else " ", part)
        for word in text.split(" ")
        for place, part in enumerate(line_parts(word))
    ]


class Wrap:
    """Breaks texts into lines; each word is measured once."""

    def __init__(self, measure: Callable[[str], float]) -> None:
        """Take what tells how wide a text is, in mm."""
        self._measure = measure
        self._measured: dict[str, float] = {}

    def lines(self, text: str, width: float) -> list[str]:
        """Return a text in lines no wider than a width, were it not for single characters."""
        found: list[str] = []
        for paragraph in text.split("\n"):
            line, used = "", 0.0
            for blank, word in _parts(paragraph):
                needs = self._width(word)
                gap = self._width(blank) if blank else 0.0
                if line and used + gap + needs <= width:
                    line, used = f"{line}{blank}{word}", used + gap + needs
                    continue
                if line:
                    found.append(line)
                while needs > width:
                    cut = self._cut(word, width)
                    found.append(word[:cut])
                    word = word[cut:]
                    needs = self._width(word)
                line, used = word, needs
            found.append(line)
        return found

    def _cut(self, word: str, width: float) -> int:
        """Return how many characters of a long word fit, up to a hyphen where one is near."""
        fits, used = 0, 0.0
        for sign in word:
            used += self._width(sign)
            if used > width:
                break
            fits += 1
        fits = max(1, fits)
        hyphen = word.rfind("-", fits // 2, fits) + 1
        return hyphen or fits

    def _width(self, text: str) -> float:
        if text not in self._measured:
            self._measured[text] = self._measure(text)
        return self._measured[text]


class Grid:
    """One table, drawn from where the print stands, in the font that is set."""

    def __init__(
        self, pdf: FPDF, shares: Sequence[float], head: Sequence[str] = (), pale: int = -1
    ) -> None:
        """Take each column's share of the width, and draw the head.

        Without a head there are no rules either. The column `pale`, counted as in a list, is
        written in grey.
        """
        self._pdf, self._head, self._pale = pdf, head, range(len(shares))[pale]
        self._widths = [pdf.epw * one / sum(shares) for one in shares]
        self._line = pdf.font_size * _LINE
        self._wrap = Wrap(pdf.get_string_width)
        self._draw_head()

    def row(self, texts: Sequence[str], *, shaded: bool = False) -> None:
        """Draw a row; one that is higher than a page goes on on the next."""
        cells = self._cells(texts)
        high = max(map(len, cells)) * self._line + 2 * _PAD_MM
        if self._pdf.will_page_break(high):
            self._new_page()
        while any(cells):
            fits = max(1, int(self._room() / self._line))
            self._draw([one[:fits] for one in cells], shaded=shaded)
            cells = [one[fits:] for one in cells]
            if any(cells):
                self._new_page()

    def _cells(self, texts: Sequence[str]) -> list[list[str]]:
        pairs = zip(texts, self._widths, strict=True)
        return [self._wrap.lines(text, width - 2 * _GAP_MM) for text, width in pairs]

    # On the page.

    def _room(self) -> float:
        return self._pdf.page_break_trigger - self._pdf.get_y() - 2 * _PAD_MM

    def _new_page(self) -> None:
        self._pdf.add_page()
        self._draw_head()

    def _draw_head(self) -> None:
        if self._head:
            self._draw(self._cells(self._head), shaded=True)
            self._rule(_HEAVY_MM)

    def _rule(self, thick: float) -> None:
        pdf = self._pdf
        pdf.set_line_width(thick)
        pdf.line(pdf.l_margin, pdf.get_y(), pdf.l_margin + pdf.epw, pdf.get_y())

    def _draw(self, cells: Sequence[Sequence[str]], *, shaded: bool) -> None:
        pdf, x, y = self._pdf, self._pdf.l_margin, self._pdf.get_y()
        high = max(map(len, cells)) * self._line + 2 * _PAD_MM
        if shaded:
            pdf.set_fill_color(*SHADE)
            pdf.rect(x, y, pdf.epw, high, style="F")
        for place, (lines, width) in enumerate(zip(cells, self._widths, strict=True)):
            pdf.set_text_color(*(GREY if place == self._pale else (0, 0, 0)))
            foot = y + _PAD_MM + pdf.font_size * _RISE
            for n, line in enumerate(lines):
                if line:
                    pdf.text(x + _GAP_MM, foot + n * self._line, line)
            x += width
        pdf.set_y(y + high)
        if self._head:
            self._rule(_RULE_MM)
