"""A figure as SVG and in terminal cells: in its place, whole, readable without colour."""

from __future__ import annotations

import re
from datetime import timedelta
from itertools import product
from xml.etree import ElementTree

import pytest

from kiosk.languages.words import words
from kiosk.plots.axes import day_axis, number_axis, power_axis, when
from kiosk.plots.cells import cells, plain
from kiosk.plots.figure import (
    Axis,
    Band,
    Bar,
    Bars,
    Box,
    Chart,
    Dash,
    Figure,
    Fill,
    Ink,
    Lane,
    Lanes,
    Level,
    Line,
    Mark,
    Point,
    Points,
    Shape,
    Source,
    Spread,
    Strip,
    Tick,
)
from kiosk.plots.gather import days_each, gathered
from kiosk.plots.grid import cell_width
from kiosk.plots.svg import svg
from kiosk.plots.svg_strokes import COLOURS
from tests.unit.plot_rows import FIRST, ZONE, at

SVG = "{http://www.w3.org/2000/svg}"
X = Axis("days", 0, 10, (Tick(0, "first"), Tick(5, "middle"), Tick(10, "last")))
Y = Axis("°C", 0, 10, tuple(Tick(n, str(n)) for n in range(0, 11, 5)))
CHART = Chart(
    title="Mix <&> “temperature” 믹스 온도", told="Ten readings, one of them too warm.", x=X, y=Y,
    layers=(
        Band("good", None, 5), Level("limit", 5),
        Line("usual", (Point(0, 2), Point(10, 4)), Dash.DASHED),
        Spread("reach", ((3, 1, 4),)), Bars("bars", (Point(8, 2),), 1),
        Points("kept", (Point(2, 5, Source(7, "s1", "told <b>")), Point(4, 3))),
        Points("off", (Point(6, 9, Source(8)),), Shape.CROSS, Ink.OFF),
    ),
)  # fmt: skip
STRIP = Strip(
    title="Who closed", told="A strip.", columns=("Nov 1", "", "Nov 3"),
    rows=(("Ana", (Box(Fill.DARK, "3"), Box(Fill.NONE), Box(Fill.CROSSED, "1", Source(5, "s5")))),
          ("", (Box(Fill.PALE), Box(Fill.HATCHED), Box(Fill.MIDDLE)))),
    key=((Fill.DARK, "often"), (Fill.CROSSED, "late")),
)  # fmt: skip
LANES = Lanes(
    title="Parts", told="A part.", x=X,
    lanes=(Lane("오링", (Bar(0, 5, Fill.PALE), Bar(6, 9, Fill.HATCHED)),
                (Mark(5, Shape.BAR, source=Source(9, "s9")), Mark(3, Shape.CROSS, Ink.OFF))),),
    key=((Fill.PALE, "in use"), ((Shape.CROSS, Ink.OFF), "worn")),
)  # fmt: skip
FIGURES: tuple[Figure, ...] = (CHART, STRIP, LANES)


def parsed(figure: Figure) -> ElementTree.Element:
    return ElementTree.fromstring(svg(figure))


def group(root: ElementTree.Element, name: str) -> list[ElementTree.Element]:
    return [one for one in root if one.get("class") == name]


@pytest.mark.parametrize("figure", FIGURES)
def test_it_has_a_title_and_a_description_for_who_cannot_see_it(figure: Figure):
    root = parsed(figure)
    named = {one.get("id"): one.text for one in root if one.tag in (f"{SVG}title", f"{SVG}desc")}
    assert root.get("role") == "img"
    assert [named[name] for name in root.get("aria-labelledby", "").split()] == [
        figure.title, figure.told,
    ]  # fmt: skip


def test_ids_differ_so_that_figures_fit_into_one_page():
    ids = [one.get("id") for figure in FIGURES for one in parsed(figure).iter() if one.get("id")]
    assert len(ids) == len(set(ids)) == 6


@pytest.mark.parametrize("figure", FIGURES)
def test_it_needs_nothing_outside_itself(figure: Figure):
    text = svg(figure)
    assert not re.search(r"href|url\(|@import|<script|<image", text)
    assert re.findall(r"https?://[^\"]*", text) == ["http://www.w3.org/2000/svg"]


