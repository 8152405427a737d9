"""A safety hold by touch and by key: kept pressed, or given twice on purpose."""

from __future__ import annotations

import json

import pytest

from kiosk.engine import commands as c
from kiosk.engine.state import Stage
from kiosk.review.record import Said
from kiosk.review.recording import record_of
from kiosk.screens.kept_press import ARMED_S, BOUNCE_S, KEPT_S, KeptPress, Press
from tests.screens.scene import NO, YES, kiosk

PHRASE = "my hands are clean"


def test_a_press_kept_long_enough_counts():
    press = KeptPress()
    press.down(0.0)
    assert press.share(KEPT_S / 2) == pytest.approx(0.5)
    assert press.up(KEPT_S) is Press.GIVEN


@pytest.mark.parametrize("kept", [0.0, 0.1, KEPT_S - 0.01])
def test_a_press_let_go_too_soon_only_arms(kept):
    press = KeptPress()
    press.down(10.0)
    assert press.up(10.0 + kept) is Press.NOT_YET
    assert press.armed(10.0 + kept)


@pytest.mark.parametrize(
    ("later", "counts"),
    [(BOUNCE_S - 0.01, False), (BOUNCE_S, True), (ARMED_S, True), (ARMED_S + 0.01, False)],
)
def test_a_second_press_counts_neither_too_soon_nor_too_late(later, counts):
    press = KeptPress()
    assert press.tap(10.0) is Press.NOT_YET
    assert (press.tap(10.0 + later) is Press.GIVEN) == counts


def test_a_key_that_repeats_by_itself_never_counts():
    press = KeptPress()
    assert all(press.tap(10.0 + n / 30) is Press.NOT_YET for n in range(300))


async def test_kept_pressed_it_is_given_and_then_read_back(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.keep(PHRASE, KEPT_S + 0.001)
        assert it.state.stage is Stage.READ_BACK
        assert "I heard" not in it.labels()
        assert it.first(2) == [YES, NO]
        assert not it.state.in_force


async def test_let_go_too_soon_it_says_so_and_nothing_is_written(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        before = it.facts()
        await it.keep(PHRASE, KEPT_S - 0.1)
        assert it.facts() == before
        assert "too short: keep it pressed, or press it once more" in it.words()


async def test_the_bar_fills_and_then_asks_to_let_go(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        target = it.target(PHRASE)
        await it.down(target)
        it.clock.seconds += KEPT_S / 2
        row = target.render_line(1)
        filled = next(iter(row)).style.bgcolor
        assert len(next(iter(row)).text) == pytest.approx(target.size.width / 2, abs=1)
        assert filled == target.get_component_rich_style("target--filled").bgcolor
        it.clock.seconds += KEPT_S
        text = "".join(
            segment.text for y in range(target.size.height) for segment in target.render_line(y)
        )
        assert "now let go" in text
        await it.up(target)
        assert it.state.stage is Stage.READ_BACK


async def test_a_finger_that_slides_off_gives_nothing(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        before = it.facts()
        await it.down(it.target(PHRASE))
        it.clock.seconds += 2
        await it.up(it.target(c.CallProblem()))
        assert it.facts() == before
        assert "too short" not in it.words()


async def test_two_presses_where_only_clicks_arrive(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.touch(PHRASE)
        assert it.state.stage is Stage.ASK
        await it.touch(PHRASE)
        assert it.state.stage is Stage.READ_BACK


async def test_two_presses_of_a_key(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.press("enter")
        assert it.state.stage is Stage.ASK
        it.clock.seconds += ARMED_S
        await it.press("enter")
        assert it.state.stage is Stage.ASK
        await it.press("enter")
        assert it.state.stage is Stage.READ_BACK


async def test_no_sends_the_hold_back_to_its_phrase(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.keep(PHRASE)
        await it.touch(NO)
        assert it.state.stage is Stage.ASK
        assert it.labels()[0] == PHRASE


async def test_a_hold_that_is_pressed_after_words_that_were_not_taken_says_so_in_the_journal(
    tmp_path,
):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.hear("what is for dinner", why="not allowed now")
        await it.keep("my hands are clean")
        await it.touch(NO)
        await it.hear("my hand is clean", why="not allowed now")
        await it.keep("my hands are clean")
        given = [
            json.loads(row["body"])["by"]
            for row in it.app.shop.journal.rows()
            if row["kind"] == "PhraseGiven"
        ]
        assert given == [{"channel": "touch"}, {"channel": "touch", "heard": "my hand is clean"}]
        events = it.app.shop.journal.events(it.walk.session.id)
        record = record_of(it.walk.session.id, events, it.walk.session.plan)
        told = [part for part in record.steps[-1].parts if part.said is Said.PHRASE]
        assert [part.heard for part in told] == ["", "my hand is clean"]
