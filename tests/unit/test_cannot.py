"""What cannot be worked out is said in every language, and in English as the trade says it."""

from __future__ import annotations

import re
import sys
from collections.abc import Iterator
from datetime import date
from decimal import Decimal

import pytest
from fluent.syntax import FluentParser
from fluent.syntax.ast import Message as FluentMessage
from fluent.syntax.serializer import serialize_pattern
from rapidfuzz.fuzz import ratio

from kiosk.languages.words import languages, message_text, words
from kiosk.reckoning.cannot import SORTS, Refused, cannot
from kiosk.trade.authorities import Analysis, Product
from kiosk.trade.available_chlorine import NotALabel
from kiosk.trade.code_dates import NoDate
from kiosk.trade.solution import NotASolution
from kiosk.trade.temperature_log import NoVerdict
from kiosk.trade.units import Quantity

ENGLISH_NAMES = {
    "model", "label", "agent", "measures", "known", "name", "point", "mark", "qualifier"
}  # fmt: skip
"""Values that are English words: a sentence that every language has does without them."""

SAME, NEARLY = 90, 75
"""Least likeness, of 100, of two English sentences; the second where a name is left out."""

REASONS = [
    (sort, sort_of, key, template)
    for sort_of, sort in SORTS.items()
    for key, template in sys.modules[sort_of.__module__]._SAYS.items()
]


def messages(language: str) -> dict[str, str]:
    text = message_text(language)
    return {
        entry.id.name: serialize_pattern(entry.value)
        for entry in FluentParser().parse(text).body
        if isinstance(entry, FluentMessage) and entry.value
    }


def plain(sentence: str) -> str:
    """Bring a template and a message to one form: no values, no units, no marks."""
    bare = re.sub(r"\{[^}]*\}( (mg/L|mL|°C|[gLhs]|degrees Celsius)\b)?", "", sentence)
    same = bare.replace(" %", " percent").replace("°C", "Celsius").replace("°F", "Fahrenheit")
    same = same.replace("cm²", "square centimetre")
    return " ".join("".join(one if one.isalnum() else " " for one in same.lower()).split())


def places(sentence: str) -> set[str]:
    return set(re.findall(r"\{ ?\$?(\w+)", sentence))


@pytest.mark.parametrize("language", languages())
def test_every_reason_has_its_message_and_every_message_its_reason(language):
    wanted = {f"cannot-{sort}-{key}" for sort, _, key, _ in REASONS}
    sorts = tuple(f"cannot-{sort}-" for sort in SORTS.values())
    assert {one for one in messages(language) if one.startswith(sorts)} == wanted


@pytest.mark.parametrize("language", [one for one in languages() if one != "en"])
def test_no_reason_is_left_in_english(language):
    english, other = messages("en"), messages(language)
    names = [f"cannot-{sort}-{key}" for sort, _, key, _ in REASONS]
    alike = [name for name in names if ratio(plain(english[name]), plain(other[name])) > 90]
    assert alike == []


@pytest.mark.parametrize(("sort", "sort_of", "key", "template"), REASONS)
def test_the_english_message_says_what_the_error_says(sort, sort_of, key, template):
    message = messages("en")[f"cannot-{sort}-{key}"].replace("$called", "$name")
    assert places(message) <= places(template)
    left_out = places(template) - places(message)
    assert left_out <= ENGLISH_NAMES
    least = NEARLY if left_out else SAME
    assert ratio(plain(template), plain(message)) >= least, (plain(template), plain(message))


SAMPLES = {
    "temperature": Quantity(Decimal("12.5"), "°C"), "frozen": date(2026, 3, 1),
    "before": date(2026, 3, 5), "day": date(1926, 3, 5), "test": Analysis.TOTAL_COUNT,
    "product": Product.PLAIN, "seconds": 75.0, "gap": 60.0, "hours": 2.5,
}  # fmt: skip


def errors() -> Iterator[Refused]:
    for _, sort_of, key, template in REASONS:
        values = {name: SAMPLES.get(name, Decimal("12.5")) for name in places(template)}
        yield sort_of(key, **values)


@pytest.mark.parametrize("language", languages())
def test_every_error_can_be_said(language):
    for error in errors():
        found = cannot(error)
        assert found.good is False
        first, why = (words(language).line(line) for line in found.lines)
        assert first == words(language).say("cannot-work-out")
        assert language == "en" or str(error).lower()[:30] not in why.lower()


@pytest.mark.parametrize(
    ("error", "language", "said"),
    [
        (NotASolution("bad-strength", strength=Decimal("-1.5")), "es",
         "Una concentración de -1.5 partes por millón no puede ser; lea la tira otra vez."),
        (NoVerdict("absurd", temperature=Quantity(Decimal(400), "°F")), "en",
         "400 degrees Fahrenheit cannot be the temperature of mix;"
         " check the probe and read again."),
        (NotALabel("bad-percent", percent=Decimal("Infinity")), "en",
         "Infinity percent cannot be; write the label's percent, above 0 and up to 100."),
        (NoDate("absurd-year", day=date(1926, 3, 5)), "ko",
         "1926년 3월 5일 금요일 은(는) 믹스를 쓰는 날일 수 없습니다. 해를 고치세요."),
    ],
)  # fmt: skip
def test_values_are_written_as_the_language_writes_them(error, language, said):
    assert words(language).line(cannot(error).lines[1]) == said
