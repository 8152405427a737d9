"""What is due when: by the shop's clock, through the nights on which the clocks change."""

from __future__ import annotations

import random
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from itertools import pairwise

import pytest
import vobject

from kiosk.engine import commands as c
from kiosk.languages.words import languages, words
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load_review import load_schedule
from kiosk.procedure.review_rules import Interval
from kiosk.review.calendar import calendar
from kiosk.review.deviations import schedule_deviations, sentence
from kiosk.review.intervals import next_sample, spaced
from kiosk.review.schedule import DAILY, BadTime, Duty, Stand, daily, kept, opening_hours
from kiosk.shipped import shipped
from tests.unit.review_crew import (
    CHECKS,
    CLOSES,
    OPENS,
    RULES,
    SAMPLES,
    Shift,
    ended,
    library,
    local,
    site,
)

SCHEDULE = load_schedule(None, library())
DAY = date(2026, 6, 1)
HOUR = 3600


def utc(text: str) -> float:
    return datetime.fromisoformat(text).replace(tzinfo=UTC).timestamp()


def due(first: date, last: date | None = None, **hours: str):
    where = replace(site(), **hours)
    return daily(where, library(), SCHEDULE, first, first if last is None else last)


def the(dues, duty: Duty, machine: str = "patio"):
    (found,) = [one for one in dues if (one.duty, one.machine) == (duty, machine)]
    return found


def test_a_day_has_a_morning_a_check_and_an_evening_for_each_machine():
    dues = due(DAY)
    assert [one.id for one in dues] == [
        "2026-06-01/open/counter",
        "2026-06-01/open/patio",
        "2026-06-01/check/counter",
        "2026-06-01/check/patio",
        "2026-06-01/close/counter",
        "2026-06-01/close/patio",
    ]
    assert the(dues, Duty.OPEN).procedures == (OPENS["patio"],)
    assert the(dues, Duty.CHECK).procedures == (CHECKS["patio"],)
    assert the(dues, Duty.CLOSE, "counter").procedures == (CLOSES["counter"],)
    assert due(DAY) == tuple(
        one for duty in DAILY for one in daily(site(), library(), SCHEDULE, DAY, DAY, (duty,))
    )


def test_windows_stand_around_opening_and_closing():
    """Chicago in June is UTC-5: opening at 10:00 is 15:00 UTC, closing at 21:30 is 02:30 UTC."""
    opening, close = the(due(DAY), Duty.OPEN), the(due(DAY), Duty.CLOSE)
    assert (opening.from_utc, opening.until_utc) == (
        utc("2026-06-01T12:00"),
        utc("2026-06-01T15:00"),
    )
    assert (close.from_utc, close.until_utc) == (utc("2026-06-02T02:30"), utc("2026-06-02T05:30"))


def test_a_shop_that_closes_after_midnight_closes_on_the_next_calendar_day():
    close = the(due(DAY, closes="01:00"), Duty.CLOSE)
    assert close.day == DAY
    assert close.from_utc == utc("2026-06-02T06:00")


@pytest.mark.parametrize(
    ("day", "closes", "begins", "until"),
    [
        # 8 Mar 2026, 02:00 CST became 03:00 CDT: the window is three real hours all the same.
        (date(2026, 3, 7), "23:30", "2026-03-08T05:30", "2026-03-08T08:30"),
        (date(2026, 3, 7), "01:30", "2026-03-08T07:30", "2026-03-08T10:30"),
        # 02:30 never came; read as CST it is 03:30 CDT.
        (date(2026, 3, 7), "02:30", "2026-03-08T08:30", "2026-03-08T11:30"),
        # 1 Nov 2026, 02:00 CDT became 01:00 CST: 01:30 came twice, and either may be meant.
        (date(2026, 10, 31), "23:30", "2026-11-01T04:30", "2026-11-01T07:30"),
        (date(2026, 10, 31), "01:30", "2026-11-01T06:30", "2026-11-01T10:30"),
        (date(2026, 10, 31), "02:30", "2026-11-01T08:30", "2026-11-01T11:30"),
    ],
)
def test_nights_on_which_the_clocks_change(day, closes, begins, until):
    close = the(due(day, closes=closes), Duty.CLOSE)
    assert (close.from_utc, close.until_utc) == (utc(begins), utc(until))


