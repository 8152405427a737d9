"""Who may do what: the one function that says no to a person."""

from __future__ import annotations

import pytest

from kiosk.engine import commands as c
from kiosk.journal.store import Journal
from kiosk.people.may import ASKED_FOR, Crew, Review, SetPin, SignOff, Wish, refusal
from kiosk.procedure.site import Person, Role
from kiosk.session import Session
from tests.plans import EVERY_KIND, TOUCH, plan, step
from tests.properties.machine_clock import FakeClock

ANA = Person(id="ana", name="Ana", language="en")
BEN = Person(id="ben", name="Ben", language="en", walks=("open",))
TIA = Person(id="tia", name="Tia", language="en", role=Role.TRAINEE)
SUE = Person(id="sue", name="Sue", language="en", role=Role.SUPERVISOR)
PEOPLE = {one.id: one for one in (ANA, BEN, TIA, SUE)}
CREW = Crew(PEOPLE, frozenset({("tia", "close")}))
CAREFUL = Crew(PEOPLE, frozenset({("tia", "close")}), pin_at_start=True)


def why(wish: Wish, crew: Crew = CREW, procedure: str = "close") -> str:
    found = refusal(crew, procedure, wish)
    return "" if found is None else found.why


@pytest.mark.parametrize(
    ("wish", "answer"),
    [
        (c.Start("ana", "en"), ""),
        (c.HandOver("ana", "en"), ""),
        (c.Start("zoe", "en"), "not-on-list"),
        (c.Start("ben", "en"), "not-your-walk"),
        (c.HandOver("ben", "en"), "not-your-walk"),
        (c.Start("tia", "en"), "supervisor-first"),
        (c.HandOver("tia", "en"), "supervisor-first"),
        (c.Start("tia", "en", supervisor="sue"), ""),
        (c.Start("tia", "en", supervisor="ana"), "supervisors-only"),
        (c.Start("tia", "en", supervisor="zoe"), "not-on-list"),
        (c.Start("tia", "en", supervisor="tia"), "same-person"),
        (c.Start("sue", "en", supervisor="sue"), "same-person"),
        (c.Witness("ana"), ""),
        (c.Witness("sue"), ""),
        (c.Witness("tia"), "trainee-no-witness"),
        (c.Witness("ben"), "not-your-walk"),
        (c.Witness(""), "not-on-list"),
        (SignOff("sue", ("ana", "tia")), ""),
        (SignOff("sue", ("ana", "sue")), "own-work"),
        (SignOff("ana", ("tia",)), "supervisors-only"),
        (Review("sue"), ""),
        (Review("ana"), "supervisors-only"),
        (SetPin("ana", "ana"), ""),
        (SetPin("ana", "sue"), ""),
        (SetPin("ana", "ben"), "supervisors-only"),
        (SetPin("zoe", "zoe"), "not-on-list"),
    ],
)
def test_each_wish_has_its_answer(wish: Wish, answer: str):
    assert why(wish) == answer


def test_a_pin_at_the_start_is_asked_of_everybody_before_the_supervisor():
    assert why(c.Start("ana", "en"), CAREFUL) == "pin-first"
    assert why(c.Start("ana", "en", pin=True), CAREFUL) == ""
    assert why(c.Start("tia", "en"), CAREFUL) == "pin-first"
    assert why(c.Start("tia", "en", pin=True), CAREFUL) == "supervisor-first"
    assert why(c.Start("tia", "en", "sue", pin=True), CAREFUL) == ""
    assert why(c.Start("ben", "en"), CAREFUL) == "not-your-walk"
    assert {"pin-first", "supervisor-first"} == ASKED_FOR


def test_a_trainee_who_has_learnt_one_procedure_still_has_the_other_to_learn():
    crew = Crew(PEOPLE, frozenset({("tia", "open")}))
    assert why(c.Start("tia", "en"), crew, "close") == ""
    assert why(c.Start("tia", "en"), crew, "open") == "supervisor-first"


@pytest.mark.parametrize(
    "act", [c.Confirm(), c.Yes(), c.No(), c.CallProblem(), c.Pause(), c.End(), c.Restart()]
)
def test_nobody_is_asked_who_they_are_for_an_answer_or_a_way_out(act: c.Act):
    """Stopping, calling a problem and ending are never held up by a PIN."""
    assert refusal(CAREFUL, "close", act) is None


def test_a_session_asks_before_anything_is_written(tmp_path):
    journal = Journal(tmp_path)
    session = Session.fresh(
        EVERY_KIND, journal, FakeClock(), lambda procedure, act: refusal(CREW, procedure, act)
    )
    outcome = session.do(c.Start("zoe", "en"), TOUCH)
    assert outcome.refusal == c.Refusal("not-on-list")
    assert list(journal.rows()) == []
    assert session.do(c.Start("ana", "en"), TOUCH).refusal is None
    assert session.do(c.HandOver("zoe", "en"), TOUCH).refusal == c.Refusal("not-on-list")
    assert session.state.worker == "ana"
    journal.close()


def test_what_the_engine_refuses_is_refused_whatever_people_may_do(tmp_path):
    journal = Journal(tmp_path)
    session = Session.fresh(plan(step("one")), journal, FakeClock(), lambda *_: None)
    session.do(c.Start("ana", "en"), TOUCH)
    assert session.do(c.Witness("sue"), TOUCH).refusal == c.Refusal("not-now")
    assert session.do(c.HandOver("ana", "en"), TOUCH).refusal == c.Refusal("same-person")
    assert session.do(c.HandOver("ben", "en", "ben"), TOUCH).refusal == c.Refusal("same-person")
    journal.close()
    fresh = Session.fresh(plan(step("one")), Journal(tmp_path), FakeClock(), lambda *_: None)
    assert fresh.do(c.Start("ana", "en", "ana"), TOUCH).refusal == c.Refusal("same-person")
