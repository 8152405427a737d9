"""A session's record has what the journal has: who, when, what was asked, answered and heard."""

from __future__ import annotations

from dataclasses import FrozenInstanceError, replace
from datetime import date
from decimal import Decimal

import pytest

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.journal.codec import UnknownEvent
from kiosk.journal.store import Journal
from kiosk.review.record import Asked, Became, Ended, Left, Said, in_zone
from kiosk.review.recording import record_of
from tests.proof.walks import TOUCH, VOICE
from tests.unit.review_crew import ZONE, Shift, local

CLOSE = "close-twin-gravity"
EVENING = local(date(2026, 6, 1), "21:40")


def shift(**kind) -> Shift:
    return Shift("patio", CLOSE, EVENING, **kind)


def the(record, step):
    (found,) = [one for one in record.steps if one.step == step]
    return found


def test_a_whole_session_is_told_from_its_beginning_to_its_end():
    walk = shift().to_the_end()
    record = walk.record()
    assert (record.machine, record.procedure, record.version) == ("patio", CLOSE, 1)
    assert record.digest == walk.plan.digest
    assert record.workers == ("p1",)
    assert record.practice
    assert record.ended is Ended.COMPLETE
    assert [one.step for one in record.steps] == [one.id for one in walk.plan.steps]
    assert all(one.left is Left.CONFIRMED for one in record.steps)
    assert record.length_s == pytest.approx(walk.now - EVENING)
    assert f"{in_zone(record.begun_utc, ZONE):%Y-%m-%d %H:%M}" == "2026-06-01 21:40"
    assert (record.breaks, record.problems, record.changes, record.back_steps) == ((), (), (), ())


def test_a_step_has_the_sentence_in_the_language_then_spoken_and_the_answer_as_heard():
    walk = shift().to("tools")
    walk.act(c.Speak("ko"), after=3).act(c.SayAgain(), after=3)
    walk.act(c.Confirm(), c.Evidence(c.Channel.VOICE, "next", 0.71, "vosk-en"), after=4)
    walk.through("guards")
    record = walk.record()
    tools, guards = the(record, "tools"), the(record, "guards")
    assert tools.asked == walk.plan.step("tools").say["en"]
    assert guards.asked == walk.plan.step("guards").say["ko"]
    assert tools.confirmed_by is not None
    heard = tools.confirmed_by
    assert (heard.heard, heard.ear, heard.confidence) == ("next", "vosk-en", 0.71)
    assert (heard.channel, heard.after_s, tools.asked_again) == (c.Channel.VOICE, 10.0, 1)


def test_a_hold_tells_by_which_channel_each_part_came():
    walk = shift().to("guards")
    walk.act(c.GivePhrase()).act(c.No()).act(c.GivePhrase(), TOUCH, 7.0).act(c.Yes(), TOUCH)
    walk.act(c.Yes())
    guards = the(walk.record(), "guards")
    assert [(part.said, part.channel) for part in guards.parts] == [
        (Said.PHRASE, c.Channel.VOICE),
        (Said.DENIED, c.Channel.VOICE),
        (Said.PHRASE, c.Channel.TOUCH),
        (Said.AGREED, c.Channel.TOUCH),
        (Said.CONFIRMED, c.Channel.VOICE),
    ]
    assert [part.after_s for part in guards.parts] == [20.0, 20.0, 7.0, 20.0, 20.0]


def test_a_reading_has_its_limit_with_its_source_and_says_whether_it_kept_it():
    walk = shift().to("mix-cleaner")
    walk.act(c.Read(Decimal(50)), TOUCH)
    assert the(walk.record(), "mix-cleaner").kept_limit is False
    walk.act(c.Confirm(), TOUCH).act(c.Read(Decimal(100)), TOUCH)
    mixed = the(walk.record(), "mix-cleaner")
    assert mixed.kept_limit is True
    assert (mixed.answer, mixed.unit) == ("100", "mg/L")
    assert "4-501.114" in mixed.limit
    off = mixed.said(Said.OFF)[0]
    assert (off.value, off.unit, off.limit) == ("50", "mg/L", mixed.limit)
    assert the(walk.record(), "discard").kept_limit is None


