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


def test_pieces_put_together_are_the_word():
    for word in ("닫았어요", "않아요", "기계가문을"):
        assert squeezed(" ".join(pieces(word, KNOWN.__contains__))) == word