def test_no_two_claims_of_a_machine_overlap_in_a_whole_year():
    dues = due(date(2026, 1, 1), date(2026, 12, 31))
    assert len(dues) == 6 * 365
    for duty in DAILY:
        mine = [one for one in dues if (one.duty, one.machine) == (duty, "patio")]
        for one, after in pairwise(mine):
            assert one.claim_utc <= one.from_utc <= one.until_utc < after.claim_utc


def test_a_time_that_is_none_is_refused_with_its_mend():
    with pytest.raises(BadTime, match=r"'9\.30 pm' is no time of day; write it as 21:30"):
        opening_hours(replace(site(), closes="9.30 pm"), DAY)


def close_at(clock: str, day: date = DAY, **kind):
    return ended(Shift("patio", CLOSES["patio"], local(day, clock), **kind))


def stand(now: str, *records, practice: bool = True):
    found = kept(due(DAY), records, local(DAY, now), practice=practice)
    return the_kept(found, Duty.CLOSE)


def the_kept(found, duty: Duty, machine: str = "patio"):
    (one,) = [one for one in found if (one.due.duty, one.due.machine) == (duty, machine)]
    return one


@pytest.mark.parametrize(
    ("begun", "is_"),
    [
        ("17:20", Stand.MISSED),  # before its claim at 17:30
        ("17:40", Stand.DONE),
        ("21:40", Stand.DONE),
        ("23:50", Stand.DONE),  # 29 minutes of work, done at 00:19
        ("00:10", Stand.LATE),  # done after 00:30
    ],
)
def test_a_session_counts_for_the_evening_in_which_it_was_begun(begun, is_):
    day = DAY + timedelta(days=1) if begun < "12:00" else DAY
    record = close_at(begun, day)
    after = local(DAY + timedelta(days=1), "12:00")
    found = the_kept(kept(due(DAY), [record], after, practice=True), Duty.CLOSE)
    assert found.stand is is_
    assert found.session == ("" if is_ is Stand.MISSED else record.session)


def test_what_is_not_done_is_not_yet_due_then_due_then_missed():
    assert stand("21:29").stand is Stand.NOT_YET
    assert stand("21:31").stand is Stand.DUE
    after = local(DAY + timedelta(days=1), "00:31")
    assert the_kept(kept(due(DAY), [], after, practice=True), Duty.CLOSE).stand is Stand.MISSED


def test_a_session_that_is_begun_and_not_done_is_due_until_its_time_is_over():
    walk = Shift("patio", CLOSES["patio"], local(DAY, "21:40")).to("soak")
    assert stand("23:00", walk.record()).stand is Stand.DUE
    after = local(DAY + timedelta(days=1), "00:31")
    found = the_kept(kept(due(DAY), [walk.record()], after, practice=True), Duty.CLOSE)
    assert (found.stand, found.session) == (Stand.NOT_FINISHED, walk.session)


def test_practice_does_not_count_as_work():
    record = close_at("21:40")
    assert stand("23:30", record).stand is Stand.DONE
    assert stand("23:30", record, practice=False).stand is Stand.DUE


def test_nothing_is_due_on_a_machine_that_was_taken_out_of_service():
    walk = Shift("patio", CLOSES["patio"], local(DAY, "21:40")).to("lids")
    walk.act(c.CallProblem()).act(c.NameReason("hurt")).act(c.TakeOutOfService())
    dues = due(DAY, DAY + timedelta(days=2))
    back = close_at("21:40", DAY + timedelta(days=2))
    now = local(DAY + timedelta(days=3), "12:00")
    found = kept(dues, [walk.record(), back], now, practice=True)
    patio = [one.stand for one in found if one.due.machine == "patio"]
    assert patio == [Stand.MISSED] * 2 + [Stand.OUT_OF_SERVICE] * 6 + [Stand.DONE]


