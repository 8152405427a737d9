"""What the board tells a crew to do, and by when; beside the ledger, which finds it another way."""

from __future__ import annotations

from contextlib import closing
from dataclasses import replace
from datetime import UTC, date, datetime, timedelta
from zoneinfo import ZoneInfo

import pytest

from kiosk.engine import commands as c
from kiosk.journal.shop_facts import PartReplaced
from kiosk.journal.store import Journal
from kiosk.languages.words import words
from kiosk.procedure.load_review import load_schedule
from kiosk.rehearsal.invent import invent
from kiosk.review.ledger_rows import Short
from kiosk.review.record import Ended
from kiosk.review.schedule import DAILY, Duty, Stand
from kiosk.review.today import Today, today
from kiosk.screens.board_card import CardFace
from kiosk.shop import Shop
from tests.screens.scene import StillClock
from tests.unit.ledger_shop import caught_up, plan_for, tell, write
from tests.unit.review_crew import CHECKS, CLOSES, OPENS, Shift, library, local, site

SCHEDULE = load_schedule(None, library())
DAY = date(2026, 6, 1)
FIRST, DAYS = date(2026, 3, 12), 3
PATIO = {"open": OPENS["patio"], "check": CHECKS["patio"], "close": CLOSES["patio"]}


def walked(work: str, clock: str, day: date = DAY, ended: Ended = Ended.COMPLETE) -> Short:
    begun = local(day, clock)
    return Short(
        f"{work}-{day}-{clock}", PATIO[work], "patio", True, begun, begun + 1800, ended, False
    )


def due(clock: str, *sessions: Short, day: date = DAY, where=None):
    told = Today(where or site(), library(), SCHEDULE, sessions, ())
    found = told.due(local(day, clock))["patio"]
    return {one.kept.due.duty: one for one in found}


OPENED = walked("open", "08:00")


def test_the_evening_is_told_before_during_and_after_its_time():
    """Closing is at 21:30; its time ends three hours later, and 00:30 is told (the schedule)."""
    for clock, stand, day in (
        ("15:00", Stand.NOT_YET, DAY),
        ("22:00", Stand.DUE, DAY),
        ("00:29", Stand.DUE, date(2026, 6, 2)),
        ("00:31", Stand.MISSED, date(2026, 6, 2)),
    ):
        one = due(clock, OPENED, day=day)[Duty.CLOSE]
        assert (one.kept.stand, one.kept.due.day, one.overdue) == (
            stand, DAY, stand is Stand.MISSED,
        )  # fmt: skip
    assert one.kept.due.until_utc == datetime(2026, 6, 2, 5, 30, tzinfo=UTC).timestamp()


def test_an_evening_that_is_done_gives_way_to_the_next():
    one = due("23:00", OPENED, walked("close", "21:40"))[Duty.CLOSE]
    assert (one.kept.stand, one.kept.due.day) == (Stand.NOT_YET, date(2026, 6, 2))


def test_an_evening_that_was_begun_and_left_is_overdue_until_the_next_may_be_begun():
    left = walked("close", "21:40", ended=Ended.EARLY)
    assert due("02:00", OPENED, left, day=date(2026, 6, 2))[Duty.CLOSE].overdue
    later = due("17:31", OPENED, left, day=date(2026, 6, 2))[Duty.CLOSE]
    assert (later.kept.stand, later.kept.due.day) == (Stand.NOT_YET, date(2026, 6, 2))


def test_a_machine_that_is_new_has_nothing_to_make_up_for():
    assert due("02:00", day=date(2026, 6, 2))[Duty.CLOSE].kept.due.day == date(2026, 6, 2)
    assert due("22:00")[Duty.CLOSE].kept.stand is Stand.DUE


def test_a_day_check_is_told_while_the_shop_is_open():
    assert due("12:00", OPENED)[Duty.CHECK].kept.stand is Stand.DUE
    done = due("14:00", OPENED, walked("check", "12:10"))[Duty.CHECK]
    assert (done.kept.stand, done.kept.due.day) == (Stand.NOT_YET, date(2026, 6, 2))


