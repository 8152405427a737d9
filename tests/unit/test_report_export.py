"""Tables for spreadsheets and programs: whole, documented, and never a formula."""

from __future__ import annotations

import csv
import io
import json
import re
from pathlib import Path

import pytest

from kiosk.report.export import TABLES, cell, write_csv, write_jsonl
from tests.unit.report_shop import FIRST, LAST, REMARK, desk, facts, make, sql

PAGE = Path(__file__).parents[2] / "kiosk" / "journal" / "TABLES.md"


@pytest.fixture(scope="module")
def folder(tmp_path_factory):
    made = tmp_path_factory.mktemp("shop")
    make(made)
    return made


def exported(folder, name: str, language: str = "en") -> list[dict]:
    with desk(folder, language) as at:
        return list(TABLES[name].records(at.span(FIRST, LAST), at))


# Values.


@pytest.mark.parametrize("text", ["=1+1", "+A1", "-A1", "@SUM(A1)", "\t=1", "\r=1", "\n=1", "-"])
def test_what_a_spreadsheet_may_compute_gets_an_apostrophe(text):
    assert cell(text) == f"'{text}"


@pytest.mark.parametrize("text", ["-5", "-0.5", "+3", "1200", "< 10", "5 °C", "안미나", "a=b", ""])
def test_numbers_and_other_texts_stay_as_they_are(text):
    assert cell(text) == text


def test_values_are_written_plainly():
    assert [cell(one) for one in (None, True, False, 1.5, [3, 4], ["p1", "p2"])] == [
        "", "true", "false", "1.5", "3 4", "p1 p2",
    ]  # fmt: skip


def test_a_csv_file_is_as_rfc_4180_has_it(tmp_path):
    # RFC 4180, section 2, rules 1, 3, 5 to 7: CRLF, a header line, quotes around line breaks,
    # commas and quotes, a quote doubled. Its example "aaa","b CRLF bb","ccc" and b""bb; MEM.
    file = tmp_path / "x.csv"
    rows = [{"field_name": 'b"bb', "other": "b\r\nbb"}, {"field_name": "a,b", "other": "zzz"}]
    assert write_csv(rows, rows[0], file) == 2
    assert file.read_bytes() == (
        b'\xef\xbb\xbffield_name,other\r\n"b""bb","b\r\nbb"\r\n"a,b",zzz\r\n'
    )


def test_json_lines_have_one_object_each(tmp_path):
    file = tmp_path / "x.jsonl"
    assert write_jsonl([{"a": "안\n", "b": None}, {"a": "=1", "b": True}], file) == 2
    lines = file.read_text("utf-8").split("\n")
    assert [json.loads(one) for one in lines if one] == [
        {"a": "안\n", "b": None}, {"a": "=1", "b": True},
    ]  # fmt: skip


# Tables.


@pytest.mark.parametrize("name", TABLES)
def test_the_columns_are_those_that_are_documented(folder, name):
    records = exported(folder, name)
    assert records
    assert {tuple(one) for one in records} == {tuple(TABLES[name].columns)}
    part = re.search(rf"### {name}\n(.*?)(?=\n##|\Z)", PAGE.read_text("utf-8"), re.S)[1]
    documented = re.findall(r"^\| `(\w+)` \| (.+) \|$", part, re.M)
    assert documented == list(TABLES[name].columns.items())


def test_the_documented_columns_of_the_journal_are_those_of_the_file(folder):
    part = re.search(r"## The journal\n(.*?)(?=\n## )", PAGE.read_text("utf-8"), re.S)[1]
    documented = re.findall(r"^\| `(\w+)` \|", part, re.M)
    columns = [row[1] for row in sql(folder, "pragma table_info(journal)")]
    assert sorted(documented) == sorted(columns)


def test_events_are_the_rows_of_the_journal(folder):
    rows = {seq: (kind, body, found) for seq, kind, body, found in
            sql(folder, "select seq, kind, body, hash from journal")}  # fmt: skip
    records = exported(folder, "events")
    assert [one["seq"] for one in records] == sorted(rows)
    for one in records:
        kind, body, found = rows[one["seq"]]
        read = json.loads(body)
        assert (one["kind"], one["hash"]) == (kind, found)
        assert json.loads(one["fact"]) == read["fact"]
        assert one["channel"] == read["by"]["channel"]


def test_readings_and_results_name_their_rows(folder):
    taken = facts(folder, "StepConfirmed", "ReadingOff")
    for one in exported(folder, "readings"):
        fact = taken[one["seq"]]
        assert one["value"] == (fact.get("value") or fact.get("answer"))
        assert one["unit"] == fact["unit"]
    entered = facts(folder, "ResultEntered")
    for one in exported(folder, "results"):
        assert entered[one["seq"]]["amount"] == one["amount"]
        assert entered[one["seq"]]["result"] == one["result"]


def test_a_session_has_its_rows_and_its_signature(folder):
    back = facts(folder, "SentBack")
    for one in exported(folder, "sessions"):
        query = "select min(seq), max(seq), count(*) from journal where session = ?"
        first, last, _ = sql(folder, query, one["session"])[0]
        assert (one["first_seq"], one["last_seq"]) == (first, last)
        if one["signed"] == "sent back":
            assert back[one["signed_seq"]]["session"] == one["session"]
            assert one["remark"] == REMARK


def test_deviations_are_told_in_the_language_asked_for(folder):
    english, korean = exported(folder, "deviations"), exported(folder, "deviations", "ko")
    assert [one["seqs"] for one in english] == [one["seqs"] for one in korean]
    assert english[0]["sentence"] != korean[0]["sentence"]
    assert re.search("[가-힣]", korean[0]["sentence"])


def test_a_remark_that_looks_like_a_formula_is_none_in_the_file(folder, tmp_path):
    table = TABLES["sessions"]
    file = tmp_path / "sessions.csv"
    with desk(folder) as at:
        write_csv(table.records(at.span(FIRST, LAST), at), table.columns, file)
    read = list(csv.DictReader(io.StringIO(file.read_text("utf-8-sig"), newline="")))
    assert f"'{REMARK}" in {one["remark"] for one in read}
    assert not any(value.startswith(("=", "@")) for one in read for value in one.values())


def test_the_questions_on_the_page_can_be_asked(folder):
    (block,) = re.findall(r"```sql\n(.*?)```", PAGE.read_text("utf-8"), re.S)
    found = [sql(folder, query) for query in block.split(";") if query.strip()]
    assert [bool(rows) for rows in found] == [True, True, True]
    assert {row[0] for row in found[1]} == set(facts(folder, "ReadingOff"))
