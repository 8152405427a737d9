"""A perfect crew has no deviation; a sloppy one has exactly those that it earned."""

from __future__ import annotations

import random
from collections.abc import Callable
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from functools import lru_cache

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.engine import commands as c
from kiosk.engine import events as e
from kiosk.engine.prompt import Number
from kiosk.languages.words import languages, words
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load_review import load_deviation_rules, load_schedule
from kiosk.procedure.model import Strength
from kiosk.procedure.review_rules import Finds
from kiosk.review.deviations import FINDERS, of_site, schedule_deviations, sentence
from kiosk.review.record import SessionRecord
from kiosk.review.recording import record_of
from kiosk.review.schedule import Stand, daily, kept
from kiosk.shipped import shipped
from tests.plans import hold, step
from tests.plans import plan as small_plan
from tests.proof.walks import TOUCH, Walk
from tests.unit.review_crew import (
    CHECKS,
    CLOSES,
    OPENS,
    RULES,
    Shift,
    ended,
    judged,
    library,
    local,
    plan,
    rules_of,
    site,
)

CLOSE = CLOSES["patio"]
FIRST = date(2026, 6, 1)
EVENING = local(FIRST, "21:40")
UNSURE = c.Evidence(c.Channel.VOICE, "everything in place", 0.4, "vosk-en")
KIOSK = c.Evidence(c.Channel.KIOSK)


def shift(day: int = 0, **kind) -> Shift:
    return Shift("patio", CLOSE, EVENING + day * 86_400, **kind)


@lru_cache
def perfect_week() -> tuple[SessionRecord, ...]:
    """Seven evenings and the mornings after them, on both machines."""
    found = []
    for n in range(7):
        day = FIRST + timedelta(days=n)
        for machine in CLOSES:
            pace = 18.0 + n % 3
            found.append(ended(Shift(machine, CLOSES[machine], local(day, "21:40"), pace)))
            morning = local(day + timedelta(days=1), "08:30")
            found.append(ended(Shift(machine, OPENS[machine], morning, pace)))
            noon = local(day + timedelta(days=1), "14:00")
            found.append(ended(Shift(machine, CHECKS[machine], noon, pace)))
    return tuple(found)


def week_due():
    rules = load_schedule(None, library())
    due = daily(site(), library(), rules, FIRST, FIRST + timedelta(days=7))
    # The kiosk came on the first evening, and the last day is not over.
    last = FIRST + timedelta(days=7)
    return [
        one
        for one in due
        if (one.day, one.duty) not in ((FIRST, "open"), (FIRST, "check"), (last, "close"))
    ]  # fmt: skip


def test_a_perfect_crew_has_no_deviation():
    records = perfect_week()
    now = records[-1].last_utc + 3600
    found = kept(week_due(), records, now, practice=True)
    assert len(found) == len(records) == 42
    assert {one.stand for one in found} == {Stand.DONE}
    assert of_site(records, found, RULES, site(), now) == ()


def sloppy() -> Shift:
    """Twelve deviations in one evening, each told where it is made."""
    walk = shift(day=7).to("gloves")
    walk.act(c.Confirm(), after=1)  # 1 faster than a hand
    walk.to("guards").act(c.GivePhrase()).act(c.No())  # 2 read-back refused
    walk.act(c.GivePhrase(), TOUCH)  # 3 touched after doubt
    walk.to("wash-mode").act(c.Back())  # 4 stepped back
    walk.to("flush").act(c.CallProblem()).act(c.NameReason("noise"))  # 5 problem called
    walk.act(c.Resume()).to("mix-cleaner")
    walk.act(c.Read(Decimal(50)), TOUCH)  # 6 reading out of limit
    walk.act(c.Confirm()).act(c.Read(Decimal(100)), TOUCH)
    walk.to("rinse")
    for _ in range(5):
        walk.act(c.Confirm()).act(c.No())  # 7 passes ran out, once, at the fifth
    walk.act(c.Confirm()).to("prove-dead").act(c.GivePhrase()).act(c.Yes())
    walk.act(c.No())  # 8 try-out said no, and 9 a problem called
    walk.act(c.NameReason("noise")).act(c.Resume()).to("count-o-rings")
    walk.act(c.Read(Decimal(7)), TOUCH)  # 10 count off
    walk.act(c.Confirm()).act(c.Read(Decimal(8)), TOUCH)
    walk.to("inspect-o-rings").act(c.Inspected(c.Finding.NONE_LEFT))  # 11 no spare part
    walk.boot = "b1"
    walk.act(c.Restart(), KIOSK, after=30)  # 12 restarted
    return walk.to_the_end()


