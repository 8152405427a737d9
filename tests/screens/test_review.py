"""The supervisor's review: what needs eyes first, sessions, the timeline, signing.

What is shown is held against the journal's rows, read with plain SQL past the kiosk.
"""

from __future__ import annotations

import shutil
import sqlite3
from contextlib import closing, suppress
from dataclasses import replace

from textual.worker import WorkerFailed

from kiosk.engine import commands as c
from kiosk.people.beside import Beside
from kiosk.procedure.site import Role
from kiosk.review.deviations import Deviation
from kiosk.review.ledger_lines import Line
from kiosk.screens.app import KioskApp
from kiosk.screens.board import BoardScreen
from kiosk.screens.pin_screen import PinScreen
from kiosk.screens.review_opening import OpeningScreen
from kiosk.screens.review_screen import IDLE_S, DeviationScreen, ReviewScreen
from kiosk.screens.review_session import SessionScreen
from kiosk.screens.review_write import WriteScreen
from tests.screens.review_scene import (
    PROCEDURES,
    SHOP,
    Morning,
    enter,
    home,
    page,
    pages,
    reviewing,
    rows,
    speaking,
    text_of,
    until_read,
)
from tests.screens.scene import StillClock, kiosk, shop


def begun(folder):
    """The sessions' first rows, the newest first."""
    return list(reversed(rows(folder, "SessionStarted")))


async def first_session(it, fits=lambda line: True):
    """Open the first session in the list that fits; return its line."""
    async for faces in pages(it):
        for face in faces:
            if isinstance(face.choice.item, Line) and fits(face.choice.item):
                await it.touch(face.choice)
                return face.choice.item
    raise LookupError("no such session")


# The doorway.


