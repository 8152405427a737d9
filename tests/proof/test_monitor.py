"""The judge finds each broken rule in a hand-altered journal, and nothing in a sound one."""

from __future__ import annotations

import subprocess
import sys
from collections.abc import Callable, Sequence
from dataclasses import replace
from pathlib import Path

import pytest

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.journal.store import Journal
from kiosk.procedure.plan import Wait
from kiosk.proof.audit import audit
from tests.plans import hold, plan, step
from tests.proof.plans import every_kind
from tests.proof.walks import LONG, TOUCH, Walk

PLAN = every_kind()
LEAK = "leak"


def rules(events: Sequence[e.Event]) -> list[str]:
    return [one.rule for one in audit(PLAN, events)]


def place(events: Sequence[e.Event], kind: type, step_id: str = "") -> int:
    """The place of the first fact of a kind, of a step when one is named."""
    return next(
        n
        for n, one in enumerate(events)
        if isinstance(one.fact, kind) and step_id in ("", getattr(one.fact, "step", ""))
    )


def without(events: Sequence[e.Event], kind: type, step_id: str = "") -> list[e.Event]:
    at = place(events, kind, step_id)
    return [*events[:at], *events[at + 1 :]]


def altered(events: Sequence[e.Event], kind: type, step_id: str = "", **fields: object):
    at = place(events, kind, step_id)
    changed = replace(events[at], fact=replace(events[at].fact, **fields))
    return [*events[:at], changed, *events[at + 1 :]]


def moved(events: Sequence[e.Event], kind: type, step_id: str, at: c.Instant) -> list[e.Event]:
    """The same events, the first of a kind and all that followed from its act at another time."""
    first = events[place(events, kind, step_id)].at
    return [replace(one, at=at) if one.at == first else one for one in events]


def walked() -> list[e.Event]:
    return Walk(PLAN).to_the_end().events


def test_a_straight_walk_breaks_no_rule():
    assert audit(PLAN, walked()) == []


def test_a_walk_by_touch_breaks_no_rule():
    walk = Walk(PLAN).to("mix")
    walk.do(c.Read(PLAN.step("mix").task.judged_by.least), TOUCH)
    assert audit(PLAN, walk.events) == []


def test_a_walk_with_everything_in_it_breaks_no_rule():
    walk = Walk(PLAN).to("flush").do(c.Confirm()).do(c.No()).do(c.Back())
    walk.to("soak").do(c.Pause()).do(c.HandOver("cem", "es")).do(c.Resume())
    walk.to("open").do(c.CallProblem()).do(c.NameReason(LEAK)).do(c.Resume()).to("open")
    walk.do(c.HandOver("dee", "ko")).to("look").do(c.Pause())
    walk.boot = "b1"
    walk.do(c.Restart()).do(c.End()).do(c.No()).do(c.Resume()).to("power")
    walk.do(c.GivePhrase()).do(c.No()).do(c.Back()).to_the_end()
    assert audit(PLAN, walk.events) == []


def test_a_session_that_is_still_open_is_judged_as_far_as_it_came():
    events = walked()
    for length in range(0, len(events)):
        whole_act = length == 0 or events[length - 1].at != events[length].at
        if whole_act:
            assert audit(PLAN, events[:length]) == []


def test_a_session_read_back_from_the_disk_breaks_no_rule(tmp_path: Path):
    journal = Journal(tmp_path)
    journal.append("s", walked())
    assert audit(PLAN, journal.events("s")) == []


def test_another_plan_is_itself_a_violation():
    assert "of-this-plan" in rules(altered(walked(), e.SessionStarted, digest="other"))


