"""Every language has every message, and says it without a gap."""

from __future__ import annotations

from decimal import Decimal

import pytest
from fluent.syntax import FluentParser
from fluent.syntax.ast import Message as FluentMessage
from fluent.syntax.ast import VariableReference
from fluent.syntax.visitor import Visitor

from kiosk.engine import commands as c
from kiosk.engine.prompt import Message, Number
from kiosk.languages.words import MissingMessage, languages, message_text, words
from kiosk.trade.units import UNITS, Quantity

LANGUAGES = languages()


class Places(Visitor):
    def __init__(self):
        self.names = set()

    def visit_VariableReference(self, node: VariableReference) -> None:  # noqa: N802
        self.names.add(node.id.name)


def messages(language: str) -> dict[str, set[str]]:
    text = message_text(language)
    found = {}
    for entry in FluentParser().parse(text).body:
        if isinstance(entry, FluentMessage):
            places = Places()
            places.visit(entry)
            found[entry.id.name] = places.names
    return found


def test_english_spanish_and_korean_are_there():
    assert {"en", "es", "ko"} <= set(LANGUAGES)


@pytest.mark.parametrize("language", LANGUAGES)
def test_each_language_has_the_same_messages_with_the_same_places(language):
    assert messages(language) == messages("en")


@pytest.mark.parametrize("language", LANGUAGES)
def test_every_message_can_be_said(language):
    for name, places in messages(language).items():
        said = words(language).say(name, **dict.fromkeys(places, 2))
        assert said
        assert "{" not in said


@pytest.mark.parametrize("language", LANGUAGES)
@pytest.mark.parametrize("unit", sorted(UNITS))
def test_every_unit_is_written_out(language, unit):
    said = words(language).quantity(Quantity(Decimal("2.5"), unit))
    assert "2.5" in said or "2,5" in said
    assert unit == "pH" or unit not in said.split()


def test_english_tells_one_from_many():
    assert words("en").quantity(Quantity(Decimal(1), "L")) == "1 litre"
    assert words("en").quantity(Quantity(Decimal("8"), "L")) == "8 litres"
    assert words("es").quantity(Quantity(Decimal("2.5"), "L")) == "2.5 litros"


@pytest.mark.parametrize(
    ("language", "said"),
    [
        ("en", "1250.5 millilitres"), ("es", "1250.5 mililitros"), ("ko", "1250.5 밀리리터"),
        ("pt", "1250,5 mililitros"), ("vi", "1250,5 mi li lít"), ("zh", "1250.5毫升"),
    ],
)  # fmt: skip
def test_a_decimal_sign_is_the_regions_and_thousands_have_no_mark(language, said):
    """The decimal sign by the CLDR for es-419, pt-BR, vi and zh; no dot or comma between groups of
    three digits by section 5.4.4 of the SI Brochure (from memory)."""
    assert words(language).quantity(Quantity(Decimal("1250.5"), "mL")) == said


def test_a_missing_message_and_a_missing_value_are_errors():
    with pytest.raises(MissingMessage, match="no-such-thing"):
        words("en").say("no-such-thing")
    with pytest.raises(MissingMessage, match="heard-number"):
        words("en").say("heard-number")


def test_a_reading_is_filled_in_in_words():
    line = Message("reading-off-most", {"number": Number("4.5", "°C"), "most": Number("5", "°C")})
    assert words("en").line(line).startswith("4.5 degrees Celsius is too high.")


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_two_commands_share_a_phrase(language):
    acts = [
        c.Confirm(), c.Yes(), c.No(), c.SayAgain(), c.Back(), c.CallProblem(), c.Pause(),
        c.Resume(), c.HandOver("", ""), c.TakeOutOfService(), c.End(),
        *(c.Inspected(finding) for finding in c.Finding),
    ]  # fmt: skip
    said = [phrase for act in acts for phrase in words(language).phrases(act)]
    assert len(said) == len(set(said))


@pytest.mark.parametrize("seconds", [0.2, 59, 60, 61, 119.5, 121, 600])
def test_time_left_is_never_told_as_less_than_it_is(seconds):
    said = words("en").time_left(seconds)
    number, unit = said.split()
    assert int(number) * (60 if unit.startswith("minute") else 1) >= seconds
