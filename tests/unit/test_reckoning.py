"""Every calculator, question by question, against worked examples from published sources.

Tags: READ = the example or its value was seen in a stored text; MEM = from memory; CALC = computed
from a stated formula, by hand or by another program.
"""

from __future__ import annotations

import sys
from collections.abc import Iterator
from dataclasses import replace
from decimal import Decimal
from itertools import combinations

import pytest
from rapidfuzz.distance import Levenshtein

import kiosk.review
from kiosk.checking.phonemes import phonemes
from kiosk.checking.phrases import TOO_ALIKE
from kiosk.engine import commands as c
from kiosk.engine.commands import Channel, Evidence
from kiosk.engine.prompt import Message, Number
from kiosk.languages.words import languages, words
from kiosk.options import Agree, Give, Reckon, Take
from kiosk.procedure.fault import FaultyFile
from kiosk.procedure.fit import fit
from kiosk.procedure.plan import Plan
from kiosk.reckoner import OTHERS, PAGE, Reckoner
from kiosk.reckoning.bench import bench
from kiosk.reckoning.calculator import NumberWanted, OneOf, Question
from kiosk.reckoning.interview import Interview, NotAnAnswer
from kiosk.reckoning.table import CALCULATORS, in_order, near
from kiosk.reckoning.typed import read_answer, read_answers, unit_taken
from kiosk.speaking.voices import SpeechFailed
from tests.unit.reckoning_bench import (
    SUNDAY,
    answered,
    begin,
    library,
    lines,
    run,
    shop_bench,
    worked,
)

SHEET = "state=opened opened={} frozen={} printed=no-date"
PLATES = (
    "rule=fda-rule exponent-1=2 kind-1=counted colonies-1=232 more-1=another-plate exponent-2=2"
    " kind-2=counted colonies-2=244 more-2=another-plate exponent-3=3 kind-3=counted colonies-3=33"
    " more-3=another-plate exponent-4=3 kind-4=counted colonies-4=28 more-4=no-more"
)
NO_PLATE_IN_RANGE = (
    "rule=fda-rule exponent-1=2 kind-1=counted colonies-1=18 more-1=another-plate exponent-2=2"
    " kind-2=counted colonies-2=2 more-2=no-more"
)
BAGS = (
    "state-1=opened opened-1=7 printed-1=no-date another-1=another"
    " state-2=sealed printed-2=date-printed when-2=still-to-come date-2=3 another-2=another"
    " state-3=opened opened-3=5 printed-3=no-date another-3=another"
    " state-4=nobody-wrote printed-4=no-date another-4=no-more"
)
STEADY = ["3200", "2100", "4500", "2800", "3900", "2500", "3300", "3000"]
RISING = ["1000", "1100", "1300", "1600", "2000", "2600", "3500", "5000"]

