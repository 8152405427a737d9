"""What the head office answers, against what the kiosk's own review says of the same journals."""

from __future__ import annotations

import random
from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta
from decimal import Decimal
from statistics import geometric_mean

import pytest

from kiosk.engine import events as e
from kiosk.engine.commands import Channel, Evidence, Instant
from kiosk.fleet import office
from kiosk.fleet.about import about
from kiosk.journal.shop_facts import ResultEntered, ResultStruck, ShopEvent
from kiosk.journal.store import Journal
from kiosk.procedure.authorities import load_authorities
from kiosk.procedure.load_review import load_schedule
from kiosk.review.barrels import barrels
from kiosk.review.recording import record_of
from kiosk.review.results import results
from kiosk.review.schedule import Stand, daily, kept
from kiosk.trade.authorities import (
    Analysis,
    Authorities,
    Authority,
    Enforcing,
    MicrobialLimit,
    Product,
    authority,
)
from kiosk.trade.rounding import read_amount
from tests.fleet.journals import ABOUT, rows, shipped, walk
from tests.histories import history, library, site

KEY = Evidence(Channel.KEY)
FIRST = date(2026, 9, 1)
HOUR = 3600
SCHEDULE = load_schedule(library=library())
NIGHTS = 10
ON_TIME, LATE, MISSED, LEFT, OUT = range(5)


def journal_session(journal, session, machine, procedure, begins, ends, end, practice):
    started = e.SessionStarted(
        procedure, 1, "d" * 64, machine, "ana", "en", "in service", "drying", practice
    )
    journal.append(session, [e.Event(Instant(begins, 1.0, "b"), KEY, started)])
    if end is not None:
        journal.append(session, [e.Event(Instant(ends, 2.0, "b"), KEY, end)])


def invent_nights(folder, dues, chance):
    """Journal, for each due, sessions that keep it or do not; samples; and machines not in use."""
    planned = []
    shut = {(one.machine, one.day) for one in dues if chance.random() < 0.1}
    for due in dues:
        what = chance.choice((ON_TIME, ON_TIME, LATE, MISSED, LEFT, OUT))
        if (due.machine, due.day) in shut:
            what = MISSED
            if chance.random() < 0.1:
                begins = chance.uniform(due.claim_utc, due.until_utc)
                other = replace(due, procedures=("sample-twin-gravity",))
                planned.append((begins, begins + 600, other, e.SessionCompleted(), True))
        begins = chance.uniform(due.claim_utc, due.until_utc)
        ends = chance.uniform(begins, due.until_utc)
        end = e.SessionCompleted()
        if what == MISSED:
            continue
        if what == LATE:
            ends = due.until_utc + chance.uniform(60, HOUR)
        elif what == LEFT:
            end = chance.choice((None, e.SessionAborted((), False, "")))
        elif what == OUT:
            end = e.SessionAborted((), True, "jammed")
        planned.append((begins, ends, due, end, chance.random() < 0.9))
    with closing(Journal(folder)) as journal:
        for n, (begins, ends, due, end, practice) in enumerate(sorted(planned, key=lambda x: x[0])):
            journal_session(
                journal, f"s{n}", due.machine, due.procedures[0], begins, ends, end, practice
            )
        return [record_of(one, journal.events(one), None) for one in journal.sessions()]


