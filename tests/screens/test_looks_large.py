"""Sentences in large letters: that they can be read, and that they give way where there is no room.

The letters are read back from the cells by `blocks.read`, which knows their drawing and not how a
text is laid out.
"""

from __future__ import annotations

import unicodedata
from dataclasses import replace
from functools import cache, partial
from itertools import pairwise

import pytest
from rich.cells import cell_len

from kiosk.engine import commands as c
from kiosk.engine.prompt import prompt
from kiosk.engine.state import Mode
from kiosk.languages.words import words
from kiosk.pictures.cells import Row, cells
from kiosk.pictures.gallery import part_of, picture
from kiosk.procedure.fit import fit
from kiosk.procedure.load import load_library
from kiosk.procedure.plan import Do, Plan
from kiosk.procedure.site import load_site
from kiosk.screens.block_letters import figure_rows, figures, glyph, large
from kiosk.screens.lettering import sentences
from kiosk.screens.question import Figures, Sentence
from kiosk.screens.type_sizes import Wording, best, plain_rows
from kiosk.shipped import shipped
from tests.screens import blocks
from tests.screens.scene import SITE, YES, Kiosk, kiosk
from tests.screens.test_looks import lost, small_targets, squeezed, views
from tests.screens.test_walking import to_strip

LATIN = ("en", "es", "pt", "vi")
SIXTY = "Wash your hands, dry them with a clean towel, come back here"


@cache
def shipped_plan() -> Plan:
    """The longest of the shipped procedures, on the machine of the invented shop."""
    site, library = load_site(shipped("demo") / "site.toml"), load_library(shipped("procedures"))
    procedure = library.procedures["close-twin-gravity"]
    machine = next(one for one in site.machines if one.kind == procedure.machine_kind)
    return fit(library, procedure, machine, site, lambda q, to: words(to).quantity(q))


# The letters.


def test_no_two_letters_are_drawn_alike():
    drawn: dict[object, str] = {}
    alike: list[str] = []
    for letter in blocks.letters():
        one = glyph(letter)
        key = (one.top, one.rows)
        if key in drawn:
            alike.append(drawn[key] + letter)
        drawn[key] = letter
    assert alike == []


def test_a_zero_is_no_o_and_no_eight_and_as_wide_as_every_digit():
    """A dot in it, and room around the dot; a number must not jump from second to second."""
    zero = glyph("0")
    assert {glyph(digit).width for digit in "0123456789"} == {zero.width}
    for other in "O8QD69":
        pairs = zip("".join(zero.rows), "".join(glyph(other).rows), strict=True)
        assert sum(one != two for one, two in pairs) >= 7, other


def test_every_letter_is_even_and_has_eight_rows_of_dots():
    for letter in blocks.letters():
        one = glyph(letter)
        assert {len(row) for row in one.rows} == {one.width}, letter
        assert one.top <= 0 or unicodedata.combining(letter) == 0
        assert one.bottom >= blocks.HIGH, letter


@pytest.mark.parametrize("language", LATIN)
def test_every_sentence_of_a_walk_can_be_read_in_large_letters(language):
    said = {
        one
        for state in views(shipped_plan(), language)
        for line in words(language).lines(prompt(shipped_plan(), state))
        for one in sentences(line)
    }
    assert len(said) > 60
    wrong = []
    for one in sorted(said):
        rows = large(one, 96)
        read = blocks.read(rows, vietnamese=language == "vi") if rows else ""
        if read != " ".join(one.split()):
            wrong.append((one, read))
    assert wrong == []


@pytest.mark.parametrize(
    "text", ["손을 씻으십시오.", "洗手。", "Wash your hands ✓", "Naïve ḿ", "ĥ ẗ"]
)
def test_a_text_with_a_letter_that_cannot_be_drawn_is_not_drawn_at_all(text):
    assert large(text, 100) is None


def test_capitals_and_small_letters_with_the_accents_of_four_languages_can_be_drawn():
    # Letters beside a to z: Real Academia Española (es), Acordo Ortográfico 1990 (pt), and the
    # Vietnamese alphabet of 29 letters with five tone marks (MEM).
    spanish, portuguese = "áéíóúüñ", "áâãàçéêíóôõú"
    bases = "aăâeêioôơuưy"
    tones = ("", "\u0300", "\u0309", "\u0303", "\u0301", "\u0323")
    vietnamese = [unicodedata.normalize("NFC", base + tone) for base in bases for tone in tones]
    for letter in (*spanish, *portuguese, *vietnamese, "đ"):
        assert glyph(letter) is not None, letter
        assert glyph(letter.upper()) is not None, letter.upper()