EXAMPLES = [
    # Food Code 4-501.114 and 4-703.11: READ (state); verdicts CALC from the rows.
    ("strength", "strip=50 acidity=8.0 temperature=24", True, "7 seconds or longer"),
    ("strength", "strip=50 acidity=8.1 temperature=24", False, "Warm it to 38 degrees Celsius"),
    ("strength", "strip=50 acidity=10 temperature=38", True, "7 seconds or longer"),
    ("strength", "strip=100 acidity=10 temperature=13", True, "10 seconds or longer"),
    ("strength", "strip=100 acidity=7 temperature=12", False, "Warm it to 13 degrees Celsius"),
    ("strength", "strip=49 acidity=7 temperature=24", False, "Warm it to 49 degrees Celsius"),
    ("strength", "strip=24 acidity=7 temperature=49", False, "Make it 25 parts per million"),
    ("strength", "strip=201 acidity=7 temperature=24", False, "until it is 200 parts per million"),
    ("strength", "strip=100 acidity=10.5 temperature=38", False, "Bring its pH to 10 or less"),
    # A pH that nobody measured: the rows for pH 10 alone. READ (state); verdicts CALC.
    ("strength", "strip=100 acidity=not-measured temperature=13", True, "10 seconds or longer"),
    ("strength", "strip=100 acidity=not-measured temperature=13", True, "every pH up to 10"),
    ("strength", "strip=50 acidity=not-measured temperature=38", True, "7 seconds or longer"),
    ("strength", "strip=50 acidity=not-measured temperature=24", False,
     "Warm it to 38 degrees Celsius or more. Or: Measure the pH. It must be 8 or less."),
    ("strength", "strip=50 acidity=not-measured temperature=24", False, "every pH up to 10"),
    # 100 mg/L x 8 L / (2 g x 554 mg/g) = 0.722 packets; one gives 138.5 mg/L. CALC.
    ("dose", "unit=in-litres water=8 wanted=100", True, "gives 138 parts per million"),
    ("dose", "unit=in-litres water=8 wanted=100", True, "0.72 packets would be exact"),
    # 100 ppm in 10 L of a 55.4 % powder: 1.805 g, and more digits. CALC.
    ("dose", "unit=in-litres water=10 wanted=100", True, "the exact dose is 1.81 grams"),
    # 200 ppm in a US gallon: 1.367 g. CALC.
    ("dose", "unit=in-gallons water=1 wanted=200", False, "Use 1.5 gallons of water or more"),
    ("dose", "unit=in-litres water=8 wanted=201", False, "above the most allowed without a rinse"),
    # Davis, Ex. 13-1: 25 °C, pH 7.0, 77.6 %. READ; 77.5 with the rounded pKa kept exact. CALC.
    ("free-chlorine", "kind=bleach strip=100 acidity=7 temperature=25", None, "77.5 percent"),
    ("free-chlorine", "kind=powder strip=100 acidity=8 temperature=24", None, "26 percent"),
    # 3-501.16 and 3-501.19. READ (state).
    ("cold", "hours=4 now=5 power=stayed-on", True, "It may be served"),
    ("cold", "hours=10 now=5 power=stayed-on", False, "that time is unknown, not cold"),
    ("cold", "hours=3 now=9 power=was-out plan=plan-there", True, "be served for 1 hour."),
    ("cold", "hours=3.5 now=4 power=not-known plan=plan-there", True, "for 30 minutes"),
    ("cold", "hours=3 now=9 power=was-out plan=plan-missing", False, "no written procedure"),
    ("cold", "hours=4 now=4 power=not-known plan=plan-there watched=not-watched", False,
     "Its time without cooling is up"),
    ("cold", "hours=5 now=21 power=was-out plan=plan-there watched=watched", True, "for 1 hour."),
    ("cold", "hours=5 now=21.5 power=was-out plan=plan-there", False, "time without cooling is up"),
    ("cold", "hours=30 now=4 power=stayed-on plan=plan-missing", False, "counts as warm"),
    ("cold", "hours=72 now=4 power=stayed-on plan=plan-there", False, "Throw it away"),
    # 4 h at 21.1 °C: 0.56 log. CALC from the published conversion.
    ("growth", "temperature=21.1 hours=4", None, "On the log scale that is 0.56"),
    # Opened Monday 2 March: last day Sunday 8 March. CALC from 3-501.17, READ.
    ("use-by", SHEET.format(6, 0), True, "Sunday 8 March 2026. Days left, with today: 1."),
    ("use-by", SHEET.format(7, 0), False, "open for all its days"),
    # Three days of use and five whole days frozen: thawed today, it has four days left. CALC.
    ("use-by", SHEET.format(8, 5), True, "Wednesday 11 March 2026. Days left, with today: 4."),
    ("use-by", SHEET.format(3, 3), False, "cannot have been frozen for 3 whole days"),
    ("use-by", "state=opened opened=0 frozen=0 printed=date-printed when=still-to-come date=2",
     True, "Tuesday 10 March 2026"),
    ("use-by", "state=sealed printed=date-printed when=already-over date=1", False,
     "The maker's use-by date has passed."),
    ("use-by", "state=nobody-wrote printed=no-date", False, "Nobody wrote down"),
    ("pour-next", BAGS, True, "Pour bag 3 next. Its last day is Monday 9 March 2026."),
    ("pour-next", BAGS, True, "Do not use bag 1. It has been open for all its days."),
    ("pour-next", "state-1=nobody-wrote printed-1=no-date another-1=no-more", False, "None of"),
    # 7 Pa. Code 39.54: 150 °F for 30 min each day, 14 days. READ.
    ("heat-treatment", "coldest=66 minutes=30 ended=2 strip=3", True, "It locks in 22 hours"),
    ("heat-treatment", "coldest=65.5 minutes=30 ended=2 strip=3", False, "The heat cycle failed"),
    ("heat-treatment", "coldest=80 minutes=29 ended=2 strip=3", False, "Only the listed pair"),
    ("heat-treatment", "coldest=66 minutes=30 ended=25 strip=3", False, "more than a day ago"),
    ("heat-treatment", "coldest=66 minutes=30 ended=2 strip=15", False, "more than 14 days"),
    # FDA BAM chapter 3: 537 / 0.022 = 24,409, reported 24,000; and < 2,500. READ in copies.
    ("plate-count", PLATES, None, "24,000 colony-forming units per gram."),
    ("plate-count", NO_PLATE_IN_RANGE, None, "Less than 2,500 colony-forming units"),
    ("plate-count", "rule=iso-rule exponent-1=1 kind-1=overgrown more-1=no-more", False,
     "Plate the sample again"),
    # FDA BAM appendix 2: 3-1-0 gives 43, 3-3-3 more than 1,100. READ.
    ("mpn", "tenth=3 hundredth=1 thousandth=0", None, "number is 43 per gram"),
    # 0-0-1 gives 3.0, and 0-0-0 less than 3.0. READ.
    ("mpn", "tenth=0 hundredth=0 thousandth=1", None, "number is 3.0 per gram"),
    ("mpn", "tenth=0 hundredth=0 thousandth=0", None, "less than 3.0 per gram"),
    ("mpn", "tenth=3 hundredth=3 thousandth=3", None, "more than 1,100 per gram"),
    ("mpn", "tenth=0 hundredth=0 thousandth=3", False, "highly improbable"),
    # (EC) 2073/2005, 2.2.8: n 5, c 2, m 10, M 100. MEM.
    ("lot", f"plan=eu-ice-cream-enterobacteriaceae {run('count', ['5', '50', '10', '80', '1'])}",
     True, "The lot is acceptable"),
    ("lot", f"plan=eu-ice-cream-enterobacteriaceae {run('count', ['11', '11', '11', '0', '0'])}",
     False, "The lot is unsatisfactory"),
    ("lot", f"plan=eu-ice-cream-salmonella {run('found', ['not-found'] * 4 + ['found'])}",
     False, "Found in 1 of 5 samples"),
    # "< 10" is no more than m = 10; "< 50" may lie above it, and above M = 100 "< 250". CALC.
    ("lot", f"plan=eu-ice-cream-enterobacteriaceae {run('count', ['<10'] * 5)}",
     True, "The lot is satisfactory"),
    ("lot", f"plan=eu-ice-cream-enterobacteriaceae {run('count', ['<50', '0', '0', '0', '0'])}",
     False, "The samples leave it open"),
    ("lot", f"plan=eu-ice-cream-enterobacteriaceae {run('count', ['<50', '<250', '0', '0', '0'])}",
     False, "may be over 10, for the report only says less than a higher number: 2."),
    ("authority", f"who=iowa test=coliform product=bulky results=4"
     f" {run('result', ['<10', '21', '<3', '<10'])}", True, "Clear: 1 of the last 4"),
    ("authority", f"who=iowa test=coliform product=bulky results=2 {run('result', ['<100', '21'])}",
     False, "Unknown: 1 of the last 2 results are surely over the limit, and others may be."),
    ("authority", f"who=iowa test=coliform product=bulky results=3"
     f" {run('result', ['<100', '21', '21'])}", False, "It may already be action."),
    ("authority", "who=north-carolina test=coliform product=plain results=1 result-1=<100",
     False, "Unknown: the last result may be over the limit."),
    ("authority", f"who=north-carolina test=coliform product=plain results=2"
     f" {run('result', ['<100', '<10'])}", True, "The last result is within the limit."),
    # Texas and Alabama texts: 2 of the last 4, 3 of the last 5. READ.
    ("authority", f"who=iowa test=coliform product=bulky results=4"
     f" {run('result', ['5', '21', '3', '25'])}", False, "Notice: 2 of the last 4"),
    ("authority", f"who=iowa test=coliform product=bulky results=5"
     f" {run('result', ['21', '25', '3', '3', '30'])}", False, "Action: 3 of the last 5"),
    ("authority", f"who=iowa test=coliform product=bulky results=2"
     f" {run('result', ['20', '21'])}", True, "Clear: 1 of the last 2"),
    ("authority", "who=north-carolina test=coliform product=plain results=1 result-1=11",
     False, "the last result is over the limit"),
    ("authority", "who=maryland test=coliform product=plain results=1 result-1=1",
     True, "states no rule"),
]  # fmt: skip


