"""The ledger: the same as reading the whole journal, however it was read; thrown away when it must.

What it holds is held against plain SQL over the journal's rows, and against the functions that look
at whole sessions.
"""

from __future__ import annotations

import json
import random
import sqlite3
from dataclasses import replace
from datetime import timedelta
from decimal import Decimal
from statistics import median

import pytest

from kiosk.engine import commands as c
from kiosk.engine.events import SessionStarted, StepEntered
from kiosk.engine.state import Mode
from kiosk.journal.shop_facts import PartReplaced, SentBack, SignedOff
from kiosk.journal.store import Journal
from kiosk.procedure.plan import Inspect
from kiosk.procedure.review_rules import DeviationRules
from kiosk.review.deviations import deviations, in_order, schedule_deviations
from kiosk.review.intervals import spaced
from kiosk.review.ledger import FILE, LedgerFailed
from kiosk.review.ledger_lines import Stood
from kiosk.review.parts import wear
from kiosk.review.record import Asked, Ended, Said
from kiosk.review.recording import record_of
from kiosk.review.schedule import DAILY, Duty, Stand, daily, kept
from tests.proof.walks import TOUCH
from tests.unit.ledger_shop import (
    FIRST,
    SCHEDULE,
    all_sorts,
    caught_up,
    dumped,
    in_pieces,
    ledger,
    plan_for,
    tell,
    write,
)
from tests.unit.review_crew import CLOSES, RULES, Shift, library, local, site


@pytest.fixture
def journal(tmp_path):
    opened = Journal(tmp_path)
    yield opened
    opened.close()


@pytest.fixture(scope="module")
def sorts() -> list[Shift]:
    return all_sorts(random.Random(3), 6)


def records(journal: Journal):
    found = []
    for session in journal.sessions():
        events = journal.events(session)
        begun = next(one.fact for one in events if isinstance(one.fact, SessionStarted))
        found.append(record_of(session, events, plan_for(begun)))
    return found


def without_seq(found):
    return tuple(replace(one, seq=0) for one in found)


# The same as the whole journal.


def test_lines_are_what_plain_sql_says_of_the_rows(journal, tmp_path, sorts):
    write(journal, *sorts)
    lines = {
        one.session: one for one in caught_up(journal, tmp_path).lines(practice=True, limit=None)
    }
    sql = """
        select session, min(seq), max(seq), sum(kind = 'StepConfirmed'),
            sum(kind = 'SessionCompleted'), sum(kind = 'SessionAborted'),
            sum(json_extract(body, '$.by.channel') = 'voice' and kind in ('PhraseGiven',
                'ReadBackAgreed', 'ReadBackDenied', 'VerifyFailed', 'ReadingGiven', 'ReadingOff',
                'PassDone', 'PassJudged', 'PassesRanOut', 'TriedAgain', 'StepConfirmed')) > 0,
            round((julianday(substr(max(utc), 1, 23)) - julianday(substr(min(utc), 1, 23))) * 86400)
        from journal group by session
    """
    rows = sqlite3.connect(journal.file).execute(sql).fetchall()
    assert len(rows) == len(lines) == 24
    for session, first, last, steps, complete, aborted, spoken, seconds in rows:
        one = lines[session]
        assert (one.first_seq, one.last_seq, one.steps, one.spoken) == (first, last, steps, spoken)
        assert one.length_s == pytest.approx(seconds, abs=1)
        assert (one.ended is Ended.COMPLETE, one.ended is Ended.EARLY) == (complete, aborted)
    assert {one.ended for one in lines.values()} == {Ended.COMPLETE, Ended.EARLY, Ended.OPEN}


def test_readings_are_those_of_the_rows(journal, tmp_path, sorts):
    write(journal, *sorts)
    sql = """
        select seq, session, json_extract(body, '$.fact.step') as step,
            coalesce(json_extract(body, '$.fact.answer'), json_extract(body, '$.fact.value')),
            json_extract(body, '$.fact.limit'), kind = 'StepConfirmed'
        from journal where kind in ('StepConfirmed', 'ReadingOff') and (session, step) in (
            select session, json_extract(body, '$.fact.step') from journal
            where kind in ('StepConfirmed', 'ReadingGiven')
                and json_extract(body, '$.fact.unit') in ('mg/L', '°C', '°F', 'L'))
    """
    rows = sqlite3.connect(journal.file).execute(sql).fetchall()
    found = caught_up(journal, tmp_path).readings(practice=True)
    assert len(found) > 20
    assert {(one.seq, one.session, one.step, one.value, one.limit, one.kept or not one.limit)
            for one in found} == {(*row[:5], bool(row[5])) for row in rows}  # fmt: skip


