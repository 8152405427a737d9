"""An interview always ends in a finding that can be said, whatever is answered."""

from __future__ import annotations

import re
import sys
from dataclasses import replace
from decimal import Decimal

from hypothesis import given, settings
from hypothesis import strategies as st

from kiosk.languages.words import languages, words
from kiosk.reckoning.calculator import Bench, Finding, NumberWanted, OneOf, Question
from kiosk.reckoning.cannot import SORTS, cannot
from kiosk.reckoning.interview import Interview, NotAnAnswer
from kiosk.reckoning.table import CALCULATORS
from kiosk.reckoning.typed import read_answer
from kiosk.trade.most_probable_number import NotADesign
from tests.unit.reckoning_bench import begin, shop_bench

LIMITS = ("food-code-2022", "california-retail-food-code", "eu-food-hygiene")
MOST_QUESTIONS = 60

ENGLISH = sorted({
    part
    for sort_of in SORTS
    for sentence in sys.modules[sort_of.__module__]._SAYS.values()
    for part in re.split(r"\{[^}]*\}|[.:;,]", sentence.lower())
    if len(part.split()) > 2
})  # fmt: skip
"""Every run of three words or more in the trade's own English sentences."""


def labelled(on: Bench, share: Decimal, grams: Decimal) -> Bench:
    label = replace(on.site.sanitizer, available_chlorine=share, packet_grams=grams)
    return replace(on, site=replace(on.site, sanitizer=label))


shares = st.sampled_from(list(map(Decimal, ("0.554", "0.005", "0", "2", "0.0101", "NaN"))))
packets = st.sampled_from(list(map(Decimal, ("2", "0", "0.001"))))
benches = st.builds(shop_bench, st.sampled_from(["°C", "°F"]), st.sampled_from(LIMITS))
wild = st.one_of(
    st.text(max_size=8), st.decimals(), st.sampled_from(["", "-1", "1e9", "another", "no-more"])
)


def fitting(question: Question) -> st.SearchStrategy[Decimal | str]:
    match question.wants:
        case OneOf(names):
            return st.sampled_from(names)
        case NumberWanted(least=least, most=most, choices=choices, whole=whole, besides=besides):
            places = 0 if whole else 2
            ends = st.sampled_from([least, most, *besides])
            return st.one_of(
                st.sampled_from(choices), ends, st.decimals(least, most, places=places)
            )


def answer(interview: Interview, value: Decimal | str) -> Interview:
    try:
        return interview.answer(value)
    except NotAnAnswer as refused:
        told(refused)
        return interview


def told(refused: NotAnAnswer) -> None:
    for language in languages():
        assert words(language).line(refused.message)


@given(st.sampled_from(sorted(CALCULATORS)), benches, st.data())
@settings(max_examples=150, deadline=None)
def test_every_interview_ends_in_a_finding(calculator, on, data):
    interview = begin(calculator, on)
    for _ in range(MOST_QUESTIONS):
        question = interview.question
        if question is None:
            break
        assert words("ko").line(interview.line())
        interview = answer(interview, data.draw(fitting(question)))
    assert interview.question is None
    found = interview.finding()
    assert found.lines
    for language in languages():
        assert all(words(language).line(line) for line in found.lines)


def english(found: Finding, language: str) -> list[str]:
    said = " ".join(words(language).line(line) for line in found.lines).lower()
    return [part for part in ENGLISH if part in said]


def test_an_english_sentence_in_a_finding_would_be_seen():
    found = cannot(NotADesign("one-tube"))
    assert english(found, "en")
    assert english(found, "es") == english(found, "ko") == []


@given(st.sampled_from(sorted(CALCULATORS)), benches, shares, packets, st.data())
@settings(max_examples=200, deadline=None)
def test_no_finding_is_half_in_english(calculator, on, share, grams, data):
    interview = begin(calculator, labelled(on, share, grams))
    for _ in range(MOST_QUESTIONS):
        question = interview.question
        if question is None:
            break
        interview = answer(interview, data.draw(fitting(question)))
    assert interview.question is None
    found = interview.finding()
    for language in languages():
        assert language == "en" or english(found, language) == [], language


@given(st.sampled_from(sorted(CALCULATORS)), st.data())
@settings(max_examples=200, deadline=None)
def test_wild_answers_are_refused_and_change_nothing(calculator, data):
    interview = begin(calculator)
    for _ in range(data.draw(st.integers(0, 6))):
        question = interview.question
        if question is None:
            return
        interview = interview.answer(data.draw(fitting(question)))
        if data.draw(st.booleans()):
            interview = interview.back()
    question, value = interview.question, data.draw(wild)
    try:
        after = interview.answer(value)
    except NotAnAnswer:
        assert interview.question == question
        return
    assert question is not None
    assert dict(after.answers) == {**interview.answers, question.id: value}


@given(
    st.text(max_size=12),
    st.sampled_from(["L", "gal", "qt", "g", "h", "min", "°C", "°F", "mg/L", "pH", "%", ""]),
)
def test_whatever_is_typed_is_a_number_or_a_refusal_that_can_be_said(text, unit):
    try:
        found = read_answer(text, NumberWanted(unit, Decimal(0), Decimal(100)))
    except NotAnAnswer as refused:
        told(refused)
    else:
        assert found.is_finite()
