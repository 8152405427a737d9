"""The bench of the invented shop on a fixed day, and answers written as on the command line."""

from __future__ import annotations

from dataclasses import replace
from functools import lru_cache
from pathlib import Path

from kiosk.languages.words import words
from kiosk.procedure.load import Library, load_library
from kiosk.procedure.site import load_site
from kiosk.reckoning.asking import taken_in
from kiosk.reckoning.bench import bench
from kiosk.reckoning.calculator import Bench, Finding, NumberWanted
from kiosk.reckoning.interview import Interview
from kiosk.reckoning.table import CALCULATORS
from kiosk.reckoning.typed import read_answers

ROOT = Path(__file__).parents[2]
SUNDAY = 1_772_992_800.0
"""Sunday 8 March 2026, 18:00 UTC: noon or later at the shop, the same day."""


@lru_cache
def library() -> Library:
    return load_library(ROOT / "procedures")


@lru_cache
def shop_bench(unit: str = "°C", limits: str = "food-code-2022") -> Bench:
    site = replace(load_site(ROOT / "demo" / "site.toml"), limits=limits)
    return taken_in(bench(site, library(), SUNDAY), unit)


def begin(calculator: str, on: Bench | None = None) -> Interview:
    return Interview(CALCULATORS[calculator], on or shop_bench(), {})


def answered(interview: Interview, answers: str) -> Interview:
    """Give answers as `water=8 wanted=100`, each to the question that is open.

    `count-1=<10` answers two: the count and its bound.
    """
    for one in answers.split():
        name, _, text = one.partition("=")
        question = interview.question
        assert question is not None, f"nothing more is asked, and {one} is given"
        assert question.id == name
        wants = question.wants
        for value in read_answers(text, wants) if isinstance(wants, NumberWanted) else (text,):
            interview = interview.answer(value)
    return interview


def worked(calculator: str, answers: str, on: Bench | None = None) -> Finding:
    done = answered(begin(calculator, on), answers)
    assert done.question is None, f"still asked: {done.question.id}"
    return done.finding()


def lines(finding: Finding, language: str = "en") -> list[str]:
    return [words(language).line(line) for line in finding.lines]


def run(name: str, values: list[str], start: int = 1) -> str:
    """Write answers to a question that is asked for each of several things."""
    return " ".join(f"{name}-{place}={value}" for place, value in enumerate(values, start))