def test_deviations_are_those_of_the_whole_journal(journal, tmp_path, sorts):
    write(journal, *sorts)
    made, everything = caught_up(journal, tmp_path), records(journal)
    now = max(one.last_utc for one in everything) + 86_400
    for one in everything:
        expected = deviations(one, everything, RULES, now if not one.over else one.last_utc)
        found = made.deviations(one.session, now)
        assert without_seq(found) == expected
        line = made.line(one.session)
        if one.over:
            assert line.deviations == len(expected)
            assert line.heaviest == max((x.weight for x in expected), default=0)
    month = made.deviations_between(0, now, now, practice=True)
    assert month == in_order(x for one in everything for x in made.deviations(one.session, now))
    assert len({one.rule for one in month}) >= 8
    assert made.deviations_between(0, now, now, practice=False) == ()


def test_the_usual_length_is_the_median_of_what_had_begun_before(journal, tmp_path, sorts):
    write(journal, *sorts)
    lines = caught_up(journal, tmp_path).lines(practice=True, limit=None)
    for one in lines:
        earlier = [
            x.length_s
            for x in lines
            if (x.machine, x.procedure) == (one.machine, one.procedure)
            and x.ended is Ended.COMPLETE
            and x.begun_utc < one.begun_utc
        ]
        assert (one.usual_s, one.usual_of) == (median(earlier) if earlier else None, len(earlier))
    assert max(one.usual_of for one in lines) >= 4


def test_each_deviation_stands_on_a_row_of_its_session_and_time(journal, tmp_path, sorts):
    write(journal, *sorts)
    made = caught_up(journal, tmp_path)
    rows = {row["seq"]: row for row in journal.rows()}
    for one in made.deviations_between(0, 2e9, 2e9, practice=True):
        row = rows[one.seq]
        assert row["session"] == one.session
        times = {x.at.utc for seq, x in journal.numbered(one.session) if seq == one.seq}
        assert times == {one.at_utc}


def test_a_record_names_the_rows_that_it_was_made_of(journal, tmp_path, sorts):
    write(journal, *sorts)
    made = caught_up(journal, tmp_path)
    rows = {row["seq"]: (row["kind"], json.loads(row["body"])["fact"]) for row in journal.rows()}
    for line in made.lines(practice=True, limit=None):
        record = made.record(line.session)
        assert (record.first_seq, record.last_seq) == (line.first_seq, line.last_seq)
        for stay in record.steps:
            assert rows[stay.entered_seq][0] == "StepEntered"
            assert rows[stay.entered_seq][1]["step"] == stay.step
            assert stay.entered_seq < stay.left_seq or stay.left_seq == record.last_seq
            for part in stay.parts:
                kind, fact = rows[part.seq]
                assert fact["step"] == stay.step
                assert (kind == "StepConfirmed") == (part.said is Said.CONFIRMED)
        for seen in record.parts:
            assert rows[seen.seq][1]["answer"] == (seen.finding or str(seen.counted))
        for one in record.problems:
            assert rows[one.seq] == ("SessionHeld", {"because": "problem"})


# Read in pieces.


@pytest.mark.parametrize("seed", range(4))
def test_read_in_pieces_it_is_the_same_as_read_at_once(journal, tmp_path, seed):
    chance = random.Random(seed)
    made = ledger(journal, tmp_path)
    for walk, piece in in_pieces(all_sorts(chance, 3), chance):
        journal.append(walk.session, walk.events[piece])
        if chance.random() < 0.3:
            tell(journal, SignedOff(walk.session, "priya", ""), walk.now)
        if chance.random() < 0.5:
            made.catch_up()
    made.catch_up()
    assert dumped(made) == dumped(caught_up(journal, tmp_path / "at-once"))
    assert made.catch_up() == 0


def test_a_session_that_ends_late_changes_what_is_usual_for_later_ones(journal, tmp_path):
    old = Shift("patio", CLOSES["patio"], local(FIRST, "21:40")).to("wash-mode")
    new = Shift("patio", CLOSES["patio"], local(FIRST + timedelta(days=1), "21:40")).to_the_end()
    begun = len(old.events)
    write(journal, old, new)
    made = caught_up(journal, tmp_path)
    assert made.line(new.session).usual_of == 0
    journal.append(old.session, old.to_the_end().events[begun:])
    assert made.catch_up() == 1
    assert made.line(new.session).usual_of == 1


