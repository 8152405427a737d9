"""Whole walks: by touch alone, by keys alone, by voice and both mixed."""

from __future__ import annotations

from decimal import Decimal

from kiosk.engine import commands as c
from kiosk.engine.commands import Channel
from kiosk.engine.state import Mode, Stage
from kiosk.listening.numbers import spoken
from kiosk.review.remaining import Left
from kiosk.screens.account import confirmations
from kiosk.screens.board import BoardScreen
from kiosk.screens.summary import SummaryScreen
from kiosk.walk import NeverMind
from tests.screens.scene import NEXT, NO, YES, Kiosk, kiosk


def channels(of: Kiosk, session: str) -> dict[Channel, int]:
    return dict(confirmations(of.app.shop.journal.events(session)))


async def test_a_walk_by_touch_alone(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        session = it.walk.session.id
        await it.keep("my hands are clean")
        await it.touch(YES, NEXT)
        await it.keep("the power is off")
        assert it.state.stage is Stage.READ_BACK
        await it.touch(YES)
        assert it.state.stage is Stage.VERIFY
        await it.touch(YES, "type the number", "3", ".", "5", "enter", "100")
        assert it.state.step == "soak"
        assert not it.offers(NEXT)
        await it.pass_time(120)
        await it.touch(NEXT, NEXT, YES, "4", c.Inspected(c.Finding.GOOD))
        assert isinstance(it.app.screen, SummaryScreen)
        assert "The procedure is complete" in it.words()
        assert "9 confirmations by touch" in it.words()
        assert "3.5 degrees Celsius" in it.words()
        await it.touch("all machines")
        assert isinstance(it.app.screen, BoardScreen)
        assert "apart and drying" in it.words()
        assert channels(it, session) == {Channel.TOUCH: 9}


async def test_a_walk_by_keys_alone(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.press("1", "1")
        session = it.walk.session.id
        await it.press("enter", "enter", "y", "enter")
        await it.press("enter", "space", "y", "y")
        await it.press(*"3.5", "enter", *"100", "enter")
        await it.pass_time(120)
        await it.press("enter", "enter", "y", "4", "enter", "1")
        assert isinstance(it.app.screen, SummaryScreen)
        await it.press("enter")
        assert isinstance(it.app.screen, BoardScreen)
        assert channels(it, session) == {Channel.KEY: 9}


async def test_voice_touch_and_keys_mixed_at_any_moment(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        session = it.walk.session.id
        await it.hear("my hands are clean")
        await it.touch(YES)
        await it.say(NEXT)
        await it.press("enter", "enter")
        await it.say(YES)
        await it.touch(YES)
        await it.press("3")
        await it.touch("enter")
        assert channels(it, session) == {Channel.TOUCH: 3, Channel.VOICE: 1}
        assert it.state.step == "strip"


async def test_a_number_heard_while_the_keypad_is_open_closes_it(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await to_strip(it)
        await it.press("7")
        assert "rub out" in it.labels()
        await it.hear(next(iter(spoken([Decimal(100)], "en"))))
        assert it.state.stage is Stage.READ_BACK
        assert it.first(2) == [YES, NO]


async def to_power(it: Kiosk) -> None:
    await it.keep("my hands are clean")
    await it.touch(YES, NEXT)


async def to_strip(it: Kiosk) -> None:
    await to_power(it)
    await it.keep("the power is off")
    await it.touch(YES, YES)
    await it.press("3", "enter")


async def test_back_and_repeat(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await to_power(it)
        await it.press("r")
        assert "PromptRepeated" in it.facts()
        await it.touch(c.Back())
        assert it.state.step == "lid"
        assert "WARNING" in it.words()
        assert it.app.screen.query_one("#caution").has_class("-warning")
        assert "Keep your hands out." in it.words()


async def test_a_wait_that_ends_does_not_take_a_question_of_the_walks_own_away(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await to_strip(it)
        await it.touch("100")
        await it.press("l")
        await it.pass_time(120)
        assert it.offers(NeverMind())
        await it.press("escape")
        assert it.first() == [NEXT]


async def test_a_press_that_bounces_does_not_answer_the_next_question(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.keep("my hands are clean")
        await it.touch(YES)
        assert it.state.step == "lid"
        for _ in range(2):
            it.clock.seconds += 0.2
            await it.quick_press("enter")
        assert it.state.step == "lid"
        await it.press("enter")
        assert it.state.step == "power"


async def test_a_question_that_changes_under_the_finger_is_not_answered_by_it(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await to_strip(it)
        await it.touch("100")
        await it.pass_time(120)
        target = it.target(NEXT)
        await it.down(target)
        await it.say(NEXT)
        assert it.state.step == "flush"
        assert it.target(NEXT) is target
        it.clock.seconds += 2
        await it.up(target)
        assert it.state.stage is Stage.ASK
        await it.touch(NEXT)
        assert it.state.stage is Stage.IS_CLEAR


async def test_a_finger_under_way_when_the_question_changes_by_itself_does_not_answer(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await to_strip(it)
        await it.touch("100")
        await it.pass_time(120)
        await it.say(NEXT)
        it.clock.seconds += 0.2
        await it.down(it.target(NEXT))
        await it.up(it.target(NEXT))
        assert it.state.stage is Stage.ASK


async def test_a_row_of_enters_answers_no_yes_or_no(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.press("enter", "enter")
        assert it.state.stage is Stage.READ_BACK
        await it.press("enter", "enter", "space")
        assert it.state.stage is Stage.READ_BACK


async def test_enter_does_nothing_while_a_wait_runs(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await to_strip(it)
        await it.touch("100")
        before = it.facts()
        await it.press("enter", "space")
        assert it.facts() == before
        assert it.state.mode is Mode.RUNNING


async def test_a_wait_shows_what_is_left_and_ends_by_itself(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await to_strip(it)
        await it.touch("100")
        digits = it.app.screen.query_one("#digits")
        assert digits.value == "2:00"
        await it.pass_time(61)
        assert digits.value == "0:59"
        assert it.state.stage is Stage.ASK
        await it.pass_time(59)
        assert it.state.stage is Stage.TIME_UP
        assert not digits.display
        assert it.first() == [NEXT]


async def test_arrows_move_between_targets(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.keep("my hands are clean")
        await it.press("right", "right", "enter")
        assert it.state.stage is Stage.ASK
        assert "ReadBackDenied" in it.facts()
        await it.keep("my hands are clean")
        await it.press("right", "right", "left", "enter")
        assert it.state.step == "lid"


async def test_what_is_left_of_the_walk_stands_beside_the_place(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        assert "min left" not in it.words()
        it.walk.left = {it.state.goal: Left(1500, 1200, 2000, 12)}
        it.app.screen.draw()
        await it.settle()
        assert "about 25 min left (20 to 33) · step 1" in it.words()
        await it.press("p")
        assert "min left" not in it.words()
