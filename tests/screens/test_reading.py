"""Numbers by the keypad, by typed digits and by the quick targets."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.engine.state import Stage
from kiosk.languages.words import words
from kiosk.screens.faces import Less
from kiosk.screens.reading import Typing, decimal_mark, shown
from tests.screens.scene import NEXT, YES, Kiosk, kiosk

READING = Typing(fraction=True, below_zero=True)
COUNT = Typing(fraction=False, below_zero=False)


def typed(start: Typing, keys: str) -> Typing:
    for key in keys:
        start = start.press("backspace" if key == "<" else key)
    return start


@pytest.mark.parametrize(
    ("keys", "value"),
    [
        ("35", "35"), ("3.5", "3.5"), ("3,5", "3.5"), ("3,5.2", "3.52"), ("3.", "3"), (".5", "0.5"),
        ("2-", "-2"), ("-2-", "2"), ("12<<7", "7"), ("007", "7"), ("12345678", "1234567"),
    ],
)  # fmt: skip
def test_what_the_keys_make(keys, value):
    assert typed(READING, keys).value() == Decimal(value)


@pytest.mark.parametrize("keys", ["", "-", ".", "-.", "5<", "<"])
def test_no_number_yet(keys):
    assert typed(READING, keys).value() is None


def test_a_count_takes_neither_point_nor_minus():
    assert typed(COUNT, "-1.2").value() == Decimal(12)


def test_the_decimal_mark_is_the_one_of_the_language():
    assert decimal_mark(words("en")) == "."
    assert decimal_mark(words("es")) == "."
    assert decimal_mark(words("pt")) == ","
    assert shown(typed(READING, "3.5"), words("pt")) == "3,5"


async def to_temperature(it: Kiosk) -> None:
    await it.begin()
    await it.keep("my hands are clean")
    await it.touch(YES, NEXT)
    await it.keep("the power is off")
    await it.touch(YES, YES)
    assert it.state.step == "temperature"


async def test_typed_with_a_comma(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        await it.press("4", "comma", "5", "enter")
        assert it.state.step == "strip"
        assert '"answer":"4.5"' in list(it.app.shop.journal.rows())[-2]["body"]


async def test_below_zero_and_rubbed_out_by_touch(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        await it.touch("type the number", "1", "9", "rub out", "−", "enter")
        assert '"answer":"-1"' in list(it.app.shop.journal.rows())[-2]["body"]


async def test_an_absurd_number_is_refused_with_a_sentence_and_stays_to_be_mended(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        before = it.facts()
        await it.press(*"400", "enter")
        assert it.facts() == before
        assert "It must lie between -10 and 40" in it.words()
        assert "Notice" in it.words()
        await it.press("backspace", "backspace", "enter")
        assert it.state.step == "strip"


async def test_enter_without_a_number_says_what_to_do(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        before = it.facts()
        await it.touch("type the number", "enter")
        assert it.facts() == before
        assert "Type the number first" in it.words()


async def test_never_mind_closes_the_keypad(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        await it.touch("type the number", Less())
        assert "type the number" in it.labels()
        assert "rub out" not in it.labels()


async def test_a_number_out_of_its_limit_asks_for_the_corrective_action(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        await it.press("9", "enter")
        assert it.state.stage is Stage.OFF
        assert "Cool it down." in it.words()
        await it.press("enter")
        assert it.state.stage is Stage.ASK


async def test_enter_does_not_give_the_first_number_of_the_list(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        await it.press("3", "enter")
        assert {"50", "100", "200", "type the number"} <= set(it.labels())
        before = it.facts()
        await it.press("enter")
        assert it.facts() == before
        assert "rub out" in it.labels()


async def test_digits_may_be_touched_as_fast_as_one_likes(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_temperature(it)
        await it.touch("type the number")
        it.clock.seconds += 1
        for digit in "33":
            await it.down(it.target(digit))
            await it.up(it.target(digit))
        assert it.app.screen.query_one("#digits").value == "33"
