"""An invented shop: walked by the real engine, kept apart from real work, and traced back."""

from __future__ import annotations

import argparse
import random
import re
import shutil
from collections import Counter
from contextlib import closing
from dataclasses import replace
from datetime import date
from decimal import Decimal
from pathlib import Path

import pytest

from kiosk.cli import history as invent_command
from kiosk.cli import lab, log
from kiosk.cli.place import Failed, demo_folder
from kiosk.engine.events import SessionCompleted, SessionStarted, StepConfirmed
from kiosk.engine.machine import standing
from kiosk.journal.store import FILE, Journal
from kiosk.languages.words import words
from kiosk.procedure.fit import fit
from kiosk.procedure.model import Standing
from kiosk.procedure.site import load_site
from kiosk.proof.proven import require_proof
from kiosk.rehearsal.habits import EAR
from kiosk.rehearsal.history import History, InventedJournal, NotInvented
from kiosk.rehearsal.planting import CAUSES, Plant, plants_for
from kiosk.review.clues import Clue
from kiosk.review.results import heads_of
from kiosk.shipped import shipped
from tests.histories import FIRST, case, history, library, plans, site


@pytest.fixture(scope="module")
def proven(tmp_path_factory) -> Path:
    """The plans proven once, for every test."""
    folder = tmp_path_factory.mktemp("proven")
    for pair in plans().values():
        for plan in pair:
            require_proof(plan, folder)
    return folder


@pytest.fixture(autouse=True)
def home(tmp_path, monkeypatch, proven):
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    shutil.copytree(proven, demo_folder() / "proven")
    return tmp_path


def kiosk(*words: str) -> int:
    parser = argparse.ArgumentParser()
    commands = parser.add_subparsers(required=True)
    for group in (invent_command, lab, log):
        group.add(commands)
    parsed = parser.parse_args(words)
    return parsed.command(parsed)


def told(folder: Path, seed: int, days: int = 8) -> list[tuple[str, str]]:
    made = history(folder, seed, [])
    with closing(made.journal) as journal:
        made.run(FIRST, days)
        return [(row["utc"], row["body"]) for row in journal.rows()]


def test_the_same_seed_gives_the_same_events_and_another_one_others(tmp_path):
    first = told(tmp_path / "a", 4)
    assert first == told(tmp_path / "b", 4)
    assert first != told(tmp_path / "c", 5)


def test_every_invented_session_is_whole_practice_and_sound(tmp_path, capsys):
    assert kiosk("invent", "--days", "8", "--seed", "2") == 0
    said = capsys.readouterr().out
    with closing(Journal(demo_folder())) as journal:
        assert journal.verify().whole
        assert journal.open_sessions() == []
        walked: Counter[str] = Counter()
        for session in journal.sessions():
            events = journal.events(session)
            assert isinstance(events[0].fact, SessionStarted)
            walked[events[0].fact.procedure.split("-")[0]] += 1
            assert events[0].fact.practice
            assert events[-1].fact == SessionCompleted()
            assert {one.by.ear for one in events} <= {"", EAR}
        for machine in site().machines:
            facts = [fact for _, _, fact in journal.facts_of_machine(machine.id, practice=True)]
            assert standing(facts) is Standing.DRYING
    # Two machines are opened and closed each day, and checked on most days.
    assert walked["open"] == walked["close"] == 16
    assert 12 <= walked["check"] <= 16
    assert f"Invented 8 days: {walked.total()} sessions and 8 results" in said
    assert kiosk("log", "audit") == 0
    assert capsys.readouterr().out.count("no rule broken") == walked.total()