@pytest.mark.parametrize("figure", FIGURES)
def test_what_comes_from_the_journal_can_be_followed_to_its_row(figure: Figure):
    rows = {one.get("data-seq"): one.get("data-session") for one in parsed(figure).iter()}
    expected = {CHART.title: {"7": "s1", "8": None}, STRIP.title: {"5": "s5"},
                LANES.title: {"9": "s9"}}  # fmt: skip
    assert {seq: session for seq, session in rows.items() if seq} == expected[figure.title]


def test_a_reading_on_its_limit_lies_on_the_limit_line_and_a_higher_one_above():
    root = parsed(CHART)
    limit = float(group(root, "level")[0][0].get("y1", ""))
    kept, off = group(root, "points")
    on_limit, below = (float(one.get("cy", "")) for one in kept)
    assert on_limit == pytest.approx(limit, abs=0.01)
    assert below > limit
    assert float(re.findall(r"M[\d.]+,([\d.]+)", off[0].get("d", ""))[0]) < limit


def test_places_are_in_proportion_to_values():
    kept = group(parsed(CHART), "points")[0]
    (x2, y5), (x4, y3) = ((float(one.get("cx", "")), float(one.get("cy", ""))) for one in kept)
    left = float(group(parsed(CHART), "level")[0][0].get("x1", ""))
    assert x4 - x2 == pytest.approx(x2 - left, abs=0.03)
    limit_to_foot = float(group(parsed(CHART), "bars")[0][0][0].get("height", "")) / 2 * 5
    assert y3 - y5 == pytest.approx(limit_to_foot * 2 / 5, abs=0.03)


def test_out_of_limit_differs_by_shape_and_not_by_colour_alone():
    kept, off = group(parsed(CHART), "points")
    assert {one.tag for one in kept} == {f"{SVG}circle"}
    assert {one.tag for one in off} == {f"{SVG}path"}
    drawn = plain(cells(CHART, 60, 16))
    assert drawn.count("x") >= 2  # the point, and the key


def contrast(one: str, other: str) -> float:
    """WCAG 2.1, relative luminance and contrast ratio (from memory)."""

    def luminance(colour: str) -> float:
        parts = [int(colour[n : n + 2], 16) / 255 for n in (1, 3, 5)]
        r, g, b = (c / 12.92 if c <= 0.03928 else ((c + 0.055) / 1.055) ** 2.4 for c in parts)
        return 0.2126 * r + 0.7152 * g + 0.0722 * b

    bright, dark = sorted((luminance(one), luminance(other)), reverse=True)
    return (bright + 0.05) / (dark + 0.05)


@pytest.mark.parametrize("ink", [ink for ink in Ink if ink is not Ink.BAND])
def test_every_ink_stands_out_from_paper_and_from_the_band(ink: Ink):
    assert contrast(COLOURS[ink], "#ffffff") >= 7
    assert contrast(COLOURS[ink], COLOURS[Ink.BAND]) >= 6


def test_hatching_stays_within_its_box():
    root = ElementTree.fromstring(svg(STRIP))
    boxes = [one for one in root.iter(f"{SVG}g") if one.find(f"{SVG}path") is not None]
    assert len(boxes) == 3  # two boxes and the key
    for box in boxes:
        edge = box[0]
        x, y, wide, high = (float(edge.get(n, "")) for n in ("x", "y", "width", "height"))
        ends = re.findall(r"[ML]([\d.]+),([\d.]+)", box.find(f"{SVG}path").get("d"))  # type: ignore[union-attr]
        assert len(ends) > 4
        assert all(
            x - 0.01 <= float(a) <= x + wide + 0.01 and y - 0.01 <= float(b) <= y + high + 0.01
            for a, b in ends
        )


@pytest.mark.parametrize("figure", FIGURES)
@pytest.mark.parametrize(("width", "height"), [*product((20, 60, 80, 100), (5, 9, 18, 30)), (1, 1)])
def test_it_keeps_within_the_cells_that_there_are(figure: Figure, width: int, height: int):
    rows = cells(figure, width, height)
    assert len(rows) <= height
    assert all(sum(cell_width(piece.text) for piece in row) <= width for row in rows)


