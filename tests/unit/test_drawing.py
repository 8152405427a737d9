"""The picture and the wall sheet: well formed, whole, and harmless whatever a sentence holds."""

from __future__ import annotations

import re
from dataclasses import replace
from functools import lru_cache
from html.parser import HTMLParser
from pathlib import Path
from xml.etree import ElementTree

import pytest

from kiosk.drawing.asked import time
from kiosk.drawing.lanes import Cell, Lane, Mark, Sort, lanes
from kiosk.drawing.markup import as_xml, element
from kiosk.drawing.picture import PAGE, picture
from kiosk.drawing.quick import quick_sheet
from kiosk.drawing.sheet import DIGEST_LENGTH, sheet
from kiosk.drawing.wrap import width, wrap
from kiosk.drawing.write import CannotDraw, draw, draw_quick
from kiosk.languages.words import languages, words
from kiosk.procedure.fit import fit
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.model import Caution, Signal, Strength
from kiosk.procedure.plan import Count, Hold, Measure, Plan, Repeat, Wait
from kiosk.procedure.site import load_site
from tests.plans import EVERY_KIND, en, hold, plan, step

ROOT = Path(__file__).parents[2]
SVG = "{http://www.w3.org/2000/svg}"
LANGUAGES = languages()
VOID = {"meta", "br", "hr", "img", "input", "link"}


@lru_cache
def library() -> Library:
    return load_library(ROOT / "procedures")


@lru_cache
def shipped_plan(procedure_id: str) -> Plan:
    site = load_site(ROOT / "demo" / "site.toml")
    procedure = library().procedures[procedure_id]
    machine = next(one for one in site.machines if one.kind == procedure.machine_kind)
    return fit(library(), procedure, machine, site, lambda amount, tag: words(tag).quantity(amount))


@lru_cache
def shipped_sheet(procedure_id: str, language: str) -> str:
    return sheet(shipped_plan(procedure_id), words(language))


SHIPPED = sorted(library().procedures)


class Reader(HTMLParser):
    """Reads a document; refuses what is opened and not closed; keeps its texts by table row."""

    def __init__(self, html: str) -> None:
        super().__init__()
        self.open: list[str] = []
        self.tags: list[str] = []
        self.rows: list[tuple[str, str]] = []
        self.text = ""
        self.feed(html)
        self.close()
        assert self.open == []

    def handle_starttag(self, tag, attrs):
        self.tags.append(tag)
        if tag not in VOID:
            self.open.append(tag)
        if tag == "tr":
            self.rows.append((dict(attrs).get("class") or "", ""))

    def handle_endtag(self, tag):
        assert self.open.pop() == tag

    def handle_data(self, data):
        if "style" in self.open:
            return
        self.text += data
        if "tr" in self.open:
            sort, text = self.rows[-1]
            self.rows[-1] = (sort, text + data)


def marks(svg: str) -> list[tuple[str, str, str]]:
    """Return (kind, step, condition) of every mark in a picture."""
    root = ElementTree.fromstring(svg)
    return [
        (one.get("class", ""), one.get("data-step", ""), one.get("data-condition", ""))
        for one in root.iter(f"{SVG}g")
        if one.get("data-step")
    ]


def texts(svg: str) -> list[str]:
    return [one.text or "" for one in ElementTree.fromstring(svg).iter(f"{SVG}text")]


# The lanes.


def test_a_lane_shows_where_a_condition_begins_is_relied_on_and_ends():
    power = hold("isolate", "isolated")
    of = plan(power, step("door", requires=("isolated",)), step("power", ends=("isolated",)))
    assert lanes(of) == (
        Lane(
            "isolated",
            Sort.HELD,
            (
                Cell(False, True, (Mark.ESTABLISHES,)),
                Cell(True, True, (Mark.RELIES,)),
                Cell(True, False, (Mark.ENDS,)),
            ),
        ),
    )


def test_what_is_relied_on_and_not_in_force_is_marked_as_such():
    (lane,) = lanes(plan(step("door", requires=("isolated",)), hold("isolate", "isolated")))
    assert lane.cells[0].marks == (Mark.NOT_IN_FORCE,)


