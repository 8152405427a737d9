"""Every figure of a report is what plain SQL makes of the journal rows that it names."""

from __future__ import annotations

import hashlib
import json
import shutil
import sqlite3
from datetime import date, datetime, timedelta
from decimal import Decimal
from statistics import median

import pytest

from kiosk.journal.store import FILE
from kiosk.report.as_html import as_html
from kiosk.report.gathered import gather
from kiosk.report.papers import day_paper, folder_paper, month_paper, session_paper
from kiosk.report.rows import Rows
from tests.unit.report_shop import (
    DAYS,
    FIRST,
    LAST,
    ONE_DAY,
    Page,
    desk,
    facts,
    make,
    number,
    sql,
)

ANSWERS = (
    "PhraseGiven", "ReadBackAgreed", "ReadBackDenied", "ReadingGiven", "ReadingOff", "PassDone",
    "PassJudged", "TriedAgain", "StepConfirmed",
)  # fmt: skip


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    made = tmp_path_factory.mktemp("shop")
    make(made)
    return made


@pytest.fixture(scope="module")
def page(folder):
    with desk(folder) as at:
        return Page(as_html(folder_paper(FIRST, LAST, at)))


def readings(folder) -> dict[int, dict]:
    """Return what was measured, by row; counts and waits have other units."""
    found = facts(folder, "StepConfirmed", "ReadingOff")
    return {seq: one for seq, one in found.items() if one.get("unit") in ("°C", "°F", "mg/L", "L")}


def test_the_counts_are_those_of_the_rows_they_name(folder, page):
    names = ("sessions", "complete", "readings")
    count = {name: int(number(page.keys[name][0])) for name in names}
    seqs = {name: found for name, (_, found) in page.keys.items()}
    started, ended = list(facts(folder, "SessionStarted")), list(facts(folder, "SessionCompleted"))
    assert (count["sessions"], seqs["sessions"]) == (len(started), started)
    assert (count["complete"], seqs["complete"]) == (len(ended), ended)
    taken = readings(folder)
    assert (count["readings"], seqs["readings"]) == (len(taken), sorted(taken))
    off = sorted(seq for seq in facts(folder, "ReadingOff") if seq in taken)
    assert seqs["readings-off"] == off
    assert number(page.keys["readings-off"][0]) == str(len(off))


def test_the_last_word_of_a_supervisor_counts(folder, page):
    last = {one["session"]: seq for seq, one in facts(folder, "SignedOff", "SentBack").items()}
    back = facts(folder, "SentBack")
    assert page.keys["signed"][1] == sorted(seq for seq in last.values() if seq not in back)
    assert page.keys["sent-back"][1] == list(back)


def test_every_reading_stands_with_its_value_unit_limit_and_row(folder, page):
    taken = readings(folder)
    lines = page.tables["readings"]
    assert [one.seqs for one in lines] == [[seq] for seq in sorted(taken)]
    for line in lines:
        fact = taken[line.seqs[0]]
        _, _, _, value, limit, kept, rows = line.cells
        assert value == f"{fact['value'] if 'value' in fact else fact['answer']} {fact['unit']}"
        assert limit == "no limit" or limit.splitlines()[1] in fact["limit"]
        was_off = "value" in fact
        assert kept == ("NOT KEPT" if was_off else "kept" if fact["limit"] else "not judged")
        assert rows == str(line.seqs[0])


def test_the_lowest_middle_and_highest_are_those_of_the_rows(folder, page):
    taken = readings(folder)
    for line in page.tables["spread"]:
        values = [taken[seq] for seq in line.seqs]
        numbers = [Decimal(one.get("value") or one["answer"]) for one in values]
        unit = values[0]["unit"]
        assert int(line.cells[2]) == len(numbers)
        shown = [Decimal(cell.removesuffix(unit)) for cell in line.cells[3:6]]
        assert shown == [min(numbers), median(numbers), max(numbers)]
    assert sum(len(line.seqs) for line in page.tables["spread"]) == len(taken)


def test_each_session_has_its_first_and_last_row_and_its_length(folder, page):
    lines = page.tables["sessions"]
    assert len(lines) == len(facts(folder, "SessionStarted"))
    for line in lines:
        session = line.cells[1].splitlines()[-1]
        query = "select min(seq), max(seq), min(utc), max(utc) from journal where session = ?"
        first, last, begun, ended = sql(folder, query, session)[0]
        assert line.seqs == [first, last]
        seconds = (datetime.fromisoformat(ended) - datetime.fromisoformat(begun)).total_seconds()
        assert float(line.cells[3].split()[0]) == pytest.approx(seconds / 60, abs=0.051)


