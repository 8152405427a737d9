"""The check as a whole: which files, what is printed, what it returns, and its pages."""

from __future__ import annotations

import re
from pathlib import Path

import pytest

from kiosk.checking.check import look_at, subject_of
from kiosk.checking.gather import gather
from kiosk.checking.instruments import Instruments
from kiosk.checking.phonemes import phonemes
from kiosk.checking.proving import fit_all
from kiosk.checking.rules import RULES, page
from kiosk.procedure.load import load_library
from kiosk.shipped import shipped
from kiosk.speaking.voices import SpeechFailed
from tests.checking.shop import EVENING, INSTRUMENTS, KIND, Told, shop

UNSAFE = Path(__file__).parent / "unsafe"


def test_every_rule_has_a_page_and_every_page_a_rule() -> None:
    pages = Path(__file__).parents[2] / "kiosk" / "checking" / "pages"
    assert {path.stem for path in pages.glob("*.md")} == set(RULES)
    for name, rule in RULES.items():
        text = page(name)
        assert text.startswith(f"# {name} ({rule.severity})\n")
        parts = ("**Why it matters at the machine.**", "**Example**", "**To mend it.**")
        assert all(part in text for part in parts), name
        assert 8 <= len(text.splitlines()) <= 24
        assert max(map(len, text.splitlines())) <= 100


def test_a_page_is_shown_and_nothing_is_checked(tmp_path: Path) -> None:
    told = Told(tmp_path / "nowhere", explain="hold-idle")
    assert told.status == 0
    assert told.text == page("hold-idle")


def test_a_rule_that_is_not_there_names_those_that_are(tmp_path: Path) -> None:
    told = Told(tmp_path, explain="hold-idel")
    assert told.status == 1
    assert told.text.startswith("No rule is called 'hold-idel'. The rules are: ambiguous-phrase, ")


def test_each_procedure_is_told_in_one_line(tmp_path: Path) -> None:
    told = Told(shop(tmp_path))
    assert re.search(
        r"^evening: 8 steps, 2 plans, [1-9]\d+ states, \d\.\d s: proven$", told.text, re.M
    )
    assert "note: Drafted by machine and not yet checked by a fluent speaker: es, ko." in told.text


def test_a_file_from_elsewhere_is_checked_with_the_folder(tmp_path: Path) -> None:
    (tmp_path / "shop").mkdir()
    folder = shop(tmp_path / "shop")
    other = tmp_path / "late-evening.yaml"
    other.write_text(EVENING.replace("id: evening", "id: late-evening"), encoding="utf-8")
    told = Told(folder, other)
    assert told.status == 0, told.text
    assert "late-evening: 8 steps" in told.text
    assert "\nmorning: " not in told.text
    assert told.text.endswith("1 procedure, 2 plans: no errors, no warnings.")


def test_a_file_takes_the_place_of_the_one_with_its_id(tmp_path: Path) -> None:
    (tmp_path / "shop").mkdir()
    folder = shop(tmp_path / "shop", evening=("requires: [solution mixed]", "requires: [wrong]"))
    mended = tmp_path / "evening.yaml"
    mended.write_text(EVENING, encoding="utf-8")
    assert Told(folder).errors == {"unknown-condition"}
    assert Told(folder, mended).status == 0


def test_a_machine_kind_from_elsewhere_is_checked_with_its_procedures(tmp_path: Path) -> None:
    (tmp_path / "shop").mkdir()
    folder = shop(tmp_path / "shop")
    kind = tmp_path / "tiny.yaml"
    kind.write_text(KIND.replace("2 min", "5 s"), encoding="utf-8")
    told = Told(folder, kind)
    assert told.errors == {"time-under-limit"}
    assert "2 procedures" in told.text


def test_faults_of_other_files_are_not_told(tmp_path: Path) -> None:
    folder = shop(tmp_path, morning=("requires: [guards on]", "requires: [power isolated]"))
    assert Told(folder, folder / "evening.yaml").status == 0
    assert Told(folder).errors == {"hold-idle"}


def test_a_file_that_is_not_there_is_an_error(tmp_path: Path) -> None:
    told = Told(shop(tmp_path), tmp_path / "gone.yaml")
    assert told.status == 1
    assert "gone.yaml: error file: cannot be read" in told.text


def test_a_folder_without_its_common_file_is_told_and_not_looked_at(tmp_path: Path) -> None:
    folder = shop(tmp_path, common=("problems:", "problem:"))
    told = Told(folder)
    assert told.status == 1
    assert "common.yaml:10: error file: problem: 'problem' is not known here" in told.text


