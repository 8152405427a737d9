"""The setup without its screens: the draft, what is checked, keys, zones, limits, ids, sound."""

from __future__ import annotations

import shutil
import stat
from contextlib import closing
from dataclasses import replace
from decimal import Decimal
from pathlib import Path
from zoneinfo import ZoneInfo

import pytest

from kiosk import cli, home
from kiosk.clock import SystemClock
from kiosk.engine import commands as c
from kiosk.journal.shop_facts import PinSet, ShopEvent
from kiosk.journal.store import Journal
from kiosk.languages.words import languages, words
from kiosk.people.beside import Beside
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.site import Person, load_site, read_site
from kiosk.setup import limits, zones
from kiosk.setup.check import check_site, faults_of
from kiosk.setup.dosing import mixes
from kiosk.setup.draft import DRAFT_FILE, ChangedMeanwhile, Draft
from kiosk.setup.ids import fresh_id
from kiosk.setup.keyboard import GROUPS, Keyboard
from kiosk.setup.questions import Question
from kiosk.shipped import shipped

DEMO = shipped("demo") / home.SITE_FILE
TEXT = DEMO.read_text(encoding="utf-8")


@pytest.fixture(scope="module")
def library() -> Library:
    return load_library(shipped("procedures"))


@pytest.fixture
def folder(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    """A data folder with the invented site in it."""
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    shutil.copy(DEMO, tmp_path / home.SITE_FILE)
    return tmp_path


# The draft.


def test_each_answer_is_on_the_disk_and_is_taken_up_again(tmp_path):
    draft = Draft.of(tmp_path)
    assert draft.open_questions() == tuple(Question)
    assert not draft.resumed
    draft.language = "es"
    draft.put("name", "Stand")
    draft.keep(Question.LANGUAGE, Question.NAME)
    assert not (tmp_path / home.SITE_FILE).exists()
    again = Draft.of(tmp_path)
    assert (again.language, again.document.get("name"), again.resumed) == ("es", "Stand", True)
    assert again.answered == {Question.LANGUAGE, Question.NAME}
    assert "setup" not in again.document.data


def test_a_site_that_is_not_sound_is_not_written_and_the_draft_stays(tmp_path):
    draft = Draft.of(tmp_path)
    draft.put("name", "Stand")
    draft.keep(Question.NAME)
    with pytest.raises(FaultyFile, match="'opens' is missing"):
        draft.write()
    assert not (tmp_path / home.SITE_FILE).exists()
    assert (tmp_path / DRAFT_FILE).exists()


def test_a_whole_site_is_written_with_its_comments_and_the_draft_is_gone(folder):
    draft = Draft.of(folder)
    assert draft.open_questions() == ()
    assert not draft.changed
    draft.put("name", "Other")
    draft.keep(Question.NAME)
    assert draft.changed
    draft.write()
    assert not draft.changed
    assert not (folder / DRAFT_FILE).exists()
    written = (folder / home.SITE_FILE).read_text(encoding="utf-8")
    assert written == TEXT.replace('name = "Sample Soft-Serve Stand (invented)"', 'name = "Other"')
    assert load_site(folder / home.SITE_FILE).name == "Other"


def test_who_could_read_the_file_still_can_and_a_link_stays_a_link(folder, tmp_path_factory):
    real = tmp_path_factory.mktemp("elsewhere") / "site.toml"
    (folder / home.SITE_FILE).rename(real)
    (folder / home.SITE_FILE).symlink_to(real)
    real.chmod(0o640)
    draft = Draft.of(folder)
    draft.put("name", "Other")
    draft.write()
    assert (folder / home.SITE_FILE).is_symlink()
    assert load_site(real).name == "Other"
    assert stat.S_IMODE(real.stat().st_mode) == 0o640


def test_a_file_that_somebody_else_changed_is_not_written_over(folder):
    draft = Draft.of(folder)
    draft.put("name", "Mine")
    draft.keep(Question.NAME)
    theirs = TEXT.replace("Sample Soft-Serve Stand", "Theirs")
    (folder / home.SITE_FILE).write_text(theirs, encoding="utf-8")
    with pytest.raises(ChangedMeanwhile):
        draft.write()
    assert (folder / home.SITE_FILE).read_text(encoding="utf-8") == theirs
    again = Draft.of(folder)
    assert again.left_aside
    assert again.document.get("name") == "Theirs (invented)"


@pytest.mark.parametrize("kept", ["", "x = [", "name = 1", "setup = 3", '[setup]\nanswered = "x"'])
def test_a_draft_that_cannot_be_read_stops_nothing(tmp_path, kept):
    (tmp_path / DRAFT_FILE).write_text(kept, encoding="utf-8")
    assert Draft.of(tmp_path).answered == set()


def test_a_site_file_that_is_no_toml_is_named(tmp_path):
    (tmp_path / home.SITE_FILE).write_text("name = [", encoding="utf-8")
    with pytest.raises(FaultyFile, match="is not TOML"):
        Draft.of(tmp_path)


def test_of_a_site_file_with_a_gap_only_the_gap_is_asked(folder):
    cut = TEXT.replace('opens = "10:00"\n', "")
    (folder / home.SITE_FILE).write_text(cut, encoding="utf-8")
    assert Question.OPENS in Draft.of(folder).open_questions()
    assert Question.CLOSES not in Draft.of(folder).open_questions()


# The check.

WRONG = [
    ('name = "Sample', 'nam = "Sample', "nam: 'nam' is not known here", "write 'name'"),
    ("target = 100\n", "", "sanitizer.target: 'target' is missing", "add target ="),
    ("target = 100", 'target = "x"', "sanitizer.target: 'target' must be a number", "0.554"),
    ('role = "supervisor"', 'role = "boss"', "people.5.role: 'boss'", "'worker', 'trainee' or"),
    ("practice = true", 'practice = "hm"', "'practice' must be true or false", "true or false"),
    ("languages = [", 'languages = "en" # [', "'languages' must be a list", "["),
    ("available_chlorine = 0.554", "available_chlorine = 55.4", "lies from 0 to 1", "0.05 for 5 %"),
    ("packet_grams = 2.0", "packet_grams = 0", "packet_grams: 0 is not above 0", "label"),
    ('limits = "food-code-2022"', 'limits = "mine"', "limits: there is no limits profile", "food"),
    ('kind = "single-pump"', 'kind = "pump"', "machines.2.kind: there is no kind", "single-pump"),
    ('isolation = "lock"', 'isolation = "rope"', "machines.2.options: the option", "plug, lock"),
    ('isolation = "lock"', 'insulation = "lock"', "there is no option 'insulation'", "isolation"),
    ("languages = [", 'languages = ["xx", ', "languages: the kiosk has no words in 'xx'", "en"),
    ('role = "trainee"', 'role = "trainee"\nwalks = ["close"]', "people.4.walks", "close-single"),
]  # fmt: skip


@pytest.mark.parametrize(("old", "new", "what", "mend"), WRONG, ids=[one[2] for one in WRONG])
def test_each_mistake_is_told_with_its_field_and_its_mend(folder, capsys, old, new, what, mend):
    assert old in TEXT
    (folder / home.SITE_FILE).write_text(TEXT.replace(old, new, 1), encoding="utf-8")
    assert cli.main(["setup", "--check"]) == 1
    told = capsys.readouterr().err
    assert what in told
    assert mend in told.partition("To mend:")[2]


def test_a_sound_file_is_said_to_be_so(folder, capsys):
    assert cli.main(["setup", "--check", str(DEMO)]) == 0
    assert "nothing is wrong" in capsys.readouterr().out
    assert cli.main(["setup", "--check", str(folder / "none.toml")]) == 1
    assert "kiosk setup" in capsys.readouterr().err


def test_a_time_under_its_limit_is_found_in_the_machine_that_has_it(library, folder):
    short = 'kind = "single-pump"\nsettings = { contact_time = "5 s" }'
    site = read_site(TEXT.replace('kind = "single-pump"', short), "site.toml")
    told = "\n".join(map(str, faults_of(site, library, "site.toml")))
    assert "out of the limit 'contact time'" in told
    assert check_site(folder / home.SITE_FILE, library).machine("counter").options


def test_without_a_terminal_run_and_setup_say_where_the_file_belongs(tmp_path, monkeypatch, capsys):
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    for command in ("run", "setup"):
        assert cli.main([command]) == 1
        assert str(tmp_path / home.SITE_FILE) in capsys.readouterr().err


# Keys.


def typed(text: str, *, each_word: bool = False) -> tuple[str, int]:
    """Type a text on the keys; return what is there, and the taps."""
    board, taps = Keyboard(each_word=each_word), 0
    for letter in text:
        if letter == " ":
            board, taps = board.press(" "), taps + 1
            continue
        if letter.isalpha() and board.capital != letter.isupper():
            board, taps = board.press("shift"), taps + 1
        group = next(one for one in board.keys if letter in one)
        board = board.press(group)
        assert letter in board.keys
        board, taps = board.press(letter), taps + 2
    return board.name, taps


NAMES = ("Rosa Beltrán", "João Conceição", "Zoë O'Dell-McKay", "Stand 24 & Co.", "Núñez", "Mina")


@pytest.mark.parametrize("name", NAMES)
def test_every_name_in_latin_letters_can_be_typed(name):
    if set(name.lower()) - {" "} <= set("".join(GROUPS)):
        assert typed(name, each_word=True)[0] == name
    else:
        assert Keyboard().type(name).name == name


def test_names_of_people_need_no_shift_and_two_taps_a_letter():
    assert typed("Rosa Beltrán", each_word=True) == ("Rosa Beltrán", 2 * 11 + 1)
    assert typed("Rosa Beltrán")[1] == 2 * 11 + 2


def test_all_keys_fit_at_18_columns_by_3_rows_on_the_smallest_screen():
    # 60 x 18: three columns of 18, and five rows under heading, question and text.
    assert len(GROUPS) + len(("space", "shift", "rub out", "back", "take")) <= 15
    assert max(map(len, GROUPS)) + len(("other letters", "shift", "rub out")) <= 15
    assert len(set("".join(GROUPS))) == len("".join(GROUPS))


def test_a_paste_is_one_line_without_what_cannot_be_seen():
    assert Keyboard().type("  Rosa\n\x1b[31m  Ana ").name == "Rosa[31m Ana"
    assert Keyboard("Ana ").press("backspace").text == "Ana"
    assert len(Keyboard().type("x" * 500).text) == 40


# Time zones, against the IANA data that the standard library reads.


def test_every_zone_that_can_be_chosen_is_one_and_each_is_reached_once():
    listed = [one for region in zones.regions() for one in zones.cities(region)]
    assert len(listed) == len(set(listed)) > 350
    for one in listed:
        assert ZoneInfo(one).key == one
    for region in zones.regions():
        groups = zones.by_letters(zones.cities(region))
        assert [one for group in groups.values() for one in group] == sorted(
            zones.cities(region), key=zones.city
        )
        assert all(
            any(zones.city(one).startswith(letter) for letter in letters.split())
            for letters, group in groups.items()
            for one in group
        )


def test_a_zone_shows_its_time_of_day():
    # 2026-07-01 12:00 UTC: Chicago is at UTC-5 in summer, Seoul at UTC+9 all year.
    assert zones.time_in("America/Chicago", 1_782_907_200) == "07:00"
    assert zones.time_in("Asia/Seoul", 1_782_907_200) == "21:00"
    assert zones.time_in("America/Nowhere", 0) == ""


def test_this_machines_own_zone_is_offered(monkeypatch):
    monkeypatch.setenv("TZ", ":America/Lima")
    assert zones.here() == "America/Lima"
    monkeypatch.setenv("TZ", "nonsense")
    assert zones.here() != "nonsense"


# Limits and doses.


def test_what_differs_between_the_profiles_is_read_from_their_files(library):
    food = library.limits["food-code-2022"]
    california = library.limits["california-retail-food-code"]
    assert limits.differing(library.limits.values()) == ("contact time",)
    assert limits.lines(food, library, words("en")) == ("contact time: at least 10 seconds",)
    assert limits.lines(california, library, words("en")) == ("contact time: at least 30 seconds",)
    silent = limits.lines(library.limits["eu-food-hygiene"], library, words("en"))
    assert "sanitizer strength" in silent[0]
    assert silent[1].startswith(f"{len(library.procedures)} of {len(library.procedures)}")


def test_a_profile_with_other_bounds_shows_them(library):
    food = library.limits["food-code-2022"]
    cold = replace(food.limits["mix temperature"], bounds={"°C": limits_bounds(food, "3")})
    other = replace(food, id="other", limits={**food.limits, "mix temperature": cold})
    both = replace(library, limits={"food-code-2022": food, "other": other})
    assert limits.lines(other, both, words("en")) == ("mix temperature: at most 3 degrees Celsius",)


def limits_bounds(profile, most: str):
    return replace(profile.limits["mix temperature"].bounds["°C"], most=Decimal(most))


@pytest.mark.parametrize("language", languages())
def test_the_dose_is_told_in_the_very_words_of_the_procedure(folder, library, language):
    draft = Draft.of(folder)
    found = mixes(draft, library, words(language))
    assert {one.machine for one in found} == {"Patio twin", "Counter single"}
    assert all(one.good for one in found)
    # 8 L at 100 mg/L want 0.8 g of chlorine; a packet of 2 g at 55.4 % brings 1.108 g: one packet.
    say = next(
        step.say for phase in library.procedures["close-single-pump"].phases
        for step in phase.steps if step.id == "mix-cleaner"
    )  # fmt: skip
    eight = words(language).say("unit-litres", n=8)
    assert say[language].format(volume=eight, packets="1") in {one.told for one in found}


def test_packets_too_large_for_the_water_are_told_for_each_machine(folder, library):
    draft = Draft.of(folder)
    draft.put("sanitizer.packet_grams", Decimal(20))
    found = mixes(draft, library, words("en"))
    assert found
    assert not any(one.good for one in found)
    assert "above the cap" in found[0].told


# Ids.


def test_an_id_that_the_record_has_seen_is_not_given_again(tmp_path):
    assert fresh_id("p", ["ana", "p2"], tmp_path) == "p3"
    with closing(Journal(tmp_path)) as journal:
        at = SystemClock().now()
        journal.append_shop([ShopEvent(at, c.Evidence(c.Channel.KEY), PinSet("p7", "p1"))])
        assert fresh_id("p", ["p2"], tmp_path) == "p8"
    with closing(Beside(tmp_path)) as beside:
        beside.meet([Person(id="p11", name="Gone", language="en")], 0.0)
    assert fresh_id("p", ["p2"], tmp_path) == "p12"
    assert fresh_id("m", ["patio"], tmp_path) == "m1"