def test_a_reading_that_is_broken_off_goes_on_where_it_was(journal, tmp_path, sorts, monkeypatch):
    monkeypatch.setattr("kiosk.review.ledger_reading._AT_ONCE", 300)
    monkeypatch.setattr("kiosk.review.ledger_reading._TOLD_EVERY", 1)
    write(journal, *sorts)
    made = ledger(journal, tmp_path)
    told: list[tuple[int, int]] = []

    class Broken(Exception):
        pass

    def stop(done: int, of: int) -> None:
        told.append((done, of))
        if done >= 10:
            raise Broken

    with pytest.raises(Broken):
        made.catch_up(stop)
    assert told == [(done, len(sorts)) for done in range(1, 11)]
    kept = len(made.lines(practice=True, limit=None))
    assert 5 <= kept < 10
    made.close()
    made = ledger(journal, tmp_path)
    told.clear()
    left = made.catch_up(lambda done, of: told.append((done, of)))
    assert len(sorts) - kept <= left <= len(sorts) - kept + 1
    assert told[-1] == (left, left)
    assert sorted(told) == told
    assert dumped(made) == dumped(caught_up(journal, tmp_path / "at-once"))


def test_two_that_read_at_the_same_time_do_not_hinder_each_other(journal, tmp_path, sorts):
    write(journal, *sorts[:6])
    one, two = ledger(journal, tmp_path), ledger(journal, tmp_path)
    assert one.catch_up() == 6
    assert two.catch_up() == 0
    write(journal, *sorts[6:])
    assert two.catch_up() == len(sorts) - 6
    assert one.catch_up() == 0
    assert dumped(one) == dumped(two) == dumped(caught_up(journal, tmp_path / "at-once"))


# Thrown away.


def test_deleted_it_is_made_anew(journal, tmp_path, sorts):
    write(journal, *sorts[:4])
    made = caught_up(journal, tmp_path)
    before = dumped(made)
    made.close()
    for file in tmp_path.glob(f"{FILE}*"):
        file.unlink()
    assert dumped(caught_up(journal, tmp_path)) == before


@pytest.mark.parametrize("content", [b"", b"no database", b"SQLite format 3\0" + b"x" * 5000])
def test_a_file_that_is_no_ledger_is_made_anew(journal, tmp_path, sorts, content):
    write(journal, sorts[0])
    (tmp_path / FILE).write_bytes(content)
    assert caught_up(journal, tmp_path).lines(practice=True)[0].session == sorts[0].session


def test_where_no_ledger_can_be_made_the_reason_is_told(journal, tmp_path):
    (tmp_path / FILE).mkdir()
    with pytest.raises(LedgerFailed, match=r"ledger\.db"):
        ledger(journal, tmp_path)


def test_another_journal_or_an_older_one_is_read_anew(tmp_path, sorts):
    whole, other, old = (Journal(tmp_path / name) for name in ("whole", "other", "old"))
    write(whole, *sorts[:4])
    write(other, *sorts[4:6])
    write(old, *sorts[:2])
    for later in (other, old):
        made = caught_up(whole, tmp_path)
        assert len(made.lines(practice=True)) == 4
        made.close()
        later.kiosk = whole.kiosk
        assert dumped(caught_up(later, tmp_path)) == dumped(caught_up(later, tmp_path / "at-once"))
    for one in (whole, other, old):
        one.close()


def test_a_row_with_another_hash_has_the_journal_read_anew(journal, tmp_path, sorts):
    write(journal, *sorts[:2])
    made = caught_up(journal, tmp_path)
    db = sqlite3.connect(journal.file)
    for (name,) in db.execute("select name from sqlite_master where type = 'trigger'").fetchall():
        db.execute(f"drop trigger {name}")
    db.execute('update journal set body = replace(body, \'"worker":"\', \'"worker":"x\')')
    db.commit()
    assert made.catch_up() == 0
    db.execute("update journal set hash = 'other' where seq = (select max(seq) from journal)")
    db.commit()
    db.close()
    assert made.catch_up() == 2
    assert all(who.startswith("x") for one in made.lines(practice=True) for who in one.workers)


