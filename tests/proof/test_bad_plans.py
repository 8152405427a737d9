"""Unsafe plans, what the author is told of them, and the path that is printed."""

from __future__ import annotations

from kiosk.procedure.plan import Plan
from kiosk.proof.must_hold import must_hold
from kiosk.proof.prove import Sound, prove, shape
from kiosk.proof.search import Counterexample, search
from kiosk.proof.story import as_fault, story
from tests.plans import hold, plan, step
from tests.proof.plans import chain, every_kind, measure


def faults(bad: Plan) -> list[str]:
    found = prove(bad)
    assert isinstance(found, list), found
    return [str(one) for one in found]


def warnings(made: Plan) -> list[str]:
    found = must_hold(made)
    assert found.faults == ()
    return [str(one) for one in found.warnings]


def test_sound_plans_have_no_fault():
    for made in (every_kind(), chain(20)):
        assert isinstance(prove(made), Sound)


def test_a_condition_that_another_step_has_ended_names_both_lines():
    bad = plan(
        hold("isolate", "isolated"),
        hold("restore", "powered", ends=["isolated"]),
        step("reach in", requires=["isolated"]),
    )
    assert faults(bad) == [
        "made.yaml:30: reach in.requires: it requires 'isolated', which 'restore' (line 20) has "
        "ended, and no step between the two establishes it again. To mend: move it before line 20, "
        "or establish 'isolated' again before it."
    ]


def test_a_condition_that_is_established_again_is_in_force():
    good = plan(
        hold("isolate", "isolated"),
        hold("restore", "powered", ends=["isolated"]),
        hold("isolate again", "isolated", ends=["powered"]),
        step("reach in", requires=["isolated"]),
        step("taste", requires=["isolated"]),
    )
    assert must_hold(good).faults == ()
    assert isinstance(prove(good), Sound)


def test_a_condition_that_no_step_establishes():
    bad = plan(step("tools"), step("reach in", requires=["isolated"]))
    assert faults(bad) == [
        "made.yaml:20: reach in.requires: it requires 'isolated', which no step before it "
        "establishes. To mend: add a step before it that establishes 'isolated', or correct the "
        "name."
    ]


def test_a_condition_that_comes_too_late_names_the_step_to_move():
    bad = plan(step("reach in", requires=["isolated"]), hold("isolate", "isolated"))
    assert faults(bad) == [
        "made.yaml:10: reach in.requires: it requires 'isolated', which no step before it "
        "establishes; 'isolate' (line 20) does so only then. To mend: move 'isolate' before it."
    ]


def test_a_hold_cannot_require_what_it_establishes():
    bad = plan(hold("isolate", "isolated", requires=["isolated"]))
    assert "only then" in faults(bad)[0]


def test_a_step_cannot_give_and_take_the_same():
    bad = plan(step("turn", establishes=["off"], ends=["off"]))
    assert faults(bad) == [
        "made.yaml:10: turn.ends: the step both establishes and ends 'off'. To mend: keep one of "
        "the two, or make two steps."
    ]


def test_a_hazard_cannot_be_required():
    bad = plan(
        step("pour", establishes=["chemical"]),
        step("circulate", requires=["chemical"]),
        hazards=["chemical"],
    )
    assert (
        "made.yaml:20: circulate.requires: it requires 'chemical', which is a hazard"
        in (faults(bad)[0])
    )


ROUND = plan(
    step("scrub", establishes=["clean"]),
    hold("isolate", "isolated", requires=["clean"]),
    step("rinse", requires=["isolated"], establishes=["clean"]),
    step("reach in", requires=["clean"]),
    lapses=["clean"],
)
"""After an absence `clean` needs `rinse`, which needs `isolate`, which needs `clean` of `rinse`."""


def test_a_way_back_that_goes_round_in_a_circle():
    assert faults(ROUND) == [
        "made.yaml:40: reach in.requires: after an absence it needs 'isolated' again, and no way "
        "leads there: 'rinse', 'isolate' each require what another establishes. To mend: let a "
        "step before it establish 'isolated' that requires nothing which is lost by then, and that "
        "ends nothing which this step requires."
    ]


