"""Each limit of the table refuses what lies beyond it, and nothing else."""

from __future__ import annotations

from collections.abc import Sequence

import numpy as np
import pytest

from kiosk.listening.ear import DOUBTFUL, NOT_ALLOWED, NOTHING, RATE, TOO_SHORT, Utterance
from kiosk.listening.list_ear import ListEar, Reading
from kiosk.listening.thresholds import THRESHOLDS, Thresholds, doubt

SAID = Utterance(np.zeros(RATE, dtype=np.float32), 11.0, 11.5, 10.0)


def judged(limits: Thresholds, confidence=0.5, shortest_s=0.2) -> str:
    return doubt(limits, confidence, shortest_s)


@pytest.mark.parametrize(
    ("limits", "believed", "doubted"),
    [
        (Thresholds(least_confidence=0.5), {"confidence": 0.5}, {"confidence": 0.49}),
        (Thresholds(least_confidence=0.5), {"confidence": 0.5}, {"confidence": None}),
        (Thresholds(least_word_s=0.1), {"shortest_s": 0.1}, {"shortest_s": 0.09}),
        (Thresholds(least_word_s=0.1), {"shortest_s": None}, {"shortest_s": 0.0}),
    ],
)
def test_what_the_engine_says_of_itself(limits, believed, doubted):
    assert judged(limits, **believed) == ""
    assert judged(limits, **doubted) == DOUBTFUL


def test_no_limit_refuses_nothing():
    assert judged(Thresholds(), None, None) == ""


class Engine(ListEar):
    """An ear whose engine reads what the test says."""

    name, language, thresholds = "engine", "en", Thresholds(least_confidence=0.5)

    def __init__(self, reading: Reading) -> None:
        self.reading = reading

    def read(self, utterance: Utterance, allowed: Sequence[str]) -> Reading:
        return self.reading


@pytest.mark.parametrize(
    ("reading", "phrase", "why"),
    [
        (Reading("next", "next", 0.6), "next", ""),
        (Reading("next", "next", 0.4), None, DOUBTFUL),
        (Reading("text", None, 0.9), None, NOT_ALLOWED),
        (Reading(""), None, NOTHING),
    ],
)
def test_an_ear_believes_a_reading_or_says_why_not(reading, phrase, why):
    found = Engine(reading).hear(SAID, ["next"])
    assert (found.phrase, found.why, found.text) == (phrase, why, reading.text)
    assert found.confidence == reading.confidence
    assert found.ended_at == 11.0


def test_a_click_never_reaches_the_engine():
    click = Utterance(np.zeros(RATE // 10, dtype=np.float32), 1.0, 1.4, 0.9)
    assert Engine(Reading("next", "next", 0.6)).hear(click, ["next"]).why == TOO_SHORT


def test_every_engine_has_its_limits():
    assert set(THRESHOLDS) == {"vosk", "whisper"}