@pytest.mark.parametrize(("calculator", "answers", "good", "said"), EXAMPLES)
def test_worked_examples(calculator, answers, good, said):
    found = worked(calculator, answers)
    assert said in " ".join(lines(found))
    assert found.good is good


@pytest.mark.parametrize(("calculator", "answers", "good", "said"), EXAMPLES)
def test_every_finding_is_said_in_every_language(calculator, answers, good, said):
    found = worked(calculator, answers)
    english = lines(found)
    for language in languages():
        told = lines(found, language)
        assert len(told) == len(english)
        assert language == "en" or told != english


@pytest.mark.parametrize("calculator", CALCULATORS)
def test_each_calculator_has_an_example_and_its_sources_bear_tags(calculator):
    if calculator == "trend":
        pytest.importorskip("scipy", reason="scipy is not installed")
        limit = "test=total-count limit=50000 results=8 "
        found = [worked("trend", limit + run("result", STEADY))]
    else:
        found = [worked(name, answers) for name, answers, *_ in EXAMPLES if name == calculator]
    sources = {source for one in found for source in one.sources}
    assert sources
    assert [one for one in sources if not {"READ", "MEM", "CALC"} & set(_plain(one))] == []


def _plain(source: str) -> list[str]:
    return "".join(sign if sign.isalnum() else " " for sign in source).split()