@pytest.mark.parametrize(
    ("rule", "alter"),
    [
        ("hold-confirmed", lambda it: without(it, e.PhraseGiven, "isolate")),
        ("hold-confirmed", lambda it: without(it, e.ReadBackAgreed, "isolate")),
        ("hold-confirmed", lambda it: altered(it, e.ReadBackAgreed, "isolate", next="witness")),
        ("hold-confirmed", lambda it: altered(it, e.StepConfirmed, "power", witness="ana")),
        ("hold-confirmed", lambda it: altered(it, e.StepConfirmed, "power", witness="")),
        ("another-person", lambda it: altered(it, e.SessionStarted, supervisor="ana")),
        ("strength", lambda it: altered(it, e.StepConfirmed, "power", strength="any")),
        ("as-planned", lambda it: altered(it, e.StepConfirmed, "open", ends=())),
        ("as-planned", lambda it: altered(it, e.StepConfirmed, "look", establishes=("isolated",))),
        ("required-in-force", lambda it: without(it, e.StepConfirmed, "isolate")),
        ("in-bounds", lambda it: altered(it, e.StepConfirmed, "mix", answer="9")),
        ("in-bounds", lambda it: altered(it, e.StepConfirmed, "mix", answer="NaN")),
        ("in-bounds", lambda it: altered(it, e.StepConfirmed, "mix", unit="°F")),
        ("answered", lambda it: altered(it, e.StepConfirmed, "mix", answer="cold")),
        ("in-bounds", lambda it: altered(it, e.StepConfirmed, "count", answer="3")),
        ("two-answers", lambda it: without(it, e.ReadingGiven, "mix")),
        ("two-answers", lambda it: altered(it, e.ReadingGiven, "mix", value="4")),
        ("answered", lambda it: altered(it, e.StepConfirmed, "look", answer="fine")),
        ("passes", lambda it: without(it, e.PassDone, "flush")),
        ("passes", lambda it: altered(it, e.PassDone, "flush", passes=7)),
        ("entered", lambda it: without(it, e.StepEntered, "open")),
        ("entered", lambda it: altered(it, e.StepConfirmed, "open", step="look")),
        ("in-order", lambda it: altered(it, e.StepEntered, "flush", step="soak", goal="soak")),
        ("in-order", lambda it: it[: place(it, e.StepEntered, "chill")] + it[-1:]),
        ("after-the-end", lambda it: [*it, it[-2]]),
        ("one-beginning", lambda it: it[1:]),
        ("one-beginning", lambda it: [it[0], *it]),
        ("of-this-plan", lambda it: altered(it, e.StepEntered, "flush", step="fly")),
    ],
)
def test_an_altered_walk_breaks_its_rule(
    rule: str, alter: Callable[[list[e.Event]], list[e.Event]]
):
    assert rule in rules(alter(walked()))


def test_a_hold_asked_and_agreed_in_one_utterance_is_found():
    events = walked()
    at = events[place(events, e.PhraseGiven, "isolate")].at
    assert "two-answers" in rules(moved(events, e.ReadBackAgreed, "isolate", at))
    simple = plan(hold("isolate", "isolated"), step("open", requires=["isolated"]))
    told = Walk(simple).on().on().on().events
    assert audit(simple, told) == []
    at = told[place(told, e.PhraseGiven)].at
    broken = audit(simple, moved(told, e.StepConfirmed, "isolate", at))
    assert [one.rule for one in broken] == ["two-answers"]


def test_a_wait_counts_its_seconds_by_the_monotonic_clock_of_one_boot():
    wait = PLAN.step("soak").task
    assert isinstance(wait, Wait)
    events = walked()
    entered = events[place(events, e.StepEntered, "soak")].at
    early = c.Instant(entered.utc + LONG, entered.mono + wait.seconds - 1, entered.boot)
    assert rules(moved(events, e.StepConfirmed, "soak", early)) == ["waited"]
    just = replace(early, mono=entered.mono + wait.seconds)
    assert rules(moved(events, e.StepConfirmed, "soak", just)) == []


def test_another_boot_counts_nothing_towards_a_wait():
    walk = Walk(PLAN).to("soak")
    walk.boot, walk.now = "b1", walk.now + LONG
    walk.do(c.Restart()).do(c.Resume()).to("soak")
    entered = walk.events[-1].at
    walk.on()
    assert rules(walk.events) == []
    early = replace(entered, mono=entered.mono + 1)
    assert rules(moved(walk.events, e.StepConfirmed, "soak", early)) == ["waited"]


@pytest.mark.parametrize("act", [c.Pause(), c.CallProblem(), c.Restart()])
def test_an_absence_without_its_lapse_is_found(act: c.Act):
    walk = Walk(PLAN).to("open").do(act)
    assert rules(without(walk.events, e.ConditionsLapsed)) == []
    walk.to("isolate")
    assert rules(walk.events) == []
    straight = replace(walk.events[-1], fact=e.StepEntered("open", "open"))
    on = [*without(walk.events[:-1], e.ConditionsLapsed), straight]
    assert rules(on) == ["lapsed"]


