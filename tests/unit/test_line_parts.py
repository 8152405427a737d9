"""Chinese lines: broken between characters, and never before a mark that ends something."""

from __future__ import annotations

import re
from functools import cache

import pytest
from rich.cells import cell_len

from kiosk.drawing.wrap import width, wrap
from kiosk.languages.line_parts import line_parts
from kiosk.languages.words import message_text
from kiosk.screens.lettering import balanced, sentences, wrapped

NEVER_FIRST = set("。，、；：？！”’）》〉…·～")
NEVER_LAST = set("“‘（《〈")
"""By GB/T 15834-2011, 5.1.1 to 5.1.8 (from memory): full stop, comma, list comma, semicolon, colon,
question and exclamation marks and the second halves of pairs never begin a line; the first halves
never end one."""


@cache
def texts() -> list[str]:
    """Every line of the Chinese messages, with what is filled in as a number."""
    lines = re.findall(r"(?:=|\]) (.+)", message_text("zh"))
    return [re.sub(r"\{[^}]*\}?", "38.5", line) for line in lines]


@pytest.mark.parametrize("cells", [18, 25, 38, 56, 76])
def test_no_line_begins_or_ends_with_the_wrong_mark(cells):
    assert len(texts()) > 1000
    for text in texts():
        for line in wrapped(text, cells):
            assert cell_len(line) <= cells
            assert line[:1] not in NEVER_FIRST, wrapped(text, cells)
            assert line[-1:] not in NEVER_LAST, wrapped(text, cells)


def test_nothing_is_lost_or_doubled():
    for text in texts():
        for lines in (wrapped(text, 20), balanced(text, 20), wrap(text, 10)):
            assert "".join("".join(lines).split()) == "".join(text.split())
        assert "".join(sentences(text)).replace(" ", "") == text.replace(" ", "")


def test_a_line_of_a_sheet_is_within_its_width():
    for text in texts():
        for line in wrap(text, 12):
            assert width(line) <= 12
            assert line[:1] not in NEVER_FIRST


@pytest.mark.parametrize(
    ("word", "parts"),
    [
        ("用scipy库", ["用", "scipy", "库"]),
        ("写在site.toml里", ["写", "在", "site.toml", "里"]),
        ("装4.5升，", ["装", "4.5升，"]),
        ("答“对的”。", ["答", "“对", "的”。"]),
        ("（虚构）", ["（虚", "构）"]),
        ("기계가 움직이지", ["기계가 움직이지"]),
        ("site.toml", ["site.toml"]),
        ("", [""]),
    ],
)
def test_a_word_is_parted_between_chinese_characters_only(word, parts):
    assert line_parts(word) == parts


def test_chinese_sentences_are_parted_without_blanks():
    assert sentences("对吗？请答“对的”。他说：“好。”然后走了。") == [
        "对吗？", "请答“对的”。", "他说：“好。”", "然后走了。",
    ]  # fmt: skip


def test_even_lines_are_as_few_as_uneven_ones():
    text = "我听到：电源已经断开。对吗？请答“对的”或“不是”。"
    even = balanced(text, 40)
    assert len(even) == len(wrapped(text, 40)) == 2
    assert abs(cell_len(even[0]) - cell_len(even[1])) <= 4