@pytest.mark.parametrize("figure", FIGURES)
def test_title_key_and_names_are_there_in_a_small_terminal(figure: Figure):
    drawn = plain(cells(figure, 60, 16))
    named = [layer.name for layer in figure.layers] if isinstance(figure, Chart) else [
        meaning for _, meaning in figure.key
    ]  # fmt: skip
    assert figure.title in drawn
    assert all(name in drawn for name in named)


def test_cells_stand_in_the_row_of_their_value():
    rows = plain(cells(CHART, 60, 20)).split("\n")
    cross = next(n for n, row in enumerate(rows) if re.search("[│┃].*x", row))
    top = next(n for n, row in enumerate(rows) if row.startswith("10"))
    foot = next(n for n, row in enumerate(rows) if row.startswith(" 0"))
    assert (cross - top) / (foot - top) == pytest.approx(0.1, abs=0.06)
    assert sum("┃" in row for row in rows) >= (foot - top) // 2


def test_the_newest_columns_of_a_strip_stay_when_not_all_fit():
    boxes = tuple(Box(Fill.PALE, str(n % 10)) for n in range(90))
    long = Strip(title="t", told="", columns=("",) * 90, rows=(("A", boxes),))
    drawn = plain(cells(long, 40, 5)).split("\n")[1]
    assert drawn == "A " + "".join(str(n % 10) for n in range(90))[-38:]


# Axes.


@pytest.mark.parametrize("values", [(0.0,), (3.0, 3.0), (2.5, 9.0), (-4.0, 21.3), (1e6, 2.2e6)])
@pytest.mark.parametrize("from_zero", [True, False])
def test_a_number_axis_holds_its_values_between_round_ticks(
    values: tuple[float, ...], from_zero: bool
):
    axis = number_axis("n", values, words("en"), from_zero=from_zero)
    assert axis.least <= min(values) <= max(values) <= axis.most
    assert axis.least < axis.most
    assert 2 <= len(axis.ticks) <= 8
    assert axis.ticks[0].at == axis.least
    assert axis.ticks[-1].at == axis.most


def test_numbers_are_written_as_the_language_does():
    labels = {
        lang: [one.label for one in number_axis("", (0, 2000), words(lang), from_zero=True).ticks]
        for lang in ("en", "es", "pt")
    }
    assert labels["en"][-1] == "2,000"
    # Spanish as it is written in most of the Americas.
    assert labels["es"][-1] == "2,000"
    assert labels["pt"][-1] == "2.000"


def test_a_power_axis_has_a_tick_at_each_power_and_room_below():
    axis = power_axis("n", (1.0, 4.7), words("en"))
    assert [tick.label for tick in axis.ticks] == ["1", "10", "100", "1,000", "10,000", "100,000"]


@pytest.mark.parametrize(
    ("days", "labels"),
    [
        (1, ["Sep 1"]),
        (30, ["Sep 1", "Sep 4", "Sep 7"]),
        (60, ["Sep 1", "Sep 8", "Sep 15"]),
        (300, ["Sep", "Oct", "Nov", "Dec", "2027", "Feb"]),
        (3650, ["2027", "2028", "2029"]),
    ],
)
def test_days_are_labelled_by_how_many_there_are(days: int, labels: list[str]):
    axis = day_axis(FIRST, FIRST + timedelta(days=days - 1), words("en"))
    assert [tick.label for tick in axis.ticks][: len(labels)] == labels
    assert len(axis.ticks) <= 18
    assert axis.most - axis.least == days


def test_a_moment_stands_where_the_shops_clock_showed_it():
    summer, winter = when(at(0, 18), ZONE), when(at(90, 18), ZONE)
    assert summer % 1 == pytest.approx(0.75)
    assert winter % 1 == pytest.approx(0.75)
    assert winter - summer == 90


# Many values.


def test_gathering_loses_nothing_and_keeps_the_extremes():
    places = [n * 0.7 for n in range(5000)]
    days = days_each(places[0], places[-1])
    stretches = gathered(places, lambda x: x, places[0], days)
    assert sum(len(one.items) for one in stretches) == 5000
    assert days % 7 == 0
    assert 90 <= len(stretches) <= 112
    low, middle, high = stretches[3].reach(lambda x: x)
    assert low == min(stretches[3].items)
    assert high == max(stretches[3].items)
    assert low < middle < high
    assert abs(middle - stretches[3].middle) < 1
