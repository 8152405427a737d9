"""PINs on the screen: the keypad, a second person, a trainee's supervisor, practice."""

from __future__ import annotations

import shutil
from dataclasses import replace
from pathlib import Path

import pytest

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.engine.state import Mode, Stage
from kiosk.journal.shop_facts import PinGiven, PinRefused, PinSet
from kiosk.options import CallWitness
from kiosk.people.may import Purpose
from kiosk.people.vouched import unvouched
from kiosk.procedure.site import Person, Pins, Role
from kiosk.screens.board import BoardScreen
from kiosk.screens.pin_new import NewPinScreen
from kiosk.screens.pin_screen import PinScreen, ask_pin, ask_supervisor
from kiosk.screens.walk_screen import WalkScreen
from tests.screens.scene import ANA, MINA, RITA, SITE, SMALL, YES, Kiosk, StillClock, kiosk

SUE = Person(id="sue", name="Sue", language="en", role=Role.SUPERVISOR)
SVEN = Person(id="sven", name="Sven", language="en", role=Role.SUPERVISOR)
TIA = Person(id="tia", name="Tia", language="en", role=Role.TRAINEE)
CREW = replace(SITE, people=(ANA, MINA, RITA, TIA, SUE), pins=Pins(invented="2468"))


@pytest.fixture
def second_person(tmp_path: Path) -> Path:
    """The small procedure, its power cut in the presence of a second person."""
    library = tmp_path / "procedures"
    shutil.copytree(SMALL, library)
    text = (library / "short.yaml").read_text(encoding="utf-8")
    phrase = "phrase: {en: the power is off,"
    assert phrase in text
    two = text.replace(phrase, f"strength: second person\n          {phrase}")
    (library / "short.yaml").write_text(two, encoding="utf-8")
    return library


async def to_witness(it: Kiosk) -> None:
    await it.begin()
    await it.keep("my hands are clean")
    await it.touch(YES, c.Confirm())
    await it.keep("the power is off")
    await it.touch(YES, YES)


def shop_facts(it: Kiosk) -> list[object]:
    return [one.fact for one in it.app.shop.journal.shop_events()]


def facts(it: Kiosk, kind: type) -> list[object]:
    events = it.app.shop.journal.events(it.app.shop.journal.sessions()[0])
    return [one.fact for one in events if isinstance(one.fact, kind)]


def assert_vouched(it: Kiosk) -> None:
    """The audit finds a PIN behind each name."""
    journal = it.app.shop.journal
    events = journal.events(journal.sessions()[0])
    assert list(unvouched(events, journal.shop_events())) == []
    assert len(list(unvouched(events, []))) >= 1


# A second person.


@pytest.mark.parametrize("size", [(60, 18), (100, 30)])
async def test_a_second_person_picks_themselves_and_gives_their_pin(
    tmp_path: Path, second_person: Path, size: tuple[int, int]
):
    async with kiosk(tmp_path, size, library=second_person, site=CREW) as it:
        await to_witness(it)
        assert it.state.stage is Stage.WITNESS
        await it.touch(CallWitness())
        shown = {one.face.detail for one in it.targets()}
        assert {"Mina", "Rita", "Sue"} <= shown
        assert "Ana" not in shown
        assert "Tia" not in shown
        await it.touch("Sue")
        assert isinstance(it.app.screen, PinScreen)
        assert "Sue" in it.words()
        for digit in "2468":
            await it.touch(digit)
        assert "● ● ● ●" in it.seen()
        assert it.facts().count("PinGiven") == 0
        await it.touch("enter")
        assert it.state.step == "temperature"
        confirmed = facts(it, e.StepConfirmed)[-1]
        assert (confirmed.witness, confirmed.strength) == ("sue", "second person")
        assert shop_facts(it) == [PinGiven("sue", Purpose.WITNESS)]
        assert_vouched(it)


