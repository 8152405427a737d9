"""A report as one HTML page that needs no other file and no network."""

from __future__ import annotations

import base64
from importlib import resources
from typing import Final

from jinja2 import BaseLoader, Environment, StrictUndefined
from markupsafe import Markup

from kiosk.plots.figure import Figure
from kiosk.plots.svg import svg
from kiosk.report.fonts import parts_for
from kiosk.report.paper import Paper, Table, shown, writable

ROWS_WIDTH: Final = 14
"""Share of a table's width that the journal rows take, beside those of its other columns."""


def as_html(paper: Paper) -> str:
    """Return the page. What stands in data-seq are the journal rows that a text is from."""
    template = _environment().from_string(_file("page.html.jinja"))
    page = template.render(
        paper=paper,
        # Our own style sheet; a text of the report never stands in it.
        style=Markup(_file("page.css")),  # noqa: S704
        total=total,
        rows_width=ROWS_WIDTH,
        drawn=_drawn,
    )
    faces = "".join(f"\n{_face(font)}" for font in parts_for(page, paper.language))
    return page.replace("<style>", f"<style>{faces}", 1)


def _face(font: bytes) -> str:
    coded = base64.b64encode(font).decode("ascii")
    return (
        "@font-face { font-family: Paper; "
        f'src: url(data:font/otf;base64,{coded}) format("opentype"); }}'
    )


def total(table: Table) -> int:
    """Return the shares of a table's columns taken together, that of the journal rows too."""
    return sum(table.widths) + ROWS_WIDTH


def _environment() -> Environment:
    made = Environment(
        loader=BaseLoader(),
        autoescape=True,
        undefined=StrictUndefined,
        trim_blocks=True,
        finalize=_writable,
    )
    made.tests["of"] = lambda block, name: type(block).__name__ == name
    made.filters["shown"] = shown
    return made


def _writable(value: object) -> object:
    return writable(value) if type(value) is str else value


def _drawn(figure: Figure) -> Markup:
    # The figure's own texts were escaped where it was written.
    return Markup(svg(figure))  # noqa: S704


def _file(name: str) -> str:
    return resources.files("kiosk.report").joinpath(name).read_text("utf-8")