def test_what_was_due_before_the_machine_was_taken_out_of_service_was_missed():
    walk = Shift("patio", OPENS["patio"], local(DAY, "09:30")).to("hands-again")
    walk.act(c.CallProblem(), after=HOUR).act(c.NameReason("hurt")).act(c.TakeOutOfService())
    now = local(DAY, "20:00")
    found = kept(due(DAY), [walk.record()], now, practice=True)
    assert the_kept(found, Duty.OPEN).stand is Stand.NOT_FINISHED


def check_at(clock: str, day: date = DAY, machine: str = "patio"):
    return ended(Shift(machine, CHECKS[machine], local(day, clock)))


def test_a_day_check_is_due_while_the_shop_is_open():
    """Chicago in June is UTC-5: 10:00 to 21:30 is 15:00 to 02:30 UTC."""
    check = the(due(DAY), Duty.CHECK)
    assert (check.from_utc, check.until_utc) == (utc("2026-06-01T15:00"), utc("2026-06-02T02:30"))
    assert check.claim_utc == utc("2026-06-01T14:00")
    assert check.source == "common practice, no source"
    assert the(due(DAY, closes="01:00"), Duty.CHECK).until_utc == utc("2026-06-02T06:00")


@pytest.mark.parametrize(
    ("begun", "is_"),
    [
        ("08:50", Stand.MISSED),  # before its claim at 09:00: the day before's
        ("09:10", Stand.DONE),
        ("14:00", Stand.DONE),
        ("21:29", Stand.LATE),  # done after 21:30
        ("22:15", Stand.LATE),
    ],
)
def test_a_day_check_counts_for_the_day_on_which_it_was_begun(begun, is_):
    record = check_at(begun)
    after = local(DAY + timedelta(days=1), "08:00")
    walks = [record, close_at("21:40")]
    found = the_kept(kept(due(DAY), walks, after, practice=True), Duty.CHECK)
    assert (found.stand, found.session) == (is_, "" if is_ is Stand.MISSED else record.session)


def test_a_day_check_is_one_of_its_own_machine_and_no_evening_work():
    records = [check_at("14:00"), close_at("21:40")]
    found = kept(due(DAY), records, local(DAY + timedelta(days=1), "08:00"), practice=True)
    assert the_kept(found, Duty.CHECK).session == records[0].session
    assert the_kept(found, Duty.CLOSE).session == records[1].session
    assert the_kept(found, Duty.CHECK, "counter").stand is Stand.NOT_OPENED


# What a day check is missed on: a day on which the machine was walked and not out of service.

NEXT = DAY + timedelta(days=1)


def walk_at(procedures, clock, day=DAY, machine="patio", *, out=False):
    """Return a session of a machine, complete or one that took it out of service."""
    walk = Shift(machine, procedures[machine], local(day, clock))
    if not out:
        return ended(walk)
    walk.act(c.CallProblem()).act(c.NameReason("hurt")).act(c.TakeOutOfService())
    return walk.record()


def check_stood(*records, day=DAY, **hours):
    """Return what had become of a day's check on the morning after, among those of three days."""
    dues = due(day - timedelta(days=1), day + timedelta(days=1), **hours)
    found = kept(dues, records, local(day + timedelta(days=1), "08:55"), practice=True)
    return next(
        one.stand for one in found if one.due.id == f"{day}/{Duty.CHECK}/patio"
    )  # fmt: skip