def test_fahrenheit_is_judged_by_the_numbers_that_are_printed_in_fahrenheit():
    """75 mg/L, pH 7.5, 75 °F passes with 10 s, and 12.9 °C is no 55 °F. CALC from the rows."""
    warm = shop_bench("°F")
    found = worked("strength", "strip=75 acidity=7.5 temperature=75", warm)
    assert found.good
    assert "10 seconds" in lines(found)[0]
    assert worked("strength", "strip=100 acidity=7 temperature=55", warm).good
    assert worked("strength", "strip=100 acidity=7 temperature=12.9").good is False
    assert worked("heat-treatment", "coldest=150 minutes=30 ended=1 strip=1", warm).good
    assert worked("heat-treatment", "coldest=149 minutes=30 ended=1 strip=1", warm).good is False
    assert (
        "150 degrees Fahrenheit"
        in lines(worked("heat-treatment", "coldest=150 minutes=30 ended=1 strip=1", warm))[1]
    )


def test_a_stricter_profile_counts():
    """California asks for 30 s. READ."""
    on = shop_bench(limits="california-retail-food-code")
    assert "30 seconds" in lines(worked("strength", "strip=100 acidity=7 temperature=24", on))[0]


def test_a_profile_without_solutions_lets_nothing_pass():
    food_code = shop_bench()
    empty = replace(food_code.profile, solutions=type(food_code.profile.solutions)())
    found = worked(
        "strength", "strip=100 acidity=7 temperature=24", replace(food_code, profile=empty)
    )
    assert found.good is False
    assert "list no sanitizing solutions" in lines(found)[0]