def test_a_folder_with_nothing_in_it_is_an_error(tmp_path: Path) -> None:
    told = Told(tmp_path)
    assert told.status == 1
    assert f"{tmp_path}: error file: no procedure lies there" in told.text
    assert "common.yaml: error file: cannot be read" in told.text


def test_two_files_of_one_id_are_not_checked_for_each_other(tmp_path: Path) -> None:
    folder = shop(tmp_path)
    told = Told(folder, folder / "evening.yaml", folder / "evening.yaml")
    assert told.errors == {"file"}
    assert "evening.yaml' has the same id" in told.text


def test_a_kind_that_is_not_there_is_named_with_those_that_are(tmp_path: Path) -> None:
    told = Told(shop(tmp_path, morning=("machine_kind: tiny", "machine_kind: tinny")))
    assert (
        "morning.yaml:4: error fit: machine_kind: no kind of machine is called 'tinny'. "
        "To mend: use one of: tiny; or give its file as well."
    ) in told.text
    assert told.status == 1


def test_a_faulty_kind_is_told_once_and_its_procedures_are_left_alone(tmp_path: Path) -> None:
    told = Told(shop(tmp_path, tiny=("hoppers: 1", "hoppers: some")))
    assert told.errors == {"file"}
    assert len(told.found) == 1


def test_the_path_of_an_unsafe_file_is_told_as_the_worker_would_live_it(tmp_path: Path) -> None:
    told = Told(shop(tmp_path, evening=("when: {isolation: plug}", "when: {isolation: lock}")))
    assert told.status == 1
    place = tmp_path / "evening.yaml"
    story = [
        "evening, version 1: a rule is broken, in 2 acts.",
        "  1. The worker begins the session.",
        f"     'hands' ({place}:15) is asked: Wash your hands.",
        "  2. The worker says this is done.",
        "     'hands' is confirmed; in force now: hands clean.",
        "     Let go (no way in): hands clean.",
        "     The session is held: no way in.",
        "Broken there (can-enter): 'open' requires 'power isolated', which is not in force when "
        "all before it is done.",
    ]
    assert "\n".join(story) in told.text


@pytest.fixture(scope="module")
def real_sounds() -> Instruments:
    try:
        phonemes({"en": ["yes"]})
    except SpeechFailed as failure:
        pytest.skip(str(failure))
    known: dict[tuple[str, str], tuple[str, ...]] = {}

    def remembered(phrases):  # type: ignore[no-untyped-def]
        new = {
            language: [phrase for phrase in said if (language, phrase) not in known]
            for language, said in phrases.items()
        }
        if any(new.values()):
            known.update(phonemes(new))
        return known

    return Instruments(remembered, INSTRUMENTS.seconds, INSTRUMENTS.unknown)


def unsafe_files() -> list[Path]:
    return sorted(UNSAFE.glob("*.yaml"))


def test_there_are_many_unsafe_files() -> None:
    assert len(unsafe_files()) >= 30


@pytest.mark.parametrize("path", unsafe_files(), ids=lambda path: path.stem)
def test_an_unsafe_file_is_refused_for_its_own_reason(path: Path, real_sounds: Instruments) -> None:
    header = path.read_text(encoding="utf-8")
    expected = re.findall(r"^# expect: (.+)$", header, re.M)
    companions = [UNSAFE / name for name in re.findall(r"^# with: (.+)$", header, re.M)]
    told = Told(shipped("procedures"), path, *companions, instruments=real_sounds)
    assert told.status == 1
    assert expected
    for words in expected:
        assert words in told.text
    named = {words.partition(":")[0] for words in expected} & set(RULES)
    assert told.errors == named, told.text


def test_no_rule_finds_an_error_in_the_shipped_files(real_sounds: Instruments) -> None:
    gathered = gather([], shipped("procedures"))
    assert gathered.library is not None
    assert gathered.faults == ()
    assert gathered.library == load_library(shipped("procedures"))
    fitted = {
        one.id: fit_all(gathered.library, one) for one in gathered.library.procedures.values()
    }
    assert all(of.plans and not of.faults for of in fitted.values())
    findings: list[object] = []
    look_at(subject_of(gathered, fitted, real_sounds), findings, [])  # type: ignore[arg-type]
    assert [str(one) for one in findings] == []
