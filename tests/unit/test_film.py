"""A film of a terminal, as one SVG file."""

from __future__ import annotations

import re
import xml.etree.ElementTree as ET

from rich.segment import Segment
from rich.style import Style

from kiosk.crew.film import CELL_HEIGHT, CELL_WIDTH, Film

YELLOW = Style(color="#000000", bgcolor="#FFD23F", bold=True)
SVG = "{http://www.w3.org/2000/svg}"


def rows(*texts: str) -> list[list[Segment]]:
    return [[Segment(text.ljust(10), YELLOW)] for text in texts]


def test_the_same_frame_twice_lasts_longer() -> None:
    film = Film(10, 2)
    film.take(rows("a", "b"), 1.0)
    film.take(rows("a", "b"), 2.0)
    film.take(rows("a", "c"), 1.0)
    assert len(film) == 2
    assert film.seconds == 4.0


def test_a_row_that_is_seen_again_is_drawn_once() -> None:
    film = Film(10, 2)
    film.take(rows("a", "b"), 1.0)
    film.take(rows("a", "c"), 1.0)
    root = ET.fromstring(film.svg("x"))
    drawn = [one.get("id") for one in root.iter(f"{SVG}g") if one.get("id")]
    used = [(one.get("href"), one.get("y")) for one in root.iter(f"{SVG}use")]
    assert len(drawn) == 3
    assert used == [
        ("#r0", "0"), ("#r1", str(CELL_HEIGHT)),
        ("#r0", str(2 * CELL_HEIGHT)), ("#r2", str(3 * CELL_HEIGHT)),
    ]  # fmt: skip


def test_each_frame_is_moved_into_view_for_its_share_of_the_time() -> None:
    film = Film(10, 2)
    film.take(rows("a", "b"), 1.0)
    film.take(rows("a", "c"), 3.0)
    text = film.svg("x")
    moves = re.findall(r"([\d.]+)%\{transform:translateY\((-?\d+)px\)\}", text)
    height = 2 * CELL_HEIGHT
    assert [(float(at), int(to)) for at, to in moves] == [(0, 0), (25, -height), (100, -height)]
    assert "4.0s step-end infinite" in text
    assert "prefers-reduced-motion" in text


def test_text_is_escaped_and_wide_letters_take_two_cells() -> None:
    film = Film(10, 1)
    film.take([[Segment("<&> ", YELLOW), Segment("손 ", YELLOW), Segment("ab", None)]], 1.0)
    root = ET.fromstring(film.svg("a < b"))
    texts = {one.text: one for one in root.iter(f"{SVG}text")}
    assert root.find(f"{SVG}title") is not None
    # Two segments of one style are one.
    assert set(texts) == {"<&> 손", "ab"}
    assert texts["<&> 손"].get("textLength") == str(6 * CELL_WIDTH)
    assert texts["ab"].get("x") == str(7 * CELL_WIDTH)


def test_blocks_are_drawn_as_shapes_that_touch() -> None:
    film = Film(4, 1)
    film.take([[Segment("▛█ a", YELLOW)]], 1.0)
    root = ET.fromstring(film.svg("x"))
    path = next(root.iter(f"{SVG}path")).get("d")
    half, upper, lower = CELL_WIDTH // 2, CELL_HEIGHT // 2, CELL_HEIGHT - CELL_HEIGHT // 2
    wide, rest = 2 * CELL_WIDTH, CELL_WIDTH
    assert path == (
        f"M0 0h{wide}v{upper}h-{wide}z"
        f"M0 {upper}h{half}v{lower}h-{half}z"
        f"M{CELL_WIDTH} {upper}h{rest}v{lower}h-{rest}z"
    )
    (text,) = root.iter(f"{SVG}text")
    assert (text.text, text.get("x")) == ("a", str(3 * CELL_WIDTH))