def test_a_product_that_cannot_be_is_a_finding_with_the_mend():
    food_code = shop_bench()
    label = replace(food_code.site.sanitizer, available_chlorine=Decimal("0.005"))
    on = replace(food_code, site=replace(food_code.site, sanitizer=label))
    found = worked("dose", "unit=in-litres water=8 wanted=100", on)
    assert found.good is False
    assert "cannot be worked out" in lines(found)[0]
    assert "write 50 percent" in lines(found)[1]


def test_a_site_with_an_unknown_profile_is_told_which_there_are():
    site = replace(shop_bench().site, limits="atlantis")
    with pytest.raises(FaultyFile, match="use one of: california-retail-food-code"):
        bench(site, library(), SUNDAY)


def test_where_each_result_counts_alone_an_older_one_leaves_nothing_open():
    answers = f"product=plain results=2 {run('result', ['<100', '<10'])}"
    found = worked("authority", f"who=north-carolina test=coliform {answers}")
    assert "may be over" not in " ".join(lines(found))


# Trend.


def trend(results: list[str], limit: str = "50000") -> tuple[bool | None, str]:
    answers = f"test=total-count limit={limit} results={len(results)} {run('result', results)}"
    found = worked("trend", answers)
    return found.good, " ".join(lines(found))


def test_the_trend_warns_before_the_limit_is_passed():
    pytest.importorskip("scipy", reason="scipy is not installed")
    good, said = trend(STEADY)
    assert good is True
    assert "steady" in said
    good, said = trend(RISING)
    assert good is None
    assert "rise with time" in said
    assert "No result is over 50,000 yet" in said
    good, said = trend(RISING, "4000")
    assert good is False
    assert "over 4,000 already" in said


def test_a_trend_takes_results_below_detection_as_bounds():
    pytest.importorskip("scipy", reason="scipy is not installed")
    good, said = trend(["<10", *STEADY[1:]])
    assert good is True
    assert "may be over" not in said
    good, said = trend(["<100000", *STEADY[1:]])
    assert good is None
    assert "may be over 50,000, for the report only says less than a higher number: 1." in said


def test_without_scipy_the_trend_says_what_to_install(monkeypatch):
    monkeypatch.setitem(sys.modules, "kiosk.review.trend", None)
    monkeypatch.delattr(kiosk.review, "trend", raising=False)
    good, said = trend(STEADY)
    assert good is False
    assert 'pip install "brushdown[laboratory]"' in said


# The interview.


@pytest.mark.parametrize("calculator", CALCULATORS)
def test_an_answer_that_does_not_fit_is_refused_and_the_question_stays(calculator):
    interview = begin(calculator)
    question = interview.question
    bad = "no-such-thing" if isinstance(question.wants, OneOf) else Decimal("1000000000")
    with pytest.raises(NotAnAnswer) as refused:
        interview.answer(bad)
    assert interview.question == question
    for language in languages():
        assert words(language).line(refused.value.message)


def test_what_is_refused_says_why():
    def why(interview: Interview, value: Decimal | str) -> str:
        with pytest.raises(NotAnAnswer) as refused:
            interview.answer(value)
        return words("en").line(refused.value.message)

    water = answered(begin("dose"), "unit=in-litres")
    assert why(water, Decimal(501)) == (
        "That cannot be: it must lie between 0.1 litres and 500 litres."
    )
    assert why(water, Decimal("NaN")) == "NaN is not a number. Write digits, as 12.5."
    assert why(water, "eight") == "eight is not a number. Write digits, as 12.5."
    assert why(begin("mpn"), Decimal("1.5")) == "1.5 must be a whole number."
    assert why(begin("cold"), Decimal(-1)) == (
        "That cannot be: it must lie between 0 hours and 72 hours."
    )
    assert why(answered(begin("mpn"), "tenth=1 hundredth=1 thousandth=1"), Decimal(1)) == (
        "Everything is worked out."
    )


