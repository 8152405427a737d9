"""What is spelt otherwise for the voice, and what never is: the holds' words on the screen."""

from __future__ import annotations

import pytest

from kiosk.languages.number_words import said_right
from kiosk.languages.words import languages
from kiosk.speaking import respelling
from kiosk.speaking.respelling import respellings, respelt


@pytest.fixture
def some(monkeypatch: pytest.MonkeyPatch):
    listed = {"hopper": "hahper", "mix": "mikks", "pump": "pomp", "pump seat": "pump seet"}
    respelling._any_of.cache_clear()
    monkeypatch.setattr(respelling, "respellings", lambda language: listed)
    yield
    respelling._any_of.cache_clear()


@pytest.mark.parametrize(
    ("text", "spelt"),
    [
        ("Lift the hopper lid.", "Lift the hahper lid."),
        ("Hopper", "hahper"),
        ("HOPPER, hopper.", "hahper, hahper."),
        ("hoppers and a chopper", "hoppers and a chopper"),
        ("Pour 6 litres of mix.", "Pour 6 litres of mikks."),
        ("the pump seat and the pump", "the pump seet and the pomp"),
        ("mixture mix-in", "mixture mikks-in"),
    ],
)
def test_whole_words_are_spelt_for_the_voice(some, text: str, spelt: str):
    assert respelt(text, "en") == spelt


@pytest.mark.parametrize("language", languages())
def test_every_list_can_be_used(language: str):
    for word, spelling in respellings(language).items():
        assert word == word.lower()
        assert spelling.strip() == spelling != word
        assert respelt(f"{word}.", language) == f"{said_right(spelling, language)}."


def test_a_language_without_a_list_is_said_as_it_is_written():
    assert respellings("tl") == {}
    assert respelt("Hugasan ang kamay.", "tl") == "Hugasan ang kamay."


def test_numbers_that_the_voice_misreads_are_said_in_words():
    assert respelt("读数是-1.5度。", "zh") == said_right("读数是-1.5度。", "zh") != "读数是-1.5度。"