@pytest.mark.parametrize("seed", range(3))
def test_who_is_late_is_who_the_review_calls_late(head_office, tmp_path, seed):
    days = (FIRST, FIRST + timedelta(days=NIGHTS))
    dues = daily(site(), library(), SCHEDULE, *days)
    records = invent_nights(tmp_path, dues, random.Random(seed))
    told = about(site(), library(), SCHEDULE, FIRST + timedelta(days=1))
    shipped(tmp_path, head_office.admit("one"), about=told)
    line = head_office.admin
    line.execute("update fleet.kiosk set whole_until = 'infinity'")
    seen, none_due = set(), set()
    for hours in range(0, NIGHTS * 24, 5):
        at = dues[0].from_utc + hours * HOUR
        asked = [
            one
            for one in kept(dues, records, at, practice=True)
            if at - 24 * HOUR <= one.due.until_utc < at
        ]
        none_due |= {one.stand for one in asked if one.due.duty == "check"}
        expected = {
            (one.due.id, one.stand, one.session)
            for one in asked
            if one.stand in (Stand.MISSED, Stand.NOT_FINISHED, Stand.LATE)
        }
        found = line.execute(
            "select day || '/' || duty || '/' || machine, stand, session "
            "from fleet.late_at(to_timestamp(%s))",
            [at],
        ).fetchall()
        assert set(found) == expected
        seen |= {stand for _, stand, _ in found}
    assert seen == {Stand.MISSED, Stand.NOT_FINISHED, Stand.LATE}
    assert {Stand.NOT_OPENED, Stand.OUT_OF_SERVICE} <= none_due


def test_of_a_shop_that_is_offline_nobody_says_that_it_is_late(head_office, tmp_path):
    told = about(site(), library(), SCHEDULE, FIRST + timedelta(days=1))
    walk(tmp_path, "s")
    shipped(tmp_path, head_office.admit("one"), about=told)
    due = told["dues"][0]
    line = head_office.admin
    line.execute("update fleet.kiosk set whole_until = to_timestamp(%s)", [due["until_utc"] - HOUR])
    stands = line.execute(
        "select distinct stand from fleet.late_at(to_timestamp(%s))", [due["until_utc"] + 1]
    ).fetchall()
    assert stands == [("not heard of since",)]


def test_what_is_told_again_replaces_what_is_still_to_come(head_office, tmp_path):
    walk(tmp_path, "s")
    address = head_office.admit("one")
    today = date.today()  # noqa: DTZ011
    told = about(site(), library(), SCHEDULE, today)
    shipped(tmp_path, address, about=told)
    one_machine = replace(site(), machines=site().machines[:1], closes="23:00")
    shipped(tmp_path, address, about=about(one_machine, library(), SCHEDULE, today))
    machine = one_machine.machines[0].id
    assert head_office.rows("select id from fleet.machine") == [(machine,)]
    coming = "select distinct machine from fleet.due where from_at > now()"
    assert head_office.rows(coming) == [(machine,)]


AMOUNTS = ("< 10", "< 100000", "> 5", "> 60000", "est. 900", "1,200", "70000", "55000", "12",
           "spreaders", "laboratory accident", "~ 51000", "50000", "10")  # fmt: skip


def invent_results(folder, chance, amounts=AMOUNTS):
    """Journal laboratory results of twelve barrels, some of them struck; return those in force."""
    facts = []
    for n in range(300):
        facts.append(
            ResultEntered(
                f"r{n}", f"m{chance.randrange(6)}", chance.choice(("left", "right")),
                (FIRST + timedelta(days=chance.randrange(20))).isoformat(),
                chance.choice(("plain", "bulky", "milk")),
                chance.choice(("total count", "coliform")),
                chance.choice(amounts), chance.choice(("g", "g", "g", "mL")), "Lab", f"{n}", "ana",
                True,
            )
        )  # fmt: skip
        if chance.random() < 0.1:
            facts.append(ResultStruck(f"r{chance.randrange(n + 1)}", "wrong", "ana"))
    with closing(Journal(folder)) as journal:
        journal.append_shop([ShopEvent(Instant(1e9, 1.0, "b"), KEY, fact) for fact in facts])
        return results(journal.shop_events(), practice=True)