def test_accents_touch_no_letter_and_the_dot_of_an_i_is_none_below_the_line_above():
    for letter in "éèêñüăÉÑẤễộỷọ":
        one = glyph(letter)
        inked = ["#" in row for row in one.rows]
        assert "10" in "".join(str(int(row)) for row in inked).strip("0"), letter
    for text in ("ve vi ọ vi", "ộ vi", "ọ ố i"):
        assert blocks.read(large(text, 8), vietnamese=True) == text


def test_lines_do_not_touch_each_other():
    rows = large("the pp ll", 10)
    assert blocks.read(rows) == "the pp ll"
    assert len(rows) == 13


def test_a_word_that_is_wider_than_a_line_is_not_broken():
    assert large("disassembly", 30) is None
    assert large("disassembly", 40) is not None


def test_rows_are_as_wide_as_allowed_and_evenly_filled():
    for width in (40, 56, 76, 96):
        rows = large(SIXTY, width)
        assert max(map(cell_len, rows)) <= width
    assert len(large(SIXTY, 96)) == 12


@pytest.mark.parametrize("size", [1, 2, 3])
def test_figures_are_as_high_as_told(size):
    rows = figures("12:05", size)
    assert len(rows) == figure_rows(size) == (4, 7, 11)[size - 1]
    if size == 1:
        assert blocks.read(rows) == "12:05"
    assert figures("-", 1)
    assert figures("_", 1)
    assert figures("3,5", 1)


# How a question is set.


def text_of(wording: Wording, width: int, room: int) -> tuple[str, str]:
    """What is set small, and what large."""
    rows = [row.text for row in best(wording, width, room).rows]
    small = " ".join(one for one in rows if not set(one) & set("▀▄█▌▐"))
    return " ".join(small.split()), blocks.read(rows)


def test_large_letters_give_way_step_by_step():
    wording = Wording(("First, wash again.", "Open the middle valve. Close it."), main=1)
    assert text_of(wording, 80, 30)[1] == "First, wash again. Open the middle valve. Close it."
    assert text_of(wording, 80, 11) == ("First, wash again.", "Open the middle valve. Close it.")
    assert text_of(wording, 80, 8) == ("First, wash again. Close it.", "Open the middle valve.")
    assert text_of(wording, 80, 7)[1] == ""
    assert len(best(wording, 80, 7).rows) == 5
    assert len(best(wording, 80, 4).rows) == 3
    assert not best(wording, 80, 7).large
    assert best(wording, 80, 8).large


def test_what_does_not_fit_at_all_is_set_as_small_as_may_be():
    wording = Wording(("A long line of many words. " * 20,))
    assert len(best(wording, 60, 3).rows) == plain_rows(wording, 60)


def test_other_scripts_stand_in_airy_rows():
    wording = Wording(("손을 씻으십시오. 그리고 깨끗한 수건으로 손을 완전히 말리십시오. " * 2,))
    rows = [row.text for row in best(wording, 60, 20).rows]
    assert not any(one and other for one, other in pairwise(rows))


def test_where_letters_can_grow_they_are_drawn_over_several_cells():
    wording = Wording(("손을 씻으십시오.",), grows=True)
    first, *under = best(wording, 80, 12).rows
    assert (first.text, first.times) == ("손을 씻으십시오.", 4)
    assert [row.text for row in under] == ["", "", ""]
    assert best(wording, 80, 3).rows[0].times == 3
    assert best(wording, 80, 2).rows[0].times == 2
    assert best(wording, 80, 1).rows[0].times == 1
    assert cell_len("손을 씻으십시오.") * 4 <= 76