def test_a_spoken_number_is_read_back_and_counts_after_a_yes():
    heard = answered(begin("dose"), "unit=in-litres").hear(Decimal(8))
    assert words("en").line(heard.line()) == "I heard 8 litres. Yes or no?"
    assert "water" not in heard.answers
    again = heard.agree(yes=False)
    assert again.pending is None
    assert again.question.id == "water"
    taken = heard.agree(yes=True)
    assert taken.answers["water"] == 8
    assert taken.question.id == "wanted"


def test_a_spoken_number_out_of_range_is_not_even_read_back():
    with pytest.raises(NotAnAnswer):
        answered(begin("dose"), "unit=in-litres").hear(Decimal(5000))


@pytest.mark.parametrize(("calculator", "answers"), [
    (name, answers) for name, answers, *_ in EXAMPLES if name not in ("strength", "dose")
][::4])  # fmt: skip
def test_back_takes_answer_after_answer_and_comes_to_the_same_finding(calculator, answers):
    done = answered(begin(calculator), answers)
    given = list(done.answers.items())
    asked = []
    while done.answers:
        done = done.back()
        asked.append(done.question.id)
    assert asked == [name for name, _ in reversed(given)]
    for _, value in given:
        done = done.answer(value)
    assert done.finding() == worked(calculator, answers)


def test_back_takes_what_was_heard_before_it_takes_an_answer():
    heard = answered(begin("dose"), "unit=in-litres").hear(Decimal(8))
    assert heard.back().answers == {"unit": "in-litres"}
    assert heard.back().back().answers == {}


def test_a_question_for_each_of_several_things_says_which():
    second = answered(begin("pour-next"), BAGS[: BAGS.index("another-2")].rstrip())
    assert words("en").line(second.line()) == "Bag 2 is noted. Is there another bag?"


# Typed answers.


@pytest.mark.parametrize(
    ("unit", "text", "value"),
    [
        ("L", "8", "8"), ("L", "8 L", "8"), ("L", "8,5", "8.5"), ("L", "500 ml", "0.5"),
        ("L", "1 gal", "3.785411784"), ("gal", "2", "2"), ("qt", "1 gal", "4"),
        ("h", "90 min", "1.5"), ("min", "1 h", "60"), ("min", "45 분", "45"), ("°C", "24", "24"),
        ("°C", "24 °C", "24"),
        ("°F", "75 f", "75"), ("mg/L", "100 ppm", "100"), ("pH", "pH 7,5", "7.5"), ("", "12", "12"),
    ],
)  # fmt: skip
def test_typed_answers_come_in_the_unit_of_the_question(unit, text, value):
    wants = NumberWanted(unit, Decimal(0), Decimal(500))
    assert read_answer(text, wants) == Decimal(value)
    assert unit_taken(text, wants) == unit


@pytest.mark.parametrize(
    ("unit", "text", "said"),
    [
        ("L", "8 kg", "is no unit that is known here"), ("L", "", "Nothing was typed"),
        ("L", "eight", "is not a number"), ("", "1,000", "can be read as 1000 or as 1"),
        ("L", "1/2", "has a fraction"), ("L", "1 gal 2 qt", "more than one number"),
        ("L", "8 oz", "is a weight, and a volume is wanted"), ("", "5 L", "is not a number"),
        ("°C", "75 °F", "Use one of: °C"), ("mg/L", "1 L", "Use one of: mg/L"),
    ],
)  # fmt: skip
def test_typed_answers_that_cannot_be_used_say_what_to_type(unit, text, said):
    with pytest.raises(NotAnAnswer) as refused:
        read_answer(text, NumberWanted(unit, Decimal(0), Decimal(500)))
    assert said in words("en").line(refused.value.message)
    for language in languages():
        assert words(language).line(refused.value.message)


@pytest.mark.parametrize("text", ["<10", " < 10", "＜10"])
def test_less_than_is_typed_as_the_laboratory_writes_it(text):
    asked = answered(begin("lot"), "plan=eu-ice-cream-enterobacteriaceae")
    below, bound = read_answers(text, asked.question.wants)
    after = asked.answer(below)
    assert after.question.id == "bound-1"
    assert words("en").line(after.line()) == "Sample 1: the report says less than how many?"
    assert after.answer(bound) == answered(asked, "count-1=below-detection bound-1=10")


