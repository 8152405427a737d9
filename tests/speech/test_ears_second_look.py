"""What a second look finds in real sound, and what it must not let through."""

from __future__ import annotations

from decimal import Decimal

import pytest

from kiosk.engine import commands as c
from kiosk.listening.ear import DOUBTFUL, Ear, Heard
from kiosk.listening.grammar import Grammar
from kiosk.listening.listener import hear_frames
from kiosk.listening.numbers import spoken
from kiosk.listening.sources import Samples
from tests.speech.clips import VOICES, Sound, ear_or_skip, heard, human, of_file
from tests.speech.kitchen import in_kitchen

pytest.importorskip("espeakng_loader", reason="espeakng-loader, which speaks, is missing")

ALLOWED: Grammar = {
    "next": c.Confirm(),
    "yes it is": c.Yes(),
    "no": c.No(),
    "repeat please": c.SayAgain(),
    "take a break": c.Pause(),
    "step back": c.Back(),
    "go back": c.Back(),
    "something is wrong": c.CallProblem(),
    "it makes a noise": c.NameReason("noise"),
    "it is too warm": c.NameReason("mix-warm"),
    "the machine is leaking": c.NameReason("leak"),
    "rinse my eyes": c.NameReason("chemical-splash"),
    "the machine does not start": c.GivePhrase(),
    "ready to turn on": c.GivePhrase(),
    "everything is in place": c.GivePhrase(),
}
MISREAD = (
    ("something is wrong", "en-gb-scotland", 150, 50),
    ("it makes a noise", "en-gb-scotland", 150, 50),
    ("go back", "en-us+f3", 165, 50),
    ("step back", "en+f4", 165, 60),
    ("the machine is leaking", "en-us+m3", 175, 35),
)
"""Phrases that the model writes down as something else, with voice, words a minute and pitch."""


@pytest.fixture(scope="module")
def ear() -> Ear:
    return ear_or_skip("en")


def say(text: str, voice: str = "en-us", rate: int = 150, pitch: int = 50) -> Sound:
    from tests.speech.synth import speaker

    return speaker().say(text, voice, rate, pitch)


def answers(ear: Ear, sound: Sound, meanings: Grammar) -> list[Heard]:
    return hear_frames(Samples(sound).frames(), ear, meanings)


def found_of(ear: Ear, meanings: Grammar) -> list[tuple[str, Heard]]:
    """Return each misread phrase with what was heard of it, where a second look found something."""
    every = [
        (phrase, one)
        for phrase, voice, rate, pitch in MISREAD
        for one in answers(ear, say(phrase, voice, rate, pitch), meanings)
    ]
    return [(phrase, one) for phrase, one in every if one.at_second_look]


def test_calls_that_were_written_down_wrong_are_understood(ear):
    found = found_of(ear, ALLOWED)
    assert len(found) >= 3, found  # of 5; espeak-ng does not speak alike each time
    assert [one.phrase for _, one in found] == [phrase for phrase, _ in found]
    assert all(one.text != phrase and one.why == "" for phrase, one in found)


def test_where_each_is_the_phrase_of_a_hold_none_is_taken_for_another_one(ear):
    found = found_of(ear, {phrase: c.GivePhrase() for phrase in ALLOWED})
    assert len(found) >= 3, found
    assert all(one.phrase == phrase or one.why == DOUBTFUL for phrase, one in found)


def test_a_number_whose_unit_was_written_down_wrong_is_understood(ear):
    listed = spoken([Decimal(one) for one in (4, 10, 14, 24, 36)], "en", "L")
    allowed: Grammar = {phrase: c.Read(value) for phrase, value in listed.items()}
    found = [
        (phrase, one)
        for phrase in listed
        for voice, rate in VOICES["en"]
        for one in answers(ear, say(phrase, voice, rate), allowed)
        if "liters" in phrase
    ]
    again = [(phrase, one.phrase) for phrase, one in found if one.at_second_look and one.phrase]
    assert len(again) >= 8, found  # of 20: 12 and 13, and 6 more at first; none for another one
    assert [allowed[phrase] for phrase, _ in again] == [allowed[one] for _, one in again]


@pytest.mark.parametrize("noisy", [False, True])
@pytest.mark.parametrize(
    "opposite", ["the machine does not stop", "ready to turn off", "everything is misplaced"]
)
def test_no_hold_is_established_at_a_second_look(ear, opposite, noisy):
    for number, (voice, rate) in enumerate(VOICES["en"]):
        sound = say(opposite, voice, rate)
        sound = in_kitchen(sound, 10, number) if noisy else sound
        for found in answers(ear, sound, ALLOWED):
            assert not (found.phrase is not None and found.at_second_look), found


@pytest.mark.parametrize(
    "sentence",
    ["it is not too warm", "please do not go back now", "something is long gone from the shelf"],
)
def test_a_denial_or_a_longer_sentence_calls_nobody(ear, sentence):
    for voice, rate in VOICES["en"]:
        assert [one.phrase for one in answers(ear, say(sentence, voice, rate), ALLOWED)] == [None]


def test_words_of_people_are_no_calls(ear):
    clips = human("gsc/unknown", 100)[1::4]
    found = [one for clip in clips for one in answers(ear, of_file(clip), ALLOWED)]
    assert [one for one in found if one.at_second_look and one.phrase] == []  # of all 100: none


def test_with_phrases_that_stand_for_nothing_only_the_text_counts(ear):
    for phrase, voice, rate, pitch in MISREAD[:2]:
        for found in heard(ear, say(phrase, voice, rate, pitch), list(ALLOWED)):
            assert found.phrase is None or found.text == found.phrase
