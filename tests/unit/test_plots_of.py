"""The figures of a shop: what they show is what the ledger has."""

from __future__ import annotations

from dataclasses import replace
from datetime import timedelta
from decimal import Decimal

import pytest

from kiosk.languages.words import languages, words
from kiosk.plots import of_closings, of_parts, of_readings, of_results, of_sessions
from kiosk.plots.axes import when
from kiosk.plots.cells import cells, plain
from kiosk.plots.figure import (
    Band,
    Bars,
    Chart,
    Figure,
    Fill,
    Ink,
    Layer,
    Level,
    Line,
    Points,
    Shape,
    Spread,
)
from kiosk.plots.reader import reader
from kiosk.plots.svg import svg
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.review_rules import Interval
from kiosk.review.barrels import barrels
from kiosk.review.parts import wear
from kiosk.review.record import Ended
from kiosk.review.results import Entered, Sample
from kiosk.review.schedule import Due, Duty, Kept, Stand
from kiosk.trade.authorities import Analysis, Product, authority
from kiosk.trade.rounding import read_amount
from tests.unit.plot_rows import FIRST, LIBRARY, SITE, ZONE, at, line, part, reading

READER = reader(SITE, words("en"))


def layers(chart: Chart | None, sort: type[Layer]) -> list[Layer]:
    assert chart is not None
    return [one for one in chart.layers if isinstance(one, sort)]


def values(chart: Chart | None, shape: Shape) -> list[float]:
    found = [one for one in layers(chart, Points) if one.shape is shape]  # type: ignore[union-attr]
    return [point.y for one in found for point in one.points]  # type: ignore[union-attr]


# Readings.


def test_readings_are_drawn_in_their_place_with_band_and_limit():
    chart = of_readings.readings([reading(0, "3"), reading(9, "6.5")], READER, what="Patio")
    assert values(chart, Shape.DOT) == [3.0]
    assert values(chart, Shape.CROSS) == [6.5]
    (band,), (level,) = layers(chart, Band), layers(chart, Level)
    assert (band.least, band.most, level.at) == (None, 5.0, 5.0)  # type: ignore[union-attr]
    assert level.name == "limit: 5 degrees Celsius or less"
    off = next(x for x in layers(chart, Points) if x.shape is Shape.CROSS).points[0]  # type: ignore[union-attr]
    assert off.x == when(at(9), ZONE)
    assert (off.source.seq, off.source.session) == (10, "s9")


def test_the_description_has_the_figures_and_the_limits_source():
    chart = of_readings.readings([reading(0, "3"), reading(9, "6.5")], READER)
    assert chart is not None
    assert chart.told == (
        "2 readings from 2026-09-01 12:00 to 2026-09-10 12:00, from 3 degrees Celsius to 6.5 "
        "degrees Celsius. Out of its limit: 1. Limit: a published clause"
    )


def test_a_limit_that_changed_is_drawn_as_long_as_it_was_in_force():
    newer = "mix temperature None to 4: another clause"
    found = [
        reading(0, "3"),
        reading(5, "3"),
        reading(6, "3", limit=newer),
        reading(9, "3", limit=newer),
    ]
    chart = of_readings.readings(found, READER)
    assert not layers(chart, Level)
    drawn = [[(p.x, p.y) for p in one.points] for one in layers(chart, Line)]  # type: ignore[union-attr]
    x = [when(at(day), ZONE) for day in (0, 5, 6, 9)]
    assert drawn == [[(x[0], 5.0), (x[1], 5.0)], [(x[2], 4.0), (x[3], 4.0)]]


def test_a_band_has_both_its_ends():
    limit = "sanitizer strength 100 to 200: a label"
    found = [reading(0, "150", unit="mg/L", quantity="sanitizer strength", limit=limit)]
    chart = of_readings.readings(found, READER)
    assert [one.at for one in layers(chart, Level)] == [100.0, 200.0]  # type: ignore[union-attr]
    assert chart is not None
    assert chart.y.name == "sanitizer strength, ppm"
    assert [one.name for one in layers(chart, Level)][1] == ""  # one entry in the key


def test_readings_in_another_unit_are_left_out_and_said():
    chart = of_readings.readings([reading(0, "40", unit="°F"), reading(1, "3")], READER)
    assert values(chart, Shape.DOT) == [3.0]
    assert chart is not None
    assert "not drawn: 1" in chart.told


def test_of_ten_years_of_readings_every_one_out_of_its_limit_is_drawn():
    found = [reading(n, "7" if n % 500 == 3 else "3") for n in range(3650)]
    chart = of_readings.readings(found, READER)
    assert len(values(chart, Shape.CROSS)) == 8
    assert len(values(chart, Shape.DOT)) < 120
    (spread,) = layers(chart, Spread)
    assert {reach[1:] for reach in spread.reach} == {(3.0, 3.0)}  # type: ignore[union-attr]


def test_a_reading_without_a_limit_has_none_drawn():
    chart = of_readings.readings([reading(0, "3", limit="", kept=None)], READER)
    assert not layers(chart, Band)
    assert layers(chart, Points)[0].name == "reading"