@pytest.mark.parametrize(
    ("walks", "is_"),
    [
        ([], Stand.NOT_OPENED),
        ([walk_at(OPENS, "08:00")], Stand.MISSED),
        ([walk_at(CLOSES, "21:40")], Stand.MISSED),
        ([walk_at(SAMPLES, "15:00")], Stand.MISSED),
        ([Shift("patio", OPENS["patio"], local(DAY, "08:00")).record()], Stand.MISSED),
        # Another machine, and the work of the days before and after.
        ([walk_at(OPENS, "08:00", machine="counter")], Stand.NOT_OPENED),
        ([walk_at(OPENS, "08:00", NEXT)], Stand.NOT_OPENED),
        ([walk_at(SAMPLES, "15:00", NEXT)], Stand.NOT_OPENED),
        # The evening before, cleaned after midnight, or only on the next forenoon.
        ([walk_at(CLOSES, "01:30")], Stand.NOT_OPENED),
        ([walk_at(CLOSES, "09:30")], Stand.NOT_OPENED),
        # Begun and left is more than missed.
        ([Shift("patio", CHECKS["patio"], local(DAY, "12:00")).record()], Stand.NOT_FINISHED),
    ],
)
def test_a_day_check_is_missed_only_where_the_machine_was_walked(walks, is_):
    assert check_stood(*walks) is is_


@pytest.mark.parametrize(
    ("walks", "is_"),
    [
        ([walk_at(OPENS, "08:00"), walk_at(CHECKS, "14:00", out=True)], Stand.OUT_OF_SERVICE),
        # Mended and put into service again on the same day.
        (
            [walk_at(OPENS, "08:00", out=True), walk_at(OPENS, "12:00"), walk_at(CLOSES, "21:40")],
            Stand.OUT_OF_SERVICE,
        ),
        ([walk_at(CHECKS, "12:00", out=True), walk_at(OPENS, "18:00")], Stand.OUT_OF_SERVICE),
        # Out and mended before the shop opened; out only after the check's time.
        ([walk_at(OPENS, "07:10", out=True), walk_at(OPENS, "08:30")], Stand.MISSED),
        ([walk_at(OPENS, "08:00"), walk_at(CLOSES, "21:40", out=True)], Stand.MISSED),
    ],
)
def test_a_day_check_is_not_missed_where_the_machine_stood_out_of_service(walks, is_):
    assert check_stood(*walks) is is_


def test_while_its_time_runs_a_day_check_is_due_whatever_was_walked():
    for walks in ([], [walk_at(OPENS, "08:00", out=True), walk_at(OPENS, "09:00")]):
        found = kept(due(DAY), walks, local(DAY, "12:00"), practice=True)
        assert the_kept(found, Duty.CHECK).stand is Stand.DUE


def test_an_evening_is_missed_whatever_was_walked():
    after = local(NEXT, "08:55")
    found = kept(due(DAY), [], after, practice=True)
    assert the_kept(found, Duty.CLOSE).stand is Stand.MISSED
    assert the_kept(found, Duty.OPEN).stand is Stand.MISSED


def test_a_check_that_nobody_could_make_is_no_deviation():
    found = kept(due(DAY), [], local(NEXT, "08:55"), practice=True)
    assert schedule_deviations([the_kept(found, Duty.CHECK)], RULES, site()) == ()


def test_a_schedule_without_a_day_check_asks_for_none():
    without = replace(SCHEDULE, check=None)
    assert {one.duty for one in daily(site(), library(), without, DAY, DAY)} == {
        Duty.OPEN, Duty.CLOSE
    }  # fmt: skip


@pytest.mark.parametrize(
    ("language", "begun", "said"),
    [
        ("en", "22:15", "the day check was finished at"),
        ("en", "", "the day check was never started"),
        ("es", "", "el control del día no se empezó"),
        ("ko", "", "영업 중 점검 시작하지 않음"),
    ],
)
def test_a_late_or_missing_day_check_is_told(language, begun, said):
    records = [close_at("21:40"), *([check_at(begun)] if begun else [])]
    found = kept(due(DAY), records, local(DAY + timedelta(days=1), "08:00"), practice=True)
    told = schedule_deviations([the_kept(found, Duty.CHECK)], RULES, site())
    assert [said in sentence(one, words(language)) for one in told] == [True]