def test_ending_comes_before_establishing_as_in_a_session():
    both = step("again", ends=("clean",), establishes=("clean",))
    (lane,) = lanes(plan(step("wash", establishes=("clean",)), both))
    assert lane.cells[1] == Cell(True, True, (Mark.ENDS, Mark.ESTABLISHES))


def test_holds_come_first_then_dangers_then_the_rest():
    of = plan(
        step("wash", establishes=("clean",)),
        step("open", establishes=("open",)),
        hold("isolate", "isolated"),
        hazards=("open",),
    )
    assert [(one.condition, one.sort) for one in lanes(of)] == [
        ("isolated", Sort.HELD), ("open", Sort.DANGER), ("clean", Sort.OTHER),
    ]  # fmt: skip


# The picture.


@pytest.mark.parametrize("procedure_id", SHIPPED)
def test_the_picture_shows_all_that_steps_require_establish_and_end(procedure_id):
    of = shipped_plan(procedure_id)
    wanted = {
        (str(mark), one.id, name)
        for one in of.steps
        for mark, names in (
            (Mark.RELIES, one.requires),
            (Mark.ESTABLISHES, one.establishes),
            (Mark.ENDS, one.ends),
        )
        for name in names
    }
    found = marks(picture(of, words("en")))
    assert len(found) == len(wanted)
    assert set(found) == wanted


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("procedure_id", SHIPPED)
def test_the_picture_says_every_sentence_number_and_condition(procedure_id, language):
    of, said = shipped_plan(procedure_id), words(language)
    found = texts(picture(of, said))
    whole = squeezed(" ".join(found))
    for number, one in enumerate(of.steps, start=1):
        assert squeezed(said.text(one.say)) in whole
        assert str(number) in found
    for lane in lanes(of):
        assert said.text(of.conditions[lane.condition].name) in found
    for phase in of.phases.values():
        assert said.text(phase) in found


def squeezed(text: str) -> str:
    """Return a text without spaces, so that broken lines compare."""
    return "".join(text.split())


@pytest.mark.parametrize("procedure_id", SHIPPED)
def test_a_hold_is_told_by_shape_and_by_words(procedure_id):
    of = shipped_plan(procedure_id)
    svg = picture(of, words("en"))
    holds = sum(isinstance(one.task, Hold) for one in of.steps)
    octagons = [
        one for one in ElementTree.fromstring(svg).iter(f"{SVG}polygon")
        if len(one.get("points", "").split()) == 8
    ]  # fmt: skip
    assert holds > 0 or library().procedures[procedure_id].stays_in_service
    assert texts(svg).count("SAFETY HOLD") == len(octagons) == holds


def test_cautions_stand_under_their_signal_word():
    svg = picture(with_caution(Signal.DANGER), words("es"))
    assert "PELIGRO" in texts(svg)
    assert "It turns." in texts(svg)


def with_caution(signal: Signal) -> Plan:
    caution = Caution(
        signal=signal, hazard=en("It turns."), consequence=en("It cuts."), avoid=en("Stay away.")
    )
    return plan(step("near", caution=caution))


@pytest.mark.parametrize("procedure_id", SHIPPED)
def test_no_row_is_cut_by_the_end_of_a_page(procedure_id):
    root = ElementTree.fromstring(picture(shipped_plan(procedure_id), words("en")))
    pages = root.findall(f"{SVG}g")
    assert root.get("viewBox") == f"0 0 190 {PAGE * len(pages):g}"
    assert len(pages) > 1 or len(shipped_plan(procedure_id).steps) < 10
    for page in pages:
        rows = [one for one in page.findall(f"{SVG}g") if one.get("transform")]
        assert rows
        for row in rows:
            top = float(row.get("transform", "").split()[1].rstrip(")"))
            height = next(float(one.get("y2", "")) for one in row.iter(f"{SVG}line"))
            assert top + height <= PAGE


def test_the_picture_of_a_plan_without_conditions_is_drawn():
    assert "Do hands." in texts(picture(plan(step("hands")), words("en")))


