"""A second look believes a phrase only inside the limits of what it means."""

from __future__ import annotations

from collections.abc import Iterator
from concurrent.futures import Future
from dataclasses import replace
from decimal import Decimal
from itertools import product

import numpy as np
import pytest

from kiosk.engine import commands as c
from kiosk.listening.ear import DOUBTFUL, Fit, Heard, Utterance
from kiosk.listening.endpoint import FRAME, FRAME_S, SILENCE_S, Gate
from kiosk.listening.letters import ALPHABET
from kiosk.listening.misheard import may_be_misheard
from kiosk.listening.second_look import NEAREST, SecondLook, denials, nearest
from kiosk.listening.settled import HARMLESS, settled
from kiosk.listening.template_ear import WithOwnWords
from kiosk.listening.thresholds import DENIED, POSSIBLE, Likeness
from kiosk.listening.turn import Turn
from kiosk.options import Agree, ChooseLanguage, Help, LeaveRemark, NeverMind
from kiosk.screens.remark_screen import Press

GOOD = Fit(a_letter=-0.1, above_rival=50.0, above_other=50.0)
FAIR = Fit(a_letter=-1.0, above_rival=20.0, above_other=3.0)
POOR = Fit(a_letter=-4.0, above_rival=20.0, above_other=20.0)
HEARD = Heard("take a wig", "take a break", 0.3, "fake", "", 0.1, 0.0, True, fit=FAIR)


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


# What the letters say.


def sound(*letters: str, sure: float = 0.9) -> np.ndarray:
    """Return letters along a sound: each item one letter, or several that share its chance."""
    frames = []
    for one in letters:
        chance = np.full(len(ALPHABET) + 1, (1 - sure) / (len(ALPHABET) + 1))
        for letter in one:
            chance[ALPHABET.index(letter) + 1] += sure / len(one)
        silence = np.full(len(ALPHABET) + 1, (1 - sure) / len(ALPHABET))
        silence[0] = sure
        frames += [chance, silence]
    return np.log(np.array(frames))


ANYTHING = Likeness(a_letter=float("-inf"), above_rival=float("-inf"))
LOOK = SecondLook(lambda frames: frames, ANYTHING)  # type: ignore[arg-type]
ALLOWED = ("take a break", "step back", "next", "four liters", "four", "forty liters")


def test_the_phrase_whose_letters_lie_in_the_sound_is_found_whatever_was_written():
    phrase, fit = LOOK.find([sound(*"take a break")], ["take the brake"], ALLOWED)
    assert phrase == "take a break"
    assert fit.a_letter == pytest.approx(0, abs=0.2)
    assert fit.above_rival > 20
    assert fit.above_other > 10
    assert fit.agreed


def test_what_was_written_down_may_fit_better():
    phrase, fit = LOOK.find([sound(*"take the bread")], ["take the bread"], ALLOWED)
    assert phrase == "take a break"
    assert fit.above_other < -10
    assert fit.a_letter < -1


def test_letters_between_two_phrases_leave_both_near():
    heard = sound(*"fo", "ur", "rt", "y ", " l", "li", "it", "te", "er", "rs")
    _, fit = LOOK.find([heard], ["for tea leaders"], ALLOWED)
    assert fit.above_rival < 10


def test_two_ways_to_say_one_number_are_no_rivals():
    _, fit = LOOK.find([sound(*"four liters")], ["for leaders"], ("four liters", "four"))
    assert fit.above_rival == float("inf")


def test_hearings_that_find_different_phrases_do_not_agree():
    both = [sound(*"step back"), sound(*"take a break")]
    phrase, fit = LOOK.find(both, ["stick", "take"], ALLOWED)
    assert (phrase, fit.agreed) == ("take a break", False)
    assert not LOOK.fit(both, "take a break", ["take a break"], ALLOWED).agreed
    assert LOOK.fit(both[1:], "take a break", ["take a break"], ALLOWED).agreed


def test_what_fits_no_phrase_is_not_found():
    look = SecondLook(lambda frames: frames, POSSIBLE)  # type: ignore[arg-type]
    assert look.find([sound(*"take a brake")], ["take a brick"], ALLOWED)[0] == "take a break"
    assert look.find([sound(*"what a fine day")], ["take a train"], ALLOWED) is None


def test_nothing_is_found_where_nothing_was_written_down():
    assert LOOK.find([sound(*"next")], [""], ALLOWED) is None
    assert LOOK.find([sound(*"next")], ["necks"], ()) is None


def test_a_phrase_that_another_one_beats_is_below_it():
    fit = LOOK.fit([sound(*"forty liters")], "four liters", ["four liters"], ALLOWED)
    assert fit.above_rival < DENIED


def test_the_phrases_spelled_most_alike_come_first_and_few_of_them():
    numbers = [" ".join(pair) for pair in product(("twenty", "thirty"), "abcdefghijklmnop")]
    allowed = ["next", "Step back!", "something is wrong", "take a break", "pause", *numbers]
    assert nearest(["take a wig"], allowed)[0] == "take a break"
    assert len(nearest(["take a wig"], allowed)) == NEAREST < len(allowed)
    assert nearest(["oh", "dirty p"], allowed)[0] == "thirty p"