def test_a_wait_has_what_was_needed_and_what_was_waited_by_both_clocks():
    walk = shift().to("circulate")
    walk.act(c.CallProblem(), after=100).act(c.NameReason("noise")).act(c.Resume(), after=30)
    walk.to("circulate").act(c.Confirm(), after=400)
    stays = [one for one in walk.record().steps if one.step == "circulate"]
    assert [one.left for one in stays] == [Left.HELD, Left.CONFIRMED]
    assert {one.needed_s for one in stays} == {300.0}
    assert stays[0].waited_s == 100.0
    assert stays[1].waited_s == stays[1].waited_wall_s


def test_what_broke_into_the_walk_is_told_with_its_end():
    walk = shift().through("guards")
    walk.act(c.Pause(), after=5).act(c.Resume(), after=60)
    walk.to("lids").act(c.HandOver("p2", "es"))
    walk.to("drain-sides").act(c.CallProblem()).act(c.NameReason("leak"))
    walk.boot = "b1"
    walk.act(c.Restart(), c.Evidence(c.Channel.KIOSK), after=90)
    walk.act(c.Resume(), after=10)
    walk.to("drain-sides").act(c.Back())
    record = walk.record()
    assert record.workers == ("p1", "p2")
    assert [(one.before, one.after) for one in record.changes] == [("p1", "p2")]
    pause, problem, restart = record.breaks
    assert (pause.because, pause.until_utc) == ("pause", pause.at_utc + 60)
    assert pause.lapsed
    assert (problem.because, problem.restarted) == ("problem", False)
    assert (restart.because, restart.restarted, restart.power_cut) == ("problem", True, True)
    assert restart.dark_s == 90.0
    (called,) = record.problems
    assert (called.reasons, called.became) == (("leak",), Became.PUT_RIGHT)
    assert called.name == walk.plan.problems["leak"].name
    assert [(one.step, one.to) for one in record.back_steps] == [("drain-sides", "wash-mode")]
    assert record.steps[-1].worker == "p2"


def test_counted_and_inspected_parts_and_what_was_worked_out_are_listed():
    walk = shift().to("count-o-rings")
    walk.act(c.Reckoned("dose", "8 litres", "2 packets"))
    walk.to("inspect-o-rings").act(c.Inspected(c.Finding.REPLACED)).to_the_end()
    record = walk.record()
    rings = [one for one in record.parts if one.part == "o-rings"]
    assert [(one.counted, one.expected, one.finding) for one in rings] == [
        (8, 8, ""),
        (None, None, "replaced"),
    ]
    assert [(one.step, one.finding) for one in record.worked_out] == [
        ("count-o-rings", "2 packets")
    ]


def test_across_a_power_cut_no_seconds_are_made_up():
    walk = shift().to("circulate")
    walk.boot = "b1"
    walk.act(c.Restart(), c.Evidence(c.Channel.KIOSK), after=500)
    stay = the(walk.record(), "circulate")
    assert (stay.left, stay.stayed_s, stay.waited_s) == (Left.HELD, None, None)
    assert stay.waited_wall_s == 500.0


def test_without_the_text_what_the_events_say_is_still_told():
    walk = shift().to_the_end()
    record = walk.record(text_known=False)
    assert not record.text_known
    assert {one.kind for one in record.steps} == {Asked.UNKNOWN}
    assert the(record, "circulate").needed_s == 300.0
    assert [one.answer for one in record.steps] == [one.answer for one in walk.record().steps]
    other = replace(walk.plan, digest="f" * 64)
    assert record_of(walk.session, walk.events, other) == record


def test_an_aborted_session_says_what_was_left_unsafe():
    walk = shift().to("circulate").act(c.CallProblem()).act(c.NameReason("hurt"))
    record = walk.act(c.TakeOutOfService()).record()
    assert record.ended is Ended.OUT_OF_SERVICE
    assert "chemical in machine" in record.unsafe
    assert record.problems[0].became is Became.OUT_OF_SERVICE


def test_a_record_without_a_beginning_is_refused_and_a_record_cannot_be_changed():
    with pytest.raises(UnknownEvent, match="no beginning"):
        record_of("x", [e.Event(c.Instant(0, 0, "b"), VOICE, e.EndAsked())], None)
    with pytest.raises(FrozenInstanceError):
        shift().record().machine = "other"  # type: ignore[misc]


def test_a_session_read_back_from_the_journal_has_the_same_record(tmp_path):
    walk = shift().to("guards").act(c.GivePhrase()).act(c.No()).to_the_end()
    journal = Journal(tmp_path)
    try:
        journal.append(walk.session, walk.events)
        assert record_of(walk.session, journal.events(walk.session), walk.plan) == walk.record()
    finally:
        journal.close()
