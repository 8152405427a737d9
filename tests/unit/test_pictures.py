"""The drawings of parts: there for every part, told apart in few cells, drawn as they are meant."""

from __future__ import annotations

import math
import unicodedata
from dataclasses import replace
from functools import lru_cache
from itertools import combinations, pairwise
from pathlib import Path
from xml.etree import ElementTree

import pytest

from kiosk.drawing.parts_sheet import parts_sheet
from kiosk.drawing.sheet import sheet
from kiosk.drawing.write import draw_parts
from kiosk.languages.words import languages, words
from kiosk.pictures.cells import Row, cells, plain
from kiosk.pictures.gallery import PICTURES, part_of, picture
from kiosk.pictures.shapes import box, line, ring
from kiosk.pictures.stroke import Fill, Pen, Picture, Stroke
from kiosk.pictures.svg import svg, title, told
from kiosk.procedure.fit import digest_of, fit
from kiosk.procedure.load import load_library
from kiosk.procedure.model import MachineKind, StepBlock
from kiosk.procedure.plan import Plan
from kiosk.procedure.plan_text import as_text, from_text
from kiosk.procedure.site import load_site
from kiosk.shipped import shipped

LIBRARY = load_library(shipped("procedures"))
SIZES = ((24, 8), (30, 10), (42, 14), (60, 20), (17, 9), (80, 6))
SMALLEST = (24, 8)
HIDING_PLACES = (
    "gasket-groove", "valve-rings", "shaft-seal", "lid-gasket", "pump-seals", "check-band",
    "air-tube-in", "rear-brush",
)  # fmt: skip

Dots = frozenset[tuple[int, int]]


@lru_cache
def shipped_plan(name: str) -> Plan:
    site = load_site(shipped("demo") / "site.toml")
    procedure = LIBRARY.procedures[name]
    machine = next(one for one in site.machines if one.kind == procedure.machine_kind)
    return fit(LIBRARY, procedure, machine, site, lambda amount, tag: words(tag).quantity(amount))


def blocks(kind: MachineKind) -> list[StepBlock]:
    of_kind = [one for one in LIBRARY.procedures.values() if one.machine_kind == kind.id]
    return [step for one in of_kind for phase in one.phases for step in phase.steps]


def dots(rows: tuple[Row, ...]) -> Dots:
    """Read the dots back by the names of the characters, as the Unicode standard has them."""
    places = {"1": (0, 0), "2": (0, 1), "3": (0, 2), "7": (0, 3),
              "4": (1, 0), "5": (1, 1), "6": (1, 2), "8": (1, 3)}  # fmt: skip
    found = set()
    for y, text in enumerate(plain(rows).split("\n")):
        for x, character in enumerate(text):
            if character != " ":
                name = unicodedata.name(character)
                assert name.startswith("BRAILLE PATTERN DOTS-"), name
                for number in name.removeprefix("BRAILLE PATTERN DOTS-"):
                    found.add((2 * x + places[number][0], 4 * y + places[number][1]))
    return frozenset(found)


def drawn(*strokes: Stroke, width: int = 30, height: int = 10) -> Dots:
    return dots(cells(Picture("", strokes), width, height))


# What there is.


@pytest.mark.parametrize("kind", LIBRARY.kinds.values(), ids=lambda kind: kind.id)
def test_every_part_of_a_machine_is_drawn(kind: MachineKind) -> None:
    without = {name for name, part in kind.parts.items() if (part.picture or name) not in PICTURES}
    assert not without


@pytest.mark.parametrize("name", LIBRARY.procedures)
def test_every_step_that_points_at_something_has_its_picture(name: str) -> None:
    plan = shipped_plan(name)
    kind = LIBRARY.kinds[LIBRARY.procedures[name].machine_kind]
    shown = {block.id for block in blocks(kind) if block.shows or block.count or block.inspect}
    pointing = [step for step in plan.steps if step.id in shown]
    assert pointing
    assert all(part_of(step) for step in pointing)


def test_no_picture_lies_about_unused() -> None:
    used = set()
    for kind in LIBRARY.kinds.values():
        used |= {part.picture or name for name, part in kind.parts.items()}
        used |= {block.shows for block in blocks(kind)}
    assert set(PICTURES) <= used


def test_a_count_and_an_inspection_show_their_part_without_a_word() -> None:
    plan = shipped_plan("open-twin-gravity")
    assert part_of(plan.step("count-blades")) == "scraper-blades"
    assert part_of(plan.step("inspect-seals")) == "drive-seal"