async def test_the_review_opens_only_after_the_supervisors_pin(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    async with kiosk(tmp_path, clock=Morning(), library=PROCEDURES, site=SHOP) as it:
        await it.touch("review")
        assert isinstance(it.app.screen, PinScreen)
        await it.press(*"1111", "enter")
        assert isinstance(it.app.screen, PinScreen)
        await it.press(*"2468", "enter")
        await until_read(it)
        assert isinstance(it.app.screen, ReviewScreen)
    last = rows(tmp_path)[-2:]
    assert [row["kind"] for row in last] == ["PinRefused", "PinGiven"]
    assert last[1]["fact"] == {"person": "p5", "purpose": "review"}


async def test_the_command_begins_with_the_pin_over_the_board(tmp_path):
    made = shop(tmp_path, StillClock())
    app = KioskApp(made, review=True)
    async with app.run_test(size=(80, 24)) as pilot:
        await pilot.pause()
        # The small shop has no supervisor: the list of them is empty, and says so.
        assert not isinstance(app.screen, BoardScreen)
        assert any(isinstance(one, BoardScreen) for one in app.screen_stack)
    made.journal.close()


async def test_whoever_leaves_while_the_journal_is_read_is_back_at_the_board(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    (tmp_path / "ledger.db").unlink()
    # The reading waits for the file as long as somebody else holds it.
    held = sqlite3.connect(tmp_path / "ledger.db")
    held.execute("begin exclusive")
    async with kiosk(tmp_path, clock=Morning(), library=PROCEDURES, site=SHOP) as it:
        await it.press("r", *"2468", "enter")
        assert isinstance(it.app.screen, OpeningScreen)
        assert "The journal is being read." in it.words()
        await it.press("escape")
        assert isinstance(it.app.screen, BoardScreen)
        held.close()
        with suppress(WorkerFailed):
            await it.app.workers.wait_for_complete()
        await it.settle()
        assert isinstance(it.app.screen, BoardScreen)


async def test_a_ledger_that_cannot_be_made_is_said_and_leads_back(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    (tmp_path / "ledger.db").unlink()
    (tmp_path / "ledger.db").mkdir()
    async with kiosk(tmp_path, clock=Morning(), library=PROCEDURES, site=SHOP) as it:
        await it.press("r", *"2468", "enter")
        with suppress(WorkerFailed):
            await it.app.workers.wait_for_complete()
        await it.settle()
        assert "The review cannot be opened." in it.words()
        await it.press("escape")
        assert isinstance(it.app.screen, BoardScreen)


async def test_a_review_that_nobody_touches_closes_itself(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        review = home(it)
        await first_session(it)
        it.clock.seconds += IDLE_S - 5
        review.tick()
        await it.settle()
        assert isinstance(it.app.screen, SessionScreen)
        await it.press("pagedown")
        it.clock.seconds += IDLE_S - 1
        review.tick()
        await it.settle()
        assert isinstance(it.app.screen, SessionScreen)
        it.clock.seconds += 2
        review.tick()
        await it.settle()
        assert isinstance(it.app.screen, BoardScreen)


# The first page.


async def test_what_needs_eyes_comes_first_the_heaviest_on_top_then_the_sessions(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        found = [face.choice.item async for faces in pages(it) for face in faces]
        eyes = [one for one in found if isinstance(one, Deviation)]
        lines = [one for one in found if isinstance(one, Line)]
        assert found == [*eyes, *lines]
        assert eyes
        assert [one.weight for one in eyes] == sorted((one.weight for one in eyes), reverse=True)
    assert [one.session for one in lines] == [row["session"] for row in begun(tmp_path)]


async def test_each_thing_has_its_sentence_and_its_reason(history, tmp_path):
    async with reviewing(history, tmp_path, size=(100, 30)) as it:
        review = home(it)
        async for faces in pages(it):
            for face in faces:
                one = face.choice.item
                if isinstance(one, Deviation):
                    assert review.words.text(one.reason) in face.detail
                    assert review.desk.machine(one.machine) in face.detail
                    if one.session:
                        worker = review.desk.ledger.line(one.session).workers[0]
                        assert review.desk.person(worker) in face.detail


async def test_no_text_of_a_list_is_cut_off_on_a_small_screen(history, tmp_path):
    async with reviewing(history, tmp_path, size=(60, 18)) as it:
        async for faces in pages(it):
            seen = "".join(it.words().split())
            for face in faces:
                for text in (face.label, face.detail):
                    assert "".join(text.split()) in seen, f"{face}\n{it.seen()}"


async def test_a_session_shows_worker_machine_start_and_length(history, tmp_path):
    async with reviewing(history, tmp_path, size=(100, 30)) as it:
        faces = [face async for one in pages(it) for face in one]
        names = {one.id: one.name for one in SHOP.people}
        machines = {one.id: one.name for one in SHOP.machines}
        shown = [face for face in faces if isinstance(face.choice.item, Line)]
        for face, row in zip(shown, begun(tmp_path), strict=True):
            assert machines[row["fact"]["machine"]] in face.label
            assert names[row["fact"]["worker"]] in face.label
            assert row["utc"][:16].replace("T", " ") in face.detail
        assert "usual" in shown[0].detail


async def test_something_that_was_never_begun_has_a_page_of_its_own(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    clock = Morning()
    clock.seconds += 2 * 86_400
    async with kiosk(tmp_path, clock=clock, library=PROCEDURES, site=SHOP) as it:
        await enter(it)
        async for faces in pages(it):
            missed = [
                face for face in faces
                if isinstance(face.choice.item, Deviation) and not face.choice.item.session
            ]  # fmt: skip
            if missed:
                break
        await it.touch(missed[0].choice)
        assert isinstance(it.app.screen, DeviationScreen)
        assert "The work was due, its time is over, and nobody began it." in it.words()


async def test_the_sessions_of_one_machine_one_person_or_unsigned(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        for label, fits in (
            ("Patio twin", lambda fact: fact["machine"] == "patio"),
            ("Mina Ahn", lambda fact: fact["worker"] == "p1"),
        ):
            await it.press("f")
            await it.touch(label)
            shown = [face.choice.item.session async for one in pages(it) for face in one]
            wanted = [row["session"] for row in begun(tmp_path) if fits(row["fact"])]
            assert set(wanted) <= set(shown)
            assert len(shown) < len(begun(tmp_path))
            await it.press("escape")
        signed = {row["fact"]["session"] for row in rows(tmp_path, "SignedOff")}
        await it.press("f")
        await it.touch("not signed")
        shown = [face.choice.item.session async for one in pages(it) for face in one]
        assert set(shown) == {row["session"] for row in begun(tmp_path)} - signed


# One session.


async def test_the_timeline_has_each_answer_with_time_channel_words_and_certainty(
    history, tmp_path
):
    async with reviewing(history, tmp_path) as it:
        line = await first_session(it, lambda one: one.spoken and one.workers == ("p3",))
        text = text_of(it)
        mine = [row for row in rows(tmp_path) if row["session"] == line.session]
        heard = [row for row in mine if row["by"].get("heard")]
        assert heard
        for row in heard:
            assert f"by voice: “{row['by']['heard']}”" in text
            assert f"{round(row['by']['confidence'] * 100)} percent sure" in text
            assert row["utc"][11:19] in text
        for row in mine:
            if row["kind"] == "StepConfirmed" and " to " in row["fact"]["limit"]:
                assert row["fact"]["limit"].partition(": ")[2] in text
        assert f"Journal rows {mine[0]['seq']} to {mine[-1]['seq']}" in text


async def test_the_supervisor_reads_their_own_language_and_what_the_worker_was_asked(
    history, tmp_path
):
    async with reviewing(history, tmp_path, site=speaking("ko")) as it:
        line = await first_session(it, lambda one: one.workers == ("p2",))
        plan = it.app.shop.plan_of(line.session)
        text = text_of(it)
        first = plan.step(
            next(
                row["fact"]["step"]
                for row in rows(tmp_path, "StepEntered")
                if row["session"] == line.session
            )
        )
        assert first.say["ko"] in text
        assert f"Español로 물음: “{first.say['es']}”" in text


async def test_where_the_text_is_gone_the_timeline_still_has_what_the_journal_has(
    history, tmp_path
):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    with closing(sqlite3.connect(tmp_path / "journal.db")) as db:
        # A journal of the time before texts were kept has none.
        db.executescript("drop trigger walked_never_deleted; delete from walked")
    left = {name: one for name, one in PROCEDURES.procedures.items() if "close" not in name}
    library = replace(PROCEDURES, procedures=left)
    async with kiosk(tmp_path, clock=Morning(), library=library, site=SHOP) as it:
        await enter(it)
        line = await first_session(it, lambda one: one.procedure == "close-twin-gravity")
        text = text_of(it)
        assert "this text is not here any more" in text
        for row in rows(tmp_path, "StepConfirmed"):
            if row["session"] == line.session:
                assert row["utc"][11:19] in text
                assert row["fact"]["step"] in text


async def test_the_wording_then_in_force_is_shown_when_the_file_is_gone(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    left = {name: one for name, one in PROCEDURES.procedures.items() if "close" not in name}
    library = replace(PROCEDURES, procedures=left)
    async with kiosk(tmp_path, clock=Morning(), library=library, site=SHOP) as it:
        await enter(it)
        await first_session(it, lambda one: one.procedure == "close-twin-gravity")
        text = text_of(it)
        assert "this text is not here any more" not in text
        assert "Set out the brushes, two buckets, clean cloths and the parts tray." in text


# The supervisor's word.


async def test_a_session_is_signed_off_with_a_remark_that_is_picked(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        line = await first_session(it, lambda one: one.signed is None)
        await it.touch("sign off", "looked at, nothing to do")
        assert "Signed off by Priya Nair" in it.words()
        await it.press("escape")
        assert home(it).desk.ledger.line(line.session).signed.by == "p5"
        assert it.app.shop.journal.verify().whole
    last = rows(tmp_path)[-1]
    assert (last["kind"], last["by"]["channel"]) == ("SignedOff", "touch")
    assert last["fact"] == {
        "session": line.session, "by": "p5", "remark": "looked at, nothing to do"
    }  # fmt: skip


async def test_what_was_signed_off_needs_no_eyes_any_more_and_what_was_sent_back_does(
    history, tmp_path
):
    async with reviewing(history, tmp_path) as it:
        eye = next(
            face for face in it.targets()
            if isinstance(face.face.choice.item, Deviation) and face.face.choice.item.session
        ).face.choice  # fmt: skip
        await it.touch(eye, "send back", "take a sample")
        assert "Sent back by Priya Nair" in it.words()
        await it.press("escape")
        assert it.offers(eye)
        await it.touch(eye, "sign off", "looked at the machine")
        await it.press("escape")
        left = [face.choice.item async for one in pages(it) for face in one]
        assert [x for x in left if isinstance(x, Deviation) and x.session == eye.item.session] == []
    kinds = [row["kind"] for row in rows(tmp_path)[-2:]]
    assert kinds == ["SentBack", "SignedOff"]


async def test_a_written_remark_lies_beside_the_journal_and_can_be_erased(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        line = await first_session(it, lambda one: one.signed is None)
        await it.touch("send back", "write it")
        await it.press("enter")
        assert "Write something first." in it.words()
        await it.press(*"ask", "space", *"Mina")
        await it.touch("take it")
        assert "ask Mina" in it.words()
        Beside(tmp_path).erase("p5")
        await it.press("escape")
        await first_session(it, lambda one: one.session == line.session)
        assert "The text of this remark was erased." in it.words()
    last = rows(tmp_path)[-1]
    assert (last["kind"], last["by"]["channel"]) == ("SentBack", "key")
    assert "Mina" not in last["body"]


async def test_nobody_signs_off_their_own_work(history, tmp_path):
    people = [
        replace(one, role=Role.SUPERVISOR if one.id == "p1" else Role.WORKER, language="en")
        for one in SHOP.people
    ]
    async with reviewing(history, tmp_path, site=replace(SHOP, people=tuple(people))) as it:
        before = len(rows(tmp_path))
        await first_session(it, lambda one: "p1" in one.workers)
        await it.touch("sign off")
        assert isinstance(it.app.screen, SessionScreen)
        assert page(it).notice
        assert len(rows(tmp_path)) == before


async def test_a_session_that_has_not_ended_can_be_sent_back_but_not_signed_off(history, tmp_path):
    shutil.copytree(history, tmp_path, dirs_exist_ok=True)
    made = shop(tmp_path, Morning(), PROCEDURES, SHOP)
    session = made.fresh("patio", "open-twin-gravity")
    session.do(c.Start("p3", "en"))
    made.journal.close()
    async with kiosk(tmp_path, clock=Morning(), library=PROCEDURES, site=SHOP) as it:
        await enter(it)
        await first_session(it, lambda one: one.session == session.id)
        await it.touch("sign off")
        assert "This session has not ended." in it.words()
        await it.touch("send back", "worker, come and see me")
        assert "Sent back by Priya Nair" in it.words()


async def test_a_journal_that_cannot_be_written_is_said_and_nothing_is_signed(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        line = await first_session(it, lambda one: one.signed is None)
        it.app.shop.journal._db.execute("pragma query_only = on")
        await it.touch("sign off", "looked at the machine")
        assert "nothing was recorded" in it.words()
        assert home_line(it, line.session).signed is None


def home_line(it, session):
    return page(it).desk.ledger.line(session)


async def test_never_mind_leaves_a_remark_unwritten(history, tmp_path):
    async with reviewing(history, tmp_path) as it:
        before = len(rows(tmp_path))
        await first_session(it, lambda one: one.signed is None)
        await it.touch("sign off", "write it")
        assert isinstance(it.app.screen, WriteScreen)
        await it.press("a", "escape")
        assert isinstance(it.app.screen, SessionScreen)
        assert len(rows(tmp_path)) == before
