"""Held sessions: problems, breaks, other hands, another language, a crash, a full disk."""

from __future__ import annotations

import shutil
from dataclasses import replace

import pytest

from kiosk.engine import commands as c
from kiosk.engine.state import Mode, Stage
from kiosk.journal.store import JournalFailed
from kiosk.languages.words import words
from kiosk.screens.board import BoardScreen
from kiosk.screens.faces import Leave, TryAgain
from kiosk.screens.summary import SummaryScreen
from kiosk.walk import ChooseLanguage, NeverMind
from tests.screens.scene import MINA, NEXT, NO, SMALL, YES, Kiosk, StillClock, kiosk

RESUME, PROBLEM, OUT = c.Resume(), c.CallProblem(), c.TakeOutOfService()


async def to_lid(it: Kiosk) -> None:
    await it.begin()
    await it.keep("my hands are clean")
    await it.touch(YES)


async def test_a_problem_looks_held_and_leads_back_by_its_corrective_action(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
        await it.touch(PROBLEM)
        assert " HELD " in it.seen().splitlines()[0]
        assert it.seen().startswith("┏")
        assert not it.offers(RESUME)
        await it.touch("there is a leak")
        assert "Find the seal that leaks." in it.words()
        await it.touch(RESUME)
        assert it.state.mode is Mode.RUNNING
        assert it.state.step == "hands"
        assert "First, confirm this again." in it.words()
        assert "┏" not in it.seen()


async def test_a_problem_by_digits(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.press("p", "1", "enter")
        assert it.state.mode is Mode.RUNNING


async def test_a_problem_that_stops_service_offers_no_way_on(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
        await it.touch(NEXT, PROBLEM, "something is broken")
        assert not it.offers(RESUME)
        assert it.first() == [OUT]
        await it.touch(OUT)
        assert isinstance(it.app.screen, SummaryScreen)
        assert "The machine is open. Let nobody switch it on." in it.words()
        assert "Problem: something is broken" in it.words()
        await it.press("enter")
        assert "out of service" in it.words()


async def test_an_end_is_asked_once_more_and_can_be_withdrawn(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        await it.press("escape")
        assert it.state.because == "pause"
        await it.touch(c.End(), NO)
        assert it.state.mode is Mode.HELD
        await it.touch(c.End(), YES)
        assert isinstance(it.app.screen, SummaryScreen)
        await it.press("enter")
        assert "left unfinished" in it.words()


async def test_a_hand_over_asks_who_and_speaks_their_language(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
        await it.press("h")
        assert {"Mina", "Rita"} <= {one.face.detail for one in it.targets()}
        await it.touch("Mina")
        assert it.state.worker == MINA.id
        assert it.state.language == "ko"
        assert it.state.step == "hands"
        assert "Mina" in it.words()
        assert "손을 씻으세요." in it.words()


async def test_never_mind_takes_a_hand_over_back(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        before = it.facts()
        await it.press("h", "escape")
        assert it.facts() == before
        assert not it.offers(NeverMind())
        assert it.state.mode is Mode.RUNNING


async def test_another_language_changes_every_label(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
        english = set(it.labels())
        await it.touch(ChooseLanguage(), "Español")
        assert not english & set(it.labels())
        spanish = words("es")
        assert spanish.phrases(NEXT)[0] in it.labels()
        assert spanish.phrases(PROBLEM)[0] in it.labels()
        for sentence in ("Quite la tapa.", "No meta las manos.", "Prepararse"):
            assert sentence in it.words()
        assert spanish.say("drafted") in it.words()
        for sentence in ("Lift the lid", "Keep your hands", "Get ready", "voice on"):
            assert sentence not in it.words()


async def test_after_a_crash_the_board_shows_it_and_lapsed_holds_are_asked_again(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
        await it.touch(NEXT)
        session = it.walk.session.id
    async with kiosk(tmp_path, clock=StillClock("boot-2")) as it:
        assert "Short round, Ana" in it.target("Window machine").face.detail
        await it.touch("Window machine", "Ana")
        assert it.walk.session.id == session
        assert it.state.mode is Mode.HELD
        assert not it.state.in_force & {"hands clean"}
        await it.touch(RESUME)
        assert it.state.step == "power"
        await it.touch(c.Back())
        assert it.state.step == "hands"
        assert "my hands are clean" in it.labels()


async def test_somebody_else_takes_an_unfinished_session_up(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
    async with kiosk(tmp_path) as it:
        await it.touch("Window machine", "Rita")
        assert it.state.worker == "rita"
        assert it.facts()[-1] == "HandedOver"
        assert it.state.mode is Mode.HELD


async def test_a_held_session_can_be_left_for_another_machine(tmp_path):
    async with kiosk(tmp_path) as it:
        await it.begin()
        assert not it.offers(Leave())
        await it.press("escape")
        await it.touch(Leave())
        assert isinstance(it.app.screen, BoardScreen)
        assert "Short round, Ana" in it.target("Window machine").face.detail
        await it.touch("Back machine", "Rita")
        assert it.walk.session.plan.machine == "m2"


async def test_a_session_whose_text_has_changed_can_only_be_ended(tmp_path):
    changed = tmp_path / "changed"
    shutil.copytree(SMALL, changed)
    text = (changed / "short.yaml").read_text(encoding="utf-8")
    (changed / "short.yaml").write_text(text.replace("id: lid\n", "id: cover\n"), encoding="utf-8")
    async with kiosk(tmp_path) as it:
        await to_lid(it)
    async with kiosk(tmp_path, library=changed) as it:
        await it.touch("Window machine", "Ana")
        assert "The text of this procedure has changed" in it.words()
        said = it.app.voice.said[-1][0]
        assert "has changed" in said
        assert not it.offers(RESUME)
        assert it.offers(c.End())
        await it.touch(PROBLEM) if it.offers(PROBLEM) else None
        await it.touch(c.End(), YES)
        assert isinstance(it.app.screen, SummaryScreen)
        await it.press("enter", "1", "1")
        assert it.state.step == "hands"


async def test_a_disk_that_cannot_be_written_is_said_and_nothing_moves(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
        before, journal = it.state, it.app.shop.journal
        append = journal.append
        journal.append = no_disk
        await it.touch(NEXT)
        assert it.state == before
        assert "Notice: The journal could not be written" in it.words()
        assert "disk full" in it.words()
        assert it.state.step == "lid"
        journal.append = append
        await it.touch(NEXT)
        assert it.state.step == "power"
        assert "could not be written" not in it.words()


def no_disk(session: str, events: object, after: int | None = None) -> int:
    raise JournalFailed("disk full")


async def test_a_session_that_cannot_be_begun_can_be_tried_again_or_left(tmp_path):
    async with kiosk(tmp_path) as it:
        journal = it.app.shop.journal
        append = journal.append
        journal.append = no_disk
        await it.begin()
        assert it.first(2) == [TryAgain(), Leave()]
        assert "could not be written" in it.words()
        journal.append = append
        await it.touch(TryAgain())
        assert it.state.stage is Stage.ASK
        assert it.state.step == "hands"


async def test_a_session_in_the_journal_that_cannot_be_read_is_said_on_the_board(tmp_path):
    async with kiosk(tmp_path) as it:
        await to_lid(it)
        db = it.app.shop.journal._db
        db.execute("drop trigger journal_never_updated")
        db.execute("update journal set kind = 'Unheard' where kind = 'StepEntered'")
        db.conn.commit()
    async with kiosk(tmp_path) as it:
        assert "Notice" in it.words()
        await it.press("f")
        assert "cannot be read" in it.words()
        await it.press("escape")
        assert isinstance(it.app.screen, BoardScreen)


@pytest.mark.parametrize("practice", [True, False])
async def test_practice_and_real_work_do_not_touch_each_other(tmp_path, practice):
    from tests.screens.scene import SITE

    async with kiosk(tmp_path, site=replace(SITE, practice=practice)) as it:
        await to_lid(it)
    async with kiosk(tmp_path, site=replace(SITE, practice=not practice)) as it:
        assert "Unfinished" not in it.words()
        assert "● in service" in it.target("Window machine").face.detail
        assert ("practice" in it.words()) == (not practice)