def test_day_checks_measure_the_mix_and_leave_the_rest_of_the_story_as_it_is(tmp_path):
    known = library().procedures
    checks = {
        one.id: fit(library(), known[f"check-{one.kind}"], one, site(), lambda amount, language:
                    words(language).quantity(amount))
        for one in site().machines
    }  # fmt: skip
    stories = []
    for name, made in (("with", checks), ("without", {})):
        with closing(InventedJournal(tmp_path / name)) as journal:
            History(
                journal, site(), plans(), heads_of(site(), library()), 4, [], checks=made
            ).run(FIRST, 4)  # fmt: skip
            stories.append([journal.events(one) for one in journal.sessions()])
    with_checks, without = stories
    mine = [x for x in with_checks if x[0].fact.procedure.startswith("check-")]
    assert 6 <= len(mine) <= 8
    read = {
        Decimal(one.fact.answer)
        for events in mine
        for one in events
        if isinstance(one.fact, StepConfirmed) and one.fact.limit.startswith("mix temperature")
    }
    # 41 degrees Fahrenheit or less: FDA Food Code 3-501.16(A)(2), READ (state).
    assert len(read) > 1
    assert max(read) <= 41

    def others(story):
        # Apart from the day's work only the mix temperatures are left to their own chance.
        return [
            (x[0].fact.machine, x[0].fact.procedure, x[0].fact.worker, len(x))
            for x in story
            if x[0].fact.procedure[:5] != "check"
        ]

    assert others(with_checks) == others(without)


def test_a_history_is_never_written_where_a_journal_or_a_site_lies(home, capsys):
    (home / "site.toml").write_bytes((shipped("demo") / "site.toml").read_bytes())
    Journal(home).close()
    before = (home / FILE).read_bytes()
    with pytest.raises(Failed, match=r"journal\.db is there already"):
        kiosk("invent", "--days", "1", "--into", str(home))
    assert kiosk("invent", "--days", "1") == 0
    assert (home / FILE).read_bytes() == before
    with pytest.raises(Failed, match="is there already"):
        kiosk("invent", "--days", "1")
    other = home / "other"
    other.mkdir()
    (other / "site.toml").touch()
    with pytest.raises(NotInvented, match=r"site\.toml"):
        InventedJournal(other)
    assert not (other / FILE).exists()


def test_no_history_is_invented_for_real_work(tmp_path):
    real = replace(site(), practice=False)
    with (
        closing(InventedJournal(tmp_path / "h")) as journal,
        pytest.raises(NotInvented, match="practice = true"),
    ):
        History(journal, real, plans(), heads_of(site(), library()), 1, [])


def test_more_machines_are_worked_at_the_same_time_in_a_shop_of_their_own(home, capsys):
    folder = home / "three"
    assert kiosk("invent", "--days", "2", "--machines", "3", "--into", str(folder)) == 0
    # Six openings and closes a day, and a check of most of the machines.
    invented = re.search(r"(\d+) sessions", capsys.readouterr().out)
    assert invented
    assert 15 <= int(invented[1]) <= 18
    made = load_site(folder / "site.toml")
    assert [one.id for one in made.machines] == ["patio", "counter", "patio-2"]
    assert made.practice
    with closing(Journal(folder)) as journal:
        assert journal.verify().whole
        walks = [journal.events(name) for name in journal.sessions()]
    first, third = (
        [
            one[0].at.utc
            for one in walks
            if one[0].fact.machine == name and not one[0].fact.procedure.startswith("check-")
        ]
        for name in ("patio", "patio-2")
    )
    # Beside the first machine, not after the second.
    assert len(first) == len(third) == 4
    assert all(abs(x - y) < 3600 for x, y in zip(first, third, strict=True))
    # Each clock runs on.
    last: dict[str, float] = {}
    for at in (one.at for events in walks for one in events):
        assert at.mono >= last.get(at.boot, 0.0)
        last[at.boot] = at.mono


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (("--machines", "3"), "--into"),
        (("--machines", "1", "--into", "x"), "give 2 to 8"),
        (("--machines", "9", "--into", "x"), "give 2 to 8"),
    ],
)
def test_a_number_of_machines_that_cannot_be_is_told(words, said):
    with pytest.raises(Failed, match=said):
        kiosk("invent", *words)