def test_deviations_name_rows_of_their_own_session(folder, page):
    lines = page.tables["deviations"]
    assert len(lines) == int(number(page.keys["deviations"][0]))
    assert any(line.seqs for line in lines)
    for line in lines:
        session = line.cells[2].splitlines()[-1]
        query = "select session from journal where seq = ?"
        found = {row for seq in line.seqs for row in sql(folder, query, seq)}
        assert found == ({(session,)} if line.seqs else set())
        assert bool(line.seqs) == (session != "–")
    of_rules = sum(int(one.cells[2]) for one in page.tables["rules"])
    assert of_rules == len(lines)


def test_readings_out_of_limit_are_all_among_the_deviations(folder, page):
    named = {seq for line in page.tables["deviations"] for seq in line.seqs}
    assert set(facts(folder, "ReadingOff")) <= named


def test_results_stand_as_they_were_entered_and_the_struck_one_counts_no_more(folder, page):
    entered, struck = facts(folder, "ResultEntered"), facts(folder, "ResultStruck")
    gone = {one["result"] for one in struck.values()}
    lines = page.tables["results"]
    assert {line.seqs[0] for line in lines} == {
        seq for seq, one in entered.items() if one["result"] not in gone
    }
    for line in lines:
        fact = entered[line.seqs[0]]
        assert line.cells[0] == fact["day"]
        assert line.cells[4] == f"{fact['amount']} / {fact['per']}"
    (line,) = page.tables["struck"]
    assert line.seqs[1] in struck
    assert line.cells[3] == "wrong head"


def test_the_due_book_counts_all_daily_work_of_the_days(page):
    # Two machines, each opened, checked and closed once a day.
    assert int(number(page.keys["due"][0])) == len(page.tables["due"]) == DAYS * 6
    in_time = sum("done in time" in line.cells[3] for line in page.tables["due"])
    assert int(number(page.keys["in-time"][0])) == in_time


def test_the_head_is_the_hash_that_an_outsider_computes(folder, page):
    # The rule as the journal's own page has it: each field and the hash before, a line feed each.
    before = "0" * 64
    columns = "seq, kiosk, session, kind, utc, mono_us, boot, body"
    for row in sql(folder, f"select {columns} from journal order by seq"):
        text = "".join(f"{part}\n" for part in (before, *row))
        before = hashlib.sha256(text.encode()).hexdigest()
    assert page.keys["head"][0].split()[0] == before


# One session.


def test_a_session_shows_every_row_of_it_and_each_answer(folder):
    session = sql(folder, "select session from journal where kind='ReadingOff' limit 1")[0][0]
    with desk(folder) as at:
        page = Page(as_html(session_paper(session, at)))
    rows = sql(folder, "select seq, kind, body from journal where session=? order by seq", session)
    steps = page.tables[f"steps-{session}"]
    named = [seq for line in steps for seq in line.seqs]
    assert named == [seq for seq, kind, _ in rows if seq > rows[0][0]]
    for seq, kind, body in rows:
        fact = json.loads(body)["fact"]
        line = next((one for one in steps if seq in one.seqs), None)
        if kind == "ReadingOff":
            assert f"out of limit {fact['value']} {fact['unit']}" in line.cells[3]
        if kind == "StepConfirmed" and fact["unit"] in ("°C", "mg/L"):
            assert line.cells[2].startswith(f"{fact['answer']} {fact['unit']}")
        heard = json.loads(body)["by"].get("heard")
        if heard and kind in ANSWERS:
            assert f"“{heard}”" in line.cells[3]
    confirmed = [seq for seq, kind, _ in rows if kind == "StepConfirmed"]
    assert page.keys["confirmed"][1] == confirmed
    assert number(page.keys["confirmed"][0]) == str(len(confirmed))


def test_a_sentence_stands_as_it_was_asked_and_as_the_reader_understands_it(folder):
    spanish = next(
        session
        for session, one in sql(folder, "select session, body from journal "
                                        "where kind='SessionStarted'")
        if json.loads(one)["fact"]["language"] == "es"
    )  # fmt: skip
    with desk(folder, "ko") as at:
        record = at.ledger.record(spanish)
        lines = Page(as_html(session_paper(spanish, at))).tables[f"steps-{spanish}"]
        plan = at.plan_of(spanish)
    for stay, line in zip(record.steps, lines, strict=True):
        assert plan.step(stay.step).say["es"] in line.cells[1]
        assert plan.step(stay.step).say["ko"] in line.cells[1]