def test_a_picture_of_an_unknown_name_is_none() -> None:
    step = shipped_plan("open-twin-gravity").steps[0]
    assert part_of(replace(step, shows="flywheel")) is None
    assert part_of(replace(step, shows="")) is None


@pytest.mark.parametrize("name", HIDING_PLACES)
def test_where_something_hides_the_drawing_points_at_it(name: str) -> None:
    assert any(stroke.pen is Pen.LOOK for stroke in picture(name).strokes)
    for size in SIZES[:4]:
        assert any(piece.look for row in cells(picture(name), *size) for piece in row)


# What is walked stays the same.


def test_a_picture_is_no_part_of_what_is_walked() -> None:
    plan = shipped_plan("close-twin-gravity")
    bare = tuple(replace(step, shows="") for step in plan.steps)
    assert bare != plan.steps
    assert digest_of(plan.procedure, plan.version, bare) == plan.digest


def test_a_kept_text_has_its_pictures_and_one_from_before_pictures_can_be_read() -> None:
    plan = shipped_plan("close-twin-gravity")
    text = as_text(plan)
    assert from_text(text, plan.digest) == plan
    before = text
    for name in {step.shows for step in plan.steps}:
        before = before.replace(f',"shows":"{name}"', "")
    assert '"shows"' not in before
    older = from_text(before, plan.digest)
    assert older is not None
    assert {part_of(step) for step in older.steps} == {None}


# In cells.


@pytest.mark.parametrize("name", PICTURES)
def test_a_picture_fits_its_place_fills_it_and_keeps_its_shape(name: str) -> None:
    left, top, right, bottom = picture(name).box
    shape = (right - left) / (bottom - top)
    for width, height in SIZES:
        rows = cells(picture(name), width, height)
        assert len(rows) <= height
        assert all(sum(len(piece.text) for piece in row) <= width for row in rows)
        set_dots = dots(rows)
        across = max(x for x, _ in set_dots) + 1
        down = max(y for _, y in set_dots) + 1
        assert min(x for x, _ in set_dots) <= 1
        assert min(y for _, y in set_dots) <= 1
        assert across >= 2 * width - 4 or down >= 4 * height - 4
        # Each length is right to two dots: the rounding, and the thickness of a stroke.
        assert (across - 2) / (down + 1) <= shape <= (across + 1) / (down - 2)


def test_no_two_pictures_look_alike_where_they_are_smallest() -> None:
    drawings = {name: dots(cells(one, *SMALLEST)) for name, one in PICTURES.items()}
    alike = [
        (a, b)
        for (a, one), (b, other) in combinations(drawings.items(), 2)
        if len(one ^ other) < 0.2 * len(one | other)
    ]
    assert alike == []


def test_what_stands_out_does_so_without_a_colour() -> None:
    plainly = drawn(line((0, 0), (100, 0)), ring(50, 30, 2))
    looked_at = drawn(line((0, 0), (100, 0), pen=Pen.LOOK), ring(50, 30, 2))
    dashed = drawn(line((0, 0), (100, 0), pen=Pen.HIDDEN), ring(50, 30, 2))
    top = [{x for x, y in one if y == 0} for one in (plainly, looked_at, dashed)]
    assert {x for x, y in looked_at if y == 1} >= top[0]
    assert not {x for x, y in plainly if y == 1}
    assert top[2] < top[0]
    assert len(top[2]) == pytest.approx(0.6 * len(top[0]), abs=2)


def test_what_lies_behind_is_hidden_and_a_solid_shape_is_full() -> None:
    cross = line((0, 20), (60, 20)), line((0, 0), (0, 40)), line((60, 0), (60, 40))
    seen = drawn(*cross, box(20, 10, 20, 20, fill=Fill.NONE))
    hidden = drawn(*cross, box(20, 10, 20, 20))
    solid = drawn(*cross, box(20, 10, 20, 20, fill=Fill.SOLID))
    assert hidden < seen < solid
    across = sorted(x for x, y in hidden if y == 19)
    assert max(b - a for a, b in pairwise(across)) == 19
    inner = {(x, y) for x in range(20, 39) for y in range(11, 28)}
    assert inner <= solid


def test_a_circle_is_as_round_as_dots_allow() -> None:
    found = drawn(ring(40, 40, 40), width=40, height=20)
    reach = [math.hypot(x - 39, y - 39) for x, y in found]
    assert max(reach) - min(reach) < 1.6


def test_detail_is_left_out_where_the_drawing_is_small() -> None:
    both = box(0, 0, 100, 60), line((0, 30), (100, 30), pen=Pen.FINE)
    assert drawn(*both, width=24, height=8) == drawn(both[0], width=24, height=8)
    assert drawn(*both, width=60, height=20) > drawn(both[0], width=60, height=20)