@pytest.mark.parametrize("days", ["0", "-3", "5000"])
def test_an_odd_number_of_days_is_told(days):
    with pytest.raises(Failed, match="--days"):
        kiosk("invent", "--days", days)


def test_every_cause_is_planted_in_sixty_days():
    found = plants_for(site(), 60, random.Random(1))
    assert {one.cause for one in found} == set(CAUSES)
    assert len({one.day for one in found}) == len(CAUSES)
    assert found[0].cause is Clue.WORN_PART


def test_a_missed_night_has_no_breakdown_and_no_assembly(tmp_path):
    made = history(tmp_path / "h", 1, [Plant(Clue.MISSED_CLOSE, "patio", 6)])
    with closing(made.journal) as journal:
        assert made.run(date(2026, 9, 1), 8).sessions == 30
        assert journal.verify().whole


def test_results_are_entered_judged_traced_and_struck(tmp_path, capsys):
    assert kiosk("invent", "--days", "22", "--seed", "3") == 0
    capsys.readouterr()
    assert kiosk("lab", "trace", "--authority", "usda") == 0
    traced = capsys.readouterr().out
    assert "over the limit" in traced
    assert "not a proof" in traced
    assert kiosk("lab", "standing", "--authority", "usda") in (0, 1)
    assert "patio twist, total count (50,000 per g)" in capsys.readouterr().out

    file = tmp_path / "results.csv"
    row = "patio,left,2026-01-05,plain,total count,< 10,Lab\n"
    file.write_text("machine,barrel,day,product,analysis,amount,laboratory\n" + row)
    assert kiosk("lab", "import", str(file), "--by", "p3") == 0
    entered = capsys.readouterr().out.split()[0]
    assert kiosk("lab", "import", str(file), "--by", "p3") == 0
    assert "known already" in capsys.readouterr().out
    assert kiosk("lab", "strike", entered, "--because", "typing", "--by", "p3") == 0
    capsys.readouterr()
    kiosk("lab", "list")
    assert entered not in capsys.readouterr().out
    with pytest.raises(Failed, match="lab list"):
        kiosk("lab", "strike", entered, "--because", "typing", "--by", "p3")
    assert kiosk("log", "verify") == 0


def test_what_is_wrong_on_the_command_line_is_told_with_its_mend(capsys):
    with pytest.raises(Failed, match="nothing was walked"):
        kiosk("lab", "list")
    good = ["--machine", "patio", "--barrel", "left", "--day", "2026-01-05", "--product", "plain",
            "--analysis", "total count", "--laboratory", "Lab", "--by", "p3"]  # fmt: skip
    with pytest.raises(Failed, match=r"--amount: 'lots' is no result.*To mend"):
        kiosk("lab", "add", *good, "--amount", "lots")
    assert kiosk("lab", "add", *good, "--amount", "60000") == 0
    with pytest.raises(Failed, match="no authority is called 'nobody'"):
        kiosk("lab", "standing", "--authority", "nobody")
    with pytest.raises(Failed, match="no wearing part 'wheel'"):
        kiosk("lab", "replaced", "--machine", "patio", "--part", "wheel", "--day", "2026-01-05",
              "--by", "p3")  # fmt: skip
    assert kiosk("lab", "replaced", "--machine", "patio", "--part", "o-rings", "--day",
                 "2026-01-05", "--by", "p3") == 0  # fmt: skip
    capsys.readouterr()
    assert kiosk("lab", "trace", "--authority", "usda") == 0
    assert "0 sessions and" in capsys.readouterr().out


def test_the_planted_cause_comes_out_first(tmp_path):
    """One history for each cause; of fifty about nine in ten come first (bench_trace)."""
    cases = [case(tmp_path / str(seed), seed) for seed in range(len(CAUSES))]
    over = [one for one in cases if one.trace.over]
    assert len(over) >= 5
    first = [one for one in over if one.cause_first and one.session_first]
    assert len(first) >= 4, [(one.plant.cause, one.trace.suspects[0].signs) for one in over]