async def test_the_digits_are_not_on_the_screen(tmp_path: Path, second_person: Path):
    site = replace(CREW, pins=Pins())
    async with kiosk(tmp_path, library=second_person, site=site) as it:
        it.app.shop.gate.put("sue", "905173", "sven", c.Evidence(c.Channel.KEY))
        await to_witness(it)
        await it.touch(CallWitness(), "Sue")
        before = it.seen()
        await it.press(*"905173")
        rows = zip(before.split("\n"), it.seen().split("\n"), strict=True)
        changed = "".join(new for old, new in rows if new != old)
        assert "●" in changed
        assert not set("0123456789") & set(changed)
        await it.press("enter")
        assert it.state.step == "temperature"


async def test_a_wrong_pin_confirms_nothing_and_after_three_the_keypad_waits(
    tmp_path: Path, second_person: Path
):
    async with kiosk(tmp_path, library=second_person, site=CREW) as it:
        await to_witness(it)
        await it.touch(CallWitness(), "Sue")
        for _ in range(2):
            await it.press(*"1357", "enter")
            assert "not the right PIN" in it.words()
        await it.press(*"1357", "enter")
        assert "Too many wrong tries" in it.words()
        assert it.labels() == ["never mind"]
        await it.press(*"2468", "enter")
        assert isinstance(it.app.screen, PinScreen)
        await it.pass_time(30)
        await it.press(*"2468", "enter")
        assert it.state.step == "temperature"
        refused = [one for one in shop_facts(it) if isinstance(one, PinRefused)]
        assert [one.in_a_row for one in refused] == [1, 2, 3]


async def test_never_mind_leads_back_to_the_hold_and_the_ear_hears_the_walk_again(
    tmp_path: Path, second_person: Path
):
    async with kiosk(tmp_path, library=second_person, site=CREW) as it:
        await to_witness(it)
        before = it.app.hearing.allowed
        assert "the second person is here" in before
        await it.touch(CallWitness(), "Sue")
        assert it.app.hearing.allowed == ()
        await it.press("2", "escape")
        assert isinstance(it.app.screen, WalkScreen)
        assert it.app.hearing.allowed == before
        assert it.state.stage is Stage.WITNESS
        assert shop_facts(it) == []


async def test_a_second_person_can_be_called_by_voice_and_never_says_digits(
    tmp_path: Path, second_person: Path
):
    async with kiosk(tmp_path, library=second_person, site=CREW) as it:
        await to_witness(it)
        await it.hear("the second person is here")
        await it.hear("number three")
        assert isinstance(it.app.screen, PinScreen)
        await it.hear("two")
        assert "●" not in it.seen()
        await it.press(*"2468", "enter")
        assert it.state.step == "temperature"


async def test_digits_may_be_said_where_nobody_overhears_and_are_not_written(
    tmp_path: Path, second_person: Path
):
    site = replace(CREW, pins=Pins(invented="2468", spoken_pins=True))
    async with kiosk(tmp_path, library=second_person, site=site) as it:
        await to_witness(it)
        await it.touch(CallWitness(), "Sue")
        assert {"two", "four", "six", "eight"} <= set(it.app.hearing.allowed)
        for said in ("two", "four", "six", "eight"):
            await it.hear(said)
        assert "● ● ● ●" in it.seen()
        await it.hear("enter")
        assert it.state.step == "temperature"
        given = [row for row in it.app.shop.journal.rows() if row["kind"] == "PinGiven"]
        assert '"heard":""' in given[0]["body"]


async def test_digits_that_are_left_lying_are_forgotten(tmp_path: Path, second_person: Path):
    async with kiosk(tmp_path, library=second_person, site=CREW) as it:
        await to_witness(it)
        await it.touch(CallWitness(), "Sue")
        await it.press("2", "4")
        assert "● ●" in it.seen()
        await it.pass_time(31)
        assert "●" not in it.seen()


async def test_a_double_press_of_a_digit_counts_twice(tmp_path: Path, second_person: Path):
    async with kiosk(tmp_path, library=second_person, site=CREW) as it:
        await to_witness(it)
        await it.touch(CallWitness(), "Sue")
        it.clock.seconds += 1
        await it.quick_press("7")
        await it.quick_press("7")
        assert "● ●" in it.seen()
        await it.press("backspace")
        assert "● ●" not in it.seen()


# A trainee.


