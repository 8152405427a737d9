"""Machine kinds of a site's own: copied, found, checked, used as far as they hold, and told of."""

from __future__ import annotations

import shutil
from contextlib import closing
from dataclasses import replace
from datetime import date
from functools import cache
from pathlib import Path

import pytest

from kiosk import cli, home
from kiosk.checking.own_kinds import CHECKED, library_of
from kiosk.clock import SystemClock
from kiosk.engine import commands as c
from kiosk.journal.store import Journal
from kiosk.procedure.fault import Fault
from kiosk.procedure.load import Library, load_library, load_procedure, load_record
from kiosk.procedure.load_review import load_schedule
from kiosk.procedure.own_kinds import AS_COPIED, OWN
from kiosk.procedure.review_rules import KindSchedule
from kiosk.procedure.site import Machine, Role, Site, load_site
from kiosk.setup.check import faults_of
from kiosk.setup.copy_kind import NotCopied, copy_kind
from kiosk.shipped import shipped
from kiosk.shop import Shop
from tests.own_kind import EVENING, FILES, KIND, NAME, own_kind, write

DAY = date(2026, 11, 26)
HOLD = EVENING[EVENING.index("      - id: guards") : EVENING.index("      - id: run")]


@cache
def known() -> Library:
    return load_library(shipped("procedures"))


def site(kind: str = NAME) -> Site:
    """The invented shop in English alone, with one machine of a kind beside its own."""
    made = load_site(shipped("demo") / home.SITE_FILE)
    people = tuple(one for one in made.people if one.language == "en")
    machines = (*made.machines, Machine(id="m9", name="Counter", kind=kind))
    return replace(made, people=people, languages=("en",), machines=machines)


def spoilt(folder: Path, *spoken: str) -> tuple[Fault, ...]:
    """What stands against the one own kind."""
    return library_of(folder, spoken).spoilt[NAME]


# Copying.


def test_a_copy_says_the_same_under_its_own_names(tmp_path):
    written = copy_kind(known(), tmp_path, "single-pump", NAME, DAY)
    own = tmp_path / OWN
    assert {str(one.relative_to(own)) for one in written} == {
        "machines/counter-pump.yaml", "close-counter-pump.yaml", "open-counter-pump.yaml",
        "check-counter-pump.yaml", "sample-counter-pump.yaml", "review/counter-pump.yaml",
    }  # fmt: skip
    for file in written:
        before = own / AS_COPIED / file.relative_to(own)
        assert before.read_bytes() == file.read_bytes()
        if file.parent == own:
            old = file.stem.replace(NAME, "single-pump")
            made, first = load_procedure(file), known().procedures[old]
            assert (made.id, made.machine_kind) == (file.stem, NAME)
            assert [_told(one) for one in made.phases] == [_told(one) for one in first.phases]
            head, _, rest = file.read_text(encoding="utf-8").partition("\nid: ")
            assert f"Copied on 2026-11-26 from the procedure '{old}'" in head
            text = Path(first.file).read_text(encoding="utf-8")
            assert (
                rest.partition("\n")[2].replace(NAME, "single-pump")
                == (text.partition("\nid: ")[2].partition("\n")[2])
            )
            # What was said above the first field is still there.
            assert text.partition("\nid: ")[0].partition("\n")[2] in head


def _told(phase) -> object:
    return [replace(step, line=0) for step in phase.steps]


def test_what_is_due_on_a_copy_is_what_is_due_on_the_kind(tmp_path):
    copy_kind(known(), tmp_path, "single-pump", NAME, DAY)
    due = load_record(tmp_path / OWN / "review" / f"{NAME}.yaml", KindSchedule)
    assert (due.id, due.checks, due.samples) == (NAME, (f"check-{NAME}",), (f"sample-{NAME}",))
    mine = [one for one in load_schedule().intervals if one.machine_kind == "single-pump"]
    assert mine
    assert list(due.intervals) == [
        replace(one, id=one.id.replace("single-pump", NAME), machine_kind=NAME) for one in mine
    ]