@pytest.mark.parametrize("name", ["usda", "north-carolina", "maryland"])
def test_a_barrel_stands_where_the_review_says_it_stands(head_office, tmp_path, name):
    entered = invent_results(tmp_path, random.Random(name))
    shipped(tmp_path, head_office.admit("one", name))
    judged = barrels(entered, authority(load_authorities(), name), FIRST + timedelta(days=30))
    expected = {
        (one.of.machine, one.of.barrel, str(one.of.analysis)): str(one.state)
        for one in judged
        if one.days
    }
    found = head_office.rows("select machine, barrel, analysis, state from fleet.standing")
    assert {tuple(key): state for *key, state in found} == expected
    assert len(set(expected.values())) >= (2 if name == "north-carolina" else 3)
    bad = {key for key, state in expected.items() if state in ("notice", "action")}
    noticed = office.ask(head_office.admin, "notice")
    assert {row[1:4] for row in noticed.rows} == bad


AVERAGED = Authority(
    id="invented-average", title="An older ordinance (invented)", law="invented",
    enforcing=Enforcing.LOG_AVERAGE, source="invented", tag="invented",
    limits=(
        MicrobialLimit(test=Analysis.TOTAL_COUNT, products=(Product.PLAIN,), most=Decimal(50_000)),
        MicrobialLimit(test=Analysis.TOTAL_COUNT, products=(Product.BULKY,), most=Decimal(900)),
        MicrobialLimit(test=Analysis.COLIFORM, products=(Product.PLAIN,), most=Decimal("10")),
        MicrobialLimit(test=Analysis.COLIFORM, products=(Product.MILK,), most=Decimal("0.5")),
    ),
)  # fmt: skip


@pytest.fixture
def by_average(head_office):
    """A head office that knows an invented authority that goes by the logarithmic average."""
    office.put_limits(head_office.admin, Authorities(authorities=(AVERAGED,)))
    yield head_office
    office.put_limits(head_office.admin, load_authorities())


@pytest.mark.parametrize("seed", range(3))
def test_a_logarithmic_average_is_judged_as_the_review_judges_it(by_average, tmp_path, seed):
    # Numbers of which two or four come to the limit exactly, where a rounded mean may not.
    exact = ("5", "20", "10", "2.5", "40", "450", "1800", "25000", "100000", "0", "0.5", "> 900")
    entered = invent_results(tmp_path, random.Random(seed), AMOUNTS + exact)
    shipped(tmp_path, by_average.admit("one", AVERAGED.id))
    judged = [
        one for one in barrels(entered, AVERAGED, FIRST + timedelta(days=30)) if one.days
    ]  # fmt: skip
    states = {
        (one.of.machine, one.of.barrel, str(one.of.analysis)): str(one.state) for one in judged
    }
    found = by_average.rows("select machine, barrel, analysis, state from fleet.standing")
    assert {tuple(key): state for *key, state in found} == states
    assert set(states.values()) >= {"clear", "unknown", "action"}
    bad = {key for key, state in states.items() if state == "action"}
    assert {row[1:4] for row in office.ask(by_average.admin, "notice").rows} == bad
    means = by_average.rows(
        "select machine, barrel, analysis, average_least, average_most from fleet.standing"
    )
    expected = {tuple(map(str, (x.of.machine, x.of.barrel, x.of.analysis))): x for x in judged}
    for *key, least, most in means:
        average = expected[tuple(key)].average
        assert (least is None) == (average is None)
        if average is not None:
            assert float(least) == pytest.approx(average.low, rel=1e-3, abs=0.05)
            assert float(most or "inf") == pytest.approx(average.high, rel=1e-3, abs=0.05)


