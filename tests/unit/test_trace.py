"""Tracing back: each clue told from a session walked by the engine, and the window looked at."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import date, datetime, timedelta
from decimal import Decimal
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest
from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.engine import commands as c
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.journal.shop_facts import PartReplaced, ShopEvent
from kiosk.languages.words import words
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.model import Standing
from kiosk.procedure.plan import Inspect, JudgedBy, Measure, Wait
from kiosk.procedure.site import load_site
from kiosk.review.clues import CLUES, FADE_PER_DAY, Clue
from kiosk.review.results import Entered, Sample
from kiosk.review.signs import Sign, Walked, signs, walked
from kiosk.review.trace import Trace, closing, trace
from kiosk.trade.authorities import Analysis, NoSuchLimit, Product, authority
from kiosk.trade.rounding import read_amount
from tests.plans import VOICE, Walker, en, hold, plan, step

SITE = load_site(Path(__file__).parents[2] / "demo" / "site.toml")
USDA = authority(load_authorities(), "usda")
ZONE = ZoneInfo(SITE.time_zone)
DAY = date(2026, 10, 14)
TOUCH = Evidence(Channel.TOUCH)

PLAN = plan(
    step("strip", Measure(
        "sanitizer strength", "mg/L", Decimal(0), Decimal(400), (),
        JudgedBy("sanitizer strength", Decimal(100), Decimal(200), "4-501.114(A)"),
    ), establishes=("solution mixed",)),
    step("pour", requires=("solution mixed",), establishes=("chemical in machine",)),
    step("contact", Wait(300.0), establishes=("surfaces sanitized",)),
    step("mix", Measure(
        "mix temperature", "°C", Decimal(-10), Decimal(40), (),
        JudgedBy("mix temperature", None, Decimal(5), "3-501.16(A)(2)"),
    )),
    step("rings", Inspect("o-rings", en("O-rings"))),
    hold("guards", "guards on"),
)  # fmt: skip


def walk(
    day: date = DAY, at: str = "08:00", *, machine: str = "patio", close: bool = False,
    worker: str = "ana", fill: float = 120.0, strip: tuple[int, ...] = (150,), remix: float = 300.0,
    mix: tuple[float, ...] = (4,), cool: float = 1800.0, finding: c.Finding = c.Finding.GOOD,
    denied: int = 0, unheard: bool = False, end_at: str = "", practice: bool = True,
) -> Walked:  # fmt: skip
    """Walk one session through the engine, begun at a local time."""
    leaves = Standing.DRYING if close else Standing.IN_SERVICE
    of = replace(PLAN, machine=machine, leaves=leaves, practice=practice)
    walker = Walker(of)
    begun = datetime.fromisoformat(f"{day}T{at}").replace(tzinfo=ZONE).timestamp()
    walker.now = begun - 1_774_000_000.0
    walker.all(c.Start(worker, "en"))

    def reading(values: tuple[float, ...], between: float) -> None:
        for value in values:
            walker.all(c.Read(Decimal(str(value))))
            if value != values[-1]:
                walker.now += between
                walker.all(c.Confirm())

    reading(strip, remix)
    walker.now += fill
    walker.all(c.Confirm())
    walker.now += 310
    if end_at != "contact":
        walker.all(c.Confirm())
        reading(mix, cool)
        walker.all(c.Inspected(finding))
        for _ in range(denied):
            walker.all(c.GivePhrase(), c.No())
        if unheard:
            walker.all(c.GivePhrase(), by=VOICE).all(c.SayAgain())
            walker.all(c.Yes())
        else:
            walker.all(c.GivePhrase(), c.Yes())
    else:
        walker.all(c.CallProblem(), c.End(), c.Yes())
    return walked(f"{day}-{at}-{machine}", walker.events, of)


def sample(day: date = DAY, amount: str = "90000", **other: object) -> Entered:
    fields = {
        "machine": "patio", "barrel": "left", "day": day, "product": Product.PLAIN,
        "analysis": Analysis.TOTAL_COUNT, "amount": read_amount(amount), "per": "g",
        "laboratory": "Lab", "sample": "",
    } | other  # fmt: skip
    return Entered(f"{day}-{amount}-{fields['barrel']}", Sample(**fields), "ana", 0.0)


def of(walks: list[Walked], *results: Entered, shop: tuple[ShopEvent, ...] = ()) -> Trace:
    """Trace the bad result of DAY, with other results beside it."""
    bad = sample()
    return trace(bad, [bad, *results], USDA, walks, shop, SITE)


def alone(one: Walked) -> tuple[Sign, ...]:
    return signs(one, {}, None, 0.0)


def the_sign(one: Walked) -> Sign:
    (found,) = alone(one)
    return found


# What one session shows.


def test_a_clean_session_has_no_sign():
    assert alone(walk()) == ()


def test_a_contact_that_began_too_soon():
    found = the_sign(walk(fill=9))
    assert (found.clue, found.step) == (Clue.SHORT_CONTACT, "contact")
    assert found.share == pytest.approx(1 - 9 / 45)
    assert "9 seconds after the strip was read" in found.told
    assert alone(walk(fill=45)) == ()


def test_a_wait_that_was_cut():
    one = walk()
    steps = tuple(
        replace(stay, waited_s=120.0) if stay.step == "contact" else stay
        for stay in one.record.steps
    )
    found = the_sign(replace(one, record=replace(one.record, steps=steps)))
    assert (found.clue, found.share) == (Clue.SHORT_CONTACT, 1.0)
    assert found.told == "waited 120 seconds of 300 seconds"


def test_a_weak_strip_and_a_good_one_right_after():
    found = the_sign(walk(strip=(50, 150), remix=9))
    assert found.clue is Clue.WEAK_SANITIZER
    assert found.share == pytest.approx(0.9)
    assert "the strip read 50 parts per million, and 100 parts" in found.told
    assert "9 seconds later 150 parts per million: too soon" in found.told


def test_a_weak_strip_that_was_mixed_anew_counts_little():
    assert the_sign(walk(strip=(50, 150), remix=240)).share == pytest.approx(0.15)


def test_a_strip_that_was_too_strong_is_no_sign():
    assert alone(walk(strip=(300, 150), remix=9)) == ()


def test_a_warm_mix_that_was_cold_at_once():
    found = the_sign(walk(mix=(9, 4), cool=20))
    assert (found.clue, found.share) == (Clue.WARM_MIX, pytest.approx(0.9))
    assert "no hopper cools so fast (240 seconds)" in found.told


def test_a_warm_mix_that_was_given_time_counts_little():
    assert the_sign(walk(mix=(9, 4), cool=1800)).share == pytest.approx(0.9 * 0.3)


def test_holds_that_were_answered_doubtfully():
    found = the_sign(walk(denied=2))
    assert (found.clue, found.share) == (Clue.DOUBTFUL_HOLD, pytest.approx(2 / 3))
    assert "guards" in found.told
    assert words("es").told(found.told).startswith("paradas de seguridad")
    assert the_sign(walk(unheard=True)).clue is Clue.DOUBTFUL_HOLD


def test_a_session_that_ended_early():
    found = alone(walk(end_at="contact"))
    assert Clue.ENDED_EARLY in {one.clue for one in found}


def test_every_clue_is_weighed_and_has_a_source():
    assert set(CLUES) == set(Clue)
    assert all(one.source and 0 < one.weight <= 2 for one in CLUES.values())
    weights = [one.weight for one in CLUES.values()]
    assert weights == sorted(weights, reverse=True)


# What only other sessions show.


def test_a_worn_part_counts_until_it_is_replaced():
    before = [DAY - timedelta(days=n) for n in (6, 5, 4, 3)]
    found = of([
        walk(before[0], finding=c.Finding.NONE_LEFT),
        walk(before[1], finding=c.Finding.GOOD),
        walk(before[2], finding=c.Finding.REPLACED),
        walk(before[3]),
    ])  # fmt: skip
    worn = [one.session[:10] for one in found.suspects if Clue.WORN_PART in kinds(one)]
    assert sorted(worn) == [str(before[1]), str(before[2])]


def test_a_worn_part_counts_from_when_it_was_first_found():
    days = [DAY - timedelta(days=n) for n in (8, 1)]
    walks = [walk(day, finding=c.Finding.NONE_LEFT) for day in days]
    last = walk()
    (sign,) = by_session(of([*walks, last]), last).signs
    share = CLUES[Clue.WORN_PART].figures["at_once"]
    assert sign.share == pytest.approx(share + (1 - share) * 8 / 14, abs=0.01)
    assert "8 days before" in sign.told


def test_a_part_replaced_outside_a_session_is_not_worn_any_more():
    day = DAY - timedelta(days=2)
    walks = [walk(DAY - timedelta(days=4), finding=c.Finding.NONE_LEFT), walk(day)]
    assert any(Clue.WORN_PART in kinds(one) for one in of(walks).suspects)
    at = walks[1].record.begun_utc - 3600
    for machine, worn in (("patio", False), ("counter", True)):
        fact = PartReplaced(machine, "o-rings", str(day), "ana", "", True)
        told = (ShopEvent(Instant(at, at, "b"), TOUCH, fact),)
        found = of(walks, shop=told)
        assert any(Clue.WORN_PART in kinds(one) for one in found.suspects) == worn


def test_a_new_worker_is_new_only_where_others_were_there_before():
    new = walk(worker="ben")
    assert kinds(of([new]).suspects[0]) == []
    long_ago = walk(DAY - timedelta(days=30), "21:40", close=True)
    (sign,) = of([long_ago, new]).suspects[0].signs
    assert (sign.clue, sign.share) == (Clue.NEW_WORKER, 1.0)
    first = CLUES[Clue.NEW_WORKER].figures["first_sessions"]
    many = [walk(DAY - timedelta(days=1), f"{n:02}:00", worker="ben") for n in range(int(first))]
    assert Clue.NEW_WORKER not in kinds(by_session(of([long_ago, *many, new]), new))


def test_a_late_breakdown():
    day = DAY - timedelta(days=1)
    late = walk(day, "23:58", close=True)
    found = by_session(of([walk(day), late]), late)
    assert [(one.clue, round(one.share, 2)) for one in found.signs] == [
        (Clue.LATE_CLOSE, round((2 + 28 / 60 - 1.5) / 3.5, 2))
    ]
    after_midnight = walk(DAY, "01:30", close=True)
    assert kinds(by_session(of([walk(day), after_midnight]), after_midnight)) == [Clue.LATE_CLOSE]
    in_time = walk(day, "22:30", close=True)
    assert kinds(by_session(of([walk(day), in_time]), in_time)) == []


def test_a_night_without_a_breakdown_is_a_suspect():
    days = [DAY - timedelta(days=n) for n in (3, 2, 1)]
    walks = [walk(days[0]), walk(days[0], "21:40", close=True), walk(days[1])]
    found = of(walks)
    nights = [one for one in found.suspects if not one.session]
    assert [round(one.at_utc) for one in nights] == [
        round(closing(SITE, days[2])), round(closing(SITE, days[1]))
    ]  # fmt: skip
    assert found.suspects[0] == nights[0]
    assert kinds(nights[0]) == [Clue.MISSED_CLOSE]


def test_a_machine_that_stands_apart_misses_no_night():
    day = DAY - timedelta(days=5)
    found = of([walk(day), walk(day, "21:00", close=True)])
    assert all(one.session for one in found.suspects)


def test_a_machine_that_was_never_made_ready_misses_no_night():
    found = of([walk(DAY - timedelta(days=2), end_at="contact")])
    assert all(one.session for one in found.suspects)


def test_nights_before_the_last_good_result_are_not_looked_at():
    ready = walk(DAY - timedelta(days=4))
    found = of([ready], sample(DAY - timedelta(days=2), "900"))
    assert [round(one.at_utc) for one in found.suspects] == [
        round(closing(SITE, DAY - timedelta(days=n))) for n in (1, 2)
    ]


def test_a_machine_made_ready_after_closing_misses_only_the_nights_to_come():
    late = walk(DAY - timedelta(days=3), "23:00")
    broken = walk(DAY - timedelta(days=2), "21:00", close=True)
    assert all(one.session for one in of([late, broken]).suspects)


def test_closing_follows_the_clocks_of_the_place():
    before, after = closing(SITE, date(2026, 10, 31)), closing(SITE, date(2026, 11, 1))
    assert after - before == 25 * 3600
    late = replace(SITE, closes="01:30")
    assert closing(late, DAY) - closing(SITE, DAY) == 4 * 3600


# Which sessions are looked at.


def test_the_window_ends_at_the_sample_and_at_the_last_good_result():
    good = sample(DAY - timedelta(days=4), "900")
    days = [DAY - timedelta(days=n) for n in (20, 5, 3)]
    walks = [walk(day) for day in days]
    walks += [walk(DAY - timedelta(days=4), "21:40", close=True), walk()]
    walks += [walk(DAY, "21:40", close=True), walk(DAY + timedelta(days=1))]
    found = of(walks, good)
    assert found.good == good
    sessions = {one.session for one in found.suspects if one.session}
    assert sessions == {walks[2].record.session, walks[3].record.session, walks[4].record.session}
    without = of(walks)
    assert walks[0].record.session not in {one.session for one in without.suspects}
    assert walks[1].record.session in {one.session for one in without.suspects}


def test_the_last_of_several_good_results_ends_the_looking_back():
    early, last = (sample(DAY - timedelta(days=n), "900") for n in (5, 2))
    same_day = sample(DAY, "800")
    for order in ((early, last, same_day), (same_day, last, early)):
        assert of([walk()], *order).good == last


@pytest.mark.parametrize(
    "other",
    [
        {"barrel": "right"},
        {"analysis": Analysis.COLIFORM, "amount": read_amount("< 10")},
        {"amount": read_amount("< 90000")},
        {"amount": read_amount("spreaders")},
        {"amount": read_amount("70000")},
    ],
)
def test_only_a_sure_good_result_of_the_same_barrel_and_test_ends_the_looking_back(other):
    fields = {"amount": "900"} | {k: v for k, v in other.items() if k != "amount"}
    good = sample(DAY - timedelta(days=2), **fields)
    if "amount" in other:
        good = replace(good, of=replace(good.of, amount=other["amount"]))
    assert of([walk()], good).good is None


def test_other_machines_and_real_work_are_left_out_of_an_invented_shop():
    walks = [walk(machine="counter", fill=5), walk(practice=False, fill=5)]
    assert of(walks).suspects == ()


def test_a_fresh_mishap_comes_before_an_old_one_and_signs_before_none():
    old, fresh = walk(DAY - timedelta(days=5), fill=5), walk(fill=5)
    clean = walk(DAY - timedelta(days=1))
    found = of([old, fresh, clean])
    order = [one.session for one in found.suspects if one.session]
    assert order == [one.record.session for one in (fresh, old, clean)]
    assert by_session(found, clean).score == 0
    (sign,) = alone(old)
    days = by_session(found, old).days_before
    assert days == pytest.approx(5 + 12.5 / 24)
    assert by_session(found, old).score == pytest.approx(sign.score * FADE_PER_DAY**days)


def test_it_says_that_it_is_a_lead_and_no_proof():
    assert "a lead, not a proof" in of([walk()]).statement


def test_a_result_without_a_limit_cannot_be_traced():
    with pytest.raises(NoSuchLimit, match="sherbet"):
        trace(sample(product=Product.SHERBET), [], USDA, [], (), SITE)


def test_a_result_within_the_limit_is_traced_and_said_to_be_within():
    assert trace(sample(amount="900"), [], USDA, [walk()], (), SITE).over is False


@pytest.fixture(scope="module")
def some_walks() -> list[Walked]:
    chance = random.Random(5)
    return [
        walk(
            DAY - timedelta(days=day), "08:00" if machine == "patio" else "09:00", machine=machine,
            fill=chance.choice((5, 30, 90)), worker=chance.choice(("ana", "ben")),
        )
        for day in range(8)
        for machine in ("patio", "counter")
    ]  # fmt: skip


@settings(deadline=None, max_examples=25)
@given(data=st.data())
def test_neither_order_nor_other_machines_matter(some_walks, data):
    mixed = data.draw(st.permutations(some_walks))
    whole = of(mixed)
    assert whole == of(some_walks)
    here = [one for one in some_walks if one.record.machine == "patio"]
    assert {one.session for one in whole.suspects} == {one.session for one in of(here).suspects}


def kinds(one: object) -> list[Clue]:
    return [sign.clue for sign in one.signs]


def by_session(found: Trace, of: Walked) -> object:
    return next(one for one in found.suspects if one.session == of.record.session)
