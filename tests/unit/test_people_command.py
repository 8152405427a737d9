"""`kiosk people`, and what a site file says of people."""

from __future__ import annotations

import getpass
from collections.abc import Callable, Iterator
from contextlib import closing
from pathlib import Path

import pytest

from kiosk.cli import main
from kiosk.clock import SystemClock
from kiosk.engine.commands import Channel, Evidence
from kiosk.journal.shop_facts import PersonErased, PinSet, RemarkRecorded, ShopEvent, SignedOff
from kiosk.journal.store import Journal
from kiosk.people.beside import Beside
from kiosk.people.pins import Pins
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.site import Kept, Role, load_site
from kiosk.remarks.sounds import Lies, Sounds
from kiosk.shipped import shipped

DEMO = (shipped("demo") / "site.toml").read_text(encoding="utf-8")
REAL = DEMO.replace("practice = true", "practice = false").replace('invented = "2468"', "")


@pytest.fixture
def home(tmp_path: Path, monkeypatch: pytest.MonkeyPatch) -> Path:
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    (tmp_path / "site.toml").write_text(REAL, encoding="utf-8")
    return tmp_path


@pytest.fixture
def typed(monkeypatch: pytest.MonkeyPatch) -> Callable[..., None]:
    def answers(*texts: str) -> None:
        waiting: Iterator[str] = iter(texts)
        monkeypatch.setattr(getpass, "getpass", lambda _: next(waiting))

    return answers


def facts(folder: Path) -> list[object]:
    with closing(Journal(folder)) as journal:
        return [one.fact for one in journal.shop_events()]


def test_a_pin_is_asked_for_twice_and_set(home, typed, capsys):
    typed("480216", "480216")
    assert main(["people", "pin", "p5"]) == 0
    assert "Priya Nair (p5) has a new PIN." in capsys.readouterr().out
    assert Pins(home).right("p5", "480216")
    assert facts(home) == [PinSet("p5", "command line")]
    assert main(["people", "list"]) == 0
    listed = capsys.readouterr().out.splitlines()
    assert listed[4] == "p5  Priya Nair  supervisor  walks everything  has a PIN"
    assert listed[3] == "p4  Tess Okoro  trainee  walks everything  has no PIN"


@pytest.mark.parametrize(
    ("answers", "why"),
    [
        (("480216", "480217"), "differ"),
        (("1234",), "too easy"),
        (("12",), "4 to 12 digits"),
    ],
)
def test_a_pin_that_will_not_do_is_refused_and_nothing_is_written(
    home, typed, capsys, answers, why
):
    typed(*answers)
    assert main(["people", "pin", "p5"]) == 1
    assert why in capsys.readouterr().err
    assert not (home / "pins.json").exists()
    assert facts(home) == []


def test_a_stranger_has_no_pin(home, typed, capsys):
    typed()
    assert main(["people", "pin", "nobody"]) == 1
    assert "p5 (Priya Nair)" in capsys.readouterr().err


def test_erasing_needs_the_site_file_to_have_let_go_first(home, capsys):
    with closing(Beside(home)) as beside:
        beside.meet(load_site(home / "site.toml").people, 1.0)
        remark = beside.keep("Rosa was late", "p2", 1.0)
    assert main(["people", "erase", "p2"]) == 1
    assert "[[people]]" in capsys.readouterr().err
    name = 'id = "p2"\nname = "Rosa Beltrán"\nlanguage = "es"\n'
    assert name in REAL
    (home / "site.toml").write_text(REAL.replace(f"[[people]]\n{name}", ""), encoding="utf-8")
    assert main(["people", "erase", "p2", "--by", "p5"]) == 0
    assert "one remark" in capsys.readouterr().out
    assert facts(home) == [PersonErased("p2", "p5", 1)]
    with closing(Beside(home)) as beside:
        assert beside.text(remark) is None
        assert beside.name("p2") == "p2"
        assert beside.name("p3") == "Dale Whitcomb"


def test_tidying_says_what_went(home, capsys):
    with closing(Beside(home)) as beside:
        beside.keep("an old remark", "p5", 1.0)
    assert main(["people", "tidy"]) == 0
    assert "Nothing has been kept longer" in capsys.readouterr().out
    (home / "site.toml").write_text(REAL + "\n[kept]\nremarks_days = 30\n", encoding="utf-8")
    assert main(["people", "tidy"]) == 0
    assert "one remark" in capsys.readouterr().out


def test_a_name_never_stands_where_the_journal_wants_an_id(home, capsys):
    args = ["lab", "replaced", "--machine", "patio", "--part", "o-rings", "--day", "2026-01-05"]
    assert main([*args, "--by", "Priya Nair"]) == 1
    assert "p5 (Priya Nair)" in capsys.readouterr().err
    assert facts(home) == []


def test_no_fact_of_the_journal_holds_a_name_of_the_demo(home):
    """A sign-off holds an id and what stands for the remark, and neither name nor text."""
    with closing(Beside(home)) as beside:
        fact = SignedOff("s", "p5", beside.keep("Dale Whitcomb did well", "p5", 1.0))
    assert "Dale" not in str(fact)


# The site file.


def test_the_demo_has_a_trainee_a_supervisor_and_an_invented_pin():
    site = load_site(shipped("demo") / "site.toml")
    assert {one.role for one in site.people} == set(Role)
    assert site.person("p5").name == "Priya Nair"
    assert site.pins.invented == "2468"
    assert site.kept == Kept()


@pytest.mark.parametrize(
    ("text", "field", "mend"),
    [
        (DEMO.replace("practice = true", "practice = false"), "pins.invented", "kiosk people pin"),
        (DEMO.replace('"2468"', '"24x8"'), "pins.invented", "quotation marks"),
        (REAL.replace('role = "supervisor"', ""), "people", "supervisor"),
        (REAL.replace("trainee_walks = 3", "trainee_walks = -1"), "trainee_walks", "0 or more"),
        (REAL + "\n[kept]\nnames_days = -5\n", "kept.names_days", "0 or more"),
        (REAL.replace('role = "trainee"', 'role = "boss"'), "people.4.role", "supervisor"),
    ],
)
def test_a_wrong_word_about_people_names_field_and_mend(tmp_path, text, field, mend):
    (tmp_path / "site.toml").write_text(text, encoding="utf-8")
    with pytest.raises(FaultyFile) as caught:
        load_site(tmp_path / "site.toml")
    told = str(caught.value)
    assert field in told
    assert mend in told


def test_a_spoken_remark_is_erased_with_its_worker(home, typed, capsys):
    sha256 = Sounds(home).keep(b"what was said")
    with closing(Journal(home)) as journal:
        at = SystemClock().now()
        fact = RemarkRecorded("s", "lid", "gone", sha256, 2.0, False)
        journal.append_shop([ShopEvent(at, Evidence(Channel.TOUCH), fact)])
    assert main(["people", "erase", "gone"]) == 0
    assert "The sound of one spoken remark is erased too" in capsys.readouterr().out
    assert Sounds(home).look(sha256) is Lies.MISSING
    assert facts(home)[-1] == PersonErased("gone", "command line", 0, (sha256,))
