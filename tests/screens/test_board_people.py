"""Who stands at the board, and what the board tells them: their language, their walks, the time."""

from __future__ import annotations

import shutil
from dataclasses import replace

import pytest

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.languages.words import words
from kiosk.people.may import Purpose
from kiosk.procedure.site import Machine, Pins
from kiosk.screens.board import BoardScreen
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.pin_screen import PinScreen
from kiosk.screens.signed_in import FALLS_OFF_S
from kiosk.screens.summary import SummaryScreen
from kiosk.screens.walk_screen import WalkScreen
from tests.screens.scene import RITA, SITE, SMALL, Kiosk, kiosk
from tests.screens.test_pin import CREW, TIA, facts, shop_facts

SPANISH, KOREAN = words("es"), words("ko")


async def sign_in(it: Kiosk, name: str) -> None:
    await it.press("i")
    await it.touch(name)


async def to_the_end(it: Kiosk) -> None:
    """End the walk early, and leave its account."""
    await it.touch(c.Pause())
    await it.press("e", "y")
    assert isinstance(it.app.screen, SummaryScreen)
    await it.press("enter")
    assert isinstance(it.app.screen, BoardScreen)


async def test_who_signs_in_is_greeted_and_walks_without_being_asked(tmp_path):
    async with kiosk(tmp_path, size=(100, 30)) as it:
        await sign_in(it, "Rita")
        assert "Buenos días, Rita" in it.words()
        assert "en servicio" in it.words()
        assert it.facts() == []
        await it.touch("Window machine")
        assert isinstance(it.app.screen, WalkScreen)
        assert (it.state.worker, it.state.language) == ("rita", "es")
        (started,) = facts(it, e.SessionStarted)
        assert (started.worker, started.pin, started.supervisor) == ("rita", False, "")


@pytest.mark.parametrize(
    ("hour", "greeting"),
    [(3, "Good evening, Ana"), (4, "Good morning, Ana"), (11, "Good morning, Ana"),
     (12, "Good afternoon, Ana"), (18, "Good evening, Ana")],
)  # fmt: skip
async def test_it_greets_by_the_clock_of_the_site(tmp_path, hour, greeting):
    # The scene's clock stands at 10:03 of a day in UTC.
    async with kiosk(tmp_path) as it:
        it.clock.seconds += (hour - 10) % 24 * 3600
        await sign_in(it, "Ana")
        assert greeting in it.words()


async def test_after_ten_minutes_without_a_touch_nobody_is_signed_in(tmp_path):
    async with kiosk(tmp_path) as it:
        await sign_in(it, "Rita")
        await it.pass_time(FALLS_OFF_S - 2)
        assert "Rita" in it.words()
        await it.press("t")
        await it.pass_time(FALLS_OFF_S - 2)
        assert "Rita" in it.words()
        await it.pass_time(3)
        assert "Rita" not in it.words()
        assert "in service" in it.words()
        await it.touch("Window machine")
        assert isinstance(it.app.screen, ChooseScreen)
        assert it.facts() == []


async def test_a_press_after_the_time_is_up_begins_nothing_for_who_has_gone(tmp_path):
    """Before the board has looked at the clock again."""
    async with kiosk(tmp_path) as it:
        await sign_in(it, "Rita")
        it.clock.seconds += FALLS_OFF_S
        await it.press("1")
        assert isinstance(it.app.screen, ChooseScreen)
        assert it.facts() == []


async def test_another_one_takes_their_place_and_can_go(tmp_path):
    async with kiosk(tmp_path, size=(100, 30)) as it:
        await sign_in(it, "Rita")
        await sign_in(it, "Mina")
        assert "Mina 님" in it.words()
        assert "Rita" not in it.words()
        await sign_in(it, KOREAN.say("sign-out"))
        assert "Mina" not in it.words()
        assert "Which machine?" in it.words()