@pytest.mark.parametrize(
    ("kind", "name", "why"),
    [
        ("nothing", "x", "There are: single-pump, twin-gravity"),
        ("single-pump", "Counter Pump", "small letters, digits and hyphens"),
        ("single-pump", "../x", "is no name"),
        ("single-pump", "x" * 41, "up to 40"),
        ("single-pump", "twin-gravity", "There is a kind 'twin-gravity' already"),
    ],
)
def test_what_cannot_be_copied_is_refused_and_nothing_is_written(tmp_path, kind, name, why):
    with pytest.raises(NotCopied, match=why):
        copy_kind(known(), tmp_path, kind, name, DAY)
    assert not any(tmp_path.iterdir())


def test_a_copy_writes_over_nothing(tmp_path):
    mine = write(tmp_path, "review/counter-pump.yaml", "mine")
    with pytest.raises(NotCopied, match="is there already"):
        copy_kind(known(), tmp_path, "single-pump", NAME, DAY)
    assert [one for one in tmp_path.rglob("*") if one.is_file()] == [mine]
    assert mine.read_text(encoding="utf-8") == "mine"


def test_a_copy_that_cannot_be_written_whole_leaves_nothing_behind(tmp_path):
    (tmp_path / OWN).mkdir()
    (tmp_path / OWN / "review").write_text("no folder", encoding="utf-8")
    with pytest.raises(OSError, match="review"):
        copy_kind(known(), tmp_path, "single-pump", NAME, DAY)
    left = [one for one in tmp_path.rglob("*") if one.is_file()]
    assert left == [tmp_path / OWN / "review"]


def test_a_copy_without_its_hold_is_refused_and_not_copied_again(tmp_path):
    own_kind(tmp_path)
    copy_kind(library_of(tmp_path, ()), tmp_path, NAME, "", DAY)
    found = library_of(tmp_path, ())
    assert found.own == {NAME, f"own-{NAME}"}
    assert not found.faults
    assert {f"close-own-{NAME}", f"check-own-{NAME}"} <= set(found.procedures)
    evening = tmp_path / OWN / f"close-own-{NAME}.yaml"
    text = evening.read_text(encoding="utf-8")
    assert HOLD in text
    evening.write_text(text.replace(HOLD, ""), encoding="utf-8")
    found = library_of(tmp_path, ())
    assert set(found.spoilt) == {f"own-{NAME}"}
    assert f"close-own-{NAME}" not in found.procedures
    assert f"close-{NAME}" in found.procedures
    with pytest.raises(NotCopied, match=r"is not sound.*close-own-counter-pump\.yaml:\d+: run"):
        copy_kind(found, tmp_path, f"own-{NAME}", "third", DAY)


# What is used.


def test_a_sound_kind_is_used_beside_the_shipped_ones(tmp_path):
    found = library_of(own_kind(tmp_path), ())
    assert found.own == {NAME}
    assert (found.faults, dict(found.spoilt)) == ((), {})
    assert set(found.procedures) - set(known().procedures) == {f"close-{NAME}", f"check-{NAME}"}
    assert {n: one for n, one in found.procedures.items() if n in known().procedures} == (
        known().procedures
    )
    assert faults_of(site(), found, "site.toml") == []


def test_what_is_due_on_it_joins_what_is_due_on_all(tmp_path):
    found = library_of(own_kind(tmp_path), ())
    mine, all_ = load_schedule(library=found), load_schedule(library=known())
    assert mine.check is not None
    assert mine.check.procedures == (*all_.check.procedures, f"check-{NAME}")
    assert [one.id for one in mine.intervals] == [*(x.id for x in all_.intervals), f"{NAME}-door"]


def test_a_folder_without_kinds_changes_nothing_and_checks_nothing(tmp_path):
    told: list[str] = []
    assert library_of(tmp_path, ("en", "ko"), told.append) == known()
    assert told == []


def test_a_deleted_hold_is_refused_with_its_line_and_the_rest_goes_on(tmp_path):
    """The line is that of the first step that relied on the hold, counted in the text above."""
    own_kind(tmp_path, close=(HOLD, ""))
    found = library_of(tmp_path, ())
    (fault,) = found.spoilt[NAME]
    file = tmp_path / OWN / f"close-{NAME}.yaml"
    line = 1 + file.read_text(encoding="utf-8").splitlines().index("        requires: [guards on]")
    assert (fault.file, fault.rule) == (str(file), "not-in-force")
    assert line - 2 <= fault.line <= line
    assert "'guards on'" in fault.what
    assert fault.mend
    assert f"close-{NAME}" not in found.procedures
    assert {f"check-{NAME}", "close-single-pump"} <= set(found.procedures)
    assert fault in faults_of(site(), found, "site.toml")
    assert faults_of(site("single-pump"), found, "site.toml") == []


