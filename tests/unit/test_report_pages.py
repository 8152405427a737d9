"""Pages and prints: the same blocks, safe against any text, in each language."""

from __future__ import annotations

import re
import shutil
import subprocess
from dataclasses import replace
from datetime import UTC, datetime

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.plots.figure import Axis, Chart, Point, Points, Source, Tick
from kiosk.report.as_html import as_html
from kiosk.report.as_pdf import as_pdf
from kiosk.report.fonts import font_files, parts_for
from kiosk.report.grid import Wrap
from kiosk.report.paper import (
    Blanks,
    Cell,
    Heading,
    Notice,
    Paper,
    Picture,
    Row,
    Sheet,
    Table,
    shown,
    writable,
)
from tests.unit.report_shop import Page

NASTY = "<script>alert('안녕')</script> & \"x\" \x07\x1b[31m \ud800 ]]> {{ 7 * 7 }} ✗"
NOW = datetime(2026, 11, 26, 12, 0, tzinfo=UTC)

needs_poppler = pytest.mark.skipif(
    shutil.which("pdftotext") is None, reason="pdftotext (poppler-utils) is not installed"
)


def figure() -> Chart:
    axis = Axis("°C", 0, 10, (Tick(0, "0"), Tick(10, "10")))
    points = Points(NASTY, (Point(1, 5, Source(7, "s", NASTY)),))
    return Chart(title=f"그림 {NASTY}", told=NASTY, x=axis, y=axis, layers=(points,))


def paper(rows: int = 3, text: str = NASTY) -> Paper:
    table = Table(
        id="t", caption=text, columns=("시각", text), widths=(20, 80),
        rows=tuple(
            Row((Cell(f"row{n:04}"), Cell(f"{text} end{n:04}")), (n + 1,), off=n % 2 == 0)
            for n in range(rows)
        ),
        empty=text,
    )  # fmt: skip
    empty = Table(id="u", caption="빈 표", columns=("a",), widths=(1,), rows=(), empty="없음")
    return Paper(
        name="x", language="ko", title=f"보고서 {text}", under=text, running=text,
        page_of="{page} / {pages}", rows_column="행",
        blocks=(
            Notice(text, strong=True), Sheet(((text, Cell(text, (1, 2, 3), "k")),)),
            Heading(text), Picture(figure()), table, empty, Blanks((text, "서명")),
        ),
    )  # fmt: skip


def print_of(one: Paper, folder) -> list[str]:
    """Return the text of each page of the print."""
    file = folder / "x.pdf"
    file.write_bytes(as_pdf(one, NOW, font_files(one.language)))
    text = subprocess.run(
        ["pdftotext", "-layout", file, "-"], capture_output=True, check=True, text=True
    ).stdout
    return text.split("\f")[:-1]


# The page.


def test_no_text_becomes_markup():
    page = as_html(paper())
    read = Page(page)
    assert "script" not in read.tags
    assert "alert('안녕')" in "".join(read.said)
    assert "{{ 7 * 7 }}" in "".join(read.said)
    assert "\x07" not in page
    assert "\x1b" not in page
    page.encode("utf-8")


def test_the_page_needs_nothing_outside_itself():
    page = as_html(paper())
    assert not re.findall(r"""(?:src|href|action|data)\s*=\s*["']?(?!data:)[a-z]+:""", page)
    assert not re.findall(r"@import|url\((?!data:)", page)
    assert not {"script", "link", "iframe", "object", "img"} & Page(page).tags


def test_a_table_without_rows_says_so():
    assert "빈 표: 없음" in "".join(Page(as_html(paper())).said)


def test_the_font_comes_along_only_for_characters_that_need_it():
    assert parts_for("Rosa Beltrán, ¿qué?", "es") == ()
    ((small,), (large,)) = (parts_for(one, "ko") for one in ("안", "안내기를 시작합니다"))
    assert small[:4] == b"OTTO"
    assert len(small) < len(large) < 100_000
    assert "@font-face" in as_html(paper())


def test_rows_are_named_in_few_characters():
    assert shown(()) == ""
    assert shown((4,)) == "4"
    assert shown((1, 2, 3, 7, 9, 10)) == "1–3, 7, 9–10"
    assert shown(tuple(range(1, 40, 2))) == "1 … 39 (20)"


def test_what_cannot_be_shown_is_written_out():
    assert writable("a\x07b\ud800c\nd") == "a\\u0007b\\ud800c\nd"


# The print.