def test_the_search_finds_the_same_dead_end_and_tells_its_story():
    found = search(ROUND)
    assert isinstance(found, Counterexample)
    assert story(ROUND, found) == "\n".join(
        [
            "made, version 1: a rule is broken, in 6 acts.",
            "  1. The worker begins the session.",
            "     'scrub' (made.yaml:10) is asked: Do scrub.",
            "  2. The worker says this is done.",
            "     'scrub' is confirmed; in force now: clean.",
            "     'isolate' (made.yaml:20) is asked: Do isolate.",
            "  3. The worker gives the phrase of the hold.",
            "     'isolate' (made.yaml:20) waits for a yes to what was heard: Do isolate.",
            "  4. The worker says yes.",
            "     'isolate' is confirmed; in force now: isolated.",
            "     'rinse' (made.yaml:30) is asked: Do rinse.",
            "  5. The worker says this is done.",
            "     'rinse' is confirmed; in force now: clean.",
            "     'reach in' (made.yaml:40) is asked: Do reach in.",
            "  6. The worker calls a problem.",
            "     Let go (problem): clean, isolated.",
            "     The session is held: problem.",
            "Broken there (can-complete): from here 'reach in' cannot be passed whatever the worker"
            " does.",
            "In made.yaml, line 40. To mend: give 'reach in' a way to 'clean': an earlier step that"
            " establishes it, whose own requirements can be met again.",
        ]
    )


def test_two_steps_that_end_what_each_other_establishes():
    bad = plan(
        step("ground", establishes=["level"]),
        hold("raise", "up"),
        hold("lock", "locked", requires=["level"], ends=["up"]),
        hold("raise again", "up", ends=["locked"]),
        hold("lock again", "locked", ends=["up"]),
        step("climb", requires=["locked"]),
        step("reach", requires=["up", "locked"]),
    )
    told = faults(bad)
    assert len(told) == 1
    assert "reach.requires: it requires 'up', which 'lock again' (line 50) has ended" in told[0]


def test_a_livelock_that_only_an_absence_uncovers():
    """On the straight way both hold; after an absence each of the two takes the other away."""
    bad = plan(
        hold("first", "one"),
        hold("second", "two", ends=["one"]),
        step("mend", establishes=["one"], requires=["two"], ends=["two"]),
        step("third", establishes=["two"], requires=["one"]),
        step("reach", requires=["one", "two"]),
    )
    told = faults(bad)
    assert len(told) == 1
    assert told[0].startswith("made.yaml:50: reach.requires: ")
    found = search(bad)
    assert isinstance(found, Counterexample)
    assert found.rule == "can-complete"
    assert as_fault(bad, found).line == 50


def test_a_session_in_which_no_step_can_be_entered():
    bad = plan(step("reach in", requires=["isolated"]))
    found = search(bad)
    assert isinstance(found, Counterexample)
    assert found.rule == "can-complete"


def test_a_reading_that_can_never_be_right():
    bad = plan(step("chill", measure(10, 20, (2, 5))), step("serve"))
    told = faults(bad)
    assert "from here 'chill' cannot be passed whatever the worker does" in told[0]


def test_a_hold_that_holds_nothing_back_is_pointed_out():
    assert warnings(plan(hold("isolate", "isolated"), step("reach in"))) == [
        "made.yaml:10: isolate.establishes: no step requires 'isolated', so this hold holds "
        "nothing back. To mend: let the steps that are dangerous without it require 'isolated'."
    ]


def test_power_that_comes_back_with_a_plain_tap_is_pointed_out():
    restored = step("restore", ends=["isolated"])
    found = warnings(
        plan(hold("isolate", "isolated"), step("reach in", requires=["isolated"]), restored)
    )
    assert found == [
        "made.yaml:30: restore.ends: it ends 'isolated', which a hold established, and nothing "
        "guards that. To mend: make the step a hold, or let it require what a hold has "
        "established."
    ]


def test_power_that_comes_back_behind_a_guard_is_not():
    good = plan(
        hold("isolate", "isolated"),
        step("reach in", requires=["isolated"]),
        hold("close", "guarded"),
        step("restore", requires=["guarded"], ends=["isolated"]),
    )
    assert warnings(good) == []


def test_words_and_numbers_do_not_make_a_shape_but_rules_do():
    one = plan(step("chill", measure()), hold("isolate", "isolated"))
    two = plan(step("cool", measure(0, 30, (1, 4))), hold("unplug", "isolated"))
    assert shape(one) == shape(two)
    assert shape(one) != shape(plan(step("chill", measure()), hold("i", "isolated", verify=True)))
    assert shape(one) != shape(plan(step("chill", measure(2, 5)), hold("isolate", "isolated")))
    assert shape(one) != shape(
        plan(step("chill", measure()), hold("isolate", "isolated"), hazards=["isolated"])
    )


def test_a_known_shape_is_not_searched_again():
    known = {}
    first, second = prove(every_kind(), known=known), prove(every_kind(), known=known)
    assert isinstance(first, Sound)
    assert isinstance(second, Sound)
    assert first.proof is second.proof
    assert list(known) == [shape(every_kind())]