def test_after_a_holiday_the_next_day_on_which_it_opens_is_told():
    shut = replace(site(), closed_days=("2026-06-02", "2026-06-03"))
    one = due("09:00", OPENED, walked("close", "21:40"), day=date(2026, 6, 2), where=shut)
    assert one[Duty.OPEN].kept.due.day == date(2026, 6, 4)


def test_a_sample_is_told_only_once_it_is_time():
    taken = replace(walked("check", "12:00", date(2026, 5, 20)), procedure="sample-twin-gravity")
    assert Duty.SAMPLE not in due("12:00", OPENED, taken)
    never = due("12:00", OPENED)[Duty.SAMPLE]
    assert never.never
    assert "sample-twin-gravity" in never.procedures
    # 183 days with four samples: every 45 days (Tex. Admin. Code 25-217.45, READ).
    notice = due("12:00", OPENED, taken, day=date(2026, 6, 25))[Duty.SAMPLE]
    assert (notice.never, notice.overdue, notice.kept.due.day) == (False, False, date(2026, 7, 4))
    assert due("12:00", OPENED, taken, day=date(2026, 7, 5))[Duty.SAMPLE].overdue


# Wearing parts: every 90 days, told 14 days ahead (the schedule's own, invented).

RINGS = ("twin-gravity-o-rings", "patio")


def rings(day: date, replaced: date | None, first: date = DAY):
    done = {} if replaced is None else {RINGS: local(replaced, "22:10")}
    began = {"patio": local(first, "08:00")}
    told = Today(site(), library(), SCHEDULE, (), (), done=done, first=began)
    return [one for one in told.due(local(day, "12:00"))["patio"] if one.kept.due.duty is Duty.PART]


def test_a_part_is_told_only_once_it_is_time():
    changed = DAY + timedelta(days=30)
    last = changed + timedelta(days=90)
    assert rings(last - timedelta(days=15), changed) == []
    (one,) = rings(last - timedelta(days=14), changed)
    assert (one.kept.due.day, one.overdue, one.procedures) == (last, False, ())
    assert words("en").text(one.kept.due.title) == "Replace the O-rings"
    (late,) = rings(last + timedelta(days=1), changed)
    assert late.overdue


def test_a_part_that_was_never_replaced_counts_from_the_machines_first_session():
    assert rings(DAY + timedelta(days=75), None) == []
    (one,) = rings(DAY + timedelta(days=91), None)
    assert one.overdue
    assert one.kept.due.day == DAY + timedelta(days=90)


def replacing(machine: str, day: date) -> Shift:
    """An evening in which the O-rings were replaced."""
    walk = Shift(machine, CLOSES[machine], local(day, "21:40")).to("inspect-o-rings")
    return walk.act(c.Inspected(c.Finding.REPLACED)).to_the_end()


def plain(machine: str, day: date) -> Shift:
    return Shift(machine, CLOSES[machine], local(day, "21:40") + 7200).to_the_end()


def by_hand(machine: str, day: str, part: str = "o-rings", *, practice: bool = True):
    return PartReplaced(machine, part, day, "priya", "", practice)


def test_the_board_knows_of_each_part_what_the_ledger_knows(tmp_path):
    walks = [replacing("patio", DAY), plain("counter", DAY), replacing("counter", DAY),
             plain("patio", DAY + timedelta(days=3)), replacing("patio", DAY + timedelta(days=9)),
             Shift("patio", CLOSES["patio"], local(DAY + timedelta(days=20), "21:40"))]  # fmt: skip
    facts = [
        by_hand("counter", "2026-07-01"), by_hand("counter", "2026-06-20"),
        by_hand("patio", "2026-08-30", practice=False),
        by_hand("patio", "2026-09-01", "drive-seals"),
    ]  # fmt: skip
    with closing(Journal(tmp_path)) as journal:
        write(journal, *walks)
        for fact in facts:
            tell(journal, fact, local(date(2026, 9, 2), "09:00"))
        with closing(caught_up(journal, tmp_path)) as ledger:
            seen = set()
            for days in range(60, 130, 3):
                now = local(DAY + timedelta(days=days), "12:00")
                every = ledger.spaced(now, practice=True)
                spaced = [one for one in every if one.stand is not Stand.NOT_YET]
                due = today(site(), library(), SCHEDULE, journal, plan_for, now).due(now)
                told = [x.kept for mine in due.values() for x in mine if x.kept.due.title]
                assert sorted(told, key=repr) == sorted(spaced, key=repr)
                seen |= {(one.due.machine, one.due.day, one.stand) for one in spaced}
    ends = {"patio": DAY + timedelta(days=99), "counter": date(2026, 7, 1) + timedelta(days=90)}
    assert seen == {
        (machine, day, stand)
        for machine, day in ends.items()
        for stand in (Stand.DUE, Stand.MISSED)
    }