EARNED = sorted(
    [
        "faster-than-a-hand",
        "read-back-refused",
        "touched-after-doubt",
        "stepped-back",
        "problem-called",
        "reading-out-of-limit",
        "passes-ran-out",
        "try-out-said-no",
        "problem-called",
        "count-was-off",
        "no-spare-part",
        "restarted",
    ]
)


def test_a_sloppy_evening_has_the_twelve_deviations_that_it_earned():
    found = judged(sloppy().record(), *perfect_week())
    assert rules_of(*found) == EARNED
    assert [one.weight for one in found] == sorted((one.weight for one in found), reverse=True)
    steps = {one.rule: one.step for one in found}
    assert steps["faster-than-a-hand"] == "gloves"
    assert steps["no-spare-part"] == "inspect-o-rings"
    assert steps["restarted"] == "inspect-seals"
    restarted = next(one for one in found if one.rule == "restarted")
    assert (restarted.facts["power"], restarted.facts["time"]) == ("cut", Number("30.0", "s"))


def aborted() -> Shift:
    walk = shift().to("soak").act(c.Pause(), after=60).act(c.End())
    return walk.act(c.Yes())


def out_of_service() -> Shift:
    walk = shift().to("lids").act(c.CallProblem()).act(c.NameReason("hurt"))
    return walk.act(c.TakeOutOfService())


def walked_off() -> Shift:
    return shift().to("lids").act(c.CallProblem())


def never_right() -> Shift:
    walk = shift().to("mix-cleaner").act(c.Read(Decimal(300)), TOUCH)
    return walk.act(c.Confirm()).act(c.Read(Decimal(25)), TOUCH).act(c.Pause()).act(c.End())


def part_missing() -> Shift:
    walk = shift().to("count-o-rings").act(c.Read(Decimal(7)), TOUCH)
    return walk.act(c.Pause()).act(c.End())


def asked_twice_then_pressed() -> Shift:
    walk = shift().to("prove-dead").act(c.SayAgain()).act(c.SayAgain())
    walk.act(c.GivePhrase(), TOUCH)
    return walk.to_the_end()


def unsure_then_pressed() -> Shift:
    return shift().to("guards").act(c.GivePhrase(), UNSURE).act(c.Yes(), TOUCH).to_the_end()


def pressed_without_doubt() -> Shift:
    return shift().to("guards").act(c.GivePhrase(), TOUCH).act(c.Yes(), TOUCH).to_the_end()


def verified_by_touch_after_doubt() -> Shift:
    walk = shift().to("guards").act(c.GivePhrase(), UNSURE).act(c.Yes())
    return walk.act(c.Yes(), TOUCH).to_the_end()


def pressed_first_and_doubtful_after() -> Shift:
    walk = shift().to("guards").act(c.GivePhrase(), TOUCH).act(c.Yes())
    return walk.act(c.Yes(), UNSURE).to_the_end()


def pressed_after_words_that_were_not_taken() -> Shift:
    doubted = c.Evidence(c.Channel.TOUCH, heard="the machine starts")
    return shift().to("prove-dead").act(c.GivePhrase(), doubted).act(c.Yes(), TOUCH).to_the_end()


def put_right_after_a_pause() -> Shift:
    walk = shift().to("mix-cleaner").act(c.Read(Decimal(50)), TOUCH)
    return walk.act(c.Pause()).act(c.Resume()).to_the_end()


def passes_in_a_hurry() -> Shift:
    """Two passes in 8 s: a single one takes 5."""
    walk = shift().to("flush")
    for _ in range(2):
        walk.act(c.Confirm(), after=2).act(c.Yes(), after=2)
    return walk.to_the_end()


