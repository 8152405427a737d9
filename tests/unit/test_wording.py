"""English text comes out in one normal form, whatever way it was written."""

from __future__ import annotations

from decimal import Decimal

import pytest
from hypothesis import given
from hypothesis import strategies as st

from kiosk.listening.numbers import spoken
from kiosk.listening.wording import normal, said_once


@pytest.mark.parametrize(
    ("written", "read"),
    [
        ("Step complete.", "step complete"),
        (" Yes! ", "yes"),
        ("38.5", "thirty eight point five"),
        ("Thirty-eight point five.", "thirty eight point five"),
        ("-2", "minus two"),
        ("−2 degrees", "minus two degrees"),
        ("1,000", "one thousand"),
        ("150", "one hundred fifty"),
        ("one hundred and fifty", "one hundred fifty"),
        ("door and guards", "door and guards"),
        ("one hundred and go", "one hundred and go"),
        ("4.05", "four point zero five"),
        ("41°", "forty one degrees"),
        ("50%", "fifty percent"),
        ("door & guards", "door and guards"),
        ("2 + 2", "two plus two"),
        ("OK", "okay"),
        ("Don't.", "do not"),
        ("It doesn’t start.", "it does not start"),
        ("We're finished.", "we are finished"),
        ("Something's wrong", "something is wrong"),
        ("I've replaced it, I'm done", "i have replaced it i am done"),
        ("It won't start; I can't see it'll go", "it will not start i cannot see it will go"),
        ("200 ppm", "two hundred p p m"),
        ("...", ""),
        ("", ""),
    ],
)
def test_what_is_written_in_many_ways_is_read_in_one(written, read):
    assert normal(written) == read


def test_a_date_or_a_version_is_not_taken_for_a_number():
    assert normal("1.2.3") != normal("1.2")


@given(st.decimals(min_value=-99, max_value=2000, places=1))
def test_digits_and_words_of_a_number_come_out_the_same(value: Decimal):
    digits = format(value.normalize(), "f") if value else "0"
    assert normal(digits) == normal(next(iter(spoken([value], "en"))))


@given(st.text())
def test_normal_form_is_its_own_normal_form(text: str):
    assert normal(normal(text)) == normal(text)


@pytest.mark.parametrize(
    ("written", "once"),
    [
        ("next next next", "next"),
        ("step back step back step", "step back"),
        ("the machine does not start", "the machine does not start"),
        ("no we have no", "no we have no"),
        ("next step next", "next step next"),
        ("five five", "five five"),
        ("", ""),
    ],
)
def test_what_is_written_over_and_over_was_said_once(written, once):
    assert said_once(written) == once
