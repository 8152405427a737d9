"""What each command leads to, and what is refused: a refused command changes nothing."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.engine.offers import offers
from kiosk.engine.state import Mode, Stage
from kiosk.procedure.model import Strength
from kiosk.procedure.plan import Repeat, Wait
from tests.plans import EVERY_KIND, TEMPERATURE, VOICE, Walker, en, hold, plan, step

START = c.Start("ana", "en")
CONFIRM, YES, NO, PHRASE = c.Confirm(), c.Yes(), c.No(), c.GivePhrase()
TO_ISOLATE = (START, CONFIRM, CONFIRM, CONFIRM, NO, CONFIRM, YES)


def at_isolation() -> Walker:
    walker = Walker(EVERY_KIND).all(*TO_ISOLATE)
    walker.now += 60
    return walker.all(CONFIRM)


def at_door() -> Walker:
    return at_isolation().all(PHRASE, YES, YES)


def refused(walker: Walker, act, by=None) -> str:
    before = walker.state
    result = walker.do(act) if by is None else walker.do(act, by)
    assert isinstance(result, c.Refusal), result
    assert walker.state is before
    return result.why


def test_a_whole_walk_completes():
    walker = at_door().all(CONFIRM, c.Read(Decimal(4)), c.Inspected(c.Finding.GOOD), CONFIRM)
    walker.all(PHRASE, YES, c.Read(Decimal("4.5")))
    assert walker.state.mode is Mode.COMPLETE
    assert walker.facts()[-1] == "SessionCompleted"


def test_nothing_but_start_begins_a_session():
    walker = Walker(EVERY_KIND)
    for act in (CONFIRM, YES, c.Resume(), c.Restart(), c.Pause()):
        assert refused(walker, act) == "not-now"


def test_nothing_moves_a_session_that_is_over():
    walker = Walker(plan(step("only"))).all(START, CONFIRM)
    for act in (CONFIRM, c.Back(), c.Resume(), c.Restart(), START):
        assert refused(walker, act) == "not-now"


def test_next_does_not_pass_a_hold():
    assert refused(at_isolation(), CONFIRM) == "hold-first"


def test_a_word_of_the_workers_own_leads_on_and_never_carries_a_hold():
    own = c.Evidence(c.Channel.VOICE, "yes", 0.4, c.OWN_WORDS)
    walker = at_isolation()
    assert refused(walker, PHRASE, own) == "press-for-hold"
    walker.all(PHRASE, by=VOICE)
    assert refused(walker, YES, own) == "press-for-hold"
    walker.all(NO, by=own)
    assert walker.state.stage is Stage.ASK
    walker.all(PHRASE, YES, by=VOICE)
    assert walker.state.stage is Stage.VERIFY
    assert refused(walker, YES, own) == "press-for-hold"
    walker.all(YES, by=c.Evidence(c.Channel.TOUCH))
    assert walker.state.step == "door"
    walker.all(CONFIRM, by=own)
    assert walker.state.step != "door"


def test_a_hold_takes_phrase_then_read_back_then_its_try_out():
    walker = at_isolation()
    assert refused(walker, YES) == "not-now"
    walker.all(PHRASE, by=VOICE)
    assert walker.state.stage is Stage.READ_BACK
    assert "power isolated" not in walker.state.in_force
    walker.all(YES, by=VOICE)
    assert walker.state.stage is Stage.VERIFY
    assert "power isolated" not in walker.state.in_force
    walker.all(YES, by=VOICE)
    assert "power isolated" in walker.state.in_force
    assert walker.state.step == "door"


def test_a_denied_read_back_asks_the_challenge_again():
    walker = at_isolation().all(PHRASE, NO)
    assert walker.state.stage is Stage.ASK
    assert walker.state.step == "isolate"


def test_a_failed_try_out_holds_the_session_as_a_problem():
    walker = at_isolation().all(PHRASE, YES, NO)
    assert walker.state.mode is Mode.HELD
    assert walker.state.because == "problem"
    assert "VerifyFailed" in walker.facts()
    assert "power isolated" not in walker.state.in_force


def test_a_second_person_must_be_another_person():
    guarded = plan(hold("both", "checked", strength=Strength.SECOND_PERSON), step("after"))
    walker = Walker(guarded).all(START, PHRASE, YES)
    assert walker.state.stage is Stage.WITNESS
    assert refused(walker, YES) == "not-now"
    assert refused(walker, c.Witness("ana")) == "same-person"
    walker.all(c.Witness("ben"))
    confirmed = next(x.fact for x in walker.events if isinstance(x.fact, e.StepConfirmed))
    assert (confirmed.witness, confirmed.strength) == ("ben", "second person")


@pytest.mark.parametrize("leave", [c.Pause(), c.CallProblem(), c.Restart()])
def test_leaving_the_work_lapses_what_an_absence_may_change(leave):
    walker = at_door().all(leave)
    assert walker.state.mode is Mode.HELD
    assert walker.state.in_force.isdisjoint({"power isolated", "hands clean"})
    if leave == c.CallProblem():
        walker.all(c.NameReason("leak"))
    walker.all(c.Resume())
    assert (walker.state.step, walker.state.goal) == ("isolate", "door")
    walker.all(PHRASE, YES, YES)
    assert (walker.state.step, walker.state.goal) == ("door", "door")


def test_a_hand_over_asks_the_holds_of_the_new_worker():
    walker = at_door()
    assert refused(walker, c.HandOver("ana", "en")) == "same-person"
    walker.all(c.HandOver("minsu", "ko"))
    assert (walker.state.worker, walker.state.language) == ("minsu", "ko")
    assert walker.state.step == "isolate"


def test_back_lapses_what_was_done_since_and_asks_it_again():
    walker = at_door().all(c.Back())
    assert walker.state.step == "isolate"
    assert "power isolated" not in walker.state.in_force
    assert refused(walker, CONFIRM) == "hold-first"


def test_back_after_power_is_on_leads_through_the_isolation_again():
    walker = at_door().all(CONFIRM, c.Read(Decimal(4)), c.Inspected(c.Finding.GOOD), CONFIRM)
    walker.all(PHRASE, YES)
    assert walker.state.step == "temperature"
    walker.all(c.Back(), c.Back())
    assert (walker.state.step, walker.state.goal) == ("isolate", "door-on")


def test_a_hazard_stays_when_going_back():
    walker = at_door().all(CONFIRM)
    assert "door off" in walker.state.in_force
    walker.all(c.Back())
    assert "door off" in walker.state.in_force


def test_back_is_refused_at_the_first_step_and_on_a_detour():
    assert refused(Walker(EVERY_KIND).all(START), c.Back()) == "first-step"
    walker = at_door().all(c.Pause(), c.Resume())
    assert refused(walker, c.Back()) == "confirm-this-first"


def test_a_wait_takes_no_confirmation_before_its_time():
    walker = Walker(EVERY_KIND).all(*TO_ISOLATE)
    assert walker.state.step == "soak"
    walker.now += 59.9
    assert refused(walker, CONFIRM) == "time-left"
    assert refused(walker, c.TimeUp()) == "not-now"
    walker.now += 0.1
    walker.all(c.TimeUp())
    assert walker.state.stage is Stage.TIME_UP
    walker.all(CONFIRM)
    assert walker.state.step == "isolate"


def test_a_wait_goes_on_through_a_restart_of_the_kiosk_but_not_of_the_computer():
    for boot, left in (("boot-1", 30.0), ("boot-2", 60.0)):
        walker = Walker(plan(step("soak", Wait(60.0)))).all(START)
        walker.now += 30
        walker.boot = boot
        walker.all(c.Restart(), c.Resume())
        result = walker.do(CONFIRM)
        assert isinstance(result, c.Refusal)
        assert dict(result.args)["seconds"] == pytest.approx(left)


def test_a_clock_set_forward_does_not_end_a_wait():
    walker = Walker(plan(step("soak", Wait(60.0)))).all(START)
    later = c.Instant(9_999_999_999.0, walker.now + 1, "boot-1")
    from kiosk.engine.decide import decide

    assert isinstance(
        decide(walker.plan, walker.state, c.Command(CONFIRM, later, VOICE)), c.Refusal
    )


def test_a_spoken_number_needs_its_read_back_a_touched_one_does_not():
    walker = Walker(plan(step("t", TEMPERATURE), step("after"))).all(START)
    walker.all(c.Read(Decimal(4)), by=VOICE)
    assert walker.state.stage is Stage.READ_BACK
    walker.all(NO, by=VOICE).all(c.Read(Decimal("4.5")), by=VOICE).all(YES, by=VOICE)
    assert walker.state.step == "after"
    other = Walker(plan(step("t", TEMPERATURE), step("after"))).all(START, c.Read(Decimal(4)))
    assert other.state.step == "after"


def test_a_reading_out_of_its_limit_is_a_deviation_and_must_be_taken_again():
    walker = Walker(plan(step("t", TEMPERATURE), step("after"))).all(START, c.Read(Decimal(9)))
    off = walker.events[-1].fact
    assert isinstance(off, e.ReadingOff)
    assert (off.value, off.unit) == ("9", "°C")
    assert "3-501.16" in off.limit
    assert walker.state.stage is Stage.OFF
    assert refused(walker, YES) == "not-now"
    walker.all(CONFIRM, c.Read(Decimal(5)))
    assert walker.state.step == "after"


@pytest.mark.parametrize("value", ["-6", "41", "NaN", "Infinity"])
def test_an_unbelievable_reading_is_refused(value):
    walker = Walker(plan(step("t", TEMPERATURE))).all(START)
    assert refused(walker, c.Read(Decimal(value))) == "absurd"


def test_a_count_must_be_whole_and_match_the_parts_list():
    walker = at_door().all(CONFIRM)
    assert refused(walker, c.Read(Decimal("3.5"))) == "whole-number"
    walker.all(c.Read(Decimal(3)))
    assert walker.state.stage is Stage.OFF
    walker.all(CONFIRM, c.Read(Decimal(4)))
    assert walker.state.step == "blade"


def test_passes_run_from_least_to_most():
    passes = plan(step("flush", Repeat(2, 3, en("Clear?"))), step("after"))
    walker = Walker(passes).all(START, CONFIRM, YES)
    assert walker.state.step == "flush"
    walker.all(CONFIRM, YES)
    assert walker.state.step == "after"
    other = Walker(passes).all(START, *((CONFIRM, NO) * 3))
    assert other.state.stage is Stage.OFF
    assert "PassesRanOut" in other.facts()
    other.all(CONFIRM, CONFIRM, YES)
    assert other.state.step == "after"


def test_a_problem_needs_its_reason_before_the_work_goes_on():
    walker = at_door().all(c.CallProblem())
    assert refused(walker, c.Resume()) == "reason-first"
    assert refused(walker, c.NameReason("moonlight")) == "no-such-reason"
    walker.all(c.NameReason("leak"), c.Resume())
    assert walker.state.mode is Mode.RUNNING


def test_a_reason_that_stops_the_machine_cannot_be_talked_away():
    walker = at_door().all(c.CallProblem(), c.NameReason("hurt"))
    assert refused(walker, c.Resume()) == "must-stop"
    assert refused(walker, c.NameReason("leak")) == "must-stop"
    walker.all(c.Restart())
    assert refused(walker, c.Resume()) == "must-stop"
    walker.all(c.TakeOutOfService())
    assert walker.state.out_of_service


def test_out_of_service_tells_what_is_left_unsafe():
    walker = at_door().all(CONFIRM, c.CallProblem(), c.NameReason("hurt"), c.TakeOutOfService())
    aborted = walker.events[-1].fact
    assert isinstance(aborted, e.SessionAborted)
    assert aborted.out_of_service
    assert aborted.reason == "hurt"
    assert {"door off", "power isolated", "guards on"} <= set(aborted.unsafe)


def test_ending_early_is_asked_once_more():
    walker = at_door().all(c.Pause(), c.End())
    assert refused(walker, c.Resume()) == "not-now"
    walker.all(NO)
    assert not walker.state.ending
    walker.all(c.End(), YES)
    assert walker.state.mode is Mode.ABORTED
    assert "guards on" not in walker.state.unsafe


def test_a_plan_that_cannot_go_on_safely_is_held_before_the_risky_step():
    dead_end = plan(step("first"), step("risky", requires=("never confirmed",)))
    walker = Walker(dead_end).all(START, CONFIRM)
    assert (walker.state.mode, walker.state.because) == (Mode.HELD, "no way in")
    walker.all(c.Resume())
    assert walker.state.step == "first"
    walker.all(CONFIRM, c.End(), YES)
    assert walker.state.mode is Mode.ABORTED


def test_what_is_offered_is_what_is_not_refused():
    walker = at_isolation()
    at = c.Instant(0, walker.now, walker.boot)
    offered = offers(walker.plan, walker.state, at)
    assert PHRASE in offered
    assert CONFIRM not in offered
    assert YES not in offered
    assert {c.Back(), c.SayAgain(), c.CallProblem(), c.Pause()} <= set(offered)


def test_a_number_is_offered_from_the_closed_list():
    walker = Walker(plan(step("t", TEMPERATURE))).all(START)
    offered = offers(walker.plan, walker.state, c.Instant(0, walker.now, walker.boot))
    assert {c.Read(Decimal(4)), c.Read(Decimal("4.5")), c.Read(Decimal(9))} <= set(offered)


def test_inspection_takes_a_finding_and_not_a_bare_next():
    walker = at_door().all(CONFIRM, c.Read(Decimal(4)))
    assert refused(walker, CONFIRM) == "look-first"
    walker.all(c.Inspected(c.Finding.NONE_LEFT))
    confirmed = walker.events[-2].fact
    assert isinstance(confirmed, e.StepConfirmed)
    assert confirmed.answer == "none left"