@pytest.mark.parametrize(
    ("phrase", "denial"),
    [
        ("the machine does not respond", "the machine does respond"),
        ("i found the power disconnected", "i found the power connected"),
        ("i found everything in place", "i found nothing in place"),
        ("the part is good", "the part is not good"),
        ("i see everyone standing clear", "i see no one standing clear"),
    ],
)
def test_a_phrase_is_held_against_what_denies_it(phrase, denial):
    assert denial in denials(phrase)
    assert phrase not in denials(phrase)
    _, fit = LOOK.find([sound(*denial)], ["something else"], [phrase])
    assert fit.above_other < 0


def test_a_single_word_that_denies_has_no_denial_without_words():
    assert "" not in [*denials("no"), *denials("next")]


# What it is good for.


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


CONFIRM = [c.Confirm(), c.Yes(), c.GivePhrase(), c.Resume(), c.Inspected(c.Finding.GOOD)]
NEVER = [c.TakeOutOfService(), c.HandOver("p2", "es"), c.Speak("es"), Agree(yes=True), "a word"]


@pytest.mark.parametrize("meaning", [*CONFIRM, *NEVER])
def test_what_fits_fairly_at_a_second_look_confirms_nothing(meaning):
    found = settled(HEARD, {"take a break": meaning})
    assert (found.phrase, found.why, found.text) == (None, DOUBTFUL, "take a wig")


@pytest.mark.parametrize("meaning", CONFIRM)
def test_what_fits_well_at_every_hearing_goes_on(meaning):
    good = replace(HEARD, fit=GOOD)
    assert settled(good, {"take a break": meaning}) == good
    alone = replace(HEARD, fit=replace(GOOD, agreed=False))
    assert settled(alone, {"take a break": meaning}).phrase is None


def test_the_phrase_of_a_hold_must_fit_best_of_all():
    close = replace(HEARD, fit=replace(GOOD, a_letter=-0.6))
    assert settled(close, {"take a break": c.Confirm()}).phrase == "take a break"
    assert settled(close, {"take a break": c.GivePhrase()}).phrase is None


@pytest.mark.parametrize("meaning", NEVER)
def test_some_acts_want_the_very_words(meaning):
    assert settled(replace(HEARD, fit=GOOD), {"take a break": meaning}).phrase is None


@pytest.mark.parametrize(
    "fit", [None, POOR, replace(FAIR, above_rival=4), replace(FAIR, above_other=-1)]
)
@pytest.mark.parametrize("meaning", [c.Pause(), c.Read(Decimal(4)), c.Confirm()])
def test_what_fits_badly_is_not_believed_whatever_it_means(fit, meaning):
    assert settled(replace(HEARD, fit=fit), {"take a break": meaning}).phrase is None


@pytest.mark.parametrize(("fit", "is_believed"), [(FAIR, False), (GOOD, True)])
@pytest.mark.parametrize("meaning", [c.Pause(), c.Read(Decimal(4)), c.Confirm()])
def test_a_single_word_must_fit_better(fit, is_believed, meaning):
    word = replace(HEARD, phrase="help", fit=fit)
    assert (settled(word, {"help": meaning}).phrase is not None) is is_believed


def test_no_confirming_act_counts_as_harmless():
    confirming = (c.Confirm, c.Yes, c.GivePhrase, c.Read, c.Inspected, c.Resume, c.TakeOutOfService)
    assert not set(HARMLESS) & set(confirming)


@pytest.mark.parametrize("fit", [None, GOOD, FAIR])
def test_what_was_read_at_first_is_settled_whatever_it_means(fit):
    first = replace(HEARD, at_second_look=False, fit=fit)
    assert settled(first, {"take a break": c.GivePhrase()}) == first


def test_what_was_written_down_as_the_phrase_of_a_hold_must_fit_better():
    first = replace(HEARD, at_second_look=False, fit=replace(GOOD, a_letter=-1.2))
    assert settled(first, {"take a break": c.Confirm()}) == first
    assert settled(first, {"take a break": c.GivePhrase()}).phrase is None
    denied = replace(first, fit=replace(GOOD, above_other=-0.1))
    assert settled(denied, {"take a break": c.GivePhrase()}).phrase is None


def test_what_was_written_down_rashly_confirms_nothing():
    """'yeah' was written down of somebody who said 'six': the letters were nowhere in the sound."""
    rash = replace(HEARD, at_second_look=False, fit=Fit(-7.8, 10.0, 5.0))
    assert [settled(rash, {"take a break": one}).phrase for one in CONFIRM] == [None] * 5
    assert settled(rash, {"take a break": c.Pause()}) == rash


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
    heard = Heard(phrase, phrase, 0.5, "fake", "", 0.1, 0.0, noise_removed=True, fit=FAIR)
    assert settled(replace(heard, fit=GOOD), {phrase: means}).phrase == phrase
    found = settled(heard, {phrase: means})
    assert found.phrase == (phrase if is_believed else None)
    assert found.why == ("" if is_believed else DOUBTFUL)
    assert settled(replace(heard, noise_removed=False), {phrase: means}).phrase == phrase