def test_other_rules_judge_everything_anew(journal, tmp_path, sorts):
    write(journal, *sorts)
    made = caught_up(journal, tmp_path)
    made.close()
    heavier = tuple(replace(one, weight=100) for one in RULES.rules)
    made = ledger(journal, tmp_path, DeviationRules(drafted=(), rules=heavier))
    assert made.catch_up() == len(sorts)
    assert {one.heaviest for one in made.lines(practice=True)} <= {0, 100}


def test_a_session_of_a_newer_kiosk_is_named_and_hinders_no_other(journal, tmp_path, sorts):
    write(journal, *sorts[:2])
    journal.append("odd", [replace(sorts[0].events[1], fact=StepEntered("a", "b"))])
    made = caught_up(journal, tmp_path)
    ((session, why),) = made.unread()
    assert session == "odd"
    assert "no beginning" in why
    assert len(made.lines(practice=True)) == 2
    with pytest.raises(KeyError):
        made.line("odd")
    journal.append("odd", sorts[3].events)
    made.catch_up()
    assert made.unread() == ()
    assert made.line("odd").procedure == sorts[3].plan.procedure


def test_without_the_text_readings_are_kept_and_waits_are_none(journal, tmp_path):
    walk = Shift("patio", CLOSES["patio"], local(FIRST, "21:40")).to_the_end()
    write(journal, walk)
    known = {(x.seq, x.value, x.kept) for x in caught_up(journal, tmp_path).readings(practice=True)}
    made = ledger(journal, tmp_path / "unknown")
    made._reader._plan_of = lambda _: None
    made.catch_up()
    assert {(x.seq, x.value, x.kept) for x in made.readings(practice=True)} == known
    assert {x.kind for x in made._reader.record(walk.session).steps} == {Asked.UNKNOWN}
    assert not made.line(walk.session).text_known


# Asked.


def test_pages_follow_each_other_and_filters_leave_out_what_they_say(journal, tmp_path, sorts):
    write(journal, *sorts)
    made = caught_up(journal, tmp_path)
    everything = made.lines(practice=True, limit=None)
    assert [one.begun_utc for one in everything] == sorted(
        (one.begun_utc for one in everything), reverse=True
    )
    paged, last = [], None
    while page := made.lines(practice=True, limit=7, older_than=last):
        paged += page
        last = page[-1]
    assert tuple(paged) == everything
    middle = everything[10].begun_utc
    for asked, fits in (
        ({"machine": "patio"}, lambda x: x.machine == "patio"),
        ({"worker": "b"}, lambda x: "b" in x.workers),
        ({"procedure": CLOSES["counter"]}, lambda x: x.procedure == CLOSES["counter"]),
        ({"from_utc": middle}, lambda x: x.begun_utc >= middle),
        ({"until_utc": middle}, lambda x: x.begun_utc < middle),
    ):
        expected = tuple(one for one in everything if fits(one))
        assert made.lines(practice=True, limit=None, **asked) == expected
        assert 0 < len(expected) < len(everything)
    assert made.lines(practice=False) == ()
    walked = made.walked_by(practice=True)
    assert sum(one.sessions for one in walked) == sum(len(one.workers) for one in everything)
    for one in walked:
        mine = [x for x in everything if one.worker in x.workers and x.procedure == one.procedure]
        assert (one.sessions, one.first_utc) == (len(mine), mine[-1].begun_utc)
        assert (one.first_session, one.last_utc) == (mine[-1].session, mine[0].begun_utc)


def test_a_signature_counts_until_the_session_goes_on(journal, tmp_path):
    walk = Shift("patio", CLOSES["patio"], local(FIRST, "21:40")).to("wash-mode").act(c.Pause())
    write(journal, walk)
    written = len(walk.events)
    made = caught_up(journal, tmp_path)
    assert made.line(walk.session).signed is None
    tell(journal, SentBack(walk.session, "priya", "finish it"), walk.now + 60)
    made.catch_up()
    signed = made.line(walk.session).signed
    assert signed is not None
    assert (signed.what, signed.by, signed.remark) == (Stood.SENT_BACK, "priya", "finish it")
    journal.append(walk.session, walk.to_the_end().events[written:])
    made.catch_up()
    assert made.line(walk.session).signed is None
    assert made.lines(practice=True, unsigned=True) == made.lines(practice=True)
    tell(journal, SignedOff(walk.session, "priya", ""), walk.now + 60)
    made.catch_up()
    assert made.lines(practice=True, unsigned=True) == ()
    assert [one.what for one in made.signed(walk.session)] == [Stood.SENT_BACK, Stood.SIGNED_OFF]


