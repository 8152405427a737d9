"""The bench of how well the voice is understood counts what a listener would, and no spelling."""

from __future__ import annotations

import pytest

from kiosk.languages.words import languages
from tests.bench.intelligible_ears import lost_in, wrong_in
from tests.bench.intelligible_texts import REWORDED, said


@pytest.mark.parametrize(
    ("text", "wrote", "language", "units", "wrong"),
    [
        ("Pour 6 litres in.", "Poor six liters in", "en", 4, 0),
        ("I heard 38.5 degrees.", "I heard thirty-eight point five degrees.", "en", 7, 0),
        ("Put in the drip trays.", "put in the driptrays", "en", 5, 0),
        ("Open the valve slowly.", "Open the mail slowly.", "en", 4, 1),
        ("Touch nothing.", "", "en", 2, 2),
        ("Stop.", "Do not ever stop.", "en", 1, 3),
        ("문을 여세요.", "문을여세요", "ko", 5, 0),
        ("15분 기다리세요.", "십오 분 기다리세요", "ko", 8, 0),
        ("문을 여세요.", "문을 닫으세요", "ko", 5, 2),
    ],
)
def test_words_that_came_out_otherwise_are_counted(
    text: str, wrote: str, language: str, units: int, wrong: int
):
    assert wrong_in(text, wrote, language) == (units, wrong)


def test_what_was_lost_is_told_with_what_it_became():
    lost = lost_in("Open the valve slowly now.", "Open the mail slowly.", "en")
    assert lost == [("valve", "mail"), ("now", "")]


@pytest.mark.parametrize("language", languages())
def test_every_sentence_is_taken_once_and_no_gap_is_left(language: str):
    found = said(language)
    assert len(found) > 400
    assert not any("{" in one for one in found)


@pytest.mark.parametrize(("language", "pairs"), REWORDED.items())
def test_what_was_worded_anew_is_what_is_said_now(language: str, pairs: dict[str, str]):
    assert set(pairs.values()) <= set(said(language))
    assert not set(pairs) & set(said(language))
