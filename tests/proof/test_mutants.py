"""Planted faults of the rules, each of which the search must find, by the shortest way there is."""

from __future__ import annotations

from collections.abc import Callable
from dataclasses import replace

import pytest

from kiosk.engine import commands as c
from kiosk.engine import decide as rules
from kiosk.engine import events as e
from kiosk.engine.state import Stage, State
from kiosk.procedure.plan import Plan
from kiosk.proof.search import Counterexample, Decide, Proof, search
from kiosk.proof.story import story
from tests.plans import hold, plan, step
from tests.proof.plans import INSPECT, REPEAT, WAIT, measure

LOCKOUT = plan(
    step("tools"),
    hold("isolate", "isolated"),
    step("reach in", requires=["isolated"]),
    hold("restore", "powered", ends=["isolated"]),
)

Alter = Callable[[Plan, State, c.Command, tuple[e.Event, ...]], tuple[e.Event, ...]]


def altered(alter: Alter) -> Decide:
    """The rules, with their outcome altered."""

    def decide(plan: Plan, state: State, command: c.Command) -> tuple[e.Event, ...] | c.Refusal:
        outcome = rules.decide(plan, state, command)
        return outcome if isinstance(outcome, c.Refusal) else alter(plan, state, command, outcome)

    return decide


def dropping(wanted: Callable[[e.Event], bool]) -> Decide:
    return altered(lambda plan, state, command, events: tuple(x for x in events if not wanted(x)))


def words(found: Proof | Counterexample) -> list[str]:
    assert isinstance(found, Counterexample), found
    return [move.words for move in found.path]


def test_the_plan_is_proven_with_the_rules_as_they_are():
    assert isinstance(search(LOCKOUT), Proof)