async def test_a_trainee_begins_with_a_supervisor_beside_them(tmp_path: Path):
    async with kiosk(tmp_path, site=CREW) as it:
        await it.touch("Window machine")
        assert it.target("Tia").face.detail == "with a supervisor beside them"
        await it.touch("Tia")
        assert isinstance(it.app.screen, PinScreen)
        assert "to stand by a trainee" in it.words()
        assert it.app.shop.journal.sessions() == []
        await it.press(*"2468", "enter")
        assert it.state.worker == "tia"
        began = facts(it, e.SessionStarted)[0]
        assert (began.worker, began.supervisor, began.pin) == ("tia", "sue", False)
        assert shop_facts(it) == [PinGiven("sue", Purpose.STAND_BY)]
        assert_vouched(it)


async def test_a_trainee_takes_over_with_a_supervisor_too(tmp_path: Path):
    async with kiosk(tmp_path, site=CREW) as it:
        await it.begin()
        await it.press("h")
        await it.touch("Tia")
        await it.press(*"2468", "enter")
        over = facts(it, e.HandedOver)[0]
        assert (over.worker, over.supervisor) == ("tia", "sue")
        assert it.state.worker == "tia"


async def test_after_the_first_walks_a_trainee_begins_alone(tmp_path: Path):
    site = replace(CREW, trainee_walks=1)
    async with kiosk(tmp_path, site=site) as it:
        gate, journal = it.app.shop.gate, it.app.shop.journal
        assert gate.invented_for("tia") == "2468"
        session = it.app.shop.fresh("m2", "short")
        session.do(c.Start("tia", "en", "sue"))
        at = it.clock.now()
        assert it.app.shop.may("short", c.Start("tia", "en")) is not None
        journal.append(session.id, [e.Event(at, c.Evidence(c.Channel.KIOSK), e.SessionCompleted())])
        assert it.app.shop.may("short", c.Start("tia", "en")) is None
        assert it.app.shop.practising().may("short", c.Start("tia", "en")) is None
        await it.touch("Window machine", "Tia")
        assert it.state.worker == "tia"


async def test_two_supervisors_are_asked_which_one(tmp_path: Path):
    async with kiosk(tmp_path, site=replace(CREW, people=(*CREW.people, SVEN))) as it:
        await it.touch("Window machine", "Tia", "Sven")
        await it.press(*"2468", "enter")
        assert facts(it, e.SessionStarted)[0].supervisor == "sven"


# A PIN at the start, and what one may walk.


async def test_a_site_may_ask_everybody_for_a_pin_at_the_start(tmp_path: Path):
    site = replace(CREW, pins=Pins(at_start=True, invented="2468"))
    async with kiosk(tmp_path, site=site) as it:
        await it.touch("Window machine", "Ana")
        assert isinstance(it.app.screen, PinScreen)
        await it.press(*"2468", "enter")
        assert facts(it, e.SessionStarted)[0].pin
        await it.press("h")
        await it.touch("Rita")
        assert "Rita" in it.words()
        assert "para seguir" in it.words()
        await it.press(*"2468", "enter")
        assert facts(it, e.HandedOver)[0].pin
        assert shop_facts(it) == [
            PinGiven("ana", Purpose.BEGIN),
            PinGiven("rita", Purpose.TAKE_OVER),
        ]
        assert_vouched(it)


async def test_somebody_who_does_not_walk_a_procedure_is_told_so(tmp_path: Path):
    people = (ANA, replace(RITA, walks=("another",)))
    async with kiosk(tmp_path, site=replace(SITE, people=people)) as it:
        await it.touch("Window machine", "Rita")
        assert isinstance(it.app.screen, BoardScreen)
        assert "Not one of the procedures" in it.words()
        assert it.app.shop.journal.sessions() == []


# Practice on a real site.


