"""When a head was sampled: by a session that took the sample, by a result, or by both."""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace
from datetime import date, timedelta

import pytest

from kiosk.journal.store import Journal
from kiosk.languages.words import languages, words
from kiosk.review.deviations import sentence
from kiosk.review.intervals import next_sample
from kiosk.review.results import Entered, Sample, heads_of
from kiosk.review.sampling import Sampled, samplings
from kiosk.trade.authorities import Analysis, Product
from kiosk.trade.rounding import read_amount
from tests.unit.ledger_shop import SCHEDULE, caught_up, write
from tests.unit.review_crew import CLOSES, SAMPLES, Shift, ended, library, local, site

DAY = date(2026, 11, 3)
NOW = local(DAY + timedelta(days=20), "12:00")
HEADS = heads_of(site(), library())


def take(day: date = DAY, machine: str = "patio") -> Shift:
    return Shift(machine, SAMPLES[machine], local(day, "15:00"))


def result(day: date = DAY, head: str = "left") -> Entered:
    sample = Sample(
        "patio", head, day, Product.PLAIN, Analysis.TOTAL_COUNT, read_amount("900"), "g", "Lab", ""
    )
    return Entered(f"{day}-{head}", sample, "p1", 0.0)


def found(*sessions, entered=(), now: float = NOW):
    every = samplings(site(), HEADS, SCHEDULE.samples, sessions, entered, now)
    return {(one.kept.due.machine, one.barrel): one for one in every}


def test_a_session_counts_for_every_head_of_its_machine_and_of_no_other():
    record = ended(take())
    by_head = found(record)
    assert set(by_head) == {(machine, head) for machine, heads in HEADS.items() for head in heads}
    for head in HEADS["patio"]:
        assert by_head["patio", head].last == Sampled(day=DAY, session=record.session)
        # Four in 183 days, evenly spaced: 45 days. Tex. Admin. Code 25-217.45 (READ).
        assert by_head["patio", head].kept.due.day == DAY + timedelta(days=45)
    assert by_head["counter", "single"].last is None
    assert by_head["counter", "single"].kept == next_sample(site(), "counter", "single", (), NOW)


def test_a_result_counts_for_its_own_head_the_same_as_a_session():
    by_head = found(entered=[result()])
    assert by_head["patio", "left"].last == Sampled(day=DAY, entered=True)
    assert by_head["patio", "left"].kept == found(ended(take()))["patio", "left"].kept
    assert by_head["patio", "right"].last is None


def test_a_session_and_its_result_are_one_sampling():
    record = ended(take())
    earlier = [result(DAY - timedelta(days=days)) for days in (60, 120)]
    one = found(record, entered=[*earlier, result()])["patio", "left"]
    assert one.last == Sampled(day=DAY, session=record.session, entered=True)
    days = [DAY, *(of.of.day for of in earlier)]
    assert one.kept == next_sample(site(), "patio", "left", days, NOW)


@pytest.mark.parametrize(
    "record",
    [
        take().to("chill").record(),
        replace(ended(take()), practice=False),
        ended(Shift("patio", CLOSES["patio"], local(DAY, "21:40"))),
    ],
    ids=("not complete", "no practice", "no sample"),
)
def test_what_took_no_sample_of_this_shop_counts_not(record):
    assert found(record)["patio", "left"].last is None


def test_the_day_is_that_of_the_sites_clock():
    late = Shift("patio", SAMPLES["patio"], local(DAY, "23:50"))
    assert found(ended(late))["patio", "left"].last.day == DAY


def test_the_ledger_says_the_same(tmp_path):
    walks = [take().to_the_end(), take(DAY + timedelta(days=1), "counter").to("label")]
    with closing(Journal(tmp_path)) as journal:
        write(journal, *walks)
        with closing(caught_up(journal, tmp_path)) as ledger:
            read = ledger.samplings([result()], NOW, practice=True)
            others = ledger.samplings([], NOW, practice=False)
    assert read == tuple(found(*(one.record() for one in walks), entered=[result()]).values())
    assert {one.last for one in others} == {None}


def overdue(ledger, now, entered=()):
    found = ledger.eyes_first(now, practice=True, entered=entered, limit=None)
    return [one for one in found if one.facts["duty"] == "sample"]


@pytest.fixture
def sampled(tmp_path):
    """A ledger in which the one machine was sampled on a day, and the other never."""
    with closing(Journal(tmp_path)) as journal:
        write(journal, take().to_the_end())
        with closing(caught_up(journal, tmp_path)) as ledger:
            yield ledger


def test_a_sample_that_is_overdue_needs_eyes_first(sampled):
    last = DAY + timedelta(days=45)
    assert overdue(sampled, local(last, "23:59")) == []
    (one,) = overdue(sampled, local(last + timedelta(days=1), "00:01"))
    assert (one.rule, one.machine, one.session) == ("overdue", "patio", "")
    assert str(last) in sentence(one, words("en"))
    assert all(sentence(one, words(language)) for language in languages())


def test_of_the_heads_of_a_machine_the_one_that_waits_longest_is_told(sampled):
    now = local(DAY + timedelta(days=60), "12:00")
    entered = [result(DAY + timedelta(days=days), "right") for days in (5, 50)]
    (one,) = overdue(sampled, now, entered)
    assert one.facts["day"] == str(DAY + timedelta(days=45))
    everywhere = [
        *entered,
        result(DAY + timedelta(days=50)),
        result(DAY + timedelta(days=2), "twist"),
    ]
    (one,) = overdue(sampled, now, everywhere)
    assert one.facts["day"] == str(DAY + timedelta(days=47))
    everywhere.append(result(DAY + timedelta(days=50), "twist"))
    assert overdue(sampled, now, everywhere) == []


def test_where_the_results_cannot_be_read_nothing_is_said_of_samples(sampled):
    assert overdue(sampled, local(DAY + timedelta(days=60), "12:00"), None) == []
