"""`kiosk report` and `kiosk export`: files where they are asked for, errors that say the mend."""

from __future__ import annotations

import json

import pytest

from kiosk.cli import main
from kiosk.cli.place import demo_folder
from kiosk.report import fonts
from tests.unit.report_shop import FIRST, LAST, ONE_DAY, make, sql


@pytest.fixture(scope="module")
def home(tmp_path_factory):
    with pytest.MonkeyPatch.context() as patch:
        folder = tmp_path_factory.mktemp("home")
        patch.setenv("KIOSK_HOME", str(folder))
        make(demo_folder())
        yield folder


@pytest.fixture
def into(home, tmp_path):
    return tmp_path / "made"


def session() -> str:
    return sql(demo_folder(), "select session from journal where kind='ReadingOff'")[0][0]


@pytest.mark.parametrize(
    ("words", "name", "language"),
    [
        (["day", str(ONE_DAY)], f"day-{ONE_DAY}", "ko"),
        (["month", "2026-09"], "month-2026-09", "es"),
        (["folder", str(FIRST), str(LAST), "--authority", "usda"], f"folder-{FIRST}-{LAST}", "en"),
    ],
)
def test_a_report_is_a_page_and_a_print_in_each_language(into, capsys, words, name, language):
    assert main(["report", *words, "--into", str(into), "--language", language]) == 0
    page, printed = into / f"{name}.html", into / f"{name}.pdf"
    assert capsys.readouterr().out.split() == [str(page), str(printed)]
    assert f'<html lang="{language}">' in page.read_text("utf-8")
    assert printed.read_bytes().startswith(b"%PDF-")


def test_a_session_is_reported_by_its_id(into):
    assert main(["report", "session", session(), "--into", str(into)]) == 0
    assert (into / f"session-{session()}.pdf").exists()


@pytest.mark.parametrize(
    ("words", "told"),
    [
        (["session", "nobody"], "No session is called 'nobody'"),
        (["month", "2026-13"], "Write it as 2026-11"),
        (["folder", "2026-09-05", "2026-09-01"], "Swap the two"),
        (["month", "2026-09", "--authority", "nobody"], "no authority is called 'nobody'"),
    ],
)
def test_what_cannot_be_reported_says_what_to_mend(into, capsys, words, told):
    assert main(["report", *words, "--into", str(into)]) == 1
    assert told in capsys.readouterr().err
    assert not into.exists()


@pytest.mark.parametrize("day", ["yesterday", "1066-10-14", "2026-02-30"])
def test_a_day_that_is_none_is_refused(home, capsys, day):
    with pytest.raises(SystemExit):
        main(["report", "day", day])
    assert day in capsys.readouterr().err


def test_without_the_font_the_page_is_whole_and_the_mend_is_told(into, capsys, monkeypatch):
    monkeypatch.setattr(fonts, "find_spec", lambda name: None)
    assert main(["report", "day", str(ONE_DAY), "--into", str(into), "--language", "ko"]) == 0
    told = capsys.readouterr()
    assert "brushdown[paper]" in told.err
    assert [one.name for one in into.iterdir()] == [f"day-{ONE_DAY}.html"]


def test_all_tables_are_exported_or_those_named(into, capsys):
    assert main(["export", "--csv", "--into", str(into)]) == 0
    assert len(capsys.readouterr().out.splitlines()) == 5
    assert main(["export", "readings", "--jsonl", "--into", str(into)]) == 0
    lines = (into / "readings.jsonl").read_text("utf-8").splitlines()
    assert capsys.readouterr().out == f"{into / 'readings.jsonl'}: {len(lines)}\n"
    assert json.loads(lines[0])["seq"] > 0


def test_every_row_of_the_journal_is_exported_when_no_days_are_named(into):
    assert main(["export", "events", "--jsonl", "--into", str(into)]) == 0
    lines = (into / "events.jsonl").read_text("utf-8").splitlines()
    assert sql(demo_folder(), "select count(*) from journal") == [(len(lines),)]


def test_a_table_that_is_none_is_refused(into, capsys):
    assert main(["export", "payroll", "--csv", "--into", str(into)]) == 1
    assert "There are: sessions, readings" in capsys.readouterr().err


def test_a_file_that_cannot_be_read_is_named(into, capsys):
    file = demo_folder() / "people.db"
    kept = file.read_bytes()
    file.write_bytes(b"no database " * 100)
    assert main(["report", "day", str(ONE_DAY), "--into", str(into)]) == 1
    assert str(file) in capsys.readouterr().err
    file.write_bytes(kept)