@pytest.mark.parametrize(
    ("amounts", "state"),
    [
        # The geometric mean is the limit exactly: "exceeds" is more than that.
        (("5000", "50000", "50000", "500000"), "clear"),
        (("5000", "50000", "50000", "500001"), "action"),
        # More than the limit, however little.
        (("5000", "50000", "50000", "> 500000"), "action"),
        (("5000", "50000", "50000", "> 400000"), "unknown"),
        (("< 5001", "50000", "50000", "500000"), "unknown"),
        (("< 5000", "50000", "50000", "500000"), "clear"),
        # Three results a million times too low hide the fourth; five results are one too many.
        (("1", "1", "1", "9000000"), "clear"),
        (("9000000000000000000", "1", "1", "1", "9000000"), "clear"),
        (("spreaders",), "unknown"),
        (("50001", "spreaders", "laboratory accident"), "action"),
    ],
)
def test_the_mean_is_the_one_that_the_standard_library_computes(
    by_average, tmp_path, amounts, state
):
    """Python's statistics.geometric_mean; "exceeds" read as more than."""
    facts = [
        ResultEntered(
            f"r{n}", "m", "left", f"2026-09-0{n + 1}", "plain", "total count", amount, "g", "Lab",
            "", "ana", True,
        )
        for n, amount in enumerate(amounts)
    ]  # fmt: skip
    with closing(Journal(tmp_path)) as journal:
        journal.append_shop([ShopEvent(Instant(1e9, 1.0, "b"), KEY, fact) for fact in facts])
    shipped(tmp_path, by_average.admit("one", AVERAGED.id))
    ((found, least, most),) = by_average.rows(
        "select state, average_least, average_most from fleet.standing"
    )
    assert found == state
    if all(one.isdigit() for one in amounts):
        mean = geometric_mean([float(one) for one in amounts[-4:]])
        assert float(least) == float(most) == pytest.approx(mean, abs=0.051)


def test_a_number_that_is_longer_than_any_kiosk_takes_stops_no_question(head_office, tmp_path):
    with closing(Journal(tmp_path)) as journal:
        for n, amount in enumerate(("9" * 200_000, "> " + "9" * 119, "9" * 120)):
            fact = ResultEntered(
                f"r{n}", "m", "left", f"2026-09-0{n + 1}", "plain", "coliform", amount, "g", "Lab",
                "", "ana", True,
            )  # fmt: skip
            journal.append_shop([ShopEvent(Instant(1e9, 1.0, "b"), KEY, fact)])
    shipped(tmp_path, head_office.admit("one", "usda"))
    assert head_office.rows("select over_of_five, state from fleet.standing") == [(1, "unknown")]


def test_results_are_not_judged_where_no_authority_is_named(head_office, tmp_path):
    with closing(Journal(tmp_path)) as journal:
        fact = ResultEntered(
            "r", "m", "left", "2026-09-01", "plain", "coliform", "999", "g", "Lab", "", "ana", True
        )
        journal.append_shop([ShopEvent(Instant(1e9, 1.0, "b"), KEY, fact)])
    shipped(tmp_path, head_office.admit("one"))
    assert head_office.one("select count(*) from fleet.result") == 1
    assert head_office.rows("select * from fleet.standing") == []


def test_a_result_exceeds_a_limit_as_the_trade_says(head_office):
    cases = [(amount, most) for amount in AMOUNTS for most in ("10", "50000", "0.5")]
    found = head_office.rows(
        "select fleet.exceeds(amount, most::numeric) "
        "from unnest(%s::text[], %s::text[]) with ordinality t(amount, most, n) order by n",
        *map(list, zip(*cases, strict=True)),
    )
    assert [one for (one,) in found] == [
        read_amount(amount).exceeds(Decimal(most)) for amount, most in cases
    ]


@pytest.fixture(scope="module")
def invented(tmp_path_factory):
    """Eight days of the invented shop, walked through the engine."""
    folder = tmp_path_factory.mktemp("invented")
    made = history(folder, 5, [])
    made.run(FIRST, 8)
    made.journal.close()
    return folder


