"""The command `kiosk calc`: what it prints, what it asks for, and how it says what is missing."""

from __future__ import annotations

import io
import json
from pathlib import Path

import pytest

from kiosk.cli import main
from kiosk.reckoning.table import CALCULATORS
from tests.unit.reckoning_bench import lines, run, worked

LOT = "plan=eu-ice-cream-enterobacteriaceae"
DOSE = ["dose", "water=8", "wanted=100"]


@pytest.fixture(autouse=True)
def _no_site(tmp_path: Path, monkeypatch):
    monkeypatch.setenv("KIOSK_HOME", str(tmp_path))
    monkeypatch.setattr("sys.stdin", io.StringIO())


class Terminal(io.StringIO):
    """A worker at a keyboard."""

    def isatty(self) -> bool:
        return True


def calc(capsys, *words: str) -> tuple[int, str, str]:
    status = main(["calc", *words])
    out, err = capsys.readouterr()
    return status, out, err


def test_without_a_name_the_calculators_are_listed(capsys):
    status, out, _ = calc(capsys)
    assert status == 0
    assert [line.split()[0] for line in out.splitlines()] == list(CALCULATORS)
    assert "Sanitizer: how much to put in" in out


def test_it_prints_the_finding_and_its_sources(capsys):
    status, out, err = calc(capsys, *DOSE)
    assert (status, err) == (0, "")
    first, *rest = out.splitlines()
    assert first == "Put one packet into 8 litres of water. That gives 138 parts per million."
    assert any(
        one.startswith("(4-501.114(A); 40 CFR 180.940(a), FDA Food Code 2022") for one in rest
    )


@pytest.mark.parametrize(
    ("name", "answers"),
    [
        ("dose", "unit=in-gallons water=2 wanted=100"),
        ("strength", "strip=50 acidity=8.1 temperature=24"),
        ("free-chlorine", "kind=powder strip=100 acidity=8 temperature=24"),
        ("cold", "hours=3 now=9 power=was-out plan=plan-there"),
        ("growth", "temperature=21.1 hours=4"),
        ("heat-treatment", "coldest=66 minutes=30 ended=2 strip=3"),
        ("plate-count", "rule=fda-rule exponent-1=2 kind-1=counted colonies-1=27 more-1=no-more"),
        ("mpn", "tenth=3 hundredth=1 thousandth=0"),
        ("lot", f"plan=eu-ice-cream-salmonella {run('found', ['not-found'] * 5)}"),
        ("authority", "who=iowa test=coliform product=plain results=2 result-1=11 result-2=12"),
    ],
)
def test_it_says_what_the_calculator_says(capsys, name, answers):
    found = worked(name, answers)
    language = "es" if name == "cold" else "ko" if name == "lot" else "en"
    status, out, _ = calc(capsys, name, *answers.split(), "--json", "--language", language)
    told = json.loads(out)
    assert told["lines"] == lines(found, language)
    assert told["sources"] == list(found.sources)
    assert told["good"] is found.good
    assert status == (1 if found.good is False else 0)
    assert list(told["answers"]) == [one.partition("=")[0] for one in answers.split()]