def test_less_than_is_refused_where_no_bound_is_asked_for():
    with pytest.raises(NotAnAnswer):
        read_answers("<10", begin("mpn").question.wants)
    asked = answered(begin("lot"), "plan=eu-ice-cream-enterobacteriaceae")
    with pytest.raises(NotAnAnswer):
        read_answers("<ten", asked.question.wants)


def test_a_temperature_is_not_converted_but_its_unit_is_told():
    wants = NumberWanted("°C", Decimal(0), Decimal(60))
    assert unit_taken("75 °F", wants) == "°F"
    with pytest.raises(NotAnAnswer):
        unit_taken("warm", wants)


# What is offered.


def questions() -> Iterator[tuple[str, Question]]:
    """Yield every question of every calculator, each once for each set of answers it takes."""
    seen: set[object] = set()
    waiting = [begin(name) for name in CALCULATORS]
    while waiting:
        interview = waiting.pop()
        question = interview.question
        if question is None:
            continue
        wants = question.wants
        calculator, base = interview.calculator.id, question.id.rstrip("-0123456789")
        if (calculator, base, wants) not in seen:
            seen.add((calculator, base, wants))
            yield calculator, question
        numeric = isinstance(wants, NumberWanted)
        ends = (wants.least, wants.most, *wants.besides) if numeric else wants.names
        for value in ends:
            if (calculator, base, wants, value) not in seen:
                seen.add((calculator, base, wants, value))
                waiting.append(interview.answer(value))


QUESTIONS = list(questions())


@pytest.mark.parametrize("language", languages())
def test_every_question_can_be_asked_and_every_choice_fits_it(language):
    say = words(language)
    assert {name for name, _ in QUESTIONS} == set(CALCULATORS)
    for calculator, question in QUESTIONS:
        name, _, place = question.id.rpartition("-")
        base = name if place.isdecimal() else question.id
        args = {"place": Number(place)} if place.isdecimal() else {}
        assert say.line(Message(f"ask-{calculator}-{base}", args)).endswith(("?", ".", "？", "。"))
        if isinstance(question.wants, OneOf):
            assert all(say.say(f"pick-{one}") for one in question.wants.names)
        else:
            wants = question.wants
            assert all(say.say(f"pick-{one}") for one in wants.besides)
            assert all(wants.least <= one <= wants.most for one in wants.choices)
            assert wants.choices, f"{calculator} {question.id} cannot be answered by voice"


def phrase_lists(language: str) -> list[list[str]]:
    """Return what can be said at each moment at which a name is wanted."""
    say = words(language)
    out = [say.say("say-never-mind"), say.say("say-ask-again")]
    names = [
        one.wants.names if isinstance(one.wants, OneOf) else one.wants.besides
        for _, one in QUESTIONS
    ]
    picks = [[*(say.say(f"pick-{one}") for one in each), *out] for each in dict.fromkeys(names)]
    calls = [say.say(f"call-{one}") for one in CALCULATORS]
    return [*picks, [*calls, say.say("say-other-reckonings"), out[0]]]


@pytest.mark.parametrize("language", languages())
def test_no_two_phrases_of_one_moment_sound_alike(language):
    moments = phrase_lists(language)
    every = sorted({phrase for moment in moments for phrase in moment})
    try:
        sounds = phonemes({language: every})
    except SpeechFailed as failure:
        pytest.skip(str(failure))
    alike = [
        (apart, one, other)
        for moment in moments
        for one, other in combinations(moment, 2)
        if (
            apart := Levenshtein.normalized_distance(sounds[language, one], sounds[language, other])
        )
        < TOO_ALIKE
    ]
    assert alike == []


@pytest.mark.parametrize("language", languages())
def test_phrases_are_short_and_bear_no_digits(language):
    for phrase in {phrase for moment in phrase_lists(language) for phrase in moment}:
        assert len(phrase.split()) <= 6
        assert not any(sign.isdigit() for sign in phrase)