@pytest.mark.parametrize(("width", "height"), [(0, 0), (1, 4), (4, 0), (-3, 5)])
def test_a_place_without_room_gets_no_rows(width: int, height: int) -> None:
    assert cells(picture("o-rings"), width, height) == ()


# As SVG.


@pytest.mark.parametrize("name", PICTURES)
def test_each_drawing_is_told_in_every_language(name: str) -> None:
    told_in = {}
    for language in languages():
        root = ElementTree.fromstring(svg(picture(name), words(language)))
        named, described = root[0], root[1]
        assert (named.text, described.text) == (
            title(name, words(language)),
            told(name, words(language)),
        )
        told_in[language] = (named.text, described.text)
    assert len(set(told_in.values())) == len(told_in)


def test_the_place_to_look_at_is_the_thickest_and_dark_enough_in_grey() -> None:
    text = svg(picture("beater-in"), words("en")) + svg(picture("shaft-seal"), words("en"))
    drawn_in = ElementTree.fromstring(f"<g>{text}</g>").iter()
    paths = [one for one in drawn_in if "stroke" in one.attrib]
    widths = {one.attrib["stroke"]: float(one.attrib["stroke-width"]) for one in paths}
    colours = set(widths) | {one.attrib["fill"] for one in paths if "fill" in one.attrib}
    reds = {one for one in colours if len(set(one[1:])) > 2}
    assert len(reds) == 1
    (look,) = reds
    assert widths[look] == max(widths.values()) >= 2 * sorted(widths.values())[-2]
    # Relative luminance and contrast as WCAG 2.2 defines them (from memory).
    linear = [
        c / 12.92 if c <= 0.04045 else ((c + 0.055) / 1.055) ** 2.4
        for c in (int(look[at : at + 2], 16) / 255 for at in (1, 3, 5))
    ]
    luminance = 0.2126 * linear[0] + 0.7152 * linear[1] + 0.0722 * linear[2]
    assert 1.05 / (luminance + 0.05) >= 7


def test_a_drawing_fits_the_room_that_it_is_given() -> None:
    for name in PICTURES:
        root = ElementTree.fromstring(svg(picture(name), words("en"), 26, 15))
        wide, high = (float(root.attrib[key].removesuffix("mm")) for key in ("width", "height"))
        assert max(wide / 26, high / 15) == pytest.approx(1, abs=0.01)


# On paper.


@pytest.mark.parametrize("language", languages())
def test_the_wall_sheet_shows_each_step_its_picture(language: str) -> None:
    plan = shipped_plan("open-single-pump")
    page = sheet(plan, words(language))
    names = [part_of(step) for step in plan.steps]
    shown = [name for name in names if name]
    assert page.count("<svg ") == len(shown) > 20
    assert all(f"<title>{title(name, words(language))}</title>" in page for name in set(shown))


@pytest.mark.parametrize("kind", LIBRARY.kinds.values(), ids=lambda kind: kind.id)
def test_the_page_of_parts_has_every_part_and_every_place(kind: MachineKind) -> None:
    procedures = [one for one in LIBRARY.procedures.values() if one.machine_kind == kind.id]
    page = parts_sheet(kind, procedures, words("es"))
    for part in kind.parts.values():
        assert f"<strong>{part.name['es']} × {part.count}</strong>" in page
    places = {block.shows for block in blocks(kind)} - set(kind.parts) - {""}
    drawn_as_parts = {part.picture or name for name, part in kind.parts.items()}
    for name in places - drawn_as_parts:
        assert f"<strong>{title(name, words('es'))}</strong>" in page
    assert page.count("<svg ") == len(kind.parts) + len(places - drawn_as_parts)
    assert words("es").say("pictures-schematic") in page


def test_a_part_without_a_drawing_stands_on_the_page_by_its_name() -> None:
    kind = LIBRARY.kinds["single-pump"]
    strange = replace(kind.parts["door"], name={"en": "flywheel"}, count=7)
    page = parts_sheet(replace(kind, parts={"flywheel": strange}), [], words("en"))
    assert "<strong>flywheel × 7</strong>" in page
    assert "<svg " not in page


def test_the_pages_are_written_for_each_kind_and_language(tmp_path: Path) -> None:
    written = draw_parts(LIBRARY, {"twin-gravity"}, ("en", "ko"), tmp_path)
    assert [one.name for one in written] == [
        "parts-twin-gravity-en.html",
        "parts-twin-gravity-ko.html",
    ]
    assert "교반기 × 2" in written[1].read_text("utf-8")