def test_a_file_that_cannot_be_read_takes_its_kind_out_and_no_other(tmp_path):
    own_kind(tmp_path, machines=("hoppers: 1", "hoppers: [1"))
    found = library_of(tmp_path, ())
    assert NAME not in found.kinds
    assert not any(NAME in one for one in found.procedures)
    (fault,) = found.spoilt[NAME]
    assert "is not YAML" in fault.what
    assert fault.line == 4
    assert set(known().kinds) == set(found.kinds)


def test_a_rule_that_only_the_whole_check_knows_binds_it_too(tmp_path):
    """'phrase-too-alike' is judged by sound: 'next' and 'text' differ by a fifth (measured)."""
    own_kind(tmp_path, close=("I found everything in place", "text"))
    rules = {one.rule for one in spoilt(tmp_path)}
    assert "phrase-too-alike" in rules


def test_nothing_takes_the_place_of_what_is_shipped(tmp_path):
    kind = KIND.replace(NAME, "single-pump").replace("hoppers: 1", "hoppers: 2")
    write(tmp_path, "machines/single-pump.yaml", kind)
    text = EVENING.replace(NAME, "single-pump")
    write(tmp_path, "close-single-pump.yaml", text)
    found = library_of(tmp_path, ())
    assert (found.kinds, found.procedures) == (known().kinds, known().procedures)
    assert found.own == frozenset()
    assert all("the kiosk has" in one.what for one in found.faults)
    assert len(found.faults) == 2
    assert faults_of(site("single-pump"), found, "site.toml") == []


@pytest.mark.parametrize(
    ("file", "text", "what"),
    [
        ("extra.yaml", EVENING.replace(f"machine_kind: {NAME}", "machine_kind: single-pump"),
         "a kind that comes with the kiosk"),
        ("extra.yaml", EVENING.replace(f"machine_kind: {NAME}", "machine_kind: other"),
         "no kind of machine 'other'"),
        ("extra.yaml", "[", "it is for no kind of machine"),
        ("common.yaml", "conditions: {}\nproblems: {}\n", "it is not read"),
        ("limits/mine.yaml", "id: mine\n", "it is not read"),
        ("review/other.yaml", "id: other\n", "it is not read"),
    ],
)  # fmt: skip
def test_a_file_that_is_not_used_is_told_and_disturbs_nothing(tmp_path, file, text, what):
    stray = write(own_kind(tmp_path), file, text)
    found = library_of(tmp_path, ())
    assert [(one.file, what in one.what) for one in found.faults] == [(str(stray), True)]
    assert not found.spoilt
    assert f"close-{NAME}" in found.procedures


def test_what_is_due_must_be_there_and_a_left_out_procedure_is_not_due(tmp_path):
    own_kind(tmp_path, review=("check-counter-pump]", "check-counter-pump, close-counter-pump]"))
    found = library_of(tmp_path, ())
    assert "leaves a machine in service" in found.spoilt[NAME][0].what
    assert f"check-{NAME}" not in load_schedule(library=found).check.procedures
    own_kind(tmp_path, check=("Look at the brushes. They hang clean and dry.", '"Do {that}."'))
    found = library_of(tmp_path, ())
    assert {one.rule for one in found.spoilt[NAME]} == {"unknown-setting"}
    assert f"check-{NAME}" not in load_schedule(library=found).check.procedures
    assert f"{NAME}-door" in [one.id for one in load_schedule(library=found).intervals]


# The languages of the crew.


def test_only_the_languages_of_the_site_must_be_there(tmp_path):
    own_kind(tmp_path)
    assert not library_of(tmp_path, ("en",)).spoilt
    lacking = spoilt(tmp_path, "en", "es")
    assert {one.rule for one in lacking} == {"missing-translation"}
    assert all(one.what.endswith(": es") for one in lacking)


