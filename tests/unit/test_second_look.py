"""A second look believes a phrase only inside every limit, and confirms nothing with it."""

from __future__ import annotations

from collections.abc import Iterator
from concurrent.futures import Future
from dataclasses import replace
from decimal import Decimal

import numpy as np
import pytest

from kiosk.engine import commands as c
from kiosk.listening.ear import DOUBTFUL, Heard, Utterance
from kiosk.listening.endpoint import FRAME, FRAME_S, SILENCE_S, Gate
from kiosk.listening.second_look import NEAREST, Fit, believed, may_be, may_be_misheard, nearest
from kiosk.listening.settled import HARMLESS, settled
from kiosk.listening.template_ear import WithOwnWords
from kiosk.listening.thresholds import Likeness
from kiosk.listening.turn import Turn
from kiosk.options import Agree, ChooseLanguage, Help, LeaveRemark, NeverMind
from kiosk.screens.remark_screen import Press

LIMITS = Likeness(least_worst=-5, most_below_written=1, least_above_rival=1)
WROTE = Fit("take a wig", -1.0, -2.0)
BREAK = Fit("take a break", -1.5, -3.0)
RIVAL = Fit("step back", -4.0, -9.0)
HEARD = Heard("take a wig", "take a break", 0.3, "fake", "", 0.1, 0.0, at_second_look=True)


@pytest.mark.parametrize(
    ("written", "phrase", "may"),
    [
        ("take a wig", "take a break", True),
        ("roblim", "problem", False),
        ("yes it did", "yes", False),
        ("the machine does start", "the machine does not start", False),
        ("it is not too warm", "it is too warm", False),
        ("nothing is in place", "everything is in place", False),
        ("do not step back yet", "do not step back", False),
        ("please step back now", "step back", False),
        ("step back", "step back", False),
        ("four leaders", "four liters", True),
        ("thirty five leaders", "five liters", True),
        ("one hundred fifty degrees", "fifty degrees", False),
        ("farty", "forty", False),
    ],
)
def test_what_may_be_a_misspelling_of_a_phrase(written, phrase, may):
    assert may_be(written, phrase) is may


@pytest.mark.parametrize(
    ("written", "phrase", "may"),
    [
        ("step", "stop", True),
        ("lets go", "stop", True),
        ("not", "next", True),
        ("the key", "repeat please", True),
        ("stop", "stop", True),
        ("can i have a large coffee with milk", "stop", False),
        ("not ready to turn on", "ready to turn on", False),
        ("the power is not connected", "the power is disconnected", False),
        ("when it is so say ready to turn on", "ready to turn on", False),
        ("twenty five", "thirty five", False),
        ("it is thirty fine", "thirty five degrees", False),
        ("dirty fire", "thirty five", True),
    ],
)
def test_what_may_be_misheard_in_noise(written, phrase, may):
    assert may_be_misheard(written, phrase) is may


def test_the_phrases_spelled_most_alike_come_first_and_few_of_them():
    numbers = [f"{tens} {ones}" for tens in ("twenty", "thirty") for ones in ("one", "two", "six")]
    allowed = ["next", "Step back!", "something is wrong", "take a break", "pause", *numbers]
    assert nearest(["take a wig"], allowed)[0] == "take a break"
    assert len(nearest(["take a wig"], allowed)) == NEAREST < len(allowed)
    assert nearest(["oh", "dirty sick"], allowed)[0] == "thirty six"


def test_a_phrase_inside_every_limit_is_believed():
    assert believed(LIMITS, WROTE, [RIVAL, BREAK]) is BREAK


@pytest.mark.parametrize(
    ("written", "fits"),
    [
        (WROTE, []),
        (WROTE, [replace(BREAK, worst=-5.1)]),
        (replace(WROTE, mean=-0.4), [BREAK]),
        (WROTE, [BREAK, replace(RIVAL, mean=-2.4)]),
        (WROTE, [BREAK, replace(RIVAL, mean=-1.4)]),
    ],
)
def test_a_phrase_beyond_a_limit_is_not(written, fits):
    assert believed(LIMITS, written, fits) is None


@pytest.mark.parametrize(
    ("rival", "expected"),
    [
        ("forty", "forty liters"),
        ("minus forty", None),
        ("forty five", None),
        ("four point zero", None),
    ],
)
def test_another_way_to_say_the_same_number_is_no_rival(rival, expected):
    fits = [Fit("forty liters", -1.5, -3.0), Fit(rival, -1.7, -3.0)]
    found = believed(LIMITS, Fit("forty leaders", -1.0, -2.0), fits)
    assert (found and found.text) == expected