@pytest.mark.parametrize(
    ("words", "said"),
    [
        (["dose"], "Missing: water=VALUE, [0.1 litres - 500 litres]. How much water is it?"),
        (["dose", "watr=8"], "Nothing asked for: watr."),
        (["cold", "hours=1", "now=4"], "power=VALUE, [stayed-on | was-out | not-known]"),
        (["dose", "water"], "'water' is no answer. Write NAME=VALUE, as water='8 L'."),
        ([*DOSE, "water=9"], "'water' is answered twice."),
        ([*DOSE, "salt=1"], "'dose' does not ask for: salt."),
        (["dos"], "No calculator is called 'dos'. There are: dose, strength"),
        (["dose", "water=8 kg", "wanted=100"], "water: “kg” is no unit that is known here."),
        (["dose", "water=900", "wanted=100"], "it must lie between 0.1 litres and 500 litres"),
        (["mpn", "tenth=1.5"], "tenth: 1.5 must be a whole number."),
        (["strength", "strip=9"], "acidity=VALUE, [pH 0 - pH 14 | not-measured]"),
        (["lot", LOT, "count-1=<ten"], "count-1: “ten” is not a number."),
        (["lot", LOT, "count-1=<0"], "count-1: That cannot be: it must lie between 0.1 and"),
        (["mpn", "tenth=<1"], "tenth: “<1” is not a number."),
        (["mpn", "tenth=1,000"], "can be read as 1000 or as 1"),
        (["cold", "hours=1", "now=4", "power=on"], "on is not one of the answers. [stayed-on |"),
        (["strength", "strip=50", "acidity=8", "temperature=24 K"], "Use one of: °C, °F"),
    ],
)
def test_bad_words_are_an_error_that_says_what_to_mend(capsys, words, said):
    status, out, err = calc(capsys, *words)
    assert (status, out) == (1, "")
    assert said in err
    assert "Traceback" not in err


def test_less_than_is_typed_as_the_laboratory_writes_it(capsys):
    counts = [f"count-{place}=<10" for place in range(1, 6)]
    status, out, _ = calc(capsys, "lot", LOT, *counts, "--json")
    told = json.loads(out)
    assert status == 0
    assert told["answers"]["count-5"] == "below-detection"
    assert told["answers"]["bound-5"] == "10"
    assert told["lines"][0] == "The lot is satisfactory."


def test_units_are_converted_but_a_temperature_is_judged_in_its_own(capsys):
    """24 °C passes and so does 75 °F, which is 23.9 °C."""
    assert (
        "in 3.79 litres"
        in calc(capsys, "dose", "water=1 gal", "wanted=100")[1].replace("into", "in")
        or "In 3.79 litres" in calc(capsys, "dose", "water=1 gal", "wanted=100")[1]
    )
    for temperature, passes in (("24", 0), ("75 °F", 0), ("23.9", 1), ("74.9 F", 1)):
        found = calc(capsys, "strength", "strip=50", "acidity=8", f"temperature={temperature}")
        assert found[0] == passes


def test_errors_are_said_in_the_language_asked_for(capsys):
    _, _, err = calc(capsys, "dose", "water=8 kg", "--language", "es")
    assert "no es una unidad conocida aquí" in err


def test_at_a_terminal_it_asks_for_what_is_missing_until_the_answer_fits(capsys, monkeypatch):
    monkeypatch.setattr("sys.stdin", Terminal("a lot\n100\n"))
    status, out, _ = calc(capsys, "dose", "water=8")
    assert status == 0
    assert out.count("How strong shall it be, in parts per million?") == 2
    assert "“a lot” is not a number" in out
    assert "Put one packet into 8 litres of water." in out


def test_at_a_terminal_each_name_is_told_in_words(capsys, monkeypatch):
    monkeypatch.setattr("sys.stdin", Terminal("stayed-on\n"))
    status, out, _ = calc(capsys, "cold", "hours=1", "now=4", "--language", "ko")
    assert status == 0
    assert "not-known: 아무도 몰라요]" in out
    assert "팔아도 됩니다." in out


def test_at_a_terminal_that_is_closed_it_gives_up_with_a_sentence(capsys, monkeypatch):
    monkeypatch.setattr("sys.stdin", Terminal(""))
    status, _, err = calc(capsys, "dose", "water=8")
    assert status == 1
    assert "Nothing more was typed, so nothing was worked out." in err


def test_the_site_file_is_what_it_works_with(capsys, tmp_path):
    demo = (Path(__file__).parents[2] / "demo" / "site.toml").read_text("utf-8")
    (tmp_path / "site.toml").write_text(demo.replace("packet_grams = 2.0", "packet_grams = 1.0"))
    assert "Put 2 packets into 8 litres" in calc(capsys, *DOSE)[1]
    (tmp_path / "site.toml").write_text(demo.replace("food-code-2022", "atlantis"))
    status, _, err = calc(capsys, *DOSE)
    assert status == 1
    assert "no limits profile 'atlantis'" in err