def test_eyes_first_is_what_is_recent_or_open_and_not_signed_off(journal, tmp_path, sorts):
    missed = local(FIRST + timedelta(days=4), "21:40")
    write(journal, *(one for one in sorts if not missed <= one.events[0].at.utc < missed + 600))
    everything = records(journal)
    now = local(FIRST + timedelta(days=6), "09:00")
    signed = [one.session for one in everything if one.over][-4:]
    back = next(one.session for one in everything if one.over and one.session not in signed)
    for session in signed:
        tell(journal, SignedOff(session, "priya", ""), now)
    tell(journal, SentBack(back, "priya", "look again"), now)
    made = caught_up(journal, tmp_path)
    seen = [
        x
        for one in everything
        if one.session not in signed and (one.last_utc >= now - 3 * 86_400 or not one.over)
        for x in deviations(one, everything, RULES, now)
    ]
    today = FIRST + timedelta(days=6)
    dues = daily(site(), library(), SCHEDULE, today - timedelta(days=3), today + timedelta(days=1))
    asked = {one.id for one in dues if one.day <= today}
    due = schedule_deviations(
        (x for x in kept(dues, everything, now, practice=True) if x.due.id in asked), RULES, site()
    )
    overdue = schedule_deviations(made.spaced(now, practice=True), RULES, site())
    expected = in_order([*seen, *overdue, *(one for one in due if one.session not in signed)])
    found = made.eyes_first(now, practice=True, entered=(), limit=None)
    assert without_seq(found) == expected
    assert [one.weight for one in found] == sorted((one.weight for one in found), reverse=True)
    assert made.eyes_first(now, practice=True, entered=(), limit=3) == found[:3]
    assert "never-started" in {one.rule for one in found}
    assert made.eyes_first(now, practice=False, entered=(), limit=None) == ()


# What was due.


def test_what_became_of_dues_is_the_same_as_from_all_sessions(journal, tmp_path, sorts):
    write(journal, *sorts)
    made, everything = caught_up(journal, tmp_path), records(journal)
    now = local(FIRST + timedelta(days=6), "09:00")
    first = min(one.begun_utc for one in everything)
    dues = daily(site(), library(), SCHEDULE, FIRST - timedelta(days=5), FIRST + timedelta(days=9))
    expected = [
        one
        for one in kept(dues, everything, now, practice=True)
        if FIRST <= one.due.day <= FIRST + timedelta(days=6) and one.due.until_utc >= first
    ]
    found = made.kept(FIRST, FIRST + timedelta(days=6), now, practice=True)
    assert list(found) == expected
    assert len({one.stand for one in found}) >= 4
    for duty in DAILY:
        alone = made.kept(FIRST, FIRST + timedelta(days=6), now, practice=True, duties=(duty,))
        assert alone == tuple(one for one in found if one.due.duty is duty)
    later = now + 500 * 86_400
    for at in (now, later):
        expected_spaced = spaced(site(), SCHEDULE.intervals, everything, at)
        assert made.spaced(at, practice=True) == expected_spaced
        assert len(expected_spaced) >= 2
    assert made.kept(FIRST, FIRST + timedelta(days=6), now, practice=False) == ()


def test_nothing_was_due_before_the_first_session(journal, tmp_path):
    walk = Shift("patio", CLOSES["patio"], local(FIRST, "21:40")).to_the_end()
    write(journal, walk)
    found = caught_up(journal, tmp_path).kept(
        FIRST - timedelta(days=30), FIRST, walk.now, practice=True
    )
    assert {(one.due.machine, one.due.duty, one.stand) for one in found} == {
        ("patio", Duty.CLOSE, Stand.DONE), ("counter", Duty.CLOSE, Stand.DUE),
    }  # fmt: skip


def test_on_a_closed_day_nothing_is_due(journal, tmp_path):
    monday = FIRST + timedelta(days=7)
    walk = Shift("patio", CLOSES["patio"], local(monday - timedelta(days=1), "21:40")).to_the_end()
    write(journal, walk)
    where = replace(site(), closed_days=("monday",))
    made = ledger(journal, tmp_path, where=where)
    made.catch_up()
    found = made.kept(monday - timedelta(days=1), monday, walk.now + 86_400, practice=True)
    assert {one.due.day for one in found} == {monday - timedelta(days=1)}
    (mine,) = (one for one in found if one.due.machine == "patio")
    assert (mine.stand, mine.session) == (Stand.DONE, walk.session)