@pytest.mark.parametrize("seed", range(5))
def test_the_order_of_sessions_and_dues_does_not_matter(seed):
    records = [close_at("21:40", DAY + timedelta(days=n)) for n in (0, 1, 3)]
    records.append(close_at("23:00", DAY))
    dues = due(DAY, DAY + timedelta(days=4))
    now = local(DAY + timedelta(days=5), "12:00")
    mix = random.Random(seed)
    shuffled = kept(
        mix.sample(dues, len(dues)), mix.sample(records, len(records)), now, practice=True
    )
    assert shuffled == kept(dues, records, now, practice=True)


STRIP = Interval(
    id="heat-treatment-strip",
    title={"en": "Change the test strip"},
    machine_kind="twin-gravity",
    days=14,
    notice_days=2,
    procedure=CLOSES["patio"],
    source="invented",
)


def strip(now: float, *records):
    (found,) = spaced(site(), [STRIP], records, now)
    return found


def test_an_interval_counts_from_the_last_time_that_it_was_done():
    record = close_at("21:40")
    assert strip(record.last_utc, record).due.day == date(2026, 6, 15)
    later = close_at("21:40", date(2026, 6, 9))
    assert strip(later.last_utc, later, record).due.day == date(2026, 6, 23)
    stopped = Shift("patio", CLOSES["patio"], local(date(2026, 6, 9), "21:40")).to("soak")
    stopped.act(c.Pause()).act(c.End()).act(c.Yes())
    assert strip(stopped.now, record, stopped.record()).due.day == date(2026, 6, 15)
    for clock, is_ in (
        (local(date(2026, 6, 12), "23:59"), Stand.NOT_YET),
        (local(date(2026, 6, 13), "00:00"), Stand.DUE),
        (local(date(2026, 6, 15), "23:59"), Stand.DUE),
        (local(date(2026, 6, 16), "00:00"), Stand.MISSED),
    ):
        assert strip(clock, record).stand is is_


def test_a_part_is_due_from_its_last_replacement():
    rings = [one for one in SCHEDULE.intervals if one.machine_kind == "twin-gravity"]
    good = close_at("21:40")
    walk = Shift("patio", CLOSES["patio"], local(date(2026, 6, 20), "21:40"))
    walk.to("inspect-o-rings").act(c.Inspected(c.Finding.REPLACED))
    new = ended(walk)
    (found,) = spaced(site(), rings, [good], good.last_utc)
    assert (found.due.day, found.due.duty) == (DAY + timedelta(days=90), Duty.PART)
    (found,) = spaced(site(), rings, [new, good], new.last_utc)
    assert found.due.day == date(2026, 6, 20) + timedelta(days=90)
    over = local(date(2026, 10, 1), "12:00")
    overdue = schedule_deviations(spaced(site(), rings, [new, good], over), RULES, site())
    assert [one.rule for one in overdue] == ["overdue"]
    assert sentence(overdue[0], words("en")) == (
        "Patio twin: Replace the O-rings was due by 2026-09-18 and is not recorded."
    )


@pytest.mark.parametrize(
    ("sampled", "day"),
    [
        ([], "2026-06-01"),
        (["2026-05-01"], "2026-06-15"),
        # Evenly spaced: 45 days after the last.
        (["2026-01-10", "2026-02-20", "2026-04-05", "2026-05-20"], "2026-07-04"),
        # The fourth-last leaves the 183 days on 2 July.
        (["2025-12-31", "2026-05-28", "2026-05-29", "2026-05-30"], "2026-07-02"),
    ],
)
def test_four_samples_fall_in_any_six_months(sampled, day):
    """Tex. Admin. Code 25-217.45: at least four samples in six months."""
    days = [date.fromisoformat(one) for one in sampled]
    found = next_sample(site(), "patio", "left", days, local(DAY, "12:00"))
    assert found.due.day == date.fromisoformat(day)
    if days:
        taken = [*days, found.due.day]
        if len(taken) > 4:
            assert sum(found.due.day - timedelta(days=183) < one for one in taken) >= 4