def test_numbers_are_said_with_what_they_count():
    def said(language: str, unit: str, message: str, *values: str) -> list[str]:
        wants = NumberWanted(
            unit, Decimal(0), Decimal(99), tuple(map(Decimal, values)), said=message
        )
        interview = begin("dose")
        one = Question("water", wants)
        asking = replace(interview.calculator, ask=lambda _, __: one)
        reckoner = Reckoner(shop_bench)
        reckoner._interview = replace(interview, calculator=asking)
        say = words(language)
        return [o.label for o in reckoner.options(say) if isinstance(o.choice, Give)]

    assert said("en", "h", "say-hours", "1", "2.5") == ["one hour", "two point five hours"]
    assert said("ko", "h", "say-hours", "4", "20") == ["네 시간", "스무 시간"]
    assert said("ko", "min", "say-minutes", "30") == ["삼십 분"]
    assert said("ko", "", "say-colonies", "0", "3") == ["영 개", "세 개"]
    assert said("es", "gal", "say-gallons", "1", "8") == ["uno galón", "ocho galones"]
    assert said("en", "L", "", "8") == ["eight liters"]


# Which calculators are offered first.


def shipped_plan(procedure: str) -> Plan:
    site = shop_bench().site
    found = library().procedures[procedure]
    machine = next(one for one in site.machines if one.kind == found.machine_kind)
    return fit(library(), found, machine, site, lambda amount, lang: words(lang).quantity(amount))


@pytest.mark.parametrize(
    ("step", "first"),
    [
        ("mix-sanitizer", ("dose", "strength")),
        ("sanitizer-temperature-celsius", ("strength", "free-chlorine")),
        ("mix-temperature-celsius", ("cold", "use-by")),
        ("pour-mix", ("pour-next", "use-by")),
        ("hand-wash", ()),
    ],
)
def test_the_calculators_that_a_step_is_about_come_first(step, first):
    opened = shipped_plan("open-twin-gravity").step(step)
    assert near(opened) == first
    assert in_order(opened)[: len(first)] == first
    assert set(in_order(opened)) == set(CALCULATORS)


def test_page_after_page_leads_to_every_calculator_and_round_again():
    say, by = words("en"), Evidence(Channel.TOUCH)
    step = shipped_plan("open-twin-gravity").step("pour-mix")
    reckoner = Reckoner(shop_bench, lambda: step)
    reckoner.take(Reckon(), by, say)
    pages = -(-len(CALCULATORS) // PAGE)
    offered: list[str] = []
    for _ in range(pages):
        taken = [one.choice for one in reckoner.options(say) if isinstance(one.choice, Take)]
        offered += [one.calculator for one in taken if one.calculator != OTHERS]
        reckoner.take(Take(OTHERS), by, say)
    assert offered[0] == "pour-next"
    assert sorted(offered) == sorted(CALCULATORS)
    assert reckoner.options(say)[0].choice == Take("pour-next")


@pytest.mark.parametrize("language", languages())
def test_a_name_beside_the_numbers_is_offered_once_and_last(language):
    asked = answered(begin("lot"), "plan=eu-ice-cream-enterobacteriaceae")
    reckoner = Reckoner(shop_bench)
    reckoner._interview = asked
    labels = [o.label for o in reckoner.options(words(language)) if isinstance(o.choice, Give)]
    assert labels[-1] == words(language).say("pick-below-detection")
    assert len(set(labels)) == len(labels) == len(asked.question.wants.choices) + 1


@pytest.mark.parametrize("language", languages())
def test_every_way_of_yes_and_no_answers_the_reading_back(language):
    say = words(language)
    reckoner = Reckoner(shop_bench)
    reckoner._interview = answered(begin("dose"), "unit=in-litres").hear(Decimal(8))
    ways = {
        one.choice: (one.label, *one.also)
        for one in reckoner.options(say)
        if isinstance(one.choice, Agree)
    }
    assert ways == {Agree(True): say.phrases(c.Yes()), Agree(False): say.phrases(c.No())}