def test_a_day_that_is_none_is_no_replacement(tmp_path):
    with closing(Journal(tmp_path)) as journal:
        write(journal, replacing("patio", DAY))
        for day in ("soon", "2026-02-30", "0001-01-01"):
            tell(journal, by_hand("patio", day), local(DAY, "23:00"))
        now = local(DAY + timedelta(days=91), "12:00")
        due = today(site(), library(), SCHEDULE, journal, plan_for, now).due(now)["patio"]
    (one,) = [x for x in due if x.kept.due.duty is Duty.PART]
    assert one.kept.due.day == DAY + timedelta(days=90)


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    made = tmp_path_factory.mktemp("invented")
    invent(made, site(), library(), FIRST, DAYS, seed=13)
    return made


@pytest.mark.parametrize("hours", range(-4, 60, 9))
def test_it_says_what_the_ledger_says(folder, hours):
    """After invented days with planted omissions, asked as time goes on and nothing is done."""
    now = local(FIRST + timedelta(days=DAYS), "10:00") + hours * 3600
    with closing(Journal(folder)) as journal:
        made = Shop(site(), library(), journal, StillClock(), folder)
        with closing(made.ledger()) as ledger:
            ledger.catch_up()
            until = FIRST + timedelta(days=DAYS + 4)
            kept = {one.due.id: one for one in ledger.kept(FIRST, until, now, practice=True)}
        found = today(site(), library(), SCHEDULE, journal, made.plan_for, now).due(now)
    daily = [one.kept for mine in found.values() for one in mine if one.kept.due.duty in DAILY]
    assert len(daily) == 6
    for one in daily:
        assert one == kept[one.due.id]


def test_a_card_tells_a_part_by_its_day_beside_the_evening_work(folder):
    """What is due for the part hides no work that is due on the machine."""
    with closing(Journal(folder)) as journal:
        shop = Shop(site(), library(), journal, StillClock(), folder)
        (card,) = [one for one in shop.cards() if one.machine.id == "patio"]
        now = local(FIRST + timedelta(days=80), "12:00")
        due = today(site(), library(), SCHEDULE, journal, shop.plan_for, now).due(now)["patio"]
        face = CardFace(words("en"), ZoneInfo(site().time_zone), now)
        without = [one for one in due if one.kept.due.duty is not Duty.PART]
        said = face.work(card, due)
        # Due on its ninetieth day: 10 June.
        assert "Replace the O-rings: by Jun 10" in said
        assert [one for one in said if "O-rings" not in one] == face.work(card, without)
        late = local(FIRST + timedelta(days=95), "12:00")
        due = today(site(), library(), SCHEDULE, journal, shop.plan_for, late).due(late)["patio"]
        said = CardFace(words("es"), ZoneInfo(site().time_zone), late).work(card, due)
        assert any(one.startswith("!") and "anillos de goma" in one for one in said)


def test_rows_are_found_by_their_time(folder):
    with closing(Journal(folder)) as journal:
        rows = [(row["seq"], row["utc"]) for row in journal.rows()]
        for seq, told in (rows[0], rows[len(rows) // 2], rows[-1]):
            at = datetime.fromisoformat(told).timestamp()
            before = [one for one, utc in rows if utc < told]
            assert journal.row_at(at) == max(before, default=0) < seq
        assert journal.row_at(at + 1) == rows[-1][0]
        assert journal.row_at(0) == 0