async def test_practice_on_a_real_site_is_marked_and_the_board_returns_to_work(tmp_path: Path):
    site = replace(CREW, practice=False, pins=Pins())
    async with kiosk(tmp_path, site=site) as it:
        assert not it.seen().split("\n")[0].rstrip().endswith("practice")
        await it.press("k")
        await it.touch("practise")
        assert it.seen().split("\n")[0].rstrip().endswith("practice")
        await it.begin()
        assert it.state.mode is Mode.RUNNING
        assert facts(it, e.SessionStarted)[0].practice
        await it.press("escape")
        await it.press("q")
        assert isinstance(it.app.screen, BoardScreen)
        assert not it.app.screen.for_a_while
        assert it.app.shop.cards()[0].unfinished is None
        assert it.app.shop.practising().cards()[0].unfinished is not None


async def test_leaving_the_practice_board_shows_the_work_again(tmp_path: Path):
    async with kiosk(tmp_path, site=replace(CREW, practice=False, pins=Pins())) as it:
        await it.press("k")
        await it.touch("practise", "back to work")
        assert not it.app.screen.for_a_while
        assert it.app.shop.journal.sessions() == []


# Setting a PIN.


async def test_a_supervisor_vouches_for_a_first_pin(tmp_path: Path):
    site = replace(CREW, practice=False, pins=Pins())
    async with kiosk(tmp_path, site=site) as it:
        gate = it.app.shop.gate
        gate.put("sue", "905173", "command line", c.Evidence(c.Channel.KEY))
        await it.press("k")
        await it.touch("set a PIN", "Ana")
        assert "Sue" in it.words()
        await it.press(*"905173", "enter")
        assert isinstance(it.app.screen, NewPinScreen)
        await it.press(*"1234", "enter")
        assert "too easy" in it.words()
        await it.press(*"4802", "enter")
        await it.press(*"4803", "enter")
        assert "differ" in it.words()
        await it.press(*"4802", "enter", *"4802", "enter")
        assert isinstance(it.app.screen, BoardScreen)
        assert "Ana has a new PIN" in it.words()
        assert shop_facts(it)[-1] == PinSet("ana", "sue")
        assert gate.give("ana", "4802", Purpose.BEGIN, c.Evidence(c.Channel.KEY)) is None


async def test_a_worker_changes_their_own_pin_with_the_old_one(tmp_path: Path):
    async with kiosk(tmp_path, site=replace(CREW, pins=Pins())) as it:
        gate = it.app.shop.gate
        gate.put("ana", "905173", "sue", c.Evidence(c.Channel.KEY))
        await it.press("k")
        await it.touch("Ana", "with the old PIN")
        await it.press(*"905173", "enter", *"4802", "enter", *"4802", "enter")
        assert shop_facts(it)[-1] == PinSet("ana", "ana")


async def test_without_any_supervisors_pin_nobody_sets_one_on_the_screen(tmp_path: Path):
    async with kiosk(tmp_path, site=replace(CREW, pins=Pins())) as it:
        await it.press("k")
        await it.touch("Ana")
        assert "kiosk people pin sue" in it.words()
        await it.press(*"2468", "enter")
        assert isinstance(it.app.screen, PinScreen)
        assert shop_facts(it) == []


# What other screens ask with.


async def test_what_waits_for_a_pin_is_done_once_and_only_then(tmp_path: Path):
    done: list[str] = []
    async with kiosk(tmp_path, site=CREW) as it:
        ask_pin(it.app, SUE, Purpose.SIGN, lambda: done.append("signed"))
        await it.settle()
        assert "invented shop: PIN 2468" in it.words()
        await it.press(*"1111", "enter")
        assert done == []
        await it.press(*"2468", "enter")
        await it.quick_press("enter")
        assert done == ["signed"]
        assert isinstance(it.app.screen, BoardScreen)
        words = it.app.screen.words
        ask_supervisor(it.app, words, Purpose.REVIEW, lambda person: done.append(person.id))
        await it.settle()
        await it.press(*"2468", "enter")
        assert done == ["signed", "sue"]


async def test_where_nobody_is_supervisor_that_is_said(tmp_path: Path):
    async with kiosk(tmp_path, clock=StillClock(), site=SITE) as it:
        ask_supervisor(it.app, it.app.screen.words, Purpose.REVIEW, lambda _: None)
        await it.settle()
        assert "No supervisor is on the list" in it.words()