def test_where_there_is_nothing_there_is_no_figure():
    unread = replace(reading(0, "3"), value="none")
    assert of_readings.readings([], READER) is None
    assert of_readings.readings([unread], READER) is None
    assert of_sessions.lengths([], READER) is None
    assert of_sessions.deviations([], READER) is None
    assert of_closings.closings([], [], READER) is None
    assert of_parts.wear([], READER, at(0)) is None


# Sessions.


def test_sessions_are_drawn_by_how_they_ended_with_their_usual_length():
    found = [
        line(0, 50),
        line(1, 70, usual_s=3000.0),
        line(2, 10, ended=Ended.EARLY, usual_s=3600.0),
        line(3, 5, ended=Ended.OPEN),
    ]
    chart = of_sessions.lengths(found, READER)
    assert values(chart, Shape.DOT) == [50, 70]
    assert values(chart, Shape.CROSS) == [10]
    assert values(chart, Shape.RING) == [5]
    (usual,) = layers(chart, Line)
    assert [point.y for point in usual.points] == [50, 60]  # type: ignore[union-attr]
    assert chart is not None
    assert "The middle length is 30 minutes" in chart.told


def test_unlike_sessions_have_no_usual_length():
    chart = of_sessions.lengths(
        [line(0, usual_s=1.0), line(1, machine="counter", usual_s=9.0)], READER
    )
    assert not layers(chart, Line)


def test_a_sessions_point_names_its_rows_time_and_worker():
    chart = of_sessions.lengths([line(0, 50)], READER)
    source = layers(chart, Points)[0].points[0].source  # type: ignore[union-attr]
    assert (source.seq, source.session) == (1, "s0")
    assert source.told == "2026-09-01 21:00: 50 minutes, Mina Ahn"


def test_deviations_are_counted_for_each_session():
    found = [line(0, deviations=3), line(0, deviations=0), line(4, deviations=1)]
    chart = of_sessions.deviations(found, READER)
    (bars,) = layers(chart, Bars)
    assert [point.y for point in bars.points] == [1.5, 1.0]  # type: ignore[union-attr]
    assert bars.points[0].source.told == "3 in 2 sessions"  # type: ignore[union-attr]


# Who closed when.


def evening(day: int, stand: Stand, session: str = "", machine: str = "patio") -> Kept:
    due = Due(
        id=f"{day}", duty=Duty.CLOSE, machine=machine, title={}, day=FIRST + timedelta(days=day),
        claim_utc=0, from_utc=0, until_utc=0,
    )  # fmt: skip
    return Kept(due=due, stand=stand, session=session)


def test_each_evening_stands_with_who_ended_it():
    kept = [
        evening(0, Stand.DONE, "s0"),
        evening(0, Stand.DONE, "s0b", "counter"),
        evening(1, Stand.LATE, "s1"),
        evening(2, Stand.MISSED),
        evening(3, Stand.NOT_YET),
    ]
    sessions = [line(0, session="s0"), line(0, session="s0b"), line(1, workers=("p1", "p2"))]
    strip = of_closings.closings(kept, sessions, READER)
    assert strip is not None
    assert len(strip.columns) == 3
    rows = {name: [(box.fill, box.mark) for box in boxes] for name, boxes in strip.rows}
    none = (Fill.NONE, "")
    assert rows == {
        "Mina Ahn": [(Fill.DARK, "2"), none, none],
        "Rosa Beltrán": [none, (Fill.MIDDLE, "1"), none],
        "late": [none, (Fill.CROSSED, "1"), none],
        "nobody": [none, none, (Fill.CROSSED, "1")],
    }
    assert "Finished late: 1. Never finished: 1." in strip.told


@pytest.mark.parametrize(("days", "columns"), [(62, 62), (63, 9), (434, 62), (3650, 120)])
def test_long_times_are_gathered_into_weeks_and_months(days: int, columns: int):
    kept = [evening(n, Stand.DONE, f"s{n}") for n in range(days)]
    strip = of_closings.closings(kept, [line(n) for n in range(days)], READER)
    assert strip is not None
    assert len(strip.columns) == pytest.approx(columns, abs=1)
    assert sum(int(box.mark) for _, boxes in strip.rows for box in boxes if box.mark) == days


def test_of_many_months_only_the_years_are_labelled():
    kept = [evening(n, Stand.DONE, f"s{n}") for n in range(0, 1500, 30)]
    strip = of_closings.closings(kept, [line(n) for n in range(0, 1500, 30)], READER)
    assert strip is not None
    assert [one for one in strip.columns if one] == ["2027", "2028", "2029", "2030"]


# Laboratory results.


def result(day: int, amount: str, product: Product = Product.PLAIN) -> Entered:
    sample = Sample("patio", "left", FIRST + timedelta(days=day), product, Analysis.TOTAL_COUNT,
                    read_amount(amount), "g", "Lab", f"n{day}")  # fmt: skip
    return Entered(f"r{day}", sample, "p4", 0.0)


def judged(*found: Entered):
    who = authority(load_authorities(), "usda")
    return barrels(found, who, FIRST + timedelta(days=400))[0]


