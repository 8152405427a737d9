"""The board, the choices that lead to a walk, and the account at its end."""

from __future__ import annotations

import shutil
from dataclasses import replace

from kiosk.engine import commands as c
from kiosk.procedure.model import Standing
from kiosk.procedure.site import Machine, Person
from kiosk.screens.board import BoardScreen
from kiosk.screens.choose import ChooseScreen
from kiosk.screens.summary import SummaryScreen
from kiosk.screens.walk_screen import WalkScreen
from tests.screens.scene import NEXT, NO, SITE, SMALL, YES, StillClock, kiosk, shop


async def test_each_machine_shows_how_it_stands_and_what_is_due(tmp_path):
    async with kiosk(tmp_path) as it:
        for text in ("Window machine", "Back machine", "Small machine", "● in service"):
            assert text in it.words()
        assert "Short round: from 22:00 · in 11 hours" in it.words()


async def test_a_procedure_that_cannot_be_read_is_shown_and_the_others_can_be_walked(tmp_path):
    library = tmp_path / "procedures"
    shutil.copytree(SMALL, library)
    (library / "wrong.yaml").write_text("id: wrong\nversion: soon\n", encoding="utf-8")
    async with kiosk(tmp_path, library=library) as it:
        assert "keep" in it.words()
        assert "Notice" in it.words()
        await it.touch("what is faulty")
        assert "wrong.yaml:1" in it.words().replace(" ", "")
        assert "To mend" in it.words()
        await it.press("escape")
        await it.begin()
        assert isinstance(it.app.screen, WalkScreen)


async def test_a_machine_without_a_procedure_says_so(tmp_path):
    site = replace(SITE, machines=(Machine(id="m9", name="Odd machine", kind="odd"),))
    async with kiosk(tmp_path, site=site) as it:
        await it.touch("Odd machine")
        assert isinstance(it.app.screen, BoardScreen)
        assert "No procedure can be walked on it." in it.words()


def test_a_card_offers_what_is_due_and_else_everything(tmp_path):
    made = shop(tmp_path, StillClock())
    card = made.cards()[0]
    assert [plan.procedure for plan in card.due] == ["short"]
    session = made.fresh("m1", "short")
    session.do(c.Start("ana", "en"))
    session.do(c.CallProblem())
    session.do(c.NameReason("broken"))
    assert made.cards()[0].standing is Standing.HELD
    assert made.cards()[0].unfinished.id == session.id
    session.do(c.TakeOutOfService())
    card = made.cards()[0]
    assert card.standing is Standing.OUT_OF_SERVICE
    assert card.unfinished is None
    assert card.due == ()
    assert [plan.procedure for plan in card.others] == ["short"]
    assert made.cards()[1].standing is Standing.IN_SERVICE
    made.journal.close()


async def test_what_is_not_due_is_asked_for_first(tmp_path):
    made = shop(tmp_path, StillClock())
    session = made.fresh("m1", "short")
    session.do(c.Start("ana", "en"))
    session.do(c.Pause())
    session.do(c.TakeOutOfService())
    made.journal.close()
    async with kiosk(tmp_path) as it:
        await it.touch("Window machine")
        assert "not the usual next" in it.words()
        await it.touch("Short round", "Ana")
        assert it.state.step == "hands"


async def test_never_mind_leads_back_to_the_board(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.press("1")
        assert isinstance(it.app.screen, ChooseScreen)
        await it.press("escape")
        assert isinstance(it.app.screen, BoardScreen)
        assert it.facts() == []


async def test_many_people_are_shown_page_by_page(tmp_path):
    crew = tuple(Person(id=f"p{n}", name=f"Person {n}", language="en") for n in range(40))
    async with kiosk(tmp_path, site=replace(SITE, people=crew)) as it:
        await it.press("1")
        seen = set()
        for _ in range(6):
            seen |= {label for label in it.labels() if label.startswith("Person")}
            await it.press("m")
        assert len(seen) == 40
        await it.press("m")


async def test_the_board_speaks_the_language_that_is_chosen(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.press("l")
        await it.touch("Español")
        assert "en servicio" in it.words()
        assert "Máquina pequeña" in it.words()


async def test_light_or_dark(tmp_path):
    async with kiosk(tmp_path) as it:
        dark = it.app.screen.styles.background
        await it.press("t")
        assert it.app.theme == "day"
        assert it.app.screen.styles.background != dark


async def test_the_kiosk_is_closed_from_the_board_only(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.press("ctrl+q", "ctrl+c")
        assert isinstance(it.app.screen, WalkScreen)
        assert it.app.is_running
        await it.press("escape", "q")
        exits = []
        it.app.exit = lambda *_, **__: exits.append("exit")
        await it.press("ctrl+q")
        assert exits == ["exit"]


async def test_the_account_names_every_deviation(tmp_path):
    async with kiosk(tmp_path, size=(100, 40)) as it:
        await it.begin()
        await it.keep("my hands are clean")
        await it.touch(YES, NEXT)
        await it.keep("the power is off")
        await it.touch(YES, NO, "there is a leak", c.Resume())
        await it.keep("the power is off")
        await it.touch(YES, YES)
        await it.keep("my hands are clean")
        await it.touch(YES)
        await it.press("9", "enter", "enter", "3", "enter")
        await it.touch("100")
        await it.pass_time(140)
        await it.touch(NEXT, NEXT, NO, NEXT, NO, NEXT, NEXT, YES)
        await it.touch("3", NEXT, "4", c.Inspected(c.Finding.NONE_LEFT))
        assert isinstance(it.app.screen, SummaryScreen)
        for line in (
            "mix temperature: 9 degrees Celsius was out of its limit.",
            "scraper blades: 3 counted, 4 on the parts list.",
            "Not right after 2 passes",
            "The try-out failed",
            "Problem: there is a leak",
            "None left in stock: drive seal",
            "limit: 5 degrees Celsius or less; clause 1, invented edition (CALC)",
            "It took 3 minutes.",
            "The machine is open. Let nobody switch it on.",
        ):
            assert line in it.words(), line
        head = it.app.shop.journal.head()
        assert head[:12] in it.words()
        assert it.app.shop.journal.verify().head == head