def test_holds_take_as_long_as_the_journal_says(head_office, invented):
    shipped(invented, head_office.admit("one"), most=100)
    expected, entered = {}, {}
    with closing(Journal(invented)) as journal:
        for session in journal.sessions():
            for event in journal.events(session):
                fact = event.fact
                if isinstance(fact, e.SessionHeld):
                    entered.clear()
                elif isinstance(fact, e.StepEntered):
                    entered[fact.step] = event.at.mono
                elif isinstance(fact, e.StepConfirmed) and fact.step in entered:
                    took = round(event.at.mono - entered[fact.step], 6)
                    if fact.strength == "phrase":
                        expected.setdefault((session, fact.step), []).append(took)
            entered.clear()
    found = {}
    for session, step, seconds in head_office.rows(
        "select session, step, seconds from fleet.hold_time order by seq"
    ):
        found.setdefault((session, step), []).append(float(seconds))
    assert len(expected) > 100
    assert found == expected
    ((longest, *_),) = head_office.rows(
        "select max(longest_s) from fleet.holds_since('2026-01-01')"
    )
    assert abs(float(longest) - max(max(one) for one in expected.values())) <= 0.05


def test_a_hold_is_not_timed_over_a_pause_or_a_power_cut(head_office, tmp_path):
    def confirmed(step):
        return e.StepConfirmed(step, "phrase", "", "", "", (), ())

    facts = [
        (0, "b", e.SessionStarted("close", 1, "d", "m", "ana", "en", "", "", True)),
        (10, "b", e.StepEntered("paused", "paused")),
        (20, "b", e.SessionHeld("pause")),
        (90, "b", e.SessionResumed("")),
        (95, "b", confirmed("paused")),
        (100, "b", e.StepEntered("cut", "cut")),
        (5, "c", confirmed("cut")),
        (10, "c", e.StepEntered("plain", "plain")),
        (10, "c", e.PromptRepeated("plain")),
        (17.5, "c", confirmed("plain")),
    ]
    with closing(Journal(tmp_path)) as journal:
        events = [e.Event(Instant(1e9, mono, boot), KEY, fact) for mono, boot, fact in facts]
        journal.append("s", events)
    shipped(tmp_path, head_office.admit("one"))
    found = head_office.rows("select step, seconds from fleet.hold_time")
    assert found == [("plain", Decimal("7.5"))]


DERIVED = ("session", "hold_time", "result")


def test_all_that_is_derived_can_be_made_again(head_office, invented):
    shipped(invented, head_office.admit("one", "usda"), most=70)
    before = {name: set(head_office.rows(f"select * from fleet.{name}")) for name in DERIVED}
    head_office.admin.execute("select fleet.rebuild()")
    again = {name: set(head_office.rows(f"select * from fleet.{name}")) for name in DERIVED}
    assert all(before.values())
    assert again == before


def test_a_session_is_what_the_review_says_of_it(head_office, invented):
    shipped(invented, head_office.admit("one"))
    with closing(Journal(invented)) as journal:
        records = [record_of(one, journal.events(one), None) for one in journal.sessions()]
    expected = {
        (one.session, one.machine, one.procedure, one.workers[0], str(one.ended), one.begun_utc,
         one.last_utc)
        for one in records
    }  # fmt: skip
    found = head_office.rows(
        "select session, machine, procedure, worker, ended, extract(epoch from begun_at)::float8, "
        "extract(epoch from last_at)::float8 from fleet.session"
    )
    assert set(found) == expected


def test_hostile_text_is_kept_as_it_is_and_stops_no_question(head_office, tmp_path):
    with closing(Journal(tmp_path)) as journal:
        hostile = "a\x00b\ud800'; drop table fleet.journal; --\\u0000\N{GRINNING FACE}"
        fact = ResultEntered(
            "r", hostile, "left", "2026-09-01", "plain", "coliform", "999", "g", hostile, "", "a",
            True,
        )  # fmt: skip
        journal.append_shop([ShopEvent(Instant(1e9, 1.0, "b"), KEY, fact)])
    shipped(tmp_path, head_office.admit("one", "usda"), about=ABOUT)
    assert head_office.one("select body from fleet.journal") == rows(tmp_path)[0][7]
    assert head_office.one("select count(*) from fleet.standing") == 1
    assert head_office.one("select count(*) from fleet.trouble") == 0