async def test_somebody_can_sign_in_by_voice(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.press("i")
        await it.hear("number three")
        assert "Rita" in it.words()


async def test_after_a_walk_they_are_still_signed_in(tmp_path):
    async with kiosk(tmp_path) as it:
        await sign_in(it, "Rita")
        await it.press("1")
        it.clock.seconds += 2 * FALLS_OFF_S
        await to_the_end(it)
        assert "Rita" in it.words()


async def test_who_handed_the_walk_over_is_signed_out(tmp_path):
    async with kiosk(tmp_path) as it:
        await sign_in(it, "Ana")
        await it.press("1", "h")
        await it.touch("Mina")
        assert it.state.worker == "mina"
        await to_the_end(it)
        await it.press("i")
        assert {"Ana", "Mina", "Rita"} <= set(it.labels())


async def test_a_pin_is_asked_for_where_the_site_asks_for_one(tmp_path):
    site = replace(CREW, pins=Pins(at_start=True, invented="2468"))
    async with kiosk(tmp_path, site=site) as it:
        await sign_in(it, "Rita")
        for _ in range(2):
            await it.press("1")
            assert isinstance(it.app.screen, PinScreen)
            await it.press("escape")
        assert it.facts() == []
        await it.press("1", *"2468", "enter")
        (started,) = facts(it, e.SessionStarted)
        assert (started.worker, started.pin) == ("rita", True)
        assert [one.purpose for one in shop_facts(it)] == [Purpose.BEGIN]


async def test_a_trainee_still_needs_a_supervisor_beside_them(tmp_path):
    async with kiosk(tmp_path, site=CREW) as it:
        await sign_in(it, TIA.name)
        await it.press("1")
        assert isinstance(it.app.screen, PinScreen)
        assert "Sue" in it.words()
        assert it.facts() == []


async def test_what_somebody_does_not_walk_is_refused_with_its_reason(tmp_path):
    people = (replace(RITA, walks=("another",)),)
    async with kiosk(tmp_path, size=(100, 30), site=replace(SITE, people=people)) as it:
        await sign_in(it, "Rita")
        await it.press("1")
        assert isinstance(it.app.screen, BoardScreen)
        assert SPANISH.say("refused-not-your-walk") in it.words()
        assert it.facts() == []


async def test_who_is_signed_in_practises_and_takes_up_what_was_left(tmp_path):
    real = replace(CREW, practice=False, pins=Pins())
    async with kiosk(tmp_path, size=(100, 30), site=real) as it:
        await sign_in(it, "Ana")
        await it.press("k")
        await it.touch("practise")
        assert "Ana" in it.words()
        await it.press("1")
        assert (it.state.worker, it.walk.session.plan.practice) == ("ana", True)


async def test_the_time_is_told_and_goes_on(tmp_path):
    """Closing is at 22:00, and the evening's time ends three hours later (the shipped schedule)."""
    async with kiosk(tmp_path, size=(100, 30)) as it:
        assert "Short round: from 22:00 · in 11 hours" in it.words()
        # The clock stands at 10:03:20 UTC.
        await it.pass_time(11 * 3600 + 31 * 60)
        assert "Short round: from 22:00 · in 25 minutes" in it.words()
        await it.pass_time(26 * 60)
        assert "Short round: by 01:00 · 2 hours left" in it.words()
        await it.press("1")
        await it.touch("Ana")
        await it.press("escape")
        await it.touch("all machines")
        assert "▶ Unfinished" in it.words()
        assert "Short round: by 01:00 · 2 hours left" in it.words()
        await it.pass_time(3 * 3600)
        assert "! Overdue since 01:00: Short round" in it.words()


@pytest.mark.parametrize("size", [(60, 18), (80, 24), (100, 30)], ids=str)
async def test_each_machine_keeps_its_standing_and_its_time_at_every_size(tmp_path, size):
    """Eight machines, page by page: what is cut is what matters least."""
    machines = tuple(Machine(id=f"m{n}", name=f"Machine {n}", kind="small") for n in range(8))
    async with kiosk(tmp_path, size=size, site=replace(SITE, machines=machines)) as it:
        await sign_in(it, "Ana")
        seen = ""
        for _ in range(8):
            seen += it.words()
            if "more" in it.labels():
                await it.press("m")
        for n in range(8):
            assert f"Machine {n}" in seen
        cards = [one for one in it.targets() if one.face.label.startswith("Machine")]
        assert cards
        assert it.words().count("from 22:00") == len(cards)
        for one in cards:
            assert "● in service" in one.face.detail
            assert "from 22:00" in one.face.detail
            assert one.size.width >= 18
            assert one.size.height >= 3


@pytest.mark.parametrize("size", [(60, 18), (80, 24), (100, 30)], ids=str)
async def test_nothing_is_pushed_off_the_board_when_much_is_wrong(tmp_path, size):
    """A procedure that cannot be read, a pairing code, a refusal, and somebody signed in."""
    library = tmp_path / "procedures"
    shutil.copytree(SMALL, library)
    (library / "wrong.yaml").write_text("id: wrong\nversion: soon\n", encoding="utf-8")
    people = tuple(replace(one, walks=("another",)) for one in SITE.people)
    site = replace(SITE, people=people)
    async with kiosk(tmp_path, size=size, library=library, site=site) as it:
        it.app.pairing_code = "12345678"
        await sign_in(it, "Rita")
        await it.press("1")
        assert SPANISH.say("what-is-faulty") in it.labels()
        shown = []
        for _ in range(2):
            shown += [one.face.label for one in it.targets()]
            for one in it.targets():
                assert one.region.width >= 18, one.face.label
                assert one.region.height >= 3, one.face.label
                assert it.app.screen.region.contains_region(one.region), one.face.label
            await it.press("m")
        assert {"Window machine", "Back machine"} <= set(shown)


async def test_what_can_be_done_here_tells_of_signing_in(tmp_path):
    async with kiosk(tmp_path, size=(100, 40)) as it:
        await it.press("question_mark")
        assert "Sign in, and what you press begins with you" in it.words()