# Days.


def test_the_days_share_out_all_sessions_and_each_has_one_day(folder):
    with desk(folder) as at:
        found = [
            line.session
            for n in range(DAYS)
            for line in gather(at.span(*[FIRST + timedelta(days=n)] * 2), at).lines
        ]
        everything = at.ledger.lines(practice=True, limit=None)
    assert sorted(found) == sorted(line.session for line in everything)


def test_a_day_has_its_own_sessions_only(folder):
    with desk(folder) as at:
        page = Page(as_html(day_paper(ONE_DAY, at)))
    assert len(page.tables["sessions"]) == 4
    assert len(page.tables["due"]) == 6


def test_a_month_names_only_what_was_not_done_in_time(folder):
    with desk(folder) as at:
        page = Page(as_html(month_paper(2026, 9, at)))
        kept = gather(at.span(date(2026, 9, 1), date(2026, 9, 30)), at).kept
    shown = {"done late", "done too early", "begun, not finished", "MISSED"}
    assert {line.cells[3].splitlines()[0] for line in page.tables["due"]} <= shown
    left_out = [one for one in kept if one.stand in ("done", "due", "not yet due")]
    assert len(page.tables["due"]) == len(kept) - len(left_out) > 0
    assert len(page.tables["sessions"]) == len(facts(folder, "SessionStarted"))


@pytest.mark.parametrize(
    ("day", "hours"), [("2026-03-08", 23), ("2026-11-01", 25), ("2026-06-01", 24)]
)
def test_a_night_on_which_the_clocks_change_is_an_hour_shorter_or_longer(folder, day, hours):
    # The IANA time zone data have the changes of America/Chicago in 2026: 8 March, 1 November. The
    # business day before ends half-way into that night, so that it shares the hour with the next.
    changed = datetime.fromisoformat(day).date()
    with desk(folder) as at:
        two = at.span(changed - timedelta(days=1), changed)
        assert two.until_utc - two.from_utc == (24 + hours) * 3600
        assert at.day_of(two.from_utc) == two.first
        assert at.day_of(two.until_utc - 1) == two.last


def test_each_hour_that_comes_twice_is_told_apart(folder):
    with desk(folder) as at:
        first = datetime.fromisoformat("2026-11-01T01:30:00-05:00").timestamp()
        assert at.moment(first) == "2026-11-01 01:30 CDT"
        assert at.moment(first + 3600) == "2026-11-01 01:30 CST"


def test_nothing_is_written_into_the_journal(folder):
    before = sql(folder, "select * from journal order by seq")
    with desk(folder) as at:
        as_html(folder_paper(FIRST, LAST, at, steps=True))
    assert sql(folder, "select * from journal order by seq") == before


def test_a_row_altered_afterwards_is_named_on_the_paper(folder, tmp_path):
    shutil.copytree(folder, tmp_path / "copy")
    with desk(tmp_path / "copy") as at:
        line = at.ledger.lines(practice=True, limit=1)[0]
        agree = at.say("hashes-agree", first=str(line.first_seq), last=str(line.last_seq))
        assert agree in Page(as_html(session_paper(line.session, at))).said
        row = line.first_seq + 7
        with sqlite3.connect(tmp_path / "copy" / FILE) as db:
            db.execute("drop trigger journal_never_updated")
            db.execute("update journal set utc = replace(utc, '2026', '2025') where seq = ?", [row])
        db.close()
        said = Page(as_html(session_paper(line.session, at))).said
        assert at.say("hashes-differ", row=str(row)) in said
        assert agree not in said


def test_a_row_that_is_missing_is_found(folder, tmp_path):
    shutil.copytree(folder, tmp_path / "copy")
    with sqlite3.connect(tmp_path / "copy" / FILE) as db:
        db.execute("drop trigger journal_never_deleted")
        db.execute("delete from journal where seq = 40")
    db.close()
    rows = Rows(tmp_path / "copy" / FILE)
    assert rows.first_bad(30, 50) == 40
    assert rows.first_bad(41, 50) is None
    assert rows.first_bad(30, 40) == 40
    rows.close()