def test_a_hand_over_without_its_lapse_is_found():
    walk = Walk(PLAN).to("open").do(c.HandOver("cem", "es"))
    assert walk.state.step == "isolate"
    assert rules(walk.events) == []
    assert rules(without(walk.events, e.ConditionsLapsed)) == ["lapsed"]


def test_a_step_back_without_its_lapse_is_found():
    walk = Walk(PLAN).to("open").do(c.Back())
    assert rules(walk.events) == []
    assert rules(without(walk.events, e.ConditionsLapsed)) == ["lapsed"]


def test_running_on_in_another_boot_without_a_restart_is_found():
    events = Walk(PLAN).to("flush").events
    again = e.Event(c.Instant(9e3, 9e3, "b1"), TOUCH, e.PromptRepeated("flush"))
    assert rules([*events, again]) == ["entered"]


def test_a_hazard_that_is_let_go_without_a_step_is_found():
    events = Walk(PLAN).to("soak").events
    gone = e.ConditionsLapsed(("chemical inside",), "magic")
    at = c.Instant(9e3, 9e3, "b0")
    assert rules([*events, e.Event(at, TOUCH, gone)]) == ["hazards-stay"]


def test_a_problem_that_stops_the_machine_is_not_run_on_after():
    walk = Walk(PLAN).to("soak").do(c.CallProblem()).do(c.NameReason("hurt"))
    at = c.Instant(9e3, 9e3, "b0")
    resumed = [e.SessionResumed("hurt"), e.StepEntered("soak", "soak")]
    assert "stopped" in rules([*walk.events, *(e.Event(at, TOUCH, one) for one in resumed)])


def test_a_problem_without_its_reason_is_not_run_on_after():
    walk = Walk(PLAN).to("soak").do(c.CallProblem())
    at = c.Instant(9e3, 9e3, "b0")
    resumed = [e.SessionResumed(""), e.StepEntered("wash hands", "soak")]
    assert "resumed" in rules([*walk.events, *(e.Event(at, TOUCH, one) for one in resumed)])


def test_an_end_names_what_is_left_unsafe_and_is_asked_twice():
    walk = Walk(PLAN).to("soak").do(c.Pause()).do(c.End()).do(c.Yes())
    assert rules(walk.events) == []
    assert rules(altered(walk.events, e.SessionAborted, unsafe=("guarded",))) == ["warned"]
    assert rules(altered(walk.events, e.SessionAborted, unsafe=("chemical inside",))) == ["warned"]
    assert rules(without(walk.events, e.EndAsked)) == ["asked-before-ending"]


@pytest.mark.parametrize("kind", [e.PhraseGiven, e.ReadBackAgreed, e.StepConfirmed])
def test_a_hold_answered_by_a_word_of_the_workers_own_is_found(kind: type):
    own = c.Evidence(c.Channel.VOICE, "yes", 0.4, c.OWN_WORDS)
    events = walked()
    at = events[place(events, kind, "isolate")].at
    assert "own-words" in rules([replace(x, by=own) if x.at == at else x for x in events])
    by_touch = replace(own, channel=c.Channel.TOUCH)
    assert rules([replace(x, by=by_touch) if x.at == at else x for x in events]) == []


def test_a_violation_names_its_event():
    events = altered(walked(), e.StepConfirmed, "mix", answer="9")
    wanted = place(events, e.StepConfirmed, "mix") + 1
    assert {one.seq for one in audit(PLAN, events)} == {wanted}
    assert "outside 2 to 5" in " ".join(str(one) for one in audit(PLAN, events))


def test_the_judge_never_loads_the_rules():
    probe = (
        "import sys, kiosk.proof.audit; print(*(n for n in sys.modules if n.startswith('kiosk')))"
    )
    run = subprocess.run([sys.executable, "-c", probe], capture_output=True, text=True, check=True)
    loaded = {name for name in run.stdout.split() if name.startswith("kiosk.engine.")}
    assert loaded == {"kiosk.engine.commands", "kiosk.engine.events"}
