"""Numbers in words, and numbers that the voice says as they are meant."""

from __future__ import annotations

from decimal import Decimal

import pytest
from num2words import num2words

from kiosk.checking.phonemes import phonemes
from kiosk.languages.number_words import MINUS, said_right, spelt, spelt_feminine
from kiosk.languages.words import languages, words
from kiosk.speaking.voices import SpeechFailed
from kiosk.trade.units import Quantity

TENTHS = [Decimal(one) / 10 for one in range(100)]


def sounds(language: str, *texts: str) -> list[tuple[str, ...]]:
    """How the voice says them, by espeak-ng's own phonemes."""
    try:
        found = phonemes({language: list(texts)})
    except SpeechFailed as failure:
        pytest.skip(str(failure))
    return [found[language, text] for text in texts]


def test_brazilian_numbers_are_those_of_another_library():
    for value in [*map(Decimal, range(1001)), *TENTHS]:
        plain = int(value) if value == value.to_integral_value() else value
        assert spelt(value, "pt") == num2words(plain, lang="pt_BR")


def test_vietnamese_whole_numbers_are_those_of_another_library():
    """num2words says `bốn` for four at the end of a greater number; `tư` is said as well."""
    for number in range(1000):
        theirs = num2words(number, lang="vi")
        assert spelt(Decimal(number), "vi").replace("mươi tư", "mươi bốn") == theirs


@pytest.mark.parametrize(
    ("value", "language", "said"),
    [
        # Decimals: the rules of the Unicode CLDR, common/rbnf/vi.xml and zh.xml, worked by hand.
        ("0.5", "vi", "không phẩy năm"), ("38.5", "vi", "ba mươi tám phẩy năm"),
        ("0.05", "zh", "零点零五"), ("38.5", "zh", "三十八点五"), ("10", "zh", "十"),
        ("105", "zh", "一百零五"), ("110", "zh", "一百一十"), ("1050", "zh", "一千零五十"),
        ("-0.5", "en", "minus zero point five"), ("18.0", "ko", "십팔"),
    ],
)  # fmt: skip
def test_a_number_is_spelt(value, language, said):
    assert spelt(Decimal(value), language) == said


def test_parts_are_feminine():
    assert spelt_feminine(Decimal(200), "es") == "doscientas"
    assert spelt_feminine(Decimal(21), "pt") == "vinte e uma"
    assert spelt_feminine(Decimal("2.5"), "pt") == "dois vírgula cinco"


@pytest.mark.parametrize("language", languages())
def test_a_reading_below_zero_is_not_said_as_one_above(language):
    cold, warm = (words(language).quantity(Quantity(Decimal(one), "°C")) for one in ("-2", "2"))
    said = said_right(words(language).say("heard-number", number=cold), language)
    assert MINUS[language].strip() in said
    minus, other = sounds(language, said, words(language).say("heard-number", number=warm))
    assert len(minus) > len(other)


@pytest.mark.parametrize(
    ("written", "said"),
    [
        ("必须是4.5摄氏度或更低", "必须是四点五摄氏度或更低"),
        ("105毫克每升", "一百零五毫克每升"),
        ("1,200毫升", "一千二百毫升"),
        ("我听到-2摄氏度。", "我听到负二摄氏度。"),
        ("2026年11月25日", "二零二六年十一月二十五日"),
        ("08:05到21:30，12:00", "八点零五分到二十一点三十分，十二点"),
        ("代码 0412", "代码 零四一二"),
        ("文本 a1b2c3，2026-11-25，版本1.2.3", "文本 a1b2c3，2026-11-25，版本1.2.3"),
    ],
)  # fmt: skip
def test_chinese_numbers_go_to_the_voice_in_words(written, said):
    assert said_right(written, "zh") == said


def test_without_that_the_voice_says_another_number():
    """What the words are for: 105 is said as people say 150, and a point is lost."""
    digits, short = sounds("zh", "105", "一百五")
    assert digits == short
    joined, apart = sounds("zh", "是4.5度", "是 4.5度")
    assert len(joined) < len(apart)


def test_thousands_in_spanish_are_no_decimals_to_the_voice():
    told = words("es").say("dose-put", count="1", water="2", strength="12,500")
    assert sounds("es", said_right(told, "es")) == sounds("es", told.replace(",500", "500"))
    assert sounds("es", told) != sounds("es", said_right(told, "es"))


@pytest.mark.parametrize("language", languages())
def test_a_date_and_a_range_keep_their_dashes(language):
    assert said_right("2026-11-25, 3-4, A-7", language) == "2026-11-25, 3-4, A-7"
