"""What the crew does next, told by the session's state alone."""

from __future__ import annotations

from typing import Any, cast

from kiosk.crew.plot import Answers, Beat, Plot, SaysWrongWord, Waits, is_scene
from kiosk.engine import commands as c
from kiosk.engine.state import Mode, Stage, State
from kiosk.procedure.plan import Wait
from kiosk.session import Session
from tests.plans import hold, plan, step

PLAN = plan(hold("isolate", "power isolated"), step("door"), step("soak", Wait(120.0)))
WRONG = Beat(SaysWrongWord(c.Confirm()), "note")
INCIDENTS = {("isolate", Stage.ASK): (WRONG,)}


def at(step_id: str, left: float | None = None, **fields: Any) -> Session:
    """A session that stands somewhere."""

    class Standing:
        plan = PLAN
        state = State(mode=Mode.RUNNING, step=step_id, goal=step_id, **fields)

        def seconds_left(self) -> float | None:
            return left

    return cast("Session", Standing())


def test_an_incident_happens_once_and_then_the_careful_answer_follows() -> None:
    plot = Plot(INCIDENTS)
    assert plot.left() == {"isolate"}
    assert [plot.next(at("isolate")) for _ in range(3)] == [
        WRONG, Beat(Answers(c.GivePhrase())), Beat(Answers(c.GivePhrase())),
    ]  # fmt: skip
    assert plot.left() == frozenset()


def test_a_wait_is_waited_for() -> None:
    assert Plot({}).next(at("soak", 30.0)) == Beat(Waits())
    assert Plot({}).next(at("soak", 0.0)) == Beat(Answers(c.Confirm()))


def test_a_held_session_goes_on_before_anything_else_happens() -> None:
    plot = Plot(INCIDENTS)
    held = at("isolate")
    held.state = State(mode=Mode.HELD, step="isolate", goal="isolate", because="restart")
    assert plot.next(held) == Beat(Answers(c.Resume()))
    assert plot.left() == {"isolate"}


def test_safety_holds_and_waits_are_heard_whole_and_plain_steps_are_not() -> None:
    assert is_scene(at("isolate"))
    assert is_scene(at("isolate", stage=Stage.READ_BACK))
    assert is_scene(at("soak", 30.0))
    assert not is_scene(at("door"))
