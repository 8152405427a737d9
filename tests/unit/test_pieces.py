"""Words are split into the pieces that a model knows."""

from __future__ import annotations

import pytest

from kiosk.listening.pieces import pieces, squeezed

KNOWN = {"닫았", "어요", "문", "을", "문을", "기계", "가", "움직이", "지", "않", "않아", "요", "아"}


@pytest.mark.parametrize(
    ("word", "split"),
    [
        ("문을", ("문을",)),
        ("닫았어요", ("닫았", "어요")),
        ("움직이지", ("움직이", "지")),
        ("않아요", ("않아", "요")),
        ("기계가문을", ("기계", "가", "문을")),
        ("없다", ()),
        ("기계가움직이지", ()),
        ("", ()),
    ],
)
def test_a_word_is_split_into_at_most_three_known_pieces(word, split):
    assert pieces(word, KNOWN.__contains__) == split


@pytest.mark.parametrize(
    ("phrase", "split"),
    [
        ("机器没有动", ("机器", "没有", "动")),
        ("电源已经断开", ("电源", "已", "经", "断", "开")),
        ("电源没断", ()),
    ],
)
def test_a_chinese_phrase_is_split_into_as_many_pieces_as_it_needs(phrase, split):
    known = {"机器", "没有", "动", "电源", "电", "源", "已", "经", "断", "开"}
    assert pieces(phrase, known.__contains__) == split


def test_pieces_put_together_are_the_word():
    for word in ("닫았어요", "않아요", "기계가문을"):
        assert squeezed(" ".join(pieces(word, KNOWN.__contains__))) == word