def done_before_the_pause() -> Shift:
    """The gloves were put on before the pause; only the word came after it."""
    walk = shift().to("gloves").act(c.Pause(), after=20).act(c.Resume()).to("gloves")
    return walk.act(c.Confirm(), after=1).to_the_end()


def restarted_without_a_power_cut() -> Shift:
    walk = shift().to("tools").act(c.Restart(), KIOSK)
    return walk.to_the_end()


CASES: list[tuple[Callable[[], Shift], float, list[str]]] = [
    (aborted, 1, ["ended-before-its-end", "wait-broken-off"]),
    (out_of_service, 1, ["problem-called", "taken-out-of-service"]),
    (walked_off, 1, ["problem-left-open"]),
    (walked_off, 3, ["left-unfinished", "problem-left-open"]),
    (never_right, 1, ["reading-never-right", "reading-never-right"]),
    (part_missing, 1, ["part-never-found"]),
    (asked_twice_then_pressed, 1, ["touched-after-doubt"]),
    (unsure_then_pressed, 1, ["touched-after-doubt"]),
    (pressed_without_doubt, 1, []),
    (pressed_after_words_that_were_not_taken, 1, ["touched-after-doubt"]),
    (verified_by_touch_after_doubt, 1, ["touched-after-doubt"]),
    (pressed_first_and_doubtful_after, 1, []),
    (put_right_after_a_pause, 1, ["reading-out-of-limit"]),
    (passes_in_a_hurry, 1, ["faster-than-a-hand"]),
    (done_before_the_pause, 1, []),
    (restarted_without_a_power_cut, 1, ["restarted"]),
]


@pytest.mark.parametrize(
    ("made", "hours", "earned"), CASES, ids=lambda x: getattr(x, "__name__", "")
)
def test_each_kind_of_slip_is_found_once(made, hours, earned):
    record = made().record()
    assert rules_of(*judged(record, now=record.last_utc + hours * 3600)) == earned


def test_a_session_stepped_through_by_touch_is_seen_only_where_the_ear_works():
    silent = ended(shift(day=7, by=TOUCH))
    assert rules_of(*judged(silent, *perfect_week())) == ["by-touch-only"]
    assert judged(silent) == ()
    elsewhere = [one for one in perfect_week() if one.machine == "counter"]
    assert judged(silent, *elsewhere) == ()
    weeks_later = ended(shift(day=27, by=TOUCH))
    assert judged(weeks_later, *perfect_week()) == ()


def test_a_session_is_held_against_the_median_of_earlier_ones():
    week = perfect_week()
    short, long = ended(shift(day=8, pace=5.0)), ended(shift(day=8, pace=60.0))
    assert rules_of(*judged(short, *week)) == ["much-shorter-than-usual"]
    assert rules_of(*judged(long, *week)) == ["much-longer-than-usual"]
    closes = [one for one in week if (one.machine, one.procedure) == ("patio", CLOSE)]
    assert rules_of(*judged(short, *closes[:5])) == ["much-shorter-than-usual"]
    assert judged(short, *closes[:4]) == ()
    assert judged(short, *closes[:4], *closes[:4], short) == ()
    stopped = replace(aborted().record(), session="stopped")
    assert judged(short, *closes[:4], stopped) == ()
    assert judged(short, *(replace(one, practice=False) for one in closes)) == ()
    later = [replace(one, begun_utc=one.begun_utc + 30 * 86_400) for one in closes]
    assert judged(short, *later) == ()


def test_a_walk_that_cannot_go_on_safely_is_seen():
    closed = small_plan(step("tools"), step("door", requires=("power isolated",)))
    walk = Walk(closed).do(c.Start("ana", "en")).do(c.Confirm(), after=9)
    (found,) = judged(record_of("s1", walk.events, walk.plan))
    assert (found.rule, found.step, found.weight) == ("no-way-to-go-on", "tools", 82)