@pytest.mark.parametrize(("width", "room"), [(100, 17), (80, 11), (60, 31)])
def test_no_sentence_is_lost_in_any_setting(width, room):
    lost_ones, pictured = [], 0
    for state in list(views(shipped_plan(), "es"))[::4]:
        lines = words("es").lines(prompt(shipped_plan(), state))
        name = part_of(shipped_plan().step(state.step))
        found = best(Wording(lines), width, room, name and partial(drawn, name))
        small = squeezed("".join(row.text for row in found.rows))
        large_ones = squeezed(blocks.read([row.text for row in found.rows]))
        said = [one for line in lines for one in sentences(line)]
        lost_ones += [one for one in said if squeezed(one) not in (small + " " + large_ones)]
        pictured += any(row.picture for row in found.rows)
        assert len(found.rows) <= room
    assert lost_ones == []
    assert pictured > 10


def drawn(name: str, width: int, height: int) -> tuple[Row, ...]:
    return cells(picture(name), width, height)


# On the screen.


async def test_a_sentence_of_sixty_characters_is_large_where_there_is_room(tmp_path):
    assert len(SIXTY) == 60
    async with kiosk(tmp_path, size=(100, 30)) as it:
        await it.begin()
        plan = it.walk.session.plan
        lid = replace(plan.step("lid"), say={"en": SIXTY})
        state = next(one for one in views(plan, "en") if one.step == "lid")
        steps = tuple(lid if one.id == "lid" else one for one in plan.steps)
        it.walk.session.plan, it.walk.session.state = replace(plan, steps=steps), state
        it.app.screen.draw()
        await it.settle()
        assert SIXTY in it.large()
        assert small_targets(it) == []


async def test_the_instruction_is_large_and_what_is_said_beside_it_is_not(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        assert it.large() == "Wash your hands."
        assert "When it is so, say: my hands are clean." in it.words()


async def test_the_time_of_a_wait_is_larger_where_there_is_room(tmp_path):
    rows = []
    for size in ((60, 18), (100, 30)):
        async with kiosk(tmp_path / str(size[0]), size=size) as it:
            await it.begin()
            await to_strip(it)
            await it.press(*"100", "enter")
            await it.touch(YES) if it.offers(YES) else None
            digits = it.app.screen.query_one(Figures)
            assert digits.value == "2:00"
            assert lost(it) == []
            rows.append(digits.region.height)
            await it.pass_time(61)
            assert digits.value in ("0:58", "0:59")
            assert digits.region.height == rows[-1]
    assert rows[0] >= 4
    assert rows[1] > rows[0]


async def test_the_key_that_leads_back_from_more_does_not_pause(tmp_path):
    async with kiosk(tmp_path, size=(60, 18)) as it:
        await it.begin()
        await it.press("m")
        assert it.offers(c.Pause())
        await it.press("escape")
        assert it.state.mode is Mode.RUNNING
        assert it.large() == "Wash your hands."


# Pictures.


async def at_a_picture(it: Kiosk, language: str = "en") -> None:
    """Show a step of a shipped procedure that points at a part."""
    plan = shipped_plan()
    state = next(
        one
        for one in views(plan, language)
        if one.step == one.goal and part_of(plan.step(one.step)) and one.mode is Mode.RUNNING
        and plan.step(one.step).caution is None and isinstance(plan.step(one.step).task, Do)
    )  # fmt: skip
    it.walk.session.plan, it.walk.session.state = plan, state
    it.app.screen.draw()
    await it.settle()


def braille(it: Kiosk) -> int:
    """Cells of the screen that hold a part of a picture."""
    return sum("\u2801" <= one <= "\u28ff" for one in it.seen())


@pytest.mark.parametrize("size", [(100, 30), (60, 48)], ids=str)
async def test_the_part_that_a_step_points_at_is_shown_with_its_sentence(tmp_path, size):
    site = load_site(shipped("demo") / "site.toml")
    async with kiosk(tmp_path, size=size, site=replace(SITE, people=site.people)) as it:
        await it.touch("Window machine", site.people[0].name)
        await at_a_picture(it)
        assert braille(it) > 60
        assert it.large() != ""
        assert lost(it) == []
        assert small_targets(it) == []


async def test_a_picture_gives_way_to_the_sentence(tmp_path):
    async with kiosk(tmp_path, size=(60, 18)) as it:
        await it.begin()
        await at_a_picture(it)
        assert braille(it) == 0
        assert lost(it) == []
        assert it.app.screen.query_one(Sentence).setting.aside == 0
