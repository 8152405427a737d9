"""What steps require without saying so."""

from __future__ import annotations

from kiosk.procedure.carry import carry
from kiosk.procedure.model import Condition, Strength
from kiosk.procedure.plan import Do, Hold, Step

CONDITIONS = {
    "clean": Condition(name={}, lapses=True),
    "isolated": Condition(name={}, lapses=True),
    "dead": Condition(name={}, lapses=True, needs=("isolated",)),
    "counted": Condition(name={}),
    "open": Condition(name={}, present={}),
}


def do(name: str, **more: tuple[str, ...]) -> tuple[Step, tuple[str, ...]]:
    waived = more.pop("regardless", ())
    task = Hold({}, Strength.PHRASE, None) if name.startswith("hold") else Do()
    return Step(id=name, phase="p", say={}, task=task, **more), waived


def requires(*steps: tuple[Step, tuple[str, ...]]) -> list[tuple[str, ...]]:
    return [step.requires for step in carry(steps, CONDITIONS)]


def test_what_lapses_is_required_from_its_beginning_to_its_end():
    steps = [
        do("a"),
        do("wash", establishes=("clean",)),
        do("b"),
        do("c", ends=("clean",)),
        do("d"),
    ]
    assert requires(*steps) == [(), (), ("clean",), (), ()]


def test_what_does_not_lapse_is_not_carried():
    assert requires(do("count", establishes=("counted",)), do("b")) == [(), ()]


def test_a_danger_is_never_carried():
    assert requires(do("hold open", establishes=("open",)), do("b")) == [(), ()]


def test_all_that_a_hold_establishes_lapses():
    steps = [do("hold", establishes=("counted",)), do("b")]
    assert requires(*steps) == [(), ("counted",)]


def test_a_step_may_waive_it():
    steps = [do("wash", establishes=("clean",)), do("b", regardless=("clean",)), do("c")]
    assert requires(*steps) == [(), (), ("clean",)]


def test_what_the_file_says_comes_first_and_is_not_said_twice():
    off, wash = do("off", establishes=("isolated",)), do("wash", establishes=("clean",))
    (_, _, last) = carry([off, wash, do("b", requires=("clean",))], CONDITIONS)
    assert last.requires == ("clean", "isolated")
    assert (last.declared, last.carried) == (("clean",), ("isolated",))


def test_a_step_that_is_asked_again_requires_only_what_it_says_and_what_is_needed():
    steps = [
        do("wash", establishes=("clean",)),
        do("hold off", establishes=("isolated",)),
        do("hold try", establishes=("dead",)),
        do("reach in"),
    ]
    assert requires(*steps) == [(), (), ("isolated",), ("clean", "isolated", "dead")]


def test_one_step_can_give_what_it_needs_itself():
    assert requires(do("hold both", establishes=("isolated", "dead"))) == [()]