def test_the_pin_of_a_second_person_is_no_press_instead_of_a_phrase():
    two = hold("guards", "guards on", strength=Strength.SECOND_PERSON)
    walk = Walk(small_plan(two)).do(c.Start("ana", "en"))
    walk.do(c.GivePhrase(), after=9).do(c.No()).do(c.GivePhrase()).do(c.Yes())
    walk.do(c.Witness("ben"), TOUCH)
    record = record_of("s1", walk.events, walk.plan)
    assert record.steps[0].witness == "ben"
    assert rules_of(*judged(record)) == ["read-back-refused"]


def moved(walk: Shift, step: str, **by: float) -> SessionRecord:
    """The record with the clocks of everything from a step's confirmation on moved by seconds."""
    place = next(
        n
        for n, one in enumerate(walk.events)
        if isinstance(one.fact, e.StepConfirmed) and one.fact.step == step
    )
    changed = [
        replace(one, at=replace(one.at, **{k: getattr(one.at, k) + v for k, v in by.items()}))
        for one in walk.events[place:]
    ]
    return record_of(walk.session, [*walk.events[:place], *changed], walk.plan)


@pytest.mark.parametrize(
    ("by", "earned"),
    [
        ({"utc": -100.0}, ["wait-shorter-than-asked"]),
        ({"mono": -100.0}, ["wait-shorter-than-asked"]),
        ({"utc": -9.0}, []),
        ({"utc": -11.0}, ["wait-shorter-than-asked"]),
        ({"mono": -5.0}, []),
        ({"mono": -5.1}, ["wait-shorter-than-asked"]),
    ],
)
def test_a_contact_time_is_judged_by_both_clocks(by, earned):
    """The wait takes 5 s more than it must, and 5 s are allowed for a wall clock that is set."""
    found = judged(moved(shift().to_the_end(), "circulate", **by))
    assert rules_of(*found) == earned
    assert [one.facts["clock"] for one in found] == [
        "monotonic" if "mono" in by else "wall" for _ in earned
    ]


def test_a_session_whose_text_is_gone_is_said_to_be_judged_in_part():
    found = judged(sloppy().record(text_known=False))
    # Without the text no kind of step is known, so that no speed is judged.
    without = [one for one in EARNED if one != "faster-than-a-hand"]
    assert rules_of(*found) == sorted([*without, "text-not-here"])


def test_facts_are_kept_as_data_and_said_in_every_language():
    found = [
        *judged(sloppy().record(), *perfect_week()),
        *(
            x
            for made, hours, _ in CASES
            for x in judged(made().record(), now=EVENING + 9e4 * hours)
        ),
        *judged(ended(shift(day=8, pace=5.0)), *perfect_week()),
    ]
    off = next(one for one in found if one.rule == "reading-out-of-limit")
    assert off.facts["number"].value == "50"  # type: ignore[union-attr]
    assert off.facts["then"].value == "100"  # type: ignore[union-attr]
    said = sentence(off, words("en"))
    assert "50 parts per million" in said
    assert "4-501.114" in said
    assert "Too weak: throw it away" in said
    assert "Then it read 100" in said
    for language in languages():
        for one in found:
            text = sentence(one, words(language))
            assert text
            assert "{" not in text
    assert len({sentence(one, words(x)) for x in languages() for one in [off]}) == len(languages())


def test_the_schedule_finds_late_missed_unfinished_and_early_sessions():
    week = list(perfect_week())
    now = week[-1].last_utc + 3600
    closes = {one.begun_utc: n for n, one in enumerate(week) if one.procedure == CLOSE}
    first, second, third = sorted(closes)[:3]
    week[closes[first]] = replace(week[closes[first]], last_utc=first + 4 * 3600)
    stopped = Shift("patio", CLOSE, second).to("soak").act(c.Pause()).act(c.End()).act(c.Yes())
    week[closes[second]] = stopped.record()
    gone = week[closes[third]]
    opened = next(n for n, one in enumerate(week) if one.procedure == OPENS["counter"])
    day = FIRST + timedelta(days=1)
    week[opened] = ended(Shift("counter", OPENS["counter"], local(day, "03:00")))
    found = kept(week_due(), [one for one in week if one is not gone], now, practice=True)
    late = schedule_deviations(found, RULES, site())
    assert [(one.rule, one.machine) for one in late] == [
        ("never-started", "patio"),
        ("not-brought-to-an-end", "patio"),
        ("late", "patio"),
        ("early", "counter"),
    ]
    assert late[1].session == stopped.session
    assert "2026-06-03" in sentence(late[0], words("en"))
    assert "Patio twin" in sentence(late[0], words("ko"))