@pytest.mark.parametrize(
    "act",
    [
        c.SayAgain(), c.CallProblem(), c.Pause(), c.Back(), c.No(), c.End(), c.HandOver("", "en"),
        Help(), ChooseLanguage(), LeaveRemark(), NeverMind(), Press.KEEP,
    ],
)  # fmt: skip
def test_at_a_second_look_the_kiosk_can_be_called_stopped_asked_and_sent_back(act):
    assert settled(HEARD, {"take a break": act}) == HEARD


def test_a_number_may_come_from_a_second_look_for_it_is_read_back():
    act = c.Read(Decimal(4))
    assert settled(HEARD, {"take a break": act}) == HEARD


@pytest.mark.parametrize(
    "meaning",
    [
        c.Confirm(), c.Yes(), c.GivePhrase(), c.Resume(), c.Inspected(c.Finding.GOOD),
        c.TakeOutOfService(), c.HandOver("p2", "es"), c.Speak("es"), Agree(yes=True), "a word",
    ],
)  # fmt: skip
def test_at_a_second_look_nothing_is_confirmed(meaning):
    found = settled(HEARD, {"take a break": meaning})
    assert (found.phrase, found.why, found.text) == (None, DOUBTFUL, "take a wig")


def test_no_confirming_act_counts_as_harmless():
    confirming = (c.Confirm, c.Yes, c.GivePhrase, c.Read, c.Inspected, c.Resume, c.TakeOutOfService)
    assert not set(HARMLESS) & set(confirming)


def test_what_was_read_at_first_is_settled_whatever_it_means():
    first = replace(HEARD, at_second_look=False)
    assert settled(first, {"take a break": c.GivePhrase()}) == first


def turn_heard(meaning: c.Act, silence: int) -> Iterator[Heard]:
    answers = iter([1.0] * 9 + [0.0] * silence)
    begun: Future[Heard] = Future()
    begun.set_result(HEARD)
    gate = Gate(0.0, detector=lambda _frame: next(answers))
    turn = Turn(gate, lambda _utterance: begun, lambda: {"take a break": meaning})
    for _ in range(9 + silence):
        found = turn.feed(np.zeros(FRAME, dtype=np.float32))
        if found is not None:
            yield found[1]
    last = turn.flush()
    if last is not None:
        yield last[1]


@pytest.mark.parametrize("silence", [round(SILENCE_S / FRAME_S), 5])
def test_a_turn_lets_a_second_look_call_but_not_confirm(silence):
    assert [one.phrase for one in turn_heard(c.Pause(), silence)] == ["take a break"]
    assert [one.phrase for one in turn_heard(c.GivePhrase(), silence)] == [None]


class Fake:
    """An ear that hears what the test says."""

    name = "fake"
    language = "en"

    def __init__(self, heard: Heard) -> None:
        self.heard = heard

    def hear(self, utterance, allowed):
        return self.heard


def test_a_workers_own_word_goes_before_a_second_look():
    own = replace(HEARD, phrase="pause", ear="own", at_second_look=False)
    said = Utterance(np.zeros(FRAME, dtype=np.float32), 1.0, 1.4, 0.5)
    both = WithOwnWords(Fake(HEARD), Fake(own))
    assert both.hear(said, ["pause", "take a break"]).phrase == "pause"
    nothing = WithOwnWords(Fake(HEARD), Fake(replace(own, phrase=None)))
    assert nothing.hear(said, ["pause", "take a break"]).phrase == "take a break"


@pytest.mark.parametrize(
    ("phrase", "means", "is_believed"),
    [
        ("yes", c.Yes(), False),
        ("next", c.Confirm(), True),
        ("seven", c.Read(7), False),
        ("no", c.No(), True),
        ("stop here", c.End(), True),
        ("yes it is", c.Yes(), True),
        ("i found everything in place", c.GivePhrase(), True),
    ],
)
def test_one_word_heard_only_without_the_noise_answers_no_question(phrase, means, is_believed):
    heard = Heard(phrase, phrase, 0.5, "fake", "", 0.1, 0.0, noise_removed=True)
    found = settled(heard, {phrase: means})
    assert found.phrase == (phrase if is_believed else None)
    assert found.why == ("" if is_believed else DOUBTFUL)
    assert settled(replace(heard, noise_removed=False), {phrase: means}).phrase == phrase