def test_results_are_drawn_by_what_the_laboratory_could_say():
    amounts = ("1000", "< 10", "> 10000", "est. 100", "90000", "spreaders")
    found = judged(*(result(7 * n, amount) for n, amount in enumerate(amounts)))
    chart = of_results.results(found, READER, seqs={"r28": 77})
    assert values(chart, Shape.DOT) == [3.0]
    assert values(chart, Shape.DOWN) == [1.0]
    assert values(chart, Shape.UP) == [4.0]
    assert values(chart, Shape.RING) == [2.0]
    (over,) = (one for one in layers(chart, Points) if one.shape is Shape.CROSS)  # type: ignore[union-attr]
    assert over.ink is Ink.OFF  # type: ignore[union-attr]
    assert over.points[0].y == pytest.approx(4.954, abs=0.001)  # type: ignore[union-attr]
    assert over.points[0].source.seq == 77  # type: ignore[union-attr]
    assert chart is not None
    assert "not drawn: 1" in chart.told
    assert "Over the limit: 1." in chart.told


def test_the_limit_is_the_authoritys_on_the_logarithmic_axis():
    # USDA: 50,000 per gram of plain frozen dessert (/procedures/laboratory/authorities.yaml).
    chart = of_results.results(judged(result(0, "1000")), READER)
    (limit,) = layers(chart, Level)
    assert 10**limit.at == pytest.approx(50_000)  # type: ignore[union-attr]


def test_the_moving_average_stands_below_the_results_it_follows():
    pytest.importorskip("scipy")
    amounts = ["1000", "1300", "900", "1100", "1500", "800", "1200", "1000", "2000", "4000", "8000"]
    chart = of_results.results(
        judged(*(result(7 * n, amount) for n, amount in enumerate(amounts))), READER
    )
    average, control = layers(chart, Line)
    x = [(FIRST + timedelta(days=7 * n)).toordinal() + 0.5 for n in (8, 9, 10)]
    assert [point.x for point in average.points] == x  # type: ignore[union-attr]
    assert [point.x for point in control.points] == x  # type: ignore[union-attr]
    ys = [point.y for point in average.points]  # type: ignore[union-attr]
    assert ys == sorted(ys)
    assert ys[-1] < 3.9


# Parts, and all together.

INTERVAL = Interval(
    id="i", title={"en": "Replace"}, machine_kind="twin-gravity", days=90, notice_days=14,
    part="o-rings", source="invented",
)  # fmt: skip


def worn():
    found = [part(0, "good"), part(30, "replaced"), part(60, "replaced"), part(95, "replaced"),
             part(120, "replaced"), part(130, "none left", name="drive-seals")]  # fmt: skip
    return wear(found, SITE, LIBRARY, [INTERVAL], at(140))


def test_a_lane_shows_each_life_what_is_due_and_what_is_likely():
    lanes = of_parts.wear(worn(), READER, at(140))
    assert lanes is not None
    rings = next(lane for lane in lanes.lanes if lane.name.startswith("O-rings"))
    lives = [bar.end - bar.begin for bar in rings.bars if bar.fill is not Fill.HATCHED]
    assert lives == pytest.approx([30, 30, 35, 25, 20], abs=0.05)
    marks = [mark.shape for mark in rings.marks]
    assert marks == [*[Shape.BAR] * 4, Shape.RING, Shape.DOWN]
    (likely,) = (bar for bar in rings.bars if bar.fill is Fill.HATCHED)
    assert when(at(140), ZONE) < likely.begin < likely.end
    seals = next(lane for lane in lanes.lanes if lane.name.startswith("drive seals"))
    assert [mark.shape for mark in seals.marks] == [Shape.CROSS, Shape.DOWN]


@pytest.mark.parametrize("language", languages())
def test_every_figure_can_be_drawn_in_every_language(language: str):
    look = reader(SITE, words(language))
    drawn: list[Figure | None] = [
        of_readings.readings([reading(0, "3"), reading(9, "6.5")], look, what="A"),
        of_readings.readings([reading(n, "3") for n in range(500)], look),
        of_sessions.lengths([line(n, usual_s=3000.0, ended=x) for n, x in enumerate(Ended)], look),
        of_sessions.deviations([line(0, deviations=2)], look),
        of_closings.closings([evening(0, Stand.MISSED)], [], look),
        of_results.results(judged(*(result(n, "< 10") for n in range(9))), look),
        of_parts.wear(worn(), look, at(140)),
    ]  # fmt: skip
    texts = [svg(one) + plain(cells(one, 80, 24)) for one in drawn if one is not None]
    assert len(texts) == len(drawn)
    english = [text for text in texts if "out of its limit" in text or ">replaced<" in text]
    assert bool(english) is (language == "en")


def test_a_number_is_the_same_in_the_figure_and_in_the_ledger():
    amounts = [Decimal("2.25"), Decimal("4.75"), Decimal("5.05")]
    chart = of_readings.readings([reading(n, str(one)) for n, one in enumerate(amounts)], READER)
    assert values(chart, Shape.DOT) + values(chart, Shape.CROSS) == [float(one) for one in amounts]