def test_a_translation_left_behind_by_a_changed_sentence_is_an_error(tmp_path):
    both = (
        "{en: Let the beater run until the barrel is empty.}",
        "{en: Let the beater run until the barrel is empty., es: Deje girar el batidor.}",
    )
    own_kind(tmp_path, close=both)
    shutil.copytree(tmp_path / OWN, tmp_path / AS_COPIED)
    (tmp_path / AS_COPIED).rename(tmp_path / OWN / AS_COPIED)
    assert "translation-behind" not in {one.rule for one in spoilt(tmp_path, "en", "es")}
    file = tmp_path / OWN / f"close-{NAME}.yaml"
    text = file.read_text(encoding="utf-8").replace("Let the beater run", "Stop the beater")
    # Where it stands does not matter, but what it is.
    moved = text.replace("      - id: guards", "      - id: first\n        say: {en: Stand back.}\n"
                                               "      - id: guards")  # fmt: skip
    file.write_text(moved, encoding="utf-8")
    behind = [one for one in spoilt(tmp_path, "en", "es") if one.rule == "translation-behind"]
    assert [one.field for one in behind] == ["run.say.es"]
    assert behind[0].line == 1 + moved.splitlines().index(
        "        say: {en: Stop the beater until the barrel is empty., es: Deje girar el batidor.}"
    )
    assert not library_of(tmp_path, ("en",)).spoilt


# Once after each change.


def test_a_check_is_made_once_and_again_after_a_change(tmp_path):
    told: list[str] = []
    own_kind(tmp_path)
    library_of(tmp_path, (), told.append)
    library_of(tmp_path, (), told.append)
    assert told == [
        f"The machine kind '{NAME}' is new or was changed: it is checked, which takes a while."
    ]
    own_kind(tmp_path, close=("run until", "turn until"))
    library_of(tmp_path, (), told.append)
    assert len(told) == 2
    # In other languages it is another check.
    library_of(tmp_path, ("es",), told.append)
    assert len(told) == 3


@pytest.mark.parametrize("kept", [b"{", b"[" * 9000, b'["x", [{"file": 3}]]'])
def test_a_kept_check_that_cannot_be_read_counts_for_nothing(tmp_path, kept):
    own_kind(tmp_path, close=(HOLD, ""))
    wanted = spoilt(tmp_path)
    (file,) = (tmp_path / CHECKED).iterdir()
    file.write_bytes(kept)
    assert spoilt(tmp_path) == wanted


def test_a_data_folder_that_was_moved_is_held_to_the_same(tmp_path):
    own_kind(tmp_path / "here", close=(HOLD, ""))
    before = library_of(tmp_path / "here", ())
    (tmp_path / "here").rename(tmp_path / "there")
    after = library_of(tmp_path / "there", ())
    assert f"close-{NAME}" not in after.procedures
    assert [one.what for one in after.spoilt[NAME]] == [one.what for one in before.spoilt[NAME]]
    assert all("there" in one.file for one in after.spoilt[NAME])


def test_where_nothing_can_be_kept_it_is_checked_again(tmp_path):
    own_kind(tmp_path)
    (tmp_path / CHECKED).write_text("no folder", encoding="utf-8")
    told: list[str] = []
    for n in (1, 2):
        assert not library_of(tmp_path, (), told.append).spoilt
        assert len(told) == n


# A site with one.


def test_a_session_is_read_and_reported_after_its_files_are_gone(tmp_path):
    own_kind(tmp_path)
    clock = SystemClock()
    with closing(Journal(tmp_path)) as journal:
        shop = Shop(site(), library_of(tmp_path, ()), journal, clock, tmp_path)
        assert [plan.procedure for plan in shop.cards()[-1].due] == [f"close-{NAME}"]
        session = shop.fresh("m9", f"close-{NAME}")
        worker = next(one for one in site().people if one.role is Role.WORKER)
        session.do(c.Start(worker.id, "en"), c.Evidence(c.Channel.TOUCH))
        session.do(c.GivePhrase(), c.Evidence(c.Channel.TOUCH))
        title = session.plan.title
    shutil.rmtree(tmp_path / OWN)
    with closing(Journal(tmp_path)) as journal:
        shop = Shop(site(), library_of(tmp_path, ()), journal, clock, tmp_path)
        plan = shop.plan_of(session.id)
        assert plan is not None
        assert (plan.title, [one.id for one in plan.steps]) == (title, ["guards", "run"])
        card = shop.cards()[-1]
        assert (card.kind, card.due, card.others) == ({"en": NAME}, (), ())
        assert card.unfinished is not None
        assert f"no procedure is for the kind '{NAME}' of 'm9'" in shop.faults()
        taken = shop.take_up(session.id)
        assert taken.caveat == "text-changed"
        with closing(shop.ledger()) as ledger:
            ledger.catch_up()


