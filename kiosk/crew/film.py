"""A film of a terminal as one SVG file: the frames stand under each other and are moved along."""

from __future__ import annotations

from collections.abc import Iterable, Sequence
from dataclasses import dataclass
from html import escape
from typing import Final

from rich.cells import cell_len
from rich.segment import Segment
from rich.style import Style
from rich.terminal_theme import DEFAULT_TERMINAL_THEME

CELL_WIDTH: Final = 9
CELL_HEIGHT: Final = 19
_BASE_LINE: Final = 14
_FONT_SIZE: Final = 15
_PAGE: Final = "#000000"

_QUARTERS: Final = dict(zip(" ▘▝▀▖▌▞▛▗▚▐▜▄▙▟█", range(16), strict=True))
"""Which quarters of its cell a block fills: 1 upper left, 2 upper right, 4 and 8 below them. Blocks
are drawn as shapes, for fonts leave gaps between them."""

Row = tuple[Segment, ...]


@dataclass(frozen=True, slots=True)
class Frame:
    """What the terminal shows for some time."""

    rows: tuple[Row, ...]
    seconds: float


class Film:
    """Takes frames one by one; the same frame twice lasts longer."""

    def __init__(self, width: int, height: int) -> None:
        """Film a terminal of `width` columns and `height` rows."""
        self._width, self._height = width, height
        self._frames: list[Frame] = []

    def take(self, rows: Iterable[Iterable[Segment]], seconds: float) -> None:
        """Add what is shown for some seconds."""
        seen = tuple(tuple(Segment.simplify(row)) for row in rows)[: self._height]
        if self._frames and self._frames[-1].rows == seen:
            seconds += self._frames.pop().seconds
        self._frames.append(Frame(seen, seconds))

    def __len__(self) -> int:
        return len(self._frames)

    @property
    def seconds(self) -> float:
        """How long it lasts."""
        return sum(frame.seconds for frame in self._frames)

    def svg(self, title: str) -> str:
        """Return the film as the text of an SVG file that goes round and round.

        A row that is seen again is drawn once. Where a reader wants no motion the first frame
        stands.
        """
        width, height = self._width * CELL_WIDTH, self._height * CELL_HEIGHT
        names: dict[Row, str] = {}
        strip: list[str] = []
        for number, frame in enumerate(self._frames):
            for y, row in enumerate(frame.rows):
                name = names.setdefault(row, f"r{len(names)}")
                top = number * height + y * CELL_HEIGHT
                strip.append(f'<use href="#{name}" y="{top}"/>')
        drawn = (f'<g id="{name}">{_row(row)}</g>' for row, name in names.items())
        return "\n".join(
            (
                f'<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 {width} {height}" '
                f'role="img" font-family="ui-monospace,Menlo,Consolas,\'DejaVu Sans Mono\','
                f'monospace" font-size="{_FONT_SIZE}">',
                f"<title>{escape(title)}</title>",
                f"<style>{_moves(self._frames, height)}</style>",
                f"<defs>{''.join(drawn)}</defs>",
                f'<rect width="{width}" height="{height}" fill="{_PAGE}"/>',
                f'<g class="strip">{"".join(strip)}</g>',
                "</svg>",
                "",
            )
        )


def _moves(frames: Sequence[Frame], height: int) -> str:
    whole = sum(frame.seconds for frame in frames) or 1.0
    steps, past = [], 0.0
    for number, frame in enumerate(frames):
        steps.append(f"{100 * past / whole:.3f}%{{transform:translateY({-number * height}px)}}")
        past += frame.seconds
    last = -(len(frames) - 1) * height
    return (
        f"@keyframes film{{{''.join(steps)}100%{{transform:translateY({last}px)}}}}"
        f".strip{{animation:film {whole:.1f}s step-end infinite}}"
        "@media (prefers-reduced-motion:reduce){.strip{animation:none}}"
        "text{white-space:pre}"
    )


def _row(row: Row) -> str:
    grounds: list[str] = []
    texts: list[str] = []
    column = 0
    for segment in row:
        cells = cell_len(segment.text)
        text, ground, bold = _colours(segment.style)
        x, width = column * CELL_WIDTH, cells * CELL_WIDTH
        column += cells
        if ground != _PAGE:
            grounds.append(
                f'<rect x="{x}" width="{width}" height="{CELL_HEIGHT}" fill="{ground}"/>'
            )
        blocks = _blocks(segment.text, x)
        if blocks:
            texts.append(f'<path fill="{text}" d="{blocks}"/>')
        shown, before = _letters(segment.text)
        if not shown:
            continue
        weight = ' font-weight="bold"' if bold else ""
        texts.append(
            f'<text x="{x + before * CELL_WIDTH}" y="{_BASE_LINE}" fill="{text}"{weight} '
            f'textLength="{cell_len(shown) * CELL_WIDTH}">{escape(shown)}</text>'
        )
    return "".join(grounds + texts)


def _letters(text: str) -> tuple[str, int]:
    """Return what of a text is no block, and the cells before it."""
    kept = "".join(" " if one in _QUARTERS else one for one in text)
    return kept.strip(), cell_len(kept) - cell_len(kept.lstrip())


def _blocks(text: str, x: int) -> str:
    """Return the path of the blocks in a text that begins at `x`: a rectangle for each run."""
    cells = [(one, cell_len(one)) for one in text]
    path: list[str] = []
    upper = CELL_HEIGHT // 2
    for top, height, left, right in ((0, upper, 1, 2), (upper, CELL_HEIGHT - upper, 4, 8)):
        filled: list[tuple[int, int]] = []
        at = x
        for one, width in cells:
            quarters, half = _QUARTERS.get(one, 0), CELL_WIDTH // 2
            if quarters & left:
                filled.append((at, at + half))
            if quarters & right:
                filled.append((at + half, at + CELL_WIDTH))
            at += width * CELL_WIDTH
        for begin, end in _runs(filled):
            path.append(f"M{begin} {top}h{end - begin}v{height}h{begin - end}z")
    return "".join(path)


def _runs(filled: Iterable[tuple[int, int]]) -> list[tuple[int, int]]:
    """Join stretches that touch."""
    runs: list[tuple[int, int]] = []
    for begin, end in filled:
        if runs and runs[-1][1] == begin:
            begin = runs.pop()[0]
        runs.append((begin, end))
    return runs


def _colours(style: Style | None) -> tuple[str, str, bool]:
    """Return a style's colours of text and ground, and whether it is bold."""
    if style is None:
        return "#FFFFFF", _PAGE, False
    theme = DEFAULT_TERMINAL_THEME
    text = style.color.get_truecolor(theme).hex if style.color else "#FFFFFF"
    ground = style.bgcolor.get_truecolor(theme).hex if style.bgcolor else _PAGE
    if style.reverse:
        text, ground = ground, text
    return text.upper(), ground.upper(), bool(style.bold)