# The sheet.


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("procedure_id", SHIPPED)
def test_the_sheet_has_every_step_in_order_with_all_that_the_kiosk_would_say(
    procedure_id, language
):
    of, said = shipped_plan(procedure_id), words(language)
    rows = [
        (sort, text)
        for sort, text in Reader(shipped_sheet(procedure_id, language)).rows
        if re.match(r"\d", text)
    ]
    assert len(rows) == len(of.steps)
    for number, (one, (sort, text)) in enumerate(zip(of.steps, rows, strict=True), start=1):
        assert text.startswith(str(number))
        assert said.text(one.say) in text
        assert (sort == "hold") is isinstance(one.task, Hold)
        if one.corrective is not None:
            assert said.text(one.corrective) in text
        if one.caution is not None:
            assert said.say(f"signal-{one.caution.signal}").upper() in text
            for part in (one.caution.hazard, one.caution.consequence, one.caution.avoid):
                assert said.text(part) in text
        match one.task:
            case Hold(phrase=phrase, verify=verify):
                assert said.say("safety-hold") in text
                assert said.text(phrase) in text
                assert verify is None or said.text(verify) in text
            case Measure(judged_by=judge) if judge is not None:
                assert judge.source in text
            case Count(expected=expected):
                assert re.search(rf"\b{expected}(?!\d)", text)
            case Wait(seconds=seconds):
                assert time(seconds, said) in text
            case Repeat(until=until):
                assert said.text(until) in text


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("procedure_id", SHIPPED)
def test_the_sheet_says_what_it_is_and_what_it_is_not(procedure_id, language):
    of, said = shipped_plan(procedure_id), words(language)
    html = shipped_sheet(procedure_id, language)
    text = Reader(html).text
    assert f'<html lang="{language}">' in html
    for wanted in (
        said.text(of.title), of.machine_name, of.digest[:DIGEST_LENGTH], said.text(of.follow),
        said.say("sheet-no-lockout"), said.say("sheet-practice"), said.say("sheet-signature"),
    ):  # fmt: skip
        assert wanted in text
    assert (said.say("sheet-drafted") in text) is (language in of.drafted)
    for problem in of.problems.values():
        assert said.text(problem.corrective) in text


def test_a_real_shop_has_no_practice_notice():
    real = replace(EVERY_KIND, practice=False)
    assert words("en").say("sheet-practice") not in sheet(real, words("en"))
    assert words("en").say("sheet-practice") not in picture(real, words("en"))


def test_limits_and_their_units_are_written_out():
    text = Reader(sheet(EVERY_KIND, words("en"))).text
    assert "Must be 5 degrees Celsius or less." in text
    assert "Parts list: ring, 4." in text
    assert "Passes: at least 2, at most 3." in text
    assert "Time: 1 minute or more." in text


def test_a_second_person_has_a_line_to_sign_on():
    two = plan(hold("isolate", "isolated", strength=Strength.SECOND_PERSON))
    assert "Second person" in sheet(two, words("en"))
    assert "Second person" not in sheet(plan(hold("isolate", "isolated")), words("en"))


@pytest.mark.parametrize(
    ("seconds", "said"),
    [(60.0, "1 minute"), (90.0, "90 seconds"), (600.0, "10 minutes"), (150.0, "150 seconds")],
)
def test_a_time_on_paper_is_not_rounded(seconds, said):
    assert time(seconds, words("en")) == said


# Both.


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("procedure_id", SHIPPED)
def test_nothing_is_fetched_from_anywhere(procedure_id, language):
    svg = picture(shipped_plan(procedure_id), words(language))
    html = shipped_sheet(procedure_id, language)
    assert svg.count("http") == svg.count('xmlns="http://www.w3.org/2000/svg"') == 1
    assert "http" not in html
    assert re.findall(r"url\((?!#danger\))|@import|@font-face|\bsrc=|\bhref=", svg + html) == []
    assert not {"script", "link", "img", "iframe"} & set(Reader(html).tags)


HOSTILE = "</style><script>alert('1')</script> & \"quoted\" \x07 ]]>"


