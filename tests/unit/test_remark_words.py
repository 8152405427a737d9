"""What is said around a spoken remark: not mistaken for anything else of its moment."""

from __future__ import annotations

from contextlib import closing
from itertools import combinations

import pytest

from kiosk.checking.phonemes import phonemes
from kiosk.checking.phrases import COMMANDS, OWN, TOO_ALIKE, Pair, distance
from kiosk.engine import commands as c
from kiosk.journal.store import Journal
from kiosk.languages.words import languages, words
from kiosk.options import CallWitness, ChooseLanguage, LeaveRemark, Reckon
from kiosk.session import Session
from kiosk.speaking.voices import SpeechFailed
from kiosk.walk import Walk
from tests.plans import EVERY_KIND
from tests.screens.remark_scene import Microphone
from tests.screens.scene import ANA, SITE, FakeVoice, StillClock
from tests.unit.reckoning_bench import shop_bench

LANGUAGES = languages()


def moments(language: str) -> list[list[str]]:
    """What may be said once it is recorded; and, on an open problem, beside the words for it."""
    said = words(language)
    asked = [said.say(one) for one in ("say-remark-keep", "say-remark-again", "say-never-mind")]
    others = [phrase for act in COMMANDS for phrase in said.phrases(act)]
    others += [said.say(one) for one in OWN if one != "say-remark"]
    others += said.ways("say-help")
    return [asked, *([said.say("say-remark"), other] for other in others)]


@pytest.mark.parametrize("language", LANGUAGES)
def test_no_two_phrases_of_one_moment_sound_alike(language):
    pairs = [
        Pair("", (), language, one, other, "")
        for moment in moments(language)
        for one, other in combinations(moment, 2)
    ]
    try:
        sounds = phonemes({language: sorted({one for pair in pairs for one in pair[3:5]})})
    except SpeechFailed as failure:
        pytest.skip(str(failure))
    assert [pair for pair in pairs if distance(sounds, pair) < TOO_ALIKE] == []


def test_the_rules_for_phrases_know_the_walks_own_questions(tmp_path):
    """Those that a walk offers, and no others."""
    with closing(Journal(tmp_path)) as journal:
        session = Session.fresh(EVERY_KIND, journal, StillClock())
        walk = Walk(
            session, SITE, StillClock(), FakeVoice(), Microphone(), lambda: None, bench=shop_bench,
            door=lambda *_: None, remark=lambda: None,
        )  # fmt: skip
        walk.begin(ANA)
        walk.do(c.CallProblem(), c.Evidence(c.Channel.TOUCH))
        own = LeaveRemark | ChooseLanguage | Reckon | CallWitness
        found = {one.label for one in walk.options() if isinstance(one.choice, own)}
    known = {words("en").say(one) for one in OWN}
    # A second person is never called on a problem, and `never mind` answers what is asked.
    assert known - found == {words("en").say(one) for one in ("say-witness", "say-never-mind")}
    assert found <= known