@needs_poppler
def test_the_print_has_every_text_and_the_names_are_no_boxes(tmp_path):
    name = "안미나 Rosa Beltrán"
    (text,) = print_of(paper(text=name), tmp_path)
    assert text.count(name) >= 5
    assert re.search("1 ?/ ?1", text)
    fonts = subprocess.run(
        ["pdffonts", tmp_path / "x.pdf"], capture_output=True, check=True, text=True
    ).stdout.splitlines()[2:]
    assert fonts
    for line in fonts:
        assert "NotoSansKR" in line
        assert re.search(r"\byes yes yes\b", line), "embedded, a subset, with its characters"


@needs_poppler
@pytest.mark.parametrize(
    ("language", "name"),
    [("ko", "电源已经断开"), ("vi", "Nguyễn Thị Ánh"), ("zh", "安静 안미나 Ánh")],
)
def test_every_language_is_printed_in_the_report_of_every_other(tmp_path, caplog, language, name):
    (text,) = print_of(replace(paper(text=name), language=language), tmp_path)
    assert text.count(name) >= 5
    assert not any(f"\\u{ord(sign):04x}" in text for sign in name)
    assert "서명" in text
    assert not caplog.records, "no box where a character should be"


def test_the_font_of_the_language_comes_first():
    """The Korean and the Chinese font draw a character such as 直 in their own ways."""
    assert [one.stem for one in font_files("zh")] == ["NotoSansSC-Regular", "NotoSansKR-Regular"]
    assert [one.stem for one in font_files("vi")] == ["NotoSansKR-Regular", "NotoSansSC-Regular"]
    (first, second) = parts_for("安 안", "zh")
    assert first[:4] == second[:4] == b"OTTO"
    assert as_html(replace(paper(text="安"), language="zh")).count("@font-face") == 2


@needs_poppler
def test_no_row_is_broken_over_two_pages_and_the_head_stands_on_each(tmp_path):
    text = "제자리에 있어요. The whole of it. " * 8
    pages = print_of(paper(rows=60, text=text), tmp_path)
    assert len(pages) > 3
    found = 0
    for page in pages:
        begun, ended = (re.findall(rf"\b{word}(\d{{4}})", page) for word in ("row", "end"))
        assert begun == ended
        found += len(begun)
        assert not begun or "시각" in page
    assert found == 60


@needs_poppler
def test_what_the_font_lacks_is_written_out(tmp_path, caplog):
    (text,) = print_of(paper(), tmp_path)
    assert "\\u2717" in text
    assert "안녕" in text
    assert not caplog.records


@needs_poppler
def test_a_row_higher_than_a_page_goes_on_on_the_next(tmp_path):
    signs = [f"word{n:04}" for n in range(1500)]
    pairs = ((name, Cell(" ".join(signs))) for name in ("시각", "무엇"))
    table = Table(
        id="t", caption="표", columns=("시각",), widths=(60,), empty="",
        rows=(Row((Cell(" ".join(signs)),)),),
    )  # fmt: skip
    pages = print_of(replace(paper(), blocks=(Sheet(tuple(pairs)), table)), tmp_path)
    text = "".join(pages)
    assert len(pages) > 3
    assert [text.count(sign) for sign in signs] == [3] * len(signs)


@given(st.text(alphabet="ab-가 \n", max_size=200), st.floats(min_value=5, max_value=60))
def test_lines_lose_nothing_and_keep_to_their_column(text, width):
    lines = Wrap(lambda piece: float(len(piece))).lines(text, width)
    assert "".join(lines).replace(" ", "") == text.replace(" ", "").replace("\n", "")
    assert all(len(line) <= max(1, width) for line in lines)


@needs_poppler
def test_the_words_of_a_figure_are_black_after_a_shaded_table(tmp_path):
    whole = paper(text="안내")
    table = next(one for one in whole.blocks if isinstance(one, Table))
    print_of(replace(whole, blocks=(table, Picture(figure()))), tmp_path)
    boxes = subprocess.run(
        ["pdftotext", "-bbox", tmp_path / "x.pdf", "-"], capture_output=True, check=True, text=True
    ).stdout
    found = re.search(r'xMin="(\S+)" yMin="(\S+)" xMax="(\S+)" yMax="(\S+)">그림', boxes)
    assert found is not None
    left, top, right, bottom = (float(one) for one in found.groups())
    # At 72 dots an inch a dot is a point.
    crop = {"-x": left, "-y": top, "-W": right - left, "-H": bottom - top}
    cut = [str(word) for name, value in crop.items() for word in (name, round(value))]
    grey = subprocess.run(
        ["pdftoppm", "-r", "72", "-gray", *cut, tmp_path / "x.pdf"], capture_output=True, check=True
    ).stdout
    assert min(grey.split(b"\n", 3)[3]) < 128