def test_the_calendar_is_read_back_by_another_reader():
    dues = due(date(2026, 10, 31), date(2026, 11, 1))
    now = local(date(2026, 10, 31), "08:00")
    found = [
        *kept(dues, [], now, practice=True),
        *spaced(site(), SCHEDULE.intervals, [], now),
        next_sample(site(), "patio", "left", [date(2026, 10, 1)], now),
    ]
    for language in languages():
        text = calendar(found, site(), "0a1b", words(language), now)
        assert b"\r\n" in text
        assert all(len(line) <= 75 for line in text.split(b"\r\n"))
        read = vobject.readOne(text.decode("utf-8"))
        assert len(read.vevent_list) == len(found) == 15
        uids = [one.uid.value for one in read.vevent_list]
        assert len(set(uids)) == len(uids)
        assert all(one.dtstamp.value.timestamp() == now for one in read.vevent_list)
        by_id = {one.uid.value: one for one in read.vevent_list}
        check = by_id["2026-10-31.check.patio@0a1b"]
        assert check.dtstart.value == datetime(2026, 10, 31, 15, tzinfo=UTC)
        assert check.dtend.value == datetime(2026, 11, 1, 2, 30, tzinfo=UTC)
        assert check.summary.value == words(language).say("due-check", machine="Patio twin")
        close = by_id["2026-10-31.close.patio@0a1b"]
        assert close.dtstart.value == datetime(2026, 11, 1, 2, 30, tzinfo=UTC)
        assert close.dtend.value == datetime(2026, 11, 1, 5, 30, tzinfo=UTC)
        assert close.summary.value == words(language).say("due-close", machine="Patio twin")
        sample = by_id["2026-11-15.sample-left.patio@0a1b"]
        assert sample.dtstart.value == date(2026, 11, 15)
        assert sample.dtend.value == date(2026, 11, 16)


def test_the_calendar_holds_only_what_is_to_come():
    record = close_at("21:40")
    found = kept(due(DAY), [record], record.last_utc, practice=True)
    text = calendar(found, site(), "0a1b", words("en"), record.last_utc)
    stands = [Stand.MISSED] * 2 + [Stand.NOT_OPENED, Stand.MISSED, Stand.DUE, Stand.DONE]
    assert [one.stand for one in found] == stands
    (event,) = vobject.readOne(text.decode("utf-8")).vevent_list
    assert event.uid.value == "2026-06-01.close.counter@0a1b"


@pytest.mark.parametrize(
    ("before", "after", "told"),
    [
        ("after_min: 180", "after_min: -1", "below 0"),
        ("claim_min: 240", "claim_min: 1440", "fill a whole day"),
        ("before_closing_min: 0", "before_closing_min: -30", "below 0"),
        ("claim_min: 60", "claim_min: 1440", "fill a whole day"),
        ("check-single-pump", "close-single-pump", "leaves a machine in service is 'close-"),
        ("[sample-single-pump", "[sample-pump", "leaves a machine in service is 'sample-pump'"),
        ("part: o-rings", "part: o-ring", "has no part 'o-ring'"),
        ("machine_kind: twin-gravity", "machine_kind: twin", "no machine kind is 'twin'"),
        ("part: o-rings", "procedure: polish", "no procedure is 'polish'"),
        ("    part: o-rings\n", "", "must name a procedure or a part"),
        ("notice_days: 14", "notice_days: 90", "its days make no sense"),
        ("id: single-pump-o-rings", "id: twin-gravity-o-rings", "stands twice"),
    ],
)
def test_a_faulty_schedule_is_told_with_its_mend(tmp_path, before, after, told):
    text = (shipped("procedures") / "review" / "schedule.yaml").read_text("utf-8")
    assert before in text
    file = tmp_path / "schedule.yaml"
    file.write_text(text.replace(before, after, 1), encoding="utf-8")
    with pytest.raises(FaultyFile) as caught:
        load_schedule(file, library())
    assert told in str(caught.value)
    assert "To mend:" in str(caught.value)
