"""Numbers of a closed list have the words by which they are said."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.languages.words import languages
from kiosk.listening.numbers import NoNumbers, spoken

VALUES = st.lists(st.decimals(min_value=-40, max_value=500, places=1), max_size=20)


@pytest.mark.parametrize(
    ("value", "language", "unit", "first"),
    [
        ("4.5", "en", "", "four point five"),
        ("4.5", "en", "°C", "four point five degrees"),
        ("-2", "en", "", "minus two"),
        ("-0.5", "en", "", "minus zero point five"),
        ("18.0", "en", "", "eighteen"),
        ("150", "en", "mg/L", "one hundred and fifty parts per million"),
        ("21", "en", "", "twenty one"),
        ("1", "en", "L", "one liter"),
        ("1.0", "en", "°C", "one degree"),
        ("-1", "en", "°C", "minus one degrees"),
        ("1", "es", "mg/L", "una parte por millón"),
        ("4.5", "es", "", "cuatro punto cinco"),
        ("-0.5", "es", "°C", "menos cero punto cinco grados"),
        ("150", "es", "", "ciento cincuenta"),
        ("4.5", "ko", "°C", "사 점 오 도"),
        ("-2", "ko", "°C", "마이너스 이 도"),
        ("150", "ko", "mg/L", "백오십 피피엠"),
        ("3", "ko", "#", "세 개"),
        ("12", "ko", "#", "열두 개"),
        ("20", "ko", "#", "스무 개"),
        ("21", "ko", "#", "스물한 개"),
        ("30", "ko", "#", "삼십 개"),
        ("200", "es", "mg/L", "doscientas partes por millón"),
        ("16", "pt", "", "dezesseis"),
        ("4.5", "pt", "°C", "quatro vírgula cinco graus"),
        ("1", "pt", "L", "um litro"),
        ("250", "pt", "mg/L", "duzentas e cinquenta partes por milhão"),
        ("-0.5", "pt", "", "menos zero vírgula cinco"),
        ("4.5", "vi", "°C", "bốn phẩy năm độ"),
        ("2.05", "vi", "", "hai phẩy không năm"),
        ("-2", "vi", "°C", "âm hai độ"),
        ("15", "vi", "L", "mười lăm lít"),
        ("4.5", "zh", "°C", "四点五度"),
        ("-2", "zh", "°C", "零下两度"),
        ("-0.5", "zh", "", "负零点五"),
        ("2", "zh", "#", "两个"),
        ("2.5", "zh", "L", "二点五升"),
        ("105", "zh", "mg/L", "一百零五毫克每升"),
    ],
)
def test_the_first_form_is_the_one_people_say(value, language, unit, first):
    assert next(iter(spoken([Decimal(value)], language, unit))) == first


def test_a_number_may_be_said_with_its_unit_or_without():
    assert spoken([Decimal(4)], "en", "°C") == {"four degrees": Decimal(4), "four": Decimal(4)}


def test_chinese_says_two_hundred_in_either_way():
    assert list(spoken([Decimal(250)], "zh", "L")) == ["二百五十升", "两百五十升"]


@pytest.mark.parametrize("language", ["vi", "zh"])
@pytest.mark.parametrize("unit", ["L", "°C", "mg/L", "#"])
def test_a_number_of_one_syllable_is_not_heard_without_its_unit(language, unit):
    bare = next(iter(spoken([Decimal(4)], language)))
    assert bare not in spoken([Decimal(4)], language, unit)


def test_a_korean_number_with_a_unit_is_not_heard_as_a_bare_syllable():
    assert "사" not in spoken([Decimal(4)], "ko", "°C")


@pytest.mark.parametrize("language", languages())
@pytest.mark.parametrize("unit", ["", "°C", "mg/L", "#"])
@given(values=VALUES)
def test_no_phrase_stands_for_two_values_and_no_value_is_left_out(language, unit, values):
    found = spoken(values, language, unit)
    for value in values:
        assert value in found.values()
        alone = spoken([value], language, unit)
        assert all(found[phrase] == value for phrase in alone)


def test_a_language_without_number_words_is_a_plain_error():
    with pytest.raises(NoNumbers, match="'xx'"):
        spoken([Decimal(1)], "xx")