def test_the_files_of_a_spoilt_kind_are_named_among_the_faults_of_the_shop(tmp_path):
    own_kind(tmp_path, close=(HOLD, ""))
    with closing(Journal(tmp_path)) as journal:
        shop = Shop(site(), library_of(tmp_path, ()), journal, SystemClock(), tmp_path)
        assert any(f"close-{NAME}.yaml:" in one and "To mend" in one for one in shop.faults())
        *others, own = shop.cards()
        assert all(one.due for one in others)
        assert own.due == ()
        assert own.faults == shop.library.spoilt[NAME]
        assert not any(one.faults for one in others)
        assert [plan.procedure for plan in own.beside] == [f"check-{NAME}"]


# The commands.


@pytest.fixture
def folder(tmp_path, monkeypatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    return tmp_path


def test_the_command_copies_and_says_what_to_do(folder, capsys):
    assert cli.main(["setup", "--copy", "twin-gravity", "--as", "patio-twin"]) == 0
    told = capsys.readouterr().out
    assert str(folder / OWN / "machines" / "patio-twin.yaml") in told
    assert "kiosk check" in told
    assert cli.main(["setup", "--as", "patio-twin"]) == 1
    assert "--copy KIND" in capsys.readouterr().err


def test_the_check_of_a_file_is_that_of_its_kind(folder, capsys):
    own_kind(folder)
    file = folder / OWN / f"close-{NAME}.yaml"
    assert cli.main(["check", str(file)]) == 0
    told = capsys.readouterr().out
    assert "close-counter-pump: 2 steps" in told
    assert "check-counter-pump: 1 step" in told
    assert "single-pump" not in told
    shutil.copytree(folder / OWN, folder / "before")
    (folder / "before").rename(folder / OWN / AS_COPIED)
    file.write_text(EVENING.replace(HOLD, ""), encoding="utf-8")
    assert cli.main(["check", str(file)]) == 1
    told = capsys.readouterr().out
    assert "error not-in-force: run.requires" in told
    assert "warning hold-taken-out: phases: the hold 'guards'" in told


def test_a_wrong_file_of_what_is_due_fails_the_check(folder, capsys):
    own_kind(folder, review=("part: door", "part: lid"))
    assert cli.main(["check", str(folder / OWN / "review" / f"{NAME}.yaml")]) == 1
    assert f"'{NAME}' has no part 'lid'" in capsys.readouterr().out


def test_the_site_of_a_spoilt_kind_is_told_by_the_setups_check(folder, capsys):
    own_kind(folder, close=(HOLD, ""))
    text = (shipped("demo") / home.SITE_FILE).read_text(encoding="utf-8")
    text = text.replace('kind = "single-pump"', f'kind = "{NAME}"')
    languages = text[text.index("languages = [") :].partition("\n")[0]
    assert languages in text
    (folder / home.SITE_FILE).write_text(text, encoding="utf-8")
    assert cli.main(["setup", "--check"]) == 1
    told = capsys.readouterr().err
    assert f"close-{NAME}.yaml:" in told
    assert "'guards on'" in told


def test_a_command_that_needs_a_kind_says_when_it_is_gone(folder, capsys):
    text = (shipped("demo") / home.SITE_FILE).read_text(encoding="utf-8")
    text = text.replace('kind = "single-pump"', f'kind = "{NAME}"')
    (folder / home.SITE_FILE).write_text(text, encoding="utf-8")
    words = ["--machine", "counter", "--part", "door", "--by", "p1"]
    for command in (
        ["parts", "received", "--count", "1"],
        ["lab", "replaced", "--day", "2026-01-01"],
    ):
        assert cli.main([*command, *words]) == 1
        assert f"The kind '{NAME}' of counter is not here" in capsys.readouterr().err


def test_every_file_of_the_small_kind_is_read():
    assert {Path(one).name.removesuffix(".yaml") for one in FILES} == {
        NAME, f"close-{NAME}", f"check-{NAME}",
    }  # fmt: skip