def test_no_guard_on_entry(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(rules, "way_in", lambda plan, goal, in_force: plan.step(goal))
    bad = plan(hold("isolate", "isolated"), step("reach in", requires=["isolated"]))
    found = search(bad)
    assert words(found) == [
        "begins the session",
        "gives the phrase of the hold",
        "says yes",
        "hands over to another person",
    ]
    assert isinstance(found, Counterexample)
    assert found.rule == "required-in-force"
    assert found.sentence == "running in 'reach in' while not in force: isolated"


def resuming_into(monkeypatch: pytest.MonkeyPatch, *entered: str) -> None:
    """Let a resumption keep its questions about a problem, and lose its guard."""
    guarded = rules._Ruling._resume

    def resume(ruling):
        facts = guarded(ruling)
        if isinstance(facts, c.Refusal):
            return facts
        goal = ruling.state.goal
        return [facts[0], *(e.StepEntered(goal, goal) for _ in entered)]

    monkeypatch.setattr(rules._Ruling, "_resume", resume)


def test_a_resumption_that_enters_no_step(monkeypatch: pytest.MonkeyPatch):
    resuming_into(monkeypatch)
    found = search(LOCKOUT)
    assert words(found) == ["begins the session", "pauses", "says continue"]
    assert isinstance(found, Counterexample)
    assert found.rule == "entered"


def test_no_guard_when_the_session_is_resumed(monkeypatch: pytest.MonkeyPatch):
    resuming_into(monkeypatch, "the step that was left")
    found = search(LOCKOUT)
    assert words(found) == [
        "begins the session",
        "says this is done",
        "gives the phrase of the hold",
        "says yes",
        "pauses",
        "says continue",
    ]
    assert isinstance(found, Counterexample)
    assert found.rule == "required-in-force"


def test_no_read_back(monkeypatch: pytest.MonkeyPatch):
    answer = rules._Ruling._answer_hold

    def at_once(ruling, step, hold):
        if ruling.state.stage is Stage.ASK and ruling.command.act == c.GivePhrase():
            return ruling._established(step, hold)
        return answer(ruling, step, hold)

    monkeypatch.setattr(rules._Ruling, "_answer_hold", at_once)
    found = search(LOCKOUT)
    assert words(found) == [
        "begins the session",
        "says this is done",
        "gives the phrase of the hold",
    ]
    assert isinstance(found, Counterexample)
    assert found.rule == "hold-confirmed"


def test_phrase_and_confirmation_in_one_act(monkeypatch: pytest.MonkeyPatch):
    answer = rules._Ruling._answer_hold

    def at_once(ruling, step, hold):
        if ruling.state.stage is Stage.ASK and ruling.command.act == c.GivePhrase():
            return [e.PhraseGiven(step.id), *ruling._established(step, hold)]
        return answer(ruling, step, hold)

    monkeypatch.setattr(rules._Ruling, "_answer_hold", at_once)
    found = search(LOCKOUT)
    assert len(words(found)) == 3
    assert isinstance(found, Counterexample)
    assert found.rule == "two-answers"


def test_a_release_that_is_not_journaled():
    def without_ends(plan, state, command, events):
        return tuple(
            replace(x, fact=replace(x.fact, ends=())) if isinstance(x.fact, e.StepConfirmed) else x
            for x in events
        )

    found = search(LOCKOUT, altered(without_ends))
    assert words(found) == [
        "begins the session",
        "says this is done",
        "gives the phrase of the hold",
        "says yes",
        "says this is done",
        "gives the phrase of the hold",
        "says yes",
    ]
    assert isinstance(found, Counterexample)
    assert found.rule == "as-planned"


def test_a_hold_that_survives_a_restart():
    def is_lapse(event: e.Event) -> bool:
        return isinstance(event.fact, e.ConditionsLapsed) and event.fact.because == "restart"

    found = search(LOCKOUT, dropping(is_lapse))
    assert words(found) == [
        "begins the session",
        "says this is done",
        "gives the phrase of the hold",
        "says yes",
        "sees the kiosk restart",
        "says continue",
    ]
    assert isinstance(found, Counterexample)
    assert found.rule == "lapsed"


def test_a_step_back_that_undoes_nothing(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(rules, "lapsed_by_going_back", lambda plan, to, goal, in_force: ())
    found = search(LOCKOUT)
    assert words(found) == [
        "begins the session",
        "says this is done",
        "gives the phrase of the hold",
        "says yes",
        "goes back",
    ]
    assert isinstance(found, Counterexample)
    assert found.rule == "lapsed"


def test_a_power_cut_that_nobody_notices(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(rules._Ruling, "_in_another_boot", lambda ruling: False)
    found = search(LOCKOUT)
    assert isinstance(found, Counterexample)
    assert found.rule == "entered"
    assert words(found)[-1].startswith("sees the power cut, and after it says this is done")


def test_a_restart_that_forgets_what_stops_the_machine():
    def is_kept(event: e.Event) -> bool:
        return isinstance(event.fact, e.ReasonNamed) and event.by.channel is c.Channel.KIOSK

    found = search(LOCKOUT, dropping(is_kept))
    assert words(found) == [
        "begins the session",
        "calls a problem",
        "names the reason 'hurt'",
        "sees the kiosk restart",
        "names the reason 'leak'",
        "says continue",
    ]
    assert isinstance(found, Counterexample)
    assert found.rule == "stopped"


def test_a_wait_that_is_never_timed(monkeypatch: pytest.MonkeyPatch):
    def at_once(ruling, step, wait):
        done = ruling.command.act == c.Confirm()
        return ruling._confirmed(step, "60", "s") if done else rules.NOT_NOW

    monkeypatch.setattr(rules._Ruling, "_answer_wait", at_once)
    found = search(plan(step("soak", WAIT), step("rinse")))
    assert words(found) == ["begins the session", "says this is done"]
    assert isinstance(found, Counterexample)
    assert found.rule == "waited"


@pytest.mark.parametrize("wanted", [e.PhraseGiven, e.ReadBackAgreed, e.StepConfirmed])
def test_a_hold_that_takes_a_word_of_the_workers_own(wanted: type):
    """The sound of one word is never enough, for the phrase, the read-back or the try-out."""

    def deaf_to_the_ear(plan: Plan, state: State, command: c.Command):
        if command.by.ear != c.OWN_WORDS:
            return rules.decide(plan, state, command)
        outcome = rules.decide(plan, state, replace(command, by=c.Evidence(c.Channel.VOICE)))
        if isinstance(outcome, c.Refusal) or not isinstance(outcome[0].fact, wanted):
            return rules.decide(plan, state, command)
        return tuple(replace(event, by=command.by) for event in outcome)

    guarded = plan(step("tools"), hold("isolate", "isolated", verify=True), step("reach in"))
    assert isinstance(search(guarded), Proof)
    found = search(guarded, deaf_to_the_ear)
    assert isinstance(found, Counterexample)
    assert found.rule == "own-words"
    assert words(found)[-1].endswith("of their own")


def test_one_person_for_two(monkeypatch: pytest.MonkeyPatch):
    from kiosk.procedure.model import Strength

    answer = rules._Ruling._answer_hold

    def anyone(ruling, step, hold):
        match ruling.state.stage, ruling.command.act:
            case Stage.WITNESS, c.Witness(person):
                return ruling._confirmed(step, strength=hold.strength, witness=person)
        return answer(ruling, step, hold)

    monkeypatch.setattr(rules._Ruling, "_answer_hold", anyone)
    found = search(plan(hold("restore", "powered", strength=Strength.SECOND_PERSON)))
    assert words(found) == [
        "begins the session",
        "gives the phrase of the hold",
        "says yes",
        "vouches for their own work",
    ]
    assert isinstance(found, Counterexample)
    assert found.sentence == "the hold 'restore' counts without a second person"


@pytest.mark.parametrize(
    ("forged", "told"),
    [
        (c.Witness(""), "has nobody vouch"),
        (c.Witness("another person"), "has the sound of a word vouch"),
    ],
)
def test_a_second_person_who_is_nobody(monkeypatch: pytest.MonkeyPatch, forged: c.Act, told: str):
    """An empty name is no person, and the sound of a worker's own word brings none."""
    from kiosk.procedure.model import Strength

    answer = rules._Ruling._answer_hold

    def believes(ruling, step, hold):
        if ruling.state.stage is Stage.WITNESS and ruling.command.act == forged:
            return ruling._confirmed(step, strength=hold.strength, witness=forged.person)
        return answer(ruling, step, hold)

    guarded = plan(hold("restore", "powered", strength=Strength.SECOND_PERSON))
    assert isinstance(search(guarded), Proof)
    monkeypatch.setattr(rules._Ruling, "_answer_hold", believes)
    found = search(guarded)
    assert words(found)[-1] == told
    assert isinstance(found, Counterexample)
    assert found.rule in ("hold-confirmed", "own-words")


def test_a_trainee_who_stands_by_themselves(monkeypatch: pytest.MonkeyPatch):
    def begins(ruling):
        outcome = idle(ruling)
        match ruling.command.act:
            case c.Start(worker, language, supervisor) if worker == supervisor:
                ruling.command = replace(ruling.command, act=c.Start(worker, language))
                first, *rest = idle(ruling)
                return [replace(first, supervisor=supervisor), *rest]
        return outcome

    idle = rules._Ruling._idle
    monkeypatch.setattr(rules._Ruling, "_idle", begins)
    found = search(plan(step("tools")))
    assert words(found) == ["begins it as their own supervisor"]
    assert isinstance(found, Counterexample)
    assert found.rule == "another-person"


def test_a_hand_over_to_ones_own_supervisor(monkeypatch: pytest.MonkeyPatch):
    def hand_over(ruling, act):
        over = e.HandedOver(act.worker, act.language, act.supervisor)
        return [*ruling._lapse("hand-over"), over]

    monkeypatch.setattr(rules._Ruling, "_hand_over", hand_over)
    found = search(plan(step("tools"), step("door")))
    assert isinstance(found, Counterexample)
    assert words(found)[-1] == "hands over to their own supervisor"
    assert found.rule == "another-person"


def test_a_number_that_nobody_judges(monkeypatch: pytest.MonkeyPatch):
    def unjudged(ruling, step, task, value):
        return ruling._confirmed(step, str(value), task.unit)

    monkeypatch.setattr(rules._Ruling, "_judged", unjudged)
    found = search(plan(step("chill", measure()), step("serve")))
    assert words(found) == ["begins the session", "reads 0 by touch"]
    assert isinstance(found, Counterexample)
    assert found.rule == "in-bounds"


def test_a_heard_number_that_is_not_read_back(monkeypatch: pytest.MonkeyPatch):
    answer = rules._Ruling._answer_number

    def at_once(ruling, step, task):
        if ruling.state.stage is Stage.ASK and isinstance(ruling.command.act, c.Read):
            return ruling._judged(step, task, ruling.command.act.value)
        return answer(ruling, step, task)

    monkeypatch.setattr(rules._Ruling, "_answer_number", at_once)
    found = search(plan(step("chill", measure()), step("serve")))
    assert words(found) == ["begins the session", "reads 2"]
    assert isinstance(found, Counterexample)
    assert found.rule == "two-answers"


def test_a_pass_too_few(monkeypatch: pytest.MonkeyPatch):
    def once(ruling, step, repeat):
        if ruling.state.stage is Stage.ASK:
            return [e.PassDone(step.id, ruling.state.passes + 1)]
        return ruling._confirmed(step, "1", "passes")

    monkeypatch.setattr(rules._Ruling, "_answer_repeat", once)
    found = search(plan(step("flush", REPEAT), step("rinse")))
    assert len(words(found)) == 3
    assert isinstance(found, Counterexample)
    assert found.rule == "passes"


def test_a_step_that_is_left_out(monkeypatch: pytest.MonkeyPatch):
    def skip(ruling, facts):
        return [*facts, e.SessionCompleted()]

    monkeypatch.setattr(rules._Ruling, "_then_go_on", skip)
    found = search(plan(step("look", INSPECT), step("rinse")))
    assert len(words(found)) == 2
    assert isinstance(found, Counterexample)
    assert found.sentence == "the session is complete and 'rinse' was never confirmed"


def test_a_session_that_cannot_be_left():
    def no_end(plan: Plan, state: State, command: c.Command) -> tuple[e.Event, ...] | c.Refusal:
        if isinstance(command.act, c.TakeOutOfService | c.End):
            return rules.NOT_NOW
        return rules.decide(plan, state, command)

    found = search(LOCKOUT, no_end)
    assert isinstance(found, Counterexample)
    assert found.rule == "can-end"


def test_a_refusal_that_changes_something():
    def slips(plan: Plan, state: State, command: c.Command) -> tuple[e.Event, ...] | c.Refusal:
        outcome = rules.decide(plan, state, command)
        if isinstance(outcome, c.Refusal) and state.step == "isolate":
            object.__setattr__(state, "pending", "7")
        return outcome

    found = search(LOCKOUT, slips)
    assert isinstance(found, Counterexample)
    assert found.rule == "refusals"
    assert words(found) == ["begins the session", "says this is done"]


def test_the_story_of_a_fault_of_the_rules_blames_no_file(monkeypatch: pytest.MonkeyPatch):
    monkeypatch.setattr(rules, "lapsed_by_going_back", lambda plan, to, goal, in_force: ())
    found = search(LOCKOUT)
    assert isinstance(found, Counterexample)
    told = story(LOCKOUT, found)
    assert "  5. The worker goes back." in told
    assert "Broken there (lapsed): the session runs on and these were not let go: isolated." in told
    assert "this is a fault of the kiosk's rules, not of the file" in told