UNCONCERNED = (
    e.WorkedOut("dose", "8 litres", "2 packets"),
    e.LanguageChanged("es"),
    e.PromptRepeated("inspect-seals"),
)


@settings(max_examples=40, deadline=None)
@given(st.lists(st.tuples(st.integers(0, 10_000), st.sampled_from(UNCONCERNED)), max_size=6))
def test_no_deviation_goes_away_when_events_are_added_that_do_not_concern_it(added):
    walk = whole_sloppy()
    events = list(walk.events)
    for place, fact in added:
        n = 1 + place % len(events)
        before = events[n - 1]
        events.insert(n, e.Event(before.at, before.by, fact))
    record = record_of(walk.session, events, walk.plan)
    after = [(x.rule, x.step, x.at_utc, x.facts) for x in judged(record, *perfect_week())]
    for one in judged(walk.record(), *perfect_week()):
        assert (one.rule, one.step, one.at_utc, one.facts) in after


@lru_cache
def whole_sloppy() -> Shift:
    return sloppy()


@pytest.mark.parametrize("seed", range(5))
def test_the_order_of_the_history_does_not_matter(seed):
    records = [*perfect_week(), whole_sloppy().record(), ended(shift(day=8, pace=5.0))]
    now = records[-1].last_utc + 3600
    in_turn = of_site(records, kept(week_due(), records, now, practice=True), RULES, site(), now)
    shuffled = random.Random(seed).sample(records, len(records))
    again = of_site(shuffled, kept(week_due(), shuffled, now, practice=True), RULES, site(), now)
    assert again == in_turn
    assert len(in_turn) > len(EARNED)


def test_another_machines_sessions_change_nothing():
    record = whole_sloppy().record()
    patio = [one for one in perfect_week() if one.machine == "patio"]
    assert judged(record, *patio) == judged(record, *perfect_week())


def test_every_kind_of_finding_has_its_code_and_its_rule():
    of_schedule = {
        Finds.EARLY, Finds.LATE, Finds.NOT_FINISHED, Finds.NEVER_STARTED, Finds.OVERDUE,
    }  # fmt: skip
    assert set(FINDERS) | of_schedule == set(Finds)
    assert not set(FINDERS) & of_schedule
    assert {one.finds for one in RULES.rules} == set(Finds)
    languages = {"en", "es", "ko", "pt", "vi", "zh"}
    assert all(one.title.keys() == one.reason.keys() == languages for one in RULES.rules)


@pytest.mark.parametrize(
    ("before", "after", "told"),
    [
        ("weight: 100", "weight: 101", "the weight is 101"),
        ("after_min: 120", "after_hours: 2", "needs the parameter 'after_min'"),
        ("after_min: 120", "after_hours: 2", "has no parameter 'after_hours'"),
        ("clock_s: 5 ", "clock_s: -5 ", "'clock_s' is -5"),
        ("finds: back step", "finds: late", "no rule finds 'back step'"),
        ("finds: back step", "finds: sideways", "not one of the allowed words"),
        ("id: stepped-back", "id: late", "the id 'late' stands twice"),
    ],
)
def test_a_faulty_rule_is_told_with_its_mend(tmp_path, before, after, told):
    text = (shipped("procedures") / "review" / "deviations.yaml").read_text("utf-8")
    if after == "finds: late":
        after = "finds: session late"
    assert before in text
    file = tmp_path / "deviations.yaml"
    file.write_text(text.replace(before, after, 1), encoding="utf-8")
    with pytest.raises(FaultyFile) as caught:
        load_deviation_rules(file)
    assert told in str(caught.value)
    assert "To mend:" in str(caught.value)


def test_the_crew_walks_what_ships():
    assert plan("patio", CLOSE).digest != plan("counter", CLOSES["counter"]).digest