def test_a_part_replaced_outside_a_session_begins_its_days_anew(journal, tmp_path):
    interval = next(one for one in SCHEDULE.intervals if one.part is not None)
    machine = next(one.id for one in site().machines if one.kind == interval.machine_kind)
    walk = Shift(machine, CLOSES[machine], local(FIRST, "21:40")).to_the_end()
    write(journal, walk)
    made = caught_up(journal, tmp_path)

    def last_day():
        found = made.spaced(walk.now, practice=True)
        (mine,) = (
            x for x in found if x.due.machine == machine and interval.id == x.due.id.split("/")[1]
        )
        return mine.due.day

    assert last_day() == FIRST + timedelta(days=interval.days)
    day = FIRST + timedelta(days=3)
    fact = PartReplaced(machine, str(interval.part), day.isoformat(), "priya", "torn", True)
    tell(journal, fact, walk.now)
    made.catch_up()
    assert last_day() == day + timedelta(days=interval.days)
    told = spaced(
        site(), SCHEDULE.intervals, records(journal), walk.now, journal.shop_events(PartReplaced)
    )
    assert told == made.spaced(walk.now, practice=True)
    replaced = [x for x in made.parts(practice=True, machine=machine) if not x.session]
    assert [(x.part, x.finding, x.by, x.remark) for x in replaced] == [
        (interval.part, "replaced", "priya", "torn")
    ]


def test_what_tells_of_wear_is_the_same_as_from_every_look_at_a_part(journal, tmp_path, sorts):
    write(journal, *sorts)
    parts = (("o-rings", c.Finding.REPLACED), ("drive-seals", c.Finding.NONE_LEFT))
    for day, (part, finding) in enumerate(parts, 3):
        walk = Shift("patio", CLOSES["patio"], local(FIRST + timedelta(days=day), "23:10"))
        while walk.state.mode is not Mode.COMPLETE:
            task = walk.plan.step(walk.state.step).task
            looks = isinstance(task, Inspect) and task.part == part
            walk.act(c.Inspected(finding)) if looks else walk.on()
        write(journal, walk)
    replaced_on = (FIRST + timedelta(days=5)).isoformat()
    tell(journal, PartReplaced("counter", "o-rings", replaced_on, "priya", "", True), walk.now)
    made, now = caught_up(journal, tmp_path), walk.now + 86_400
    few, every = made.wearing(practice=True), made.parts(practice=True)
    assert {line.finding for line in few} == {"good", "replaced", "none left"}
    assert len(few) < len(every) / 4

    def told(lines):
        return wear(lines, site(), library(), SCHEDULE.intervals, now)

    assert told(few) == told(every) != ()
    mine = made.wearing(practice=True, machine="counter")
    assert mine == tuple(line for line in few if line.machine == "counter")
    assert made.wearing(practice=False) == ()


def test_first_sessions_and_counts_are_those_of_the_lines(journal, tmp_path, sorts):
    write(journal, *sorts)
    made = caught_up(journal, tmp_path)
    lines = made.lines(practice=True, limit=None)[::-1]
    assert made.first("", practice=True, limit=3) == lines[:3]
    mine = [line for line in lines if "a" in line.workers]
    assert made.first("a", practice=True, limit=4) == tuple(mine[:4])
    since = lines[5].begun_utc
    assert [tuple(one) for one in made.counts(practice=True, from_utc=since)] == [
        (line.begun_utc, line.deviations) for line in lines if line.begun_utc >= since
    ]


def test_a_number_that_is_off_is_a_reading_that_did_not_keep_its_limit(journal, tmp_path):
    walk = Shift("patio", "open-twin-gravity", local(FIRST, "08:30"), by=TOUCH)
    walk.to("mix-sanitizer").act(c.Read(Decimal(50)))
    write(journal, walk)
    (one,) = (
        x
        for x in caught_up(journal, tmp_path).readings(practice=True, quantity="sanitizer strength")
        if x.kept is False
    )
    assert (one.value, one.unit, one.session) == ("50", "mg/L", walk.session)
    row = next(row for row in journal.rows() if row["seq"] == one.seq)
    assert row["kind"] == "ReadingOff"