@pytest.mark.parametrize("field", ["say", "title", "machine_name", "condition", "phrase", "id"])
def test_hostile_text_stays_text(field):
    bad = en(HOSTILE)
    one = hold("isolate", "isolated", verify=True)
    of = plan(one, step("door", requires=("isolated",)))
    match field:
        case "say":
            of = replace(of, steps=(replace(one, say=bad),))
        case "phrase":
            of = replace(of, steps=(replace(one, task=Hold(bad, Strength.PHRASE, bad)),))
        case "condition":
            told = replace(of.conditions["isolated"], name=bad)
            of = replace(of, conditions={"isolated": told})
        case "id":
            of = replace(of, steps=(replace(one, id=HOSTILE),))
        case "title":
            of = replace(of, title=bad)
        case _:
            of = replace(of, machine_name=HOSTILE)
    svg, html = picture(of, words("en")), sheet(of, words("en"))
    tags = {node.tag.removeprefix(SVG) for node in ElementTree.fromstring(svg).iter()}
    assert "script" not in tags
    assert "script" not in Reader(html).tags
    assert "<script" not in svg + html
    assert "\x07" not in svg + html


def test_a_character_that_xml_cannot_hold_is_replaced():
    assert (
        ElementTree.fromstring(as_xml(element("a", "x\x00\x1b\ud800y"))).text
        == "x\ufffd\ufffd\ufffdy"
    )


def test_wrapped_lines_fit_and_lose_nothing():
    text = (
        "Pull the long brush through the hose twice, then " + "x" * 90 + " 청소 솔을 다시 세세요."
    )
    lines = wrap(text, 20.0)
    assert all(width(line) <= 20.0 for line in lines)
    assert squeezed("".join(lines)) == squeezed(text)
    assert wrap("", 20.0) == []


# The files.


def test_files_are_named_by_procedure_machine_and_language(tmp_path):
    written = draw(EVERY_KIND, ("ko", "en", "ko"), tmp_path / "new" / "folder")
    assert [path.name for path in written] == ["made-m1.svg", "made-m1-ko.html", "made-m1-en.html"]
    assert sorted(written) == sorted((tmp_path / "new" / "folder").iterdir())
    assert "SAFETY HOLD" in written[0].read_text(encoding="utf-8")
    assert "안전 확인" in written[1].read_text(encoding="utf-8")


@pytest.mark.parametrize("language", LANGUAGES)
def test_the_quick_sheet_has_the_very_words_that_can_be_said(language):
    say = words(language)
    read = Reader(quick_sheet(library().common.problems, say, drafted=language != "en"))
    for name in ("next", "repeat", "problem", "help"):
        assert " / ".join(say.ways(f"say-{name}")) in read.text
    for problem in library().common.problems.values():
        assert say.text(problem.name) in read.text
    assert (say.say("sheet-drafted") in read.text) == (language != "en")


def test_the_quick_sheets_are_written_and_an_unknown_language_is_refused(tmp_path):
    written = draw_quick(library().common.problems, ("en", "ko"), ("ko",), tmp_path)
    assert [one.name for one in written] == ["what-to-say-en.html", "what-to-say-ko.html"]
    with pytest.raises(CannotDraw, match="'xx'"):
        draw_quick(library().common.problems, ("xx",), (), tmp_path)


def test_the_picture_is_in_the_first_language_when_english_is_not_wanted(tmp_path):
    (svg, *_) = draw(EVERY_KIND, ("es", "ko"), tmp_path)
    assert "PARADA DE SEGURIDAD" in svg.read_text(encoding="utf-8")


@pytest.mark.parametrize("machine", ["../../up", "/etc/x", "a b", ".."])
def test_an_id_that_looks_like_a_path_stays_in_the_folder(tmp_path, machine):
    for path in draw(replace(EVERY_KIND, machine=machine), ("en",), tmp_path / "here"):
        assert path.parent == tmp_path / "here"
        assert path.is_file()


@pytest.mark.parametrize("languages", [(), ("en", "xx")])
def test_a_language_without_words_is_refused_and_nothing_is_written(tmp_path, languages):
    with pytest.raises(CannotDraw, match="en, es, ko"):
        draw(EVERY_KIND, languages, tmp_path / "here")
    assert not (tmp_path / "here").exists()
